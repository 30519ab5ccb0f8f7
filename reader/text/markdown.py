"""Clean text -> the same text, length kept, without the marks that a page's writer set for bold,
slanted and starred words: "**Row 1:** \\*K1, P1\\* across" -> "  Row 1:    *K1, P1 * across"; and
without the signs of heavy letters: "=TOP=: Ch 3" -> " TOP : Ch 3".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

BOLD = Sought(
    ("**",),
    r"^[ \t>]*(?:[-+][ ]+)?\*\*(?=\S)[^*\n]{1,80}?(?<=\S)\*\*(?=[ \t:.]*[^\s:.])",
    re.MULTILINE,
)
"""Bold at the start of a line is a label; in the middle of one it may be no more than weight."""
BOLD_TOTAL = re.compile(
    r"\*\*(?P<words>[(\[=]? ?\d(?:(?!\b(?:in|next|rep)\b)[^*\n]){0,60}?)\*\*(?=[ \t.]*$)",
    re.MULTILINE,
)
"""A total in bold at a line's end."""
SLANTED = re.compile(r"(?<![*\\\w])\*(?=\S)(?P<words>[^*\n\\]{1,80}?)(?<=[^\s\\])\*(?![*\w])")
HEAVY = Sought(
    ("=",),
    r"(?<![\w=])=(?=[A-Za-z]|\d+(?:st|nd|rd|th|ST|ND|RD"
    r"|TH)\b)(?P<words>[^=]{1,60}?)(?<=[\w.:)])=(?![\w=])",
)
"""A printed book's heavy letters, as they are set between signs in plain text: "=2nd ROUND=:"."""
HEAVY_HEAD = Sought(
    ("=..",),
    r"^=(?P<name>[A-Z][^=\n]{1,60})=(?P<dots>\.{3,5})(?=\s)", re.MULTILINE,
)
"""The name of a part in heavy letters, with dots up to its words: "=EDGING=.... Attach thread"."""
PICTURE = re.compile(r"!\[[^\]\n]{0,200}\]\([^)\n]{0,300}\)")
QUOTED = Sought((">",), r"^>+(?=[ \n]|$)", re.MULTILINE)
"""The mark of a quoted line."""
LIST_AFTER = re.compile(
    r",(?<=\d,)(?=\s*[\(\[]\s*[\d.]+(?:''|\"|cm)?(?:\s*[,;/]\s*[\d.]+(?:''|\"|cm)?)+\s*[\)\]])"
)
"""The comma before the other sizes: "82, (92, 100, 110)"."""


def unmarked(text: str) -> str:
    """The text with those marks turned to spaces; a star that was kept as one stays a star."""
    if len(QUOTED.findall(text)) * 2 > text.count("\n"):
        text = QUOTED.sub(lambda m: " " * len(m.group()), text)
    text = PICTURE.sub(lambda m: " " * len(m.group()), text)
    text = HEAVY_HEAD.sub(lambda m: f" {m['name']}:" + " " * len(m["dots"]), text)
    text = HEAVY.sub(lambda m: f" {m['words']} ", text)
    text = BOLD.sub(lambda m: m.group().replace("**", "  "), text)
    text = BOLD_TOTAL.sub(lambda m: f"  {m['words']}  ", text)
    if "\\*" in text:
        # Only where stars are kept by a stroke is every other star a mark of weight.
        text = SLANTED.sub(lambda m: f" {m['words']} ", text)
        text = text.replace("\\*", " *").replace("\\#", " #")
    return LIST_AFTER.sub(" ", text)
