"""A pattern's text -> the names of its sizes."""

from __future__ import annotations

import re

SIZED = re.compile(
    r"(?<![x×*\d])(?<![x×*] )\d+\s*[\(\[]\s*(\d+(?:\s*[,:;]\s*\d+)*)\s*[\)\]]", re.IGNORECASE
)
"""A number with those of other sizes behind it; "x6 (12)" is a repeat with its total."""


def sizes_named(text: str) -> tuple[str, ...]:
    """The names of the sizes, ("one size",) where the text names none."""
    found = re.search(
        r"(?:^\W*|[.;] +)(?:sizes?|to fit)[^:.\n]{0,20}:?\s*(?P<list>[^\n]{3,90})$",
        text,
        re.IGNORECASE | re.MULTILINE,
    )
    if found:
        said = re.sub(r"[\[\](){}]", ",", found.group("list"))
        names = [
            name.strip(" .")
            for name in re.split(r"[,;/:]|\bto\b|\band\b", said)
            if name.strip(" .")
        ]
        names = [name for name in names if len(name) < 20]
        if 1 < len(names) <= 12 and re.search(r"[\[(,]", found.group("list")):
            lists = re.findall(r"\d+\s*[\(\[]([\d\s,:;-]+)[\)\]]", text)
            fits = sum(len(re.findall(r"\d+|-", one)) == len(names) - 1 for one in lists)
            if fits >= 1:
                return tuple(names)
    lists = [len(re.findall(r"\d+", one)) for one in SIZED.findall(text)]
    if len(lists) >= 3:
        common = max(set(lists), key=lists.count)
        if lists.count(common) >= 3 and (common > 1 or lists.count(1) >= 3):
            return tuple(f"size {n + 1}" for n in range(common + 1))
    return ("one size",)
