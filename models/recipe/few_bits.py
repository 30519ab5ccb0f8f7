"""Weights of few bits: training with them, and how they are written.

A matrix is cut into groups of so many numbers along its rows; each group has a scale, and every
number is a whole one between -n and n times that scale. In training the forward pass sees those
numbers and the gradient goes to the exact ones, so the network learns to live with them.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import torch
import torch.nn.functional as F
from numpy.typing import NDArray
from torch import nn

GROUP = 64
"""Numbers that share a scale."""
SPARE = 0.5
"""How far the largest of a group may lie beyond the last whole number: a finer scale for the many
costs the few largest a little."""


def whole(weight: torch.Tensor, most: int) -> tuple[torch.Tensor, torch.Tensor]:
    """[rows, n] -> whole numbers [rows, groups, 64] from -most to most, scales [rows, groups, 1].

    One group a row where n is not divisible by 64.
    """
    rows, n = weight.shape
    groups = weight.reshape(rows, -1, GROUP if n % GROUP == 0 else n)
    scale = (groups.abs().amax(-1, keepdim=True) / (most + SPARE)).clamp(min=1e-8)
    scale = scale.half().float()
    return (groups / scale.clamp(min=1e-7)).round().clamp(-most, most), scale


def seen(weight: torch.Tensor, most: int) -> torch.Tensor:
    """The weight as the program will have it; gradients pass as if it were exact. most 0: exact."""
    if not most:
        return weight
    flat = weight.reshape(len(weight), -1).float()
    number, scale = whole(flat.detach(), most)
    plain = (number * scale).reshape(weight.shape)
    return weight + (plain - weight).detach()


class Line(nn.Linear):
    """A linear layer whose weight has few bits."""

    most = 7

    def forward(self, x: torch.Tensor) -> torch.Tensor:
        """As nn.Linear."""
        return F.linear(x, seen(self.weight, self.most), self.bias)


class Over(nn.Conv1d):
    """A convolution of three moments whose weight has few bits."""

    most = 31

    def forward(self, x: torch.Tensor) -> torch.Tensor:
        """As nn.Conv1d."""
        weight = seen(self.weight, self.most)
        return F.conv1d(x, weight, self.bias, self.stride, self.padding)


def written(value: torch.Tensor, most: int) -> dict[str, NDArray[Any]]:
    """What stands in the file for one matrix: "" its numbers, ".scale" its scales.

    With most 7 two numbers stand in a byte, the first in the lower half, each with 8 added; more
    stand each in a byte of their own.
    """
    array = value.float()
    number, scale = whole(array.reshape(len(array), -1), most)
    flat = number.reshape(array.shape).to(torch.int8).numpy()
    if most == 7:
        pairs = (flat.reshape(len(flat), -1, 2) + 8).astype(np.uint8)
        flat = pairs[..., 0] | pairs[..., 1] << 4
    return {"": flat, ".scale": scale[..., 0].numpy().astype(np.float16)}
