"""Star stitches told loop by loop: "draw up a loop in the eye, in the side of the last loop, in the
same st and in each of next 2 sts, yo and through 6 loops, ch 1" -> Work of one star over two.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.cursor import Cursor
from reader.pattern.tree import Chain, Node, Place, Repeat, Skip, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.numbers import SPELLED, word_number
from reader.terms.stitches import Craft

FIRST = frozenset(
    ["draw", "pull", "pick", "insert", "put", "take", "raise", "work", "up", "make", "pass"]
)
_N = rf"(?:\d+|{SPELLED})"
_YARN = r"(?:thread|yarn|wool|cotton|silk|worsted|floss|zephyr|it)"
PICKED = re.compile(
    r"\b(?:(?:draw|pull|pick|take|raise)(?:ing)?(?: up)? (?:up )?"
    rf"(?:an? |one |1 |the |\d |{SPELLED} ?)?(?:loops?|lps?|{_YARN})"
    r"|(?:insert|put)(?:t?ing)? (?:the |your )?(?:hook|needle))",
    re.IGNORECASE,
)
"""A loop taken on the hook, at the head of such a stitch."""
OFF = re.compile(
    rf"(?:\b(?:draw|pull|pass|work)(?:ing)? )?(?:{_YARN} )?\b(?:off|through|thru)\b"
    rf"(?: all\b)?(?: of)?(?: the)?(?: {_N}\b)?(?: (?:loops?|lps?|sts?|stitches)\b)?"
    r"(?: (?:now )?(?:on|upon) (?:the )?(?:hook|needle))?(?: (?:at once|together|at one time))?",
    re.IGNORECASE,
)
ALL_OFF = re.compile(
    r"\ball\b|\b(?:[4-9]|1[0-2]|four|five|six|seven|eight|nine|ten)\b", re.IGNORECASE
)
EYE = re.compile(
    r"[,;.]? ?(?:and |then )?(?:make |work )?(?:ch(?:ain)? ?(?:1|one)|(?:1|one) ch(?:ain)?)\b"
    r"(?: (?:st|stitch))?(?:[ ,]*(?:to|for|which|this|tightly|as)\b[^.;,*()]{0,50})?",
    re.IGNORECASE,
)
"""The chain that closes it."""
OLD_PLACE = re.compile(
    r"\b(?:eyes?|side|back (?:of|part|loop)|same|last (?:loop|lp|st|stitch|star|part|spike|of)|"
    r"hole|centre|center|base|just made|formed|spoke|leg)\b",
    re.IGNORECASE,
)
"""Where no new stitch of the row below is used."""
NEW_PLACES = re.compile(
    rf"\b(?:next|following|first) (?P<n>{_N})? ?(?:of )?(?:the )?(?:base |foundation )?"
    r"(?:sts?|stitch(?:es)?|chs?|chains?|[sdh]+ ?c|t ?r|loops?|lps?)\b",
    re.IGNORECASE,
)
NTH = ("1st", "2nd", "3rd", "4th", "5th", "6th", "7th")
IN_WORDS = {"second": "2nd", "third": "3rd", "fourth": "4th", "fifth": "5th", "sixth": "6th",
            "2d": "2nd", "3d": "3rd"}  # fmt: skip
ORDINAL = re.compile(rf"\b(?:{'|'.join([*NTH, *IN_WORDS])})\b", re.IGNORECASE)
ON_HOOK = re.compile(
    rf"\b(?P<n>{_N}) (?:loops?|lps?|sts?|stitches)(?: in all)? (?:are |now )*(?:on|upon) "
    r"(?:the |your )?(?:hook|needle)",
    re.IGNORECASE,
)
FOUNDATION = 8
"""Chains from which on they are no turning chain."""
LONGEST = 640
"""Characters of such a stitch, told at length."""


def find_star_stitch(cur: Cursor, made: list[Node]) -> Work | None:
    """The star that is told here, taken with the chain that closes it; None, and nothing taken,
    elsewhere. A first star in the foundation puts the chains it passes on made.
    """
    if cur.low() not in FIRST or cur.book.craft is not Craft.CROCHET:
        return None
    begin = cur.peek().start
    words = " ".join(cur.text[begin : begin + LONGEST].split("\n"))
    if PICKED.match(words) is None:
        return None
    told = _stretch(words)
    star = stitch_named("star", Craft.CROCHET)
    if told is None or star is None:
        return None
    stretch, end, closed = told
    takes, passed = _places(stretch, closed, made)
    if not takes:
        return None
    start = cur.at
    while not cur.done() and cur.peek().start < begin + end:
        cur.at += 1
    span = cur.span(start)
    if passed:
        place = Place(Where.CHAIN, span, noun="ch", nth=passed)
        made.append(Skip(span, cur.said(start), place))
    stitch = replace(star, takes=takes, makes=1)
    return Work(span, cur.said(start), stitch, None, Place(Where.PLAIN, span))


def _stretch(words: str) -> tuple[str, int, bool] | None:
    """The words of one star, where they end with the chain that closes it, and whether it does."""
    for off in OFF.finditer(words):
        before = words[: off.start()]
        if re.search(r"[*]|\b(?:rep|repeat)\b", before):
            return None
        if not ALL_OFF.search(off.group()):
            continue
        eye = EYE.match(words, off.end())
        return words[: off.end()], eye.end() if eye else off.end(), eye is not None
    return None


def _places(stretch: str, closed: bool, made: list[Node]) -> tuple[int, int]:
    """How many new stitches a star uses, 0 where it is none; and how many chains are passed before
    it, in a foundation.
    """
    new = sum(_value(found["n"]) for found in NEW_PLACES.finditer(stretch))
    ordinals = [IN_WORDS.get(one.lower(), one.lower()) for one in ORDINAL.findall(stretch)]
    loops = ON_HOOK.search(stretch)
    if not ordinals:
        return (new if (closed and new > 4) or OLD_PLACE.search(stretch) else 0), 0
    turns = any(isinstance(one, Chain) and one.number.values[0] < FOUNDATION for one in made)
    if turns or any(isinstance(one, Work | Repeat) for one in made):
        # The chain is that which turns the row: nothing of the row below is used by it.
        return new, 0
    picked = _value(loops["n"]) - 1 if loops else new + len(ordinals)
    return (picked, NTH.index(ordinals[0])) if picked > 2 else (0, 0)


def _value(said: str | None) -> int:
    if not said:
        return 1
    return int(said) if said.isdigit() else word_number(said) or 1
