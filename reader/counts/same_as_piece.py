"""Pieces told by another: "work same as back to armhole", "work armhole shaping same as back" ->
the rows of that piece once more, each with what it gained there.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.as_far import (
    MEASURE,
    even_from,
    first_change,
    last_shaping,
    measured,
    rows_as_far,
)
from reader.counts.counted import CountedRow
from reader.counts.fabric import plain
from reader.counts.pattern_again import first_row_again
from reader.counts.piece_words import (
    QUOTES,
    STAR_TO_STAR,
    STARRED,
    TOTAL_ONLY,
    plainly_quoted,
)
from reader.counts.pieces import Piece
from reader.counts.questions import ask_of_piece
from reader.counts.second_side import second_side
from reader.counts.shaped_down import BINDS_OFF, down_to
from reader.counts.worked import MoveKind
from reader.pattern.as_far import AS_FAR
from reader.pattern.labels import Mark
from reader.pattern.layout import WrittenRow
from reader.pattern.line_words import ACTION
from reader.pattern.where_begun import only_begun
from reader.terms.numbers import word_number
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

SHAPING_AT = re.compile(
    r"\W*(?:to\s+)?(?:shape|shaping)\s+(?:for\s+)?(?P<where>[a-z]+)", re.IGNORECASE
)
"""How a row begins that shapes a part of its piece."""
QUOTED = "as in the piece that is quoted"
SHAPES = frozenset(("shape", "shaping", "the", "and", "for", "work", "of", "rows", "row"))
HALVES = re.compile(r"\b(?:front|left|right)s?\b(?!.*\b(?:sleeve|cuff)s?\b)", re.IGNORECASE)
SAME_SPOT = {"underarm": "armhole", "underarms": "armhole"}
SHAPINGS = frozenset(("raglan", "raglans", "shaping", "shapings", "decrease", "dec", "top", "cap"))
NOT_WORKED = frozenset(("until", "till", "measures", "even", "same", "length", "as"))


def between_stars(
    ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]
) -> bool:
    """Works what stands between stars in an earlier piece, "work from ** to ** as for back", and
    what is written before and behind these words; False, and nothing worked, elsewhere.
    """
    found = STARRED.search(ledger.text, row.start, row.end)
    piece = _piece(ledger, found["piece"] or found["other"]) if found else None
    if found is None or piece is None:
        return False
    first, last = found["a"] or found["c"], found["b"] or found["d"]
    spots = [at for at, said in piece.spots if said == first]
    ends = [at for at, said in piece.spots if said == last and spots and at > spots[0]]
    if not ends:
        return False
    if ACTION.search(ledger.text[row.start : found.start()]):
        work(replace(row, end=found.start()))
    at = WrittenRow(None, found.start(), found.end())
    rows = list(piece.rows[spots[0] : ends[0]])
    _again(ledger, rows, at, _is_half(ledger, piece), piece)
    ledger.check_total(WrittenRow(None, found.start(), row.end), 0, row.end - found.start())
    if ACTION.search(ledger.text[found.end() : row.end]):
        work(WrittenRow(None, found.end(), row.end))
    return True


def same_as_piece(
    ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]
) -> bool:
    """Works the rows that a row's words quote of an earlier piece, and what is written before and
    behind them; False, and nothing worked, where no such piece is quoted.
    """
    if STAR_TO_STAR.search(ledger.text, row.start, row.end) and between_stars(ledger, row, work):
        return True
    if second_side(ledger, row, work):
        return True
    if _as_far_as_told(ledger, row, work):
        return True
    told = plainly_quoted(ledger.text[row.start : row.end], row.mark is not None)
    words = told.words
    found = QUOTES.search(words)
    piece, what = _named(ledger, found) if found else (None, "")
    if found is None or piece is None or set(what.split()) & NOT_WORKED:
        return False
    rows = _section(ledger, found, piece, row.mark, what)
    start, end = (row.start + told.origin(at) for at in found.span())
    if rows is None:
        if not ledger.rows and ledger.pattern.craft is Craft.KNITTING:
            ask_of_piece(ledger, start, end)
        return False
    if ACTION.search(words[: found.start()]) and not only_begun(words[: found.start()]):
        work(replace(row, end=start))
    half = _is_half(ledger, piece)
    _again(ledger, rows, WrittenRow(None, start, end), half, piece)
    rest = words[found.end() :]
    if TOTAL_ONLY.match(rest):
        ledger.check_total(WrittenRow(None, end, row.end), 0, row.end - end)
    elif ACTION.search(rest) or QUOTES.search(rest):
        work(WrittenRow(None, end, row.end))
    return True


def _as_far_as_told(
    ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]
) -> bool:
    """Works a piece before this one up to a place in or above its armholes, and what is written
    behind; False, and nothing worked, elsewhere.
    """
    found = AS_FAR.match(ledger.text[row.start : row.end]) if not ledger.rows else None
    piece = _piece(ledger, found["name"]) if found else None
    if found is None or piece is None:
        return False
    told = ledger.in_figures(*(row.start + at for at in found.span("far")))
    rows = rows_as_far(piece.rows, _spot(piece, {"armhole"}), found["far"], told)
    if rows is None:
        return False
    end = row.start + found.end()
    _again(ledger, rows, WrittenRow(None, row.start, end), _is_half(ledger, piece), piece)
    rest = ledger.text[end : row.end]
    if ACTION.search(rest) or QUOTES.search(rest):
        work(WrittenRow(None, end, row.end))
    return True


def _named(ledger: Ledger, found: re.Match[str]) -> tuple[Piece | None, str]:
    """The piece that is quoted, and what of it in small letters: "as back raglan" is the back's
    raglan.
    """
    piece, what = _piece(ledger, found["piece"]), found["what"].lower()
    first, *more = found["piece"].split()
    if piece is None and more:
        return _piece(ledger, first), f"{what} {more[-1].lower()}"
    return piece, what


def _piece(ledger: Ledger, name: str) -> Piece | None:
    """The earlier piece of that name; "back" is "BACK" and "Back piece"."""
    wanted = _plain(PIECE_NOUN.sub("", name))
    for known, piece in reversed(ledger.pieces.items()):
        plain = _plain(known)
        if plain == wanted or plain.startswith(wanted + " ") or plain.endswith(" " + wanted):
            return piece
    return None


PIECE_NOUN = re.compile(r"\s+(?:section|piece|part)s?$", re.IGNORECASE)


def _plain(name: str) -> str:
    return " ".join(name.lower().split()).removesuffix("s")


def _numbers_of(found: re.Match[str], mark: Mark | None) -> Sequence[int]:
    """The numbers of the rows meant, those of the label where nothing else is told; () for none."""
    first = found["a"] or found["nth1"]
    if first:
        return range(int(first[:4]), int((found["b"] or found["nth2"] or first)[:4]) + 1)
    return mark.numbers if mark is not None and not (found["spot"] or found["what"].strip()) else ()


def _section(
    ledger: Ledger, found: re.Match[str], piece: Piece, mark: Mark | None, what: str
) -> list[CountedRow] | None:
    """The rows meant: up to a heading, those below one, so many, those of some numbers, or all;
    None where they are not to be told.
    """
    rows = list(piece.rows)
    begins = rows[:1] if rows and _is_start(rows[0]) else []
    many = found["rows"] or found["first"]
    if many:
        number = int(many[:3]) if many[0].isdigit() else word_number(many) or 1
        return [*begins, *_so_many(rows[len(begins) :], number)]
    last = found["upto"] or found["nth"]
    if last:
        upto = [at for at, one in enumerate(rows) if one.number == int(last[:4])]
        return rows[: upto[-1] + 1] if upto else None
    numbers = _numbers_of(found, mark)
    if numbers:
        told = [one for one in rows if one.number in numbers]
        return [*(begins if numbers[0] == 1 else []), *told] if told else None
    shaped = _spot(piece, set(what.split()) - SHAPES) if found["left"] else None
    if found["way"] and found["left"]:
        shaped = first_change(piece.rows, -1 if found["way"].lower() == "dec" else 1)
    if shaped is None and found["left"] and set(what.split()) & SHAPINGS:
        shaped = last_shaping(piece.rows)
    if shaped is not None:
        return down_to(ledger, _below(piece, shaped), _left(ledger, found))
    if found["told"] or found["left"] or found["far"]:
        return _as_far(ledger, piece, found)
    if found["spot"]:
        spot = _spot(piece, {found["spot"].lower()})
        begin = _spot(piece, {found["from"].lower()}) if found["from"] else 0
        through = found["done"] or found["fin"] or (found["incl"] and found["shapes"])
        if spot is not None and through:
            spot += len(_below(piece, spot))
        return rows[begin or 0 : spot] if spot is not None else None
    named = set(what.split()) - SHAPES
    named = named or set(ledger.spots[-1][1].split() if ledger.spots else ()) - SHAPES
    spot = _spot(piece, named) if named else None
    if spot is None:
        return None if set(what.split()) - SHAPES else rows
    return _below(piece, spot)


def _below(piece: Piece, spot: int) -> list[CountedRow]:
    """The rows below a heading inside a piece, up to the next one."""
    later = [at for at, _ in piece.spots if at > spot]
    rows = list(piece.rows)[spot : later[0] if later else None]
    even = even_from(rows, 0)
    # What is worked even behind it, and what follows that, is no shaping.
    return rows[:even] if even else rows


def _left(ledger: Ledger, found: re.Match[str]) -> int:
    """The number of stitches that the rows go down to, for this size."""
    numbers = re.findall(r"\d+", found["left"] + (found["lefts"] or ""))
    told = numbers[ledger.size] if len(numbers) == len(ledger.pattern.sizes) else numbers[0]
    return int(told[:5])


def _as_far(
    ledger: Ledger, piece: Piece, found: re.Match[str]
) -> list[CountedRow] | None:
    """The rows up to a number of stitches, or a measure; None where no row tells of it."""
    rows = list(piece.rows)
    if found["told"]:
        said = re.compile(rf"\b{found['told']} rows\b")
        upto = [at for at, one in enumerate(rows) if said.search(one.written)]
        return rows[: upto[-1] + 1] if upto else None
    if found["left"]:
        left = _left(ledger, found)
        here = (at for at, one in enumerate(rows) if one.count == left)
        return rows[: next(here, -1) + 1] or None
    deep = (found["deep"] or "").lower().startswith("arm")
    first = (_spot(piece, {"armhole"}) or 0) if deep else 0
    far = int(found["far"][:4])
    for at, one in enumerate(rows[first:], first):
        told = MEASURE.search(one.written) if measured(one) else None
        if told and (deep or ("armhole" not in one.written.lower() and int(told[1]) >= far)):
            return rows[: at + 1]
    spot = _spot(piece, {"armhole"}) if not deep else None
    return rows[:spot] if spot else None


def _is_start(one: CountedRow) -> bool:
    """Whether a row is the foundation of its piece."""
    begins = all(move.kind is MoveKind.START for move in one.moves)
    return one.number is None and one.before is None and bool(one.moves) and begins


def _so_many(rows: list[CountedRow], number: int) -> list[CountedRow]:
    """The first rows of a piece; one that a measure tells of stands for all that are left."""
    out: list[CountedRow] = []
    for one in rows:
        if one.label == "Start":
            continue
        takes_all = measured(one)
        out += [replace(one, assumed=())] * (number - len(out) if takes_all else 1)
        if len(out) >= number:
            break
    return out[:number]


def _spot(piece: Piece, words: set[str]) -> int | None:
    """The row before which a heading with one of the words stands."""
    stems = {SAME_SPOT.get(word, word).removesuffix("s") for word in words}
    for at, head in piece.spots:
        if any(word.removesuffix("s") in stems for word in head.split()):
            return at
    for at, one in enumerate(piece.rows):
        begun = SHAPING_AT.match(one.written)
        if begun and begun["where"].lower().removesuffix("s") in stems:
            return at
    off = (at for at, one in enumerate(piece.rows) if one.before and _binds_off(one))
    return next(off, None) if "armhole" in stems else None


def _binds_off(one: CountedRow) -> bool:
    """Whether a row binds off some of its stitches, as armholes begin."""
    some = one.count is not None and 0 < one.count < (one.before or 0)
    return some and BINDS_OFF.search(one.written) is not None


def _is_half(ledger: Ledger, piece: Piece) -> bool:
    """Whether this is one half of what the piece is whole: a front of two has one armhole and one
    side seam.
    """
    own, whole = _width(ledger.rows), _width(piece.rows)
    return HALVES.search(ledger.part) is not None and 0 < own <= 0.65 * whole


def _width(rows: Sequence[CountedRow]) -> int:
    return next((one.count for one in rows if one.count), 0)


def _again(
    ledger: Ledger, rows: list[CountedRow], at: WrittenRow, half: bool, piece: Piece
) -> None:
    """Books the rows once more, each with its gain, or half of it; a count is left open where a row
    gained by repeats over another number of stitches.
    """
    begins = not ledger.rows and rows[:1] == list(piece.rows[:1])
    left = ledger.below.stitches is not None or ledger.below.chained
    joined = ledger.pattern.craft is Craft.CROCHET and not _is_start(piece.rows[0])
    if begins and (not left or joined or (_is_start(piece.rows[0]) and _is_over(ledger))):
        _from_its_start(ledger, rows, at)
        return
    for one in rows:
        if one.label == "Start" or _is_start(one) or ledger.full():
            continue
        if first_row_again(ledger, at, piece.entries) or _over_its_width(ledger, one, piece, at):
            continue
        gain = _gain(one, ledger.below.stitches)
        if half and gain is not None:
            gain = gain // 2 if not gain % 2 else None
        count = -1 if gain is None else (ledger.below.stitches or 0) + gain
        why = f"{QUOTED}; at one edge, since this is one half" if half and gain else QUOTED
        ledger.even(count, None, at.start, at.end, why, measured(one))


OVER = re.compile(
    r"(?:(?:bind|cast) off|b\.?o\.?|fasten off)"
    r"(?: (?:all|loosely|remaining|rem|the|sts|stitches|in|rib|pattern|patt|\d+))*\W*$",
    re.IGNORECASE,
)
"""How the last row of a piece ends that leaves no stitch."""


def _is_over(ledger: Ledger) -> bool:
    """Whether the piece before this one is bound off."""
    last = next(reversed(ledger.pieces.values()), None)
    row = last.rows[-1] if last is not None and last.rows else None
    return row is not None and (row.count == 0 or OVER.search(row.written) is not None)


def _from_its_start(ledger: Ledger, rows: list[CountedRow], at: WrittenRow) -> None:
    """The piece from the same foundation: every row as it was."""
    for one in rows:
        words = ledger.words(at.start, at.end)
        ledger.rows.append(replace(one, written=words, assumed=(*one.assumed, QUOTED)))
    ledger.number = next((one.number for one in reversed(rows) if one.number), 0) or 0
    ledger.below = plain(rows[-1].count if rows else None)


def _over_its_width(ledger: Ledger, one: CountedRow, piece: Piece, at: WrittenRow) -> bool:
    """Works a row whose repeats change the count, where this piece is of another width; False, and
    nothing worked, for other rows.
    """
    same = one.before in (None, one.count, ledger.below.stitches)
    if same or not one.number or not any(move.passes for move in one.moves):
        return False
    entry = next((known for known in piece.entries if known.number == one.number), None)
    if entry is not None:
        number = ledger.number + 1 if ledger.number else None
        ledger.work(replace(entry, row=at, printed=(), quoted=True), number)
    return entry is not None


def _gain(one: CountedRow, here: int | None) -> int | None:
    """What a row gains over so many stitches, None where that hangs on how wide the piece is."""
    if here is None or one.before is None or one.count is None:
        return None
    wide = any(move.passes for move in one.moves)
    return one.count - one.before if one.before in (here, one.count) or not wide else None
