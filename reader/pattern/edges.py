"""Stitches that come on to the needle or leave it: cast on, bind off, set aside -> Edge, Skip, Act.
"""

from __future__ import annotations

import re

from reader.pattern.bound_but import all_but
from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.phrasing import STRETCH
from reader.pattern.tree import Edge, Node, Num, Unread
from reader.terms.stitches import Craft

CAST_ON = (
    "set up", "put on", "cast up", "co", "cast on", "casting on",
    "pick up and knit", "pick up and k", "pick up & knit", "pick up & k", "pick up and purl",
    "take up and knit", "take up", "taking up",
    "pick up", "pu & k", "pu and k", "pu", "puk", "pu&k",
)  # fmt: skip
BIND_OFF = (
    "bo", "bind off", "cast off", "binding off", "loosely bind off", "casting off",
    "loosely cast off",
)  # fmt: skip

MANNERS = ("knit", "purl", "k", "p", "rib", "knitwise", "purlwise", "kwise", "pwise", "pattern")
"""Before "bind off" these say how: "knit BO"."""
NAMES_IT = frozenset(["1st", "first", "last", "from", "after", "since", "each"])
"""Before "bind off", these make a place of it: "8 inches from 1st bind off"."""

FIRST_WHERE = tuple(
    f"{at} {edge}"
    for at in ("at", "at the", "at each", "at same", "from", "at beg of", "at beginning of",
               "at the beginning of", "at the beg of")
    for edge in ("armhole edge", "arm edge", "neck edge", "side edge", "edge", "shoulder edge",
                 "front edge", "each row", "every row", "every other row", "underarm", "row")
)  # fmt: skip
"""Where it is done may be told before how many."""
LAST = ("last", "the last", "rem", "remaining", "the rem", "the remaining", "final", "other")
BESIDE = (
    "loosely", "very", "first", "next", "following", "a total of", "another", "the", "1st",
    "in pattern", "knitwise", "purlwise", "all", *LAST,
)  # fmt: skip
"""Between the verb and how many."""
_EACH = r"(?:each|both) (?:arm|armhole|side|neck|center|centre|front|shoulder|end)\w*"
EACH_EDGE = re.compile(
    rf"\b(?:{_EACH}(?: edges?)?|both (?:ends|sides))"
    r"(?: of (?:the |this |your )?\w+)?(?:,? (?:and|then))?\s*$"
    r"|\b(?:for|on) (?:each|both) sleeves?\s*$|\b(?:each|either|both) (?:end|side)s? for\b[\w ]*$",
    re.IGNORECASE,
)
"""At both edges: one row after the other."""
EACH_EDGE_BEFORE = re.compile(
    rf"{EACH_EDGE.pattern}|\b{_EACH}", re.IGNORECASE
)
"""The same, told of the stitches bound off before: "3 sts at each neck edge once, then 2 sts"."""


BY_RATE = tuple(
    f"{at} {each}"
    for at in ("in", "for", "from", "through", "into", "per", "out of", "to", "at", "of", "between")
    for each in ("each", "every", "row", "st", "stitch", "loop", "ridge")
)
"""Behind a number that is picked up: at that rate, so that only a total tells how many."""


def find_edge(cur: Cursor, start: int) -> Node | None:
    """Cast on, bind off, pick up: with a number, all when none stands."""
    if cur.book.craft is not Craft.KNITTING:
        return None
    again = _edge_again(cur)
    manner = cur.low() in MANNERS and cur.any_words(BIND_OFF, 1)
    cur.at += 1 if manner else 0
    cast_on = _cast_on_before(cur, start) if again else _adds(cur) or _puts_on(cur)
    if not again and not cast_on and (cur.low(-1) in NAMES_IT or not cur.accept(*BIND_OFF)):
        return None
    if cast_on and _takes_up_none(cur):
        return None
    cur.accept("in pattern", "in patt", "in rib", "in ribbing")
    but = all_but(cur, start) if not cast_on else None
    if but is not None:
        return but
    cur.accept("center", "centre", "middle", "the center", "the centre")
    cur.accept(*FIRST_WHERE)
    while cur.accept(*BESIDE):
        pass
    if cast_on:
        _with_needles(cur)
    elif _of_some_size(cur):
        return Unread(cur.span(start), cur.said(start))
    number = cur.number()
    if number is not None:
        cur.at += 1
    cur.accept("sts", "st", "stitches", "stitch")
    picked = cast_on and cur.low(start - cur.at).startswith(("pick", "pu", "tak", "k"))
    if picked:
        number = _picked_up(cur, number)
    elif cast_on:
        number = _at_edges(cur, _on_needles(cur, number))
    rows, times = _edge_rows(cur)
    rows = rows if rows > 1 else _rows_before(cur, start)
    each = EACH_EDGE_BEFORE if times else EACH_EDGE
    if (not picked and each.search(cur.said(start))) or (times and _both_edges(cur, start)):
        rows *= 2 if rows == times or rows == 1 else 1
    if "at a time" in cur.said(start).lower():
        number = None
    return Edge(cur.span(start), cur.said(start), number, cast_on, rows)


