"""Writes the proof's files from trained weights; the mean of several where several are named.

usage: python -m models.recipe.proof_build PIECES.json PROOF.pt [PROOF.pt ...] models/english

PIECES.json: see proof_pieces. Written are proof.npz and pieces.xz, how every word is written whose
pieces are all told apart.
"""

from __future__ import annotations

import json
import lzma
import sys
from pathlib import Path

import torch

from models.recipe.proof_network import write_proof
from models.recipe.proof_words import OTHER
from reader.devices.written import FILE


def written(table: dict[str, list[int]]) -> bytes:
    """The table as the program reads it."""
    rows = [(word, pieces) for word, pieces in sorted(table.items()) if OTHER not in pieces]
    lines = [f"{word}\t{' '.join(map(str, pieces))}\n" for word, pieces in rows]
    return lzma.compress("".join(lines).encode(), preset=9)


def main() -> None:
    """Writes the files and says how large the larger is."""
    table, *sources, folder = map(Path, sys.argv[1:])
    words = json.loads(table.read_text(encoding="utf-8"))["words"]
    (folder / FILE).write_bytes(written(words))
    states = [torch.load(path, map_location="cpu") for path in sources]
    mean = {
        name: torch.stack([state[name].float() for state in states]).mean(0) for name in states[0]
    }
    out = folder / "proof.npz"
    write_proof(out, mean)
    print(f"{out}: {out.stat().st_size / 1e6:.1f} MB from {len(states)} states")


if __name__ == "__main__":
    main()
