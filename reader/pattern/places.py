"""Where stitches go: "in next 3 sts", "in each ch across", "in corner sp", "to last 2 sts" -> Place."""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.cursor import Cursor
from reader.pattern.place_nouns import counts_stitches, find_noun, find_noun_chain, take_after
from reader.pattern.place_words import (
    AROUND,
    DETERMINERS,
    LEFT_OVER,
    LOOP_ONLY,
    MARKERS,
    PASSED_OVER,
    PREPOSITIONS,
    RING_WORDS,
    ROW_ENDS,
    ROW_WORDS,
    STITCH_NOUNS,
    TO_LAST,
    TOPS,
)
from reader.pattern.tree import ONE, Num, Place, Where

ENTERED = ("next", "each", "first", "last", "the", "all")
"""After "in back loop of", these go on with the place."""


def skip_loop_words(cur: Cursor) -> bool:
    """Takes words that say how the stitch is entered, which change no count."""
    took = False
    while True:
        length = cur.any_words(LOOP_ONLY)
        if not length:
            return took
        cur.at += length
        if cur.low() == "only":
            cur.at += 1
        took = True
        if cur.low() == "of" and cur.low(1) not in ("ch",):
            cur.at += 1
            if cur.kind() in ("num", "ord") or cur.low() in ENTERED:
                return True


def find_place(cur: Cursor) -> Place | None:
    """The place that stands here, None (and nothing taken) when there is none."""
    start = cur.at
    loops = skip_loop_words(cur)
    place = _place(cur, start, loops)
    if place is None:
        if loops:
            return Place(Where.PLAIN, cur.span(start), text=cur.said(start))
        cur.at = start
        return None
    skip_loop_words(cur)
    return replace(place, span=cur.span(start), text=cur.said(start))


def _place(cur: Cursor, start: int, bare: bool) -> Place | None:
    here = cur.span(start)
    ring = _ring(cur)
    if ring:
        return Place(Where.RING, here, noun="ring")
    to_last = _to_last(cur)
    if to_last is not None:
        return to_last
    if _around_alone(cur):
        return Place(Where.REST, here)
    saw = bare or _prepositions(cur)
    cur.accept("only")
    if cur.accept(*TOPS):
        saw = True
    if cur.low() in ("each", "every", "ea") and not cur.words("each time"):
        return _each(cur, here)
    if cur.low() in DETERMINERS or (
        saw and (cur.kind() in ("ord", "num") or find_noun(cur, peek=True))
    ):
        return _numbered(cur, here)
    if saw and cur.low() in ("the", "a", "that", "this", "these", "those", "it"):
        cur.at += 1
        return _place(cur, start, True)
    return None


def _prepositions(cur: Cursor) -> bool:
    took = False
    while cur.low() in PREPOSITIONS or (took and cur.low() in ("the", "a", "an", "of")):
        if (
            cur.low() == "to"
            and not took
            and cur.low(1) in ("turn", "form", "join", "close", "make")
        ):
            return took
        cur.at += 1
        took = True
    return took


def _ring(cur: Cursor) -> int:
    at = cur.at
    if cur.low() in ("in", "into", "inside", "to", "onto", "around") or cur.words("in the"):
        cur.at += 1
        if cur.low() in ("the", "a", "an", "your"):
            cur.at += 1
        length = cur.any_words(RING_WORDS)
        if length:
            cur.at += length
            return length
    cur.at = at
    return 0


def _around_alone(cur: Cursor) -> bool:
    length = cur.any_words(AROUND)
    if not length:
        return False
    after = cur.peek(length)
    nexts = cur.low(length)
    if nexts in ("next", "first", "last", "each", "post", "same", "every", "1st") or after.kind in (
        "num",
        "ord",
    ):
        return False
    if nexts == "the" and cur.low(length + 1) in ("next", "post", "last", "first", "stem"):
        return False
    if cur.low() in ("even", "plain", "straight", "round") and nexts in ("row", "rows", "sts"):
        return False
    stitch = cur.stitch(length)
    if (
        stitch is not None
        and cur.low() == "around"
        and after.spaced
        and cur.low(length) not in ("k", "p")
    ):
        return False
    cur.at += length
    while cur.low() in ROW_WORDS and cur.low(1) not in ("next",):
        cur.at += 1
    return True


def _to_last(cur: Cursor) -> Place | None:
    """ "to last 2 sts", "to 3 sts before end", "until 2 sts remain", "to marker"."""
    start = cur.at
    length = cur.any_words(TO_LAST)
    if length:
        cur.at += length
        number = _take_number(cur)
        noun = find_noun(cur) or "st"
        cur.accept(*ROW_ENDS)
        return Place(Where.TO_LAST, cur.span(start), number or ONE, noun)
    if cur.low() in ("to", "until", "till") or cur.words("across to"):
        cur.at += 1 if cur.low() != "across" else 2
        found = _to_spot(cur, start)
        if found is not None:
            return found
    cur.at = start
    return None


