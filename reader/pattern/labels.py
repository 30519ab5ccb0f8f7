"""Finds row labels in clean text: "Rnd 5:", "2nd to 4th rows", "R7-9", "Next 4 rows:" -> where they
stand and what they say.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from reader.terms.numbers import word_number

_WORD = (
    r"(?:(?:twenty|thirty|forty|fifty)[ -])?(?:one|two|three|four|five|six|seven|eight|nine)\b"
    r"|ten\b|eleven\b|twelve\b|(?:thir|four|fif|six|seven|eigh|nine)teen\b|twenty\b|thirty\b"
    r"|forty\b|fifty\b"
)
_NUM = rf"(?:\d+|{_WORD})"
_ORD = r"\d+(?:st|nd|rd|th|d)\b"
_JOIN = r"(?:\s*(?:-|—|to|through|thru|&|and|,|,\s*and)\s*)"
_SIDE = r"(?:\s*[\(\[][^)\]]{0,40}[\)\]])?"
_END = r"\s*(?:[:.]|—|-+(?=\s|[A-Z(*])|(?=\())"
_ROUND = r"rounds?|rnds?|rds?|rows?"

WORD_FIRST = re.compile(
    rf"(?<![\w-])[\[(]?(?P<what>{_ROUND}|R)\.?\s*(?P<nums>{_NUM}(?:{_JOIN}(?:(?:{_ROUND}|R(?=\d))\s*)?"
    rf"{_NUM})*)[\])]?(?P<side>{_SIDE})(?P<end>{_END}\s|{_END}$|{_END}(?=\S))",
    re.IGNORECASE,
)
ORDINAL_FIRST = re.compile(
    rf"(?<![\w-])(?P<nums>{_ORD}(?:{_JOIN}(?:{_ORD}|\d+))*)\s+(?P<what>{_ROUND})(?:\s+(?:of\s+peta"
    rf"ls|incl\w*))?\.?(?P<side>{_SIDE})(?P<end>{_END})",
    re.IGNORECASE,
)
BARE = re.compile(r"(?P<nums>\d+(?:\.?\s*(?:-|—|to|,)\s*\d+)*)(?P<end>[.)]|:)\s+(?=\S)")
NAMED = re.compile(
    rf"(?<![\w-])(?P<name>next|following|last|first|foundation|base|set-?up|inc|increase|dec"
    rf"|decrease|decreasing|eyelet|crown|border|final|beg|beginning)\s+(?P<times>\d+\s+)?(?P<what>"
    rf"{_ROUND})\b(?P<side>{_SIDE})\s*[:.—]",
    re.IGNORECASE,
)
EVERY_AFTER = re.compile(
    rf"(?P<what>{_ROUND})\s*(?P<nums>\d+)\s*(?:and|&)\s+(?:all|every|each)\s+(?P<which>even|odd"
    rf"|ws|rs|wrong side|right side|other|foll\w*|alternate)[^:.]{{0,30}}(?:rows?|rnds?"
    rf"|rounds?)\s*[:.]",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Mark:
    """A label in clean text: from start to end; numbers (a range opened, a list kept) or a name
    with how many rows.
    """

    start: int
    end: int
    numbers: tuple[int, ...] = ()
    name: str = ""
    times: int = 1
    is_round: bool | None = None
    side: str = ""
    every_other: str = ""


def opened(text: str) -> tuple[int, ...]:
    """The row numbers in a piece of text: "5-8" is 5 6 7 8, "2, 4" is 2 4; () where it has none."""
    text = re.sub(_WORD, lambda m: str(word_number(m.group())), text.lower())
    text = re.sub(
        r"[a-z.]+(?=\s|\d|$)",
        lambda m: m.group() if m.group() in ("to", "and", "through", "thru") else " ",
        text.lower(),
    )
    numbers: list[int] = []
    joiner = ""
    for piece in re.findall(r"\d+|to\b|through|thru|-|—|&|and|,", text):
        if not piece.isdigit():
            joiner = piece
            continue
        value = int(piece[:6])
        if (
            joiner in ("to", "through", "thru", "-", "—")
            and numbers
            and numbers[-1] < value <= numbers[-1] + 400
        ):
            numbers += range(numbers[-1] + 1, value + 1)
        else:
            numbers.append(value)
        joiner = ""
    return tuple(numbers)


def _is_round(what: str) -> bool | None:
    low = what.lower()
    return None if low == "r" else not low.startswith("row")


def _side(words: str) -> str:
    low = words.lower()
    return (
        "wrong"
        if re.search(r"\bws\b|wrong", low)
        else "right"
        if re.search(r"\brs\b|right", low)
        else ""
    )


def label_at(text: str, start: int, line_start: bool) -> Mark | None:
    """The label that begins exactly at `start`, None when none does; a bare "3." only at a line's
    start.
    """
    every = EVERY_AFTER.match(text, start)
    if every:
        return _numbered(every, start, every_other=every.group("which").lower())
    ordinal = ORDINAL_FIRST.match(text, start)
    word = WORD_FIRST.match(text, start)
    if ordinal or (word and word.group("what") != "r"):
        found = ordinal or word
        assert found is not None
        return _numbered(found, start, _side(found.group("side") or ""))
    named = NAMED.match(text, start)
    if named:
        return _by_name(named, start)
    bare = BARE.match(text, start) if line_start else None
    return Mark(start, bare.end(), opened(bare.group("nums"))) if bare else None


def _numbered(found: re.Match[str], start: int, side: str = "", every_other: str = "") -> Mark:
    numbers, is_round = opened(found.group("nums")), _is_round(found.group("what"))
    return Mark(start, found.end(), numbers, "", 1, is_round, side, every_other)


def _by_name(found: re.Match[str], start: int) -> Mark:
    times = int((found.group("times") or "1").strip()[:3])
    name = re.sub(r"\s+", " ", found.group().strip(" :.—"))
    is_round, side = _is_round(found.group("what")), _side(found.group("side") or "")
    return Mark(start, found.end(), (), name, times, is_round, side)


CANDIDATE = re.compile(
    rf"(?<![\w-])(?:{_ORD}|[\[(]?(?:{_ROUND}|R)\.?\s*{_NUM}|(?:next|following|last|foundation"
    rf"|set-?up|inc|dec|increase|decrease|eyelet|final)\s+(?:\d+\s+)?(?:{_ROUND}))",
    re.IGNORECASE,
)


def labels_in(text: str, start: int, end: int) -> list[Mark]:
    """All labels in a block of clean text, in order; inside a sentence only after a full stop, a
    bracket or a turn.
    """
    marks: list[Mark] = []
    first = label_at(text, start, True)
    if first and first.end <= end:
        marks.append(first)
    at = first.end if first else start
    while True:
        # Searched anew from the next character: "row. 2nd ROW:" holds a false candidate before the
        # true one.
        candidate = CANDIDATE.search(text, at, end)
        if candidate is None:
            return marks
        spot = candidate.start()
        mark = label_at(text, spot, False) if _may_begin(text[start:spot]) else None
        if mark and mark.end <= end:
            marks.append(mark)
            at = mark.end
        else:
            at = spot + 1


def _may_begin(before: str) -> bool:
    """Whether a label may follow these words of its block: only a sentence, a bracket or a turn
    that ends.
    """
    words = before.rstrip()
    if words and words[-1] not in ".;:)]!—*" and not words.lower().endswith(("turn", "join")):
        return False
    return not re.search(r"\b(?:rep|repeat|as|of|work|from|for|in)\s*$", words, re.IGNORECASE)
