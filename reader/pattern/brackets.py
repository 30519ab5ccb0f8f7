"""A bracket of instructions -> a repeat, a group in one place or a remark, by what is around it."""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.places import find_place
from reader.pattern.repeats import count_after, find_repeat
from reader.pattern.tokens import Token
from reader.pattern.tree import ONE, Act, Deed, Group, Node, Num, Repeat, Until, Where, Work
from reader.terms.stitches import Kind

OPEN_CLOSE = {"(": ")", "[": "]", "{": "}"}


def names(cur: Cursor, made: list[Node], inner: list[Token]) -> bool:
    """Whether a bracket explains the stitch before it, or only names it: "picot (ch 3, sl st
    ...)".
    """
    last = made[-1] if made else None
    if not isinstance(last, Work) or cur.low() in ("in", "into", "x", "*", "times", "twice"):
        return False
    if cur.kind() in ("num", "times") and cur.low(1) in ("times", "x", "more"):
        return False
    form = " ".join(token.low for token in inner)
    if form in cur.book.known and not any(token.kind == "num" for token in inner):
        return True
    special = last.stitch.kind in (Kind.EXTRA, Kind.GROUP, Kind.CLUSTER)
    return special and last.place.where is Where.PLAIN and len(inner) > 3



def bracketed(
    cur: Cursor, made: list[Node], start: int, body: tuple[Node, ...], before: Num | None
) -> Node | None:
    """The node a bracket of instructions makes, by what follows."""
    times = before or count_after(cur)
    if times is not None:
        return Repeat(cur.span(start), cur.said(start), body, Until.TIMES, times)
    found = find_repeat(cur, bare=True) if not _to_star(cur) else None
    if found is not None:
        return Repeat(cur.span(start), cur.said(start), body, found.until, found.number)
    works = [one for one in body if not isinstance(one, Act)]
    if not works:
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    place = (
        find_place(cur)
        if cur.low()
        in ("in", "into", "all", "over", "under", "around", "across", "to", "until")
        else None
    )
    if place is not None and place.where in (Where.REST, Where.TO_LAST):
        until = Until.OPEN if place.where is Where.REST else Until.TO_LAST
        return Repeat(cur.span(start), cur.said(start), body, until, place.number)
    if place is not None:
        return Group(cur.span(start), cur.said(start), body, place)
    if len(works) == 1 and isinstance(works[0], Work) and works[0].number is None and made:
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    return Repeat(cur.span(start), cur.said(start), body, Until.TIMES, ONE)


def _to_star(cur: Cursor) -> bool:
    """Whether the repeat behind a bracket goes back to a star, and so is not the bracket's own."""
    return any(cur.kind(ahead) == "stars" for ahead in range(1, 5)) and any(
        cur.low(ahead) in ("rep", "repeat", "repeating") for ahead in range(2)
    )


def closing(cur: Cursor) -> int:
    """The index of the bracket that closes the one here, -1 when none does."""
    depth = 0
    for index in range(cur.at, len(cur.tokens)):
        low = cur.tokens[index].low
        if low in OPEN_CLOSE:
            depth += 1
        elif low in OPEN_CLOSE.values():
            depth -= 1
            if depth == 0:
                return index
    return -1
