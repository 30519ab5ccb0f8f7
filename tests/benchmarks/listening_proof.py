"""The bounds of the proof, tried on the speakers for choosing, by the path that listens.

usage: python -m tests.benchmarks.listening_proof SPEECH [--every N]

Every take in quiet, over noise and over others' talk, and every clip of other speech, is heard
once; then the decision is repeated with other bounds upon what the recogniser and the two networks
made of it. Printed first: the recogniser alone; then the best bounds, by the share understood less
the share moved wrongly, two points less for each clip of other speech beyond two in a hundred.
A move ends a look, so with other bounds the looks behind it would differ a little.
"""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import product
from pathlib import Path
from typing import Any

import numpy as np

from reader.app.hear import listen
from reader.devices import recogniser
from reader.devices.ports import Samples
from reader.devices.recogniser import VoskRecogniser
from reader.listening.heard import Heard
from reader.listening.proof import Bounds, Verdict, proven
from tests.benchmarks.listening_clips import GRAMMARS, Clips, clips_of, mixed

Look = tuple[Heard | None, Verdict | None]
Rule = Callable[[Look], Heard | None]
BEDS = ("", "noise", "talk")
SHOWN, FREE, DEAR = 8, 0.02, 200.0


@dataclass(slots=True)
class Looks:
    """Words with the looks at their takes, by grammar and bed; looks at clips of other speech."""

    takes: dict[tuple[str, str], list[tuple[str, list[Look]]]] = field(default_factory=dict)
    others: dict[str, list[list[Look]]] = field(default_factory=dict)


def looked(ear: VoskRecogniser, words: tuple[str, ...], sound: Samples) -> list[Look]:
    """What went into each decision on a clip."""
    found: list[Look] = []

    def noted(heard: Heard | None, verdict: Verdict | None, *rest: Any) -> Heard | None:
        found.append((heard, verdict))
        return proven(heard, verdict, *rest)

    recogniser.proven = noted  # type: ignore[assignment]
    try:
        listen(ear, words, sound)
    finally:
        recogniser.proven = proven
    return found


def all_looks(ear: VoskRecogniser, clips: Clips) -> Looks:
    """Every clip heard once."""
    looks = Looks()
    for name, words in GRAMMARS.items():
        looks.others[name] = [looked(ear, words, clip) for clip in clips.speech]
        for bed in BEDS:
            chance, under = np.random.default_rng(1), clips.beds.get(bed)
            looks.takes[name, bed] = [
                (take.word, looked(ear, words, mixed(take, under, chance)))
                for take in clips.takes
                if take.word in words
            ]
            print(f"heard: {name}, {bed or 'quiet'}", flush=True)
    return looks


def moved(looks: list[Look], rule: Rule) -> str:
    """The phrase of the first certain decision, "" for none."""
    found = (rule(look) for look in looks)
    return next((heard.text for heard in found if heard is not None and heard.certain), "")


def told(looks: Looks, rule: Rule) -> tuple[float, str]:
    """What a rule is worth, and its figures in a line."""
    worth, parts = [], []
    for (name, bed), takes in looks.takes.items():
        said = [(word, moved(own, rule)) for word, own in takes]
        right = 100 * float(np.mean([word == heard for word, heard in said]))
        wrong = 100 * float(np.mean([heard not in ("", word) for word, heard in said]))
        worth.append(right - wrong)
        parts.append(f"{name}, {bed or 'quiet'} {right:.1f}/{wrong:.1f}")
    dear = 0.0
    for name, clips in looks.others.items():
        taken = sum(bool(moved(own, rule)) for own in clips)
        dear = max(dear, taken / max(len(clips), 1) - FREE)
        parts.append(f"{name} {taken} of {len(clips)} others")
    return float(np.mean(worth)) - DEAR * max(dear, 0.0), "; ".join(parts)


def every_bound() -> Iterator[Bounds]:
    """The bounds that are tried."""
    for numbers in product((2.0, 2.5, 3.0, 3.5), (0.0, 1.0, 2.0), (0.0, 1.0), (0.0, 1.0, 2.0, 4.0)):
        yield Bounds(*numbers)


def main() -> None:
    """Prints the recogniser alone, then the best bounds."""
    ask = argparse.ArgumentParser()
    ask.add_argument("speech", type=Path)
    ask.add_argument("--every", type=int, default=1)
    want = ask.parse_args()
    looks = all_looks(VoskRecogniser(), clips_of(want.speech, want.every, judging=False))
    print("understood/moved wrongly. The recogniser alone:", told(looks, lambda look: look[0])[1])
    tried = [
        (*told(looks, lambda look, by=by: proven(*look, 0.0, 0.0, bounds=by)), by)  # type: ignore[misc]
        for by in every_bound()
    ]
    tried.sort(key=lambda one: -one[0])
    for worth, line, by in tried[:SHOWN]:
        print(f"{worth:.1f} {by}: {line}")


if __name__ == "__main__":
    main()
