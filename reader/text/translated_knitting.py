"""Clean text of a knitting pattern that came from another language word for word, "put up 44
stitches", "2 right, 2 left", "2 right together", "1 envelope" -> as English has it; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_N = rf"(?:\d+|(?:{SPELLED})\b)"
_STS = r"(?:stitches|stitch|sts?|mesh(?:es)?|loops?)"
FOREIGN = Sought(
    ("right", "left", "put up", "set up", "strike", "mount", "string", "throw on", "beat on"),
    rf"\b{_N} (?:{_STS} )?right\b,? (?:and )?{_N} (?:{_STS} )?left\b"
    rf"|\b{_N} (?:{_STS} )?left\b,? (?:and )?{_N} (?:{_STS} )?right\b"
    rf"|\b(?:(?:put|set|string) up|(?:strike|throw|beat) on|mount) {_N} {_STS}"
    rf"|\b{_N} (?:{_STS} )?(?:right|left) together\b"
    r"|\b(?:knit|work) (?:all )?(?:rows?|rounds?|rnds?|\d+ \w+|the \w+ (?:row|round))? ?left\b",
    re.IGNORECASE,
)
"""Words that no English pattern has."""
WAYS = (
    (rf"(?:(?:put|set|string) up|(?:strike|throw|beat) on|mount)(?= {_N} {_STS})", "co"),
    (rf"(?:(?:knit|work) )?(?P<n>{_N}) (?:{_STS} )?(?:right|plain) together", "k{n}tog"),
    (rf"(?:(?:knit|work) )?(?P<n>{_N}) (?:{_STS} )?left together", "p{n}tog"),
    (rf"(?:(?:knit|work) )?(?P<n>{_N}) (?:{_STS} )?right"
     r"(?! (?:side|needle|front|edge|marker|of\b))", "k{n}"),
    (rf"(?:(?:knit|work) )?(?P<n>{_N}) (?:{_STS} )?left"
     r"(?! (?:side|needle|front|edge|over|on\b|for\b))", "p{n}"),
    (r"(?:(?:1|one) )?(?:envelope|turn-?over|yarn-?throw|throw-?over|wrap-?over|cover)", "yo"),
    (r"(?:knit|work) (?=all (?:\w+ )?left\b)", "purl "),
    (r"(?:chain|knit|bind) (?:off|away) (?:all )?(?:the )?(?=(?:remaining )?(?:stitches|meshes))",
     "bind off "),
)  # fmt: skip
EACH_WAY = tuple((re.compile(rf"\b{way}\b", re.IGNORECASE), short) for way, short in WAYS)
ROWS_SO = re.compile(
    rf"\b(?P<verb>knit|work) (?P<rows>(?:{_N} |the (?:next |last |first )?)?(?:rows?|rounds?"
    r"|rnds?))"
    r" (?P<how>right|left|smooth(?: right)?)\b",
    re.IGNORECASE,
)
""" "Knit 4 rounds right" is knitted, "left" is purled."""
IN_RIB = re.compile(
    rf"\b(?P<verb>knit|work) (?P<rows>{_N} (?:rows|rounds|rnds)) (?P<how>(?:in )?(?:rib\w*|cuff"
    rf"|waistband)(?: pattern)?)[ ,:]+(?P<rib>{_N} right,? {_N} left)",
    re.IGNORECASE,
)


def in_english_knitting(text: str) -> str:
    """The text so put, where it has words that tell that it was translated."""
    if not FOREIGN.search(text):
        return text
    text = IN_RIB.sub(_ribbed, text)
    text = ROWS_SO.sub(_rows, text)
    for way, short in EACH_WAY:
        text = way.sub(lambda found, short=short: _short(found, short), text)  # type: ignore[misc]
    return text


def _short(found: re.Match[str], short: str) -> str:
    said = short.format(**found.groupdict()) if "{" in short else short
    return said.ljust(len(found.group())) if len(said) <= len(found.group()) else found.group()


def _rows(found: re.Match[str]) -> str:
    verb = "purl" if found["how"].lower() == "left" else found["verb"]
    return f"{verb} {found['rows']}".ljust(len(found.group()))


def _ribbed(found: re.Match[str]) -> str:
    """ "Knit 5 rounds ribbing 2 right, 2 left": rounds in rib."""
    return f"{found['verb']} {found['rows']} in rib".ljust(len(found.group()))
