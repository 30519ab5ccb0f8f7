"""Rows with words that made no sense are asked about; only rows that are understood are wrong."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

BASE = "Buoy\nRnd 1: 6 sc in MR. (6)\nRnd 2: 2 sc in each st. (12)\n"


def verdicts(row: str) -> list[Verdict]:
    """What is told of a third round."""
    return [one.verdict for one in count_pattern(parse_pattern(BASE + row)).problems]


def test_a_row_that_is_understood_and_does_not_fit_is_wrong() -> None:
    """Five repeats of three stitches over twelve."""
    assert verdicts("Rnd 3: (2 sc, inc) 5 times.\n") == [Verdict.DOES_NOT_FIT]


def test_with_words_that_make_no_sense_it_is_asked_about() -> None:
    """The same, with something said that is not known."""
    assert verdicts("Rnd 3: (2 sc, blorping gently, inc) 5 times. (20)\n") == [Verdict.UNCLEAR]


def test_the_chain_beside_a_popcorn_is_no_popcorn() -> None:
    """Forty-four popcorns, and a treble's chain before the first."""
    text = (
        "Mat\nCh 4, join.\nRnd 1: Ch 3 (counts as dc), 11 dc in ring, join in top of ch-3.\n"
        "Rnd 2: Ch 3, popcorn in next dc, * dc in next dc, popcorn in next dc, rep from * around, "
        "join in top of ch-3. (6 popcorns)\n"
    )
    counted = count_pattern(parse_pattern(text))
    assert [row.count for row in counted.parts[0].rows][-1] == 12
    assert counted.problems == ()


def test_a_total_of_loops_that_the_words_do_not_make_is_asked_about() -> None:
    """It was passed in silence: 16 loops against a printed 9 (invented)."""
    said = (
        "Ch 6, join.\nRnd 1: Ch 1, * sc in ring, ch 5, repeat from * 7 times, join. (8 loops)\n"
        "Rnd 2: Sl st to loop, * ch 5, sc in same loop, ch 5, sc in next loop, repeat from * "
        "around. (9 loops)\n"
    )
    counted = count_pattern(parse_pattern(said))
    asked = [one for one in counted.problems if one.verdict is Verdict.UNCLEAR]
    assert [(one.label, one.printed, one.counted) for one in asked] == [("Round 2", 9, 16)]


def test_so_many_put_somewhere_not_understood_is_asked_about() -> None:
    """Passed over as a remark, three stitches in one place would be lost without a word."""
    said = "Ch 14.\nRow 1: Sc in 2nd ch from hook and in each ch.\n"
    said += "Row 2: Ch 1, sc in each sc, putting 3 in the one at the toe, turn.\n"
    problems = count_pattern(parse_pattern(said)).problems
    assert [one.verdict for one in problems] == [Verdict.UNCLEAR]


def test_a_total_that_leaves_out_the_chain_counted_before_is_asked_about() -> None:
    """ "(12 dc)" with the chain, then "(23 dc)" without it: which was meant the maker must say."""
    counted = count_pattern(parse_pattern(
        "SQUARE\n\nRnd 1: Ch 4, join to form ring. Ch 3, 2 dc in ring, ch 2, *3 dc in ring, "
        "ch 2; rep from * 2 more times, join. (12 dc)\nRnd 2: Sl st to corner, ch 3, (2 dc, ch 2, "
        "3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 2 more "
        "times, join. (23 dc)\n"
    ))  # fmt: skip
    assert [(one.printed, one.counted) for one in counted.problems] == [(23, 24)]


def test_groups_that_nothing_tells_apart_are_asked_about() -> None:
    """ "Sp between groups" over stitches in a row: how many there are nothing tells."""
    counted = count_pattern(parse_pattern(
        "O\n\nRnd 1: Ch 3 (counts as dc), 11 dc in magic ring, join. (12)\nRnd 2: Ch 3 (counts as "
        "dc), dc in same st, 2 dc in each st around, join. (24)\nRnd 3: Sl st to next sp between "
        "groups, ch 3, 2 dc in same sp, *3 dc in next sp between groups; rep from * around, join.\n"
    ))  # fmt: skip
    assert [one.label for one in counted.problems] == ["Round 3"]
