"""Parts of other rows: "then work from * of 5th row", "complete row same as 2nd row"."""

from __future__ import annotations

from collections.abc import Callable

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.repeats import ends_with
from reader.pattern.tree import Node, Quoted

AGAIN = ("work", "repeat", "rep", "continue", "proceed", "finish", "complete", "end", "work as")
FROM = ("from", "as from", "same as from", "in same manner from", "between", "between the")
COMPLETE = ("complete", "finish", "continue", "work", "end")
THE_ROW = (
    "row", "the row", "round", "the round", "rnd", "rest of row", "the rest of the row",
    "remainder of row", "remaining sts", "across", "around", "rest", "the rest", "rest of round",
    "to end", "to correspond",
)  # fmt: skip
SAME = ("same as", "exactly as", "as", "as for", "as in", "same as for", "same as in", "like")
ROWS = ("row", "rnd", "round")
BEHIND = frozenset(
    ["working", "work", "with", "but", "having", "ending", "until", "and", "then", "join", "turn"]
)
"""Words that belong no more to a part's name."""


def find_quoted(
    cur: Cursor, read_ending: Callable[[Cursor], tuple[Node, ...]]
) -> Quoted | None:
    """The part of another row that is quoted here, taken, with the ending behind it; None (nothing
    taken) where none is.
    """
    start = cur.at
    cur.accept("then", "and then", "and")
    for rest, reading in ((False, _from_star), (True, _rest_of)):
        at = cur.at
        number = reading(cur)
        if number is not None:
            ending = read_ending(cur) if ends_with(cur) else ()
            return Quoted(cur.span(start), cur.said(start), number, rest, ending)
        cur.at = at
    cur.at = start
    return None


def _from_star(cur: Cursor) -> int | None:
    if not cur.accept(*AGAIN) or not cur.accept(*FROM):
        return None
    cur.accept("the", "1st", "first", "last", "the 1st", "the first", "the last")
    if cur.kind() != "stars":
        return None
    cur.at += 1
    if not cur.accept("' s", "'s", "s", "stars") and cur.accept("to", "and"):
        cur.at += cur.kind() == "stars"
    if cur.kind() == "stars" or not cur.accept("of", "in", "on"):
        return None
    return _row(cur)


def _rest_of(cur: Cursor) -> int | None:
    if not cur.accept(*COMPLETE):
        return None
    cur.accept(*THE_ROW)
    if not cur.accept(*SAME):
        return None
    number = _row(cur)
    if number is not None and cur.accept("of"):
        _part(cur)
    return number


def _part(cur: Cursor) -> None:
    """Takes the name of the part that a row is of: "1st row of the back"."""
    cur.accept("the")
    for _ in range(3):
        if cur.kind() != "word" or cur.low() in BEHIND or cur.low() in STOPS:
            return
        cur.at += 1


def _row(cur: Cursor) -> int | None:
    """The "5th row", "row 5" or "last row" that stands here, taken."""
    cur.accept("the")
    if cur.kind() == "ord" and cur.low(1) in ROWS:
        number = cur.peek().value
        cur.at += 2
        return number
    if cur.low() in ROWS and cur.kind(1) == "num":
        number = cur.peek(1).value
        cur.at += 2
        return number
    if cur.low() in ("last", "previous", "preceding") and cur.low(1) in ROWS:
        cur.at += 2
        return 0
    return None
