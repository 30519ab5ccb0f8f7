"""Sizes whose numbers stand beside their names, in the manners of different hands, count as each
size's own numbers make it. The wordings: common practice, no source.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.own_size import sizes_beside, text_of_size


def counts(text: str, size: int) -> list[int | None]:
    """The counts of all rows for one size."""
    counted = count_pattern(parse_pattern(text), size)
    return [row.count for part in counted.parts for row in part.rows]


MANNERS = [
    "Cast on {a} sts ({b} for {y}, {c} for {z}).",
    "Cast on {a} ({b} sts for {y}, {c} sts for {z}) sts.",
    "Cast on {a} ({y} {b}, {z} {c}) sts.",
    "Cast on {a} sts ({y}: {b}; {z}: {c}).",
    "Cast on {a} sts for {x}, {b} sts for {y} and {c} sts for {z}.",
    "Cast on {a} ({x}), {b} ({y}), {c} ({z}) sts.",
    "Cast on {x} {a}, {y} {b}, {z} {c} sts.",
    "Cast on {x}: {a}, {y}: {b}, {z}: {c} sts.",
    "Cast on {x} {a} / {y} {b} / {z} {c} sts.",
    "Cast on {x} = {a}, {y} = {b}, {z} = {c} sts.",
    "Cast on {a} sts, {b} for {y}, {c} for {z}.",
    "Cast on {a} [{y} {b}, {z} {c}] sts.",
    "Cast on {a} (or {b} for the {y} size, {c} for the {z} size) sts.",
    "Cast on for {x} {a}, for {y} {b}, for {z} {c} sts.",
    "Cast on {a} sts in size {x}, {b} sts in size {y} and {c} sts in size {z}.",
]
NAMES = [
    ("small", "medium", "large"), ("newborn", "toddler", "adult"), ("S", "M", "L"),
    ("0-3 months", "3-6 months", "6-12 months"), ("kids", "women", "men"), ("Wren", "Gull", "Skua"),
]  # fmt: skip


@pytest.mark.parametrize("names", NAMES)
@pytest.mark.parametrize("manner", MANNERS)
def test_each_size_has_its_number(manner: str, names: tuple[str, str, str]) -> None:
    x, y, z = names
    said = manner.format(a=56, b=64, c=72, x=x, y=y, z=z)
    ends = manner.replace("Cast on", "Next row: knit").format(a=8, b=9, c=10, x=x, y=y, z=z)
    text = f"MOORING CAP\nSizes: {x}, {y}, {z}\n\n{said}\nRow 1: knit.\n{ends[:-1]}, turn.\n"
    assert sizes_beside(text) or parse_pattern(text).sizes == names
    for size, made in enumerate((56, 64, 72)):
        assert counts(text, size)[:2] == [made, made]


def test_words_of_each_size() -> None:
    text = (
        "BUOY SKIRT in 2T and 4T\n\nCast on 80 for 2T and 96 for 4T. Join in the round.\n"
        "Round 1: knit.\nRound 2: 2T: (k9, kfb) around. 4T: (k11, kfb) around.\nRound 3: knit.\n"
    )
    assert counts(text, 0) == [80, 80, 88, 88]
    assert counts(text, 1) == [96, 96, 104, 104]


def test_a_line_for_each_size() -> None:
    text = (
        "gull mitts for ages 1-2 = s, 3-5 = m, 6-9 = l\n\nr1: 6 sc in mr\nr2: inc x6\n"
        "r3: (1sc, inc) x6\nr4 - m + l only: (2sc, inc) x6\nr5 - l only: (3sc, inc) x6\n"
        "next rnd:\n s: (1sc, dec) x6\n m: (2sc, dec) x6\n l: (3sc, dec) x6\n"
    )
    assert counts(text, 0) == [6, 12, 18, 12]
    assert counts(text, 1) == [6, 12, 18, 24, 18]
    assert counts(text, 2) == [6, 12, 18, 24, 30, 24]


def test_numbers_in_words() -> None:
    text = (
        "Pier slippers for the small size. Where medium and large differ, the change follows.\n\n"
        "Cast on twenty-nine stitches (thirty-three stitches for medium, thirty-seven stitches for "
        "large).\nFirst row: Knit.\nSecond row: Knit nine (ten for medium, eleven for large), purl "
        "to the end.\n"
    )
    assert [counts(text, size)[0] for size in range(3)] == [29, 33, 37]
    assert [counts(text, size)[-1] for size in range(3)] == [29, 33, 37]


def test_length_is_kept_and_parts_are_no_sizes() -> None:
    text = "Cast on 80 for 2T and 96 for 4T.\n2T: knit 9.\n4T: knit 11.\nBoth: 4 for 2T, 5 for 4T."
    names = sizes_beside(text)
    assert names == ("2T", "4T")
    assert all(len(text_of_size(text, names, size)) == len(text) for size in (0, 1))
    stars = "SMALL STAR\nR1: 6 sc in ring.\n\nLARGE STAR\nR1: 8 sc in ring.\nUse 12 small beads."
    assert sizes_beside(stars) == ()


def test_words_of_yarn_and_place_name_no_size() -> None:
    text = (
        "GULL SCARF\nMaterials: medium weight yarn, large hook\n\nCh 20.\n"
        "Row 1: 5 dc in 4th ch from hook, skip 2 ch, sc in next ch.\n"
        "Row 2: sc in middle dc of shell, 2 long sts, 3 short sts; sc in middle dc of shell.\n"
    )
    assert sizes_beside(text) == ()
