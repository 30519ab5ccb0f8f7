"""Old books call every stitch a loop, that of the hook: "2 double crochet into each loop",
"5 chain, miss 2 loops". Over a row without chain spaces, and over the chain of a ring, they can
mean nothing else.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from operator import is_not

from reader.counts.fabric import GAP, Below
from reader.pattern.tree import ONE, Act, Group, Node, Repeat, Skip, Until, Where, Work
from reader.pattern.understood import BARE

LOOPS = ("loop", "lp")
CALLED = re.compile(
    r"\bsuccessive loops\b|\bmiss(?:ing)? (?:\d+|one|two|three) loops?\b", re.IGNORECASE
)
"""How books speak that call every stitch a loop."""


def loops_called(text: str) -> bool:
    """Whether a text tells of stitches as loops by number, and joins its chains as those books do.
    """
    return "unite" in text and CALLED.search(text) is not None


def loops_of_stitches(nodes: Sequence[Node], below: Below) -> Sequence[Node]:
    """The row with its loops as stitches where the row below has no others; where the rows before
    called their stitches so, one stitch in every loop is one in every chain of long loops too.
    """
    if not _has_loops(nodes):
        return nodes
    ring = below.ring > 0 and below.stitches is None
    if ring:
        return _all_plain(nodes) if _goes_along(nodes) else nodes
    if not below.stitches:
        return nodes
    if any(not run.is_stitch and run.name != GAP for run in below.runs):
        return _all_plain(nodes) if below.hooked and _one_in_every(nodes) else nodes
    if not below.hooked and not set(below.kinds) - {"st"}:
        # Rows by rule leave stitches only, whatever loops lie between them.
        return nodes
    return _all_plain(nodes)


def calls_loops(nodes: Sequence[Node], below: Below) -> bool:
    """Whether a row calls stitches its loops, since the row below has no others."""
    found = loops_of_stitches(nodes, below) if below.stitches or below.ring else nodes
    return found is not nodes


def _one_in_every(nodes: Sequence[Node]) -> bool:
    """Whether the row is one short stitch in every loop."""
    works = [one for one in nodes if not isinstance(one, Act)]
    one = works[0] if len(works) == 1 else None
    every = isinstance(one, Work) and one.place.where is Where.EACH and _is_loop(one)
    return every and isinstance(one, Work) and one.number in (None, ONE) and one.stitch.height < 2


def _goes_along(nodes: Sequence[Node]) -> bool:
    """Whether a ring is gone around loop by loop: all of them, or over and over."""
    for one in nodes:
        if isinstance(one, Work) and one.place.where is Where.EACH and _is_loop(one):
            return True
        if isinstance(one, Repeat) and one.until is Until.OPEN and any(map(_is_loop, one.body)):
            return True
    return False


def _has_loops(nodes: Sequence[Node]) -> bool:
    """Whether a row goes into any loop: of most this is sooner told than what lies below."""
    return any(
        _has_loops(one.body) or _has_loops(one.ending) if isinstance(one, Repeat)
        else _is_loop(one)
        for one in nodes
    )  # fmt: skip


def _is_loop(one: Node) -> bool:
    told = isinstance(one, Work | Group | Skip) and one.place.noun == "sp" and not one.place.chain
    if not told or not isinstance(one, Work | Group | Skip):
        return False
    words = f"{one.place.text} {one.words if isinstance(one, Skip) else ''}".lower()
    return any(loop in words for loop in LOOPS) or BARE.fullmatch(one.place.text) is not None


def _all_plain(nodes: Sequence[Node]) -> Sequence[Node]:
    """The instructions with their loops as stitches; the same ones where they have none."""
    plain = tuple(map(_plain, nodes))
    return plain if any(map(is_not, plain, nodes)) else nodes


def _plain(one: Node) -> Node:
    if isinstance(one, Repeat):
        body, ending = _all_plain(one.body), _all_plain(one.ending)
        if body is one.body and ending is one.ending:
            return one
        return replace(one, body=tuple(body), ending=tuple(ending))
    if isinstance(one, Work | Group | Skip) and _is_loop(one):
        return replace(one, place=replace(one.place, noun="st"))
    return one
