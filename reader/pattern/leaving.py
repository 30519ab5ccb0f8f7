"""Stitches that stay unworked at a row's end: "leaving the other 6 sc for the top", "the last 8 sts
are not worked" -> LeaveRest.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_nouns import find_noun
from reader.pattern.place_words import STITCH_NOUNS
from reader.pattern.tree import ONE, Act, Chain, Deed, LeaveRest, Node, Place, Skip, Where, Work
from reader.terms.stitches import Craft

LEAVES = frozenset(["leave", "leaving"])
REST = frozenset(["rem", "remaining", "remainder", "rest", "other", "others", "last", "final"])
OF_YARN = frozenset(["loop", "loops", "lp", "lps", "hook", "tail", "end", "yarn", "thread", "inch"])
"""What is left so is no stitch of the row below."""
STAYS = frozenset(["are", "is", "stay", "stays", "remain", "remains", "will", "form", "forms",
                   "become", "make"])  # fmt: skip
LEFT = frozenset(["left", "unworked", "unused", "free", "over", "alone", "waiting"])
STOPS_SHORT = frozenset(["ending", "stopping", "stop", "end", "finishing"])
ONE_SIDE = "one side only"
LONGEST = 14
"""Words of such a phrase."""


def find_leave(cur: Cursor, made: list[Node]) -> LeaveRest | Skip | Act | None:
    """The phrase that stands here, taken; None (nothing taken) where there is none. made: what
    stands before it, which it may cut short.
    """
    amid = _left_amid(cur, made) or _one_side(cur) or _for_a_part(cur)
    if amid is not None:
        return amid
    lows = _phrase(cur)
    if lows and lows[0] in STOPS_SHORT and not _cut_short(cur, lows, made):
        return None
    told = (
        _leaves(cur, lows)
        or _are_left(cur, lows)
        or bool(lows and lows[0] in STOPS_SHORT)
        or (lows[:2] == ["do", "not"] and lows[2:3] == ["work"] and bool(REST & set(lows)))
    )
    if not told:
        return None
    start = cur.at
    if _kept_free(cur, lows):
        _but_those(cur, lows, made)
    short = _of_a_short_row(cur, lows, made)
    cur.at += len(lows)
    if short:
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    return LeaveRest(cur.span(start), cur.said(start))


SIDES = frozenset(["shoulder", "side", "half", "strap", "front", "edge", "piece", "section", "leg"])


def _one_side(cur: Cursor) -> Act | None:
    """ "Working 1 shoulder at a time": the other waits, and what is left at the row's end with it.
    """
    start = cur.at
    if cur.book.craft is Craft.CROCHET and cur.accept("working", "work"):
        cur.accept("on", "only", "on only")
        one = cur.accept("1", "one", "each", "a single") or (
            cur.kind() == "num" and cur.number() == ONE
        )
        cur.at += cur.kind() == "num"
        side = one and cur.low() in SIDES
        cur.at += side
        if side and cur.accept("at a time", "at one time", "only", "separately"):
            return Act(cur.span(start), cur.said(start), Deed.NOTE, ONE_SIDE)
    cur.at = start
    return None


PARTS = frozenset(["strap", "side", "flap", "tab", "tongue", "instep", "heel", "shoulder", "front",
                   "ear", "thumb", "bib", "handle"])  # fmt: skip
WORKS = frozenset(["make", "work", "ch", "chain", "crochet", "begin", "start", ",", ":"])


def _for_a_part(cur: Cursor) -> Act | None:
    """ "For the side of foot make 24 doubles": at a row's beginning, of which the rest is left."""
    start = cur.at
    if cur.book.craft is not Craft.CROCHET or start or not cur.accept("for the", "for each"):
        return None
    named = next((n for n in range(1, 6) if cur.low(n) in WORKS), 0)
    if not PARTS & {cur.low(n) for n in range(named)}:
        cur.at = start
        return None
    cur.at += named
    return Act(cur.span(start), cur.said(start), Deed.NOTE, ONE_SIDE)


def _of_a_short_row(cur: Cursor, lows: list[str], made: list[Node]) -> bool:
    """ "K 20, turn, leaving 4 sts unworked": fewer are left than were knitted, for rows to come
    that go over them again.
    """
    at = next((n for n, _ in enumerate(lows) if cur.kind(n) == "num"), None)
    number = cur.number(at) if at is not None else None
    works = [one for one in made if isinstance(one, Work)]
    turned = any(isinstance(one, Act) and one.deed is Deed.TURN for one in made)
    if cur.book.craft is not Craft.KNITTING or number is None or not works or not turned:
        return False
    left = number.values[0]
    to_last = works[-1].place.where is Where.TO_LAST and works[-1].place.number == number
    return to_last or left < sum(one.number.values[0] for one in works if one.number is not None)


def _left_amid(cur: Cursor, made: list[Node]) -> Skip | None:
    """ "leave one stitch unworked", "leaving the next 2 sts unworked" in the middle of a row."""
    start = cur.at
    if cur.book.craft is Craft.CROCHET and cur.accept("leave", "leaving"):
        cur.accept("the")
        cur.accept("next", "following")
        number = ONE if cur.accept("a", "one") else cur.number()
        cur.at += cur.kind() == "num"
        noun = find_noun(cur) if number is not None else ""
        if number is not None and _is_free(cur) and _goes_further(cur, made):
            place = Place(Where.NEXT, cur.span(start), number, noun or "st")
            return Skip(cur.span(start), cur.said(start), place)
    cur.at = start
    return None


