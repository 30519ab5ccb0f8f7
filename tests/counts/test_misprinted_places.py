"""A number of places that no row has is not followed: such a text once took all memory."""

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def test_a_billion_loops_are_not_opened() -> None:
    """It comes to an end, and the row is not believed."""
    text = (
        "Rnd 1: Ch 3, 3 dc in ring, (ch 5, 4 dc in ring) 3 times, ch 5, join.\n"
        "Rnd 2: Ch 3, * (3 dc, ch 5, 3 dc) in next 999999999999 ch-5 loops, dc in next dc; rep "
        "from * twice. Join.\n"
    )
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    assert rows
