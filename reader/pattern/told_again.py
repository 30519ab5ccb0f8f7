"""Rows called back without their word: "rep for 12 rows", "do this for 5 rows in all", "repeat the
wedge (rows 1-10) seven more times" -> Rule.
"""

from __future__ import annotations

import re

from reader.pattern.bare_calls import BARE_NUMBERS
from reader.pattern.goals import goal_in, times_in
from reader.pattern.rule import Rule

_AT = r"(?:^\W*|(?<=[.,;:)]\s)|(?<=\band\s)|(?<=\bthen\s))(?:(?:then|now|and)\s+){0,4}"
FOR_ROWS = re.compile(
    rf"{_AT}(?:rep(?:eat)?\.?|do (?:this|that|so)|work (?:this|that)(?: same)? (?:row|rnd|round))"
    r"(?: (?:this|the|that|last|same|row|rnd|round|rib|ribbing|again))*"
    r" for (?P<more>(?:the next|another|a further) )?(?:a total of )?(?P<n>\d+) "
    r"(?P<further>more |further |additional )?(?:rows|rnds|rounds)\b"
    r"(?: in all| in total| altogether)?",
    re.IGNORECASE,
)
_WHOLE = (
    r"(?:section|sequence|wedge|block|panel|stripe|band|scallop|point|segment|motif|gore|series"
    r"|pattern|vandyke|process)"
)
THE_WHOLE = re.compile(
    rf"{_AT}(?:rep(?:eat)?\.?|work|knit) (?:the|this|that) (?:whole |above |entire |same )?{_WHOLE}"
    r"(?:,? ?\((?:rows?|rnds?|rounds?) (?P<a>\d+) ?(?:-|—|to|through) ?(?P<b>\d+)\))?"
    r"(?P<tail> [^.;]*)",
    re.IGNORECASE,
)


def told_again(words: str, labelled: bool) -> Rule | None:
    """The rule of rows that are worked again, though no word says which rows."""
    found = FOR_ROWS.search(words)
    if found is not None:
        more = found["more"] or found["further"]
        times = int(found["n"][:4]) - (0 if more else 1)
        return Rule(
            "last", times=max(1, times), start=found.start(), end=found.end(), rest=found.group()
        )
    bare = BARE_NUMBERS.search(words)
    if bare is not None and int(bare["a"]) < int(bare["b"]):
        tail = re.split(r"[.;](?=\s|$)", words[bare.end() :], maxsplit=1)[0]
        return Rule(
            "rows", int(bare["a"]), int(bare["b"]), 1, times_in(tail), goal_in(tail),
            bare.start(), bare.end() + len(tail), tail,
        )  # fmt: skip
    whole = THE_WHOLE.search(words) if not labelled else None
    often = times_in(whole["tail"]) if whole else None
    if whole is None or often is None:
        return None
    first, last = (int(whole[one][:4]) if whole["a"] else 0 for one in "ab")
    return Rule(
        "rows" if first else "last", first, last, 0, often, start=whole.start(), end=whole.end(),
        rest=whole.group(), in_all=re.search(r"\bin (?:all|total)\b", whole["tail"]) is not None,
    )  # fmt: skip
