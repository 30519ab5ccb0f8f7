"""Raw text -> Pattern: craft, terms, sizes, key and the rows as written; any string goes in,
nothing is raised.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace

from reader.pattern.as_usual import crochet_as_usual, knitting_as_usual
from reader.pattern.chain_rules import chain_rules
from reader.pattern.changed_for_sizes import told_for_some
from reader.pattern.cursor import Book, Special
from reader.pattern.each_needle import needles_told
from reader.pattern.evidence import craft_of, terms_of
from reader.pattern.filet import is_filet, square_of
from reader.pattern.layout import Layout, lay_out
from reader.pattern.letter_codes import CIRCLED, letter_codes, with_circled
from reader.pattern.meant_groups import meant_groups
from reader.pattern.named_groups import named_groups
from reader.pattern.own_key import learn_key
from reader.pattern.own_names import own_names
from reader.pattern.own_stitches import specials_in
from reader.pattern.sizes import names_of, sizes_named
from reader.pattern.two_crafts import Stretch, mixed, rewritten, stretches, within
from reader.terms.crafts import Terms
from reader.terms.stitches import Craft
from reader.text.clean import CleanText
from reader.text.lists_alike import lists_alike, put_in_brackets
from reader.text.needle_rows import at_each_needle, at_so_many_markers
from reader.text.odd_size_lists import usual_lists
from reader.text.own_size import sizes_beside, text_of_size, told_by_name
from reader.text.set_right import set_right
from reader.text.size_lists import in_brackets, letters_told
from reader.text.stops import without_stops


@dataclass(frozen=True, slots=True)
class Pattern:
    """A pattern as written, for all sizes at once. reading: the clean text as it is read, place for
    place, without what only abbreviates. knitted: the parts of a text of crochet that are knitted.
    """

    title: str
    craft: Craft
    terms: Terms
    terms_why: str
    sizes: tuple[str, ...]
    layout: Layout
    key: dict[str, str]
    source: CleanText
    book: Book
    chain_counts: dict[int, bool]
    silent_counts: bool | None
    reading: str
    knitted: dict[int, Book] = field(default_factory=dict)
    own: tuple[Pattern, ...] = ()

    def of_size(self, size: int) -> Pattern:
        """The pattern as that size (0-based) is to read it."""
        return self.own[size] if self.own else self

    def of_part(self, number: int) -> Pattern:
        """The pattern as the part with that number (0-based) is to be read: in its own craft."""
        book = self.knitted.get(number)
        return self if book is None else replace(self, craft=book.craft, book=book)


def _with_sizes(
    source: CleanText, plain: str, beside: tuple[str, ...]
) -> tuple[tuple[str, ...], str]:
    """The names of the sizes, and the text with their numbers in brackets."""
    sizes = letters_told(source.text) or sizes_named(plain)
    plain = usual_lists(plain, len(beside or sizes))
    if beside and len(sizes) in (1, len(beside)):
        return beside, told_for_some(in_brackets(plain, len(beside)), beside)
    alike = lists_alike(plain)
    if alike is not None and (len(sizes) == 1 or (alike.plain and alike.sizes != len(sizes))):
        sizes, plain = names_of(plain, alike.sizes), put_in_brackets(plain, alike)
    return sizes, told_for_some(in_brackets(plain, len(sizes)), sizes)


def parse_pattern(text: str, terms: str = "", craft: str = "") -> Pattern:
    """The pattern in a text, whatever the text; terms "US" or "UK" and craft overrule the evidence.
    """
    beside = sizes_beside(text)
    whole = None if beside else _parsed(text, terms, craft)
    if whole is not None and told_by_name(text, whole.sizes):
        beside = whole.sizes
    if beside:
        each = tuple(
            _parsed(text_of_size(text, beside, size), terms, craft, beside)
            for size in range(len(beside))
        )
        if all(one.sizes == beside for one in each):
            return replace(each[0], own=each)
    return whole or _parsed(text, terms, craft)


def _parsed(text: str, terms: str, craft: str, beside: tuple[str, ...] = ()) -> Pattern:
    """The pattern in a text in which only lists of sizes may stand; beside: the names of sizes
    whose numbers stood beside them.
    """
    source, plain = set_right(text)
    which = Craft(craft) if craft else craft_of(without_stops(plain))
    if which is Craft.KNITTING:
        plain = knitting_as_usual(plain)
    chosen, why = (Terms(terms), "the maker chose so") if terms else terms_of(plain)
    rules, silent = chain_rules(plain)
    if which is Craft.CROCHET:
        plain = crochet_as_usual(plain)
    sizes, plain = _with_sizes(source, plain, beside)
    codes = letter_codes(plain, which, chosen)
    plain = with_circled(plain, codes)
    if which is Craft.KNITTING:
        plain = at_so_many_markers(at_each_needle(plain, needles_told(plain)))
    layout, knitted = lay_out(plain, sizes), list[Stretch]()
    if not craft and mixed(plain, which) and (knitted := stretches(plain, layout)):
        plain = rewritten(plain, knitted, knitting_as_usual)
        layout = lay_out(plain, sizes)
    groups = tuple(named_groups(plain, chosen)) if which is Craft.CROCHET else ()
    specials, key = specials_in(plain, which, chosen, groups)
    if which is Craft.CROCHET:
        for name, own in own_names(plain, chosen).items():
            specials.setdefault(name, Special(name, own))
        for name, own in meant_groups(plain, chosen).items():
            specials[name] = Special(name, own)
    for letter, stitch in codes.items():
        specials[CIRCLED[letter]] = Special(stitch.name, stitch)
    lines = tuple(found.start() + 1 for found in re.finditer("\n", text))
    book = Book(which, chosen, len(sizes), specials, source, (0, *lines), groups=groups)
    book.filet = which is Craft.CROCHET and is_filet(plain)
    book.square = square_of(plain, chosen) if book.filet else book.square
    book.needles = needles_told(plain) if which is Craft.KNITTING else 0
    book.learn()
    learn_key(book, plain)
    return Pattern(
        layout.title, which, chosen, why, sizes, layout, key, source, book, rules, silent,
        plain, _knitted_parts(layout, knitted, book),
    )  # fmt: skip


def _knitted_parts(layout: Layout, knitted: list[Stretch], book: Book) -> dict[int, Book]:
    """The parts of a text of crochet that are knitted, with what their words mean."""
    if not knitted:
        return {}
    knits = Book(Craft.KNITTING, book.terms, book.sizes, source=book.source, lines=book.lines)
    knits.learn()
    return {at: knits for at, part in enumerate(layout.parts) if within(part, knitted)}
