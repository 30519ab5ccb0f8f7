"""Rows in the shortest hand: "(sc, inc) 6 (18)", where a number between the bracket and the total
says how often -> "(sc, inc)x6 (18)", length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_STITCH = r"(?:sc|inc|in|dec|hdc|dc|tr|htr|sts?|ch)"
BARE_TIMES = re.compile(
    rf"(?P<body>[(\[](?=[^()\[\]\n]*\b\d*{_STITCH}\b)[^()\[\]\n]+[)\]]) (?P<times>\d{{1,2}})"
    r"(?=, ?(?:turn|join|close|ss|sl st|do not)\b"
    r"|\s*[(\[<{]\s*\d{1,4}(?:\s*[a-z]{1,8})?\s*[)\]>}]\s*(?:[.,;\n]|$)"
    r"|\s*(?:—|--?>?|=)\s*\d{1,4}\s*(?:[a-z]{1,8})?\s*(?:[.\n]|$))",
    re.IGNORECASE,
)
NUMBER_BETWEEN = re.compile(r"[)\]] \d{1,2}\s*[(\[<{—=,-]")
"""Without this no such number stands in a text; sooner found than all of BARE_TIMES."""
ON_OFF = Sought(
    ("/o",), r"\b(?P<what>[CB])/O\b(?=[ ]|$)|\b(?P<low>[cb])/o\b(?=[ ]|$)", re.MULTILINE
)
"""Short for cast on and bind off: "C/O 42 sts"."""
RPT = Sought(("rpt",), r"\brpt\b", re.IGNORECASE)
"""Short for repeat, as some write it."""


NUMBER_FIRST = Sought(
    ("ctog", "rtog"), r"\b(?P<n>[2-9])(?P<gap> ?)(?P<what>sc|hdc|dc|tr|htr)tog\b", re.I
)
"""Stitches together with their number first: "2sctog"."""
STAR_TO_END = Sought(
    ("*",),
    r"\*(?P<list>[^*;\n]{3,120}(?:\n[^*;\n]{1,120})?);(?P<gap>[ \n])"
    r"(?=(?:(?:to|till|until) (?:the )?end|across|around|all round|all the way)\b)", re.IGNORECASE,
)
"""A list from its star to a semicolon, and how far it goes: "*sc, 2 sc in next; to the end"."""
TWO_IN_ONE = Sought(
    ("2inc", "-inc"),
    r"\b(?P<what>sc|hdc|dc|htr|tr)(?:2|-)inc(?P<end>s?)\b", re.IGNORECASE
)
"""An increase named as a decrease is: "dc2inc" is two in one."""
_GROUP = rf"[(\[](?=[^()\[\]\n]*\b\d*{_STITCH}\b)[^()\[\]\n]+[)\]]"
TIMES_FIRST = Sought(
    ("(", "["),
    r"(?P<lead>^[^\n:]{1,24}: ?|, )(?:x ?(?P<x>\d{1,2})|(?P<n>\d{1,2})(?: ?x)?) "
    rf"(?={_GROUP}[^\n\d]*"
    r"(?:[(\[=][^\n]*)?$)",
    re.IGNORECASE | re.MULTILINE,
)
"""How often before a list: "x6 (sc, inc)", "6 [sc, inc]"."""
DASHED_TIMES = Sought(
    ("-", "—"), r"(?<=[)\]*]) ?[-—] ?(?=(?:\d{1,2} ?(?:times\b|x(?!\w))|x ?\d))", re.IGNORECASE
)
"""A dash before how often: "(sc, inc) - 6 times"."""
GLUED_TIMES = re.compile(
    rf"(?P<open>[(\[])(?P<body>(?=[^()\[\]\n]*\b\d*{_STITCH}\b)[^()\[\]\n]+), "
    r"(?P<last>[^()\[\]\n,]+)"
    r"(?P<close>[)\]])(?P<n>\d{1,2})(?=\s*(?:$|[.,;(\[=]))",
    re.IGNORECASE | re.MULTILINE,
)
"""How often right behind the list, "(sc, inc)6": the blank behind the comma makes room for an x."""
GLUED_TOTAL = re.compile(
    rf"(?P<list>{_GROUP})(?P<n>\d{{1,2}}) (?=[(\[]\d{{1,4}}(?: ?[a-z]{{1,8}})?[)\]]\s*(?:$|[.,;]))",
    re.IGNORECASE | re.MULTILINE,
)
"""The same before a total, "(inc)6 (12)": the blank before it makes room."""
GLUED_SIGN = re.compile(r"[)\]]\d")
TIMES_SIGN = re.compile(r"\d(?: ?x)? [(\[]", re.IGNORECASE)
"""Without these no such number stands in a text; sooner found than all of the others."""
VERB_FIRST = Sought(
    ("rep",),
    r"\brep(?:eat)?[ ](?=\*(?![ ]?(?:to|from|until|till)\b)[^*\n]{2,80}\*[ ,;]*"
    r"(?:around|across|all\b|to (?:the )?end|\d+ (?:more )?times|x ?\d|until|till|twice))",
    re.IGNORECASE,
)
""" "Repeat *sc, inc* around": the list is worked so often, and nothing before it."""
BETWEEN = Sought(("between",), r"\bbetween \*[ ]?\.{2,3}[ ]?\*", re.IGNORECASE)
""" "Rep between *...* to end"."""
AND_ON = Sought(
    ("+",),
    r"^(?P<label>[ ]*(?:rounds?|rnds?|rows?|rds?|R) ?\d{1,3})\+(?=[ ]+[a-z(*\[\d])", re.I | re.M,
)
"""A label with no mark but that of the rows after it: "Rounds 7+ sc in each sc"."""


def with_times(text: str) -> str:
    """The text with an x before such a number, in the place of the space; "rpt" is "rep", "C/O" is
    "Co".
    """
    text = NUMBER_FIRST.sub(lambda m: f"{m['what']}{m['n']}tog{m['gap']}", text)
    text = STAR_TO_END.sub(lambda m: f"*{m['list']}*{m['gap']}", text)
    text = TWO_IN_ONE.sub(_two_in_one, text)
    text = DASHED_TIMES.sub(_blank, text)
    if TIMES_SIGN.search(text):
        text = TIMES_FIRST.sub(_times_first, text)
    text = VERB_FIRST.sub(_blank, text)
    text = BETWEEN.sub(lambda m: "from *".ljust(len(m.group())), text)
    if GLUED_SIGN.search(text):
        text = GLUED_TIMES.sub(
            lambda m: f"{m['open']}{m['body']},{m['last']}{m['close']}x{m['n']}", text
        )
        text = GLUED_TOTAL.sub(lambda m: f"{m['list']}x{m['n']}", text)
    text = AND_ON.sub(lambda found: f"{found['label']}:", text)
    text = ON_OFF.sub(lambda found: f"{found['what'] or found['low']}o ", RPT.sub("rep", text))
    if not NUMBER_BETWEEN.search(text):
        return text
    return BARE_TIMES.sub(_so_often, text)


def _so_often(found: re.Match[str]) -> str:
    listed = "," in found["body"] or found.string[found.end() : found.end() + 1] != ","
    # "Chain (ch) 4, join" is no list worked four times.
    return f"{found['body']}{'x' if listed else ' '}{found['times']}"


def _two_in_one(found: re.Match[str]) -> str:
    return f"{found['what']}inc{found['end']} "


def _blank(found: re.Match[str]) -> str:
    return " " * len(found.group())


def _times_first(found: re.Match[str]) -> str:
    times = f"{found['lead']}{found['x'] or found['n']}x"
    return times.ljust(len(found.group()))
