"""The ends of a row: its turning chain, the chain for the next row, the foundation it begins with.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from reader.pattern.tree import Act, Chain, Deed, Group, Node, Repeat, Skip, Start, Where, Work
from reader.terms.stitches import Kind


@dataclass(frozen=True, slots=True)
class Ends:
    """A row without its ends. lead: what comes before stitches. chain: the turning chain.
    next_chain: the chain made for the next row. foundation: the chain that the row itself is
    worked into.
    """

    lead: tuple[Node, ...]
    body: tuple[Node, ...]
    chain: Chain | None = None
    next_chain: Chain | None = None
    foundation: Chain | None = None


def ends_of(nodes: Sequence[Node], begun: bool = False) -> Ends:
    """The row taken apart; begun: a row lies below, so a chain at the start is no foundation."""
    if all(isinstance(one, Work | Repeat | Skip) for one in nodes) and not travels(_first(nodes)):
        return Ends((), tuple(nodes))
    body = chain_first(nodes) if begun else list(nodes)
    lead: list[Node] = []
    chain: Chain | None = None
    foundation: Chain | None = None
    while body and isinstance(body[0], Act | Start) and not _names_needle(body[0]):
        lead.append(body.pop(0))
    if body and isinstance(body[0], Chain):
        following = _following(body)
        if isinstance(following, Act) and (closes(following) or (not begun and joins(following))):
            lead.append(body.pop(0))
            while body and isinstance(body[0], Act):
                lead.append(body.pop(0))
            chain = _first_chain(body)
        elif begun:
            chain = None if _worked_back(body) else _first_chain(body)
        elif into_chain(following):
            foundation = body.pop(0)  # type: ignore[assignment]
        elif not (isinstance(following, Act) and following.deed is Deed.TURN and _later(body)):
            chain = _first_chain(body)
        else:
            foundation = body.pop(0)  # type: ignore[assignment]
            while body and isinstance(body[0], Act):
                lead.append(body.pop(0))
            chain = _first_chain(body)
    elif begun and body and travels(body[0]):
        at = next(
            (n for n, one in enumerate(body) if not (isinstance(one, Act) or travels(one))), 0
        )
        if isinstance(body[at], Chain) and at + 1 < len(body):
            found = body.pop(at)
            chain = found if isinstance(found, Chain) else None
    ending = _next_chain(body)
    return Ends(tuple(lead), tuple(body), chain, ending, foundation)


def _first(nodes: Sequence[Node]) -> Node | None:
    return nodes[0] if nodes else None


def chain_first(nodes: Sequence[Node]) -> list[Node]:
    """The row with the chain that its first group begins with before that group: "(ch 3, dc, ch 2,
    2 dc) in same sp".
    """
    out = list(nodes)
    at = next((n for n, one in enumerate(out) if not (isinstance(one, Act) or travels(one))), None)
    group = out[at] if at is not None else None
    if at is None or not isinstance(group, Group) or len(group.body) < 2:
        return out
    chain, *rest = group.body
    worked = any(isinstance(one, Work) for one in rest)
    if isinstance(chain, Chain) and worked and group.place.where is not Where.EACH:
        out[at : at + 1] = [chain, replace(group, body=tuple(rest))]
    return out


def _names_needle(node: Node) -> bool:
    """Whether a needle is named, of which what follows is told."""
    return isinstance(node, Act) and node.deed is Deed.NEEDLE


def travels(node: Node | None) -> bool:
    """Whether a slip stitch only goes to where the round begins."""
    return isinstance(node, Work) and node.stitch.kind is Kind.SLIP


def _later(body: list[Node]) -> bool:
    """Whether stitches into the chain follow a chain that is turned on."""
    return any(into_chain(one) for one in body[1:4])


def _first_chain(body: list[Node]) -> Chain | None:
    if body and isinstance(body[0], Chain) and len(body) > 1 and not _opens(body):
        first = body.pop(0)
        return first if isinstance(first, Chain) else None
    return None


def _worked_back(body: Sequence[Node]) -> bool:
    """Whether stitches are added by a chain that is worked back along: "ch 5, sc in 2nd ch from
    hook and in next 3 ch, sc in each st across".
    """
    chain = body[0]
    following = next((one for one in body[1:] if not isinstance(one, Act)), None)
    if not isinstance(chain, Chain) or not isinstance(following, Work) or travels(following):
        return False
    nth = following.place.nth if following.place.where is Where.CHAIN else 0
    if following.stitch.kind is Kind.CLUSTER:
        # "Ch 7, cluster in 5th ch from hook": it stands on a chain that is a tall stitch.
        return False
    return 1 < nth < chain.number.values[0]


def _opens(body: Sequence[Node]) -> bool:
    """Whether the chain that a row begins with lies over the stitches passed behind it, a thumb's
    opening or a buttonhole: "ch 4, skip 4 sts, sc in next 20 sts".
    """
    at = next((n for n, one in enumerate(body[1:], 1) if not _said(one)), len(body))
    chain, skip = body[0], body[at] if at < len(body) else None
    works = [one for one in body[at + 1 :] if not isinstance(one, Act)]
    if not isinstance(chain, Chain) or chain.counts is not None or not isinstance(skip, Skip):
        return False
    low = bool(works) and all(isinstance(one, Work) and one.stitch.height <= 1 for one in works)
    over = skip.place.where in (Where.NEXT, Where.FIRST) and skip.place.noun in ("st", "sc")
    number, passed = chain.number.values[0], skip.place.number.values[0]
    return over and low and passed > 1 and abs(number - passed) <= 1


def _said(one: Node) -> bool:
    return isinstance(one, Act) and one.deed in (Deed.NOTE, Deed.COLOUR, Deed.MARKER)


def _following(body: list[Node]) -> Node | None:
    rest = [
        one for one in body[1:] if not isinstance(one, Act) or one.deed in (Deed.JOIN, Deed.TURN)
    ]
    return rest[0] if rest else None


def closes(act: Act) -> bool:
    """Whether a join closes a chain to a ring."""
    said = act.into + act.words.lower()
    return "ring" in said or "circle" in said or "form a loop" in said


def joins(act: Act) -> bool:
    """Whether a chain is joined right away, which makes it a ring where nothing lies below."""
    return act.deed is Deed.JOIN


def _next_chain(body: list[Node]) -> Chain | None:
    """Takes the "ch 1, turn" off the end of a row."""
    said = (Deed.NOTE, Deed.COLOUR)
    tail = [one for one in body if not (isinstance(one, Act) and one.deed in said)]
    if len(tail) < 2:
        return None
    last, before = tail[-1], tail[-2]
    if isinstance(last, Act) and last.deed is Deed.TURN and isinstance(before, Chain):
        found = before
    elif isinstance(last, Chain) and isinstance(before, Act) and before.deed is Deed.TURN:
        found = last
    else:
        return None
    index = max(at for at, one in enumerate(body) if one is found)
    del body[index]
    return found


def into_chain(node: Node | None) -> bool:
    """Whether an instruction goes into a foundation chain."""
    if isinstance(node, Work):
        place = node.place
        return (
            place.where is Where.CHAIN
            or (place.noun in ("tch", "ch") and place.nth > 1)
            or (place.noun == "ch" and place.where in (Where.EACH, Where.NEXT))
        )
    if isinstance(node, Skip):
        return node.place.where is Where.CHAIN or node.place.noun == "ch"
    if isinstance(node, Group):
        return node.place.where is Where.CHAIN
    return isinstance(node, Repeat) and bool(node.body) and into_chain(node.body[0])


def first_work(nodes: Sequence[Node]) -> Work | None:
    """The first stitches of a row, inside repeats and groups too."""
    for one in nodes:
        if isinstance(one, Work):
            return one
        if isinstance(one, Repeat | Group):
            inner = first_work(one.body)
            if inner is not None:
                return inner
    return None


def leaves_on_needle(ends: Ends) -> bool:
    """Whether a row ends with "cast off all but 6": those stay on the needle."""
    works = [one for one in ends.body if not isinstance(one, Act)]
    last = works[-1] if works else None
    return isinstance(last, Work) and last.stitch.name == "drop" and last.place.where is (
        Where.TO_LAST
    )


INTO_SPACE = re.compile(
    r"\b(?:loops?|lps?|sps?|spaces?|corners?|ch[- ]\d|cent(?:er|re)|shells?|picots?|groups?)\b",
    re.IGNORECASE,
)


SAME_SPACE = re.compile(r"\bsame (?:sp|space)\b")


def begins_in_same(ends: Ends) -> bool:
    """Whether a row begins in the "same space" without having been led to a space of chains: "join,
    ch 3, dc in same space" goes into the stitch that was joined to.
    """
    first = next((one for one in ends.body if isinstance(one, Work | Group | Repeat)), None)
    if not isinstance(first, Work | Group) or travels(first):
        return False
    if first.place.where is not Where.SAME or not SAME_SPACE.search(first.place.text.lower()):
        return False
    said = " ".join(one.words for one in ends.lead).lower().replace("same space", "")
    return not INTO_SPACE.search(said)


def on_stitch(rest: Sequence[Node]) -> list[Node]:
    """The row with the "same space" that it begins in as a stitch."""
    out = list(rest)
    for at, one in enumerate(out):
        if isinstance(one, Act | Chain):
            continue
        if not isinstance(one, Work | Group) or one.place.where is not Where.SAME:
            break
        if one.place.noun == "sp":
            out[at] = replace(one, place=replace(one.place, noun="st"))
    return out
