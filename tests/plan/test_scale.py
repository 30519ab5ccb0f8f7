"""Long patterns stay quick: steps are made when a row is looked at."""

from __future__ import annotations

from reader.counts.counted import CountedPart
from reader.plan.find import find_row, next_place, step_at
from reader.plan.lazily import Lazily
from reader.plan.place import Place
from reader.plan.unroll import make_plan
from tests.plan.made import INC, move, pattern, repeated, round_of

ROWS = 10_000


def test_of_ten_thousand_rows_only_those_looked_at_are_opened() -> None:
    """A plan of half a million passes; walking some of it costs only the rows that are walked."""
    moves = repeated(50, move("sc in next 2 sts", 2, 2, times=2), INC)
    rows = tuple(
        round_of(n, 150, 200, moves, "(sc in next 2 sts, inc) x 50") for n in range(1, ROWS + 1)
    )
    counted = pattern(CountedPart("Sail", 1, rows))
    plan = make_plan(counted, "x" * 5_000_000)
    place = find_row(plan, 0, ROWS)
    assert place is not None
    assert step_at(plan, place).passes[0].of == 50
    after = next_place(plan, Place(0, 0, 49))
    assert after == Place(0, 1, 0)
    opened = [
        row for row in plan.parts[0].rows if isinstance(row.groups, Lazily) and row.groups.made
    ]
    assert 0 < len(opened) < 10


def test_lazily_makes_its_items_once_and_equals_a_tuple() -> None:
    """Made at the first look and kept."""
    made = []
    items = Lazily(lambda: (made.append(1), (1, 2, 3))[1])
    assert not made
    assert items == (1, 2, 3)
    assert (len(items), items[1], items[1:], list(items), hash(items)) == (
        3,
        2,
        (2, 3),
        [1, 2, 3],
        hash((1, 2, 3)),
    )
    assert len(made) == 1
