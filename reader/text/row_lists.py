"""Rows told in lists: lines under a label that has its line to itself, "Round 2: / - Ch 2. / - 2
hdc in each hdc.", are one row; bullets without labels that end with totals are a row each; length
kept.
"""

from __future__ import annotations

import re

_BULLET = r"(?:[ ]*[-*»>+][ ]+|[ ]{1,12}(?=\S))"
_LABEL = (
    r"[ \t#*]*(?:(?:rounds?|rnds?|rows?|rds?|R)\.?[ ]?\d{1,3}(?:[ ]?(?:-|–|to|&|and)[ ]?\d{1,3})?"
    r"|\d{1,3}(?:st|nd|rd|th)[ ](?:rounds?|rnds?|rows?))[ ]?[:.]?[ \t*]*"
)
_GOES_ON = (
    r"(?:Ch|Chain|Join|Sl|Slip|Repeat|Rep|Turn|Work|Make|Sc|Hdc|Dc|Tr|Htr|Then|Do not|Don't|You"
    r"|Total|Skip|Sk|Miss|Continue|Cont|Single|Double|Half|Treble|SC|DC|HDC|CH|SL|In)\b(?! ?:)"
    r"(?=[ .])"
)
UNDER_LABEL = re.compile(
    rf"^(?P<label>(?i:{_LABEL}))(?P<items>(?:\n(?!{_BULLET}?(?i:{_LABEL})$)"
    rf"(?:{_BULLET}|(?={_GOES_ON})|(?=[(\[*a-z\d])(?!\d+(?:st|nd|rd|th)? ?[.:)]))[^\n]+)+)$",
    re.MULTILINE,
)
ITEM = re.compile(rf"\n(?:(?P<bullet>{_BULLET})|(?={_GOES_ON}))")
TOTALLED = re.compile(
    rf"^(?P<items>(?:{_BULLET}[^\n]+(?:\n|\Z)){{4,}})", re.MULTILINE
)
OWN_LABEL = re.compile(
    r"(?:rounds?|rnds?|rows?|rds?|R)\.?[ ]?\d"
    r"|\d+(?:st|nd|rd|th)?[.:) ]+(?:rounds?|rnds?|rows?)?[:.]",
    re.IGNORECASE,
)
TOTAL = re.compile(r"[(\[]\d{1,3}(?: ?[a-z]{2,8})?[)\]][ .]*$", re.IGNORECASE)


def rows_of_lists(text: str) -> str:
    """The text with such lists as the rows they are; any other text as it is."""
    text = _to_its_total(UNDER_LABEL.sub(_one_row, text))
    return TOTALLED.sub(_a_row_each, text)


LABELLED = re.compile(
    rf"^(?:{_LABEL}|[ ]*\d{{1,3}}(?:[ ]?-[ ]?\d{{1,3}})?[.):][ ]*)(?=\S)", re.IGNORECASE
)
LEAST = 5
"""Rows with their totals that show that all have one."""
MOST_LINES = 3
"""Lines that a row goes on over without its total."""


def _to_its_total(text: str) -> str:
    """The text with the lines of a row that end with its total joined, where all rows have one:
    "11. Sc once. / (hdc, sk 1) around. / Sc in the last st. (42)".
    """
    lines = text.split("\n")
    labelled = [at for at, line in enumerate(lines) if LABELLED.match(line)]
    without = [at for at in labelled if not TOTAL.search(lines[at].rstrip())]
    if len(labelled) < LEAST or 4 * len(without) > len(labelled):
        return text
    stops = ["\n"] * (len(lines) - 1) + [""]
    for at in without:
        behind = lines[at + 1 : at + 1 + MOST_LINES]
        ends = next((n for n, line in enumerate(behind) if TOTAL.search(line.rstrip())), None)
        if ends is None or not all(map(_goes_on, behind[: ends + 1])):
            continue
        for n in range(at, at + ends + 1):
            stops[n] = " "
    return "".join(line + stop for line, stop in zip(lines, stops, strict=True))


def _goes_on(line: str) -> bool:
    return bool(line.strip()) and not LABELLED.match(line) and len(line.split()) > 3


STAR = re.compile(r"\n[ ]*[*]")
AGAIN = re.compile(r"\b(?:rep|repeat|repeating)\b", re.IGNORECASE)


def _one_row(found: re.Match[str]) -> str:
    items = found["items"]
    if OWN_LABEL.match(items.lstrip("\n -*»>+")):
        return found.group()
    out, at = [found["label"]], 0
    starred = STAR.findall(items)
    for one in ITEM.finditer(items):
        before = items[at : one.start()]
        stopped = not before.strip() or before.rstrip()[-1:] in ".;:,!"
        gap = (" " if stopped else ",").ljust(len(one.group()))
        if len(starred) == 1 and "*" in one.group() and AGAIN.search(items, one.end()):
            # "* 3 dc in next st / repeat around": a star, and no list's mark.
            gap = gap[0] + one.group()[1:]
        out += [before, gap]
        at = one.end()
    return "".join([*out, items[at:]])


def _a_row_each(found: re.Match[str]) -> str:
    """A blank line in the place of each bullet, where most of the lines end with a total."""
    lines = found.group().splitlines(keepends=True)
    totals = sum(TOTAL.search(line.rstrip()) is not None for line in lines)
    labelled = sum(OWN_LABEL.match(re.sub(rf"^{_BULLET}", "", line)) is not None for line in lines)
    if 3 * totals < 2 * len(lines) or labelled:
        return found.group()
    return "".join(_parted(line) for line in lines)


def _parted(line: str) -> str:
    bullet = re.match(_BULLET, line)
    assert bullet is not None
    return "\n".ljust(bullet.end()) + line[bullet.end() :]
