"""Rows told in lists, a line for each thing done, and ways to begin that are not taken."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def counts(text: str) -> tuple[list[int | None], int]:
    """All counts in order, and how many problems there are."""
    counted = count_pattern(parse_pattern(text))
    return [row.count for part in counted.parts for row in part.rows], len(counted.problems)


def test_bullets_under_a_label_are_one_row() -> None:
    """Chain, stitches, join and total each have a line."""
    text = (
        "Buoy\n1st Round:\n- Ch 2. 10 hdc in a magic ring.\n- Join with a sl st.\n"
        "- (You will have 10 hdc in this round.)\n2nd Round:\n- Ch 2. 2 hdc in each hdc around.\n"
        "- Join with a sl st to the top of the first hdc.\n"
        "- (You will have 20 hdc in this round.)\n"
    )
    assert counts(text) == ([10, 20], 0)


def test_lines_under_a_label_are_one_row() -> None:
    """The same without bullets."""
    text = (
        "Buoy\nRound 1\nMake a magic ring and work 6 sc into it.\nDo not join.\n\n"
        "Round 2\n2 sc in each st around.\nJoin with a sl st.\n\nRound 3\nCh 1.\n"
        "Sc in each st around.\nTurn.\n"
    )
    assert counts(text) == ([6, 12, 12], 0)


def test_bullets_with_totals_are_a_row_each() -> None:
    """A list without labels."""
    text = (
        "Gull\n- 6 sc in a magic ring (6)\n- 2 sc in each sc (12)\n"
        "- 1 sc in next sc, 2 sc in next sc* 6 times (18)\n- 1 sc in each sc (18)\n"
        "- 1 sc in each of next 4 sc, 2sctog* 3 times (15)\n"
    )
    assert counts(text) == ([6, 12, 18, 18, 15], 0)


def test_a_second_way_to_begin_is_not_worked() -> None:
    """Neither in its sentence, nor in a bracket, nor on a line of its own."""
    bracket = "R1: 5 sc in a magic ring (or, ch 2 and sc 5 in 2nd ch from hook)\nR2: inc 5 times\n"
    line = (
        "R1: 5 sc in a magic ring {5 sts}\nAlternate way to begin: ch 2, sc 5 times in 2nd ch from "
        "hook {5 sts}\nR2: inc 5 times {10 sts}\n"
    )
    assert counts(bracket) == counts(line) == ([5, 10], 0)


def test_items_of_a_list_that_are_no_rows_part_them() -> None:
    """What is done by hand between two rounds belongs to neither."""
    text = (
        "Gull\n- Round 1: 6 sc in magic ring\n- Round 2: 2 sc in each sc around - 12 st\n"
        "- Set eyes between rounds 1 and 2\n- Stuff lightly\n- Round 3:*sc2tog around - 6 st\n"
    )
    assert counts(text) == ([6, 12, 6], 0)


def test_lines_go_on_to_the_total_of_their_row() -> None:
    """Where all rows end with a total, a line without one is not the row's last."""
    text = (
        "1. 6 sc into a magic ring. (6)\n2. increase around (12)\n3. \"sc, increase\" around (18)\n"
        "4.-5 sc around. (18)\n6. Single crochet once.\n\"2 sc in the next stitch, sc in the next "
        "stitch\" around.\nSingle crochet in the last stitch. (26)\n7. sc around (26)\n"
    )
    assert counts(text) == ([6, 12, 18, 18, 18, 26, 26], 0)


def test_rows_that_a_copy_ran_together_are_parted() -> None:
    """Labels without a mark, in one paragraph."""
    text = (
        "Sleeve Row 1 (RS) ch 12, sc in 2nd ch from hook and in each ch across, turn [11 sts] "
        "Row 2 ch 1, 2 sc in first st, sc in each st to end, turn [12 sts] Row 3 ch 1, sc in each "
        "st to end, turn Row 4 ch 1, sc in each st to last st, 2 sc in last st, turn [13 sts]\n"
    )
    assert counts(text) == ([11, 12, 12, 13], 0)


def test_a_label_among_others_may_lack_its_mark() -> None:
    """And its word may be misspelled."""
    text = (
        "Rnd 1: 6 sc in mr.\nRnd 2: inc 6 times (12);\nRns 3-5 1 sc in every sc (12); 3 rnds;\n"
        "Rnd 6: (2 sc, dec) X 3 (9);\n"
    )
    assert counts(text) == ([6, 12, 12, 12, 12, 9], 0)


def test_notes_behind_a_row_work_nothing() -> None:
    """Unless they tell what counts."""
    text = (
        "R1: 6 sc inside of a magic ring;\nR2: 6 inc = 12 sc Note: pm on first sc;\nR3: 12 sc;\n"
        "R4: ch 2, 12 dc, join (12) Note: 1 ch made too many is no harm\n"
    )
    assert counts(text) == ([6, 12, 12, 12], 0)


def test_a_piece_may_begin_amid_a_paragraph() -> None:
    """Behind the last words of another."""
    text = (
        "Rnd 1: 6 sc in a magic ring. Rnd 2: 2 sc in each sc (12 sc) Rnd 3: sc in each sc. Do not "
        "finish off. Handle: Ch 16, sc in 2nd ch from hook and in each ch across. (15)\n"
    )
    assert counts(text) == ([6, 12, 12, 15], 0)


def test_how_many_rows_a_label_has_is_no_row() -> None:
    """Told beside the label, between strokes or in a bracket."""
    text = (
        "1 row - 6 sc in MR\n2 row - 6 inc = 12\n3 - 6 rows / 4 rows / - 12 sc\n"
        "7-8 rows (2 rows) - 12 sc\n9 row - (4 sc, dec) * 2 = 10\n"
    )
    assert counts(text) == ([6, 12, 12, 12, 12, 12, 12, 12, 10], 0)


def test_a_foundation_told_as_what_is_done_first() -> None:
    """So many chains and some more."""
    text = "Start by chaining 20 plus 2\nRow 1: hdc in 3rd ch from hook and in each ch across\n"
    assert counts(text)[0][-1] == 20


def test_a_list_may_begin_with_its_ring_alone() -> None:
    """The ring's total says how many stitches it holds."""
    text = (
        "Legs x4:\n- Starting with light brown - MC (4)\n- *inc* (8)\n- *1sc, inc* (12)\n"
        "- 12sc (12)\n- *1sc, dec* (8)\n"
    )
    assert counts(text) == ([4, 8, 12, 12, 8], 0)


def test_a_total_told_in_a_sentence_of_its_own() -> None:
    """What it includes is told behind it."""
    text = (
        "Round 1: Chain 4, join to a ring.\nRound 2: Ch2 (counts as a single crochet.) Work 7 sc "
        "into ring. Join with sl st. This round makes 8sc (including the first ch2 as a sc.)\n"
    )
    assert counts(text)[0][-1] == 8


def test_what_may_be_done_is_not_worked() -> None:
    """Nor is a line in brackets that only names the change."""
    text = (
        "Rnd 1: 6 sc in a magic ring.\n(Increase in every st)\nRnd 2: 2 sc in each st around (12)\n"
        "Rnd 3: sc in each st around (12)\nOptional: for a taller buoy, repeat rnd 3 again.\n"
        "Rnd 4: (sc, dec) around (8)\n"
    )
    assert counts(text) == ([6, 12, 12, 8], 0)
