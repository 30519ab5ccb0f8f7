"""Leaflets of yarn makers of about 1930 to 1970: what has to be bought, lists of abbreviations and
finishing amid the work, first rows told together, stitches on holders, ends and changes for a size.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import CountedPattern
from reader.pattern.parser import parse_pattern


def counted(text: str, size: int = 0) -> CountedPattern:
    """The text counted in a size."""
    return count_pattern(parse_pattern(text), size)


def counts_of(text: str, size: int = 0) -> list[int | None]:
    """The counts of all rows, the same one after the other told once."""
    rows = [row.count for part in counted(text, size).parts for row in part.rows]
    return [one for at, one in enumerate(rows) if at == 0 or one != rows[at - 1]]


SUPPLIES = """HARBOUR SCARF

Materials Required:
  5—1 ounce skeins Sea Green
  4 (5)—4 oz. skeins Rope or Sail for the wrap
  1 Pr. Knitting Needles No. 6 OR ANY OTHERS THAT GIVE THE GAUGE
  1 Set of Double Pointed Needles No. 8.

Cast on 33 sts. 1st row: K. 2. Set up the rib: k1, p1 to last st, k1. Bind off.

KNITTING ABBREVIATIONS

  K             Knit
  Dec.          Decrease
  P.s.s.o.      Pass slip st over st
