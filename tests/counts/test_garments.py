"""Garments told in running text: rows without labels, second sides, pieces told by one before."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

SLIPOVER = """Harbour Slipover

BACK: With Navy, ch 42, hdc in 3rd ch from hook and in each remaining ch, ch 2, turn. 2nd ROW: Hdc
in space between next 2 sts, repeat from beg across row, working last hdc in top of ch 2, ch 2,
turn. Repeat last row throughout working 2 rows each Navy, White, Sand and Red, cutting yarn at end
of each 2nd row. SHAPE ARMHOLES: Sl st across 3 sts, work to within last 3 sts, turn. NEXT ROW: Dec
1 st at beg and end of row. Work even until armholes measure 8 inches from 1st dec. SHOULDERS: Work
across 10 sts, ch 2, turn. Work across 5 sts, cut yarn. Skip 12 sts for neck, attach yarn in next
st and work across remaining sts. NEXT ROW: Sl st across 5 sts, work across remaining sts, cut yarn.

LEFT FRONT: With Navy, ch 22. Work same as back to armhole. SHAPE ARMHOLE: Work same as back. NEXT
ROW: Dec 1 st at beg of row.

SLEEVES: With Navy, ch 32. Work in pattern for 6 rows. SHAPE CAP: Work armhole shaping same as back.
NEXT ROW: Dec 1 st at beg and end of row.

POCKET: With White ch 12, work in pattern for 4 rows, then work 2 rows Sand and 2 rows Red.
"""

MATS = """Lighthouse Mats

MAT: With White ch 24, sc in 2nd ch from hook, * ch 1, skip next ch, sc in next ch, repeat from *
across. 2nd ROW: Ch 1, sc in first sc, * sc in next sp, sc in next sc, repeat from * across. 3rd
ROW: Ch 1, sc in first sc, * ch 1, skip next sc, sc in next sc, repeat from * across. Repeat 2nd and
3rd rows 8 times.

COASTER: With White ch 8, work same as mat for 6 rows, cut yarn.
"""


def counts_of(text: str) -> dict[str, list[int | None]]:
    """The counts of each part, by its name."""
    parts = count_pattern(parse_pattern(text)).parts
    return {part.name: [row.count for row in part.rows if row.label != "Start"] for part in parts}


def test_rows_in_running_text_are_rows_of_their_own() -> None:
    """Shoulders, the second side over the stitches that were left, and a stripe of so many rows."""
    back = counts_of(SLIPOVER)["BACK"]
    assert back == [*[40] * 8, 34, 32, 32, 10, 5, 10, 5]


def test_a_pocket_is_worked_in_the_pattern_of_the_back() -> None:
    """Its first row is the back's first row over its own chain."""
    assert counts_of(SLIPOVER)["POCKET"] == [10] * 8


def test_half_a_piece_is_shaped_at_one_edge_as_the_whole_one_is() -> None:
    """A front of two has one armhole: half of what the back loses there."""
    front = counts_of(SLIPOVER)["LEFT FRONT"]
    assert front == [*[20] * 8, 17, 16, 15]


def test_shaping_of_one_name_is_that_of_the_piece_quoted() -> None:
    """A sleeve's cap takes the armhole's shaping, and nothing that is worked even behind it."""
    assert counts_of(SLIPOVER)["SLEEVES"] == [*[30] * 6, 24, 22, 20]


def test_rows_quoted_over_another_width_are_worked_over_it() -> None:
    """Where the repeats of a row change the count, its gain is not that of the wider piece."""
    assert counts_of(MATS)["COASTER"] == [4, 7, 4, 7, 4, 7]


def test_pieces_of_a_number_in_capitals_and_rows_quoted_out_of_order() -> None:
    """ "2ND SQUARE" begins a part; "2nd, 3rd and 2nd rows" are worked in that order."""
    said = (
        "1ST SQUARE: Ch 21, sc in 2nd ch from hook and in each ch, ch 1, turn.\n"
        "2nd Row: 2 sc in first sc, sc in each sc across, ch 1, turn.\n"
        "3rd Row: Skip first sc, sc in each sc across, ch 1, turn.\n"
        "Next 3 Rows: Repeat 2nd, 3rd and 2nd rows, cut yarn.\n\n"
        "2ND SQUARE: Ch 11, sc in 2nd ch from hook and in each ch, ch 1, turn.\n"
    )
    counts = counts_of(said)
    assert counts["1ST SQUARE"] == [20, 21, 20, 21, 20, 21]
    assert counts["2ND SQUARE"] == [10]


def test_stripes_run_until_there_are_so_many_of_each_colour() -> None:
    """Those worked before are among them."""
    said = (
        "BELT: With Red ch 7, sc in 2nd st from hook, 1 sc in each st of ch, ch 1, turn.\n"
        "2nd Row. 1 sc in each sc, drop Red, turn.\nWorking even in sc work 2 rows White, 2 rows "
        "Red until there are 3 stripes of each color. Work 2 more rows in Red, cut yarn.\n"
    )
    assert counts_of(said)["BELT"] == [6] * 14


HEADS = """Lighthouse Cat

HEAD
Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each sc.
Rnd 3: * sc in next sc, 2 sc in next sc, repeat from * around.
Rnd 4: sc in each sc.

BODY
Rnds 1-3: Work as for head.
Rnd 4: * sc in next 2 sc, 2 sc in next sc, repeat from * around.

EAR
Work rnds 1 and 2 same as head.
Rnd 3: sc in each sc.
"""


def test_so_many_rows_of_another_piece() -> None:
    """Those of the label, those named, or the first few; never more than these."""
    counts = counts_of(HEADS)
    assert counts["BODY"] == [6, 12, 18, 24]
    assert counts["EAR"] == [6, 12, 12]
    mitten = "MITTEN: With White ch 22. Work first 2 rows as for back. Next Row: 1 sc in each st.\n"
    assert counts_of(SLIPOVER + "\n" + mitten)["MITTEN"] == [20, 20, 20]
