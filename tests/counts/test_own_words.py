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
    ("B{n}: {w}", None), ("r{n}& {w}", None), ("{n}     {w}", None), ("  r{n}     {w}", None),
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


SATCHEL = """SATCHEL
Front
F1: Ch 25. Sc in 2nd ch from hook and each ch across. (24)
F2: Ch 1, turn. 2 sc in first st, sc across to last st, 2 sc in last st. (26)
F3: Ch 1, turn. Sc across. (26)
F4-F5: Repeat F2 and F3. (28)
Gusset
G1: Ch 6. Sc in 2nd ch from hook and each ch across. (5)
G2-G3: Ch 1, turn. Sc across. (5)
"""
FAR_BEHIND = """CRATE
SIDES (2)          ch 7
  r1-r3     sc 6                           |6
  r4        sc 6                           |6
TOP                ch 13
  r1        sc 12                          |12
  r2        sc 12                          |12
"""


def test_parts_whose_rows_have_a_letter() -> None:
    """Rows are called back by their letter and number, and each part begins anew."""
    assert counts(SATCHEL) == [24, 26, 26, 28, 28, 5, 5, 5]


def test_a_heading_with_its_chain_far_behind() -> None:
    """It begins a part of its own."""
    told = count_pattern(parse_pattern(FAR_BEHIND))
    assert [part.name.lower() for part in told.parts if part.rows] == ["sides", "top"]
    assert [row.count for row in told.parts[-1].rows][1:] == [12, 12]
    assert not told.problems


MAT = (
    "Mat\nCh 21.\nRow 1: sc in 2nd ch from hook and in each ch across. (20)\n"
    "Row 2: ch 1, 2 sc in first st, sc across. (21)\nRow 3: ch 1, sc2tog, sc across. (20)\n"
)
CALLED = (
    "Rows 4-7: 2nd and 3rd rows alternately.", "Rows 4-7: rows 2 and 3 alternately",
    "Rows 4-7: rows 2 and 3, over and over", "Rows 4-7: 2nd and 3rd rows.",
    "Rows 4-7: Rows 2 and 3 twice.", "4th to 7th rows: 2nd to 3rd rows twice.",
    "Rows 4-7: another two of rows 2 and 3",
)  # fmt: skip


@pytest.mark.parametrize("words", CALLED)
def test_rows_called_without_a_verb(words: str) -> None:
    """They are worked in turn, and none is dropped as a remark."""
    assert counts(MAT + words)[-7:] == [20, 21, 20, 21, 20, 21, 20]


def test_slip_stitches_worked_into_are_stitches() -> None:
    """Each is gone into by name in the next row."""
    text = (
        "ch 29.\nRow 1: Starting in the 2nd ch from the hook: *sl st, hdc; rep from * across.\n"
        "Row 2: Ch 1. *Sl st in the hdc, hdc in the sl st; rep from * across. (28 sts)\n"
        "Row 3: Repeat Row 2."
    )
    assert counts(text)[-3:] == [28, 28, 28]


NUMBERS_ALONE = """GULL
all single crochet, no turning chain counted
R1: 8 in ring
R2: two in each
R3: (one, two in the next) x 8
R4: *2, 2 in next* around
R5: Thirty-two.
R6: (2, 2 together) x 8
"""


def test_lists_of_numbers_and_places() -> None:
    """A list that names no stitch is of whatever stitch the piece is of."""
    assert counts(NUMBERS_ALONE) == [8, 16, 24, 32, 32, 24]


def test_twelve_round_a_leg_are_no_twelve_rounds() -> None:
    """ "sc 12 round leg one" is worked once."""
    text = "Seal\nR1) 12 sc in ring\nR2) ch 3, sc 12 round leg one, sc 3 in the chains\nR3) sc"
    assert len(counts(text)) == 3


SIZED = (
    ("SHOE, 3 sizes", "Ch 10 < 12 < 14.", "sc in 2nd ch, sc to end. 9 < 11 < 13"),
    ("CAPE", "Ch 10 ... 12 ... 14.", "sc in 2nd ch, sc to end. (9 ... 11 ... 13)"),
    ("DRESS", "Neck: ch (10, 12, 14).", "sc in 2nd ch, sc to end. (9, 11, 13)"),
)


