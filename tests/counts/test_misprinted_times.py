"""A number of times that no piece has rows for: counted a little way and asked about."""

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def test_fifteen_thousand_times_is_asked_about() -> None:
    """Forty rows are counted, the number is asked about, and the next row is counted after them."""
    text = (
        "Rnd 1: 8 sc in ring\nRnd 2: sc in each sc\nRepeat last round 15000 times.\n"
        "Next round: 2 sc in each sc\n"
    )
    counted = count_pattern(parse_pattern(text))
    rows = [row for part in counted.parts for row in part.rows]
    assert len(rows) == 43
    assert rows[-1].count == 16
    assert any("more rows than any piece has" in one.message for one in counted.problems)


def test_a_long_piece_is_counted_to_its_end() -> None:
    """Ninety times four rows are no misprint."""
    text = "CO 20 sts\n" + "".join(f"Row {n}: knit\n" for n in (1, 2, 3, 4))
    counted = count_pattern(parse_pattern(text + "Repeat rows 1-4 90 times.\n"))
    assert sum(len(part.rows) for part in counted.parts) == 365
    assert not counted.problems
