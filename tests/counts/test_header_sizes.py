"""Sizes named above the rows, with lists of numbers in odd manners. Common practice, no source."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.header_sizes import header_names
from reader.text.odd_size_lists import usual_lists

HEADS = [
    ("Available in sizes {a}, {b}, {c}", "{x} ({y}, {z})"),
    ("Size {a} ({b}, {c})", "{x} ({y} {z})"),
    ("Directions are for size {a}; changes for {b} and {c} are in parentheses.", "{x} ({y} ; {z})"),
    ("Instructions given for {a}. Changes for {b} and {c} are in parentheses.", "{x} {{{y}, {z}}}"),
    ("Instructions are for {a} with changes for {b}, {c} in brackets.", "{x} [{y}: {z}]"),
    ("Finished sizes {a} ({b}, {c})", "{x}, {y} and {z}"),
    ("To fit: {a} ({b}, {c})", "{x} ({y}) {z}"),
    ("Pattern is written for {a} ({b}, {c}).", "{x} ({y}) ({z})"),
    ("{a} ({b}, {c})", "{x} ({y}/{z})"),
    ("Sizes: {a} / {b} / {c}", "{x} | {y} | {z}"),
]
NAMES = [("small", "medium", "large"), ("12", "14", "16"), ("Child", "Woman", "Man")]


@pytest.mark.parametrize("names", NAMES)
@pytest.mark.parametrize(("head", "manner"), HEADS)
def test_sizes_and_their_numbers(head: str, manner: str, names: tuple[str, str, str]) -> None:
    if head[0] == "{" and names[0].isdigit():
        return
    a, b, c = names
    begun, apart = manner.format(x=64, y=72, z=80), manner.format(x=6, y=7, z=8)
    text = (
        f"MOORING CAP\n{head.format(a=a, b=b, c=c)}\nMaterials: sport yarn, 5 skeins (2-oz.)\n\n"
        f"Cast on {begun} sts.\nRound 1: knit.\nRound 2: (k2tog, k{apart}) 8 times.\n"
        "Round 3: knit.\n"
    )
    pattern = parse_pattern(text)
    assert pattern.sizes == names
    for size, made in enumerate((64, 72, 80)):
        rows = [row.count for part in count_pattern(pattern, size).parts for row in part.rows]
        assert rows == [made, made, made - 8, made - 8]


@pytest.mark.parametrize(
    "text",
    ["Materials: 5 skeins (2-oz.) of sport yarn", "Rows 1, 2 and 3: knit.", "4 mm (US 6) needles"],
)
def test_no_sizes(text: str) -> None:
    assert header_names(text) == ()
    assert usual_lists(text, 3) == text


def test_length_is_kept() -> None:
    text = "Ch 30 (36) 42 sts, k13 (14)\n15. K 60 | 64 | 68 and 6 (7 ; 8) more"
    put = usual_lists(text, 3)
    assert put.split() == ["Ch", "30", "(36,42)", "sts,", "k13(14,15)", ".", "K", "60", "(64,68)",
                           "and", "6", "(7,8)", "more"]  # fmt: skip
    assert len(put) == len(text)


@pytest.mark.parametrize("text", ["ch 6(7)\n8 sts", "ch 16 (17)\n\n\n18 sts", "60 (64)\n(68)"])
def test_line_breaks_are_kept(text: str) -> None:
    put = usual_lists(text, 3)
    assert (len(put), put.count("\n")) == (len(text), text.count("\n"))
    parse_pattern(f"CAP\nSizes: S, M, L\n\n{text}")
