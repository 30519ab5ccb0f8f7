"""Words between the instructions of a list: those that add nothing, and those that end a clause."""

from __future__ import annotations

from reader.pattern.cursor import Book, Cursor
from reader.terms.stitches import Craft

FILLER = frozenset(
    {"when",
     "then", "now", "crochet", "put", "and", "work", "make", "working", "with", "just", "please",
     "also", "begin",
    "beginning", "again", "so", "&",
     "a", "an", "the", "next", "do", "go", "ahead", "your", "yarn", "this", "is", "plus", "using",
     "insert", "by", "from", "once", "long", "spike", "elongated"}
)  # fmt: skip
BEFORE_ITEM = frozenset(["", ",", ";", ".", ":", "(", "[", "*", "**", "then", "and", "or"])
"""Before "two together", these begin an item of a list."""
SLIPS = ("sl", "ss", "slip")
AFTER_ENDING = frozenset(
    ["join", "turn", "cut", "sl", "fasten", "drop", "then", "work", "ch", "repeat", "*"]
)
"""Behind a comma, these begin something else than the ending."""
ENDS_GROUP = frozenset(
    {".", ";", "join", "turn", "cut", "fasten", "repeat", "rep", "ending", "sl", "break", "finish"}
)


def stitchy(low: str, book: Book) -> bool:
    """Whether a word speaks of stitches."""
    return low in book.known or low in (
        "st",
        "sts",
        "stitch",
        "stitches",
        "ch",
        "chain",
        "rep",
        "repeat",
        "inc",
        "dec",
    )


NO_STITCHES = frozenset(
    ["all", "evenly", "same", "work", "working", "continue", "go", "going", "wrap", "sew", "weave",
     "round", "and", "then", "again", "even", "turn", "way", "once", "fold", "tie", "crochet"]
)
"""Before "around", these are no stitch that is not known."""


def _stops(lows: list[str]) -> bool:
    return lows[:1] in ([], [","], ["."], [";"])


def names_stitches(cur: Cursor, first: int, last: int) -> bool:
    """ "double stitch as before": an item of a knitted list that speaks of stitches not known;
    "* zz in next st": in crochet, one that goes into a stitch.
    """
    if last - first > 5:
        return False
    if cur.book.craft is Craft.CROCHET:
        begins = cur.tokens[first - 1] if first else None
        item = begins is None or begins.kind == "stars" or begins.low in (",", ";", "(", "[", ".")
        into = [token.low for token in cur.tokens[last : last + 2]]
        known = into[:1] in (["in"], ["into"]) and into[1:] in (["next"], ["each"], ["same"])
        lows = [token.low for token in cur.tokens[first:last]]
        placed = (known and not lows[1:]) or lows[1:3] in (["in", "each"], ["in", "every"])
        around = lows[1:] in (["around"], ["across"]) and _stops(into)
        return item and (placed or around) and lows[0].isalpha() and lows[0] not in NO_STITCHES
    lows = [token.low for token in cur.tokens[first:last]]
    before = cur.tokens[first - 1].low if first else ","
    behind = cur.tokens[last].low if last < len(cur.tokens) else ","
    item = before in (",", ";", "and") and behind in (",", ";", "and")
    return item and bool({"stitch", "stitches", "sts", "st"} & set(lows[:3]))
