"""Motifs and edgings as old leaflets tell them: rounds that go on "all around in same manner",
stars that the print lost, clusters told by the hands, stitches between groups, the rest of a loop,
rows that grow by a shell. Common practice, no source; the pieces are invented.
"""

from __future__ import annotations

from itertools import product

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

RING = "BUOY: Ch 6, join to form a ring, ch 1 and work {} s c in ring, join in 1st s c.\n\n"
LOOPS = (
    RING.format(12)
    + "2nd Row. * Ch 8, s c in next s c, repeat from * all around ending row with ch 4, tr c in "
    "1st s c.\n\n3rd Row. "
)
MANNERS = (
    "continue all around in same manner", "and continue in same manner around",
    "continue working all around in the same manner", "then continue around in this way",
)  # fmt: skip
OVERS = ("thread over twice", "thread over needle twice", "thread over hook twice")
INSERTS = ("insert in 5th st from hook", "insert hook in 5th ch from hook")
PULLS = ("pull through and work off 2 loops twice", "thread over and work off 2 loops twice")
ENDS = (
    "thread over and work off all loops at one time",
    "thread over and pull through all loops on needle at one time",
)
RESTS = (
    "over remainder of 1st loop", "in the remaining part of same loop", "over rest of 1st loop",
)  # fmt: skip
SLIPS = (
    "Sl st across each tr c and to center of next loop",
    "Sl st in each tr c and to center st of next loop",
)
JOINS = (
    "drop loop from hook, insert hook in center st of previous scallop, pick up loop and pull "
    "through", "slip loop off hook, insert in next petal of 1st buoy, draw loop through",
    "drop loop off hook, insert needle in 4th picot made, pick up loop and pull loop through",
)
BETWEEN = ("in d c between next 2 shells", "in the d c between shells")
SHELLS = ("5 d c", "3 d c, ch 2, 3 d c")
CLUSTERS = (
    "2-3 tr c cluster sts in next s c with ch 3 between", "2-3 d c clusters in next s c with ch 3 "
    "between", "2 3-tr c cluster sts in next s c with ch 3 between",
)


def _texts() -> list[tuple[str, list[int]]]:
    out = [
        (RING.format(24) + "2nd Row. S c in same space, * ch 4, s c in next s c, repeat from * "
         f"twice, ch 9, s c in next s c, {how} ending row with ch 9, sl st in 1st s c.", [24, 24])
        for how in MANNERS
    ]  # fmt: skip
    for over, into, pull, end in product(OVERS, INSERTS, PULLS, ENDS):
        told = f"* {over}, {into}, {pull}, repeat from * once, {end}"
        out.append((
            LOOPS + f"Ch 7, {told}, * d c in next loop, cluster st in top of d c just made "
            f"(cluster st: ch 4, {over}, insert in st, {pull}, {over}, insert in same st, {pull}, "
            f"{end}), repeat from * all around, join in 3rd st of ch.", [12, 12, 24],
        ))  # fmt: skip
    out += [
        (LOOPS + "Ch 3, 3 d c over same loop, * 7 d c over next loop, repeat from * all around, "
         f"3 d c {rest}, join in 3rd st of ch.", [12, 12, 84])
        for rest in RESTS
    ]  # fmt: skip
    out += [
        (RING.format(32) + "2nd Row. Ch 4, 1 tr c in each of the next 2 s c, * ch 7, skip 5 s c, "
         "1 tr c in each of the next 3 s c, repeat from * twice, ch 7, join in 4th st of ch.\n\n"
         f"3rd Row. {slip}, s c over same loop, * ch 5, 3 tr c cluster st over next 3 tr c, ch 5, "
         "s c in next loop, repeat from * twice, ch 5, 3 tr c cluster st over next 3 tr c, ch 5, "
         "sl st in 1st s c.", [32, 12, 8])
        for slip in SLIPS
    ]  # fmt: skip
    for between, shell, many in product(BETWEEN, SHELLS, (4, 6)):
        size = 5 if shell == SHELLS[0] else 6
        first = "4 d c" if size == 5 else "2 d c, ch 2, 3 d c"
        out.append((
            RING.format(8 * many) + f"2nd Row. Ch 3, {first} in same space, * skip 3 s c, d c in "
            f"next s c, skip 3 s c, {shell} (shell) in next s c, repeat from * {many - 2} times, "
            "skip 3 s c, d c in next s c, join in 3rd st of ch.\n\n3rd Row. Sl st to center of "
            f"shell, s c in same space, * ch 7, 3 d c {between}, ch 7, s c in center of next "
            "shell, repeat from * all around in same manner, join.",
            [8 * many, many * (size + 1), 4 * many],
        ))  # fmt: skip
    out += [
        (RING.format(24) + f"2nd Row. S c in same space, * ch 5, skip 2 s c, {told}, ch 5, skip 2 "
         f"s c, s c in next s c, repeat from * twice, ch 5, skip 2 s c, {told}, ch 5, skip 2 s c, "
         "join in 1st s c.", [24, 12])
        for told in CLUSTERS
    ]  # fmt: skip
    return out


