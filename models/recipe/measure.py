"""Figures of a model directory on people who were never trained on.

usage: python -m models.recipe.measure MODEL_DIR SPEECH_DIR [--fillers "[unk],[unk1]"]

SPEECH_DIR holds takes/ (one word a clip, the word in the file name) and, listed in held_out.txt,
clips of other speech. Prints, for each filler word, the share of commands understood, confused and
missed (grammars of ten digits and of 20 words) and the share of other-speech clips in which any
command was heard. The decision here is the bare decoder's: `python -m tests.benchmarks.listening`
measures the program's own.
"""

from __future__ import annotations

import argparse
import json
import re
import subprocess
from pathlib import Path

import numpy as np
import vosk

DIGITS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]
WORDS = [
    "back",
    "forward",
    "left",
    "right",
    "stop",
    "next",
    "again",
    "pause",
    "slower",
    "faster",
    "louder",
    "softer",
    "undo",
    "yes",
    "no",
    "finish",
    "repeat",
    "materials",
    "lifeline",
    "gauge",
]
HELD_OUT = Path(__file__).with_name("held_out.txt")


def samples(path: Path) -> np.ndarray:
    """int16, 16 kHz mono."""
    raw = subprocess.run(
        ["ffmpeg", "-v", "error", "-i", path, "-f", "s16le", "-ac", "1", "-ar", "16000", "-"],
        capture_output=True,
        check=True,
        timeout=60,
    ).stdout
    return np.frombuffer(raw, np.int16)


def heard(model: vosk.Model, grammar: list[str], sound: np.ndarray) -> str:
    """All words of a clip, fillers left out; half a second of silence follows the clip."""
    ear = vosk.KaldiRecognizer(model, 16_000, json.dumps(grammar))
    sound = np.concatenate([np.zeros(3_200, np.int16), sound, np.zeros(9_600, np.int16)])
    words = []
    for at in range(0, len(sound), 4_000):
        if ear.AcceptWaveform(sound[at : at + 4_000].tobytes()):
            words.append(json.loads(ear.Result())["text"])
    words.append(json.loads(ear.FinalResult())["text"])
    return " ".join(word for word in " ".join(words).split() if not word.startswith("["))


def main() -> None:
    """Prints the table."""
    ask = argparse.ArgumentParser()
    ask.add_argument("model")
    ask.add_argument("speech", type=Path)
    ask.add_argument("--fillers", default="[unk0],[unk1],[unk],[unk2],[unk3],[unk4]")
    ask.add_argument("--every", type=int, default=1, help="measure only every n-th clip")
    want = ask.parse_args()
    vosk.SetLogLevel(-1)
    model = vosk.Model(want.model)
    takes = sorted((want.speech / "takes").glob("*.opus"))[:: want.every]
    clips = [(re.split(r"_", p.stem)[1], samples(p)) for p in takes]
    others = [
        want.speech / line for line in HELD_OUT.read_text().split() if not line.startswith("words/")
    ]
    speech = [samples(p) for p in others[:: want.every]]
    print(
        f"{len(clips)} takes, {len(speech)} clips of other speech "
        f"({sum(map(len, speech)) / 16_000 / 60:.1f} min)"
    )
    for filler in want.fillers.split(","):
        tally = {}
        for name, words in (("digits", DIGITS), ("words", WORDS)):
            mine = [(word, sound) for word, sound in clips if word in words]
            said = [(word, heard(model, [*words, filler], sound)) for word, sound in mine]
            right = sum(a == b for a, b in said)
            missed = sum(not b for _, b in said)
            false = sum(bool(heard(model, [*words, filler], sound)) for sound in speech)
            n = max(len(said), 1)
            tally[name] = (
                f"{100 * right / n:.1f} % right, {100 * missed / n:.1f} missed, "
                f"{100 * (n - right - missed) / n:.1f} confused, {100 * false / len(speech):.1f} "
                f"% of other clips accepted"
            )
        print(f"{filler:8} digits: {tally['digits']}")
        print(f"{'':8} words:  {tally['words']}", flush=True)


if __name__ == "__main__":
    main()
