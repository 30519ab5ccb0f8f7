"""Checking a count: the maker's stitches beside those there should be, in the row that is meant."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.commands.numbers import sounds_like
from reader.plan import find
from reader.plan.mismatch import compare
from reader.plan.pace import row_left_s
from reader.plan.place import Place
from reader.plan.step import RowKind
from reader.session import searching
from reader.session.effects import Saying
from reader.session.in_groups import meant_in_groups
from reader.session.speaking import Out, say
from reader.session.state import Mode, State

WORKING = (Ask.NEXT, Ask.ROW_DONE, Ask.BACK, Ask.ROW_START, Ask.RIP_BACK, Ask.GO_TO_MARK)
"""Moves after which the stitches of the row below are on the hook; after a jump to a row the row
itself is meant."""
NEAR = 12
"""Stitches to each side of an expected count that can be said."""
JUST_BEGUN = 0.5
"""Share of a row's usual time before which its count cannot be meant yet: who counts then counts
the row below. Our own judgement."""


def begin(state: State, command: Command) -> Out:
    """Asks for the number of stitches, or compares it when it came along."""
    if command.number is not None:
        return told(state, command.number)
    if not expected_counts(state):
        return say(state, Saying("count unknown", state.place))
    return say(replace(state, mode=Mode.HAVE_NUMBER), Saying("how many have you", state.place))


def told(state: State, number: int) -> Out:
    """The number compared; one that the ear takes for another that could be meant is asked back."""
    alike = sounds_like(number) if state.by_voice else None
    if alike in expected_counts(state) and number != find.row_at(state.plan, state.place).count:
        state = replace(state, mode=Mode.CONFIRM, pending=Command(Ask.I_HAVE, number, "sure"))
        return say(state, Saying("confirm count", state.place, number))
    return compared(state, number)


def compared(state: State, number: int) -> Out:
    """What the count says of the row that is meant, and help to find a slip."""
    state = replace(state, mode=Mode.STEP)
    if _so_far(state, number):
        return say(state, Saying("right so far", state.place, number))
    if _before(state, number):
        return say(state, Saying("right before", state.place, number))
    in_groups = meant_in_groups(state, number, below(state))
    if in_groups is not None:
        return say(state, Saying("in groups", in_groups, number))
    meant = row_meant(state, number)
    found = compare(state.plan, meant, number)
    if found is None:
        return say(state, Saying("count unknown", state.place, number))
    state = replace(state, have_at=meant)
    told_of = Saying("compared", meant, number)
    if not searching.can_search(found):
        return say(state, told_of)
    state = replace(state, mode=Mode.CONFIRM, pending=Command(Ask.I_HAVE, number))
    return say(state, told_of, Saying("find offered"))


def row_meant(state: State, number: int) -> Place:
    """The present row; the one below it where that was just completed, or come back to, and this is
    hardly begun, or where the number is far nearer to its count.
    """
    under = below(state)
    row = find.row_at(state.plan, state.place)
    if under is None or number == row.count:
        return state.place
    if row.kind is not RowKind.WORK or row.count is None:
        return under
    stitches_below = find.row_at(state.plan, under).count or 0
    if 2 * abs(number - stitches_below) < abs(number - row.count):
        return under
    needed = row_left_s(state.pace, state.plan, state.place)
    begun = state.now_s - state.step_since_s >= JUST_BEGUN * needed
    return state.place if begun else under


def below(state: State) -> Place | None:
    """The worked row below, while what comes after it waits at its first step and the last move led
    there from the work itself; None after a jump.
    """
    last = state.journal[-1] if state.journal else None
    if state.place.step or last is None or last.after != state.place or last.ask not in WORKING:
        return None
    rows = state.plan.parts[state.place.part].rows[: state.place.row]
    at = next((n for n in reversed(range(len(rows))) if rows[n].kind is RowKind.WORK), None)
    return Place(state.place.part, at, 0) if at is not None and rows[at].count else None


def expected_counts(state: State) -> tuple[int, ...]:
    """The counts that can be said: near the row's, near what there should be before it while it
    waits at its first step, and near what there should be before and after the present step.
    """
    row, under = find.row_at(state.plan, state.place), below(state)
    before = None if state.place.step else row.count_before
    counts = (row.count, before, find.row_at(state.plan, under).count if under else None)
    made = (row.groups_made, find.row_at(state.plan, under).groups_made if under else None)
    found: set[int] = set()
    for count in (*counts, *made):
        found |= set(range(count - NEAR, count + NEAR + 1)) if count else set()
    if row.kind is RowKind.WORK and state.place.step:
        step = find.step_at(state.plan, state.place, state.tastes.grain)
        found |= set(range(step.done - 2, step.done_after + 3))
    return tuple(sorted(n for n in found if 0 < n < 1000))


def _before(state: State, number: int) -> bool:
    """Whether so many stitches are right before the row that waits at its first step."""
    row = find.row_at(state.plan, state.place)
    return not state.place.step and number == row.count_before and number != row.count


def _so_far(state: State, number: int) -> bool:
    """Whether so many stitches are right in mid-row, before or after the present step."""
    row = find.row_at(state.plan, state.place)
    step = find.step_at(state.plan, state.place, state.tastes.grain)
    counted = row.kind is RowKind.WORK and row.count is not None and number != row.count
    return counted and state.place.step > 0 and number in (step.done, step.done_after)
