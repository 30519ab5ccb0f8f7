"""Rows as old lace and rug books tell them: every other loop, "each" inside a repeat, stitches by
what the hands do, squares of a net.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

LOOPS = "Ch 12, join.\nRnd 1. Ch 1, * sc in next ch, ch 3; repeat from * around, join. (12 loops)\n"


def counts_of(text: str) -> list[int | None]:
    """The counts of a text's rows."""
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    return [row.count for row in rows if row.label != "Start"]


def second_round(words: str) -> int | None:
    """The count of a round over twelve loops."""
    return counts_of(f"{LOOPS}Rnd 2. {words}\n")[1]


def test_every_nth_loop() -> None:
    """So many loops as its number goes into; where it goes over, nothing is guessed."""
    for loop in ("other loop", "second loop", "alternate loop", "2nd space", "alternative loop",
                 "other 3-ch loop", "other ch-3 sp", "alternate loop of 3 ch"):  # fmt: skip
        assert second_round(f"Sc in every {loop}, 6 ch between each.") == 6, loop
        assert second_round(f"* Sc in every {loop}, ch 6; repeat from * around.") == 6, loop
    assert second_round("* 1 sc in each third loop, 7 ch *. Repeat.") == 4
    assert second_round("1 sc in every fifth loop, with 9 ch between.") is None


def test_each_inside_a_repeat_is_the_next() -> None:
    """The star says again what "each" says."""
    assert second_round("* Sc in each loop, 5 ch; repeat from *.") == 12
    assert second_round("* Sc through every loop, 5 ch *. Repeat.") == 12
    assert second_round("* 3 dc in each loop, ch 1; repeat from * around.") == 36
    assert second_round("* (2 dc, ch 1, 2 dc) in each loop, ch 1; repeat from * around.") == 48


def test_a_foundation_behind_the_materials() -> None:
    """The last sentence of the materials begins the work."""
    for chain in ("24 ch.", "Make 24 chain.", "Ch 24, turn.", "Make a chain of 24."):
        said = f"MATERIALS.—Cotton, No. 20; hook, No. 4. {chain}\n\n1st row.—* 1 dc in next ch, "
        assert counts_of(said + "2 ch, miss 2; repeat from *.\n") == [8], chain


def test_a_first_row_over_the_whole_chain() -> None:
    """Counted where its repeat comes out even; otherwise left open."""
    row = "1st row.—* 2 tr in one chain, 1 ch, miss 1. Repeat.\n"
    assert counts_of(f"Make 30 chain.\n\n{row}") == [30]
    assert counts_of(f"Make 31 chain.\n\n{row}") == [None]
    assert counts_of("Make 30 chain.\n\n1st row.—1 dc in each chain.\n") == [None]


def test_stitches_told_by_the_hands() -> None:
    """One insertion and a pull through both loops is single crochet; several are one stitch."""
    hands = "insert hook in last st, pull loop through, drop red, pull blue through both loops on "
    said = (
        "Ch 20.\nRow 1. Sc in 2nd ch from hook, * ch 1, skip 1 ch, sc in next ch; repeat from * to "
        f"within last 2 sts of ch, ch 1, skip 1, {hands}hook, ch 1, turn.\nRow 2. Sc in ch-1 sp, * "
        f"ch 1, sc in next ch-1 sp; repeat from * across, ch 1, {hands}hook, ch 1, turn.\n"
    )
    assert counts_of(said) == [10, 10]
    twice = "insert hook in {}, pull loop through, yarn over, insert hook in same space, pull loop "
    twice += "through, yarn over and work off all loops at one time"
    said = f"QUAY RUG: With blue ch 42, {twice.format('4th st from hook')}, * skip 1 st of ch, "
    said += f"{twice.format('next st')}; repeat from * across ch, turn.\n\n2nd Row: Ch 2, work 1 "
    assert counts_of(said + "pattern st in each of the next 8 sts, work in pattern across.\n") == [
        20, 20,
    ]  # fmt: skip


def test_hands_that_are_not_understood_are_asked_about() -> None:
    """Such a row does not keep the count of the row below in silence."""
    said = (
        "Ch 21.\nRow 1. Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2. Lift the "
        "stitch on the hook, draw up a loop through the odd ones, work off and go on so.\n"
    )
    row = count_pattern(parse_pattern(said)).parts[0].rows[-1]
    assert row.count is None
    assert row.verdict is Verdict.UNCLEAR


def test_rows_told_in_meshes() -> None:
    """Open and solid meshes are squares of a net, in whatever language books call stitches so."""
    said = (
        "Ch 23, d c in 8th st from hook, * ch 2, skip 2 sts of ch, d c in next st, repeat from * "
        "to end, ch 5 to turn each row.\n\n2nd Row—1 open mesh, 2 solid meshes, 2 open meshes, 1 "
        "solid mesh.\n\n3rd Row—2 open meshes, 2 solid meshes, 2 open meshes.\n"
    )
    assert counts_of(said) == [7, 13, 11]


