"""The last square of a net told with what it passes over, "* ch 1, dc in next dc, repeat from *
across, ending with ch 1, skip 1 ch, dc in next st": those are the chains of the square below, as
the squares before passed over theirs without a word.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Chain, Node, Repeat, Skip, Until, Where, Work


def last_squares(nodes: Sequence[Node]) -> list[Node]:
    """The row without such words in the endings of its repeats."""
    return [_ended(one) if isinstance(one, Repeat) else one for one in nodes]


def _ended(node: Repeat) -> Repeat:
    last, end = node.body[-1] if node.body else None, node.ending[0] if node.ending else None
    if len(node.ending) == 1 and isinstance(end, Work) and isinstance(last, Work):
        same = end.stitch == last.stitch and end.place.where is Where.PLAIN
        if same and last.place.where is Where.NEXT and last.place.noun == "sp" and end.number:
            # "* ch 1, 3 dc in next loop; ending with 4 dc": as many in the last loop.
            return replace(node, ending=(*node.body[:-1], replace(last, number=end.number)))
    if node.until is not Until.OPEN or not _is_square(node.body) or len(node.ending) < 3:
        return node
    chain, skip, last = node.ending[:3]
    told = isinstance(chain, Chain) and isinstance(skip, Skip) and isinstance(last, Work)
    if not (told and isinstance(chain, Chain) and isinstance(skip, Skip)):
        return node
    over = skip.place.noun in ("st", "ch") and skip.place.number == chain.number
    alike = isinstance(node.body[0], Chain) and node.body[0].number == chain.number
    return replace(node, ending=(chain, *node.ending[2:])) if over and alike else node


def _is_square(body: Sequence[Node]) -> bool:
    """Whether a pass is a chain and a stitch on the next of a name: what lies between is passed."""
    if len(body) != 2 or not isinstance(body[0], Chain) or not isinstance(body[1], Work):
        return False
    place = body[1].place
    return place.where is Where.NEXT and place.noun not in ("st", "ch", "sp", "tch")
