"""The text, length kept, with labels that a numbered list tells one after the other as one: "7) 8)
9) sc all round" as "7-9)", "6) to 9)" as "6-9)"; and "7-9 = 4 to 6" as "7-9 as 4-6".
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted

LISTED = re.compile(
    r"^(?P<lead>[^\w\n]*)(?P<first>\d{1,3})(?P<mark>[).])(?P<more>(?:[ ,]+(?:(?:to|and"
    r"|&)[ ])?\d{1,3}(?P=mark))+)"
    r"(?=[ :]\s*[A-Za-z(\[*])",
    re.MULTILINE,
)
AS_OTHERS = re.compile(
    r"^(?P<lead>[^\w\n]*)(?P<a>\d{1,3}) ?(?:-|—|to) ?(?P<b>\d{1,3}) = (?P<c>\d{1,3}) to "
    r"(?P<d>\d{1,3})\b",
    re.MULTILINE,
)


def label_lists(text: str) -> str:
    """The text so put; any text goes in."""
    return AS_OTHERS.sub(_as_others, LISTED.sub(_together, text))


def _together(found: re.Match[str]) -> str:
    first = int(found["first"])
    more = [int(one) for one in re.findall(r"\d+", found["more"])]
    far = " to " in found["more"] and len(more) == 1 and more[0] > first
    if not far and more != list(range(first + 1, first + len(more) + 1)):
        return found.group()
    return fitted(f"{found['lead']}{first}-{more[-1]}{found['mark']}", found.group())


def _as_others(found: re.Match[str]) -> str:
    a, b, c, d = (int(found[one]) for one in "abcd")
    if not (c < d < a < b) or (b - a + 1) % (d - c + 1):
        return found.group()
    return fitted(f"{found['lead']}{a}-{b} as {c}-{d}", found.group())
