"""An over before a decrease that is worked so many times, "yo, k2tog 4 times": the pair so often,
where only so the row gains as many as it loses, as lace does; the decrease alone elsewhere.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Act, Node, Repeat, Until, Where, Work


def balanced_overs(nodes: Sequence[Node]) -> tuple[Node, ...]:
    """The nodes of a knitted row, with such pairs as repeats."""
    made = [
        replace(one, body=balanced_overs(one.body)) if isinstance(one, Repeat) else one
        for one in nodes
    ]
    pairs = [at for at in range(len(made) - 1) if _pair(made[at], made[at + 1])]
    net = _net(made)
    if len(pairs) != 1 or not net:
        return tuple(made)
    over, both = made[pairs[0]], made[pairs[0] + 1]
    if not isinstance(over, Work) or not isinstance(both, Work) or both.by is None:
        return tuple(made)
    times = both.by
    if net + times.values[0] - 1:
        return tuple(made)
    pair = Repeat(
        over.span._replace(end=both.span.end), f"{over.words}, {both.words}",
        body=(over, replace(both, by=None, number=None)), until=Until.TIMES, number=times,
        joined=True,
    )  # fmt: skip
    return (*made[: pairs[0]], pair, *made[pairs[0] + 2 :])


def _pair(over: Node, dec: Node) -> bool:
    """Whether one over stands before a decrease that is told to be worked so many times."""
    if not isinstance(over, Work) or not isinstance(dec, Work):
        return False
    once = over.stitch.name == "yo" and over.number is None and over.by is None
    loses = dec.stitch.takes == dec.stitch.makes + 1 and dec.place.where is Where.PLAIN
    return once and loses and dec.number == dec.by is not None and len(dec.by.values) == 1


def _net(nodes: Sequence[Node]) -> int | None:
    """What a list gains; None where that is not told by its stitches."""
    net = 0
    for one in nodes:
        if isinstance(one, Work):
            number = one.number.values[0] if one.number else 1
            each = one.stitch.makes - one.stitch.takes
            if each and one.place.where is not Where.PLAIN:
                return None
            net += number * each
        elif isinstance(one, Repeat):
            inner = _net(one.body)
            if inner is None or one.ending or (inner and one.until is not Until.TIMES):
                return None
            net += inner * (one.number.values[0] if inner else 1)
        elif not isinstance(one, Act):
            return None
    return net
