"""So many rows of another piece, called back in whatever order and yarn; all text is our own."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BUOY = """Buoy: Ch 4, join to form a ring, work 8 s c in ring. Do not join.

2nd Round: 2 s c in each s c.

3rd Round: * s c in next s c, 2 s c in next s c, repeat from * all around.

Lid: {}.

3rd Round: 1 s c in each s c.
"""
CALLS = [
    "Work 1st 2 rounds same as buoy",
    "With Sand work 1st 2 rounds same as buoy",
    "With Dk. Red, work first two rounds same as for the buoy",
    "With Sand work 1st 2 rounds same as center of buoy",
    "Work the 1st and 2nd rounds same as buoy",
    "With Sand work same as buoy for 2 rounds",
    "Make the first 2 rounds as buoy",
    "With Sand follow the first 2 rounds of buoy",
    "Repeat 1st 2 rounds of buoy",
    "Work as buoy through 2nd round",
]


@pytest.mark.parametrize("call", CALLS)
def test_the_first_rounds_of_another_piece(call: str) -> None:
    """The lid begins anew, with 8 and 16 stitches, and does not go on with the buoy's 24."""
    found = count_pattern(parse_pattern(BUOY.format(call)))
    assert [row.count for row in found.parts[1].rows] == [8, 16, 16]
    assert not found.problems


def test_a_chain_in_that_yarn_is_begun_with() -> None:
    """ "With Sand ch 8, work same as mat": its own chain, not the mat's."""
    text = (
        "Mat: Ch 12, s c in 2nd st from hook and in each remaining st of ch, ch 1, turn.\n\n"
        "2nd Row: S c in each s c.\n\nCoaster: With Sand ch 8, work same as mat for 2 rows.\n"
    )
    found = count_pattern(parse_pattern(text))
    assert [row.count for row in found.parts[1].rows][-2:] == [7, 7]
