"""Knitting lists with how often before them, "alternately k 1, over", "6 times: over, k 1", or
inside their bracket, "(over, and knit 1 3 times)", put as lists between stars and in brackets;
length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_BEGINS = r"(?:(?<=[:.;—-])|(?<=[:.;—-]\s))"
_DOES = (
    r"(?:k(?:nit)?|p(?:url|earl)?|over|yo|make|throw|bring|put|pass|wool|slip|sl|narrow|n|o|take|seam)"
)
_LIST = rf"(?P<list>{_DOES}\b[^.;:*()\[\]]*?,[^.;:*()\[\]]*?)(?P<end>\s*(?:[.;]|$))"
ALTERNATELY = Sought(
    ("alternately",),
    rf"{_BEGINS}(?P<lead>(?:(?:knit|work)\s+)?alternately,?\s+){_LIST}",
    re.IGNORECASE | re.MULTILINE,
)
SO_OFTEN = Sought(
    ("times",),
    rf"{_BEGINS}(?P<times>(?:\d{{1,3}}|{SPELLED})\s+times)(?P<mark>(?:\s+alternately)?\s*:\s+"
    rf"|\s+alternately,?\s+){_LIST}",
    re.IGNORECASE | re.MULTILINE,
)

INSIDE = Sought(
    ("times)", "twice)"),
    r"\((?P<list>[^()*]{4,160},\s+and\s+[^(),;]{2,60}?)(?P<gap>\s+)"
    rf"(?P<times>(?:\d{{1,3}}|{SPELLED})\s+times|twice)\)(?!\s*(?:\d|twice|{SPELLED}\s+times))",
    re.IGNORECASE,
)
""" "(make 1, slip 1, and knit 1 3 times)": the bracket is worked so often, not its last stitch."""


def with_stars(text: str) -> str:
    """The text with them put so; any text goes in."""
    text = INSIDE.sub(lambda found: f"({found['list']}){found['gap']}{found['times']}", text)
    text = SO_OFTEN.sub(_bracketed, text)
    return ALTERNATELY.sub(_starred, text)


def _bracketed(found: re.Match[str]) -> str:
    told = f"({found['list']}){found['times']}"
    return told.ljust(len(found.group()) - len(found["end"])) + found["end"]


def _starred(found: re.Match[str]) -> str:
    told = f"* {found['list']} *"
    return told.ljust(len(found.group()) - len(found["end"])) + found["end"]
