"""Rows of a net of squares that go on by rule: "having 2 sps less on each row until 2 sps remain",
"dec 1 sp at each end of every row until 4 sps are left" -> Rule.
"""

from __future__ import annotations

import re

from reader.pattern.rule import Rule
from reader.terms.numbers import word_number

_N = r"(?:\d+|one|two|three|four|an?)"
_SQUARES = r"(?:open )?(?:sps?|spaces?|mesh(?:es)?|squares?)"
_ENDS = r"(?:(?:at|on) (?:each|both) (?:ends?|sides?)(?: of the row)?,? )?(?:of )?"
_EACH = r"(?:(?:at the end of|on|in|of) )?(?:each|every) (?:following |succeeding )?row"
SO_MANY_LESS = re.compile(
    r"(?:\b(?:work|continue|rep(?:eat)?|proceed|go on|keep on)\b[^.;]{0,60}?[, ]+)?"
    r"\b(?:(?:having|with|making|working|leaving) (?:always )?|(?P<verb>dec|inc)\w*\.? )"
    rf"(?P<n>{_N}) {_SQUARES} (?P<way>(?:less|fewer|more) )?(?P<ends>{_ENDS}){_EACH}"
    rf",? (?:until|till) (?:there (?:are|is) )?(?:only )?(?P<goal>{_N}) {_SQUARES}"
    r"(?: remains?| are left| is left| rem\b| left| are on hand| in all)?",
    re.IGNORECASE,
)


def net_narrowed(words: str) -> Rule | None:
    """The rule that stands in the words; a net has a stitch more than squares. None for others."""
    found = SO_MANY_LESS.search(words)
    if found is None:
        return None
    if not (found["way"] or found["verb"]):
        return None
    number, goal = _value(found["n"]), _value(found["goal"])
    less = (found["way"] or found["verb"]).lower().strip() in ("less", "fewer", "dec")
    both = re.search(r"\b(?:each|both)\b", found["ends"] or "", re.IGNORECASE)
    step = number * (2 if both else 1) * (-1 if less else 1)
    return Rule(
        "grow", goal=goal + 1, start=found.start(), end=found.end(), rest=found.group(), step=step,
    )  # fmt: skip


def _value(word: str) -> int:
    return int(word[:4]) if word.isdigit() else word_number(word) or 1
