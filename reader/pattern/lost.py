"""Words of a row that made no sense: unread where they may hold an instruction, a remark elsewhere.
"""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.list_words import names_stitches, stitchy
from reader.pattern.tree import LOST, Act, Deed, Unread

SHOWN = frozenset(["show", "shows", "showing", "appear", "appears", "look", "looks", "visible"])
"""Said of what is seen, and of nothing that is done."""



def not_read(cur: Cursor, first: int, last: int) -> Act | Unread:
    """What the tokens from `first` to before `last` are."""
    tokens = cur.tokens[first:last]
    keep, cur.at = cur.at, last
    span, words = cur.span(first), cur.said(first)
    cur.at = keep
    counted = any(t.kind == "num" for t in tokens) and not any(t.low in SHOWN for t in tokens)
    risky = counted and any(stitchy(t.low, cur.book) for t in tokens)
    risky = risky or names_stitches(cur, first, last)
    turns = first and tokens[0].low == "alternately" and cur.tokens[first - 1].low == "times"
    other = "other side" in words.lower() or "opposite side" in words.lower()
    if (risky or turns) and not other:
        return Unread(span, words)
    return Act(span, words, Deed.OTHER_SIDE if other else Deed.NOTE, LOST)
