"""Rows of the same words, as parts alike and other sizes have them, are read once: their rule,
their totals, and the instructions of the first, moved to where each stands.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from reader.pattern.cursor import Book, line_of
from reader.pattern.instructions import read_row
from reader.pattern.printed import printed_in
from reader.pattern.rule import Rule
from reader.pattern.rules import find_rule
from reader.pattern.total_lists import of_own_groups
from reader.pattern.totals import Printed
from reader.pattern.tree import Node, Place
from reader.terms.stitches import Craft
from reader.text.span import Span

Nodes = tuple[Node, ...]
TREE = (Place, *Node.__args__)
"""What holds spans, or holds what does."""
HOLDING = frozenset(("place", "body", "ending"))
"""The fields of these that do, beside their own span."""
SLOTS = {kind: {name: getattr(kind, name) for name in kind.__slots__} for kind in TREE}
FIELDS = {
    kind: (
        tuple(
            (one.__get__, one.__set__) for name, one in slots.items()
            if name != "span" and name not in HOLDING
        ),
        tuple((one.__get__, one.__set__) for name, one in slots.items() if name in HOLDING),
        slots["span"].__set__,
    )
    for kind, slots in SLOTS.items()
}


@dataclass(frozen=True, slots=True)
class Copied:
    """Instructions that are those of an earlier row of the same words (first), so many characters
    and lines farther on.
    """

    nodes: Nodes
    first: Nodes
    by: int
    lines: int


def rule_of(words: str, labelled: bool, size: int, book: Book) -> Rule | None:
    """The rule a row's words are, or end with; None where they are plain instructions."""
    key = ("rule", words, labelled, size)
    if key not in book.once:
        book.once[key] = find_rule(words, labelled, size, book.sizes)
    rule: Rule | None = book.once[key]
    return rule


def totals_of(words: str, book: Book) -> tuple[tuple[Printed, ...], str]:
    """The totals printed in a row's words, and the words without them."""
    key = ("totals", words)
    if key not in book.once:
        found, rest = printed_in(words, book.sizes, book.filet, book.craft is Craft.CROCHET)
        book.once[key] = (found, rest) if found else of_own_groups(rest, frozenset(book.specials))
    totals: tuple[tuple[Printed, ...], str] = book.once[key]
    return totals


def nodes_of(
    words: str, start: int, end: int, book: Book, finished: Callable[[Nodes], Nodes]
) -> Copied:
    """The instructions of a row's words, which stand at those offsets of the clean text. finished:
    makes them as they are to be kept.

    They are read anew where the same words may mean another thing, or where a line's end or a
    letter that a copy spoiled parts them.
    """
    source = book.source
    if source is None or book.groups or "\n" in words or not source.straight(start, end):
        own = finished(read_row(words, 0, len(words), book.as_of(start, end)))
        return Copied(own, own, 0, 0)
    key = ("nodes", words.rstrip())
    if key not in book.once:
        read = finished(read_row(words, 0, len(words), book.as_of(start, end)))
        book.once[key] = start, read
    first, nodes = book.once[key]
    here, there = source.origin(start), source.origin(first)
    lines = line_of(book, here) - line_of(book, there)
    by = here - there
    return Copied(moved(nodes, by, lines) if by else nodes, nodes, by, lines)


def moved(thing: Any, by: int, lines: int) -> Any:
    """An instruction, or a part of one, with its spans farther on by so many characters and lines.
    """
    kind = type(thing)
    if kind is tuple:
        return tuple([moved(one, by, lines) for one in thing])
    made = object.__new__(kind)
    others, holding, put_span = FIELDS[kind]
    for get, put in others:
        put(made, get(thing))
    start, end, line = thing.span
    put_span(made, tuple.__new__(Span, (start + by, end + by, line + lines)))
    for get, put in holding:
        put(made, moved(get(thing), by, lines))
    return made
