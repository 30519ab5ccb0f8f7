"""Heard: what the recogniser made of one utterance."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class HeardWord:
    """One word with its certainty 0..1 and its start and end in seconds of the sound stream."""

    word: str
    certainty: float
    start_s: float
    end_s: float


@dataclass(frozen=True, slots=True)
class Heard:
    """One utterance.

    words: the best reading, "[unk]" where it was none of ours; empty when nothing was said.
    certain: passed every check, so that a move may follow. said_at_s/ended_s: start and end of
    speech; decided_s: moment of the decision; all in seconds of the sound stream. compute_s:
    seconds of computing. doubt: why it is not certain. rival: where it lies between two phrases,
    the other one.
    """

    words: tuple[HeardWord, ...]
    certain: bool
    said_at_s: float
    ended_s: float
    decided_s: float
    compute_s: float = 0.0
    doubt: str = ""
    rival: str = ""

    @property
    def text(self) -> str:
        """The words in one line, without the unknown ones."""
        return " ".join(w.word for w in self.words if w.word != "[unk]")
