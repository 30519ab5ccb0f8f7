"""Groups with a chain between them that is told once, behind: "(3 dc, ch 2, 3 dc) in each corner,
3 dc in each side sp, ch 1 between groups" -> each group with that chain at its end.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.tree import Act, Chain, Deed, Group, Node, Num, Unread, Where, Work

_GROUPS = (
    r"(?: (?:all|each|every|both|the|of|groups?|clusters?|corners?|shells?|sets?|bunch(?:es)?"
    r"|fans?|ones?|them|sides?|two|and))*"
)
BETWEEN = re.compile(
    rf"(?:(?:in )?between{_GROUPS}|(?:along|on|at) (?:each|every|the|all) sides?)$"
)
CHAINING = re.compile(rf"chaining (?P<n>\d) (?:in )?between{_GROUPS}$")
GROUPS = re.compile(
    r"(?:the |all |each |every )?(?:groups?|corners?|clusters?|shells?|them|sets?)$"
)


def chained_between(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """The row so put; any other row as it is."""
    groups = [one for one in nodes if _of_each(one)]
    if not groups:
        return nodes
    rest, chain = _told_behind(nodes)
    if chain is None:
        rest, chain = _told_within(nodes)
    if chain is None:
        return nodes
    return tuple(_closed(one, chain) if _of_each(one) else one for one in rest)


def _of_each(one: Node) -> bool:
    return isinstance(one, Group | Work) and one.place.where is Where.EACH and one.place.each


def _said(one: Node) -> str:
    words = one.words if isinstance(one, Act | Unread) else ""
    return " ".join(words.lower().split()).strip(" ,.;")


def _told_behind(nodes: tuple[Node, ...]) -> tuple[tuple[Node, ...], Chain | None]:
    """The row without "ch 1 between groups" at its end, and the chain."""
    last = nodes[-1]
    chaining = CHAINING.fullmatch(_said(last))
    if chaining is not None:
        return nodes[:-1], Chain(last.span, last.words, Num((int(chaining["n"]),)))
    before = nodes[-2] if len(nodes) > 2 else None
    if isinstance(before, Chain) and BETWEEN.fullmatch(_said(last)):
        return nodes[:-2], before
    return nodes, None


def _told_within(nodes: tuple[Node, ...]) -> tuple[tuple[Node, ...], Chain | None]:
    """The row whose last group took the chain between groups for its own."""
    last = nodes[-1]
    if not isinstance(last, Group) or not last.body:
        return nodes, None
    end, told = last.body[-1], last.words.lower()
    if isinstance(end, Chain) and BETWEEN.search(told) and len(nodes) > 1:
        return nodes, end
    stitches = last.body[-2] if len(last.body) > 1 else None
    lost = isinstance(end, Act) and end.deed is Deed.NOTE and GROUPS.fullmatch(_said(end))
    if lost and isinstance(stitches, Work) and stitches.between and len(last.body) > 2:
        # "3 dc, ch 2, 3 dc, with ch 1 between corners": not between those three.
        chain = Chain(end.span, end.words, Num((stitches.between,)))
        plain = replace(stitches, between=0)
        return (*nodes[:-1], replace(last, body=(*last.body[:-2], plain))), chain
    return nodes, None


def _closed(one: Node, chain: Chain) -> Node:
    """A group of each place with the chain at its end."""
    if isinstance(one, Group):
        ends = bool(one.body) and isinstance(one.body[-1], Chain)
        return one if ends else replace(one, body=(*one.body, chain))
    assert isinstance(one, Work)
    plain = replace(one, place=replace(one.place, where=Where.PLAIN, each=False))
    return Group(one.span, one.words, (plain, chain), one.place)
