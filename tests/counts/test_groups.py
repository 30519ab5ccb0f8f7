"""Rows whose printed total counts groups are counted in groups; stitches stay what is worked into.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.counted import CountedPattern
from reader.pattern.parser import parse_pattern

SCARF = """SALT ROPE SCARF (UK)
Abbreviations
ch chain; dc double crochet; tr treble; sp space; st(s) stitch(es); tch turning chain;
V-st: work 1 tr, 1 ch, 1 tr all into the same place.

Make 19 ch.
Row 1: 1 V-st into 5th ch from hook, *miss 2 ch, 1 V-st into next ch; rep from * to last 2 ch, miss 1 ch, 1 tr into last ch, turn. 5 V-sts
Row 2: 3 ch (counts as 1 tr), 1 V-st into the 1-ch sp of each V-st to end, 1 tr into top of tch, turn. 5 V-sts
Row 3: 1 ch, 1 dc into first tr, *5 tr into 1-ch sp of next V-st, 1 dc into 1-ch sp of next V-st; rep from * to last V-st, 5 tr into 1-ch sp of last V-st, 1 dc into top of tch, turn. 3 shells
Row 4: 3 ch, *1 V-st into centre tr of next shell, 1 V-st into next dc; rep from * to last shell, 1 V-st into centre tr of last shell, 1 tr into last dc, turn. 5 V-sts
Row 5: As row 2.
Row 6: As row 3.
Last row: 1 ch, 1 dc into each st to end.   19 dc
Fasten off.
"""  # noqa: E501
THROW = """Pier Throw
Abbreviations (US): ch = chain, sc = single crochet, dc = double crochet, sk = skip, rep = repeat
Special stitches
Shell (sh): 5 dc in indicated st.

Ch 32.
Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across, turn. (5 shells)
Row 2: Ch 3, 2 dc in first sc, *sc in center dc of next shell, shell in next sc; rep from * across, ending with 3 dc in last sc, turn. (4 shells, 2 half shells)
Row 3: Ch 1, sc in first dc, *shell in next sc, sc in center dc of next shell; rep from * across, ending with sc in top of turning ch, turn. (5 shells)
"""  # noqa: E501


def counted(text: str) -> CountedPattern:
    """The counted pattern of a text."""
    return count_pattern(parse_pattern(text))


def both(text: str) -> list[tuple[int | None, int | None]]:
    """Groups and stitches of each row but the foundation."""
    rows = [row for part in counted(text).parts for row in part.rows if row.label != "Start"]
    return [(row.groups, row.count) for row in rows]


def test_shells_told_stitch_by_stitch_are_shells() -> None:
    """Five trebles into one place are the shell that the total and the next row speak of, and "to
    last shell" leaves that whole group.
    """
    assert both(SCARF) == [(5, 12), (5, 12), (3, 19), (5, 12), (5, 12), (3, 19), (None, 19)]
    assert counted(SCARF).problems == ()


def test_half_groups_at_the_edges_are_no_shells_of_the_total() -> None:
    """Rows of shells set one over the other: a half at each edge."""
    assert both(THROW) == [(5, 31), (4, 31), (5, 31)]
    assert counted(THROW).problems == ()


def test_a_list_of_abbreviations_works_nothing() -> None:
    """What is listed between the heading and the chain is no row."""
    rows = [row.written for part in counted(SCARF).parts for row in part.rows]
    assert not any("double crochet" in words for words in rows)


def test_a_stitch_of_its_own_that_shares_a_name_with_a_part() -> None:
    """A shell is a group of stitches, and the house of a crab: rows with labels make it a part."""
    text = "Hermit Crab\nShell: Rnd 1: 6 sc in MR. (6)\nRnd 2: inc in each st. (12)\n"
    assert [row.count for part in counted(text).parts for row in part.rows] == [6, 12]


COWL = """V-STITCH COWL
V-st: (dc, ch 1, dc) in same st or sp.
Ch 24; join with sl st to form ring, being careful not to twist.
Rnd 1: Ch 4 (counts as dc, ch 1), dc in same ch, *sk 2 ch, V-st in next ch; rep from * around to last 2 ch, sk 2 ch, join with sl st to 3rd ch of beg ch-4. [8 V-sts]
Rnd 2: Sl st in ch-1 sp, ch 4, dc in same sp, V-st in ch-1 sp of each V-st around, join. [8 V-sts]
Rnds 3-5: Rep Rnd 2.
"""  # noqa: E501


def test_the_first_group_told_by_its_chain_counts_in_rows_called_back_too() -> None:
    """The chain and one stitch are the first V of each round, though only the others are named."""
    assert [groups for groups, _ in both(COWL)] == [8, 8, 8, 8, 8]
