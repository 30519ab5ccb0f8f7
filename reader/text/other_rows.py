"""Rows that a sentence tells for many at once, set so that they have a label: "Purl all uneven
rows" -> "Uneven rows:purl", "Even-numbered Rounds 2-14:" -> "Even Rounds:"; length kept so that
every offset stays.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_ROWS = r"(?:rows|rounds|rnds)"
_ANY_ROW = r"(?:rows?|rounds?|rnds?)"
_WHICH = r"(?:even|odd|uneven|alternate|(?:wrong|right)[- ]side|ws|rs)"
_NUMBERED = r"(?:[- ]?numbered)?"
NEEDS = ("purl", "knit")
UNMARKED = Sought(
    (" all", " every", " each"),
    r"(?P<label>^[ ]*(?:rows?|rnds?|rounds?) ?\d{1,3}(?: ?\((?:RS|WS)\))? (?:and|&)"
    r" (?:all|every|each)(?: other| the)?(?: (?:foll\w*|following|even|odd|uneven|alternate|alt|ws"
    r"|rs|wrong[- ]side|right[- ]side|remaining|numbered|even-numbered|odd-numbered)\.?){0,3}"
    rf" {_ANY_ROW})[ ](?=[ ]*(?:[KP]\b|[KP]\d|Knit|Purl|\*|\(|\[|Sl\b|Yo\b))",
    re.IGNORECASE | re.MULTILINE,
)
""" "Row 2 and all WS rows  K3, purl to end": no mark parts the label from the words."""
AND_THE_OTHERS = Sought(
    ("even", "odd", "ws", "rs", "wrong", "right", "alternate"),
    rf"(?P<label>^[ ]*(?:rows?|rnds?|rounds?) ?\d{{1,3}}),? and (?:all )?(?:the )?"
    r"(?:other|remaining|following|rest of the)(?: of the)?"
    rf" (?P<which>{_WHICH}){_NUMBERED} (?P<rows>{_ROWS})"
    r"(?P<range>,? (?:up )?(?:to|through|till|until)"
    rf"(?: and including)? (?:{_ANY_ROW} )?\d{{1,3}})?(?P<end> ?:)",
    re.IGNORECASE | re.MULTILINE,
)
""" "Round 2 and the other even rounds up to Round 10: knit"."""
NUMBERED = Sought(
    ("even", "odd"),
    rf"(?P<lead>\b(?:all |every )?)(?P<which>even|odd)(?:[- ]?numbered)? (?P<rows>{_ROWS})"
    r"(?P<range>,? \(?\d{1,3} ?(?:-|–|to) ?\d{1,3}\)?)?(?P<end> ?[:—])",
    re.IGNORECASE,
)
FIRST_TOO = Sought(
    NEEDS,
    r"(?P<before>[,;.] |^|(?<=\n))(?P<verb>purl|knit)"
    r"\s(?:across(?:\sthe)?\srow|across|1\srow|one\srow|the\s1st\srow|first\srow),?\sand"
    r"(?:\s(?P=verb))?\s(?:all\s|every\s|each\s)?(?:the\s)?"
    rf"(?:odd|uneven|alternate){_NUMBERED}\s{_ANY_ROW}(?=[.;])",
    re.IGNORECASE,
)
TOLD = Sought(
    NEEDS,
    r"(?P<before>^|[.;,] |\band )(?:work )?(?P<verb>purl|knit) (?:all |every )?(?:the )?"
    rf"(?P<which>{_WHICH}){_NUMBERED} (?P<rows>{_ROWS})(?: throughout)?(?=[.;]|$)",
    re.IGNORECASE | re.MULTILINE,
)
MADE_SO = Sought(
    (*NEEDS, "plain"),
    r"(?P<before>^|[.;] )(?:work )?(?:all|every|each|the) (?:the )?"
    rf"(?P<which>{_WHICH}){_NUMBERED} (?P<rows>{_ANY_ROW})"
    r" (?:in|with|(?:is|are)(?: to be)?(?: worked| knitted)?(?: in| all)?)"
    r" (?P<verb>purl|knit|plain)(?:ed|ted)?"
    r"(?: plain| knitting| stitches| sts| throughout| across)*(?=[.;]|$)",
    re.IGNORECASE | re.MULTILINE,
)
""" "All uneven rows are purled": as told with the verb before it."""

_NTH = r"(?:\d+(?:st|nd|rd|th|d)|first|second|third)"
PLAINLY = Sought(
    (*NEEDS, "plain", "pearl"),
    rf"(?P<before>^|[.;:,)] |(?<=\n))(?P<label>(?:{_NTH}(?: {_ANY_ROW})?,? and )?"
    r"(?:every|all|each)(?: the)? (?P<which>alternate|other|second|2nd|even|odd|intermediate"
    rf"|intervening) (?P<rows>{_ANY_ROW}))(?P<mark>,? )"
    r"(?P<verb>(?:to be |is |are )?(?:worked |knitted |knit )?(?:plain|purl|pearl|knit)(?:ed|ted)?)"
    r"(?= knitting[.;]|[.;,]|$)",
    re.IGNORECASE | re.MULTILINE,
)
""" "2d and every alternate round plain.": no mark stands behind the label."""


SIDES = {"wrong side": "WS", "right side": "RS", "alternate": "All other"}


def labelled_others(text: str) -> str:
    """The text with such rows labelled."""
    text = AND_THE_OTHERS.sub(_and_all, UNMARKED.sub(lambda found: f"{found['label']}:", text))
    text = FIRST_TOO.sub(_first, NUMBERED.sub(_numbered, text))
    return PLAINLY.sub(_marked, MADE_SO.sub(_told, TOLD.sub(_told, text)))


def _and_all(found: re.Match[str]) -> str:
    said = f"{found['label']} and all {found['which']} {found['rows']}"
    return f"{said.ljust(len(found.group()) - 1)}:" if len(said) < len(found.group()) else said


def _marked(found: re.Match[str]) -> str:
    label = found["label"]
    if found["which"].lower().startswith("inter"):
        label = label.replace(found["which"], "other")
    verb = found["verb"].split()[-1].removesuffix("ted" if "knitt" in found["verb"] else "ed")
    return f"{found['before']}{label}:{verb}".ljust(len(found.group()))


def _numbered(found: re.Match[str]) -> str:
    said = f"{found['lead']}{found['which']} {found['rows']}{found['end']}"
    return said.ljust(len(found.group()))


def _first(found: re.Match[str]) -> str:
    before = ". " if found["before"].strip() else ""
    said = f"{before}1st row and all odd rows:{found['verb'].lower()}"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _told(found: re.Match[str]) -> str:
    before = ". " if found["before"].strip().lower() in ("and", ",") else found["before"]
    which = found["which"].replace("-", " ")
    which = SIDES.get(which.lower(), which.capitalize())
    verb = found["verb"].lower().replace("plain", "knit")
    said = f"{before}{which} {found['rows'].rstrip('s')}s:{verb}"
    return said.ljust(len(found.group()))
