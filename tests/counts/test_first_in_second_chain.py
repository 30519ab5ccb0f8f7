"""A row along the chain, and where it begins, as people say it; common practice, no source."""

from __future__ import annotations

from itertools import product

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.first_chains import first_chains

ALONG = (
    "one sc per chain", "1 sc per ch", "a sc in every chain", "one sc for each chain",
    "one sc to a chain", "work a sc in each and every ch",
)  # fmt: skip
BEGUN = (
    "{}, beginning in the second one from the hook", "{}, starting with the second from hook",
    "skip the first chain, {}", "your first sc goes into the second chain from the hook, and then "
    "it's {}", "{} (start in the 2nd)", "from the second chain on, {}", "{} from the second chain",
    "ignore the chain nearest the hook, {}", "leave the first ch, then {}",
    "count back to the second chain and {}", "{}; the first goes in the 2nd chain",
    "{}, starting one chain along from the hook",
)  # fmt: skip


@pytest.mark.parametrize(("along", "begun"), list(product(ALONG, BEGUN)))
def test_row_along_the_chain(along: str, begun: str) -> None:
    said = begun.format(along)
    counted = count_pattern(parse_pattern(
        f"PENNANT\nUS terms.\n\nChain 21.\nRow 1: {said[0].upper()}{said[1:]}. Turn.\n"
        "Row 2: Ch 1, sc in each st across, turn.\n"
    ))  # fmt: skip
    assert counted.problems == ()
    assert [row.count for part in counted.parts for row in part.rows][-2:] == [20, 20]


@pytest.mark.parametrize("row", [
    "Row 1: leave the 1st ch, sc in each ch.", "Row 1: from 2nd ch on, sc in each ch.",
    "Row 1: go to 2nd ch, sc in each ch.", "Row 1: sc along from 2nd.",
    "Row 1: first sc in 2nd ch from hook, then one in each.",
])  # fmt: skip
def test_the_length_is_kept(row: str) -> None:
    assert len(first_chains(row)) == len(row)
