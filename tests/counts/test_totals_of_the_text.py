"""Totals that stand for more than one row: a count of every row, and kinds that a pattern counts in
its own way.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

SAIL = """Lace sail

Knitting needles 4 mm.
{note}

Cast on 19 sts.
Row 1: K1, *k2tog, yo; rep from * to last 2 sts, k2.
Row 2: Purl.
Row 3: K1, *k2tog, yo, k1; rep from * to last 3 sts, k2tog, k1.
Row 4: Purl.
Row 5: Knit.
"""


@pytest.mark.parametrize(
    "note",
    [
        "Note: the stitch count is 19 on every row.",
        "You have 19 sts at the end of every row.",
        "The number of stitches is always 19.",
        "Stitch count remains 19.",
        "Each row has 19 stitches.",
        "Stitch count: 19 sts throughout.",
    ],
)
def test_a_row_is_held_against_the_count_of_every_row(note: str) -> None:
    counted = count_pattern(parse_pattern(SAIL.format(note=note)))
    assert [(one.verdict, one.label) for one in counted.problems] == [
        (Verdict.UNCLEAR, "Row 3")
    ]
    assert counted.parts[0].rows[-1].count == 19


@pytest.mark.parametrize("note", ["Blocked to 19 inches.", "Increase 19 sts in every row."])
def test_other_notes_hold_for_no_row(note: str) -> None:
    counted = count_pattern(parse_pattern(SAIL.format(note=note)))
    assert counted.parts[0].rows[-1].count == 18


NET = """Harbour net

Row 1: Ch 4, join to make a ring. Ch 4, 3 dc in ring, ch 2, 3 dc in ring, ch 1, dc in ring, turn. 2 floats
Row 2: Ch 4, 3 dc in first ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in ch-2 sp, ch 1, 3 dc in last sp, ch 1, dc in 3rd ch of beg ch-4, turn. {second} floats
Row 3: Ch 4, *3 dc in next ch-1 sp, ch 1; rep from * to ch-2 sp, (3 dc, ch 2, 3 dc) in ch-2 sp, **ch 1, 3 dc in next ch-1 sp; rep from ** across, ch 1, dc in 3rd ch of beg ch-4, turn. 6 floats
Row 4: Rep Row 3. {last} floats
"""  # noqa: E501


@pytest.mark.parametrize(("last", "asked"), [(8, []), (6, ["Row 4"])])
def test_a_kind_of_its_own_is_learned_and_held_to(last: int, asked: list[str]) -> None:
    """What a "float" is, the first rows tell: threes of dc, each side of the middle for itself."""
    text = NET.format(second=4, last=last).replace("floats", "clusters")
    counted = count_pattern(parse_pattern(text))
    assert [one.label for one in counted.problems] == asked
    assert counted.parts[0].rows[-1].count == 26


LABELS = [
    "Row {n})", "Row {n} |", "Rnd #{n}:", "[Rnd {n}]", "(Rnd {n})", "Rdn {n}:", "R-{n}:",
    "Row {n} RS:", "Row {n}, WS:", "RS row {n}:", "{n}. row:", "{n}.row (RS):", "Row no. {n}:",
    "Row {n} =", "Rnd {n};",
]  # fmt: skip


@pytest.mark.parametrize("label", LABELS)
def test_labels_of_many_forms(label: str) -> None:
    words = ["Ch 9, sc in 2nd ch from hook and in each ch across.", "Sc across.", "2 sc in each."]
    lines = [f"{label.format(n=at + 1)} {said}" for at, said in enumerate(words)]
    counted = count_pattern(parse_pattern("Buoy\n\n" + "\n".join(lines)))
    assert [one.count for one in counted.parts[0].rows] == [8, 8, 16]


def test_several_rows_of_one_label() -> None:
    words = "Pier\n\nRnd 1: 6 sc in magic ring.\nRnds 2/3: Sc around.\nRnds 4 + 5: Sc around."
    counted = count_pattern(parse_pattern(words))
    assert [one.number for one in counted.parts[0].rows] == [1, 2, 3, 4, 5]


def test_a_heading_before_a_line_that_turns() -> None:
    words = (
        "SOLE\nRow 1: Ch 9, sc in 2nd ch from hook and in each ch across, work back and forth "
        "now.\nRow 2: Ch 1, turn, sc in each sc across until the boat is as long as you "
        "like it.\n\nDECK\nTurn right side out, join the yarn at the stern of the boat.\n"
        "Round 1: Ch 1, 24 sc evenly around, join."
    )
    assert [one.name for one in count_pattern(parse_pattern(words)).parts] == ["SOLE", "DECK"]


def test_rows_in_all_are_those_worked_and_those_to_come() -> None:
    words = (
        "Row 1: Ch 9, sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, turn, sc "
        "across.\nRepeat Row 2 until there are 7 rows in all.\nRow 8: Ch 1, turn, 2 sc in each."
    )
    rows = count_pattern(parse_pattern("Gangway\n\n" + words)).parts[0].rows
    assert [one.number for one in rows] == list(range(1, 9))


SOCKS = """Pier socks
Sizes S/M/L

