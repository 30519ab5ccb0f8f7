"""Loops told by their number: "work 4-ch 6 loops across pineapple", "make five loops of 5 ch" ->
each a chain and the stitch that holds it, in the next loop.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import Chain, Node, Num, Place, Repeat, Until, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind, Stitch

VERBS = (
    "work", "make", "then work", "then make", "and work", "and make", "continue with", "do",
)  # fmt: skip
LOOPS = ("loops", "loop", "lps", "lp", "arches", "spaces", "sps")
CHAINS = ("ch", "chain", "chains", "chs")
FAR = (
    *(f"{over} {the}{what}" for over in ("across", "over", "along", "around", "on", "in")
      for the in ("", "the ", "each ", "next ", "this ", "same ", "top of ", "top of each ")
      for what in ("pineapple", "pineapples", "shell", "group", "fan", "row", "motif", "top")),
    "across", "around", "all around",
)  # fmt: skip
MOST = 60


def so_many_loops(cur: Cursor, made: list[Node]) -> Repeat | None:
    """The loops that such words mean, taken; None, and nothing taken, where none stand here."""
    start = cur.at
    if cur.book.craft is not Craft.CROCHET or not cur.accept(*VERBS):
        return None
    number = cur.number() if cur.kind() == "num" else None
    cur.at += number is not None
    cur.accept("-", "—")
    chains = _loops(cur) if number is not None and number.values[0] <= MOST else None
    cur.accept(*FAR)
    if number is None or chains is None or cur.low() not in (*STOPS, ""):
        cur.at = start
        return None
    span, words = cur.span(start), cur.said(start)
    held = _held(made) or stitch_named("sc", Craft.CROCHET)
    if held is None:
        return None
    place = Place(Where.NEXT, span, noun="sp", text="in next loop")
    body = (Chain(span, words, chains), Work(span, words, held, None, place))
    return Repeat(span, words, body, Until.TIMES, number)


def _loops(cur: Cursor) -> Num | None:
    """ "ch 6 loops", "6-ch loops", "loops of ch 6", "loops of 6 ch", taken: their chains."""
    if cur.accept(*LOOPS):
        return _chains(cur) if cur.accept("of", "with") else None
    chains = _chains(cur)
    cur.accept("-")
    return chains if cur.accept(*LOOPS) else None


def _chains(cur: Cursor) -> Num | None:
    """ "ch 6", "ch-6", "6 ch", taken."""
    first = cur.accept(*CHAINS)
    cur.accept("-")
    number = cur.number() if cur.kind() == "num" else None
    cur.at += number is not None
    if not first:
        cur.accept("-")
        number = number if cur.accept(*CHAINS) else None
    cur.accept("each")
    return number


def _held(made: list[Node]) -> Stitch | None:
    """The stitch that holds the loops: the one just worked, where it is a plain one."""
    last = next((one.stitch for one in reversed(made) if isinstance(one, Work)), None)
    plain = last is not None and last.kind is Kind.STITCH and last.height < 2
    return last if plain else None
