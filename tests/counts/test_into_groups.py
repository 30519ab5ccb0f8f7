"""V stitches: what they are called, and the places in them told at length. Common practice, no
source; the texts are invented.
"""

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def _counts(text: str) -> list[int | None]:
    told = as_json(count_pattern(parse_pattern(text), 0))
    return [row["count"] for part in told["parts"] for row in part["rounds"]]


MADE = (
    ("V-st", "(V-st made)"), ("V", "(V made)"), ("V", "(= V)"), ("V", "- V made -"), ("v", "[v]"),
)  # fmt: skip
PLACES = (
    "into the 1-ch space of each of the 9 {0}s", "in ch-1 sp of each of next 9 {0}s",
    "in the ch sp of each {0} across", "in the 1-ch sp of the next 9 {0}s", "in each {0}",
    "in the centre of each {0}",
)  # fmt: skip


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize(("name", "made"), MADE)
def test_places_in_groups(name: str, made: str, place: str) -> None:
    # Nine Vs of two trebles, the turning chain and a treble at the end.
    text = (
        "Lace\n\nUK terms.\nMake 33 ch.\n"
        f"Row 1: (1 tr, 1 ch, 1 tr) in 6th ch from hook {made}, *miss 2 ch, {name} in next ch; "
        "rep from * to last 3 ch, miss 2 ch, 1 tr in last ch, turn.\n"
        f"Row 2: 3 ch, {name} in 1-ch sp of each {name}, 1 tr in top of turning ch, turn.\n"
        f"Row 3: 3 ch, work 1 tr, 1 ch and 1 tr {place.format(name)}, 1 tr into turning chain.\n"
    )
    assert _counts(text) == [20, 20, 20]
