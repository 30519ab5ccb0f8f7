"""Raw text -> Pattern: craft, terms, sizes, key and the rows as written; any string goes in,
nothing is raised.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from reader.pattern.chain_rules import chain_rules
from reader.pattern.changed_for_sizes import told_for_some
from reader.pattern.cursor import Book, Special
from reader.pattern.each_needle import needles_told
from reader.pattern.filet import is_filet, square_of
from reader.pattern.layout import Layout, lay_out
from reader.pattern.letter_codes import CIRCLED, letter_codes, with_circled
from reader.pattern.named_groups import GROUPS, OWN_KEY, named_groups, parts_of
from reader.pattern.own_key import learn_key
from reader.pattern.own_names import own_names
from reader.pattern.sizes import names_of, sizes_named
from reader.pattern.two_crafts import Stretch, mixed, rewritten, stretches, within
from reader.pattern.unwrapped import unwrapped
from reader.terms.crafts import CROCHET_WORDS, KNITTING_WORDS, Terms
from reader.terms.forms import forms, name_of, stitch_named
from reader.terms.stitches import Craft, Kind, Stitch
from reader.text.adjectives import without_adjectives
from reader.text.all_but_told import all_but_told
from reader.text.announced import unannounced
from reader.text.begun_with import begun_with
from reader.text.bound_off import bound_off
from reader.text.by_kind import by_kind
from reader.text.clean import CleanText
from reader.text.dashed_sentences import undashed
from reader.text.decreases_named import decreases_named
from reader.text.dropped_down import worked_down
from reader.text.each_round_evenly import each_round_evenly
from reader.text.evenly_said import evenly_said
from reader.text.everyday_words import everyday_words
from reader.text.first_chains import first_chains
from reader.text.halves import halves_told
from reader.text.held_told import held_told
from reader.text.keeps_at_it import keeps_at_it
from reader.text.leaflet_words import leaflet_words
from reader.text.left_waiting import sides_told
from reader.text.lines_told import lines_told
from reader.text.lists_alike import lists_alike, put_in_brackets
from reader.text.lots_picked_up import lots_picked_up
from reader.text.manner_first import number_first
from reader.text.named_pieces import on_lines
from reader.text.needle_rows import at_each_needle, at_so_many_markers
from reader.text.new_stitches import without_new_stitches
from reader.text.noughts import noughts
from reader.text.old_words import old_words
from reader.text.overs_short import overs_named
from reader.text.part_nouns import without_asides, without_part_nouns
from reader.text.picked_up import picked_up
from reader.text.pieces_amid import pieces_apart
from reader.text.plain_stretches import plain_stretches
from reader.text.ribs import ribs_named
from reader.text.row_words import row_words
from reader.text.rows_spoken_of import rows_spoken_of
from reader.text.same_manner import as_last_row
from reader.text.set_right import set_right
from reader.text.short_names import without_short_names
from reader.text.short_together import together_told
from reader.text.size_lists import in_brackets, letters_told
from reader.text.slips import slips_named
from reader.text.sought import Sought
from reader.text.stars_over_rows import without_side_stars
from reader.text.stops import without_stops
from reader.text.stops_for_commas import with_commas
from reader.text.times_before import with_stars
from reader.text.told_aloud import told_aloud
from reader.text.translated_knitting import in_english_knitting
from reader.text.turned_amid import turned_amid
from reader.text.turns_and_ribs import in_rows
from reader.text.untwisted import without_care


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

    def of_part(self, number: int) -> Pattern:
        """The pattern as the part with that number (0-based) is to be read: in its own craft."""
        book = self.knitted.get(number)
        return self if book is None else replace(self, craft=book.craft, book=book)


DEFINED = re.compile(
    r"\(\s*([A-Za-z][A-Za-z -]{1,24}?)\s*[:=]\s*([^()]{6,240}(?:\([^()]*\)[^()]*)*)\)"
)
KEY_LINE = re.compile(
    r"(?:^[ \t#*-]*| {3,}(?=\S{1,8} ?=))([A-Za-z][A-Za-z0-9/& -]{0,22}?(?:\s*\([^)\n]{1,20}\))?)"
    r"\s*(?:=\s*(?=[0-9])|(?:=|:|—| - )\s*(?=[A-Za-z(\[*]))"
    r"((?:(?! {3,}\S{1,8} ?=)[^\n]){2,240})(?= {3,}|$)",
    re.MULTILINE,
)
GROUP_LINE = Sought(
    (*GROUPS, "cluster", "puff", "bobble", "popcorn"),
    r"^[ \t#*-]*((?:shell|fan|v[- ]?st(?:itch)?|cluster|scallop|puff|bobble|popcorn)"
    r"(?: st(?:itch)?)?(?:\s*\([^)\n]{1,20}\))?)\s*(?:=|:|—| - )\s*(\d[^\n]{2,240})$",
    re.MULTILINE | re.IGNORECASE,
)
"""A group's meaning that begins with a number: "Shell (sh): 5 dc in next st"."""
WORD_NUMBER = {"one": 1, "two": 2, "three": 3}
OF_HOOK = re.compile(r"\b(?:crochet|treble|double|insert (?:the )?hook|yo\b|yarn over)")
"""A meaning that tells how a stitch is made."""
BEGINS_WORK = re.compile(
    r"(?:with [^,.]{1,30},? )?(?:ch(?:ain)?|cast on|co|make a ch\w*) (?:of )?\d+\b"
    r"|r\d|(?:rnd|round|row|rd)s?\b|\d+(?:st|nd|rd|th) (?:rnd|round|row)", re.IGNORECASE
)
"""Not a meaning: the part of that name begins."""
INCREASE = re.compile(r"inc|increase|inc st")
ONE_PLACE = re.compile(
    r"^[\(\[]?\s*((?:\d+\s*)?(?:sc|hdc|dc|tr)(?:\s*,\s*(?:ch\s*\d+|(?:\d+\s*)?(?:sc|hdc|dc"
    r"|tr)))*)\s*[\)\]]?\s*"
    r"(?:all )?in(?:to)? (?:the )?(?:one|same|next|indicated|a single|specified|st|each)"
)
"""A definition that puts several stitches into one place."""
DRAWN_TOGETHER = re.compile(
    r"\b(?:keep|hold|leav|retain)\w*\b[^.;]{0,24}\blast (?:\w+ )?(?:loop|lp)s?\b"
    r"|\b(?:through|thru|off) (?:all|\d+) (?:the )?(?:remaining )?(?:loops|lps)"
    r"|\b(?:remove|take out|slip out) (?:the |your )?hook|\bdrop(?:ped)? (?:the )?(?:loop|lp|st)\b"
)
"""A definition that draws them together into one."""


