"""Ordinary manners of telling rows: rows called back one by one, a number before a bracket, totals
by side, chains gone into as stitches. The pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern
from reader.text.rounds_told import rounds_told

JETTY = """Ch 15.
Row 1: sc in 2nd ch from hook and in each ch across. (14 sc)
Row 2: ch 1, 2 sc in first st, sc in each st to end.
Row 3: ch 1, sc in each st.
Row 4: ch 1, sc in each st.
"""
PORTHOLE = """Ch 36, join.
Rnd 1: sc in each ch. (36)
Rnd 2: 10 sc, ch 8, skip 8, sc in 18.
Rnd 3: """
SQUARE = """
Rnd 1: In a magic ring: ch 3, 2 dc, ch 2, [3 dc, ch 2] x 3, join. (3 dc on each side)
Rnd 2: Ch 3, dc in next 2 dc, corner in ch-2 sp, [dc in next 3 dc, corner in ch-2 sp] x 3, join.
"""


def counts(text: str) -> list[int | None]:
    """The counts of all rows."""
    return [row.count for part in count_pattern(parse_pattern(text)).parts for row in part.rows]


@pytest.mark.parametrize(
    ("told", "after"),
    [
        ("Rows 5 to 10: rep rows 3 and 2 three times.", [15, 16, 16, 17, 17, 18]),
        ("Rows 5-8: rep rows 2 and 4 twice.", [16, 16, 17, 17]),
        ("Repeat rows 2, 4 and 2 once more.", [16, 16, 17]),
        ("Rows 5-8: work row 4, then row 2, twice.", [15, 16, 16, 17]),
        ("Rows 5-8: alternate rows 3 and 2.", [15, 16, 16, 17]),
        ("Rows 5-8: repeat row 2 followed by row 4 twice.", [16, 16, 17, 17]),
    ],
)
def test_rows_are_called_back_one_by_one(told: str, after: list[int]) -> None:
    """In the order of the words, and without the rows between those named."""
    assert [one for one in counts(JETTY + told) if one is not None] == [14, 15, 15, 15, *after]


def test_a_label_of_more_rows_than_the_words_is_asked_about() -> None:
    """As many as the label says are worked."""
    read = count_pattern(parse_pattern(JETTY + "Rows 5-10: rep rows 2 and 3 twice."))
    assert read.parts[0].rows[-1].count == 18
    assert [one.verdict for one in read.problems] == [Verdict.UNCLEAR]


@pytest.mark.parametrize(
    ("row", "after"),
    [
        ("sc, inc, 5(2 sc, inc), sc", 24),
        ("sc, inc, 5 x [2 sc, inc], sc", 24),
        ("sc, inc, 5 times (2 sc, inc), sc", 24),
        ("BLO 6(sc, dec)", 12),
        ("*inc, sc in 2* 6 times", 24),
    ],
)
def test_a_number_before_a_bracket_and_a_place_before_a_star(row: str, after: int) -> None:
    text = f"Rnd 1: 6 sc in MR. (6)\nRnd 2: inc x 6. (12)\nRnd 3: (sc, inc) x 6. (18)\nRnd 4: {row}"
    assert counts(text)[-1] == after


def test_totals_behind_a_letter_are_held_against_the_rounds() -> None:
    """One of them is wrong."""
    text = (
        "c is the stitch count\n1: MR 6 sc. c6\n2: 6 inc. c12\n3: 6(sc, inc). c19\n"
        "4: sc, inc, 5(2 sc, inc), sc. c24\n"
    )
    told = count_pattern(parse_pattern(text)).problems
    assert [(one.verdict, one.printed) for one in told] == [(Verdict.TOTAL_DISAGREES, 19)]


@pytest.mark.parametrize(
    "said",
    [
        "Note: ch 3 is a dc. Corner = (2 dc, ch 2, 2 dc).",
        "Corners are (2 dc, ch 2, 2 dc).",
        'A "corner" is always 2 dc, ch 2, 2 dc in the corner space.',
        "To make a corner, work 2 dc, ch 2, 2 dc in the space.",
        "For each corner work (2 dc, ch 2, 2 dc).",
    ],
)
def test_what_a_corner_is(said: str) -> None:
    assert counts(said + SQUARE) == [12, 28]


@pytest.mark.parametrize(
    "said", ["(8 dc per side)", "You have 8 dc on each side.", "8 dc each side"]
)
def test_totals_of_a_side_are_held_against_the_round(said: str) -> None:
    """Seven lie between the corners."""
    text = f"Corner = (2 dc, ch 2, 2 dc){SQUARE.rstrip()} "
    assert not count_pattern(parse_pattern(text + said.replace("8", "7"))).problems
    told = count_pattern(parse_pattern(text + said)).problems
    assert [one.verdict for one in told] == [Verdict.UNCLEAR]


@pytest.mark.parametrize(
    "row",
    [
        "sc in each st and in each of the 8 ch.",
        "sc in each st around, counting each ch as a st.",
        "sc in each st around (work into the chains as if they were stitches).",
        "sc around, working 1 sc into each of the 8 chains.",
    ],
)
def test_chains_gone_into_as_stitches(row: str) -> None:
    assert counts(PORTHOLE + row)[-1] == 36


def test_stitches_beside_a_chain_are_the_total_of_a_row() -> None:
    """What is told of both is no work."""
    text = (
        "Ch 36, join.\nRnd 1: sc in each ch. (36)\n"
        "Rnd 2: sc in each of next 18 sc, ch 18, skip 18. 18 sc, 18 ch\n"
        "Rnd 3: sc in each sc and ch. 36 sc"
    )
    assert not count_pattern(parse_pattern(text)).problems
    assert counts(text)[1:] == [36, 18, 36]


TOLD_ALOUD = """To start you chain forty and slip stitch to the first chain to make a ring.
Round one, half double crochet in every chain. You've got 40 half doubles. Join.
Round two, half double in each stitch, join. 40.
Round three, two half doubles in the first stitch, half double around to the last stitch, two half
doubles in the last stitch. 42.
Round four, half double in each stitch. 42.
"""


@pytest.mark.parametrize(
    ("said", "after"),
    [
        ("Round five is like three.", [44]),
        ("Round five, just like three, and round six like four.", [44, 44]),
        ("Round five, we do the same thing as round three.", [44]),
        ("Round five like three, 44, and then rounds six to eight are plain. 44.", [44] * 4),
        ("Round five like three. Then for rounds six to eight you just do half doubles.", [44] * 4),
        ("Round five, like three. And round six, once more, and we're back at 46.", [44, 46]),
        ("Round five, do that again, 42. Now round six, one more of those.", [42, 42]),
        ("Rounds five to eight: do three and four twice.", [44, 44, 46, 46]),
        ("Rounds five and six, you alternate three and four.", [44, 44]),
        ("Rounds five to eight are the plain ones, just like round four.", [42] * 4),
    ],
)
def test_rounds_told_aloud_by_others(said: str, after: list[int]) -> None:
    assert counts(TOLD_ALOUD + said)[5:] == after


BUOY = """Ch 60, join.
Rnd 1: dc in each ch. 60 dc.
Rnd 2: (2 dc in next st, dc in next 9) 6 times. 66 dc.
"""


@pytest.mark.parametrize(
    "said",
    [
        "Rnds 3-6: Repeat round 2. Every round grows by 6 dc. 90 dc at the end of round 6.",
        "Rnds 3-6: Work as round 2, each round having 6 more dc. (90 dc)",
        "Rnds 3-6: As round 2, adding 6 sts each time. You will end with 90 dc.",
        "Repeat round 2 four more times, growing by 6 dc each round. 90 dc.",
        "Repeat round 2 with six more dc in every round until you have 90 dc.",
    ],
)
def test_rounds_that_are_told_to_grow(said: str) -> None:
    """The numbers of the round that is called back do not fit the wider one."""
    read = count_pattern(parse_pattern(BUOY + said))
    assert [row.count for row in read.parts[0].rows][3:] == [72, 78, 84, 90]
    assert not read.problems


CAP = """Crown
Round 1: 10 hdc in magic ring; join. (10)
Round 2: ch 2, 2 hdc in each st; join. (20)

