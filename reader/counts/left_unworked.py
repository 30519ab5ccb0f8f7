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
from reader.pattern.tree import LeaveRest, Node, Repeat, Skip, Unread

SO_MANY = re.compile(
    r"\b(?:last|final|rem(?:aining)?|other|rest of(?: the)?)\s+(?P<n>\d+)(?![\d,;/(\[ ]*[\d(\[])"
    r"|^(?:leave|leaving)\s+(?:the\s+)?(?P<m>\d+)\s+(?:sts?|stitches|[shd]{1,2}c|h?tr)\b",
    re.IGNORECASE,
)


def left_otherwise(
    solved: Solved, below: Below, where: Where, nodes: Sequence[Node]
) -> Problem | None:
    """What is asked where a crocheted row says "leave the last 4 sts unworked" and leaves another
    number, or skips by number and leaves some unsaid, though its total is the printed one; None
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
        skips = any(isinstance(one, Skip) for one in _flat(nodes))
        asked = skips and left > 0
        return _question(left, below.stitches, "", where, solved) if asked else None
    found = SO_MANY.search(told.words)
    if found is None or left == int((found["n"] or found["m"])[:4]):
        return None
    said = f", and say {found['n'] or found['m']}"
    return _question(max(0, left), below.stitches, said, where, solved)


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
