"""What the words say of the last pass of a repeat alone: that its chain is joined, that its last
stitch stands at the edge.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.first_again import with_first_again
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    LeaveRest,
    Node,
    Place,
    Repeat,
    Until,
    Where,
    Work,
)

LAST_AT_EDGE = re.compile(
    r"^(?:with|placing|putting|making|working|having|taking|setting|bringing|so that)? ?"
    r"(?:the )?last\b"
    r".*\b(?:in|on|into|at|over)\b",
    re.IGNORECASE | re.DOTALL,
)


def with_last_at_edge(rest: Sequence[Node]) -> list[Node]:
    """The row whose last pass ends at the edge, where no whole group is left: "* 5 dc in next sc,
    sc in 3rd dc of next shell; rep from * across, with the last sc in the top of the ch 3".
    """
    out = list(rest)
    for at, one in enumerate(out[:-1]):
        told = out[at + 1]
        said = isinstance(told, Act) and LAST_AT_EDGE.search(told.words)
        if not said or not isinstance(one, Repeat) or one.ending or one.until is not Until.OPEN:
            continue
        *first, last = one.body
        if isinstance(last, Work) and " of next" in last.place.text.lower():
            edge = Place(Where.RING, last.place.span, text=told.words)
            end = (*first, replace(last, place=edge), LeaveRest(told.span, ""))
            out[at] = replace(one, ending=end, has_ending=True)
    return out


LAST_CHAIN = re.compile(r"\blast (?:ch|chain|loop|lp)\b", re.IGNORECASE)


def up_to_chain(rest: Sequence[Node]) -> list[Node]:
    """The row with its last repeat ended by the chain that the words join: "repeat from * around.
    Join last ch-3 to 4th ch of ch-4".
    """
    works = [at for at, one in enumerate(rest) if not isinstance(one, Act)]
    last = rest[works[-1]] if works else None
    joins = [one for one in rest[works[-1] :] if isinstance(one, Act)] if works else []
    told = any(one.deed is Deed.JOIN and LAST_CHAIN.search(one.words) for one in joins)
    if not told or not isinstance(last, Repeat) or last.ending or last.until is not Until.OPEN:
        return list(rest)
    return [replace(one, chained=True) if one is last else one for one in rest]


UNITED = re.compile(
    r"(?:unite|join|fasten|close) (?:it|this|them) (?:to|with|on|into)\b", re.IGNORECASE
)


def united(rest: Sequence[Node]) -> list[Node]:
    """The row without the stitch that is united to its first: "repeat from * 7 times more, 1 double
    crochet, unite it to the 1st stitch".
    """
    out = list(rest)
    for at in range(len(out) - 2):
        loops, one, joined = out[at : at + 3]
        told = isinstance(joined, Act) and joined.deed is Deed.JOIN and UNITED.match(joined.words)
        if not told or not isinstance(loops, Repeat) or not isinstance(one, Work):
            continue
        first = loops.body[0]
        alike = isinstance(first, Work) and first.stitch == one.stitch and one.number in (None, ONE)
        if alike and isinstance(loops.body[-1], Chain):
            out[at + 1] = Act(one.span, one.words, Deed.NOTE)
    return out


def part_as_ending(rest: Sequence[Node]) -> list[Node]:
    """The row whose last part of a pass is told behind the repeat as its ending, "* ch 3, sc in ch
    1, ch 3, shell in next shell; repeat from * around, ch 3, sc, ch 3, join": the place of the sc
    is that of each pass.
    """
    out = list(rest)
    for at, one in enumerate(out):
        if not isinstance(one, Repeat) or one.ending or one.until is not Until.OPEN:
            continue
        told: list[Node] = []
        for step, behind in zip(one.body, out[at + 1 :], strict=False):
            again = _again(step, behind)
            if again is None:
                break
            told.append(again)
        if any(isinstance(x, Work) for x in told) and isinstance(one.body[0], Chain):
            ends = replace(one, ending=tuple(told), has_ending=True)
            return [*out[:at], ends, *out[at + 1 + len(told) :]]
    return out


def _again(step: Node, behind: Node) -> Node | None:
    """An instruction told once more without its place, with the place that it has in each pass."""
    if isinstance(step, Chain) and isinstance(behind, Chain):
        return behind if behind.number == step.number else None
    if not isinstance(step, Work) or not isinstance(behind, Work):
        return None
    alike = step.stitch == behind.stitch and step.number == behind.number
    bare = behind.place.where is Where.PLAIN and step.place.where is Where.NEXT
    return replace(behind, place=step.place) if alike and bare else None


def with_last(rest: Sequence[Node]) -> list[Node]:
    """The row with what the words say of its last pass alone."""
    return with_last_at_edge(up_to_chain(part_as_ending(united(with_first_again(rest)))))
