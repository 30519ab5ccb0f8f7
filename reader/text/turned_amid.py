"""Clean text of crochet -> the same text, length kept, where rows without labels are told in one
sentence, "ch 13, ..., ch 3, turn, 1 sc in each of next 9 sc, ..., ch 3, turn, * ..., ch 3, turn,
repeat from * 5 times": each is a sentence of its own, and the repeat is of the last row.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

LABELLED = re.compile(
    r"\b\d{1,3}(?:st|nd|rd|th|d)\.? (?:row|rnd|round)|\b(?:row|rnd|round|r)s? ?\d"
    r"|^\s*\d{1,3}(?:st|nd|rd|th)\b",
    re.IGNORECASE | re.MULTILINE,
)
"""A paragraph whose rows have labels."""
TURNS = Sought(
    ("turn,",),
    r"\bturn,(?P<gap>\s+)(?P<star>\*\s*)?(?=(?:picking|working|then|\d+ (?:s ?c|d ?c|h ?d ?c|tr)\b"
    r"|(?:s ?c|d ?c|h ?d ?c|tr|sl st) (?:in|over|across)\b|ch(?:ain)? \d+,|skip|miss"
    r"|(?:(?:\d+|an?|one|two)\s)?(?:doubles?|trebles?|singles?)\s(?:in|into|on)\b"
    r"|work(?:ing)?\sback\b|back\swith\b)"
    r"(?![^,]{0,40}(?:from (?:the )?hook|of (?:the )?ch)))",
    re.IGNORECASE,
)
"""Where the work is turned and goes on in the same sentence."""
AGAIN = re.compile(
    r"\bturn,(?P<gap>\s+)(?P<again>rep(?:eat)? from (?:the )?\*)", re.IGNORECASE
)
BEHIND = re.compile(r"\s+(?:\d+ times(?: more)?|twice|once)(?: more)?(?P<comma>,)?")
BEGUN = re.compile(r"(?<=turn\.\s)(?:an?|one|two|doubles?|trebles?|work|back)\b")
"""A sentence so parted begins as one does."""
LAST_ROW = "Rep last row"


def turned_amid(text: str) -> str:
    """The text with such rows parted."""
    if TURNS.search(text) is None:
        return text
    return "".join(map(_parted, re.split(r"(\n\s*\n)", text)))


def _parted(words: str) -> str:
    """A paragraph with its rows parted, where it has several and none has a label."""
    turns = list(TURNS.finditer(words))
    if not turns or len(re.findall(r"\bturn\b", words)) < 2 or LABELLED.search(words):
        return words
    starred = [found for found in turns if found["star"]]
    again = list(AGAIN.finditer(words))
    if len(again) != len(starred) or words.count("*") != 2 * len(starred):
        return words
    for first, last in zip(starred, again, strict=True):
        between = words[first.end() : last.start()]
        if last.start() < first.end() or re.search(r"\bturn\b", between):
            return words
    out = TURNS.sub(lambda found: _sentence(found["gap"], found["star"] or ""), words)
    for found in reversed(again):
        out = _last_row(out, found)
    return BEGUN.sub(lambda found: found[0].capitalize(), out)


def _sentence(gap: str, star: str) -> str:
    return f"turn.{gap}{' ' * len(star)}"


def _last_row(words: str, found: re.Match[str]) -> str:
    behind = BEHIND.match(words, found.end())
    said = f"turn.{found['gap']}{LAST_ROW.ljust(len(found['again']))}"
    rest = words[found.end() :]
    if behind is not None and behind["comma"]:
        at = behind.start("comma") - found.end()
        rest = f"{rest[:at]}.{rest[at + 1 :]}"
    return words[: found.start()] + said + rest
