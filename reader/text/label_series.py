"""Rows labelled through a text in one odd manner, "R1 → knit", "*Rnd 2* 12 sc", "[1st row] =
purl", "R4 + R5 | knit" -> "R1:  knit", "Rnd 2:  12 sc", "row 1:   ", "R4-5:    knit"; length kept.
"""

from __future__ import annotations

import re
from collections import defaultdict
from itertools import pairwise
from typing import NamedTuple

from reader.terms.numbers import ORDINALS, UNITS
from reader.text.fitting import fitted

LEAST = 2
"""Labels that count on in one manner make it the manner of the text. Judgement."""
_WORD = r"(?:rounds?|rnds?|rds?|rows?|r(?=[ .#]?\d))"
_NUMBER = r"\d{1,3}"
_SPELLED = "|".join(sorted((one for one in UNITS if UNITS[one]), key=len, reverse=True))
_ORDINAL = r"\d{1,3}(?:st|nd|rd|th)|" + "|".join(ORDINALS)
_UP_TO = r"to|thru|through|till|until|up to"
_MORE = (
    rf"(?:(?:[ ]?(?:,|&|\+|/|-|—|~|\.{{2,3}}|and|{_UP_TO})[ ]?)+{_WORD}\.?[ ]?\d{{1,3}}"
    r"|(?:[-—–/&+~]|\.{2,3})\d{1,3}(?![\d/])"
    rf"|[ ](?:&|\+|and|-|—|–|{_UP_TO})[ ]\d{{1,3}}(?=[ ]?[^\w\s(\[*,])"
    r"|,[ ]?(?:and[ ])?\d{1,3}(?=[ ]?[^\w\s(\[*]|[ ]and[ ]\d))*"
)
_ARROWS = r"(?:[→⇒➡▸▶►»›|]|[=-]?>{1,2})"
LABEL = re.compile(
    r"^(?P<lead>[ \t]*(?:\d{1,2}(?::\d\d){1,2}[ \t]+)?(?P<open>(?:[^\w\s]|_){0,4})[ ]?)"
    rf"(?P<label>(?P<word>{_WORD})\.?[ ]?(?:#|no\.?[ ]|number[ ])?[ ]?"
    rf"(?:(?P<n>{_NUMBER})(?![\d.]\d|,\d{{3}}|(?:st|nd|rd|th)\b)(?P<more>{_MORE})|(?P<spelled>{_SPELLED})\b)"
    rf"|(?P<nth>{_ORDINAL})[ ](?P<nth_word>{_WORD})\b\.?"
    rf"|(?P<bare>{_NUMBER})(?:(?P<bare_more>{_MORE})(?=[ ]?{_ARROWS})"
    r"|(?P<bare_list>(?:[ ]?(?:\+|&|and)[ ]?\d{1,3})+)(?=[ ]?[:.)][ ])))"
    r"(?P<rest>[^\n]*)",
    re.IGNORECASE | re.MULTILINE,
)
SPACED = re.compile(r"(?:(?:[ ](?:-|—|–|to|and|&)|,(?:[ ]and)?)[ ]?\d+)+", re.IGNORECASE)
"""Numbers as labels usually have them."""
CLOSERS = {"(": ")", "[": "]", "<": ">", "{": "}", "\u00ab": "\u00bb", "\u3010": "\u3011"}
MARK = re.compile(
    r"[ \t]*(?P<mark>(?:[^\w\s(\[{*\"'\u2019#+.:&\u00bd\u00bc\u00be\u00d7]|(?<=\s)\+(?=\s)"
    r"|\.{2,}|:[:-]|[.:](?=[^\w\s(\[*]))[^\w\s(\[{*\"'#+\u00bd]{0,5})[ \t]*(?=\S)"
)
UNMARKED = re.compile(
    r"[ \t]+(?=[a-z\d(*\[])(?!(?:is|are|was|were|will|has|have|like|of|and|or|in|on|for|to|the|you"
    r"|we|i|it|this|that|as|again|until|through|thru|onwards?|with|from|\d+ (?:and|to|&))\b)",
    re.IGNORECASE,
)
"""What a label without a mark stands before: the words of a row and no sentence about it."""
BEHIND_COMMA = re.compile(r"\d{1,3}(?:,| ?(?:and|to|&|-|—)\b| ?[:.)-])|[^\n:]{1,40}:")
"""More numbers, or what the row is for, "Row 2, 4 and 6: ", "Row 1, right side: ": no mark."""
BULLETS = frozenset(("", "-", "*", "\u2022", "+", ">", "#", "##", "###", "**"))
NUMBERS = re.compile(r"\d+")


class _Label(NamedTuple):
    """A line's label as found, with what stands around it: opening, mark and where its words begin.
    """

    found: re.Match[str]
    manner: tuple[str, str, str]
    number: int
    words_at: int


