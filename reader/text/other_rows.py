"""Rows that a sentence tells for many at once, set so that they have a label: "Purl all uneven
rows" -> "Uneven rows:purl", "Even-numbered Rounds 2-14:" -> "Even Rounds:"; length kept so that
every offset stays.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_ROWS = r"(?:rows|rounds|rnds)"
_WHICH = r"(?:even|odd|uneven|alternate|wrong side|right side|ws|rs)"
NEEDS = ("purl", "knit")
NUMBERED = Sought(
    ("even", "odd"),
    rf"(?P<lead>\b(?:all |every )?)(?P<which>even|odd)(?:[- ]?numbered)? (?P<rows>{_ROWS})"
    r"(?P<range>,? \(?\d{1,3} ?(?:-|–|to) ?\d{1,3}\)?)?(?P<end> ?[:—])",
    re.IGNORECASE,
)
FIRST_TOO = Sought(
    NEEDS,
    r"(?P<before>[,;.] |^|(?<=\n))(?P<verb>purl|knit)"
    r" (?:across(?: the)? row|1 row|one row|the 1st row|first row),? and"
    rf"(?: (?P=verb))? (?:all |every )?(?:the )?(?:odd|uneven|alternate)(?:[- ]?numbered)? {_ROWS}"
    r"(?=[.;])",
    re.IGNORECASE,
)
TOLD = Sought(
    NEEDS,
    rf"(?P<before>^|[.;,] |\band )(?P<verb>purl|knit) (?:all |every )?(?:the )?(?P<which>{_WHICH})"
    rf"(?:[- ]?numbered)? (?P<rows>{_ROWS})(?: throughout)?(?=[.;]|$)",
    re.IGNORECASE | re.MULTILINE,
)


SIDES = {"wrong side": "WS", "right side": "RS", "alternate": "Even"}


def labelled_others(text: str) -> str:
    """The text with such rows labelled."""
    return TOLD.sub(_told, FIRST_TOO.sub(_first, NUMBERED.sub(_numbered, text)))


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
    which = SIDES.get(found["which"].lower(), found["which"].capitalize())
    said = f"{before}{which} {found['rows']}:{found['verb'].lower()}"
    return said.ljust(len(found.group()))
