"""Which text tells the numbers of several sizes in one manner without naming it: "48/60",
"61; 67; 73", "16 | 20 | 24", "53 ... 57", "140, 150, 160", "(64, 68, 72)".

One such list may be anything; several of as many numbers, that grow from the first to the last,
are the sizes of a piece.
"""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass
from itertools import pairwise

PARTED = re.compile(
    r"(?P<list>\d(?<![\d/|;,.:–—-]\d)(?<![/|;,][ ]\d)(?<!\d \d)\d{0,3}"
    r"(?P<mark>[ ]?(?:[/|;<~]|\.{3})[ ]?|,[ ]?)\d{1,4}"
    r"(?:(?P=mark)\d{1,4})*)(?![\d/|]|[.,;]\d|[ ]?[/|;,][ ]?\d|[ ]?(?:th|nd|rd)\b)"
)
"""Numbers with the same mark between all of them."""
WITHIN = re.compile(
    r"(?P<open>[(\[])(?<![\d)\]].)(?<!\d .)(?P<list>\d{1,4}(?:[ ]?[,/;|:-][ ]?\d{1,4})+)[)\]]"
)
"""All of them within a bracket, with no number before it."""
OF_ROWS = re.compile(
    r"\b(?:rows?|r(?:ou)?nds?|r|rds?|steps?|nos?\.?|sizes?|ages?|pages?|every|c|gauge)\W*$", re.I
)
"""Before a list that is none of stitches."""
BEGUN = re.compile(r"\b(?:cast\W+on|co|ch|chain|make) $", re.IGNORECASE)
"""Before a list that a piece begins with: fewer others must be like it."""
FRACTIONS = frozenset([2, 3, 4, 8])
LEAST_LISTS = {2: 4}
"""As many lists as tell two sizes; of more sizes three do, five where commas part them."""
LEAST_BEGUN = 2
"""Where a piece begins with one, or its first lines name as many sizes."""
LEAST_PAIRS = 5
"""Pairs parted by commas, where a piece begins with one."""
AT_TOP = 240
"""Characters of the lines in which sizes are named."""
NAMES = re.compile(
    r"\((?P<names>(?:[^(),\n]{1,24},[ ]?)+[^(),\n]{1,24})\)"
    r"|\b(?:two|three|four|five|six) sizes:?[ ](?P<told>[^.\n)]{3,80})",
    re.IGNORECASE,
)
WORDS = re.compile(
    r"\b(?:sizes?|newborn|tiny|small|medium|large|big|baby|toddler|child|kids?|teen|adult|months?"
    r"|years?|junior|senior|men|ladies|women)\b", re.IGNORECASE
)
FEW = 2
"""Of so few stitches, or none, another size may have many times as many."""
FARTHEST = 3
"""The largest size has at most so many times the stitches of the smallest."""


@dataclass(frozen=True)
class Alike:
    """How the sizes are told: how many they are, and the manner, "/", "," or "("."""

    sizes: int
    manner: str

    @property
    def plain(self) -> bool:
        """Whether hardly anything else is told so, whatever a heading may name."""
        return self.manner == "/"


def _grows(numbers: list[int]) -> bool:
    near = numbers[-1] <= FARTHEST * max(FEW, numbers[0])
    return near and all(a <= b for a, b in pairwise(numbers))


def _is_none(numbers: list[int], mark: str) -> bool:
    """Whether a fraction is told, "1/2"."""
    return len(numbers) == 2 and mark == "/" and numbers[0] < numbers[1] in FRACTIONS


def _of_rows(found: re.Match[str]) -> bool:
    start = found.start()
    return OF_ROWS.search(found.string, max(0, start - 12), start) is not None


INNER = re.compile(r"\d ?[(\[]$")


def _inner(found: re.Match[str]) -> bool:
    """Whether a list stands in a bracket behind its first number, "60 (64/68)", or fills one."""
    start = found.start("list")
    before = found.string[max(0, start - 1)] if start else " "
    if "," in found["mark"] and (before in "([" or before.isalpha()):
        return True
    return INNER.search(found.string, max(0, start - 3), start) is not None


def _told(text: str) -> list[tuple[Alike, list[int], bool]]:
    """Every list with its manner, and whether a piece begins with it."""
    found: list[tuple[Alike, list[int], bool]] = []
    for one in (*PARTED.finditer(text), *WITHIN.finditer(text)):
        numbers, start = [int(n) for n in re.findall(r"\d+", one["list"])], one.start()
        mark = one.groupdict().get("mark")
        if _of_rows(one) or (mark is not None and (_is_none(numbers, mark) or _inner(one))):
            continue
        manner = "(" if mark is None else "," if mark.strip() in ",;" else "/"
        begun = BEGUN.search(text, max(0, start - 12), start) is not None
        found.append((Alike(len(numbers), manner), numbers, begun))
    return found


def _named_at_top(text: str, sizes: int) -> bool:
    """Whether the first lines list so many names of sizes, "(micro, tiny, newborn)"."""
    for found in NAMES.finditer(text[:AT_TOP]):
        names = re.split(r",[ ]?|[ ]and[ ]", found["names"] or found["told"])
        if len(names) == sizes and WORDS.search(found.group()):
            return True
    return False


def lists_alike(text: str) -> Alike | None:
    """How a text tells its sizes, None where nothing shows that it has several."""
    told = _told(text)
    for manner, often in Counter(one for one, *_ in told).most_common(4):
        growing = [one for which, one, _ in told if which == manner and _grows(one)]
        apart = {tuple(one) for one in growing if one[0] < one[-1]}
        least = LEAST_LISTS.get(manner.sizes, 3) + 2 * (manner.manner in (",", "("))
        begun = any(first and which == manner for which, _, first in told)
        if manner.manner == "," and manner.sizes == 2:
            # A comma may part any two numbers.
            least = LEAST_PAIRS if begun else often + 1
        elif begun or _named_at_top(text, manner.sizes):
            least = LEAST_BEGUN
        if often >= least and len(growing) >= 0.8 * often and len(apart) >= min(3, least):
            return manner
    return None


def put_in_brackets(text: str, alike: Alike) -> str:
    """The text with such lists as "48 (60)", length kept; a list that finds no room stays."""
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
    if len(numbers) != sizes or _of_rows(found) or _inner(found):
        return found.group()
    if sizes == 2 and found["mark"][0] in ",;" and int(numbers[0]) > int(numbers[1]):
        return found.group()
    told = f"{numbers[0]} ({', '.join(numbers[1:])})"
    before, after = found["before"] or "", found["after"] or ""
    short = told.replace(", ", ",")
    for lead, end in ((before, after), (before, after.rstrip()), ("", after.rstrip())):
        for one in (told, short, short.replace(" (", "(")):
            room = len(found.group()) - len(lead + one + end)
            if room >= 0:
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
