"""Raw text -> Pattern: craft, terms, sizes, key and the rows as written; any string goes in,
nothing is raised.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from reader.pattern.chain_rules import chain_rules
from reader.pattern.cursor import Book, Special
from reader.pattern.each_needle import needles_told
from reader.pattern.filet import is_filet
from reader.pattern.layout import Layout, lay_out
from reader.pattern.letter_codes import CIRCLED, letter_codes, with_circled
from reader.pattern.sizes import sizes_named
from reader.pattern.unnamed_groups import named_later
from reader.terms.crafts import CROCHET_WORDS, KNITTING_WORDS, Terms
from reader.terms.forms import forms, name_of, stitch_named
from reader.terms.stitches import Craft, Kind, Stitch
from reader.text.all_capitals import as_sentences
from reader.text.announced import unannounced
from reader.text.blank_lines import without_blank_lines
from reader.text.bullets import unbulleted
from reader.text.cast_ons import cast_ons
from reader.text.chain_spaces import chains_first
from reader.text.clean import CleanText, clean
from reader.text.columns import without_columns
from reader.text.crosses import starred
from reader.text.foundations import with_chain
from reader.text.last_loops import unnamed_loops
from reader.text.markdown import unmarked
from reader.text.named_pieces import on_lines
from reader.text.needle_rows import needles_as_rows, needles_in_rounds
from reader.text.numbered import numbered
from reader.text.page_lines import without_page_lines
from reader.text.part_nouns import without_asides, without_part_nouns
from reader.text.ribs import ribs_named
from reader.text.said_alike import labelled_alike
from reader.text.same_length import (
    joined_ligatures,
    with_ones,
    without_emphasis,
    without_front_matter,
    without_links,
    without_multiples,
)
from reader.text.shorthand import with_times
from reader.text.size_lists import in_brackets, letters_told, with_usual_brackets
from reader.text.sought import Sought
from reader.text.spoken import punctuated
from reader.text.stops import without_stops
from reader.text.tables import untabled
from reader.text.undotted import undotted


@dataclass(frozen=True, slots=True)
class Pattern:
    """A pattern as written, for all sizes at once. reading: the clean text as it is read, place for
    place, without what only abbreviates.
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


