"""Knitting words of other days put as they are read elsewhere: "diminish" and "lessen" as
"decrease", "raise one stitch at each end" as "inc", "do so all round" as "repeat", "slip and bind
off" as "bind off", a stitch "in the over" as that stitch alone. Length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_ONE = r"(?:(?:one|1|a|two|2)\s+(?:stitch(?:es)?\s+|sts?\s+)?|once\s+)"
_SOMEWHERE = (
    r"(?:at|on|in)\s+(?:the\s+)?(?:beg|end|start|each|both|either|every|middle|cent|first|last)"
)
LESS = Sought(
    ("diminish", "lessen", "contract", "reduc"),
    r"\b(?P<word>(?:diminish|lessen|contract|reduce?)(?P<ing>ing)?)\b(?!\s+(?:it|to)\b)"
    rf"(?=\s+(?:(?:\d|{SPELLED}|a\b|at\b|by\b|in\b|on\b|every|each|once|twice|gradually|until\b|till\b|the\b)"
    r"|for\s+the\s+\w+\s+(?:at|on|in|every|each)\b))",
    re.IGNORECASE,
)
MORE = Sought(
    ("rais", "add"),
    rf"\b(?P<word>(?:rais|add)(?P<ing>ing)?e?)\b(?=\s+{_ONE}{_SOMEWHERE})",
    re.IGNORECASE,
)
""" "Raise one stitch at each end of the row"; "raise 1" alone is a stitch of the list."""
SLIPPED_OFF = Sought(("bind",), r"\bslip(?:ping)?\s+and\s+(?=bind(?:ing)?\s+off\b)", re.IGNORECASE)
IN_OVER = Sought(
    ("over", "loop"),
    r"(?<=\b[kpKP]\s1)\s+in\s+(?:the\s+)?over(?:\s+loop)?s?\b(?!\s+(?:twice|\d))"
    r"|(?<=\))\s+in\s+(?:the\s+)?(?:two|2)\s+overs\b",
    re.IGNORECASE,
)
_CHANGE = r"\b(?:decrease|increase|dec|inc|narrow|widen|decreasing|increasing|narrowing)"
_EDGE = r"(?:each end|both ends|(?:the )?(?:beginning|end|start)(?: of (?:the |each |every )?\w+)?)"
_MANNER = r"(?:knit|purl|pearl|tak|work|slip|mak|pick|putt|pass|throw|rais)\w*ing\b"
FOR_SHAPE = Sought(
    ("for",),
    rf"(?P<lead>{_CHANGE})\s+for\s+the\s+\w+(?=\s+(?:at|on|in)\s+{_EDGE})", re.IGNORECASE
)
"""What is shaped so, between the change and its place: "decrease for the neck at the end of"."""
BY_DOING = Sought(
    ("by",),
    rf"(?P<lead>{_CHANGE}(?:\s+(?:once|one|1|a)\b)?(?:\s+(?:stitch|st)\b)?"
    rf"(?:\s+(?:at|on|in)\s+{_EDGE})?)(?P<manner>\s+by\s+"
    rf"(?:slipping\s+[^.;:]{{0,80}}?\bover\b|{_MANNER}[^.;:,]*?))"
    rf"(?=\s+(?:at|on|in)\s+(?:{_EDGE}|every|each)|[.;:]|\s*$)",
    re.IGNORECASE,
)
"""How a change is made, told behind it; where it is made may stand before or behind."""
BOTH_ENDS = Sought(
    ("cast", "bind"),
    rf"\b(?P<verb>(?:cast|bind) (?:on|off)) (?P<n>\d+|{SPELLED})(?P<sts> (?:sts"
    rf"|stitches))? at (?:the )?"
    r"(?:beginning|beg|end)(?: of the row)? and (?P=n)(?: (?:sts|stitches"
    r"|more))* at (?:the )?(?:end|beg\w*)"
    r"(?: of the row)?\b",
    re.IGNORECASE,
)
EVERY_OTHER = Sought(
    ("slip",),
    r"\b(?P<verb>knit|purl|pearl) (?:every|each) (?:alternate|other|second) (?:stitch|st|one),?"
    r" (?:and )?slip(?:ping)? (?:(?:those|the (?:ones|stitches)|all) between"
    r"|the (?:others?|rest|alternate ones))\b",
    re.IGNORECASE,
)
""" "Knit every alternate stitch, slipping those between": no stitch is left out."""
AGAIN = Sought(
    ("do",),
    r"(?P<lead>[;,.]\s+(?:and\s+)?)do\s+(?:this|so|it|that|the\s+same)\s+"
    rf"(?=(?:all\s+(?:the\s+way\s+)?(?:a?round|across|along)|a?round\b|across\b|to\s+(?:the\s+)?end"
    rf"|(?:\d+|{SPELLED})\s+(?:more\s+)?times|twice|once\s+more)\b)",
    re.IGNORECASE,
)
TAKEN = Sought(
    ("t. 2", "t.2"),
    r"(?<![\w.]\s)(?<![\w.])t\. ?2(?=\s*(?:[,;.)]|and\b|$))(?!\s*[.:]?\s*(?:=|means\b))",
    re.IGNORECASE | re.MULTILINE,
)
""" "T. 2" of old lace: two taken together."""
TAKE_TWO = Sought(
    ("take",),
    r"\btake\s+(?:two|2)(?=\s*(?:[,;.)]|and\s+(?:knit|purl|pearl|k|p|m|make|over)\b))",
    re.IGNORECASE,
)
""" "Make one, take two": together, as old lace has it."""
TAKE_UP = Sought(
    ("take",),
    rf"(?P<at>(?:^|(?<=[.;]))\s*(?:(?:then|now|next|and),?\s+)*)(?P<take>take)(?=\s+up\s+(?:the\s+|about"
    rf"\s+)?(?:\d{{1,3}}|{SPELLED})\s+(?:\w+[- ])?(?:stitches|sts|loops)\b)",
    re.IGNORECASE | re.MULTILINE,
)
""" "Take up 10 stitches" at a sentence's beginning is what others pick up."""
MAKING = Sought(
    ("making", "giving"),
    r"(?:(?:thus|so|and|and so|and thus)\s+)?\b(?:making|giving)\s+(?:in\s+all\s+|altogether\s+)?"
    rf"(?P<n>\d{{1,3}}|{SPELLED})\s+(?:stitches|sts|loops),?\s+(?:in\s+all|altogether|(?:in|for)"
    r"\s+the\s+round|on\s+(?:the|your|all|[2-5]|two|three|four|five)\s+(?:\w+\s+){0,2}?"
    r"(?:needles?|pins?|hand|thumb|finger|foot|leg))\b",
    re.IGNORECASE,
)
""" "Making 35 stitches on the needle": what there are then, and none that are made more."""
OVERS = re.compile(r"\b(?:o|m|th\.? ?o)\. ?[12]?\s*[,;]|\bover\b", re.IGNORECASE)


