"""Rows told in lists, a line for each thing done, and ways to begin that are not taken."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def counts(text: str) -> tuple[list[int | None], int]:
    """All counts in order, and how many problems there are."""
    counted = count_pattern(parse_pattern(text))
    return [row.count for part in counted.parts for row in part.rows], len(counted.problems)


def test_bullets_under_a_label_are_one_row() -> None:
    """Chain, stitches, join and total each have a line."""
    text = (
        "Buoy\n1st Round:\n- Ch 2. 10 hdc in a magic ring.\n- Join with a sl st.\n"
        "- (You will have 10 hdc in this round.)\n2nd Round:\n- Ch 2. 2 hdc in each hdc around.\n"
        "- Join with a sl st to the top of the first hdc.\n"
        "- (You will have 20 hdc in this round.)\n"
    )
    assert counts(text) == ([10, 20], 0)


def test_lines_under_a_label_are_one_row() -> None:
    """The same without bullets."""
    text = (
        "Buoy\nRound 1\nMake a magic ring and work 6 sc into it.\nDo not join.\n\n"
        "Round 2\n2 sc in each st around.\nJoin with a sl st.\n\nRound 3\nCh 1.\n"
        "Sc in each st around.\nTurn.\n"
    )
    assert counts(text) == ([6, 12, 12], 0)


def test_bullets_with_totals_are_a_row_each() -> None:
    """A list without labels."""
    text = (
        "Gull\n- 6 sc in a magic ring (6)\n- 2 sc in each sc (12)\n"
        "- 1 sc in next sc, 2 sc in next sc* 6 times (18)\n- 1 sc in each sc (18)\n"
        "- 1 sc in each of next 4 sc, 2sctog* 3 times (15)\n"
    )
    assert counts(text) == ([6, 12, 18, 18, 15], 0)


def test_a_second_way_to_begin_is_not_worked() -> None:
    """Neither in its sentence, nor in a bracket, nor on a line of its own."""
    bracket = "R1: 5 sc in a magic ring (or, ch 2 and sc 5 in 2nd ch from hook)\nR2: inc 5 times\n"
    line = (
        "R1: 5 sc in a magic ring {5 sts}\nAlternate way to begin: ch 2, sc 5 times in 2nd ch from "
        "hook {5 sts}\nR2: inc 5 times {10 sts}\n"
    )
    assert counts(bracket) == counts(line) == ([5, 10], 0)
