"""How often a bracket or a list is worked, told by number: "6 times", "x 6", "twice", "6 x"."""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import Num
from reader.terms.stitches import Craft

TIMES_X = frozenset({"x", "*", "times"})
SETS = ("sets", "reps", "repeats", "repetitions")
SO_OFTEN = ("times", "time", "x", *SETS)
IN_TOTAL = (
    "for a total of", "a total of", "total of", "for", "in total", "in all", "until you have",
    "until you have done it", "until you have", "to make", "making",
)  # fmt: skip
"""Behind a bracket, before how often: "(sc, inc) for a total of 6 times"."""


def count_after(cur: Cursor) -> Num | None:
    """The "6 times", "x 6", "*6", "twice" that stands here, taken; None when none does."""
    closed = cur.low(-1) in (")", "]") or cur.kind(-1) == "stars"
    if cur.low() == "," and closed and _times_at(cur, 1):
        # "(3 sp, 4 dc), 4 times"
        cur.at += 1
    boxed = boxed_times(cur)
    if boxed is not None:
        return boxed
    told = cur.any_words(IN_TOTAL)
    if told and cur.kind(told) == "num" and cur.low(told + 1) in SO_OFTEN:
        cur.at += told
    number = cur.number()
    if cur.low() in ("(", "[") and cur.low(1) == "x" and cur.kind(2) == "num":
        # "*k1, yo* (x2)"
        number = cur.number(2)
        cur.at += 4
        return number
    if cur.kind() == "times":
        cur.at += 1
        cur.accept("more")
        return number
    if number is not None and cur.kind() == "num":
        if cur.low(1) in SO_OFTEN and not (cur.low(1) in SETS and cur.low(2) == "of"):
            cur.at += 2
            cur.accept("in all", "altogether", "total", "in total", "around")
            return number
        glued = cur.low(-1) in (")", "]") and not cur.peek().spaced
        glued = glued and cur.book.craft is Craft.KNITTING
        if (cur.low(-1) == "*" or glued) and cur.low(1) in ("", ",", ".", ";", "[", "("):
            cur.at += 1
            return number
    if cur.low() in ("x", "*") and cur.kind(1) == "num":
        number = cur.number(1)
        after = cur.low(2)
        if cur.low() == "*" and (cur.stitch(2) or after in ("ch", "chain", "st", "sts", "in")):
            return None
        cur.at += 2
        cur.accept("times")
        return number
    return None


def times_here(cur: Cursor) -> bool:
    """Whether "6 times" stands here, in crochet "twice" at a clause's end: what ends a list."""
    if cur.kind() == "num":
        return cur.low(1) in ("times", "time") and cur.low(2) != "more"
    several = cur.kind() == "times" and cur.low() != "once"
    return several and cur.book.craft is Craft.CROCHET and cur.low(1) in (*STOPS, "")


def times_before(cur: Cursor) -> int:
    """How many tokens "6 x", "6 times", "6 sets of" take before a bracket; 0 where none stands."""
    if cur.kind() != "num":
        return 0
    if _bare_before(cur):
        return 1
    length = 2 if cur.low(1) in TIMES_X else 0
    length += bool(length) and cur.low(length) == ":"
    if cur.low(1) in ("sets", "repeats", "reps", "lots", "repetitions") and cur.low(2) == "of":
        length = 3
    return length if length and cur.low(length) in ("(", "[", "{") else 0


CLAUSE = (
    "", ",", ";", ".", ":", "and", "then", "(", "[", "blo", "flo", "only", "loop", "loops", "work",
)
BRACKETS = {"(": ")", "[": "]", "{": "}"}
LONGEST = 40


def _bare_before(cur: Cursor) -> bool:
    """Whether a number alone tells how often the list behind it is worked, "sc, inc, 5(2 sc,
    inc)": a list of several items, with neither a place nor a number of times behind it.
    """
    number, end = cur.number(), list_ahead(cur, 1)
    if number is None or number.values[0] < 2 or not end or cur.low(-1) not in CLAUSE:
        return False
    behind = ("", ",", ";", ".", "(", "=", "—", "-", "and", "then")
    return cur.book.craft is Craft.CROCHET and cur.low(end + 1) in behind


def list_ahead(cur: Cursor, at: int) -> int:
    """Where the bracket of several stitches closes that opens so many tokens on; 0 for none."""
    mark = BRACKETS.get(cur.low(at))
    inner = [cur.low(ahead) for ahead in range(at + 1, at + LONGEST)] if mark else []
    many = inner.index(mark) if mark in inner else 0
    several = "," in inner[:many] and not set(inner[:many]) & BRACKETS.keys()
    listed = several and any(cur.stitch(at + 1 + ahead) is not None for ahead in range(many))
    return at + 1 + many if listed else 0


def _times_at(cur: Cursor, ahead: int) -> bool:
    """Whether a number of times stands so many tokens on, and ends its clause."""
    if cur.kind(ahead) == "times":
        return cur.low(ahead + 1) in ("", ",", ".", ";")
    counted = cur.kind(ahead) == "num" and cur.low(ahead + 1) in ("times", "time")
    return counted and cur.low(ahead + 2) in ("", ",", ".", ";")


def boxed_times(cur: Cursor) -> Num | None:
    """The number of "(twice)", "(4 times)", taken; None where no such bracket stands here."""
    if cur.low() not in ("(", "["):
        return None
    number = cur.number(1)
    length = 2 if cur.kind(1) == "times" else 3
    counted = cur.kind(1) == "times" or (cur.kind(1) == "num" and cur.low(2) in ("times", "x"))
    if not counted or cur.low(length) not in (")", "]"):
        return None
    cur.at += length + 1
    return number
