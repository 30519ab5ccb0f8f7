"""Steps and the seconds they took in, the maker's pace and the time that is left out."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from statistics import median

from reader.counts.worked import Move
from reader.plan.place import Place
from reader.plan.step import Plan, PlanRow, RowKind, Step

FIRST_GUESS_S = {
    "k": 1.7, "p": 1.9, "sl": 1.2, "sl st": 2.5, "sc": 3.5, "hdc": 4.0, "dc": 5.5, "tr": 7.0,
    "dtr": 9.0, "inc": 4.0, "bobble": 14.0, "popcorn": 16.0, "puff": 12.0, "picot": 7.0,
}  # fmt: skip
"""Seconds a stitch before anything is known of this maker. Knitting: 35 to 42 stitches a minute, a
columnist who timed herself (Hastings Tribune, 2022, read); crochet from memory, 12 to 25 single and
8
to 15 double crochet a minute. Used for nothing but the weight of one kind against another."""

OTHER_S = 4.0
"""Seconds for a stitch of another kind. Our own judgement."""

MOST_SAMPLES = 25
"""Latest times kept of each kind: enough for a steady middle, few enough to follow a tired hand."""

PAUSE_FACTOR = 3.5
"""A step slower than the middle by this factor was a pause and teaches nothing."""

HASTY_SHARE = 0.3
"""Share of the first guess that no hand is quicker than: the step was skipped, not worked. 0.3 of
1.7 s is the 118 knitted stitches in a minute of the published record (from memory)."""

LONGEST_S = 45.0
"""Seconds a stitch beyond which anyone has paused."""

ENOUGH = 4
"""Steps after which times are told; before that nothing is known."""

CLOSE_ROWS = 300
"""Rows that are timed stitch by stitch; those beyond go by their counts."""


@dataclass(frozen=True, slots=True)
class Pace:
    """What is known of a maker's speed: for each kind of stitch its latest seconds a stitch,
    oldest first.
    """

    kinds: tuple[tuple[str, tuple[float, ...]], ...] = ()
    learned: int = 0

    @property
    def known(self) -> bool:
        """Whether enough steps have been seen to tell a time."""
        return self.learned >= ENOUGH


def learn(pace: Pace, step: Step, seconds: float) -> Pace:
    """The pace after a step that took so many seconds; a pause, a step quicker than any hand or no
    stitch changes nothing.
    """
    work = tuple(_work(step))
    stitches = sum(count for _, count in work)
    if not stitches or seconds <= 0 or seconds / stitches > LONGEST_S:
        return pace
    guess = sum(count * FIRST_GUESS_S.get(kind, OTHER_S) for kind, count in work)
    if seconds < HASTY_SHARE * guess:
        return pace
    factor = seconds / sum(count * _seconds(pace, kind) for kind, count in work)
    settled = pace.known
    if settled and (factor > PAUSE_FACTOR or factor < 1 / PAUSE_FACTOR):
        return pace
    table = dict(pace.kinds)
    for kind in dict.fromkeys(kind for kind, _ in work):
        sample = _seconds(pace, kind) * factor
        table[kind] = (*table.get(kind, ()), sample)[-MOST_SAMPLES:]
    return replace(pace, kinds=tuple(sorted(table.items())), learned=pace.learned + 1)


def seconds_a_stitch(pace: Pace, kind: str) -> float | None:
    """Seconds for one stitch of a kind (US short name); None while too little is known."""
    return _seconds(pace, kind) if pace.known else None


def step_seconds(pace: Pace, step: Step) -> float:
    """Seconds a step should take at this pace."""
    return sum(count * _seconds(pace, kind) for kind, count in _work(step))


def row_left_s(pace: Pace, plan: Plan, place: Place) -> float:
    """Seconds from the start of the step at `place` to the end of its row."""
    row = plan.parts[place.part].rows[place.row]
    return sum(step_seconds(pace, step) for step in row.groups[place.step :])


def part_left_s(pace: Pace, plan: Plan, place: Place) -> float:
    """Seconds from the step at `place` to the end of its part."""
    rows = plan.parts[place.part].rows[place.row + 1 :]
    return row_left_s(pace, plan, place) + _rows_seconds(pace, rows)


def piece_left_s(pace: Pace, plan: Plan, place: Place) -> float:
    """Seconds from the step at `place` to the end of everything; finishing steps are not timed."""
    later = [row for part in plan.parts[place.part + 1 :] for row in part.rows]
    return part_left_s(pace, plan, place) + _rows_seconds(pace, tuple(later))


def _rows_seconds(pace: Pace, rows: tuple[PlanRow, ...]) -> float:
    worked = [row for row in rows if row.kind is RowKind.WORK]
    near = sum(step_seconds(pace, step) for row in worked[:CLOSE_ROWS] for step in row.groups)
    far = worked[CLOSE_ROWS:]
    if not far:
        return near
    stitches = sum(row.count or 0 for row in worked[:CLOSE_ROWS])
    each = near / stitches if stitches else OTHER_S
    return near + each * sum(row.count or 0 for row in far)


def _work(step: Step) -> Iterator[tuple[str, int]]:
    """(kind, how many) for every move of the hands that makes or uses stitches."""
    for move in step.moves:
        count = _stitches(move)
        if count:
            yield move.stitch or move.kind.value, count


def _stitches(move: Move) -> int:
    """How many stitches a move is worth in time: what it makes, or the chains and slips it stands
    for.
    """
    if move.makes > 0:
        return max(move.makes, move.times)
    return move.times if move.takes or move.spaces else 0


def _seconds(pace: Pace, kind: str) -> float:
    """The middle of the kind's samples; an unseen kind is scaled by how the seen ones compare to
    the guesses.
    """
    for known, samples in pace.kinds:
        if known == kind and samples:
            return median(samples)
    guess = FIRST_GUESS_S.get(kind, OTHER_S)
    ratios = [median(samples) / FIRST_GUESS_S.get(known, OTHER_S) for known, samples in pace.kinds]
    return guess * median(ratios) if ratios else guess
