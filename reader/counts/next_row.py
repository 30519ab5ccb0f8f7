"""What the row to come tells of the chain that this row began with: whether its last stitch goes
into the top of that chain, as into a stitch, or the row ends before it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.layout import WrittenNote, WrittenRow

TURNS = re.compile(
    r"(?:(?:^|[.,;:]\s*|\band )(?:\bch(?:ain)?\b ?\d{1,2}|\b\d{1,2} ?ch(?:ain)?)|\bturn(?:ing)?"
    r"|\band)[\s.,;:]*$",
    re.IGNORECASE,
)
"""What stands behind the last stitch of a row: the chain for the next, and the turn."""
TOTAL = re.compile(
    r"\s*(?:[(\[][^()\[\]]*[)\]]|(?:[.;:=]|\s[-—])\s*\d+ ?[\w-]{0,12}(?: \w+)?)[\s.]*$"
)
"""A printed total behind the row."""
CLAUSES = re.compile(r"[,;.]\s|\bthen\b")
_ST = r"(?:st|stitch|ch|chain)"
IN_CHAIN = re.compile(
    rf"\b(?:in|into|on|at|to)\b(?: the)?(?: (?:top|last|end|\d(?:st|nd|rd|th|d)|second|third|fourth"
    rf"|fifth))?(?: {_ST})?(?: of)?(?: the)?"
    r" (?:(?:turning|turn(?:ed)?|t|beginning|beg|end|last|starting|ch|\d)[- ]){0,3}?"
    r"(?:ch(?:ain)?|tch)(?:[- ]\d{1,2})?(?: at (?:the )?(?:other )?end(?: of (?:the )?row)?)?$"
    rf"|\bin(?:to)? (?:the )?(?:\d(?:st|nd|rd|th|d)|second|third|fourth|fifth|top) {_ST}s? of"
    r" (?:the )?\w+(?:[- ]\d{1,2})?(?: ch(?:ain)?)?$",
    re.IGNORECASE,
)
SPACED = re.compile(
    r"\b(?:in|into|over|under|of|between) [^,;.]{0,24}?"
    r"\b(?:loops?|lps?|sps?|spaces?|shells?|fans?|clusters?|groups?|picots?|cent(?:er|re)|mesh(?:es)?"
    r"|scallops?|v[- ]?sts?)\b[^,;.]{0,14}$",
    re.IGNORECASE,
)
"""A row that ends in an opening of the row below."""
WHOLE_IN = re.compile(
    r"\W*(?:[\w. ]{0,12}(?:row|rnd|round)\b[\w ]{0,6}\W*)?\b(?:in|into) (?!each|every|all|both)"
    r"(?:the )?(?:\w+[- ]){0,3}?"
    r"(?:loops?|lps?|sps?|spaces?|shells?)\b,? (?:make|work)\b",
    re.IGNORECASE,
)
"""A row that is worked into one opening: "In ch-2 sp make 2 dc, ch 2, 2 dc"."""
AGAIN_IN = re.compile(r"\b(?:in|into|over|across|around|rep(?:eat)?)\b", re.IGNORECASE)
OPEN = re.compile(
    r"\b(?:rep(?:eat)?|across|around|round|to (?:the )?end|each|every|same|even|patt(?:ern)?)\b",
    re.IGNORECASE,
)
ROUNDS = re.compile(
    r"\bjoin|\bto (?:form|close)\b|\b(?:sl|slip) ?(?:st|stitch)|\bss\b", re.IGNORECASE
)
"""A round that closes: the chain is told of there by other words."""


CAUGHT = re.compile(
    r"\b(?:sl(?:ip)? ?st(?:itch)?|ss|join|fasten|catch)(?:ed)?(?: with (?:a )?sl st)?"
    r" (?:in|into|to|on|over|around)(?: the)?(?: end| edge| turning)?"
    r" (?:(?:ch(?:ain)?)[- ]?\d{1,2}|\d{1,2}[- ]ch(?:ain)?)(?: (?:loop|lp|sp|space))?"
    r" (?:of|in|on) (?:the )?(?:previous|last|1st|first|2nd|second|foundation|row|\d)",
    re.IGNORECASE,
)
"""A row that is caught down to a chain of the row below, which is so a loop and no stitch."""
CALLED = re.compile(r"\W*(?:work )?(?:the )?(?:same as|as|like|repeat|rep)\b", re.IGNORECASE)
"""A row that is told by another: what stands last tells how it differs, not how it ends."""
LIKE = re.compile(
    r"\W*(?:the )?(?:same as|as|like|repeat|rep) (?:the )?(?P<n>\d{1,3})(?:st|nd|rd|th|d)\b"
    r"(?: (?:row|rnd|round))?\W*$",
    re.IGNORECASE,
)
"""A row that is told as another: what ends that one ends it."""


def coming_rows(items: Sequence[WrittenRow | WrittenNote], text: str) -> list[str]:
    """For each item of a part, the words of the next row, "" where none follows."""
    rows = {
        at: " ".join(text[item.start : item.end].split())
        for at, item in enumerate(items) if isinstance(item, WrittenRow)
    }
    told = {
        item.mark.numbers[0]: rows[at] for at, item in enumerate(items)
        if isinstance(item, WrittenRow) and item.mark is not None and item.mark.numbers
    }
    coming: list[str] = []
    words = ""
    for at in reversed(range(len(items))):
        coming.append(words)
        words = rows.get(at, words)
        like = LIKE.match(words) if at in rows else None
        words = told.get(int(like["n"]), words) if like is not None else words
    return coming[::-1]


AMID = re.compile(
    r"\W*(?:making|working|placing|putting|having)\b"
    r"|\W*(?:with )?(?:ch(?:ain)?(?:ing)? ?\d|\d ch(?:ain)?) (?:in )?between\b", re.IGNORECASE,
)
"""What is done somewhere in the row, "dc in each dc across, making 5 dc in ch-3 sp", "ch 1 between
groups".
"""


def chain_is_worked(words: str) -> bool | None:
    """Whether a row so written ends in the top of the chain that the row before began with: True,
    or False where it ends in an opening; None where its words do not tell.
    """
    while True:
        shorter = TURNS.sub("", TOTAL.sub("", words))
        if shorter == words:
            break
        words = shorter
    if WHOLE_IN.match(words) and not AGAIN_IN.search(words[12:]):
        return False
    told = CLAUSES.split(words.strip(" .,;:"))
    last = next((one for one in reversed(told) if not AMID.match(one)), told[-1])
    if (caught := CAUGHT.search(last)) and caught.start() == 0:
        return False
    if ROUNDS.search(last) or (CALLED.match(words) and "end" not in last):
        return None
    if IN_CHAIN.search(last):
        return True
    return False if SPACED.search(last) and not OPEN.search(last) else None
