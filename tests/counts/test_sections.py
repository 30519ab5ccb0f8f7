"""Rounds whose sections lie between loops: the last stitch of a group, spaces between groups, where
the yarn is fastened, and what a row's unread words leave in doubt.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.counted import CountedPattern, Verdict
from reader.pattern.parser import parse_pattern

RING = "Ch 8, join with sl st to form ring.\n"


def counted(text: str) -> CountedPattern:
    """A text's rows, counted."""
    return count_pattern(parse_pattern(text))


def counts_of(text: str) -> list[int | None]:
    """The counts of a text's rows."""
    rows = [row for part in counted(text).parts for row in part.rows]
    return [row.count for row in rows if row.label != "Start"]


def test_a_spiral_leaves_the_last_stitch_of_every_group() -> None:
    """ "To within last sc of group" is said of each group between two loops, not of the round."""
    said = (
        "1st rnd: 11 sc in ring, do not join.\n2nd rnd: Ch 3, sc in first sc, (ch 3, skip 1 sc, "
        "sc in next sc) 5 times.\n3rd rnd: * Ch 3, 2 sc in next loop. Repeat from * "
        "around.\n4th rnd: * Ch 3, 2 sc in next loop, sc in each sc to within last sc of group. "
        "Repeat from * around.\n5th rnd: * Ch 5, skip first sc, sc in each sc of group to within "
        "last sc. Repeat from * around."
    )
    assert counts_of(RING + said)[2:] == [12, 18, 6]


def test_spaces_between_groups_are_told_by_their_stitches() -> None:
    """The space inside a shell has its stitches on both sides, the others have not."""
    said = (
        "1st rnd: (Sc in ring, ch 8) 6 times; sl st in 1st sc.\n2nd rnd: Sl st in next 4 ch, sc in "
        "loop, ch 6, dc in same loop, (ch 4, in next loop make dc, ch 3 and dc) 5 times; ch 4, sl "
        "st in 3rd ch of ch-6.\n3rd rnd: Sl st in next sp, ch 3, in same sp make dc, ch 2 and 2 "
        "dc; * ch 2, sc in next sp, ch 2, in next sp make 2 dc, ch 2 and 2 dc. Repeat from * "
        "around, ending with ch 2. Join.\n4th rnd: Sl st in next dc and in next sp, ch 3, in same "
        "sp make 2 dc, ch 2 and 3 dc; * ch 3, sc in next sc, ch 3, in next sp (between dc-groups) "
        "make 3 dc, ch 2 and 3 dc. Repeat from * around. Join."
    )
    assert counts_of(RING + said) == [6, 12, 30, 42]


def test_a_chain_stands_in_the_loop_where_the_yarn_is_fastened() -> None:
    """Its loop is used, so that the next one is another."""
    said = (
        "1st rnd: 12 sc in ring, join. 2nd rnd: Ch 6, * dc in next sc, ch 3. Repeat from * "
        "around, join to 3rd ch of ch-6. 3rd rnd: Attach thread to any ch-3 sp, ch 6 (to count as "
        "dc and ch-3), * dc in next sp, ch 3. Repeat from * around. Join."
    )
    assert counts_of(RING + said) == [12, 12, 12]


def test_clusters_named_by_their_stitches_are_one_stitch() -> None:
    """And the first is as high as the chain before it, told with the hands first."""
    said = (
        "1st rnd: Ch 1, 8 sc in ring, join. 2nd rnd: Ch 1, sc in same place, * ch 5, sc in next "
        "sc. Repeat from * around, ending with ch 5, join. 3rd rnd: Sl st in next loop, ch 4, "
        "holding back on hook the last loop of each tr make 2 tr in same loop, thread over and "
        "draw through all loops on hook (cluster made), * ch 7, 3-tr cluster in same loop, 3-tr "
        "cluster in next loop. Repeat from * around. Join."
    )
    assert counts_of(RING + said) == [8, 8, 16]