CLUSTERED = re.compile(r"\b(?:loop st|puff|bobble|popcorn|cluster)")
"""Names of several stitches drawn into one."""


def craft_of(text: str) -> Craft:
    """Crochet or knitting, by the words used."""
    low = text.lower()
    knit, crochet = len(re.findall(KNITTING_WORDS, low)), len(re.findall(CROCHET_WORDS, low))
    return Craft.KNITTING if knit > crochet else Craft.CROCHET


UK_WORDS = re.compile(
    r"\bhtr\b|\bhalf treble|\bmiss\b|\btension\b|\bss\b|\bcast off\b|\bdc2tog in uk"
    r"|\btrebles?\b(?! crochet)|\bcolour"
    r"|\bdoubles?\b(?! crochet| in half| (?:strand|thread|yarn|wool))"
)
UK_TERMS = Sought(
    ("term",),
    r"\b(?:uk|british|english)\b[^.\n]{0,20}\bterms?\b"
    r"|\bterm(?:s|inology)\b(?: used)?\W{0,4}(?:is |are )?(?:in )?(?:uk|british|english)\b",
)
UK_PATTERN = Sought(
    ("uk", "british"),
    r"\b(?:uk|british)\b(?: \w+){0,3}? (?:pattern|version|format)\b"
    r"|\((?:uk|british)(?: (?:version|pattern|english))?\)",
)
US_TERMS = Sought(
    ("term",),
    r"\b(?:us|u\.s\.|american)\b[^.\n]{0,20}\bterms?\b"
    r"|\bterm(?:s|inology)\b(?: used)?\W{0,4}(?:is |are )?(?:in )?(?:us\b|u\.s\.|american\b)",
)
OLD_ENGLISH = Sought(
    ("long",),
    r"\b(?:\d+|a|one|two|three|four|five) (?:double )?long\b"
    r"(?: st|(?= (?:into|in|on|over|and)\b|[,.;]))",
)
"""The long stitch, for which later books say treble."""
SHORT_US = re.compile(r"\b(?:s ?c|hdc|s d c|skip)\b")
TWISTED = re.compile(r"\b3 ch(?:ain)?[ .,]+(?:and )?twist\b[^;]{0,40}?\bdc\b")
"""Three chains twisted stand for a stitch of their height."""
NETTED_DC = re.compile(
    r"\bd\.? ?c\.? (?:in|into) (?:the )?(?:[4-9]|1\d)th (?:st|ch)"
    r"|\b(?:3 ch(?:ain)?|ch(?:ain)? 3)s?,? (?:and |work |make )*\d+ d\.? ?c\.? in(?:to)?"
    r" (?:the )?ring"
    r"|\b(?:3 ch(?:ain)?|ch(?:ain)? 3)s?,? (?:and |to )?turn\b[^;.]{0,80}?\bd\.? ?c\b"
)
"""A dc so far from the hook, or over a chain of three that was turned, is no UK double crochet."""
TALL_DC = re.compile(
    r"(?:rnd|round|row)[ .\d:]*\**\s*(?:work |make )?(?:3 ch|ch 3)\b[^.;*]{0,24}?\b(?:\d+ )?dcs? in"
)


