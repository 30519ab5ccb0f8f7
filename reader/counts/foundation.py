"""A line that only starts the work (chain, ring, cast on) -> its row, and what the first row goes
into.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.counts.casting import of_casting
from reader.counts.counted import CountedRow, Verdict
from reader.counts.ends import ends_of
from reader.counts.fabric import Below, foundation, plain
from reader.counts.worked import Move, MoveKind
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    Edge,
    Group,
    Node,
    Repeat,
    Start,
    Where,
    Work,
)
from reader.terms.stitches import Craft, Kind
from reader.text.span import Span

FOUNDATION_STITCHES = frozenset({"fsc", "fhdc", "fdc"})
"""Stitches that make their own foundation."""


LONG_RING = 20
"""Chains: a longer ring is worked into chain by chain."""


def is_start(nodes: tuple[Node, ...]) -> bool:
    """Only a start: chain, ring, cast on."""
    works = [one for one in nodes if not isinstance(one, Act)]
    return bool(works) and all(
        isinstance(one, Chain | Start)
        or (isinstance(one, Edge) and one.cast_on and one.number is not None)
        or (isinstance(one, Work) and one.stitch.name in FOUNDATION_STITCHES)
        for one in works
    )


def without_knot(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """The first row of all without the "slip st" that some call the slip knot before its chain."""
    works = [at for at, one in enumerate(nodes) if not isinstance(one, Act)]
    first, second = ([nodes[at] for at in works[:2]] + [None, None])[:2]
    knot = isinstance(first, Work) and first.stitch.kind is Kind.SLIP and isinstance(second, Chain)
    if not knot or not isinstance(first, Work) or first.place.where is not Where.PLAIN:
        return nodes
    told = Act(first.span, first.words, Deed.START)
    return (*nodes[: works[0]], told, *nodes[works[0] + 1 :])


def start_inside(
    nodes: tuple[Node, ...], before: Below
) -> tuple[tuple[Node, ...], tuple[Node, ...]]:
    """ "1st row: cast on 10, slip 1, knit 9": the cast on that a row begins with, and the rest;
    nothing and the whole where it begins with none, or adds to what the part before left: "Row 37:
    CO 22 at the beginning of the row, knit across".
    """
    works = [at for at, one in enumerate(nodes) if not isinstance(one, Act)]
    first = nodes[works[0]] if len(works) > 1 else None
    if not isinstance(first, Edge) or not first.cast_on or first.number is None:
        return (), nodes
    if before.stitches and AT_ROWS.search(first.words):
        return (), nodes
    later = [nodes[at] for at in works[1:]]
    picked = first.words.lower().startswith(("pick", "take", "pu", "k")) and any(
        isinstance(one, Edge) and one.cast_on for one in later
    )
    if is_start(nodes) or picked:
        # Taken on in several lots: one row, whose total is held against all of them.
        return (), nodes
    return nodes[: works[0] + 1], nodes[works[0] + 1 :]


AT_ROWS = re.compile(r"\b(?:at|to) (?:the )?(?:beg|end|start)\w*", re.IGNORECASE)
"""Where stitches are added to those on hand."""


def begins(nodes: tuple[Node, ...]) -> bool:
    """Whether a row starts its own work: from a chain, a ring or a cast on, or where yarn is
    joined.
    """
    ends = ends_of(nodes)
    if ends.foundation is not None or any(isinstance(one, Chain | Start) for one in ends.lead):
        return True
    for one in nodes:
        if isinstance(one, Edge) and one.cast_on and AT_ROWS.search(one.words):
            return False
        if isinstance(one, Start) or (isinstance(one, Edge) and one.cast_on):
            return True
        if isinstance(one, Work | Group):
            return one.place.where in (Where.RING, Where.CHAIN)
        if isinstance(one, Repeat):
            return begins(one.body)
    return False


MAGIC = re.compile(r"\b(?:magic|mr|adjustable)\b", re.IGNORECASE)


def below_ring(nodes: tuple[Node, ...], below: Below) -> Below:
    """What lies below a row: nothing where it begins with a magic ring, "Round 1: MR 5 sc"."""
    first = next((one for one in nodes if not isinstance(one, Act)), None)
    ringed = isinstance(first, Start) and MAGIC.search(first.words) is not None
    return Below() if ringed and below.stitches else below


ADDED = re.compile(
    r"\b(?:at (?:the )?(?:beg|end|each|start)"
    r"|\d+ (?:more|extra|additional|new|further) (?:sts|stitches)|same needle"
    r"|to (?:complete|close|fill|offset|make up|replace) "
    r"|edges?|over|next row|in place of|(?:pick(?:ed)?|take|taking|k(?:nit)?) up"
    r"|instep|(?<!as )above|opening|join again|holders?|safety pin"
    r"|(?<!in )(?<!with )(?<!using )waste yarn|spare needle|in their place"
    r"|underarms?|towards? (?:the )?\w+"
    r"|(?:for|on|at) (?:the |each |a |both |one |other |either |first |second |right |left )*"
    r"(?:sleeves?|sides?|neck|armholes?|shoulders?)"
    r"|for (?:the )?(?:\w+ )?(?:overlap|facing|flap|tab|extension|steek|gap|opening|fly"
    r"|placket))\b",
    re.IGNORECASE,
)
"""New stitches that are added to those on hand."""
ANOTHER = re.compile(
    r"\b(?:commence|begin|start|make|knit|work) (?:another|a new|a second|the second|the other)"
    r" \w+",
    re.IGNORECASE,
)
"""A piece of its own that is begun."""


def begins_anew(
    nodes: tuple[Node, ...], words: str, before: Below, size: int, craft: Craft, stated: int | None
) -> bool:
    """Whether a cast on begins the work anew: neither its words nor the printed total (stated) say
    that its stitches are added to those on hand.
    """
    if ADDED.search(of_casting(words)) and not ANOTHER.search(words):
        return False
    if stated is None or not before.stitches:
        return True
    return started(nodes, before, size, craft, False)[1] != stated


def started(
    nodes: tuple[Node, ...], before: Below, size: int, craft: Craft, afresh: bool
) -> tuple[Below, int | None, tuple[Move, ...]]:
    """What lies below the first row, the stitches on hand (None for a chain or ring), and the
    moves.

    afresh: a cast on begins the work anew; otherwise it is added to what is on the needle.
    """
    made = sum(_stitches(one, size) for one in nodes)
    moves = tuple(_move(one, size) for one in nodes)
    chain = next((one for one in nodes if isinstance(one, Chain)), None)
    if made or craft is Craft.KNITTING:
        count = made if afresh else made + (before.stitches or 0)
        return plain(count), count, moves
    if any(isinstance(one, Start) and one.kind == "chain" for one in nodes):
        # A chain of a length: how many chains it has is not told.
        return Below(chained=True), None, moves
    long = chain is not None and chain.number.at(size) >= LONG_RING
    if chain is not None and (long or not _rings(nodes)):
        joined = any(isinstance(one, Act) and one.deed is Deed.JOIN for one in nodes)
        return foundation(chain.number.at(size), joined), None, moves
    return Below(ring=chain.number.at(size) if chain is not None else 0), None, moves


def _stitches(one: Node, size: int) -> int:
    if isinstance(one, Edge):
        return one.number.at(size) if one.number is not None else 0
    return one.number.at(size) if isinstance(one, Work) and one.number is not None else 0


def _rings(nodes: tuple[Node, ...]) -> bool:
    said = " ".join(one.words.lower() for one in nodes)
    return "ring" in said or "circle" in said or any(isinstance(one, Start) for one in nodes)


def _move(one: Node, size: int) -> Move:
    stitch = "ch" if isinstance(one, Chain) else ""
    return Move(
        MoveKind.START, one.words, one.span, makes=_stitches(one, size), stitch=stitch, times=1
    )


def start_row(
    label: str, is_round: bool, words: str, span: Span, count: int | None, moves: tuple[Move, ...]
) -> CountedRow:
    """The row of a start."""
    return CountedRow(
        label, None, is_round, words, span, None, count, None, Verdict.NO_TOTAL, moves
    )


AROUND = re.compile(r"\baround\b", re.IGNORECASE)
NOT_JOINED = re.compile(r"\b(?:do not|don't|without) join", re.IGNORECASE)


def closed_round(nodes: Sequence[Node]) -> bool:
    """Whether a row is joined to its own beginning, closed by a tall stitch, or goes on in a spiral
    from a ring, whatever its label calls it.
    """
    last = _last_of(nodes)
    if isinstance(last, Repeat) and AROUND.search(last.words) and ends_in_loop(nodes):
        return True
    works = (one for one in nodes if isinstance(one, Work | Group))
    ringed = any(one.place.where is Where.RING and one.place.text for one in works)
    spiral = ringed and any(isinstance(one, Act) and NOT_JOINED.search(one.words) for one in nodes)
    return spiral or (isinstance(last, Act) and last.deed is Deed.JOIN)


def ends_in_loop(nodes: Sequence[Node]) -> bool:
    """Whether a row ends with a chain and a tall stitch, half and half the last of its loops."""
    if isinstance(_last_of(nodes), Act):
        return False
    works = [one for one in nodes if isinstance(one, Chain | Work | Repeat)]
    if works and isinstance(works[-1], Repeat):
        works = [one for one in works[-1].ending if isinstance(one, Chain | Work | Repeat)]
    if len(works) < 2 or not isinstance(works[-2], Chain) or not isinstance(works[-1], Work):
        return False
    return works[-1].stitch.height > 2 and works[-2].number.values[0] > 0


def ends_at_half(nodes: Sequence[Node]) -> bool:
    """Whether a row that is turned ends at the top of a tall stitch that makes the second half of
    its last loop: "* ch 7, sc in next loop; repeat across, ch 3, tr in last loop, turn".
    """
    works = [one for one in nodes if isinstance(one, Chain | Work | Repeat)]
    if len(works) > 2 and isinstance(works[-1], Chain):
        # The chain that it is turned with.
        works.pop()
    again = next((one for one in works if isinstance(one, Repeat)), None)
    if again is not None and works[-1] is again:
        works = [one for one in again.ending if isinstance(one, Chain | Work)]
    whole = [one for one in again.body if isinstance(one, Chain)] if again is not None else []
    if len(works) < 2 or not whole:
        return False
    half, tall = works[-2:]
    if not isinstance(half, Chain) or not isinstance(tall, Work) or tall.stitch.height < 3:
        return False
    shorter = 2 * half.number.values[0] <= whole[-1].number.values[0]
    return shorter and tall.number in (None, ONE) and _is_low(again)


def _is_low(again: Repeat | None) -> bool:
    """Whether the loops of a repeat are held by low stitches."""
    works = [one for one in again.body if isinstance(one, Work)] if again is not None else []
    return bool(works) and all(one.stitch.height <= 1 for one in works)


def _last_of(nodes: Sequence[Node]) -> Node | None:
    quiet = (Deed.NOTE, Deed.COLOUR, Deed.FINISH)
    acts = [one for one in nodes if not (isinstance(one, Act) and one.deed in quiet)]
    return acts[-1] if acts else None
