"""Full stops that end an abbreviation, not a sentence, turned to spaces: "k. 2 tog., p. 1" reads as
"k 2 tog , p 1"; the length stays, so that every offset does.
"""

from __future__ import annotations

import re
from string import ascii_lowercase

from reader.text.dots import short_words, with_spaces

SHORT = frozenset(ascii_lowercase) | frozenset(
    ["kn", "pl", "st", "sts", "stitch", "tog", "rep", "rem", "beg", "inc", "incs", "dec", "decs",
     "sl", "alt", "cont", "contin", "foll", "fol", "follg", "fwd", "wl", "patt", "pat", "prev",
     "nxt", "rd", "rds", "ndl", "ndls", "approx", "incl", "oz", "ozs", "yd", "yds", "meas", "tbl",
     "psso", "yo", "yrn", "yon", "wrn", "yfwd", "wfwd", "rev", "bet", "opp", "ea", "ev", "no",
     "nos", "th", "kwise", "pwise", "turn", "mm", "cm", "cms", "ins", "sq", "str", "col", "cols",
     "sk", "rt", "lt"]
)  # fmt: skip
"""Words that knitting patterns cut short with a full stop. Common practice, no source."""
NOUNS = frozenset(["st", "sts", "rem", "tog", "stitch", "ins", "cm", "cms", "turn", "oz", "ozs"])
"""These may end a sentence, so a figure, a bracket or a star behind them may begin the next."""
ROW = r"(?:rows?|rnds?|rounds?|rds?|needles?|pattern|patt)\b"
LABEL = re.compile(
    rf"(?:\d+(?:st|nd|rd|th|d)(?:\s*(?:,|and|to|&|-)\s*\d+(?:st|nd|rd|th|d))*\s+{ROW}|{ROW}\s*\d+)"
    r"\s*(?:[:.(—]|--)",
    re.IGNORECASE,
)
"""The label of a row, with the mark that ends it."""
NEVER_LAST = frozenset(
    ["foll", "fol", "follg", "alt", "rep", "cont", "contin", "no", "nos", "approx", "prev", "nxt",
     "opp", "ev", "ea", "bet", "incl"]
)  # fmt: skip
"""These end no sentence."""
LETTER_NEXT = re.compile(r"[A-Za-z]\.")
INCHES = re.compile(r"[\d½¼¾⅓⅔] ")
"""Before "in.", a number makes inches of it."""
LETTERS = re.compile(r"(?<![A-Za-z.])(?:[A-Za-z]\.){2,}(?=\s*[a-z\d,;:)*-])")
"""Letters for words, each with its stop: "p.s.s.o.", "t.b.l."."""
BEGINS_ROW = re.compile(
    rf"\d+(?:st|nd|rd|th|d)\b|\d+\s+(?:more\s+)?{ROW}|{ROW}\s*\d|next\s+{ROW}"
    r"|(?:first|second|third|fourth|fifth|last)\s+(?:row|round)",
    re.IGNORECASE,
)
"""What begins a row, so that the stop before it ends a sentence."""
NEXT_ROW = re.compile(rf"\s*(?:{BEGINS_ROW.pattern})", re.IGNORECASE)


BEGINS_LIST = re.compile(r"\*|[(\[]\s*(?:\*|[kp]\s?\d)", re.IGNORECASE)
"""Behind inches, what begins a row's list."""
SPACE = re.compile(r"[^\S\n]*\n?[^\S\n]*")
DONE = frozenset(["inc", "dec", "tbl", "psso", "yo", "yrn", "yon", "yfwd", "b", "f"])
"""Steps that end a row, "kf&b. 22 sts.": how many there are now."""
COUNTED = re.compile(
    rf"(?:\d\d+|[4-9])(?:\s*[(\[][\d,;:\s]+[)\]])? (?:sts|stitches)\.?[^\S\n]*"
    rf"(?:\n|$|(?={BEGINS_ROW.pattern}))",
    re.IGNORECASE,
)
AMID = re.compile(r"(?:last (?:\w+|\d+ \w+)|\d+),? (?:inc|dec)\Z", re.IGNORECASE)
"""Behind other stitches: elsewhere "inc. 12 sts." tells how many are made."""


def without_stops(text: str) -> str:
    """The text with the stops of abbreviations turned to spaces; those that end a sentence stay."""
    places = []
    for at, word, before in short_words(text):
        short = word in SHORT or (word == "in" and INCHES.match(before))
        if not short or before[-1:] in ("'", ".") or LETTER_NEXT.match(text, at + 1):
            continue
        if _goes_on(text, word, at + 1) and not _counted(text, word, at):
            places.append(at)
    for found in LETTERS.finditer(text):
        if not NEXT_ROW.match(text, found.end()):
            places.append(found.end() - 1)
    return with_spaces(text, places)


def _counted(text: str, word: str, at: int) -> bool:
    """Whether the stop ends the last step of a row, and its total stands behind."""
    if word not in DONE or not COUNTED.match(text[at + 1 : at + 40].lstrip(" ")):
        return False
    return word not in ("inc", "dec") or AMID.search(text[max(0, at - 30) : at]) is not None


def _goes_on(text: str, word: str, at: int) -> bool:
    """Whether the sentence goes on behind the stop of a word."""
    behind = SPACE.match(text, at)
    begins = behind.end() if behind else at
    rest = text[begins : begins + 40]
    first = rest[:1]
    if word in NEVER_LAST and first:
        return LABEL.match(rest) is None
    line = behind is not None and "\n" in behind.group()
    if not first or BEGINS_ROW.match(rest) or (line and re.match(r"\d+[.)]\s", rest)):
        return False
    if first.islower() or first in ",;:)]-—/":
        return True
    ends = word in NOUNS
    if first.isdigit():
        glued = at < len(text) and text[at].isdigit()
        return not ends or glued or re.match(r"\d+ (?:more )?times?\b", rest) is not None
    if first in "([*":
        return not ends and not (word == "in" and BEGINS_LIST.match(rest))
    return first.isupper() and at < len(text) and text[at].isupper() and not ends
