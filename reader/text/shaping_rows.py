"""Knitting text -> the same text, length kept, with shaping rows told by how many they are put as
how often one is worked: "until 5 inc rows have been worked in all" as "5 times in all", "[work 7
rows, inc row] 5 times" as "inc row every 8th row 5 times".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.fitting import fitted
from reader.text.sought import Sought

_N = rf"(?:\d{{1,2}}(?:\s?[(\[][\d ,;:/-]+[)\]])?|{SPELLED})"
_ROWS = r"(?:rows|rounds|rnds)"
_SHAPING = r"(?:inc|dec|increase|decrease|shaping)\.?"
DONE = Sought(
    ("row", "round", "rnd"),
    rf"(?P<lead>,? )(?:(?:until|till) (?:you(?:'ve| have)(?: (?:worked|done|made"
    rf"|had))? )?(?:there are )?"
    rf"|(?:making|working|giving|for|to make|that is|i\.?e\.?,?) )?(?:a total of )?"
    rf"(?P<n>{_N})(?P<more> (?:more|further))? (?:such )?{_SHAPING}(?:ing"
    rf"|s)? {_ROWS}(?P<more2> more)?"
    r"(?: (?:have been|are|were|had been))?"
    r"(?P<done> (?:worked|completed|done|made))?(?P<all> in (?:all|total)| altogether| overall)?"
    r"(?=\s*[.;,:(—-]|\s*$|\s+until\b)(?P<stop>:(?=\s\d))?",
    re.IGNORECASE | re.MULTILINE,
)
BETWEEN = Sought(
    ("row", "round", "rnd"),
    rf"[\[(]?\bwork (?P<w>{_N}) {_ROWS}(?: even| straight| plain)?,? (?:(?:then|and|work) )*"
    rf"(?:(?:an|a|the|one|1) )?(?P<kind>{_SHAPING}) (?P<row>row|round|rnd)[\])]?[,;]?\s+"
    rf"(?:(?:do|work|repeat) (?:this|these|that) )?(?P<m>{_N}) times"
    r"(?P<all> in (?:all|total)| altogether)?",
    re.IGNORECASE,
)


AGAIN = Sought(
    ("again",),
    rf"\bwork (?:this|that|the|the last) {_SHAPING} (?P<row>row|round|rnd) again\b",
    re.IGNORECASE,
)


_PACE = (
    r"(?:(?:each|every)\s(?:foll\w*\.?\s)?(?:\d{1,2}(?:st|nd|rd|th)|other|alt\w*\.?|second|third"
    r"|fourth|fifth"
    r"|sixth|eighth|tenth|twelfth)\s(?:row|round|rnd))"
)
_ALIKE = (
    r"(?:(?:exactly\s)?(?:(?:in\s)?(?:the\s)?same(?:\s(?:way|manner))?|in\s(?:this|that)\s(?:way"
    r"|manner)"
    r"|so|like\s(?:this|that)|likewise|as\sbefore|this|that))"
)
SO_SHAPED = Sought(
    ("each", "every"),
    r"(?P<at>(?:^|(?<=[.;:]\s))(?:then\s|now\s|and\s)*)(?:"
    r"(?:work|make|do|have)\s(?:an?|the|this|that|another|one)\s(?P<kind>inc|dec)(?:rease|reasing"
    r"|\.)?\s(?:row|round|rnd)"
    rf"(?:\s{_ALIKE})?"
    rf"|(?:do|shape|work|cont(?:inue|\.)?|go\son|carry\son|keep\son)(?:\s(?:shaping"
    rf"|to\sshape))?\s{_ALIKE})"
    rf"(?:\sagain)?(?:\s(?:on|in|at))?\s(?={_PACE})",
    re.IGNORECASE | re.MULTILINE,
)
""" "Do the same on every 6th row", "work an inc row on every 6th row"."""
AFTER_THAT = Sought(
    ("after",),
    rf"(?<=\s)(?P<pace>{_PACE})\s(?:after\s(?:that|this)|afterwards|thereafter)(?=[\s,.;])",
    re.IGNORECASE,
)
COUNTED_BEHIND = Sought(
    ("in all", "in total", "altogether"),
    rf"(?P<pace>\b{_PACE}(?:\safter\s(?:that|this))?\s{{0,20}}),?\s(?P<n>{_N})"
    r"(?P<all> in (?:all|total)| altogether)"
    r"(?=\s*[.;,:(—-]|\s*$)", re.IGNORECASE | re.MULTILINE,
)
""" "On every 6th row, 5 in total": shaping rows."""
LAST_CHANGE = re.compile(r"(?:.*\W|^)(inc|dec|m1|kfb|k2tog|ssk|skpo)", re.IGNORECASE | re.DOTALL)


def shaping_rows(text: str) -> str:
    """The text so put; any text goes in."""
    begun = text
    text = SO_SHAPED.sub(lambda found: _so_shaped(begun, found), text)
    text = AGAIN.sub(lambda found: f"repeat this {found['row']}".ljust(len(found.group())), text)
    text = BETWEEN.sub(_every, DONE.sub(_times, text))
    text = AFTER_THAT.sub(lambda found: fitted(found["pace"], found.group()), text)
    return COUNTED_BEHIND.sub(_times_behind, text)


def _times_behind(found: re.Match[str]) -> str:
    told = f"{found['pace'].rstrip()} {found['n']} times in all"
    return fitted(told, found.group())


def _so_shaped(text: str, found: re.Match[str]) -> str:
    """What was done last is done again."""
    last = LAST_CHANGE.match(text[max(0, found.start() - 200) : found.start()])
    kind = (found["kind"] or (last[1] if last else "")).lower()
    if not kind:
        return found.group()
    told = "inc" if kind in ("inc", "m1", "kfb") else "dec"
    rep = "rep" if found["at"] else "Rep"
    return fitted(f"{found['at']}{rep} {told} row on ", found.group())


def _times(found: re.Match[str]) -> str:
    """Only where it is said that they are worked, or that they are all."""
    more = found["more"] or found["more2"]
    apart = found["lead"].startswith(",") if more else found["done"] or found["all"]
    if not apart:
        return found.group()
    told = f"{found['lead']}{found['n']} {'more times' if more else 'times in all'}"
    return fitted(told + ("." if found["stop"] else ""), found.group())


def _every(found: re.Match[str]) -> str:
    said = found["w"]
    apart = (int(said) if said.isdigit() else word_number(said) or 0) + 1
    ending = {2: "nd", 3: "rd"}.get(apart, "th")
    row = found["row"]
    told = f"{found['kind']} {row} every {apart}{ending} {row} {found['m']} times"
    short = apart > 1 and len(told) <= len(found.group())
    return told.ljust(len(found.group())) if short else found.group()
