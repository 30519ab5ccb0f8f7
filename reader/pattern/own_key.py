"""Knitting stitches that a pattern's own list of abbreviations defines, "inl = lift the bar and
knit it", "sl2k = slip 2, knit them together": what each takes and makes, read from its meaning.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.cursor import Book, Special
from reader.pattern.instructions import read_row
from reader.pattern.key_lines import MEANT, abbreviates
from reader.pattern.tree import (
    LOST,
    Act,
    Group,
    Node,
    Repeat,
    Until,
    Where,
    Work,
)
from reader.terms.numbers import word_number
from reader.terms.stitches import CABLE, Craft, Kind, Stitch

OWN_KEY = "the pattern's own key"
IN_ONE = re.compile(
    r"\b(?:all )?in(?:to)? (?:the )?(?:same|next|one|1) (?:st|stitch)\b", re.IGNORECASE
)
"""Several stitches in one: only that is taken."""
HARMLESS = re.compile(
    r"(?:in the (?:round|rnd)|(?:through|thru|into) (?:the )?(?:back|front)(?: loops?)?(?: of it)?"
    r"|knitwise|purlwise|tbl|as if to (?:knit|purl)|(?:leaning|slanting)? ?(?:to the )?(?:left"
    r"|right))",
    re.IGNORECASE,
)
"""Words of a meaning that work nothing, though they are not read."""
SPOTS = (Where.PLAIN, Where.NEXT, Where.SAME)
TOGETHER = re.compile(
    r"\b(?:sl|slip)\w*(?: the)?(?: next)? (?P<n>\d|two|three|four)\b[^.;]*\b(?:tog|together)\b"
    r"(?![^.;]*\bpass\b)"
)
"""Slipped stitches that are knitted as one."""


_NAME = r"(?P<name>[A-Za-z][A-Za-z0-9/&+]{1,9})"
_WORKS = r"(?=(?:k|p|knit|purl|sl|slip|insert|pick|lift|make|yarn|wool|yo|work|with)\b)"
AMID = (
    re.compile(
        rf"\(\s*{_NAME}\s*(?P<mark>=|:|means)\s*(?P<meaning>{_WORKS}[^()\n]{{5,160}})\)",
        re.IGNORECASE,
    ),
    re.compile(
        rf"(?:^|(?<=[\s(,;]))[\"']?{_NAME}[\"']?\s*(?P<mark>=|means|stands for|is short for)\s*"
        rf"(?P<meaning>{_WORKS}[^().;\n]{{5,160}})", re.IGNORECASE | re.MULTILINE,
    ),
    re.compile(
        r"\b(?:abbreviations?|abbrev|key|stitches used)\s*(?P<mark>[:—-])\s*"
        rf"{_NAME}\s*[:=—-]\s*(?P<meaning>{_WORKS}[^().;\n]{{5,160}})", re.IGNORECASE,
    ),
    re.compile(rf"(?<![\w(]){_NAME}(?P<mark>\s)\((?P<meaning>{_WORKS}[^()\n]{{8,160}})\)"),
)
"""Meanings that have no line of their own: in a bracket, in a sentence, behind the name in a row.
"""
GAIN = re.compile(
    r"[\s,;:(=—-]*(?:so |this |and |which )*"
    r"(?:makes?|making|adds?|gives?|increases?|decreases?|loses?|gains?|=)?\s*\b(?P<n>\d|one|two)\s*(?:sts?|stitch(?:es)?)?\s*"
    r"(?P<way>more|extra|increased|increase|inc|made|decreased|decrease|dec|less|fewer|gone|lost)\b\W*$"
    r"|\s*\(?\s*(?P<verb>adds|loses|makes(?= 1\b| one\b))\s+(?P<m>\d|one|two)"
    r"(?:\s+sts?|\s+stitch(?:es)?)?\W*$",
    re.IGNORECASE,
)
"""What a meaning says at its end that the stitch gains or loses."""
LOSES = ("dec", "les", "few", "gon", "los")


def learn_key(book: Book, text: str) -> None:
    """Adds to the book's own stitches those that the text defines by instructions that can be read;
    any text goes in.
    """
    if book.craft is not Craft.KNITTING:
        return
    told = text[:200_000]
    asked = set[str]()
    for found in (one for shape in (MEANT, *AMID) for one in shape.finditer(told)):
        name = found["name"].lower()
        known = name in book.known or name in asked
        if known or CABLE.match(name) or not abbreviates(found):
            continue
        asked.add(name)
        stitch = _stitch_of(name, found["meaning"].rstrip(" .)"), book)
        if stitch is not None:
            book.specials[name] = Special(name, stitch)
    book.learn()


def _gain_told(meaning: str) -> tuple[str, int | None]:
    """The meaning without what it says that is gained, and that; None where it says nothing."""
    found = GAIN.search(meaning)
    if found is None or not found.start():
        return meaning, None
    said = (found["n"] or found["m"]).lower()
    number = int(said) if said.isdigit() else word_number(said) or 0
    loses = (found["way"] or found["verb"]).lower().startswith(LOSES)
    return meaning[: found.start()].rstrip(" ,;:=-—("), -number if loses else number


def _stitch_of(name: str, meaning: str, book: Book) -> Stitch | None:
    """The stitch that a meaning makes; None where it is not read for certain."""
    meaning, gain = _gain_told(meaning)
    net = _net(read_row(meaning, 0, len(meaning), book))
    if net is not None and IN_ONE.search(meaning):
        net = 1, net[1]
    if net is None:
        slipped = TOGETHER.search(meaning.lower())
        said = slipped["n"] if slipped else ""
        net = (int(said) if said.isdigit() else word_number(said) or 0, 1) if slipped else None
    if net is None or not 0 <= net[0] <= 12 or not 0 < net[1] <= 12:
        return None
    takes, makes = net
    if gain is not None and makes - takes != gain:
        return None
    kind = Kind.DECREASE if makes < takes else Kind.INCREASE if makes > takes else Kind.CABLE
    kind = Kind.STITCH if takes == makes == 1 else kind
    return Stitch(name, name, takes, makes, Craft.KNITTING, kind, OWN_KEY, base=name)


def _net(nodes: Sequence[Node]) -> tuple[int, int] | None:
    """What a list takes and makes each time it is worked; None where that is not fixed."""
    takes = makes = 0
    for one in nodes:
        each = _of_one(one)
        if each is None:
            return None
        takes, makes = takes + each[0], makes + each[1]
    return (takes, makes) if nodes and (takes or makes) else None


def _of_one(one: Node) -> tuple[int, int] | None:
    if isinstance(one, Act):
        return (0, 0) if one.into != LOST or HARMLESS.fullmatch(one.words) else None
    if isinstance(one, Work) and one.place.where in SPOTS:
        number = one.number.values[0] if one.number else 1
        return number * one.stitch.takes, number * one.stitch.makes
    if isinstance(one, Group) and one.place.where in SPOTS:
        inner = _net(one.body)
        return (1, inner[1]) if inner else None
    if isinstance(one, Repeat) and one.until is Until.TIMES and not one.ending:
        inner, times = _net(one.body), one.number.values[0]
        return (times * inner[0], times * inner[1]) if inner else None
    return None
