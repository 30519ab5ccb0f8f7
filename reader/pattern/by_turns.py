"""Lists that are worked over and over without a star: "alternate 2 sc and 1 inc", "two plain
stitches before each inc", "6 times: 1 sc, 1 inc", "every third stitch gets two" -> Repeat, Shape.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from reader.pattern.cursor import Cursor
from reader.pattern.every_nth import every_nth
from reader.pattern.place_words import AROUND
from reader.pattern.times_first import times_first
from reader.pattern.tokens import Token
from reader.pattern.tree import ONE, Act, Chain, Node, Place, Repeat, Until, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind

BY_TURNS = ("alternate", "alternating", "alternately", "alternately work", "in turn", "by turns")
LEADS = (
    "work", "with", "now with", "now", "make", "making", "working", "having", "put", "leave",
    "leaving", "place", "use", "this time", "this time with", "do", "and", "then", "there are",
    "keeping", "keep",
)  # fmt: skip
PLAINS = (
    "plain stitches", "plain sts", "plain st", "plain stitch", "plain ones", "plain", "sts",
    "stitches", "st", "stitch", "singles", "normal stitches", "regular stitches", "of them",
)  # fmt: skip
APART = tuple(
    f"{where}{which}"
    for where in (
        "before", "between", "in between", "in-between", "to each", "for each", "and then"
    )
    for which in ("", " each", " every", " the", " each of the", " all the", " all", " one", " an")
)  # fmt: skip
GAINS = frozenset(["inc", "incs", "increase", "increases", "increasing", "inc's"])
LOSES = frozenset(["dec", "decs", "decrease", "decreases", "decreasing", "dec's"])
OVER = (".", ";", ",", "(", "[", "", "=", "—", "->", "!", ":")
"""What may stand behind such words."""


def find_by_turns(
    cur: Cursor, made: Sequence[Node], read: Callable[[list[Token]], tuple[Node, ...]]
) -> Node | None:
    """Such a list, taken; None (nothing taken) where none stands here. made: what the row has so
    far. read: tokens of a stretch -> its instructions.
    """
    if cur.book.craft is not Craft.CROCHET:
        return every_nth(cur)
    start = cur.at
    begun = any(not isinstance(one, Act | Chain) for one in made)
    found = _alternate(cur, start, read)
    if found is None:
        cur.at = start
        found = None if begun else _spaced(cur, start)
    if found is None:
        cur.at = start
    return found or times_first(cur, read) or every_nth(cur)


def _alternate(
    cur: Cursor, start: int, read: Callable[[list[Token]], tuple[Node, ...]]
) -> Node | None:
    """ "Alternate 2 sc and 1 inc around", "alternating 3 sc with 1 dec"."""
    if not cur.accept(*BY_TURNS):
        return None
    cur.accept("between", "working", "work")
    at = cur.at
    while not cur.done() and cur.low() not in (".", ";", "(", "=", ":") and not _ends(cur):
        if cur.kind() == "stars" or cur.low() in ("row", "rows", "rounds", "rnds", "colours"):
            return None
        cur.at += 1
    body = tuple(one for one in read(cur.tokens[at : cur.at]))
    works = [one for one in body if isinstance(one, Work)]
    if len(works) < 2 or len(works) != len(body):
        return None
    if any(one.place.where not in (Where.PLAIN, Where.NEXT) for one in works):
        return None
    cur.accept(*AROUND)
    return Repeat(cur.span(start), cur.said(start), body, Until.OPEN)


def _ends(cur: Cursor) -> bool:
    """Whether the words of how far stand here, or a list is over by a comma."""
    return bool(cur.any_words(AROUND)) or (
        cur.low() == "," and cur.low(1) in ("join", "turn", "sl", "ss", "slip", "ending", "end")
    )


def _spaced(cur: Cursor, start: int) -> Node | None:
    """ "Two plain stitches before each inc", "3 sc between increases"."""
    cur.accept(*LEADS)
    number = cur.number() if cur.kind() == "num" else None
    if number is None:
        return None
    cur.at += 1
    found = cur.stitch()
    plain = stitch_named("sc", Craft.CROCHET)
    if found is not None and found.stitch.kind is Kind.STITCH:
        plain = found.stitch
        cur.at += found.length
    else:
        cur.accept(*PLAINS)
    apart = cur.any_words(APART)
    change = cur.low(apart)
    over = cur.low(apart + 1) in OVER or cur.any_words(AROUND, apart + 1)
    if not apart or plain is None or change not in GAINS | LOSES or not over:
        return None
    if cur.low() in ("to", "for", "and") and change.endswith("s"):
        return None
    cur.at += apart + 1
    cur.accept(*AROUND)
    shaped = stitch_named(_shaped(plain.name, change in GAINS), Craft.CROCHET)
    if shaped is None:
        return None
    here, words = cur.span(start), cur.said(start)
    alone = Place(Where.PLAIN, here)
    body = (Work(here, words, plain, number, alone), Work(here, words, shaped, ONE, alone))
    return Repeat(here, words, body, Until.OPEN)


def over_and_over(nodes: Sequence[Node]) -> tuple[Node, ...]:
    """The row "2 sc, inc around" as that list repeated: a change in every stitch behind plain ones
    would be no list. Other rows as they are.
    """
    works = [at for at, one in enumerate(nodes) if isinstance(one, Work)]
    last = nodes[works[-1]] if len(works) > 1 else None
    if not isinstance(last, Work) or last.stitch.kind not in (Kind.INCREASE, Kind.DECREASE):
        return tuple(nodes)
    first, end = works[0], works[-1] + 1
    whole = works == list(range(first, end)) and last.place.where is Where.REST
    begun = all(isinstance(one, Act | Chain) for one in nodes[:first])
    ended = all(isinstance(one, Act) for one in nodes[end:])
    plain = all(
        isinstance(one, Work) and one.place.where is Where.PLAIN and one.stitch.kind is Kind.STITCH
        for one in nodes[first : end - 1]
    )
    if not (whole and begun and ended and plain and last.place.text in AROUND):
        return tuple(nodes)
    body = (*nodes[first : end - 1], replace(last, place=Place(Where.PLAIN, last.place.span)))
    again = Repeat(last.span, last.words, body, Until.OPEN)
    return (*nodes[:first], again, *nodes[end:])


def _shaped(plain: str, gains: bool) -> str:
    """The name of an increase or a decrease of that stitch."""
    if plain == "sc":
        return "inc" if gains else "dec"
    return f"{plain} inc" if gains else f"{plain}2tog"


