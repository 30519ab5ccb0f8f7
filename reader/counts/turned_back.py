"""A row that is turned in its middle and turned back: "(k1, yo, k1, yo, k1) in next st, turn, p5,
turn, k5tog, k to end" -> the same gain without the turns, since what is worked between them goes
over stitches that were made just now.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Act, Deed, Gain, Node, Num, Repeat, Where, Work
from reader.terms.stitches import Craft


def without_turns(nodes: Sequence[Node]) -> list[Node]:
    """The nodes with each pair of turns, and what they take from the stitches just made, put as
    what is gained or lost; as they are where more than plain numbers stands between the turns.
    """
    out = [
        replace(one, body=tuple(without_turns(one.body))) if isinstance(one, Repeat) else one
        for one in nodes
    ]
    while True:
        turns = [at for at, one in enumerate(out) if _turns(one)]
        if len(turns) < 2 or not any(_knits(one) for one in out[turns[1] + 1 :]):
            return out
        between = out[turns[0] + 1 : turns[1]]
        if not between or not all(_fixed(one) for one in between):
            return out
        out = _flat(out, turns[0], turns[1])


def _flat(nodes: list[Node], first: int, second: int) -> list[Node]:
    works = [one for one in nodes[first + 1 : second] if isinstance(one, Work)]
    pool, gain = sum(_makes(one) for one in works), sum(_makes(one) - _takes(one) for one in works)
    behind = nodes[second + 1 :]
    while behind and pool > 0:
        one = behind[0]
        if isinstance(one, Act):
            behind = behind[1:]
        elif not isinstance(one, Work) or not _fixed(one):
            break
        elif _takes(one) <= pool:
            pool -= _takes(one)
            gain += _makes(one) - _takes(one)
            behind = behind[1:]
        else:
            if one.stitch.takes == 1:
                number = Num((_takes(one) - pool,))
                behind = [replace(one, number=number), *behind[1:]]
            break
    done = nodes[first : len(nodes) - len(behind)]
    return [*nodes[:first], _gained(done, gain), *behind]


def _knits(one: Node) -> bool:
    return isinstance(one, Work) and one.stitch.craft is Craft.KNITTING


def _turns(one: Node) -> bool:
    return isinstance(one, Act) and one.deed is Deed.TURN


def _fixed(one: Node) -> bool:
    if isinstance(one, Act):
        return not _turns(one)
    if not isinstance(one, Work) or one.place.where is not Where.PLAIN:
        return False
    return one.number is not None or one.stitch.takes != 1


def _takes(one: Work) -> int:
    return one.stitch.takes * (one.number.values[0] if one.number else 1)


def _makes(one: Work) -> int:
    return one.stitch.makes * (one.number.values[0] if one.number else 1)


def _gained(nodes: Sequence[Node], gain: int) -> Gain:
    """What is worked over stitches just made, with its words and what it gains or loses."""
    words = ", ".join(one.words for one in nodes if one.words)
    return Gain(nodes[0].span, words, gain)
