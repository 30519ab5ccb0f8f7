"""Clean text -> the same text, length kept, with the name of a piece that stands as a sentence
amid others, "... Bind off. Front. Work as for back", on a line of its own, as a heading is.
"""

from __future__ import annotations

import re

_SIDE = r"(?:(?:left|right|upper|lower|front|back|first|second|both|other)\s+)?"
_PIECE = (
    r"(?:back|fronts?|sleeves?|collar|cuffs?|neckband|neck\s?band|neck(?:\s+(?:border|edging))?|belt|pockets?|borders?"
    r"|front\s+bands?|button\s?bands?|yoke|hood|thumbs?|heel(?:\s+flap)?|instep|foot|toe|legs?"
    r"|hand|crown|brim|straps?|bib|bodice|skirt|body|gusset|ear\s?flaps?|hem|ribbing|cap|bonnet"
    r"|mittens?|armholes?|armhole\s+bands?|shoulders?|finger|edging|facing|lapels?)"
)
PIECE = re.compile(
    r"(?:(?P<gap>(?<=[.!)])\s)|(?<![^\n])(?P<indent>[ \t]*))"
    rf"(?P<name>(?=[A-Z])(?i:{_SIDE}{_PIECE}))"
    r"(?P<copies>\s*\((?:make|work|knit|both)[^()\n]{0,16}\))?"
    r"(?P<stop>\s*\.{3}\s|\.\s)(?=\s*(?:[A-Z*]|\d))",
)


def on_lines(text: str) -> str:
    """The text with such names parted from what stands around them; any text goes in."""
    return PIECE.sub(_parted, text)


def _parted(found: re.Match[str]) -> str:
    before = "\n" if found["gap"] else found["indent"]
    told = before + found["name"] + (found["copies"] or "")
    return told.ljust(len(found.group()) - 1) + "\n"