def test_the_last_square_over_its_chain() -> None:
    """What the ending skips is the chain that the other squares pass over too."""
    said = (
        "Ch 31, dc in 7th st from hook, * ch 1, skip 1 st of ch, dc in next st, repeat from * "
        "across ch, ch 4 to turn all rows.\n\n2nd Row: Dc in next dc, * ch 1, dc in next dc, "
        "repeat from * across row, ending with ch 1, skip 1 st, dc in next st.\n\n3rd Row: Work "
        "same as 2nd row.\n"
    )
    assert counts_of(said) == [14, 14, 14]


def test_a_round_that_begins_with_one_of_its_clusters() -> None:
    """Chain and stitch are the first cluster of two."""
    words = "Ch 3, dc in same loop, * ch 4, 2 dc in next loop keeping last loop of each dc on hook,"
    words += " thread over and work off all loops at one time; repeat from * around, ch 4, join."
    assert second_round(words) == 12


def test_stitches_called_plain() -> None:
    """Needlework books of the 1880s: a plain stitch, a single one, and "=" for a comma."""
    said = (
        "ROSE OF THE WINDS (fig. 12).--Make 12 chain, close the ring.\n\n1st row--24 plain on the "
        "12 chain.\n\n2nd row--* 1 plain on the next plain = 5 chain, miss 1. Repeat from *; 1 "
        "single on the 1st plain.\n\n3rd row--On each 5 chain: 1 plain, 5 trebles, 1 plain.\n"
    )
    assert counts_of(said) == [24, 12, 84]


def test_all_chains_of_a_ring() -> None:
    """ "24 sc on the 12 chain" are 24, not so many in each."""
    for words in ("on the 12 ch", "in the 12 chain", "over the 12 chains", "into the 12 ch"):
        assert counts_of(f"Ch 12, join.\nRnd 1. 24 sc {words}, join.\n") == [24], words
    round_1 = "Ch 6, * 1 dc in the 5 ch, 3 ch; repeat from * 6 times, join to 3rd of the chain."
    assert counts_of(f"Ch 5, join to a ring.\nRnd 1. {round_1}\n") == [8]


def test_totals_amid_a_round() -> None:
    """What a round numbers in all is its total, and no more stitches."""
    begun = "Ch 6, join.\nRnd 1. Ch 5, * 1 dc in ring, ch 2; repeat from * 6 times, "
    for total in ("to number altogether 8 dc including the 5 chain", "making in all 8 dc",
                  "8 dc altogether", "numbering 8 dc in all", "which makes 8 dc with the chain",
                  "so as to make 8 dc counting the first chain"):  # fmt: skip
        assert counts_of(f"{begun}{total}, join to 3rd ch.\n") == [8], total


def test_labels_of_several_ordinals() -> None:
    """Lists and ranges of ordinals, from wherever a copy begins."""
    said = (
        "Ch 12.\n\n7th.—1 dc in 4th ch from hook, 1 dc in each ch.\n\n8th and 9th.—Like 7th.\n\n"
        "10th, 11th, and 12th.—The same.\n\n13th to 15th inclusive.—Like 12th.\n\n16th, and "
        "17th.—The same.\n"
    )
    rows = count_pattern(parse_pattern(said)).parts[0].rows
    assert [row.number for row in rows if row.label != "Start"] == list(range(7, 18))


def test_square_crochet() -> None:
    """Open and close squares by their letters, and the chain that begins a row of the net."""
    said = (
        "40 ch.\n\n5th.—3 os., 4 dc., 1 ch., miss 1, 5 dc., 6 os., 1 dc.\n\n6th.—2 o., 3 c., 8 o., "
        "1 dc.\n\n7th.—5 os., 1 cs., 7 os., 1 dc.\n"
    )
    assert counts_of(said) == [19, 20, 16]
    said = (
        "1st.—23 ch., miss 7, dc. on 8th., ✕ 2 ch., miss 2, dc. on 3rd., ✕ to the end.[2]\n\n"
        "2nd.—Slip up the side of the last dc., 5 ch., dc. over dc., ✕ 2 ch., miss 2, 1 dc., ✕ "
        "twice, 6 dc., 2 ch., miss 2, 1 dc.\n\nFootnote 2:\n\n  Leave the ends long.\n"
    )
    assert counts_of(said)[:2] == [7, 11]