def _take_number(cur: Cursor) -> Num | None:
    number = cur.number()
    if number is not None:
        cur.at += 1
    return number


def _to_spot(cur: Cursor, start: int) -> Place | None:
    """What stands behind "to": stitches before the end, or a marker."""
    number = _take_number(cur)
    if number is None:
        return Place(Where.UNUSED, cur.span(start), Num((0,)), "marker") if _marker(cur) else None
    noun = find_noun(cur) or "st"
    if cur.accept(*LEFT_OVER):
        return Place(Where.TO_LAST, cur.span(start), number, noun)
    if cur.accept("before", "past", "after"):
        _marker(cur)
        return Place(Where.UNUSED, cur.span(start), number, "marker")
    return None


def _marker(cur: Cursor) -> bool:
    at = cur.at
    cur.accept("the")
    cur.accept("next", "first", "1st", "2nd", "second", "last", "beg", "bor", "side")
    if cur.accept(*MARKERS):
        return True
    cur.at = at
    return False


def _each(cur: Cursor, here: object) -> Place:
    start = cur.at
    cur.at += 1
    place = Place(Where.EACH, cur.span(start), each=True)
    if cur.low() == "of":
        cur.at += 1
        cur.accept("the", "these")
        found = _numbered(cur, here, each=True)
        return found if found is not None else place
    cur.accept("of", "the")
    remaining = cur.accept("remaining", "rem", "following", "unworked", "other")
    if cur.kind() == "ord" and cur.low(1) in STITCH_NOUNS:
        nth = cur.peek().value
        cur.at += 2
        take_after(cur)
        return replace(place, nth=nth)
    noun, chain = find_noun_chain(cur)
    nouns = [noun or "st"]
    while cur.low() in ("and", "&", "or"):
        skip = 2 if cur.low(1) in ("each", "in") else 1
        if cur.words("in each", 1):
            skip = 3
        at = cur.at
        cur.at += skip
        more, more_chain = find_noun_chain(cur)
        if not more or (cur.low() in ("in",) and more not in ("ch", "sp", "st")):
            cur.at = at
            break
        nouns.append(more)
        chain = chain or more_chain
    sides = take_after(cur)
    return replace(
        place, noun=nouns[0], among=tuple(nouns[1:]), chain=chain, remaining=remaining, sides=sides
    )


def _numbered(cur: Cursor, here: object, each: bool = False) -> Place | None:
    """ "next 3 sts", "last st", "3rd ch from hook", "same space", "8 stitches following"."""
    start = cur.at
    where = Where.NEXT
    nth = 0
    determiner = ""
    number: Num | None = None
    while not cur.done():
        low = cur.low()
        if low in ("next", "following", "nxt", "foll", "remaining", "rem", "unworked"):
            determiner = determiner or low
            if low in ("remaining", "rem"):
                where = Where.EACH
        elif low in ("same", "any", "all", "both", "first", "last", "beg"):
            determiner = low
        elif low in PASSED_OVER:
            pass
        elif cur.kind() == "ord" and number is None:
            nth = cur.peek().value
            if nth == 1:
                determiner = determiner or "first"
        elif cur.kind() in ("num", "times") and number is None and not counts_stitches(cur):
            number = cur.number()
        else:
            break
        cur.at += 1
    noun, chain = find_noun_chain(cur)
    if not noun and not determiner and not nth and not (each and number is not None):
        cur.at = start
        return None
    return _finish(cur, start, where, nth, determiner, number, noun, chain, each)


def _finish(
    cur: Cursor,
    start: int,
    where: Where,
    nth: int,
    determiner: str,
    number: Num | None,
    noun: str,
    chain: int,
    each: bool,
) -> Place:
    span = cur.span(start)
    sides = take_after(cur)
    said = cur.said(start).lower()
    if nth and "hook" in said:
        return Place(Where.CHAIN, span, noun="ch", nth=nth)
    if determiner == "same" or "at base of" in said:
        return Place(Where.SAME, span, number or ONE, noun or "st", text=said)
    if (
        noun in ("tch",)
        or " of ch" in said
        or "turning ch" in said
        or "beg ch" in said
        or "beginning ch" in said
    ):
        kind = "tch" if noun in ("st", "ch", "tch", "") else noun
        return Place(Where.NEXT, span, number or ONE, kind, each, nth)
    if determiner == "all" and number is None:
        where = Where.EACH
    if where is Where.EACH and number is not None:
        where = Where.NEXT
    if determiner == "any":
        return Place(Where.ONE_PLACE, span, ONE, noun or "st")
    if determiner == "both":
        number = Num((2,))
    if determiner in ("first", "last"):
        kind = Where.FIRST if determiner == "first" else Where.LAST
        where = where if where is Where.EACH else kind
    plural = each or number is not None
    return Place(where, span, number or ONE, noun or "st", plural, nth, sides, chain)
