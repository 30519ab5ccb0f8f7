"""The text, length kept, with what single letters mean told as a key is: "X sc • V two sc in one •
MR magic ring" as "X=sc , V=two sc in one , MR=magic ring", lest it be a row.
"""

from __future__ import annotations

import re

BETWEEN = re.compile(r"[•·|/;,★◦‣]|\)\s*\(|[()](?=\s*$)|^\s*\(|(?<=\w)\s{2,}(?=\w)")
"""What stands between the meanings of one line."""
_STITCH = (
    r"(?:(?:\d|one|two|three|an?|single|double|half|treble|invisible|slip|sl|magic|front|back"
    r"|inv)[ -]?"
    r"(?:st\b|stitch\b)?[ -]?)*(?:sc|h?dc|h?tr|ss|inc|dec|st|chain|ch|ring|loop|crochet|increase"
    r"|decrease"
    r"|invdec|treble|stitch|puff|bobble|cluster)\w*\b"
)
MEANS = re.compile(
    rf"(?P<lead>\s*)(?P<name>[A-Z]{{1,3}})(?P<is>\s?(?:[:=—-]\s?|→\s?|is\s"
    rf"|means\s)?)(?={_STITCH})(?P<meaning>[^=:\n]*)$",
    re.IGNORECASE,
)
CAPITALS = re.compile(r"[A-Z]{1,3}$")
OPENS = re.compile(r"[\s(•·|★◦‣*-]*(?:[Kk]ey\b|[A-Z]{1,3}\s?(?:[:=→—-]|is\b|means\b|\s))")
LEAST = 3
WORKS = re.compile(r"\b\d+ ?[xX]\b|\b[Rr](?:n?d|ow)?s? ?\d|\b(?:in|into) (?:next|each|every)\b")


def keys_told(text: str) -> str:
    """The text so put; any text goes in."""
    lines = text.split("\n")
    meant = [_meanings(line) for line in lines]
    for at, told in enumerate(meant):
        if told is not None and (len(told) >= LEAST or _among_such(meant, at)):
            lines[at] = _as_key(lines[at], told)
    return "\n".join(lines)


def _among_such(meant: list[list[re.Match[str]] | None], at: int) -> bool:
    """Whether a line of one meaning stands in a list of such lines."""
    first = last = at
    while first and meant[first - 1]:
        first -= 1
    while last + 1 < len(meant) and meant[last + 1]:
        last += 1
    return last - first + 1 >= LEAST


def _meanings(line: str) -> list[re.Match[str]] | None:
    """What a line says that letters mean; None where it is no key."""
    if not OPENS.match(line) or WORKS.search(line):
        return None
    found, others, start = [], 0, 0
    ends = [one.span() for one in BETWEEN.finditer(line)]
    for end, after in [*ends, (len(line), len(line))]:
        one = MEANS.match(line, start, end) if line[start:end].strip() else None
        if one is not None and CAPITALS.match(one["name"]):
            found.append(one)
        else:
            others += bool(line[start:end].strip())
        start = after
    return found if found and others <= len(found) - 1 else None


def _as_key(line: str, told: list[re.Match[str]]) -> str:
    out = list(line)
    for one in told:
        begin, end = one.span("is")
        if "=" in line[begin:end] or begin == end:
            continue
        out[begin:end] = "=".ljust(end - begin)
    for mark in BETWEEN.finditer(line):
        at = mark.start()
        out[at : mark.end()] = ("," if at and line[at] != "(" else " ").ljust(mark.end() - at)
    return "".join(out)
