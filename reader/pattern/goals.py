"""How far a rule over rows goes: "15 times", "until 39 sts remain", "making 10 narrowings"."""

from __future__ import annotations

import re

from reader.pattern.rule_words import IN_ALL, LEFT, NOT_STITCHES, TIMES, UNTIL
from reader.terms.numbers import TIMES as TIMES_WORDS
from reader.terms.numbers import word_number


def value_of(digits: str | None, word: str | None) -> int | None:
    """A number in figures or in words, None where neither stands."""
    if digits:
        return int(digits[:4])
    return TIMES_WORDS.get(word.lower(), word_number(word)) if word else None


def times_in(words: str) -> int | None:
    """The "15 times", "twice" in a rule; None where it is open."""
    found = TIMES.search(words)
    made = NARROWINGS.search(words)
    if made and not found:
        # All of them together; the first is worked already.
        return int(made.group(1)[:3]) - 1
    if not found:
        return None
    figures = found.group(1) or found.group(4) or found["x"] or found["y"]
    return value_of(figures, found.group(2) or found.group(3))


NARROWINGS = re.compile(
    r"\bmaking (\d+) (?:narrowings|decreases|decs|increases|incs|widenings)\b", re.IGNORECASE
)
"""How often, told as a number of changes."""


_CHANGED = r"(?:added|increased|gained|made|decreased|lost|narrowed|taken (?:off|in|away)|cast on)"
CHANGED_BY = re.compile(
    rf"\b(?:until|till|til) (?:(?:you have|you've|there have been|having) {_CHANGED} (?P<n>\d+)"
    r"(?! ?(?:times|inch|in\b|cm))(?: (?:sts?|stitches|loops))?"
    rf"|(?P<m>\d+)(?: (?:sts?|stitches|loops))? (?:have been|are|were|has been) {_CHANGED}"
    r"|(?:you have|there are|you've) (?P<k>\d+) (?:extra|additional|more|new)"
    r" (?:sts?|stitches|loops))\b",
    re.IGNORECASE,
)


def changed_by(words: str, step: int) -> int | None:
    """How often a change of so many stitches is made till all of them are: "until you have added 6
    stitches"; None where the words don't say so, or it does not come out.
    """
    found = CHANGED_BY.search(words)
    if found is None or not step:
        return None
    times, over = divmod(int((found["n"] or found["m"] or found["k"])[:4]), abs(step))
    return times if times and not over else None


def goal_in(words: str) -> int | None:
    """The stitch number a rule runs to."""
    whole = IN_ALL.search(re.split(r"[.;](?=\s|$)", words, maxsplit=1)[0])
    if whole:
        return int(whole.group(1)[:5])
    found = UNTIL.search(words)
    if found and not NOT_STITCHES.match(words[found.end() :]):
        return int(found.group(1)[:5])
    left = LEFT.search(words)
    return int(left.group(1)[:5]) if left else None


def section_goal(words: str) -> int | None:
    """The stitches of a kind that a rule runs to."""
    found = re.search(
        r"\b(?:until|till)[^.]*?(\d+)\s*(?:sc|dc|sts?|stitches|s c|d c|doubles)\b", words
    )
    if found is None or NOT_STITCHES.match(STAYING.sub("", words[found.end() :], count=1)):
        return None
    return int(found.group(1))


STAYING = re.compile(r"^(?: only| are| is| left| remain(?:ing|s)?| rem)+\b", re.IGNORECASE)
"""Between a number of stitches and where they lie."""


TO_GOAL_LAST = re.compile(
    r",?\s*(?:and\s+)?\b(?:inc|dec)\w*\.?\s+(?:evenly\s+)?to\s+(?:have\s+)?\d+[^.;]{0,24}?"
    r"\b(?:on|in|across)\s+(?:the\s+)?last\s+row\b",
    re.IGNORECASE,
)
"""A change in the last of the rows, told by how many stitches there are then."""
MEASURED_FROM = re.compile(
    r"\bfrom (?:the )?(?:(?:1st|first|last|beg\w*|start|armhole|underarm|neck) (?:of )?){0,3}"
    r"(?:dec|inc|shap|bind|bound|cast)\w*(?: off)?(?: row)?(?: sts| edge)?"
    r"|\bfrom (?:the )?(?:pick(?:ed)?[ -]?up\b|where (?:the )?sts were picked up)"
    r"(?: (?:edge|row|round|rnd|sts))?"
    r"|\b(?:start|beg|end)\w*\.? (?:with|on|after) (?:\w+ ){0,2}?(?:row|rnd|round) \d+",
    re.IGNORECASE,
)
"""Where a measure is taken from."""
