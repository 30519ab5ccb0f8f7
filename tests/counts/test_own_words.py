"""Rows and stitches called by words of the author's own, and totals with a remark. All invented."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def counts(text: str) -> list[int | None]:
    """What is on hand after each row of the whole text, in order."""
    return [row.count for part in count_pattern(parse_pattern(text)).parts for row in part.rows]


ROWS = ("6 sc in ring", "2 sc in each st", "(sc, inc) 6 times", "sc around")
LABELS = (
    ("lap {n}: {w}", None), ("tour {n}. {w}", None), ("Circle {n} - {w}", None),
    ("{n}{th} ring: {w}", None), ("{n}{th} lap. - {w}", None), ("[{n}] {w}", None),
    ("Round {n} of 4. {w}.", None), ("Rnd {n} of 4: {w}", None), ("buoy;{n};{w};", None),
)  # fmt: skip


@pytest.mark.parametrize("label", [label for label, _ in LABELS])
def test_rows_by_a_word_that_counts_on(label: str) -> None:
    """Whatever the word is, labels with it that count on from 1 are those of rows."""
    ends = ("st", "nd", "rd", "th")
    lines = [
        label.format(n=at, w=words, th=ends[at - 1]) for at, words in enumerate(ROWS, 1)
    ]
    assert counts("BUOY\n" + "\n".join(lines)) == [6, 12, 18, 18]


def test_numbered_pages_are_no_rows_and_rows_no_pages() -> None:
    """ "Round 2 of 4" is no page's number, though many lines are like it."""
    lines = "\n".join(f"Round {at} of 9. Sc in each st." for at in range(2, 10))
    assert counts(f"BUOY\n\n\nRound 1 of 9. 6 sc in ring.\n{lines}") == [6] * 9


REMARKS = (
    "(24 dc, the ch-3 being one of them)", "(24 sts, the turning ch being 1)",
    "(24 sts with the ch)", "(24 dc; ch-3 counts as one)", "(24 dc, ch 3 included)",
    "24 dc (with the ch 3)", "(24 dc altogether)", "(24 dc, remember the ch 3 is one)",
    "(24 dc, the first being the ch 3)", "(24 dc if you count the ch 3)", "= 24 dc with the ch-3",
    "(24, chain and all)", "24 dc. [note: the first printing said 26]", "(23 dc + ch 3)",
    "(23 dc and a ch 3)", "(23 dc, not counting the ch 3)", "(23 dc without the ch 3)",
)  # fmt: skip


@pytest.mark.parametrize("total", REMARKS)
def test_totals_with_a_remark_on_the_chain(total: str) -> None:
    """The remark is no part of the row; beside it the chain is one more."""
    text = (
        "Rnd 1: Ch 4, join. Ch 3, 11 dc in ring, join. (12 dc)\n"
        f"Rnd 2: Ch 3, dc in same st, 2 dc in each dc around, join. {total}\n"
        "Rnd 3: Ch 1, sc in each st around, join. (24 sc)"
    )
    told = count_pattern(parse_pattern(text))
    assert [row.count for row in told.parts[0].rows][-2:] == [24, 24]
    assert not told.problems
    wrong = text.replace("24 dc", "27 dc").replace("24 sts", "27 sts").replace("23 dc", "27 dc")
    assert count_pattern(parse_pattern(wrong.replace("(24,", "(27,"))).problems


OWN = (
    ('"trough" - 3 sc worked together over 3 sts.', "(sc in next st, trough) around", 12),
    ("pinch = sc 2 together.", "(sc, pinch) 8 times", 16),
    ("Special: twin = 2 sc in one st; pinch = sc 2 together.", "(pinch, twin) 8 times", 24),
    ("tog = invisible decrease // m1 = move the marker", "(sc, tog) x8", 16),
    ('one "heap" = 3 dc worked into one place', "heap in each st", 72),
    ("(bump = 4 dc closed together in one st)", "(sc, bump) 12 times", 24),
    ("TWIST over 4 sts = skip 2 sts, FPtr around next 2 sts, FPtr around the skipped sts.",
     "(sc in next 2 sts, TWIST) 4 times", 24),
)  # fmt: skip


@pytest.mark.parametrize(("key", "words", "after"), OWN)
def test_stitches_named_by_the_author(key: str, words: str, after: int) -> None:
    """A name with its meaning, wherever it stands in its line."""
    told = count_pattern(parse_pattern(f"FLOAT\n{key}\nRnd 1: 24 sc in ring\nRnd 2: {words}"))
    assert told.parts[-1].rows[-1].count == after
    assert not told.problems
