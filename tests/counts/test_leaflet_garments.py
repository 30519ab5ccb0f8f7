"""Knitted garments, hats and bands as leaflets of the 1960s tell them; all text is our own."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.leaflet_words import leaflet_words
from reader.text.lots_picked_up import lots_picked_up
from reader.text.manner_first import number_first

MANNERS = (
    "in following manner. (K 2, sl 1, K 1, psso, follow pattern to last 4 sts, K 2 tog, K 2). On "
    "wrong side, purl first 3 sts and last 3 sts of row.",
    "as follows: K 1, K 2 tog, work to last 3 sts, sl 1, K 1, psso, K 1.",
    "the same as on back.",
    "in same manner as left side.",
)
PACES = ("every other row", "every right side row", "every 4th row")


@pytest.mark.parametrize("manner", MANNERS)
@pytest.mark.parametrize("pace", PACES)
@pytest.mark.parametrize("ends", [1, 2])
def test_number_behind_the_manner(manner: str, pace: str, ends: int) -> None:
    where = "each end" if ends == 2 else "armhole edge"
    text = (
        f"PIER VEST\n\nBACK: Cast on 72 sts. Knit 2 rows. Dec 1 st at {where} {pace} {manner} "
        f"Decrease {pace} 9 times. Work even for 2 inches."
    )
    found = count_pattern(parse_pattern(text))
    assert found.parts[0].rows[-1].count == 72 - 9 * ends


LAST = {
    "At front edge, bind off 5 sts every other row twice and 4 sts once.": 26,
    "At neck edge bind off 5 sts once, 3 sts every other row twice, then 2 sts once.": 27,
    "At arm edge bind off 5 sts once and 4 sts every other row 3 times.": 23,
    "At neck edge bind off 4 sts at beg of every other row 2 times, 3 sts once, 2 sts 2 times.": 25,
    "On next two rows, bind off 3 sts at start of row.": 34,
    "On the next 4 rows bind off 2 sts at beg of each row.": 32,
    "K 1 row inc at even intervals to 45 sts. K 1 row.": 45,
    "Divide: Work 19 sts, p 2 tog, slip these 20 sts to a holder; work on remaining 19 sts.": 19,
    "Divide for top—Work in pat. until there are 19 sts on right needle, p 2 tog., slip these 20 "
    "sts to holder for one side; work pat. on remaining 19 sts as follows: P 1, * k 1, p 1; repeat "
    "from * to end.": 19,
    "Next row: Seed st across 1st 12 sts, place these sts on a holder, work in seed across next 16 "
    "sts, place remaining sts on 2nd holder.": 16,
    "Row 1: K 25, put a marker on needle, work Row 1 of pattern st on last 15 sts.": 40,
    "Row 1: Work in pattern st on first 15 sts, K 10, work last 15 sts in pattern st.": 40,
    "Row 1: K 10 * P 2, sl next 3 sts on cable needle and hold in back of work, K next 3 sts, K 3 "
    "sts from cable needle (cable twist), P 2, repeat from * once more, K 10.": 40,
    "Row 1: K 10, P 2, cable twist on next 6 sts, P 2, K 20.": 40,
}


@pytest.mark.parametrize("words", LAST)
def test_said_in_a_leaflet(words: str) -> None:
    text = f"BELL TOPPER\n\nFRONT: Cast on 40 sts. Knit 2 rows. {words}"
    assert count_pattern(parse_pattern(text)).parts[0].rows[-1].count == LAST[words]


def test_two_sides_run_in() -> None:
    text = "Band: Cast on 13 sts, right side K 6, P 1, K 6; wrong side P 6, K 1, P 6."
    rows = count_pattern(parse_pattern(text)).parts[0].rows
    assert [row.count for row in rows] == [13, 13, 13]


def test_even_number_rows_and_pattern_rows() -> None:
    text = (
        "Cap: Cast on 48 sts. Row 1: K. Row 2: P. These 2 rows form the pattern. Begin pattern. "
        "Repeat Pattern Rows 1 and 2 twice, then Row 1 again. Shape top thus: Row 1: (K 6, K 2 "
        "tog) to end. Row 2 and even number rows, do row 2 of Pattern. Row 3: (K 5, K 2 tog) to "
        "end. Row 5: (K 2 tog.) to end. Fasten off. Slip on to hat with seam at front."
    )
    counts = [row.count for row in count_pattern(parse_pattern(text)).parts[0].rows]
    assert counts[-5:] == [42, 42, 36, 36, 18]


def test_between_stars_of_another_row() -> None:
    text = (
        "Cap: Cast on 31 sts.\nRow 1: K.\nRow 2: P 1, * K 1, P 1 *; repeat between *'s to end.\n"
        "Row 3: K.\nRow 4: P 2, repeat between *'s of row 2, end last repeat P 2.\nRow 5: K."
    )
    counts = [row.count for row in count_pattern(parse_pattern(text)).parts[0].rows]
    assert counts == [31] * 6


WIDE = """Sizes Small (Medium-Large)