def old_words(text: str) -> str:
    """The text with them put so; any text goes in."""
    text = LESS.sub(lambda found: _put(found, "decreasing", "decrease", "dec"), text)
    text = MORE.sub(lambda found: _put(found, "inc'ing", "inc", "inc"), text)
    text = TAKE_TWO.sub(lambda found: "narrow".ljust(len(found.group())), text)
    text = TAKE_UP.sub(
        lambda found: found["at"] + ("Pick" if found["take"][0] == "T" else "pick"), text
    )
    text = MAKING.sub(_total, text)
    text = SLIPPED_OFF.sub(lambda found: " " * len(found.group()), text)
    if OVERS.search(text):
        text = TAKEN.sub(lambda found: "n.".ljust(len(found.group())), text)
    text = IN_OVER.sub(lambda found: " " * len(found.group()), text)
    text = FOR_SHAPE.sub(lambda found: found["lead"].ljust(len(found.group())), text)
    text = BY_DOING.sub(_without_manner, text)
    text = BOTH_ENDS.sub(
        lambda m: f"{m['verb']} {m['n']}{m['sts'] or ''} at each end".ljust(len(m.group())), text
    )
    text = EVERY_OTHER.sub(
        lambda m: f"{m['verb']} 1, slip 1 alternately".ljust(len(m.group())), text
    )
    return AGAIN.sub(lambda found: f"{found['lead']}repeat ".ljust(len(found.group())), text)


def _total(found: re.Match[str]) -> str:
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"])
    return f"({number} sts)".ljust(len(found.group()))


def _put(found: re.Match[str], going_on: str, plain: str, short: str) -> str:
    """The word that stands for it, the shorter one where the other has no room."""
    room = len(found["word"])
    if found["ing"]:
        ways = (going_on, f"{short}'ing", f"{short}ing")
        return next(way for way in ways if len(way) <= room).ljust(room)
    return (plain if len(plain) <= room else short).ljust(room)


def _without_manner(found: re.Match[str]) -> str:
    """The change alone; with its place in front, or behind it."""
    placed = re.search(rf"\b(?:at|on|in)\s+{_EDGE}$", found["lead"], re.IGNORECASE)
    behind = found.string[found.end() : found.end() + 1]
    if not placed and not behind.isspace():
        return found.group()
    return found["lead"].ljust(len(found.group()))
