"""A labelled row of which nothing can be read, and that speaks of no change, is asked about and
gone on with; rows told by others without a verb are worked; chatter is no first row. The pieces
are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

SOCK = "Sock\n\nCast on 20.\nRows 1-2: knit\nRow 3: k1, m1, k to end.\nRow 4: purl\n"


def test_words_of_no_change_are_asked_about_and_gone_on_with() -> None:
    text = SOCK + "Row 5: gribble 3 wombles.\nRow 6: k2tog, k to end."
    counted = count_pattern(parse_pattern(text))
    assert [row.count for row in counted.parts[0].rows] == [20, 20, 20, 21, 21, 21, 20]
    assert [(one.label, one.verdict) for one in counted.problems] == [("Row 5", Verdict.UNCLEAR)]
    assert "taken as unchanged" in counted.problems[0].message


def test_words_that_may_change_the_count_stay_uncounted() -> None:
    text = SOCK + "Row 5: gribble 3, making wombles along the edge.\nRow 6: knit."
    rows = count_pattern(parse_pattern(text)).parts[0].rows
    assert rows[5].count is None


@pytest.mark.parametrize("label", ["Rows 5-8: {}.", "Rows 5 to 8 - {}", "Rows 5-8: {}"])
@pytest.mark.parametrize(
    "words",
    [
        "rows 1-4 once more", "rows 1-4 again", "rows 1-4", "rows 1 to 4 again",
        "rows 1-4 one more time", "rows 1-4 repeated", "as rows 1-4", "same as 1-4",
    ],
)
def test_rows_told_by_others(label: str, words: str) -> None:
    text = SOCK + label.format(words) + "\nNext row: knit."
    counted = count_pattern(parse_pattern(text))
    assert [row.count for row in counted.parts[0].rows[5:]] == [21, 21, 22, 22, 22]
    assert not counted.problems


@pytest.mark.parametrize(
    "chatter",
    [
        "HARBOUR BAND - knit along with me!",
        "a cloth for the mooring's brass, nothing in it but the knit stitch.",
        "hello again, here it is: thick wool, 5 mm pins, tension 4 sts to the inch.",
        "a pullover, knitted from the bottom up",
        "3 (4) ozs. wool. Gauge: 7 sts = 1 inch",
    ],
)
def test_chatter_is_no_first_row(chatter: str) -> None:
    counted = count_pattern(parse_pattern(f"{chatter}\n\n" + SOCK))
    labels = [row.label for part in counted.parts for row in part.rows]
    assert labels == ["Cast on", "Row 1", "Row 2", "Row 3", "Row 4"]
