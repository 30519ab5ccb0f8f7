"""Rows called back with another end than their own: "repeat 3rd row but end with ...", "ending last
row ch 5, turn".
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.counts.other_numbers import tells_more, with_other_numbers
from reader.counts.other_times import with_loops, with_times
from reader.counts.quoted_parts import with_end
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule
from reader.pattern.same_row import OTHER_TIMES
from reader.pattern.tree import ONE, Node, Num, Repeat, Unread, Where, Work
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

OTHER_END = re.compile(
    r"\b(?:but|except|only)\s+(?:(?:to|that|by)\s+)?end(?:ing|s)?\s+(?:(?:the |last |each )*"
    r"(?:row|rnd|round|repeat)\s+)?(?:with\s+|in\s+)?(?P<end>.+)$",
    re.IGNORECASE | re.DOTALL,
)
"""A row that is quoted with another end."""


def as_told(
    ledger: Ledger, entry: Entry, nodes: tuple[Node, ...], rule: Rule, printed: bool
) -> tuple[Node, ...]:
    """The row that is quoted, with other numbers, another end or longer sides where the words tell
    of them; printed: the number they tell of is a total.
    """
    if ledger.pattern.craft is Craft.CROCHET:
        other = with_other_numbers(nodes, rule.rest, ledger.pattern.terms)
        if other is not None:
            return other
    more = not printed and not rule.fewer and tells_more(rule.rest)
    if rule.differs or TO_A_SIDE.search(rule.rest) or more:
        return differing(ledger, entry, nodes, rule)
    return nodes


def differing(
    ledger: Ledger, entry: Entry, nodes: tuple[Node, ...], rule: Rule
) -> tuple[Node, ...]:
    """The row that is quoted with what differs: another end, longer sides; other differences are
    not read.
    """
    longer = TO_A_SIDE.search(rule.rest)
    if longer is not None:
        sides = _with_sides(nodes, int(longer["n"]))
        if sides is not None:
            return sides
    told = OTHER_TIMES.search(ledger.text, entry.row.start, entry.row.end)
    if told is not None:
        listed = ledger.read(WrittenRow(None, told.start("list"), entry.row.end)).nodes
        again = with_times(nodes, listed)
        if again is not None:
            return again
    looped = with_loops(nodes, rule.rest)
    if looped is not None:
        return looped
    ended = OTHER_END.search(ledger.text, entry.row.start, entry.row.end)
    if ended is not None:
        end = ledger.read(WrittenRow(None, ended.start("end"), entry.row.end)).nodes
        found = with_end(ledger, entry, nodes, end)
        if found is not None:
            return found
    return (*nodes, Unread(ledger.span(entry.row.start, entry.row.end), rule.rest.strip()))


TO_A_SIDE = re.compile(
    r"\b(?:with|having|making|working) (?P<n>\d{1,3}) (?:[shdtr] ?)+c?\w* "
    r"(?:to|on|along|in|at|for) "
    r"(?:a|each|every|the|one) (?:side|edge|straight)",
    re.IGNORECASE,
)
"""So many stitches between the corners of a square, where the row that is quoted had fewer."""


def _with_sides(nodes: tuple[Node, ...], number: int) -> tuple[Node, ...] | None:
    """The row with so many stitches to a side; None where its sides are not of one length."""
    long = {
        one.place.number.values[0] for one in _all_works(nodes)
        if one.place.where is Where.NEXT and one.number in (None, ONE)
        and one.place.number.values[0] > 2
    }  # fmt: skip
    if len(long) != 1:
        return None
    (side,) = long
    return tuple(_sided(one, side, number) for one in nodes)


def _all_works(nodes: Sequence[Node]) -> Iterator[Work]:
    for one in nodes:
        if isinstance(one, Work):
            yield one
        elif isinstance(one, Repeat):
            yield from _all_works((*one.body, *one.ending))


def _sided(node: Node, old: int, new: int) -> Node:
    if isinstance(node, Repeat):
        body = tuple(_sided(one, old, new) for one in node.body)
        return replace(node, body=body, ending=tuple(_sided(one, old, new) for one in node.ending))
    if isinstance(node, Work) and node.place.number.values == (old,):
        return replace(node, place=replace(node.place, number=Num((new,))))
    return node


LAST_CHAIN = re.compile(
    r"\bend(?:ing)? (?:the )?last (?:row|rnd|round) (?:with |in )?(?:a )?ch(?:ain)? (?:of )?"
    r"(\d{1,3})\b|\bch (\d{1,3}) at (?:the )?end of (?:the )?last (?:row|rnd|round)\b",
    re.IGNORECASE,
)
"""What the last of several rows is ended with, "ending last row ch 5, turn"."""


def chain_at_end(ledger: Ledger, rule: Rule) -> None:
    """The chain that the last of the rows called back is turned with, where the words tell it."""
    found = LAST_CHAIN.search(" ".join(rule.rest.split()))
    if found is not None:
        ledger.carried = int(found[1] or found[2])
