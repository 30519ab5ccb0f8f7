"""Where a row of the foundation begins, told behind its stitches: "1 sc in each st of chain,
beginning in the 2d from the hook", "dc in each ch, skipping the first 3" -> the chains that are
passed over.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.phrasing import take_phrase
from reader.pattern.place_words import CHAIN_NOUNS, STITCH_NOUNS
from reader.pattern.tree import Act, Deed, Node, Num, Place, Skip, Where, Work
from reader.terms.stitches import Craft, Kind

BEGINS = tuple(
    f"{verb} {at}"
    for verb in ("beginning", "beg", "commencing", "starting", "begin", "commence", "start")
    for at in ("in", "with", "at", "on", "from", "into")
)
LEAVES = ("missing", "skipping", "omitting", "except", "excepting", "leaving", "passing", "but")
FROM_HOOK = (
    "from hook", "from the hook", "from needle", "from the needle", "of chain", "of the chain",
    "of ch",
)  # fmt: skip


def begun_at(cur: Cursor, node: Node | None, made: list[Node]) -> Node | None:
    """The stitches, with the chains that they pass over first put into the list before them where
    the words behind tell of it; other nodes as they are, and nothing taken.
    """
    along = isinstance(node, Work) and node.place.where in (Where.EACH, Where.REST)
    first = not any(isinstance(one, Work | Skip) for one in made)
    if not (along and first) or cur.book.craft is not Craft.CROCHET:
        return node
    start = cur.at
    cur.accept(",")
    words = cur.at
    passed = _told(cur)
    if not passed or cur.low() not in ("", "and", "then", *STOPS):
        cur.at = start
        return node
    place = Place(Where.CHAIN, cur.span(words), Num((passed,)), "ch", text=cur.said(words))
    made.append(Skip(cur.span(words), cur.said(words), place))
    return node


def _told(cur: Cursor) -> int:
    """How many chains come before the first stitch; 0 where the words do not say."""
    if cur.accept(*BEGINS):
        cur.accept("the")
        nth = cur.peek().value if cur.kind() == "ord" else 0
        if nth < 2:
            return 0
        cur.at += 1
        cur.accept(*STITCH_NOUNS, *CHAIN_NOUNS)
        cur.accept(*FROM_HOOK)
        return nth - 1
    if not cur.accept(*LEAVES):
        return 0
    cur.accept("the")
    if not (cur.kind() == "ord" and cur.peek().value == 1) and cur.low() != "first":
        return 0
    cur.at += 1
    number = cur.peek().value if cur.kind() == "num" else 1
    cur.at += cur.kind() == "num"
    cur.accept(*STITCH_NOUNS, *CHAIN_NOUNS)
    return number


AMONG = 8
"""Tokens in which the others are told of which it is one."""


def begun_among(cur: Cursor, start: int) -> Node | None:
    """ "beginning on the 5th of the 9", "3 slip stitches up the chain": only where a round begins;
    None (nothing taken) for other words.
    """
    slip = cur.stitch(1) if cur.kind() == "num" else None
    climbs = slip is not None and slip.stitch.kind is Kind.SLIP and (
        cur.low(1 + slip.length) in ("up", "along")
    )
    lows = [cur.low(ahead) for ahead in range(2, AMONG)] if cur.any_words(BEGINS) else []
    nth = any(cur.kind(ahead) == "ord" for ahead in range(2, 4))
    if not climbs and not (nth and "of" in lows and "hook" not in lows and "ch" not in lows):
        return None
    take_phrase(cur)
    return Act(cur.span(start), cur.said(start), Deed.NOTE)