DEFINED = re.compile(
    r"\(\s*([A-Za-z][A-Za-z -]{1,24}?)\s*:\s*([^()]{6,240}(?:\([^()]*\)[^()]*)*)\)"
)
KEY_LINE = re.compile(
    r"(?:^[ \t#*-]*| {3,}(?=\S{1,8} ?=))([A-Za-z][A-Za-z0-9/& -]{0,22}?(?:\s*\([^)\n]{1,20}\))?)"
    r"\s*(?:=\s*(?=[0-9])|(?:=|:|—| - )\s*(?=[A-Za-z(\[*]))"
    r"((?:(?! {3,}\S{1,8} ?=)[^\n]){2,240})(?= {3,}|$)",
    re.MULTILINE,
)
_GROUPS = ("shell", "fan", "v-st", "v st", "vst", "group", "scallop", "corner")
GROUP_LINE = Sought(
    (*_GROUPS, "cluster", "puff", "bobble", "popcorn"),
    r"^[ \t#*-]*((?:shell|fan|v[- ]?st(?:itch)?|cluster|scallop|puff|bobble|popcorn)"
    r"(?: st(?:itch)?)?(?:\s*\([^)\n]{1,20}\))?)\s*(?:=|:|—| - )\s*(\d[^\n]{2,240})$",
    re.MULTILINE | re.IGNORECASE,
)
"""A group's meaning that begins with a number: "Shell (sh): 5 dc in next st"."""
WORD_NUMBER = {"one": 1, "two": 2, "three": 3}
_STITCH = r"(?:s\s?c|h\s?d\s?c|d\s?c|tr\s?c?|trebles?|doubles?|htr|dtr)\b(?! tog)"
_CLUSTER = r"(?:cluster(?:s|\s+sts?)?|popcorns?(?:\s+sts?)?)\b"
ITEM = rf"(?:(\d+|an?|one)\s+)?({_STITCH}|{_CLUSTER}|ch(?:ain)?s?(?![a-z])(?:\s*\d+)?)"
_GROUP_NAME = (
    rf"(?P<name>(?:{_STITCH} |{_CLUSTER}[- ])?(?:shell|fan|group|v[- ]?st|scallop|corner))"
)
_INTO = r"(?:\s+in\s+(?:the\s+)?(?:next|same)\s+(?:st|stitch|sp|space|ch|loop))?"
NAMED_BEHIND = Sought(
    _GROUPS,
    rf"(?P<list>(?:\d(?<!\d\d)(?<!next \d)(?<!of \d)(?<!the \d)(?<!each \d)(?<!skip \d)"
    rf"(?<!miss \d)(?<!sk \d)\d*\s+(?:{_STITCH}|{_CLUSTER})|{_CLUSTER}){_INTO}"
    rf"(?:\s*(?:,|and)\s*(?:\d+\s*)?(?:(?:{_STITCH}|{_CLUSTER}){_INTO}|ch\b\s*\d*))+)"
    rf"(?:\s+in\s+[^,;.()]{{2,24}})?\s*,?\s*\(\s*(?:(?:an?|1|another|first|1st|beg) )?{_GROUP_NAME}"
    r"(?:\s+(?:is\s+)?(?:made|formed|completed))?(?:\s+(?:over|on|in)\s+(?:\w+\s+)?\w+)?\s*\)",
    re.IGNORECASE,
)
NAMED_BEFORE = Sought(
    _GROUPS,
    rf"\b{_GROUP_NAME}\s+(?:of|=|:)\s+(?P<list>\d+\s+{_STITCH}"
    rf"(?:\s*(?:,|and)\s*(?:\d+\s*)?(?:{_STITCH}|ch(?:ain)?\b\s*\d*))*)",
    re.IGNORECASE,
)
NAMED_BY_TOTAL = Sought(
    _GROUPS,
    rf"^[^\n]{{0,600}}\(\s*(?P<list>(?:\d+\s*)?{_STITCH}(?:\s*,\s*(?:ch\s*\d+|(?:\d+\s*)?"
    rf"{_STITCH})){{1,6}})\s*\)\s+in\b[^\n(]{{0,160}}[.;:—(]\s*\d+\s+{_GROUP_NAME}s\b",
    re.IGNORECASE | re.MULTILINE,
)
"""A round of groups whose total gives them their name: "(2 dc, ch 2, 2 dc) in next ch-2 sp; rep
from * around. (8 shells)".
"""
AFTER_CHAIN = re.compile(r"\bch ?\d+(?: \([^()]*\))?,\s*\(\s*$", re.IGNORECASE)
OF_HOOK = re.compile(r"\b(?:crochet|treble|double|insert (?:the )?hook|yo\b|yarn over)")
"""A meaning that tells how a stitch is made."""
BEGINS_WORK = re.compile(
    r"(?:with [^,.]{1,30},? )?(?:ch(?:ain)?|cast on|co|make a ch\w*) (?:of )?\d+\b"
    r"|r\d|(?:rnd|round|row|rd)s?\b|\d+(?:st|nd|rd|th) (?:rnd|round|row)", re.IGNORECASE
)
"""Not a meaning: the part of that name begins."""
OWN_KEY = "the pattern's own key"
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
)
"""A definition that draws them together into one."""


def craft_of(text: str) -> Craft:
    """Crochet or knitting, by the words used."""
    low = text.lower()
    knit, crochet = len(re.findall(KNITTING_WORDS, low)), len(re.findall(CROCHET_WORDS, low))
    return Craft.KNITTING if knit > crochet else Craft.CROCHET


