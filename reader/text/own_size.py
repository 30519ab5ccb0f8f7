"""A text for several sizes whose numbers stand beside the sizes' names -> the text of one size,
length kept: "29 sts (33 for medium, 37 for large)" reads as "33 sts", "newborn 6, toddler 8, adult
10 rounds" as "8 rounds", "2T: k9, kfb. 4T: k11, kfb." as "k11, kfb.".
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence

from reader.text.size_names import alike, has_sizes, listed_names
from reader.text.sized_lists import SizedList, lists_in
from reader.text.sized_sentences import Said, said_in
from reader.text.sized_tokens import Token, tokens_of

FIRST = ""
"""Stands for the name that lists leave out, that of the size they tell first."""
LEAST = 2
"""Lists that tell the same sizes, for a text to be written for them."""
MOST = 12
LEADS_ON = re.compile(r"(?:^|\n)[^\n]*(?:[:,=–—-]|\d[^\n]*|[a-z]+ [a-z]+[^\n]*)\n[ \t]*$")
"""The line before those of the sizes, where it is no heading."""
LONGEST = 60_000
"""Characters of a text that is read so."""


def sizes_beside(text: str) -> tuple[str, ...]:
    """The names of the sizes whose numbers or sentences a text tells by name; () where it tells
    none so. Any text goes in.
    """
    if len(text) > LONGEST or not has_sizes(text):
        return ()
    tokens = tokens_of(text)
    told = Counter[tuple[str, ...]]()
    spelled: dict[str, str] = {}
    for one in _told_in(text, tokens):
        names = [name for these in one.names for name in these]
        if len({alike(name) for name in names}) == len(names):
            lead = (FIRST,) if isinstance(one, SizedList) and one.own is not None else ()
            told[(*lead, *map(alike, names))] += 1
        for name in names:
            spelled.setdefault(alike(name), name)
    for listed in listed_names(text):
        low = tuple(map(alike, listed))
        if low in told or (FIRST, *low[1:]) in told:
            told[low] += 1
            spelled.update(zip(low, listed, strict=True))
    chosen = _chosen(told)
    if not chosen:
        return ()
    return tuple(spelled[one] if one else _first_name(tokens, chosen) for one in chosen)


def told_by_name(text: str, names: Sequence[str]) -> bool:
    """Whether the text tells something beside the names of all sizes, which it has anyhow."""
    if len(names) < 2 or len(text) > LONGEST or not has_sizes(text):
        return False
    low, tokens = {alike(one) for one in names}, tokens_of(text)
    return any(
        low == {alike(name) for these in one.names for name in these}
        for one in _told_in(text, tokens)
    )


def _told_in(text: str, tokens: Sequence[Token]) -> Sequence[SizedList | Said]:
    """All numbers and sentences that stand beside names of sizes."""
    return (*lists_in(tokens), *said_in(text, tokens))


def _chosen(told: Counter[tuple[str, ...]]) -> tuple[str, ...]:
    """The sizes that most lists tell; a first name left out in some is taken from others."""
    often = Counter[tuple[str, ...]]()
    for names, times in told.items():
        full = [one for one in told if names[0] == FIRST != one[0] and one[1:] == names[1:]]
        often[full[0] if full else names] += times
    ranked = [one for one, n in often.most_common() if n >= LEAST and 1 < len(one) <= MOST]
    if not ranked:
        return ()
    # Some lists tell only the larger ones.
    best = ranked[0]
    wider = [one for one in ranked if set(best) < set(one)]
    return max(wider, key=len) if wider else best


def _first_name(tokens: Sequence[Token], chosen: tuple[str, ...]) -> str:
    """The first size that the text names beside the chosen ones."""
    for one in tokens:
        if one.kind == "name" and alike(one.text) not in chosen and one.text[0].isalpha():
            return one.text
    return "size 1"


def text_of_size(text: str, names: Sequence[str], size: int) -> str:
    """The text as the maker of that size (0-based) reads it; names: as sizes_beside gives them."""
    own, low = list(text), [alike(one) for one in names]
    tokens = tokens_of(text)
    said = said_in(text, tokens)
    for group in said:
        _keep(own, group, _which(group, low, size))
    for told in lists_in(tokens):
        if "".join(own[told.start : told.end]).isspace():
            continue
        at = _which(told, low, size)
        if at is None and told.own is None:
            continue
        number = told.numbers[at] if at is not None else told.own or ""
        own[told.start : told.end] = number.ljust(told.end - told.start)
    for one in tokens:
        if one.kind == "name" and len(one.text) == 1:
            # A small l may be taken for a one.
            own[one.start] = own[one.start].upper()
    return "".join(own)


def _which(told: SizedList | Said, names: list[str], size: int) -> int | None:
    """Which of a list's places is the size's; None where none is."""
    for at, these in enumerate(told.names):
        if names[size] in map(alike, these):
            return at
    return None


def _keep(own: list[str], group: Said, which: int | None) -> None:
    """Only the words of that place stay, without the name, behind what led to them."""
    if which is None:
        return
    lines = "".join(own[group.parts[0].start : group.parts[-1].start]).count("\n")
    led = LEADS_ON.search("".join(own[max(0, group.parts[0].start - 80) : group.parts[0].start]))
    first = group.parts[0].start - (1 if lines and led else 0)
    for place in range(first, group.parts[-1].end):
        if own[place] != "\n" or (lines and (place >= group.parts[0].start or led)):
            part = group.parts[which]
            if not part.words <= place < part.end or own[place] == "\n":
                own[place] = " "
