"""What a group is made of, told in many manners: the key of a text, a sentence, a line. Common
practice, no source; the texts are invented.
"""

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEFORE = (
    "V-shell (3tr, 2ch, 3tr) all in same place",
    "V-shell = 3tr, 2ch, 3tr all in same place",
    "V-shell - work 3tr, 2ch, 3tr into same place",
    "V-shell [3tr, 2ch and 3tr in the same st]",
    "V-shell (work 3tr, 2ch, 3tr all into one place)",
    "V-shell: 3tr, 2ch, 3tr",
    "V-shell = three trebles, two chain, three trebles in the same place",
)
SENTENCES = (
    "V-shell is 3tr, 2ch, 3tr in the place named",
    "A V-shell is made of 3tr, 2ch and 3tr in one place",
    "To make a V-shell work 3tr, 2ch, 3tr in the st named",
    "V-shell, 3tr 2ch 3tr in one st",
    "V-shell .. 3tr, 2ch, 3tr in next st",
    "Work 3tr, 2ch and 3tr into one stitch for a V-shell",
    "(3tr, 2ch, 3tr) all in same place = V-shell",
)
LISTS = (
    "ABBREVIATIONS (UK terms)\nblo back loop only; ch chain; sp space;\ntr treble; {}.\n",
    "ABBREVIATIONS.—Ch., chain; tr., treble; {}.\n",
    "Special stitches: {}.\n",
    "SPECIAL STITCH\n{}\n",
)
PANEL = (
    "\nPANEL\nFoundation: make 60ch.\n"
    "Row 1: Miss first 3ch (counts as 1tr), 1tr in each of next 28ch, V-shell in next ch, "
    "1tr in each ch to end, turn.\n"
    "Row 2: 3ch (counts as first tr), 1tr in each tr to 2ch-sp, V-shell in 2ch-sp, "
    "1tr in each tr to end, turn.\n"
)


def _counts(text: str) -> list[int | None]:
    told = as_json(count_pattern(parse_pattern(text), 0))
    return [row["count"] for part in told["parts"] for row in part["rounds"]]


@pytest.mark.parametrize("listed", LISTS)
@pytest.mark.parametrize("meaning", BEFORE + SENTENCES)
def test_a_group_is_what_the_text_says_and_no_row(meaning: str, listed: str) -> None:
    # The six trebles of a V-shell stand in one of 57 places: 57 - 1 + 6 + 1 for the chain.
    text = "Quay edging\n\nUK terms.\n" + listed.format(meaning) + PANEL
    assert _counts(text) == [63, 69]


def test_a_part_that_begins_with_a_list_is_no_meaning() -> None:
    text = (
        "Buoy\n\nRnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (12)\n"
        "Edging: (sc in next st, sk 1, 5 dc in next st) around\n"
    )
    assert _counts(text)[-1] == 24
