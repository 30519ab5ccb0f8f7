"""A worked row against its printed total and the row below -> the problem to tell, None where there
is none.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from reader.counts.agreeing import SPACES, groups_in, loops_of, values
from reader.counts.counted import Problem, Verdict
from reader.counts.ends import ends_of
from reader.counts.fabric import Below
from reader.counts.lists import knits
from reader.counts.lost_items import item_lost, lost_words
from reader.counts.plainly import plainly_read, told_in_squares, told_throughout
from reader.counts.repeating import fixed
from reader.counts.shaped import LAST, markers_untold
from reader.counts.solved import Solved
from reader.pattern.totals import PLAIN_KINDS
from reader.pattern.tree import (
    Act,
    Deed,
    Edge,
    Group,
    Node,
    Repeat,
    Until,
    Work,
)  # fmt: skip
from reader.pattern.tree import Where as Spot
from reader.text.span import Span


@dataclass(frozen=True, slots=True)
class Where:
    """Where a row stands, to be named in a message."""

    part: str
    label: str
    span: Span
    words: str


def _binds_off_last(nodes: Sequence[Node]) -> bool:
    """Whether the last so many stitches are bound off: then the row has an end to fit to."""
    return any(isinstance(one, Edge) and LAST.search(one.words) for one in nodes)


def _binds_off_amid(nodes: Sequence[Node]) -> bool:
    """Whether stitches are bound off amid a row whose other stitches are told by number."""
    works = [one for one in nodes if not isinstance(one, Act)]
    amid = any(isinstance(one, Edge) and not one.cast_on and one.number for one in works[1:-1])
    return amid and all(isinstance(one, Edge | Work) for one in works)


def _uses_all(solved: Solved, below: Below, nodes: Sequence[Node]) -> bool:
    """Whether a row's words, whose total is the printed one, may use what lies below: none is
    missing, its repeats go into it, and of stitches only cast on the row leaves none.
    """
    if solved.short or solved.tally.uneven:
        return False
    cast_on = len(below.runs) == 1 and below.runs[0].name == "st"
    return not (solved.left > 0 and cast_on and knits(nodes))


def _lost_amid(solved: Solved, nodes: Sequence[Node]) -> bool:
    """Whether a crocheted row does not close, and words made no sense or it stops on its way: loops
    leave room for many a misfit, but not then. Words before all instructions are a heading.
    """
    if solved.fits is not False or knits(nodes):
        return solved.fits is False and solved.left > 0 and item_lost(nodes)
    first = next((at for at, one in enumerate(nodes) if not isinstance(one, Act)), 0)
    return lost_words(nodes[first:]) or stops(solved)


def quoted(words: str) -> str:
    """The words, short enough to be said."""
    words = words.strip()
    return f"“{words if len(words) <= 90 else words[:87] + '…'}”"


def fault_of(
    solved: Solved, stated: int | None, kind: str, below: Below, where: Where,
    nodes: Sequence[Node], doubted: bool,
) -> Problem | None:
    """The first fault of a row; doubted: what lies below is in doubt, a misfit says nothing."""
    tally = solved.tally
    if tally.unread or (stated is None and markers_untold(nodes, tally.below)):
        return None if stated is not None and stated == solved.count else unclear(where, stated)
    if tally.squares_left and stated is None:
        return _squares_left(solved, where)
    agrees = stated is None or stated in values(solved, kind)
    # How a row that closes with its total is read is not asked below.
    closes = agrees and solved.fits is not False
    plain = not (closes or tally.unsure or tally.spaced or below.spaces) and plainly_read(nodes)
    lost = not closes and lost_words(nodes)
    agreed = stated is not None and agrees and _uses_all(solved, below, nodes)
    misfit = solved.fits is False and below.stitches is not None and not agreed
    if misfit and plain and not lost and (agrees or not doubted):
        return None if doubted else _misfit(solved, stated, agrees, below, where, nodes)
    if solved.fits is False and plain and lost and not doubted and not (agreed or knits(nodes)):
        return unclear(where, stated)
    if solved.fits is False and not doubted and not agreed and _binds_off_last(nodes):
        return _not_told_of(solved.left, solved, where)
    if tally.untold > 1 and stated is None and not doubted and _binds_off_amid(nodes):
        return _not_told_of(tally.untold, solved, where)
    chained = tally.below.chained and solved.fits is False and not (agreed or lost)
    if chained and (agrees or solved.short or tally.uneven):
        return _chain_does_not_fit(solved, stated, where)
    if agrees and stated is not None and stated + 1 == solved.count and told_to_count(nodes):
        return _left_out(stated, where)
    untold = lost and not (agreed or doubted) and mostly_untold(solved)
    untold = untold or (misfit and below.spaces > 0 and not lost and told_in_squares(nodes))
    if untold or (stated is None and _lost_amid(solved, nodes)):
        return unclear(where, stated)
    if agrees or solved.count is None or tally.unsure:
        return None
    sure = plain and not (lost or doubted) and (below.stitches is not None or _independent(nodes))
    return _against_total(solved, stated, kind, where, nodes, sure)


def _against_total(
    solved: Solved, stated: int | None, kind: str, where: Where, nodes: Sequence[Node], sure: bool
) -> Problem | None:
    """What is told of a total that is not what the words make; sure: they leave no room."""
    if _countable(kind, solved):
        return _disagrees(solved, stated, where, sure)
    if SPACES.search(kind) and stated is not None:
        return _other_loops(solved, stated, kind, where)
    lost = lost_words(nodes) and solved.fits is not True and kind in PLAIN_KINDS
    return _disagrees(solved, stated, where, False) if lost else None


def _other_loops(solved: Solved, stated: int, kind: str, where: Where) -> Problem | None:
    """What is asked where a total counts the loops, and the words make many more or fewer: one more
    or less may be how the round is closed.
    """
    made = loops_of(solved.tally, kind) or solved.tally.spaces
    if not made or abs(made - stated) < 2:
        return None
    said = (
        f"{where.label}: the printed total is {stated} {kind}; the words seem to make {made}: "
        f"{quoted(where.words)}. Please count them."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label, stated, made)


LEAST_UNTOLD = 4
"""Stitches: fewer that are left may be a slip of the pattern's."""


