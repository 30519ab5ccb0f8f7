"""Knitting text -> the same text, length kept, with words of printed leaflets put as they are read
elsewhere: "on next two rows, bind off 3 sts at start of row", "inc at even intervals to 120 sts",
"row 2 and even number rows", "right side K 7, wrong side P 7", "follow this pattern until".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_N = rf"(?:\d+(?:\s*[(\[][\d\s,:;/-]+[)\]])?|{SPELLED})"
_WAY = r"\b(?:inc|dec)(?:reas(?:e|ing))?\b\.?"
EDGE_ROWS = Sought(
    ("next",),
    r"(?P<at>(?:^|(?<=[.;:,])\s+|(?<=\n))(?:(?:then|and|now|next)\s+)*)(?:on|at|in)\s+(?:each\s+of\s+)?"
    rf"(?:the\s+)?next\s+(?P<rows>\d+|{SPELLED})\s+rows,?\s+"
    rf"(?P<off>(?:bind|cast)\s+o(?:ff|n)\s+{_N}\s+(?:sts|stitches))\s+at\s+(?:the\s+)?"
    r"(?:start|beg(?:inning|\.)?)(?:\s+of\s+(?:each\s+|the\s+)?rows?)?(?=\s*[.;,])",
    re.IGNORECASE | re.MULTILINE,
)
""" "On next two rows, bind off 3 sts at start of row"."""
TO_GOAL = Sought(
    ("intervals", "distances", "spaces"),
    rf"(?P<way>{_WAY})(?P<how>\s+(?:at|in)\s+(?:even|equal|regular)\s+(?:intervals|distances|spaces)"
    rf"(?:\s+across(?:\s+(?:the\s+)?row)?)?)(?P<to>\s+to\s+(?:have\s+)?)(?P<n>{_N})",
    re.IGNORECASE,
)
""" "Inc at even intervals to 120 sts": how many there are then."""
LISTED_ROWS = Sought(
    ("rows", "rounds", "rnds"),
    r"(?P<label>\b(?:rows|rnds|rounds)\s+\d+(?:\s*,\s*\d+)*(?:,?\s*(?:and|&)\s+\d+)?);"
    r"(?=\s+(?:rep|repeat|same|work|knit|purl|k|p)\b)",
    re.IGNORECASE,
)
""" "Rows 6, 8 and 10; Repeat row 2"."""
NUMBER_ROWS = Sought(
    ("number",),
    r"\b(?P<which>even|odd)(?P<number>[- ]number)(?=\s+(?:rows?|rnds?|rounds?)\b)"
    r"(?P<rows>\s+\w+)(?P<mark>,?\s+(?=(?:do|work|repeat|rep|same|as|like)\b))?"
    r"(?P<verb>(?:do|work)\s+(?=row\s+\d|(?:\w+\s+)?same))?",
    re.IGNORECASE,
)
""" "Row 2 and even number rows, do row 1 of Pattern"."""
PATTERN_ROWS = Sought(
    ("pat",),
    r"(?P<verb>\brepeat\s+)(?P<of>(?:pattern|patt|pat\.?)\s+)(?=rows?\s+\d)",
    re.IGNORECASE,
)
_LIST = r"(?:[kp]\s?\d|knit\b|purl\b|\*|sl\s?\d|\()"
SIDES = Sought(
    ("side",),
    rf"(?P<before>[,;.:)]\s)(?P<a>(?:right|wrong)\s+side)(?P<m>,?:?\s)(?=\s*{_LIST})"
    rf"(?P<list>[^.;\n]{{2,160}}?)(?P<stop>[;.,]\s+(?:and\s+)?)(?P<b>(?:right|wrong)\s+side)"
    rf"(?P<n>,?:?\s)(?=\s*{_LIST})",
    re.IGNORECASE,
)
""" "..., right side K 7, P 1, K 7; wrong side P 7, K 1, P 7": two rows."""
ON_NEEDLE = Sought(
    ("needle",),
    r"(?P<verb>\b(?:work|knit|purl|k|p))(?:\s+in\s+(?:pattern|patt|pat\b\.?))?\s+(?:until|till)\s+"
    rf"(?:there\s+are\s+|you\s+have\s+)?(?P<n>{_N})(?P<sts>\s+(?:sts|stitches))\s+(?:are\s+)?on\s+"
    r"(?:the\s+)?(?:right|rh)(?:[- ]hand)?\s+needle"
    r"(?:\s+(?:after|since|from)\s+(?:the\s+)?(?:last\s+)?(?:group\s+)?(?:cast|bind|bound)[ -]?off"
    r"(?:\s+(?:group|sts?|stitches|edge))?)?(?P<mark>,?)(?=\s)",
    re.IGNORECASE,
)
""" "Work in pattern until there are 26 sts on right needle": so many of the row."""
FOLLOWED = Sought(
    ("follow",),
    r"\b(?P<verb>follow\s+(?:(?:this|the|same)\s+)*)(?P<what>pattern|patt|pat\b)"
    r"(?=[^.;]{0,20}?\s(?:until|till|for)\b)",
    re.IGNORECASE,
)
TENSION = Sought(
    ("tight", "loose", "firm"),
    r"(?P<said>(?:^|(?<=[.:;]\s))(?:knit|work|crochet)\s+(?:the\s+|this\s+|these\s+)?(?:[a-z]+\s+){0,3}?"
    r"(?:band|collar|border|ribbing|edge|edging|rows?|neckband|binding)\s+(?:very\s+|rather\s+)?(?:tight(?:ly)?|loose(?:ly)?"
    r"|firm(?:ly)?)\s*\.)",
    re.IGNORECASE | re.MULTILINE,
)
"""How a band is knitted, and no row."""
EDGE_FIRST = Sought(
    ("edge", "end", "side"),
    r"\b(?P<at>at\s+(?:each|both|either)\s+(?:[a-z]+\s+)?(?:edges?|ends?|sides?)(?:\s+of\s+(?:needle|row|neck))?)"
    r"(?P<mark>,?\s+)(?P<change>(?:dec|inc)\w*\.?\s+(?:\d+|one)\s+(?:sts?|stitch(?:es)?)\b)"
    r"(?!\s+(?:at|each|on\s+each)\b)",
    re.IGNORECASE,
)
""" "At each center edge dec 1 st": the change is looked for before where it is made."""
OFF_AT_EDGE = Sought(
    ("edge",),
    r"(?P<at>\bat\s+(?:each|both|either)\s+[a-z]+\s+edges?),(?=\s+(?:bind|cast)\s+off\b)",
    re.IGNORECASE,
)
AND_REPEAT = Sought(
    ("repeat",),
    rf"(?P<change>{_WAY}\s+(?:\d+|one)\s+(?:sts?|stitch(?:es)?)\b[^.;]{{0,40}}?)"
    r"(?P<row>\s+(?:(?:on|in|of)\s+)?(?:the\s+)?(?:next|this|same)\s+row)?"
    rf"(?P<again>\s+and\s+repeat\s+(?:this|the|these|same)\s+(?:dec|inc)\w*\.?)(?=\s+(?:on\s+|in\s+)?every\b)",
    re.IGNORECASE,
)
""" "Dec 1 st and repeat this dec every 4th row 20 times more"."""
NO_LONGER = Sought(
    ("discontinu",),
    r"\bdiscontinu\w+\s+(?:[a-z]+\s+){0,2}?(?:dec|inc|shap)\w*(?:\s+and|,)(?=\s)",
    re.IGNORECASE,
)
IN_ONE = Sought(
    ("in",),
    r"(?P<two>\bk\s?1,\s?p\s?1)(?=\s+in\s+(?:(?:each|every|the|1st|first|last)\s+)?(?:st|stitch)\b)",
    re.IGNORECASE,
)
""" "K 1, P 1 in each st": two in one."""
SAME_MANNER = Sought(
    ("manner", "way"),
    r"(?P<verb>\b(?:work|worked|knit|make|made|continue)\s+)(?P<how>in\s+(?:the\s+)?(?:same|like)\s+"
    r"(?:manner|way)\s+as)(?=\s+(?:for\s+|on\s+)?(?:the\s+)?[a-z]+\s+(?:[a-z]+\s+)?(?:to|until|till|through)\b)",
    re.IGNORECASE,
)
""" "Work in same manner as back until piece measures 14 inches"."""
DROPPED = Sought(
    ("drop",),
    r"(?:\*\s*)?(?P<k>\b[kp])\s?1,?\s+drop(?:ping)?\s+(?:the\s+|next\s+)?(?:yo|y\s?o|over)\b\s*[.;,]\s+"
    r"(?:repeat|rep)\.?\s+(?:from\s+\*\s+)?(?:across|to\s+end)(?:\s+(?:of\s+)?(?:the\s+)?row)?(?=\s*(?:[.;,]|$))",
    re.IGNORECASE | re.MULTILINE,
)
""" "K 1, drop the yo. Repeat across row": the last pass has no over to drop."""
SLIPPED_OVER = Sought(
    ("slip",),
    r"(?P<verb>\bslip)(?=\s+(?:it\s+|band\s+)?(?:on(?:\s*to)?|over)\s+(?:the\s+|your\s+)?(?:hat|head|cap"
    r"|crown|brim|frame|ring|beret|wire|foot|hand|handle|hanger)\b)",
    re.IGNORECASE,
)
"""A finished piece, and no stitch."""
ON_REMAINING = Sought(
    ("rem",),
    r"(?P<at>[;.,]\s+)(?P<said>(?:then\s+|now\s+)?(?:work|continue|cont\.?)(?:\s+(?:in\s+)?(?:pattern|patt|pat\b\.?))?"
    rf"\s+(?:on|over)\s+(?:the\s+)?(?:remaining|rem\.?)\s+{_N}\s+(?:sts|stitches)\s+as\s+follows\s*[:;,.]?)"
    rf"(?=\s+{_LIST})",
    re.IGNORECASE,
)
""" "...; work on remaining 27 sts as follows: p 1, ...": the list behind it works them."""
CENTER_CABLE = Sought(
    ("cable", "twist"),
    r"(?P<label>(?:rows?|rnd|round)\s+\d+(?:\s?\([RW]S\))?:\s+)work(?P<what>\s+(?:a\s+)?(?:cable|twist|cable\s+twist)"
    r"\s+(?:on|over|across)\s+(?:the\s+)?(?:\d+\s+cent(?:er|re)|cent(?:er|re)\s+\d+)\s+(?:sts|stitches))"
    r"(?=\s*\.)",
    re.IGNORECASE,
)
"""A row as before but for the cable in its middle."""


OFF_BY_TURNS = Sought(
    ("bind", "cast"),
    r"\b(?:bind|cast)\s+off\b(?=[^.;]{0,160}\b(?:every|each)\b)"
    r"(?:(?!\bsame\s+time|\bdec|\binc|\bnarrow)[^.;]){4,200}",
    re.IGNORECASE,
)
LOTS = re.compile(
    rf"\b{_N}\s+sts?\b[^.;,]{{0,50}}?\b(?:once|twice|(?:\d+|{SPELLED})\s+times)\b", re.IGNORECASE
)
EVERY_OTHER = re.compile(
    r"(?:\s+(?:at\s+(?:the\s+)?(?:beg(?:inning)?|start)\s+of|on|in|of))?\s+(?:every|each)\s+"
    r"(?:other|alternate|alt\.?|2nd|second)\s+row\b",
    re.IGNORECASE,
)
"""Lots told one after the other, "5 sts every other row twice and 4 sts once": the pace says no
more than that they are bound off at one edge.
"""


def leaflet_words(text: str) -> str:
    """The text so put; any text goes in."""
    text = EDGE_ROWS.sub(_edge_rows, text)
    text = OFF_BY_TURNS.sub(_lots, text)
    text = TO_GOAL.sub(lambda m: m["way"] + " " * len(m["how"]) + m["to"] + m["n"], text)
    text = LISTED_ROWS.sub(lambda m: f"{m['label']}:", text)
    text = NUMBER_ROWS.sub(_number_rows, text)
    text = PATTERN_ROWS.sub(lambda m: m["verb"] + " " * len(m["of"]), text)
    text = SIDES.sub(_sides, text)
    text = ON_NEEDLE.sub(_on_needle, text)
    text = FOLLOWED.sub(_followed, text)
    text = TENSION.sub(lambda m: re.sub(r"\S", " ", m.group()), text)
    text = EDGE_FIRST.sub(lambda m: f"{m['change']} {m['at']}".ljust(len(m.group())), text)
    text = OFF_AT_EDGE.sub(lambda m: m["at"] + " ", text)
    text = AND_REPEAT.sub(_and_repeat, text)
    text = NO_LONGER.sub(lambda m: re.sub(r"\S", " ", m.group()), text)
    text = IN_ONE.sub(lambda m: ("Inc" if m["two"][0] == "K" else "inc").ljust(len(m["two"])), text)
    text = DROPPED.sub(lambda m: f"{m['k']} across dropping yo's".ljust(len(m.group())), text)
    text = SAME_MANNER.sub(lambda m: m["verb"] + "same as".ljust(len(m["how"])), text)
    text = ON_REMAINING.sub(lambda m: m["at"] + re.sub(r"\S", " ", m["said"]), text)
    text = SLIPPED_OVER.sub(lambda m: "Pull" if m["verb"][0] == "S" else "pull", text)
    return CENTER_CABLE.sub(lambda m: f"{m['label']}work even".ljust(len(m.group())), text)


def _edge_rows(found: re.Match[str]) -> str:
    whole = found.group()
    off = found["off"]
    first = not found["at"].strip() and found.string[: found.start()].rstrip()[-1:] in ".:;"
    off = off[0].upper() + off[1:] if first else off
    said = f"{off} at beg of next {found['rows']} rows"
    room = len(whole) - len(found["at"])
    return found["at"] + said.rjust(room) if len(said) <= room else whole


def _lots(found: re.Match[str]) -> str:
    whole = found.group()
    if len(LOTS.findall(whole)) < 2:
        return whole
    return EVERY_OTHER.sub(lambda one: " " * len(one.group()), whole)


def _and_repeat(found: re.Match[str]) -> str:
    said = f"{found['change']} next row and"
    return said.ljust(len(found.group())) if len(said) <= len(found.group()) else found.group()


def _followed(found: re.Match[str]) -> str:
    verb = "Work in" if found["verb"][0] == "F" else "work in"
    said, whole = f"{verb} {found['what']}", found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _number_rows(found: re.Match[str]) -> str:
    """The label's end stays where it is, so that what it labels is shown as it was written."""
    label = f"{found['which']}{' ' * len(found['number'])}{found['rows']}"
    return (label + ":" * (found["mark"] is not None)).ljust(len(found.group()))


def _sides(found: re.Match[str]) -> str:
    rows = [f"Row {at} ({one[0].upper()}S):" for at, one in ((1, found["a"]), (2, found["b"]))]
    first = f"{found['before'].replace(',', '.').replace(';', '.')}{rows[0]} {found['list']}"
    said = f"{first}. {rows[1]} "
    room = len(found.group())
    return said.ljust(room) if len(said) <= room else said.replace(": ", ":").ljust(room)[:room]


def _on_needle(found: re.Match[str]) -> str:
    said = f"{found['verb']} {found['n']}{found['sts']},"
    return said.ljust(len(found.group()))
