"""Reads the weights that ship, so that training goes on from them instead of starting over.

usage: python -m models.recipe.shipped [models/english] STATE.pt

The inverse of `export`: every matrix of am/final.mdl back into the network's own shape, and the
blank lifted again by what the export takes off it.
"""

from __future__ import annotations

import sys
from pathlib import Path

import torch

from models.recipe.export import BLANK_SHIFT
from models.recipe.network import HEAD, NECK, OUTPUTS, WIDTH, Network
from models.recipe.trunk import Component, read_components

State = dict[str, torch.Tensor]


def _weight(part: Component, shape: tuple[int, int, int]) -> torch.Tensor:
    """A matrix over spliced input as a convolution's weight [out, in, taps]."""
    wide, narrow, taps = shape
    return torch.tensor(part["<LinearParams>"]).reshape(wide, taps, narrow).permute(0, 2, 1)


def shipped_state(folder: Path) -> State:
    """The state of `Network` that the model in this folder was written from; KeyError where the
    file holds another network."""
    parts = read_components(folder / "am" / "final.mdl")
    state = {k: v.clone() for k, v in Network().state_dict().items()}

    def affine(name: str, key: str, shape: tuple[int, int, int], bias: bool = True) -> None:
        state[f"{key}.weight"] = _weight(parts[name], shape).contiguous()
        if bias:
            state[f"{key}.bias"] = torch.tensor(parts[name]["<BiasParams>"])

    def norm(name: str, key: str) -> None:
        state[f"{key}.running_mean"] = torch.tensor(parts[name]["<StatsMean>"])
        state[f"{key}.running_var"] = torch.tensor(parts[name]["<StatsVar>"])

    affine("first", "first", (WIDTH, 40, 3))
    norm("first.norm", "first_norm")
    for number, layer in enumerate(Network().layers):
        name, key = f"layer{number}", f"layers.{number}"
        taps = 2 if layer.reach else 1
        affine(f"{name}.linear", f"{key}.linear", (NECK, WIDTH, taps), bias=False)
        affine(f"{name}.affine", f"{key}.affine", (WIDTH, NECK, taps))
        norm(f"{name}.norm", f"{key}.norm")
    affine("head1", "head1", (HEAD, WIDTH, 3))
    norm("head1.norm", "head_norm")
    affine("head2", "head2", (OUTPUTS, HEAD, 3))
    state["head2.bias"][0] += BLANK_SHIFT
    return state


def main() -> None:
    """Writes the state."""
    folder = Path(sys.argv[1] if len(sys.argv) > 2 else "models/english")
    torch.save(shipped_state(folder), sys.argv[-1])


if __name__ == "__main__":
    main()
