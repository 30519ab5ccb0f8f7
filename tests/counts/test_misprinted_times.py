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


NET = (
    "Ch 12, sl st in 2nd st from hook, * ch 7, sl st in next st, repeat from * 9 times, ch 3, trc "
    "in last loop already worked, ch 1, turn (11 loops). 2nd ROW: * Ch 7, s c in next loop, repeat "
    "from * across row, then ch 3, trc in last loop already worked in, turn. 3rd ROW: Inc row: Ch "
    "7, s c in same loop, * ch 7, s c in next loop, repeat from * across row to last loop, ch 3, "
    "trc in same loop, turn. Repeat 2nd and 3rd rows until there are {} loops across."
)


def test_a_goal_that_no_rows_lead_to_is_asked_about() -> None:
    """A loop more in two rows: nobody comes to a thousand so, and forty rows show how it goes."""
    counted = count_pattern(parse_pattern(NET.format(994)))
    assert len(counted.parts[0].rows) == 43
    assert "more rows than any piece has" in counted.problems[-1].message


def test_a_goal_in_reach_is_gone_to() -> None:
    """The same net to thirty-four loops."""
    counted = count_pattern(parse_pattern(NET.format(34)))
    assert counted.parts[0].rows[-1].count == 34
    assert not any("more rows than" in one.message for one in counted.problems)
