"""Worked: what one instruction does to the stitch count each time it is worked."""

from __future__ import annotations

from enum import Enum
from typing import NamedTuple

from reader.text.span import Span


class MoveKind(Enum):
    """What the hands do in one move; only WORK and CHAIN move the count."""

    WORK = "work"
    CHAIN = "chain"
    SKIP = "skip"
    SLIP = "slip"
    JOIN = "join"
    TURN = "turn"
    START = "start"
    COLOUR = "colour"
    MARKER = "marker"
    FINISH = "finish"
    NOTE = "note"
    UNREAD = "unread"


class Pass(NamedTuple):
    """One pass of a repeat: which pass, of how many (None while unknown), and where the repeat
    stands.
    """

    number: int
    of: int | None
    repeat: Span


class Move(NamedTuple):
    """One instruction worked once, in working order.

    takes: stitches used from the row below. makes: stitches left for the row above. spaces: chain
    spaces left. stitch: US name in the stitch table, or "" where none. words: the instruction as
    the pattern writes it. said: the instruction in spoken words, "" to let the wording room derive
    it. passes: the repeats it stands in, outermost first. times: how many stitches in a run this
    move stands for ("sc in next 5" is one move of 5).
    """

    kind: MoveKind
    words: str
    span: Span
    takes: int = 0
    makes: int = 0
    spaces: int = 0
    stitch: str = ""
    times: int = 1
    into: str = ""
    said: str = ""
    passes: tuple[Pass, ...] = ()
