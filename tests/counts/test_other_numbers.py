"""Rounds that are another with other numbers: only what is named differs, the rest is as it was."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

BEGUN = (
    "Ch 8, join.\n1st round: 16 s c in ring.\n"
    "2d round: * Ch 5, skip 1, s c in next; repeat from * around.\n"
    "3d round: * 5 d c in loop, s c on s c; repeat from * around.\n"
    "4th round: * Ch 5, s c on s c; repeat from * around.\n"
)


def last_of(said: str) -> int | None:
    """The count of a fifth round told so."""
    counted = count_pattern(parse_pattern(f"{BEGUN}5th round: {said}\n"))
    return counted.parts[-1].rows[-1].count


@pytest.mark.parametrize(
    ("said", "count"),
    [
        ("As 3d round, with 7 d c instead of 5.", 64),
        ("Same as third, putting seven d c in place of five in each loop.", 64),
        ("Like 3d round, but in place of 5 d c make 9.", 80),
        ("As 3d round, with 1 d c more in each loop.", 56),
        ("Same as last, but 7 ch.", 8),
        ("As 4th round, having 9 ch in each loop.", 8),
    ],
)
def test_only_what_is_named_differs(said: str, count: int) -> None:
    """The stitches beside it stay as they were."""
    assert last_of(said) == count


def test_what_the_row_has_not_is_asked_about() -> None:
    """Six of them never stood there: the words can't mean this row."""
    counted = count_pattern(parse_pattern(f"{BEGUN}5th round: As 3d, with 7 d c instead of 6.\n"))
    assert any(one.verdict is Verdict.UNCLEAR for one in counted.problems)