def _puts_on(cur: Cursor) -> bool:
    """Takes words of casting on or picking up, "k up" only before a number."""
    knits_up = cur.any_words(("k up", "knit up"))
    if knits_up and cur.kind(knits_up) == "num":
        cur.at += knits_up
        return True
    return cur.accept(*CAST_ON)


def _takes_up_none(cur: Cursor) -> bool:
    """Whether "take up" is followed by no number of stitches: then something else is taken up."""
    if cur.low(-1) != "up" or not cur.low(-2).startswith("tak"):
        return False
    at = 1 if cur.low() in ("the", "about") else 0
    return cur.kind(at) != "num" and not cur.any_words(("same number", "same"), at)


def _of_some_size(cur: Cursor) -> bool:
    """Takes "Ladies 6 sts at beg of next 4 rows": a word no part of the work is known by, and then
    how many.
    """
    named = cur.kind() == "word" and cur.kind(1) == "num" and cur.low(2) in ("sts", "stitches")
    if not named or cur.low() in KNOWN or not cur.peek().low.isalpha():
        return False
    while not cur.done() and cur.low() not in STOPS:
        cur.at += 1
    return True


KNOWN = frozenset(
    ["loosely", "these", "those", "last", "first", "next", "center", "centre", "middle", "about",
     "in", "all", "rem", "remaining", "and", "on", "for", "at", "other", "only", "to", "over", "up",
     "neck", "front", "back", "of", "k", "p", "knit", "purl", "work", "then", "again", "the",
     "off", "exactly", "just", "another", "more", "extra", "from", "with", "evenly"]
)  # fmt: skip


def _adds(cur: Cursor) -> bool:
    """Takes "cast" before a number, and "add" before more stitches than an increase makes."""
    if cur.low() == "cast" and cur.kind(1) == "num":
        return cur.accept("cast")
    many = cur.low() in ("add", "adding") and cur.kind(1) == "num" and cur.peek(1).value > 3
    return many and cur.low(2) in ("sts", "stitches") and cur.accept("add", "adding")


def _picked_up(cur: Cursor, number: Num | None) -> Num | None:
    """How many are picked up in all; None where only their rate is told."""
    number = _each_of_so_many(cur, number)
    by_rate = number is not None and cur.any_words(BY_RATE) > 0
    return None if by_rate else _further_edges(cur, _on_each_side(cur, number))


def _edge_again(cur: Cursor) -> bool:
    """ "then 7 sts at beg of next 2 rows": the binding off goes on."""
    start = cur.at
    cur.accept("then", "and")
    at = cur.at
    rest = cur.accept("rem", "remaining", "the rem", "the remaining", "last")
    counted = cur.kind() == "num" and cur.low(1) in ("sts", "st", "stitches", "stitch")
    follows = start > 0 and cur.tokens[start - 1].low in (",", "and", "then", "&")
    follows = follows or cur.low(start - cur.at) in ("and", "then")
    ends = cur.low(2) in (*STOPS, "")
    if rest and counted and follows and ends and _bound_off_before(cur, start):
        return True
    cur.at = at
    counted = cur.kind() == "num" and cur.low(1) in ("sts", "st", "stitches", "stitch")
    so_often = cur.kind(2) == "times" or (cur.kind(2) == "num" and cur.low(3) == "times")
    if counted and so_often and _bound_off_before(cur, start):
        return True
    if counted and cur.any_words(AT_ROW_ENDS, 2):
        return True
    cur.at = start
    return False