BACK: Cast on 60 (66-72) sts. Row 1: K 13 (15-17) P 2, K 30 (32-34), P
      2, K 13 (15-17). Row 2: P 13
      (15-17) K 2, P 30 (32-34), K 2, P 13 (15-17). Rows 4, 6, 8;
      Repeat row 2. Rows 3, 5, 7; Repeat row 1.
"""


@pytest.mark.parametrize(("size", "count"), [(0, 60), (1, 66), (2, 72)])
def test_sizes_behind_a_line_end(size: int, count: int) -> None:
    rows = count_pattern(parse_pattern(WIDE), size).parts[0].rows
    assert {row.count for row in rows} == {count}


def test_lots_picked_up() -> None:
    text = (
        "NECKBAND: Knit the neck band very tight. With right side facing pick up 22 sts on right "
        "front, (being sure to go through both layers), then 13 sts from sleeve holder, then 39 "
        "from back holder, then 13 from other holder, then 22 sts from left front. Work in ribbing "
        "of K 1, P 1 for 4 rows."
    )
    rows = count_pattern(parse_pattern(text)).parts[0].rows
    assert {row.count for row in rows} == {109}


def test_second_side_in_crochet() -> None:
    text = (
        "Hat: Ch 49, sc in 2nd ch from hook and in each ch across (48 sc), ch 1, turn. Row 2: Sc "
        "in each sc.\n\nDivide for top: ** Work in pattern on 24 sts. Ch 1, turn. Skip first st, "
        "sc in each st across to within 1 stitch at end of row. Break yarn. Attach yarn to other "
        "side and repeat from **."
    )
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    assert [row.count for row in rows][2:4] == [24, 22]


CHANGED = [f"Dec 1 st each end every row {m} Dec every other row 5 times more." for m in MANNERS]


@pytest.mark.parametrize("words", [*LAST, *CHANGED])
def test_length_is_kept(words: str) -> None:
    for change in (leaflet_words, lots_picked_up, number_first):
        assert len(change(words)) == len(words)


BACK = (
    "BACK: Cast on 64 sts. K 1, P 1 for 2 inches. Work in stockinette st until piece measures 12 "
    "inches.{gap}{first}: Bind off 4 sts at beg of next 2 rows. Dec 1 st each end every other row "
    "3 times. Work even on 50 sts until armhole measures 7 inches.{gap}{second}: Bind off 8 sts at "
    "beg of next 4 rows. Bind off remaining 18 sts.\n\nFRONT: {told} Next row: K {left}."
)
AS_BACK = {
    "Work same as back until armholes measure 5 inches.": 50,
    "Work in same manner as back until armhole measures 5 inches.": 50,
    "Work in the same way as back until piece measures 11 inches.": 64,
    "Work as for back until piece measures 11 inches.": 64,
    "Same as back until armhole shaping is completed.": 50,
    "Work same as back to underarm.": 64,
}


@pytest.mark.parametrize("told", AS_BACK)
@pytest.mark.parametrize("gap", [" ", "\n\n"])
@pytest.mark.parametrize("heads", [("Shape Armholes", "Shape Shoulders"),
                                   ("TO SHAPE ARMHOLES", "TO SHAPE SHOULDERS")])  # fmt: skip
def test_front_by_the_back(told: str, gap: str, heads: tuple[str, str]) -> None:
    left = AS_BACK[told]
    text = BACK.format(gap=gap, first=heads[0], second=heads[1], told=told, left=left)
    parts = count_pattern(parse_pattern(text)).parts
    front = next(part for part in parts if part.name == "FRONT")
    counts = [row.count for row in front.rows]
    assert (counts[0], counts[-2:]) == (64, [left, left])


RIBS = {
    "K 1, P 1 for 2 inches inc at even intervals to 70 sts on last row.": 70,
    "K 1, P 1 for 2 inches, inc to 70 sts on last row.": 70,
    "K 1, P 1 in ribbing for 2 inches, inc 1 st at end of last row—61 sts.": 61,
    "K 1, P 1 in ribbing for 2 inches, inc 5 sts evenly on last row, 65 sts.": 65,
    "Dec 1 st each side of next row and repeat this dec every 4th row 5 times more.": 48,
    "At each center edge dec 1 st every other row 4 times.": 52,
    "At each neck edge, bind off 2 sts 3 times.": 48,
    "Working on both sides at once, at each center edge bind off 2 sts 3 times.": 48,
    "Discontinuing raglan decreases and continuing in pattern, at the beg of each of the next 4 "
    "rows bind off 8 sts.": 28,
    "Dec 1 st at each underarm every 4 inches twice.": 56,
    "Work in pattern stitch, starting with row 2, until piece measures 5 inches.": 60,
}


@pytest.mark.parametrize("words", RIBS)
def test_bands_and_edges(words: str) -> None:
    found = count_pattern(parse_pattern(f"PIER VEST\n\nBACK: Cast on 60 sts. Knit 2 rows. {words}"))
    assert (found.parts[0].rows[-1].count, found.problems) == (RIBS[words], ())


def test_two_in_one() -> None:
    text = "SCARF: Cast on 1 st. 1st ROW: K 1, P 1 in st. 2nd ROW: K 1, P 1 in each st. 3rd ROW: K."
    assert [row.count for row in count_pattern(parse_pattern(text)).parts[0].rows] == [1, 2, 4, 4]


WRAPPED = (
    "PIER PULLOVER\n\nBACK: With No. 4 needles cast on 84 sts. K 1, P 1 in ribbing for 2 inches.\n"
    "With larger needles work in stockinette st for 11 inches, ending with P row. {head}\n"
    "{tail}: {off} Dec 1 st at beg and end of every other\nrow 4 times. Work even 3 inches.\n"
)
OFF = (
    "At the beg of each of the next 2 rows bind off 3 sts.",
    "Bind off 3 sts at each arm edge once.",
    "BO 3 sts at beg of next 2 rows.",
)


@pytest.mark.parametrize("heading", ["Armhole Shaping", "SHAPE ARMHOLES", "Raglan Shaping"])
@pytest.mark.parametrize("off", OFF)
def test_heading_over_a_line_end(heading: str, off: str) -> None:
    head, tail = heading.split()
    found = count_pattern(parse_pattern(WRAPPED.format(head=head, tail=tail, off=off)))
    counts = [row.count for part in found.parts for row in part.rows]
    assert [one for at, one in enumerate(counts) if counts[at - 1 : at] != [one]] == [
        84, 81, 78, 76, 74, 72, 70,
    ]  # fmt: skip
    assert found.problems == ()


INC_EACH = (
    "Inc 8 sts evenly spaced in each round, do not place inc over inc (40 sts in last round).",
    "Inc 8 sc in each round.",
    "Working in s c, inc 8 s c evenly in each round, having inc over inc (40 s c in last round).",
    "Increase 8 sc evenly spaced on each round (40 sc).",
    "Continue to inc 8 s c in each round.",
    "Work in s c increasing 8 sts in each round.",
)


@pytest.mark.parametrize("words", INC_EACH)
def test_so_many_in_each_round(words: str) -> None:
    text = f"HAT\n\nCh 2, 8 sc in 2nd ch from hook. Rnd 2: 2 sc in each sc. NEXT 3 ROUNDS: {words}"
    rows = count_pattern(parse_pattern(text)).parts[0].rows
    assert [row.count for row in rows] == [8, 16, 24, 32, 40]


def test_growth_to_a_measure_is_asked_about() -> None:
    text = (
        "CROWN\n\nCh 2, 8 sc in 2nd ch from hook. Rnd 2: 2 sc in each sc. Rnd 3: * Sc in next sc, "
        "2 sc in next sc, rep from * around. Continue to inc in same manner having 1 sc more "
        "between inc in each round until crown measures 6 inches in diameter."
    )
    found = count_pattern(parse_pattern(text))
    assert (found.parts[0].rows[-1].count, len(found.problems)) == (None, 1)


EDGED = {
    "NEXT 2 ROWS: (Dec) Skip 1st sc, sc in next sc, complete row in pattern.": 28,
    "NEXT ROW: Skip 1st sc, complete row.": 29,
    "NEXT ROW: Work in pattern across 1st 8 sts, dec in next 2 sts, ch 1, turn. NEXT ROW: Work "
    "even. With wrong side of last long row toward you, skip 9 sts, attach yarn in next st, ch 1, "
    "dec in next 2 sts, work in pattern across remainder of row.": 10,
}


@pytest.mark.parametrize("words", EDGED)
def test_crocheted_edges(words: str) -> None:
    begun = "VEST\n\nCh 31, sc in 2nd ch from hook and in each ch across (30 sc), ch 1, turn. "
    assert count_pattern(parse_pattern(begun + words)).parts[0].rows[-1].count == EDGED[words]


def test_both_sides_at_once() -> None:
    text = (
        "FRONT: Cast on 48 sts. K 1 row. Shape Neck: K 18 sts, join another ball of yarn and bind "
        "off center 12 sts, K remaining 18 sts. Working both sides at the same time, dec 1 st at "
        "each neck edge every other row 4 times. Work even on 14 sts of each side until armholes "
        "measure 8 inches."
    )
    found = count_pattern(parse_pattern(text))
    assert (found.parts[0].rows[-1].count, found.problems) == (28, ())


@pytest.mark.parametrize("words", ["K 1, drop the yo. Repeat across row.",
                                   "* K 1, drop yo; repeat from * across."])  # fmt: skip
def test_overs_dropped(words: str) -> None:
    begun = "BAND\n\nCast on 30 sts. Row 1: K 1, * yo, K 1; repeat from * across row. Row 2: "
    rows = count_pattern(parse_pattern(begun + words)).parts[0].rows
    assert [row.count for row in rows] == [30, 59, 30]


TOPS = (
    "Row 1: K 5, K 2 tog across. 2nd AND ALL EVEN\nROWS: P across. 3rd ROW: * K 4, K 2 tog; repeat "
    "from * across row.\n5th ROW: K 3, K 2 tog across. Cut yarn leaving a length, thread into a "
    "needle and draw sts tog.",
    "1st ROW: * K 2 tog, K 5, repeat from * across row. Row 2 and even number rows: Purl. 3rd ROW: "
    "(K 4, K 2 tog) to end. 5th ROW: * K 3, K 2 tog, repeat from * across. Break yarn, run end "
    "through remaining sts, draw up and fasten off.",
)


@pytest.mark.parametrize("top", TOPS)
def test_tops_of_knitted_hats(top: str) -> None:
    text = f"GULL CAP\n\nHAT: Cast on 63 sts. Work in K 1, P 1 ribbing for 3 inches.\nTOP: {top}"
    counts = [row.count for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    assert counts == [63, 63, 54, 54, 45, 45, 36]


def test_brim_amid_a_paragraph() -> None:
    text = (
        "HAT: Ch 2, 8 sc in 2nd ch from hook. 2nd ROUND: 2 s c in each s c. 3rd ROUND: * 1 s c in "
        "next s c, 2 s c in next s c, repeat from * around. Work 1 s c in each s c for 3 rounds. "
        "NEXT ROUND: Dec 8 sts evenly spaced in round (16 s c). Brim:\n"
        "Working in front loops only, work 2 s c in each s c around. Work 2 rounds even."
    )
    counts = [row.count for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    assert counts == [8, 16, 24, 24, 24, 24, 16, 32, 32, 32]
