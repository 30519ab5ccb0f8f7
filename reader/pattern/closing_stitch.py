"""A round of tall stitches that a short one closes in place of its last chain, "*ch 2, 3 dc; rep
from * twice, hdc in top of ch 3": that stitch joins, and is none of the round's.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from reader.pattern.tree import Act, Chain, Deed, Group, Node, Repeat, Where, Work

TALL, SHORT = 3, 2
"""Heights: of a double crochet, and of a half one."""
TOP = re.compile(
    r"(?:in|into|to) (?:the )?(?:top|(?:3rd|third|4th|fourth) (?:st|ch|chain)) of (?:the )?"
    r"(?:beg(?:inning)?|first|starting)?[ -]*(?:ch|chain)[ -]?[34]?$"
)
SAYS = (Deed.NOTE, Deed.JOIN)


def closed_by_stitch(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """The round so put; any other row as it is."""
    ends = len(nodes)
    while ends and isinstance(one := nodes[ends - 1], Act) and one.deed in SAYS:
        ends -= 1
    last = nodes[ends - 1] if ends else None
    if not isinstance(last, Work) or (last.number is not None and last.number.values != (1,)):
        return nodes
    if last.stitch.height > SHORT or last.stitch.makes != 1 or not _at_the_beginning(last):
        return nodes
    before = nodes[: ends - 1]
    first = next((one for one in before if not isinstance(one, Act)), None)
    begun = isinstance(first, Chain) and first.number.values[0] >= TALL
    stitches = [one for one in _works(before) if one.stitch.takes]
    tall = stitches and all(one.stitch.height >= TALL for one in stitches)
    if not (begun and tall and _has_openings(before)):
        return nodes
    joins = Act(last.span, last.words, Deed.JOIN, last.words)
    return (*before, joins, *nodes[ends:])


def _at_the_beginning(last: Work) -> bool:
    place = last.place
    first = place.where is Where.FIRST and place.noun in ("dc", "tr", "st", "htr")
    return first or TOP.match(" ".join(place.text.lower().split())) is not None


def _works(nodes: Iterable[Node]) -> Iterator[Work]:
    for one in nodes:
        if isinstance(one, Repeat | Group):
            yield from _works(one.body)
        elif isinstance(one, Work):
            yield one


def _has_openings(nodes: Iterable[Node]) -> bool:
    """Whether chains part the stitches that are worked over and over."""
    repeats = [one for one in nodes if isinstance(one, Repeat)]
    return any(isinstance(one, Chain) for again in repeats for one in again.body)
