"""A row's moves in, its smallest steps with the running counts out."""

from __future__ import annotations

import re

from reader.counts.worked import Move, MoveKind, Pass
from reader.plan.groups import Cut
from reader.plan.place import Place
from reader.plan.step import Step

COUNTED = (MoveKind.WORK, MoveKind.CHAIN)
"""The moves that change the count of the row being made."""
FAR_CHAIN = re.compile(
    r"\b(?:3rd|4th|5th|6th|third|fourth|fifth|sixth)\s+(?:ch(?:ain)?|st(?:itch)?)\s+from\b",
    re.IGNORECASE,
)
"""Working into a chain so far from the hook leaves some that stand for a stitch."""


def made_by(moves: tuple[Move, ...], count: int | None) -> tuple[tuple[int, ...], int | None]:
    """What each move adds to the row, and the total these add up to, None where that is not the
    row's count.

    A cast on is the row itself where nothing else makes the count; a foundation chain that is
    worked into in the
    same row is not. Stitches that could not be read leave the total standing, because it is
    still the aim.
    """
    worked = tuple(move.makes if move.kind in COUNTED else 0 for move in moves)
    if count is None:
        return worked, None
    with_start = tuple(m.makes if m.kind in (*COUNTED, MoveKind.START) else 0 for m in moves)
    for adds in (worked, with_start):
        if sum(adds) == count:
            return adds, count
    for solved in (_chain_counted(moves, worked, count), _one_unknown(moves, worked, count)):
        if solved is not None:
            return solved, count
    unread = any(move.kind is MoveKind.UNREAD for move in moves)
    return worked, count if unread and sum(worked) < count else None


def _chain_counted(
    moves: tuple[Move, ...], worked: tuple[int, ...], count: int
) -> tuple[int, ...] | None:
    """What each move adds where one stitch is missing and a turning chain can be it: the chain that
    the row begins with, or those left by working into the fourth chain from the hook.
    """
    if count - sum(worked) != 1:
        return None
    first = next((n for n, move in enumerate(moves) if move.kind is MoveKind.WORK), 0)
    turning = [
        n
        for n, move in enumerate(moves[:first])
        if move.kind is MoveKind.CHAIN and move.times > 1 and not move.makes
    ]
    far = bool(moves) and FAR_CHAIN.search(moves[first].into)
    if not far and not turning:
        return None
    at = first if far else turning[-1]
    return (*worked[:at], worked[at] + 1, *worked[at + 1 :])


def _one_unknown(
    moves: tuple[Move, ...], worked: tuple[int, ...], count: int
) -> tuple[int, ...] | None:
    """What each move adds where one open run alone has no number: it makes all that is missing."""
    open_runs = [
        at
        for at, move in enumerate(moves)
        if move.kind is MoveKind.WORK and not move.makes and not move.takes and not move.passes
    ]
    missing = count - sum(worked)
    if len(open_runs) != 1 or missing <= 0 or any(m.kind is MoveKind.UNREAD for m in moves):
        return None
    at = open_runs[0]
    return (*worked[:at], missing, *worked[at + 1 :])


def steps(
    moves: tuple[Move, ...], cuts: tuple[Cut, ...], where: Place, count: int | None
) -> tuple[Step, ...]:
    """The smallest steps of a row at place `where` (its first step); count: stitches after the
    row.
    """
    adds, total = made_by(moves, count)
    found: list[Step] = []
    done = 0
    for index, cut in enumerate(cuts):
        held = moves[cut.start : cut.end]
        after = done + sum(adds[cut.start : cut.end])
        found.append(
            Step(
                place=Place(where.part, where.row, index),
                covers=1,
                moves=held,
                passes=cut.passes,
                written=written(held),
                done=done,
                done_after=after,
                total=total,
                takes=sum(move.takes for move in held),
                starts_row=index == 0,
                ends_row=index == len(cuts) - 1,
                unread=any(move.kind is MoveKind.UNREAD for move in held),
            )
        )
        done = after
    return tuple(found)


def whole_step(where: Place, words: str, count: int | None, unread: bool = False) -> Step:
    """One step for a row that is words only: a remark, finishing, or a row that could not be taken
    apart.
    """
    return Step(
        where,
        1,
        (),
        (),
        words,
        0,
        count or 0,
        count,
        0,
        starts_row=True,
        ends_row=True,
        unread=unread,
    )


def written(moves: tuple[Move, ...]) -> str:
    """The pattern's own words for these moves; the same words again and again stand once."""
    said: list[str] = []
    for move in moves:
        words = " ".join(move.words.split()).strip(" ,;")
        if words and (not said or said[-1] != words):
            said.append(words)
    return ", ".join(said)


def joined(held: tuple[Step, ...]) -> Step:
    """Several following steps as one, for reading more at a time; the place is that of the
    first.
    """
    if len(held) == 1:
        return held[0]
    first, last = held[0], held[-1]
    moves = tuple(move for step in held for move in step.moves)
    words = written(moves) or ". ".join(step.written for step in held)
    return Step(
        place=first.place,
        covers=len(held),
        moves=moves,
        passes=_shared(held),
        written=words,
        done=first.done,
        done_after=last.done_after,
        total=first.total,
        takes=sum(step.takes for step in held),
        starts_row=first.starts_row,
        ends_row=last.ends_row,
        unread=any(step.unread for step in held),
    )


def _shared(held: tuple[Step, ...]) -> tuple[Pass, ...]:
    """The passes all the steps stand in, outermost first."""
    shared = held[0].passes
    for step in held[1:]:
        same = 0
        while same < min(len(shared), len(step.passes)) and shared[same] == step.passes[same]:
            same += 1
        shared = shared[:same]
    return shared
