"""Moves in, one running sentence out, with repeats as "so many times" and no instruction said
twice in a row.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from itertools import groupby

from reader.counts.worked import Move, MoveKind
from reader.plan.step import Reading
from reader.wording.numbers import number_words, times_words
from reader.wording.short import shortened
from reader.wording.speak import speak
from reader.wording.stitch_words import stitch_name

_MANY = re.compile(
    r"\beach\b|\bevery\b|\baround\b|\bacross\b|\bend\b|\blast\b|\beven\b|\bremaining\b|\brest\b",
    re.I,
)
_BARE = re.compile(
    r"^(?:knit|purl|single crochet|half double crochet|double crochet|treble(?: crochet)?|"
    r"half treble)$",
    re.I,
)
_HAS_NUMBER = re.compile(
    r"\b(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|"
    r"forty|fifty|sixty|"
    r"seventy|eighty|ninety|\w+ty-\w+|hundred)\b(?! (?:chain|loop)| together)"
)


@dataclass(frozen=True, slots=True)
class Piece:
    """A stretch of a row in words; first: for a repeat the same with its times in front, else
    "".
    """

    words: str
    first: str = ""


MoveWords = Callable[[Move], str]
PlaceWords = Callable[[str], str]
_PREPOSITION = re.compile(
    r"^(?:all )?(?:in|into|over|around|between|through|to|under|on|at|from)\b", re.I
)


def folded(moves: tuple[Move, ...], reading: Reading, short: bool = False) -> str:
    """The moves in words, in working order, without capital or full stop; "" for no moves.

    A repeat whose passes read alike is said once with its times; where only the last pass
    differs, that pass is
    said apart. A run over stitches whose number the words leave out is told its number.
    """
    cache: dict[tuple[str, str, int, int], str] = {}

    def words(move: Move) -> str:
        key = (move.said or move.words, move.kind.value, move.times, move.takes)
        if key not in cache:
            cache[key] = move_words(move, reading, short)
        return cache[key]

    return _fold(moves, 0, words, lambda place: speak(place, reading))


def move_words(move: Move, reading: Reading, short: bool = False) -> str:
    """One move in words, "as written" in front of what could not be read."""
    said = speak(move.said or move.words, reading)
    if move.kind is MoveKind.UNREAD:
        return f"as written: {said}"
    said = _with_stitch(move, said, reading)
    if short:
        said = shortened(said)
    number = _untold(move, said)
    if not number or _OPEN_END.search(said):
        return said
    plain = move.takes == move.makes
    return f"{said}, that is {number_words(number)}" if plain else f"{said}, {times_words(number)}"


_STITCH_LEFT_OUT = re.compile(
    r"^(?:(?P<count>\w+) )?(?P<place>(?:in|into|over|around) (?:the|each|every|same|next)\b.*)$",
    re.I,
)
_COUNTS = {number_words(number) for number in range(1, 21)}


def _with_stitch(move: Move, said: str, reading: Reading) -> str:
    """The words with the stitch where a list leaves it out: "and in each ch across", "2 in
    next".
    """
    name = stitch_name(move.stitch, reading.craft, reading.terms)
    left_out = _STITCH_LEFT_OUT.match(said)
    if move.kind is not MoveKind.WORK or not name or not left_out or name in said:
        return said
    count = left_out["count"]
    if count and count not in _COUNTS:
        return said
    return f"{count + ' ' if count else ''}{name} {left_out['place']}"


def _places(move: Move) -> int:
    """In how many places a move is worked: "2 sc in each st" over twelve stitches in twelve."""
    if move.takes and move.makes > move.takes and move.makes % move.takes == 0:
        return move.takes
    led = re.match(r"(\d+)\b", move.words)
    if not move.takes and led and int(led[1]) > 1 and move.makes % int(led[1]) == 0:
        return move.makes // int(led[1])
    if move.times > 1:
        return move.times
    return move.takes if move.takes == move.makes else 0


def _untold(move: Move, said: str) -> int:
    """How many stitches a run is worked over where its words do not say so, 0 where they do."""
    if move.kind is not MoveKind.WORK:
        return 0
    number = _places(move)
    if number < 2 or not (_MANY.search(said) or _BARE.match(said)):
        return 0
    counted = re.sub(
        r"\blast [\w-]+\b|\bto [\w-]+ stitch(?:es)? before\b|^\w+ (?=\w+ crochet)", "", said
    )
    return 0 if _HAS_NUMBER.search(counted) else number


def _fold(moves: tuple[Move, ...], depth: int, words: MoveWords, place: PlaceWords) -> str:
    """Words of moves whose first `depth` passes are told already."""
    pieces: list[Piece] = []
    for inside, stretch in groupby(moves, key=lambda m: _repeat_at(m, depth)):
        held = tuple(stretch)
        if inside is None:
            pieces += [Piece(said) for said in _in_places(held, words, place)]
        else:
            pieces.append(_repeat(held, depth, words, place))
    return _listed(pieces)


def _in_places(held: tuple[Move, ...], words: MoveWords, place: PlaceWords) -> list[str]:
    """The moves with their place where their own words leave it out: "..., all in the next
    stitch".
    """
    pieces: list[str] = []
    for into, stretch in groupby(held, key=_place_left_out):
        inside = tuple(stretch)
        said = _runs([words(move) for move in inside])
        if not into or not said:
            pieces += said
            continue
        where = place(into if _PREPOSITION.match(into) else f"in {into}")
        where = where[:1].lower() + where[1:]
        pieces.append(
            f"{_listed([Piece(one) for one in said])}{', all' if len(inside) > 1 else ''} {where}"
        )
    return pieces


def _place_left_out(move: Move) -> str:
    """The words of a move's place, "" where the move's own words hold them."""
    into = " ".join(move.into.split())
    return "" if into.lower() in " ".join((move.said or move.words).lower().split()) else into


_OPEN_END = re.compile(r"\b(?:of|into|to|from|with|on)(?: the| an?)?$", re.IGNORECASE)
"""Words that only the next ones complete: "in the top of" and "chain three"."""


def _repeat_at(move: Move, depth: int) -> tuple[int, int] | None:
    if len(move.passes) <= depth:
        return None
    repeat = move.passes[depth].repeat
    return (repeat.start, repeat.end)


def _repeat(held: tuple[Move, ...], depth: int, words: MoveWords, place: PlaceWords) -> Piece:
    """One repeat: its passes as "body; six times", and the times in front for a repeat among
    others.
    """
    told = [
        _fold(tuple(one), depth + 1, words, place)
        for _, one in groupby(held, key=lambda m: m.passes[depth].number)
    ]
    runs = [(body, len(list(same))) for body, same in groupby(told)]
    return Piece(
        "; then ".join(_times(body, count) for body, count in runs),
        "; then ".join(_times_first(body, count) for body, count in runs),
    )


def _times(body: str, count: int) -> str:
    if count == 1:
        return body
    if ";" in body:
        return f"{body}; all of that {times_words(count)}"
    pause = ";" if "," in body else ","
    return f"{body}{pause} {times_words(count)}"


def _times_first(body: str, count: int) -> str:
    return body if count == 1 else f"{times_words(count)}: {body}"


def _runs(said: list[str]) -> list[str]:
    """The same words several times in a row become "increase, three times"."""
    found = []
    for words, same in groupby(said):
        count = len(list(same))
        if words:
            pause = "," if "," in words else ""
            found.append(words if count == 1 else f"{words}{pause} {times_words(count)}")
    return found


def _listed(pieces: list[Piece]) -> str:
    """The pieces in order: commas between instructions, "then" before and after a repeat."""
    text, repeat_before = "", False
    for piece in (p for p in pieces if p.words):
        if not text:
            text = piece.words
        elif _OPEN_END.search(text):
            text = f"{text} {piece.words}"
        elif piece.words[0].isupper():
            text = f"{text}. {piece.words}"
        elif piece.first or repeat_before:
            text = f"{text}; then {piece.first or piece.words}"
        else:
            text = f"{text}, {piece.words}"
        repeat_before = bool(piece.first)
    return text
