"""Names of stitches that are shortened by half, "sl stitch", "V-stitch", "cluster stitch", or run
together, "slipstitch", as the short names that other texts have; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

SLIP = Sought(
    ("stitch", "stich"),
    r"\b(?P<name>sl|st)(?P<gap>\.? |\.?-)stit?ch(?P<many>es)?\b"
    r"|\b(?P<one>slip)(?:[ -]?stich|-?stitch)(?:es)?\b",
    re.IGNORECASE,
)
"""A slip stitch however it is spelled, and stocking stitch."""
_NAMES = r"v|cluster|cl|puff|popcorn|pc|bobble|picot"
NAMED = Sought(
    ("stitch", "stich"),
    rf"\b(?P<name>{_NAMES})(?P<gap>[ -])stit?ch(?P<many>es)?\b"
    r"(?=\s*[,;.)\]=]|\s+(?:in|into|to|across|on|over|around|at|of|from|between|and|next|each|every"
    r"|shells?|last|first)\b)",
    re.IGNORECASE,
)
"""Where it is worked, or worked into; a title has the name as the maker has it."""


def wholly_short(text: str) -> str:
    """The text with such names in their short form; any text goes in."""
    return NAMED.sub(_short, SLIP.sub(_slip, text))


def _slip(found: re.Match[str]) -> str:
    if found["one"]:
        return f"{found['one'][:2]} st".ljust(len(found.group()))
    return _short(found)


def _short(found: re.Match[str]) -> str:
    told = f"{found['name']}{found['gap'].lstrip('.')}st{'s' if found['many'] else ''}"
    return told.ljust(len(found.group()))
