"""Abbreviations of a knitted pattern's own list are worked as their meaning says."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


@pytest.mark.parametrize(
    ("meaning", "row", "after"),
    [
        ("sl2q = slip 2 knitwise, knit them together", "*sl2q, k8; rep from *.", 18),
        ("BZ1 = pick up the bar between sts and knit it", "k10, BZ1, k10.", 21),
        ("trp = k1, p1, k1 in same stitch", "k10, trp, k9.", 22),
        ("SKQ - slip 1, k2tog, psso", "k10, SKQ, k7.", 18),
        ("dkt = knit 3 stitches together", "k10, dkt, k7.", 18),
    ],
)
def test_a_meaning_tells_what_is_taken_and_made(meaning: str, row: str, after: int) -> None:
    text = f"Buoy cover\n\n{meaning}\nCast on 20 sts.\nRow 1: {row}\n"
    counted = count_pattern(parse_pattern(text))
    assert [one.count for part in counted.parts for one in part.rows] == [20, after]
    assert not counted.problems


def test_short_words_without_a_meaning_are_asked_about() -> None:
    counted = count_pattern(parse_pattern("Buoy cover\n\nCast on 20 sts.\nRow 1: k10, qzt, k10.\n"))
    assert counted.problems
