"""Spaces between stitches of a row without chains: each is the place of one stitch, so that "in
space between next 2 sts" and "between next 2 dc" are counted as stitches are.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.fabric import Below
from reader.counts.openings import BETWEEN
from reader.pattern.tree import ONE, Group, Node, Num, Place, Repeat, Skip, Where, Work

GROUPED = frozenset(("group", "shell", "fan", "v-st", "cluster"))


def between_stitches(nodes: Sequence[Node], below: Below) -> list[Node]:
    """The row with such spaces as stitches; as it is over a row that has openings of its own, or of
    which nothing is known.
    """
    closed = below.stitches is not None and all(run.is_stitch for run in below.runs)
    if not closed or (below.stitches or 0) < 3:
        return list(nodes)
    if _by_turns(nodes):
        return [_aside(node) for node in nodes]
    # Among stitches that are known a space can only be one between two of them.
    bare = bool(below.runs) and all(run.name not in ("st", "ch") for run in below.runs)
    return [_one(node, bare) for node in nodes]


def _by_turns(nodes: Sequence[Node]) -> bool:
    """Whether a list works by turns into stitches and between them, "dc in dc, dc between dc": then
    those between use none.
    """
    works = [one for one in nodes if isinstance(one, Work) and one.place.where is Where.NEXT]
    apart = [BETWEEN.search(one.place.text) is not None for one in works]
    inner = any(isinstance(one, Repeat) and _by_turns(one.body) for one in nodes)
    return inner or (True in apart and False in apart)


def _aside(node: Node) -> Node:
    """A stitch between two others that uses none of them; other nodes as they are."""
    if isinstance(node, Repeat):
        return replace(node, body=tuple(map(_aside, node.body)))
    if not isinstance(node, Work) or not BETWEEN.search(node.place.text):
        return node
    if _is_stitch(node.place):
        return node
    return replace(node, place=replace(node.place, where=Where.ELSEWHERE, number=ONE, each=False))


KINDS = frozenset(("sc", "hdc", "dc", "tr", "dtr", "trtr"))
OF_STITCH = re.compile(
    r"^(?:in|into|on|over|to)\b(?! [^,;]*\b(?:sps?|spaces?)\b).+\bbet", re.IGNORECASE
)


def _is_stitch(place: Place) -> bool:
    """Whether a place is a stitch that stands between others: "in dc between next 2 shells"."""
    return place.noun in KINDS and OF_STITCH.match(place.text) is not None


SPACE = re.compile(r"\b(?:sps?|spaces?)$")
BARE = re.compile(r"\b(?:in|into) (?:the )?(?:next|each|first|1st)(?: \d+)? (?:sps?|spaces?)$")


def _one(node: Node, bare: bool) -> Node:
    if isinstance(node, Repeat):
        body = tuple(_one(one, bare) for one in node.body)
        ending = tuple(_one(one, bare) for one in node.ending)
        same = body == node.body and ending == node.ending
        return node if same else replace(node, body=body, ending=ending)
    if not isinstance(node, Work | Group | Skip):
        return node
    said = node.place.text.lower()
    alone = bare and (BARE.search(said) or (isinstance(node, Skip) and SPACE.search(said)))
    if not BETWEEN.search(said) and not alone:
        return node
    place = node.place
    if _is_stitch(place):
        return node
    if place.noun in GROUPED or place.where not in (Where.NEXT, Where.EACH, Where.FIRST):
        return node
    node = replace(node, place=_as_stitch(place))
    return _by_pairs(node) if isinstance(node, Work) else node


OF_PAIRS = re.compile(
    r"\bbetw?(?:een)? (?:each|every|all) (?:group of )?(?:2|two)\b", re.IGNORECASE
)


def _by_pairs(work: Work) -> Work:
    """ "2 dc between each 2 dc": those two stand together, and the hook goes in between them, so
    that each pair has two again.
    """
    number = work.number.values[0] if work.number is not None else 1
    paired = work.place.where is Where.EACH and OF_PAIRS.search(work.place.text) is not None
    if not paired or number % 2 or not number:
        return work
    return replace(work, number=Num((number // 2,)))


def _as_stitch(place: Place) -> Place:
    if place.noun == "sp":
        return replace(place, noun="st")
    pair = place.where is Where.NEXT and place.number.values == (2,)
    return replace(place, number=ONE, each=False) if pair else place