def mostly_untold(solved: Solved) -> bool:
    """Whether a row's words, as far as they are read, leave most of the row below unworked."""
    below = solved.tally.below.stitches or 0
    return solved.fits is False and solved.left > LEAST_UNTOLD and 2 * solved.left > below


def stops(solved: Solved) -> bool:
    """Whether a row that is repeated over loops comes to a stop far from its end."""
    tally = solved.tally
    below = tally.below
    spaces = tally.walk.spaces if tally.walk.known else 0
    most = 3 * solved.left > (below.stitches or 0) or 3 * spaces > below.spaces > 2
    return tally.sections > 1 and solved.left > LEAST_UNTOLD and most


def _misfit(
    solved: Solved,
    stated: int | None,
    agrees: bool,
    below: Below,
    where: Where,
    nodes: Sequence[Node],
) -> Problem:
    """What is told of a row that is plainly read and does not use the stitches below."""
    if stated is None and turned_before_end(solved, nodes):
        return _left_unworked(solved, where)
    if knits(nodes) and 2 * solved.left > (below.stitches or 0):
        # Most of the row is not spoken of: words are missing, or were not understood.
        return unclear(where, stated)
    found = _does_not_fit(solved, stated, below, where, nodes)
    # Where the printed total is what the words make, some number may be meant otherwise.
    sides = stated is not None and agrees and not knits(nodes)
    return replace(found, verdict=Verdict.UNCLEAR) if sides or _odd_one(solved, nodes) else found


def _odd_one(solved: Solved, nodes: Sequence[Node]) -> bool:
    """Whether eyelets, an over and two together, leave one stitch that can only be knitted: the
    count is sure, and the maker is asked.
    """
    uneven, moves = solved.tally.uneven, solved.tally.moves
    if uneven is None or uneven[1] != 2 or not knits(nodes):
        return False
    made = [move.makes - move.takes for move in moves]
    return sum(made) == 0 and any(made)