THREE_FOR_DC = re.compile(
    r"\b(?:ch(?:ain)? ?-?(?:[3-7]|three)|(?:[3-7]|three) ch(?:ain)?s?)\b[^.;:]{0,60}?"
    r"\b(?:counts?|stands?|counting|counted)\b[^.;:]{0,30}?\b(?:double|dc)\b"
)
TREBLES = re.compile(r"\bh?tr\b|\btrebles?\b|\bmiss\b")


def terms_of(text: str) -> tuple[Terms, str]:
    """US or UK, and the evidence in one sentence."""
    low = text.lower()
    if UK_TERMS.search(low):
        return Terms.UK, "the pattern says that its terms are UK"
    if UK_PATTERN.search(low):
        return Terms.UK, "the pattern says that it is a UK one"
    if US_TERMS.search(low):
        return Terms.US, "the pattern says that its terms are US"
    us = len(
        re.findall(
            r"\b(?:sc\b|s c\b|hdc\b|s d c\b|skip\b|sk\b|sc2tog)|single crochet|\d ?sc\b",
            low,
        )
    )
    uk = len(UK_WORDS.findall(low))
    faint = 0 if us else len(re.findall(r"\bss\b|\bcolour", low))
    if not us and ((uk <= faint and TALL_DC.search(low)) or TWISTED.search(low)):
        return Terms.US, "three chains begin its dc rows, the height of a US double crochet"
    if not us and NETTED_DC.search(low) and not re.search(r"\btr|\bss\b|\bhtr", low):
        return Terms.US, "three chains stand beside its dc, the height of a US double crochet"
    if OLD_ENGLISH.search(low) and not SHORT_US.search(low):
        return Terms.UK, "it has long stitches, as old English books call their trebles"
    if not us and THREE_FOR_DC.search(low) and not TREBLES.search(low):
        return Terms.US, "three chains stand for its double crochet, the height of a US one"
    if us and us >= uk:
        return (
            Terms.US,
            "it speaks of single crochet, half double crochet or skip, which are US words",
        )
    if uk and not us:
        return (
            Terms.UK,
            "it uses miss, ss, htr, tension or trebles and never sc, which are UK words",
        )
    if re.search(r"\b[123] ch\b[^.\n]{0,24}\bdc\b", low) and not us:
        return Terms.UK, "a dc row begins with one chain, the height of a UK double crochet"
    return Terms.US, "nothing tells US from UK terms; US is taken"


