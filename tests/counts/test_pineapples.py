"""Pineapples: fans of tall stitches whose loops grow fewer from row to row."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEACON = """Beacon mat

Ch 7, join to form a ring. 1st Round. Ch 1, 20 s c in ring, join.
2nd Round. Ch 3, d c in same st, ch 2, 2 d c in same st, * ch 3, skip 3 s c, 2 d c, ch 2, 2 d c
(shell) in next s c, repeat from * all around, ch 3, join.
3rd Round. Sl st to loop, shell in same loop, * ch 4, 8 tr c with ch 1 between each tr c in next
loop, ch 4, shell in next shell, repeat from * all around, ending with ch 4, 8 tr c with ch 1
between each tr c in next loop, ch 4, join.
4th Round. Sl st to loop, shell in same loop, ** ch 4, s c in 1st loop of pineapple, * ch 3, s c in
next loop, repeat from * 5 times, ch 4, shell in next shell, repeat from ** all around ending to
correspond, join.
"""


def counts(words: str) -> list[int | None]:
    """The counts of all rounds, of which none is asked about."""
    found = count_pattern(parse_pattern(BEACON + words))
    assert not found.problems
    rows = [row for part in found.parts for row in part.rows if row.label != "Start"]
    return [row.count for row in rows]


def test_the_first_loop_of_a_pineapple_is_none_beside_the_shell() -> None:
    assert counts("") == [20, 20, 5 * (4 + 8), 5 * (4 + 7)]


def test_rounds_in_the_same_manner_have_a_loop_less_in_each_pineapple() -> None:
    words = (
        "5th & 6th Rounds. Work in same manner, working a shell in each shell and having one less "
        "3 ch loop in each pineapple in each round.\n"
        "7th Round. Work in same manner, having one loop less in each pineapple.\n"
    )
    assert counts(words)[4:] == [5 * (4 + 6), 5 * (4 + 5), 5 * (4 + 4)]
