"""Rows told by parts of others: "work from * of 5th row", "complete row same as 2nd row", "repeat
3rd row but end with ..." -> their instructions.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.counts.solved import Solved
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    Group,
    Node,
    Quoted,
    Repeat,
    Skip,
    Unread,
    Until,
    Where,
    Work,
)

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def with_parts(ledger: Ledger, entry: Entry) -> Entry:
    """The row with what it quotes in place; what is not found stays as words not read."""
    at = next((n for n, one in enumerate(entry.nodes) if isinstance(one, Quoted)), None)
    if at is None:
        return entry
    quoted = entry.nodes[at]
    assert isinstance(quoted, Quoted)
    source = ledger.entry_of(quoted.number, quoted.words) if quoted.number else None
    if not quoted.number and ledger.entries:
        source = ledger.entries[-1]
    before, behind = entry.nodes[:at], entry.nodes[at + 1 :]
    nodes = source.nodes if source is not None else ()
    choices = _rests(quoted, nodes, before) if quoted.rest else _starred(quoted, nodes)
    if any(_turns(one) for one in behind):
        choices = (without_turn(choice) for choice in choices)
    lists = [(*before, *choice, *behind) for choice in choices]
    lost = (*before, Unread(quoted.span, quoted.words), *behind)
    fitting = first_that_fits(ledger, entry, lists)
    if fitting is None and lists and not quoted.rest:
        fitting = lists[0]
    return replace(entry, nodes=fitting or lost)


def without_turn(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """The row without its turn, and the chain that it is turned with."""
    bare = [one for one in nodes if not _turns(one)]
    if len(bare) < len(nodes) and len(bare) > 1 and isinstance(bare[-1], Chain):
        bare.pop()
    return tuple(bare)


def with_end(
    ledger: Ledger, entry: Entry, nodes: tuple[Node, ...], end: tuple[Node, ...]
) -> tuple[Node, ...] | None:
    """The row that is quoted with another end: of its repeat where that has one, else behind the
    row, or in place of its last instructions, whichever closes the row; None where neither does.
    """
    works = [at for at, one in enumerate(nodes) if not isinstance(one, Act)]
    last = nodes[works[-1]] if works else None
    if isinstance(last, Repeat) and last.ending:
        worked = tuple(one for one in end if not isinstance(one, Act))
        told = tuple(one for one in end if isinstance(one, Act))
        return (*nodes[: works[-1]], replace(last, ending=worked), *told)
    after = [at for at in works if not any(isinstance(one, Repeat) for one in nodes[at:])]
    cuts = [len(nodes), *after[::-1][:MOST_REPLACED]]
    bare = [tuple(one for one in nodes[:cut] if not _turns(one)) for cut in cuts]
    return first_that_fits(ledger, entry, [(*one, *end) for one in bare])


MOST_REPLACED = 6
"""Instructions that another end may stand for."""


def first_that_fits(
    ledger: Ledger, entry: Entry, lists: list[tuple[Node, ...]]
) -> tuple[Node, ...] | None:
    """The first of several lists of instructions that closes the row."""
    for nodes in lists:
        solved = ledger.solve(replace(entry, nodes=nodes, printed=()), None, "")
        if solved.fits is True or _but_for_the_edge(solved):
            return nodes
    return None


def _but_for_the_edge(solved: Solved) -> bool:
    """Whether nothing is left but the stitch before the space that the row begins in."""
    walk, tally = solved.tally.walk, solved.tally
    whole = walk.known and not (walk.short or walk.lacking or tally.uneven or tally.unread)
    return whole and not tally.unsure and solved.left == walk.before


def _starred(quoted: Quoted, nodes: tuple[Node, ...]) -> Iterator[tuple[Node, ...]]:
    """What the other row repeats, as far as this row goes."""
    for one in nodes:
        if isinstance(one, Repeat):
            yield (
                replace(
                    one, span=quoted.span, words=quoted.words, until=Until.OPEN, number=ONE,
                    ending=quoted.ending, has_ending=bool(quoted.ending), altered=False,
                ),
            )  # fmt: skip


def _rests(
    quoted: Quoted, nodes: tuple[Node, ...], before: tuple[Node, ...]
) -> Iterator[tuple[Node, ...]]:
    """What follows in the other row behind its first instruction, behind its second ...; over a
    chain of its own all that is worked into the other chain.
    """
    works = [at for at, one in enumerate(nodes) if not isinstance(one, Act)]
    begun = [one for one in before if not isinstance(one, Act)]
    chained = len(begun) == 1 and isinstance(begun[0], Chain) and bool(works)
    if chained and isinstance(nodes[works[0]], Chain):
        yield nodes[works[0] + 1 :]
    for at, one in enumerate(nodes):
        begins = isinstance(one, Chain | Skip | Repeat) or (
            isinstance(one, Work | Group) and one.place.where not in (Where.SAME, Where.CHAIN)
        )
        if at and begins and any(not isinstance(two, Act) for two in nodes[:at]):
            rest = nodes[at:]
            if quoted.ending:
                rest = (*(two for two in rest if not _turns(two)), *quoted.ending)
            yield rest


def _turns(node: Node) -> bool:
    return isinstance(node, Act) and node.deed in (Deed.TURN, Deed.FINISH, Deed.JOIN)
