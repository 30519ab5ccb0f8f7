"""The middles of groups as places, told at length, "into the 1-ch space of each of the 9 V-sts",
"in ch-2 sp of each of next 5 shells" -> "in each of the 9 V-sts", "in next 5 shells"; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.fitting import fitted
from reader.text.sought import Sought

_MIDDLE = (
    r"(?:the )?(?:(?:cent(?:re|er)|middle)(?: ch(?:ain)?)?(?: ?-?(?:sp|space|loop))?"
    r"|(?:\d-ch|ch-\d|ch(?:ain)?|\d ch)[ -](?:sp|space|loop)|(?:sp|space))s?"
)
INTO_MIDDLE = Sought(
    ("v", "shell", "fan"),
    rf"\b(?P<in>in(?:to)?) {_MIDDLE} of (?:the )?(?P<all>each|every|all)?(?: one)?(?: of)?(?: the)?"
    rf" ?(?P<next>next|following|remaining)? ?(?P<n>(?:\d{{1,2}}|{SPELLED})\b)? ?"
    r"(?P<group>v(?:'?s|[ -]?st(?:itch)?(?:es|s)?|[ -]groups?)?|shells?|fans?)\b"
    r"(?: (?:across|around|to (?:the )?end))?",
    re.IGNORECASE,
)


def into_groups(text: str) -> str:
    """The text of a crocheted pattern so put; any text goes in."""
    return INTO_MIDDLE.sub(_usual, text)


def _usual(found: re.Match[str]) -> str:
    number, group = found["n"], found["group"]
    if found["next"] and number:
        said = f"in {found['next']} {number} {group}"
    elif number and found["all"]:
        said = f"in each of the {number} {group}"
    elif found["all"]:
        said = f"in each {group}"
    else:
        return found.group()
    return fitted(said, found.group())
