"""Clean text -> the same text, length kept, without sentences that only announce the row to come,
"The next row is a decrease row.", "Begin decreases:"; and with "k next row" read as "k 1 row".
"""

from __future__ import annotations

import re

_ROW = r"(?:row|round|rnd)"
_CHANGE = r"(?:dec|inc|decreas|increas|shap|narrow)(?:e|es|ed|ing|ings|s)?\b\.?"
_KIND = rf"(?:{_CHANGE}|eyelet|set[- ]?up|foundation|turning|fold\w*|buttonhole|lace|beading|last)"
ANNOUNCED = re.compile(
    r"(?:(?<=[.;:)!])[ ]|(?<![^\n])|(?<=[.;:)!]\n))[ \t]*(?:now,? |then |and )?(?:"
    rf"(?:the|this|your)\s+(?:next\s+)?{_ROW}\s+(?:is|will\s+be|becomes)\s+(?:a|an|the|your)\s+"
    rf"(?:first\s+|next\s+)?{_KIND}(?:\s+{_ROW})?\s*(?:[.:!]|\s-\s|,?\s+as\s+follows\s*[:.])"
    rf"|(?:now|then),?\s+{_CHANGE}(?:\s+as\s+follows)?\s*:"
    rf"|(?:one|another|a)\s+(?:more\s+|last\s+|final\s+)?{_CHANGE}\s+{_ROW}\s*(?:-|:)(?=\s)"
    r"|(?:you\s+(?:will\s+)?(?:now\s+)?)?(?:begin|start)\s+(?:the\s+|your\s+|to\s+|with\s+)*"
    rf"(?:(?:crown|top|toe|thumb|gusset|raglan)\s+)?{_CHANGE}(?:\s+for\s+(?:the\s+)?[a-z]+)?\s*[.:!]"
    r")(?=\s)",
    re.IGNORECASE,
)
NEXT_ROW = re.compile(
    rf"(?P<verb>\b(?:k|p|knit|purl|pearl|work|rib)\s+)(?P<next>(?:the\s+)?(?:(?:entire|whole)\s+)?(?:next|following|foll\.?|\d+(?:st|nd|rd|th|d)))"
    rf"(?=\s+{_ROW}\b\s*(?:[.,;]|\n|$|and\b|plain\b|even\b|straight\b|in\b))",
    re.IGNORECASE,
)
"""One plain row: "purl next row", "knit the following row", "purl 4th row"."""


def unannounced(text: str) -> str:
    """The text so put; a line that is an announcement as a whole stays, since it may head a part.
    """
    text = ANNOUNCED.sub(lambda found: _spaces(found, text), text)
    return NEXT_ROW.sub(lambda m: m["verb"] + "1".ljust(len(m["next"])), text)


def _spaces(found: re.Match[str], text: str) -> str:
    before = text.rfind("\n", 0, found.start()) + 1
    end = text.find("\n", found.end())
    line = text[before : end if end >= 0 else len(text)]
    if not line.replace(found.group().strip(), "").strip():
        return found.group()
    return re.sub(r"\S", " ", found.group())
