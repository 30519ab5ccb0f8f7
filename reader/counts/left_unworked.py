"""What a row leaves of the row below, against what it says of that -> a question."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from reader.counts.counted import Problem, Verdict
from reader.counts.fabric import Below
from reader.counts.faults import Where, quoted
from reader.counts.lists import knits
from reader.counts.lost_items import lost_words
from reader.counts.plainly import plainly_read
from reader.counts.solved import Solved
from reader.pattern.tree import ONE, Act, Deed, LeaveRest, Node, Repeat, Skip, Unread, Work
from reader.pattern.tree import Where as Spot
from reader.terms.stitches import Kind

SO_MANY = re.compile(
    r"\b(?:last|final|rem(?:aining)?|other|rest of(?: the)?)\s+(?P<n>\d+)(?![\d,;/(\[ ]*[\d(\[])"
    r"|^(?:leave|leaving)\s+(?:the\s+)?(?P<m>\d+)\s+(?:sts?|stitches|[shd]{1,2}c|h?tr)\b",
    re.IGNORECASE,
)


def left_otherwise(
    solved: Solved, below: Below, where: Where, nodes: Sequence[Node]
) -> Problem | None:
    """What is asked where a crocheted row says "leave the last 4 sts unworked" and leaves another
    number, or has no way to leave any and does, though its total is the printed one; None
    where more than stitches lies below or is told.
    """
    told = next((one for one in nodes if isinstance(one, LeaveRest)), None)
    if told is None and solved.fits is not False:
        return None
    rest, tally = [one for one in nodes if one is not told], solved.tally
    unsure = tally.unsure or tally.unread or tally.spaced or tally.uneven or lost_words(nodes)
    plain = not (unsure or below.spaces or knits(nodes)) and plainly_read(rest)
    if not plain or below.stitches is None:
        return None
    left = below.stitches - tally.walk.takes
    if told is None:
        asked = left > 0 and _ends_there(nodes, where)
        return _question(left, below.stitches, "", where, solved) if asked else None
    found = SO_MANY.search(told.words)
    if found is None or left == int((found["n"] or found["m"])[:4]):
        return None
    said = f", and say {found['n'] or found['m']}"
    return _question(max(0, left), below.stitches, said, where, solved)


ROUND = re.compile(r"\W*(?:next |last |following )?(?:rounds?|rnds?|rds?)\b", re.IGNORECASE)


def _ends_there(nodes: Sequence[Node], where: Where) -> bool:
    """Whether a row has no way to leave stitches: it skips by number, goes all round, or shapes and
    does not turn back at its end.
    """
    told = list(_flat(nodes))
    works = [one for one in told if isinstance(one, Work)]
    if any(isinstance(one, Skip) for one in told):
        return True
    if ROUND.match(where.label):
        return any(one.stitch.kind is not Kind.SLIP for one in works)
    last = told[-1] if told else None
    turns = isinstance(last, Act) and last.deed is Deed.TURN
    return not turns and any(_shapes(one) for one in works)


def _shapes(one: Work) -> bool:
    """Whether stitches are made of more or fewer than they are: "dec", "2 sc in next st"."""
    several = one.number is not None and one.number.values[0] > 1
    in_one = one.place.where is Spot.NEXT and not one.place.each and one.place.number == ONE
    return one.stitch.takes != one.stitch.makes or (several and in_one)


def _question(left: int, below: int, said: str, where: Where, solved: Solved) -> Problem:
    message = (
        f"{where.label}: the words leave {left} of {below} stitches{said}: "
        f"{quoted(where.words)}. Please check its numbers."
    )
    return Problem(
        Verdict.UNCLEAR, message, where.span, where.part, where.label, None, solved.count, ""
    )


def _flat(nodes: Sequence[Node]) -> Iterator[Node]:
    for one in nodes:
        yield from _flat(one.body) if isinstance(one, Repeat) else (one,)


LEAVES = re.compile(
    r"\b(?:hold\w*|leav\w*|left|wait\w*|needles?|pins?|turn\w*|off|tog\w*|drop\w*|thread)\b"
)


def works_the_rest(nodes: Sequence[Node], unread: bool) -> bool:
    """Whether the words of a knitted row that were not read, and are asked about, work the stitches
    that no others do: none of them says that stitches are left or lost.
    """
    if not unread or not knits(nodes):
        return False
    told = [one.words.lower() for one in nodes if isinstance(one, Unread)]
    return bool(told) and not any(LEAVES.search(words) for words in told)
