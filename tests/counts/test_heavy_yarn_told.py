"""Garments and things of heavy yarn as their leaflets tell them: shaping in several rows, edges all
around, soles and uppers, knitted parts of a crocheted text; common practice, no source.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern


def counts(text: str) -> tuple[list[int | None], list[Verdict]]:
    """The counts of all rows, and what was said of them."""
    counted = count_pattern(parse_pattern(text))
    rows = [row for part in counted.parts for row in part.rows if row.count is not None]
    return [row.count for row in rows], [one.verdict for one in counted.problems]


BUOY = (
    "BUOY: With Red ch 2, 7 s c in 1st ch. 2nd ROUND: Work 2 s c in every s c. "
    "3rd ROUND: 1 s c in next st, 2 s c in next st, repeat from beg all around (21 s c). "
)
GROWN = (
    "NEXT 3 ROUNDS: Inc 7 sts evenly spaced in each round.",
    "NEXT 3 ROUNDS: Inc 7 sts evenly spaced in each round (42 sts in last round).",
    "NEXT 3 ROUNDS: Inc 7 s c evenly in each round, end last round with a sl st.",
    "NEXT 3 ROUNDS: Increase 7 s c in each round.",
    "4th to 6th ROUNDS: Inc 7 sts evenly spaced in every round and end last round with a sl st.",
    "4th, 5th and 6th ROUNDS: Inc 7 sts evenly spaced in each round (42 s c at end of last round).",
)
ADVICE = (
    "", ", do not place inc directly over inc of previous round", ", never increasing above "
    "increases",
    ", having no inc. fall over the inc. of last round", ", without placing one increase over "
    "another",
)  # fmt: skip


@pytest.mark.parametrize(("words", "advice"), [*zip(GROWN, (*ADVICE, ""), strict=True)])
def test_so_many_more_in_each_of_several_rounds(words: str, advice: str) -> None:
    at = words.index("round", words.index(":")) + len("round")
    text = f"{BUOY}{words[:at]}{advice}{words[at:]} NEXT ROUND: 1 s c in each s c.\n"
    assert (text, *counts(text)) == (text, [7, 14, 21, 28, 35, 42, 42], [])


def test_advice_is_no_decrease_more() -> None:
    text = (
        "CAP: With Blue ch 35, join in 1st st of ch. 1st ROUND: 1 s c in each st. 2nd ROUND: Dec "
        "in next 2 sts (to dec: pull up a loop in each of next 2 sts, y o and draw through all "
        "loops), 1 s c in each of next 5 sts, repeat from beg all around. 3rd "
        "ROUND: Dec 6 sts evenly spaced, do not work dec directly over previous dec.\n"
    )
    assert counts(text) == ([35, 30, 24], [])


LAST_STS = (
    "Work in garter st (K each row), inc 1 st in last st of each row.",
    "Inc 1 st in first st of every row.", "K across, inc in last st of each row.",
)  # fmt: skip


@pytest.mark.parametrize("words", LAST_STS)
def test_one_more_in_the_last_stitch_of_each_row(words: str) -> None:
    assert counts(f"Cast on 5 sts. NEXT 4 ROWS: {words}\n") == ([5, 6, 7, 8, 9], [])


def test_rows_even_before_a_colon_are_no_label() -> None:
    text = (
        "With Red ch 2, 8 s c in 1st st of ch. 2nd ROUND: * S c in next s c, 2 s c in next s c, "
        "repeat from * around. Work 2 rounds even: Repeat last 3 rounds once. NEXT ROUND: 1 s c in "
        "each s c.\n"
    )
    assert counts(text)[0] == [8, 12, 12, 12, 18, 18, 18, 18]


SIDES = (
    "Working around entire mat work 3 s c in each corner st, 17 s c across each long side and 9 "
    "s c "
    "across each short side.",
    "Work 17 s c across each long side, 9 s c across each short side and 3 s c in each corner, "
    "join.",
    "Attach Blue in corner, work 3 s c in each corner, 17 s c along each long edge and 9 s c along "
    "each short edge, join, ch 1, turn.",
    "Work a row of s c around mat having 17 s c on each of the long sides, 9 s c on each of the "
    "short "
    "sides and 3 s c in each corner st, join.",
    "Work s c all around mat, 3 s c in each corner, 17 s c on each long side, 9 s c on each short "
    "side, join.",
)  # fmt: skip


@pytest.mark.parametrize("words", SIDES)
def test_an_edge_with_as_many_corners_as_sides(words: str) -> None:
    mat = "MAT: Ch 10, s c in 2nd st from hook and in each remaining st of ch, ch 1, turn."
    assert counts(f"{mat}\n\nEDGE: {words}\n") == ([9, 64], [])


SOLE = (
    "SOLE: Ch 3, join to form a ring, ch 3, 25 d c in ring, join. 2nd ROUND: Ch 1, 1 s c in each "
    "d c, "
    "join, cut yarn.\n\nUPPER: "
)
LEFT = (
    "Attach White in 5th st from center of toe; in back loops only, 1 s c in each "
    "st all around leaving 8 sts free at center of toe, ch 1, turn.",
    "Attach Blue, working in s c around sole, leaving 8 sts free at toe, ch 1, turn.",
    "Join Blue, s c in each st around leaving the 8 center sts free, turn.",
)
ROWS = (
    ("Skip 1 s c, work in s c dec 3 sts evenly spaced at heel and omitting the last s c.", 13),
    ("Skip 1st s c, work in s c dec 2 sts at center of toe, join, cut yarn, turn.", 15),
    ("1 s c in each s c, 1 s c in both loops of 8 free sts of toe, join.", 26),
    ("1 s c in each s c and in each of the 8 free sts, join.", 26),
    ("1 s c in each s c, 8 s c across the 8 sts left free, join.", 26),
)


@pytest.mark.parametrize("words", LEFT)
def test_stitches_left_free_at_the_toe(words: str) -> None:
    for row, count in ROWS:
        text = f"{SOLE}{words} 2nd ROW: {row}\n"
        assert (text, *counts(text)) == (text, [26, 26, 18, count], [])


def test_a_sole_whose_chain_makes_two_in_its_place() -> None:
    text = (
        "SOLE: Ch 12, work 3 sdc in 2nd st from hook (sdc: yo, insert in st, pull through and work "
        "off all loops at one time), 1 sdc in each of the next 9 sts, 3 sdc in last st; working on "
        "other side of ch, 1 sdc in each of the next 9 sts, join. 2nd ROUND: Ch 2, sdc in same "
        "space, 3 sdc in next sdc, 2 sdc in next st, 1 sdc in each of the next 9 sts, 2 sdc in "
        "each "
        "of the next 2 sts, 2 sdc in next st, 1 sdc in each of the next 7 sts, 2 sdc in next 2 "
        "sts, "
        "join.\n"
    )
    assert counts(text)[0] == [24, 33]


KNITTED = (
    "COVER\n\nWith Red and No. 9 needles, cast on 21 sts. 1st ROW: K across row. 2nd and 3rd "
    "ROWS: Inc 1 "
    "st at beg and end of each row. Work in stockinette st (K 1 row, P 1 row) for 4 rows, bind "
    "off.\n"
)
TRIMMED = (
    "\nBEADING: Attach Blue with crochet hook, ch 6, sl st in next st, ch 6, sl st in next st, "
    "join.\n"
    "\nFLOWER: With Blue ch 4, join to form a ring, 9 s c in ring, join, ch 3, 1 d c in ring, ch "
    "2, "
    "1 s c in ring.\n\nCORD: Ch 40, s c in 2nd st from hook, 1 s c in each st of ch.\n"
)


def test_a_knitted_part_of_a_text_that_is_mostly_crocheted() -> None:
    pattern = parse_pattern(KNITTED + TRIMMED)
    assert pattern.craft.value == "crochet"
    rows = count_pattern(pattern).parts[0].rows
    assert [row.count for row in rows] == [21, 21, 23, 25, 25, 25, 25, 25, 0]


FANS = (
    "Ch 98, s c in 14th ch from hook, * ch 7, skip 6 ch, s c in next ch, repeat from * to end, "
    "ch 1, turn. 2nd Row: Sl st to loop, ch 3, d c in that loop, ch 3, 2 d c in same loop, * ch 6, "
    "skip 1 loop, 8 tr c in next loop with ch 1 between each tr c, ch 6, skip 1 loop, 2 d c, "
    "ch 3, 2 d c (shell) in next loop, repeat from * to end, ch 1, turn. "
)
BETWEEN = (
    "3rd Row: Shell in shell, ** ch 6, s c between 1st 2 tr c of pineapple, * ch 4, s c between "
    "next 2 tr c, repeat from * 5 times, ch 6, shell in shell, repeat from ** across row, "
    "ending with ch 6, s c between 1st 2 tr c of pineapple, * ch 4, s c between next 2 tr c, "
    "repeat from * 5 times, ch 6, shell in shell, ch 1, turn.",
    "3rd Row: Shell in shell, ** ch 5, s c between first 2 tr c, * ch 3, s c between next 2 tr c, "
    "repeat from * 5 times, ch 5, shell in shell, repeat from ** across row, ch 1, turn.",
)


@pytest.mark.parametrize("words", BETWEEN)
def test_between_stitches_that_chains_part(words: str) -> None:
    assert counts(f"{FANS}{words}\n") == ([13, 40, 37], [])


LOOPS = "* ch 4, s c in next loop, repeat from * all around ending ch 2, s d c in 1st s c."
JOINED = (
    ("Ch 60, join, 1 s c in each ch, join. 2nd ROUND: Ch 1, 1 s c in each s c, join.", [60, 60]),
    ("Ch 60, join, ch 3, 1 d c in each ch, join.", [60]),
    ("Ch 60, join with a sl st to form a circle, ch 1, s c in same st and in each st.", [60]),
    ("Ch 60, join, * s c in next ch, skip 1 ch, repeat from * around.", [30]),
    ("Ch 60, join taking care not to twist ch, * ch 4, skip 2 sts of ch, s c in next ch, repeat "
     "from * all around ending ch 2, s d c in joining. 2nd ROUND: S c in loop, " + LOOPS,
     [20, 20]),
    ("Ch 5, join, 11 s c in ring, join.", [11]),
    ("Ch 5, join, * ch 3, d c in ring, repeat from * 5 times.", [6]),
)  # fmt: skip


@pytest.mark.parametrize(("words", "wanted"), JOINED)
def test_a_chain_joined_and_worked_along_in_one_row(words: str, wanted: list[int]) -> None:
    assert counts(f"BUOY: {words}\n")[0] == wanted


def test_a_scallop_goes_into_one_loop_and_the_next_motif_is_no_part_of_it() -> None:
    text = (
        "MOTIF: With Red ch 4, join to form a ring, ch 3, 2 d c in ring, * ch 3, 3 d c in ring, "
        "repeat from * 4 times, ch 3, join, cut yarn. 2nd ROUND: Attach Blue in any ch 3 loop, "
        "s c, 5 d c, s c in same loop (scallop), * s c, 5 d c, s c in next loop, repeat from * "
        "to end, join, break off. Work a 2nd motif in same manner joining to 1st motif in last "
        "round thus: attach Blue in any loop, s c, 2 d c in that loop, drop loop from hook.\n"
    )
    assert counts(text)[0][:2] == [18, 42]


def test_an_edge_told_by_its_sides_behind_its_stitch() -> None:
    text = (
        "LID: Ch 21, s c in 2nd st from hook and in each remaining st of ch, ch 1, turn.\n\nEDGE: "
        "Attach yarn at beg, working in s c work 31 s c on side of lid, 20 s c across straight "
        "edge "
        "and 31 s c on opposite side, ch 1, turn. 2nd ROW: Dec 1 st at beg and end of row.\n"
    )
    assert counts(text) == ([20, 82, 80], [])
