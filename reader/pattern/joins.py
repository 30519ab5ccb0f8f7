"""Joins: "join with sl st in first sc", "sl st to top of ch-3", the bare slip stitch that closes a
round.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.list_words import ENDS_GROUP
from reader.pattern.phrasing import act_here, take_phrase
from reader.pattern.place_words import SPACE_NOUNS
from reader.pattern.tree import Act, Deed, Node, Work
from reader.terms.stitches import Craft, Kind

JOIN_STARTS = (
    "join with",
    "join to",
    "join in",
    "join",
    "joining",
    "sl st to join",
    "ss to join",
    "close",
    "connect",
    "form it into a", "form them into a", "form into a", "form this into a",
    "unite into a", "unite the ends", "unite it into a", "unite them into a", "unite",
    "unite it", "unite them", "unite the chain", "unite the round", "unite the two ends",
    "slip stitch to join",
    "sl st join",
)
CLOSING = ("to join", "join", "to close", "to form", "together to form", "together to make",
           "together", "tog to form", "to make a ring", "with the top of", "with top of",
           "with first", "with the first")  # fmt: skip
CLOSES_PICOT = re.compile(
    r"(?:the )?top of (?:the )?(?:last )?[\w ]{1,12}?(?: just)?(?: made)? "
    r"(?:for|to complete|to form|to make|\() ?(?:a )?picot"
    r"|(?:the )?top of (?:the )?(?:last )?[\w ]{1,10}(?:just )?made\b"
)
"""A slip stitch that makes a picot of the chain before it: "sl st in top of dc just made"."""
JOINED_TO = (
    "top of", "tip of", "the tip of", "tip of the", "center of 1st", "center of first",
    "very first", "the very first",
    "first", "1st", "2nd ch", "3rd", "4th", "5th", "top", "beg", "the first", "the top",
    "beginning", "first sc",
    "join", "last st of",
)  # fmt: skip
"""A slip stitch into one of these joins the round; into anything else it travels."""
NO_COLOUR = frozenset(
    [
        "with",
        "to",
        "in",
        "and",
        "each",
        "round",
        "rnd",
        "by",
        "into",
        "st",
        "sl",
        "ss",
        "being",
        "last",
    ]
)


INTO_RING = re.compile(
    r"(?:which (?:i|you|we) |and |then )?(?:closed?|joined|joining|connect(?:ed)?|link(?:ed)?"
    r"|form(?:ed)?"
    r"|turned|made|united?|tied)(?: (?:it|them|these|this|that|up|together|the (?:chain|ends)))*"
    r" (?:in)?to (?:(?:a|the|one|your|little|small|tiny|neat|big|large|wide|long) )*"
    r"(?:ring|circle|round|loop)\b"
    r"(?: (?:with|by|using) (?:a |one |1 )?(?:sl st|slip stitch|ss|sl)\b(?: (?:in|into|to) (?:the"
    r" )?"
    r"(?:first|1st)(?: (?:one|ch|chain|of them))?)?)?",
    re.IGNORECASE,
)
"""A chain that is closed to a ring, in whatever words."""
CLOSES = frozenset(
    ["closed", "close", "joined", "joining", "connect", "connected", "link", "linked", "form",
     "formed", "turned", "made", "unite", "united", "tied", "which"]
)  # fmt: skip


def into_ring(cur: Cursor, start: int) -> Act | None:
    """ "Closed into a little ring", taken; None (nothing taken) elsewhere."""
    if cur.low() not in CLOSES or cur.book.craft is not Craft.CROCHET:
        return None
    begin = cur.tokens[cur.at].start
    found = INTO_RING.match(re.sub(r"\s", " ", cur.text[begin : begin + 110]))
    if found is None:
        return None
    while not cur.done() and cur.tokens[cur.at].start < begin + found.end():
        cur.at += 1
    return act_here(cur, start, Deed.JOIN, "join to ring")


JOINING = frozenset(["join", "attach", "rejoin", "re-join", "joining", "attaching", "fasten",
                     "begin", "start"])  # fmt: skip
FARTHEST = 9
"""Tokens between "join" and the "with" of its stitch: the yarn, and where it was."""


def _joins_with_stitch(cur: Cursor) -> bool:
    """ "join with sc", "attach blue to any corner with a standing dc": a stitch of the row, where
    the row begins or a chain stands before it.
    """
    length = _with_stitch(cur) if cur.low() in JOINING else 0
    found = cur.stitch(length) if length else None
    if found is None or found.stitch.kind is Kind.SLIP or cur.low(length) in ("ch", "chain"):
        return False
    return not any(cur.stitch(-back) and cur.low(-back) != "ch" for back in range(1, cur.at + 1))


def _with_stitch(cur: Cursor) -> int:
    """How many tokens lead from "join" to the stitch that it is joined with, 0 where none does."""
    for ahead in range(1, FARTHEST):
        low = cur.low(ahead)
        if low in STOPS or cur.kind(ahead) == "stars" or not low:
            return 0
        if low in ("w", "with", "using"):
            at = ahead + 1 + (cur.low(ahead + 1) == "/")
            at += cur.low(at) in ("a", "an", "one", "the")
            at += cur.low(at) in ("standing", "starting")
            if cur.stitch(at) is not None and cur.kind(at) != "num":
                return at
    return 0


def _begins_anywhere(cur: Cursor) -> bool:
    """Whether "start in any ch-2 space:" stands here: where the yarn is joined."""
    if cur.low() not in ("start", "begin", "starting", "beginning") or cur.low(1) != "in":
        return False
    if cur.low(2) not in ("any", "a", "one"):
        return False
    for ahead in range(3, FARTHEST):
        if cur.low(ahead) in STOPS:
            return False
        if cur.low(ahead) in SPACE_NOUNS:
            return cur.low(ahead + 1) in STOPS
    return False


def find_join(cur: Cursor, start: int) -> Node | None:
    """The join that stands here, or the yarn that is joined, taken; None when there is none."""
    if _joins_with_stitch(cur):
        cur.at += _with_stitch(cur)
        return act_here(cur, start, Deed.JOIN, "join with stitch")
    if _begins_anywhere(cur):
        take_phrase(cur)
        return act_here(cur, start, Deed.COLOUR)
    slip = _slip_stitch(cur)
    if (
        slip
        and cur.book.craft is Craft.CROCHET
        and cur.any_words(CLOSING, slip)
    ):
        cur.at += slip
    elif slip and cur.book.craft is Craft.CROCHET and cur.low(slip) in ONTO:
        rest = " ".join(cur.low(slip + n) for n in range(1, 13))
        if FORMS_RING.match(rest):
            take_phrase(cur)
            return act_here(cur, start, Deed.JOIN, cur.said(start).lower())
        if not rest.startswith(JOINED_TO) or "hook" in rest or _goes_to_space(cur, slip):
            return None
        if OVER_SEVERAL.match(rest):
            return None
        cur.at += slip
        if CLOSES_PICOT.match(rest):
            take_phrase(cur)
            return act_here(cur, start, Deed.NOTE)
    elif slip and cur.book.craft is Craft.CROCHET and _to_beginning(cur, slip):
        cur.at += slip
    elif slip and cur.book.craft is Craft.CROCHET and _ends_row(cur, slip):
        cur.at += slip
        return act_here(cur, start, Deed.JOIN, "sl st")
    elif not cur.any_words(JOIN_STARTS):
        return None
    if cur.low() == "join" and cur.low(1) and cur.low(1) not in STOPS and _is_colour_join(cur):
        take_phrase(cur)
        return act_here(cur, start, Deed.COLOUR)
    take_phrase(cur)
    return act_here(cur, start, Deed.JOIN, cur.said(start).lower())


OVER_SEVERAL = re.compile(
    r"(?:each of )?(?:the )?(?:first|1st) (?:[2-9]|\d\d|two|three|four|five|six|seven|eight)"
    r" (?:sts?|stitches|s ?c|h?d ?c|h?tr)\b"
)
"""Behind "sl st in", what is passed over at a row's beginning: no join goes into several."""
ONTO = ("in", "to", "into", "with", "on", "upon", "onto")
WORKS = frozenset(["ch", "chain", "rep", "repeat", "work", "(", "[", "sk", "skip", "miss"])
"""Behind a slip stitch these show that the row goes on."""


