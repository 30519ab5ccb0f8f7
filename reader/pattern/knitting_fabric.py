"""Knitting by fabric: "rib 20", "patt to last 2 sts", "3 L, 1 D", "knit these" -> Work, Shape."""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.in_manner import find_in_manner
from reader.pattern.places import find_place
from reader.pattern.tree import ONE, Act, Deed, Edge, Node, Num, Place, Shape, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Stitch

NOUNS = ("sts", "st", "stitches", "stitch", "loops", "loop")
ENDS = (
    "at each end of needle", "at each end of the needle", "at each end of the row",
    "at each end of row", "at each end", "each end of row", "each end of needle", "each end",
    "at both ends of row", "at both ends of the row", "at both ends of needle", "at both ends",
    "both ends", "at each side", "at either end", "at either side", "at beginning and end of row",
    "at beginning and end of the row", "at the beginning and end of the row",
    "at the beginning and end of row", "at beg and end of row", "at beginning and end",
    "at beg and end", "at the beginning and the end of the row", "at the beginning and end",
)  # fmt: skip
ONE_END = tuple(
    f"at {the}{end}{row}"
    for the in ("the ", "")
    for end in ("beginning", "beg", "commencement", "end", "start")
    for row in (" of the row", " of row", " of each row", " of every row", " of the round",
                " of the needle", " of needle", "")
)  # fmt: skip
"""Behind a change that ends the row's words: once, and the rest as it is."""


def find_fabric(cur: Cursor) -> Node | None:
    """Stitches of a fabric that is known already, taken; None (nothing taken) when none stand here.
    """
    if cur.book.craft is not Craft.KNITTING:
        return None
    start = cur.at
    for reading in (
        _in_that_row, find_in_manner, _what_is_left, _in_fabric, _slipped_together, _in_colour,
        _manner, _chain_edge,
    ):  # fmt: skip
        node = reading(cur, start)
        if node is not None:
            return node
        cur.at = start
    return None


def at_ends(cur: Cursor, start: int, gain: int, number: Num | None) -> Shape | None:
    """ "k 2 tog at each end": a change at both ends of the row, or at one; None where no such words
    follow.
    """
    at = cur.at
    if cur.accept(*ONE_END):
        if cur.low() in (".", "", ";"):
            return Shape(cur.span(start), cur.said(start), gain, number or ONE, 1)
        cur.at = at
    if not cur.accept(*ENDS):
        return None
    return Shape(cur.span(start), cur.said(start), gain, number or ONE, 2)


def worked(
    cur: Cursor, start: int, name: str, number: Num | None, counted: bool = False
) -> Node | None:
    """The stitch of that name that many times, or a change at both ends where such words follow;
    None for an unknown name. counted: the number was said as times.
    """
    stitch = stitch_named(name, cur.book.craft)
    if stitch is None:
        return None
    ends = at_ends(cur, start, stitch.makes - stitch.takes, number)
    if ends is not None:
        return ends
    place = _to_the_end(cur) if number is None and stitch.takes else None
    place = place or Place(Where.PLAIN, cur.span(start))
    by = number if counted else None
    return Work(cur.span(start), cur.said(start), stitch, number, place, by=by)


def _to_the_end(cur: Cursor) -> Place | None:
    """ "take in to the end": how far; None (nothing taken) where no such words stand here."""
    at = cur.at
    place = find_place(cur) if cur.low() in ("to", "until", "till", "across", "all") else None
    if place is not None and place.where in (Where.REST, Where.TO_LAST):
        return place
    cur.at = at
    return None


def _in_that_row(cur: Cursor, start: int) -> Act | None:
    """ "In the second row", "on next row": which row it is, and no place in it."""
    if not cur.accept("in", "on"):
        return None
    cur.accept("the", "this")
    which = cur.kind() == "ord" or cur.low() in ("next", "following", "same", "last", "final")
    cur.at += which
    if not which or not cur.accept("row", "round", "rnd", "needle", "row of all"):
        return None
    return Act(cur.span(start), cur.said(start), Deed.NOTE)


