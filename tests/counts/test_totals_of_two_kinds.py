"""Totals of two kinds in several sizes, and changes at equal distances (invented)."""

from __future__ import annotations

from itertools import product

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

MARKS = [". {}.", " ({})", " - {}", " = {}", " \u2014 {}.", " [{}]"]
BESIDE = ["{} ch-1 sps", "{} sps", "{} spaces", "{} ch-sps"]
AND = [", ", " and ", " + ", " & "]


def counts(text: str, size: int = 0) -> list[int | None]:
    """What lies on hand after each numbered row."""
    counted = count_pattern(parse_pattern(text, "", ""), size)
    return [row.count for part in counted.parts for row in part.rows if row.number]


@pytest.mark.parametrize("mark", MARKS)
@pytest.mark.parametrize("beside", BESIDE)
def test_the_second_kind_is_not_worked(mark: str, beside: str) -> None:
    for link, (two, other) in product(AND, (("6 (7)", "5 (6)"), ("6 [7]", "5 [6]"))):
        if mark[-1] in ")]" and mark[1] == two[2]:
            continue
        total = mark.format(f"{two} sc{link}{beside.format(other)}")
        text = (
            f"Sizes: S {two[2]}M{two[4]}\nCh 12 {two[2]}14{two[4]}.\n"
            "Row 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, turn, sc in first "
            f"sc, *ch 1, sk 1, sc in next; rep from * across{total}\n"
        )
        assert counts(text) == [11, 6], text
        assert counts(text, 1) == [13, 7], text


@pytest.mark.parametrize("kind", ["sc", "single crochet", "sts", "stitches", "times"])
@pytest.mark.parametrize(
    "apart", ["evenly", "at equal distances", "at regular intervals", "at even intervals around"]
)
def test_changes_at_equal_distances_are_made(kind: str, apart: str) -> None:
    for way, made in (("increasing", 16), ("inc", 16), ("decreasing", 8)):
        text = (
            "Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n"
            f"Row 2: Ch 1, turn, sc in each sc across, {way} 4 {kind} {apart}.\n"
        )
        assert counts(text) == [12, made], text
