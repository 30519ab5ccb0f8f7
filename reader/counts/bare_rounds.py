"""Rounds of loops that begin with a chain, and what closes them: a tall stitch where they began, or
a slip stitch in the place of the last stitch.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.openings import is_opening
from reader.counts.tally import Need, Tally
from reader.pattern.tree import ONE, Act, Chain, Group, Node, Repeat, Where, Work
from reader.terms.stitches import Kind


def nothing_begun(tall: Work | None, tally: Tally) -> bool:
    """Whether a round of loops only began with a chain, so that the tall stitch "in same place as
    beginning", "in 1st sc" stands for the stitch that its first loop hangs from.
    """
    same = tall is not None and tall.place.where in (Where.SAME, Where.FIRST)
    loops = all(run.n == 1 for run in tally.runs if run.is_stitch) and tally.spaces == tally.makes
    return same and loops and bool(tally.runs) and not tally.runs[0].is_stitch


def one_each(body: Sequence[Node], tally: Tally) -> bool:
    """Whether each pass of loops is one stitch into a stitch, from the first that lies below on:
    "* ch 6, sc in next sc; ending with ch 3, dc in joining" has one loop for each of them.
    """
    works = [one for one in body if isinstance(one, Work | Group | Repeat)]
    first = works[0] if works else None
    chained = bool(tally.runs) and not tally.runs[0].is_stitch
    alone = len(works) == 1 and isinstance(first, Work) and not is_opening(first.place, tally.walk)
    return chained and alone


def slips_to_close(node: Repeat) -> bool:
    """Whether the last pass has a slip stitch for its last stitch: "* ch 6, sc in next loop; ending
    last repeat with sl st in first sc".
    """
    end, last = node.ending[-1] if node.ending else None, node.body[-1] if node.body else None
    slips = isinstance(end, Work) and end.stitch.kind is Kind.SLIP
    slips = slips or (isinstance(end, Act) and SLIPS.match(end.words) is not None)
    single = isinstance(last, Work) and last.number in (None, ONE) and last.stitch.makes == 1
    return node.altered and len(node.ending) == 1 and slips and single


def without_last(node: Repeat, tally: Tally) -> Repeat:
    """The repeat with what the last pass has in the place of its stitch as a plain ending, where a
    pass is a chain and a stitch and the round began with one: "ending last repeat with ch 3, tr in
    first sc" closes one more loop, as "ending with" does.
    """
    simple = [type(one) for one in node.body] == [Chain, Work]
    closing = [type(one) for one in node.ending] == [Chain, Work]
    begun = bool(tally.runs) and tally.runs[0].is_stitch
    return replace(node, altered=False) if node.altered and simple and closing and begun else node


SLIPS = re.compile(r"\W*(?:a )?(?:sl|slip|ss)\b", re.IGNORECASE)


def slipped(node: Repeat, tally: Tally, need: Need) -> None:
    """Leaves out the last stitch of the last pass, in whose place the round is closed."""
    last, run = node.body[-1], tally.runs[-1] if tally.runs else None
    if run is None or not isinstance(last, Work) or run.name != last.stitch.name or run.n > 1:
        return
    tally.runs.pop()
    if tally.walk.left == need.stitches + 1:
        # The tall stitch that closed the round below.
        tally.walk.take(1)
        tally.uneven = None
