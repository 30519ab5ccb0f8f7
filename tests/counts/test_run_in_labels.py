"""Rows that run on in one paragraph, by the manner of their labels and of their totals, against
counts worked from the structure. The pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.run_in_labels import lines_of_labels

LABELS = (
    "Round {}:", "Rnd {}.", "R{}", "R{}:", "[R{}]", "({})", "{})", "#{}", "Rnd #{}:",
    "Round {})", "Round {} =", "Round {} |", "**Round {}**", "Step {}:", "Round {} of 6:",
    "Round {};", "{}th rnd.", "{}th round:",
)
TOTALS = ("({})", "[{}]", "({} sts)", "= {}", "- {} sts", "total {}")
BUOY = (
    ("6 sc in magic ring", 6),
    ("2 sc in each st around", 12),
    ("*sc in next st, 2 sc in next st; repeat from * around", 18),
    ("sc in each st around", 18),
    ("*sc in next st, sc2tog; repeat from * around", 12),
    ("sc2tog around", 6),
)


def label_of(manner: str, number: int) -> str:
    """The label of a row in that manner."""
    said = manner.format(number)
    for usual, odd in (("1th", "1st"), ("2th", "2nd"), ("3th", "3rd")):
        said = said.replace(usual, odd)
    return said


@pytest.mark.parametrize("label", LABELS)
@pytest.mark.parametrize("total", TOTALS)
def test_a_paragraph_of_rows(label: str, total: str) -> None:
    rows = [
        f"{label_of(label, at)} {words} {total.format(count)}"
        for at, (words, count) in enumerate(BUOY, 1)
    ]
    counted = count_pattern(parse_pattern("Little buoy\n\n" + " ".join(rows) + "\n\nFasten off."))
    assert [row.count for part in counted.parts for row in part.rows] == [6, 12, 18, 18, 12, 6]
    assert not counted.problems


@pytest.mark.parametrize("label", ["{}.", "{}:"])
@pytest.mark.parametrize("total", ["({}).", "[{}]", "({} sts)"])
def test_bare_numbers_behind_an_end(label: str, total: str) -> None:
    test_a_paragraph_of_rows(label, total)


@pytest.mark.parametrize(
    "words",
    [
        "Ch 20. Row 1: sc across. Repeat row 1 and row 2 until the net is long, then row 3 again.",
        "Round 1: 6 sc in ring (6), then work as round 2 of the gull and round 3 of the lamp.",
        "Skip (1) chain, work (2) sc in the next and 2 more in the last of all the chains there.",
    ],
)
def test_numbers_that_label_nothing_stay(words: str) -> None:
    assert lines_of_labels(words) == words
