"""Rows against figures of the trade: foundation chains, flat circles, squares, hexagons, balls,
knitting.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.counts.phrase import count_phrase
from reader.pattern.parser import parse_pattern


def counts(text: str) -> list[int | None]:
    """Counts of all rows in order, starts left out."""
    counted = count_pattern(parse_pattern(text))
    return [row.count for part in counted.parts for row in part.rows if row.label != "Start"]


@pytest.mark.parametrize(
    ("chains", "nth", "stitch", "after"),
    [
        (21, 2, "sc", 20),
        (31, 2, "sc", 30),
        (22, 3, "hdc", 20),
        (23, 4, "dc", 21),
        (102, 4, "dc", 100),
    ],
)
def test_foundation_chains(chains: int, nth: int, stitch: str, after: int) -> None:
    """ch N, first in the k-th: N - k + 1, and one more where the skipped chains count (arithmetic).
    """
    ending = {2: "nd", 3: "rd"}.get(nth, "th")
    text = f"Ch {chains}, {stitch} in {nth}{ending} ch from hook and in each ch across"
    assert count_phrase(text, None, "crochet", "US").count == after


@pytest.mark.parametrize("first", [6, 8, 12])
def test_flat_circles(first: int) -> None:
    """6 in single, 8 in half double, 12 in double crochet, the same more each round.

    Source: craftymaria.blogspot.com 2009-06; mkcarroll.com 2009-05-14.
    """
    lines = [f"Rnd 1: {first} sc in magic ring.", "Rnd 2: 2 sc in each st around."]
    lines += [f"Rnd {n}: *sc in next {n - 2} sts, inc; rep from * around." for n in range(3, 9)]
    assert counts("\n".join(lines)) == [first * n for n in range(1, 9)]


def test_a_ball_mirrors_itself() -> None:
    """6 12 18 24 24 24 24 18 12 6: common practice, no source; the numbers are arithmetic."""
    text = """Rnd 1: 6 sc in MR
Rnd 2: inc x 6
Rnd 3: (sc, inc) x 6
Rnd 4: (2 sc, inc) x 6
Rnds 5-7: sc around
Rnd 8: (2 sc, dec) x 6
Rnd 9: (sc, dec) x 6
Rnd 10: dec x 6"""
    assert counts(text) == [6, 12, 18, 24, 24, 24, 24, 18, 12, 6]


def test_a_wrong_total_is_told_once_with_both_numbers() -> None:
    """A printed total that the words do not make."""
    text = "Rnd 1: 6 sc in MR (6)\nRnd 2: inc x 6 (12)\nRnd 3: (sc, inc) x 6 (20)"
    problems = count_pattern(parse_pattern(text)).problems
    assert [(one.verdict, one.printed, one.counted) for one in problems] == [
        (Verdict.TOTAL_DISAGREES, 20, 18)
    ]


def test_a_repeat_that_leaves_stitches_is_told_with_its_mend() -> None:
    """Five repeats use 25 of 30; one more would use all."""
    rounds = ["6 sc in MR", "inc x 6", "(sc, inc) x 6", "(2 sc, inc) x 6", "(3 sc, inc) x 6"]
    rounds.append("(4 sc, inc) x 5")
    text = "\n".join(f"Rnd {number}: {words}" for number, words in enumerate(rounds, 1))
    (problem,) = count_pattern(parse_pattern(text)).problems
    assert problem.verdict is Verdict.DOES_NOT_FIT
    assert "1 more repeat" in problem.message


@pytest.mark.parametrize(
    ("words", "before", "after"),
    [
        ("K2, yo, k to last 2 sts, yo, k2", 15, 17),
        ("*k9, k2tog; rep from * around", 88, 80),
        ("sk2p, k to end", 21, 19),
    ],
)
def test_knitting_rows(words: str, before: int, after: int) -> None:
    """yo makes one, k2tog takes one away, sk2p two (Craft Yarn Council abbreviations, from memory).
    """
    assert count_phrase(words, before, "knitting").count == after


def test_a_size_list_that_never_closes_is_no_crash() -> None:
    """The text ends inside a bracket of sizes; the row is read as far as it can be."""
    text = "Sizes: S (M)\nCO 72 (80) sts.\nRow 1: K3 (4), p4 (5).\nRow 2: K to last 84 (7"
    assert count_pattern(parse_pattern(text)).parts
