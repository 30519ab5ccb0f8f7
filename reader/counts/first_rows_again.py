"""The first rows of an earlier part worked again, "work as for First Motif until 2 rnds are
completed", "work 1st 2 rows same as large motif" -> those rows, from a start of their own.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import TYPE_CHECKING

from reader.counts.fabric import Below
from reader.pattern.layout import WrittenRow
from reader.pattern.line_words import ACTION
from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger

_N = rf"(?:\d{{1,2}}|{SPELLED})"
_ROWS = r"(?:rows?|rnds?|rounds?)"
_NAME = r"(?P<name%d>[\w'-]+(?: [\w'-]+){0,3}?)"
_DONE = r"(?:completed?|done|finished|worked|made|ended)"
TOLD = Sought(
    ("as", "like", "of"),
    rf"\W*(?:work|make|crochet)(?: exactly)? (?:the )?(?:same )?(?:as|like) (?:for |on |in )?"
    rf"(?:the )?{_NAME % 1},? (?:until|till|to|through|up to) (?:the )?"
    r"(?:(?:end|completion) of (?:the )?)?"
    rf"(?:(?P<n1>{_N}) {_ROWS} (?:(?:are|have been|is) )?{_DONE}"
    rf"|(?P<last>\d{{1,2}})(?:st|nd|rd|th) (?:row|rnd|round)(?: (?:is|has been) {_DONE})?)"
    rf"|\W*(?:work|make|crochet) (?:the )?(?:first|1st) (?P<n2>{_N}) {_ROWS} (?:the )?(?:same )?"
    rf"(?:as|like|of) (?:for |on |in )?(?:the )?{_NAME % 2}(?= ?[.;,:]|$)",
    re.IGNORECASE,
)


def first_rows_again(
    ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]
) -> bool:
    """Books such rows and works what is written behind them; False (nothing booked) where no such
    words stand at the row's beginning, or no such part and rows are known.
    """
    text = ledger.text[row.start : row.end]
    if not TOLD.may_stand(text) or row.mark is not None:
        return False
    words = re.sub(r"\s", " ", text)
    found = TOLD.shape.match(words)
    entries = _rows_of(ledger, found) if found is not None else []
    if found is None or not entries:
        return False
    if not ledger.rows:
        ledger.below = Below()
    end = row.start + found.end()
    for number, entry in enumerate(entries, 1):
        if not ledger.full():
            ledger.again(entry, number, WrittenRow(None, row.start, end))
    if ACTION.search(ledger.text[end : row.end]):
        work(WrittenRow(None, end, row.end))
    return True


def _rows_of(ledger: Ledger, found: re.Match[str]) -> list[Entry]:
    """The first rows of the part that is named, as many as are told; none where one is missing."""
    many = found["n1"] or found["last"] or found["n2"]
    number = int(many) if many.isdigit() else word_number(many.lower()) or 0
    name = _plain(found["name1"] or found["name2"])
    books = [
        book for part, book in ledger.earlier.items()
        if book and (_plain(part) == name or _plain(part).endswith(f" {name}"))
    ]
    if not books:
        return []
    told = {one.number: one for one in reversed(books[-1]) if one.number is not None}
    rows = [told[at] for at in range(1, number + 1) if at in told]
    return rows if len(rows) == number else []


def _plain(name: str) -> str:
    words = re.sub(r"\W+", " ", name.lower()).replace("1st", "first").replace("2nd", "second")
    return " ".join(words.split())
