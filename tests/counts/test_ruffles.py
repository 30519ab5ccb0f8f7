"""Ruffles and nets of loops around lace: rounds that begin and end in the same loop."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BUOY = """Buoy mat

Ch 7, join to form a ring. Round 1. Ch 1, 18 s c in ring, join.
2nd Row. Ch 6, skip 1 s c, d c in next s c, * ch 3, skip 1 s c, d c in next s c,
repeat from * 6 times, ch 3, join in 3rd st of ch.
"""


def counts(words: str) -> list[int | None]:
    """The counts of the rows behind the first two."""
    found = count_pattern(parse_pattern(BUOY + words))
    assert not found.problems
    rows = [row for part in found.parts for row in part.rows if row.label != "Start"]
    return [row.count for row in rows][2:]


def test_a_ruffle_of_several_loops_in_each() -> None:
    words = """
    3rd Row. Sl st into loop, * ch 6, s c in same loop, ch 6, s c in next loop, repeat from * all
    around ending row with ch 3, d c in sl st.
    4th Row. * Ch 6, s c in same loop, ch 6, s c in same loop, ch 6, s c in next loop, repeat from *
    all around, ending with ch 3, d c in d c.
    5th Row. * Ch 7, s c in next loop, repeat from * all around ending with ch 3, tr c in d c.
    6th Row. * Ch 7, s c in next loop, repeat from * all around ending with ch 3, tr c in tr c.
    7th Row. * Ch 7, s c in next loop, repeat from * all around ending with ch 3, tr c in tr c.
    """
    assert counts(words) == [18, 54, 54, 54, 54]


def test_a_ruffle_told_by_a_repeat_inside_another() -> None:
    words = """
    3rd Row. Sl st into loop, * ch 6, s c in next loop, repeat from * all around ending row with
    ch 3, d c in sl st.
    4th Row. * Ch 9, s c in same loop, repeat from * twice, ch 9, s c in next loop, repeat from
    beginning all around in same manner ending row with ch 4, tr c in d c.
    5th Row. 4 s c in same loop, 6 s c in each of the following loops ending row with 2 s c in 1st
    loop, join.
    """
    assert counts(words) == [9, 36, 4 + 35 * 6 + 2]


def test_a_round_that_ends_in_the_loop_it_began_in() -> None:
    words = """
    3rd Row. Sl st into loop, ch 3, 3 d c in same loop, * s c in next loop, 7 d c in next loop, s c
    in next loop, repeat from * once, s c in next loop, 4 d c in next loop, s c in next loop, 3 d c
    in next loop, join.
    """
    assert counts(words) == [4 + 2 * 9 + 1 + 4 + 1 + 3]


def test_shells_told_by_number_with_a_chain_between() -> None:
    words = """
    3rd Row. Sl st into loop, ch 4, 4 tr c in same loop, * ch 3, s c in next loop, ch 3, 5 tr c
    (shell) in next loop, repeat from * twice, ch 3, s c in next loop, ch 3, shell in next loop,
    ch 3, join.
    4th Row. Sl st to center of shell, ch 4, 4 tr c in same space, * ch 3, s c in next s c, ch 3,
    2 shells with ch 4 between in center st of next shell, repeat from * twice, ch 3, s c in next
    s c, ch 3, 5 tr c in center of next shell, ch 2, d c in 4th st of ch.
    """
    assert counts(words)[0] == 4 * 6 + 5


def test_a_bare_repeat_inside_another_is_once_more() -> None:
    words = """
    3rd Row. Ch 1, work 3 s c in each loop, join.
    4th Row. ** S c in next s c, * 2 d c in next s c, repeat from *, repeat from ** all around,
    join.
    """
    assert counts(words) == [27, 45]


def test_a_round_that_ends_with_part_of_a_pass_gets_no_chain_more() -> None:
    words = """
    3rd Row. Sl st into loop, ch 3, 2 d c in same loop, * ch 4, s c in next loop, 3 d c in next
    loop, repeat from * all around ending to correspond, join.
    4th Row. Ch 3, d c in each of next 2 d c, * ch 5, s c in next loop, d c in each of next 3 d c,
    repeat from * all around ending to correspond, join.
    """
    assert counts(words)[0] == 3 + 4 * 4


def test_a_chain_closed_on_its_own_stitch_is_a_picot_whatever_closes_it() -> None:
    words = """
    3rd Row. Ch 1, work 4 s c in each loop, join.
    4th Row. S c in same space, * ch 3, s c in top of s c for picot, skip 1 s c, s c in next s c,
    repeat from * all around, join.
    """
    assert counts(words) == [36, 18]


def test_spaces_among_stitches_lie_between_two_of_them() -> None:
    words = """
    3rd Row. Ch 1, work 4 s c in each loop, join.
    4th Row. Ch 3, d c in each s c, join.
    5th Row. Attach thread in any space between d c, s c in same space, * ch 3, skip next space,
    s c in next space, repeat from * all around, ch 3, join.
    """
    assert counts(words) == [36, 36, 18]


def test_more_loops_than_a_row_has_stitches_to_tell() -> None:
    words = "3rd Row. Ch 1, work 99 s c in each loop, join.\n"
    net = "* Ch 6, s c in next s c, repeat from * all around ending with ch 3, d c in 1st s c.\n"
    again = "* Ch 6, s c in next loop, repeat from * all around ending with ch 3, d c in d c.\n"
    assert counts(f"{words} 4th Row. {net} 5th Row. {again}") == [891, 891, 891]


def test_the_loop_formed_by_the_closing_stitch_is_where_the_round_stands() -> None:
    words = """
    3rd Row. Sl st into loop, * ch 6, s c in same loop, ch 6, s c in next loop, repeat from * all
    around ending with ch 3, d c in sl st.
    4th Row. S c in loop formed by d c, ch 4, s c in next loop, * ch 9, s c in next loop, (ch 4, s c
    in next loop) twice, repeat from * all around, sl st in first s c made.
    5th Row. * 8 s c in next ch 9 loop, skip 1 s c, 3 s c in next ch 4 loop, repeat from * all
    around, join.
    """
    assert counts(words)[:2] == [18, 18]


def test_picots_hung_behind_the_last_group_pass_over_what_the_others_do() -> None:
    words = """
    3rd Row. Ch 1, work 3 s c in each loop, join.
    4th Row. Ch 3, d c in same space, * ch 6, sl st in 5th st from hook for picot, ch 1, skip 2 s c,
    2 d c in next s c, repeat from * 7 times, * ch 6, sl st in 5th st from hook for picot, repeat
    from *, ch 1, join in 3rd st of ch.
    """
    assert counts(words) == [27, 18]


def test_a_slip_stitch_in_the_place_of_the_last_stitch_keeps_its_loop() -> None:
    words = """
    3rd Row. Sl st into loop, ch 1, s c in same loop, * ch 6, s c in next loop, repeat from * all
    around, ending last repeat with sl st in first s c.
    4th Row. Sl st into loop, ch 1, s c in same loop, * ch 7, s c in next loop, repeat from * all
    around, ending last repeat with ch 3, tr c in first s c.
    5th Row. * Ch 4, s c in next loop, repeat from * all around, ending last repeat with sl st in
    tr c.
    """
    assert counts(words) == [9, 9, 8]


def test_a_net_has_as_many_loops_as_stitches_below() -> None:
    words = """
    3rd Row. Ch 1, work 2 s c in each loop, join.
    4th Row. * Ch 6, s c in next s c, repeat from * all around ending with ch 3, d c in joining.
    5th Row. * Ch 6, s c in next loop, repeat from * all around ending with ch 3, d c in d c.
    """
    assert counts(words) == [18, 18, 18]
