"""A maker's own samples of each word -> the least certainty, and the words that fail; pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from reader.listening.acoustics import Network
from reader.listening.alike import Phones, most_apart
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.heard import Heard
from reader.listening.likeness import Samples
from reader.listening.trace import Trace, trace_of, word_in

LOWEST, HIGHEST = 0.5, 0.99
"""The least certainty is kept between these, however few samples say otherwise."""
STEP = 0.01
OFTEN = 2
"""Failures, of three samples, from which a word is said to be often missed."""

STRAY = 0.3
"""Distance to the nearest other sample of its word from which one is asked for again (ours)."""


@dataclass(frozen=True, slots=True)
class Sample:
    """One try: the word that was asked for and what was heard; None for nothing."""

    word: str
    heard: Heard | None


@dataclass(frozen=True, slots=True)
class Tuning:
    """What the samples come to.

    least: least certainty from now on. understood: share of samples that would move rightly with
    it. often_missed: words that failed in two samples or more. taken_for: word -> what it was taken
    for, with certainty.
    """

    least: float
    understood: float
    often_missed: tuple[str, ...]
    taken_for: tuple[tuple[str, str], ...]


def _certainty(heard: Heard) -> float:
    return min((word.certainty for word in heard.words), default=0.0)


def _whole(heard: Heard | None) -> bool:
    return heard is not None and heard.doubt in ("", "low certainty")


def tuned(samples: Sequence[Sample], room: Sequence[Heard] = ()) -> Tuning:
    """The tuning of these samples; room: what was heard while nobody spoke to us.

    The least certainty is the one that keeps most right readings, each wrong one that passes
    counting as two lost (our choice), and nearest to the shipped one among equals. Without samples
    it stays as shipped.
    """
    whole = [one for one in samples if one.heard is not None and _whole(one.heard)]
    right = [_certainty(o.heard) for o in whole if o.heard and o.heard.text == o.word]
    wrong = [_certainty(o.heard) for o in whole if o.heard and o.heard.text != o.word]
    wrong += [_certainty(heard) for heard in room if _whole(heard)]
    least = _least(right, wrong)
    failed = [one.word for one in samples if not _moves(one, least)]
    words = dict.fromkeys(one.word for one in samples)
    taken = dict.fromkeys(
        (one.word, one.heard.text)
        for one in whole
        if one.heard and one.heard.text != one.word and _certainty(one.heard) >= least
    )
    return Tuning(
        least,
        1 - len(failed) / len(samples) if samples else 0.0,
        tuple(word for word in words if failed.count(word) >= OFTEN),
        tuple(taken),
    )


def _moves(sample: Sample, least: float) -> bool:
    heard = sample.heard
    if heard is None or not _whole(heard) or heard.text != sample.word:
        return False
    return _certainty(heard) >= least


def _least(right: Sequence[float], wrong: Sequence[float]) -> float:
    if not right and not wrong:
        return LEAST_CERTAIN
    steps = [round(LOWEST + STEP * n, 2) for n in range(round((HIGHEST - LOWEST) / STEP) + 1)]

    def worth(least: float) -> tuple[float, float]:
        kept = sum(one >= least for one in right) - 2 * sum(one >= least for one in wrong)
        return kept, -abs(least - LEAST_CERTAIN)

    return max(steps, key=worth)


def better_word(
    failing: str,
    candidates: Sequence[str],
    phrases: Sequence[str],
    sounds: Mapping[str, Phones],
) -> str:
    """A word for one that is often missed: what sounds least like the other phrases, or ""."""
    others = [phrase for phrase in phrases if phrase != failing]
    return most_apart([one for one in candidates if one != failing], others, sounds)


def apart_each(network: Network, sounds: Sequence[NDArray[np.int16]]) -> list[float]:
    """For each sample of a word how far the nearest of the others is; 1 where none compares."""
    words = [_word_of(trace_of(network, sound)) for sound in sounds]
    far = []
    for at, word in enumerate(words):
        others = [one for n, one in enumerate(words) if n != at and one is not None]
        match = None
        if word is not None:
            match = Samples({"": others}).match(word, frozenset(("",)))
        far.append(match.far if match is not None else 1.0)
    return far


def _word_of(trace: Trace | None) -> Trace | None:
    return trace.part(*word_in(trace)) if trace is not None else None


def strays(network: Network, sounds: Sequence[NDArray[np.int16]]) -> int | None:
    """The sample that is unlike the others and should be said once more; None where all will do."""
    far = apart_each(network, sounds)
    worst = max(range(len(far)), key=far.__getitem__, default=0)
    return worst if len(far) > 1 and far[worst] > STRAY else None
