"""Crochet text -> the same text, length kept, with the chain that a foundation row begins in told
as most tell it: "sc in each ch starting from the 2nd ch from hook", "insert hook in 2nd ch from
hook, sc in each ch", "make 1 ch, turn".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_NTH = r"(?:the )?(?:2nd|3rd|4th|second|third|fourth) (?:ch|chain|st|stitch)\b"
BEHIND = Sought(
    (" starting", " beginning"),
    r"(?P<each>\b(?:each|every) (?:ch(?:ain)?|st|stitch)(?: across| along| to (?:the )?end)?) "
    rf"(?=(?:starting|beginning) (?:in|with|from|at|on) {_NTH})",
    re.IGNORECASE,
)
INSERTED = Sought(
    ("insert hook in", "working in"),
    r"\b(?P<lead>insert hook|working) in(?:to)? (?P<nth>"
    rf"{_NTH} from (?:the )?hook), (?=(?:work )?(?:1 )?(?:[shd]{{1,2}}c|h?tr) in each\b)",
    re.IGNORECASE,
)
PLACE_FIRST = Sought(
    ("from hook", "from the hook"),
    rf"(?P<lead>[:.] |^)in (?P<nth>{_NTH} from (?:the )?hook),? (?:work |make )?(?P<st>(?:1 |one )?"
    r"(?:[shd]{1,2}c|h?tr))(?=,| and| then|;)",
    re.IGNORECASE | re.MULTILINE,
)
ONE_TO_TURN = Sought(
    (", make ",),
    r"(?<=, )make (?=(?:[1-4]|one|two|three) ch(?:ain)?s?,? (?:and |& )?turn\b)",
    re.IGNORECASE,
)


def first_chains(text: str) -> str:
    """The text so put; any text goes in."""
    text = BEHIND.sub(r"\g<each>,", text)
    text = INSERTED.sub(_starting, text)
    text = PLACE_FIRST.sub(_stitch_first, text)
    return ONE_TO_TURN.sub(lambda found: " " * len(found.group()), text)


def _starting(found: re.Match[str]) -> str:
    return f"starting in {found['nth']}, ".rjust(len(found.group()))


def _stitch_first(found: re.Match[str]) -> str:
    said = f"{found['lead']}{found['st']} in {found['nth']}"
    return said.ljust(len(found.group()))
