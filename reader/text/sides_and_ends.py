"""Crochet text -> the same text, length kept, where an oval's round is told by its sides and its
ends, each once for both: "sc: 1 in each of 34 along either side, 2 in each of 6 around either end"
-> "(1 sc in each of 34, 2 sc in each of 6) twice".
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted
from reader.text.sought import Sought

_BOTH = (
    r"(?:each|either|both|the[ ]two)(?:[ ]of[ ]the(?:[ ]two)?)?[ ]"
    r"(?:(?:long|short|straight|curved|rounded)[ ])?"
)
_AT = r"(?:along|on|at|over|around|round|down|across|in|for|of)"
_SIDE, _END = (
    rf"[ ]{_AT}[ ]{_BOTH}(?:{word})\b" for word in ("sides?|straights?|edges?", "ends?|curves?")
)
_WORDS = r"[^.;:()\[\]*\n]{3,90}?"
_JOIN = r"[,;]?[ ](?:and[ ]|then[ ]|but[ ]){0,2}"
BOTH = Sought(
    ("side", "straight", "edge"),
    r"(?<=[\w.:;,)][ ])(?:(?P<stitch>[A-Za-z]{2,3})[:,][ ])?(?:"
    rf"(?P<a>(?:\d{{1,2}}|one|two|three|inc|[shd]{{1,2}}c)\b{_WORDS}){_SIDE}{_JOIN}(?P<b>{_WORDS}){_END}"
    rf"|(?P<c>(?:\d{{1,2}}|one|two|three|inc|[shd]{{1,2}}c)\b{_WORDS}){_END}{_JOIN}(?P<d>{_WORDS}){_SIDE})"
    r"(?=\s*(?:[.;(\[=—-]|$))",
    re.IGNORECASE | re.MULTILINE,
)
BARE = re.compile(r"^(\d{1,2}|one|two|three)(?=[ ](?:in|into|each)\b)", re.IGNORECASE)
"""A number whose stitch was told in front of all."""


def sides_and_ends(text: str) -> str:
    """The text so put; any text goes in."""
    return BOTH.sub(_twice, text)


def _twice(found: re.Match[str]) -> str:
    halves: list[str] = [found["a"] or found["c"], found["b"] or found["d"]]
    if found["stitch"]:
        # "sc: 1 in each": the stitch of all that follows, and none by itself.
        halves = [BARE.sub(rf"\1 {found['stitch']}", half) for half in halves]
    return fitted(f"({', '.join(halves)}) twice", found.group())
