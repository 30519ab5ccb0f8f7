"""Which text tells the numbers of several sizes in one manner without naming it: "48/60",
"61; 67; 73", "16 | 20 | 24", "140, 150, 160", "(64, 68, 72)", "(168) 178 (190) 208".

One such list may be anything; several of as many numbers, that grow from the first to the last,
are the sizes of a piece.
"""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass
from itertools import pairwise

PARTED = re.compile(
    r"(?<![\d/|;,.:([–—-])(?<![/|;,([][ ])(?<!\d )"
    r"(?P<list>\d{1,4}(?P<mark>[ ]?[/|;][ ]?|,[ ]?)\d{1,4}"
    r"(?:(?P=mark)\d{1,4})*)(?![\d/|]|[.,;]\d|[ ]?[/|;,][ ]?\d|[ ]?(?:th|nd|rd)\b)"
)
"""Numbers with the same mark between all of them."""
WITHIN = re.compile(
    r"(?<![\d)\]])(?<!\d )(?P<open>[(\[])(?P<list>\d{1,4}(?:[ ]?[,/;|:-][ ]?\d{1,4})+)[)\]]"
)
"""All of them within a bracket, with no number before it."""
BY_TURNS = re.compile(
    r"\((?P<first>\d{1,4})\) ?\d{1,4}(?: ?\(\d{1,4}\) ?\d{1,4})*(?: ?\(\d{1,4}\))?(?![\d(])"
    r"|(?<![\d)] )(?<!\d)\d{1,4} ?\(\d{1,4}\) ?\d{1,4}(?: ?\(\d{1,4}\) ?\d{1,4})*"
    r"(?: ?\(\d{1,4}\))?(?![\d(])"
)
"""Every second one in a bracket: "(168) 178 (190) 208"."""
OF_ROWS = re.compile(
    r"\b(?:rows?|r(?:ou)?nds?|r|rds?|steps?|nos?\.?|sizes?|ages?|pages?|every|c|gauge)\W*$", re.I
)
"""Before a list that is none of stitches."""
FRACTIONS = frozenset([2, 3, 4, 8])
LEAST_LISTS = {2: 4}
"""As many lists as tell two sizes; of more sizes three do, five where commas part them."""
FARTHEST = 3
"""The largest size has at most so many times the stitches of the smallest."""


@dataclass(frozen=True)
class Alike:
    """How the sizes are told: how many they are, and the manner, "/", ",", "(" or ")("."""

    sizes: int
    manner: str

    @property
    def plain(self) -> bool:
        """Whether hardly anything else is told so, whatever a heading may name."""
        return self.manner in ("/", ")(")


def _numbers(told: str) -> list[int]:
    return [int(one) for one in re.findall(r"\d+", told)]


def _grows(numbers: list[int]) -> bool:
    near = numbers[-1] <= FARTHEST * max(1, numbers[0])
    return near and all(a <= b for a, b in pairwise(numbers))


def _is_fraction(numbers: list[int], mark: str) -> bool:
    return len(numbers) == 2 and mark == "/" and numbers[0] < numbers[1] and numbers[1] in FRACTIONS


def _of_rows(found: re.Match[str]) -> bool:
    start = found.start()
    return OF_ROWS.search(found.string, max(0, start - 12), start) is not None


def _told(text: str) -> list[tuple[Alike, list[int]]]:
    """Every list with its manner."""
    found: list[tuple[Alike, list[int]]] = []
    for one in PARTED.finditer(text):
        numbers, mark = _numbers(one["list"]), one["mark"].strip()
        manner = "/" if mark in "/|" else ","
        if (mark == "," and len(numbers) < 3) or _is_fraction(numbers, one["mark"]):
            continue
        if not _of_rows(one):
            found.append((Alike(len(numbers), manner), numbers))
    for one in WITHIN.finditer(text):
        numbers = _numbers(one["list"])
        if not _of_rows(one):
            found.append((Alike(len(numbers), "("), numbers))
    for one in BY_TURNS.finditer(text):
        numbers = _numbers(one.group())
        if len(numbers) > 2:
            found.append((Alike(len(numbers), ")("), numbers))
    return found


def lists_alike(text: str) -> Alike | None:
    """How a text tells its sizes, None where nothing shows that it has several."""
    told = _told(text)
    for manner, often in Counter(one for one, _ in told).most_common(4):
        lists = [numbers for one, numbers in told if one == manner]
        growing = [one for one in lists if _grows(one)]
        apart = {tuple(one) for one in growing if one[0] < one[-1]}
        least = LEAST_LISTS.get(manner.sizes, 3) + 2 * (manner.manner in (",", "("))
        if often >= least and len(growing) >= 0.8 * often and len(apart) >= 3:
            return manner
    return None


def put_in_brackets(text: str, alike: Alike) -> str:
    """The text with such lists as "48 (60)", length kept; a list that finds no room stays."""
    if alike.manner == ")(":
        return BY_TURNS.sub(lambda found: _bracketed(found, alike.sizes), text)
    if alike.manner == "(":
        return WITHIN.sub(lambda found: _first_before(found, alike.sizes), text)
    return ROOMY.sub(lambda found: _bracketed(found, alike.sizes), text)


ROOMY = re.compile(
    rf"(?P<before>(?<=[a-z,:.*(=]) )?(?:{PARTED.pattern})(?P<after>,? )?", re.IGNORECASE
)
"""With the spaces around it, one of which the bracket takes."""


def _bracketed(found: re.Match[str], sizes: int) -> str:
    """The bracket takes one place more than a stroke: that of a space behind it or before it."""
    numbers = re.findall(r"\d+", found.group())
    if len(numbers) != sizes or _of_rows(found):
        return found.group()
    told = f"{numbers[0]} ({', '.join(numbers[1:])})"
    groups = found.re.groupindex
    before = (found["before"] or "") if "before" in groups else ""
    after = (found["after"] or "") if "after" in groups else ""
    for one in (told, told.replace(", ", ","), told.replace(", ", ",").replace(" (", "(")):
        for lead, end in ((before, after), (before, after.rstrip()), ("", after.rstrip())):
            if len(lead + one + end) <= len(found.group()):
                room = len(found.group()) - len(lead + one + end)
                return lead + one + end + " " * room
    return found.group()


ENDS = re.compile(r"[ ]*(?:sts?|stitches|[shd]{1,2}c|tr)?[ ]*[.;]?[ ]*(?:$|[A-Z])", re.MULTILINE)


def _first_before(found: re.Match[str], sizes: int) -> str:
    """All within one bracket: a total where it ends a sentence, else a number with those of the
    other sizes behind it.
    """
    numbers = re.findall(r"\d+", found["list"])
    if len(numbers) != sizes:
        return found.group()
    one = f"{numbers[0]}({','.join(numbers[1:])})"
    before = found.string[: found.start()].rstrip()[-1:]
    if before in ".):*" and ENDS.match(found.string, found.end()):
        one = f"({one})"
    return one.ljust(len(found.group())) if len(one) <= len(found.group()) else found.group()
