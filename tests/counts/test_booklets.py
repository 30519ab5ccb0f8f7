"""Whole pieces as booklets of rugs, afghans and gifts set them: yarn by number and weight, colours
cut short, fringes; all text is our own.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import CountedPattern
from reader.pattern.parser import parse_pattern
from reader.terms.crafts import Terms


def counted(text: str) -> CountedPattern:
    """The text as it is counted."""
    return count_pattern(parse_pattern(text))


def rows(text: str) -> list[tuple[str, int | None]]:
    """The label and the count of each row."""
    return [(row.label, row.count) for part in counted(text).parts for row in part.rows]


SHELLS = """QUAY MAT

Materials Required:
  2—4 oz. skeins Dk. Blue
  1—70 yd. skein each Lt. Grey and Sand
  Crochet hook size H.

With Dk. Blue, ch 34, s c in 2nd st from hook, ch 2, 2 d c in same space, * skip 3 sts of ch,
s c in next st, ch 2, 2 d c in same space (shell), repeat from * across ch, ending with s c in
last st of ch (8 shells), cut yarn, turn.

2nd Row: Attach Lt. Grey in 1st s c, ch 3, 2 d c in same space, * s c in next s c, ch 2, 2 d c
in same space, repeat from * across row ending with s c in last st of ch 3, cut yarn, turn.

3rd Row: Attach Sand in 1st s c and work same as 2nd row.
"""


def test_yarn_by_number_and_weight_is_no_row() -> None:
    """Three rows, of which the third begins in the shell that the second ended with."""
    assert rows(SHELLS) == [("Row 1", 25), ("Row 2", 25), ("Row 3", 25)]
    assert not counted(SHELLS).problems


STRANDS = [
    "FRINGE: Wind Dk. Blue over a 5 inch cardboard, cut one end. Using 2 strands, double in half "
    "and knot through every other st.",
    "Tassels: Cut 6 strands 9 inches long, fold in half and loop through each corner st.",
    "Cut twelve 10-inch lengths of each colour. Knot 3 together through every 2nd st across.",
    "FRINGE: Wrap Lt. Grey around a 4-inch card 60 times and cut at one end; double 2 strands "
    "and knot in each st.\n\nNext Row: * Take half of the strands of one group and half of the "
    "next group and knot 1 inch below the first knots, repeat from * across.",
]


@pytest.mark.parametrize("strands", STRANDS)
def test_strands_make_no_row(strands: str) -> None:
    assert rows(f"{SHELLS}\n{strands}\n") == [("Row 1", 25), ("Row 2", 25), ("Row 3", 25)]


def test_double_in_half_tells_no_uk_terms() -> None:
    """Three chains begin a round of US double crochet, whatever is doubled in half at its end."""
    text = (
        "With Dk. Green ch 8, join to form a ring, ch 3 and work 15 d c in ring, join in 3rd st of "
        "ch.\n\n2nd Round: Ch 3, d c in same space, 2 d c in each d c, join.\n\n"
        f"{STRANDS[0]}\n"
    )
    assert parse_pattern(text).terms is Terms.US
    assert rows(text) == [("Round 1", 16), ("Round 2", 32)]


def test_shades_cut_short_end_no_sentence() -> None:
    text = (
        "With Dk. Blue ch 22, s c in 2nd st from hook and in each remaining st of ch, ch 1, turn."
        "\n\n2nd Row: S c in each s c, ch 1, then ch 1 more to turn. Repeat 2nd row, working 2 rows"
        " Lt. Yellow, 1 row Dk. Blue, 2 rows Med. Green, 1 row Dk. Blue, cut yarn.\n"
    )
    assert rows(text) == [(f"Row {n}", 21) for n in range(1, 9)]
    assert not counted(text).problems


def test_a_list_of_what_is_short_for_what_makes_no_rows() -> None:
    listed = "CROCHET ABBREVIATIONS\n\n  ch   chain\n  st   stitch\n  d c  double crochet\n"
    text = f"{SHELLS}\n{listed}"
    assert rows(text) == [("Row 1", 25), ("Row 2", 25), ("Row 3", 25)]
