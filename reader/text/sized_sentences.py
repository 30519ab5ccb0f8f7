"""Where a text tells each size in words of its own, behind the size's name: "2T: k9, kfb. 4T: k11,
kfb.", a line for each, or "so 2T has 80 now and 4T has 96".
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from reader.text.size_names import alike
from reader.text.sized_tokens import Token

LEADS = frozenset(["for", "in", "the", "size", "sizes", "if", "making"])
MARKS = frozenset([":", "=", ")", "-", "–", "—"])
SAYS = frozenset(
    ["you", "you've", "has", "have", "still", "need", "needs", "get", "gets", "make", "makes",
     "work", "works", "now", "should"]
)  # fmt: skip
"""Behind a name in place of a mark."""
JOINS = frozenset(["and", "so", "but", ",", ";", "(", ".", "!", "/", ":"])
"""Before a name amid a line."""
ROW = re.compile(r"(?:rows?|rnds?|rounds?|r)\.?\s?\d", re.IGNORECASE)
"""A size whose words begin with a row's label is a part of its own rather."""
LONGEST = 400
"""Characters of one size's words."""
SENTENCE_END = re.compile(r"[.!?](?=\s|$)")


@dataclass(frozen=True, slots=True)
class Part:
    """One size's words: where the name stands, where the words begin and end."""

    start: int
    words: int
    end: int


@dataclass(frozen=True, slots=True)
class Said:
    """The words of each size, and the names of the sizes each is for."""

    names: tuple[tuple[str, ...], ...]
    parts: tuple[Part, ...]


@dataclass(frozen=True, slots=True)
class _Mark:
    """A name that words follow."""

    names: tuple[str, ...]
    start: int
    words: int
    plain: bool
    on_line: bool


def said_in(text: str, tokens: Sequence[Token]) -> tuple[Said, ...]:
    """All such groups of two sizes or more, in their order."""
    marks = _marks(text, tokens)
    found: list[Said] = []
    at = 0
    while at < len(marks):
        group = [marks[at]]
        while at + len(group) < len(marks):
            coming = marks[at + len(group)]
            if not _goes_on(text, group, coming):
                break
            group.append(coming)
        if len(group) > 1:
            found.append(_as_said(text, group))
        at += len(group)
    return tuple(found)


def _marks(text: str, tokens: Sequence[Token]) -> list[_Mark]:
    marks: list[_Mark] = []
    for at, one in enumerate(tokens):
        if one.kind != "name" or (at and tokens[at - 1].text.lower() in ("and", "&", "+", "/")
                                  and marks and one.text in marks[-1].names):  # fmt: skip
            continue
        first = at
        while first and tokens[first - 1].kind == "word" and (
            tokens[first - 1].text.lower() in LEADS
        ):
            first -= 1
        before = tokens[first - 1] if first else None
        on_line = before is None or before.kind == "line" or _opens_line(tokens, first)
        if not (on_line or (before is not None and before.text.lower() in JOINS)):
            continue
        names, end = _names(tokens, at)
        if end >= len(tokens):
            continue
        plain = tokens[end].text in MARKS
        if not plain and tokens[end].text.lower() not in SAYS:
            continue
        words = tokens[end].end if plain else tokens[end].start
        while words < len(text) and text[words] == " ":
            words += 1
        marks.append(_Mark(names, tokens[first].start, words, plain, on_line))
    return marks


def _opens_line(tokens: Sequence[Token], at: int) -> bool:
    """Whether only marks, such as a bullet, stand before it on its line."""
    while at and tokens[at - 1].kind == "mark" and tokens[at - 1].text not in ".,;:)":
        at -= 1
    return not at or tokens[at - 1].kind == "line"


def _names(tokens: Sequence[Token], at: int) -> tuple[tuple[str, ...], int]:
    names = [tokens[at].text]
    at += 1
    while at < len(tokens):
        if tokens[at].text.lower() in ("size", "sizes", "only"):
            at += 1
        elif (
            at + 1 < len(tokens) and tokens[at].text.lower() in ("and", "&", "+", "/", ",")
            and tokens[at + 1].kind == "name"
        ):  # fmt: skip
            names.append(tokens[at + 1].text)
            at += 2
        else:
            break
    return tuple(names), at


def _goes_on(text: str, group: list[_Mark], coming: _Mark) -> bool:
    """Whether a name's words belong to the same thing told for another size."""
    last = group[-1]
    if {alike(one) for one in coming.names} & {alike(one) for had in group for one in had.names}:
        return False
    between = text[last.words : coming.start]
    if len(between) > LONGEST or not between.strip() or "\n\n" in between:
        return False
    if ROW.match(text, last.words) or ROW.match(text, coming.words):
        return False
    if "\n" in between.rstrip(" "):
        led = len(group) == 1 and last.plain and text[: last.start].rstrip().endswith((":", "."))
        return coming.on_line and (last.on_line or led) and coming.plain
    return coming.plain == last.plain and not (last.on_line and between.endswith("\n"))


def _as_said(text: str, group: list[_Mark]) -> Said:
    parts: list[Part] = []
    for at, one in enumerate(group):
        end = group[at + 1].start if at + 1 < len(group) else _end(text, group, one)
        parts.append(Part(one.start, one.words, end))
    return Said(tuple(one.names for one in group), tuple(parts))


def _end(text: str, group: list[_Mark], last: _Mark) -> int:
    """Where the last size's words end: with the line where each has a line, else behind as many
    sentences as the size before has.
    """
    line = text.find("\n", last.words)
    line = len(text) if line < 0 else line
    before = text[group[-2].words : last.start]
    if "\n" in before:
        return line
    ends = len(SENTENCE_END.findall(before.rstrip()))
    if not ends:
        comma = re.search(r"[,;)](?=\s)|[.!?](?=\s|$)", text[last.words : line])
        return last.words + comma.start() if comma else line
    for number, stop in enumerate(SENTENCE_END.finditer(text, last.words, line)):
        if number + 1 == ends:
            return stop.end()
    return line
