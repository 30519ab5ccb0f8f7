"""What is told right behind a stitch's name: how it is made, how many are lost, chains between."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import Chain, Group, Node, Num, Place, Repeat, Until, Where, Work
from reader.terms.stitches import Craft, Kind, Stitch

NOUNS = ("sts", "st", "stitches", "stitch")
HOW = frozenset({"thread", "yarn", "insert", "hook", "draw", "yo", "pull", "wool", "cotton"})
"""Words that tell how a stitch is made."""


CHANGED_BY = frozenset({"k", "p", "knit", "purl", "kfb", "pfb", "knitting", "purling", "m1", "yo"})
"""Words that tell how stitches are gained or lost in knitting."""


def explained(cur: Cursor, stitch: Stitch) -> None:
    """Takes a bracket that tells how the stitch before it is made, or of what a group is, where a
    place follows it: "inc (k 1, p 1) in every other st", "shell (5 dc) in next st".
    """
    if cur.low() != "(":
        return
    for ahead in range(1, 60):
        if cur.low(ahead) == ")":
            lows = {cur.low(n) for n in range(1, ahead)}
            told = lows & HOW
            told_so = len(told) > 1 or "hook" in told
            told_so = told_so or (stitch.kind is Kind.GROUP and _lists(cur, ahead))
            changed = stitch.name in ("inc", "dec") and cur.book.craft is Craft.KNITTING
            into = ("in", "into", "on", "over", "under", "with", *(("at", "each") * changed))
            if (told_so or (changed and lows & CHANGED_BY)) and cur.low(ahead + 1) in into:
                cur.at += ahead + 1
            return


def _lists(cur: Cursor, close: int) -> bool:
    """Whether nothing but stitches and chains stands up to there, "(2 dc, ch 1, 2 dc)"."""
    at, found = 1, False
    while at < close:
        stitch = cur.stitch(at)
        if stitch is not None:
            at, found = at + stitch.length, True
        elif cur.kind(at) == "num" or cur.low(at) in (",", "and", "ch", "chain"):
            at += 1
        else:
            return False
    return found


def so_many_changes(cur: Cursor) -> Num | None:
    """ "dec 1 s c": the number with the stitch lost or gained; None (nothing taken) else."""
    number = cur.number() if cur.kind() == "num" else None
    found = cur.stitch(1)
    length = found.length if found is not None else cur.low(1) in NOUNS
    after = cur.low(1 + length)
    if number is None or not length or after in ("in", "into", "tog", "together"):
        return None
    cur.at += 1 + length
    return number


def made_of(cur: Cursor) -> None:
    """Takes "of 3 dc, ch 2 and 3 dc": what the group is made of, which the pattern's own words
    define.
    """
    if cur.low() != "of" or not (cur.kind(1) == "num" or cur.stitch(1) is not None):
        return
    while not cur.done() and cur.low() not in ("in", "into", "under", "over", ".", ";", "("):
        cur.at += 1


BETWEEN = ("between", "bet", "in between")
OF_THEM = (
    "each", "them", "it", "the", "shells", "shell", "sts", "stitches", "groups", "clusters", "fans",
    "all", "two", "every", "both", "corner", "corners",
)  # fmt: skip


def chains_between(cur: Cursor) -> int:
    """ "with ch 5 between", ", ch 2 between shells", "having 3 ch between each shell": the chains
    between what is worked into several places, or of one place; 0 (nothing taken) elsewhere.
    """
    at = cur.at
    cur.accept(",")
    cur.accept("with", "having", "and", "making", "always with", "keeping", "working")
    chained = cur.low() in ("ch", "chain") and cur.kind(1) == "num"
    counted = cur.kind() == "num" and cur.low(1) in ("ch", "chain", "chains")
    number = cur.peek(1).value if chained else cur.peek().value if counted else 0
    cur.at += 2 * bool(number)
    if not number or not (cur.accept(*BETWEEN) or (cur.low() == "each" and cur.low(1) in BETWEEN)):
        cur.at = at
        return 0
    while cur.low() in (*OF_THEM, *BETWEEN):
        cur.at += 1
    found = cur.stitch()
    named = found is not None and cur.low(found.length) in (*STOPS, "")
    if found is not None and (named or cur.low(-1) in ("each", "the", "every", "two")):
        # "making ch 1 between trs": the stitches themselves.
        cur.at += found.length
    cur.accept(*GROUPS)
    return number


AFTER_EACH = ("after each", "after every", "following each", "behind each", "after it")


def chains_after(cur: Cursor) -> int:
    """ "with ch 1 after each": the chains behind each of the stitches; 0 (nothing taken) elsewhere.
    """
    at = cur.at
    cur.accept(",")
    cur.accept("with", "and", "having", "making")
    chained = cur.low() in ("ch", "chain") and cur.kind(1) == "num"
    counted = cur.kind() == "num" and cur.low(1) in ("ch", "chain", "chains")
    number = cur.peek(1).value if chained else cur.peek().value if counted else 0
    cur.at += 2 * bool(number)
    if not number or not cur.accept(*AFTER_EACH):
        cur.at = at
        return 0
    cur.accept("one")
    return number


def chained_each(one: Work, chains: int, times: Num) -> Repeat | Group:
    """A stitch so many times, or in each of many places, with so many chains behind each."""
    chain = Chain(one.span, f"ch {chains}", Num((chains,)))
    if one.place.where is Where.EACH:
        body = (replace(one, number=times, place=Place(Where.PLAIN, one.span)), chain)
        return Group(one.span, one.words, body, one.place)
    return Repeat(one.span, one.words, (one, chain), Until.TIMES, times)


GROUPS = ("group", "groups", "set", "sets", "petal", "petals", "pair", "pairs", "cluster",
          "clusters", "shell", "shells", "fan", "fans", "corner", "corners")  # fmt: skip
BETWEEN_GROUPS = re.compile(
    rf"\bbetween (?:each |every |the )?(?:{'|'.join(GROUPS)})$", re.IGNORECASE
)


def parted(work: Work) -> Node:
    """ "3 dc in each space, with 1 ch between each group": a chain behind each group; other work as
    it is.
    """
    several = work.number is not None and work.number.values[0] > 1
    in_openings = work.place.noun == "sp" and work.place.where is Where.EACH
    group = in_openings and work.number is not None and work.number.values[0] > 2
    if not (work.between and several and (group or BETWEEN_GROUPS.search(work.words))):
        return work
    inside = replace(work, between=0, place=Place(Where.PLAIN, work.place.span))
    chain = Chain(work.span, f"ch {work.between}", Num((work.between,)))
    return Group(work.span, work.words, (inside, chain), work.place)
