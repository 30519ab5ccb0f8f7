"""Numbers that hold for some sizes only, put as a list with one for each: "inc 2 sts for large size
only" of three sizes reads as "inc 0 (0, 2) sts". Length kept.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.for_sizes import BESIDES, named_sizes
from reader.text.sought import Sought

FOR_SOME = Sought(
    ("inc", "dec", "cast", "bind"),
    r"\b(?P<verb>(?:inc|dec)(?:reas(?:e|ing))?\b\.?|(?:cast|casting|bind|binding) o(?:n|ff))"
    r"(?P<gap>\s+)(?P<number>\d{1,2})(?P<unit>(?:\s+(?:sts?|stitch(?:es)?)\b)?)"
    r"(?P<place>[^.;:()]{0,40}?)"
    r"(?P<phrase>,?\s+(?:for|on|in)\s+(?:the\s+)?(?P<some>(?:(?!\b(?:for|rows?|rnds?"
    r"|rounds?|each|every|end|ends)\b)[\w', &/-]){1,40}?)\s+only\b"
    r"|,?\s*\((?:(?:for|on|in)\s+)?(?:the\s+)?(?P<bracketed>[\w', &/-]{1,30}?)\s+only\))",
    re.IGNORECASE,
)


def told_for_some(text: str, names: Sequence[str]) -> str:
    """The text with such numbers as lists, where a list has room; names: of the sizes."""
    if len(names) < 2:
        return text
    return FOR_SOME.sub(lambda found: _listed(found, names), text)


def _listed(found: re.Match[str], names: Sequence[str]) -> str:
    which = named_sizes(BESIDES.sub(" ", found["some"] or found["bracketed"]), names)
    if not which:
        return found.group()
    each = [found["number"] if at in which else "0" for at in range(len(names))]
    numbers = f"{each[0]} ({', '.join(each[1:])})"
    told = f"{found['verb']} {numbers}{found['unit']}{found['place']}"
    return told.ljust(len(found.group())) if len(told) <= len(found.group()) else found.group()
