"""Words of a row that made no sense: unread where they may hold an instruction, a remark elsewhere.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.list_words import names_stitches, stitchy
from reader.pattern.place_words import CHAIN_NOUNS, SPACE_NOUNS, STITCH_NOUNS
from reader.pattern.tree import LOST, Act, Deed, Node, Unread, Work
from reader.terms.stitches import Craft

SHOWN = frozenset(["show", "shows", "showing", "appear", "appears", "look", "looks", "visible"])
"""Said of what is seen, and of nothing that is done."""


def not_read(cur: Cursor, first: int, last: int) -> Act | Unread:
    """What the tokens from `first` to before `last` are."""
    tokens = cur.tokens[first:last]
    keep, cur.at = cur.at, last
    span, words = cur.span(first), cur.said(first)
    cur.at = keep
    counted = any(t.kind == "num" or (t.kind == "ord" and t.low[0].isdigit()) for t in tokens)
    counted = counted and not any(t.low in SHOWN for t in tokens)
    risky = counted and any(stitchy(t.low, cur.book) for t in tokens)
    risky = risky or (counted and _so_often(cur, first, last))
    risky = risky or (counted and _puts_so_many(cur, first, last))
    risky = risky or _times_of_what(cur, first, last)
    risky = risky or names_stitches(cur, first, last)
    risky = risky or _unknown_short(cur, first, last)
    risky = risky or _another_row(cur, first, last) or _placed(cur, first, last)
    turns = first and tokens[0].low == "alternately" and cur.tokens[first - 1].low == "times"
    other = "other side" in words.lower() or "opposite side" in words.lower()
    untold = other and counted and _of_no_number(cur, first)
    if untold or ((risky or turns) and not other):
        return Unread(span, words)
    return Act(span, words, Deed.OTHER_SIDE if other else Deed.NOTE, LOST)


FAR = frozenset(["to", "until", "till", "across", "over"])


def place_alone(cur: Cursor, node: Node) -> bool:
    """Whether a node of a knitted list is only how far something goes that could not be read: it
    is then none of the stitch before those words.
    """
    begins = node.words.lower().split(" ", 1)[0] if isinstance(node, Work) else ""
    return cur.book.craft is Craft.KNITTING and begins in FAR


def _of_no_number(cur: Cursor, first: int) -> bool:
    """Whether a stitch with no number of its own stands before the words: "sc in the other side of
    the 3 ch".
    """
    named = first > 0 and cur.tokens[first - 1].low in cur.book.known
    return named and (first < 2 or cur.tokens[first - 2].kind != "num")


INTO = ("in", "into", "on", "onto", "over", "under", "between")
WHERE_TO = STITCH_NOUNS | SPACE_NOUNS | CHAIN_NOUNS
ENTERED = frozenset(["back", "front", "both", "vein", "veins", "hook", "bottom", "lower", "upper"])
"""How a stitch is entered: which one is told before, or is the next."""


def _placed(cur: Cursor, first: int, last: int) -> bool:
    """Whether a crocheted stitch has its place among the words, "sc in odd sts", or several are
    told with a stroke between them, "1 sc/inc".
    """
    if cur.book.craft is not Craft.CROCHET:
        return False
    lows = [token.low for token in cur.tokens[first:last]]
    if any("/" in low and all(one in cur.book.known for one in low.split("/")) for low in lows):
        return True
    behind = first > 0 and cur.tokens[first - 1].low not in (*STOPS, "-", "*", "work", "continue")
    named = bool(WHERE_TO & set(lows[1:6])) and not ENTERED & set(lows)
    sides = lows[0] in ("along", "down", "up", "on", "across", "per")
    sides = sides and bool({"side", "sides", "edge", "edges"} & set(lows[:4]))
    counted = any(token.kind == "num" for token in cur.tokens[max(0, first - 3) : first])
    return behind and ((lows[0] in INTO and named) or (sides and counted))


def _so_often(cur: Cursor, first: int, last: int) -> bool:
    """Whether knitted rows are said to go on so many times, whatever they are."""
    lows = cur.lows[first:last]
    return cur.book.craft is Craft.KNITTING and lows[0] in GOES_ON and "times" in lows


def _times_of_what(cur: Cursor, first: int, last: int) -> bool:
    """Whether only a number of times is left of a crocheted row, and nothing says of what."""
    tokens = [token for token in cur.tokens[first:last] if token.low not in STOPS]
    if cur.book.craft is not Craft.CROCHET or not tokens:
        return False
    counted = len(tokens) == 2 and tokens[0].kind == "num" and tokens[1].low in ("times", "time")
    return counted or (len(tokens) == 1 and tokens[0].kind == "times" and tokens[0].low != "once")


GOES_ON = ("continue", "cont", "continuing", "proceed", "keep", "go", "carry", "work")
AS_ANOTHER = re.compile(r"\b(?:same as|like|as for|as in)\b.*\b(?:rows?|rounds?|rnds?)\b")


def _another_row(cur: Cursor, first: int, last: int) -> bool:
    """Whether all that a row says is that it is as some other, which is not known."""
    words = " ".join(token.low for token in cur.tokens[first:last])
    alone = all(token.low in ("work", "make", "now", "then") for token in cur.tokens[:first])
    return alone and AS_ANOTHER.search(words) is not None


PUTS = ("putting", "making", "working", "having", "widening", "adding", "doing", "put")


def _puts_so_many(cur: Cursor, first: int, last: int) -> bool:
    """Whether a row is said to have so many somewhere: "sc in each, putting 3 in the one at the
    toe".
    """
    lows = [token.low for token in cur.tokens[first:last]]
    puts = cur.book.craft is Craft.CROCHET and lows[0] in PUTS
    return puts and bool({"in", "into", "at", "on"} & set(lows[2:5]))


def _unknown_short(cur: Cursor, first: int, last: int) -> bool:
    """Whether one word of a knitted list is short for something unknown: "k4, kzt, k4"."""
    one = cur.tokens[first]
    if cur.book.craft is not Craft.KNITTING or last - first != 1 or one.kind != "word":
        return False
    before = cur.tokens[first - 1].low if first else ","
    behind = cur.tokens[last].low if last < len(cur.tokens) else ","
    amid = before in (",", ";", "*", "(", "[") or cur.tokens[first - 1].kind == "num"
    ends = behind in (",", ";", ".", ")", "]", "*")
    return amid and ends and SHORT.fullmatch(one.low) is not None


SHORT = re.compile(
    r"(?!(?:mc|cc|rs|ws|cn|nd|th|st|sts|tbl|pm|sm|rm|bh|sp|lh|rh|m|b)$)[bcdfghjklmnpqrstvwxz]{1,5}\d?"
    r"|(?!(?:tog|together|inc|dec|tbl)$)[a-z\d-]*(?:tog|psso|tbl)[a-z\d-]*|s[skp\d-]{1,6}p?o"
    r"|[lrmk]{1,3}\d?-?(?:inc|dec)"
)
