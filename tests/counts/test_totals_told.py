"""Totals told in words behind a row, by the words before and behind the number: the count is held
against each, so a wrong one is told of. The pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

BEFORE = (
    ", you have", ". You've got", ", so that you have", "; you must have", ". You will get",
    ", we get", ", which gives you", ", bringing you to", ". This brings you to", ", resulting in",
    ", totalling", " - your count is",
    "; you are left with", ", ending up with", ", finishing with", ". It's now", ", to make",
    " (leaving", " (that's", " (so that's", ", ending with", ", for", ", making",
)
BEHIND = ("sts", "stitches", "stitches in total", "stitches in the round", "sts now")
GULL = (
    ("6 sc in magic ring", 6),
    ("inc in each st", 12),
    ("(sc, inc) around", 18),
    ("(2 sc, dec, sc, inc) around", 18),
    ("(sc, dec) around", 12),
)


def rows_with(before: str, behind: str, wrong: int = 0) -> str:
    """The piece, the total of the third round so much too high."""
    close = ")" if "(" in before else "."
    return "Gull\n" + "\n".join(
        f"Round {at}: {words}{before} {count + wrong * (at == 3)} {behind}{close}"
        for at, (words, count) in enumerate(GULL, 1)
    )


@pytest.mark.parametrize("before", BEFORE)
@pytest.mark.parametrize("behind", BEHIND)
def test_a_total_in_words_is_held_against_the_row(before: str, behind: str) -> None:
    counted = count_pattern(parse_pattern(rows_with(before, behind)))
    rows = [row for part in counted.parts for row in part.rows]
    assert [row.count for row in rows] == [6, 12, 18, 18, 12]
    assert not counted.problems
    wrong = count_pattern(parse_pattern(rows_with(before, behind, 1)))
    assert [one.verdict for one in wrong.problems] == [Verdict.TOTAL_DISAGREES]


@pytest.mark.parametrize(
    ("words", "count"),
    [
        ("Knit, ending with 2 sts in rib.", 20),
        ("*K2, p2; rep from *, ending with p2, k2.", 20),
        ("(K2tog) twice, knit to end, leaving 5 sts unworked.", None),
    ],
)
def test_what_is_work_is_no_total(words: str, count: int | None) -> None:
    counted = count_pattern(parse_pattern(f"Cast on 20 sts.\nRow 1: Knit.\nRow 2: {words}"))
    row = [row for part in counted.parts for row in part.rows][-1]
    assert row.stated is None
    assert count is None or row.count == count
