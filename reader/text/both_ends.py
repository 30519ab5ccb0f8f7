"""Crochet text -> the same text, length kept, with what is done in the first stitch and again in
the last told once: "with an inc in the first and an inc in the last st each time" -> ", inc in
first and last st".
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted
from reader.text.sought import Sought

_END = r"(?: (?P<{}>sts?|stitch|sc|dc|hdc|h?tr))?"
BOTH = Sought(
    ("and ",),
    r"(?P<lead>,?(?: and)? (?:with |working |making |doing |putting )?|(?<=: ))"
    r"(?:an? |one |1 )?(?P<what>(?:inc|dec)(?:reas(?:e|ing))?|[23] (?:sc|dc|hdc|h?tr|sts))"
    rf" (?:in|into|at) (?:the )?(?:very )?first{_END.format('st')},? and"
    r"(?: (?:an? |one |1 )?(?P=what))?(?: (?:in|into|at))?(?: the)?(?: very)? last"
    rf"{_END.format('last')}\b(?:,?(?: (?:each|every) (?:time|row)| both times))?",
    re.IGNORECASE,
)


def both_ends(text: str) -> str:
    """The text so put; any text goes in."""
    return BOTH.sub(_once, text)


def _once(found: re.Match[str]) -> str:
    stitch = found["last"] or found["st"] or "st"
    lead = ", " if found["lead"].startswith((",", " ")) else ""
    what = re.sub(r"(?<=[ne]c)reasing", "", found["what"], flags=re.IGNORECASE)
    said = f"{lead}{what} in first and last {stitch}"
    return fitted(said, found.group())
