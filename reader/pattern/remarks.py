"""Words that only say something: "(counts as dc)", a colour in brackets -> Act."""

from __future__ import annotations

import re

from reader.pattern.chain_sayings import chain_counts
from reader.pattern.cursor import Cursor
from reader.pattern.first_replaced import only_first_told
from reader.pattern.place_words import AROUND
from reader.pattern.tokens import Token
from reader.pattern.tree import Act, Chain, Deed, LeaveRest, Node, Work
from reader.terms.stitches import Craft

SHAPING_WORDS = ("dec", "inc", "decrease", "increase", "make", "narrow", "widen")
"""Behind "to" in a bracket: how such a thing is worked, told once."""
MOVING_WORDS = ("get", "reach", "bring", "move", "go", "come", "form", "start", "begin")
"""What the slip stitches before the bracket are for."""


OUT_OF_ONE = re.compile(
    r"\d+ (?:sts?|stitches|loops)(?: (?:made|worked|now))?"
    r" (?:(?:out )?of|in|into|from|on) (?:1|one|same|that|the|a|each)(?: (?:st|stitch|loop))?"
)
"""How many a place holds now, told behind them: "(3 sts in 1 st)"."""
SAYING = frozenset(
    {"this", "these", "those", "counts", "completed", "made", "see", "note",
     "having", "giving", "right", "wrong", "side", "opposite", "always",
     "when"}
)  # fmt: skip
"""Words near the start of a bracket that only says something."""


SO_MANY_ARE = re.compile(
    r"(?:these |those |the |= |now )*\d+ (?:sts?|stitches|loops) "
    r"(?!rem|left|dec|inc)(?:(?!\b(?:k|p|knit|purl|inc|dec|tog|yo|work|rep|cast|bind)\b).)+"
)
"""Where so many stitches are, or what they are for: "(32 sts for heel)"."""
TO_AN_INCH = re.compile(r"\b(?:to|=|per) (?:1 |one |an |the |each |every )?(?:inch|in$|cm)|\b10 cm")
"""A gauge: "(15 ch sts to 1 inch)"."""
TALKING = frozenset({"a", "an", "that", "if", "or", "you", "optional", "counting", "including",
                     "excluding"})
"""The first word of such a bracket."""


def remark_in(inner: list[Token], cur: Cursor, start: int) -> Node | None:
    """A bracket that only says something: "counts as dc", a definition, a colour, a size."""
    lows = [token.low for token in inner]
    if not lows:
        return Act(cur.span(start), "", Deed.NOTE)
    if only_first_told(" ".join(lows)):
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    counts = chain_counts(lows)
    if counts is not None:
        return Act(cur.span(start), cur.said(start), Deed.NOTE, counts[1], counts[0])
    if lows[-1] in ("row", "rnd", "round", "rows") and not any(low.isdigit() for low in lows):
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    if cur.book.craft is Craft.CROCHET and LEFT_FOR.match(" ".join(lows)):
        return LeaveRest(cur.span(start), cur.said(start))
    if OUT_OF_ONE.fullmatch(" ".join(lows)):
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    if cur.book.craft is Craft.KNITTING and SO_MANY_ARE.fullmatch(" ".join(lows)):
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    if cur.book.craft is Craft.KNITTING and _names_fabric(lows) and not so_often(cur):
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    if TO_AN_INCH.search(" ".join(lows)):
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    marks = [at for at, low in enumerate(lows[:7]) if low in (":", "=")]
    colon = bool(marks) and marks[0] >= 1
    if _told_once(lows):
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    said = lows[0] in TALKING or (lows[0] == "not" and lows[1:2] != [] and lows[1] in TALKING)
    if colon or SAYING & set(lows[:4]) or said:
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    alone = len(lows) == 1 and inner[0].kind != "num"
    if alone and not (lows[0] in cur.book.known and (so_often(cur) or not start)):
        deed = Deed.COLOUR if lows[0].isalpha() else Deed.NOTE
        return Act(cur.span(start), cur.said(start), deed)
    return None


LEFT_FOR = re.compile(
    r"(?:the |leaving |leave )?(?:last |remaining |other )?\d+ (?:[a-z]+ ){0,4}?"
    r"(?:are |is |will be )?"
    r"(?:(?:left|remain\w*|wait\w*) (?:for|free|un\w+|on|at|over)|unworked|free)\b"
)
"""Stitches that are not worked, "(8 dc left for back of neck)": told, and nothing done."""


def _names_fabric(lows: list[str]) -> bool:
    """ "(seed st)", "(twist over 2 sts)": only what was worked is called so."""
    words = [low for low in lows if not low.isdigit() and low not in BESIDE_FABRIC]
    return 0 < len(words) < 4 and FABRIC_NAMES.issuperset(words)


FABRIC_NAMES = frozenset(
    ["twist", "cable", "seed", "moss", "rib", "ribbing", "garter", "stockinette", "stocking",
     "bobble", "popcorn", "cross", "crossed", "crossing", "lace", "eyelet", "eyelets", "increase",
     "inc", "decrease", "dec", "double", "front", "back", "left", "right", "patt", "pattern",
     "knot", "center", "centre", "middle", "spine", "edge", "border", "seam", "selvedge", "thumb",
     "gusset"]
)  # fmt: skip
BESIDE_FABRIC = frozenset(
    ["over", "st", "sts", "stitch", "stitches", "made", "completed", "a", "1", "the", "on", "-"]
)  # fmt: skip


def so_often(cur: Cursor) -> bool:
    """Whether a number of times stands here: "(yo) twice", "(inc) x 6", "(dec) around"."""
    counted = cur.kind() == "num" and cur.low(1) in ("times", "time", "x")
    crossed = cur.low() in ("x", "*", "(", "[") and cur.kind(1 + (cur.low(1) == "x")) == "num"
    return cur.kind() == "times" or counted or crossed or cur.any_words(AROUND) > 0


def _told_once(lows: list[str]) -> bool:
    """ "for a pc st: ...", "on the 14th rnd there are ...", "to dec, ...": told, not worked."""
    if lows[0] == "for":
        return len(lows) > 2 and ":" in lows[:8]
    if lows[0] in ("on", "at", "after", "there"):
        return bool({"rnd", "row", "round"} & set(lows))
    return lows[0] == "to" and len(lows) > 2 and lows[1] in (*SHAPING_WORDS, *MOVING_WORDS)


def tell_chain(made: list[Node], note: Act) -> None:
    """ "counts as dc and ch 1": the nearest chain before is told; the note stands where there is
    none.
    """
    for index in range(len(made) - 1, -1, -1):
        one = made[index]
        if isinstance(one, Chain):
            space = int(note.into) if note.into.isdigit() else 0
            made[index] = Chain(
                one.span, one.words, one.number, note.counts_chain, space, one.stitch
            )
            return
        if isinstance(one, Work):
            break
    made.append(note)
