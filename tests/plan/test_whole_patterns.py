"""The demonstration patterns, read, counted, planned and said."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.plan.find import find_part, find_row, first_place, next_place
from reader.plan.step import Plan, RowKind
from reader.plan.unroll import make_plan
from reader.wording.say import Length, read_out, say_row

DEMOS = Path(__file__).parents[2] / "demos"
PATTERNS = sorted(path.name for path in DEMOS.glob("*.txt"))


def planned(name: str) -> Plan:
    """The plan of a demonstration pattern for its first size."""
    text = (DEMOS / name).read_text(encoding="utf-8")
    return make_plan(count_pattern(parse_pattern(text)), text)


@pytest.mark.parametrize("name", PATTERNS)
def test_steps_end_with_the_rows_count(name: str) -> None:
    """Wherever a total is claimed, the last step reaches it."""
    claimed = 0
    for part in planned(name).parts:
        for row in part.rows:
            last = row.groups[-1]
            if (
                row.kind is RowKind.WORK
                and last.total is not None
                and not any(s.unread for s in row.groups)
            ):
                assert last.done_after == row.count, row
                claimed += 1
    assert claimed > 0


@pytest.mark.parametrize("name", PATTERNS)
@pytest.mark.parametrize("length", list(Length))
def test_everything_can_be_said_without_digits_or_marks(name: str, length: Length) -> None:
    """Words and pauses only, at every length, for rows and for steps."""
    for part in planned(name).parts:
        for row in part.rows:
            said = [say_row(row, length), *(read_out(step, row, length) for step in row.groups)]
            for words in said:
                assert re.fullmatch(r"[A-Za-z ,.;:'-]*", words), words


def test_the_lighthouse_is_worked_in_order() -> None:
    """Its parts in their order, two windows, and the tower's fourth round as its maker reads
    it.
    """
    plan = planned("harbour-lighthouse.txt")
    names = [part.name.title() for part in plan.parts]
    assert names[:4] == ["Base", "Tower", "Lantern Room", "Roof"]
    assert names.count("Window") == 2
    tower = find_part(plan, "tower")
    assert tower is not None
    place = find_row(plan, tower, 4)
    assert place is not None
    row = plan.parts[tower].rows[place.row]
    assert (row.count_before, row.count) == (30, 27)
    assert say_row(row).startswith(
        "Round four. Single crochet in the next eight stitches, single crochet two together; "
        "three times"
    )
    assert any(notice.kind == "colour" for notice in row.notices)
    steps, at = 0, first_place(plan)
    while at is not None:
        steps, at = steps + 1, next_place(plan, at)
    assert steps == sum(len(row.groups) for part in plan.parts for row in part.rows)
