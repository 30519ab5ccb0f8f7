"""Clean text -> the same text, length kept, with a space named by its chains as most name it: "next
2-ch sp" -> "next ch-2 sp".
"""

from __future__ import annotations

import re

SPACE_OF = re.compile(
    r"(?P<n>\d(?<!\w\d)\d*)(?P<gap>[ -]?)ch"
    r"(?=[ -](?:sp|space|lp|loop|arch|corner|gap)(?P<many>s?)\b)",
    re.IGNORECASE,
)
"""A space named by its chains, number first: "next 2-ch sp"."""
ONE_OF_THEM = re.compile(
    r"\b(?:next|each|same|last|the|any|first|every|corner)\s$", re.IGNORECASE
)
"""Before the number, these tell that it is of chains and not of spaces."""


PARTED = re.compile(r"\b(?P<ch>ch) -(?P<n>\d)(?= ?(?:sp|lp|loop))", re.IGNORECASE)
"""A space in the name that a copy put in: "ch -2 sp"."""


def chains_first(text: str) -> str:
    """The text with the number behind its chains; "2 ch sps" may be two spaces and stays."""
    text = PARTED.sub(lambda found: f"{found['ch']}-{found['n']} ", text)
    return SPACE_OF.sub(_turned_about, text)


def _turned_about(said: re.Match[str]) -> str:
    before = said.string[max(0, said.start() - 9) : said.start()]
    if said["gap"] != "-" and (said["many"] or not ONE_OF_THEM.search(before)):
        return said.group()
    return f"ch{said['gap']}{said['n']}"