def _goes_to_space(cur: Cursor, slip: int) -> bool:
    """Whether a slip stitch at the row's start only goes on to a space: "sl st to first ch-2 "
    "sp"."""
    if any(cur.stitch(-back) for back in range(1, cur.at + 1)):
        return False
    for ahead in range(slip + 1, slip + 8):
        if cur.low(ahead) in STOPS or cur.low(ahead) in ("and", "of"):
            return False
        if cur.low(ahead) in SPACE_NOUNS:
            return True
    return False


FORMS_RING = re.compile(
    r"(?:(?:the )?(?:first|1st|beginning) ch(?:ain)? |(?:\w+ ){0,4}from (?:the )?hook )"
    r"(?:, )?(?:to|and) (?:form|make|create|join)(?: into)?"
    r" (?:an? |the |your )?(?:(?:big|large|wide|long|little|small) )?(?:ring|loop|circle)\b"
)
"""A slip stitch that closes a chain: "sl st in 5th ch from hook to form ring"."""
BEGINNING = ("top", "top of", "first", "1st", "beg", "beginning", "the first", "the top")


def _to_beginning(cur: Cursor, slip: int) -> bool:
    """ "sc around, sl st top beg sc": the join of a round that was worked, without its "to"."""
    length = cur.any_words(BEGINNING, slip)
    worked = any(cur.stitch(-back) for back in range(1, cur.at + 1))
    return length > 0 and worked and cur.kind(slip + length) not in ("num", "stars")


