"""A stitch of a group, or a group as one place: "3rd dc of next shell", "between 5-dc groups"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache

from reader.counts.openings import BETWEEN, UNITS
from reader.counts.tally import Tally
from reader.pattern.tree import Group, Node, Place, Repeat, Skip, Where, Work

NEXT_GROUP = re.compile(
    r"\bof (?:the )?(?P<which>next|following|first|1st|last|each|every"
    r"|(?=\d ?-|group|grp|petal|shell|scallop|fan)).{0,12}?(?:group|grp|petal|shell|scallop|fan)"
)
SIZED_GROUP = re.compile(
    r"\b(\d{1,2})[ -]+(?:[a-z]+ ){0,2}?(?:group|grp|petal|scallop)s?\b"
    r"|\bbetween (?:the )?(\d) \w+ of (?:the )?(?:next|each|every|following) "
)
MIDDLE_OF = re.compile(
    r"\b(?:cent(?:er|re)|middle) (?:[a-z]+ ){0,3}of (?!row|round|rnd)"
    r"|\b\d{1,2}(?:st|nd|rd|th|d) (?:[a-z]+ ){0,3}of th(?:e|ose|ese) \d"
)
"""The one in the middle of so many."""


def group_places(place: Place, m: int, tally: Tally) -> int:
    """How many places the next group or the next m of them are, now used; 0 where no whole group is
    meant.
    """
    walk = tally.walk
    size, follows = group_told(place.text)
    if m > 1 and not place.each and MIDDLE_OF.search(place.text.lower()):
        # "1 tr in center sc of next 5 sc": one place, that uses all five.
        walk.take(m, place.noun if place.noun not in ("st", "ch", "tch") else "")
        return 1
    between = BETWEEN.search(place.text) is not None
    if size and not walk.opened:
        m = 1 if between and not place.each else m
        walk.take(size * m)
        tally.spaced = True
        return m
    tally.unread = tally.unread or groups_unknown(place, tally)
    if place.noun in UNITS and walk.take_group():
        return 1
    if follows:
        walk.to_group(place.nth if follows == "this" else 0)
        walk.take(max(0, place.nth - 1 - walk.into))
    return 0


def groups_unknown(place: Place, tally: Tally) -> bool:
    """Whether places between groups are meant, "3 dc in each sp between groups", and nothing tells
    where in the row below one group ends and the next begins.
    """
    walk = tally.walk
    if place.noun not in UNITS or not BETWEEN.search(place.text) or not walk.known:
        return False
    return not walk.opened and not any(run.unit for run in tally.below.runs)


def leaves_group(node: Node, after: Sequence[Node], tally: Tally) -> bool:
    """Whether a stitch goes into a told stitch of a group, "sc in 3rd dc of next shell", and what
    comes after it goes elsewhere: the rest of that group is passed over with it.
    """
    if not isinstance(node, Work | Group) or not node.place.nth:
        return False
    if not group_told(node.place.text)[1]:
        return False
    run = tally.walk.in_group()
    if run is None:
        return False
    nxt = next((one.place for one in in_order(after)), None)
    if nxt is None or nxt.where is Where.SAME:
        return False
    named = nxt.noun not in ("st", "ch", "tch", run.name)
    return named or nxt.where is Where.LAST or group_told(nxt.text)[1] == "next"


@lru_cache(maxsize=512)
def group_told(place: str) -> tuple[int, str]:
    """How many stitches the group has that a place tells of, 0 for none told; and whether a stitch
    of the "next" one is meant, or of "this", "" where of none. Asked anew in every pass.
    """
    sized = SIZED_GROUP.search(place)
    size = int(sized.group(1) or sized.group(2)) if sized else 0
    group = NEXT_GROUP.search(place)
    return size, "" if group is None else "next" if group["which"] else "this"


def in_order(nodes: Sequence[Node]) -> Iterator[Work | Group | Skip]:
    """What goes into the row below, in order; of a repeat, one pass."""
    for one in nodes:
        if isinstance(one, Repeat):
            yield from in_order(one.body)
        elif isinstance(one, Work | Group | Skip):
            yield one
