"""MFCC features exactly as the recogniser computes them, in PyTorch, for whole batches on any
device.

Source of the figures: Kaldi's feature-mfcc (25 ms povey window, 10 ms shift, pre-emphasis 0.97, 40
mel bins from 20 to 7600 Hz, 40 cepstra, lifter 22, no energy, edges snipped); the
program's own in numpy, `reader/listening/mfcc.py`, is checked against kaldi-native-fbank's figures.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import torch

RATE_HZ = 16_000
WINDOW, SHIFT, FFT, BINS = 400, 160, 512, 40
LOW_HZ, HIGH_HZ = 20.0, 7600.0


def _mel(hz: float) -> float:
    return 1127.0 * math.log(1.0 + hz / 700.0)


WARPS = tuple(0.86 + 0.02 * step for step in range(16))
"""How much longer or shorter a vocal tract may seem in training: factors on the frequency axis."""
LIGHT_WARPS = tuple(0.9 + 0.02 * step for step in range(12))


@dataclass(frozen=True, slots=True)
class Gaps:
    """What is lost in training: bins of the longest band, frames of the longest moment, how many
    moments, and in what share of the batch each."""

    bins: int = 6
    frames: int = 7
    moments: int = 2
    share: float = 0.5


LIGHT_GAPS = Gaps(5, 6, 1, 0.3)


def _mel_banks(warp: float = 1.0) -> torch.Tensor:
    """Mel bins [40, 257]; warp moves every frequency up by that factor (the top stays)."""
    low, high = _mel(LOW_HZ), _mel(HIGH_HZ)
    step = (high - low) / (BINS + 1)
    banks = torch.zeros(BINS, FFT // 2 + 1)
    for one in range(BINS):
        left, centre, right = low + one * step, low + (one + 1) * step, low + (one + 2) * step
        for k in range(FFT // 2):
            mel = _mel(min(RATE_HZ / FFT * k * warp, 0.5 * RATE_HZ))
            if left < mel < right:
                rise, fall = (mel - left) / (centre - left), (right - mel) / (right - centre)
                banks[one, k] = rise if mel <= centre else fall
    return banks


class Mfcc(torch.nn.Module):
    """float samples [batch, n] on the int16 scale -> [batch, frames, 40]; frames = 1 + (n - 400) //
    160.
    """

    def __init__(self, warps: tuple[float, ...] = WARPS, gaps: Gaps | None = None) -> None:
        super().__init__()
        self.gaps = gaps or Gaps()
        n = torch.arange(WINDOW, dtype=torch.float64)
        window = (0.5 - 0.5 * torch.cos(2 * math.pi * n / (WINDOW - 1))) ** 0.85
        self.register_buffer("window", window.float())
        self.register_buffer("banks", _mel_banks())
        self.register_buffer("warped", torch.stack([_mel_banks(warp) for warp in warps]))
        k = torch.arange(BINS, dtype=torch.float64)
        dct = torch.cos(math.pi / BINS * (k[None] + 0.5) * k[:, None]) * math.sqrt(2.0 / BINS)
        dct[0] *= math.sqrt(0.5)
        lifter = 1.0 + 11.0 * torch.sin(math.pi * k / 22.0)
        self.register_buffer("dct", (dct * lifter[:, None]).float())

    def forward(
        self, samples: torch.Tensor, dither: float = 1.0, shift: int = SHIFT, spoil: bool = False
    ) -> torch.Tensor:
        """Features; dither is added noise of that standard deviation, in samples of the int16
        scale.

        A shift other than 160 samples changes how fast the speech seems, and nothing else. With
        spoil each utterance gets a vocal tract of another length, and some lose a band or a moment.
        """
        frames = samples.unfold(-1, WINDOW, shift)
        if dither:
            frames = frames + dither * torch.randn_like(frames)
        frames = frames - frames.mean(-1, keepdim=True)
        before = torch.cat([frames[..., :1], frames[..., :-1]], -1)
        frames = (frames - 0.97 * before) * self.window
        power = torch.fft.rfft(frames, FFT).abs() ** 2
        banks = self.banks
        if spoil:
            pick = torch.randint(len(self.warped), (len(samples),), device=samples.device)
            banks = self.warped[pick]
        energies = power @ banks.transpose(-1, -2)
        energies = torch.clamp(energies, min=1.1920928955078125e-07).log()
        return (_lost(energies, self.gaps) if spoil else energies) @ self.dct.T


def _lost(energies: torch.Tensor, gaps: Gaps) -> torch.Tensor:
    """A band and some moments levelled to the mean, each in a share of the batch."""
    batch, frames, bins = energies.shape
    mean = energies.mean((1, 2), keepdim=True)
    out = energies
    for along, longest, times in ((bins, gaps.bins, 1), (frames, gaps.frames, gaps.moments)):
        place = torch.arange(along, device=energies.device)[None]
        for _ in range(times):
            draw = torch.rand(3, batch, 1, device=energies.device)
            start = draw[0] * (along - longest)
            inside = (place >= start) & (place < start + 1 + draw[1] * (longest - 1))
            inside = inside & (draw[2] < gaps.share)
            out = torch.where(
                inside[:, None, :] if along == bins else inside[:, :, None], mean, out
            )
    return out
