"""What makers write behind a row: shouts, hearts, smiles, talk; no count changes (invented)."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.sentence_ends import sentences_ended

TAILS = [
    "!", "!!!", " \u2665", " \U0001f44d", " \u2764\ufe0f", " :)", " ;-)", " xx", " <3", "<br>",
    " ___", " [done]", " - check your tension here", ", easy as pie", "; easy as pie", " Easy!",
    ". Easy!", ". Nearly there, keep your tension even.", ". The gull has a head.",
]  # fmt: skip
TOTALS = [" (12)", " [12 sc]", " = 12", " \u2014 12 sc", " \u2192 12 sc", ". 12 sts", " - 12", ""]
GULL = """Harbour gull
Rnd 1: 6 sc in a magic ring{six}{tail}
Rnd 2: 2 sc in each st around{total}{tail}
Rnd 3: sc in each st around{total}{tail}
Rnd 4: (sc in next st, inc) x 6{more}{tail}
"""


@pytest.mark.parametrize("tail", TAILS)
@pytest.mark.parametrize("total", TOTALS)
def test_no_count_changes(tail: str, total: str) -> None:
    six, more = total.replace("12", "6"), total.replace("12", "18")
    text = GULL.format(total=total, six=six, more=more, tail=tail)
    counted = count_pattern(parse_pattern(text, "", ""))
    assert [row.count for part in counted.parts for row in part.rows] == [6, 12, 12, 18]
    assert not counted.problems


SIZES = ["\u2014 60 (66, 72) hdc", ". 60 (66, 72) hdc", "= 60 (66, 72)", "(60 (66, 72) sts)"]


@pytest.mark.parametrize("tail", TAILS)
@pytest.mark.parametrize("total", SIZES)
def test_no_count_of_several_sizes_changes(tail: str, total: str) -> None:
    text = (
        "Mooring vest\nSizes: S (M, L)\nCh 62 (68, 74).\n"
        f"Row 1: Hdc in 3rd ch from hook and in each ch across {total}{tail}\n"
        f"Row 2: Ch 2, turn, hdc in each st across {total}{tail}\n"
    ).replace(" .", ".")
    counted = count_pattern(parse_pattern(text, "", ""), 1)
    rows = [row.count for part in counted.parts for row in part.rows if row.number]
    assert rows == [66, 66]


@pytest.mark.parametrize(
    "words",
    ["Rnd 2: sc around (12), cut yarn.", "Rnd 2: sc around (12). Change to blue.", "k3, p3 x x"],
)
def test_what_is_to_be_done_stays(words: str) -> None:
    assert sentences_ended(words) == words
