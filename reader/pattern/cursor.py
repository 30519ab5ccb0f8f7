"""A cursor over the tokens of one stretch, and the book of words it reads them with."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass, field, replace
from functools import cache
from typing import Any

from reader.pattern.tokens import Token
from reader.pattern.tree import Node, Num
from reader.terms.crafts import Terms
from reader.terms.forms import LONGEST, forms, name_of, stitch_named
from reader.terms.stitches import Craft, Stitch
from reader.text.clean import CleanText
from reader.text.span import Span


@cache
def by_first_word(phrases: tuple[str, ...]) -> dict[str, tuple[tuple[str, ...], ...]]:
    """The phrases in words, by their first one, the longest before the others; split once, since
    they are asked for at every token.
    """
    found: dict[str, list[tuple[str, ...]]] = {}
    for phrase in phrases:
        parts = tuple(phrase.split())
        found.setdefault(parts[0], []).append(parts)
    return {first: tuple(sorted(many, key=len, reverse=True)) for first, many in found.items()}


END = Token("end", "", 0, 0)
STOPS = frozenset({",", ";", ".", ":", "(", ")", "[", "]", "{", "}", "—", "!", "?", "="})
"""Marks that end a phrase."""


@dataclass(frozen=True, slots=True)
class Special:
    """A stitch the pattern itself defines: its count, or the instructions it stands for."""

    name: str
    stitch: Stitch | None
    body: tuple[Node, ...] = ()


@dataclass(slots=True)
class Book:
    """Words to read with: craft, terms, how many sizes, and the pattern's own stitches by written
    form. filet: its rows are told in squares; square: of which stitch and how many chains. needles:
    how many a round lies on, 0 where not told.
    groups: those named where they are made, in order, since their name may come to mean another.
    looked_up: written forms that were looked up already, with what they mean. once: what was read
    of the pattern's rows already, by their words. offset: where the words that are read stand in
    the clean text.
    """

    craft: Craft
    terms: Terms
    sizes: int = 1
    specials: dict[str, Special] = field(default_factory=dict)
    source: CleanText | None = None
    lines: tuple[int, ...] = ()
    known: frozenset[str] = frozenset()
    letters: frozenset[str] = frozenset()
    filet: bool = False
    square: tuple[str, int] = ("dc", 2)
    needles: int = 0
    groups: tuple[tuple[int, Special], ...] = ()
    looked_up: dict[str, Found | None] = field(default_factory=dict)
    once: dict[tuple[object, ...], Any] = field(default_factory=dict)
    offset: int = 0

    def as_of(self, start: int, end: int) -> Book:
        """The book as a row that stands there means it: a group is what it was last made of."""
        latest = {special.name: special for at, special in self.groups if at < end}
        book = Book.__new__(Book)
        for name in Book.__slots__:
            setattr(book, name, getattr(self, name))
        book.offset = start
        if latest:
            book.specials, book.looked_up = {**self.specials, **latest}, {}
        return book

    def learn(self) -> None:
        """Brings the set of known written forms up to date with the specials."""
        table = forms(self.craft, self.terms)
        self.known = frozenset(table) | frozenset(self.specials)
        self.looked_up = {}


@dataclass(frozen=True, slots=True)
class Found:
    """A stitch found in the text: its written form, and the pattern's own meaning where it has one.
    """

    stitch: Stitch
    form: str
    length: int
    special: Special | None = None


class Cursor:
    """Where the reading stands in a list of tokens; looking never moves, taking does."""

    __slots__ = ("at", "book", "found", "last", "lows", "marks", "text", "tokens")

    def __init__(self, tokens: list[Token], text: str, book: Book) -> None:
        self.tokens = tokens
        self.lows = tuple(token.low for token in tokens)
        self.found: dict[int, Found | None] = {}
        self.text = text
        self.book = book
        self.at = 0
        self.last: Found | None = None
        self.marks: list[str] = []

    def peek(self, ahead: int = 0) -> Token:
        """The token `ahead` of here, or the END token."""
        at = self.at + ahead
        return self.tokens[at] if 0 <= at < len(self.tokens) else END

    def low(self, ahead: int = 0) -> str:
        """The lower-case text of the token `ahead` of here."""
        at = self.at + ahead
        return self.lows[at] if 0 <= at < len(self.lows) else ""

    def kind(self, ahead: int = 0) -> str:
        """The kind of the token `ahead` of here."""
        at = self.at + ahead
        return self.tokens[at].kind if 0 <= at < len(self.tokens) else "end"

    def done(self) -> bool:
        """No token left."""
        return self.at >= len(self.tokens)

    def words(self, phrase: str, ahead: int = 0) -> int:
        """The number of tokens of `phrase` where it stands here, else 0."""
        return self.any_words((phrase,), ahead)

    def any_words(self, phrases: tuple[str, ...], ahead: int = 0) -> int:
        """The length of the longest of the phrases that stands here, else 0."""
        at = self.at + ahead
        for parts in by_first_word(phrases).get(self.low(ahead), ()):
            if len(parts) == 1 or self.lows[at : at + len(parts)] == parts:
                return len(parts)
        return 0

    def accept(self, *phrases: str) -> bool:
        """Takes the longest of the phrases that stands here."""
        at = self.at
        low = self.lows[at] if at < len(self.lows) else ""
        for parts in by_first_word(phrases).get(low, ()):
            if len(parts) == 1 or self.lows[at : at + len(parts)] == parts:
                self.at += len(parts)
                return True
        return False

    def number(self, ahead: int = 0) -> Num | None:
        """The number that stands here, None when there is none."""
        token = self.peek(ahead)
        return Num(token.values) if token.kind in ("num", "ord", "times") else None

    def span(self, start: int) -> Span:
        """The span in the original text from token `start` to the last token taken."""
        if not self.tokens:
            return Span(0, 0, 1)
        first = self.tokens[min(start, len(self.tokens) - 1)]
        final = (
            self.tokens[max(min(self.at, len(self.tokens)) - 1, start, 0)]
            if start < len(self.tokens)
            else first
        )
        return span_of(self.book, first.start, final.end)

    def said(self, start: int) -> str:
        """The clean words from token `start` to the last token taken."""
        if start >= len(self.tokens) or self.at <= start:
            return ""
        begin = self.tokens[start].start
        last = min(self.at, len(self.tokens)) - 1
        return " ".join(self.text[begin : self.tokens[last].end].split())

    def stitch(self, ahead: int = 0) -> Found | None:
        """The stitch whose written form stands here, the longest that fits."""
        at = self.at + ahead
        if at not in self.found:
            named = self.kind(ahead) in ("word", "ord")
            self.found[at] = find_stitch(self, ahead) if named else None
        return self.found[at]


def find_stitch(cur: Cursor, ahead: int) -> Found | None:
    """The longest written form at a place in the tokens."""
    book = cur.book
    form = ""
    best: Found | None = None
    for length in range(1, LONGEST + 1):
        kind = cur.kind(ahead + length - 1)
        if kind not in ("word", "num") or (kind == "num" and length == 1):
            break
        low = cur.low(ahead + length - 1)
        form = low if length == 1 else f"{form} {low}"
        if form not in book.looked_up:
            book.looked_up[form] = _named(form, book)
        found = book.looked_up[form]
        if found is not None:
            best = found if found.length == length else replace(found, length=length)
    if best is not None or book.craft is not Craft.CROCHET:
        return best
    return _long_alone(cur, ahead) if form[:4] == "long" else _by_letter(cur, ahead)


LETTERS = {"t": "dc", "d": "sc", "dt": "tr"}
"""Stitches by the first letter of their English name, as leaflets of about 1915 have them."""
PLACED = frozenset(["in", "into", "to", "over", "around", "between", "all"])
BEFORE_LETTER = frozenset(["next", "each", "every", "first", "last"])


def _by_letter(cur: Cursor, ahead: int) -> Found | None:
    """ "18 t in ring", "1 t in next t": the letter between a number and a place, or behind "next";
    a letter elsewhere is a colour.
    """
    low, after = cur.low(ahead), cur.low(ahead + 1)
    if low not in LETTERS:
        return None
    counted = cur.kind(ahead - 1) == "num" and (after in PLACED or (low != "d" and after in STOPS))
    named = cur.low(ahead - 1) in BEFORE_LETTER or cur.kind(ahead - 1) == "ord"
    alone = cur.low(ahead - 1) == "," and after in PLACED
    if not (counted or alone) and not (named and (after in STOPS or after in PLACED or not after)):
        return None
    stitch = stitch_named(LETTERS[low], Craft.CROCHET)
    return None if stitch is None else Found(stitch, low, 1)


def _long_alone(cur: Cursor, ahead: int) -> Found | None:
    """ "5 long into the loop", "1 long, 2 chain": the long stitch, by its adjective alone."""
    counted = cur.kind(ahead - 1) == "num" or cur.low(ahead - 1) in ("a", "another")
    counted = counted and cur.low(ahead - 2) not in ("ch", "chain")
    ends = cur.low(ahead + 1) in STOPS or cur.low(ahead + 1) in BEHIND_LONG
    if cur.low(ahead) != "long" or not (counted and ends):
        return None
    found = _named("long st", cur.book)
    return None if found is None else replace(found, form="long", length=1)


BEHIND_LONG = frozenset(["", "in", "into", "on", "over", "and", "under", "upon"])
"""What follows the name of a stitch."""


def _named(form: str, book: Book) -> Found | None:
    length = form.count(" ") + 1
    begun = form.removeprefix("beg ").removeprefix("beginning ").removeprefix("starting ")
    special = book.specials.get(form) or book.specials.get(begun) or (
        book.specials.get(form[:-1]) if form.endswith("s") and len(form) > 3 else None
    )
    if special is not None:
        stitch = special.stitch or stitch_named("st", book.craft)
        return Found(stitch, form, length, special) if stitch else None
    name = name_of(form, book.craft, book.terms)
    if not name:
        return None
    stitch = stitch_named(name, book.craft)
    return Found(stitch, form, length) if stitch else None


def span_of(book: Book, start: int, end: int) -> Span:
    """The span in the original text of two clean offsets."""
    source = book.source
    if source is None:
        return Span(start, end, 1)
    first = source.origin(start + book.offset)
    last = source.origin(max(end - 1, start) + book.offset)
    return Span(first, max(first, last + 1), line_of(book, first))


def line_of(book: Book, at: int) -> int:
    """The 1-based line of an original offset."""
    return max(bisect_right(book.lines, at), 1)
