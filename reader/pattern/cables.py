"""Ribs and crossings told in words: "K 1, P 1 across last 6 sts", "slip 3 sts on a cable needle, K
next 3 sts, K the sts from the needle", "skip 1 st, K next st, K skipped st, sl both off" -> Work.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.drops import find_drop
from reader.pattern.tree import Act, Node, Num, Place, Unread, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.numbers import UNITS
from reader.terms.stitches import Craft

NOUNS = ("sts", "st", "stitches", "stitch")
PLAIN = frozenset(["k", "p", "knit", "purl", "pearl", "seam"])
RIBS = ("rib", "ribbing", "seed st", "moss st", "in rib", "seed stitch", "moss stitch")
OVER = ("across the", "across", "over the", "over", "for the", "for", "on the", "on", "to the")
WHICH = ("first", "1st", "next", "last", "following", "foll", "remaining", "rem", "center",
         "centre", "other", "end")  # fmt: skip


def find_cable(cur: Cursor, made: list[Node]) -> Node | None:
    """The stitches that stand here so, taken; None (nothing taken) when none do. made: what was
    read of the row before them.
    """
    if cur.book.craft is not Craft.KNITTING:
        return None
    start, node = cur.at, find_drop(cur)
    for reading in (_panel, _ribbed, _crossed):
        cur.at = start if node is None else cur.at
        node = node or reading(cur, start)
    cur.at = start if node is None else cur.at
    node = node or _off_the_needle(cur, start, made)
    cur.at = start if node is None else cur.at
    return node


def _so_many(cur: Cursor, start: int, number: Num | None) -> Work | None:
    stitch = stitch_named("st", cur.book.craft)
    if stitch is None or number is None:
        return None
    place = Place(Where.PLAIN, cur.span(start))
    return Work(cur.span(start), cur.said(start), stitch, number, place)


def _plain_stitch(cur: Cursor) -> bool:
    """Takes "K 1"."""
    if cur.low() not in PLAIN or cur.kind(1) != "num":
        return False
    cur.at += 2
    return True


def _ribbed(cur: Cursor, start: int) -> Node | None:
    """ "K 1, P 1 across 1st 6 sts", "K1 P1 rib for next 8 sts": so many stitches in a rib that is
    spelled out once.
    """
    if cur.low() not in PLAIN:
        return None
    first = cur.low()
    if not _plain_stitch(cur):
        return None
    cur.accept(",", "and", ", and")
    if cur.low() == first or not _plain_stitch(cur):
        return None
    cur.accept(",")
    ribs = cur.accept(*RIBS)
    over = cur.accept(*OVER)
    cur.accept(*WHICH)
    number = cur.number() if cur.kind() == "num" else None
    if number is None or not (ribs or over) or cur.low(1) not in NOUNS:
        return None
    cur.at += 2
    cur.accept("from cable needle", "from cn", "from dpn", "from the cable needle")
    return _so_many(cur, start, number)


IN_PATTERN = ("pattern st", "pattern stitch", "pat st", "patt st")
PANELS = (*IN_PATTERN, "chart", "panel", "pattern panel",
          "cable panel", "lace panel", "motif", "diagram",
          "cable pattern", "centre panel", "center panel", "charts", "panels", "graph")  # fmt: skip
ROWS = ("row", "rnd", "round", "rows")


def _panel(cur: Cursor, start: int) -> Node | None:
    """ "work 1st row of Panel A over next 10 sts": so many; not to be read where no number says how
    many.
    """
    if not cur.accept("work", "working", "knit", "k", "patt", "follow", "pattern", "work across"):
        return None
    cur.accept("the", "from", "in")
    if cur.kind() == "ord" or cur.low() in ("next", "first", "last", "same"):
        cur.at += 1
    row = cur.accept(*ROWS)
    if row and cur.kind() == "num":
        cur.at += 1
    cur.accept("of", "from")
    cur.accept("the", "cable", "lace", "centre", "center", "appropriate")
    known = cur.any_words(IN_PATTERN)
    if not cur.accept(*PANELS) and cur.low(-1) != "cable":
        return None
    if len(cur.low()) == 1 or cur.kind() == "num":
        cur.at += cur.low() not in (*STOPS, "k", "p") and cur.low(1) not in NOUNS
    over = cur.accept(*OVER)
    cur.accept(*WHICH)
    number = cur.number() if cur.kind() == "num" and cur.low(1) in NOUNS else None
    if number is not None and (over or cur.low(-1) not in ("of",)):
        cur.at += 2
        return _so_many(cur, start, number)
    if known or cur.low() not in (*STOPS, "", "and", "then"):
        return None
    return Unread(cur.span(start), cur.said(start))


CROSSING = (
    "cable needle", "cn", "cable", "dpn", "dp needle", "double pointed needle", "spare needle",
    "double pointed needles", "extra needle", "needle", "holder",
)  # fmt: skip
WAITING = re.compile(
    r"^(?:sl|slip|place|put)\w* (?:the )?(?:next |first |1st |following )?(?P<n>\d+|\w+) "
    r"(?:sts?|stitches)\b.*\b(?:on|to|onto)\b",
    re.IGNORECASE,
)


def _off_the_needle(cur: Cursor, start: int, made: list[Node]) -> Node | None:
    """ "K the sts from dpn": as many as were slipped to it in this row."""
    if cur.low() not in PLAIN and cur.low() != "work":
        return None
    cur.at += 1
    cur.accept("across")
    cur.accept("the", "those", "these", "all", "off")
    number = cur.number() if cur.kind() == "num" else None
    cur.at += number is not None
    cur.accept("slipped", "held", "waiting")
    named = cur.accept(*NOUNS, "them")
    if not cur.accept("from", "off", "on", "of") or not (named or number is None):
        return None
    cur.accept("the", "a", "your")
    if not cur.accept(*CROSSING):
        return None
    told = [WAITING.match(one.words) for one in made if isinstance(one, Act)]
    last = next((one for one in reversed(told) if one), None)
    if last is None:
        return None
    said = last["n"].lower()
    waited = int(said[:3]) if said.isdigit() else UNITS.get(said, 0)
    return _so_many(cur, start, number or (Num((waited,)) if waited else None))


BEGINS = re.compile(
    r"(?:skip|miss|pass over|pass by) (?:the )?(?:next |first |1st )?(?P<n>1|2|3|one|two|three)? ?"
    r"(?:sts?|stitch(?:es)?)\b"
    r"|(?:k|knit|p|purl|pearl)(?: into| in| through)?(?: the)?(?: back| front)?(?: loop)?(?: of)?"
    r"(?: the)? (?P<m>2nd|second|3rd|third) (?:st|stitch)\b"
)
LONGEST = 50
"""Tokens in which a crossing is told."""
ALL_OFF = re.compile(
    r"\b(?:sl|slip|drop|let|take|pull|slipping|dropping)\b(?: the)? (?:both|all|all 3|two|three|2|3"
    r"|them|the two)\b[a-z ]{0,24}\boff\b(?: (?:the )?(?:left |l |left hand )?(?:hand )?"
    r"(?:needle|pin)s?)?(?: together| tog| at once)?"
)


def _crossed(cur: Cursor, start: int) -> Node | None:
    """ "skip 1 st, K next st and leave it on needle, K skipped st, sl both sts off": as many as
    were there.
    """
    if cur.low() not in ("skip", "miss", "pass", "k", "knit", "p", "purl", "pearl"):
        return None
    said, ends = "", [0]
    for ahead in range(LONGEST):
        low = cur.low(ahead)
        if cur.kind(ahead) in ("stars", "end") or low in ("(", "["):
            break
        said += low if low in STOPS or not said else f" {low}"
        ends.append(len(said))
    begun, off = BEGINS.match(said), ALL_OFF.search(said)
    if begun is None or off is None:
        return None
    named = begun["n"] or begun["m"] or "1"
    amount = {"1": 2, "one": 2, "2nd": 2, "second": 2, "2": 3, "two": 3, "3rd": 3, "third": 3}
    cur.at += next(at for at, end in enumerate(ends) if end >= off.end())
    return _so_many(cur, start, Num((amount.get(named, 4),)))
