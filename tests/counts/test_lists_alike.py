"""The sizes of a text that names none, by the manner of its lists (texts invented)."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

SOCKS = """Harbour socks

Cast on {a} sts.
Round 1: knit around.
Round 2: *k4, k2tog* around. {b} sts
Round 3: *k3, k2tog* around. {c} sts
Round 4: *k2, k2tog* around. {d} sts
"""
NUMBERS = {"a": (48, 60, 72), "b": (40, 50, 60), "c": (32, 40, 48), "d": (24, 30, 36)}


@pytest.mark.parametrize("mark", ["/", " / ", "; ", " | ", ", "])
def test_three_sizes_with_one_mark_between_them(mark: str) -> None:
    lists = {name: mark.join(map(str, several)) for name, several in NUMBERS.items()}
    pattern = parse_pattern(SOCKS.format(**lists))
    assert len(pattern.sizes) == 3
    for size, first in enumerate(NUMBERS["a"]):
        rows = count_pattern(pattern, size).parts[0].rows
        assert [row.count for row in rows][-4:] == [first, *(NUMBERS[n][size] for n in "bcd")]


def test_every_second_one_in_a_bracket() -> None:
    lists = {name: "({}) {} ({})".format(*several) for name, several in NUMBERS.items()}
    pattern = parse_pattern(SOCKS.format(**lists))
    assert len(pattern.sizes) == 3
    rows = count_pattern(pattern, 1).parts[0].rows
    assert rows[-1].count == 30


def test_numbers_of_rows_are_no_sizes() -> None:
    text = "Cast on 20 sts.\nRows 2, 4, 6: purl.\nRows 3, 5, 7: knit.\nRows 8, 10, 12: purl.\n"
    assert parse_pattern(text).sizes == ("one size",)


@pytest.mark.parametrize(
    "rounds",
    [
        "R1: magic ring, 6 sc\nR2: [sc, inc] 3\nR3: [2 sc, inc] 3\nR4: [sc, inc] 6",
        "R1 (6): magic ring, 6 sc\nR2 (9): [sc, inc] 3\nR3 (12): [2 sc, inc] 3\n"
        "R4 (18): [sc, inc] 6",
        "(6)  R1   magic ring, 6 sc\n(9)  R2   [sc, inc] 3\n(12) R3   [2 sc, inc] 3\n"
        "(18) R4   [sc, inc] 6",
    ],
)
def test_a_number_behind_a_bracket_that_is_no_total(rounds: str) -> None:
    counted = count_pattern(parse_pattern(f"Buoy\n\n{rounds}\n"), 0)
    assert [row.count for row in counted.parts[0].rows] == [6, 9, 12, 18]
    assert not counted.problems
    assert counted.parts[0].rows[1].written.strip().startswith("[sc, inc]")
