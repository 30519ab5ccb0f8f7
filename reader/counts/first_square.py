"""The space or loop that a row begins with: of the chains passed over at the start of a foundation,
"dc in 8th ch from hook", and of those that a net is turned with, "ch 5, turn, sc in first loop".
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.edge_loops import goes_on_netting
from reader.counts.ends import first_work
from reader.counts.fabric import Below
from reader.counts.turning import makes_loop
from reader.pattern.tree import Chain, Node, Repeat, Where, Work

FROM_HOOK = (Where.CHAIN, Where.NEXT)
LOOP = 3
"""Chains of a loop at least."""


def loop_begun(
    rest: Sequence[Node], height: int, passed: bool, below: Below | None
) -> int:
    """The chains of the loop that a row begins with, of so many chains or of those passed over in
    its foundation; 0 where it begins with none. below: None where that is not known.
    """
    work = first_work(rest)
    if below is not None and makes_loop(work, height, below):
        return height
    if below is not None and goes_on_netting(work, rest, height):
        return height
    return first_loop(work, rest) if passed else 0


def first_loop(work: Work | None, rest: Sequence[Node]) -> int:
    """How many chains the loop has that the row begins with, "sc in 8th ch from hook, * ch 3, miss
    3, sc in next": those passed over are a loop and what lies below it; 0 where there is none.
    """
    if work is None or work.place.where not in FROM_HOOK or work.stitch.height > 1:
        return 0
    again = next((one for one in rest if isinstance(one, Repeat)), None)
    body = again.body if again is not None else ()
    chains = [one.number.values[0] for one in body if isinstance(one, Chain)]
    if len(chains) != 1 or chains[0] < LOOP or not isinstance(body[0], Chain):
        return 0
    return chains[0] if chains[0] + 2 <= work.place.nth - 1 <= 2 * chains[0] + 2 else 0


def first_square(work: Work, rest: Sequence[Node], tall: int) -> int:
    """How many chains the first space has, 0 where there is none; tall: chains that stand for the
    stitch. The spaces that follow tell where the number passed over is one more or less.
    """
    passed = work.place.nth - 1 - tall
    inner = (one for node in rest for one in (node.body if isinstance(node, Repeat) else (node,)))
    following = next((one.number.values[0] for one in inner if isinstance(one, Chain)), 0)
    if passed > 1 and 0 < following <= passed and abs(passed - 2 * following) <= 1:
        return following
    return passed // 2 if passed > 2 and passed % 2 == 0 else 0
