"""What the ledger sees of a row: spans shifted to its place, its first stitch, what was assumed."""

from __future__ import annotations

from reader.counts.solve import Solved, chain_node
from reader.pattern.tree import Group, Node, Repeat, Shape, Work


class Shifted:
    """Clean text seen from a row's start: spans of the row's tokens come out in the maker's text."""

    __slots__ = ("by", "source")

    def __init__(self, source: object, by: int) -> None:
        self.source, self.by = source, by

    def origin(self, at: int) -> int:
        """The original offset of an offset in the row."""
        return int(self.source.origin(at + self.by))


def first_work(nodes: tuple[Node, ...]) -> Work | None:
    """The first stitches of a row, inside repeats and groups too."""
    for one in nodes:
        if isinstance(one, Work):
            return one
        if isinstance(one, Repeat | Group):
            inner = first_work(one.body)
            if inner is not None:
                return inner
        if isinstance(one, Shape):
            return None
    return None


def assumptions(solved: Solved, nodes: tuple[Node, ...]) -> tuple[str, ...]:
    """What was chosen where the words leave a choice."""
    said = []
    if not solved.choice.again_more:
        said.append('"N times" is read as N in all, since only that closes the row')
    if not solved.choice.pair_each:
        said.append("equal numbers are read as that many in each stitch")
    if solved.choice.cut_ending:
        said.append("the last repeat is cut off to end as the words say")
    chain = chain_node(nodes)
    if solved.chained and (chain is None or chain.counts is None):
        said.append("the turning chain is counted as a stitch")
    return tuple(said)