def told_to_count(nodes: Sequence[Node]) -> bool:
    """Whether the words of the row say that its first chain counts as a stitch."""
    chain = ends_of(nodes, True).chain
    return chain is not None and chain.counts is True


def _left_out(stated: int, where: Where) -> Problem:
    said = (
        f"{where.label}: the first chain is said to count as a stitch, yet the printed {stated} "
        f"leaves it out; "
        f"with it there are {stated + 1}: {quoted(where.words)}."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label, None, stated + 1, "")


def turned_before_end(solved: Solved, nodes: Sequence[Node]) -> bool:
    """Whether a row without a printed total turns and leaves stitches: a slip, or a shape."""
    turns = any(isinstance(one, Act) and one.deed is Deed.TURN for one in nodes)
    open_ended = any(isinstance(one, Repeat) and not fixed(one) for one in nodes)
    return turns and solved.left > 0 and not solved.short and not open_ended


def _left_unworked(solved: Solved, where: Where) -> Problem:
    left = solved.left
    said = (
        f"{where.label}: {left} {'stitch is' if left == 1 else 'stitches are'} left at the end, "
        f"and the words do not say so: {quoted(where.words)}. "
        f"Are they to stay unworked?"
    )
    return Problem(
        Verdict.UNCLEAR, said, where.span, where.part, where.label, None, solved.count, ""
    )


def _chain_does_not_fit(solved: Solved, stated: int | None, where: Where) -> Problem | None:
    """A question, where the first row's repeats leave chains, or find too few."""
    if solved.tally.uneven:
        room, body = solved.tally.uneven
        said = f"one repeat uses {body} chains, and {room} do not divide by {body}"
    elif solved.short and not solved.tally.below.runs:
        # A chain of a length, of which nothing tells how many chains it has.
        return None
    elif solved.short:
        said = f"the words use {solved.short} more chains than there are"
    else:
        return None
    message = (
        f"{where.label}: the foundation chain does not fit: {said}: {quoted(where.words)}. Please "
        f"check the number of chains."
    )
    return Problem(
        Verdict.UNCLEAR, message, where.span, where.part, where.label, stated, solved.count
    )


def _squares_left(solved: Solved, where: Where) -> Problem:
    number = solved.tally.squares_left
    squares = "1 square" if number == 1 else f"{number} squares"
    said = (
        f"{where.label}: the words pass over {squares} of the row below before the last stitch: "
        f"{quoted(where.words)}. Please check their numbers."
    )
    return Problem(
        Verdict.UNCLEAR, said, where.span, where.part, where.label, None, solved.count, ""
    )


def _not_told_of(number: int, solved: Solved, where: Where) -> Problem:
    """A question: a row that binds off leaves stitches that no word tells of."""
    left = "1 stitch is" if number == 1 else f"{number} stitches are"
    said = (
        f"{where.label}: {left} left in the row below that no word tells of: "
        f"{quoted(where.words)}. Please check its numbers."
        if number > 0
        else f"{where.label}: the words use more stitches than there are: {quoted(where.words)}. "
        "Please check its numbers."
    )
    return Problem(
        Verdict.UNCLEAR, said, where.span, where.part, where.label, None, solved.count, ""
    )


def other_sense(where: Where, more: bool) -> Problem:
    """A question: the times of a repeat are meant otherwise here than in the rows before."""
    here, there = ("so many more", "so many in all") if more else ("so many in all", "so many more")
    said = (
        f"{where.label}: its repeats use all stitches only if their number means {here}, but "
        f"before it meant {there}: {quoted(where.words)}. Please check the number."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label)


