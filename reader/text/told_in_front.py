"""Text -> the same text, length kept, without what a labelled row says in front of its list of what
the list does: "Row 3: dec 1 st at each end: k1, k2tog, k to last 3 sts, ssk, k1", "Rnd 4: inc 6
evenly: (sc, inc) x 6", "Row 5 (neck dec): sc to last 2 sts, sc2tog".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_N = rf"(?:\d+|{SPELLED})"
_LABEL = (
    r"^[^\n:]{0,24}(?:\b(?:row|rnd|round)\b[^\n:]{0,14}|\bR?\d{1,3}[^\n:\w]{0,2}):[ ]*"
    r"(?:(?:ch ?[1-3]|1 ch|turn)[.,]? (?:and )?){0,2}"
)
_WHERE = (
    r"(?: (?:evenly(?: spaced)?|across|around|round|at (?:each|both) ends?|each (?:end|side)"
    r"|both ends|at each side|in all|on this (?:row|round|rnd)|over the (?:row|round)))*"
)
_LEADS = (
    r"(?:(?: as follows| thus| like this| in this way| so)?\s?[:—]|(?: as follows| thus),?|,? -)"
)
_LOSES = r"(?:2 ?tog|ssk|skp|sk2?po?|psso|dec\b|together|ssp|cdd)"
_GAINS = r"(?:m1|kfb|pfb|yo\b|inc\b|2 (?:sc|dc|hdc|tr) in|make (?:1|one)|twice in)"
IN_FRONT = Sought(
    ("dec", "inc"),
    rf"(?P<label>{_LABEL})(?P<told>(?:dec|inc)(?:rease)?\.? (?:by )?{_N}"
    rf"(?: (?:sts?|stitches|[shd]{{1,2}}c|times))?{_WHERE},?{_LEADS}[ ]*)"
    rf"(?=[*(\[\w][^\n]{{0,120}}?(?:{_LOSES}|{_GAINS}))",
    re.IGNORECASE | re.MULTILINE,
)


_NAMING = (
    r"(?:(?:rs|ws|right side|wrong side|neck|armhole|sleeve|shoulder|raglan|side|edge|first|second"
    r"|crown|toe|thumb|shape|shaping|at|the|end|beg|beginning|both|each|one|1|of|row|round|rnd|st"
    r"|sts|ends?|,|:|-)[ ]?)*"
)
IN_BRACKETS = Sought(
    ("dec", "inc"),
    r"(?P<label>(?:^|(?<=\. ))[^\w\n]*(?:(?:row|rnd|round|r)[ .]{0,2}\d{1,3}|\d{1,3}[.):]"
    r"|\d{1,3}(?:st|nd|rd|th) (?:row|rnd|round)|(?:next|following) (?:row|rnd|round))"
    r"[ ]?[-:.]?[ ]*)"
    rf"(?P<told>[(\[]{_NAMING}(?:dec|inc)(?:rease|reasing)?s?\.?[ ]?{_NAMING}[)\]])"
    rf"(?=[ ]?[-:.]?[ ]*[^\n]{{0,160}}?(?:{_LOSES}|{_GAINS}))",
    re.IGNORECASE | re.MULTILINE,
)
"""The same in a bracket behind the label, whatever mark is where."""


def without_told_in_front(text: str) -> str:
    """The text without it; any text goes in."""
    text = IN_BRACKETS.sub(lambda found: found["label"] + " " * len(found["told"]), text)
    return IN_FRONT.sub(lambda found: found["label"] + " " * len(found["told"]), text)
