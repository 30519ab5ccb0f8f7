"""Stitches told by what the hands do: "* thread over, insert in next loop, pull through and work
off 2 loops, repeat from * once, thread over and work off all loops at one time" -> one stitch.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from reader.pattern.clusters import chain_joins_in
from reader.pattern.cursor import Cursor
from reader.pattern.drawn_up import find_drawn_up
from reader.pattern.held_back import find_held_back
from reader.pattern.passing import find_skip
from reader.pattern.places import find_place
from reader.pattern.star_stitch import find_star_stitch
from reader.pattern.tree import ONE, Node, Num, Place, Skip, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind, Stitch

OVERS = (
    "yo", "y o", "yoh", "yrh", "o",
    *(
        f"{yarn} over{on}" for yarn in ("thread", "yarn", "wool", "cotton", "silk")
        for on in ("", " needle", " hook", " the hook", " the needle")
    ),
)  # fmt: skip
"""The thread laid over the hook before it goes in."""
OVER_FIRST = frozenset(phrase.split()[0] for phrase in OVERS)
INSERTS = ("insert hook", "insert the hook", "insert needle", "insert your hook", "insert")
LOOPS_UP = tuple(
    f"{draw} {loop}" for draw in ("draw up", "pull up", "pick up", "take up", "take", "draw")
    for loop in ("a loop", "loop", "another loop", "another", "one loop", "1 loop", "a lp")
)  # fmt: skip
INTO = ("in", "into", "through", "under", "from")
INSERT_FIRST = frozenset(phrase.split()[0] for phrase in (*INSERTS, *LOOPS_UP))
HANDS = frozenset(
    ["pull", "draw", "work", "take", "thread", "yarn", "yo", "y", "off", "through", "wool",
     "cotton", "leaving", "keeping", "holding", "drawing", "pulling", "working", "bring", "drop",
     "complete", "finish"]
)  # fmt: skip
"""How a clause begins that goes on with the same stitch."""
STOPS = (",", ";", ".", "and", "then", ":")
ALL = frozenset(["all", "remaining", "rem", "both", "once"])
LOOPS = frozenset(["loops", "loop", "lps", "lp", "sts", "off"])
TALL = {0: "sc", 1: "dc", 2: "tr", 3: "dtr", 4: "trtr"}
"""The stitch by how often the thread is laid over first."""


@dataclass(frozen=True, slots=True)
class Leg:
    """One insertion: how often the thread is over first, the stitches passed before it, where it
    is, how often it is done, and where its words begin.
    """

    overs: int
    passed: Num | None
    place: Place
    times: int
    at: int


def find_by_hand(cur: Cursor, made: list[Node]) -> tuple[Node, ...]:
    """The stitch whose making is told here, taken, with what it passes over; nothing, and nothing
    taken, where none is.
    """
    if cur.book.craft is not Craft.CROCHET:
        return ()
    held = find_held_back(cur, made)
    if held is not None:
        return (held,)
    start = cur.at
    bare = cur.low() in INSERT_FIRST
    if cur.kind() != "stars" and cur.low() not in OVER_FIRST and not bare:
        return ()
    if bare and _told_otherwise(cur):
        return ()
    legs: list[Leg] = []
    done = False
    while not done:
        at = cur.at
        while legs and cur.low() in STOPS:
            cur.at += 1
        found = _leg(cur)
        if found is None:
            cur.at = at
            break
        leg, done = found
        legs.append(leg)
    nodes = _stitch(cur, start, legs, done, made) if legs else ()
    cur.at = cur.at if nodes else start
    return nodes


def _told_otherwise(cur: Cursor) -> bool:
    """Whether the decrease or star stitch stands here that others read."""
    at = cur.at
    found = find_drawn_up(cur) or find_star_stitch(cur, [])
    cur.at = at
    return found is not None


def _leg(cur: Cursor) -> tuple[Leg, bool] | None:
    """One insertion, or several by a star; and whether all loops are worked off behind it."""
    at, starred, label = cur.at, cur.kind() == "stars", cur.low()
    cur.at += starred
    overs = _overs(cur)
    passed = _passed(cur) if overs else None
    if not _inserts(cur) or (starred and not overs):
        return None
    place = find_place(cur)
    if place is None or place.where in (Where.PLAIN, Where.REST, Where.EACH):
        return None
    done = _hands(cur)
    if not starred:
        return Leg(overs, passed, place, 1, at), done
    passes = _again(cur, label)
    return (Leg(overs, passed, place, passes, at), _hands(cur)) if passes else None


def _inserts(cur: Cursor) -> bool:
    """Whether the hook goes in here, "insert hook", "draw up a loop in", those words taken."""
    if cur.accept(*INSERTS):
        return True
    length = cur.any_words(LOOPS_UP)
    if not length or cur.low(length) not in INTO:
        return False
    cur.at += length
    return True


def _passed(cur: Cursor) -> Num | None:
    """The stitches passed over between two insertions, "skip 1 st of ch,", taken."""
    at = cur.at
    skip = find_skip(cur)
    while cur.low() in STOPS:
        cur.at += 1
    behind = cur.at
    if isinstance(skip, Skip) and _inserts(cur):
        cur.at = behind
        return skip.place.number
    cur.at = at
    return None


def _overs(cur: Cursor) -> int:
    """How often the thread is laid over before the hook goes in, the words taken."""
    overs = 0
    while cur.accept(*OVERS):
        times = cur.number() if cur.kind() == "times" or cur.low(1) == "times" else None
        if times is not None:
            cur.at += 1 + (cur.kind() == "num")
        cur.accept("needle", "hook", "the needle", "the hook")
        overs += times.values[0] if times is not None else 1
        while cur.low() in STOPS:
            cur.at += 1
    return overs


def _hands(cur: Cursor) -> bool:
    """Takes the clauses that go on with the stitch; whether one of them works off all loops."""
    done = False
    while not done:
        at = cur.at
        _remark(cur)
        while cur.low() in STOPS:
            cur.at += 1
        if cur.low() in ("with", "using") and (said := _clause(cur)) and cur.low(said + 1) in HANDS:
            # "with white, yarn over and through both loops": the yarn of the next stitch.
            cur.at += said + 1
        if cur.low() not in HANDS or _inserts_next(cur):
            cur.at = at
            return done
        words: set[str] = set()
        while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
            if cur.low() in ("repeat", "rep", "(", "["):
                break
            words.add(cur.low())
            cur.at += 1
        done = bool(words & ALL and words & LOOPS) or bool(words & {"complete", "finish"})
    return done


def _clause(cur: Cursor) -> int:
    """How many words stand before the comma that ends a short clause; 0 where it is longer."""
    return next((n for n in range(1, 5) if cur.low(n) == ","), 0)


def _remark(cur: Cursor) -> None:
    """Takes a remark in brackets behind an insertion: "(through the back loop also)"."""
    at = cur.at
    if cur.low() != "(":
        return
    while not cur.done() and cur.low() != ")":
        cur.at += 1
    said = cur.lows[at + 1 : cur.at]
    cur.at = cur.at + 1 if said and said[0].endswith("ing") else at


def _inserts_next(cur: Cursor) -> bool:
    """Whether the next stitch, or the next part of this one, begins here."""
    at = cur.at
    _overs(cur)
    _passed(cur)
    begins = _inserts(cur)
    cur.at = at
    return begins


def _again(cur: Cursor, label: str) -> int:
    """How often a starred part is done in all, the "repeat from * twice" taken; 0 where no such
    words stand here. Without a number it is done once more.
    """
    while cur.low() in STOPS:
        cur.at += 1
    if not cur.accept("repeat", "rep") or not cur.accept("from") or cur.low() != label:
        return 0
    cur.at += 1
    number = cur.number()
    if number is None or cur.kind() not in ("num", "times"):
        return 2
    cur.at += 1
    cur.accept("more times", "times more", "times", "time", "more")
    return 1 + number.values[0]


def _stitch(
    cur: Cursor, start: int, legs: list[Leg], done: bool, made: list[Node]
) -> tuple[Node, ...]:
    first, last = legs[0], legs[-1]
    passes = sum(leg.times for leg in legs)
    stitch = stitch_named("cluster" if passes > 1 else TALL.get(first.overs, "trtr"), Craft.CROCHET)
    if stitch is None or (not done and (passes > 1 or not first.overs)):
        return ()
    here, words = cur.span(start), cur.said(start)
    there = len(legs) == 1 and _one_spot(first)
    if last.place.where in (Where.SAME, Where.RING) or passes == 1 or there:
        if passes > 1 and not there:
            chain_joins_in(made)
        return (Work(here, words, stitch, None, first.place),)
    apart = [leg.passed.values[0] for leg in legs[1:] if leg.passed]
    if first.place.where is Where.NEXT:
        over = Num((passes + sum(apart),))
        place = replace(first.place, number=over, each=True)
        return (Work(here, words, _over(stitch, over.values[0]), None, place),)
    behind = Num((passes - 1 + sum(apart),))
    passed = Skip(here, words, replace(last.place, number=behind, each=behind.values[0] > 1))
    if first.place.where is Where.SAME:
        # The first leg stands where the stitch before ended: only the others go on.
        if not apart:
            return (Work(here, words, stitch, None, last.place),)
        before = replace(passed, place=replace(passed.place, number=Num((sum(apart),))))
        return (before, Work(here, words, stitch, None, last.place))
    return (Work(here, words, stitch, None, first.place), passed)


def _one_spot(leg: Leg) -> bool:
    """Whether every pass of a starred insertion goes into the one place that it names, "insert in
    5th st from hook", "insert in loop": no "next" goes on.
    """
    place = leg.place
    if leg.passed is not None or place.each or place.number != ONE:
        return False
    bare = place.where is Where.NEXT and BARE_PLACE.match(place.text.lower()) is not None
    return bare or (place.where is Where.CHAIN and place.nth > 1)


BARE_PLACE = re.compile(
    r"(?:in|into|under|through|over) (?:the |a |that |this )?(?:st|stitch|loop|lp|sp|space|ch|chain"
    r"|center|picot)$|.*\b(?:joining|in which|just made|last)\b"
)


def _over(stitch: Stitch, passes: int) -> Stitch:
    """One stitch over so many places."""
    return replace(stitch, takes=passes, makes=1, base="", kind=Kind.DECREASE)
