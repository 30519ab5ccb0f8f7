"""What lies between the last stitches of a round and those that it began with: stitches that the
last chain passes over, or nothing, where both go into one loop.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.endings import closes_loop, with_closing
from reader.counts.ends import travels
from reader.counts.fabric import SPACE
from reader.counts.openings import is_opening
from reader.counts.tally import Tally
from reader.pattern.tree import Act, Deed, Group, Node, Repeat, Skip, Until, Where, Work


def skipped_at_close(body: Sequence[Node], tally: Tally) -> int:
    """The stitches that each pass of the row's last repeat skips under its chain, where the row
    ends with such a chain and is joined; 0 elsewhere.
    """
    body = with_closing(list(body))
    repeats = [one for one in body if isinstance(one, Repeat) and not _hangs(one)]
    last = repeats[-1] if repeats else None
    joined = any(isinstance(one, Act) and one.deed is Deed.JOIN for one in body)
    joined = joined or (last is not None and any(map(travels, body[body.index(last) :])))
    joined = joined or (last is not None and closes_loop(last))
    chained = bool(tally.runs) and tally.runs[-1].name == SPACE
    if last is not None and isinstance(last.body[0], Skip):
        # "* skip 1, 2 dc in next, repeat 6 times, join": with no chain, as many lie before the
        # first again.
        behind = [one for one in body[body.index(last) + 1 :] if not isinstance(one, Act)]
        chained = last.until in (Until.AGAIN, Until.MORE, Until.TIMES) and not behind
    if last is None or not joined or not chained:
        return 0
    skips = [one.place for one in last.body if isinstance(one, Skip)]
    if any(is_opening(place, tally.walk) for place in skips):
        return 0
    return sum(place.number.at(tally.size) for place in skips)


def back_in_first(nodes: Sequence[Node], tally: Tally) -> bool:
    """Whether a round that began in a loop, "ch 3, 2 dc in same loop", ends in that same loop, "2
    dc in next loop, join", since no other is left.
    """
    works = [one for one in nodes if isinstance(one, Work | Group | Repeat)]
    if len(works) < 3 or tally.walk.lacking != 1 or tally.walk.spaces:
        return False
    first, last = works[0], works[-1]
    if not isinstance(first, Work) or not isinstance(last, Work) or first.stitch != last.stitch:
        return False
    began = first.place.where is Where.SAME and is_opening(first.place, tally.walk)
    ended = last.place.where is Where.NEXT and is_opening(last.place, tally.walk)
    return began and ended and tally.choice.again_more


def _hangs(node: Repeat) -> bool:
    """Whether a repeat is of chains and picots only: nothing of it goes into the row below."""
    works = [one for one in node.body if isinstance(one, Work | Group | Repeat | Skip)]
    return all(
        isinstance(one, Work) and (one.place.where is Where.CHAIN or not one.stitch.takes)
        for one in works
    )
