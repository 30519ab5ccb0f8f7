"""Crochet text -> the same text, length kept, with two stitches worked together in words of their
own as the decrease they are: "crochet two together", "sc every 2 sts tog", "two and two together".
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
    text = EVERY_TWO.sub(lambda found: "dec around".ljust(len(found.group())), text)
    return ALL_ROUND.sub(_all_round, text)


def _all_round(found: re.Match[str]) -> str:
    room = len(found.group()) - len(found["end"])
    said = ", repeat around"
    return (said if len(said) <= room else ", around").ljust(room) + found["end"]
