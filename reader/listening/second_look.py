"""The recogniser's reading and the maker's own samples -> one decision; pure.

Both say the same: a move. The samples alone, where they are near enough: a move. They disagree, or
the sound is far from every sample of a word that has some: unsure, so no move.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from reader.listening.heard import Heard, HeardWord
from reader.listening.likeness import Match, Samples
from reader.listening.trace import FRAME_S

LIMIT = 0.30
"""Farthest that a match may be; chosen with the two below on the speakers for choosing
(`python -m tests.benchmarks.tuned SPEECH --choose`)."""
AGREED = 0.05
"""How much nearer a match counts that the recogniser agrees with; more of it understands more and
lets more of other people's words through (see the card)."""
DISAGREED = 0.05
"""How much farther, where the recogniser is certain of another phrase."""
LOWEST, HIGHEST = 0.24, 0.36
"""The limit is kept between these, whatever a maker's samples say."""
LEAST_APART = 0.02
"""Two phrases nearer to each other than this are not told apart."""


@dataclass(frozen=True, slots=True)
class Own:
    """What a maker taught: samples by phrase, the limit chosen with them, and which of the phrases
    were given a sound of the maker's own, so that the recogniser need not know them.
    """

    samples: Samples
    limit: float = LIMIT
    renamed: frozenset[str] = frozenset()


def combined(
    heard: Heard | None,
    match: Match | None,
    own: Own,
    among: frozenset[str],
    started_s: float,
    decided_s: float,
) -> Heard | None:
    """The decision.

    heard: the recogniser's, None where it heard nothing of ours. among: the phrases that were
    compared. started_s: second of the stream at which the utterance that was matched begins.
    """
    if match is None:
        return heard
    learned = heard is not None and heard.text in among
    if heard is not None and heard.doubt in ("", "low certainty") and heard.text == match.phrase:
        near = match.far - AGREED <= own.limit
        return replace(heard, certain=near, doubt="" if near else "unlike your samples")
    other = heard is not None and heard.certain
    far = match.far + (DISAGREED if other else 0.0)
    if far <= own.limit:
        if match.second - match.far < LEAST_APART:
            return _said(match, started_s, decided_s, heard, "between two of your words")
        return _said(match, started_s, decided_s, heard, "")
    if heard is not None and other and (learned or match.far <= own.limit):
        return replace(heard, certain=False, doubt="unlike your samples")
    return heard


def _said(
    match: Match, started_s: float, decided_s: float, heard: Heard | None, doubt: str
) -> Heard:
    """The match as an utterance; each word has its share of the time."""
    start, end = (started_s + FRAME_S * at for at in (match.start, match.end))
    words = match.phrase.split()
    each = (end - start) / len(words)
    said = tuple(
        HeardWord(word, 1.0 - match.far, start + each * n, start + each * (n + 1))
        for n, word in enumerate(words)
    )
    compute_s = heard.compute_s if heard is not None else 0.0
    return Heard(said, not doubt, start, end, decided_s, compute_s, doubt)