AT_ROW_ENDS = tuple(
    f"at {the}{end}" for the in ("", "the ") for end in ("beg", "beginning", "end")
)


def _cast_on_before(cur: Cursor, start: int) -> bool:
    """Whether the same sentence casts on before: "cast on 9 at the end of this row, and 9 sts at
    the end of the next".
    """
    for at in range(start - 1, max(0, start - 24), -1):
        low = cur.tokens[at].low
        if low in (".", ";", "off", "bo"):
            return False
        if low == "on" and cur.tokens[at - 1].low.startswith("cast"):
            return True
    return False


def _rows_before(cur: Cursor, start: int) -> int:
    """ "At beg of next 2 rows cast on 10": the number of rows told before; 1 where none is."""
    lows: list[str] = []
    behind = start - 2 if start and cur.tokens[start - 1].low == "," else start - 1
    for at in range(behind, max(-1, start - 14), -1):
        if cur.tokens[at].low in (".", ";", ",", ":"):
            break
        lows.insert(0, cur.tokens[at].low)
    found = BEFORE.search(" ".join(lows))
    return int(found.group(1)[:3]) if found else 1


BEFORE = re.compile(
    r"^(?:then |and |now )*at (?:the )?(?:beg|beginning|end) of (?:each of )?(?:the )?"
    r"(?:next|foll|following) (\d+) (?:rows|rnds)$"
)


def _bound_off_before(cur: Cursor, start: int) -> bool:
    """Whether the same sentence binds off before: "bind off 5 sts once, 3 sts twice"."""
    for at in range(start - 1, max(-1, start - 24), -1):
        low = cur.tokens[at].low
        if low in (".", ";"):
            return False
        if low in ("bo", "off"):
            return True
    return False


def _both_edges(cur: Cursor, start: int) -> bool:
    """Whether the sentence says before that both edges are meant: "at each armhole edge bind off
    ...".
    """
    lows: list[str] = []
    for at in range(start - 1, max(-1, start - 24), -1):
        if cur.tokens[at].low in (".", ";"):
            break
        lows.insert(0, cur.tokens[at].low)
    said = " ".join(lows)
    if _bound_off_before(cur, start) and EACH_EDGE_BEFORE.search(said):
        return True
    return EACH_EDGE.search(said.split(" bind")[0].split(" cast")[0]) is not None


def _with_needles(cur: Cursor) -> None:
    """Takes "with larger needles" before the number that is cast on."""
    for ahead in range(1, 6 if cur.low() in ("with", "using") else 1):
        if cur.low(ahead) in ("needles", "needle", "yarn", "wool") and cur.kind(ahead + 1) == "num":
            cur.at += ahead + 1
            return


EDGES = ("edge", "edges", "selvedge", "selvage", "extra", "border", "seam", "turning", "more")


def _at_edges(cur: Cursor, number: Num | None) -> Num | None:
    """ "30 sts + 1 edge st": all of them together."""
    at = 1 if cur.low() in ("+", "plus") else 0
    more = cur.number(at) if at and cur.kind(at) == "num" else None
    at += 1 + (cur.low(at + 1) in EDGES)
    if number is None or more is None or cur.low(at) not in ("st", "sts", "stitch", "stitches"):
        return number
    cur.at += at + 1
    return Num(tuple(one + more.at(size) for size, one in enumerate(number.values)))


ON_EACH = tuple(f"{on} each of" for on in ("on", "upon", "on to", "onto", "to", "in"))


def _on_needles(cur: Cursor, number: Num | None) -> Num | None:
    """ "cast on 30 on each of two needles, and 40 on a third": all of them together."""
    if number is None or not cur.accept(*ON_EACH):
        return number
    cur.accept("the")
    needles = cur.number()
    if needles is None or cur.kind() != "num":
        return number
    cur.at += 1
    cur.accept("needles", "pins", "wires")
    number = Num(tuple(one * needles.at(size) for size, one in enumerate(number.values)))
    ahead = (cur.low() == ",") + (cur.low(cur.low() == ",") == "and")
    more = cur.number(ahead)
    if more is not None and cur.kind(ahead) == "num":
        after = ahead + 1 + (cur.low(ahead + 1) in ("sts", "st", "stitches"))
        if cur.low(after) == "on" and cur.low(after + 1) in ("a", "the"):
            cur.at += after
            number = Num(tuple(one + more.at(size) for size, one in enumerate(number.values)))
    return number