def labels_as_usual(text: str) -> str:
    """The text so put where labels in one manner count on; any other text as it is."""
    series = defaultdict[tuple[str, str, str], list[_Label]](list)
    for found in LABEL.finditer(text):
        one = _labelled(found)
        if one is not None:
            series[one.manner].append(one)
    chosen = [one for same in series.values() if _counts_on(same) for one in same]
    pieces, at = list[str](), 0
    for one in sorted(chosen, key=lambda label: label.found.start()):
        pieces += [text[at : one.found.start()], _as_usual(one)]
        at = one.words_at
    return "".join((*pieces, text[at:]))


def _labelled(found: re.Match[str]) -> _Label | None:
    """The label where it is set in an odd manner."""
    opened, rest = found["open"], found["rest"]
    closer = CLOSERS.get(opened, opened)
    closed = len(closer) if closer and rest.startswith(closer) else 0
    at = found.start("rest") + closed
    rest = rest[closed:]
    mark = MARK.match(rest)
    said = mark["mark"] if mark else ""
    if mark is not None:
        at += mark.end()
    elif _listing(found) and (usual := re.match(r"[ ]?[:.](?=\s)", rest)):
        said, at = ":", at + usual.end()
    elif closed and (usual := re.match(r"[ ]*[:.]?[ \t]*(?=\S)", rest)):
        said, at = "", at + usual.end()
    elif opened not in BULLETS and (usual := re.match(r"[ ]*[:.]?[ \t]+(?=\S)", rest)):
        said, at = ":", at + usual.end()
    elif _oddly_named(found) and (usual := UNMARKED.match(rest)):
        said, at = "", at + usual.end()
    else:
        return None
    if not closed and opened in CLOSERS:
        return None
    if said in ("", ",") and not closed and _told(found):
        return None
    if said == "," and BEHIND_COMMA.match(found.string, at):
        return None
    word = (found["word"] or found["nth_word"] or "").lower().rstrip("s")
    return _Label(found, (opened, word, said), _number(found), at)


def _oddly_named(found: re.Match[str]) -> bool:
    """Whether the label is not a plain word and figures."""
    return not found["n"] or re.search(r"[#.]|(?i:no|number)\b", found["label"]) is not None


def _more(found: re.Match[str]) -> str:
    """The other rows of a label, as they are told."""
    return found["more"] or found["bare_more"] or found["bare_list"] or ""


def _listing(found: re.Match[str]) -> bool:
    """Whether other rows are told in a manner that labels seldom have."""
    return bool(_more(found)) and SPACED.fullmatch(_more(found)) is None


def _told(found: re.Match[str]) -> bool:
    """Whether the number is told in words, as people speak of rounds."""
    return not (found["n"] or found["bare"] or (found["nth"] and found["nth"][0].isdigit()))


def _number(found: re.Match[str]) -> int:
    if found["n"] or found["bare"]:
        return int(found["n"] or found["bare"])
    if found["spelled"]:
        return UNITS[found["spelled"].lower()]
    nth = found["nth"].lower()
    return ORDINALS[nth] if nth in ORDINALS else int(nth.rstrip("stndrh"))


def _counts_on(same: list[_Label]) -> bool:
    """Whether each number is more than the last, or begins anew."""
    numbers = [one.number for one in same]
    if len(numbers) < LEAST:
        return any(_more(one.found) and one.manner[2] == ":" for one in same)
    if same[0].found["bare"] and same[0].manner[2] != ":":
        return numbers[0] == 1 and all(a < b for a, b in pairwise(numbers))
    if same[0].manner[2] == "" and same[0].manner[0] in BULLETS:
        return numbers[0] == 1 and len(numbers) > LEAST and all(
            later in (one + 1, 1) for one, later in pairwise(numbers)
        )
    return all(later > one or later == 1 for one, later in pairwise(numbers))


def _as_usual(one: _Label) -> str:
    """The label with a colon behind it, as long as it was with all that stood around."""
    found, more = one.found, _more(one.found)
    if more:
        more = _listed([one.number, *map(int, NUMBERS.findall(more))], more)
    word = found["word"] or found["nth_word"] or ""
    gap = "" if word in ("r", "R", "") else " "
    label = f"{word}{gap}{one.number}{more}:"
    whole = found.string[found.start() : one.words_at]
    indent = min(len(found["lead"]), len(whole) - len(label) - 1)
    return fitted(" " * indent + label, whole)


def _listed(numbers: list[int], said: str) -> str:
    """The other numbers behind the first."""
    counts_on = all(later == number + 1 for number, later in pairwise(numbers))
    if counts_on or (len(numbers) == 2 and re.search(r"[-—~]|\.\.|to|thr|til", said)):
        return f"-{numbers[-1]}"
    return "".join(f", {number}" for number in numbers[1:])
