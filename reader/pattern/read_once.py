"""Rows of the same words, as parts alike and other sizes have them, are read once: their rule,
their totals, and the instructions of the first, moved to where each stands.
"""

from __future__ import annotations

from typing import Any

from reader.pattern.cursor import Book, line_of
from reader.pattern.instructions import read_row
from reader.pattern.printed import printed_in
from reader.pattern.rule import Rule
from reader.pattern.rules import find_rule
from reader.pattern.totals import Printed
from reader.pattern.tree import Node, Place
from reader.terms.stitches import Craft
from reader.text.span import Span

TREE = frozenset([Place, *Node.__args__])
"""What holds spans, or holds what does."""


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
        book.once[key] = printed_in(
            words, book.sizes, book.filet, book.craft is Craft.CROCHET
        )
    found: tuple[tuple[Printed, ...], str] = book.once[key]
    return found


def nodes_of(words: str, start: int, end: int, book: Book) -> tuple[Node, ...]:
    """The instructions of a row's words, which stand at those offsets of the clean text.

    They are read anew where the same words may mean another thing, or where a line's end or a
    letter that a copy spoiled parts them.
    """
    source = book.source
    if source is None or book.groups or "\n" in words or not source.straight(start, end):
        return read_row(words, 0, len(words), book.as_of(start, end))
    key = ("nodes", words.rstrip())
    if key not in book.once:
        book.once[key] = start, read_row(words, 0, len(words), book.as_of(start, end))
    first, nodes = book.once[key]
    here, there = source.origin(start), source.origin(first)
    lines = line_of(book, here) - line_of(book, there)
    return tuple(moved(node, here - there, lines) for node in nodes) if here != there else nodes


def moved(thing: Any, by: int, lines: int) -> Any:
    """An instruction, or a part of one, with its spans farther on by so many characters and lines.
    """
    kind = type(thing)
    if kind is Span:
        return Span(thing.start + by, thing.end + by, thing.line + lines)
    if kind is tuple:
        return tuple(moved(one, by, lines) for one in thing)
    if kind not in TREE:
        return thing
    made = object.__new__(kind)
    for name in kind.__slots__:
        object.__setattr__(made, name, moved(getattr(thing, name), by, lines))
    return made
