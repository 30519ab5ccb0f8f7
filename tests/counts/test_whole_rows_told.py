"""Rows that are one thing all the way round, notes of turning chains without a number, totals that
say whether the chain is counted, and labels of the first rows; texts of our own invention.
"""

from __future__ import annotations

from itertools import product

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

AROUND = ["around", "all around", "all the way around", "to end", "to the end of the round",
          "all round", ", repeat around", ", rep to end"]  # fmt: skip
LESS = ["dec", "sc2tog", "dec over next 2 sts", "dec in next 2 sts", "inv dec over next 2 sts",
        "decrease over 2 sts", "sc next 2 sts together"]  # fmt: skip
MORE = ["inc", "2 sc in next st", "2 sc in each st", "inc in next st", "work 2 sc in each st",
        "increase in each stitch", "sc twice in each st"]  # fmt: skip


def told(text: str) -> tuple[list[int | None], int]:
    read = as_json(count_pattern(parse_pattern(text), 0))
    counts = [one["count"] for part in read["parts"] for one in part["rounds"]]
    return counts, len(read["problems"])


@pytest.mark.parametrize("around", AROUND)
def test_all_the_way(around: str) -> None:
    link = "" if around.startswith(",") else " "
    for words, total in product(MORE, ["", " (12)"]):
        rows = f"Round 1: 6 sc in magic ring (6)\nRound 2: {words}{link}{around}{total}"
        assert told(rows) == ([6, 12], 0), words
    for words, total in product(LESS, ["", " (6)"]):
        if words.startswith("sc next") and around == "all round":
            continue
        rows = "Round 1: 6 sc in magic ring (6)\nRound 2: inc around (12)\n"
        assert told(f"{rows}Round 3: {words}{link}{around}{total}") == ([6, 12, 6], 0), words


def test_amid_a_row_one_is_one() -> None:
    rows = "Round 1: 6 sc in magic ring\nRound 2: sc in next 5 sts, 2 sc in next st, join."
    assert told(rows) == ([6, 7], 0)


NOT_COUNTED = [
    "Turning ch does not count as a st.", "The turning chain is never counted as a stitch.",
    "Turning ch never counts as a stitch.", "Beginning ch does not count as a stitch.",
    "Ch 3 at start of row does not count as a stitch.", "Turning chains don't count.",
]  # fmt: skip
FIRST_ROWS = [
    "Dc in 4th ch from hook and in each ch across", "Starting in 4th ch from hook, dc in each ch",
    "Skip 3 ch, dc in next ch and in each ch across",
    "Beginning with 4th ch from hook, dc in each ch",
]  # fmt: skip


@pytest.mark.parametrize("first", FIRST_ROWS)
def test_chains_that_do_not_count(first: str) -> None:
    rows = f"Row 1: {first}. Turn.\nRow 2: Ch 3, dc in each st across."
    for note in NOT_COUNTED:
        assert told(f"{note}\nCh 18.\n{rows}") == ([15, 15], 0), note
        assert told(f"Ch 18. ({note})\n{rows}") == ([15, 15], 0), note
    counted = f"Turning ch counts as a stitch.\nCh 18.\n{rows}"
    assert told(counted) == ([16, 16], 0)


@pytest.mark.parametrize("total", ["(15)", "(15 sts)", "= 15", "(15 dc)"])
def test_a_total_tells_what_the_chain_is(total: str) -> None:
    rows = f"Ch 18.\nRow 1: Dc in 4th ch from hook and in each ch across {total}\n"
    assert told(f"{rows}Row 2: Ch 3, 1 dc in each st {total}") == ([15, 15], 0)
    more = rows.replace("15", "16")
    assert told(f"{more}Row 2: Ch 3, 1 dc in each st {total}".replace("15", "16")) == ([16, 16], 0)


@pytest.mark.parametrize(
    ("one", "two"),
    [
        ("Row 1 ", "Rows 2 - 6 "), ("[Row 1] ", "[Rows 2 - 6] "), ("Row 1 ", "Row 2 - 6 "),
        ("R1 ", "R2-6 "), ("[Row 1] ", "[Row 2 - 6] "), ("1st R.: ", "2nd to 6th R.: "),
        ("Row 1: ", "Row 2 to 6: "), ("1st Row. ", "2nd to 6th Row. "),
    ],
)  # fmt: skip
def test_labels(one: str, two: str) -> None:
    rows = f"{one}dc in 4th ch from hook and in each ch across. Turn\n{two}Ch 3, dc in each st."
    assert told(f"Ch 23.\n{rows}")[0] == [21] * 6


def test_a_row_called_behind_a_line_without_a_stop() -> None:
    rows = "1st Row. Hdc in 3rd ch from hook and in each ch, turn\n2nd Row. Ch 2, hdc across, turn"
    assert told(f"Ch 18.\n{rows}\n3rd Row. Work as Row 2 (16 stitches).")[0] == [16, 16, 16]


def test_a_number_of_stitches_is_no_row() -> None:
    rows = "Round 1, 8 s c in ring.\nRound 2, 2 s c in each s c.\nRound 3, s c in each s c."
    assert told(f"Ch 4, join.\n{rows}")[0] == [8, 16, 16]


def test_even_numbered_rows() -> None:
    rows = "Row 1: K1, yo, k to last st, yo, k1.\nEven-numbered rows: purl.\nRow 3: As row 1."
    assert told(f"Cast on 11 sts.\n{rows}")[0][-1] == 15
