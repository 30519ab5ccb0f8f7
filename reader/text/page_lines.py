"""Lines that stand on each page of a copy, its title, its address, its number, turned to spaces, so
that a row they broke into goes on; length kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

from reader.text.sought import Sought, lowered

PAGE = Sought(
    ("©", "(c)", "copyright", "page ", "pg", " of ", "www.", "http"),
    r"©|\(c\)|c(?<!\wc)opyright\b|p(?<!\wp)(?:age |g\.? ?)\d|\d of \d|www\.\w|https?://",
)
"""What a line at the head or foot of a page has in it, in small letters."""
HEAD_WITH_NUMBER = re.compile(
    r"^[ ]*(?!(?:rnd|round|row|rd|r)\b)[A-Za-z][^\d\n]{3,60}?[ ]{3,}\d{1,3}[ ]*$"
    r"|^[ ]*\d{1,3}[ ]{3,}(?!(?:sts?|sc|dc|ch|x)\b)[A-Za-z][^\d\n]{3,60}?[ ]*$",
    re.IGNORECASE,
)
"""A title with a page's number far behind it, or far before it."""
GAP = "   "
NUMBER_ALONE = re.compile(r"[ ]*[-\[–—]?[ ]*(?P<n>\d{1,3})[ ]*(?:/ ?\d{1,3})?[ ]*[-\]–—]?[ ]*")
SURELY = re.compile(r"\W*page \d+(?: (?:of|/) \d+)?\b(?![,;])[^,;]{0,50}$", re.IGNORECASE)
"""A line that is a page's number and nothing of the work."""
FAR_RIGHT = re.compile(
    r"(?:^|(?<=\S))[ ]{8,}(?P<mark>p(?:age|g)?\.? ?(?P<n>\d{1,3}))[ ]*(?:\n(?P<below>[^\n]+))?$",
    re.MULTILINE,
)
"""A page's number at the right edge, "POINTS EDGING            p. 3", and the line below it."""
ROW = re.compile(r"\W*(?:rounds?|rnds?|rds?|rows?)\.? ?\d", re.IGNORECASE)
"""What begins so is none: "Round 2 of 7. Two in each"."""
TOP = 4
"""Lines of the text at whose top a title stands for itself."""
ENDED = re.compile(r"[.;:!?)\]][\"'*]*\s*$")


def without_page_lines(text: str) -> str:
    """The text without them; the title at its top stays."""
    text = _without_marks(text)
    lines = text.split("\n")
    dropped = _repeated(text, lines) | _counted(lines)
    dropped |= _titles(lines, dropped)
    if not dropped:
        return text
    starts = [0]
    for line in lines:
        starts.append(starts[-1] + len(line) + 1)
    made = list(text)
    for at in sorted(dropped):
        made[starts[at] : starts[at] + len(lines[at])] = " " * len(lines[at])
    for at in sorted(dropped):
        _close(made, lines, starts, at, dropped)
    return "".join(made)


def _without_marks(text: str) -> str:
    """The text without page numbers at the right edge, where they count on from page to page, and
    without the line below them where it is the same on each.
    """
    marks = list(FAR_RIGHT.finditer(text)) if GAP in text else []
    numbers = [int(one["n"]) for one in marks]
    if len(marks) < 2 or any(b != a + 1 for a, b in pairwise(numbers)):
        return text
    made = list(text)
    for one in marks:
        made[one.start("mark") : one.end("mark")] = " " * len(one["mark"])
    below = [(one["below"] or "").strip() for one in marks]
    same = min(below, key=len)
    if len(same.split()) > 1 and all(one.startswith(same) for one in below):
        for one in marks:
            made[one.start("below") : one.end("below")] = " " * len(one["below"])
    return "".join(made)


def _bare(line: str) -> str:
    return re.sub(r"\d+", "", line).strip().lower()


def _repeated(text: str, lines: list[str]) -> set[int]:
    """Titles and addresses that stand more than once, but for their numbers."""
    if not (PAGE.search(lowered(text)) or GAP in text):
        return set()
    found = [
        at
        for at, line in enumerate(lines)
        if (PAGE.shape.search(line.lower()) or (GAP in line and HEAD_WITH_NUMBER.fullmatch(line)))
        and not ROW.match(line)
    ]
    bare = [_bare(lines[at]) for at in found]
    many = {one for one in bare if one and bare.count(one) > 1}
    sure = {at for at in found if SURELY.match(lines[at])}
    repeated = {at for at, one in zip(found, bare, strict=True) if one in many}
    return {at for at in sure | repeated if at >= TOP}


def _titles(lines: list[str], dropped: set[int]) -> set[int]:
    """The piece's title set again beside a page's number, on a line of its own."""
    if not dropped:
        return set()
    tops = [one for one in lines if one.strip()][:TOP]
    names = {re.split(rf"{GAP}+", one.strip())[0].lower() for one in tops}
    beside = {at + step for at in dropped for step in (-1, 1)}
    return {
        at
        for at in beside - dropped
        if TOP <= at < len(lines) and lines[at].strip().lower() in names
    }


def _counted(lines: list[str]) -> set[int]:
    """Numbers alone on their lines that count on from page to page."""
    alone = [
        (at, int(found["n"]))
        for at, line in enumerate(lines)
        if line.strip() and (found := NUMBER_ALONE.fullmatch(line))
    ]
    if len(alone) < 2 or any(b[1] != a[1] + 1 for a, b in pairwise(alone)):
        return {at for at, _ in alone if _amid(lines, at)}
    return {at for at, _ in alone}


def _amid(lines: list[str], at: int) -> bool:
    """Whether a line stands between empty ones amid a sentence."""
    apart = 1 < at < len(lines) - 2 and not (lines[at - 1] + lines[at + 1]).strip()
    before = lines[at - 2] if apart else ""
    return bool(before.strip()) and not ENDED.search(before) and "," in before + lines[at + 2]


def _close(
    made: list[str], lines: list[str], starts: list[int], at: int, dropped: set[int]
) -> None:
    """Joins what a dropped line parted, where a sentence goes on behind it."""
    before, after = at - 1, at + 1
    while before >= 0 and (before in dropped or not lines[before].strip()):
        before -= 1
    while after < len(lines) and (after in dropped or not lines[after].strip()):
        after += 1
    if before < 0 or after >= len(lines) or ENDED.search(lines[before]):
        return
    for place in range(starts[before] + len(lines[before]), starts[after] - 1):
        made[place] = " "
