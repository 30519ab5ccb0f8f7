"""Two layers knitted together to one, as a hem or a double brim is: "knitting together one stitch
from the front needle and one from the back needle" -> a row whose count stays.
"""

from __future__ import annotations

import re

from reader.pattern.rule import Rule

_ONE = r"(?:1|one|a)(?: live)?(?: st| stitch)?"
_FROM = r"(?:from|of|on|off)"
_WHERE = (
    r"(?:the |each |both |every )?(?:[\w-]+ ){0,3}?"
    r"(?:needles?|edges?|cast[- ]on|layers?|hem|pins?|beginning|end)"
)
LAYERS = re.compile(
    rf"\b{_ONE} {_FROM} {_WHERE}(?: {_ONE}| edge)? ?(?:and|with|tog\w*)(?: {_ONE})?(?: {_FROM})?"
    rf" ?{_WHERE}|\b{_ONE} {_FROM} each (?:needle|edge|layer|pin)\b"
    r"|\b(?:edges|layers|sides of (?:the )?(?:hem|brim|band|work))\s+together\b",
    re.IGNORECASE,
)
TOGETHER = re.compile(
    r"\b(?:k|kn?it\w*|purl\w*|p|join\w*)\b.*\btog(?:ether)?\b|\b[kp]2tog\b", re.IGNORECASE
)
OFF = re.compile(r"\b(?:bind|bound|cast|bo|graft|sew|seam)\b", re.IGNORECASE)
STOP = re.compile(r"[.;](?=\s|$)")
SENTENCE = re.compile(r"(?:(?<=[.;:])\s+|^)(?=\S)")


def layers_joined(words: str) -> Rule | None:
    """The rule of the first sentence that joins two layers stitch by stitch; None where none does.
    """
    found = LAYERS.search(words)
    if found is None:
        return None
    ends = (one.end() for one in SENTENCE.finditer(words, 0, found.start() + 1))
    start = max(ends, default=0)
    stop = STOP.search(words, found.end())
    end = stop.start() if stop else len(words)
    told = words[start:end]
    if not TOGETHER.search(told) or OFF.search(told):
        return None
    return Rule("even", start=start, end=end, rest=told)
