"""Requests with their number in one breath, and what they cost the plain ones.

usage: python -m tests.benchmarks.one_breath [SPEECH]

flite's voices say the main commands and a part of the requests with numbers, in quiet, to the
recogniser under the grammar of a session's step: understood, and taken for another. The plain
commands are also said under the grammar without numbers. With SPEECH (see listening_clips) the
words of people who judge and other speech are heard under both grammars too. The voices are
synthetic: this says little of people, and nobody has recorded whole requests yet.
"""

from __future__ import annotations

import argparse
from collections import Counter
from pathlib import Path

import numpy as np

from reader.app.hear import listen
from reader.app.rehearsal.maker_voice import makers_voice
from reader.commands.numbers import say_number
from reader.commands.phrases import MAIN, phrases_of
from reader.devices.ports import RATE_HZ
from reader.devices.recogniser import VoskRecogniser
from reader.listening.decide import LEAST_CERTAIN
from tests.benchmarks.listening import outcome, passes, shares
from tests.benchmarks.listening_clips import GRAMMARS, Clips, clips_of

VOICES = ("slt", "rms", "awb", "kal")
ROWS, COUNTS = range(1, 23), range(6, 37)
EACH = 5
"""Every so many-th request is said."""
PAUSE = np.zeros(RATE_HZ // 2, np.int16)
BREATHS = (
    *(f"go to row {say_number(n)}" for n in ROWS),
    *(f"rip back to row {say_number(n)}" for n in ROWS),
    *(f"i have {say_number(n)}" for n in COUNTS),
)


def main() -> int:
    """Exit status 0."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("speech", nargs="?", type=Path)
    folder = parser.parse_args().speech
    ear, plain = VoskRecogniser(""), phrases_of(MAIN)
    said(ear, "commands, no numbers", plain, plain)
    said(ear, "commands, with numbers", plain, (*plain, *BREATHS))
    said(ear, "one breath", BREATHS[::EACH], (*plain, *BREATHS))
    if folder:
        clips = clips_of(folder, 2, True)
        people(ear, clips, "no numbers", ())
        people(ear, clips, "with numbers", BREATHS)
    return 0


def said(ear: VoskRecogniser, name: str, words: tuple[str, ...], phrases: tuple[str, ...]) -> None:
    """Prints what came of each of the words said by each voice."""
    counted: Counter[str] = Counter()
    chance = np.random.default_rng(3)
    for voice in VOICES:
        speak = makers_voice(voice)
        for one in words:
            sound = np.concatenate([PAUSE, speak(one), PAUSE, PAUSE])
            noisy = (sound + chance.normal(0, 20, len(sound))).astype(np.int16)
            counted[outcome(listen(ear, phrases, noisy), one, LEAST_CERTAIN)] += 1
    print(f"{name}: {shares(counted)}", flush=True)


def people(ear: VoskRecogniser, clips: Clips, name: str, more: tuple[str, ...]) -> None:
    """Prints what came of people's words, and how much other speech was taken."""
    words = GRAMMARS["twenty words"]
    heard = [
        (take, listen(ear, (*words, *more), np.concatenate([PAUSE, take.sound, PAUSE, PAUSE])))
        for take in clips.takes
        if take.word in words
    ]
    counted = Counter(outcome(one, take.word, LEAST_CERTAIN) for take, one in heard)
    print(f"people, {name}: {shares(counted)}", flush=True)
    main_words = (*phrases_of(MAIN), *more)
    taken = sum(passes(listen(ear, main_words, clip), LEAST_CERTAIN) for clip in clips.speech)
    print(f"other speech, {name}: {taken} of {len(clips.speech)} clips taken", flush=True)


if __name__ == "__main__":
    raise SystemExit(main())
