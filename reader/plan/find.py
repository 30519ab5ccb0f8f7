"""A plan and a place, or what the maker says of one, in; places, steps and distances out."""

from __future__ import annotations

import re
from bisect import bisect_right

from reader.plan.place import Place
from reader.plan.step import Grain, Plan, PlanPart, PlanRow, RowKind, Step
from reader.plan.steps import joined
from reader.terms.numbers import ORDINALS, UNITS


def first_place(plan: Plan) -> Place | None:
    """Where the work begins; None for a plan without rows."""
    for part, held in enumerate(plan.parts):
        if held.rows:
            return Place(part, 0, 0)
    return None


def exists(plan: Plan, place: Place) -> bool:
    """Whether the plan has a step at this place."""
    if not 0 <= place.part < len(plan.parts):
        return False
    rows = plan.parts[place.part].rows
    return 0 <= place.row < len(rows) and 0 <= place.step < len(rows[place.row].groups)


def part_at(plan: Plan, place: Place) -> PlanPart:
    """The part of a place."""
    return plan.parts[place.part]


def row_at(plan: Plan, place: Place) -> PlanRow:
    """The row of a place."""
    return plan.parts[place.part].rows[place.row]


def row_start(place: Place) -> Place:
    """The first step of the same row."""
    return Place(place.part, place.row, 0)


def step_at(plan: Plan, place: Place, grain: Grain = Grain.GROUP) -> Step:
    """What is read at a place: the smallest step, or all up to the end of its phrase or row.

    Reading never goes back, so that changing to bigger steps in mid-row repeats nothing.
    """
    row = row_at(plan, place)
    return joined(tuple(row.groups[place.step : _end(row, place.step, grain)]))


def next_place(plan: Plan, place: Place, grain: Grain = Grain.GROUP) -> Place | None:
    """The place after what is read here; None after the last."""
    row = row_at(plan, place)
    end = _end(row, place.step, grain)
    if end < len(row.groups):
        return Place(place.part, place.row, end)
    return next_row(plan, place)


def previous_place(plan: Plan, place: Place, grain: Grain = Grain.GROUP) -> Place | None:
    """The place before: in mid-phrase or mid-row the start of that, else the one before; None
    before the first.
    """
    row = row_at(plan, place)
    starts = _starts(row, grain)
    earlier = [start for start in starts if start < place.step]
    if earlier:
        return Place(place.part, place.row, earlier[-1])
    back = previous_row(plan, place)
    if back is None:
        return None
    return Place(back.part, back.row, _starts(row_at(plan, back), grain)[-1])


def next_row(plan: Plan, place: Place) -> Place | None:
    """The start of the row after, in the next part if need be; None after the last."""
    part, row = place.part, place.row + 1
    while part < len(plan.parts):
        if row < len(plan.parts[part].rows):
            return Place(part, row, 0)
        part, row = part + 1, 0
    return None


def previous_row(plan: Plan, place: Place) -> Place | None:
    """The start of the row before, in an earlier part if need be; None before the first."""
    part, row = place.part, place.row - 1
    while part >= 0:
        if row >= 0:
            return Place(part, row, 0)
        part -= 1
        row = len(plan.parts[part].rows) - 1 if part >= 0 else -1
    return None


def find_row(plan: Plan, part: int, number: int) -> Place | None:
    """The start of the row of that number in a part; where the numbering begins again, the
    first of them.

    None where the part or the row does not exist.
    """
    if not 0 <= part < len(plan.parts):
        return None
    for row, held in enumerate(plan.parts[part].rows):
        if held.number == number and held.kind in (RowKind.WORK, RowKind.FINISH):
            return Place(part, row, 0)
    return None


def row_numbers(plan: Plan, part: int) -> tuple[int, ...]:
    """The row numbers that exist in a part, each once, in order of size; () for a part that does
    not exist.
    """
    if not 0 <= part < len(plan.parts):
        return ()
    return tuple(sorted({row.number for row in plan.parts[part].rows if row.number is not None}))


def find_part(plan: Plan, words: str) -> int | None:
    """The part the words name: "body", "second sleeve", "sleeve two", "the left sleeve"; None
    where none fits.

    The copy is chosen by a number among the words, else the first one is meant.
    """
    wanted = _plain(words)
    copy = None
    for index, part in enumerate(plan.parts):
        if _plain(part.name) == wanted and wanted:
            return index
    names = [
        w for w in wanted if w not in _COPY_WORDS or any(w in _plain(p.name) for p in plan.parts)
    ]
    numbers = [_COPY_WORDS[w] for w in wanted if w in _COPY_WORDS and w not in names]
    copy = numbers[0] if numbers else 1
    best: tuple[int, int] | None = None
    for index, part in enumerate(plan.parts):
        held = _plain(part.name)
        shared = sum(1 for word in names if word in held)
        if not names or shared < len(names) or part.copy != copy:
            continue
        rest = len(held) - shared
        if best is None or rest < best[0]:
            best = (rest, index)
    return best[1] if best else None


