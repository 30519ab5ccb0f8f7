"""Rows of small knitted pieces in whatever words: labels, steps, totals; common practice, no
source.
"""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

LABELS = (
    "Row 1 {}\nRow 2 purl", "RS: {}\nWS: purl", "Row 1 - {}\nRow 2 - P",
    "1. {}\n2. purl",
)  # fmt: skip
TOTALS = ("", ". {} sts.")
ROWS = (
    ("k4, p2, k8, p4, k2", 20), ("k4. p2. k8. p4. k2", 20), ("(k2, p2) to end", 20),
    ("k all sts", 20), ("k1, *k2, p1; rep from * to last st. K1", 20),
    ("p3, k to last 3 sts, p3", 20),
    ("kf&b, k to last st, kf&b", 22), ("kfb across", 40), ("kfb x 20", 40),
    ("inc, k to last st, inc", 22), ("dec, k16, dec", 18),
    ("p2tog, p to last 2 sts, p2tog tbl", 18), ("k1, backward loop inc, k18, lifted inc, k1", 22),
    ("k9, sl 2 as if to k2tog, k1, psso, k8", 18), ("sl 2 sts tog kwise, k1, p2sso, k17", 18),
)  # fmt: skip


def counts(text: str) -> tuple[list[int | None], list[Verdict]]:
    """The counts of the rows behind what was cast on, and what was said of them."""
    counted = count_pattern(parse_pattern(text, craft="knitting"))
    rows = [row for part in counted.parts for row in part.rows if row.label != "Cast on"]
    return [row.count for row in rows], [one.verdict for one in counted.problems]


@pytest.mark.parametrize("label", LABELS)
def test_a_row_however_it_is_labelled(label: str) -> None:
    for (words, count), total in itertools.product(ROWS, TOTALS):
        text = "CO 20 sts.\n" + label.format(words + total.format(count)) + "\n"
        assert (text, *counts(text)) == (text, [count, count], [])


@pytest.mark.parametrize("less", ["working 1 less st between decs", "having 1 less before k2tog"])
@pytest.mark.parametrize("rows", ["last 2 rnds", "these two rounds", "rnds 3 and 4"])
def test_a_crown_by_rows_that_grow_less(rows: str, less: str) -> None:
    crown = (
        "CO 64 sts. Join.\nRnd 1: (k6, k2tog) around\nRnd 2: knit\nRnd 3: (k5, k2tog) around\n"
        "Rnd 4: knit\nRep "
    )
    all_but_last = [56, 56, 48, 48, 40, 40, 32, 32, 24, 24, 16, 16]
    until = counts(f"{crown}{rows}, {less} each time, until 8 sts rem.\n")
    assert until == ([*all_but_last, 8], [])
    so_often = counts(f"{crown}{rows} 5 more times, {less} each time.\n")
    assert so_often == ([*all_but_last, 8, 8], [])


UNTIL = (
    "Rep Row 2 until you have a total of 9 sts.", "Row 3: Repeat row 2 until there are 9 sts.",
    "Continue as set, rep row 2 until you have 9 sts.", "Work row 2 until there are 9 stitches.",
)  # fmt: skip


@pytest.mark.parametrize("until", UNTIL)
def test_a_cloth_from_its_corner(until: str) -> None:
    text = f"CO 4 sts.\nRow 1: Knit.\nRow 2: K2, yo, k to end.\n{until}\n"
    text += "Next row: k1, k2tog, yo, k2tog, k to end.\nRep this row until 4 sts remain.\n"
    assert counts(text) == ([4, 5, 6, 7, 8, 9, 8, 7, 6, 5, 4], [])


@pytest.mark.parametrize("center", ["k1 (center st)", "k1 (the centre stitch)", "k1 (spine)"])
def test_the_middle_of_a_shawl(center: str) -> None:
    text = f"CO 7 sts.\nRow 1: k3, yo, {center}, yo, k3\nRow 2: k3, p to last 3 sts, k3\n"
    assert counts(text) == ([9, 9], [])


@pytest.mark.parametrize("told", ["The heel is worked on the first 24 sts.", "Heel uses 24 sts."])
@pytest.mark.parametrize("over", ["k24 across instep", "k24 instep sts", "k24 sts over instep"])
def test_a_heel_turned_at_its_gap(told: str, over: str) -> None:
    text = (
        f"CO 48 sts. Join.\nRnd 1: knit\nHEEL FLAP\n{told}\nRow 1: sl 1, k23\nRow 2: sl 1, p23\n"
        "Turn heel\nRow 1: k14, skp, k1, turn.\nRow 2: sl 1, p5, p2tog, p1, turn.\n"
        "Row 3: sl 1, k to 1 st before gap, skp, k1, turn.\n"
        "Row 4: sl 1, p to 1 st before gap, p2tog, p1, turn.\n"
        "Rep last 2 rows until all sts are worked - 14 sts.\nGusset\nK14 heel sts, pick up and k 12"
        f" sts along flap, {over}, pick up and k 12 sts down other side. 62 sts.\n"
    )
    found, asked = counts(text)
    assert (found[-12:], asked) == ([24, *range(23, 13, -1), 62], [])


BALLS = (
    "CO 6 sts.\nRow 1: Kfb to end.\nRow 2: P\nSt st 4 rows\nNext row: (k1, kfb) to end\n",
    "Cast on 6 sts. Kfb across. Purl 1 row. St st for 4 rows. (K1, kfb) 6 times.\n",
    "Cast on 6 sts. (Kfb) 6 times. P 1 row. Plain knitting for four rows. (K1, inc in next st) to"
    " end.\n",
    "Cast on 6 sts. Kfb x6. Purl 1 row.\n4 rows plain knitting.\nNext row: (K1, inc) 6 times\n",
)  # fmt: skip


@pytest.mark.parametrize("text", BALLS)
def test_a_ball_begun(text: str) -> None:
    assert counts(text) == ([12, 12, 12, 12, 12, 12, 18], [])


def test_what_follows_plain_rows_is_no_part_of_them() -> None:
    text = "Cast on 20 sts. Rows 1-3: K. Narrow at beginning and end of next row. K 2 rows.\n"
    assert counts(text) == ([20, 20, 20, 18, 18, 18], [])


@pytest.mark.parametrize("row", ["k9, frill, k9", "edge 5, p14, edge 5", "k9, C6, k9"])
def test_an_item_that_makes_no_sense_is_asked_about(row: str) -> None:
    assert counts(f"CO 24 sts.\nRow 1: {row}\n")[1] == [Verdict.UNCLEAR]


@pytest.mark.parametrize("row", ["k11, bobble, k12", "p2, CF4, p12, CB4, p2"])
def test_bobbles_and_cables_by_other_names(row: str) -> None:
    assert counts(f"CO 24 sts.\nRow 1: {row}\n") == ([24], [])


@pytest.mark.parametrize("row", ["CO 3, k23", "Cast on 3 sts, k3, p17, k3", "cast on 3, k to end"])
def test_stitches_cast_on_and_worked_are_made_once(row: str) -> None:
    assert counts(f"CO 20 sts.\nRow 1: knit\nRow 2: {row}\nRow 3: knit\n") == ([20, 23, 23], [])


@pytest.mark.parametrize(
    "turn",
    ["k15, leave 5 sts unworked, turn", "k15, sl next st, bring yarn forward, sl st back, turn"],
)
def test_what_is_left_at_a_turn_stays_on_the_needle(turn: str) -> None:
    text = f"CO 20 sts.\nRow 1: {turn}\nRow 2: p10, w&t\nRow 3: knit\n"
    assert counts(text) == ([20, 20, 20], [])
