"""Sides of a neck as garments tell them: "K20, turn. Leave rem sts on a spare needle" reads as one
row, "turn, leave rem sts ...", and so does "turn and work on these sts only"; "working both sides
at the same time" is turned to spaces, and what is then done "at neck edge" is done at both. Length
kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_PLACE = r"(?:holders?|spare|waste|thread|pins?|needle|scrap|yarn|wool|cord|strand)"
_REST = (
    r"(?:the\s+|all\s+|other\s+)*(?:rem(?:ain(?:ing|der)?)?|rest|others?)\b(?:\s+of)?"
    r"(?:\s+(?:the|these|those|sts|stitches|\d+(?:\s*[(\[][\d,;:\s]+[)\]])?))*"
)
LEFT = Sought(
    ("turn",),
    r"\bturn(?P<stop>\s*[.;:])(?=\s+(?:and\s+|then\s+)?(?:leave|leaving|slip|sl|place|put|hold|keep)"
    rf"\s+{_REST}[^.;]{{0,30}}?\b{_PLACE}\b)",
    re.IGNORECASE,
)
WAIT = Sought(
    ("wait", "remain", "stay", "left"),
    r"(?P<stop>[.;,])(?P<and>\s+(?:and\s+)?)(?P<rest>(?:the\s+)?(?:rest|remainder|other(?:s|\s+\w+)?|remaining\s+\w+"
    r"|rem\s+\w+)(?:\s+of\s+(?:the\s+)?(?:stitches|sts))?\s+(?:will\s+|can\s+|are\s+)?"
    rf"(?:wait|remain|stay|left))(?=\s+(?:waiting\s+)?on\s+[^.;]{{0,24}}?\b{_PLACE}\b)",
    re.IGNORECASE,
)
""" "The rest of the stitches wait on a spare needle"."""
_SIDE = r"(?:side|half|shoulder|front|strap)\b(?:\s+of\s+(?:the\s+)?(?:neck|opening|work))?"
_SIDES = r"(?:sides?|halves|shoulders?|fronts?)\b(?:\s+of\s+(?:the\s+)?neck)?"
SIDE = Sought(
    ("turn",),
    r"\bturn(?:ing)?(?P<told>\s*[.,;:]?\s+(?:and\s+|then\s+)?(?:work|cont(?:inue)?|complete|finish|proceed"
    r"|knit)(?:ing)?\s+(?:only\s+)?(?:(?:on|over|with)\s+)?(?:only\s+)?"
    r"(?:(?:these|those)(?:\s+(?:last|first|rem\w*))?\s+(?:sts|stitches)"
    r"|(?:the|this|that)\s+(?:(?:last|first|1st)\s+)?(?:set|group|lot)\s+of\s+(?:\d+\s+)?(?:sts|stitches)"
    rf"|(?:the\s+|this\s+|that\s+)?(?:first|1st)\s+{_SIDE}|(?:this|that|one)\s+{_SIDE}"
    rf"|(?:each|the\s+two|both)\s+{_SIDES}\s+(?:separately|in\s+turn))"
    r"(?:\s+(?:only|alone|first|now|separately|(?:at\s+a\s+time)"
    rf"|for\s+(?:the\s+|this\s+)?(?:(?:first|1st|left|right|one)\s+)?{_SIDE}))*)(?=\s*[.,;:]|\s*$)",
    re.IGNORECASE | re.MULTILINE,
)
"""What is worked on behind a turn: the others wait."""
BOTH = Sought(
    ("both",),
    r"(?P<and>\s*,?\s*\b(?:and|then)\s+)?\bwork(?:ing)?\s+(?:on\s+)?both\s+(?:the\s+)?"
    r"(?:sides|shoulders|fronts|halves)(?:\s+of\s+(?:the\s+)?neck)?\s+(?:at\s+(?:the\s+)?same\s+time"
    r"|at\s+once|simultaneously|together|(?=(?:with|using)\s+(?:separate|two|2)\s+balls))"
    r"(?:\s*,?\s*(?:with|using)\s+(?:separate|two|2|different|\w+)\s+balls?(?:\s+of\s+\w+)?)?"
    r"(?P<stop>\s*[,:]|\s*[.](?=\s+(?:dec|bind|cast|bo)\w*\b)|)",
    re.IGNORECASE,
)
NECK = re.compile(
    r"\b(?:at|on)\s+(?:the\s+|each\s+)?neck\s+edges?(?!\s+(?:of|on)\s+(?:the\s+)?(?:left|right|first|second|other"
    r"|one|this|that|each|both)\s+(?:side|front|half|shoulder))",
    re.IGNORECASE,
)
SCOPE = re.compile(r"\n\s*\n|\brejoin\b|\bcomplete\b", re.IGNORECASE)
AT_BOTH = "at both ends"


def sides_told(text: str) -> str:
    """The text with them put so; any text goes in."""
    text = WAIT.sub(_leave, LEFT.sub(lambda m: m.group()[:-1] + ",", text))
    text = SIDE.sub(_one_side, text)
    out, at = [], 0
    for found in BOTH.finditer(text):
        if found.start() < at:
            continue
        end = SCOPE.search(text, found.end())
        scope = text[found.end() : end.start() if end else len(text)]
        blank = _over(found.group(), "," if found["and"] else "")
        out += [text[at : found.start()], blank, NECK.sub(_both, scope)]
        at = found.end() + len(scope)
    return "".join([*out, text[at:]])


def _both(found: re.Match[str]) -> str:
    return _over(found.group(), AT_BOTH)


def _one_side(found: re.Match[str]) -> str:
    before, told = found.group().removesuffix(found["told"]), ", leave rest on spare"
    room = len(found["told"])
    return found.group() if room < len(told) else before + _over(found["told"], told)


def _leave(found: re.Match[str]) -> str:
    whole, told = found["and"] + found["rest"], " leave the rem sts"
    return found.group() if len(told) >= len(whole) else _over(found.group(), "," + told)


def _over(words: str, told: str) -> str:
    """What is told, in the room of the words; where a line ends inside them it ends behind it."""
    return told.ljust(len(words)) if "\n" not in words else told.ljust(len(words) - 1) + "\n"
