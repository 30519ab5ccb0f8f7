"""How far it is to be believed that a phrase was said: one number from all that is known; pure.

How much worse a phrase may be than the freest reading depends on its length, on what the recogniser
took it for, and on how distinctly anything was read there: in loud noise little is, and then a
phrase must be all the nearer. (How far the phrase stands above what surrounds it, in decibels, says
nothing more once that is known.)
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True, slots=True)
class Verdict:
    """phrase: the likeliest. worse: nats a phone. apart: nats between it and the second as wholes.
    start_s, end_s: where it lies in the sound. phones: how many it has. clear: how likely what the
    second network reads there is to it, a mean over the phrase.
    """

    phrase: str
    worse: float
    apart: float
    start_s: float
    end_s: float
    phones: int = 4
    clear: float = 1.0


MOST_APART, MOST_WHOLE = 6.0, 30.0
"""Nats beyond which a trait counts no more. Judgement."""

BIAS = -2.68
WEIGHTS = {
    "apart": 0.08,
    "agreed": 0.37,
    "doubtful": 0.54,
    "disagreed": -0.74,
    "phones": 2.11,
    "whole": -0.27,
    "clear": 4.15,
}
"""Fitted on the speakers for choosing (`python -m tests.benchmarks.listening_proof SPEECH`)."""


def traits(verdict: Verdict, heard: str, sure: bool) -> NDArray[np.float64]:
    """What the belief rests on, in the order of WEIGHTS.

    heard: what the recogniser took it for, "" for none of ours; sure: whether it was certain.
    """
    same = heard == verdict.phrase
    return np.array(
        [
            min(verdict.apart, MOST_APART),
            sure and same,
            same and not sure,
            sure and not same,
            np.log(verdict.phones),
            min(verdict.worse * verdict.phones, MOST_WHOLE),
            verdict.clear,
        ],
        np.float64,
    )


def belief(verdict: Verdict, heard: str, sure: bool) -> float:
    """0 to 1: how likely it is that the phrase was said; arguments as for `traits`."""
    odds = BIAS + float(np.dot(list(WEIGHTS.values()), traits(verdict, heard, sure)))
    return float(1 / (1 + np.exp(-odds)))
