"""The middle of a group or a loop as a place: "center dc of next shell", "center of next ch 5"."""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_words import CHAIN_NOUNS, GROUP_NOUNS, SPACE_NOUNS, STITCH_NOUNS
from reader.pattern.tree import Place, Where

GROUPS = GROUP_NOUNS | {"shell", "shells", "v-st", "v-sts", "v", "vs", "v's", "fan",
                        "fans", "cluster", "clusters"}  # fmt: skip


def chain_loop(cur: Cursor) -> Place | None:
    """ "center st of next ch 5", "centre of 3 ch", "center of ch": the loop of chains, gone into at
    its middle.
    """
    at = cur.at
    same = cur.low() == "same"
    cur.accept("the")
    cur.accept("next", "same", "first", "last", "each")
    each = cur.low(-1) == "each"
    told = cur.number() if cur.kind() == "num" else None
    if told is not None and cur.low(1) in CHAIN_NOUNS | frozenset(STOPS):
        # "centre of 3 ch", "the centre of the 5": told by their number alone.
        cur.at += 1 + (cur.low(1) in CHAIN_NOUNS)
        where = Where.SAME if same else Where.EACH if each else Where.NEXT
        return Place(where, cur.span(at), noun="sp", chain=told.values[0])
    if cur.low() not in CHAIN_NOUNS or cur.low(1) in SPACE_NOUNS:
        cur.at = at
        return None
    cur.at += 1
    chain = 0
    if cur.kind() == "num" and cur.stitch(1) is None:
        chain = cur.peek().value
        cur.at += 1
    cur.accept(*SPACE_NOUNS)
    where = Where.SAME if same else Where.EACH if each else Where.NEXT
    return Place(where, cur.span(at), noun="sp", chain=chain)


def middle_of(cur: Cursor) -> bool:
    """ "center d c of next petal", "sp of next shell": the middle of a group, whatever lies there.
    """
    length = 1 if cur.low() in ("center", "centre", "middle") else 0
    centered = length > 0
    if cur.low(length) in ("ch", "chain") and cur.kind(length + 1) == "num":
        length += 2
    found = cur.stitch(length)
    if found is not None and centered:
        length += found.length
    length += cur.low(length) in STITCH_NOUNS | SPACE_NOUNS | CHAIN_NOUNS
    over = not centered and cur.low(length) in ("over", "on") and cur.low(length + 2) in GROUPS
    if not length or not (cur.low(length) == "of" or over):
        return False
    if not centered and cur.low(length + 1) not in ("next", "each", "same", "first", "last"):
        return False
    if not centered and not any(cur.low(length + far) in GROUPS for far in (2, 3, 4)):
        return False
    cur.at += length + 1
    cur.accept("the")
    return True
