"""Clean text -> the same text, length kept, with the crosses that old printers set for stars as
stars: "10th.—+ 1 tc., 3 ch., miss 3 +; repeat" -> "10th.—* 1 tc., 3 ch., miss 3 *; repeat".
"""

from __future__ import annotations

import re

PARAGRAPH = re.compile(r"[^\n]+(?:\n(?!\s*\n)[^\n]+)*")
CLOSING = re.compile(r"[xX+†](?<=[\s,.;][xX+†])(?=[;,.]?\s+(?i:rep(?:eat)?)\b)")
"""A cross before "repeat" can be nothing else."""
OPENING = re.compile(r"(?:(?<=—)|(?<=—\s)|(?<=--)|(?<=[.:\]]\s)|^)[x+†](?=\s+(?:\d+\s+)?[A-Za-z])")

PAIRED = re.compile(
    r"(?<![^\s,.;:(—])(?P<sign>[xX](?=,?\s)|[✕×+†‡#*])"
    r"(?P<body>(?:(?!(?P=sign)[\s,])[^\n]|\n(?!\s*\n)){4,160}?[\s,.;])"
    r"(?P=sign)(?P<stop>,?)(?=\s+(?:twice|thrice|(?:\d+|two|three|four|five|six|seven|eight|nine|ten"
    r"|twelve)\s+times|to\s+(?:the\s+)?end|all\s+(?:a?round|along|across|the\s+way))\b)"
)
"""A sign before and behind what is worked so many times: "† 2 ch., miss 2, 1 dc. † twice"."""
_SIGN = r"(?:[xX](?=,?\s)|[✕×+†‡#])"
UNLIKE = re.compile(
    rf"(?<![^\s,.;:(—]){_SIGN}"
    rf"(?P<body>(?:(?!(?<!\w){_SIGN}[\s,])[^\n*]|\n(?!\s*\n)){{4,160}}?[\s,.;])"
    rf"(?<!\w){_SIGN}(?P<stop>,?)(?=\s+(?:twice|thrice|\d+\s+times)\b)"
)
"""The same with another sign behind than before, as a press slips: "+ m 1, k 2, x twice"."""
ALONE = re.compile(r"(?<=[,;.] )[x×](?=\s\d+\s(?:ch\b|[dsth]\.?\s?c\b|tr\b|chain))")
"""One that is never closed, "x 2 ch, miss 2, 1 dc to the end"."""
USUAL = 2
"""Pairs by which a text shows that its crosses are stars."""
OWN_SIGNS = ("+", "#", "@")


def starred(text: str) -> str:
    """The text with such crosses as stars; a cross that counts times or adds is left. So is any
    other sign of the writer's own, unless words go back to it.
    """
    if TIMES.search(text):
        text, pairs = PAIRED.subn(_paired, text)
        text = UNLIKE.sub(_paired, text)
        text = PARAGRAPH.sub(_never_closed, text) if pairs >= USUAL else text
    if CLOSING.search(text):
        text = PARAGRAPH.sub(lambda found: _starred(found.group()), text)
    for sign in OWN_SIGNS:
        back = rf"\brep(?:eat)?\.? (?:from )?{re.escape(sign)}"
        if sign in text and re.search(back, text, re.IGNORECASE):
            text = re.sub(rf"(?<=\s){re.escape(sign)}(?=\s)", "*", text)
    return text


TIMES = re.compile(r"[xX✕×+†‡#*],?\s+(?:\d|[a-z]+ times|twice|thrice|to\s|all\s)")


def _paired(found: re.Match[str]) -> str:
    return f"*{found['body']}*{' ' * len(found['stop'])}"


def _never_closed(found: re.Match[str]) -> str:
    words = found.group()
    only = len(re.findall(r"(?<!\S)[x×*](?!\S)", words)) == 1
    return ALONE.sub("*", words) if only else words


def _starred(words: str) -> str:
    if not CLOSING.search(words):
        return words
    return OPENING.sub("*", CLOSING.sub("*", words))
