"""Places between stitches, where no chain lies: "in space between next 2 sts", "between each 2 dc",
"between 1st and 2nd sts". Each uses one stitch of the row below, since a row has as many such
spaces as stitches.
"""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.middles import GROUPS
from reader.pattern.place_nouns import find_noun, take_after
from reader.pattern.place_words import SPACE_NOUNS
from reader.pattern.tree import Num, Place, Where

WORDS = ("between", "bet", "betw")
ALL = ("each", "every", "ea", "all", "each of")


def behind_space(cur: Cursor, noun: str, chain: int) -> tuple[str, bool]:
    """The noun of a place whose noun was just taken, with "between next 2 shells" behind a space:
    then that of the groups it lies between; and whether every such space is meant.
    """
    at = cur.at
    if noun == "sp" and cur.accept(*OF_A_SIDE):
        return noun, False
    apart = cur.low(1) in GROUPS or cur.low(2) in GROUPS or noun not in OF_NO_KIND
    if cur.low() in WORDS and (noun == "sp" or (not chain and apart and noun not in GROUPS)):
        cur.at += 1
        every = cur.low() in ALL
        sides = _sides(cur)
        if sides and chain:
            # "in ch 5 loop between next 2 clusters": the loop is told by its chains.
            return noun, False
        behind = {cur.low(back - cur.at + at) for back in range(-6, 0)} & {"back", "behind"}
        if sides and noun not in OF_NO_KIND and not behind:
            # "in the single sc between shells": that stitch itself.
            return noun, False
        if sides:
            return noun if sides == "st" else sides, every
    cur.at = at
    return noun, False


OF_A_SIDE = tuple(
    f"between {the}{which}corner{s}" for the in ("", "the ")
    for which in ("", "two ", "2 ", "next ", "next 2 ", "next two ") for s in ("s", "")
)
"""A space along a side is the next one that lies there."""
OF_NO_KIND = ("", "sp", "ch", "tch", "st", "group")


def between_all(cur: Cursor, start: int) -> Place | None:
    """ "between each 2 sts", "between sts", "between 1st and 2nd sts" without the word space; None
    (nothing taken) for "between next 2 petals", which the other places read.
    """
    at = cur.at
    if cur.low() not in WORDS:
        return None
    cur.at += 1
    loop = _picots_of_loop(cur, start) or _last_and_first(cur, start) or _one_and_other(cur, start)
    if loop is not None:
        return loop
    every = cur.low() in ALL and cur.low(1) not in GROUPS
    pair = cur.kind() == "ord" or (cur.low() == "the" and cur.kind(1) == "ord")
    bare = not every and not pair and _plural(cur)
    noun = _sides(cur) if every or pair or bare else ""
    if not noun or noun in GROUPS:
        cur.at = at
        return None
    take_after(cur)
    where = Where.NEXT if pair else Where.EACH
    return Place(where, cur.span(start), noun="st", each=not pair)


CLOSING = tuple(
    f"{the}{one} and {other}{another}"
    for the in ("the ", "") for other in ("the ", "")
    for one, another in (("last", "first"), ("first", "last"), ("last", "1st"), ("1st", "last"))
)  # fmt: skip


def _last_and_first(cur: Cursor, start: int) -> Place | None:
    """ "the last and first groups": between them the round closes."""
    at = cur.at
    if cur.accept(*CLOSING):
        noun = find_noun(cur)
        if noun in GROUPS or noun == "group":
            return Place(Where.NEXT, cur.span(start), Num((2,)), "group")
    cur.at = at
    return None


def _one_and_other(cur: Cursor, start: int) -> Place | None:
    """ "first 2 dc and next group", "the last group and the turning ch": the gap between the two,
    one of which at least is a group.
    """
    at = cur.at
    one, last = _one_side(cur), "last" in cur.lows[at : cur.at]
    other = _one_side(cur) if one and cur.accept("and", "&") else ""
    if other and (one == "group" or other == "group"):
        take_after(cur)
        where = Where.LAST if last else Where.NEXT
        return Place(where, cur.span(start), Num((2,)), "group")
    cur.at = at
    return None


WHICH = ("the", "first", "last", "next", "following", "1st", "end", "edge", "a", "same", "of")


def _one_side(cur: Cursor) -> str:
    """Takes "the first 2 dc", "next 3-dc group", "edge st"; "group" or "st", "" for neither."""
    while cur.low() in WHICH or cur.kind() in ("num", "ord"):
        cur.at += 1
        cur.accept("-")
    found = cur.stitch()
    ahead = found.length if found is not None else 0
    ahead += cur.low(ahead) == "-"
    if cur.low(ahead) in GROUPS:
        cur.at += ahead + 1
        return "group"
    noun = find_noun(cur)
    return "group" if noun in GROUPS or noun == "group" else "st" if noun else ""


