"""Words that only say where a piece begins on another: "Skip 18 sts for the brim, join yarn in the
next st", "Count 6 sts from the seam and attach thread".
"""

from __future__ import annotations

import re

BEGUN = re.compile(
    r"\W*(?P<lead>(?:with|holding|facing|on|at|from|along|turn)\b[^.;]{2,60}?[,:]\s*)?"
    r"(?:(?:skip|miss|sk|leave|count|pass)\b[^.;,]{0,70}?(?:[,;.]|\band\b|\bthen\b)\s*"
    r"(?:and |then )*)?(?:re)?(?:join|attach)(?:ing)?\b(?P<rest>[^.;]{0,70}?)"
    r"[\s.,;]*(?:and|then)?[\s,]*$",
    re.IGNORECASE,
)
PLACED = re.compile(
    r"\bwith (?:a )?(?:sl ?st|ss|slip ?stitch|slip knot)\b"
    r"|\b(?:in|into|to|at|on|from)(?:to)? (?:the |that |this )?(?:\w+ ){0,3}"
    r"(?:sts?|stitch(?:es)?|[sd] ?c|h ?d ?c|h?tr|ch|sp|space|loop|edge|corner)\b", re.IGNORECASE,
)
WORKED = re.compile(
    r"\b(?:ch|chain|[sd] ?c|h ?d ?c|h?tr|work|make|turn|crochet|dec|inc)\b|\d", re.IGNORECASE
)


def only_begun(words: str) -> bool:
    """Whether words say nothing but where the piece begins: nothing is worked yet."""
    found = BEGUN.match(" ".join(words.split()))
    if found is None or WORKED.search(PLACED.sub("", found["lead"] or "")):
        return False
    return WORKED.search(PLACED.sub("", found["rest"])) is None
