"""Lists of sizes in unusual brackets, put into usual ones, length kept: "60 <64, 68>" reads as
"60 (64, 68)", "60 (64: 68) [72 (76: 80)]" as "60 (64: 68) [72 ,76: 80 ]".
"""

from __future__ import annotations

import re

_LIST = r"\s*\d+(?:\s*[,;:/]\s*(?:\d+|-))*\s*"
ANGLED = re.compile(rf"(?<=\d)(?P<gap>\s?)[<{{](?P<list>{_LIST})[>}}](?!\s*\()")
INNER = re.compile(rf"(?<=[\)\]])(?P<gap>\s*)\[(?P<first>\s*\d+\s*)\((?P<list>{_LIST})\)\s*\]")


SEMICOLONS = re.compile(r"\d+(?:;\s?\d+)+(?=\s*(?:sts?|stitches|rows|rounds|times)\b)")


BRACES = re.compile(r"\{(?=\s*\d)(?P<body>[^{}\n]{1,60})\}")
"""A total between braces: "{10 (11, 12) dc}"."""
MISSING = re.compile(
    r"(?:(?<=[.;,\[(]\s)|(?<=[\[(]))[-—](?=\s*\((?:\s*(?:-|—|\d+)\s*,)*\s*(?:-|—|\d+)\s*\)"
    r"\s*(?:sts?|stitches|sc|dc|hdc|tr)\b)"
)
"""A dash for the first size in a list of totals: it does not work this row."""
DASHED = re.compile(r"(?<=[(,])\s*(?P<dash>[-—])\s*(?=[,)])")


def with_usual_brackets(text: str) -> str:
    """The text with such lists put right; any text goes in, its length stays."""
    text = BRACES.sub(lambda m: f"[{m['body']}]", text)
    text = MISSING.sub("0", text)
    text = DASHED.sub(lambda m: m.group().replace(m["dash"], "0"), text)
    text = SEMICOLONS.sub(lambda m: m.group().replace(";", ","), text)
    text = ANGLED.sub(lambda m: f"{m['gap']}({m['list']})", text)
    return INNER.sub(_flat, text)


def _flat(found: re.Match[str]) -> str:
    flat = f"{found['gap']}[{found['first']},{found['list']}"
    return flat + " " * (len(found.group()) - len(flat) - 1) + "]"
