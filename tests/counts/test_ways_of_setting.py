"""Crochet as makers set it in their own way: totals in marks of their own, rows numbered otherwise,
stitches told by places alone. The pieces are invented; the counts are arithmetic.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

ROUNDS = ("8 sc in magic ring", "2 sc in each st", "(sc in next st, 2 sc in next st) around")
SET_OFF = (
    ". «{n} sc»", " <{n} sts>", ". *{n} sc*", ". |{n}|", ". /{n}/", " ............ {n}", " // {n}",
    ". {{{n}}}", " -> {n}", " ... {n}", " ______ {n}", " :: {n} sc", " ‹{n}›", ". ~{n} sc~",
)  # fmt: skip


def counts(text: str) -> list[int | None]:
    """What is on hand after each row of the whole text, in order."""
    return [row.count for part in count_pattern(parse_pattern(text)).parts for row in part.rows]


@pytest.mark.parametrize("setting", SET_OFF)
def test_totals_in_marks_of_an_authors_own(setting: str) -> None:
    """They are read as totals: right ones raise nothing, a wrong one does."""
    def told(*numbers: int) -> str:
        rows = zip(ROUNDS, numbers, strict=True)
        return "\n".join(
            f"Rnd {at}: {row}{setting.format(n=n)}" for at, (row, n) in enumerate(rows, 1)
        )

    right = count_pattern(parse_pattern(told(8, 16, 24)))
    assert [row.count for row in right.parts[0].rows] == [8, 16, 24]
    assert not right.problems
    wrong = count_pattern(parse_pattern(told(8, 16, 25)))
    assert [one.verdict for one in wrong.problems] == [Verdict.TOTAL_DISAGREES]


LETTERED = """LIGHT BUOY
Key: V = two single crochet in one stitch. A = two stitches taken together.
R1 - 7 in the loop ......... 7
R2 - 7V .................... 14
R3 - 7(1, V) ............... 21
R4...R6 - no shaping ....... 21
R7 - 7(1, A) ............... 14
R8 - 7A .................... 7
"""
ROMAN = """MAT FOR THE CABIN
ROUND I--6 s c in the ring, close.
ROUND II--2 s c in each s c, close.
ROUND III--* 1 s c in next s c, 2 s c in next s c. Work from * five times more.
ROUNDS IV to VI--1 s c in each s c.
ROUND VII--* 2 s c, 2 s c in next. Work from * around (24 s c).
"""
ORDINALS_ALONE = """FLOAT
Chain four and join. Into the ring: eight single crochet.
Second time round: two in each. (16)
Third, fourth and fifth times: one in each. (16)
Sixth: one in each of three, two in the fourth, and so on around. (20)
Seventh to ninth: one in each. (20)
"""
RANGES = ("R3...R5", "R3~R5", "R3 → R5", "R3 up to R5", "Rnds 3 until 5", "Rnds 3-thru-5")


def test_letters_with_their_number_before_a_bracket() -> None:
    """ "7(1, V)" is worked seven times; a definition ends with its sentence."""
    assert counts(LETTERED) == [7, 14, 21, 21, 21, 21, 14, 7]


def test_rows_in_roman_figures() -> None:
    """Three such labels are rows; their range is opened."""
    assert counts(ROMAN) == [6, 12, 18, 18, 18, 18, 24]


def test_ordinals_without_their_word_from_the_second_on() -> None:
    """The first round is told in running words."""
    assert counts(ORDINALS_ALONE) == [8, 16, 16, 16, 16, 20, 20, 20, 20]


@pytest.mark.parametrize("label", RANGES)
def test_ranges_by_other_signs(label: str) -> None:
    """Each row of the range is one."""
    assert counts(f"R1: 6 sc in ring\nR2: inc x6\n{label}: sc around") == [6, 12, 12, 12, 12]


IN_ALL = (
    ("ch 1, 4 sc in same sp and in each sp around, join", 80),
    ("ch 1, 4 sc in that and every space around, join", 80),
    ("ch 3, 3 dc in same sp and in each sp around, join", 61),
    ("ch 1, (sc, hdc, sc) in same sp and in each sp around, join", 60),
)


@pytest.mark.parametrize(("words", "after"), IN_ALL)
def test_so_many_in_the_same_and_in_each(words: str, after: int) -> None:
    """What is put into the first space is put into each."""
    net = "Rnd 1: 40 sc in the ring, join.\nRnd 2: Ch 6, * skip next sc, dc in next sc, ch 3. "
    text = f"{net}Repeat from * around, join to 3rd ch of ch-6.\nRnd 3: Sl st in next sp, {words}"
    assert counts(text)[-1] == after


HARBOUR = """Shell: 5 dc in the same st
Chain 20.
Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from *
across. Turn. (3 shells, 4 sc)
Row 2: Ch 5 (counts as dc + ch 2), sc in center dc of first shell, ch 2, dc in next sc, *ch 2, sc
in center dc of next shell, ch 2, dc in next sc; rep from * across. Turn. (4 dc, 3 sc)
Row 3: Ch 1, sc in first dc, *shell in next sc, sc in next dc; rep from * across, working last sc
in 3rd ch of ch-5. Turn. 3 shells and four sc.
"""
FILLED_UP = """Rnd 1: Ch 1, 42 sc in the ring, join.
Rnd 2: Ch 1, sc in first st, sk next 2 sts, 5 dc in next st, sk next 2 sts, (sc in next st, sk next
2 sts, 5 dc in next st, sk next 2 sts) around, join.
Rnd 3: Ch 3, 2 dc in same st, sc in center dc of next shell, (5 dc in next sc, sc in center dc of
next shell) around, 2 dc in first st, join.
Rnd 4: Ch 1, sc in same st, 5 dc in next sc, (sc in center dc of next shell, 5 dc in next sc)
around, join.
Rnd 5: Ch 1, sc in each st around, join. (42 sc)
"""


def test_shells_over_shells() -> None:
    """A chain told as a dc is one in the total; the round's last half shell fills up its first."""
    for text, after in ((HARBOUR, [7, 19]), (FILLED_UP, [42, 42, 42])):
        told = count_pattern(parse_pattern(text))
        assert [row.count for part in told.parts for row in part.rows][-len(after) :] == after
        assert not told.problems


def test_words_without_a_stitch() -> None:
    """So many in a place are of whatever stitch the row is of."""
    text = (
        "R1: 6 in MR\nR2: 2 in each\nR3: 1 in next, 2 in next around\n"
        "R4: one in each of two, two in the third, and so on around."
    )
    assert counts(text) == [6, 12, 18, 24]


def test_increases_named_as_decreases_are() -> None:
    """ "dc2inc" is two in one."""
    rows = "Rd 1. 6 dc in ring\nRd 2. dc2inc to end.\nRd 3. (dc1, dc2inc) to end. [18 dc]"
    assert counts(f"UK terms.\n{rows}") == [6, 12, 18]


def test_a_total_of_spaces_that_disagrees_is_settled_by_the_next_rows() -> None:
    """46 are printed, 48 worked: only over 48 the next round closes."""
    text = (
        "Rnd 1: 24 dc in the ring, join.\nRnd 2: Ch 4, (dc in next dc, ch 1) around, join.\n"
        "Rnd 3: Ch 1, 2 sc in each ch-1 sp around, join. (46 sc)\n"
        "Rnd 4: (sc in next 3 sts, 2 sc in next st) around, join. (60 sc)"
    )
    told = count_pattern(parse_pattern(text))
    assert [row.count for row in told.parts[0].rows] == [24, 24, 48, 60]
    assert [one.verdict for one in told.problems] == [Verdict.TOTAL_DISAGREES]
