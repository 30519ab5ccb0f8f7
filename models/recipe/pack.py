"""Joins the indices of a folder of packed speech into the one that training reads.

usage: python -m models.recipe.pack PACKED_DIR

For each NAME.json beside NAME.ogg, words become phones; utterances with a word that the dictionary
lacks are left out and counted. Writes index.json.xz: name -> rows of kind, words, voice, first
sample, samples, phones.
"""

from __future__ import annotations

import json
import lzma
import sys
from collections import Counter
from pathlib import Path

from models.recipe.phones import dictionary, numbers_of

Row = list[object]


def rows_with_phones(
    rows: list[Row], known: dict[str, list[tuple[str, ...]]]
) -> tuple[list[Row], int]:
    """The rows whose words all have a pronunciation, with their phones; and how many had none."""
    out = []
    for row in rows:
        phones = numbers_of(str(row[1]), known)
        if phones:
            out.append([*row, phones])
    return out, len(rows) - len(out)


def main() -> None:
    """Writes the index and prints what is in it."""
    folder = Path(sys.argv[1])
    known = dictionary()
    shards: dict[str, list[Row]] = {}
    hours: Counter[str] = Counter()
    lacking = 0
    for path in sorted(folder.glob("*.json")):
        rows, lost = rows_with_phones(json.loads(path.read_text(encoding="utf-8")), known)
        shards[path.stem] = rows
        lacking += lost
        for row in rows:
            hours[str(row[0])] += int(str(row[4]))
    with lzma.open(folder / "index.json.xz", "wt") as index:
        index.write(json.dumps(shards))
    for kind, length in sorted(hours.items()):
        print(f"{kind}: {length / 16_000 / 3600:.2f} h")
    print(f"left out for want of a pronunciation: {lacking}")


if __name__ == "__main__":
    main()
