"""The place just worked in, said again: "in that dc", "in the joining st", "the ch that holds the
last sc".
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_nouns import find_noun, take_after
from reader.pattern.place_words import CHAIN_NOUNS
from reader.pattern.tree import Place, Where

ENDS = frozenset({*STOPS, "make", "work"})
"""What follows a place that is told by what was worked there."""
GOES_ON = ("in", "into", "each", "every", "next", "all", "around", "across", "then")
"""Behind "and", where the work goes on to."""


def that_one(cur: Cursor, start: int) -> Place | None:
    """ "in that dc", "in the joining st": the place just worked in."""
    at = cur.at
    cur.accept("the")
    joined = cur.low() == "joining"
    cur.at += 1
    noun = find_noun(cur) or ("st" if joined and cur.low() in {",", "", *STOPS} else "")
    if not noun:
        cur.at = at
        return None
    take_after(cur)
    return Place(Where.SAME, cur.span(start), noun=noun, text="same " + cur.said(start))


REST_OF = tuple(
    f"{the}{rest} of{the_}" for the in ("", "the ")
    for rest in ("remainder", "rest", "balance", "remaining part", "remaining half", "other half",
                 "other part", "unworked part", "remaining portion", "second half", "2nd half")
    for the_ in ("", " the")
)  # fmt: skip


def _rest_of_loop(cur: Cursor, start: int) -> Place | None:
    """ "over remainder of 1st loop": the loop that has stitches already."""
    at = cur.at
    if not cur.accept(*REST_OF):
        return None
    cur.accept("same", "first", "1st", "last", "previous", "that", "this", "beginning", "starting")
    if find_noun(cur) == "sp":
        take_after(cur)
        return Place(Where.SAME, cur.span(start), noun="sp", text="same " + cur.said(start))
    cur.at = at
    return None


FORMED = tuple(
    f"{how} by" for how in ("formed", "made", "closed", "completed", "just formed", "just made")
)
"""Behind a loop: it is the one that the tall stitch closed."""
FORMED_OF = tuple(
    f"{how} {of}{the}" for how in ("formed", "made") for of in ("with", "by", "of")
    for the in (" the", " those", "")
)
"""Behind a loop, before the number of its chains."""


def that_holds(cur: Cursor, start: int) -> Place | None:
    """ "in the ch that holds the last sc", "the st in which the last was worked": the same "
    "place; and what is left of a loop."""
    at = cur.at
    if (rest := _rest_of_loop(cur, start)) is not None:
        return rest
    noun = find_noun(cur)
    if noun and cur.accept("that holds", "that held", "holding", "in which", "where"):
        nexts = cur.low(cur.low() == "the") in ("next", "following")
        while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
            cur.at += 1
        if nexts:
            # "in st where next tr was made": one place on for each.
            return Place(Where.NEXT, cur.span(start), noun="st")
        return Place(Where.SAME, cur.span(start), noun=noun, text="same " + cur.said(start))
    formed = cur.any_words(FORMED_OF) if noun == "sp" else 0
    if formed and cur.kind(formed) == "num":
        chain = cur.peek(formed).value
        cur.at += formed + 1 + (cur.low(formed + 1) in CHAIN_NOUNS)
        return Place(Where.NEXT, cur.span(start), noun="sp", chain=chain)
    if noun and cur.accept(*FORMED):
        while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
            cur.at += 1
        return Place(Where.SAME, cur.span(start), noun=noun, text=f"{cur.said(start)} just made")
    cur.at = at
    return None


WHICH = ("first", "1st", "last", "other", "previous", "beginning", "starting")
"""Behind "in same st as": of which stitches it is told, "the first 2 sc"."""


def same_as_what(cur: Cursor) -> None:
    """Takes "as first sc" behind "in same st"."""
    cur.accept("place", "spot")
    begun = cur.at > 2 and cur.low(-1) in WHICH and {cur.low(-2), cur.low(-3)} & {"as", "with"}
    if cur.low() in ("as", "with", "where") or (cur.low(-1) == "where" and cur.at) or begun:
        while not cur.done() and cur.low() not in ENDS and cur.kind() != "stars":
            if cur.low() == "and" and (cur.low(1) in GOES_ON or cur.kind(1) == "num"):
                break
            cur.at += 1


FASTENED = frozenset(
    ["sl", "ss", "slip", "join", "joined", "joining", "yarn", "thread", "fastened"]
)
DONE_THERE = frozenset(
    ["made", "worked", "joined", "join", "fastened", "attached", "started", "began", "done"]
)


def where_joined(cur: Cursor, start: int) -> Place | None:
    """ "where the sl st was made", "where you joined": the stitch that the round was joined to, or
    the yarn fastened in; None (nothing taken) for other clauses.
    """
    ahead, lows = 1, set()
    while cur.low() == "where" and cur.low(ahead) not in (",", *STOPS, "") and ahead < 10:
        lows.add(cur.low(ahead))
        ahead += 1
    if not (FASTENED & lows and DONE_THERE & lows):
        return None
    cur.at += ahead
    return Place(Where.SAME, cur.span(start), noun="st", text="same st " + cur.said(start))
