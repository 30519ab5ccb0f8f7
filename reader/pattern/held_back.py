"""Clusters told with their hands first: "holding back the last loop of each dc on hook, make 3 dc
in next sp", and clusters named by what they are made of: "3-tr cluster".
"""

from __future__ import annotations

from reader.pattern.clusters import clustered
from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.stitchwork import find_work
from reader.pattern.tree import Act, Deed, Node, Work
from reader.terms.stitches import Craft

BEGIN = frozenset(["holding", "keeping", "leaving", "retaining"])
LOOPS = ("loop", "loops", "lp", "lps")
FARTHEST = 8
"""Words before the loops that are kept: "holding back on hook the last loop"."""
BEFORE_STITCH = ("each", "every", "of")
AMONG = frozenset(
    ["of", "each", "every", "the", "on", "hook", "needle", ",", "all", "st", "sts", "your", "these"]
)


def find_held_back(cur: Cursor, made: list[Node]) -> Node | None:
    """The cluster that is told here, taken; None (nothing taken) where none is."""
    start = cur.at
    if cur.book.craft is not Craft.CROCHET or cur.low() not in BEGIN:
        return None
    last = next((n for n in range(1, FARTHEST) if cur.low(n) == "last"), 0)
    loops = next((n for n in range(last, last + 3) if last and cur.low(n) in LOOPS), 0)
    if not loops:
        return None
    cur.at += loops + 1
    told = Act(cur.span(start), cur.said(start), Deed.NOTE)
    behind = cur.at
    _go_on(cur)
    node = find_work(cur, made) if not cur.done() and cur.low() not in STOPS else None
    if not isinstance(node, Work):
        return _of_those_before(cur, start, behind, made)
    made.append(node)
    done = clustered(made, told)
    node = made.pop()
    if not done:
        cur.at = start
        return None
    return node


def _of_those_before(cur: Cursor, start: int, at: int, made: list[Node]) -> Node | None:
    """The same words behind the stitches that they are of, "each dc on hook" taken with them."""
    if not made or not isinstance(made[-1], Work):
        cur.at = start
        return None
    cur.at = at
    while cur.low() != ",":
        before = cur.at
        _go_on(cur, 1)
        if cur.at == before:
            break
    return Act(cur.span(start), cur.said(start), Deed.NOTE)


def _go_on(cur: Cursor, steps: int = FARTHEST) -> None:
    """Takes "of each tr on hook," before the stitches themselves, so many words at most."""
    for _ in range(steps):
        found = cur.stitch()
        if cur.low(-1) in BEFORE_STITCH and found is not None:
            cur.at += found.length
        elif cur.low() in AMONG:
            cur.at += 1
        else:
            return
