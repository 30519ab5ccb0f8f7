"""Builds the Vosk model directory from trained weights.

usage: python -m models.recipe.build STATE.pt [models/english]
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

import torch

from models.recipe.export import write_acoustics
from models.recipe.lexicon import FILLERS, follow, lexicon, write_dictionary
from reader.devices.vosk_graph import write_graph


def main() -> None:
    """Writes the directory and says how large it is."""
    folder = Path(sys.argv[2] if len(sys.argv) > 2 else "models/english")
    write_acoustics(folder, torch.load(sys.argv[1], map_location="cpu"))
    costs = follow()
    write_graph(folder / "graph", lexicon(), FILLERS, costs)
    write_dictionary(folder / "pronunciations.xz")
    fillers = {"fillers": FILLERS, "follow": [[round(cost, 3) for cost in row] for row in costs]}
    (folder / "fillers.json").write_text(json.dumps(fillers), encoding="utf-8")
    size = sum(path.stat().st_size for path in folder.rglob("*") if path.is_file())
    print(f"{folder}: {size / 1e6:.1f} MB, {len(lexicon())} words")


if __name__ == "__main__":
    main()
