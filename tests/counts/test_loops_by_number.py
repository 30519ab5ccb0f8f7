"""Loops that are only told by their number, in the text of a doily of our own."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

LOOPS = [
    "work 4-ch 6 loops across fan",
    "work 4—ch 6 loops",
    "work four ch-6 loops across",
    "make 4 loops of ch 6 across the row",
    "make 4 6-ch loops",
]
BEGUN = (
    "Ch 8, join to form a ring, ch 1, 6 s c in ring, join.\n\n2nd Round: Ch 1, s c in same s c, "
    "* ch 5, s c in next s c, repeat from * 4 times, ch 5, join.\n\n"
)


@pytest.mark.parametrize("loops", LOOPS)
def test_each_loop_is_held_by_a_stitch(loops: str) -> None:
    begun = f"{BEGUN}3rd Round: Sl st to loop, ch 1, s c in same loop"
    text = f"{begun}, {loops}, ch 6, s c in last loop."
    found = count_pattern(parse_pattern(text))
    assert [row.count for row in found.parts[0].rows] == [6, 6, 6]
    assert not found.problems


FANS = """SPRAY

Ch 6, join to form a ring, ch 1, 8 s c in ring, join.

2nd Round: Ch 1, s c in same s c, * ch 5, s c in next s c, repeat from * 6 times, ch 5, join.

3rd Round: Sl st into loop, ch 3, d c, ch 2, 2 d c in same loop, * ch 3, 6 tr c in next loop, ch 3,
2 d c, ch 2, 2 d c (shell) in next loop, repeat from * all around ending to correspond, ch 3, join.

4th Round: Sl st into shell, ch 3, d c, ch 2, 2 d c in same shell, ** ch 4, s c in 1st tr c, * ch 3,
s c in next tr c, repeat from * 4 times, ch 4, shell in next shell, repeat from ** all around ending
to correspond, ch 4, join.

5th Round: Sl st into shell, ch 3, d c, ch 2, 2 d c in same shell, ** ch 4, skip 1 loop, s c in next
loop, * ch 3, s c in next loop, repeat from * 3 times, ch 4, shell in next shell, repeat from ** all
around ending to correspond, ch 4, join.

6th Round: Same as last round but having 3 loops across each spray{more}.
"""


@pytest.mark.parametrize("more", ["", " and ch 5 between shells", ", and with ch 5 between shells"])
def test_a_round_called_back_with_fewer_loops(more: str) -> None:
    """Four sprays of six stitches, then five, then four, each beside a shell of four."""
    found = count_pattern(parse_pattern(FANS.format(more=more)))
    assert [row.count for row in found.parts[0].rows] == [8, 8, 40, 40, 36, 32]
    assert not found.problems
