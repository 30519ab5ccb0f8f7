"""A row's list, and beside it what the list does, "(k2, k2tog) around, decreasing 10 sts", "inc 6
evenly (sc, inc) x 6": told, and not worked again.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.tree import Act, Deed, Node, Repeat, Shape, Where, Work

TELLS = ("increasing", "decreasing", "thus", "so", "thereby", "inc'ing", "dec'ing")
ONE_SPOT = (Where.NEXT, Where.FIRST, Where.LAST, Where.SAME)


def told_of_change(nodes: Sequence[Node]) -> list[Node]:
    """The row with such a change as a remark, where its list changes the same way: behind the list
    it says what is being done, and spread evenly it can be nothing beside a repeated list.
    """
    made = list(nodes)
    at = next((at for at, one in enumerate(made) if isinstance(one, Shape)), None)
    if at is None or len(made) < 2:
        return made
    told, others = made[at], [*made[:at], *made[at + 1 :]]
    if not isinstance(told, Shape) or any(isinstance(one, Shape) for one in others):
        return made
    says = at == len(made) - 1 and told.words.lower().startswith(TELLS)
    evenly = told.spots == 1 and told.number.values[0] > 1 and "even" in told.words.lower()
    listed = evenly and any(isinstance(one, Repeat) for one in others)
    if not (says or listed) or drift(others) * told.gain <= 0:
        return made
    return [*made[:at], Act(told.span, told.words, Deed.NOTE), *made[at + 1 :]]


def drift(nodes: Sequence[Node]) -> int:
    """What the stitches of a list add in all, each repeat worked once; below nought they lose."""
    total = 0
    for one in nodes:
        if isinstance(one, Repeat):
            total += drift(one.body)
        elif isinstance(one, Work):
            times = one.number.values[0] if one.number is not None else 1
            single = one.place.where in ONE_SPOT and one.place.number.values[0] == 1
            total += (one.stitch.makes - one.stitch.takes) * times
            total += times - 1 if single and one.stitch.makes == one.stitch.takes else 0
    return total