"""


def test_what_is_bought_and_lists_of_short_words_are_no_rows() -> None:
    """Skeins and needles by their number, and both columns of the list, are remarks."""
    made = counted(SUPPLIES)
    assert [row.label for part in made.parts for row in part.rows][:2] == ["Cast on", "Row 1"]
    assert counts_of(SUPPLIES) == [33, 0]
    assert len(made.materials) >= 2
    assert made.problems == ()


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Cast on 3 sts. 1st 4 ROWS: Inc 1 st at beg and end of each row. 5th ROW: K across.",
         [3, 5, 7, 9, 11]),
        ("Cast on 20 sts. First 2 rows: Dec 1 st at each end. 3rd row: K.", [20, 18, 16]),
        ("Cast on 72 sts. NEXT 10 ROWS: K across each row. Bind off loosely. FINISHING: Sew the "
         "side seam. Make 1 large red lamp and 1 small white lamp.", [72, 0]),
        ("Cast on 76 sts. 1st and 2nd ROWS: K 2, P 2 across each row. 3rd and 4th ROWS: P 2, K 2 "
         "across each row.", [76]),
        ("Cast on 30 sts. 1st and 3rd ROWS: K 3, * P 3, K 3, repeat from * 3 times, P 3. 2nd and "
         "4th ROWS: P across, inc 1 st in last st. Repeat these 4 rows once more.",
         [30, 31, 32, 33, 34]),
    ],
)
def test_rows_of_leaflets(text: str, counts: list[int]) -> None:
    """First rows together, a cast-off behind a range, "across each row", two lists of rows."""
    assert counts_of(text) == counts


HOLDER = "Cast on 40 sts. Next row: K 12 and place on st holder, K to end. Work 4 rows. Next row: "


@pytest.mark.parametrize(
    "words",
    [
        "K across all sts including sts from st holder.",
        "K across all sts, including those on the holder.",
        "P to end and purl the sts on the holder.",
        "K across sts on needle and sts from holder.",
        "K across, then K across sts from holder.",
    ],
)
def test_stitches_that_waited_come_back_in_an_aside(words: str) -> None:
    """However it is said, the twelve are on the needle again."""
    assert counts_of(HOLDER + words + " K 2 rows.") == [40, 28, 40]


def test_two_holders_are_told_apart_when_a_thumb_is_closed() -> None:
    """What is drawn together is gone; the second lot comes first, then the other."""
    text = (
        "Cast on 42 sts. Next row: P 16 sts and place on st holder, work next 12 sts for thumb, "
        "place remaining sts on 2nd st holder. Work 4 rows. Next row: K 2 tog across. Break yarn "
        "and draw sts tog. Fasten. Pick up and P sts from 2nd st holder. Next row: K across all "
        "sts including sts from 1st st holder. There are 30 sts on needle. K 2 rows."
    )
    assert counts_of(text) == [42, 12, 6, 14, 30]
    assert counted(text).problems == ()


SIZED = "Sizes: Small, Medium, Large\n\nCast on 28 (32, 36) sts. "


@pytest.mark.parametrize(
    ("words", "size", "counts"),
    [
        ("Work in rib for 8 rows, inc 2 sts in last row for large size only. Next row: K.", 0,
         [28]),
        ("Work in rib for 8 rows, inc 2 sts in last row for large size only. Next row: K.", 2,
         [36, 38]),
        ("K 4 rows, inc 1 st on last row (medium size only). K 2 rows.", 1, [32, 33]),
        ("K 4 rows, inc 1 st on last row (medium size only). K 2 rows.", 2, [36]),
        ("K 4 rows, inc 2 (4, 6) sts evenly across last row. K 2 rows.", 1, [32, 36]),
        ("Row 1: * K 2 tog, K 2, repeat from * ending with K-O (K O, K 2 tog).", 0, [28, 21]),
        ("Row 1: * K 2 tog, K 3, repeat from * ending with K 3 (K 2, K 2 tog K 4).", 2, [36, 29]),
    ],
)
def test_changes_and_ends_for_one_size(words: str, size: int, counts: list[int]) -> None:
    """What is told for some sizes is worked in them alone."""
    assert counts_of(SIZED + words, size) == counts


def test_words_keep_their_place_behind_an_old_word() -> None:
    """ "Adding a stitch" has less room than what it reads as: what follows keeps its letters."""
    text = "Cast on 20 stitches. Knit 3 rows, adding a stitch at the end of each row, knit 9 rows."
    pattern = parse_pattern(text)
    assert len(pattern.reading) == len(text)
    written = [row.written for part in count_pattern(pattern).parts for row in part.rows]
    assert written[-1].startswith("knit 9 rows")


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Cast on 7 stitches, join. 1st round: Plain. 2nd round: Alternately knit 1, throw the "
         "cotton forward. 3rd round: Plain.", [7, 14]),
        ("Cast on 7 stitches, join. 1st round: Plain. 2nd round: 7 times: over, knit 1.", [7, 14]),
        ("Cast on 7 stitches, join. 1st round: Plain. 2nd round: Seven times alternately: knit 1, "
         "over. 3rd round: Plain.", [7, 14]),
        ("Cast on 9 stitches. 1st row: knit 1 (over, knit 1, and narrow 2 times), knit 2. 2nd "
         "row: Plain.", [9]),
        ("Cast on 88 stitches. 1st row: Knit 1 (over, knit 1, and narrow 3 times), knit 1. 2nd "
         "row: Purl.", [88]),
        ("Cast on for the sail 84 or 96 stitches; knit 2 rows.", [84]),
        ("Cast on, for the sail, 84 stitches. Knit 2 rows.", [84]),
        ("CO 60 sts. Knit 5 rounds.\nDec 1: [k8, k2tog].\nKnit 2 rounds.\nDec 2: [k7, k2tog].",
         [60, 54, 48]),
    ],
)
def test_lists_with_their_times_before_or_inside(text: str, counts: list[int]) -> None:
    """How often is told before the list or within its bracket, or not at all."""
    assert counts_of(text) == counts


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Cast on 37 sts. 1st ROW: K. 2nd ROW: P 3, * drop next st down 4 rows, insert needle in "
         "st and under strands, K the st, P 5, repeat from * ending last repeat with P 3.", [37]),
        ("Cast on 37 sts. 1st ROW: K. 2nd ROW: P 3, * drop the next stitch 3 rows down and pick "
         "up the loop, then knit it with the strands, P 5, repeat from * ending with P 3.", [37]),
        ("Cast on 29 sts. Row 1: K 3, * K 2 tog, Y O, K 4, repeat from * across row ending with "
         "K 2 more sts. Row 2: P.", [29]),
        ("Cast on 47 sts. NEXT ROUND: K, dec 1 st on each side of center st. NEXT 3 ROUNDS: "
         "Working in same manner as last round, work 2 rounds Sail, then 1 round Rope.",
         [47, 45, 43, 41, 39]),
        ("Cast on 20 sts. Next row: K 2 tog, K to last 2 sts, K 2 tog. Next 2 rows: Work in same "
         "manner.", [20, 18, 16, 14]),
    ],
)
def test_rows_told_by_the_strand_or_by_the_last_row(text: str, counts: list[int]) -> None:
    """A stitch let down is one stitch; what is like the last row shapes as it does."""
    assert counts_of(text) == counts
    assert counted(text).problems == ()


@pytest.mark.parametrize(("size", "count"), [(0, 106), (1, 107)])
def test_none_together_is_no_stitch(size: int, count: int) -> None:
    """ "K 0 (2) tog" works nothing in the first size."""
    text = (
        "Sizes: Small, Large\n\nCast on 106 (108) sts. Next row: K 52, K 0 (2) tog, K 54. "
        "Next row: P."
    )
    assert counts_of(text, size)[-1] == count