LEFT_TO_KNIT = (
    "knit these", "purl these", "pearl these", "knit those", "knit them", "purl them", "k these",
    "p these", "k those", "which are knitted", "which must be knitted", "which are purled",
    "which must be purled", "which are pearled", "which must be pearled", "which you knit",
    "which you purl", "which knit", "which purl", "which knit plain", "which are knitted plain",
    "which are plain", "knit these plain", "knit them plain", "which must be plain",
    "which are knit", "which is knitted", "which must be knit",
)  # fmt: skip
"""Stitches named just before, of which nothing else is said."""


def _what_is_left(cur: Cursor, start: int) -> Node | None:
    """ "until 9 remain, knit these"; "..., knitting last 10"."""
    stitch = stitch_named("k", cur.book.craft)
    if stitch is None:
        return None
    if cur.accept(*LEFT_TO_KNIT):
        if cur.low() in ("together", "tog"):
            return None
        place = Place(Where.REST, cur.span(start))
        return Work(cur.span(start), cur.said(start), stitch, None, place)
    if cur.low() not in ("knitting", "purling", "pearling"):
        return None
    cur.at += 1
    cur.accept("the")
    last = cur.accept("last", "remaining", "final")
    number = cur.number() if cur.kind() == "num" else None
    cur.at += number is not None
    cur.accept(*NOUNS)
    at_end = cur.accept("at end", "at the end", "at end of row", "plain")
    if cur.low() not in (*STOPS, "", "and") or not (last or (number is not None and at_end)):
        return None
    place = Place(Where.PLAIN, cur.span(start))
    return Work(cur.span(start), cur.said(start), stitch, number or ONE, place)


_CALLED = (
    "patt", "pattern", "pat", "rib", "ribbing", "seed", "seed st", "seed stitch", "moss", "moss st",
    "moss stitch", "m st", "garter", "garter st", "garter stitch", "g st", "stockinette",
    "stockinette st", "stocking st", "stocking stitch", "st st", "reverse st st", "rev st st",
)  # fmt: skip
"""What a fabric is called, which is worked over so many stitches."""
OF_A_PART = frozenset(["the", "face", "neck", "front", "back", "wrist", "waist", "edge", "of"])
"""Before a fabric's name, it is a part of the piece: "at the edge of the face ribbing"."""
FABRICS = (
    "knit in pattern", "k in patt", "knit in patt", "k in pattern", "continue in pattern",
    "cont in patt", "continue in patt", "keep in patt", "work",
    "work cable", "cable", "work cables", "work twist", "twist", "work cross", "cross",
    "cable twist", "cable cross", "make cable", "make twist", "work chart", "work even",
    *(f"{lead}{one}" for one in _CALLED for lead in ("", "work in ", "in ", "work ")),
)  # fmt: skip


THE_REST = tuple(
    f"{rest}{of}"
    for rest in ("remaining sts", "rem sts", "remaining stitches", "the remaining sts", "the rest",
                 "the rem sts", "the remaining stitches", "rest", "other sts", "the other sts")
    for of in (" of row", " of the row", " of round", " of the round", "")
)  # fmt: skip
GOES_ON = frozenset(["patt", "pattern", "rib", "ribbing"])
"""A fabric that alone means the rest of the row."""


def _in_fabric(cur: Cursor, start: int) -> Node | None:
    """ "rib 20", "patt to last 2 sts", "6 plain": stitches of a fabric that is known already."""
    plain = cur.kind() == "num" and cur.low(1) in ("plain", "even") and cur.low(2) in (*STOPS, "")
    number = cur.number() if plain else None
    if plain:
        cur.at += 2
    elif (cur.low(-1) in OF_A_PART and cur.any_words(_CALLED)) or not cur.accept(*FABRICS):
        return None
    back = taken_up(cur, start, None) if not plain else None
    if back is not None:
        return back
    cur.accept("across", "over", "on")
    at = cur.at
    cur.accept("the")
    cur.accept("remaining", "rem", "other", "last", "first", "1st", "next", "center", "centre")
    if cur.kind() != "num":
        cur.at = at
        cur.accept("the next", "next", "the")
    stitch = stitch_named("st", cur.book.craft)
    if stitch is None:
        return None
    if not plain and cur.kind() == "num" and cur.low(1) in (*STOPS, "", *NOUNS):
        number = cur.number()
        cur.at += 1
        cur.accept(*NOUNS)
    if number is not None:
        if cur.low() in ("of", "on", "from", "tog", "together"):
            return None
        cur.accept(*AS_IT_IS)
        place = Place(Where.PLAIN, cur.span(start))
        return Work(cur.span(start), cur.said(start), stitch, number, place)
    return None if plain else _rest_in_fabric(cur, start, stitch)