@pytest.mark.parametrize(("text", "counts"), _texts())
def test_rounds_told_so(text: str, counts: list[int]) -> None:
    """Each round comes to what its words make, and nothing is asked."""
    counted = count_pattern(parse_pattern(text), 0)
    assert [row.count for part in counted.parts for row in part.rows] == counts
    assert not counted.problems


@pytest.mark.parametrize("join", JOINS)
def test_a_join_beside_works_nothing(join: str) -> None:
    """As many low stitches as below, whatever their loops are joined to."""
    text = (
        RING.format(16) + f"2nd Row. * Ch 5, {join}, ch 2, s c in next s c, ch 3, s c in next s c, "
        "repeat from * all around."
    )
    counted = count_pattern(parse_pattern(text), 0)
    assert counted.parts[0].rows[-1].count == 16
    assert not counted.problems


def test_a_lost_star_is_put_back_and_asked_about() -> None:
    """The second list that is repeated begins where its words are those of the first."""
    text = (
        RING.format(48) + "2nd Row. * Ch 5, skip 1 s c, s c in next s c, repeat from * all around, "
        "join.\n\n3rd Row. Sl st to center of loop, s c in same loop, * ch 5, d c in next loop, "
        "repeat from * twice, ch 9, d c in same loop, ch 5, d c in next loop, repeat from * twice, "
        "ch 5, s c in next loop, ch 5, s c in next loop, repeat from 1st * all around."
    )
    counted = count_pattern(parse_pattern(text), 0)
    assert [row.count for row in counted.parts[0].rows] == [48, 24, 27]
    assert "star" in counted.problems[0].message


SAID = (
    "having one more shell in each row until there are {} shells in row",
    "having 1 more shell in every row until there are {} shells",
    "adding one shell in each row until you have {} shells",
    "with one shell more on each row until there are {} shells in row",
)


@pytest.mark.parametrize(("said", "goal"), list(product(SAID, (6, 11))))
def test_rows_that_grow_by_a_shell(said: str, goal: int) -> None:
    """Rows counted in shells, each with one more, and those that go on so behind them."""
    text = (
        "GULL MAT\n\nCh 5, 4 tr in 5th st from hook. Ch 4, turn.\n\n2nd Row. 3 tr in first tr, "
        "skip 2 tr, sl st in next tr, ch 4, 3 tr in that st (shell). Ch 4, turn.\n\n3rd Row. 3 tr "
        "in first tr, sl st in ch 4 of that shell, ch 4, 3 tr in same place, sl st in ch 4 of next "
        f"shell, ch 4, 3 tr in same place. Ch 4, turn. Repeat 3rd row {said.format(goal)}. Break "
        "Gray.\n\nNext Row—Attach Blue and work in same manner. Work 2 more rows in Blue."
    )
    rows = as_json(count_pattern(parse_pattern(text), 0))["parts"][0]["rounds"]
    assert [row["count"] for row in rows][1:] == list(range(2, goal + 4))


def test_a_chain_that_leads_up_is_no_stitch() -> None:
    """Behind a row caught down to a chain, the turning chain only leads up to the loop."""
    text = (
        "MOORING EDGE\n\nCh 14, 3 d c in 9th st from hook, ch 2, 3 d c in following st. Ch 3, turn."
        "\n\n2nd Row. 3 d c, ch 2, 3 d c (shell) in ch 2 loop, ch 7, sl st in ch 3 of row below. "
        "Ch 3, turn.\n\n3rd Row. 9 d c over loop just made, ch 2, shell in middle of shell. "
        "Ch 4, turn."
    )
    counted = count_pattern(parse_pattern(text), 0)
    assert [row.count for row in counted.parts[0].rows][1:] == [6, 15]


