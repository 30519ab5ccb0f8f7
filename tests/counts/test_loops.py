"""Rounds of loops: the loop that a tall stitch closes, where the next round begins, what a printed
number of loops mends.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEGUN = "Ch 20, join to form a ring. Rnd 1: Ch 1, 40 sc in ring, join.\n"


def counts_of(text: str) -> list[int | None]:
    """The counts of a text's rows."""
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    return [row.count for row in rows if row.label != "Start"]


def test_a_round_begins_in_the_loop_that_a_tall_stitch_closed() -> None:
    """Its first chain stands in that loop, so that the next one is another."""
    said = (
        "2nd Rnd: * Ch 6, skip 3 sc, sc in next sc, repeat from * all around, ending with ch 3, "
        "dc in same st with the 1st ch 6, this brings thread in position for next rnd.\n"
        "3rd Rnd: Ch 8, dc in next loop, * ch 5, dc in next loop, repeat from * all around, ch 5, "
        "join in 3rd st of ch.\n"
        "4th Rnd: Sl st into loop, ch 3, 5 dc in same loop, * ch 5, sc in next loop, ch 5, 6 dc in "
        "next loop, repeat from * all around, ending rnd with ch 5, sc in next loop, ch 5, join.\n"
    )
    assert counts_of(BEGUN + said) == [40, 10, 10, 35]


def test_a_spiral_from_a_ring_is_seen_from_one_side() -> None:
    """Rounds that are called rows and not joined: nothing is turned between them."""
    said = (
        "Ch 6, join to form a ring, ch 1 and work 8 s c in ring, do not join this or the following "
        "rows.\n2nd Row—2 s c in each s c.\n3rd Row—2 s c in each s c.\n"
        "4th Row—* Ch 6, skip 3 s c, s c in next s c, repeat from * all around ending row with "
        "ch 3, d c in same st with the 1st ch 6.\n"
        "5th Row—* Ch 7, s c in next loop, repeat from * all around ending row with ch 3, tr c in "
        "d c.\n6th Row—Same as last row ending row with ch 3, tr c in tr c.\n"
    )
    assert counts_of(said) == [8, 16, 32, 8, 8, 8]


def test_the_next_stitch_of_a_chain_is_in_the_space_ahead() -> None:
    """ "1 dc in next st of ch": the other chains of that space are passed over with it."""
    said = (
        "2nd Rnd: Ch 3, dc in same st, * ch 2, skip 3 sc, 2 dc in next sc, repeat from * all "
        "around, ch 2, join in 3rd st of ch.\n"
        "3rd Rnd: Ch 3, dc in next dc, 1 dc in next st of ch, * ch 2, 1 dc in each of the next 2 "
        "dc, 1 dc in next st of ch, repeat from * all around, ch 2, join.\n"
        "4th Rnd: Ch 3, 1 dc in each of the next 2 dc, dc in next ch, * ch 2, 1 dc in each of the "
        "next 3 dc, dc in next ch, repeat from * all around, ch 2, join. Repeat the 4th rnd having "
        "1 more dc in each dc section until there are 6 dc in each section.\n"
    )
    assert counts_of(BEGUN + said) == [40, 20, 30, 40, 50, 60]


def test_printed_loops_mend_rounds_whose_words_were_not_read() -> None:
    """Where nothing sure lies below, the round is gone on with as it is printed."""
    said = (
        "2nd Rnd: Wobble the anchor st 3 times in next sc, splice next 2 sc, join.\n"
        "3rd Rnd: Sl st to center of next anchor, * ch 6, sc in center of next anchor, repeat from "
        "* all around (12 loops).\n"
        "4th Rnd: Sl st into loop, ch 3, 3 dc in same loop, * ch 2, 4 dc in next loop, repeat from "
        "* all around, ch 2, join.\n"
    )
    assert counts_of(BEGUN + said)[-2:] == [12, 48]


