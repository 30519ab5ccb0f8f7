"""How often a list is worked around, told by the markers or sections it is worked at: "*k2tog, k to
2 sts before marker, ssk; repeat around (5 markers)" -> "repeat 4 more times"; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, number_said
from reader.text.fitting import fitted
from reader.text.sought import Sought

AROUND = Sought(
    ("markers", "sections", "wedges", "segments", "in all", "altogether"),
    r"\b(?P<rep>rep(?:eat)?(?: from \*)?) (?:all )?(?:a?round|to (?:the )?end)"
    r"(?: (?:of )?(?:the )?(?:round|rnd|row))?,? ?(?P<open>\()?(?:- ?|at |for |over )?"
    rf"(?:all |the )*(?P<n>\d{{1,2}}|{SPELLED})"
    r" (?:(?:markers|sections|wedges|segments)(?: in all)?|times (?:in all|altogether))(?(open)\))",
    re.IGNORECASE,
)


def as_often_as_markers(text: str) -> str:
    """The text so put; any text goes in."""
    return AROUND.sub(_more, text)


def _more(found: re.Match[str]) -> str:
    number = number_said(found["n"])
    said = f"{found['rep']} {number - 1} more time{'s' * (number != 2)}"
    return fitted(said, found.group()) if number > 1 else found.group()
