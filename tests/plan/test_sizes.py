"""Only the chosen size's numbers are left."""

from __future__ import annotations

import pytest

from reader.plan.sentences import sentences
from reader.plan.sizes import only_size

SML = ("S", "M", "L")


@pytest.mark.parametrize(
    ("text", "size", "only"),
    [
        ("36 (40, 44) sts", 1, "40 sts"),
        ("52[54:56] sts", 2, "56 sts"),
        ('work 5½ (6, 6½)"', 0, 'work 5½"'),
        ("S (M, L): CO 80 (88, 96)", 1, "M: CO 88"),
        ("sk 2 (–, 4)", 1, "sk 0"),
        ("(2 dc, ch 1) 3 times", 1, "(2 dc, ch 1) 3 times"),
        ("sc in next 12 (24)", 1, "sc in next 12 (24)"),
        ("K8 (9, 10), k2tog", 2, "K10, k2tog"),
        ("no numbers", 2, "no numbers"),
    ],
)
def test_a_list_with_one_value_a_size_becomes_one(text: str, size: int, only: str) -> None:
    """Lists with another number of values stay."""
    assert only_size(text, size, SML) == only


def test_one_size_changes_nothing() -> None:
    """A pattern without sizes, or a size that is not there."""
    assert only_size("36 (40, 44)", 0, ()) == "36 (40, 44)"
    assert only_size("36 (40, 44)", 7, SML) == "36 (40, 44)"


def test_sentences_are_short_and_keep_every_word() -> None:
    """Long ones are cut at commas; abbreviations with a stop do not end one."""
    text = "Place eyes between rnds. 8 and 9, 7 sts apart. Sew it on.\n\nWeave in the ends."
    assert sentences(text) == (
        "Place eyes between rnds. 8 and 9, 7 sts apart.",
        "Sew it on.",
        "Weave in the ends.",
    )
    long = ", ".join(["fold the flap over the edge of the hull"] * 9) + "."
    assert " ".join(sentences(long)) == long
    assert max(len(one.split()) for one in sentences(long)) <= 24
    assert sentences("  ") == ()