def test_plain_rows_are_called_back_with_those_between_them() -> None:
    """ "Then work 1 row even": a row of its own number."""
    said = (
        "Rnd 1: 8 sc in magic ring.\nRnd 2: 2 sc in each sc.\n"
        "Rnd 3: Increase in every 2nd sc, then work 1 rnd even.\nRnd 5: Increase in every 3rd sc. "
        "Repeat the 3rd and 4th rnds.\nRnd 8: 1 sc in each sc.\n"
    )
    assert counts_of(said) == [8, 16, 24, 24, 32, 48, 48, 48]


def test_a_picot_in_a_petal_does_not_end_the_petal() -> None:
    """The slip stitch into what was just made belongs to the picot; each petal has its own loop."""
    said = (
        "2nd Rnd: Ch 11, skip 4 sc, dc in next sc, * ch 8, skip 4 sc, dc in next sc, repeat from * "
        "5 times, ending with ch 8, sl st in 3rd st of ch.\n"
        "3rd Rnd: In next loop work 1 sc, 1 hdc, 8 dc, 1 hdc, 1 sc, in next loop work 1 sc, 1 hdc, "
        "4 dc, ch 3, sl st in top of last dc for picot, 4 dc, 1 hdc, 1 sc, repeat from beginning "
        "all around, join.\n"
    )
    assert counts_of(BEGUN + said) == [40, 8, 96]


def test_a_chain_inside_a_popcorn_tells_nothing_of_later_chains() -> None:
    """Only the popcorn's own chain is no stitch; in the next round it stands for one, as ever."""
    said = (
        "2nd Rnd: Ch 3, 3 dc in same st, drop loop from hook, insert hook in 3rd st of ch, pull "
        "loop through (popcorn st), * ch 3, skip 3 sc, 4 dc in next sc, drop loop from hook, "
        "insert hook in first dc, pull loop through, repeat from * around, ch 3, join.\n"
        "3rd Rnd: Sl st into loop, ch 3, 4 dc in same loop, * 5 dc in next loop, repeat from * all "
        "around, join in 3rd st of ch.\n"
    )
    assert counts_of(BEGUN + said) == [40, 10, 50]


def test_shells_keep_their_middles_and_the_chains_between_them() -> None:
    """A shell named where its row begins it with a chain; "ch 2 between shells" is a space each."""
    said = (
        "2nd Rnd: Ch 3, 2 dc, ch 2, 3 dc in same st (shell), * skip 4 sc, shell in next sc, repeat "
        "from * around, join in 3rd st of ch.\n"
        "3rd Rnd: Sl st to center of shell, shell in same space, * ch 1, shell in center of next "
        "shell, repeat from * around, ch 1, join.\n"
        "4th Rnd: Shell in center of each shell, ch 2 between shells, join.\n"
        "5th Rnd: Shell in center of each shell, having ch 3 between each shell, join.\n"
        "6th Rnd: Sl st to center of shell, shell in same space, * ch 3, sc in next loop, ch 3, "
        "shell in next shell, repeat from * around, ch 3, sc in next loop, ch 3, join.\n"
    )
    assert counts_of(BEGUN + said) == [40, 48, 48, 48, 48, 56]


def test_a_turning_chain_over_a_stitch_and_its_chains_is_their_like() -> None:
    """ "Ch 8, turn" over a dc and 5 chains; "skip 5 sts of ch" is the space that they make."""
    said = (
        "Ch 46, dc in 12th st from hook, 1 dc in each of next 4 sts, * ch 5, skip 5 sts of ch, 1 "
        "dc in each of the next 5 sts, repeat from * once, ch 5, skip 5 sts of ch, dc in last st "
        "of ch.\n2nd Row—Ch 8, turn, dc in 1st dc, 1 dc in each of the next 4 dc, * ch 5, 1 dc in "
        "each of the next 5 dc, repeat from * once, ch 5, skip 5 sts of ch, dc in next st.\n"
        "3rd Row—Ch 9, turn, * tr in next dc, ch 1, skip 1 dc, tr in next dc, ch 1, skip 1 dc, "
        "tr in next dc, ch 5, repeat from * across row, skip 5 sts of ch, tr in next st.\n"
    )
    assert counts_of(said) == [17, 17, 11]
