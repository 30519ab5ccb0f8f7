"""Crochet text -> the same text, length kept, with two stitches worked together in words of their
own as the decrease they are: "crochet two together", "sc every 2 sts tog", "two and two together",
"sc the next 2 sts tog".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_TWO = r"(?:two|2)"
_STS = r"(?:sts?|stitches|loops|[sd] ?c|h ?d ?c|h?tr|singles|doubles|trebles)"
_TOG = r"(?:tog|together|as one)\b"
CROCHET_TWO = Sought(
    ("crochet",),
    rf"(?<!single )(?<!double )(?<!treble )(?<!triple )(?<!half )(?<!slip )\bcrochet {_TWO}"
    rf"(?: {_STS})? {_TOG}",
    re.IGNORECASE,
)
EVERY_TWO = Sought(
    ("every", "and two", "and 2", "by two", "by 2", "always"),
    r"(?<!knit )(?<!purl )(?<!\bk )(?<!\bp )(?<!slip )"
    r"\b(?:(?:(?:single|double|half double|treble) crochet|[sd]c|hdc|h?tr|work|crochet|take|draw"
    rf"|close|put|make) )?(?:every {_TWO} {_STS}|{_TWO} (?:and|by) {_TWO}(?: {_STS})?"
    rf"|always {_TWO}(?: {_STS})?)(?: (?:are|is))?(?: (?:worked|taken|crocheted|drawn|closed))?"
    rf" {_TOG}(?: (?:all )?(?:the way )?(?:a?round|across|to (?:the )?end))?"
    r"(?: of (?:the )?(?:round|row))?",
    re.IGNORECASE,
)
NEXT_TOGETHER = Sought(
    ("tog",),
    r"\b(?P<name>[shd]{1,2}c|h?tr|single crochet|double crochet|half double crochet)"
    r"(?: (?:in |into |over )?the (?:next|following)| (?:in |over )(?:next|following))?"
    r" (?P<n>2|3|4|two|three|four) (?:sts|stitches|sc|dc|hdc) (?:tog(?:ether)?)\b",
    re.IGNORECASE,
)
SHORT = {"single crochet": "sc", "double crochet": "dc", "half double crochet": "hdc"}
NUMBERS = {"two": "2", "three": "3", "four": "4"}
ALL_ROUND = Sought(
    ("all the way", "all around", "all round", "the whole round"),
    r"(?<=[a-z\d])\. (?:(?:do|repeat|keep doing|and so on|keep going) "
    r"(?:that |this )?)?(?:all (?:the way )?a?round|all the way across|the whole round)"
    r"(?P<end>[.,;(]|$)", re.IGNORECASE | re.MULTILINE,
)
""" "Sc in the next stitch, then a decrease. All the way around."."""


def two_together(text: str) -> str:
    """The text with them so; any text goes in."""
    text = CROCHET_TWO.sub(lambda found: "dec".ljust(len(found.group())), text)
    text = NEXT_TOGETHER.sub(_next_together, text)
    text = EVERY_TWO.sub(lambda found: "dec around".ljust(len(found.group())), text)
    return ALL_ROUND.sub(_all_round, text)


def _next_together(found: re.Match[str]) -> str:
    name, number = found["name"].lower(), found["n"].lower()
    said = f"{SHORT.get(name, name)}{NUMBERS.get(number, number)}tog"
    return said.ljust(len(found.group()))


def _all_round(found: re.Match[str]) -> str:
    room = len(found.group()) - len(found["end"])
    said = ", repeat around"
    return (said if len(said) <= room else ", around").ljust(room) + found["end"]