UK_WORDS = re.compile(
    r"\bhtr\b|\bhalf treble|\bmiss\b|\btension\b|\bss\b|\bcast off\b|\bdc2tog in uk"
    r"|\btrebles?\b(?! crochet)|\bdoubles?\b(?! crochet)|\bcolour"
)
UK_TERMS = Sought(("term",), r"\b(?:uk|british|english)\b[^.\n]{0,20}\bterms?\b")
US_TERMS = Sought(("term",), r"\b(?:us|u\.s\.|american)\b[^.\n]{0,20}\bterms?\b")
TALL_DC = re.compile(
    r"(?:rnd|round|row)[ .\d:]*\**\s*(?:work |make )?(?:3 ch|ch 3)\b[^.;*]{0,24}?\b(?:\d+ )?dcs? in"
)


def terms_of(text: str) -> tuple[Terms, str]:
    """US or UK, and the evidence in one sentence."""
    low = text.lower()
    if UK_TERMS.search(low):
        return Terms.UK, "the pattern says that its terms are UK"
    if re.search(r"\((?:uk|british)(?: (?:version|pattern|english))?\)", low):
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
    if not us and uk <= faint and TALL_DC.search(low):
        return Terms.US, "three chains begin its dc rows, the height of a US double crochet"
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
        short = re.sub(r"\s*\(.*\)", "", name).strip().lower()
        if (
            re.match(
                r"^(?:r\d|rnd|round|row|next|note|size|hook|yarn|gauge|rep|to \w+|with|ch \d)",
                short,
            )
            or len(short) > 22
            or BEGINS_WORK.match(meaning)
        ):
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


def named_groups(text: str, terms: Terms) -> list[tuple[int, Special]]:
    """Groups that the text names where it makes them, "2 dc, ch 1, 2 dc in next st (shell)", "shell
    of 3 dc", each with where that is: a later row may make them otherwise.
    """
    found: list[tuple[int, Special]] = []
    told = text[:200_000]
    shapes = (NAMED_BEHIND, NAMED_BEFORE, NAMED_BY_TOTAL)
    for one in (found for shape in shapes for found in shape.finditer(told)):
        listed = one.start("list")
        if one.re is NAMED_BY_TOTAL.shape and AFTER_CHAIN.search(told, one.start(), listed):
            # The first group of a round lacks the stitch that its chain stands for.
            continue
        before = told[max(0, listed - 60) : listed]
        begun = one.re is NAMED_BEHIND.shape and BEGUN_BY_CHAIN.search(before) is not None
        found += _group(one.start(), one["name"].lower(), one["list"], terms, begun)
    for at, name, stitches in named_later(told, {special.name for _, special in found}):
        found += _group(at, name, stitches, terms)
    return sorted(found, key=lambda pair: pair[0])


def _group(
    at: int, name: str, stitches: str, terms: Terms, begun: bool = False
) -> list[tuple[int, Special]]:
    """A group of that name, made of the stitches listed; none where they are not two or more.
    begun: a chain before them stands for the first.
    """
    items = re.findall(ITEM, stitches, re.IGNORECASE)
    chains = sum(1 for number, stitch in items if stitch.lower().startswith("ch"))
    made = sum(_amount(number) for number, stitch in items if not stitch.lower().startswith("ch"))
    if begun:
        items, made = _with_its_chain(items, made)
    if made < 2:
        return []
    stitch = Stitch(
        name, name, 1, made, Craft.CROCHET, Kind.GROUP, OWN_KEY, 3, spaces=chains,
        parts=_parts(items, terms),
    )  # fmt: skip
    return [(at, Special(name, stitch))]


BEGUN_BY_CHAIN = re.compile(
    r"\bch(?:ain)? ?[2-5](?: \([^()]{1,40}\))?,\s*"
    r"(?:(?:in|into) (?:the )?same \w+ (?:make |work )?)?$",
    re.IGNORECASE,
)


def _with_its_chain(items: list[tuple[str, str]], made: int) -> tuple[list[tuple[str, str]], int]:
    """The stitches of a group that its row begins with, "ch 3, 2 dc, ch 2, 3 dc in same st
    (shell)": with the one that the chain stands for, where only so both sides are alike.
    """
    spaces = [at for at, (_, stitch) in enumerate(items) if stitch.lower().startswith("ch")]
    left = sum(_amount(number) for number, _ in items[: spaces[0]]) if spaces else made
    right = sum(_amount(number) for number, _ in items[spaces[0] + 1 :]) if spaces else made + 1
    if len(spaces) > 1 or left + 1 != right:
        return items, made
    return [(str(_amount(items[0][0]) + 1), items[0][1]), *items[1:]], made + 1


