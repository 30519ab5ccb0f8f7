"""Step: one spoken instruction, its place, and the counts around it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from reader.counts.worked import Move, Pass
from reader.plan.place import Place


class Grain(Enum):
    """How much is read at a time."""

    ROW = "whole row"
    PHRASE = "phrase"
    GROUP = "stitch group"


class RowKind(Enum):
    """What a row of the plan is."""

    GATHER = "gather"
    WORK = "work"
    REMARK = "remark"
    FINISH = "finish"
    UNREAD = "unread"


@dataclass(frozen=True, slots=True)
class Notice:
    """Something to be said before the row it affects: colour change coming, measure now, at the
    same time.
    """

    kind: str
    text: str
    rows_ahead: int = 0


@dataclass(frozen=True, slots=True)
class Reading:
    """How the words of this pattern are to be read: its craft and terms, its own abbreviations,
    the chosen size.

    key: abbreviation in lower case -> its meaning. size: which of `sizes` (their names) is
    made, 0-based.
    """

    craft: str = "crochet"
    terms: str = "US"
    key: tuple[tuple[str, str], ...] = ()
    size: int = 0
    sizes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Step:
    """One instruction to say.

    covers: how many smallest steps it holds. moves: what the hands do. passes: the pass of each
    repeat, outermost
    first, for "pass 2 of 5". done/done_after: stitches made in this row before and after this step.
    total: stitches the row ends with, None where unknown. takes: stitches used by this step.
    written: the pattern's own words.
    """

    place: Place
    covers: int
    moves: tuple[Move, ...]
    passes: tuple[Pass, ...]
    written: str
    done: int
    done_after: int
    total: int | None
    takes: int
    starts_row: bool
    ends_row: bool
    unread: bool = False


@dataclass(frozen=True, slots=True)
class PlanRow:
    """One row of the plan with its smallest steps.

    label: "Row 3". count_before/count: stitches before and after. groups: the smallest steps,
    made when first
    looked at. phrases: start indexes of phrases within groups. notices: said when the row
    begins. warning: a
    problem of this row in one sentence, or "". colour: the yarn the row begins with. reading:
    how its words are read. groups_made: how many groups the stitches make, where the pattern
    counts the row in groups, and group: what it calls them.
    """

    kind: RowKind
    label: str
    number: int | None
    is_round: bool
    written: str
    count_before: int | None
    count: int | None
    groups: Sequence[Step]
    phrases: Sequence[int]
    notices: tuple[Notice, ...] = ()
    warning: str = ""
    side: str = ""
    colour: str = ""
    of: str = ""
    assumed: tuple[str, ...] = ()
    reading: Reading = Reading()
    groups_made: int | None = None
    group: str = ""


@dataclass(frozen=True, slots=True)
class PlanPart:
    """A part, or one copy of it. first: index of the plan part this one repeats, or None."""

    name: str
    copy: int
    copies: int
    rows: tuple[PlanRow, ...]
    first: int | None = None


@dataclass(frozen=True, slots=True)
class GatherItem:
    """One thing to gather: yarn, hook or needle, notion; text as it is said."""

    kind: str
    text: str
    written: str


@dataclass(frozen=True, slots=True)
class Plan:
    """Everything to be worked, in order, for one chosen size. fingerprint ties saved progress to
    the text. caution_rows: (part, row) before which each caution is due.
    """

    title: str
    craft: str
    terms: str
    size: str
    sizes: tuple[str, ...]
    parts: tuple[PlanPart, ...]
    gather: tuple[GatherItem, ...]
    cautions: tuple[str, ...]
    notes: tuple[str, ...]
    gauge: tuple[str, ...]
    key: tuple[tuple[str, str], ...]
    warnings: tuple[str, ...]
    fingerprint: str
    caution_rows: tuple[tuple[int, int], ...] = ()
