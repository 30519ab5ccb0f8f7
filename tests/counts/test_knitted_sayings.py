"""Knitted rows told in many words: several in one stitch, fabrics over so many stitches, changes in
every rib, in the last of several rounds, between markers. Common practice, no source; the rows are
invented.
"""

import pytest

from reader.app.check import count_phrase

THREE_IN_ONE = (
    "K14, knit the next st three times (front, back, front), k14",
    "K14, k into front, back and front of next st, k14", "K14, purl next st 3 times, k14",
    "K14, inc 2 in the centre st, k14", "K14, make 3 of next st, k14",
    "K14, k1, p1, k1 in centre st, k14", "K14, knit, purl and knit into next st, k14",
    "K to centre st, knit three times into it (front, back, front), k to end.",
    "Knit the centre st three times (front, back, front), all other sts plain.",
    "Knit, working three times into the centre stitch.", "Knit all sts, making 3 of the centre one",
    "K14, work 3 sts in next st, k14",
)  # fmt: skip


@pytest.mark.parametrize("row", THREE_IN_ONE)
def test_three_in_one(row: str) -> None:
    counted = count_phrase("Row 3: " + row, 29, "knitting")
    assert (counted.count, counted.problems) == (31, ())


FABRICS = ("seed", "seed st", "moss", "garter", "ribbing", "st st", "stocking st", "stockinette")


@pytest.mark.parametrize("fabric", FABRICS)
@pytest.mark.parametrize(
    "row", ["{0} 5, k to last 5 sts, {0} 5.", "k 5, {0} to last 5 sts, k5", "in {0} 5, k to end"]
)
def test_a_fabric_over_so_many(fabric: str, row: str) -> None:
    counted = count_phrase("Row 5: " + row.format(fabric), 91, "knitting")
    assert (counted.count, counted.problems) == (91, ())


@pytest.mark.parametrize(
    ("row", "before", "after"),
    [
        ("Rib to end, dec 1 st in each of the 6 p3 ribs.", 46, 40),
        ("Work in rib, dec 1 st in the centre of each of the 6 purl ribs", 46, 40),
        ("*K2tog, k to 2 sts before marker, ssk, sm; repeat around (5 markers).", 75, 65),
        ("*K2tog, k to 2 sts before marker, ssk, sm; repeat around for all 5 sections.", 75, 65),
        ("Knit 4 rounds, on the last of them knit together the last two stitches.", 67, 66),
        ("Knit 4 rounds, decreasing 1 st on the last of them.", 67, 66),
        ("Knit 4 rounds, k2tog at end of last round.", 67, 66),
        ("K4, cast off 3, k until there are 12 sts on right-hand needle after the cast-off group, "
         "cast off 3, k to end.", 40, 34),
        ("K4, cast off 3, k until there are 12 sts after the bound-off sts, cast off 3, k to end.",
         40, 34),
        ("K2, yo, k2tog 3 times, k2", 10, 10), ("K1, yo, k1, yo, k2tog twice, k1", 7, 7),
        ("K2, yo, k2tog twice, yo, k2", 8, 8), ("K2, yo, k2tog 3 times, k2. (8 sts)", 10, 8),
        ("Dec over cables: p2, (k1, k2tog twice, k1, p2) 5 times.", 42, 32),
    ],
)  # fmt: skip
def test_knitted_rows(row: str, before: int, after: int) -> None:
    counted = count_phrase(row, before, "knitting")
    assert (counted.count, counted.problems) == (after, ())


@pytest.mark.parametrize("row", ["K4, *p3, k4; rep from * to end, dec 1 st in each p3 rib."])
def test_ribs_without_a_number_are_asked_about(row: str) -> None:
    assert count_phrase(row, 46, "knitting").problems
