"""Requests with their number in one breath: "go to row five", "I have twenty-three"."""

from __future__ import annotations

from reader.commands.numbers import say_number
from reader.plan import find
from reader.session.checking import expected_counts
from reader.session.state import Mode, State

MOST_ROWS = 40
"""Rows that can be named in one breath, those nearest to the work; the rest take two turns. More
make the grammar larger than it was measured with. Our own choice."""
MOST_BEHIND = 20
"""Rows to rip back to in one breath."""


def breaths_for(state: State) -> tuple[str, ...]:
    """What can be said in one breath while a step waits, beside the phrases; () elsewhere.

    With an attention word it stands before each.
    """
    if state.mode is not Mode.STEP or state.deaf:
        return ()
    word = f"{state.tastes.attention} " if state.tastes.attention else ""
    return tuple(f"{word}{phrase}" for phrase in (*_rows(state), *_counts(state)))


def _rows(state: State) -> tuple[str, ...]:
    part, here = state.place.part, state.place
    row = find.row_at(state.plan, here)
    noun = "round" if row.is_round else "row"
    numbers = [n for n in find.row_numbers(state.plan, part) if 0 < n < 1000]
    now = row.number or 0
    nearest = sorted(sorted(numbers, key=lambda n: abs(n - now))[:MOST_ROWS])
    behind = [n for n in nearest if (to := find.find_row(state.plan, part, n)) and to <= here]
    return (
        *(f"go to {noun} {say_number(n)}" for n in nearest),
        *(f"rip back to {noun} {say_number(n)}" for n in behind[-MOST_BEHIND:]),
    )


def _counts(state: State) -> tuple[str, ...]:
    return tuple(f"i have {say_number(n)}" for n in expected_counts(state))
