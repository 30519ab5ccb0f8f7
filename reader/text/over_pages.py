"""Rows that a page's end broke off in mid-sentence, "K2, yo, knit until / (empty lines, a picture,
a rule, the page's title) / 4 sts remain", and lines that end before the number of another row, "as
/ row 3.", brought together again; length kept.
"""

from __future__ import annotations

import re

_WORD = (
    r"(?:to|in|into|of|next|until|till|the|and|from|each|every|rep|repeat|first|last|with|for|an?"
    r"|then|on|over|same|more|between|through|following|foll|as|by|or)"
)
BROKEN = re.compile(
    rf"(?:,|[(\[]|\b{_WORD}|\b(?:until|next|last|first|of|to|over|ch|[kp]) \d{{1,3}})[ ]*$",
    re.IGNORECASE,
)
"""How no row ends."""
GOES_ON = re.compile(
    r"\s*(?!(?:(?:next |last |following )?(?:row|rnd|round)|note|fasten|finish)\b|r\d"
    r"|\d+(?:st|nd|rd|th)\b[^,]{0,12}(?:row|rnd|round)|\d+[.:)])(?:[a-z\d(*\[)\]]|[KP][ \d])"
)
"""How a row goes on, and nothing begins."""
BETWEEN = re.compile(
    r"\s*(?:[-=_*~ ]{3,}|!\[[^\]]*\]\([^)]*\)"
    r"|[(\[](?:photo|picture|image|fig|cont)[^()\[\]]{0,40}[)\]]"
    r"|[©\u00a9].{0,80}|\(c\).{0,80}|[A-Z][\w']*(?: [\w'&-]+){0,5} [-—|] \d{1,3})\s*",
    re.IGNORECASE,
)
"""What a page has between: a rule, a picture, whose it is, its title and number."""
FARTHEST = 7
"""Lines that may stand between."""


BEFORE_NUMBER = re.compile(
    r"\b(?P<before>as|rep|rep\.|repeat|like|from|of|to|and|in|on|until|till|through|than|for|rows?"
    r"|rnds?|rounds?|last|next|first|same|ch|sl|over|[kp]\.?)[ \t]*\n[ \t]*"
    r"(?=(?P<row>(?:rows?|rnds?|rounds?) \d)|\d+(?:st|nd|rd|th)?\b)",
    re.IGNORECASE,
)
"""A line's end before the number of another row, or of stitches."""
ENDS_A_ROW = re.compile(
    r"(?:k|p|rows?|rnds?|rounds?|sl|ch|next|last|first|same|over)\.?", re.IGNORECASE
)


MANY_ROWS = re.compile(r"\d+ (?:more )?(?:rows?|rnds?|rounds?)\b", re.IGNORECASE)
NUMBERED = re.compile(r"\d+(?:-\d+)?[.:)]")


def _with_numbers(text: str) -> str:
    """The text without such a line's end."""
    return BEFORE_NUMBER.sub(_joined, text)


def _joined(found: re.Match[str]) -> str:
    ends = ENDS_A_ROW.fullmatch(found["before"]) is not None
    labelled = NUMBERED.match(found.string, found.end()) is not None
    amid = found.string.endswith(", ", 0, found.start())
    alone = not amid and found["before"].lower().rstrip(".") in ("k", "p")
    if alone and (found.string.endswith(": ", 0, found.start()) or not MANY_ROWS.match(
        found.string, found.end()
    )):  # fmt: skip
        # A row may be one word, "Row 3: k", and what stands below it begins with a number.
        return found.group()
    if ends and (found["row"] or (labelled and not amid)):
        # "1-3. k" over "4. k2tog": the number labels a row.
        return found.group()
    return found["before"].ljust(len(found.group()))


def brought_together(text: str) -> str:
    """The text with such rows on one line; any other text as it is."""
    text = _with_numbers(text)
    lines = text.split("\n")
    out, at = [lines[0]], 0
    while at < len(lines) - 1:
        after = _after_break(lines, at)
        if after is None:
            out += ["\n", lines[at + 1]]
            at += 1
        else:
            out += [" " * (len(one) + 1) for one in lines[at + 1 : after]] + [" ", lines[after]]
            at = after
    return "".join(out)


def _after_break(lines: list[str], at: int) -> int | None:
    """The line that goes on behind a page's end with what the line at `at` began; None where no
    page ends there.
    """
    line = lines[at]
    follows = lines[at + 1]
    if not line.strip() or (follows.strip()[:1].isalnum() and not follows.startswith("\f")):
        return None
    broken = BROKEN.search(line) is not None
    if not broken and line.count("(") <= line.count(")") and line.count("[") <= line.count("]"):
        return None
    after, between = at + 1, 0
    while after < min(len(lines), at + FARTHEST):
        one = lines[after]
        if one.strip():
            if BETWEEN.fullmatch(one) is None:
                break
            between += 1
        after += 1
    else:
        return None
    ended = after > at + 1 or lines[after].startswith("\f")
    return after if ended and between < 3 and GOES_ON.match(lines[after]) else None
