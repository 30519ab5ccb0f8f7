"""Rows that are another with other numbers: "like 4th, with 7 dc instead of 5", "as 3rd round, but
with 9 ch in place of 7", "same as 2nd, with 1 dc more in each shell".
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from reader.counts.entries import inner_times
from reader.pattern.tree import Chain, Group, Node, Num, Repeat, Until, Where, Work
from reader.terms.crafts import Terms
from reader.terms.forms import name_of
from reader.terms.numbers import SPELLED, word_number
from reader.terms.stitches import Craft

_N = rf"(?:\d{{1,3}}|{SPELLED})"
_NO_NOUN = "instead|in place|for|in|on|under|between|less|fewer|more|at|to|where|times?"


def _told_as(which: str) -> str:
    """ "Ch 7", "7 dc", "1 dc more", "two more": its groups are named with a letter of their own."""
    return (
        rf"(?:an? )?(?P<{which}c>ch(?:ain)?s? (?:of )?{_N})"
        rf"|(?P<{which}n>{_N})(?P<{which}more> more| extra)?"
        rf"(?P<{which}what>(?: (?!(?:{_NO_NOUN})\b)[a-z]+){{0,3}})"
        rf"(?P<{which}less> more| extra| less| fewer)?"
    )


_NEW, _OLD = _told_as("a"), _told_as("b")
_WITH = r"(?:with|having|making|make|working|work|putting|put|using|doing|do|only|of|we have|that)"
_INSTEAD = r"(?:instead of|in place of|in lieu of|rather than|in stead of|where there were)"
INSTEAD = re.compile(
    rf"(?:\b{_WITH} )?(?:the )?(?:{_NEW})[^.;\d]{{0,30}}?,? ?\b{_INSTEAD} (?:the )?(?:{_OLD})",
    re.IGNORECASE,
)
INSTEAD_FIRST = re.compile(
    rf"\b{_INSTEAD} (?:the )?(?:{_OLD})[^.;\d]{{0,30}}?\b{_WITH} (?:the )?(?:{_NEW})",
    re.IGNORECASE,
)
"""The old number before the new one: "in place of 5 dc work 7"."""
ONLY_NEW = re.compile(
    rf"\b{_WITH} (?:only )?(?:{_NEW})"
    r"(?: (?:between|apart|in|on|under|for|to|at) [^.;,\d]{2,40})?\W*$",
    re.IGNORECASE,
)
"""The new number alone: those of its kind that the row has were all alike."""
GROUPS = re.compile(
    r"\b(?:groups?|shells?|loops?|spaces?|sps?|lps?|rows?|rounds?|times|clusters?|picots?"
    r"|petals?|points?|scallops?|sides?|fans?|blocks?|squares?)$",
    re.IGNORECASE,
)
"""These are made up of stitches: that there are more of them is no number of the row."""


@dataclass(frozen=True, slots=True)
class Told:
    """A number of what: "ch", a stitch's US name, or "" where nothing is said; step: so many more
    (or fewer) than there were.
    """

    number: int
    kind: str
    step: bool = False


LOOPS = re.compile(
    rf"\b{_WITH} (?:only )?(?P<n>{_N}) (?:ch[- ]?\d+ )?(?:loops?|lps?|sps?|spaces?|arches)"
    r"(?: (?:across|over|in|on|to|at|along|around|for) [^.;,\d]{2,40})?\W*$",
    re.IGNORECASE,
)
"""So many loops in each pineapple: as often its inner repeat is worked."""


def with_other_numbers(
    nodes: tuple[Node, ...], words: str, terms: Terms
) -> tuple[Node, ...] | None:
    """The row with its numbers as the words want them; None where they tell of no such change, or
    of one that the row has no room for.
    """
    said = " ".join(words.split())
    loops = LOOPS.search(said)
    if loops is not None:
        return _with_loops(nodes, _value(loops["n"]))
    found = INSTEAD.search(said) or INSTEAD_FIRST.search(said) or ONLY_NEW.search(said)
    if found is None or re.search(r"\d", said[: found.start()] + said[found.end() :]):
        return None
    new, old = _told(found, "a", terms), None
    if found.re is not ONLY_NEW:
        old = _told(found, "b", terms)
    if new is None or (found.re is not ONLY_NEW and old is None):
        return None
    kind = new.kind or (old.kind if old is not None else "")
    was = old.number if old is not None else _only_number(nodes, kind)
    if old is not None and not kind:
        kind = _only_kind(nodes, was)
    if not kind or not was or was not in dict(_numbers(nodes, kind)).values():
        return None
    to = was + new.number if new.step else new.number
    return tuple(_changed(one, kind, was, to) for one in nodes) if to > 0 else None


TELLS = re.compile(
    r"^[^.;]*?\b(?:having|with|making|working) (?:only )?\d+ (?!more row|time|row|round|rnd|inch)",
    re.IGNORECASE,
)


def tells_more(words: str) -> bool:
    """Whether a row that is called back is said to have so many of something."""
    return TELLS.match(words) is not None


def _with_loops(nodes: tuple[Node, ...], number: int) -> tuple[Node, ...] | None:
    """The row with the loops of each group as many; None where it has no such groups."""
    if not inner_times(nodes) or number < 1:
        return None
    out: list[Node] = []
    for one in nodes:
        if isinstance(one, Repeat):
            body = tuple(
                replace(inner, number=Num((number,)))
                if isinstance(inner, Repeat) and inner.until is Until.TIMES else inner
                for inner in one.body
            )
            one = replace(one, body=body)
        out.append(one)
    return tuple(out)


def _told(found: re.Match[str], which: str, terms: Terms) -> Told | None:
    """What the words tell of, None where it is nothing that a row works."""
    chain = found[f"{which}c"]
    if chain:
        return Told(_value(chain.split()[-1]), "ch")
    number, what = _value(found[f"{which}n"]), (found[f"{which}what"] or "").lower().strip()
    less = (found[f"{which}less"] or "").strip()
    step = bool(found[f"{which}more"] or less)
    number = -number if less in ("less", "fewer") else number
    if GROUPS.search(what):
        return None
    parts = what.split()
    for length in range(len(parts), 0, -1):
        name = " ".join(parts[:length])
        if name in ("ch", "chs", "chain", "chains", "chain stitches"):
            return Told(number, "ch", step)
        stitch = name_of(name, Craft.CROCHET, terms)
        if stitch:
            return Told(number, stitch, step)
    return Told(number, "", step) if not parts else None


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0


def _numbers(nodes: Sequence[Node], kind: str) -> Iterator[tuple[Node, int]]:
    """The instructions of a kind that stand in repeats or groups, each with its number."""
    for one in nodes:
        if isinstance(one, Repeat | Group):
            for inner in (*one.body, *(one.ending if isinstance(one, Repeat) else ())):
                number = _number_of(inner, kind)
                if number:
                    yield inner, number
            yield from _numbers(one.body, kind)
        elif _number_of(one, kind) and isinstance(one, Work) and one.place.where is Where.EACH:
            yield one, _number_of(one, kind)


def _number_of(one: Node, kind: str) -> int:
    """How many an instruction of that kind makes, side by side or in one place; 0 for another."""
    if isinstance(one, Chain):
        return one.number.values[0] if kind == "ch" else 0
    if not isinstance(one, Work) or one.stitch.name != kind:
        return 0
    if one.number is not None and one.number.values[0] > 1:
        return one.number.values[0]
    return max(one.place.number.values[0], 1)


def _only_number(nodes: Sequence[Node], kind: str) -> int:
    """The number that all of a kind have, but for single ones beside them; 0 where they differ."""
    found = {number for _, number in _numbers(nodes, kind)} if kind else set()
    several = {number for number in found if number > 1} or found
    return several.pop() if len(several) == 1 else 0


def _only_kind(nodes: Sequence[Node], number: int) -> str:
    """What the row has so many of, "" where that is nothing, or more than one thing."""
    kinds: set[str] = set()
    stack = list(nodes)
    while stack:
        one = stack.pop()
        if isinstance(one, Repeat | Group):
            stack += [*one.body, *(one.ending if isinstance(one, Repeat) else ())]
        kind = "ch" if isinstance(one, Chain) else one.stitch.name if isinstance(one, Work) else ""
        if kind and _number_of(one, kind) == number:
            kinds.add(kind)
    return kinds.pop() if len(kinds) == 1 else ""


def _changed(node: Node, kind: str, was: int, to: int, inside: bool = False) -> Node:
    """An instruction with the new number. Before the repeats one less stands for the old number,
    where the chain that begins the row is the first of them.
    """
    if isinstance(node, Repeat | Group):
        body = tuple(_changed(one, kind, was, to, True) for one in node.body)
        if isinstance(node, Repeat):
            ending = tuple(_changed(one, kind, was, to, True) for one in node.ending)
            return replace(node, body=body, ending=ending)
        return replace(node, body=body)
    number = _number_of(node, kind)
    short = int(not inside and number == was - 1 and isinstance(node, Work))
    if not number or (number != was and not short) or to - short < 1:
        return node
    if isinstance(node, Chain):
        return replace(node, number=Num((to,)))
    if isinstance(node, Work) and node.number is not None and node.number.values[0] > 1:
        return replace(node, number=Num((to - short,)))
    if isinstance(node, Work) and node.place.number.values[0] > 1:
        return replace(node, place=replace(node.place, number=Num((to - short,))))
    return replace(node, number=Num((to - short,))) if isinstance(node, Work) else node
