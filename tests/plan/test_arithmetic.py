"""Spacing, gauge, tools and yarn weights against worked examples and published tables."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reader.plan.gauge import (
    Advice,
    Gauge,
    check_gauge,
    measured,
    read_gauge,
    width_cm,
)
from reader.plan.spacing import even_groups
from reader.plan.tools import HOOKS, NEEDLES, YARN_WEIGHTS, next_tool, tool_of, weight_of


@pytest.mark.parametrize(
    ("stitches", "changes", "groups"),
    [
        (50, 7, (7, 7, 7, 7, 7, 7, 8)),
        (80, 10, (8,) * 10),
        (100, 7, (14, 14, 14, 15, 14, 14, 15)),
        (64, 6, (10, 11, 11, 10, 11, 11)),
        (51, 4, (12, 13, 13, 13)),
        (112, 16, (7,) * 16),
        (90, 10, (9,) * 10),
        (37, 5, (7, 7, 8, 7, 8)),
    ],
)
def test_even_spacing_tables(stitches: int, changes: int, groups: tuple[int, ...]) -> None:
    """Worked by hand from floor((i + 1) n / k) - floor(i n / k); common practice, no source."""
    assert even_groups(stitches, changes) == groups


@given(st.integers(1, 500), st.integers(1, 60))
def test_even_groups_add_up_and_differ_by_one(stitches: int, changes: int) -> None:
    """Every stitch once, no group more than one larger than another; () where they do not fit."""
    groups = even_groups(stitches, changes)
    if stitches < changes:
        assert groups == ()
    else:
        assert sum(groups) == stitches
        assert max(groups) - min(groups) <= 1


@pytest.mark.parametrize(
    ("words", "stitches", "rows"),
    [
        ("18 sc and 20 rounds = 4 inches (10 cm)", 18, 20),
        ("9 sts = 2 inches", 18, None),
        ('14 sc and 16 rows = 4"', 14, 16),
        ("16 dc to 10 cm", 16, None),
        ("22 sts and 30 rows = 4 inches (10 cm) in stockinette stitch", 22, 30),
        ("5 sts per inch", None, None),
        ("Rnds 1-3 = 2 in", None, None),
        ("", None, None),
    ],
)
def test_gauges_are_read(words: str, stitches: int | None, rows: int | None) -> None:
    """Over four inches or ten centimetres; a count of rounds alone is no stitch gauge."""
    found = read_gauge(words)
    if stitches is None:
        assert found is None
    else:
        assert found == Gauge(stitches, rows)


def test_more_stitches_ask_for_a_larger_hook() -> None:
    """Twenty where eighteen are wanted: a size larger, and the piece is nine tenths as wide."""
    check = check_gauge(Gauge(18), Gauge(20), "crochet", 4.0)
    assert check.advice is Advice.LARGER
    assert check.tool is not None
    assert check.tool.mm == 4.5
    assert check.share == pytest.approx(0.9)


def test_far_off_asks_for_two_sizes_and_near_for_none() -> None:
    """Fifteen where eighteen are wanted: two sizes smaller; half a stitch is near enough."""
    far = check_gauge(Gauge(18, 24), Gauge(15, 24), "knitting", 4.0)
    assert (far.advice, far.sizes) == (Advice.SMALLER, 2)
    assert far.tool is not None
    assert far.tool.mm == 3.5
    assert far.row_share == pytest.approx(1.0)
    assert check_gauge(Gauge(18), Gauge(18.5), "crochet", 4.0).advice is Advice.FITS


def test_widths_and_stitches_belong_together() -> None:
    """Forty stitches at twenty to ten centimetres are twenty wide."""
    assert width_cm(40, Gauge(20)) == pytest.approx(20)
    assert measured(9, 5.0) == Gauge(18)
    assert measured(0, 5.0) is None


@pytest.mark.parametrize(
    ("us", "mm"),
    [
        ("B-1", 2.25),
        ("E-4", 3.5),
        ("G-6", 4.0),
        ("H-8", 5.0),
        ("I-9", 5.5),
        ("J-10", 6.0),
        ("K-10 1/2", 6.5),
        ("L-11", 8.0),
    ],
)
def test_hook_letters(us: str, mm: float) -> None:
    """The chart at matifs.com/crochet-hooks-size-chart, read."""
    assert next(tool.mm for tool in HOOKS if tool.us == us) == mm
    found = tool_of(us.split("-")[0], "crochet")
    assert found is not None
    assert found.mm == mm


@pytest.mark.parametrize(
    ("us", "mm"),
    [("1", 2.25), ("3", 3.25), ("5", 3.75), ("7", 4.5), ("9", 5.5), ("11", 8.0), ("17", 12.75)],
)
def test_needle_sizes(us: str, mm: float) -> None:
    """The needle columns of the Craft Yarn Council's yarn weight table, read as republished."""
    assert next(tool.mm for tool in NEEDLES if tool.us == us) == mm


def test_sizes_rise_and_end() -> None:
    """Next above and below; nothing beyond the ends."""
    for table in (HOOKS, NEEDLES):
        assert [tool.mm for tool in table] == sorted({tool.mm for tool in table})
    assert next_tool(2.0, "crochet", larger=False) is None
    assert next_tool(19.0, "crochet", larger=True) is None


def test_yarn_weights_join_without_gaps() -> None:
    """Craft Yarn Council: from lace to jumbo the needles of one weight begin where the lighter
    one's end.
    """
    assert [weight.number for weight in YARN_WEIGHTS] == list(range(8))
    for lighter, heavier in pairwise(YARN_WEIGHTS):
        assert lighter.needle_mm[1] == heavier.needle_mm[0]
        assert lighter.hook_mm[1] == heavier.hook_mm[0]
        assert lighter.knit[0] > heavier.knit[0]


@pytest.mark.parametrize(
    ("words", "number"),
    [
        ("worsted weight cotton", 4),
        ("DK wool", 3),
        ("light worsted", 3),
        ("medium (#4) yarn", 4),
        ("sock yarn", 1),
        ("some string", None),
    ],
)
def test_weights_are_named_by_words(words: str, number: int | None) -> None:
    """The longest name decides."""
    found = weight_of(words)
    assert (found.number if found else None) == number
