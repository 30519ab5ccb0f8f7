"""Rows labelled through a text in one odd manner; common practice, no source."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.label_series import labels_as_usual

MANNERS = (
    "{} → ", "{} > ", "{} => ", "{} = ", "{} | ", "{}/ ", "{} ~ ", "{}… ", "({}) ", "[{}] ",
    "<{}> ", "*{}* ", "✨{}✨ ", "{} ... ", "{}; ", "{}, ",
)  # fmt: skip
NAMES = ("R{}", "Rnd {}", "rnd. {}", "Round #{}", "Rnd No. {}", "Round no {}")
ORDINALS = ("1st", "2nd", "3rd", "4th")
WORDS = ("6 sc in a magic ring", "2 sc in each st around", "*1 sc, inc* 6 times", "sc all around")


def read(labels: list[str]) -> tuple[list[str], list[int | None]]:
    """Labels and counts of a ball so labelled."""
    lines = (f"{label}{words}" for label, words in zip(labels, WORDS, strict=True))
    counted = count_pattern(parse_pattern("BUOY\n\n" + "\n".join(lines) + "\n", "US"))
    assert counted.problems == ()
    rows = [row for part in counted.parts for row in part.rows]
    return [row.label for row in rows], [row.count for row in rows]


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("manner", MANNERS)
def test_labels_in_one_manner(manner: str, name: str) -> None:
    labels, counts = read([manner.format(name.format(n)) for n in range(1, 5)])
    assert counts == [6, 12, 18, 18]
    assert [label[-1] for label in labels] == ["1", "2", "3", "4"]


@pytest.mark.parametrize("manner", MANNERS)
def test_ordinals_in_one_manner(manner: str) -> None:
    assert read([manner.format(f"{nth} round") for nth in ORDINALS])[1] == [6, 12, 18, 18]


@pytest.mark.parametrize(
    ("said", "put"),
    [
        ("R1, R2, R3 → knit", "R1-3:        knit"),
        ("R5 + R6: knit", "R5-6:    knit"),
        ("R2 & R4 → knit", "R2, 4:    knit"),
    ],
)
def test_rows_told_one_by_one(said: str, put: str) -> None:
    assert labels_as_usual(f"{said}\nR7 → p\nR8 → k").split("\n")[0] == put


@pytest.mark.parametrize(
    "text",
    [
        "Row 1 (RS): knit\nRow 2 (WS): purl",
        "Row 2, 4 and 6: purl\nRow 8, 10 and 12: purl",
        "Row 1, right side: knit\nRow 2, wrong side: purl",
        "Round one is plain\nround two is like it",
        "- Row 1: knit\n- Row 2: purl",
        "Row 1 *k1, p1* to end\nRow 2 *p1, k1* to end",
    ],
)
def test_usual_labels_stay(text: str) -> None:
    assert labels_as_usual(text) == text


@pytest.mark.parametrize("label", ["Rnd1/2/4: ", "r2/4/6 | ", "(r1) ", "R1&R2&R4= "])
def test_the_length_is_kept(label: str) -> None:
    text = f"{label}knit\n{label.replace('1', '7').replace('2', '8')}purl\n"
    assert len(labels_as_usual(text)) == len(text)