@pytest.mark.parametrize(("title", "chain", "row"), SIZED)
def test_sizes_with_unusual_marks(title: str, chain: str, row: str) -> None:
    """Where no size has a name the lists alone tell how many there are."""
    again = row[row.index(". ") + 2 :]
    text = f"{title}\n{chain}\nRow 1: {row}\nRow 2: ch 1, turn, sc across. {again}\n"
    pattern = parse_pattern(f"{text}Row 3: ch 1, turn, sc across. {again}\n")
    assert len(pattern.sizes) == 3
    for size, after in enumerate((9, 11, 13)):
        told = count_pattern(pattern, size)
        assert [one.count for part in told.parts for one in part.rows][-3:] == [after] * 3


COUNTED_ON = (
    ("ch 12 / sc 11\n1/ ch 1, sc 11\n2/ ch 1, sc 11\n3/ ch 1, sc 11\n4..6 / ch 1, sc 11", [11] * 6),
    ("h1 ch 2, 3 sc in the 2nd ch. (3)\nh2 ch 1, 2 sc in each, turn. (6)\n"
     "h3 ch 1, [sc, 2 sc in next] 3, turn. (9)\nh4-h5 ch 1, sc in each. (9)", [3, 6, 9, 9, 9]),
    ("1 6 sc in ring: 6\n2 2 sc in each: 12\n3 sc in each: 12\n4 sc all: 12\n5 [sc, inc] 6: 18",
     [6, 12, 12, 12, 18]),
    ("Ball. 1: 6 sc loop (6). 2: inc each (12). 3: inc every other (18). 4-5: sc (18).",
     [6, 12, 18, 18, 18]),
    ("Crown: 4 ch, join; 8 sc in ring.\n2nd round, 2 sc in each. 3rd, 2 sc in every second. "
     "4th, 2 sc in every third. 5th, plain.", [8, 16, 24, 32, 32]),
    ("Rd i: 6 sc in ring. Rd ii: [2 sc in next] x 6. 12 sc. Rd iii: sc. 12 sc.", [6, 12, 12]),
    ("Row 1 . 6 sc in ring . 6\nRow 2 . 2 sc in each . 12\nRow 3 . sc in each . 12\n"
     "Rows 4-5 . sc in each . 12", [6, 12, 12, 12, 12]),
)  # fmt: skip


@pytest.mark.parametrize(("rows", "after"), COUNTED_ON)
def test_labels_in_any_manner_that_count_on(rows: str, after: list[int]) -> None:
    """Numbers that count on from 1, at lines or amid a paragraph, are those of rows."""
    assert counts(f"CRATE\n{rows}")[-len(after) :] == after


def test_numbers_that_do_not_count_on_are_no_labels() -> None:
    """Quantities at the heads of lines stay what they are."""
    text = "You need\n2 balls of twine\n4 buttons\n3 hooks\n\nRnd 1: 6 sc in ring\nRnd 2: inc x6"
    assert counts(text) == [6, 12]


def test_corners_in_the_plural_and_totals_beside_them() -> None:
    """ "In corners" is in each, and "44 + 4 corners" has 44 stitches."""
    text = (
        "R1: ch 3, 11 dc in ring, join. 12\n"
        "R2: ch 3, dc in next 2, ch 2, *dc in next 3, ch 2* 3 times, join. 12 + 4 corners\n"
        "R3: ch 3, dc in each, (2 dc, ch 2, 2 dc) in corners, join. {n} + 4"
    )
    assert counts(text.format(n=28))[-1] == 28
    assert count_pattern(parse_pattern(text.format(n=30))).problems


TOLD_ONCE = (
    "(sc, inc), join.", "[sc, inc]", "(sc, 2 sc in next), join", "(sc 1, inc 1)",
    "*sc, 2 sc in next; to the end.", "*sc, inc; around.", "1 sc, 1 inc, and repeat:",
)  # fmt: skip


@pytest.mark.parametrize("words", TOLD_ONCE)
def test_a_list_told_once_goes_on(words: str) -> None:
    """In brackets, or from a star to a semicolon, it is repeated to the round's end."""
    told = count_pattern(parse_pattern(f"FLOAT\nRnd 1: 12 sc in ring (12)\nRnd 2: {words} (18)"))
    assert [row.count for row in told.parts[-1].rows] == [12, 18]
    assert not told.problems


def test_numbers_behind_a_decrease_are_of_plain_stitches() -> None:
    """ "2 together six times, 1 in each of 12": the last twelve are no decreases."""
    text = "R1: 36 sc in ring\nR2: 1 sc in each of 12, 2 together six times, 1 in each of 12."
    assert counts(text) == [36, 30]
    assert counts("R1: 30 sc in ring\nR2: inc, 1 in next, inc, 1 in each of 27") == [30, 32]