def part_phrases(plan: Plan) -> tuple[str, ...]:
    """What a maker can say to name each part, lower-case words, in the plan's order: "second
    window" of "Windows, make 2".

    "" for a part whose name holds no letters; copies beyond the twentieth have no ordinal and
    are "".
    """
    ordinals = {number: word for word, number in ORDINALS.items()}
    found = []
    for part in plan.parts:
        plain = (
            _BRACKETS.sub(" ", part.name) if _LETTER.search(_BRACKETS.sub("", part.name)) else ""
        )
        called = one_of(plain or part.name) if part.copies > 1 else plain or part.name
        name = " ".join(re.findall(r"[a-z]+", called.lower()))
        which = ordinals.get(part.copy, "") if part.copies > 1 else ""
        lost = part.copies > 1 and not which
        found.append("" if lost else f"{which} {name}".strip() if name else "")
    return tuple(found)


def distance(plan: Plan, here: Place, there: Place) -> int:
    """Smallest steps from here to there, negative where there comes first."""
    if there < here:
        return -distance(plan, there, here)
    if (here.part, here.row) == (there.part, there.row):
        return there.step - here.step
    steps = len(row_at(plan, here).groups) - here.step
    at = next_row(plan, here)
    while at is not None and (at.part, at.row) < (there.part, there.row):
        steps += len(row_at(plan, at).groups)
        at = next_row(plan, at)
    return steps + there.step


def nearest(plan: Plan, place: Place) -> Place | None:
    """The place itself where it exists, else the closest one before it that does; None for an
    empty plan.

    For progress that was saved with an earlier version of the program, whose steps were cut
    otherwise.
    """
    if exists(plan, place):
        return place
    for part in range(min(place.part, len(plan.parts) - 1), -1, -1):
        rows = plan.parts[part].rows
        if not rows:
            continue
        if part < place.part or place.row >= len(rows):
            return Place(part, len(rows) - 1, len(rows[-1].groups) - 1)
        row = max(0, place.row)
        return Place(part, row, max(0, min(place.step, len(rows[row].groups) - 1)))
    return first_place(plan)


def _starts(row: PlanRow, grain: Grain) -> tuple[int, ...]:
    if grain is Grain.ROW:
        return (0,)
    if grain is Grain.PHRASE:
        return tuple(row.phrases)
    return tuple(range(len(row.groups)))


def _end(row: PlanRow, step: int, grain: Grain) -> int:
    """The first step after what is read from `step` on."""
    starts = _starts(row, grain)
    at = bisect_right(starts, step)
    return starts[at] if at < len(starts) else len(row.groups)


_COPY_WORDS = {**UNITS, **ORDINALS, **{str(n): n for n in range(1, 100)}}
_IDLE = {"the", "a", "part", "piece", "number", "copy", "to", "of"}


def _plain(words: str) -> tuple[str, ...]:
    """Lower-case words of a name, without "the" and the plural s."""
    found = re.findall(r"[a-z]+|\d+", words.lower())
    return tuple(_single(word) for word in found if word not in _IDLE)


_BRACKETS = re.compile(r"\([^)]*\)|\[[^\]]*\]")
"""What a heading adds to a name: "Head (sand yarn)"."""
_LETTER = re.compile(r"[A-Za-z]")
_ONE = {"feet": "foot", "leaves": "leaf", "hooves": "hoof", "scarves": "scarf", "knives": "knife"}


def _single(word: str) -> str:
    if word in _ONE:
        return _ONE[word]
    return word[:-1] if len(word) > 3 and word.endswith("s") and not word.endswith("ss") else word


def one_of(name: str) -> str:
    """The name of one copy: "Wing" for "Wings", "Front leg" for "Front legs"; several things named
    together stay so.
    """
    *before, last = name.split() or [""]
    one = _single(last.lower())
    if one == last.lower() or "and" in before or "&" in before:
        return name
    one = one.upper() if last.isupper() else one.capitalize() if last[0].isupper() else one
    return " ".join([*before, one])
