"""What is said of the chain that begins a round; common practice, no source."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

COUNTS = (
    "(for 1 htr)", "(as first htr)", "(=1htr)", "(counts 1 htr)", "(this is the first htr)",
    "(1 htr)", "(first htr made)", "(htr)", "(first st)", "(1st st)", "(counts)", "(it counts)",
    "(for the first htr)", "(2 ch = 1 htr)", "(does duty for a htr)", "(counting as 1 htr)",
    "(this makes the first htr)", "to count as 1 htr",
)  # fmt: skip
NOTHING = (
    "(no st)", "(not a st)", "(counts as nothing)", "(not included in count)", "(uncounted)",
    "(for height only)", "(just for height)", "(does not count)",
)  # fmt: skip


def counts(said: str, chain: int, stitch: str) -> list[int | None]:
    """The rounds of 20 chains, the second begun with such a chain."""
    counted = count_pattern(parse_pattern(
        "UK terms. Make 20 ch, join.\nRnd 1: 1 dc in each ch. (20)\n"
        f"Rnd 2: {chain} ch {said}, 1 {stitch} in same place as join, 1 {stitch} in each dc, "
        f"join.\nRnd 3: 1 ch, 1 dc in each {stitch}.\n"
    ))  # fmt: skip
    assert counted.problems == ()
    return [one.count for part in counted.parts for one in part.rows][-3:]


@pytest.mark.parametrize("said", COUNTS)
def test_it_counts(said: str) -> None:
    assert counts(said, 2, "htr") == [20, 21, 21]


@pytest.mark.parametrize("said", NOTHING)
def test_it_does_not(said: str) -> None:
    assert counts(said, 3, "tr") == [20, 20, 20]


@pytest.mark.parametrize("begun", ["Cast on 38 (42).", "With red cast on 38 (42).", "CO 38 (42)"])
@pytest.mark.parametrize("names", ["", "Small (large).\n"])
def test_a_cast_on_with_more_in_a_bracket_has_two_sizes(begun: str, names: str) -> None:
    text = f"{names}{begun}\nRow 1: k1, m1, k to last st, m1, k1 --- 40 (44)\nRow 2: purl\n"
    pattern = parse_pattern(text)
    assert len(pattern.sizes) == 2
    rows = [row.count for part in count_pattern(pattern, 1).parts for row in part.rows]
    assert rows[-3:] == [42, 44, 44]


@pytest.mark.parametrize("said", ["(counts as hdc)", "(counts)", "(first st)"])
def test_a_chain_that_counts_stands_on_the_first_stitch(said: str) -> None:
    text = (
        "Ch 13\nR1: hdc in 2nd ch from hook, hdc in each ch across (12)\n"
        f"R2: ch 2 {said}, hdc in 2nd st and in each st across\nR3: same as R2\n"
    )
    counted = count_pattern(parse_pattern(text))
    assert [one.count for part in counted.parts for one in part.rows][-2:] == [12, 12]
