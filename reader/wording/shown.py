"""Shown: what a screen shows, as words and numbers; made once from the state, drawn by every
screen.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Ear(Enum):
    """Whether the program listens; the value is what stands on the screen."""

    LISTENING = "Listening"
    PAUSED = "Paused"
    MUTED = "Not listening, keys work"
    FINISHED = "Finished"


@dataclass(frozen=True, slots=True)
class Shown:
    """One moment of the work.

    title: the pattern's. part, row: "Tower", "Round 4". passes: "pass 2 of 3", "" outside repeats.
    step: the present step in full words; brief: the same in few. done, total: stitches of this row,
    None where unknown. counted: what is counted. question: a question waiting for yes or no, "" for
    none. answer: what the program said last, where that is not the step. notices: what comes.
    trouble: what needs mending. ready: (key, what it does) for the commands that make sense now,
    most wanted first.
    """

    title: str
    part: str
    row: str
    passes: str = ""
    step: str = ""
    brief: str = ""
    done: int | None = None
    total: int | None = None
    counted: str = "stitches"
    ear: Ear = Ear.LISTENING
    heard: str = ""
    question: str = ""
    answer: str = ""
    notices: tuple[str, ...] = ()
    trouble: tuple[str, ...] = ()
    ready: tuple[tuple[str, str], ...] = ()

    @property
    def place(self) -> str:
        """ "Tower, Round 4, pass 2 of 3"."""
        return ", ".join(words for words in (self.part, self.row, self.passes) if words)

    @property
    def count(self) -> str:
        """ "8 of 27 done, 19 left"; "8 done" where the total is not known; "" where nothing is
        counted.
        """
        if self.done is None:
            return f"{self.total} {self.counted} in all" if self.total is not None else ""
        if self.total is None:
            return f"{self.done} done"
        left = self.total - self.done
        if left < 0:
            return f"{self.done} done, {-left} more than the {self.total} there should be"
        return (
            f"{self.done} of {self.total} done, {left} left" if left else f"all {self.total} done"
        )
