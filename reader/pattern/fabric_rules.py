"""Rows told by their fabric, or by ridges: "garter stitch", "work even on 24 dc", "knit 9
ridges".
"""

from __future__ import annotations

import re

from reader.pattern.changes import find_change
from reader.pattern.goals import value_of
from reader.pattern.rule import Rule
from reader.pattern.rule_words import (
    BY_KIND,
    CHART,
    FABRIC,
    MEASURE,
    OF_LENGTH,
    RIDGES,
    SPELLED_OUT,
    WORK_EVEN,
)

FABRIC_NAMED = (
    r"garter(?: st(?:itch)?)?|g\.? ?st"
    r"|(?:rev(?:erse)?\.? )?(?:stocking|stockinette?)(?: st(?:itch)?)?"
    r"|(?:rev(?:erse)?\.? )?st\.? ?st|(?:double )?(?:moss|seed)(?: st(?:itch)?)?|m\.? st"
    r"|k ?1,? ?p ?1(?: rib(?:bing)?)?|k ?2,? ?p ?2(?: rib(?:bing)?)?"
    r"|(?:single |double |1 ?x ?1 |2 ?x ?2 )?rib(?:bing)?"
)
"""Fabrics that are worked on as many stitches as there are."""


def ridges(words: str) -> Rule | None:
    """ "Knit 9 ridges": twice as many rows."""
    found = RIDGES.search(words) if "ridge" in words else None
    if found is None:
        return None
    rows = 2 * int(found["n"][:3])
    return Rule("even", rows=rows, start=found.start(), end=found.end(), rest=found.group())


def work_even(words: str) -> Rule | None:
    """ "Work even in meshes", "work even on 24 dc": every row of the label as the one before."""
    found = WORK_EVEN.match(words)
    if found is None or MEASURE.search(words) or find_change(words) is not None:
        return None
    goal = int(found["goal"][:4]) if found["goal"] else None
    return Rule("fabric", start=0, end=found.end(), rest=found.group(), goal=goal)


_ROWS_OF = r"(?P<rows>\d+) (?:more )?(?:rows|rounds|rnds)"
FABRIC_ROWS = re.compile(
    r"(?:^\W*|(?<=[.,;:)]\s)|(?<=\band\s)|(?<=\bthen\s))(?:(?:then|now|and|next),?\s+){0,4}"
    rf"(?:work )?(?:in )?(?:(?:{FABRIC_NAMED})(?:,? for| over)?,? (?:the next )?{_ROWS_OF}\b"
    rf"|{_ROWS_OF.replace('P<rows>', 'P<more>')} (?:of |in )?(?:{FABRIC_NAMED})"
    r"(?= *(?:[.,;]|$|for|and|then)))"
    r"(?:,? (?:beg\w*|start\w*|commenc\w*|end\w*) (?:with|on|after) (?:an? )?(?:\w+ )?\w+"
    r"(?: row)?)?",
    re.IGNORECASE,
)
""" "Garter st 6 rows", "4 rows stocking stitch, beginning with a knit row": no verb is needed."""


def fabric_rows(words: str) -> Rule | None:
    """So many rows of a fabric that is only named."""
    found = FABRIC_ROWS.search(words)
    if found is None:
        return None
    rows = int((found["rows"] or found["more"])[:4])
    return Rule("even", rows=rows, start=found.start(), end=found.end(), rest=found.group())


BARE_MEASURE = re.compile(
    r"(?:^\W*|(?<=[.,;:)]\s)|(?<=\band\s)|(?<=\bthen\s))(?:(?:then|now|and)\s+){0,4}"
    r"(?:work|knit|purl|cont(?:inue)?|rib)\b"
    r"(?P<how>(?:(?!pick|cast|bind|tog|inc|dec|until|till|for)[^.;:,\d]|[kp] ?\d,? ?){0,60}?)"
    r"\d+(?:[½¼¾⅓⅔]| \d/\d|\.\d)?\s?(?:\([^()]*\)\s*)?"
    r"(?:inch(?:es)?\b|ins\b|cms?\b|\"|in\b(?=\s*(?:[.,;]|$|on\b|more\b)))"
    r"(?P<rest>(?:\s+(?:more|further|even|plain|straight|on|in|over|of|with|without|these|those|the"
    r"|all|sts?|stitches|\d+|k ?\d,? ?p ?\d|rib\w*|patt\w*|garter|stock\w+|shaping|only))*)"
    r"(?=\s*(?:[.,;]|$))",
    re.IGNORECASE,
)
""" "Work 5 ins on these 26 sts": so far, though no "for" says it."""


def bare_measure(words: str) -> Rule | None:
    """Work that goes on for a measure, told without a word of how far."""
    found = BARE_MEASURE.search(words)
    if found is None:
        return None
    return Rule(
        "even", start=found.start(), end=found.end(), rest=found.group(), measured=True
    )


LEADS = 24
"""Characters before such work that only lead to it."""


def goes_on(words: str) -> bool:
    """Whether words begin with work that goes on to a measure, "Work as set until it is 4 in."."""
    told = " ".join(words.split()) if OF_LENGTH.search(words) else ""
    found = MEASURE.search(told) if told else None
    return found is not None and found.start() < LEADS


def in_fabric(words: str) -> Rule | None:
    """ "Garter stitch", "work in rib": every row of the label."""
    found = FABRIC.match(words)
    if found and not SPELLED_OUT.search(words):
        return Rule("fabric", start=0, end=found.end(), rest=words)
    kinds = [one for one in re.split(r",? and |[,;] ?", words.strip(" .")) if one]
    if len(kinds) > 1 and all(BY_KIND.fullmatch(one) for one in kinds):
        return Rule("fabric", start=0, end=len(words), rest=words)
    chart = CHART.match(words)
    if not chart:
        return None
    rows = max(1, int(chart.group(2)[:4]) - int(chart.group(1)[:4]) + 1)
    return Rule("even", rows=rows, start=0, end=chart.end(), rest=words, charted=True)


TURN_ABOUT = re.compile(
    r"\b(?:knit|k|work|purl|p) (?:a|one|1) row,? (?:and |then )?"
    r"(?:purl|p|knit|k) (?:a|one|1) row,? "
    r"(?:(?P<n>\d{1,3}) times|(?P<word>[a-z]+) times|(?P<two>twice))(?: more| in all)?\b",
    re.IGNORECASE,
)
"""A knit and a purl row, so many times."""


def turned_about(words: str) -> Rule | None:
    """ "Knit a row, purl a row, five times"."""
    found = TURN_ABOUT.search(words)
    if found is None:
        return None
    rows = 2 * (value_of(found["n"], found["word"] or found["two"]) or 1)
    return Rule("even", rows=rows, start=found.start(), end=found.end(), rest=found.group())
