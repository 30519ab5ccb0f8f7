"""Pieces as they were worked, kept to be quoted: their rows, the headings inside them, and stars
that stand between rows.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from reader.counts.counted import CountedRow
from reader.counts.entries import Entry
from reader.counts.waiting import keep_instep
from reader.pattern.layout import WrittenRow

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

HEADING = re.compile(
    r"(?:^|[.;:)\]]\s+|\n\s*)(?P<head>[A-Z][A-Za-z]*(?:\s+[A-Za-z]+){0,4})\s*:\s*$"
)
BEFORE = 60
"""Characters before a row in which its heading stands."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece that is worked: its rows, and the headings inside it with the row that each stands
    before.
    """

    rows: tuple[CountedRow, ...]
    spots: tuple[tuple[int, str], ...]
    entries: tuple[Entry, ...] = ()


SECTION = re.compile(
    r"(?:to\s+)?(?:shap(?:e|ing)|divide|neck|armholes?|shoulders?|cap|crown|raglans?)\b",
    re.IGNORECASE,
)
"""What heads a section of a piece, and no piece of its own."""


def keep_piece(pieces: dict[str, Piece], ledger: Ledger) -> None:
    """Keeps what a part is made of, to be quoted, and what waits behind it; "Shape armholes" is a
    section of the piece before it.
    """
    keep_instep(ledger)
    rows, spots, entries = tuple(ledger.rows), tuple(ledger.spots), tuple(ledger.entries)
    main = next(reversed(pieces), "") if SECTION.match(ledger.part) else ""
    if main:
        whole = pieces[main]
        far = len(whole.rows)
        spots = ((far, ledger.part.lower()), *((far + at, head) for at, head in spots))
        rows, spots = (*whole.rows, *rows), (*whole.spots, *spots)
        entries = (*whole.entries, *entries)
    pieces[main or ledger.part] = Piece(rows, spots, entries)


def heading_before(ledger: Ledger, row: WrittenRow) -> str:
    """The heading that stands right before a row's words, "" for none."""
    found = HEADING.search(ledger.text[max(0, row.start - BEFORE) : row.start])
    return found["head"].lower() if found else ""


def note_spot(ledger: Ledger, row: WrittenRow) -> None:
    """Keeps in mind where inside its piece a heading stands."""
    head = heading_before(ledger, row) if row.mark is None else ""
    if head and head != ledger.part.lower():
        ledger.spots.append((len(ledger.rows), head))


STARS = re.compile(r"(?:^|[\s.;:,)])(?P<stars>\*+)\s*$")
STARS_AMID = re.compile(r"(?<=[.)])\s*(?P<stars>\*+)\s+(?=(?:Beg|Start|With|Using|Work|Cont)\w*\b)")
STARS_FIRST = re.compile(r"\s*(?P<stars>\*+)")


def note_stars(ledger: Ledger, row: WrittenRow) -> None:
    """Keeps in mind where stars stand between rows, "** Dec 1 st each end of next row. **"."""
    before = STARS.search(ledger.text[max(0, row.start - 12) : row.start])
    found = before or STARS_FIRST.match(ledger.text, row.start, row.end)
    found = found or STARS_AMID.search(ledger.text, row.start, row.end)
    spot = (len(ledger.rows), found["stars"]) if found else None
    if spot is not None and spot not in ledger.spots[-1:]:
        ledger.spots.append(spot)


def stars_behind(ledger: Ledger, row: WrittenRow) -> None:
    """Keeps in mind the stars that a row, now worked, ends with."""
    found = STARS.search(ledger.text[max(row.start, row.end - 12) : row.end])
    if found:
        ledger.spots.append((len(ledger.rows), found["stars"]))
