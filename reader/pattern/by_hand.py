"""Stitches told by what the hands do: "* thread over, insert in next loop, pull through and work
off 2 loops, repeat from * once, thread over and work off all loops at one time" -> one stitch.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.clusters import chain_joins_in
from reader.pattern.cursor import Cursor
from reader.pattern.held_back import find_held_back
from reader.pattern.places import find_place
from reader.pattern.tree import Node, Num, Place, Where, Work
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
HANDS = frozenset(
    ["pull", "draw", "work", "take", "thread", "yarn", "yo", "y", "off", "through", "wool",
     "cotton", "leaving", "keeping", "holding", "drawing", "pulling", "working", "bring"]
)  # fmt: skip
"""How a clause begins that goes on with the same stitch."""
STOPS = (",", ";", ".", "and", "then", ":")
ALL = frozenset(["all", "remaining", "rem"])
LOOPS = frozenset(["loops", "loop", "lps", "lp", "sts", "off"])
TALL = {0: "sc", 1: "dc", 2: "tr", 3: "dtr", 4: "trtr"}
"""The stitch by how often the thread is laid over first."""


def find_by_hand(cur: Cursor, made: list[Node]) -> Node | None:
    """The stitch whose making is told here, taken; None (nothing taken) where none is."""
    if cur.book.craft is not Craft.CROCHET:
        return None
    held = find_held_back(cur, made)
    if held is not None:
        return held
    start = cur.at
    if cur.kind() != "stars" and cur.low() not in OVER_FIRST:
        return None
    parts: list[tuple[int, Place, int]] = []
    done = False
    while not done:
        at = cur.at
        while parts and cur.low() in STOPS:
            cur.at += 1
        found = _part(cur)
        if found is None:
            cur.at = at
            break
        overs, place, passes, done = found
        parts.append((overs, place, passes))
    if not parts:
        cur.at = start
        return None
    return _stitch(cur, start, parts, done, made)


def _part(cur: Cursor) -> tuple[int, Place, int, bool] | None:
    """One insertion, or several by a star: how often the thread is over, where, how often it is
    done, and whether all loops are worked off behind it.
    """
    starred, label = cur.kind() == "stars", cur.low()
    cur.at += starred
    overs = _overs(cur)
    if not overs or not cur.accept(*INSERTS):
        return None
    place = find_place(cur)
    if place is None or place.where in (Where.PLAIN, Where.REST):
        return None
    done = _hands(cur)
    if not starred:
        return overs, place, 1, done
    passes = _again(cur, label)
    return (overs, place, passes, _hands(cur)) if passes else None


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
        while cur.low() in STOPS:
            cur.at += 1
        if cur.low() not in HANDS or _inserts_next(cur):
            cur.at = at
            return done
        words: set[str] = set()
        while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
            if cur.low() in ("repeat", "rep", "(", "["):
                break
            words.add(cur.low())
            cur.at += 1
        done = bool(words & ALL and words & LOOPS)
    return done


def _inserts_next(cur: Cursor) -> bool:
    """Whether the next stitch, or the next part of this one, begins here."""
    at = cur.at
    begins = _overs(cur) > 0 and cur.any_words(INSERTS) > 0
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
    cur: Cursor, start: int, parts: list[tuple[int, Place, int]], done: bool, made: list[Node]
) -> Node | None:
    overs, place, _ = parts[0]
    last = parts[-1][1]
    passes = sum(times for *_, times in parts)
    stitch = stitch_named("cluster" if passes > 1 else TALL.get(overs, "trtr"), Craft.CROCHET)
    if stitch is None or (passes > 1 and not done):
        cur.at = start
        return None
    here, words = cur.span(start), cur.said(start)
    joined = last.where in (Where.SAME, Where.RING) or passes == 1
    if joined:
        if passes > 1:
            chain_joins_in(made)
        return Work(here, words, stitch, None, place)
    over = Num((passes,))
    return Work(here, words, _over(stitch, passes), None, replace(place, number=over, each=True))


def _over(stitch: Stitch, passes: int) -> Stitch:
    """One stitch over so many places."""
    return replace(stitch, takes=passes, makes=1, base="", kind=Kind.DECREASE)
