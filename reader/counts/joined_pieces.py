"""A row that goes over two pieces, "8 sc on this fin, 8 sc on the other fin", or over a chain
between them: what is worked elsewhere takes nothing of the row below.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.tree import Act, Chain, Deed, Node, Num, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

_PIECE = (
    r"(?:leg|fin|foot|feet|arm|ear|sock|boot|horn|wing|flipper|paw|lobe|bump|tail|half|piece|petal"
    r"|hump|point|tentacle|claw|cup|mitt|shoe|peak|tooth|spike|finger)"
)
OTHER = re.compile(rf"\b(?:other|remaining) {_PIECE}\b", re.IGNORECASE)
FIRST = re.compile(
    rf"\b(?:(?:first|1st) {_PIECE}|{_PIECE} (?:no\.? ?|# ?|number )?(?:1|one|a))\b", re.IGNORECASE
)
SECOND = re.compile(
    rf"\b(?:(?:second|2nd|next|this) {_PIECE}|{_PIECE} (?:no\.? ?|# ?|number )?(?:2|two|b))\b",
    re.IGNORECASE,
)
OVER_CHAIN = re.compile(
    r"\b(?:other|opposite|second) side of (?:the )?(?:next |same |these |those )?(?:(?P<n>\d+) )?"
    r"ch(?:ain)?s?\b"
    r"|\b(?:in|of|over|across|along) (?:each (?:of )?)?(?:the |next |these )*(?:(?P<m>\d+) )?"
    r"ch(?:ain)?s?(?! ?-?\d)\b",
    re.IGNORECASE,
)
WITH_STITCH = re.compile(
    r"\bwith (?:an? |1 )?(?P<stitch>sc|hdc|dc|single crochet)\b", re.IGNORECASE
)


BOTH = re.compile(rf"\b(?:around|of|on|across|over|in) both (?:of )?(?:the )?{_PIECE}s\b", re.I)
"""One instruction for two pieces, "sc in each st around both legs"."""


def over_pieces(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """The row with what is worked on another piece, or on the chain between, marked as elsewhere;
    rows of one piece as they are.
    """
    words = " ".join(one.words for one in nodes)
    works = [one for one in nodes if not isinstance(one, Act)]
    if len(works) == 1 and isinstance(works[0], Work) and BOTH.search(words):
        place = replace(works[0].place, where=Where.ELSEWHERE, text=words, each=True)
        at = nodes.index(works[0])
        return (*nodes[: at + 1], replace(works[0], place=place), *nodes[at + 1 :])
    if not OTHER.search(words) and not (FIRST.search(words) and SECOND.search(words)):
        return nodes
    other = OTHER if OTHER.search(words) else FIRST
    bridge = next((one for one in nodes if isinstance(one, Chain)), None)
    works = [one for one in nodes if not isinstance(one, Act)]
    passes = sum(_of_bridge(one) for one in nodes if isinstance(one, Work | Act))
    # A chain amid the row is itself worked into later; what goes along it now is its other side.
    covered = passes > 1 or (passes == 1 and works[:1] == [bridge])
    out: list[Node] = []
    for at, one in enumerate(nodes):
        behind = nodes[at + 1] if at + 1 < len(nodes) else None
        told = behind.words if isinstance(behind, Act) else ""
        if isinstance(one, Work):
            out.append(_worked(one, f"{one.words} {told}", other, bridge))
        elif isinstance(one, Act) and one.deed is Deed.JOIN and other.search(one.words):
            out += [one, *_joined_with(one)]
        elif isinstance(one, Act) and one.deed is Deed.OTHER_SIDE and bridge is not None:
            out.append(replace(one, deed=Deed.NOTE))
        elif one is bridge and covered:
            out.append(Act(one.span, one.words, Deed.NOTE))
        else:
            out.append(one)
    return tuple(out)


def _of_bridge(one: Node) -> bool:
    return isinstance(one, Work | Act) and OVER_CHAIN.search(one.words) is not None


def _worked(one: Work, words: str, other: re.Pattern[str], bridge: Chain | None) -> Work:
    """Stitches where they are worked: on the other piece, on the chain between, or as they are."""
    if other.search(words):
        each = one.place.each or (one.place.where is Where.REST and one.number is None)
        place = replace(one.place, where=Where.ELSEWHERE, text=words, each=each)
        return replace(one, place=place)
    if one.number is not None and one.place.noun == "st" and _on_this(words):
        # "12 sc on the second leg": along the piece at hand, not all in its second stitch.
        return replace(one, place=Place(Where.PLAIN, one.place.span))
    over = OVER_CHAIN.search(words) if bridge is not None else None
    if over is None or bridge is None:
        return one
    said = over["n"] or over["m"]
    number = Num((int(said),)) if said else bridge.number
    number = one.number if one.number is not None and one.number.values[0] > 1 else number
    return replace(one, number=number, place=Place(Where.ELSEWHERE, one.place.span, text=words))


def _on_this(words: str) -> bool:
    return re.search(r"\b(?:on|around|across|over|along|of)\b", words) is not None and (
        SECOND.search(words) is not None
    )


def _joined_with(join: Act) -> list[Node]:
    """The stitch that a join is made with."""
    found = WITH_STITCH.search(join.words)
    name = {"single crochet": "sc"}.get(found["stitch"].lower(), found["stitch"]) if found else ""
    stitch = stitch_named(name.lower(), Craft.CROCHET) if name else None
    if stitch is None:
        return []
    return [Work(join.span, join.words, stitch, None, Place(Where.ELSEWHERE, join.span))]
