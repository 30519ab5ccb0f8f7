"""Moves of a row in, the cuts between its smallest steps and its phrases out."""

from __future__ import annotations

import re
from dataclasses import dataclass
from itertools import groupby

from reader.counts.worked import Move, MoveKind, Pass

MOST_WORDS = 9
"""Written words in a step: about thirteen when spoken, which take about four and a half seconds at
170 a minute.
"""

MOST_MOVES = 3
"""Instructions in a step outside a repeat; one pass of a repeat may hold one more. Our own
judgement.
"""

LONG_RUN = 10
"""Stitches after which a step ends, because the maker is busy for a while. Our own judgement."""

PHRASE_WORDS = 20
"""Written words in a phrase: two or three steps. Our own judgement."""

TURNING_WORDS = 2
"""Written words of a chain that begins a row and is said with what follows: "1 ch"."""

SMALL = {MoveKind.TURN, MoveKind.JOIN, MoveKind.MARKER, MoveKind.SLIP}
"""Moves that end a row or round and need no step of their own."""


@dataclass(frozen=True, slots=True)
class Cut:
    """A smallest step: moves [start, end) of its row, and the passes it stands in, outermost
    first.
    """

    start: int
    end: int
    passes: tuple[Pass, ...] = ()
    words: int = 0


def weight(move: Move) -> int:
    """Written words of a move, at least one."""
    return max(1, len((move.said or move.words).split()))


def cuts(moves: tuple[Move, ...]) -> tuple[Cut, ...]:
    """The smallest steps: one instruction, a few very short ones, or one short pass of a repeat."""
    found: list[Cut] = []
    at = 0
    stretches = [tuple(same) for _, same in groupby(moves, key=_pass_key)]
    index = 0
    while index < len(stretches):
        stretch = stretches[index]
        run = _same_single(stretches, index)
        if run > 1:
            found.append(Cut(at, at + run, stretch[0].passes[:-1], weight(stretch[0])))
            at, index = at + run, index + run
            continue
        found += _cut_stretch(stretch, at)
        at, index = at + len(stretch), index + 1
    return tuple(_tails_joined(found, moves))


def phrase_starts(found: tuple[Cut, ...]) -> tuple[int, ...]:
    """Indexes of the steps that begin a phrase: a whole repeat, one pass of a long one, or a few
    steps.
    """
    starts: list[int] = []
    key: tuple[int, ...] | None = ()
    words = 0
    long = _long_repeats(found)
    for index, cut in enumerate(found):
        here = _phrase_key(cut, long)
        full = here is None and words + cut.words > PHRASE_WORDS
        if index == 0 or here != key or full:
            starts.append(index)
            words = 0
        words += cut.words
        key = here
    return tuple(starts)


def _pass_key(move: Move) -> tuple[tuple[int, int, int], ...]:
    return tuple((p.number, p.repeat.start, p.repeat.end) for p in move.passes)


def _same_single(stretches: list[tuple[Move, ...]], index: int) -> int:
    """How many passes from here on are the same one short move, and so are said as "increase, six
    times".
    """
    first = stretches[index]
    if len(first) != 1 or not first[0].passes or weight(first[0]) > MOST_WORDS // 2:
        return 1
    move = first[0]
    outer = _pass_key(move)[:-1]
    run = 1
    for at in range(index + 1, len(stretches)):
        later = stretches[at]
        if len(later) != 1 or later[0].words != move.words or later[0].times != move.times:
            break
        key = _pass_key(later[0])
        same_repeat = later[0].passes and later[0].passes[-1].repeat == move.passes[-1].repeat
        if key[:-1] != outer or not same_repeat or key[-1][0] != move.passes[-1].number + run:
            break
        run += 1
    return run


def _cut_stretch(stretch: tuple[Move, ...], at: int) -> list[Cut]:
    passes = stretch[0].passes
    words = sum(weight(move) for move in stretch)
    if passes and len(stretch) <= MOST_MOVES + 1 and words <= MOST_WORDS + 2:
        return [Cut(at, at + len(stretch), passes, words)]
    found: list[Cut] = []
    start, words, closed = 0, 0, False
    for index, move in enumerate(stretch):
        here = weight(move)
        led = index == 1 and stretch[0].kind is MoveKind.CHAIN and words <= TURNING_WORDS
        small = (led or move.kind in SMALL) and words + here <= MOST_WORDS + 2
        full = closed or index - start >= MOST_MOVES or words + here > MOST_WORDS - 1
        if index > start and full and not small and not _open(stretch[index - 1]):
            found.append(Cut(at + start, at + index, passes, words))
            start, words, closed = index, 0, False
        words += here
        closed = closed or move.times >= LONG_RUN or move.kind is MoveKind.UNREAD
        if _stands_alone(stretch, index + 1):
            closed = True
    found.append(Cut(at + start, at + len(stretch), passes, words))
    return found


_OPEN = re.compile(r"\b(?:a|an|the|of|into|to|from|with|on)$", re.IGNORECASE)


def _open(move: Move) -> bool:
    """Whether the words of a move are only complete with the next ones."""
    return bool(_OPEN.search((move.said or move.words).strip()))


def _stands_alone(stretch: tuple[Move, ...], index: int) -> bool:
    """Whether the next move begins a step of its own: what cannot be read, finishing, a colour
    change.
    """
    alone = (MoveKind.UNREAD, MoveKind.FINISH, MoveKind.NOTE, MoveKind.COLOUR)
    if index >= len(stretch) or stretch[index].kind not in alone:
        return False
    # "Fasten off, leaving a long tail" is one thing to do.
    goes_on = stretch[index].words[:1].islower() and stretch[index].kind is MoveKind.NOTE
    return not (goes_on and stretch[index - 1].kind is MoveKind.FINISH)


def _tails_joined(found: list[Cut], moves: tuple[Move, ...]) -> list[Cut]:
    """A last step of only "turn" or "join" goes with the step before it, unless that is in a
    repeat.
    """
    if len(found) < 2:
        return found
    last, before = found[-1], found[-2]
    only_small = all(move.kind in SMALL for move in moves[last.start : last.end])
    short = before.words + last.words <= MOST_WORDS + 2
    if not only_small or not short or before.passes or last.passes:
        return found
    joined = Cut(before.start, last.end, before.passes, before.words + last.words)
    return [*found[:-2], joined]


def _long_repeats(found: tuple[Cut, ...]) -> set[tuple[int, int]]:
    """Outermost repeats whose single pass is long enough to be a phrase of its own."""
    words: dict[tuple[int, int, int], int] = {}
    for cut in found:
        if cut.passes:
            first = cut.passes[0]
            key = (first.repeat.start, first.repeat.end, first.number)
            words[key] = words.get(key, 0) + cut.words
    return {key[:2] for key, count in words.items() if count > MOST_WORDS + 2}


def _phrase_key(cut: Cut, long: set[tuple[int, int]]) -> tuple[int, ...] | None:
    if not cut.passes:
        return None
    first = cut.passes[0]
    where = (first.repeat.start, first.repeat.end)
    return (*where, first.number) if where in long else where
