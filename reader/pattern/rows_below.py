"""Long stitches, worked rows below: "s c in next s c 4 rows below, skip 1 s c" -> stitches that use
none of the row below where the words pass over those that they cover.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.cursor import Cursor
from reader.pattern.tree import LOST, Act, Node, Repeat, Skip, Where, Work

ROWS_BELOW = re.compile(
    r"\b(?:[2-9]|two|three|four|five|six) (?:rows?|rnds?|rounds?) (?:below|down|before|back|under)"
    r"|\b(?:2nd|2d|3rd|3d|[4-9]th|second|third|fourth) (?:row|rnd|round) (?:below|down)\b"
    r"|\bcorresponding\b.*\bbelow\b",
    re.IGNORECASE,
)


def long_stitches(nodes: list[Node], cur: Cursor) -> list[Node]:
    """The list with its long stitches so, those of its repeats too."""
    if not any(token.low in ("below", "down", "behind") for token in cur.tokens):
        return nodes
    return _all_long(nodes)


def _all_long(nodes: Sequence[Node]) -> list[Node]:
    out: list[Node] = []
    for one in nodes:
        last = out[-1] if out else None
        told = isinstance(one, Act) and one.into == LOST and ROWS_BELOW.search(one.words)
        if told and isinstance(last, Work):
            out[-1] = replace(last, words=f"{last.words} {one.words}")
            continue
        if isinstance(one, Repeat):
            ending = tuple(_all_long(one.ending))
            one = replace(one, body=tuple(_all_long(one.body)), ending=ending)
        out.append(one)
    covered = _skips(out)
    return [_long(one) if covered and _is_long(one) else one for one in out]


def _is_long(one: Node) -> bool:
    return (
        isinstance(one, Work)
        and one.place.where in (Where.NEXT, Where.PLAIN, Where.FIRST)
        and (one.stitch.name == "spike" or ROWS_BELOW.search(one.words) is not None)
    )


def _skips(nodes: Sequence[Node]) -> bool:
    """Whether stitches are passed over beside the long ones, or where the list begins, and none of
    those is gone back to.
    """
    acts = [one for one in nodes if not isinstance(one, Act)]
    if not any(map(_is_long, acts)) or any("skipped" in one.words.lower() for one in acts):
        return False
    inner = [node for one in acts if isinstance(one, Repeat) for node in (*one.body, *one.ending)]
    if any(map(_made_long, inner)):
        return True
    beside = [
        other for at, one in enumerate(acts) if _is_long(one)
        for other in (*acts[max(0, at - 1) : at], *acts[at + 1 : at + 2], acts[0])
    ]  # fmt: skip
    return any(isinstance(one, Skip) for one in beside)


def _made_long(one: Node) -> bool:
    return isinstance(one, Work) and one.place.where is Where.ELSEWHERE


def _long(one: Node) -> Node:
    if not isinstance(one, Work):
        return one
    return replace(one, place=replace(one.place, where=Where.ELSEWHERE, each=False))
