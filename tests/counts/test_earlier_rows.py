"""Rounds worked into an earlier row than the one below, and rounds that slip past the stitch they
were joined to.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

RING = "Ch 6, join to form a ring.\n"


def counts_of(text: str) -> list[int | None]:
    """The counts of a text's rows."""
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    return [row.count for row in rows if row.label != "Start"]


def test_stitches_into_an_earlier_row_are_counted_over_that() -> None:
    """As many as that row has, whatever was worked since."""
    said = (
        RING + "1st Row. Ch 1, 12 sc in ring, join.\n"
        "2nd Row. Ch 5, skip 1 sc, dc in next sc, * ch 2, skip 1 sc, dc in next sc, repeat from * "
        "3 times, ch 2, join in the 3rd st of ch 5.\n"
        "3rd Row. Ch 1, 4 sc in each loop around, join.\n"
        "4th Row. Ch 1, sc in same space, * ch 6, sc over dc of {} row, repeat from * all around, "
        "join.\n"
    )
    assert counts_of(said.format("2nd")) == [12, 6, 24, 6]
    assert counts_of(said.format("2nd").replace("of 2nd row", "of row 2"))[-1] == 6


def test_a_round_that_slips_to_the_next_stitch_begins_there() -> None:
    """What it slipped over comes last: every pass finds its own stitches beside its space."""
    said = (
        RING + "rnd 1: ch 3, 11 dc in ring, join.\n"
        "rnd 2: sl st into next st, ch 3, dc in same st, ch 2, * skip 1 st, 2 dc in next st, ch 2, "
        "repeat from * around, join.\n"
        "rnd 3: sl st to ch-2 sp, ch 3, dc, ch 2, 2 dc in ch-2 sp, * 2 dc, ch 2, 2 dc in next ch-2 "
        "sp, repeat from * around, join.\n"
        "rnd 4: sl st into next st, ch 3, * 2 dc, ch 2, 2 dc in ch-2 sp, dc in next dc, skip next "
        "2 dc, dc in next st, repeat from * around, join.\n"
        "rnd 5: sl st into next st, ch 3, dc in next st, * 2 dc, ch 2, 2 dc in ch-2 sp, dc in each "
        "of next 2 dc, skip next 2 sts, dc in each of next 2 dc, repeat from *, ending with skip "
        "2 sts, join.\n"
    )
    assert counts_of(said) == [12, 12, 24, 36, 48]


def test_loops_told_by_their_chains_are_a_total() -> None:
    """With or without a hyphen, and "made" behind them: no chain is worked there."""
    said = (
        "Ch 6, join in ring with sl st.\nRound 1: Sc in ring, *Ch 6, sc in ring*; repeat between * "
        "* 3 more times, ch 6, sl st into first sc. {}\nRound 2: *(4 sc, hdc, ch 2, hdc, 4 sc) all "
        "into next ch6 space*; repeat between * * 4 more times, join with sl st.\n"
    )
    for total in ("[5 ch6 spaces made]", "(5 ch-6 spaces)", "(5 ch-6 loops formed)"):
        assert counts_of(said.format(total)) == [5, 50]


def test_a_sentence_that_asks_for_care_works_nothing() -> None:
    """What it tells to do is told before it; with a number it is an instruction."""
    said = "Ch 6, join in ring with sl st.\nRound 1: Ch 1, work 12 sc in ring, join. {}\n"
    for care in (
        "Be sure to work over the chain.",
        "Tip: Work the sts around the tail as well as the chain; at end of round, tail can simply "
        "be trimmed.",
        "Remember to work over the tail and in each loop.",
    ):
        assert counts_of(said.format(care)) == [12]
    assert counts_of(said.format("Be sure to work 2 sc in the ring.")) == [14]
