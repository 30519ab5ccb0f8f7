"""What a living room and a cheap microphone do to speech, for whole batches on the training device.

Samples are float, [batch, n], full scale 1. Each step draws its own chances; no two batches are
alike.
"""

from __future__ import annotations

import math

import torch

RATE_HZ = 16_000


def rooms(count: int, device: torch.device) -> torch.Tensor:
    """Impulse responses [count, 8000]: direct sound, a few early echoes, a decaying tail (0.1 to
    0.7 s).
    """
    n = 8_000
    t = torch.arange(n, device=device) / RATE_HZ
    decay = torch.empty(count, 1, device=device).uniform_(0.1, 0.7)
    tail = torch.randn(count, n, device=device) * torch.exp(-6.9 * t / decay)
    tail *= torch.empty(count, 1, device=device).uniform_(0.005, 0.09)
    for _ in range(6):
        at = torch.randint(20, 900, (count,), device=device)
        tail[torch.arange(count), at] += torch.empty(count, device=device).uniform_(-0.4, 0.4)
    tail[:, 0] = 1.0
    return tail


def music(seconds: int, device: torch.device) -> torch.Tensor:
    """Invented music: chords of decaying harmonics and noise beats, [n], full scale 1."""
    n = seconds * RATE_HZ
    out = torch.zeros(n, device=device)
    t = torch.arange(RATE_HZ, device=device) / RATE_HZ
    at = 0
    while at < n - RATE_HZ:
        root = 110.0 * 2 ** (torch.randint(0, 24, (1,)).item() / 12)
        beat = int(RATE_HZ * (0.15 + 0.35 * torch.rand(1).item()))
        for step in (0, 3 + int(torch.randint(0, 2, (1,))), 7, 12)[
            : 1 + int(torch.randint(0, 4, (1,)))
        ]:
            for harmonic in range(1, 7):
                hz = root * 2 ** (step / 12) * harmonic
                loud = torch.rand(1).item() / harmonic
                wave = torch.sin(2 * math.pi * hz * t) * torch.exp(
                    -t * (2 + 4 * torch.rand(1).item())
                )
                out[at : at + RATE_HZ] += loud * wave
        drum = torch.randn(RATE_HZ // 8, device=device) * torch.exp(-40 * t[: RATE_HZ // 8])
        out[at : at + RATE_HZ // 8] += torch.rand(1).item() * drum
        at += beat
    return out / out.abs().max()


def _level(x: torch.Tensor) -> torch.Tensor:
    return x.pow(2).mean(-1, keepdim=True).clamp_min(1e-9).sqrt()


def _some(batch: int, share: float, device: torch.device) -> torch.Tensor:
    return (torch.rand(batch, 1, device=device) < share).float()


def add_room(x: torch.Tensor, bank: torch.Tensor, share: float = 0.55) -> torch.Tensor:
    """Speech heard in a room, for a share of the batch."""
    pick = bank[torch.randint(0, len(bank), (len(x),), device=x.device)]
    n = x.shape[-1] + bank.shape[-1]
    wet = torch.fft.irfft(torch.fft.rfft(x, n) * torch.fft.rfft(pick, n), n)[:, : x.shape[-1]]
    wet = wet * (_level(x) / _level(wet))
    some = _some(len(x), share, x.device)
    return some * wet + (1 - some) * x


def add_sound(
    x: torch.Tensor, other: torch.Tensor, low_db: float, high_db: float, share: float
) -> torch.Tensor:
    """Mixes another sound under the speech, low_db to high_db below it, for a share of the batch.
    """
    ratio = torch.empty(len(x), 1, device=x.device).uniform_(low_db, high_db)
    gain = _level(x) / _level(other) * 10 ** (-ratio / 20)
    return x + _some(len(x), share, x.device) * gain * other


def cut(bank: torch.Tensor, batch: int, n: int) -> torch.Tensor:
    """Random stretches [batch, n] of one long sound."""
    at = torch.randint(0, len(bank) - n, (batch, 1), device=bank.device)
    return bank[at + torch.arange(n, device=bank.device)]


def hiss(batch: int, n: int, device: torch.device) -> torch.Tensor:
    """Noise whose spectrum falls by 0 to 9 dB an octave."""
    spectrum = torch.fft.rfft(torch.randn(batch, n, device=device))
    hz = torch.arange(spectrum.shape[-1], device=device).clamp_min(1).float()
    fall = torch.empty(batch, 1, device=device).uniform_(0.0, 1.5)
    return torch.fft.irfft(spectrum * hz ** (-fall), n)


def colour(x: torch.Tensor) -> torch.Tensor:
    """Microphones: a tilt of the spectrum, telephone band or a low ceiling for some."""
    n = x.shape[-1]
    spectrum = torch.fft.rfft(x)
    hz = torch.linspace(0, RATE_HZ / 2, spectrum.shape[-1], device=x.device)[None]
    tilt = torch.empty(len(x), 1, device=x.device).uniform_(-4, 4)
    gain = 10 ** (tilt * torch.log2((hz + 60) / 1000) / 20)
    centre = torch.empty(len(x), 1, device=x.device).uniform_(200, 4500)
    bump = torch.empty(len(x), 1, device=x.device).uniform_(-8, 8)
    gain = gain * 10 ** (bump * torch.exp(-((torch.log2((hz + 1) / centre)) ** 2) * 2) / 20)
    phone = _some(len(x), 0.35, x.device)
    ceiling = torch.where(
        phone > 0, 3500.0, torch.empty(len(x), 1, device=x.device).uniform_(4500, 12000)
    )
    floor = torch.where(phone > 0, 280.0, torch.empty(len(x), 1, device=x.device).uniform_(0, 160))
    gain = gain * torch.sigmoid((ceiling - hz) / 100) * torch.sigmoid((hz - floor) / 15)
    return torch.fft.irfft(spectrum * gain, n)


def set_level(x: torch.Tensor) -> torch.Tensor:
    """Peaks between -38 and +2 dB of full scale (some clip), now and then coarse telephone steps;
    int16 scale.
    """
    peak = x.abs().amax(-1, keepdim=True).clamp_min(1e-6)
    loud = torch.empty(len(x), 1, device=x.device).uniform_(-38, 2)
    x = (x / peak * 10 ** (loud / 20)).clamp(-1, 1)
    coarse = (
        torch.sign(x)
        * (
            torch.round(torch.log1p(255 * x.abs()) / math.log(256) * 127) / 127 * math.log(256)
        ).expm1()
        / 255
    )
    some = _some(len(x), 0.12, x.device)
    return (some * coarse + (1 - some) * x) * 32767.0


def speed(x: torch.Tensor, factor: float) -> torch.Tensor:
    """The whole batch resampled: faster and higher for a factor over 1; length n / factor."""
    n = x.shape[-1]
    to = int(n / factor) // 2 * 2
    spectrum = torch.fft.rfft(x)
    bins = to // 2 + 1
    if bins <= spectrum.shape[-1]:
        spectrum = spectrum[:, :bins]
    else:
        spectrum = torch.nn.functional.pad(spectrum, (0, bins - spectrum.shape[-1]))
    return torch.fft.irfft(spectrum, to) * (to / n)
