"""The acoustic network: a factored time-delay network for 40 MFCC, one output every third frame.

Layers 1 to 10 have the shape of the licensed trunk (see the card) and start from its weights; the
i-vector input is cut off. The head looks back only, so the sound that must be waited for is 19
frames (190 ms). Outputs: 0 is blank and silence, 1 to 39 the phones in alphabetical order.
"""

from __future__ import annotations

from pathlib import Path

import torch
import torch.nn.functional as F
from torch import nn

from models.recipe.trunk import read_components

WIDTH, NECK, HEAD, OUTPUTS = 768, 64, 192, 40
LAYERS = 10
BYPASS = 0.66
RIGHT = 19
"""Frames of sound to the right of an output frame: 1 + 3 x 1 + 5 x 3."""
LEFT = RIGHT + 6 + 6
"""Frames to the left: the same and two looks back of 6 in the head."""


def _norm(width: int) -> nn.BatchNorm1d:
    return nn.BatchNorm1d(width, eps=1e-3, momentum=0.02, affine=False)


class Factored(nn.Module):
    """One layer: 768 -> 64 -> 768 with a bypass; reach is the step in frames to each side, 0 for
    none.
    """

    def __init__(self, reach: int) -> None:
        super().__init__()
        taps = 2 if reach else 1
        self.reach = reach
        self.linear = nn.Conv1d(WIDTH, NECK, taps, bias=False)
        self.affine = nn.Conv1d(NECK, WIDTH, taps)
        self.norm = _norm(WIDTH)

    def forward(self, x: torch.Tensor) -> torch.Tensor:
        """[batch, 768, t] -> [batch, 768, t - 2 reach]."""
        y = self.norm(F.relu(self.affine(self.linear(x))))
        bypass = x[..., self.reach : x.shape[-1] - self.reach] if self.reach else x
        return BYPASS * bypass + y


class Network(nn.Module):
    """features [batch, frames, 40] -> log probabilities [batch, ceil(frames / 3), 40]."""

    def __init__(self, dropout: float = 0.1) -> None:
        super().__init__()
        self.first = nn.Conv1d(40, WIDTH, 3)
        self.first_norm = _norm(WIDTH)
        self.layers = nn.ModuleList(Factored(r) for r in (1, 1, 1, 0, 1, 1, 1, 1, 1))
        self.drop = nn.Dropout1d(dropout)
        self.head1 = nn.Conv1d(WIDTH, HEAD, 3)
        self.head_norm = _norm(HEAD)
        self.head2 = nn.Conv1d(HEAD, OUTPUTS, 3)

    def forward(self, features: torch.Tensor) -> torch.Tensor:
        """Edges are padded by repeating the first and last frame, as the decoder does."""
        x = F.pad(features.transpose(1, 2), (LEFT, RIGHT + 2), mode="replicate")
        x = self.first_norm(F.relu(self.first(x)))
        for number, layer in enumerate(self.layers):
            if number == 4:
                x = x[..., ::3]
            x = self.drop(layer(x))
        x = self.head_norm(F.relu(self.head1(x)))
        x = self.head2(x)
        frames = (features.shape[1] + 2) // 3
        return x[..., :frames].transpose(1, 2).log_softmax(-1)


def _stats(norm: nn.BatchNorm1d, component: dict[str, object]) -> None:
    norm.running_mean.copy_(torch.tensor(component["<StatsMean>"]))
    norm.running_var.copy_(torch.tensor(component["<StatsVar>"]))


@torch.no_grad()
def start_from_trunk(network: Network, final_mdl: Path) -> None:
    """Copies layers 1 to 10 of the trunk into the network; the i-vector columns are dropped."""
    parts = read_components(final_mdl)
    lda = torch.tensor(parts["lda"]["<LinearParams>"])
    shift = torch.tensor(parts["lda"]["<BiasParams>"])
    weight = torch.tensor(parts["tdnn1.affine"]["<LinearParams>"])
    bias = torch.tensor(parts["tdnn1.affine"]["<BiasParams>"])
    joined = (weight @ lda)[:, :120]
    network.first.weight.copy_(joined.reshape(WIDTH, 3, 40).permute(0, 2, 1))
    network.first.bias.copy_(weight @ shift + bias)
    _stats(network.first_norm, parts["tdnn1.batchnorm"])
    for number, layer in enumerate(network.layers, start=2):
        linear = torch.tensor(parts[f"tdnnf{number}.linear"]["<LinearParams>"])
        affine = torch.tensor(parts[f"tdnnf{number}.affine"]["<LinearParams>"])
        taps = 2 if layer.reach else 1
        layer.linear.weight.copy_(linear.reshape(NECK, taps, WIDTH).permute(0, 2, 1))
        layer.affine.weight.copy_(affine.reshape(WIDTH, taps, NECK).permute(0, 2, 1))
        layer.affine.bias.copy_(torch.tensor(parts[f"tdnnf{number}.affine"]["<BiasParams>"]))
        _stats(layer.norm, parts[f"tdnnf{number}.batchnorm"])