NO_KEY = re.compile(
    r"(?:r\d|rnd|round|row|next|note|size|hook|yarn|gauge|rep|to \w+|with|ch \d)"
)
"""How a line before a colon begins that tells no meaning, in small letters."""


def specials_in(
    text: str, craft: Craft, terms: Terms, groups: Sequence[tuple[int, Special]]
) -> tuple[dict[str, Special], dict[str, str]]:
    """Stitches the pattern defines itself, and its key as written. groups: named where they are
    made.
    """
    key: dict[str, str] = {}
    specials: dict[str, Special] = {}
    told = text[:200_000]
    lines = [*KEY_LINE.finditer(told), *GROUP_LINE.finditer(told), *DEFINED.finditer(told)]
    for found in lines:
        name, meaning = found.group(1).strip(), found.group(2).strip()
        short = name.lower() if "(" not in name else _without_brackets(name).lower()
        if NO_KEY.match(short) or len(short) > 22 or BEGINS_WORK.match(meaning):
            continue
        key.setdefault(short, meaning)
        stitch = _defined(short, meaning, craft, terms)
        if stitch is not None:
            specials.setdefault(short, Special(short, stitch))
            alias = re.search(r"\(([^)]{1,12})\)", name)
            if alias:
                specials.setdefault(alias.group(1).strip().lower(), Special(short, stitch))
    for _, special in groups:
        specials.setdefault(special.name, special)
    return specials, key


def _without_brackets(name: str) -> str:
    return re.sub(r"\s*\(.*\)", "", name).strip()


def _defined(name: str, meaning: str, craft: Craft, terms: Terms) -> Stitch | None:
    """What a definition takes and makes, None where the stitch table knows better."""
    low = meaning.lower()
    if INCREASE.fullmatch(name):
        return _defined_increase(name, low, craft)
    if craft is not Craft.CROCHET:
        return None
    group = ONE_PLACE.match(low)
    usual = name_of(name, craft, Terms.US) or name
    if group and DRAWN_TOGETHER.search(low):
        return Stitch(usual, name, 1, 1, craft, Kind.CLUSTER, OWN_KEY, 1)
    if group:
        made = re.findall(r"(?:(\d+)\s*)?(?:sc|hdc|dc|tr)\b", group.group(1))
        spaces = len(re.findall(r"\bch", group.group(1)))
        makes = sum(int(number or 1) for number in made)
        parts = parts_of(group.group(1), terms) if spaces else ()
        unit = "v-st" if name == "v" else name
        return Stitch(
            unit, name, 1, makes, craft, Kind.GROUP, OWN_KEY, 3, spaces=spaces, parts=parts
        )
    known = forms(craft, Terms.US).get(f"{name} st")
    if known is not None:
        return stitch_named(known, craft)
    plain = re.fullmatch(r"[a-z]{2,8}", name) and name not in forms(craft, Terms.US)
    if plain and name not in forms(craft, Terms.UK) and OF_HOOK.search(low):
        takes = 2 if re.search(r"\btog(?:ether)?\b|\bdecrease", low) else 1
        return Stitch(name, name, takes, 1, craft, Kind.STITCH, OWN_KEY, 3)
    if CLUSTERED.search(name) or CLUSTERED.match(low):
        # Whatever form of it the key explains, it is the stitch that other rows call otherwise.
        return Stitch(usual, name, 1, 1, craft, Kind.CLUSTER, OWN_KEY, 1)
    return None


