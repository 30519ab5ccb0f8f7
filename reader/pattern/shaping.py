"""Shaping by rule inside one row: "inc 6 evenly", "dec 1 st each end", "inc in every 4th st" ->
Shape.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import Cursor
from reader.pattern.each_needle import needles_of
from reader.pattern.phrasing import take_phrase
from reader.pattern.tree import ONE, Num, Shape
from reader.terms.stitches import Craft

LOOK = 16
"""Tokens that are looked at for the words of a rule."""
WORDS = (
    "inc", "increase", "increasing", "incs", "dec", "decrease", "decreasing", "widen", "narrow",
    "widening", "narrowing", "inc'ing", "dec'ing",
)  # fmt: skip
GAIN = ("inc", "increase", "increasing", "incs", "widen", "widening", "inc'ing")
ONE_OF_MANY = ("increase", "decrease")
MANY = ("incs", "decs", "increases", "decreases", "inc", "dec")
SPOTS = re.compile(
    r"\b(?:at |on |in )?(?:each|both|either) (?:end|ends|side|sides|edge)|each end of"
    r"|beg(?:inning)? (?:of \w+ )?and (?:once )?(?:at )?(?:the )?end|(?:first|1st) and last"
)
EVERY = re.compile(
    r"\b(?:in )?every (?:foll\w* )?(other|\d+)(?:st|nd|rd|th|d)?\b(?: and (\d+)(?:st|nd|rd|th))?"
)
GOAL = re.compile(
    r"\b(?:until|till) (?:there are |you have |we have |you get )?(\d+)|\bto (?:have |make |get )?"
    r"(\d+)(?: (?:sts|stitches|st|in all|altogether|loops|long|d ?c|s ?c|h ?d ?c|h?tr|(?:half )?"
    r"(?:double|single|treble)s?(?: crochets?| stitches)?)\b|$)"
)
COUNTED = re.compile(
    r"^(?:increasing|decreasing|inc|dec) \d+ (?:times|sts|stitches)$"
    r"|^(?:increas|decreas|inc|dec)(?:e|ing)? \d+ (?:sts|stitches) (?:all )?(?:a?round|across"
    r"|along)(?: (?:the |this )?(?:row|rnd|round|needle|work))?$"
)
"""So many in the row, wherever they are."""
ONE_OF_ALL = re.compile(r"^(?:increas|decreas|inc|dec)(?:e|ing)? (?:1|one|a) (?:st|stitch)$")
"""One in the row, behind what the row is: "knit around, dec 1 st"."""
ROW_OF = frozenset(
    ["knit", "k", "purl", "p", "around", "across", "all", "sts", "stitches", "even", "row",
     "round", "rnd", "the", "to", "end"]
)  # fmt: skip
"""What tells that all of a row is worked."""
ONE_END = re.compile(
    r"\bat (?:the )?(?:beg\w*|start|end|one end|one side) of (?:the |each |every )?\w+"
    r"|\bin (?:the )?(?:first|1st|last|end) (?:st|stitch) (?:of|on|in) (?:each|every)\b"
    r"|\bat (?:the )?(?:neck|armhole|front|side|inner|outer|inside|centre|center|shoulder) edge"
    r"|\b(?:at|in) (?:the )?(?:exact )?(?:center|centre|middle)(?: back| front)?"
    r"(?: of (?:the )?(?:row|round|back|front|toe|heel|sole|work|piece|section|neck))?$"
)
OF_A_ROW = re.compile(
    r"^(?:increasing|decreasing|inc|increase|dec|decrease) \d+"
    r"(?: (?:sts?|stitches|h?dc|sc|[hs] d c|[sd] c|h?tr(?: c)?|times))?"
    r"(?: (?:in|on|across|over|at|during))?"
    r"(?: (?:the )?(?:next|this|same|last|first|each|every)| the)? (?:row|rnd|round)$"
)
"""So many in a row that is named."""
OVER = re.compile(r"\bof the (\d+)")
IN_PLACE = re.compile(r"^(?:inc|dec) in (?:next|each|every st|first|last)")
"""An increase in one place: a stitch, not a rule."""
ROWS_AFTER = re.compile(r".{0,2}(?:row|rnd|round)")


OMITS = ("omitting", "omit", "leaving", "skipping", "skip", "missing")


def _words(cur: Cursor) -> tuple[list[str], int]:
    lows: list[str] = []
    for ahead in range(LOOK):
        low = cur.low(ahead)
        if low in (",", ";", ".", "(", "[", ")", "]", "*", "") and ahead > 0:
            break
        if low in ("and", "then", "&") and cur.low(ahead + 1) in (*WORDS, *OMITS):
            break
        ordinal = cur.kind(ahead) == "ord" and not low[0].isdigit() and "every" in lows
        lows.append(f"{cur.peek(ahead).value}th" if ordinal else low)
    return lows, len(lows)


def find_shape(cur: Cursor, start: int) -> Shape | None:
    """The shaping rule that stands here, taken; None when the words are a stitch or something else.
    """
    special = _doubled(cur, start) or _so_often(cur, start)
    return special or _by_rule(cur, start)


DOUBLES = tuple(
    f"{verb} the {number}of {sts}"
    for verb in ("double", "doubling", "to double")
    for number in ("number ", "amount ", "total ")
    for sts in ("sts", "stitches", "the sts", "the stitches")
)


def _doubled(cur: Cursor, start: int) -> Shape | None:
    """ "Double the number of stitches by knitting into front and back of each": one more in each.
    """
    if cur.book.craft is not Craft.KNITTING or not cur.accept(*DOUBLES):
        return None
    while not cur.done() and cur.low() not in (";", "."):
        cur.at += 1
    return Shape(cur.span(start), cur.said(start), 1, ONE, every=1)


def _by_rule(cur: Cursor, start: int) -> Shape | None:
    """A change evenly, at the ends or at every so manieth stitch."""
    if cur.kind() == "num" and cur.low(1) in MANY + ONE_OF_MANY:
        return _spread(cur, start)
    evenly = cur.low() == "evenly" and cur.low(1) in WORDS
    cur.at += evenly
    if cur.low() not in WORDS:
        return None
    gain = 1 if cur.low() in GAIN else -1
    lows, length = _words(cur)
    said = " ".join(lows)
    every = EVERY.search(said)
    ends = SPOTS.search(said)
    end = ONE_END.search(said)
    needles = needles_of(said, cur.book.needles)
    counted = bool(COUNTED.match(said) or OF_A_ROW.match(said)) or _one_of_all(cur, said)
    goal = GOAL.search(said)
    told = evenly or "even" in said or "across row" in said
    told = told or counted or any((ends, every, end, goal))
    if not (told or needles > 1) or not needles:
        return None
    if IN_PLACE.match(said) and not ends and not every:
        return None
    if end and re.search(r"\bat (?:the )?(?:beg|start)", said) and _works_on(cur, length):
        # Only where the row begins: what follows says the rest.
        return None
    numbers = (
        Num(cur.peek(n).values)
        for n in range(1, min(4, length))
        if cur.kind(n) == "num" and (counted or cur.low(n + 1) not in ("times", "time", "x"))
    )
    number = next(numbers, ONE)
    until = _sized(cur, length, goal.group(1) or goal.group(2)) if goal else None
    repeats = ONE if counted else _repeats(cur, length)
    among = OVER.search(said)
    over = _sized(cur, length, among.group(1)) if among else None
    cur.at += length
    step, spots = _step(said, every), (2 if ends else 1) * needles
    return Shape(
        cur.span(start), cur.said(start), gain, number, spots, step, over, repeats, None, until
    )


def _one_of_all(cur: Cursor, said: str) -> bool:
    """Whether one stitch is changed, and all that stands before in the row is that it is knitted.
    """
    before = cur.lows[: cur.at]
    whole = len(before) > 1 and before[-1] == "," and ROW_OF.issuperset(before[:-1])
    return whole and ONE_OF_ALL.match(said) is not None


def _sized(cur: Cursor, length: int, first: str) -> Num:
    """The number whose first is told, with those of the other sizes."""
    for ahead in range(length):
        if cur.kind(ahead) == "num" and str(cur.peek(ahead).values[0]) == first:
            return Num(cur.peek(ahead).values)
    return Num((int(first[:5]),))


IN_ROW = tuple(
    f"{at}{which}{row}"
    for at in ("in ", "on ", "")
    for which in ("each ", "every ", "the ", "this ")
    for row in ("row", "round", "rnd")
)


def _so_often(cur: Cursor, start: int) -> Shape | None:
    """ "narrow twice in each row": so many changes, wherever they are made."""
    if cur.book.craft is not Craft.CROCHET or cur.low() not in WORDS:
        return None
    gain = 1 if cur.low() in GAIN else -1
    counted = cur.kind(1) == "num" and cur.low(2) in ("times", "time")
    number = cur.number(1) if counted or cur.kind(1) == "times" else None
    length = 3 if counted else 2
    row = cur.any_words(IN_ROW, length)
    if number is None or not row:
        return None
    cur.at += length + row
    return Shape(cur.span(start), cur.said(start), gain, number)


def _spread(cur: Cursor, start: int) -> Shape | None:
    """ "5 incs spaced evenly in the row", "1 increase at each end"; None where nothing says that
    they are spread.
    """
    number, gain = cur.number(), 1 if cur.low(1).startswith("inc") else -1
    lows, length = _words(cur)
    ends = SPOTS.search(" ".join(lows))
    if ends is not None:
        cur.at += length
        return Shape(cur.span(start), cur.said(start), gain, number or ONE, 2)
    for ahead in range(2, 7):
        if cur.low(ahead) in (",", ";", ".", ""):
            return None
        if cur.low(ahead) in ("evenly", "even"):
            cur.at += ahead + 1
            take_phrase(cur)
            return Shape(cur.span(start), cur.said(start), gain, number or ONE)
    return None


def _works_on(cur: Cursor, length: int) -> bool:
    """Whether stitches follow in the same row behind these words."""
    at = length + (cur.low(length) == ",")
    at += cur.low(at) in ("then", "and", "work")
    return cur.stitch(at) is not None or (cur.kind(at) == "num" and cur.stitch(at + 1) is not None)


def _step(said: str, every: re.Match[str] | None) -> int:
    """In every how manieth stitch; 0 where "every" speaks of rows or inches."""
    if every is None or "inch" in said or ROWS_AFTER.match(said, every.end()):
        return 0
    return 2 if every.group(1) == "other" else int(every.group(2) or every.group(1))


def _repeats(cur: Cursor, length: int) -> Num:
    """ "5 times", "twice": how often the rule is worked in all."""
    for ahead in range(length):
        if cur.kind(ahead) == "times":
            return Num(cur.peek(ahead).values)
        if cur.kind(ahead) == "num" and cur.low(ahead + 1) in ("times", "time", "x"):
            return Num(cur.peek(ahead).values)
    return ONE