@pytest.mark.parametrize(("stem", "ring"), [(5, 7), (4, 8), (6, 6)])
def test_rings_amid_loops_are_worked_into(stem: int, ring: int) -> None:
    """Petals of clusters in the ring amid each loop; the chains that they stand on are no loops."""
    leg = "* thread over twice, insert in same loop, pull through and work off 2 loops twice, "
    cluster = leg + "repeat from * {}, thread over and work off all loops at one time"
    text = (
        "BUOY: Ch 10, join in a ring, ch 3, 31 d c in ring, join in 3rd st of ch."
        f"\n\n2nd Row—Ch {stem + ring}, sl st in {ring}th st from hook, ch {stem}, skip 3 d c, "
        "s c in next d c, repeat from beginning all around.\n\n3rd Row—6 s c over next loop, sl st "
        f"in next loop, ch 4, {cluster.format('once')}, ** ch 6, {cluster.format('twice')}, repeat "
        f"from ** once, ch 6, {cluster.format('once')}, ch 4, sl st in same loop, 6 s c in next "
        "loop, repeat from beginning all around.\n\n4th Row—Sl st across 6 s c, then the ch 4 "
        "and to the center of next loop, s c in that loop, * ch 7, s c in next loop, repeat from * "
        "once, s c in next loop, repeat from 1st * all around, join in 1st s c."
    )
    counted = count_pattern(parse_pattern(text), 0)
    assert [row.count for row in counted.parts[0].rows] == [32, 8, 128, 24]
    assert not counted.problems


FIRST_ROWS = (
    "Work as for First Buoy until 2 rnds are completed.", "Work first 2 rnds same as First Buoy.",
    "Work same as first buoy until 2 rounds are done.", "Work as for First Buoy to 2nd rnd.",
)


@pytest.mark.parametrize("told", FIRST_ROWS)
def test_the_first_rows_of_a_part_again(told: str) -> None:
    """A second motif begins with the rounds of the first; rows of motifs are laid out at the end.
    """
    text = (
        "=FIRST BUOY=.... Starting at center, ch 10. Join with sl st to form ring. =1st rnd=: Ch "
        "3, 23 dc in ring. Join. =2nd rnd=: Ch 5, * skip 1 dc, dc in next dc, ch 2. Repeat from * "
        "around. Join. =3rd rnd=: * 3 sc in next sp. Repeat from * around. Join and break off.\n\n"
        f"=SECOND BUOY=.... {told}\n=3rd rnd=: * 2 sc in next sp, sl st in any sc on First Buoy, "
        "sc in same sp. Repeat from * around. Join.\n\nMake 5 rows of 7 motifs, joining adjacent "
        "sides as Second Buoy was joined to First Buoy."
    )
    parts = count_pattern(parse_pattern(text), 0).parts
    assert [part.name for part in parts] == ["FIRST BUOY", "SECOND BUOY"]
    assert [row.count for row in parts[1].rows] == [24, 12, 36]


def test_a_joining_motif_is_a_part() -> None:
    """So it is called, though joining is also what is done at the end; "5 c" is a spoiled s c."""
    text = (
        RING.format(12) + "2nd Row. * Ch 5, s c in next s c, repeat from * all around.\n\n"
        "Work a 2nd motif in same manner joining to 1st motif in last row as follows: * ch 2, sl "
        "st in any loop of 1st motif, ch 2, s c in next s c of 2nd motif, repeat from * once and "
        "complete motif same as 1st motif.\n\n"
        "JOINING MOTIF—Ch 8, join to form a ring, ch 1 and work 16 s c in ring, join.\n\n"
        "2nd Row—S c in next 5 c, * ch 4, skip 1 s c, s c in next 5 c, repeat from * all around."
        "\n\nIf napkins are desired, cut linen to size. Work s c over the hem."
    )
    parts = count_pattern(parse_pattern(text), 0).parts
    assert [row.count for part in parts for row in part.rows] == [12, 12, 12, 16, 8]


@pytest.mark.parametrize("many", [12, 16])
def test_picot_loops_are_the_small_ones(many: int) -> None:
    """A loop told by its chains between two clusters, and the loop that two low stitches hold."""
    text = (
        RING.format(2 * many)
        + "2nd Row. * Ch 8, skip 1 s c, s c in next s c, repeat from * to end of round, the last "
        "loop ch 4, tr c in 1st s c.\n\n"
        "3rd Row. Ch 5, s c in same loop, ** ch 5, 2 cluster sts in next loop with ch 4 between, "
        "ch 5, s c in next loop, ch 5, s c in that loop (picot loop), repeat from ** all around "
        "ending row with ch 5, 2 cluster sts with ch 4 between in next loop, ch 5, join in base of "
        "1st picot loop.\n\n"
        "4th Row. Sl st into picot loop, * ch 8, s c in ch 4 loop between next 2 cluster sts, "
        "ch 5, s c in same space (picot loop), ch 8, s c in next picot loop, repeat from * all "
        "around ending row with ch 5, tr c in sl st."
    )
    rows = as_json(count_pattern(parse_pattern(text), 0))["parts"][0]["rounds"]
    assert [row["count"] for row in rows] == [
        2 * many, many, 2 * many - 1, 3 * many // 2
    ]  # fmt: skip
