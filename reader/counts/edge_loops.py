"""Chains at the edge of lace that are loops and no stitches: "ch 5, turn, shell in shell", "ch 5, 3
dc in next sp, ..., 3 dc in last sp", "2 dc in 6th ch from hook, ch 2, 2 dc in next".
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from reader.counts.ends import travels
from reader.counts.openings import UNITS
from reader.pattern.tree import Act, Chain, Deed, Group, Node, Repeat, Where, Work
from reader.terms.stitches import Kind

LOOP = 3
"""Chains of a loop at least, and those that one at an edge may have more than the others."""


def beside_group(work: Work | None, body: Sequence[Node], height: int) -> bool:
    """Whether a long chain stands beside the row's first group, which is a shell in the middle of a
    shell, or as the row's last group.
    """
    works = [
        one for one in body if isinstance(one, Work | Group | Repeat) and not travels(one)
    ]
    if work is None or not works:
        return False
    if height > work.stitch.height + 1 and in_shell(works[0]):
        return True
    last = works[-1]
    if not isinstance(last, Work) or work is not works[0]:
        return False
    several = work.number is not None and work.number.values[0] > 1
    alike = work.stitch == last.stitch and work.number == last.number
    alike = alike and (work is not last or work.place.number.values[0] > 1)
    openings = work.place.noun == "sp" and last.place.noun == "sp"
    return several and alike and openings and height > work.stitch.height


def in_shell(one: Node) -> bool:
    """Whether a whole group goes into the middle of one: "shell in shell"."""
    if not isinstance(one, Work | Group) or one.place.noun not in UNITS:
        return False
    group = isinstance(one, Group) or one.stitch.kind is Kind.GROUP
    return group and one.place.where in (Where.NEXT, Where.FIRST)


def begins_in_shell(body: Sequence[Node]) -> bool:
    """Whether a row begins with a shell in a shell: what lies before its middle is not left."""
    first = next((one for one in body if isinstance(one, Work | Group | Repeat)), None)
    return first is not None and in_shell(first)


def goes_on_netting(work: Work | None, rest: Sequence[Node], height: int) -> bool:
    """Whether a row goes on with a net of loops, "ch 5, turn, sc in first loop, * ch 5, sc in next
    loop": the chain that it is turned with is one of them.
    """
    if work is None or work.place.noun != "sp" or work.stitch.height > 1:
        return False
    if any(isinstance(one, Act) and one.deed is Deed.JOIN for one in rest):
        return False
    again = next((one for one in rest if isinstance(one, Repeat)), None)
    body = again.body if again is not None and not again.ending[1:] else ()
    chains = [one.number.values[0] for one in body if isinstance(one, Chain)]
    alike = [one for one in body if isinstance(one, Work) and one.place.noun == "sp"]
    if len(body) != 2 or len(chains) != 1 or not alike or alike[0].stitch != work.stitch:
        return False
    return LOOP <= chains[0] <= height <= chains[0] + LOOP


def loop_at_edge(work: Work, body: Sequence[Node], passed: int) -> bool:
    """Whether the chains passed before the first shell of a foundation are a loop: more of them
    than a stitch is tall, and the shell is complete without them.
    """
    at = next((at for at, one in enumerate(body) if one is work), -1)
    behind = body[at + 1 : at + 3] if at >= 0 else ()
    if len(behind) < 2 or passed < work.stitch.height + 2:
        return False
    chain, half = behind
    several = work.number is not None and work.number.values[0] > 1
    alike = isinstance(half, Work) and half.stitch == work.stitch and half.number == work.number
    return several and isinstance(chain, Chain) and alike


def leads_up(work: Work | None, turned: bool, body: Sequence[Node], height: int) -> bool:
    """Whether a row's chain is a loop of its passes, or, where the row was turned with it, only
    leads up to the loop that the row before ended with: "ch 6, sl st in the ch 3 of previous row,
    ch 3, turn; 8 dc over loop just made".
    """
    told = work.place.text.lower() if work is not None and turned else ""
    if "just made" in told and work is not None and work.place.where is Where.SAME:
        return True
    return _begins_as_pass(work, body, height)


def _begins_as_pass(work: Work | None, body: Sequence[Node], height: int) -> bool:
    """Whether a row begins with the very loop and group of its passes, "ch 7, 2 tr in same space, *
    ch 5, sc in next loop, ch 7, 2 tr in next sc": the chain is that loop, too long for a stitch.
    """
    if work is None or work.number is None or work.number.values[0] < 2:
        return False
    if height < work.stitch.height + 2:
        return False
    first = work.stitch, work.number, work.between
    for again in body:
        for chain, one in pairwise(again.body if isinstance(again, Repeat) else ()):
            looped = isinstance(chain, Chain) and chain.number.values == (height,)
            if looped and isinstance(one, Work) and (one.stitch, one.number, one.between) == first:
                return True
    return False
