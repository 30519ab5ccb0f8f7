"""What a pattern's notes say of its turning chains: "ch 3 counts as dc throughout", "ch 1 is not a
stitch", "3ch counts as first tr".
"""

from __future__ import annotations

import re

from reader.text.chain_notes import chain_notes
from reader.text.sought import Sought

WORD_NUMBER = {"one": 1, "two": 2, "three": 3}
NO_COUNT = Sought(
    ("count", "not a st"),
    r"(?:\bch(?:ain)?[- ]?(\d|one|two|three)\b|\b(\d)[ -]?ch\b)[^.\n]{0,60}"
    r"\b(?:(?:do(?:es)? not|doesn't|don't"
    r"|never|not)\s+count|(?:is|are) not a st(?:itch)?\b)",
    re.IGNORECASE,
)
COUNTS = Sought(
    ("count", "stand"),
    r"\bch(?:ain)?[- ]?(\d|one|two|three)\b(?![^.\n]{0,50}(?:not|n't|never) count)"
    r"(?:[^.\n]{0,50}\bcounts? as[^.\n]{0,40}(?:throughout|each|every|here|always|in all)"
    r"|(?<=beg ch.\d)[^.\n]{0,30}\b(?:counts? as|stands? for)"
    r"|(?<=beginning ch.\d)[^.\n]{0,30}\b(?:counts? as|stands? for))",
    re.IGNORECASE,
)
TALL = (2, 3, 4, 5)
TOP_OF_CHAIN = Sought(
    ("top of ", "ch of ", "st of ", "chain of ", "nd of ", "rd of ", "th of "),
    r"(?:top of (?:the )?(?:beg(?:inning)?|turning|t-?ch|(?:first|1st)(?= (?:ch|[2-6][- ]?ch))"
    r"|starting|\d)"
    r"[- ]?(?:ch)?|(?:2nd|3rd|4th|5th|6th|third|fourth) (?:ch|st|chain) of (?:the )?"
    r"(?:beg|ch|turning|\d|first|starting|end)"
    r"|(?:2nd|3rd|4th|5th|third|fourth) of (?:the )?(?:beg\w*|first|1st|starting|turning)?[- ]*"
    r"(?:ch[- ]?[2-7]|[2-7][- ]?ch)\b)",
    re.IGNORECASE,
)
TOP_OF_TALL = Sought(("top of ",), r"\btop of (?:the )?ch(?:ain)?[- ]?[3-9]\b", re.IGNORECASE)
"""Joins that show nothing of lower chains."""
TO_FIRST = Sought(
    ("join",),
    r"join(?:ed)?(?: with (?:a )?(?:sl st|ss|slip stitch))? (?:to|in|into) (?:the )?(?:top of "
    r")?first (?:hdc|dc|tr|sc|st)",
    re.IGNORECASE,
)


STANDING = ("standing", "chainless", "chain-less")


def chain_rules(text: str) -> tuple[dict[int, bool], bool | None]:
    """What notes say of turning chains, by height; and whether joins show that chains count."""
    rules: dict[int, bool] = {}
    for note in chain_notes(text):
        heights = note.heights or (TALL if note.counts else (1, *TALL))
        rules.update(dict.fromkeys(heights, note.counts))
    for shape, counts in ((NO_COUNT, False), (COUNTS, True)):
        for found in shape.finditer(text):
            said = next(one for one in found.groups() if one).lower()
            rules[WORD_NUMBER.get(said) or int(said)] = counts
    silent: bool | None = None
    if TOP_OF_CHAIN.search(text):
        silent = True
    elif _joined_to_first(text) and not TOP_OF_TALL.search(text):
        silent = False
    return rules, silent


def _joined_to_first(text: str) -> bool:
    """Whether a round is joined to its first stitch where it does not begin with a standing one,
    which has no chain before it.
    """
    for found in TO_FIRST.finditer(text):
        row = text[text.rfind("\n", 0, found.start()) + 1 : found.start()].lower()
        if not any(word in row for word in STANDING):
            return True
    return False
