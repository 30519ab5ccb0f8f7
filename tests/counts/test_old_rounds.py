"""Rounds in the words of the 1850s: colours as instructions, loops worked over chain by chain, the
last round with other chains.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.colour_rows import stitches_told
from reader.pattern.parser import parse_pattern


def counts_of(text: str) -> list[int | None]:
    """The counts of a text's rounds."""
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    return [row.count for row in rows if row.label != "Start"]


def test_colours_are_added_up() -> None:
    """ "4 times" is of the whole list; what lies below is left to the maker's eye."""
    assert stitches_told("12 stitches, blue.") == 12
    assert stitches_told("18 ditto.") == 18
    assert stitches_told("2 white, 3 blue on 2, 1 white. 5 times.") == 30
    assert stitches_told("2 gold (the first on the single blue,) 3 blue, 1 gold. Twice 3.") is None
    assert stitches_told("2 white, 1 blue; repeat from *") is None
    assert stitches_told("3 dc., 1 ch., miss 1; repeat") is None


def test_a_mat_in_colours() -> None:
    """Its rounds are counted though no stitch is named."""
    said = (
        "HARBOUR MAT IN CROCHET.\n\nWork round and round, all in sc.\n\n1st round.—8 stitches, "
        "white.\n\n2nd.—16 ditto.\n\n3rd.—1 white, 3 blue, 1 white. 4 times.\n"
    )
    assert counts_of(said) == [8, 16, 20]


def test_loops_of_the_last_round_with_other_chains() -> None:
    """As last with 5 chains between, or two chains more at every round."""
    said = (
        "Make 6 chain, and form them into a round.\n\n1st.—12 dc.\n\n2nd.—1 tc., 3 ch., miss 1; "
        "repeat.\n\n3rd.—1 tc. on centre of loop, 4 ch.; repeat.\n\n"
        "4th.—As last, with 5 ch. between.\n\n"
        "5th and 6th rounds.—Like the last, increasing two chain at every round.\n\n"
        "7th.—3 tc., 3 ch., miss 3. Repeat.\n\n8th.—+ 3 tc. on 3 ch., 3 ch., miss 3, + repeat.\n"
    )
    assert counts_of(said) == [12, 6, 6, 6, 6, 6, 30, 30]


def test_plain_rounds_over_long_loops_take_every_chain() -> None:
    """ "Dc. all round" over loops of nine, and a ring whose chains are gained upon."""
    said = (
        "Make a chain of 9, and form it into a round.\n\n1st.—Dc., increasing 3 in the round.\n\n"
        "2nd.—9 ch., 1 tc., miss 3. Repeat.\n\n3rd.—Dc. all round.\n"
    )
    assert counts_of(said) == [12, 3, 30]


def test_numbered_rows_of_a_small_cap() -> None:
    """Twice in each row, so often in the round, and plain to within so many of the end."""
    said = (
        "Chain 5, join.\n1. 24 doubles in ring.\n2. A double in each double.\n"
        "3, 4. A double in each double, working in both veins; narrow twice in each row.\n"
        "5. Double in each double, widening 4 times in the round.\n6. Widen in every 6th stitch.\n"
        "7. Plain to within 8 stitches of the end; break wool.\n"
    )
    assert counts_of(said) == [24, 24, 22, 20, 24, 28, 20]
