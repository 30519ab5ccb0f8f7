"""Labels with their side, in whatever manner they are set: common practice, no source."""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

LABELS = ("Row {}", "R{}", "rnd {}", "Row #{}", "Row no. {}", "{}. row")
SIDES = ("", " (RS)", " [RS]", ", RS", " - RS", " RS", " (right side)")
MARKS = (":", " -", " —", "—", ".")

def counts(text: str) -> tuple[list[tuple[int | None, int | None]], list[str]]:
    """The numbered rows with their counts, and what was asked."""
    counted = count_pattern(parse_pattern(text, craft="knitting"))
    rows = [row for part in counted.parts for row in part.rows if row.label != "Cast on"]
    return [(row.number, row.count) for row in rows], [one.message for one in counted.problems]


@pytest.mark.parametrize(("label", "side"), [*itertools.product(LABELS, SIDES)])
def test_a_side_behind_the_number(label: str, side: str) -> None:
    other = side.replace("RS", "WS").replace("right", "wrong")
    for mark in MARKS:
        rows = ("*k2, p2; rep from * to end", "knit to end", "as row 1")
        lines = [
            f"{label.format(n + 1)}{one}{mark} {words}"
            for n, (one, words) in enumerate(zip((side, other, side), rows, strict=True))
        ]
        assert counts("\n".join(["CO 20 sts.", *lines])) == ([(1, 20), (2, 20), (3, 20)], [])


@pytest.mark.parametrize("label", ["Row {} WS", "R{} RS", "{} row right side facing", "{} (RS):"])
def test_no_mark_is_needed_behind_the_side(label: str) -> None:
    nth = ("1st", "2nd") if label.startswith("{} row") else ("1", "2")
    lines = [f"{label.format(nth[0])} k2, p2", f"{label.format(nth[1])} *k1, p1; rep from *"]
    assert counts("\n".join(["CO 4 sts.", *lines]))[0] == [(1, 4), (2, 4)]
