"""Rows that say in words of their own what most rows say in signs: yarn overs at every stitch, what
the first chain stands for, totals on lines of their own and for each part.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

OVERS = (
    "yo after every stitch", "a yarn over after each stitch, so it goes k1, yo, k1, yo... 12 now",
    "knit one, yo, right round again", "yo first, then knit one, for all 6", "k1 + yo, x6",
    "knit each stitch with a yo after it", "k every st, with a yo after each",
    "k1, yo, k1, yo, and so on to the end", "yo before every stitch", "k1, yo for each st",
    "k1, yo; do this pair over and over to the end", "[k1, yo] for all 6 sts", "k1, yo to end",
)  # fmt: skip
NO_PAIRS = ("k1, yo, k to last st, yo, k1", "k2, yo, k1, yo, k3", "yo, k6, yo")
STANDS = ("counts as", "read this as", "=", "stands for", "that's", "call it", "being", "treat as")
DOUBLE_AND_GAP = (
    "one dc plus a gap of 2 chains", "1 dc plus a 2-chain gap", "dc + ch-2 space",
    "one dc and a space of 2 ch", "a dc and two chains",
)  # fmt: skip
TOTALS = (
    "Check: {}", "Result: {}", "Now: {}", "Total: {}", "You have {}", "= {}", "Stitch count: {}",
    "Tally: {}", "Makes {}", "At the end: {}", "Check - {}", "To check: {}",
)  # fmt: skip


def counted(text: str) -> tuple[list[int | None], list[Verdict]]:
    """The counts of all rows, and what there is to tell of them."""
    pattern = count_pattern(parse_pattern(text, "", ""))
    rows = [row.count for part in pattern.parts for row in part.rows]
    return rows, [one.verdict for one in pattern.problems]


@pytest.mark.parametrize("words", OVERS)
def test_a_yarn_over_at_every_stitch(words: str) -> None:
    rows = f"Rnd 1: {words}\nRnd 2: knit. Yos are just normal sts.\nRnd 3: knit."
    assert counted(f"Cast on 6 sts, join.\n{rows}") == ([6, 12, 12, 12], [])


@pytest.mark.parametrize("words", NO_PAIRS)
def test_a_few_yarn_overs_are_not_at_every_stitch(words: str) -> None:
    assert counted(f"Cast on 6 sts, join.\nRnd 1: {words}\nRnd 2: knit.") == ([6, 8, 8], [])


@pytest.mark.parametrize("form", ["Ch 5 ({} {}), ", "Ch 5, {} {}; "])
@pytest.mark.parametrize("thing", DOUBLE_AND_GAP)
@pytest.mark.parametrize("stands", STANDS)
def test_what_the_first_chain_stands_for(stands: str, thing: str, form: str) -> None:
    text = (
        f"Buoy\nRnd 1: Ch 5, join with sl st to form a ring. {form.format(stands, thing)}"
        "(dc in ring, ch 2) 7 times. Join in 3rd ch of ch 5.\n"
        "Rnd 2: In each gap: sc, 5 dc, sc. Join."
    )
    assert counted(text) == ([8, 56], [])


@pytest.mark.parametrize("gap", ["\n", "\n    ", "\n\n"])
@pytest.mark.parametrize("unit", [" sc", " stitches", ""])
@pytest.mark.parametrize("told", TOTALS)
def test_totals_announced_on_lines_of_their_own(told: str, unit: str, gap: str) -> None:
    rows = ("6 sc in a magic ring.", 6), ("2 sc in each st.", 12), ("(sc, inc) around.", 18)

    def text(wrong: int) -> str:
        return "Buoy\n" + "\n\n".join(
            f"Rnd {at}: {words}{gap}{told.format(f'{count + wrong * (at == 3)}{unit}')}."
            for at, (words, count) in enumerate(rows, 1)
        )

    assert counted(text(0)) == ([6, 12, 18], [])
    assert counted(text(1))[1]


@pytest.mark.parametrize("told", ["3 sc per wedge.", "3 sc each wedge.", "You have 3 sc per side."])
def test_totals_of_each_part(told: str) -> None:
    text = (
        "Buoy\nCh 8, sl st in first ch.\nRnd 1: [ch 5, sc in ring] 5 times. 5 lps.\n"
        f"Rnd 2: [ch 6, 3 sc in next lp] 5 times. {told}"
    )
    assert counted(text)[0][-1] == 15
