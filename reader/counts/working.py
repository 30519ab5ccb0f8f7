"""A list of instructions -> the moves that work it; open repeats are solved from what the row below has left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.placing import chain_space, edge, place_all, shape_by_rule, skip_over, work_into
from reader.counts.tally import Tally
from reader.counts.worked import Move, MoveKind, Pass
from reader.pattern.tree import (
    Act,
    Chain,
    Deed,
    Edge,
    Group,
    LeaveRest,
    Node,
    Repeat,
    Shape,
    ShortTurn,
    Skip,
    Start,
    Unread,
    Until,
    Where,
    Work,
)

MOVES = 4_000
"""Moves opened in one row at most; longer rows keep their counts, the rest is told as one move."""
DEEDS = {
    Deed.JOIN: MoveKind.JOIN,
    Deed.TURN: MoveKind.TURN,
    Deed.COLOUR: MoveKind.COLOUR,
    Deed.MARKER: MoveKind.MARKER,
    Deed.FINISH: MoveKind.FINISH,
    Deed.START: MoveKind.START,
}
OPEN_PLACES = (Where.EACH, Where.REST, Where.TO_LAST)


def is_open(node: Node) -> bool:
    """Whether a node takes whatever is left."""
    if isinstance(node, Work | Group):
        spaces = node.place.noun == "sp" and not node.place.among
        return node.place.where in OPEN_PLACES and not spaces
    if isinstance(node, Repeat):
        return node.until in (Until.OPEN, Until.TO_LAST) or any(is_open(one) for one in node.body)
    return isinstance(node, Shape)


def work_all(nodes: Sequence[Node], tally: Tally, tail: int = 0) -> None:
    """Works nodes in order; tail: stitches that whatever follows this list will use."""
    for index, node in enumerate(nodes):
        after = tail
        if is_open(node):
            after += taken_by(nodes[index + 1 :], tally)
        work_one(node, tally, after)


def taken_by(nodes: Sequence[Node], tally: Tally) -> int:
    """Stitches that fixed nodes use; open ones count as none."""
    trial = tally.fresh()
    trial.takes = 1
    for node in nodes:
        if not is_open(node):
            work_one(node, trial, 0)
    return trial.takes - 1


def work_one(node: Node, tally: Tally, tail: int) -> None:
    """Works one node."""
    if isinstance(node, Work):
        work_into(node, tally, tail)
    elif isinstance(node, Skip):
        skip_over(node, tally)
    elif isinstance(node, Chain):
        chain_space(node, tally)
    elif isinstance(node, Group):
        work_group(node, tally, tail)
    elif isinstance(node, Repeat):
        work_repeat(node, tally, tail)
    elif isinstance(node, Shape):
        shape_by_rule(node, tally, tail)
    elif isinstance(node, Edge):
        edge(node, tally)
    else:
        other(node, tally)


def other(node: Node, tally: Tally) -> None:
    """Nodes that neither take nor make."""
    if isinstance(node, LeaveRest | ShortTurn):
        if isinstance(node, ShortTurn):
            tally.elastic = True
        else:
            tally.left = 0 if tally.left is not None else None
        kind = MoveKind.TURN if isinstance(node, ShortTurn) else MoveKind.NOTE
    elif isinstance(node, Unread):
        tally.unread = True
        kind = MoveKind.UNREAD
    elif isinstance(node, Start):
        kind = MoveKind.START
    else:
        kind = DEEDS.get(node.deed, MoveKind.NOTE) if isinstance(node, Act) else MoveKind.NOTE
        if isinstance(node, Act) and node.deed is Deed.OTHER_SIDE:
            tally.left = None
    tally.moves.append(Move(kind, node.words, node.span))


def work_group(group: Group, tally: Tally, tail: int) -> None:
    """Several instructions in one place, or in each of many."""
    trial = tally.fresh()
    trial.takes = 1
    work_all([one for one in group.body], trial)
    place = group.place
    used, spaces, times = 0, 0, 1
    if place.where in OPEN_PLACES:
        times, used, spaces = place_all(place, tally, tail)
    elif place.where is Where.RING or place.where is Where.SAME:
        used = (
            1
            if place.where is Where.SAME
            and tally.takes == 0
            and not tally.spaced
            and place.noun != "sp"
            else 0
        )
    else:
        times = (
            max(1, place.number.at(tally.size))
            if place.each or place.number.at(tally.size) > 1
            else 1
        )
        used, spaces = (0, times) if place.noun in ("sp", "corner") else (times, 0)
    tally.use(used)
    if spaces or place.noun == "sp":
        tally.use_spaces(spaces)
    tally.spaces += times * trial.spaces
    tally.makes += times * trial.makes
    tally.sections = times
    for kind, amount in trial.kinds.items():
        tally.kinds[kind] = tally.kinds.get(kind, 0) + times * amount
    repeated(trial.moves, times, group, tally, spread=used // max(1, times))


def repeated(
    moves: Sequence[Move],
    times: int,
    node: Group | Repeat,
    tally: Tally,
    spread: int | None = None,
    first: int = 1,
    of: int | None = None,
) -> None:
    """Adds the moves of a body `times` over, each pass numbered; spread: stitches each pass uses (for a group)."""
    for number in range(first, first + max(0, times)):
        if len(tally.moves) + len(moves) > MOVES:
            tally.moves.append(Move(MoveKind.NOTE, node.words, node.span))
            return
        for index, move in enumerate(moves):
            one = (
                (Pass(number, of or times, node.span), *move.passes)
                if (of or times) > 1
                else move.passes
            )
            takes = move.takes if spread is None else (spread if index == 0 else 0)
            into = (
                move.into
                if spread is None
                else (move.into or (getattr(node, "place", None) and node.place.text) or "")
            )
            tally.moves.append(replace(move, passes=one, takes=takes, into=into))


def body_of(node: Repeat, tally: Tally) -> Tally:
    """What one pass of a repeat does."""
    trial = tally.fresh()
    trial.takes = 1
    work_all(node.body, trial)
    trial.takes -= 1
    return trial


def work_repeat(node: Repeat, tally: Tally, tail: int) -> None:
    """A body over and over."""
    one = body_of(node, tally)
    spaces = 10**9 - one.spaces_left
    ending = taken_by(node.ending, tally) if node.ending else 0
    number = node.number.at(tally.size)
    if node.until is Until.TIMES:
        times = number
    elif node.until is Until.MORE:
        times = number + 1
    elif node.until is Until.AGAIN:
        times = number + 1 if tally.choice.again_more else number
    else:
        times = solved(node, one, spaces, tally, tail + ending)
    times = max(0, min(times, 20_000))
    cut = node.until in (Until.OPEN, Until.TO_LAST) and node.has_ending and tally.choice.cut_ending
    if cut:
        times = cut_times(node, one, tally, tail)
    add_passes(node, one, spaces, times, tally)
    if cut:
        finish_cut(node, one, tally, tail)
    elif node.ending and not (node.altered and times):
        work_all(node.ending, tally, tail)
    tally.unsure = tally.unsure or one.unsure
    tally.unread = tally.unread or one.unread
    tally.elastic = tally.elastic or one.elastic


def add_passes(node: Repeat, one: Tally, spaces: int, times: int, tally: Tally) -> None:
    """Counts a body `times` over and opens its moves."""
    tally.use(times * one.takes)
    if spaces:
        tally.use_spaces(times * spaces)
    tally.makes += times * one.makes
    tally.spaces += times * one.spaces
    tally.sections = times
    for kind, amount in one.kinds.items():
        tally.kinds[kind] = tally.kinds.get(kind, 0) + times * amount
    repeated(one.moves, times, node, tally)


def solved(node: Repeat, one: Tally, spaces: int, tally: Tally, tail: int) -> int:
    """How often an open repeat fits into what is left below."""
    keep = node.number.at(tally.size) if node.until is Until.TO_LAST else tail
    left = tally.left
    if one.takes > 0 and left is not None:
        room = left - keep
        if room % one.takes:
            tally.uneven = (room, one.takes)
        return max(0, room) // one.takes
    if spaces:
        free = tally.spaces_left if tally.spaces_left < 10**8 else tally.below.spaces
        return free // spaces
    if tally.below.sections and one.takes == 0:
        tally.unsure = True
        return tally.below.sections
    tally.unsure = True
    return 1


def cut_times(node: Repeat, one: Tally, tally: Tally, tail: int) -> int:
    """Full passes when the last one is cut off to end with the given instructions."""
    if tally.left is None or one.takes <= 0:
        return 0
    room = tally.left - taken_by(node.ending, tally) - tail
    best = prefix_that_fits(node, one, room, tally)
    return (room - best[1]) // one.takes if best else room // one.takes


def prefix_that_fits(node: Repeat, one: Tally, room: int, tally: Tally) -> tuple[int, int] | None:
    """The longest beginning of the body (its length and stitches) after which the ending closes the row."""
    for length in range(len(node.body) - 1, -1, -1):
        used = taken_by(node.body[:length], tally)
        if room - used >= 0 and (room - used) % one.takes == 0:
            return length, used
    return None


def finish_cut(node: Repeat, one: Tally, tally: Tally, tail: int) -> None:
    """Works the cut-off last pass and the ending."""
    if tally.left is not None and one.takes > 0:
        room = tally.left - taken_by(node.ending, tally) - tail
        best = prefix_that_fits(node, one, room, tally)
        if best:
            work_all(node.body[: best[0]], tally, tail)
            tally.uneven = None
    work_all(node.ending, tally, tail)
