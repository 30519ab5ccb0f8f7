"""How often rows are called back, told as a number of rows: "repeat row 2 for 8 rows more", "rep
the last 2 rows over the next 12 rows", "until 6 rows more have been worked".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number

_ROWS = r"(?:rows|rnds|rounds)\b"
_N = rf"(?P<n%d>\d{{1,3}}|{SPELLED})"
ROWS_TOLD = re.compile(
    rf"[\s,]*(?:alternately |again |even |straight )*"
    rf"(?:(?:for|over|on|in|during|through|throughout)(?: all)? (?:the |a )?"
    rf"(?:next |following |another |further |additional )*{_N % 1} "
    rf"(?:more |further |additional )?{_ROWS}"
    rf"|{_N % 2} (?:(?:more|further|additional) {_ROWS}|{_ROWS} (?:more|longer))"
    rf"|(?:another|a further) {_N % 3} {_ROWS}"
    rf"|(?:until|till) (?:you have (?:worked|made|done) )?{_N % 4} (?:more {_ROWS}|{_ROWS} more)"
    r"(?: (?:have been|are) (?:worked|made|done|completed))?)"
    r"(?! ?(?:below|apart|and)\b)",
    re.IGNORECASE,
)


def rows_told(tail: str, cycle: int) -> int | None:
    """How often so many rows (`cycle`) are worked again, by the words behind them; None where they
    tell no number of rows, or one that does not come out even.
    """
    found = ROWS_TOLD.match(tail)
    if found is None or cycle < 1:
        return None
    said = next(found[f"n{at}"] for at in range(1, 5) if found[f"n{at}"])
    rows = int(said) if said.isdecimal() else word_number(said) or 0
    return rows // cycle if rows > 0 and rows % cycle == 0 else None
