"""Where a label may stand in a paragraph: only behind a sentence, a bracket or a turn that ends.
"""

from __future__ import annotations

import re

WORK_THE = re.compile(
    r"\b(?:ring|circle|round|chain)\b[^.]{0,60}?\b(?:and|then) work (?:the\s+)?$", re.IGNORECASE
)
"""Before the label of a first round, told in the sentence that closes the ring."""


CAPITALS = re.compile(
    r"(?:NEXT|LAST|\d+(?:st|nd|rd|th|ST|ND|RD|TH))\s+(?:\d+\s+)?(?:ROW|R(?:OU)?ND)S?\s*:"
    r"|1st(?:\s+(?:and|to|&)\s+\d+(?:nd|rd|th))?\s+(?:row|round|rnd)s?\s*:"
)
"""A label in capitals with a colon is one wherever it stands."""
TOTAL_SAID = re.compile(r"(?:STITCH )?(?:COUNT|TOTAL|STITCHES|STS|YOU HAVE)\s*:")
"""In capitals behind a row, how many stitches it has."""


def may_begin(before: str, text: str, spot: int) -> bool:
    """Whether a label may follow these words of its block: only a sentence, a bracket or a turn
    that ends; behind a comma one in capitals.
    """
    if before.rstrip().endswith(",") and CAPITALS.match(text, spot):
        return True
    words = re.sub(r"\.\s?-+$", ".", _without_the(before).rstrip())
    ended = words.lower().endswith(("turn", "join", "--", ".-", ":-"))
    if WORK_THE.search(before):
        return True
    if words and words[-1] not in ".;:)]!—*" and not ended:
        return False
    if COUNTED.search(words) and ROWS_STOPPED.match(text, spot):
        return False
    return not re.search(r"\b(?:rep|repeat|as|of|work|from|for|in)\s*$", words, re.IGNORECASE)


COUNTED = re.compile(r"\d ?[(\[][\d ,;:/—-]+[)\]]$")
ROWS_STOPPED = re.compile(r"(?:rows|rounds|rnds)\.")
"""How many rows, a number for each size, and the word that ends its sentence: "on next 4 (5, 4)
rows. 12 (13, 14) sts."
"""
WINDOW = 200
"""Letters before a label that may say whether it is one; farther back nothing is looked at."""


def last_words(text: str, start: int, spot: int) -> str:
    """The last words of text[start:spot], three of them at least where there are so many."""
    window = text[max(start, spot - WINDOW) : spot]
    return window if len(window.split()) > 3 else text[start:spot]


def _without_the(before: str) -> str:
    """What stands before a label that begins with "The"."""
    bare = before.rstrip()
    if bare == before or bare[-3:].lower() != "the":
        return before
    kept = bare[:-3].rstrip()
    if kept and (kept[-1] not in ".;:!" or len(kept) == len(bare) - 3):
        return before
    return before[: len(kept) + 1] if kept else ""


def ends_sentence(before: str) -> bool:
    """Whether a sentence can begin behind these words."""
    return _without_the(before).rstrip()[-1:] in ("", ".", ";", ":", "!", ")", "]")