def test_a_repeat_until_so_many_are_made() -> None:
    """Spaces count the one that the chain makes; stitches are those of the repeat itself."""
    spaces = "1st rnd: Ch 5, * dc in ring, ch 2. Repeat from * until 12 sps are made. Join."
    made = "1st rnd: Ch 5, * dc in ring, ch 2. Repeat from * until 11 dc are made. Join."
    all_told = (
        "1st rnd: Ch 6 (to count as tr and ch-2), * tr in ring, ch 2. Repeat from * until there "
        "are 16 tr; join."
    )
    assert [counts_of(RING + said) for said in (spaces, made, all_told)] == [[12], [12], [16]]


def test_words_that_made_no_sense_are_asked_about_where_loops_do_not_fit() -> None:
    """The number is shown, but not without a question."""
    said = (
        "1st rnd: Ch 1, 12 sc in ring, join. 2nd rnd: Ch 5, * skip 1 sc, dc in next sc, ch 2. "
        "Repeat from * around, join.\n3rd rnd: Ch 1, * 3 sc in next sp along the quay wall, sc in "
        "fourth dc over. Repeat from * 3 times, join."
    )
    rows = counted(RING + said)
    assert any(one.verdict is Verdict.UNCLEAR for one in rows.problems)


def test_stitches_of_the_patterns_own_letters_keep_what_they_are_made_of() -> None:
    """Two meanings on one line; "8 V" behind the row is its total."""
    said = (
        "V = dc, ch 2, dc in one place     SH = 5 dc in one place\nRnd 1: ch 4, sl st into ring, "
        "ch 3, 15 dc in ring, sl st. 16 dc\nRnd 2: ch 5 (first dc + ch 2), dc in same st, sk 1, "
        "*V in next st, sk 1* to end, sl st in 3rd of ch 5. 8 V\nRnd 3: sl st into V, ch 3, 4 dc "
        "in same sp, *SH in next V* to end, sl st. 8 SH"
    )
    assert counts_of("MAT\n" + said) == [16, 16, 40]


def test_letters_left_by_a_translation_are_ours() -> None:
    """A dotless i, a look-alike of another alphabet, a ring without a preposition."""
    said = "1 row: 6 scв MAGİC RİNG\n2 row: 6 ınc (12)\n3 row: (1 sс, ınc) * 6 (18)"
    found = counted(said)
    assert [row.count for row in found.parts[0].rows] == [6, 12, 18]
    assert not found.problems


def test_what_stands_between_two_stars_is_repeated_behind_what_follows() -> None:
    """ "* A *, B, repeat from * to * once" is A B A, in groups called as they were first made."""
    said = (
        "Rnd 1: Ch 3 (counts as first dc), dc in ring, ch 2, (2 dc, ch 2) 5 times in ring; join: 6 "
        "ch-2 sps.\nNote: Work beginning shell as follows: slip st in next dc and in first ch-2 "
        "sp, ch 3, (dc, ch 2, 2 dc) in same sp.\nRnd 2: Work beginning shell, *ch 2, (2 dc, ch 2, "
        "2 dc) in next ch-2 sp (shell made), ch 1, 9 dc in next ch-2 sp, ch 1*, work shell in next "
        "ch-2 sp, repeat from * to * once; join."
    )
    assert counts_of(RING + said)[:2] == [12, 34]


def test_a_round_closes_with_all_of_a_pass_but_the_stitch_it_began_with() -> None:
    """Clusters over several stitches, told with the hands before and behind them."""
    said = (
        "1st rnd: Ch 3, 14 dc in ring, join to top of ch-3. 2nd rnd: Sc in same place as sl st, * "
        "ch 4, tr in next 4 dc, holding back the last loop of each tr on hook, thread over and "
        "draw through all loops, ch 4, sc in next dc. Repeat from * around. Join to first sc made."
    )
    assert counts_of(RING + said) == [15, 6]


def test_a_row_ends_with_so_much_of_its_last_pass() -> None:
    """The chains of the row below are no stitches where the stitches are named."""
    said = (
        "1st rnd: Ch 5, * dc in ring, ch 2. Repeat from * 6 more times. Join to 3rd st of ch-5 (8 "
        "sps). 2nd rnd: Sl st in ch-2 sp, ch 3, 2 dc in same sp, ch 2, * 3 dc in next sp, ch 2. "
        "Repeat from * around. Join. 3rd rnd: Ch 3, dc in same place as sl st, * dc in next dc, 2 "
        "dc in next dc, ch 2, 2 dc in next dc. Repeat from * around, ending with ch 2. Join."
    )
    assert counts_of(RING + said) == [8, 24, 40]


