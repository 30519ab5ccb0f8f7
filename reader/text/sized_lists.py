"""Where a text tells a number for each size beside the size's name: "33 for medium, 37 for large",
"(M: 33; L: 37)", "newborn 6, toddler 8", "12 in both small sizes".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from reader.text.sized_tokens import Token

UNITS = frozenset(
    ["st", "sts", "stitch", "stitches", "ch", "chs", "chain", "chains", "times", "row", "rows",
     "round", "rounds", "rnd", "rnds", "more", "sc", "dc", "hdc", "tr", "htr", "loops", "inches",
     "inch", "in", "ins", "cm", "mm", "extra", "sps", "spaces", "dec", "inc", "long", "wide",
     "total", "altogether", "each", "side", '"', "”", "″"]
)  # fmt: skip
LEADS = frozenset(
    ["for", "in", "if", "on", "making", "is", "the", "a", "an", "size", "sizes", "your", "those",
     "to", "make", "doing"]
)  # fmt: skip
"""Between a number and the name of its size, or before the name."""
BEFORE = frozenset(["for", "in", "size", "sizes", "the"])
"""Those that go with a list which begins with a name."""
VERBS = frozenset(
    ["or", "and", "but", "make", "work", "do", "use", "cast", "on", "chain", "ch", "knit", "purl",
     "k", "p", "you", "have", "has", "it's", "is", "are", "only", "just", "instead", "then"]
)  # fmt: skip
PARTING = frozenset([",", ";", "/", "+", "&", "|", "and", "or", "."])
BEFORE_NUMBER = frozenset([":", "=", "-", "–", "—"])
BEHIND = frozenset(["size", "sizes", "one", "ones", "version", "only"])
OPENING, CLOSING = frozenset("(["), frozenset(")]")


@dataclass(frozen=True, slots=True)
class SizedList:
    """numbers: as written, with their units; names: of the sizes each is for; own: the number of
    the size that is told first without its name, None where all are named.
    """

    start: int
    end: int
    own: str | None
    numbers: tuple[str, ...]
    names: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class _Pair:
    number: str
    names: tuple[str, ...]
    name_first: bool
    bare: bool
    next: int


def lists_in(tokens: Sequence[Token]) -> tuple[SizedList, ...]:
    """All such lists, in their order."""
    found: list[SizedList] = []
    at = 0
    while at < len(tokens):
        told = _list_at(tokens, at) if tokens[at].kind in ("number", "name") else None
        if told is None:
            at += 1
            continue
        found.append(told[0])
        at = told[1]
    return tuple(found)


def _list_at(tokens: Sequence[Token], at: int) -> tuple[SizedList, int] | None:
    first = tokens[at]
    if first.kind == "number":
        unit = _over(tokens, at + 1, UNITS)
        opened = _is(tokens, unit, OPENING)
        parted = _is(tokens, unit, frozenset(",;"))
        if opened or parted:
            pairs, end = _pairs(tokens, unit + 1, opened)
            if opened and pairs and _is(tokens, end, CLOSING):
                return _told(tokens, at, end + 1, pairs, unit), end + 1
            if parted and pairs and not any(one.bare or one.name_first for one in pairs):
                return _told(tokens, at, end, pairs, unit), end
    pairs, end = _pairs(tokens, at, False)
    loose = any(one.bare and not one.name_first for one in pairs)
    if len(pairs) < 2 or loose:
        return None
    return _told(tokens, at, end, pairs, None), end


def _told(
    tokens: Sequence[Token], at: int, end: int, pairs: list[_Pair], unit: int | None
) -> SizedList:
    while at and pairs[0].name_first and unit is None and tokens[at - 1].text.lower() in BEFORE:
        at -= 1
    own = None if unit is None else _text(tokens, at, unit)
    numbers, names = tuple(one.number for one in pairs), tuple(one.names for one in pairs)
    return SizedList(tokens[at].start, tokens[end - 1].end, own, numbers, names)


def _pairs(tokens: Sequence[Token], at: int, within: bool) -> tuple[list[_Pair], int]:
    """The pairs that stand behind one another from there, and where they end."""
    pairs: list[_Pair] = []
    end = at
    while True:
        pair = _pair(tokens, at, within)
        if pair is None or (pairs and pair.name_first != pairs[0].name_first):
            break
        if any(name in one.names for one in pairs for name in pair.names):
            break
        pairs.append(pair)
        end = at = pair.next
        while at < len(tokens) and (tokens[at].text in PARTING or tokens[at].kind == "line"):
            at += 1
    return pairs, end


def _pair(tokens: Sequence[Token], at: int, within: bool) -> _Pair | None:
    start = at
    if within:
        at = _over(tokens, at, VERBS)
    if at < len(tokens) and tokens[at].kind == "number":
        unit = _over(tokens, at + 1, UNITS - LEADS)
        name_at = _over(tokens, unit, LEADS)
        bracket = _is(tokens, name_at, OPENING)
        names, end = _names(tokens, name_at + bracket)
        if names and (not bracket or _is(tokens, end, CLOSING)):
            bare = name_at == at + 1 and not bracket
            return _Pair(_text(tokens, at, unit), names, False, bare, end + bracket)
    at = _over(tokens, start, LEADS)
    bracket = _is(tokens, at, OPENING)
    names, end = _names(tokens, at + bracket)
    if not names or (bracket and not _is(tokens, end, CLOSING)):
        return None
    end += bracket
    end += _is(tokens, end, BEFORE_NUMBER)
    number = _over(tokens, end, VERBS)
    if number >= len(tokens) or tokens[number].kind != "number":
        return None
    unit = _over(tokens, number + 1, UNITS)
    return _Pair(_text(tokens, number, unit), names, True, False, unit)


def _names(tokens: Sequence[Token], at: int) -> tuple[tuple[str, ...], int]:
    """The names that stand there, "small and medium", and where they end; () for none."""
    names: list[str] = []
    end = at
    while at < len(tokens) and tokens[at].kind == "name":
        names.append(tokens[at].text)
        end = at = _over(tokens, at + 1, BEHIND)
        joined = _is(tokens, at, frozenset(["and", "&", "/", "+"]))
        behind = _over(tokens, at + 2, BEHIND | BEFORE_NUMBER)
        if not joined or (behind < len(tokens) and tokens[behind].kind == "number"):
            break
        at += 1
    return tuple(names), end


def _over(tokens: Sequence[Token], at: int, words: frozenset[str]) -> int:
    """The place behind such words."""
    while at < len(tokens) and tokens[at].kind != "name" and tokens[at].text.lower() in words:
        at += 1
    return at


def _is(tokens: Sequence[Token], at: int, words: frozenset[str]) -> bool:
    return at < len(tokens) and tokens[at].text.lower() in words


def _text(tokens: Sequence[Token], start: int, end: int) -> str:
    """Those tokens as written, on one line."""
    out, place = "", tokens[start].start
    for one in tokens[start:end]:
        out += " " * (one.start > place) + one.text
        place = one.end
    return out
