"""Packs recordings of people: single known words, and the noise of rooms.

usage: python -m models.recipe.people SPEECH OUT_DIR

SPEECH/manifest.csv names each file and its words; words/ has known words, noise/ is mixed under.
takes/ is never read, nor is anything that held_out.txt names. sentences/ and chatter/, whose words
nobody wrote down, are the source ppl of `labels`.
"""

from __future__ import annotations

import csv
import re
import sys
from pathlib import Path

import numpy as np

from models.recipe.measure import HELD_OUT, samples
from models.recipe.phones import dictionary, numbers_of
from models.recipe.voices import RATE_HZ, Sound, write_block

NOISE_S = (10, 30)
"""Shorter noise is repeated to the first, longer noise cut at the second."""


def main() -> None:
    """Writes human0.ogg with its index, and noise.ogg."""
    import soundfile

    speech, out = Path(sys.argv[1]), Path(sys.argv[2])
    out.mkdir(parents=True, exist_ok=True)
    held = set(HELD_OUT.read_text(encoding="utf-8").split())
    rows = list(csv.DictReader((speech / "manifest.csv").open(encoding="utf-8")))
    known = dictionary()
    sounds: list[Sound] = []
    index: list[list[object]] = []
    noise: list[Sound] = []
    at = 0
    for row in rows:
        file = row["file"]
        top = file.split("/")[0]
        if file in held or top not in ("words", "noise"):
            continue
        sound = samples(speech / file).astype(np.float32) / 32_768
        if top == "noise":
            short, long = (seconds * RATE_HZ for seconds in NOISE_S)
            noise.append(np.tile(sound, -(-short // len(sound)))[:long])
            continue
        name = re.sub(r"_\d+$", "", Path(file).stem).replace("_", " ")
        text = row["transcript"] or name
        if not numbers_of(text, known):
            continue
        sounds.append(sound)
        index.append(["human", text, "w", at, len(sound)])
        at += len(sound) + RATE_HZ // 10
    write_block(out, "human0", sounds, index)
    soundfile.write(out / "noise.ogg", np.concatenate(noise), RATE_HZ, "OPUS", format="OGG")
    print(f"{len(index)} words of people, {at / RATE_HZ / 3600:.2f} h, {len(noise)} noises")


if __name__ == "__main__":
    main()
