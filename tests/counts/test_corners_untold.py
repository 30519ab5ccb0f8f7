"""Corners that the round below does not tell of: asked about, never counted in silence."""

from reader.counts.account import count_pattern
from reader.counts.counted import CountedRow
from reader.pattern.parser import parse_pattern


def rows_of(text: str) -> list[CountedRow]:
    """All rows of a text."""
    return [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]


def test_corners_that_no_round_made_are_not_counted() -> None:
    """The eight stitches below have no corners."""
    text = "Rnd 1: 8 sc in ring\nRnd 2: sc in each sc, 3 sc in each corner sc\n"
    assert [row.count for row in rows_of(text)] == [8, None]


def test_around_a_piece_that_was_turned_the_edge_is_not_the_last_row() -> None:
    """The border goes along four sides of which only one is known."""
    text = (
        "Ch 11. Row 1: sc in 2nd ch from hook and in each ch across (10 sc)\n"
        "Row 2: ch 1, turn, sc in each sc.\n"
        "Border: Rnd 1: ch 1, sc evenly around, 3 sc in each corner, join.\n"
    )
    assert rows_of(text)[-1].count is None


def test_around_a_piece_that_grew_to_and_fro_the_edge_is_not_its_last_row() -> None:
    """That the last row gained four stitches tells nothing of corners."""
    text = (
        "Ch 11. Row 1: sc in 2nd ch from hook and in each ch across (10 sc)\n"
        "Row 2: ch 1, turn, 3 sc in first sc, sc in next 8 sc, 3 sc in last sc. (14 sc)\n"
        "Rnd 1: ch 1, sc in each sc around, 3 sc in each corner, join.\n"
    )
    assert rows_of(text)[-1].count is None


def test_each_needle_of_an_unknown_number_is_asked_about() -> None:
    """How many needles there are decides what is lost; the words do not say."""
    text = "Cast on 40 sts. Join.\nRnd 1: knit\nRnd 2: K 2 tog at end of each needle.\n"
    pattern = count_pattern(parse_pattern(text))
    assert any("each needle" in one.message for one in pattern.problems)