def _is_free(cur: Cursor) -> bool:
    """Takes "unworked", "free for thumb"."""
    free = cur.accept("unworked", "free", "open")
    if free and cur.accept("for"):
        cur.accept("the", "a", "each")
        while cur.low() not in (*STOPS, "", "and", "then"):
            cur.at += 1
    return free


def _goes_further(cur: Cursor, made: list[Node]) -> bool:
    """Whether stitches follow in the same sentence: what is left lies in the middle of the row; or
    a list that has a chain for them ends there, and is worked again.
    """
    again = cur.done() or (cur.low() in (";", ",") and cur.low(1) in ("rep", "repeat"))
    if again and any(isinstance(one, Chain) and one.number != ONE for one in made):
        return True
    at = 1 if cur.low() in (",", "and", "then") else 0
    at += cur.low(at) in ("and", "then")
    at += cur.kind(at) == "num"
    return at > 0 and (cur.stitch(at) is not None or cur.low(at) in ("ch", "chain"))


def _cut_short(cur: Cursor, lows: list[str], made: list[Node]) -> bool:
    """ "sc in each st, ending 2 sts before the end": works the row to those last ones only."""
    at = next((n for n in range(1, min(4, len(lows))) if cur.kind(n) == "num"), 0)
    before = {"before", "from", "short"} & set(lows) and {"end", "edge"} & set(lows)
    last = made[-1] if made else None
    if not at or not before or not isinstance(last, Work):
        return False
    number = cur.number(at)
    if last.place.where not in (Where.EACH, Where.REST) or number is None:
        return False
    made[-1] = replace(last, place=replace(last.place, where=Where.TO_LAST, number=number))
    return True


def _but_those(cur: Cursor, lows: list[str], made: list[Node]) -> None:
    """ "sc in each st around, leaving 7 sts free": works the row but for those."""
    back = next((n for n in range(1, len(made) + 1) if not isinstance(made[-n], Act)), 1)
    last = made[-back] if made else None
    at = next((n for n in range(1, len(lows)) if cur.kind(n) == "num"), 0)
    number = cur.number(at) if at else None
    if isinstance(last, Work) and last.place.where in (Where.EACH, Where.REST) and number:
        made[-back] = replace(last, place=replace(last.place, where=Where.TO_LAST, number=number))


def _phrase(cur: Cursor) -> list[str]:
    """The words up to the next mark, over the brackets of a list of sizes."""
    lows: list[str] = []
    while len(lows) < LONGEST and not cur.done():
        low = cur.low(len(lows))
        if not low or low in STOPS or low == "," or cur.kind(len(lows)) == "stars":
            break
        lows.append(low)
    return lows


def _leaves(cur: Cursor, lows: list[str]) -> bool:
    """ "leave rem sts unworked", "leaving the other 6 sc for the top of the foot"."""
    if _kept_free(cur, lows):
        return True
    if not lows or lows[0] not in LEAVES:
        return False
    if "unworked" in lows:
        return True
    counted = REST & set(lows[:4]) and (_stitches(cur, lows) or "rest" in lows)
    crochet = cur.book.craft is Craft.CROCHET
    return crochet and bool(counted) and not OF_YARN & set(lows)


FREE = frozenset(["free", "open", "unworked", "unused", "for"])
"""How stitches are left: free, or for some part."""
HAVING = ("having", "with", "keeping")


def _kept_free(cur: Cursor, lows: list[str]) -> bool:
    """ "Leaving 6 sts free for instep", "having 6 sc unused at end": so many, in crochet."""
    if cur.book.craft is not Craft.CROCHET or not lows or lows[0] not in (*LEAVES, *HAVING):
        return False
    at = next((at for at in range(1, min(5, len(lows))) if cur.kind(at) == "num"), 0)
    free = FREE - {"for"} if lows[0] in HAVING else FREE
    named = _stitches(cur, lows[at + 1 :], at + 1) and not (OF_YARN - {"end"}) & set(lows)
    return at > 0 and named and bool(free & set(lows[at + 1 :]))


def _are_left(cur: Cursor, lows: list[str]) -> bool:
    """ "the 15 tr left are the back of the neck", "remaining 20 sts stay unworked"."""
    if cur.book.craft is not Craft.CROCHET or cur.low(-1) not in (".", ";", ",", "(", "-", "—"):
        return False
    head = lows[:5]
    begins = head[:1] == ["the"] or (head and head[0] in REST) or cur.kind() == "num"
    verb = next((at for at, low in enumerate(lows) if low in STAYS), 0)
    if not begins or not 1 < verb < 8 or not _stitches(cur, lows[:verb]):
        return False
    if lows[verb] in ("remain", "remains") and lows[verb - 1] in ("that", "which"):
        # "The 11 sc that remain are the back of the neck."
        return True
    before, after = set(lows[:verb]), set(lows[verb:])
    return bool((REST | LEFT) & before) or bool(LEFT & after) or {"not", "worked"} <= after


def _stitches(cur: Cursor, lows: list[str], first: int = 0) -> bool:
    return any(
        low in STITCH_NOUNS or cur.stitch(at) is not None for at, low in enumerate(lows, first)
    )
