"""Rows told together: the count of each stands where it is worked, whatever the words and the place
of the sentence that tells them.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

NARROWED = {n: f"*k{7 - (n + 1) // 2}, k2tog* three times" for n in (1, 3, 5, 7)}
WANTED = [("1", 21), ("2", 21), ("3", 18), ("4", 18), ("5", 15), ("6", 15), ("7", 12)]
LIKEWISE = (
    "knit, and so are {}", "knit. So are rounds {}.",
    "knit. So are all the other even-numbered rounds.",
    "knit, as are all even rounds.", "knit. Same for {}.", "knit. The same goes for rounds {}.",
    "knit. Rounds {} are the same.", "knit; rounds {} likewise.", "knit (rounds {} too).",
    "knit. This goes for every even round.", "knit this and all other even rounds.",
    "knit, and knit all even rounds from here on.",
    "knit all sts. Work all even rounds in this way.",
    "knit. Ditto for rounds {}.", "knit, same on rnds {}", "knit (and {} as well)",
)  # fmt: skip
LISTED = (
    "Rnds {}: knit", "Rounds {} - knit.", "R{}: knit", "On rounds {} just knit.", "Knit rounds {}.",
    "Rounds {} are plain knit.", "In between, on {}, knit.", "(Rnds {}: knit)", "Rnds {} = k",
    "All even rnds: knit", "Every even round is knit.", "Knit all even rounds.",
)  # fmt: skip


def counted(*lines: str) -> tuple[list[tuple[str, int | None]], int]:
    """The label and count of every row behind the cast-on, and how many problems there are."""
    pattern = count_pattern(parse_pattern("\n".join(("Cast on 24 sts, join.", *lines)), "", ""))
    rows = [row for part in pattern.parts for row in part.rows][1:]
    return [(row.label.split()[-1], row.count) for row in rows], len(pattern.problems)


@pytest.mark.parametrize("label", ["Rnd {}: ", "Round {}. ", "rnd {} - ", "{}) "])
@pytest.mark.parametrize("said", LIKEWISE)
def test_rows_likened_to_the_one_above(label: str, said: str) -> None:
    rows = {**NARROWED, 2: said.format("4 and 6")}
    lines = [label.format(n) + rows[n] for n in (1, 2, 3, 5, 7)]
    assert counted(*lines) == (WANTED, 0)


@pytest.mark.parametrize("place", [0, 3, 4])
@pytest.mark.parametrize("listed", ["2, 4, 6", "2, 4 and 6", "2 + 4 + 6"])
@pytest.mark.parametrize("said", LISTED)
def test_rows_told_before_behind_and_amid_the_others(said: str, listed: str, place: int) -> None:
    lines = [f"Rnd {n}: {words}" for n, words in NARROWED.items()]
    lines.insert(place, said.format(listed))
    assert counted(*lines) == (WANTED, 0)


@pytest.mark.parametrize(
    "label", ["rnds 2, 4: {}", "rnds 2, 4 - {}", "rows 2 and 4: {}", "rnds 2-4: {}"]
)
@pytest.mark.parametrize("words", ["knit", "knit.", "k", "purl"])
def test_labels_in_small_letters_begin_lines(label: str, words: str) -> None:
    row = "row" if "row" in label else "rnd"
    lines = (f"{row} 1: *k6, k2tog* three times", label.format(words))
    last = f"{row} 5: *k5, k2tog* three times"
    assert [count for _, count in counted(*lines, last)[0]][-1] == 18


@pytest.mark.parametrize("mark", [": ", " → ", " >> ", " | "])
@pytest.mark.parametrize(
    "many", ["R1, R2, R3", "R1, 2, 3", "R1 - 3", "Rnds 1, 2 and 3", "Rounds 1 till 3", "1, 2, 3"]
)
def test_lists_of_labels_in_any_manner(many: str, mark: str) -> None:
    word = many.split("1")[0].replace("s ", " ")
    rows, problems = counted(f"{many}{mark}plain knit", f"{word}4{mark}*k6, k2tog* three times")
    assert [count for _, count in rows] == [24, 24, 24, 21]
    assert not problems


@pytest.mark.parametrize(
    "words", ["knit as row 8 of the chart", "knit, and so on (24)", "knit to the same place, 24"]
)
def test_words_that_liken_no_rows(words: str) -> None:
    rows, _ = counted("Rnd 2: " + words, "Rnd 3: knit")
    assert [label for label, _ in rows] == ["2", "3"]


def test_a_range_is_no_list() -> None:
    rows, problems = counted("Rnds 1-4: knit", "Rnd 5: *k6, k2tog* three times")
    assert [count for _, count in rows] == [24, 24, 24, 24, 21]
    assert not problems


@pytest.mark.parametrize(
    "text",
    [
        "Rnd 1: 6 sc in ring.\n87***as 4th row but \u00b9* knit, and so are 4 and \u00b2.",
        "BACK\nCast on 60 sts.\nDec 1 st at each end of every 0th row 3 times.\n",
    ],
)
def test_odd_figures_are_no_numbers(text: str) -> None:
    """Figures above the line, and a row that is the 0th, were found by random texts."""
    assert count_pattern(parse_pattern(text), 0) is not None
