"""View: what a screen needs to know of the session at one moment; wording makes the lines of it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from reader.plan.step import PlanPart, PlanRow, Step
from reader.session.saying import Saying


class Mode(Enum):
    """What the conversation is doing."""

    READING = "reading"
    CONFIRMING = "confirming"
    CHOOSING = "choosing"
    COUNTING = "counting"
    GATHERING = "gathering"
    PAUSED = "paused"
    MUTED = "not listening"
    FINISHED = "finished"


@dataclass(frozen=True, slots=True)
class View:
    """part, row, step: where the maker is, None in a plan without rows. heard: the last words.

    question: what waits for an answer. answer: what was said last where that is not the step.
    ready: (key, what it does), most wanted first. tally: stitches counted aloud in this row.
    """

    title: str
    mode: Mode
    part: PlanPart | None = None
    row: PlanRow | None = None
    step: Step | None = None
    heard: str = ""
    question: Saying | None = None
    answer: Saying | None = None
    ready: tuple[tuple[str, str], ...] = ()
    tally: int | None = None
