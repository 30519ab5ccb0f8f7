"""Writes the proof's file from trained weights; the mean of several where several are named.

usage: python -m models.recipe.proof_build PROOF.pt [PROOF.pt ...] models/english/proof.npz
"""

from __future__ import annotations

import sys
from pathlib import Path

import torch

from models.recipe.proof_network import write_proof


def main() -> None:
    """Writes the file and says how large it is."""
    *sources, out = map(Path, sys.argv[1:])
    states = [torch.load(path, map_location="cpu") for path in sources]
    mean = {
        name: torch.stack([state[name].float() for state in states]).mean(0) for name in states[0]
    }
    write_proof(out, mean)
    print(f"{out}: {out.stat().st_size / 1e6:.1f} MB from {len(states)} states")


if __name__ == "__main__":
    main()
