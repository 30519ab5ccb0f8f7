"""One row and what lies below -> the reading that closes it best: its count, verdict and moves."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from reader.counts.tally import Below, Choice, Tally
from reader.counts.worked import Move, MoveKind
from reader.counts.working import work_all
from reader.pattern.tree import (
    Act,
    Chain,
    Deed,
    Edge,
    Group,
    Node,
    Repeat,
    Shape,
    Skip,
    Start,
    Until,
    Where,
    Work,
)


@dataclass(frozen=True, slots=True)
class Solved:
    """A row as worked under one reading. count None: cannot be told. fits: None where the row below is unknown."""

    count: int | None
    fits: bool | None
    left: int
    short: int
    uneven: tuple[int, int] | None
    choice: Choice
    tally: Tally
    chain_made: int = 0
    next_chain: int = 0
    chained: bool = False
    kinds: dict[str, int] = field(default_factory=dict)


def split_ends(nodes: Sequence[Node]) -> tuple[int, tuple[Node, ...], int, int, tuple[Node, ...]]:
    """A row without its turning chains: (first chain, body, chain for the next row, foundation chain, start acts)."""
    body = list(nodes)
    lead: list[Node] = []
    foundation = 0
    while body and isinstance(body[0], Act | Start):
        lead.append(body.pop(0))
    first = 0
    if body and isinstance(body[0], Chain):
        rest = [one for one in body[1:] if not isinstance(one, Act) or one.deed in (Deed.JOIN,)]
        nxt = rest[0] if rest else None
        if isinstance(nxt, Act) and "ring" in nxt.into + nxt.words.lower():
            lead += [body.pop(0)]
            while body and not isinstance(body[0], Chain | Work | Repeat | Group):
                lead.append(body.pop(0))
            if body and isinstance(body[0], Chain):
                first = 1
        elif _into_chain(nxt):
            foundation = 1
        else:
            first = 1
    last = 0
    tail = [
        one for one in body if not (isinstance(one, Act) and one.deed in (Deed.NOTE, Deed.COLOUR))
    ]
    if (
        len(tail) > 1
        and isinstance(tail[-1], Act)
        and tail[-1].deed is Deed.TURN
        and isinstance(tail[-2], Chain)
    ) or (
        len(tail) > 1
        and isinstance(tail[-1], Chain)
        and any(isinstance(one, Act) and one.deed is Deed.TURN for one in tail[-2:-1])
    ):
        last = 1
    return first, tuple(body), last, foundation, tuple(lead)


def _into_chain(node: Node | None) -> bool:
    if isinstance(node, Work):
        return (
            node.place.where is Where.CHAIN
            or (node.place.noun in ("tch", "ch") and node.place.nth > 1)
            or (node.place.noun == "ch" and node.place.where in (Where.EACH, Where.NEXT))
        )
    if isinstance(node, Group | Skip):
        return (
            node.place.where is Where.CHAIN
            or (isinstance(node, Skip) and node.place.noun in ("ch",))
            or (node.place.where is Where.CHAIN)
        )
    if isinstance(node, Repeat) and node.body:
        return _into_chain(node.body[0])
    return False


def choices(nodes: Sequence[Node], chains: Sequence[bool | None]) -> Iterator[Choice]:
    """The readings worth trying for a row."""
    again = pair = ending = False
    stack = list(nodes)
    while stack:
        one = stack.pop()
        if isinstance(one, Repeat):
            again = again or one.until is Until.AGAIN
            ending = ending or (one.has_ending and one.until in (Until.OPEN, Until.TO_LAST))
            stack += one.body
            stack += one.ending
        elif isinstance(one, Work):
            pair = pair or (
                one.number is not None
                and one.place.where in (Where.NEXT, Where.FIRST, Where.LAST)
                and one.place.number.values[0] > 1
                and one.number.values == one.place.number.values
            )
            ending = ending or (
                one.stitch.takes == 2 and one.place.where in (Where.REST, Where.EACH)
            )
        elif isinstance(one, Group):
            stack += one.body
    for chain in chains:
        for more in (True, False) if again else (True,):
            for each in (True, False) if pair else (True,):
                for cut in (False, True) if ending else (False,):
                    yield Choice(chain, more, each, cut)


def chain_node(nodes: Sequence[Node]) -> Chain | None:
    """The chain that begins a row."""
    return next((one for one in nodes if isinstance(one, Chain)), None)


def work_row(
    nodes: Sequence[Node], below: Below, choice: Choice, size: int, carried: int
) -> Solved:
    """Works a row once under one reading; carried: chains made at the end of the row before."""
    first, body, last, foundation, lead = split_ends(nodes)
    tally = Tally(size, below, choice, below.stitches, below.spaces)
    for one in lead:
        tally.moves.append(Move(_lead_kind(one), one.words, one.span))
    rest = list(body)
    made_chain, extra, chained = 0, 0, False
    if foundation:
        chain = rest.pop(0)
        tally.below = Below(None, 0, {}, chain.number.at(size))
        tally.left = chain.number.at(size)
        tally.spaces_left = 0
        tally.moves.append(
            Move(MoveKind.START, chain.words, chain.span, stitch="ch", times=chain.number.at(size))
        )
        ringed = False
    else:
        ringed = _ring_below(body)
        if ringed:
            tally.left = None
    height = carried
    if first and not foundation:
        chain = rest.pop(0)
        height = chain.number.at(size)
        tally.moves.append(Move(MoveKind.CHAIN, chain.words, chain.span, stitch="ch", times=height))
    if choice.chain and (height or foundation):
        chained = True
        made_chain = 1
        nxt = next((one for one in rest if isinstance(one, Work | Group | Skip | Repeat)), None)
        extra = _chain_space(nodes, height)
        tally.spaces += extra
        if not foundation and not ringed:
            _chain_takes(nxt, tally)
    next_chain = 0
    if last:
        index = (
            max(i for i, one in enumerate(rest) if isinstance(one, Chain))
            if any(isinstance(one, Chain) for one in rest)
            else -1
        )
        if index >= 0:
            end = rest.pop(index)
            next_chain = end.number.at(size)
    rest = _whole_row(rest, tally)
    work_all(rest, tally)
    return _close(tally, choice, made_chain, next_chain, chained, ringed, nodes)


def _lead_kind(node: Node) -> MoveKind:
    if isinstance(node, Chain | Start):
        return MoveKind.START
    if isinstance(node, Act) and node.deed is Deed.JOIN:
        return MoveKind.JOIN
    if isinstance(node, Act) and node.deed is Deed.COLOUR:
        return MoveKind.COLOUR
    return MoveKind.NOTE


def _ring_below(body: Sequence[Node]) -> bool:
    works = [one for one in body if isinstance(one, Work | Group | Repeat)]
    if not works:
        return False
    one = works[0]
    while isinstance(one, Repeat) and one.body:
        inner = [x for x in one.body if isinstance(x, Work | Group | Repeat)]
        if not inner:
            return False
        one = inner[0]
    return isinstance(one, Work | Group) and one.place.where is Where.RING


def _chain_space(nodes: Sequence[Node], height: int) -> int:
    chain = chain_node(nodes)
    if chain is None:
        return 0
    if chain.counts_sp:
        return 1
    return 1 if height >= 5 else 0


def _chain_takes(nxt: Node | None, tally: Tally) -> None:
    """The counted chain stands on the first stitch, or in the first space."""
    if (
        isinstance(nxt, Work | Group)
        and nxt.place.where in (Where.SAME, Where.ONE_PLACE)
        and nxt.place.noun == "sp"
    ):
        tally.use_spaces(1)
    else:
        tally.use(1)


def _whole_row(rest: list[Node], tally: Tally) -> list[Node]:
    """ "Purl." alone: the one stitch goes into all."""
    works = [one for one in rest if not isinstance(one, Act)]
    if len(works) == 1 and isinstance(works[0], Work):
        one = works[0]
        if one.place.where is Where.PLAIN and one.number is None and tally.left is not None:
            from dataclasses import replace

            whole = replace(one, place=replace(one.place, where=Where.REST))
            return [whole if x is one else x for x in rest]
    return rest


def _close(
    tally: Tally,
    choice: Choice,
    made_chain: int,
    next_chain: int,
    chained: bool,
    ringed: bool,
    nodes: Sequence[Node],
) -> Solved:
    left = tally.left or 0
    total = tally.makes + made_chain
    if tally.elastic and tally.left is not None:
        total += left
        left = 0
    elif any(isinstance(one, Shape) for one in nodes):
        left = 0 if tally.left is None else left
    known = tally.left is not None
    count: int | None = total
    nothing = not tally.makes and not made_chain
    if tally.unsure or (
        nothing and not tally.takes and not any(isinstance(one, Edge) for one in nodes)
    ):
        count = None
    fits: bool | None = None
    if known and not tally.unread and not tally.unsure:
        fits = left == 0 and tally.short == 0 and tally.uneven is None
    kinds = dict(tally.kinds)
    if made_chain and kinds:
        top = max(kinds, key=lambda kind: kinds[kind])
        kinds[top] += 1
    return Solved(
        count,
        fits,
        left,
        tally.short,
        tally.uneven,
        choice,
        tally,
        made_chain,
        next_chain,
        chained,
        kinds,
    )


def best(
    nodes: Sequence[Node],
    below: Below,
    chains: Sequence[bool | None],
    size: int,
    carried: int,
    stated: int | None,
    kind: str = "",
) -> Solved:
    """The reading that closes the row and agrees with the printed total, the usual one where several do."""
    found: Solved | None = None
    mark = (-1.0,)
    for number, choice in enumerate(choices(nodes, chains)):
        one = work_row(nodes, below, choice, size, carried)
        agrees = stated is not None and one.count is not None and stated in values(one, kind)
        score = (
            3.0 * agrees
            + 2.0 * (one.fits is True)
            - 0.2 * choice.oddity()
            - 0.1 * (number > 0)
            - 0.001 * (one.left + one.short),
        )
        if found is None or score > mark:
            found, mark = one, score
    assert found is not None
    return found


def values(one: Solved, kind: str) -> set[int]:
    """The numbers a printed total may stand for."""
    if one.count is None:
        return set()
    out = {one.count, one.count - one.chain_made} if one.chained else {one.count}
    if kind:
        named = {n for name, n in one.kinds.items() if _same_kind(name, kind)}
        out |= named
        if kind in ("sps", "spaces", "loops", "sp", "loop", "lps"):
            out.add(one.tally.spaces)
    if one.tally.spaces:
        out |= {one.tally.spaces, one.count + one.tally.spaces}
    return out


def _same_kind(name: str, kind: str) -> bool:
    a, b = (
        name.replace(" ", "").replace("-", ""),
        kind.replace(" ", "").replace("-", "").rstrip("s"),
    )
    return a == b or a == kind.replace(" ", "") or (len(b) > 2 and a.startswith(b))