First flap
Skip the first 3 sts from the join, join yarn in the next st.
Row 1: ch 2, hdc in same st and in next 5 sts, turn. (6)
Row 2: ch 2, hdc2tog, hdc in each st to last 2, hdc2tog, turn. (4)
Row 3: repeat row 2. (2)
Ch 30 for the tie, fasten off.

Second flap
"""


@pytest.mark.parametrize(
    "told",
    [
        "Skip 5 sts, join yarn in the next st and work rows 1 to 3 of the first flap.",
        "Skip 5 sts, join yarn, then repeat rows 1-3 of first flap.",
        "Join yarn in the next st and work rows 1-3 as for the first flap.",
        "With the crown facing, miss 5 sts, join yarn in next st; work rows 1 to 3 of first flap.",
        "Count 5 sts from the first flap, join yarn and follow rows 1 to 3 of the first flap.",
    ],
)
def test_a_second_piece_on_the_same_edge(told: str) -> None:
    """Where it begins is no row, and its rows are those of the first."""
    read = count_pattern(parse_pattern(CAP + told))
    assert [row.count for row in read.parts[2].rows] == [6, 4, 2]
    assert [row.count for row in read.parts[1].rows][:3] == [6, 4, 2]
    assert not read.problems


@pytest.mark.parametrize("box", ["[ ] {}", "☐ {}", "[x] {}", "___ {}", "{} [ ]"])
def test_boxes_to_tick(box: str) -> None:
    rows = ("Rnd 1: 6 sc in ring. My count: ____ (6)", "Rnd 2: 2 sc in each st. (12)",
            "Rnd 3: sc in each st. Stitches: ____")  # fmt: skip
    assert counts("\n".join(box.format(row) for row in rows)) == [6, 12, 12]


def test_in_total_is_no_count_of_every_row() -> None:
    """What is told of each of some stitches, and how often in total, is told of its row alone."""
    text = (
        "Rnd 1: 12 sc in a magic ring.\n"
        "Rnd 2: * 1 sc in each of the next 2 sts, 2 sc in the next *, 4 times in total = 16 sc"
        "\nRnd 3: sc in each sc.\n\nPENNANT\nRnd 1: 10 sc in a magic ring.\nRnd 2: 2 sc in each sc."
    )
    assert counts(text) == [12, 16, 16, 10, 20]
    assert not count_pattern(parse_pattern(text)).problems


@pytest.mark.parametrize(
    ("row", "after"),
    [
        ("every two sc together", 6),
        ("single crochet every 2 stitches together.", 6),
        ("Crochet two together six times. Six.", 6),
        ("sc two and two together", 6),
        ("Single crochet in the next stitch, then crochet two together. All the way around.", 8),
    ],
)
def test_two_together_in_other_words(row: str, after: int) -> None:
    read = count_pattern(parse_pattern(f"Rnd 1: 12 sc in ring. (12)\nRnd 2: {row}"))
    assert read.parts[0].rows[-1].count == after
    assert not read.problems


@pytest.mark.parametrize(
    "row",
    [
        "alternate 2 rnds red and 2 rnds white.",
        "2 rounds red, 2 rounds white, twice.",
        "Work in stripes: 2 rounds A, 1 round B, repeat.",
        "one round of blue, then one round of white, alternately.",
    ],
)
def test_rounds_of_which_only_the_stripes_are_told(row: str) -> None:
    text = f"Ch 24, join.\nRnd 1: sc in each ch. (24)\nRnds 2-9: {row}\nRnd 10: sc in each st. (24)"
    read = count_pattern(parse_pattern(text))
    assert [one.count for one in read.parts[0].rows][1:] == [24] * 10
    assert not read.problems


def test_the_underside_of_chains_told_by_their_number() -> None:
    text = PORTHOLE + (
        "sc in each sc and ch. (36)\n\nFINGER\nRnd 1: Join yarn at the opening, 1 sc in "
        "each of the 8 skipped sc, 1 sc in the underside of each of the 8 ch.\nRnd 2: sc in each."
    )
    assert counts(text)[-2:] == [16, 16]


def test_rounds_spoken_without_a_stop_keep_their_own_pass() -> None:
    """Marks put behind one label would hide the others."""
    text = (
        "so we start with the deck and make a ring and put six single crochet in it that is six\n"
        "now round two is two single crochet in every stitch around that gives you twelve\n"
        "round three one single crochet in the first stitch two in the next all around eighteen\n"
        "round four one single crochet in each stitch around eighteen\n"
        "rounds five through eight are exactly the same as round four\n"
        "then round nine single crochet two together all the way around and that makes nine\n"
    )
    assert rounds_told(text) == text
