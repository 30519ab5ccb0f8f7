"""A round that begins inside its repeat: "2 sc in first st, * sc in next 2 sts, 2 sc in next st;
rep from * around" ends with what the repeat has before its "2 sc in next st".
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace

from reader.counts.tally import NOTHING, Need, Tally
from reader.counts.walk import Walk
from reader.pattern.tree import Act, Chain, Node, Num, Repeat, Until, Where, Work

FLAT = re.compile(r"\b(?:across|rows?)\b", re.IGNORECASE)


def close_begun(
    node: Repeat, tally: Tally, need: Need, work_all: Callable[[Sequence[Node], Tally, Need], None]
) -> None:
    """Works the beginning of one more pass where what stands before the repeat was the end of one:
    both together take and make as many stitches as a pass does.
    """
    if tally.uneven is None or tally.below.stitches is None or node.until is not Until.OPEN:
        return
    room, takes = tally.uneven
    left = room % takes if takes > 0 else 0
    begun = tally.below.stitches - room - need.stitches
    if FLAT.search(node.words) or not left or left + begun != takes or tally.walk.left is None:
        return
    part = first_of(node.body, left, tally.size)
    if part is None or tally.walk.left != left + need.stitches:
        return
    whole, cut = (_makes(body, tally, work_all) for body in (node.body, part))
    before = tally.makes - tally.sections * whole
    if before + cut != whole:
        return
    work_all(part, tally, need)
    tally.uneven = None


def _makes(
    body: Sequence[Node], tally: Tally, work_all: Callable[[Sequence[Node], Tally, Need], None]
) -> int:
    """Stitches that a body makes over a row of which nothing is known."""
    trial = tally.fresh(Walk(None))
    work_all(body, trial, NOTHING)
    return trial.makes


def first_of(body: Sequence[Node], stitches: int, size: int) -> list[Node] | None:
    """As much of a body's beginning as takes so many stitches, the last of several plain ones cut
    short; None where it can't be parted there.
    """
    part: list[Node] = []
    for one in body:
        if not stitches:
            return part
        if isinstance(one, Act | Chain):
            part.append(one)
            continue
        if not isinstance(one, Work) or one.place.where not in (Where.NEXT, Where.PLAIN):
            return None
        if one.place.noun == "sp" or one.stitch.takes < 1 or one.place.nth:
            return None
        number = one.number.at(size) if one.number is not None else 1
        places = one.place.number.at(size)
        plain = one.place.where is Where.PLAIN
        takes = one.stitch.takes * (number if plain else places)
        if takes > stitches:
            if one.stitch.takes != 1:
                return None
            few = Num((stitches,))
            cut = replace(one, number=few) if plain else replace(
                one, place=replace(one.place, number=few)
            )
            return [*part, cut]
        part.append(one)
        stitches -= takes
    return part if not stitches else None
