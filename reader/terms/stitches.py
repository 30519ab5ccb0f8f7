"""The stitch table: what each stitch takes and makes, its names in US and UK terms, and where that
stands.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum


class Craft(Enum):
    """Which of the two crafts a pattern is written for."""

    CROCHET = "crochet"
    KNITTING = "knitting"


class Kind(Enum):
    """What a stitch is for the count."""

    STITCH = "stitch"
    INCREASE = "increase"
    DECREASE = "decrease"
    CLUSTER = "cluster"
    GROUP = "group"
    SLIP = "slip"
    CABLE = "cable"
    EXTRA = "extra"


@dataclass(frozen=True, slots=True)
class Stitch:
    """A stitch: takes from the row below, makes for the row above, each time it is worked.

    name: US short name, the key everywhere. spoken: US words. spoken_uk: UK words, "" where the
    same. height: turning chains of a row of it (0 in knitting). base: the plain stitch a decrease
    or increase is made of. source: where the figures stand. parts: of a group, stitches by US name
    and chains ("ch"), in order, where the pattern tells them.
    """

    name: str
    spoken: str
    takes: int
    makes: int
    craft: Craft
    kind: Kind
    source: str
    height: int = 0
    spoken_uk: str = ""
    base: str = ""
    spaces: int = 0
    parts: tuple[tuple[str, int], ...] = ()


CYC = "Craft Yarn Council, Standards and Guidelines for Crochet and Knitting (from memory)"
LISTS = "common crochet abbreviation lists, read 2026: stitch4ever.com, danceswithwools.net"
KNIT_LISTS = "common knitting abbreviation lists, read 2026: dummies.com, sweaterbabe.com"
HANDBOOK = "Handbook of Wool Knitting and Crochet, 1918 (Project Gutenberg 26113)"
PAMPHLETS = "US crochet and knitting pamphlets 1951-1953 (Project Gutenberg 62847, 60350, 61105)"
PRACTICE = "common practice, no source"

SHORT_TO_HEIGHT = {"sl st": 0, "sc": 1, "hdc": 2, "dc": 3, "tr": 4, "dtr": 5, "trtr": 6}
"""Turning chains by stitch: the Handbook of 1918 gives the same heights under the English names."""

UK_NAME = {
    "sl st": "ss",
    "sc": "dc",
    "hdc": "htr",
    "dc": "tr",
    "tr": "dtr",
    "dtr": "trtr",
    "trtr": "qtr",
}
"""US short name -> UK short name of the same stitch."""


TOGETHER = re.compile(
    r"^(sc|hdc|dc|tr|dtr|htr|ss|k|p|st|tss|tks|tps)(\d+)(?:tog(tbl|b)?|(?<=^[kp]\d)t)$"
)
"""The family "n together" of every plain stitch: takes n, makes 1."""

CABLE = re.compile(
    r"^(?:(?:[ct]|cr)(\d+)[fblr]p?|c[fb](\d+)|(\d+)/(\d+)(?:/(\d+))? ?[lr](?:p[ct]?|[ct]p?))$"
)
"""Cables and twists; the number is of stitches moved in all and the count never changes."""


def together(base: str, number: int, spoken: str, craft: Craft) -> Stitch:
    """The decrease that works `number` stitches of `base` as one."""
    source = CYC if craft is Craft.KNITTING else LISTS
    words = f"{spoken} {NUMBER_WORDS.get(number, str(number))} together"
    name = f"{base}{number}tog"
    return Stitch(name, words, number, 1, craft, Kind.DECREASE, source, base=base)


WIDENED = re.compile(r"(?P<base>sc|hdc|dc|tr|dtr|htr)(?P<gap> ?)(?:(?P<inc>incs?)|decs?)")
"""Names as "DcInc", "hdcdec", "hdc inc": so many of a stitch in one place, or one over two."""


def widened(name: str, plain: Stitch) -> Stitch:
    """The increase that works two of a plain stitch into one place."""
    words, inc = f"{plain.spoken} increase", Kind.INCREASE
    return Stitch(name, words, 1, 2, plain.craft, inc, PRACTICE, plain.height, base=plain.name)


NUMBER_WORDS = {2: "two", 3: "three", 4: "four", 5: "five", 6: "six", 7: "seven", 8: "eight"}


def cable(name: str, moved: int) -> Stitch:
    """A cable or twist over `moved` stitches."""
    return Stitch(name, f"cable over {moved}", moved, moved, Craft.KNITTING, Kind.CABLE, KNIT_LISTS)