AS_IT_IS = ("as before", "as set", "in patt", "in pattern", "in rib", "in ribbing", "in pattern st",
            "in pat st", "in pat", "in stockinette st", "in seed st", "in garter st")  # fmt: skip


def _rest_in_fabric(cur: Cursor, start: int, stitch: Stitch) -> Node | None:
    """ "work remaining sts as set", "patt to last 2 sts": how far the fabric goes."""
    if cur.accept(*THE_REST):
        cur.accept(*AS_IT_IS)
        place = Place(Where.REST, cur.span(start))
        return Work(cur.span(start), cur.said(start), stitch, None, place)
    found = find_place(cur)
    if found is None and cur.low() in (*STOPS, "") and cur.low(-1) in GOES_ON:
        found = Place(Where.REST, cur.span(start))
    if found is None or found.where not in (Where.REST, Where.TO_LAST, Where.UNUSED):
        return None
    return Work(cur.span(start), cur.said(start), stitch, None, found)


def _chain_edge(cur: Cursor, start: int) -> Node | None:
    """ "1 chain": the edge stitch of old lace; "8 chain": so many cast off."""
    if cur.kind() != "num" or cur.low(1) not in ("chain", "chains"):
        return None
    number = cur.number()
    cur.at += 2
    if number is not None and number.values[0] > 1:
        return Edge(cur.span(start), cur.said(start), number, False)
    return worked(cur, start, "sl", number)


def _one_row(cur: Cursor) -> bool:
    """ "knit 1 row, increasing in every stitch": the row is told by what follows."""
    counted = cur.kind(1) == "num" and cur.peek(1).value == 1
    ahead = 3 + (cur.low(3) == ",")
    return counted and cur.low(2) in ("row", "rnd", "round") and (
        cur.low(ahead).startswith("inc")
        or (cur.low(ahead) in WORKING and cur.kind(ahead + 1) == "num")
    )


WORKING = ("working", "knitting", "purling", "taking", "pearling")
MANNERS = frozenset(
    ["letting", "putting", "keeping", "being", "holding", "winding", "wrapping", "inserting",
     "remembering", "taking", "dropping", "drawing", "pulling"]
)  # fmt: skip
AS_IF = (
    "as if to purl", "as if to knit", "as if for purling", "as if for knitting",
    "as though to purl", "as though to knit", "as if to p", "as if to k", "as for purling",
    "pwise", "kwise", "p wise", "k wise", "purlwise", "knitwise",
    "as for knitting", "as if purling", "as if knitting", "as in purling", "as in knitting",
)  # fmt: skip


def _manner(cur: Cursor, start: int) -> Node | None:
    """ "letting the wool drop", "as if to purl": how it is done, no stitch."""
    if cur.low() in MANNERS and cur.low(1) != "2":
        while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
            cur.at += 1
    elif cur.low() in ("knit", "k", "purl", "p", "work") and _one_row(cur):
        cur.at += 3
    elif cur.accept("knit on with", "knit on these", "knit on to one", "knit on to a"):
        while not cur.done() and cur.low() not in STOPS:
            cur.at += 1
    elif not cur.accept(*AS_IF):
        return None
    return Act(cur.span(start), cur.said(start), Deed.NOTE)


COLOURS = frozenset(
    ["mc", "cc", "main", "contrast", "white", "black", "red", "blue", "green", "yellow", "navy",
     "cream", "grey", "gray", "pink", "brown", "fawn", "dark", "light", "natural", "gold", "orange",
     "purple", "scarlet", "maroon", "beige", "lemon", "mauve", "lilac", "rust", "ivory", "tan",
     "crimson", "camel", "rose", "turquoise", "background", "ground", "pattern", "lt", "dk"]
)  # fmt: skip
NO_LETTERS = frozenset("kpsmonytwx")
"""Letters that are stitches or yarn overs, so no yarn by themselves behind a number."""


