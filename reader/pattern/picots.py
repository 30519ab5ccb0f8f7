"""A stitch in the chain just made that closes a picot: "ch 6, s c in 6th st from hook for picot" ->
a slip stitch, since it is none of the row's; stitches on both sides of a picot, in the one loop.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from reader.pattern.cursor import Cursor
from reader.pattern.tree import ONE, Act, Chain, Node, Place, Repeat, Until, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind

FOR_PICOT = re.compile(
    r"[,(]? ?(?:for|to form|to make|forming|making|to complete|thus forming|=)(?: a| the| one| 1)?"
    r" ?(?:\d[- ]?ch )?picots?\b|\( ?(?:a )?picots?(?: made)? ?\)"
)


def at_picot(cur: Cursor, node: Node | None, made: list[Node]) -> Node | None:
    """The node, as what it is to a picot: what closes it, or what goes to its other side."""
    closing = _closing(cur, node, made)
    return closing if closing is None else _beside(made, closing)


def _closing(cur: Cursor, node: Node | None, made: list[Node]) -> Node | None:
    """The node, as a slip stitch where the words behind it say that it makes a picot of the chain.
    """
    if not isinstance(node, Work) or node.stitch.craft is not Craft.CROCHET:
        return node
    into_chain = node.place.where is Where.CHAIN and node.place.nth > 1
    # "tr in next tr, ch 5, sl st in tr for picot": into the stitch that the chain stands on.
    low = node.stitch.kind is Kind.SLIP or (node.stitch.height <= 1 and node.number in (None, ONE))
    back = isinstance(made[-1] if made else None, Chain) and low
    back = back and node.place.where in (Where.NEXT, Where.LAST, Where.SAME)
    # "sc in same space, ch 3, sc in same space (picot)" counts both.
    back = back and node.place.number == ONE and "space" not in node.place.text.lower()
    behind = " ".join(cur.low(ahead) for ahead in range(7)) if into_chain or back else ""
    slip = stitch_named("sl st", Craft.CROCHET)
    if slip is None or not FOR_PICOT.match(behind):
        return node
    place = node.place if into_chain else replace(node.place, where=Where.SAME)
    return replace(node, stitch=slip, place=place)


def closed_on_last(nodes: Sequence[Node]) -> list[Node]:
    """The list with the slip stitches that close a chain in the midst of a repeat on the stitch
    made last, "* 9 dc, ch 5, sl st in the last dc; repeat": of the row below there is no last one
    yet.
    """
    out: list[Node] = []
    for one in nodes:
        if isinstance(one, Repeat):
            one = replace(one, body=tuple(_on_last(closed_on_last(_opened(one.body)))))
        out.append(one)
    return out


def _opened(body: Sequence[Node]) -> list[Node]:
    """A list with a picot that stands in a bracket told without it, "(ch 3, sl st in last sc)"."""
    out: list[Node] = []
    for one in body:
        once = isinstance(one, Repeat) and one.until is Until.TIMES and one.number == ONE
        kinds = [type(inner) for inner in one.body] if isinstance(one, Repeat) and once else []
        picot = kinds == [Chain, Work] and isinstance(one, Repeat)
        out += one.body if picot and isinstance(one, Repeat) else (one,)
    return out


def _on_last(body: list[Node]) -> list[Node]:
    listed = [at for at, one in enumerate(body) if not isinstance(one, Act)]
    for at, behind in pairwise(listed):
        chain, slip = body[at], body[behind]
        if not (isinstance(slip, Work) and isinstance(chain, Chain)):
            continue
        done = [one for one in body[:at] if isinstance(one, Work) and one.stitch.name != "picot"]
        before = done[-1] if done else None
        if slip.stitch.kind is Kind.SLIP and _closes(slip.place, chain, before):
            same = replace(slip.place, where=Where.SAME, number=ONE)
            body[behind] = replace(slip, place=same)
    return body


def _closes(place: Place, chain: Chain, before: Work | None) -> bool:
    """Whether a slip stitch goes into the stitch that the chain stands on, "into the last dc", or
    into one of its chains: "into the 1st", "into the 2nd of the 5".
    """
    if place.where is Where.LAST and before is not None:
        return place.noun in ("st", before.stitch.name) and place.number == ONE
    if place.where is Where.FIRST and place.number == ONE:
        return place.noun == "ch" or BARE_FIRST.search(place.text) is not None
    among = OF_THE.search(place.text)
    return among is not None and int(among["n"]) == chain.number.values[0]


BARE_FIRST = re.compile(r"\b(?:1st|first)$", re.IGNORECASE)
OF_THE = re.compile(r"\d(?:st|nd|rd|th|d) (?:one )?of (?:the|these|those) (?P<n>\d+)\b")


BESIDE = re.compile(
    r"\b(?P<side>right|left|before|after|front|back|(?:one|each|first|other|2nd|second) side)"
    r"(?: side)?(?: of)?(?: the| same| that| this| next)*[ -]picots?\b", re.IGNORECASE,
)
"""Where in its loop a stitch goes: on which side of the picot."""


def _beside(made: list[Node], node: Node) -> Node:
    """The node, in the same loop as the stitch before where the two go to both sides of a picot:
    "sc in next loop to right of picot, ch 5, sc in next loop to left of picot".
    """
    here = BESIDE.search(node.place.text) if isinstance(node, Work) else None
    works = [one for one in made[-3:] if isinstance(one, Work)]
    works = [one for one in works if one.place.where is not Where.CHAIN]
    last = works[-1].place if works else None
    before = BESIDE.search(last.text) if here is not None and last is not None else None
    if before is None or here is None or last is None or not isinstance(node, Work):
        return node
    sides = {before["side"].lower(), here["side"].lower()}
    told = (BESIDE.search(one.place.text) for one in made if isinstance(one, Work))
    begun = next((one["side"].lower() for one in told if one is not None), "")
    again = len(sides) == 2 and (last.where is not Where.SAME or begun == before["side"].lower())
    return replace(node, place=replace(node.place, where=Where.SAME)) if again else node
