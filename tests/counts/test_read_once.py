"""Rows of the same words are read once, and told of where each of them stands."""

from __future__ import annotations

import pytest

from reader.counts import solutions
from reader.counts.account import count_pattern
from reader.counts.solved import Solved
from reader.pattern.parser import parse_pattern

BUOY = (
    "Rnd 1: 6 sc in magic ring. (6)\n"
    "Rnd 2: *Sc in next st, inc; rep from * around. (9)\n"
    "Rnd 3: (Sc, inc) 4 times, sc. (13)\n"
)
TWO = f"Left buoy\n\n{BUOY}\nRight buoy\n\nHook: 4 mm…\n{BUOY}"


def test_each_row_keeps_its_place() -> None:
    """The same words in another part: the same moves, each with the words where it stands."""
    left, right = count_pattern(parse_pattern(TWO)).parts
    assert [row.count for row in left.rows] == [row.count for row in right.rows]
    for row in (*left.rows, *right.rows):
        for move in row.moves:
            there = " ".join(TWO[move.span.start : move.span.end].split())
            assert move.words in there
            assert TWO.count("\n", 0, move.span.start) + 1 == move.span.line == row.span.line
            for one in move.passes:
                assert TWO.count("\n", 0, one.repeat.start) + 1 == one.repeat.line


def test_reading_twice_changes_nothing() -> None:
    """What was kept of the first counting is not changed by it."""
    pattern = parse_pattern(TWO)
    assert count_pattern(pattern) == count_pattern(pattern) == count_pattern(parse_pattern(TWO))


FENDER = (
    "Cast on 24 sts.\n"
    "Row 1: *K2, p2; rep from * to end.\n"
    "Row 2: K2tog, *k2, p2; rep from * to last 2 sts, k2.\n"
    "Row 3: Knit. (23)\n"
)


@pytest.mark.parametrize(("piece", "rows", "anew"), [(BUOY, 3, 4), (FENDER, 4, 3)])
def test_rows_alike_are_solved_once(
    monkeypatch: pytest.MonkeyPatch, piece: str, rows: int, anew: int
) -> None:
    """Rows of the same words over the same row below are not worked again in parts alike: of six
    pieces only the rows of the first, and a first row over what the piece before it left.
    """
    worked: list[Solved] = []
    best = solutions.best

    def solve(*told: object) -> Solved:
        worked.append(best(*told))  # type: ignore[arg-type]
        return worked[-1]

    monkeypatch.setattr(solutions, "best", solve)
    text = "\n".join(f"Piece {number}\n\n{piece}" for number in "123456")
    counted = count_pattern(parse_pattern(text))
    assert sum(len(part.rows) for part in counted.parts) == 6 * rows
    assert len(worked) == anew
