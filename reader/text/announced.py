"""Clean text -> the same text, length kept, without sentences that only announce the row to come,
"The next row is a decrease row.", "Begin decreases:"; and with "k next row" read as "k 1 row",
"K and inc in every st" as "inc in every st", stitches told by how many lie on the right needle as
so many, and "turn and work on these sts" as the others put aside.
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


AND_INC = re.compile(
    r"\b(?:k|knit|work|p|purl) (?:across )?and "
    r"(?=inc\w*\.? (?:1 |one |once )?in(?:to)? (?:every|each)\b)",
    re.IGNORECASE,
)
"""How the increases of a row are worked, "K and inc once in every st": no stitch of its own."""


TURNED_ON = re.compile(
    r"\bturn,?\s+(?:and\s+)?(?:work|continue|cont\.?)\s+(?:only\s+)?on\s+these\s+(?:sts|stitches)"
    r"(?:\s+(?:only|alone))?\b",
    re.IGNORECASE,
)
"""Behind some stitches of a row: the others wait."""
OTHERS_WAIT = "turn, put rem on spare"
_SINCE = (
    r" (?:after|since|behind|from) (?:the )?(?:last )?(?:group )?(?:cast|bind|bound)[ -]?off"
    r"(?: group| sts?| stitches| edge| ones)?"
)
UNTIL_SO_MANY = re.compile(
    r"(?P<lead>\boff \d+(?: sts| stitches)?,? (?:and )?)(?P<verb>k|knit|p|purl|work)"
    r"(?P<until> (?:until|till) (?:there are |you have )?)(?P<n>\d+)"
    r"(?P<behind>(?: sts| stitches)?) ?(?:are )?(?:(?:on|remain on) (?:the )?"
    rf"(?:(?:right|rh|working)(?:[ -]hand)? )?needle(?:{_SINCE})?|(?<= ){_SINCE[1:]})",
    re.IGNORECASE,
)
"""Stitches worked by how many lie behind them, "cast off 8 sts, k until there are 20 sts on right
needle": as many, with the one that the binding off left.
"""


def unannounced(text: str) -> str:
    """The text so put; a line that is an announcement as a whole stays, since it may head a part.
    """
    text = ANNOUNCED.sub(lambda found: _spaces(found, text), text)
    text = UNTIL_SO_MANY.sub(_so_many, text)
    text = TURNED_ON.sub(lambda found: OTHERS_WAIT.ljust(len(found.group())), text)
    text = AND_INC.sub(lambda found: " " * len(found.group()), text)
    return NEXT_ROW.sub(lambda m: m["verb"] + "1".ljust(len(m["next"])), text)


def _spaces(found: re.Match[str], text: str) -> str:
    before = text.rfind("\n", 0, found.start()) + 1
    end = text.find("\n", found.end())
    line = text[before : end if end >= 0 else len(text)]
    if not line.replace(found.group().strip(), "").strip():
        return found.group()
    return re.sub(r"\S", " ", found.group())


def _so_many(found: re.Match[str]) -> str:
    return f"{found['lead']}{found['verb']} {found['n']}{found['behind']}".ljust(len(found.group()))
