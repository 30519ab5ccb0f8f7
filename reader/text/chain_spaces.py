"""Clean text -> the same text, length kept, with a space named by its chains as most name it: "next
2-ch sp" -> "next ch-2 sp".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

SPACE_OF = Sought(
    ("ch-", "ch sp", "ch lp", "ch loop", "ch arch", "ch corner", "ch gap", "ch."),
    r"(?P<n>\d(?<!\w\d)\d*)(?P<gap>[ -]?)ch(?P<dot>\.?)"
    r"(?=[ -](?:sp|space|lp|loop|arch|corner|gap)(?P<many>s?)\b)",
    re.IGNORECASE,
)
"""A space named by its chains, number first: "next 2-ch sp"."""
ONE_OF_THEM = re.compile(
    r"\b(?:next|each|same|last|the|any|first|every|corner)\s$", re.IGNORECASE
)
"""Before the number, these tell that it is of chains and not of spaces."""
INTO_ONE = re.compile(r"\b(?:into|in|to|under|over|from|\d+|one|two|four)\s$", re.IGNORECASE)
"""The same before one space, "(dc, ch 2, dc) into 2 ch-sp", "4 2 ch-sp"."""


PARTED = Sought(("ch -",), r"\b(?P<ch>ch) -(?P<n>\d)(?= ?(?:sp|lp|loop))", re.IGNORECASE)
"""A space in the name that a copy put in: "ch -2 sp"."""


TURNING = Sought(("t-ch", "t ch"), r"\b[tT][- ]ch\b")
HYPHENS = Sought(
    ("-sp", "-lp", "-loop"), r"\b(ch[- ]\d{1,2})-(?=(?:sp|lp|loop|space)s?\b)", re.IGNORECASE
)
"""Too many of them: "ch-2-sp"."""
IN_BRACKETS = re.compile(
    r"\((?P<name>ch ?-?\d{1,2})\)(?= ?(?:sps?|spaces?|lps?|loops?|arch)\b)", re.IGNORECASE
)
"""A space named by its chains between brackets: "next (ch 5) loop"."""
CLOSED_BY = re.compile(
    r"\(\s*(?:ch ?-?\d{1,2}|\d{1,2} ?ch)\s*(?:\+|and|&|,)\s*\d? ?[a-z]{2,5}\s*\)"
    r"(?= ?(?:sps?|spaces?|lps?|loops?)\b)",
    re.IGNORECASE,
)
"""How the loop was closed that is worked into: "that (ch 1 + 1 dc) space"."""
MARKED_BEHIND = Sought(
    (")*",), r"(?<=\))\*(?=\s*,?\s*(?:rep(?:eat)?\b|\d+ ?(?:times|x)\b|x ?\d))", re.IGNORECASE
)
"""A star behind a bracket marks what the bracket holds: "(ch 4, sc in next st)* repeat 8 times"."""


ALONE = Sought(
    ("-ch",),
    r"(?P<at>\b(?:next|same|each|last|into|over|under|first|every|corner|in|to)\s)"
    r"(?P<n>\d{1,2})-ch(?![\w-]|[ ](?:sp|space|lp|loop|arch|corner|gap))",
    re.IGNORECASE,
)
"""A space named by its chains alone: "4 d c in next 4-ch"."""


def chains_first(text: str) -> str:
    """The text with the number behind its chains; "2 ch sps" may be two spaces and stays."""
    text = MARKED_BEHIND.sub(" ", text)
    text = CLOSED_BY.sub(lambda found: " " * len(found.group()), text)
    text = IN_BRACKETS.sub(lambda found: f" {found['name'].replace('ch ', 'ch-')} ", text)
    text = PARTED.sub(lambda found: f"{found['ch']}-{found['n']} ", text)
    text = ALONE.sub(lambda found: f"{found['at']}ch-{found['n']}", text)
    text = SPACE_OF.sub(_turned_about, TURNING.sub("tch ", text))
    return HYPHENS.sub(lambda found: f"{found[1]} ", text)


def _turned_about(said: re.Match[str]) -> str:
    before = said.string[max(0, said.start() - 9) : said.start()]
    if INTO_ONE.search(before) and not said["many"]:
        return f"ch{said['gap'] and '-'}{said['n']}"
    one = ONE_OF_THEM.search(before) or int(said["n"]) > 1
    if said["gap"] != "-" and (said["many"] or not one):
        return said.group()
    return f"ch{said['gap']}{said['n']}{' ' * len(said['dot'])}"
