"""Notes that stand behind a row's words on its line, "6 inc = 12 sc Note: pm on first sc", turned
to spaces where nothing that counts is told in them; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

NOTE = Sought(
    ("note", "tip:", "hint:", "nb:"),
    r"(?<=[\w.;)\]] )[(\[]?(?:\*+ ?)?(?:note|tip|hint|nb|side note|please note):[^\n]*$",
    re.IGNORECASE | re.MULTILINE,
)
COUNTS = re.compile(
    r"\bcount|\bch(?:ain)?s?[ -]?\d|\d ?ch(?:ain)?s?\b|\bstands? for|\bevery"
    r"|\ball (?:rows|rounds|rnds)|\bthroughout|\brepeat",
    re.IGNORECASE,
)
"""What a note may say that other rows are read by."""
ASIDE = re.compile(
    r"[(\[]\*?(?:no need|from (?:now|here) on|you(?: will|'ll| may| might| can| won't)\b(?! have)"
    r"|this is\b|this will|it will|don't worry|be careful|careful|optional|hint|just"
    r"|see (?:photo|pic|note|video))[^()\[\]\d]{0,160}[)\]]",
    re.IGNORECASE,
)
"""A bracket that only speaks to the maker."""
OF_CHAIN = re.compile(r"\bheight\b|first (?:st|[hd]?dc|sc|h?tr)\b", re.IGNORECASE)
"""What such a bracket may say of the chain before it."""
CARE = Sought(
    ("sure", "careful", "take care", "remember", "forget", "try"),
    r"(?<=[.;!)\]] )(?:please )?(?:(?:make|be) sure|be careful|take care|remember|do(?:n.?t| not) "
    r"forget|try)\b[^.;()\[\]*\d\n]*\b(?:tails?|yarn|thread|wool|twist\w*|loose\w*|tight\w*"
    r"|tension|over (?:the |your )?(?:first |beginning |starting )?(?:ch(?:ain)?s?|ring|ends?)"
    r"|in(?:to|side)? the (?:ring|chain)|neat\w*|even(?! )|evenly|marker|skip)\b"
    r"[^.;()\[\]*\d\n]*(?:[.;!]|$)",
    re.IGNORECASE | re.MULTILINE,
)
"""A sentence that only asks for care, behind what is to be done: "Be sure to work over the tail."
"""
JOINS = re.compile(r"\b(?:and|then) (?:join|slip|sl st|ss|close)\b", re.IGNORECASE)
ROW = re.compile(
    r"(?:R|rnds?|rounds?|rows?|rds?)?\.? ?\d{1,3}(?:st|nd|rd|th)?\b", re.IGNORECASE
)


def without_row_notes(text: str) -> str:
    """The text without them; any text goes in."""
    text = NOTE.sub(_kept, text)
    text = CARE.sub(_cared_for, text)
    return ASIDE.sub(_without, text)


def _cared_for(found: re.Match[str]) -> str:
    """A sentence that also joins is kept: "Make sure the chain isn't twisted and join it"."""
    said = found.group()
    return said if JOINS.search(said) else " " * len(said)


def _without(found: re.Match[str]) -> str:
    said = found.group()
    return said if COUNTS.search(said) or OF_CHAIN.search(said) else " " * len(said)


def behind_a_label(found: re.Match[str]) -> bool:
    """Whether the line of what was found begins as a row's does."""
    start = found.string.rfind("\n", 0, found.start()) + 1
    return ROW.match(found.string[start : found.start()].lstrip(" \t-*>")) is not None


def _kept(found: re.Match[str]) -> str:
    if not behind_a_label(found) or COUNTS.search(found.group()):
        return found.group()
    return " " * len(found.group())
