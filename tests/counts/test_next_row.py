"""Whether a row ends in the chain that the row before it began with."""

import pytest

from reader.counts.next_row import chain_is_worked


@pytest.mark.parametrize(
    ("words", "worked"),
    [
        ("Shell in shell, ch 2, dc in 3rd st of ch, ch 5, turn.", True),
        ("* Ch 1, dc in next dc, dc in top of turning ch. Ch 3, turn. (12 dc)", True),
        ("2 dc in last sp, dc in 3rd ch of ch 5. [4 sps, 2 blocks]", True),
        ("Shell in 1st shell, ch 3, shell in last shell, ch 4, turn.", False),
        ("* Ch 5, sc in next loop; repeat from * across, ch 5, turn.", None),
        ("Dc in each dc across. Ch 3, turn.", None),
        ("3 dc in next sp, join in top of ch 3.", None),
        ("", None),
    ],
)
def test_what_the_coming_row_tells(words: str, worked: bool | None) -> None:
    """True in the chain, False in an opening before it, None where it does not tell."""
    assert chain_is_worked(words) is worked
