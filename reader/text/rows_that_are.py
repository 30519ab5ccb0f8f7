"""Clean text -> the same text, length kept, where a sentence says what a row is: "Round two is two
sc in each st", "Row 5 will be purl" -> "Round two:  two sc in each st", "Row 5:         purl".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_ROWS = r"(?:rounds?|rows?|rnds?)"
_N = rf"(?:(?:{SPELLED})\b|\d{{1,3}}(?:(?: ?(?:-|to|and|&|through) ?)\d{{1,3}})?)"
_NTH = (
    r"(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth"
    r"|\d{1,2}(?:st|nd|rd|th)|next|last|final)"
)
_WORK = (
    r"(?:(?:\d{1,3}|an?|one|two|three|four|five|six|seven|eight|nine|ten|all|just)\s+)*"
    r"(?:sc|dc|hdc|tr|htr|single|double|half|treble|inc|dec|invdec|increases?|decreases?"
    r"|chain|ch\s?\d|knit|purl|[kp]\s?\d|work|do|put|make|crochet|stitches)\b"
)
ARE = Sought(
    (" is", " are", " will be", "'s", " goes"),
    rf"(?P<lead>(?:^|(?<=[.;!?:)] ))[ ]*)(?P<label>(?:the )?(?:{_ROWS} {_N}|{_NTH} {_ROWS}))"
    r"(?P<are>(?: (?:is|are|will be|goes)|'s)(?:(?: (?:just|simply|all))*"
    r"(?: like this| as follows)[:,](?= \S)|(?: (?:just|simply|all|like this|as follows))*[:,]?"
    rf"(?= {_WORK}(?! (?:rounds?|rows?|rnds?|only|ones?)\b)|\s[(*\[])))",
    re.IGNORECASE | re.MULTILINE,
)


LED = Sought(
    ("moving on", "going on", "on to ", "onto "),
    rf"(?P<lead>(?:^|(?<=[.;!?:)] ))[ ]*(?:now |then |next |we're |and )*"
    rf"(?:(?:moving|going) )?on ?to )(?=(?:the )?(?:{_ROWS} {_N}|{_NTH} {_ROWS})\s?[,:.—-])",
    re.IGNORECASE | re.MULTILINE,
)
"""What only leads over to the next row: "Moving on to round 3, ..."."""


def rows_that_are(text: str) -> str:
    """The text with a colon for such words behind a label; any other text as it is."""
    text = LED.sub(lambda found: " " * len(found["lead"]), text)
    return ARE.sub(
        lambda found: found["lead"] + found["label"] + ":".ljust(len(found["are"])), text
    )
