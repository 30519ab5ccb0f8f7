"""Decreases told loop by loop: "draw up a loop in each of next 2 sc, yo and through all loops",
"insert hook in next st, draw up a loop, insert hook in next st, draw up a loop, yo, draw through 3
loops" -> Work of "sc2tog" and its like.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import Cursor
from reader.pattern.tree import Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.numbers import SPELLED, word_number
from reader.terms.stitches import Craft, Stitch

FIRST = frozenset(("draw", "pull", "pick", "insert", "yo", "yoh", "thread", "wool", "yarn", "("))
_N = rf"(?P<n>\d|{SPELLED})"
_OVER = r"(?:(?:y|w|t)\.? ?o\.?(?:h\.?)?|(?:yarn|thread|wool) (?:over|round)(?: (?:the )?hook)?)"
_LOOP = (
    r"(?:(?:draw|pull|pick)(?:ing)? (?:up )?(?:(?:a|1|one|the|up a) )?(?:loop|lp|yarn|it)s?"
    r"(?: through)?)"
)
_PLACE = (
    r"(?:in|into|through|from) (?:the )?(?:next|following|same|first)"
    r" (?:st|stitch|s ?c|d ?c|h ?d ?c|ch)"
)
_OFF = (
    rf"[,;]? ?(?:and |then )?(?:{_OVER})?[,;]? ?(?:and |then )?(?:(?:draw|pull)(?:ing)? )?"
    rf"(?:it |yarn )?(?:through|thru) (?:(?:all|the) )*(?:(?:\d|{SPELLED}) ?)?(?:remaining )?"
    r"(?:loops?|lps?)\b"
    r"(?: on (?:the )?(?:hook|needle))?"
)
IN_EACH = re.compile(
    rf"{_LOOP} (?:in|into|through|from) (?:each (?:of )?)?(?:the )?(?:next|first|1st|last) {_N}"
    rf" (?P<stitch>sts?|stitches|s ?c|d ?c|h ?d ?c)\b{_OFF}",
    re.IGNORECASE,
)
ONE_BY_ONE = re.compile(
    rf"(?:insert (?:the )?hook {_PLACE}[,;]? ?(?:and |then )?(?:{_OVER}[,;]? ?(?:and )?)?{_LOOP}"
    r"[,;]? ?(?:and |then )?){2,4}"
    rf"{_OFF}",
    re.IGNORECASE,
)
TALL = re.compile(
    rf"\(? ?{_OVER}[,;]? ?(?:insert (?:the )?hook {_PLACE}[,;]? ?(?:{_OVER}[,;]? ?(?:and )?)?"
    rf"(?:and )?{_LOOP}|{_LOOP} {_PLACE})[,;]? ?(?:and |then )?{_OVER}[,;]? ?(?:and )?"
    rf"(?:draw |pull )?(?:through|thru) (?:2|two) (?:loops|lps) ?\)? ?(?:twice|{_N} times){_OFF}",
    re.IGNORECASE,
)
INSERTED = re.compile(r"insert (?:the )?hook", re.IGNORECASE)


def find_drawn_up(cur: Cursor) -> Work | None:
    """The decrease that is told here, taken; None, and nothing taken, elsewhere."""
    if cur.low() not in FIRST or cur.book.craft is not Craft.CROCHET:
        return None
    begin = cur.peek().start
    words = cur.text[begin : begin + 260]
    flat = words.replace("\n", " ")
    for shape in (IN_EACH, ONE_BY_ONE, TALL):
        found = shape.match(flat)
        if found:
            amount = _amount(found)
            base = "dc" if shape is TALL else "sc"
            stitch = stitch_named(f"{base}{amount}tog", Craft.CROCHET)
            return _taken(cur, begin + found.end(), stitch) if stitch else None
    return None


def _amount(found: re.Match[str]) -> int:
    if found.re is ONE_BY_ONE:
        return len(INSERTED.findall(found.group()))
    said = found.group("n") or "2"
    return int(said) if said.isdigit() else word_number(said) or 0


def _taken(cur: Cursor, end: int, stitch: Stitch) -> Work:
    start = cur.at
    while not cur.done() and cur.peek().start < end:
        cur.at += 1
    span = cur.span(start)
    return Work(span, cur.said(start), stitch, None, Place(Where.PLAIN, span))
