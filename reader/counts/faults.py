"""A worked row against its printed total and the row below -> the problem to tell, None where there is none."""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.counted import Problem, Verdict
from reader.counts.solve import Solved, values
from reader.counts.tally import Below
from reader.pattern.tree import Group, Node, Repeat, Shape, Until, Where, Work
from reader.text.span import Span


def plainly_read(nodes: Sequence[Node]) -> bool:
    """Only stitches into stitches: the rows whose arithmetic leaves no doubt."""
    for one in nodes:
        if isinstance(one, Work):
            if one.place.where not in (
                Where.NEXT,
                Where.PLAIN,
                Where.EACH,
                Where.REST,
                Where.TO_LAST,
                Where.FIRST,
                Where.LAST,
            ) or one.place.noun in ("sp", "tch", "ch", "group"):
                return False
        elif isinstance(one, Repeat):
            if not plainly_read(one.body) or (one.ending and not plainly_read(one.ending)):
                return False
        elif isinstance(one, Group | Shape):
            return False
    return any(isinstance(one, Work | Repeat) for one in nodes)


def quoted(words: str) -> str:
    """The words, short enough to be said."""
    words = words.strip()
    return f"“{words if len(words) <= 90 else words[:87] + '…'}”"


def fault_of(
    solved: Solved,
    stated: int | None,
    kind: str,
    below: Below,
    part: str,
    label: str,
    span: Span,
    words: str,
    nodes: Sequence[Node],
) -> Problem | None:
    """The first fault of a row."""
    tally = solved.tally
    if tally.unread:
        if stated is None:
            return Problem(
                Verdict.UNCLEAR,
                f"{label}: some words could not be read for certain: {quoted(words)}. Please check them.",
                span,
                part,
                label,
            )
        return None
    agrees = stated is None or stated in values(solved, kind)
    sure = plainly_read(nodes) and not tally.unsure and not tally.spaced and not below.spaces
    if (
        solved.fits is False
        and sure
        and below.stitches is not None
        and not (stated is not None and agrees and not (tally.short or tally.uneven))
    ):
        return _does_not_fit(solved, stated, below, part, label, span, words, nodes)
    if (
        stated is not None
        and not agrees
        and solved.count is not None
        and not tally.unsure
        and _countable(kind, solved)
    ):
        if solved.fits is not True and not _independent(nodes) and below.stitches is None:
            return None
        message = f"{label}: the printed total is {stated}, but the words make {solved.count}: {quoted(words)}."
        mend = f"{solved.count} may be meant." if solved.fits else ""
        return Problem(
            Verdict.TOTAL_DISAGREES,
            f"{message} {mend}".strip(),
            span,
            part,
            label,
            stated,
            solved.count,
            mend,
        )
    return None


def _countable(kind: str, solved: Solved) -> bool:
    if not kind or kind in ("sts", "stitches", "st", "stitch"):
        return True
    single = kind.rstrip("s").replace(" ", "")
    return single in {name.replace(" ", "") for name in solved.kinds} and len(solved.kinds) == 1


def _independent(nodes: Sequence[Node]) -> bool:
    """Whether the row's count does not hang on the row below."""
    return all(
        not (
            isinstance(one, Work | Group)
            and one.place.where in (Where.EACH, Where.REST, Where.TO_LAST)
        )
        and not (isinstance(one, Repeat) and one.until in (Until.OPEN, Until.TO_LAST))
        for one in nodes
    )


def _does_not_fit(
    solved: Solved,
    stated: int | None,
    below: Below,
    part: str,
    label: str,
    span: Span,
    words: str,
    nodes: Sequence[Node],
) -> Problem:
    have = below.stitches or 0
    tally = solved.tally
    if tally.uneven:
        room, body = tally.uneven
        said = f"one repeat uses {body} stitches, and {room} do not divide by {body}"
    elif tally.short:
        said = f"the words use {have + tally.short} stitches, but there are only {have}"
    else:
        said = f"the words use {have - solved.left} of {have} stitches"
    mend = _mend(solved, have, nodes, stated)
    message = (
        f"{label}: the stitches do not fit the row below: {said}. {quoted(words)}. {mend}".strip()
    )
    return Problem(Verdict.DOES_NOT_FIT, message, span, part, label, stated, solved.count, mend)


def _mend(solved: Solved, have: int, nodes: Sequence[Node], stated: int | None) -> str:
    """The nearest repeat number that would close the row."""
    fixed = [
        one
        for one in nodes
        if isinstance(one, Repeat) and one.until in (Until.TIMES, Until.MORE, Until.AGAIN)
    ]
    if len(fixed) == 1 and solved.left and not solved.short:
        one = fixed[0]
        moves = [move for move in solved.tally.moves if move.passes and move.passes[0].number == 1]
        body = sum(move.takes for move in moves)
        if body and solved.left % body == 0:
            return f"{solved.left // body} more repeat{'s' if solved.left // body > 1 else ''} would use all {have}."
        _ = one
    return ""
