"""What was assumed where a row's words leave a choice."""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.ends import ends_of
from reader.counts.readings import list_to_end
from reader.counts.solved import Solved
from reader.pattern.tree import Group, Node, Repeat, Work
from reader.terms.stitches import PRACTICE, Kind, Stitch


def _taken_for(nodes: Sequence[Node]) -> Stitch | None:
    """The group that stands for what the pattern does not tell: its size is common practice."""
    for one in nodes:
        inner = one.body if isinstance(one, Repeat | Group) else ()
        found = one.stitch if isinstance(one, Work) else _taken_for(inner)
        if found is not None and found.source == PRACTICE and found.kind is Kind.GROUP:
            return found
    return None


def assumptions(solved: Solved, nodes: tuple[Node, ...]) -> tuple[str, ...]:
    """Sentences on every reading that was chosen."""
    choice = solved.choice
    said = []
    if not choice.again_more:
        said.append('"N times" is read as N in all, since only that closes the row')
    if not choice.pair_each:
        said.append("equal numbers are read as that many in each stitch")
    if choice.cut_ending:
        said.append("the last repeat is cut off to end as the words say")
    if not choice.bundle:
        said.append("only the last stitch of the list goes into the place behind it")
    if choice.chains_below:
        said.append("each chain of the row below is worked into as a stitch")
    if choice.any_name:
        said.append("a stitch that is named is taken as whichever comes next")
    if choice.over_again:
        said.append("the list is repeated to the end of the row, since only that closes it")
    if choice.to_end and list_to_end(nodes):
        said.append("the whole list is repeated to the end of the row")
    taken = _taken_for(nodes)
    if taken is not None:
        said.append(
            f"a {taken.spoken} is taken as {taken.makes} stitches in one place, since the pattern "
            "does not say"
        )
    if solved.chained:
        chain = ends_of(nodes, solved.tally.below.stitches is not None).chain
        if chain is None or chain.counts is None:
            said.append("the turning chain is counted as a stitch")
    return tuple(said)
