"""Lines that tell what an abbreviation means: "inl = lift the bar and knit it", "SK2P - Slip 1, k
2 together, pass slip stitch over".
"""

from __future__ import annotations

import re

MEANT = re.compile(
    r"^[ \t#*-]*(?P<name>[A-Za-z][A-Za-z0-9/&+]{1,9})(?:[ \t]*\([^()\n]{1,30}\))?[ \t]*"
    r"(?P<mark>=|:|—|-(?=\s))[ \t]*(?P<meaning>[A-Za-z0-9(\[*][^\n]{3,240})$",
    re.MULTILINE,
)
LABEL = re.compile(
    r"(?:r\d|rn?ds?\d*|rows?|rounds?|needle|note|size|gauge|to|with|next|co|bo|rep|ws|rs|mc|cc)"
    r"|[kpr]|[kpn]\d+|co\d+|bo\d+|r\d+",
    re.IGNORECASE,
)


def abbreviates(found: re.Match[str]) -> bool:
    """Whether the name is short for something, and no heading, label or word of its own."""
    name = found["name"]
    if LABEL.fullmatch(name):
        return False
    no_word = re.search(r"\d", name) or not re.search(r"[aeiouy]", name.lower())
    return bool(no_word) or found["mark"] == "="


def tells_meaning(line: str) -> bool:
    """Whether a line tells what an abbreviation means."""
    found = MEANT.fullmatch(line.strip().strip("()[]"))
    return found is not None and abbreviates(found)
