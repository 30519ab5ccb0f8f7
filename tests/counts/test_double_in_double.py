"""Old crochet that tells a row by what its stitches stand on; all text is our own."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEGUN = (
    "Make a chain of 21 stitches, turn.\n\n1. Miss 1, a double in each stitch of chain, turn.\n\n"
)
ROWS = [
    "2. Double in double, chain 1, turn.",
    "2. Chain 1, a double in double, turn.",
    "2. Chain 1, double in double all around, turn.",
    "2. Chain 3, treble in treble to end of row, turn.",
    "2. Work back with double in double.",
    "2. Doubles in doubles, turn.",
    "2. A double in double, chain 1, turn, a double in double, chain 1, turn.",
]


@pytest.mark.parametrize("row", ROWS)
def test_alone_it_is_one_in_each(row: str) -> None:
    found = count_pattern(parse_pattern(BEGUN + row))
    assert [one.count for one in found.parts[0].rows][1:] == [20, 20]
    assert not found.problems


def test_beside_others_it_is_one_in_the_next() -> None:
    row = "2. Chain 1, double in double, * miss 1, 2 doubles in double; repeat to last double"
    found = count_pattern(parse_pattern(f"{BEGUN}{row}, double in double, turn."))
    assert found.parts[0].rows[-1].count == 20


def test_a_strip_is_parted_at_its_turns() -> None:
    """Eight of the twenty, to and fro: the others are left on purpose."""
    strip = (
        "For the strap make 8 doubles in 8 doubles, chain 1, turn, a double in double, chain 1, "
        "turn, and continue until the strap is long enough.\n"
    )
    found = count_pattern(parse_pattern(BEGUN + strip))
    assert {one.count for one in found.parts[0].rows[2:]} == {8}
    assert not found.problems


PAIRS = (
    "Chain 22.\n\n1. Miss 1, a double in each of 21 stitches.\n\n2. Chain 3, a treble in 1st "
    "stitch, * chain 1, miss 1, a treble in next; repeat.\n\n3. 2 trebles in every space.\n\n"
)
BETWEEN = {
    "4. 2 trebles between groups.\n\n5. 2 trebles between the groups of last row.": [20, 20],
    "4. Make 2 trebles between each group.\n\n5. 3 trebles between every group.": [20, 30],
    "4. 3 trebles between each group of last row.\n\n5. 2 trebles between groups.": [30, 20],
}


@pytest.mark.parametrize("rows", BETWEEN)
def test_groups_between_groups(rows: str) -> None:
    """Ten groups stay ten, in whatever words the places between them are told."""
    found = count_pattern(parse_pattern(PAIRS + rows))
    assert [one.count for one in found.parts[0].rows][-2:] == BETWEEN[rows]
    assert not found.problems


TWO = ["each 2 trebles", "every two trebles", "each 2 trebles of last row"]


@pytest.mark.parametrize("each", TWO)
def test_two_between_each_two_are_as_many_again(each: str) -> None:
    text = (
        "Chain 22.\n\n1. Miss 1, a double in each of 21 stitches.\n\n2. Chain 3, a treble in 1st "
        f"stitch, * miss 1, 2 trebles in next; repeat.\n\n3. Make 2 trebles between {each}.\n"
    )
    found = count_pattern(parse_pattern(text))
    assert [one.count for one in found.parts[0].rows][-2:] == [22, 22]