PICOTS = ("picots", "picot", "ps", "p")


def _picots_of_loop(cur: Cursor, start: int) -> Place | None:
    """ "the two picots of next loop": that loop, gone into at its middle."""
    at = cur.at
    while cur.low() in ("the", "next", "two", "2", "both", "these"):
        cur.at += 1
    if cur.accept(*PICOTS) and cur.accept("of", "in", "on"):
        cur.accept("the")
        which = cur.low()
        cur.accept("next", "following", "each", "every", "same", "first", "last", "center", "1st")
        cur.accept("picot", "picots", "p")
        cur.accept("-")
        if cur.low() in SPACE_NOUNS:
            cur.at += 1
            take_after(cur)
            where = HOW.get(which, Where.NEXT)
            return Place(where, cur.span(start), noun="sp", each=where is Where.EACH)
    cur.at = at
    return None


HOW = {"each": Where.EACH, "every": Where.EACH, "same": Where.SAME, "first": Where.FIRST,
       "1st": Where.FIRST, "last": Where.LAST}  # fmt: skip


def _plural(cur: Cursor) -> bool:
    """Whether stitches of no number stand here: "between sts", "between the dcs"."""
    ahead = int(cur.low() == "the")
    found = cur.stitch(ahead)
    more = cur.low(ahead + (found.length if found else 0)) in ("sts", "stitches")
    return more or (found is not None and cur.low(ahead + found.length - 1).endswith("s"))


def _sides(cur: Cursor) -> str:
    """Takes "the next 2 sts", "1st and 2nd dc", "each shell"; their noun, "" for none."""
    cur.accept("the")
    cur.accept("next", "following", "first", "last", "same", "these", *ALL)
    while cur.kind() in ("num", "ord") or (cur.low() in ("and", "&") and cur.kind(1) == "ord"):
        cur.at += 1
        cur.accept("-")
    cur.accept("of the", "of")
    grouped = next((cur.low(far) for far in range(3) if cur.low(far) in GROUPS), "")
    noun = find_noun(cur)
    if noun in ("", "sp", "ch", "tch"):
        return ""
    cur.accept("of the row below", "of row below", "of previous row", "of the previous row",
               "of last row", "of the last row", "of previous rnd", "of previous round",
               "below", "of rnd below", "of round below")  # fmt: skip
    return noun if grouped or noun == "group" else "st"


def between_groups(cur: Cursor) -> bool:
    """Takes "(between dc-groups)", "between 2 tr groups", "between first and second dc of
    pineapple" behind a space: which space it is.
    """
    at = cur.at
    bracket = cur.accept("(")
    if cur.low() in WORDS and _two_of_group(cur) and (not bracket or cur.accept(")")):
        return True
    if cur.low() in WORDS:
        cur.at += 1
        while cur.low() in ("the", "next", "two", "2", "each"):
            cur.at += 1
        found = cur.stitch()
        cur.at += found.length if found is not None else 0
        cur.accept("-")
        grouped = found is not None and cur.accept("group", "groups", "grp", "grps")
        if grouped and (not bracket or cur.accept(")")):
            return True
    cur.at = at
    return False


def _two_of_group(cur: Cursor) -> bool:
    """Takes "between 1st and 2nd dc of the fan", "between first two tr of pineapple"."""
    at = cur.at
    cur.at += 1
    cur.accept("the")
    two = cur.kind() == "ord" and (cur.low(1) in ("two", "2") or _another_told(cur))
    cur.at += 2 if two else 0
    found = cur.stitch() if two else None
    if found is not None:
        cur.at += found.length
        take_after(cur)
        return True
    cur.at = at
    return False


def _another_told(cur: Cursor) -> bool:
    """Takes the "first and" of "first and second"."""
    if cur.low(1) in ("and", "&"):
        cur.at += 2 + (cur.low(2) == "the")
    told = cur.kind() == "ord" or cur.low() == "last"
    cur.at -= told
    return told


def past_edge_stitches(cur: Cursor) -> None:
    """Takes "the last s c of" behind "between" where groups follow: "between the s c of next 2
    petals" is between the petals.
    """
    at = cur.at
    while cur.low() in ("the", "last", "first", "end") and cur.at < at + 3:
        cur.at += 1
    found = cur.stitch()
    behind = at and (cur.tokens[at - 1].low in WORDS or cur.tokens[at - 2].low in WORDS)
    if found is not None and behind and cur.low(found.length) in ("of", "at", "on"):
        length = found.length + 1
        if any(cur.low(length + far) in GROUPS for far in range(4)):
            cur.at += length
            return
    cur.at = at