def _defined_increase(name: str, low: str, craft: Craft) -> Stitch | None:
    """ "inc = 2 sc in one st"."""
    found = re.match(r"^(\d+|two|three) ", low)
    said = found.group(1) if found else "0"
    amount = int(said) if said.isdigit() else WORD_NUMBER[said]
    in_same = amount > 1 and craft is Craft.CROCHET and "same" in low
    if in_same or "one st" in low or "in one" in low or "next st" in low:
        return Stitch(name, name, 1, max(amount, 2), craft, Kind.INCREASE, OWN_KEY, 1, base="sc")
    return None


def _with_sizes(source: CleanText, plain: str) -> tuple[tuple[str, ...], str]:
    """The names of the sizes, and the text with their numbers in brackets."""
    sizes = letters_told(source.text) or sizes_named(plain)
    alike = lists_alike(plain)
    if alike is not None and (len(sizes) == 1 or (alike.plain and alike.sizes != len(sizes))):
        sizes, plain = names_of(plain, alike.sizes), put_in_brackets(plain, alike)
    return sizes, told_for_some(in_brackets(plain, len(sizes)), sizes)


def _knitting_as_usual(plain: str) -> str:
    """The text with what knitters and their printers say in other words put as it is read."""
    plain = lots_picked_up(leaflet_words(number_first(unwrapped(plain))))
    plain = as_last_row(noughts(decreases_named(plain)))
    plain = without_adjectives(together_told(begun_with(with_stars(worked_down(plain)))))
    plain = in_rows(old_words(overs_named(held_told(rows_spoken_of(plain)))))
    plain = plain_stretches(all_but_told(by_kind(plain)))
    plain = undashed(with_commas(without_stops(plain)))
    plain = lines_told(told_aloud(in_english_knitting(plain)))
    plain = evenly_said(everyday_words(keeps_at_it(bound_off(picked_up(row_words(plain))))))
    plain = ribs_named(without_part_nouns(without_asides(halves_told(plain))))
    return without_new_stitches(unannounced(on_lines(sides_told(plain))))


def parse_pattern(text: str, terms: str = "", craft: str = "") -> Pattern:
    """The pattern in a text, whatever the text; terms "US" or "UK" and craft overrule the evidence.
    """
    source, plain = set_right(text)
    which = Craft(craft) if craft else craft_of(without_stops(plain))
    if which is Craft.KNITTING:
        plain = _knitting_as_usual(plain)
    chosen, why = (Terms(terms), "the maker chose so") if terms else terms_of(plain)
    if which is Craft.CROCHET:
        plain = each_round_evenly(without_side_stars(without_care(plain)))
        plain = first_chains(without_short_names(plain))
        plain = turned_amid(slips_named(pieces_apart(plain)))
    sizes, plain = _with_sizes(source, plain)
    codes = letter_codes(plain, which, chosen)
    plain = with_circled(plain, codes)
    if which is Craft.KNITTING:
        plain = at_so_many_markers(at_each_needle(plain, needles_told(plain)))
    layout, knitted = lay_out(plain, sizes), list[Stretch]()
    if not craft and mixed(plain, which) and (knitted := stretches(plain, layout)):
        plain = rewritten(plain, knitted, _knitting_as_usual)
        layout = lay_out(plain, sizes)
    groups = tuple(named_groups(plain, chosen)) if which is Craft.CROCHET else ()
    specials, key = specials_in(plain, which, chosen, groups)
    for name, own in (own_names(plain, chosen) if which is Craft.CROCHET else {}).items():
        specials.setdefault(name, Special(name, own))
    for letter, stitch in codes.items():
        specials[CIRCLED[letter]] = Special(stitch.name, stitch)
    lines = tuple(found.start() + 1 for found in re.finditer("\n", text))
    book = Book(which, chosen, len(sizes), specials, source, (0, *lines), groups=groups)
    book.filet = which is Craft.CROCHET and is_filet(plain)
    book.square = square_of(plain, chosen) if book.filet else book.square
    book.needles = needles_told(plain) if which is Craft.KNITTING else 0
    book.learn()
    learn_key(book, plain)
    rules, silent = chain_rules(plain)
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
