"""Knitting told by its manner and how far it goes: "work as established to last 4 sts", "cont in
lace patt over next 20 sts", "keep sts as they appear to marker" -> Work of the fabric's stitches.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.places import find_place
from reader.pattern.tree import Node, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Stitch

VERBS = frozenset(
    ["work", "working", "continue", "continuing", "cont", "keep", "keeping", "patt", "pattern",
     "knit", "knitting", "k", "rib", "purl", "purling", "p", "proceed", "carry", "go", "slip"]
)  # fmt: skip
_ROW = r"(?:row|rnd|round)s?"
_KIND = (
    r"(?:(?:the|same|this|main|set|set-up|est|estab|established|existing|correct|correctly|lace"
    r"|cable|cabled|colou?r|colou?rwork|stripe|striped|charted|textured|slip|double|single"
    r"|reverse|rev|twisted|broken|fair isle|st|stitch|\d ?x ?\d|k ?\d ?,? ?p ?\d|k ?\d ?tbl ?,? ?p"
    r" ?\d) ){0,4}"
)
_FABRIC = (
    r"(?:(?:patt(?:ern)?s?|pat)(?: st(?:itch)?)?|st st|stst|stocking st(?:itch)?"
    r"|stockinette(?: st(?:itch)?)?"
    r"|garter(?: st(?:itch)?)?|g st|(?:seed|moss)(?: st(?:itch)?)?|rib(?:bing)?|lace|cables?"
    r"|charts?(?: [a-h]\b(?! ))?|colou?rwork|stripes?|sequence|fabric)"
)
_AS = (
    r"as (?:now |it is |is |they are |previously |already )?(?:set|est|estab|established|before"
    r"|given|charted|laid out|placed|it stands|usual|directed|instructed|described|shown"
    r"|they (?:appear|come|lie|stand|face you|show|present(?: themselves)?)"
    rf"|(?:for |in |on )?(?:the )?(?:previous|prev|last|{_ROW} \d+)(?: {_ROW})?)"
)
_OBJECT = (
    rf"(?:the )?(?:sts|stitches) {_AS}|the (?:knits? and (?:the )?purls?)"
    rf"|(?:the )?(?:next )?{_ROW}(?: \d+)? (?:of|from) (?:the )?{_KIND}{_FABRIC}"
    rf"|(?:from |following |foll )?{_KIND}{_FABRIC}"
)
MANNER = re.compile(
    rf"(?: (?:even(?:ly)?|straight|plain|on|correct(?:ly)?))*(?: (?:(?:in|with|from|to keep)"
    rf" {_KIND}{_FABRIC}|{_AS}|{_OBJECT}))?(?: {_AS})?(?: (?:even(?:ly)?|straight|correct(?:ly)?))*"
    r"(?= (?:to|until|till|across|over|along|up|all|for|on)\b)"
)
"""What stands between a verb and how far it is worked."""
GOES_ON = frozenset(["continue", "continuing", "cont", "keep", "keeping", "proceed"])
"""What no other rule reads where no manner stands behind it."""
ALL_ACROSS = ("across", "over", "on", "along", "for", "all across", "across all", "over all")
WHICH = ("the next", "next", "the first", "first", "the last", "last", "the", "these", "all",
         "remaining", "rem", "the remaining", "the rem", "the other", "other")  # fmt: skip
NOUNS = ("sts", "st", "stitches", "stitch")


def find_in_manner(cur: Cursor, start: int) -> Node | None:
    """The stitches that such words mean, taken; None (and the place unmoved) where none stand here.
    """
    if cur.low() not in VERBS:
        return None
    words = " ".join(("", *cur.lows[start + 1 : start + 20]))
    found = MANNER.match(words)
    stitch = stitch_named("st", cur.book.craft)
    if found is None or stitch is None or cur.book.craft is not Craft.KNITTING:
        return None
    if not found.group() and cur.low() not in GOES_ON:
        return None
    cur.at += 1 + len(found.group().split())
    told = _so_many(cur, start, stitch) or _how_far(cur, start, stitch)
    if told is None:
        cur.at = start
    return told


def _so_many(cur: Cursor, start: int, stitch: Stitch) -> Node | None:
    """ "over next 20 sts"."""
    at = cur.at
    along = cur.accept(*ALL_ACROSS)
    cur.accept(*WHICH)
    number = cur.number() if along and cur.kind() == "num" else None
    cur.at += number is not None
    if number is None or not cur.accept(*NOUNS) or cur.low() in ("tog", "together", "of", "from"):
        cur.at = at
        return None
    place = Place(Where.PLAIN, cur.span(start))
    return Work(cur.span(start), cur.said(start), stitch, number, place)


def _how_far(cur: Cursor, start: int, stitch: Stitch) -> Node | None:
    """ "to last 4 sts", "across", "to marker"."""
    if cur.low() == "for":
        return None
    at = cur.at
    place = find_place(cur)
    if place is not None and place.where is Where.REST and cur.low() in ("to", "until", "till"):
        place = find_place(cur) or place
    if place is None and cur.accept("across", "over", "along", "all across", "all"):
        ended = cur.low() in (*STOPS, "")
        place = Place(Where.REST, cur.span(at)) if ended else find_place(cur)
    if place is None or place.where not in (Where.REST, Where.TO_LAST, Where.UNUSED):
        return None
    return Work(cur.span(start), cur.said(start), stitch, None, place)
