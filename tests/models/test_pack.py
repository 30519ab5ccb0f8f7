"""The packed index: words become phones, and what has no pronunciation is counted, not guessed."""

from __future__ import annotations

from models.recipe.pack import rows_with_phones
from models.recipe.phones import NUMBER

KNOWN = {"next": [("N", "EH", "K", "S", "T")], "row": [("R", "OW")]}


def test_words_become_phones_and_unknown_words_are_left_out() -> None:
    """CMU pronunciations by number; one row of three has a word nobody can pronounce."""
    rows: list[list[object]] = [
        ["cmd", "next row", "v", 0, 16_000],
        ["cmd", "rows", "v", 17_600, 8_000],
        ["word", "xyzzy", "v", 27_200, 8_000],
    ]
    kept, lost = rows_with_phones(rows, KNOWN)
    assert lost == 1
    assert kept[0][5] == [NUMBER[p] for p in ("N", "EH", "K", "S", "T", "R", "OW")]
    assert kept[1][5] == [NUMBER[p] for p in ("R", "OW", "Z")]