def test_stitches_along_an_edge_are_not_counted() -> None:
    """How many "closely" are, only the maker can tell."""
    assert counts_of("EDGING\n1st row: Sc closely along edge of material. Join.") == [None]


def test_a_long_stitch_works_no_rows() -> None:
    """ "3 rnds below" is where it goes, and the increases glued to their stitch are read."""
    said = (
        "Rnd 1: Ch 3, 11 dc in ring, join. (12)\nRnd 2: Ch 3, dcinc in each st around, join. (24)"
        "\nRnd 3: Ch 1, * sc in next 3 sts, sc in st 2 rnds below, skip next st; rep from * "
        "around. (24)\nRnd 4: Ch 1, sc in each st around. (24)"
    )
    found = counted(RING + said)
    labels = [row.label for row in found.parts[0].rows if row.label != "Start"]
    assert labels == ["Round 1", "Round 2", "Round 3", "Round 4"]


def test_a_label_on_a_line_of_its_own_heads_the_next_line() -> None:
    """As blogs set them; the chain at a join is no chain of the round."""
    said = (
        "Round 1:\nCh 3, 11 dc in ring, join to top of beginning ch 3. (12 dc)\nRound 2:\nCh 3, dc "
        "in same st, 2 dc in each st around, join to top of beginning ch 3. (24 dc)"
    )
    found = counted(RING + said)
    rows = [row for row in found.parts[0].rows if row.label != "Start"]
    assert [(row.label, row.count, row.spaces) for row in rows] == [
        ("Round 1", 12, 0), ("Round 2", 24, 0),
    ]  # fmt: skip


def test_stitches_between_those_worked_into_use_none() -> None:
    """ "Dc in dc, dc between dc": twice as many, and no alarm."""
    said = (
        "Rnd 1: Ch 3 (counts as dc), 11 dc in ring, join. (12 dc)\nRnd 2: Ch 3, dc between dc, "
        "ch 1, (dc in dc, dc between dc, ch 1) 11 times, join in top of ch 3."
    )
    found = counted(RING + said)
    assert counts_of(RING + said) == [12, 24]
    assert not found.problems


def test_the_first_group_lacks_the_stitch_of_its_chain() -> None:
    """Told as a bracket with the chain, and as a list that ends in a chain."""
    said = (
        "Rnd 1: Ch 1, 6 sc in ring, join. Rnd 2: Ch 6, * dc in next sc, ch 3. Repeat from * "
        "around, join to 3rd ch of ch-6. Rnd 3: (Ch 2, dc, ch 3, 2 dc) in same ch-3 sp, (2 dc, ch "
        "3, 2 dc) in each of the ch-3 sps around, join. Rnd 4: Ch 3 (is first dc) 2 dc, ch 1 in "
        "first ch-3 sp, (3 dc, ch 1) in each remaining ch-3 sp, join."
    )
    assert counts_of(RING + said) == [6, 6, 24, 18]


def test_two_beside_one_of_the_same_are_worked_into_one_stitch() -> None:
    """Nobody tells three stitches in a row as one and two; with yarns between them they are plain.
    """
    said = (
        "Round 1: 6 hdc in magic ring\nRound 2: 2 hdc in each st\nRound 3: 1 hdc, 2 hdc, repeat\n"
        "Round 4: 1 hdc, 1 hdc, 2 hdc, repeat\nRound 5: [MC] 12 hdc, [CC] 2 hdc, [MC] 10 hdc"
    )
    assert counts_of(said) == [6, 12, 18, 24, 24]


def test_times_in_a_bracket_and_slipped_stitches() -> None:
    """ "(twice)" is a number of times, "slip 11 stitches" goes over them."""
    said = (
        "Row 1: Chain 47, hdc into the 3rd chain from hook. Hdc into the stitches across (45 "
        "stitches).\nRow 2: Slip 11 stitches. Chain 2, hdc into 25 stitches. Leave the last 10 "
        "stitches.\nRow 3: Ch 1, 1 sc in each of the next 5 sts, hdc2tog (twice), dc2tog (4 "
        "times), sc in next 8 sts."
    )
    assert counts_of("BOOT\n" + said) == [45, 25, 19]
