"""Stitches told by their colour alone, "*2A, 3B; rep from *", "3 white, 2 red" -> Work of whatever
stitch the row is of.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.labels import Mark
from reader.pattern.so_often import list_ahead
from reader.pattern.tree import Node, Num, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

LETTER = re.compile(r"(?:[A-UW-Z]|MC|CC|C[1-9]|CC[1-9]|[A-Z][1-9])")
"""Short for a yarn; V is an increase in the lists that call a plain stitch X."""
COLOURS = frozenset(
    ["white", "black", "red", "blue", "green", "yellow", "grey", "gray", "pink", "brown", "cream",
     "navy", "orange", "purple", "teal", "beige", "gold", "silver", "rust", "mint", "lilac",
     "turquoise", "ecru", "natural", "dark", "light", "sand", "rose", "ivory", "tan", "coral"]
)  # fmt: skip
IN_IT = ("in", "with", "of", "using")
BEHIND = (*STOPS, "", "and", "then", "*", "/", "|")


def in_colour(cur: Cursor, start: int, number: Num | None, made: list[Node]) -> Node | None:
    """So many stitches in a colour, taken; None (nothing taken) where no colour stands behind the
    number.
    """
    if number is None or cur.book.craft is not Craft.CROCHET:
        return None
    at = cur.at
    told = cur.accept(*IN_IT)
    one = cur.peek()
    short = LETTER.fullmatch(cur.text[one.start : one.end]) is not None
    behind = cur.low(1) in BEHIND or cur.kind(1) == "stars"
    before = next((node.stitch for node in reversed(made) if isinstance(node, Work)), None)
    if not (short or one.low in COLOURS) or not behind or (told and before is None):
        cur.at = at
        return None
    cur.at += 1
    stitch = before or stitch_named("st", Craft.CROCHET)
    alone = Place(Where.PLAIN, cur.span(start))
    return Work(cur.span(start), cur.said(start), stitch, number, alone) if stitch else None


def skip_colour(cur: Cursor, number: Num | None) -> None:
    """Takes the yarn's letter between so many stitches and their place: "2 sc C in same stitch"."""
    one = cur.peek()
    told = number is not None and LETTER.fullmatch(cur.text[one.start : one.end])
    if told and cur.low(1) in (*BEHIND, "in", "into"):
        cur.at += cur.book.craft is Craft.CROCHET and cur.stitch() is None


LOOPS = ("blo", "flo", "in blo", "in flo", "bl", "fl", "in bl", "in fl", "in back loops",
         "in front loops", "back loops", "front loops", "back loops only",
         "front loops only")  # fmt: skip


def in_loops(cur: Cursor, made: list[Node]) -> Node | None:
    """ "BLO 32": so many stitches of the row's kind, taken; None (nothing taken) elsewhere."""
    if made or cur.at or cur.book.craft is not Craft.CROCHET or not cur.any_words(LOOPS):
        return None
    cur.accept(*LOOPS)
    cur.accept(":", ",")
    number = cur.number() if cur.kind() == "num" else None
    cur.at += 1
    cur.accept("sts", "stitches", "st")
    stitch = stitch_named("st", Craft.CROCHET)
    over = cur.low() in ("", ".", "(", ";", "=") and not list_ahead(cur, 0)
    if number is None or stitch is None or not over:
        cur.at = 0
        return None
    return Work(cur.span(0), cur.said(0), stitch, number, Place(Where.PLAIN, cur.span(0)))


ONLY = ("all", "only", "just", "everything", "solid", "plain", "whole round", "again")
WHOLE = ("only", "throughout", "again", "all round", "all around", "around", "across", "all")


def all_in_colour(cur: Cursor, made: list[Node]) -> Node | None:
    """ "All in A", "B only": a row of which only its colour is told, taken; None (nothing taken)
    for other words.
    """
    if made or cur.at:
        return None
    start, end = cur.tokens[0].start, cur.tokens[-1].end
    if LABELLED.search(cur.text, max(0, start - 6), start) and colour_alone(cur.text[start:end]):
        cur.at = len(cur.tokens)
        return _rest(cur)
    if cur.book.craft is not Craft.CROCHET:
        return None
    looped = in_loops(cur, made)
    if looped is not None:
        return looped
    only = cur.accept(*ONLY)
    cur.accept("in", "with", "of")
    cur.accept("colour", "color", "yarn")
    one = cur.peek()
    short = LETTER.fullmatch(cur.text[one.start : one.end]) is not None
    cur.at += 1
    only = cur.accept(*WHOLE) or only
    if not (short or one.low in COLOURS) or not only or cur.low() not in (".", "", "(", ";"):
        cur.at = 0
        return None
    return _rest(cur)


def _rest(cur: Cursor) -> Node | None:
    """Whatever is left, in plain stitches."""
    craft = cur.book.craft
    stitch = stitch_named("k" if craft is Craft.KNITTING else "st", craft)
    rest = Place(Where.REST, cur.span(0))
    return Work(cur.span(0), cur.said(0), stitch, None, rest) if stitch else None


LABELLED = re.compile(r"\d[)\]]?\s?[.:)—-]+\s*$")
"""A label's end; a yarn that is taken up without one works nothing: "Join B."."""
ALONE = re.compile(
    r"\W*(?i:(?:all|only|just|whole round|plain)\W+)?(?i:(?:in|with|using)\s+)?"
    r"(?i:(?:yarn|colou?r)\s+)?"
    rf"(?:(?![KPSM]\b){LETTER.pattern}|(?i:(?:dark|light|pale)\s+)?(?i:{'|'.join(sorted(COLOURS))}))"
    r"(?i:\s+(?:yarn|only|again|all round|throughout|all around|around|across))?\W*"
)


def colour_alone(words: str) -> bool:
    """Whether words are a colour and nothing else: "A.", "in white", "only B"."""
    return len(words) < LONGEST and ALONE.fullmatch(words) is not None


LONGEST = 40


def next_in_colour(before: Mark | None, mark: Mark, words: str) -> bool:
    """Whether a row of which only the colour is told numbers the one behind the row before; rows
    of a list of colours begin anew.
    """
    numbers = before.numbers if before is not None else ()
    return bool(numbers) and mark.numbers[:1] == (numbers[-1] + 1,) and colour_alone(words)
