"""Row lace as leaflets word it: nets of loops and of squares, groups into groups, changes at the
row's ends. How many stitches a row has follows from its own arithmetic (common practice, no
source).
"""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def counts_of(text: str) -> tuple[list[int | None], int]:
    counted = count_pattern(parse_pattern(text))
    rows = [row for part in counted.parts for row in part.rows if row.label != "Start"]
    return [row.count for row in rows], len(counted.problems)


NETS = (
    "Ch 5, turn, * sc in next loop, ch 5; rep from * across, ending with sc in last loop",
    "Ch 5, turn, sc in first loop, * ch 5, sc in next loop; rep from * across",
    "Turn, * ch 5, 1 s c in next loop; repeat from * across row",
    "Ch 5, turn, 1 s c in 1st loop, * ch 5, 1 s c in next loop, repeat from * to end of row",
)
NET_BEGUN = (
    "Sc in 2nd ch from hook, * ch 5, sk 3 ch, sc in next ch; rep from * across",
    "S c in 2nd ch from hook, (ch 5, sk next 3 ch, s c in next ch) 6 times",
)


@pytest.mark.parametrize("row", NETS)
def test_a_net_keeps_its_loops(row: str) -> None:
    """The chain that it is turned with is a loop: six in every row."""
    for first in NET_BEGUN:
        text = f"Ch 26.\n1st row: {first}.\n2nd row: {row}.\n3rd row: {row}.\n4th row: {row}.\n"
        assert (first, *counts_of(text)) == (first, [7, 6, 6, 6], 0)


HALVES = (
    "* Sc in next loop, ch 5; rep from * across, ending with sc in last loop, ch 2, dc in last sc",
    "Sc in first loop, * ch 5, sc in next loop; rep from * across, ch 2, dc in last sc",
    "(Sc in next lp, ch 5) 5 times, sc in last lp, ch 2, dc in last sc",
)
BACK = (
    "Sc in first dc, * ch 5, sc in next ch-5 loop; rep from * across, ending with sc in turning ch",
    "sc in dc, * ch 5, sc in next loop; rep from * across, ending ch 5, sc in 3rd ch of turning ch",
    "Sc in 1st dc, * ch 5, sc in next lp; rep from * across, working last sc in 3rd st of turning"
    " ch",
    "Sc in dc, (ch 5, sc in next lp) 6 times, with last sc in turning lp",
)


@pytest.mark.parametrize("half", HALVES)
def test_half_loops_at_the_edges_are_passed(half: str) -> None:
    for back in BACK:
        text = (
            f"Ch 26.\n1st row: {NET_BEGUN[0]}.\n2nd row: Ch 5, turn. {half}.\n"
            f"3rd row: Ch 1, turn. {back}.\n"
        )
        counts, problems = counts_of(text)
        assert (back, counts[0], counts[2], problems) == (back, 7, 7, 0)


MESHES = (
    "dc in next dc, * ch 1, skip next ch, dc in next dc; rep from * across",
    "sk first dc and ch, dc in next dc, * ch 1, sk 1 ch, dc in next dc; rep from * across",
    "dc in 2nd dc, * ch 1, sk 1, dc in next dc; rep from * across",
    "* sk next ch, dc in next dc, ch 1; rep from * across, ending with dc in turning ch",
)


@pytest.mark.parametrize("row", MESHES)
def test_the_chain_of_a_square_is_passed(row: str) -> None:
    for last in ("", ", working last dc in turning ch", ", making last dc in 3rd ch of turning ch"):
        if last and "ending" in row:
            continue
        text = (
            "Ch 24.\nRow 1: Dc in 6th ch from hook, * ch 1, sk 1 ch, dc in next ch; rep from * "
            f"across.\nRow 2: Ch 4, turn, {row}{last}.\nRow 3: Ch 4, turn, {row}{last}.\n"
        )
        assert (last, *counts_of(text)) == (last, [11, 11, 11], 0)


GROUPS = (
    "* in next sp make dc, ch 1 and dc; rep from * across, ending with dc in top of turning ch",
    "* dc, ch 1, dc in next sp, repeat from * across, end dc in top of ch",
    "1 dc, ch 1, 1 dc in center of each group, 1 dc in top of turning ch",
    "* dc, ch 1, dc in center of next group; rep from * across, dc in turning ch",
    "(dc, ch 1, dc) in each ch-1 sp across, dc in top of turning ch",
)


