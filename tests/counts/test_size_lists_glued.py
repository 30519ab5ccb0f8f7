"""Lists of sizes by the manner of their marks and codes, glued to a letter or not: every size has
its own number. The piece is invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

VEST = """Vest

Sizes: S, M, L

Cast on {a} sts.
Rows 1-4: *k1, p1; rep from * to end.
Row 5: k2, m1, k to last 2 sts, m1, k2. {b} sts.
Row 6: purl.
Row 7: {knit}{c}, k2tog, {knit}{c}.
"""
MANNERS = (
    "{}-{}-{}", "{} - {} - {}", "{}/{}/{}", "{} ({}) ({})", "{} ({}, {})", "{}, {}, {}",
    "{} [{}, {}]", "{} ({}-{})", "({}, {}, {})", "{} (S), {} (M), {} (L)", "{}({},{})",
    "{}; {}; {}",
)
CODED = ("a) {} - b) {} - c) {}", "S {}, M {}, L {}", "A {}, B {}, C {}", "a: {}, b: {}, c: {}")


def last_rows(manner: str, knit: str) -> list[list[int | None]]:
    """The counts of the last three rows for each size."""
    lists = (manner.format(*one) for one in ((40, 44, 48), (42, 46, 50), (20, 22, 24)))
    text = VEST.format(**dict(zip("abc", lists, strict=True)), knit=knit)
    counted = [count_pattern(parse_pattern(text), size) for size in range(3)]
    return [[row.count for part in one.parts for row in part.rows][-3:] for one in counted]


@pytest.mark.parametrize("manner", MANNERS)
@pytest.mark.parametrize("knit", ["k", "knit ", "K"])
def test_every_size_has_its_number(manner: str, knit: str) -> None:
    assert last_rows(manner, knit) == [[42, 42, 41], [46, 46, 45], [50, 50, 49]]


@pytest.mark.parametrize("manner", CODED)
def test_sizes_by_their_letters(manner: str) -> None:
    assert last_rows(manner, "knit ") == [[42, 42, 41], [46, 46, 45], [50, 50, 49]]
