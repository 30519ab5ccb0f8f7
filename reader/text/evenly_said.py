"""Knitting text -> the same text, length kept, with changes spread over a row said as most say it:
"inc evenly 6 sts", "dec a total of 6 sts evenly", "inc 6 times evenly", "dec 6 sts at regular
intervals", "inc 6 sts across row" -> "inc 6 sts evenly".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_WAY = r"\b(?:inc|dec)(?:reas(?:e|ing)|'ing)?\b\.?"
_N = rf"(?:\d+(?:\s?[(\[][\d\s,;:/-]+[)\]]|(?:\s?[,;/-]\s?\d+)+)?|{SPELLED})"
_STS = r"(?:sts?|stitch(?:es)?|times)\b"
LED = Sought(
    ("evenly",),
    rf"(?P<way>{_WAY})\s+evenly(?:\s+(?:spaced|across|over|around)(?:\s+(?:the\s+)?(?:row|rnd|round)"
    rf")?)?\s+(?P<n>{_N})\s+(?P<sts>{_STS})",
    re.IGNORECASE,
)
IN_ALL = Sought(
    ("total", "by"),
    rf"(?P<way>{_WAY})(?P<by>\s+(?:by\s+)?(?:a\s+total\s+of|by)\s+)(?={_N}\s+{_STS}[^.;,]{{0,12}}"
    r"\b(?:even|across|spaced|around|at\s+(?:regular|equal)))",
    re.IGNORECASE,
)
TIMES = Sought(
    ("times",),
    rf"(?P<way>{_WAY}\s+{_N}\s+)times(?=\s+(?:evenly|spaced|across|around|at\s+(?:even|regular"
    r"|equal)))",
    re.IGNORECASE,
)
SPREAD = Sought(
    ("intervals", "distances", "randomly", "across", "around"),
    rf"(?P<way>{_WAY}\s+{_N}\s+(?:sts|stitches)\s+)(?P<how>at\s+(?:even|regular|equal)\s+(?:intervals"
    r"|distances)(?:\s+apart)?|randomly|(?:across|around)(?:\s+(?:the\s+|this\s+)?(?:row|rnd|round"
    r"|needle))?)(?=\s*(?:[.,;()\[\]=—-]|$))",
    re.IGNORECASE | re.MULTILINE,
)


APART = Sought(
    ("interval", "distance", "spac"),
    rf"(?P<way>{_WAY}\s+{_N}(?:\s+(?:sts|stitches|[sdh]{{1,2}} ?c|h?tr|times"
    r"|(?:half\s)?(?:single|double|treble)(?:\scrochets?)?))?\s+)"
    r"(?P<how>at\s+(?:even|regular|equal)\s+(?:intervals|distances)(?:\s+(?:apart|around|across))*"
    r"|(?:equally|regularly)\s+spaced)",
    re.IGNORECASE,
)
"""The same of any stitch, where nothing but the distance tells it."""
OTHERWISE = Sought(
    ("evenly",),
    r"\b(?P<way>narrow(?:ing|ed)?|reduc(?:e|ing)|los(?:e|ing)|drop(?:ping)?|remov(?:e|ing)"
    r"|tak(?:e|ing) (?:away|off)|widen(?:ing|ed)?|gain(?:ing)?|rais(?:e|ing)|mak(?:e|ing) extra)"
    r"(?=(?:\s+(?:by\s+)?"
    rf"{_N}(?:\s+(?:sts?|stitch(?:es)?|times))?)?\s+evenly\b)",
    re.IGNORECASE,
)
"""Other words for the change that is spread."""
WIDENS = ("wid", "gai", "rai", "mak")
CLIPPED = Sought(("'ing",), r"\b(?P<way>inc|dec)'ing\b", re.IGNORECASE)
TO_GOAL = Sought(
    ("evenly",),
    rf"(?P<way>{_WAY})(?P<how>\s+evenly(?:\s+(?:spaced|across|over|around)(?:\s+(?:the\s+)?(?:row|rnd"
    rf"|round))?)*)(?=\s+to\s+(?:make\s+|have\s+)?{_N}\s+{_STS})",
    re.IGNORECASE,
)
"""How many there are then, and not how many are made."""
ONE_ROW = Sought(
    ("every",),
    r"(?P<verb>\b(?:knit|purl|k|p)\b)(?P<row>\s+(?:1|one)\s+(?:row|round|rnd))(?P<mark>,?)(?="
    rf"\s+{_WAY}\s+(?:1\s+|one\s+)?(?:st\s+)?(?:in\s+)?every\s+\w+\s+st)",
    re.IGNORECASE,
)
"""One row with a change in every so manieth stitch."""


def spread_apart(text: str) -> str:
    """The text with changes at equal distances said to be made evenly."""
    return APART.sub(lambda m: m["way"] + "evenly".ljust(len(m["how"])), text)


def evenly_said(text: str) -> str:
    """The text so put; any text goes in."""
    text = OTHERWISE.sub(_as_usual, text)
    text = CLIPPED.sub(lambda m: m["way"].ljust(len(m.group())), text)
    text = TO_GOAL.sub(lambda m: m["way"].ljust(len(m.group())), text)
    text = ONE_ROW.sub(lambda m: f"{m['verb']},".ljust(len(m.group())), text)
    text = LED.sub(_behind, text)
    text = IN_ALL.sub(lambda m: m["way"].ljust(len(m.group())), text)
    text = TIMES.sub(lambda m: m["way"] + "sts  ", text)
    return SPREAD.sub(lambda m: m["way"] + "evenly".ljust(len(m["how"])), text)


def _behind(found: re.Match[str]) -> str:
    sts = "sts" if found["sts"].lower() == "times" else found["sts"]
    return f"{found['way']} {found['n']} {sts} evenly".ljust(len(found.group()))


def _as_usual(found: re.Match[str]) -> str:
    way = "inc" if found["way"].lower().startswith(WIDENS) else "dec"
    return way.ljust(len(found.group()))