@pytest.mark.parametrize("row", GROUPS)
def test_groups_go_into_groups(row: str) -> None:
    text = (
        "Ch 28.\nRow 1: (Dc, ch 1, dc) in 5th ch from hook, * sk 2 ch, (dc, ch 1, dc) in next ch; "
        "rep from * to last 2 ch, sk 1 ch, dc in last ch.\n"
    )
    text += "".join(f"Row {n}: Ch 3, turn. {row}.\n" for n in (2, 3, 4))
    assert counts_of(text) == ([18, 18, 18, 18], 0)


CHANGES = (
    ("2 sc in every 5th sc, 1 sc in each of the others", 24),
    ("2 sc in every 4th sc across", 25),
    ("Draw up a loop in each of first 2 sc, yarn over and draw through 3 loops on hook, sc in each"
     " sc to last 2 sc, dec as before", 18),
    ("Omit first sc, sc in each remaining sc", 19),
    ("Sc in next 16 sc, omit last 4 sc", 16),
)  # fmt: skip


def test_changes_in_rows_of_single_crochet() -> None:
    turns = (". Ch 1, turn", ", ch 1, turn", ", turn")
    for (row, count), turn in itertools.product(CHANGES, turns):
        text = (
            f"Ch 21.\n1st row: Sc in 2nd ch from hook and in each ch across{turn}.\n"
            f"2nd row: {row}{turn}.\n3rd row: Sc in each sc.\n"
        )
        assert (row, turn, *counts_of(text)) == (row, turn, [20, count, count], 0)


@pytest.mark.parametrize("last", ["working last dc in top of turning ch",
                                  "making the last dc in turning ch", "dc in top ch of turning ch"])
def test_the_last_stitch_of_a_row(last: str) -> None:
    for turn in (". Ch 3, turn", ", ch 3, turn", "; ch 3, turn"):
        text = (
            f"Ch 22.\nRow 1: Dc in 4th ch from hook and in each ch across{turn}.\n"
            f"Row 2: Sk first dc, dc in next dc and in each dc across, {last}{turn}.\n"
        )
        assert (turn, *counts_of(text)) == (turn, [20, 20], 0)


SIDES = (
    "sc in next 10 row ends", "sc in 10 row ends", "1 sc in end of each of 10 rows",
    "sc in ends of 10 rows", "10 sc across ends of rows", "10 sc along end of rows",
    "sc in side of each of next 10 rows", "1 s c in the end of each of the 10 rows",
    "10 sc evenly along side",
)  # fmt: skip


@pytest.mark.parametrize("side", SIDES)
def test_along_the_ends_of_rows(side: str) -> None:
    """Ten stitches and ten rows: forty around, and three more in each corner."""
    for below in ("sc in 10 ch of foundation", "10 sc along foundation chain"):
        text = (
            "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. Ch 1, turn.\n"
            "Rows 2-10: Sc in each sc across. Ch 1, turn.\n"
            f"Rnd 1: Sc in each of next 10 sc, 3 sc in corner, {side}, 3 sc in corner, {below}, "
            f"3 sc in corner, {side}, 3 sc in corner, join with sl st to first sc.\n"
        )
        counts, problems = counts_of(text)
        assert (below, counts[-1], len(counts), problems) == (below, 52, 11, 0)


CALLS = (
    "Repeat last row until 2 sc remain", "Rep 2nd row until 2 sts rem",
    "Repeat last row until there are 2 sc left", "Repeat row 2 until 2 sts are left",
)  # fmt: skip


@pytest.mark.parametrize("call", CALLS)
def test_a_label_before_rows_to_a_goal(call: str) -> None:
    """The label is that of the first of them."""
    for label in ("3rd row: ", "Row 3: ", ""):
        text = (
            "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. Ch 1, turn.\n"
            "Row 2: Sk first sc, sc in each sc to last 2 sc, sk next sc, sc in last sc. Ch 1, "
            f"turn.\n{label}{call}. Fasten off.\n"
        )
        assert (label, *counts_of(text)) == (label, [20, 18, 16, 14, 12, 10, 8, 6, 4, 2], 0)


def test_changes_of_the_stitches_before() -> None:
    row = (
        "sc2tog (1 sc decreased), sc in each sc to last 2 sc, sc2tog (1 st dec)",
        "sc2tog (1 dec made), sc in each sc to last 2 sc, sc2tog",
    )
    for one in row:
        text = (
            "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n"
            f"Row 2: Ch 1, turn, {one}, turn.\nRow 3: Sc in each sc to within last 3 sc.\n"
        )
        assert (one, *counts_of(text)) == (one, [20, 18, 15], 0)


def test_rows_told_with_their_yarn() -> None:
    text = (
        "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n"
        "With Blue, work 2 rows of sc.\nWith White, work 2 rows.\nLast row: Sc in each sc.\n"
    )
    assert counts_of(text) == ([20] * 6, 0)
