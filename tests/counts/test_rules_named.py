"""Rules that name rows are found whatever a row is called."""

from __future__ import annotations

import pytest

from reader.pattern.rules import find_rule


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("Rep R2-3 4 times.", "rows"),
        ("Repeat last rnd 3 times.", "last"),
        ("Work 6 rds even.", "even"),
        ("Work 2 rounds even.", "even"),
        ("Dec 1 st at each end of every 4th needle 5 times.", "grow"),
        ("Keep going until you have 18 rows.", "last"),
        ("Repeat this 4 times.", "last"),
    ],
)
def test_found(words: str, kind: str) -> None:
    """Rules without any such name are no longer looked for, so each name has to be known there."""
    rule = find_rule(words, False)
    assert rule is not None
    assert rule.kind == kind
