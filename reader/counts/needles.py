"""Rounds written needle by needle: how many stitches a needle has is not known, only what each
gains; so "knit to end of needle" takes whatever is there.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.each_needle import EACH, is_fixed, names_all, over_fixed
from reader.pattern.tree import Act, Deed, Node, Num, Repeat, Unread, Until, Where, Work

TWO = Num((2,))
OPEN = (Where.REST, Where.TO_LAST, Where.EACH)


def by_needles(nodes: Sequence[Node]) -> list[Node]:
    """The nodes with what is open on a needle left to the whole round; unchanged where none is
    named.
    """
    nodes = [_inside(one) for one in _on_the_second(nodes)]
    marks = [at for at, one in enumerate(nodes) if _names_needle(one)]
    if not marks:
        return nodes
    out = list(nodes[: marks[0]])
    told: list[Sequence[Node]] = []
    for at, mark in enumerate(marks):
        stop = marks[at + 1] if at + 1 < len(marks) else len(nodes)
        told.append(_as_other(nodes[mark:stop], told))
        out += _as_often(told[-1])
    return out


ON_THE_SECOND = re.compile(
    r"\W*(?:on|for|across|over|along|with)\s+(?:the\s+)?(?:(?:second|2nd|other|next)\s+(?:needle"
    r"|ndl|n)|(?:needle|ndl|n)\s?(?:2|two))\W*",
    re.IGNORECASE,
)
OF_NEEDLE = re.compile(r"\bof (?:the |each |this |that )?(?:needle|ndl)\b", re.IGNORECASE)


def _on_the_second(nodes: Sequence[Node]) -> list[Node]:
    """ "* ...; repeat from * on second needle": the round lies on two, and each is worked alike."""
    out: list[Node] = []
    for one in nodes:
        last = out[-1] if out else None
        if isinstance(one, Act) and isinstance(last, Repeat) and last.until is Until.OPEN and (
            ON_THE_SECOND.fullmatch(one.words)
        ):
            first = Act(last.span, "", Deed.NEEDLE)
            out[-1] = replace(last, until=Until.TIMES, number=TWO, body=(first, *last.body))
            continue
        out.append(one)
    return out


def _inside(one: Node) -> Node:
    """ "* K to last 3 sts of needle, k 2 tog, k 1; next needle: ...; repeat from * once": a repeat
    over needles, its body told needle by needle.
    """
    if not isinstance(one, Repeat) or not any(
        _names_needle(inner) or _to_its_end(inner) for inner in one.body
    ):
        return one
    first = Act(one.span, "", Deed.NEEDLE)
    body = one.body if _names_needle(one.body[0]) else (first, *one.body)
    return replace(one, body=tuple(by_needles(body)))


def _to_its_end(one: Node) -> bool:
    """ "K to last 3 sts of needle", where no label names the needle."""
    return isinstance(one, Work) and OF_NEEDLE.search(one.words) is not None


ORDINALS = ("", "first", "second", "third", "fourth")
AS_NEEDLE = re.compile(
    r"^\W*(?:work )?(?:the )?(?:same )?(?:as|like)(?: (?:for|on|the))*"
    r" (?:(?:n|ndl|needle)s? ?(?P<n>\d)(?: ?(?:and|&|,) ?(?:n|ndl|needle)? ?(?P<m>\d))?"
    r"|(?P<ord>\d(?:st|nd|rd|th)|first|second|third|fourth)(?: (?:ndl|needle))?)\W*$"
)


def _as_other(nodes: Sequence[Node], told: Sequence[Sequence[Node]]) -> Sequence[Node]:
    """ "N3: as N1": what is told of that needle, on this one."""
    said = " ".join(one.words.lower() for one in nodes[1:])
    found = AS_NEEDLE.match(said)
    if found is None:
        return nodes
    ordinal = found["ord"] or ""
    first = found["n"] or (ordinal[0] if ordinal[:1].isdigit() else ORDINALS.index(ordinal))
    which = [int(first), *([int(found["m"])] if found["m"] else [])]
    named = nodes[0]
    if not all(0 < one <= len(told) for one in which) or not isinstance(named, Act):
        return nodes
    # "Needles 3 and 4 as needles 1 and 2": each of them as one.
    named = replace(named, into="") if len(which) > 1 else named
    return [named, *(node for one in which for node in told[one - 1][1:])]


def _as_often(nodes: Sequence[Node]) -> list[Node]:
    """ "Needles 1 and 3: ...": what is told of several needles, on each of them."""
    named = nodes[0]
    if not isinstance(named, Act):
        return list(nodes)
    if names_all(named) and is_fixed(nodes[1:]):
        return [named, over_fixed(nodes[1:], named)]
    worked = _needle(nodes)
    if named.into == EACH:
        # On how many needles the round lies is nowhere told.
        return [Unread(named.span, named.words), *worked[1:]]
    return worked[:1] + worked[1:] * int(named.into or 1)


def _names_needle(one: Node) -> bool:
    return isinstance(one, Act) and one.deed is Deed.NEEDLE


def _needle(nodes: Sequence[Node]) -> list[Node]:
    works = [one for one in nodes if isinstance(one, Work)]
    alone = len(works) == 1 and not any(isinstance(one, Repeat) for one in nodes)
    return [_to_the_end(one, alone) for one in nodes]


def _to_the_end(one: Node, alone: bool) -> Node:
    """An open instruction of one needle, that keeps its number, as one that takes what is there."""
    if isinstance(one, Work) and one.stitch.takes == one.stitch.makes:
        whole = alone and one.place.where is Where.PLAIN and one.number is None
        if one.place.where in OPEN or whole:
            return replace(one, number=None, place=replace(one.place, where=Where.UNUSED))
    if isinstance(one, Repeat) and one.until in (Until.OPEN, Until.TO_LAST):
        inner = [work for work in one.body if isinstance(work, Work)]
        kept = [replace(work, place=replace(work.place, where=Where.UNUSED)) for work in inner[:1]]
        plain = len(inner) == len([work for work in one.body if not isinstance(work, Act)])
        if plain and _gain(inner) == 0 and kept:
            return kept[0]
    return one


def _gain(works: Sequence[Work]) -> int:
    return sum(
        (work.stitch.makes - work.stitch.takes) * (work.number.values[0] if work.number else 1)
        for work in works
    )
