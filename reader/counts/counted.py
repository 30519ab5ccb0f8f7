"""Counted: a pattern after stitch accounting, the one shape that plans and reports are made from.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum

from reader.counts.worked import Move
from reader.text.span import Span


class Verdict(Enum):
    """The three kinds of wrong, never mixed, and the quiet ones."""

    FITS = "fits"
    TOTAL_DISAGREES = "total disagrees"
    DOES_NOT_FIT = "does not fit"
    UNCLEAR = "words unclear"
    NO_TOTAL = "no total printed"
    ECHO = "echo"


@dataclass(frozen=True, slots=True)
class Problem:
    """Something to tell the maker: which part and row, the words quoted, both numbers, the
    likeliest mend.
    """

    verdict: Verdict
    message: str
    span: Span
    part: str = ""
    label: str = ""
    printed: int | None = None
    counted: int | None = None
    mend: str = ""


@dataclass(frozen=True, slots=True)
class CountedRow:
    """One row or round as worked: ranges and repeated rows are already opened.

    label: as a maker says it ("Round 5"). number: its number, None for a named row. before/count:
    stitches on hand before and after, None where unknown. stated: the printed total. of: what is
    counted ("sc", "shells"), "" for stitches. moves: working order, repeats solved and opened.
    written: the row's words as in the pattern. assumed: sentences on every reading that was chosen.
    shaping flags live in the moves. groups: how many groups the stitches make, where the pattern
    counts the row in groups (of: "v-sts", "shells"), else None.
    """

    label: str
    number: int | None
    is_round: bool
    written: str
    span: Span
    before: int | None
    count: int | None
    stated: int | None
    verdict: Verdict
    moves: tuple[Move, ...]
    of: str = ""
    spaces: int = 0
    side: str = ""
    colour: str = ""
    stitches_worked: int = 0
    groups: int | None = None
    assumed: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class CountedPart:
    """A part of the piece: its name, how many to make, its rows, and notes that stand between rows.
    """

    name: str
    make: int
    rows: tuple[CountedRow, ...]
    notes: tuple[Remark, ...] = ()


@dataclass(frozen=True, slots=True)
class Remark:
    """Words that are not stitches: a note, finishing or assembly step; before_row is the row index
    it precedes.

    kind: "note", "finishing", "assembly", "materials", "gauge", "measure", "unread".
    """

    kind: str
    text: str
    span: Span
    before_row: int | None = None


@dataclass(frozen=True, slots=True)
class CountedPattern:
    """The whole pattern, counted for one size; problems hold the first faults and mark their
    echoes.
    """

    title: str
    craft: str
    terms: str
    terms_why: str
    sizes: tuple[str, ...]
    size: int
    parts: tuple[CountedPart, ...]
    problems: tuple[Problem, ...]
    materials: tuple[Remark, ...] = ()
    gauge: tuple[Remark, ...] = ()
    notes: tuple[Remark, ...] = ()
    finishing: tuple[Remark, ...] = ()
    key: dict[str, str] = field(default_factory=dict)
    assumed: tuple[str, ...] = ()
