"""How far it is to be believed that a phrase was said: one number from all that is known; pure.

How much worse a phrase may be than the freest reading depends on its length, on whether the
recogniser was sure of another, and on how distinctly anything was read there: in loud noise little
is, and then a phrase must be all the nearer; and on how likely its words are to be written there.
(How far the phrase stands above what surrounds it, in decibels, and whether the recogniser heard
the same, say nothing more once that is known.)
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True, slots=True)
class Verdict:
    """phrase: the likeliest. worse: nats a phone. apart: nats between it and the second as wholes.
    start_s, end_s: where it lies in the sound. phones: how many it has. clear: how likely what the
    second network reads there is to it, a mean over the phrase. words: log probability that they
    are what was said, None where they can't be asked for. from_kin: as apart, from the nearest
    phrase that begins with all its sounds, or with all whose sounds it begins. second: the phrase
    that comes next, "" for none.
    """

    phrase: str
    worse: float
    apart: float
    start_s: float
    end_s: float
    phones: int = 4
    clear: float = 1.0
    words: float | None = None
    from_kin: float = 99.0
    second: str = ""


MOST_APART, MOST_WHOLE = 6.0, 30.0
"""Nats beyond which a trait counts no more. Judgement."""
LEAST_LIKELY = -9.0
"""Below it words are no less likely. Judgement."""

BIAS = 0.83
WEIGHTS = {
    "apart": 0.04,
    "disagreed": -0.67,
    "phones": 2.05,
    "whole": -0.12,
    "clear": 2.49,
    "words": 0.76,
}
BIAS_BY_PHONES = -2.80
WEIGHTS_BY_PHONES = {
    "apart": 0.03,
    "disagreed": -0.75,
    "phones": 2.51,
    "whole": -0.34,
    "clear": 4.57,
}
"""Fitted on the speakers for choosing (`python -m tests.benchmarks.listening_proof SPEECH`); the
second, for phrases whose words can't be asked for, with --phones."""


def traits(verdict: Verdict, heard: str, sure: bool) -> NDArray[np.float64]:
    """What the belief rests on, in the order of WEIGHTS; without the last where the words can't be
    asked for.

    heard: what the recogniser took it for, "" for none of ours; sure: whether it was certain.
    """
    seen = [
        min(verdict.apart, MOST_APART),
        sure and heard != verdict.phrase,
        np.log(verdict.phones),
        min(verdict.worse * verdict.phones, MOST_WHOLE),
        verdict.clear,
    ]
    words = [] if verdict.words is None else [max(verdict.words, LEAST_LIKELY)]
    return np.array([*seen, *words], np.float64)


def belief(verdict: Verdict, heard: str, sure: bool) -> float:
    """0 to 1: how likely it is that the phrase was said; arguments as for `traits`."""
    by_phones = verdict.words is None
    bias, weights = (BIAS_BY_PHONES, WEIGHTS_BY_PHONES) if by_phones else (BIAS, WEIGHTS)
    odds = bias + float(np.dot(list(weights.values()), traits(verdict, heard, sure)))
    return float(1 / (1 + np.exp(-odds)))
