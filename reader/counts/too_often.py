"""A repeat told more often than any row has room for: a misprint, which is asked about."""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.counted import Problem, Verdict
from reader.counts.faults import Where, quoted
from reader.counts.repeating import fixed
from reader.pattern.tree import Group, Node, Repeat

MOST = 1_500
"""Passes of one repeat: the longest round of a shawl worked on two needles has not so many."""


def too_often(node: Repeat, size: int) -> bool:
    """Whether the words ask for more passes than any row has."""
    return fixed(node) and node.number.at(size) > MOST


def most_often(nodes: Sequence[Node], size: int) -> int:
    """How often such a repeat in a row is told, 0 where it has none."""
    most = 0
    for one in nodes:
        if isinstance(one, Repeat | Group):
            most = max(most, most_often(one.body, size))
        if isinstance(one, Repeat):
            most = max(most, most_often(one.ending, size))
            most = max(most, node_times(one, size))
    return most


def node_times(node: Repeat, size: int) -> int:
    """How often a repeat is told that is told too often; 0 for others."""
    return node.number.at(size) if too_often(node, size) else 0


def ask_of_times(times: int, where: Where, stated: int | None) -> Problem:
    """A question: so many times are a misprint."""
    said = (
        f"{where.label}: {times} times are more than any row has room for: {quoted(where.words)}. "
        f"Please check the number."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label, stated)


def ask_of_growth(where: Where, stated: int | None) -> Problem:
    """A question: the numbers lead to more than any hand works, and are followed no further."""
    said = (
        f"{where.label}: not counted, since the numbers grow too large to be followed: "
        f"{quoted(where.words)}. Please check the numbers of this row and of those before it."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label, stated)