def star_put_back(nodes: Sequence[Node], where: Where) -> Problem | None:
    """A question: a second "repeat from *" of the row goes back to no star of its own, and is read
    as from where the words of the first one come again. None where no star is missing.
    """
    lists: list[Sequence[Node]] = [nodes]
    while lists:
        repeats = [one for one in lists.pop() if isinstance(one, Repeat)]
        lists += [one.body for one in repeats]
        if any(one.lost for one in repeats[1:]):
            said = (
                f"{where.label}: a star seems to be missing before the words that are repeated a "
                f"second time: {quoted(where.words)}. They are read as the first ones."
            )
            return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label)
    return None


def unclear(where: Where, stated: int | None) -> Problem:
    """A question: the row's words could not be read for certain."""
    said = f"some words could not be read for certain: {quoted(where.words)}"
    message = f"{where.label}: {said}. Please check them."
    return Problem(Verdict.UNCLEAR, message, where.span, where.part, where.label, stated)


def _disagrees(solved: Solved, stated: int | None, where: Where, sure: bool) -> Problem:
    made = solved.count
    if not sure:
        said = (
            f"{where.label}: the printed total is {stated}; the words seem to make {made}, but "
            f"they leave "
            f"room: {quoted(where.words)}. Please count this one."
        )
        return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label, stated, made)
    said = f"the printed total is {stated}, but the words make {made}"
    message = f"{where.label}: {said}: {quoted(where.words)}."
    mend = f"{made} may be meant." if solved.fits else ""
    said = f"{message} {mend}".strip()
    return Problem(
        Verdict.TOTAL_DISAGREES, said, where.span, where.part, where.label, stated, made, mend
    )


def _countable(kind: str, solved: Solved) -> bool:
    if not kind or kind in ("sts", "stitches", "st", "stitch"):
        return True
    if groups_in(solved.tally, kind):
        return True
    kinds = solved.tally.kinds
    single = kind.rstrip("s").replace(" ", "")
    return single in {name.replace(" ", "") for name in kinds} and len(kinds) == 1


def _independent(nodes: Sequence[Node]) -> bool:
    """Whether the row's count does not hang on the row below."""
    return all(
        not (
            isinstance(one, Work | Group)
            and one.place.where in (Spot.EACH, Spot.REST, Spot.TO_LAST)
        )
        and not (isinstance(one, Repeat) and one.until in (Until.OPEN, Until.TO_LAST))
        for one in nodes
    )


def _does_not_fit(
    solved: Solved, stated: int | None, below: Below, where: Where, nodes: Sequence[Node]
) -> Problem:
    have = below.stitches or 0
    tally = solved.tally
    if tally.uneven:
        room, body = tally.uneven
        said = f"one repeat uses {body} stitches, and {room} do not divide by {body}"
    elif solved.short:
        said = f"the words use {have + solved.short} stitches, but there are only {have}"
    else:
        said = f"the words use {have - solved.left} of {have} stitches"
    mend, made = _mend(solved, have, nodes)
    fault = f"{where.label}: the stitches do not fit the row below: {said}"
    message = f"{fault}. {quoted(where.words)}. {mend}"
    return Problem(
        Verdict.DOES_NOT_FIT, message.strip(), where.span, where.part, where.label, stated, made,
        mend
    )  # fmt: skip


def _mend(solved: Solved, have: int, nodes: Sequence[Node]) -> tuple[str, int | None]:
    """The nearest repeat number that would close the row, and the stitches that it makes."""
    counted = [one for one in nodes if isinstance(one, Repeat) and fixed(one)]
    if solved.short and not counted and told_throughout(nodes) and solved.count is not None:
        # One of its plain numbers is wrong: what it gains or loses is likelier right.
        return "", solved.count - solved.short
    if len(counted) != 1 or not solved.left or solved.short:
        return "", solved.count
    first = [move for move in solved.tally.moves if move.passes and move.passes[0].number == 1]
    body = sum(move.takes for move in first)
    if not body or solved.left % body:
        return "", solved.count
    more = solved.left // body
    made = sum(move.makes for move in first) * more + (solved.count or 0)
    return f"{more} more repeat{'s' if more > 1 else ''} would use all {have}.", made
