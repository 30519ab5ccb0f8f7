"""Rows by rule: "rep rows 2 and 3 four times", "same as 4th row", "work 6 rows even", "until there are 39 sts"."""

from __future__ import annotations

import re
from dataclasses import dataclass

_N = r"(\d+)(?:st|nd|rd|th|d)?"
_ROWS = r"(?:rows?|rnds?|rounds?|rds?)"
_ONES = r"(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|twenty)"
NUMBER = {
    word: number
    for number, word in enumerate(
        "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen".split(),
        1,
    )
}
NUMBER |= {"once": 1, "twice": 2, "thrice": 3, "twenty": 20}

REPEAT_LAST = re.compile(
    rf"\b(?:rep(?:eat)?|work)\s+(?:the\s+)?(?:last|these|previous)\s*(?:(\d+)|{_ONES})?\s*{_ROWS}",
    re.IGNORECASE,
)
REPEAT_ROWS = re.compile(
    rf"\b(?:rep(?:eat)?(?:ing)?)\s+(?:the\s+)?(?:from\s+)?(?:{_ROWS}\s*(?P<a>\d+)(?:\s*(?:-|—|to|through|thru|&|and)\s*(?P<b>\d+))?|(?P<c>\d+)(?:st|nd|rd|th|d)(?:\s*{_ROWS})?(?:\s*(?:,|-|to|through|and|&)\s*(?:\d+(?:st|nd|rd|th)\s*(?:,|and)\s*)*(?P<d>\d+)(?:st|nd|rd|th))?\s*{_ROWS})",
    re.IGNORECASE,
)
SAME_AS = re.compile(
    rf"^\W*(?:work\s+)?(?:the\s+)?(?:same\s+as|as|like|follow directions for|repeat|rep|just repeat)\s+(?:for\s+)?(?:the\s+)?(?:{_N}\s*{_ROWS}|{_ROWS}\s*(\d+))(?P<rest>.*)$",
    re.IGNORECASE | re.DOTALL,
)
TIMES = re.compile(rf"(?:(\d+)|{_ONES})\s*(?:more\s*)?times|\b(once|twice|thrice)\b", re.IGNORECASE)
UNTIL = re.compile(
    r"\b(?:until|till|to)\s+(?:there\s+are|you\s+have|there\s+is|it\s+has)?\s*(\d+)\s*(?:\([\d,\s]+\)\s*)?(?:sts?|stitches|sc|dc|doubles|k|loops)?\s*(?:on needles?)?\s*(?:rem(?:ain)?s?|are left|left)?",
    re.IGNORECASE,
)
EVEN = re.compile(
    rf"^\W*(?:then\s+)?(?:work|knit|k|purl|p|crochet|sc|dc|hdc|make)\s+(?:even\s+(?:for\s+)?)?(?:(\d+)|{_ONES})\s+(?:more\s+)?{_ROWS}\b(?P<rest>[^.;]*)",
    re.IGNORECASE,
)
EVEN_ROUND = re.compile(
    rf"^\W*(?:(\d+)|{_ONES})\s+{_ROWS}\s+(?:even|plain|straight|of\s+(?:sc|dc|garter|st st|stockinette))",
    re.IGNORECASE,
)
GROW = re.compile(
    r"\b(?:continue|cont|work|repeat)\b[^.]{0,160}\b(?:having|adding|with|working|inc\w*|dec\w*|skipping|in this (?:manner|way))\b",
    re.IGNORECASE,
)
PLAIN_DIFFERENCE = re.compile(r"\b(?:but|except)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Rule:
    """What a row's words ask for by rule.

    kind: "last" (the last `rows` rows again), "rows" (rows first to last again), "same" (as row `first`), "even" (rows plain
    rows), "grow" (go on as the last rounds grew). times: how often more, None for open. goal: a stitch number to stop at.
    """

    kind: str
    first: int = 0
    last: int = 0
    rows: int = 1
    times: int | None = None
    goal: int | None = None
    start: int = 0
    end: int = 0
    rest: str = ""


def _value(digits: str | None, word: str | None) -> int | None:
    if digits:
        return int(digits[:4])
    return NUMBER.get(word.lower()) if word else None


def times_in(words: str) -> int | None:
    """The "15 times", "twice" in a rule; None where it is open."""
    found = TIMES.search(words)
    if not found:
        return None
    return _value(found.group(1), found.group(2) or found.group(3))


def goal_in(words: str) -> int | None:
    """The stitch number a rule runs to."""
    found = UNTIL.search(words)
    if found and not re.match(r"\s*(?:in\b|inch|cm|\"|rows|rounds|rnds|mm)", words[found.end() :]):
        return int(found.group(1)[:5])
    return None


def find_rule(words: str, labelled: bool) -> Rule | None:
    """The rule a row's words are, or contain at their end; None where they are plain instructions."""
    same = SAME_AS.match(words)
    if labelled and same and not PLAIN_DIFFERENCE.search(same.group("rest")[:40]):
        number = int((same.group(1) or same.group(2))[:4])
        if not re.match(
            r"\s*(?:,|for|until|\d+|through|to\b|and\b|once|twice)", same.group("rest")
        ) or same.group(0).lower().lstrip().startswith(("same", "as", "follow", "just", "like")):
            return Rule("same", number, rest=same.group("rest"))
    last = REPEAT_LAST.search(words)
    if last:
        rows = _value(last.group(1), last.group(2)) or 1
        tail = _sentence(words, last.end())
        return Rule(
            "last",
            rows=rows,
            times=times_in(tail),
            goal=goal_in(tail),
            start=last.start(),
            end=last.end() + len(tail),
            rest=tail,
        )
    rows_again = REPEAT_ROWS.search(words)
    if rows_again:
        first = int((rows_again.group("a") or rows_again.group("c"))[:4])
        final = int((rows_again.group("b") or rows_again.group("d") or str(first))[:4])
        tail = _sentence(words, rows_again.end())
        return Rule(
            "rows",
            first,
            max(first, final),
            times=times_in(tail),
            goal=goal_in(tail),
            start=rows_again.start(),
            end=rows_again.end() + len(tail),
            rest=tail,
        )
    even = EVEN.match(words) or EVEN_ROUND.match(words)
    if even:
        return Rule(
            "even",
            rows=_value(even.group(1), even.group(2)) or 1,
            start=even.start(),
            end=even.end(),
            rest=words[even.start() : even.end()],
        )
    grow = GROW.search(words)
    if grow:
        tail = words[grow.start() :]
        return Rule(
            "grow",
            goal=goal_in(tail) or _section_goal(tail),
            start=grow.start(),
            end=len(words),
            rest=tail,
        )
    return None


def _section_goal(words: str) -> int | None:
    found = re.search(r"(\d+)\s*(?:sc|dc|sts?|stitches|s c|d c|doubles)\b", words)
    return int(found.group(1)) if found else None


def _sentence(words: str, at: int) -> str:
    found = re.search(r"[.;](?:\s|$)|,\s+then\b|\n\n", words[at:])
    return words[at : at + found.start()] if found else words[at:]
