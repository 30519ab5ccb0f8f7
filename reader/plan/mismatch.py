"""A row and the stitches the maker counts in it in, where the slip most likely is and what to do
out.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from reader.counts.worked import Move
from reader.plan.place import Place
from reader.plan.spacing import even_groups
from reader.plan.step import Plan, PlanRow, RowKind, Step
from reader.plan.steps import made_by

SMALL_SHARE = 0.05
"""Share of the row up to which a difference can be mended in the next row without showing. Common
practice, no source."""

LOOK_AHEAD = 6
"""Later rows whose adjusted counts are given."""


class Likely(Enum):
    """The likeliest slip behind a difference."""

    RIGHT = "right"
    WHOLE_PASS = "whole pass"
    INCREASE_MISSED = "increase missed"
    INCREASE_EXTRA = "increase extra"
    DECREASE_MISSED = "decrease missed"
    DECREASE_EXTRA = "decrease extra"
    STITCH = "stitch"
    ROW_BELOW = "row below"


@dataclass(frozen=True, slots=True)
class Stop:
    """A spot where the stitches from the row's start can be counted: after that pass there should
    be `count`.
    """

    number: int
    of: int
    count: int


@dataclass(frozen=True, slots=True)
class Mismatch:
    """What a count says about a row.

    expected, have: stitches there should be and are. likely: the likeliest slip, and `slips`
    how many of
    it. each: stitches that one pass of the main repeat makes, 0 without one. stops: where to
    count, in
    order. mend: group sizes for making good in the next row, () where that is not wise. gain:
    whether
    the mend adds stitches. later: label, count as printed, count when going on without mending.
    """

    expected: int
    have: int
    likely: Likely
    slips: int
    each: int
    stops: tuple[Stop, ...]
    mend: tuple[int, ...] = ()
    gain: bool = False
    later: tuple[tuple[str, int, int], ...] = ()

    @property
    def difference(self) -> int:
        """Have less expected."""
        return self.have - self.expected


@dataclass(frozen=True, slots=True)
class Search:
    """A narrowing of where the slip is: it lies after stop `low` (0: the start) and at or before
    stop `high`.
    """

    low: int
    high: int


def compare(plan: Plan, place: Place, have: int) -> Mismatch | None:
    """What `have` stitches mean at the end of the row at `place`; None where its count is not
    known.
    """
    rows = plan.parts[place.part].rows
    row = rows[place.row]
    if row.kind is not RowKind.WORK or row.count is None or have < 0:
        return None
    difference = have - row.count
    passes = _main_passes(row)
    each = passes[0][1] if passes else 0
    likely, slips = _likely(row, difference, each)
    stops = _stops(row, passes)
    mend = () if difference == 0 else _mend(rows, place.row, difference)
    later = () if difference == 0 else _later(rows, place.row, difference)
    return Mismatch(row.count, have, likely, slips, each, stops, mend, difference < 0, later)


def start_search(found: Mismatch) -> Search | None:
    """The whole row as the place of the slip; None where there is no repeat to look through."""
    return Search(0, len(found.stops)) if len(found.stops) > 1 and found.difference else None


def ask(found: Mismatch, search: Search) -> Stop | None:
    """Where to count next: half way; None when the slip lies in one pass."""
    if search.high - search.low <= 1:
        return None
    return found.stops[(search.low + search.high) // 2 - 1]


def answered(found: Mismatch, search: Search, counted: int) -> Search:
    """The search after the maker counted so many stitches up to the stop that was asked."""
    stop = ask(found, search)
    if stop is None:
        return search
    half = (search.low + search.high) // 2
    return Search(half, search.high) if counted == stop.count else Search(search.low, half)


def _main_passes(row: PlanRow) -> list[tuple[int, int, int]]:
    """(pass number, stitches it makes, stitches from the row's start after it) of the row's
    longest repeat.
    """
    moves = tuple(move for step in row.groups for move in step.moves)
    adds, total = made_by(moves, row.count)
    if total is None:
        return []
    runs: dict[tuple[int, int], list[tuple[int, int, int]]] = {}
    done = 0
    for move, add in zip(moves, adds, strict=True):
        done += add
        if not move.passes:
            continue
        first = move.passes[0]
        run = runs.setdefault((first.repeat.start, first.repeat.end), [])
        if run and run[-1][0] == first.number:
            run[-1] = (first.number, run[-1][1] + add, done)
        else:
            run.append((first.number, add, done))
    return max(runs.values(), key=len, default=[])


def _stops(row: PlanRow, passes: list[tuple[int, int, int]]) -> tuple[Stop, ...]:
    """After every pass of the main repeat; without one after every step."""
    if len(passes) > 1:
        return tuple(Stop(number, len(passes), after) for number, _, after in passes)
    counts = [step.done_after for step in row.groups if step.done_after > step.done]
    if any(step.total is None for step in row.groups) or len(counts) < 2:
        return ()
    return tuple(Stop(number, len(counts), after) for number, after in enumerate(counts, start=1))


def _likely(row: PlanRow, difference: int, each: int) -> tuple[Likely, int]:
    if difference == 0:
        return Likely.RIGHT, 0
    off = abs(difference)
    shaping = [_growth(move) for step in row.groups for move in step.moves]
    gains = [one for one, times in shaping if one > 0 for _ in range(times)]
    losses = [-one for one, times in shaping if one < 0 for _ in range(times)]
    if each > 1 and off % each == 0 and difference < 0:
        return Likely.WHOLE_PASS, off // each
    if gains and off % gains[0] == 0 and off // gains[0] <= len(gains):
        kind = Likely.INCREASE_MISSED if difference < 0 else Likely.INCREASE_EXTRA
        return kind, off // gains[0]
    if losses and off % losses[0] == 0 and off // losses[0] <= len(losses):
        kind = Likely.DECREASE_MISSED if difference > 0 else Likely.DECREASE_EXTRA
        return kind, off // losses[0]
    if each > 1 and off % each == 0:
        return Likely.WHOLE_PASS, off // each
    if row.count == row.count_before and not gains and not losses:
        return (Likely.STITCH, off) if off <= 2 else (Likely.ROW_BELOW, off)
    return Likely.STITCH, off


def _growth(move: Move) -> tuple[int, int]:
    """Stitches one increase adds, or one decrease takes away (negative), and how many of them a
    move holds.

    Plain stitches and those that are made from nothing give (0, 0).
    """
    takes, makes = move.takes, move.makes
    if takes > 0 and makes > takes and makes % takes == 0:
        return makes // takes - 1, takes
    if makes > 0 and takes > makes and takes % makes == 0:
        return 1 - takes // makes, makes
    return 0, 0


def _mend(rows: tuple[PlanRow, ...], at: int, difference: int) -> tuple[int, ...]:
    """Groups over which the next worked row makes the difference good; () where too much is
    missing.
    """
    later = next((row for row in rows[at + 1 :] if row.kind is RowKind.WORK), None)
    count = rows[at].count or 0
    have = count + difference
    off = abs(difference)
    if later is None or have < 2 * off or off > max(1, round(SMALL_SHARE * count)):
        return ()
    return even_groups(have, off)


def _later(rows: tuple[PlanRow, ...], at: int, difference: int) -> tuple[tuple[str, int, int], ...]:
    """The next rows as they come out unmended: a row that multiplies its stitches multiplies the
    difference.
    """
    found: list[tuple[str, int, int]] = []
    shift = difference
    for row in rows[at + 1 :]:
        if row.kind is not RowKind.WORK:
            continue
        if row.count is None or len(found) == LOOK_AHEAD:
            break
        shift *= _multiplies(row)
        found.append((row.label, row.count, max(0, row.count + shift)))
    return tuple(found)


def _multiplies(row: PlanRow) -> int:
    """2 for "two in each", 1 for a row whose extra stitches are worked plain."""
    if not row.count_before or not row.count or row.count % row.count_before:
        return 1
    times = row.count // row.count_before
    worked = [move for step in row.groups for move in step.moves if move.takes]
    same = worked and all(move.makes == times * move.takes for move in worked)
    return times if same else 1


def narrowed(found: Mismatch, search: Search) -> tuple[int, int]:
    """The first and last pass (or step) the slip can be in."""
    return search.low + 1, max(search.low + 1, search.high)


def step_of(found: Mismatch, search: Search, row: PlanRow) -> Step | None:
    """The step the search points at once it lies in one pass; None while it is wider."""
    first, last = narrowed(found, search)
    if first != last or first > len(found.stops):
        return None
    count = found.stops[first - 1].count
    return next((step for step in row.groups if step.done_after >= count), None)