def _in_colour(cur: Cursor, start: int) -> Node | None:
    """ "3 L, 1 D", "2 white": so many plain stitches of a colour."""
    if cur.kind() != "num":
        return None
    low = cur.low(1)
    letter = len(low) == 1 and low.isalpha() and (low not in NO_LETTERS or cur.low(2) == ",")
    named = low in COLOURS or (letter and cur.stitch(1) is None)
    length = 3 if cur.low(2) in ("colour", "color", "wool", "yarn", "sts", "st") else 2
    if not named or cur.low(length) not in (*STOPS, "", "and", "to", "*", "rep"):
        return None
    number = cur.number()
    cur.at += length
    place = find_place(cur) if cur.low() == "to" else None
    if place is not None and place.where is Where.REST:
        stitch = stitch_named("k", cur.book.craft)
        return Work(cur.span(start), cur.said(start), stitch, number, place) if stitch else None
    return worked(cur, start, "k", number)


def _slipped_together(cur: Cursor, start: int) -> Node | None:
    """ "sl 2 tog knitwise": two slipped at once."""
    if cur.low() not in ("sl", "slip") or cur.kind(1) != "num":
        return None
    together = 2 if cur.low(2) in ("tog", "together") else 0
    together = 3 if cur.low(2) in NOUNS and cur.low(3) in ("tog", "together") else together
    if not together:
        return None
    number = cur.number(1)
    cur.at += together + 1
    find_place(cur)
    return worked(cur, start, "sl", number)


WAITED = (
    "from holder", "from the holder", "from st holder", "from stitch holder", "from holders",
    "from spare needle", "from the spare needle", "from waste yarn", "off holder", "on holder",
    "left on holder", "left on the needle", "left on needle",
    "from first holder", "from second holder", "from 1st holder", "from 2nd holder",
    "from both holders", "from thread", "on st holder",
)  # fmt: skip
OF_INSTEP = tuple(
    f"{of}{the} instep{needle}"
    for of in ("of", "on", "from", "across", "for", "at") for the in ("", " the")
    for needle in (" needles", " needle", " sts", " stitches", "")
)  # fmt: skip
HELD = ("instep", "held", "waiting", "reserved")


def taken_up(cur: Cursor, start: int, number: Num | None) -> Node | None:
    """ "k 28 instep sts", "k 20 sts from holder": stitches that waited are worked again."""
    at = cur.at
    across = cur.accept("across all the", "across all", "across the", "across", "over the", "over")
    cur.accept("all the", "all", "the")
    number = number or (cur.number() if cur.kind() == "num" else None)
    cur.at += cur.kind() == "num"
    held = cur.accept(*HELD)
    noun = cur.accept(*NOUNS)
    if across and held and cur.low(-1) == "instep" and cur.low() in (*STOPS, ""):
        return Edge(cur.span(start), cur.said(start), number, True, waited=number is None)
    held = (held and noun) or (noun and cur.accept(*OF_INSTEP, *WAITED)) or cur.accept(*WAITED)
    if number is not None and held:
        return Edge(cur.span(start), cur.said(start), number, True)
    if held and noun and cur.low(-1) != "needle":
        return Edge(cur.span(start), cur.said(start), None, True, waited=True)
    cur.at = at
    return None


BETWEEN = frozenset(
    ["first", "last", "next", "remaining", "knitted", "knit", "purled", "pearled", "loose", "other",
     "plain", "slipped", "rem", "following", "1st"]
)  # fmt: skip
"""Words between a number and "stitches": "the 3 first stitches"."""


def the_number(cur: Cursor) -> Num | None:
    """ "knit the 3 first stitches": the number, taken with its noun; "the" alone is taken too."""
    if cur.low(1) in ("first", "last", "next", "remaining"):
        cur.at += 1
        if cur.low() != "remaining" or cur.kind(1) != "num" or cur.low(2) not in NOUNS:
            return None
    if cur.kind(1) != "num" or cur.low(2) in ("tog", "together"):
        return None
    number = cur.number(1)
    cur.at += 2
    while cur.low() in BETWEEN:
        cur.at += 1
    cur.accept(*NOUNS)
    return number