def test_a_place_before_its_stitches() -> None:
    """Told first, with a colon, a comma or nothing behind it."""
    loops = LOOPS.replace("ch 3", "ch 5")
    for words in ("On each 5 chain: 1 sc, 5 dc, 1 sc.", "On every loop: 1 sc, 5 dc, 1 sc.",
                  "Into each 5 ch, 1 sc, 5 dc, 1 sc.", "Over each chain of 5, 1 sc, 5 dc, 1 sc.",
                  "* On the 5 chain: 1 sc, 5 dc, 1 sc. Repeat from *.",
                  "* 1 sc, 5 dc and 1 sc under the 5 chain, repeat from *."):  # fmt: skip
        assert counts_of(f"{loops}Rnd 2. {words}\n")[1] == 84, words


MAT = "Make a chain of 8 stitches, and unite it.\n\nRound 1: 1 double crochet, 7 chain, repeat 7 "
MAT += "times more.\n\nRound 2: Into the 7 chain 9 stitches of double crochet, repeat.\n\n"


def test_groups_into_the_chains() -> None:
    """ "Into the 7 chain 9 stitches" are nine in each such loop, with or without a repeat."""
    assert counts_of(MAT) == [8, 72]
    assert counts_of(MAT.replace("double crochet, repeat.\n", "double crochet.\n")) == [8, 72]
    told = "Into the 7 chain 9 stitches of double crochet, repeat"
    each = "Into each of the 7 chain 1 double crochet, 5 long, 1 double crochet"
    assert counts_of(MAT.replace(told, each)) == [8, 56]


def test_one_pass_over_each_group() -> None:
    """ "The 1st of the 9" is told once for each nine."""
    for words in ("1 double crochet into the 1st of the 9, 9 chain, miss 4 loops, 1 double crochet "
                  "into the next, 9 chain, repeat.",
                  "1 double crochet into the 1st of the 9, 8 chain, 1 double crochet into the "
                  "next, miss 5, 6 chain, repeat."):  # fmt: skip
        assert counts_of(f"{MAT}Round 3: {words}\n")[2] == 16, words
    words = "2 chain, 1 long into the last of the 9 double crochet, repeat."
    assert counts_of(f"{MAT}Round 3: {words}\n")[2] == 8
    words = "1 double crochet over the 1st double crochet in last round, 7 chain, repeat."
    assert counts_of(f"{MAT}Round 3: {words}\n")[2] == 8


def test_rings_of_old_mats() -> None:
    """Chains between the stitches of a circle close it; loops are the chain's own stitches."""
    begun = "Make a chain of 9 stitches, and unite it.\n\nRound 1: Into the circle 20 long, with 1 "
    begun += "chain between each.\n\nRound 2: 2 double crochet into the 1 chain, repeat.\n\n"
    assert counts_of(f"{begun}Round 3: 1 long, 2 chain, miss 1 loop, repeat.\n") == [20, 40, 20]
    begun = "Make a chain of 6 stitches. 1st round: 2 double crochet into each loop.\n\n"
    assert counts_of(f"{begun}2nd round: 1 double crochet, 5 chain, miss 1 loop, repeat.\n") == [
        12, 6,
    ]  # fmt: skip


def test_a_row_of_a_stitch() -> None:
    """One in every stitch, and no single one."""
    assert counts_of("Ch 21, work a row of dc on it.\n\nRow 2. 1 dc in each dc.\n") == [None, None]
    assert counts_of("Ch 21.\nRow 1. Sc in 2nd ch from hook and in each ch.\nRow 2. Ch 1, work a "
                     "row of sc.\n") == [20, 20]  # fmt: skip


def test_named_stitches_of_lace() -> None:
    """A name tells which stitch of a row with chains: the others do not grow threefold."""
    said = (
        "Ch 22, sc in 2nd ch from hook, ch 2, 2 dc in same space, * skip 3 ch, sc in next ch, ch "
        "2, 2 dc in same space, repeat from * across, ending with sc in last ch, turn.\n\n2nd Row: "
        "Attach white in 1st sc, ch 3, 2 dc in same space, * sc in next sc, ch 2, 2 dc in same "
        "space, repeat from * across row ending with sc in last st of ch 3, turn.\n"
    )
    first, second = counts_of(said)
    assert first == 16
    assert second in (None, 16, 17)


def test_loops_at_the_edge() -> None:
    """A low stitch far from the hook leaves a loop; the last loop may hold more than the others."""
    said = (
        "Chain 44.\n\nRow 1. Sc in 8th ch from hook, * ch 3, skip 3, sc in next ch; repeat from * "
        "9 times, turn.\n\nRow 2. Ch 3, 2 dc in 1st loop, * ch 1, 3 dc in next loop; repeat from * "
        "across, ending with 4 dc, turn.\n"
    )
    assert counts_of(said)[1] == 31
    sleeve = "Chain 80, work a rib of sc on the chain, then 40 dc. Repeat until there are 10 rows "
    assert counts_of(f"{sleeve}of dc and 11 ribs.\n")[0] is None