def _slip_stitch(cur: Cursor) -> int:
    """How many words the slip stitch that stands here has, 0 where none stands here."""
    found = cur.stitch()
    named = found is not None and found.stitch.kind is Kind.SLIP
    return cur.any_words(("sl st", "ss", "slip st", "slip stitch", "sl")) or (
        found.length if found is not None and named else 0
    )


def group_over(cur: Cursor, made: Sequence[Node]) -> bool:
    """Whether the list of what shares a place (made, as far as it is read) is over here: not by the
    slip stitch of a picot, nor by that of a petal that began with one, "sl st, hdc, 3 dc, hdc, sl
    st".
    """
    ahead = int(cur.low() in (",", "and") and cur.low(1) in ENDS_GROUP)
    if cur.low(ahead) not in ENDS_GROUP:
        return False
    if cur.low(ahead) not in ("sl", "ss", "slip"):
        return True
    first = next((one for one in made if not isinstance(one, Act)), None)
    petal = isinstance(first, Work) and first.stitch.kind is Kind.SLIP
    if cur.book.craft is Craft.CROCHET and (petal or (first is None and not ahead)):
        return False
    said = " ".join(cur.low(ahead + n) for n in range(1, 11))
    return PICOT_SLIP.match(said) is None


PICOT_SLIP = re.compile(rf"(?:(?:st|stitch) )?in(?:to)? (?:{CLOSES_PICOT.pattern})")


def _ends_row(cur: Cursor, slip: int) -> bool:
    """Whether a bare slip stitch stands at the end of a row, where it joins the round: nothing is
    worked behind it.
    """
    before = cur.low(-1) in (",", ";", ".", ")", "]")
    if not before or cur.low(slip) not in ("", ".", ";", ","):
        return False
    return not any(
        cur.kind(ahead) in ("num", "stars", "times")
        or cur.stitch(ahead) is not None
        or cur.low(ahead) in WORKS
        for ahead in range(slip, len(cur.tokens) - cur.at)
    )


def _is_colour_join(cur: Cursor) -> bool:
    return cur.low(1) not in NO_COLOUR
