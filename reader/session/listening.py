"""The phrases that make sense in a state: the recogniser's grammar."""

from __future__ import annotations

from collections.abc import Callable

from reader.commands.command import Ask
from reader.commands.numbers import say_number
from reader.commands.phrases import MAIN, MORE, phrases_of
from reader.plan import find
from reader.plan.gauge import wanted_gauge
from reader.session import between, checking, explaining, gauging, marking, noting, searching
from reader.session.state import Mode, State

MOST_NUMBERS = 220
"""Numbers in one grammar at most."""
ESCAPES = (Ask.NO, Ask.AGAIN, Ask.CARRY_ON, Ask.HUSH)
FIRST = (Ask.MATERIALS, Ask.PATTERN_NOTES)
"""What the greeting names can be said at once, until the first move."""
NEAR = 12
"""Stitches to each side of the expected count that can be said."""
FINE_GRAMS = 50
"""Up to here each gram can be said, beyond it every fifth where there are very many."""
USUAL = 40
"""The count in whose neighbourhood numbers can be said where none is expected."""


def phrases_for(state: State) -> tuple[str, ...]:
    """What can be said now; () when the program does not listen.

    With an attention word it stands before each phrase, except where a question is open.
    """
    if state.deaf or state.mode is Mode.FINISHED:
        return ()
    own, asks = OWN.get(state.mode), ASKS.get(state.mode, ESCAPES)
    if state.mode is Mode.STEP and not state.journal:
        asks = (*asks, *FIRST)
    if _offered(state):
        asks = (*asks, Ask.NEXT, Ask.ROW_DONE)
    answers = between.said_so(state) or (own(state) if own else ())
    phrases = (*answers, *phrases_of(asks))
    word = state.tastes.attention
    if not word or state.mode not in (Mode.STEP, Mode.PAUSED):
        return phrases
    return tuple(f"{word} {phrase}" for phrase in phrases)


def _offered(state: State) -> bool:
    """Whether the open question is an offer that nobody asked for; who works on has declined it."""
    pending = state.pending
    offer = pending is not None and pending.ask is Ask.I_HAVE and not pending.word
    return state.mode is Mode.CONFIRM and offer


def _rows(state: State) -> tuple[str, ...]:
    numbers = find.row_numbers(state.plan, state.place.part)
    return tuple(say_number(n) for n in numbers[:MOST_NUMBERS] if n < 1000)


def _rows_and_marks(state: State) -> tuple[str, ...]:
    part, here = state.place.part, state.place
    numbers = find.row_numbers(state.plan, part)
    behind = [n for n in numbers if (to := find.find_row(state.plan, part, n)) and to <= here]
    rows = tuple(say_number(n) for n in behind[-MOST_NUMBERS:] if n < 1000)
    return (*rows, *marking.behind(state))


def _parts(state: State) -> tuple[str, ...]:
    """The parts by name and by number, since a name may hold a word the ear has never learned."""
    names = tuple(one for one in find.part_phrases(state.plan) if one)
    numbers = range(1, min(len(state.plan.parts), MOST_NUMBERS) + 1)
    return (*names, *(say_number(n) for n in numbers if n < 1000))


def _counts(state: State) -> tuple[str, ...]:
    counts = checking.expected_counts(state)
    return tuple(say_number(n) for n in counts) or _near(USUAL)


def _counts_on_the_way(state: State) -> tuple[str, ...]:
    return _near(searching.asked_count(state) or USUAL)


def _gauges(state: State) -> tuple[str, ...]:
    wanted = wanted_gauge(state.plan)
    return _near(round(wanted.stitches) if wanted else USUAL)


def _grams(state: State) -> tuple[str, ...]:
    most = min(round(gauging.grams_listed(state) or USUAL), 999)
    each = 1 if most <= MOST_NUMBERS else 5
    fine = range(min(most, FINE_GRAMS) + 1)
    return tuple(say_number(n) for n in (*fine, *range(FINE_GRAMS + each, most + 1, each)))


def _near(middle: int) -> tuple[str, ...]:
    return tuple(say_number(n) for n in range(max(0, middle - NEAR), min(middle + NEAR, 999) + 1))


def _tally(state: State) -> tuple[str, ...]:
    each = state.tally_by
    near = range(max(0, state.tally - each), state.tally + 3 * each + 1)
    return tuple(say_number(n) for n in near if n < 1000)


OWN: dict[Mode, Callable[[State], tuple[str, ...]]] = {
    Mode.ROW_NUMBER: _rows,
    Mode.RIP_NUMBER: _rows_and_marks,
    Mode.HAVE_NUMBER: _counts,
    Mode.FIND_NUMBER: _counts_on_the_way,
    Mode.GAUGE_NUMBER: _gauges,
    Mode.YARN_NUMBER: _grams,
    Mode.COUNTING: _tally,
    Mode.PART_NAME: _parts,
    Mode.MARK_NAME: marking.free_names,
    Mode.MARK_GO: marking.names,
    Mode.STITCH_NAME: explaining.names,
    Mode.NOTE: lambda state: noting.SPOKEN,
}
"""What can be said in a mode beside requests: numbers that exist, names."""

ASKS: dict[Mode, tuple[Ask, ...]] = {
    Mode.STEP: MAIN,
    Mode.MORE: (*MORE, Ask.NO, Ask.HUSH),
    Mode.PAUSED: (Ask.CARRY_ON, Ask.WHERE, Ask.FINISH_TODAY),
    Mode.CONFIRM: (Ask.YES, Ask.NO, Ask.AGAIN, Ask.HUSH),
    Mode.GATHER: (Ask.YES, Ask.NO, Ask.AGAIN, Ask.EXPLAIN, Ask.CARRY_ON, Ask.HUSH),
    Mode.MARK_NAME: (Ask.NEXT, *ESCAPES),
    Mode.NOTE: (Ask.NEXT, *ESCAPES),
    Mode.COUNTING: (
        Ask.NEXT,
        Ask.BY_ONE,
        Ask.BY_FIVE,
        Ask.BY_TEN,
        Ask.UNDO,
        Ask.NO,
        Ask.HOW_MANY,
        Ask.HUSH,
    ),
}
"""The requests that can be said in a mode; where none stand here, those that leave a question."""
