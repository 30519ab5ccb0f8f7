"""Rounds of shells and clusters: what belongs to the first of them, which of several spaces is
meant, where a round begins that only slips to its place.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

RING = "Ch 8, join with sl st to form ring. 1st rnd: Ch 3, 15 dc in ring, join to top of ch-3. "
SHELLS = (
    "2nd rnd: Ch 3, dc in same place, (ch 2, skip 1 dc, 2 dc in next dc) 7 times; ch 2, sl st in "
    "top of ch-3. 3rd rnd: Sl st in next dc and in next sp, ch 3, in same sp make dc, ch 2 and 2 "
    "dc (a starting shell). In each sp around make 2 dc, ch 2 and 2 dc (shell)\u20148 shells in "
    "rnd. Join. "
)


def counts_of(text: str) -> list[tuple[int | None, int]]:
    """The counts of a text's rows, with their spaces."""
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    return [(row.count, row.spaces) for row in rows if row.label != "Start"]


def test_a_starting_shell_has_the_chain_for_its_first_stitch() -> None:
    """And the first "shell over shell" goes over the one slipped to."""
    said = (
        "4th rnd: Sl st in next dc and in next sp, ch 3 and make a starting shell in same sp, (ch "
        "2, shell over next shell) 7 times; ch 2. Join. 5th rnd: Sl st in next dc and in next sp, "
        "* shell over shell, ch 4, in sp over next shell make 2 dc, ch 5 and 2 dc; ch 4. Repeat "
        "from * around. Join. 6th rnd: * Shell over shell, ch 3, 9 tr in next ch-5 loop, ch 3. "
        "Repeat from * around. Join. 7th rnd: * Shell over shell, ch 3, tr in each of next 9 tr, "
        "making ch 1 between trs, ch 3. Repeat from * around. Join."
    )
    found = counts_of(RING + SHELLS + said)
    assert found == [(16, 0), (16, 8), (32, 8), (32, 16), (32, 16), (52, 12), (52, 44)]


def test_the_space_of_a_shell_is_not_the_one_between_two() -> None:
    """Both have two chains; the shell is told in the notes."""
    said = (
        "Pattern Notes Weave in ends. Shell: 2 dc, ch 2, 2 dc in indicated sp.\n"
        "Rnd 1: Ch 8, join to form a ring, ch 3 (first dc), 15 dc in ring, sl st to join in top of "
        "beg ch-3. (16)\nRnd 2: Ch 3 (first dc), dc in same st as beg ch-3, ch 2, sk 1 dc, [2 dc "
        "in next dc, ch 2, sk 1 dc] rep around, sl st to join in top of beg ch3. (8 ch-2 sps)\n"
        "Rnd 3: Shell in each ch-2 sp around, join. (8 shells)\nRnd 4: [Shell in ch-2 sp of "
        "shell, ch 2] rep around, join.\nRnd 5: [Shell in ch-2 sp of shell, ch 4, 2 dc, ch 5, 2 "
        "dc in next ch-2 sp of shell, ch 4] rep around, join."
    )
    assert [count for count, _ in counts_of(said)] == [16, 16, 32, 32, 32]


def test_a_list_without_a_star_begins_behind_what_is_in_the_same_place() -> None:
    """ "Ch 4, cluster in same space" begins the round, not each pass."""
    said = (
        "2nd rnd: Ch 4, 2 tr in same space keeping last loop of each tr on hook, thread over and "
        "work off all loops at one time, * ch 3, skip 1 dc, cluster st in next dc (cluster st: 3 "
        "tr in same space keeping last loop of each tr on hook, thread over and work off all loops "
        "at one time), repeat from * all around, ch 3, join. 3rd rnd: Ch 4, cluster st in same "
        "space, ch 2, tr over next loop, ch 2, cluster st in next cluster st, repeat from * all "
        "around ending with ch 2, tr over last loop, ch 2, join."
    )
    assert counts_of(RING + said)[1:] == [(8, 8), (16, 16)]


def test_a_round_begins_in_the_loop_just_formed() -> None:
    """That is the last one of the round before, which a tall stitch closed."""
    said = (
        "2nd rnd: Ch 4, (dc in next dc, ch 1) 6 times; dc in next dc, * ch 5, dc in next dc, (ch "
        "1, dc in next dc) 7 times. Repeat from * around, ending with ch 2, dc in 3rd ch of ch-4. "
        "3rd rnd: Ch 3, in loop just formed make dc, ch 2 and 2 dc; * (ch 3, sc in next ch-1 sp) 7 "
        "times; ch 3, in next ch-5 loop make 2 dc, ch 2 and 2 dc (shell made). Repeat from * "
        "around. Join."
    )
    assert counts_of(RING + said)[2] == (22, 18)


def test_points_below_a_label_are_one_round() -> None:
    """As pages list them, with what comes of a repeat told behind it."""
    said = (
        "SQUARE\nRound 1 (RS)\n- With Yarn A, create a magic ring.\n- Ch 3 (counts as first dc)."
        "\n- Work:\n- 2 dc, ch 2\n- (3 dc, ch 2) 3 times\n- Join with sl st to top of ch-3.\n\n"
        "SQUARE B\nch 4, sl st into 1st ch to form ring\nRnd 1: ch 3 (counts as 1 dc), 2 dc into "
        "ring, *ch 3, 3 dc into ring* repeat from * to * 2 more times until you have 4 sets of 3 "
        "dc, ch 3, sl st into 3rd ch"
    )
    assert counts_of(said) == [(12, 4), (12, 4)]
