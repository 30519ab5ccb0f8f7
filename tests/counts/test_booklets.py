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


KNITTED = [
    "STRAP: Using 2 strands of wool, cast on 8 sts. Knit 20 rows, fold in half and sew.",
    "STRAP\n\nWith Blue cast on 8 sts.\n\nUsing two strands knit in garter st for 20 rows; "
    "fold in half.",
]


@pytest.mark.parametrize("text", KNITTED)
def test_what_is_knitted_of_strands_is_counted(text: str) -> None:
    assert rows(text)[-1][1] == 8


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


SQUARES = """HARBOUR BLOCK

With Navy ch 30, s c in 2nd st from hook, 1 s c in each remaining st of ch, ch 1, turn.

2nd Row: 1 s c in each of the next 7 s c, insert hook in next s c, pull loop through, with Sand,
yarn over and pull through both loops on hook, drop Navy to back of work, with Sand 1 s c in each of
the next 13 sts working in top of sts only, drop Sand, using a separate ball of Navy work * long s c
in base of next s c, s c in top of next s c, repeat from * 3 times, ch 1, turn.

3rd Row: Keeping pattern uniform with Navy work in pattern across next 8 sts, pick up Sand and work
1 s c in each of the next 13 s c, with Navy work in pattern across last 8 sts, ch 1, turn.
"""


def test_blocks_of_colour_keep_their_stitches() -> None:
    """A stitch told by hand, colours taken up, and stitches worked "in pattern" are all counted."""
    assert rows(SQUARES) == [("Row 1", 29), ("Row 2", 29), ("Row 3", 29)]
    assert not counted(SQUARES).problems


LEAVES = """WATER LILY

With White, ch 4, join to form a ring, ch 1, 8 s c in ring, join.

2nd Round: Ch 1, s c in same space, * ch 4, s c in next s c, repeat from * all around (8 loops).

3rd Round: Over each loop, work 1 s c, 5 d c, 1 s c, cut thread.

4th Round: Attach Green in s c of 2nd round, * ch 6, s c in 2nd st from hook, 1 d c in each of the
next 4 sts of ch, s c in next s c in 2nd round between petals, repeat from * all around.
"""


def test_leaves_stand_on_an_earlier_round() -> None:
    """What is worked back along a chain tells of no row: eight leaves of six stitches."""
    assert [count for _, count in rows(LEAVES)] == [8, 8, 56, 48]


MIDDLES = {
    "1 s c in each s c, working 3 center s c tog": 13,
    "1 s c in each s c working center 3 s c tog": 13,
    "Work in s c, working the 3 center sts together": 13,
    "Work in s c, working the middle 3 s c tog": 13,
    "Work in s c, decreasing 1 st at center": 14,
    "1 s c in each s c decreasing 2 sts at center back": 13,
    "Work in s c, inc 1 st in center of row": 16,
}


@pytest.mark.parametrize("row", MIDDLES)
def test_changes_in_the_middle(row: str) -> None:
    text = f"Ch 16, s c in 2nd st from hook and in each ch, turn.\n\n2nd Row: {row}, ch 1, turn.\n"
    assert rows(text) == [("Row 1", 15), ("Row 2", MIDDLES[row])]
    assert not counted(text).problems


MESHES = """NET

Ch 4, join to form a ring, ch 4, d c in ring, * ch 1, d c in ring, repeat from * 7 times, ch 1,
join in 3rd st of ch.

2nd Round: Ch 4, d c in next d c, * ch 1, d c in next d c, repeat from * all around, ch 1, join in
3rd st of ch, {} meshes.
"""


@pytest.mark.parametrize(("printed", "asked"), [(10, False), (12, True)])
def test_a_bare_number_of_meshes_is_a_total(printed: int, asked: bool) -> None:
    found = counted(MESHES.format(printed))
    assert found.parts[0].rows[-1].stated == printed
    assert bool(found.problems) is asked


TOOLS = [
    "1 pr. knitting needles No. 8",
    "Plastic crochet hook size J or any size hook which will result in gauge below",
    "Steel crochet hook No. 7",
    "One set double pointed needles No. 6",
]


@pytest.mark.parametrize("tool", TOOLS)
def test_tools_are_no_rows(tool: str) -> None:
    text = f"HAT\n\nMaterials:\n2—2 oz. balls Grey\n\n{tool}\n\nCh 5, 8 s c in 5th ch.\n"
    assert len(rows(text)) == 1


def test_a_space_between_corners_is_one_along_the_side() -> None:
    text = (
        "Ch 4, join to form a ring, ch 3, 2 d c in ring, * ch 1, 3 d c in ring, repeat from * "
        "twice, ch 1, join in 3rd st of ch.\n\n2nd Round: Attach Red in ch 1 loop, ch 3, 2 d c in "
        "same loop, ch 1, 3 d c in same loop, * 3 d c, ch 1, 3 d c in next loop, repeat from * "
        "twice, join.\n\n3rd Round: Attach Blue in corner loop, ch 3, 2 d c in same loop, ch 1, "
        "3 d c in same loop, * 3 d c in next space between corners, 3 d c, ch 1, 3 d c in next "
        "loop, repeat from * twice, 3 d c in next space, join.\n"
    )
    assert [count for _, count in rows(text)] == [12, 24, 36]
    assert not counted(text).problems
