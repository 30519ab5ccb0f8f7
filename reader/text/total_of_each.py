"""Clean text -> the same text, length kept, with the totals of several rows, told one behind
another at the end of their line, in brackets: "Rows 2-4: ... . 7, 9, 11 sc." -> "(7, 9, 11 sc)",
"2nd & 3rd row: ... . 7 sc, 9 sc." -> "(7, 9 sc)".

There must be as many numbers as the label has rows: others are sizes, or work.
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted
from reader.text.sought import Sought

_UNIT = r"(?:[shd]{1,2}c|h?tr|sts?|stitches)"
_ROW = r"(?:rows?|rnds?|rounds?|rds?|R)"
_JOIN = r" ?(?P<join>&|,|and|to|[-—]) ?"
ENDED = Sought(
    (",", " and ", " & ", ";", "/"),
    rf"^(?P<label>[ \t]*(?:{_ROW}[ .#]{{0,2}})?(?P<a>\d{{1,3}})(?:st|nd|rd|th)?{_JOIN}(?:the )?"
    rf"(?P<b>\d{{1,3}})(?:st|nd|rd|th)?(?: {_ROW})?\b[^\n]{{0,24}}?[:.)])(?P<words>[^\n]+?)"
    rf"(?P<lead>[.;:] |,? (?:=|-|—) )(?P<list>\d{{1,4}}(?: {_UNIT})?"
    rf"(?:(?:, ?(?:and )?| and | & |; ?|/)\d{{1,4}}(?: {_UNIT})?){{1,11}})\.?[ \t]*$",
    re.IGNORECASE | re.MULTILINE,
)
UNIT_LAST = re.compile(rf"\d {_UNIT}$", re.IGNORECASE)


_KIND = r"(?:[shd]{1,2}c|h?tr|sts?|stitches|loops?|lps?|clusters?|shells?)"
_PART = (
    r"(?:wedge|section|side|segment|petal|panel|point|division|triangle|sixth|fifth|quarter|third"
    r"|needle|half|leaf|star|edge|part|spoke|arm|ray|slice|leg|group|repeat|rep|pattern)s?"
)
PER_PART = Sought(
    (" per ", " each ", " every "),
    rf"^(?P<row>[ \t]*(?:{_ROW}[ .#]{{0,2}})?\d{{1,3}}[^\n]{{0,8}}?[:.)][^\n]{{4,}}?[.;:)]) "
    r"(?:(?:there are|there should be|you(?:'ll| should| now)* have|makes|that's|that is|this makes"
    r"|for|=|->|now)(?: now)? )?"
    rf"(?P<total>\d{{1,4}} {_KIND}) (?:(?:in|on|to|for|at) )?(?:per|each|every) "
    rf"(?P<part>{_PART})(?P<now> now)?\.?[ \t]*$",
    re.IGNORECASE | re.MULTILINE,
)
"""How many there are in each part, behind what is worked: "... 5 times. 3 sc per wedge."."""


def totals_of_each(text: str) -> str:
    """The text so put; any text goes in."""
    return ENDED.sub(_bracketed, PER_PART.sub(_of_a_part, text))


def _of_a_part(found: re.Match[str]) -> str:
    return fitted(f"{found['row']}({found['total']} per {found['part']})", found.group())


def _bracketed(found: re.Match[str]) -> str:
    first, last = int(found["a"]), int(found["b"])
    rows = 2 if found["join"] in ("&", ",", "and") else last - first + 1
    numbers = re.findall(r"\d+", found["list"])
    unit = UNIT_LAST.search(found["list"])
    if len(numbers) != rows or unit is None:
        return found.group()
    lead = found["lead"].strip(" ,=-—:;")
    said = f"{lead}({', '.join(numbers)} {unit.group().split()[-1]})"
    return fitted(found["label"] + found["words"] + said, found.group())
