"""Knitted changes told by the spots they are made at, in a row that is otherwise plain: "yo each
side of the spine", "inc 1 st at each end and either side of centre st", "m1 after first and before
second marker", "inc 1 st inside both gusset markers" -> Shape.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import ONE, Num, Shape, Unread
from reader.terms.numbers import word_number

_ONE = r"(?:1 |one |once |a |an )?(?:sts? |stitch )?"
_LOSS = (
    r"dec|decrease|decreasing|dec'ing|narrow|narrowing|[kp] ?2 ?tog|ssk|(?:knit|take|taking|k) 2"
    r" tog(?:ether)?|take in"
)
_GAIN = (
    r"yo|yarn over|m ?1(?: ?[lr])?|mak(?:e|ing) (?:1|one)(?: [lr])?|inc|increase|increasing|inc'ing"
    r"|kfb|kf&b|widen|widening|add|adding"
)
_VERB = (
    rf"(?:(?:with|by|while|working|work|making|make) )*(?:a |an |1 |one )?(?:(?P<loss>{_LOSS})"
    rf"|(?P<gain>{_GAIN})) "
)
_ENDS = (
    r"(?:at |on |in )?(?:the )?(?:each|both|either) (?:ends?|edges?|sides?)(?! of (?!the row|row))"
    r"(?: of (?:the )?(?:row|round|rnd|needle))?"
    r"|(?:at |on )?(?:the )?(?:beg|beginning|start) and (?:at )?(?:the )?end(?: of (?:the )?"
    r"(?:row|needle))?"
)
_WHICH = (
    r"(?P<all>each of (?:the |these )?|all (?:of )?(?:the )?|each |every |both (?:of )?(?:the )?"
    r"|the )?(?P<n>\d+ |two |three |four )?(?P<nth>first |second |1st |2nd |third |3rd |fourth |4th"
    r" |next |last |previous )?"
)
_NOUN = (
    r"(?P<what>(?:(?:raglan|seam|marked|sleeve|side|cent(?:re|er)|middle|back|gusset|thumb|spine"
    r"|underarm|front|heel|axial) )*)"
    r"(?P<noun>markers?|m|seams?|sts?|stitch(?:es)?|lines?|spine|gusset|thumb|cent(?:re|er)|middle"
    r"|rib|panel)"
)
_SIDE = (
    r"(?:in (?:the )?(?:sts? |stitch )|on |at )?(?:(?P<two>before and after|(?:each|either|both)"
    r" sides? of|either side)|(?P<one>just before|just after|before|after|inside|outside)) "
    rf"{_WHICH}{_NOUN}"
)
_AREA = (
    r"(?:in|on|into|over) (?:the (?:cent(?:re|er)|middle) of )?(?:each|every(?: one)?|all)"
    r" (?:of )?(?:the )?(?:(?P<areas>\d+|two|three|four|five|six|seven|eight|nine|ten|twelve) )?"
    r"(?:[pk] ?\d* |purl |knit |plain |purled |knitted )*"
    r"(?P<area>ribs?|cables?|panels?|wedges?|sections?|gores?)"
)
"""Stretches of the row, as many as it says."""
_UNNAMED = r"(?:before|after) (?:the )?(?:first|second|1st|2nd|next|last)"
_BARE = re.compile(r"\?P<\w+>")
_SPOT = _BARE.sub("?:", rf"{_ONE}(?:{_ENDS}|{_SIDE}|{_AREA}|{_UNNAMED}(?= and))")
SPOTS = re.compile(
    rf"{_VERB}(?P<so>\d+|two|three|four|six|eight)? ?(?:sts? |stitch |stitches )?(?:(?:in|on)"
    rf" (?:this |the )?(?:row|rnd|round) )?(?::? ?)(?P<spots>{_SPOT}(?:(?: ,| ,? ?and"
    rf"| &) {_SPOT})*)(?= |$)"
)
EACH = re.compile(rf"{_ONE}(?:(?P<ends>{_ENDS})|{_SIDE}|{_AREA}|(?P<unnamed>{_UNNAMED}))(?= |$)")
SPREAD_WORDS = frozenset(["thumb", "gusset", "centre", "center", "middle", "spine"])
"""Stitches called so lie side by side: they are one spot, however many."""
LOOK = 40
"""Tokens that are looked at."""


def at_spots(cur: Cursor, start: int) -> Shape | Unread | None:
    """The change that stands here with all its spots, taken; None where the clause goes on behind
    them; unread where nothing tells how many spots there are.
    """
    words = " ".join(cur.lows[start : start + LOOK])
    found = SPOTS.match(words)
    if found is None:
        return _in_all(cur, start, words)
    cur.at = start + len(found.group().split())
    if cur.low() not in (*STOPS, ""):
        return None
    spots, marks, told = 0, 0, _markers_told(cur)
    for one in EACH.finditer(found["spots"]):
        here, each_mark = _spots(one)
        if here < 0:
            return Unread(cur.span(start), cur.said(start))
        spots, marks = spots + here + told * each_mark, marks + (each_mark if not told else 0)
    number, gain = _number(found["so"]), -1 if found["loss"] else 1
    summed = ":" in found.group() or " one " in found["spots"] or " 1 " in found["spots"]
    if (spots and marks) or (summed and number > 1 and number not in (spots, spots * number)):
        return Unread(cur.span(start), cur.said(start))
    times = ONE if number == spots and ":" in found.group() else Num((number,))
    if marks:
        return Shape(cur.span(start), cur.said(start), gain, times, markers=marks)
    return Shape(cur.span(start), cur.said(start), gain, times, spots)


IN_ALL = re.compile(
    r"(?:(?P<gain>inc|increase|increasing)|dec|decrease|decreasing) (?P<n>\d+) (?:sts|stitches)"
    r" (?:at|along|near|by|in|on|over|using|as|with|for|where) (?P<where>[a-z' ]+?)(?= [,;.:)(]|$)"
)
APART = re.compile(
    r"\b(?:each|every|both|either|beg|beginning|end|start|next|first|last|edge|same|row|rnd|round"
    r"|rows|rounds|needle|needles|times|twice|once|evenly|sts?|side|sides)\b"
)
"""Where the stitches are so told, other rules say how many changes they are."""


def _in_all(cur: Cursor, start: int, words: str) -> Shape | None:
    """ "inc 8 sts at raglan lines": so many in the row, whatever the spots are."""
    found = IN_ALL.match(words)
    if found is None or APART.search(found["where"]) or int(found["n"][:3]) < 2:
        return None
    cur.at = start + len(found.group().split())
    number = Num((int(found["n"][:3]),))
    return Shape(cur.span(start), cur.said(start), 1 if found["gain"] else -1, number)


def _markers_told(cur: Cursor) -> int:
    """The 4 of "(4 markers)", taken; 0 where no such bracket stands here."""
    if cur.low() != "(" or cur.kind(1) != "num" or cur.low(2) not in ("markers", "m"):
        return 0
    told = cur.peek(1).value or 0
    cur.at += 3 + (cur.low(3) == ")")
    return told


def _number(said: str | None) -> int:
    """How many stitches each change is of."""
    if not said:
        return 1
    return int(said[:3]) if said.isdigit() else word_number(said) or 1


def _spots(one: re.Match[str]) -> tuple[int, int]:
    """How many spots one phrase names, and how many at each marker; (-1, 0) where nothing tells."""
    if one["ends"]:
        return 2, 0
    if one["unnamed"]:
        return 1, 0
    if one["area"]:
        return (_number(one["areas"]) if one["areas"] else -1), 0
    each = 2 if one["two"] else 1
    told, what, noun = (one["n"] or "").strip(), (one["what"] or "").split(), one["noun"]
    many = noun.endswith("s") or (one["all"] or "").startswith(("each", "all", "every", "both"))
    apart = not SPREAD_WORDS.intersection(what) or noun.startswith("m")
    paired = many and "side" in what
    if (one["all"] or "").startswith("both") or (paired and not told):
        return 2 * each, 0
    if told and apart:
        return each * _number(told), 0
    if not many or one["nth"] or (not apart and noun.startswith("st")):
        return each, 0
    if {"gusset", "thumb"}.intersection(what) and one["one"] in ("inside", "outside"):
        return 2 * each, 0
    return (0, each) if noun.startswith("m") else (-1, 0)
