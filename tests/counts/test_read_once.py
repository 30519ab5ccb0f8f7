"""Rows of the same words are read once, and told of where each of them stands."""

from __future__ import annotations

from reader.counts.account import count_pattern
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
