"""How a round begins, tells its total and is joined, and granny rounds in several wordings; common
practice, no source. Rounds of 12, 24 and 36 double crochets; grannies of 12, 24 and 36.
"""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

CHAINS = (
    "Ch 3 (counts as dc),", "Ch 3 - counts as a dc -", "Ch 3 = 1st dc,", "Ch 3 as first dc,",
    "Ch 3 for your first dc,",
)  # fmt: skip
JOINS = (
    "join with sl st to top of beg ch-3", "ss to 3rd of 3 ch", "sl st in 3rd ch to join",
    "ss in top of first 3-ch to close rnd", "slip stitch to beginning chain to close round",
)  # fmt: skip
ENDS = (". {J}.{T}", ", {J}.{T}", ".{T} {J}.", " - {T}, {j}.", " - {T} {J}")


def counts(text: str) -> tuple[list[int | None], tuple[object, ...]]:
    """The counts of all rounds, and what was asked."""
    counted = count_pattern(parse_pattern(text))
    rows = [one for part in counted.parts for one in part.rows if one.label != "Start"]
    return [one.count for one in rows], counted.problems


@pytest.mark.parametrize(("chain", "join"), [*itertools.product(CHAINS, JOINS)])
def test_begun_and_joined(chain: str, join: str) -> None:
    nth = CHAINS.index(chain) + JOINS.index(join)
    for end in (ENDS[nth % 5], ENDS[(nth + 2) % 5]):
        lines = ["Ch 4, join with sl st to form a ring."]
        for n, words in (
            (12, "11 dc in ring"), (24, "dc in same st, 2 dc in each st around"),
            (36, "2 dc in next st, *dc in next st, 2 dc in next st; rep from *"),
        ):  # fmt: skip
            total = f"{n} dc" if " - " in end else f" ({n})"
            first = join if end[0] == "," else join[0].upper() + join[1:]
            closing = end.format(J=first, j=join, T=total)
            lines.append(f"Rnd {len(lines)}: {chain} {words}{closing}")
        text = "\n".join(lines)
        assert (text, *counts(text)) == (text, [12, 24, 36], ())


def test_the_chain_is_passed_over() -> None:
    text = (
        "Ch 4, join to form a ring.\nRnd 1: Ch 2 - does not count as a stitch - 12 dc in ring, "
        "skip ch and join to first dc.\nRnd 2: Ch 2, 2 dc in each st, skip ch, join to first dc.\n"
    )
    assert counts(text) == ([12, 24], ())


FIRST = (
    "Ch 3, 2 dc in ring, (ch 2, 3 dc in ring) 3 times, ch 2, join with sl st to top of ch 3",
    "Ch 3 for first dc, 2 dc in ring, *ch 2, 3 dc in ring* 3 times, ch 2, join",
    "Work 4 groups of 3 dc in ring with ch 2 between groups (ch 3 counts as first dc of first "
    "group), ch 2, join",
    "Beginning with ch 3 as first dc, work [3 dc, ch 2] 4 times into the ring. Join with sl st",
    "Start with a standing dc in ring, 2 more dc in ring, ch 2, *3 dc, ch 2; repeat from * two "
    "more times, join to first dc",
)  # fmt: skip
SECOND = (
    "With B, in any corner sp make (beg ch-3, 2 dc, ch 2, 3 dc), ch 1, (3 dc, ch 2, 3 dc, ch 1) in "
    "each of next 3 corner sps, join",
    "(Ch 3, 2 dc, ch 2, 3 dc) in any corner, ch 1, *(3 dc, ch 2, 3 dc) in next corner, ch 1; rep "
    "from * around, join",
    "Sl st to corner sp; *(3 dc, ch 2, 3 dc) in corner sp, ch 1; repeat from * around, join (first "
    "dc is a ch 3)",
)
THIRD = (
    "Sl st to corner sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *ch 1, 3 dc in next ch-1 sp, ch 1, "
    "(3 dc, ch 2, 3 dc) in corner sp; rep from * 2 more times, ch 1, 3 dc in ch-1 sp, ch 1, join"
)


@pytest.mark.parametrize(("first", "second"), [*itertools.product(FIRST, SECOND)])
def test_grannies(first: str, second: str) -> None:
    text = f"Ch 4, join to form ring.\nRnd 1: {first}.\nRnd 2: {second}.\nRnd 3: {THIRD}.\n"
    assert counts(text) == ([12, 24, 36], ())


SPACES = "Ch 4 (counts as dc and ch 1), (dc in ring, ch 1) 11 times, join in 3rd ch of ch-4"
OVER_SPACES = (
    "Sl st into sp, ch 3, 1 dc in same sp, ch 1, *2 dc in next sp, ch 1; rep from * around, ss to "
    "top of 3 ch",
    "sl st over to ch-1 sp. ch 3, dc in same sp, ch 1, *2 dc in next sp, ch 1; rep from * around",
    "Join B in any ch-1 sp, ch 3, dc in same sp, ch 1, (2 dc, ch 1) in each ch-1 sp around, join",
)


@pytest.mark.parametrize("words", OVER_SPACES)
def test_begun_in_a_space(words: str) -> None:
    text = f"Ch 6, join with sl st to form a ring.\nRnd 1: {SPACES}\nRnd 2: {words}\n"
    assert counts(text) == ([12, 24], ())


def test_slipped_to_a_space_beside() -> None:
    text = (
        "Ch 6, join to form a ring.\nRnd 1: Ch 3, dc in ring, ch 1, (2 dc in ring, ch 1) 5 times, "
        "join\nRnd 2: Sl st in dc and ch-1 sp, ch 3, (dc, ch 1, 2 dc) in same sp, (2 dc, ch 1, 2 "
        "dc) in each ch-1 sp around, join\n"
    )
    assert counts(text) == ([12, 24], ())


@pytest.mark.parametrize("words", ["Work sc, hdc, 3 dc, hdc, sc in each ch-3 loop",
                                   "*Sc, hdc, 3 dc, hdc, sc in next loop; rep from * around"])
def test_petals_without_brackets(words: str) -> None:
    text = (
        "Ch 4, join to form a ring.\nRnd 1: Ch 1, 12 sc in ring, join\nRnd 2: Ch 1, *sc in next "
        f"st, ch 3, sk next st; rep from * around, join\nRnd 3: {words}, join\n"
    )
    assert counts(text) == ([12, 6, 42], ())
