"""Passes of a repeat that are alike, of which only a few are worked and the others counted."""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.tally import MOST_MADE, Need, Tally
from reader.counts.walk import Walk
from reader.pattern.tree import Act, Chain, Group, Node, Repeat, Skip, Until, Where, Work

STEADY = frozenset((Where.NEXT, Where.SAME, Where.PLAIN, Where.ONE_PLACE))
"""Places found from where the hook stands, however much of the row lies ahead."""
TOLD = (
    "runs", "moves", "uneven", "elastic", "untold", "unsure", "unread", "sections", "spaced",
    "grouped", "shaped", "branched", "netted", "squares_left", "picoted", "stops_early", "closed",
    "fastened",
)  # fmt: skip


def is_steady(body: Sequence[Node]) -> bool:
    """Whether what a pass does hangs only on what lies right before the hook."""
    return all(_steady(one) for one in body)


def _steady(node: Node) -> bool:
    if isinstance(node, Work | Skip):
        return node.place.where in STEADY
    if isinstance(node, Group):
        inner = (Where.RING, Where.SAME, Where.PLAIN, Where.NEXT)
        return node.place.where in STEADY and all(
            isinstance(one, Chain | Act) or (isinstance(one, Work) and one.place.where in inner)
            for one in node.body
        )
    if isinstance(node, Repeat):
        return node.until is Until.TIMES and not node.ending and is_steady(node.body)
    return isinstance(node, Chain | Act)


class Stride:
    """The passes worked so far, as far as they tell whether the next ones are alike."""

    def __init__(self, body: Sequence[Node], keep: Need) -> None:
        self.steady, self.keep = is_steady(body), keep
        self.nested = any(isinstance(one, Group | Repeat) for one in body)
        self.walks: list[Walk] = []
        self.not_before = 0

    def passes(self, before: Walk, passes: Sequence[Tally], room: int, made: int) -> int:
        """How many passes more are like the last two of those worked; before: where the last
        began. room: moves that may still be opened. made: runs that the passes left.
        """
        self.walks = [*self.walks[-1:], before]
        if not self.steady or len(passes) < 3 or len(passes) < self.not_before:
            return 0
        here, last = passes[-1].walk, passes[-1]
        many = here.strides_ahead(before, self.walks[0])
        if many <= 0:
            return 0
        self.not_before = len(passes) + many
        many = min(many, here.strides_left(before, self.keep.stitches, self.keep.spaces))
        many = min(many, (MOST_MADE - made) // max(1, len(last.runs)))
        if self.nested and room + len(last.moves) > 0:
            # What is nested opens its moves only as far as there is room.
            many = min(many, room // max(1, len(last.moves)) - 1)
        alike = many > 0 and all(getattr(last, one) == getattr(passes[-2], one) for one in TOLD)
        return many if alike else 0
