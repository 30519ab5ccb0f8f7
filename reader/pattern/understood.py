"""Places whose noun is left out, since it was just named: "2 tr in sp, 1 ch, 2 tr in next", "miss 1
space, 1 dc in next"; and what old books only name "under": a loop.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import ONE, Act, Group, Node, Repeat, Skip, Where, Work

BARE = re.compile(
    r"(?:in|into|under|over|on) (?:the )?(?:next|following|same)(?: one)?", re.IGNORECASE
)
UNDER = re.compile(r"under (?:the )?(?:next|following|same|each|every)\b", re.IGNORECASE)


def nouns_understood(nodes: Sequence[Node]) -> list[Node]:
    """The list with loops where they were named before, or are gone under."""
    return _named(nodes, "")


def changed_every_nth(nodes: Sequence[Node]) -> list[Node]:
    """The list with "sc in each st, working an inc in every 5th st" as the increases alone, since
    between them all others are worked plain.
    """
    out: list[Node] = []
    for one in nodes:
        nth = one.place.nth if isinstance(one, Work) and one.place.where is Where.EACH else 0
        grows = isinstance(one, Work) and one.stitch.makes > one.stitch.takes
        plain = out[-1] if out else None
        if nth > 1 and grows and isinstance(plain, Work) and _in_all(plain):
            out.pop()
        out.append(one)
    return out


def _in_all(work: Work) -> bool:
    even = work.stitch.makes == work.stitch.takes == 1 and work.number in (None, ONE)
    return even and work.place.where in (Where.EACH, Where.REST) and work.place.nth < 2


def passed_over(nodes: Sequence[Node]) -> list[Node]:
    """The list with "sk 2, 5 dc in same st" as in the next one, since of what is passed over none
    is worked into; and a repeat of nothing but "2 sc in same st", which goes into one by one.
    """
    out: list[Node] = []
    for one in nodes:
        if isinstance(one, Repeat):
            works = [inner for inner in one.body if not isinstance(inner, Act)]
            alone = len(works) == 1 and _in_same(works[0]) and not out
            body = passed_over(one.body)
            one = replace(one, body=tuple(map(_in_next, body) if alone else body))
        elif out and isinstance(out[-1], Skip) and _in_same(one):
            one = _in_next(one)
        out.append(one)
    return out


SAME_ST = re.compile(r"(?:all )?in(?:to)? (?:the )?same (?:st|stitch|sc|dc|hdc)", re.IGNORECASE)


def _in_same(one: Node) -> bool:
    if not isinstance(one, Work | Group) or one.place.where is not Where.SAME:
        return False
    return SAME_ST.fullmatch(one.place.text) is not None


def _in_next(one: Node) -> Node:
    if not isinstance(one, Work | Group) or not _in_same(one):
        return one
    return replace(one, place=replace(one.place, where=Where.NEXT))


def _named(nodes: Sequence[Node], before: str) -> list[Node]:
    out: list[Node] = []
    for one in nodes:
        if isinstance(one, Repeat):
            body = tuple(_named(one.body, before))
            one = replace(one, body=body, ending=tuple(_named(one.ending, _last(body) or before)))
            before = _last(body) or before
        elif isinstance(one, Work | Group | Skip):
            one = _with_noun(one, before)
            before = _noun(one) or before
        out.append(one)
    return out


def _with_noun(one: Work | Group | Skip, before: str) -> Node:
    place = one.place
    bare = place.noun == "st" and place.number == ONE and not place.nth
    bare = bare and place.where in (Where.NEXT, Where.SAME, Where.EACH)
    understood = before == "sp" and not place.each and BARE.fullmatch(place.text)
    if bare and (understood or (UNDER.match(place.text) and place.text.count(" ") < 3)):
        return replace(one, place=replace(place, noun="sp"))
    return one


def _noun(one: Node) -> str:
    """What a place was called; "" for one that is not named."""
    if not isinstance(one, Work | Group | Skip) or one.place.where is Where.PLAIN:
        return ""
    return one.place.noun


def _last(nodes: Sequence[Node]) -> str:
    return next((noun for one in reversed(nodes) if (noun := _noun(one))), "")