SIDED = frozenset(["right", "wrong", "rs", "ws", "alternate", "alt", "knit", "purl", "k", "p"])
"""Between a number and "rows": only every other one."""
NEXT_TOO = ("next", "this", "row")
"""Before "and foll 2 alt rows": that row too."""
ALONG = frozenset(
    ["along", "across", "down", "up", "from", "round", "around", "at", "on", "over", "for",
     "evenly", "each", "in"]
)  # fmt: skip


def _on_each_side(cur: Cursor, number: Num | None) -> Num | None:
    """ "pick up 15 on each side of this piece": twice as many."""
    if number is None or not cur.any_words(("on each side", "at each side", "along each side",
                                            "on both sides", "along both sides", "down each side")):
        return number
    return Num(tuple(2 * one for one in number.values))


def _each_of_so_many(cur: Cursor, number: Num | None) -> Num | None:
    """ "1 st in each of next 20 rows": so many times as many; the number as it is elsewhere."""
    at = cur.at
    if number is None or not cur.accept("in each of", "for each of", "from each of", "in each"):
        return number
    cur.accept("the")
    cur.accept("next", "first", "following", "last")
    many = cur.number() if cur.kind() == "num" else None
    if many is None or cur.low(1) not in ("rows", "sts", "stitches", "loops", "ridges", "chains"):
        cur.at = at
        return number
    cur.at += 2
    return Num(tuple(one * many.at(size) for size, one in enumerate(number.values)))


def _further_edges(cur: Cursor, number: Num | None) -> Num | None:
    """ "pick up 18 along front, 19 across back and 18 along other side": all of them together."""
    while number is not None:
        ahead = 0
        while ahead < STRETCH and cur.low(ahead) not in (",", "and", ";", ".", "[", ""):
            ahead += _remark(cur, ahead)
        ahead += cur.low(ahead) == ","
        ahead += cur.low(ahead) in ("and", "then")
        more = cur.number(ahead)
        nouns = ahead + 1 + (cur.low(ahead + 1) in ("sts", "st", "stitches", "more"))
        if more is None or cur.kind(ahead) != "num" or cur.low(nouns) not in ALONG:
            return number
        by_rate = cur.any_words(BY_RATE, nouns) > 0
        if by_rate or cur.low(ahead - 1) not in (",", "and", "then"):
            return number
        number = Num(tuple(one + more.at(size) for size, one in enumerate(number.values)))
        cur.at += nouns
    return number


def _remark(cur: Cursor, ahead: int) -> int:
    """How many tokens a bracket takes that only says something, "(mark this st)"; 1 for no bracket.
    """
    if cur.low(ahead) != "(":
        return 1
    inner = next((n for n in range(1, STRETCH) if cur.low(ahead + n) == ")"), 0)
    counts = any(cur.kind(ahead + n) == "num" for n in range(1, inner))
    return STRETCH if counts or not inner else inner + 1


def _edge_rows(cur: Cursor) -> tuple[int, int]:
    """Takes the words behind an edge; over how many rows they say it is worked, and how often where
    they tell it as times ("twice"), else 0.
    """
    rows, times = 1, 0
    for _ in range(STRETCH):
        if cur.done() or cur.low() in STOPS or cur.kind() == "stars":
            break
        if cur.low() == "and" and cur.kind(1) == "num" and cur.low(2) in ("sts", "stitches", "st"):
            break
        stitch = cur.stitch() and cur.low() not in ("sl", "s")
        if stitch and cur.low(-1) not in ("in", "of", "as", "with", "to"):
            break
        following = cur.low(-1) in ("next", "following", "foll")
        ahead = 1 + (cur.low(1) in SIDED) + (cur.low(2) == "side")
        if cur.kind() == "num" and cur.low(ahead) in ("rows", "rnds") and following:
            rows = cur.peek().value + (cur.low(-2) == "and" and cur.low(-3) in NEXT_TOO)
        counted = cur.kind() == "num" and cur.low(1) == "times"
        if cur.low() not in ("at", "") and (cur.kind() == "times" or counted):
            rows = times = cur.peek().value
            cur.at += 1 + counted
            break
        cur.at += 1
    return rows, times
