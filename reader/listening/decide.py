"""A decoded utterance -> heard or not: pure rules on words, certainty, length and loudness."""

from __future__ import annotations

from reader.listening.heard import Heard, HeardWord

SHORTEST_S = 0.03
"""Words end where their last sound peaks, so they look short; below it is a click (ours)."""
LEAST_CERTAIN = 0.8
"""Least certainty of any word; chosen with the filler, on the speakers for choosing only."""


def settled(
    words: tuple[HeardWord, ...],
    phrases: tuple[str, ...],
    decided_s: float,
    compute_s: float,
    least: float = LEAST_CERTAIN,
) -> Heard | None:
    """What was heard, None where nothing of ours was said.

    Certain only when the whole utterance is one phrase, nothing else was said around it and every
    word reaches the least certainty.
    """
    ours = tuple(word for word in words if not word.word.startswith("["))
    if not ours:
        return None
    text = " ".join(word.word for word in ours)
    start, end = ours[0].start_s, ours[-1].end_s
    doubt = ""
    if text not in phrases:
        doubt = "no whole phrase"
    elif len(ours) < len(words):
        doubt = "other words around it"
    elif end - start < SHORTEST_S:
        doubt = "too short"
    elif min(word.certainty for word in ours) < least:
        doubt = "low certainty"
    return Heard(ours, not doubt, start, end, decided_s, compute_s, doubt)