LEG. Cast on 40/48/56 sts, join. *K2, p2* around for 6/7/8 rnds.

HEEL over the first 20/24/28 sts only.
1. row (RS): Sl 1, k to end.
2. row (WS): Sl 1, p to end.
Work these 2 rows 10/12/14 times = 20/24/28 rows.
Next row: Dec 2/4/4 sts evenly. = 18/20/24 sts.
"""


@pytest.mark.parametrize(("size", "rounds", "heel", "last"), [(0, 6, 20, 18), (2, 8, 28, 24)])
def test_sizes_between_strokes(size: int, rounds: int, heel: int, last: int) -> None:
    """Lists of sizes with strokes count in totals, in numbers of rows and in what is narrowed to;
    a heading in capitals needs no colon; rows worked so often hold those that told them.
    """
    counted = count_pattern(parse_pattern(SOCKS), size)
    assert [part.name for part in counted.parts][-1] == "LEG"
    rows = counted.parts[-1].rows
    assert len([one for one in rows if one.written.startswith("*K2")]) == rounds
    assert [one.count for one in rows[-1 - heel :]] == [heel] * heel + [last]
    assert not counted.problems


JACKET = """Boat jacket
Sizes 3/6 - 6/12 - 12/18 months.

BACK
Cast on 43-49-55 sts.
Work 6 rows in rib.
Shape armholes: Cast off 3 sts at beg of next 2 rows. 37-43-49 sts.
Cont straight until armholes measure 10-11-12 cm.
Shape shoulders: Cast off 5-6-6 sts at beg of next 2 rows and 5-5-6 sts at beg of foll 2 rows. \
Leave rem {left} sts on a spare needle.
"""


def test_sizes_between_dashes_and_what_waits_at_the_end() -> None:
    counted = count_pattern(parse_pattern(JACKET.format(left="17-21-25")), 1)
    rows = [one.count for part in counted.parts for one in part.rows]
    assert rows == [49] * 7 + [46, 43, 43, 37, 31, 26, 21]
    assert not counted.problems
    wrong = count_pattern(parse_pattern(JACKET.format(left="17-22-25")), 1)
    assert [one.printed for one in wrong.problems] == [22]


@pytest.mark.parametrize(
    ("words", "rows"),
    [
        ("Work Rnds 1 - 2 once more.", 4),
        ("Do rounds 1 and 2 again.", 4),
        ("Work these 2 rounds 5 times.", 10),
        ("Repeat these 2 rounds 5 times.", 12),
        ("Work these 2 rounds 5 more times.", 12),
        ("Rep last 2 rounds 6 times in total.", 12),
    ],
)
def test_rows_worked_again_in_all_or_more(words: str, rows: int) -> None:
    text = f"Net\n\nCast on 40 sts, join.\nRnd 1: Knit.\nRnd 2: Purl.\n{words}\nNext round: K."
    counted = count_pattern(parse_pattern(text))
    assert len(counted.parts[0].rows) == 1 + rows + 1


GRANNY = """Harbour square
Rnd 1: Ch 4, join. Ch 3, 2 dc in ring, *ch 2, 3 dc in ring; repeat from * twice more, ch 2, join. \
(12 dc, 4 ch-2 sps)
Rnd 2: Sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in corner, *ch 1, (3 dc, ch 2, 3 dc) in next \
corner; rep from * {times} more times, ch 1, join. (24 dc)
"""


@pytest.mark.parametrize(("times", "asked"), [("2", []), ("3", [24])])
def test_a_total_of_stitches_counts_no_spaces(times: str, asked: list[int]) -> None:
    counted = count_pattern(parse_pattern(GRANNY.format(times=times)))
    assert [one.printed for one in counted.problems if one.label == "Round 2"] == asked


def test_stitches_by_colour_are_no_total() -> None:
    words = "Bag\n\nRnd 1: 6 sc in MR.\nRnd 2: inc around. (12)\nRnd 3: A: 6 sc, B: 6 sc (12 sts)"
    rows = count_pattern(parse_pattern(words)).parts[0].rows
    assert [one.count for one in rows] == [6, 12, 12]


def test_a_pair_of_rows_is_ended_before_the_next_label() -> None:
    words = (
        "Pennant shawl\n\nCO 7 sts.\nRow 1: K2, yo, k to last 2 sts, yo, k2. (9)\nRow 2: K2, p to "
        "last 2 sts, k2.\nRep Rows 1-2 until you have 13 sts.\nRow 7: Knit."
    )
    rows = count_pattern(parse_pattern(words)).parts[0].rows
    assert [one.number for one in rows][1:] == [1, 2, 3, 4, 5, 6, 7]
    assert [one.count for one in rows] == [7, 9, 9, 11, 11, 13, 13, 13]
