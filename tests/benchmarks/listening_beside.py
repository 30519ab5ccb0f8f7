"""Ears of several model folders on the very same takes: is one better, or is that chance?

usage: python -m tests.benchmarks.listening_beside SPEECH MODEL MODEL... [--every N] [--choose]

SPEECH, rooms and grammars: as in `listening`; the first MODEL is the one that the others are
measured against. Printed for each grammar and room: of so many takes understood and moved wrongly
by each model; behind it, in how many takes only the first and only the other was right (for moved
wrongly: was wrong), and, marked with a star, where so uneven a split comes in fewer than one of
twenty by chance (the exact test of McNemar). Then the same for other speech taken. Last, over all
rooms of a grammar, the difference in per cent with the interval that holds 95 of 100 draws of the
same number of takes, with repetition: takes are drawn with all their rooms, which are not
independent. Two processes run at once.
"""

from __future__ import annotations

import argparse
from collections.abc import Callable
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from math import comb
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from reader.app.hear import listen
from reader.commands.phrases import MAIN, phrases_of
from reader.devices.recogniser import VoskRecogniser
from reader.listening.decide import LEAST_CERTAIN
from tests.benchmarks.listening import heard_in, outcome, passes
from tests.benchmarks.listening_clips import BEDS, GRAMMARS, LEVELS, clips_of, named

UNLIKELY = 0.05
DRAWS = 10_000
OTHERS = "other speech"
Flags = NDArray[np.bool_]
Outcomes = dict[tuple[str, str], list[str]]
"""By grammar and room, what became of each take, in the same order for every model."""


def outcomes_of(speech: Path, every: int, judging: bool, model: str) -> Outcomes:
    """Everything heard once by one model; other speech is "confused" where it was taken."""
    clips, ear, found = clips_of(speech, every, judging), VoskRecogniser(model, named=named), {}
    rooms = [("clean", None, LEVELS[0])]
    rooms += [(f"{bed} {level:.0f}", clips.beds[bed], level) for bed in BEDS for level in LEVELS]
    for name, words in GRAMMARS.items():
        for room, bed, level in rooms:
            heard = heard_in(ear, clips.takes, words, bed, level)
            found[name, room] = [outcome(h, t.word, LEAST_CERTAIN) for t, h in heard]
    for name, words in {**GRAMMARS, "main commands": phrases_of(MAIN)}.items():
        taken = [passes(listen(ear, words, clip), LEAST_CERTAIN) for clip in clips.speech]
        found[name, OTHERS] = ["confused" if one else "missed" for one in taken]
    return found


def by_chance(only_one: int, only_other: int) -> float:
    """How likely a split at least so uneven is by chance, 0 to 1: McNemar's test, exact."""
    both = only_one + only_other
    tail = sum(comb(both, n) for n in range(min(only_one, only_other) + 1)) / 2**both
    return min(1.0, 2 * tail)


def split(first: Flags, other: Flags) -> str:
    """In how many takes only the first and only the other, starred where chance hardly does it."""
    one, two = int((first & ~other).sum()), int((other & ~first).sum())
    return f"{one}:{two}{'*' if by_chance(one, two) < UNLIKELY else ''}"


def between(first: Flags, other: Flags) -> tuple[float, float, float]:
    """Per cent by which the other has more, and the interval. Arrays [rooms, takes]."""
    apart = 100 * (other.mean(0) - first.mean(0))
    drawn = np.random.default_rng(1).integers(len(apart), size=(DRAWS, len(apart)))
    low, high = np.percentile(apart[drawn].mean(1), (2.5, 97.5))
    return float(apart.mean()), float(low), float(high)


def line(kind: str, found: list[Outcomes], at: tuple[str, str]) -> str:
    """How many takes came to this, by model, and how the others differ from the first."""
    flags = [np.array(one[at]) == kind for one in found]
    counts = " / ".join(str(int(one.sum())) for one in flags)
    return f"{kind} {counts} ({', '.join(split(flags[0], one) for one in flags[1:])})"


def whole(kind: str, found: list[Outcomes], name: str) -> str:
    """The same over all rooms of a grammar, in per cent."""
    rooms = [at for at in found[0] if at[0] == name and at[1] != OTHERS]
    flags = [np.array([np.array(one[at]) == kind for at in rooms]) for one in found]
    shares = " / ".join(f"{100 * one.mean():.1f}" for one in flags)
    apart = (between(flags[0], one) for one in flags[1:])
    told = "; ".join(f"{d:+.1f}, {low:+.1f} to {high:+.1f}" for d, low, high in apart)
    return f"{name}, all rooms: {kind} {shares} % ({told})"


def main() -> None:
    """Prints the figures."""
    ask = argparse.ArgumentParser()
    ask.add_argument("speech", type=Path)
    ask.add_argument("models", nargs="+")
    ask.add_argument("--every", type=int, default=1, help="only every n-th clip")
    ask.add_argument("--choose", action="store_true", help="the speakers for choosing")
    want = ask.parse_args()
    hear: Callable[[str], Outcomes] = partial(
        outcomes_of, want.speech, want.every, not want.choose
    )
    with ProcessPoolExecutor(2) as several:
        found = list(several.map(hear, want.models))
    for at, first in found[0].items():
        kinds = ("confused",) if at[1] == OTHERS else ("understood", "confused")
        told = "; ".join(line(kind, found, at) for kind in kinds)
        print(f"{', '.join(at)}: n={len(first)} {told}")
    for name in GRAMMARS:
        for kind in ("understood", "confused"):
            print(whole(kind, found, name))


if __name__ == "__main__":
    main()