def _parts(items: Sequence[tuple[str, str]], terms: Terms) -> tuple[tuple[str, int], ...]:
    """What a group is made of, in order; () where a stitch is not known by its form."""
    parts: list[tuple[str, int]] = []
    for number, stitch in items:
        low = " ".join(stitch.lower().split())
        if low.startswith("ch"):
            parts.append(("ch", int((re.sub(r"\D", "", low) or "1")[:3])))
            continue
        name = name_of(low, Craft.CROCHET, terms)
        if not name:
            return ()
        parts.append((name, _amount(number)))
    return tuple(parts)


def _amount(number: str) -> int:
    return int(number[:3]) if number.isdigit() else 1


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
        parts = _parts(re.findall(ITEM, group.group(1), re.IGNORECASE), terms) if spaces else ()
        return Stitch(
            name, name, 1, makes, craft, Kind.GROUP, OWN_KEY, 3, spaces=spaces, parts=parts
        )
    known = forms(craft, Terms.US).get(f"{name} st")
    if known is not None:
        return stitch_named(known, craft)
    plain = re.fullmatch(r"[a-z]{2,8}", name) and name not in forms(craft, Terms.US)
    if plain and name not in forms(craft, Terms.UK) and OF_HOOK.search(low):
        takes = 2 if re.search(r"\btog(?:ether)?\b|\bdecrease", low) else 1
        return Stitch(name, name, takes, 1, craft, Kind.STITCH, OWN_KEY, 3)
    if re.search(r"\b(?:loop st|puff|bobble|popcorn|cluster)", name):
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


def parse_pattern(text: str, terms: str = "", craft: str = "") -> Pattern:
    """The pattern in a text, whatever the text; terms "US" or "UK" and craft overrule the evidence.
    """
    told = without_page_lines(without_links(without_front_matter(text)))
    source = clean(joined_ligatures(with_ones(without_blank_lines(told))))
    plain = with_usual_brackets(unmarked(unbulleted(as_sentences(source.text))))
    plain = untabled(without_columns(without_emphasis(plain)))
    plain = with_times(without_multiples(plain))
    plain = starred(with_chain(numbered(punctuated(plain))))
    plain = chains_first(unnamed_loops(labelled_alike(plain)))
    plain = needles_in_rounds(needles_as_rows(cast_ons(undotted(plain))))
    which = Craft(craft) if craft else craft_of(without_stops(plain))
    if which is Craft.KNITTING:
        plain = ribs_named(without_part_nouns(without_asides(without_stops(plain))))
        plain = unannounced(on_lines(plain))
    chosen, why = (Terms(terms), "the maker chose so") if terms else terms_of(plain)
    sizes = letters_told(source.text) or sizes_named(plain)
    plain = in_brackets(plain, len(sizes))
    codes = letter_codes(plain, which, chosen)
    plain = with_circled(plain, codes)
    layout = lay_out(plain, sizes)
    groups = tuple(named_groups(plain, chosen)) if which is Craft.CROCHET else ()
    specials, key = specials_in(plain, which, chosen, groups)
    for letter, stitch in codes.items():
        specials[CIRCLED[letter]] = Special(stitch.name, stitch)
    lines = tuple(found.start() + 1 for found in re.finditer("\n", text))
    book = Book(which, chosen, len(sizes), specials, source, (0, *lines), groups=groups)
    book.filet = which is Craft.CROCHET and is_filet(plain)
    book.needles = needles_told(plain) if which is Craft.KNITTING else 0
    book.learn()
    rules, silent = chain_rules(plain)
    return Pattern(
        layout.title, which, chosen, why, sizes, layout, key, source, book, rules, silent,
        plain,
    )  # fmt: skip
