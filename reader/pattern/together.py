"""Stitches drawn into one, told with their place: "next 2 sts tog", "sc next 2 sts together" -> the
decrease.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.cursor import Cursor
from reader.pattern.knitting_fabric import at_ends
from reader.pattern.list_words import BEFORE_ITEM
from reader.pattern.number_behind import times_behind
from reader.pattern.place_words import SPACE_NOUNS, STITCH_NOUNS
from reader.pattern.places import find_place
from reader.pattern.tree import Node, Num, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind, Stitch

TO = ("to", "into", "until", "till")
TAKES = (
    "take", "taking", "take up", "taking up", "draw", "drawing", "join", "joining", "work off",
    "working off", "narrow", "narrowing", "catch", "catching",
)  # fmt: skip
"""Before "the next two together", these crochet them."""
NOUNS = ("sts", "st", "stitches", "stitch")
TOGETHER = ("tog", "together", "togb", "togtbl")
MIDDLE = ("center", "centre", "middle", "central")
AS_ONE = (
    "tog", "together", "off tog", "off together", "off as one", "off as 1", "as one", "as 1",
    "as 1 st", "as one st", "as a single st", "as if they were 1", "as though they were 1",
    "into 1", "into one",
)  # fmt: skip
"""Behind "work next 2 sts": they become one."""


def sts_together(cur: Cursor, start: int) -> Node | None:
    """ "work next 2 sts tog": the decrease of so many."""
    at = cur.at
    cur.accept(*TAKES)
    cur.accept("the")
    cur.accept("next", "last", "first", "following", *MIDDLE)
    number = cur.number() if cur.kind() == "num" else None
    if number is not None and 1 < number.values[0] < 30:
        cur.at += 1
        cur.accept(*MIDDLE)
        found = cur.stitch()
        cur.at += found.length if found is not None else 0
        bare = cur.book.craft is Craft.CROCHET and cur.low(start - cur.at - 1) in BEFORE_ITEM
        taken = cur.accept(*NOUNS) or found is not None or at > start or bare
        _of_what(cur)
        twice = _last_ones_too(cur, number)
        if taken and not _all_in_one(cur, found is not None) and cur.accept(*AS_ONE):
            base = "k" if cur.book.craft is Craft.KNITTING else found.stitch.name if found else "sc"
            name = f"{base}{number.values[0]}tog"
            stitch = stitch_named(name, cur.book.craft) or stitch_named("sc2tog", cur.book.craft)
            if stitch is not None and stitch.takes == number.values[0]:
                if ends := at_ends(cur, start, stitch.makes - stitch.takes, None):
                    return ends
                by = Num((2,)) if twice else times_behind(cur)
                place = place_or_plain(cur)
                return Work(cur.span(start), cur.said(start), stitch, by, place, by=by)
    cur.at = at
    return None


def _all_in_one(cur: Cursor, named: bool) -> bool:
    """Whether "2 dc into one stitch" stands here: several in one place, and no decrease."""
    one = cur.low() in ("in", "into") and cur.low(1) in ("1", "one")
    return named and one and cur.low(2) in STITCH_NOUNS | SPACE_NOUNS


def _of_what(cur: Cursor) -> None:
    """Takes "of next leaf" before "off together"."""
    for ahead in range(1, 5) if cur.low() == "of" else ():
        if cur.low(ahead) in ("off", "tog", "together"):
            cur.at += ahead
            return


def _last_ones_too(cur: Cursor, number: Num) -> bool:
    """Takes "and the last two sts" before "together": the same at the other end of the row."""
    at = cur.at
    if cur.low(-1) in NOUNS or cur.kind(-1) == "num":
        cur.accept("and")
        cur.accept("the")
        if cur.accept("last", "final") and cur.kind() == "num" and cur.number() == number:
            cur.at += 1
            cur.accept(*NOUNS)
            return True
    cur.at = at
    return False


WAY = re.compile(
    r"\b(?:to|until) (?:the |you reach the )?(?:next |first )?"
    r"(?:corner|sp\b|space|loop|lp\b|ch-?\d)"
)


def drawn_as_one(cur: Cursor, stitch: Stitch, place: Place) -> tuple[Stitch, Place]:
    """ "sc next 2 sts together": the decrease, in no place of its own; else both as they are."""
    if stitch.takes > 1 and place.noun == "sp" and place.chain == stitch.takes:
        # "tr3tog over next 3 ch": the three that become one, not the space of three.
        below = Num((place.chain,))
        return stitch, replace(place, noun="ch", chain=0, number=below)
    if stitch.kind is Kind.SLIP and place.where is Where.EACH and WAY.search(place.text.lower()):
        # "sl st in each dc to corner": only the way there.
        return stitch, replace(place, where=Where.NEXT, noun="sp", each=False)
    amount = place.number.values[0]
    plain = cur.book.craft is Craft.CROCHET and stitch.takes == stitch.makes == 1
    over = plain and amount > 1 and place.where in (Where.NEXT, Where.FIRST, Where.LAST)
    made = stitch_named(f"{stitch.name}{amount}tog", Craft.CROCHET) if over else None
    if made is None or not cur.accept(*AS_ONE):
        return stitch, place
    return made, Place(Where.PLAIN, place.span)


def drawn_together(cur: Cursor, name: str, number: Num | None) -> Stitch | None:
    """ "2 tog", "two together", "2tog" after a stitch: the decrease it makes."""
    amount, took = 0, 0
    words = TOGETHER if cur.book.craft is Craft.CROCHET else (*TOGETHER, "t")
    if cur.kind() == "num" and cur.low(1) in words:
        amount, took = cur.peek().value, 2
    elif cur.low() in words and number is not None:
        amount, took = number.values[0], 1
    if not took or not 1 < amount < 30:
        return None
    made = stitch_named(f"{name}{amount}tog", cur.book.craft)
    if made is None:
        return None
    cur.at += took
    cur.accept("b", "through the back loops", "through the back of the loops", "through backs")
    return made


def place_or_plain(cur: Cursor) -> Place:
    """The place that stands here, taken; a plain one where none does."""
    start = cur.at
    if cur.low() in ("all", "down", "right", "straight") and cur.low(1) in ("in", "into"):
        cur.at += 1
    slips = {"sl", "ss", "slip"} & {cur.low(-back) for back in range(1, 4)}
    if slips and cur.low() in ("across", "along", "over", "around") and cur.low(1) in TO:
        # "sl st across to the corner": the way there, and no whole row.
        cur.at += 1
    if cur.low() in (",", ";", ".", "", "(", ")", "[", "]", "and", "then") or cur.kind() == "stars":
        return Place(Where.PLAIN, cur.span(max(start - 1, 0)))
    place = find_place(cur)
    if place is None:
        return Place(Where.PLAIN, cur.span(max(start - 1, 0)))
    if place.where is Where.PLAIN:
        more = find_place(cur)
        place = more or place
    return place
