"""Whole invented pieces in many manners of writing: every row comes out as its maker counted it.

Beside each piece stands a file of counts, one line a size: the stitches after each row whose count
its writer gave, in order. The pieces were used while the reader was written, so they guard what is
read; they do not measure it.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

PIECES = sorted(Path(__file__).with_name("pieces").glob("*.txt"))


def in_order(wanted: list[int], counts: Iterator[int | None]) -> list[int]:
    """Those of the wanted counts that do not come, in order, among the counts."""
    return [one for one in wanted if not any(one == count for count in counts)]


@pytest.mark.parametrize("piece", PIECES, ids=lambda path: path.stem)
def test_every_row_of_a_piece_is_counted_as_its_maker_did(piece: Path) -> None:
    """For each size, the counts come in the order of the piece."""
    pattern = parse_pattern(piece.read_text(encoding="utf-8"))
    sizes = piece.with_suffix(".counts").read_text(encoding="utf-8").splitlines()
    assert len(pattern.sizes) >= len(sizes)
    for size, line in enumerate(sizes):
        rows = [row for part in count_pattern(pattern, size).parts for row in part.rows]
        assert in_order([int(n) for n in line.split()], iter(row.count for row in rows)) == []


def test_there_are_pieces() -> None:
    """An empty folder would pass the test above."""
    assert len(PIECES) >= 24


def test_a_heading_that_names_an_instruction_works_nothing() -> None:
    """ "### Cast on" over the cast-on is the name of a part, not a row of its own."""
    pattern = parse_pattern("# Hat\n\n### Cast on\n\nCO 92 sts.\n\n### Brim\n\nRound 1: knit\n")
    rows = [row for part in count_pattern(pattern, 0).parts for row in part.rows]
    assert [row.count for row in rows] == [92, 92]
