"""What is set right before reading, length kept so that every offset stays: a file's own comment
lines, addresses of links, a letter l for a 1.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

ENTRY = re.compile(r"#+ [\w][\w -]{0,30}: ")
"""One thing said of the file: a name, a colon, its value."""
LEAST = 2
"""Such lines, for a run of comment lines to be the file's own; one alone may be a heading."""


LINK = re.compile(r"\[([^\]\n]{1,80})\]\(\s*https?://[^)\s]*\s*\)")


def without_links(text: str) -> str:
    """The text with the addresses of links turned to spaces; the words that are linked stay."""
    return LINK.sub(lambda m: " " + m.group(1) + " " * (len(m.group()) - len(m.group(1)) - 1), text)


ELL = re.compile(
    r"l(?:(?<![\w'./-]l)|(?<=\b[Cc]h-l))(?![\w'./-])(?!(?<=\b[sS] l) st\b)"
    r"|[lI](?:(?<![\w'][lI])(?<!\b[sS] l)(?=\s+(?:sc|dc|hdc|tr|st|s c|d c|ch|more)\b)"
    r"|(?<=\b(?:ch|sc|dc|tr|Ch|Sc|Dc|Tr) l)(?![\w'])"
    r"|(?<=\b(?:row|rnd|Row|Rnd|ROW|RND) l)(?![\w']))"
)


OHS = re.compile(r"[oO](?<=\d[oO])(?=[\s):.,;\]/\d-]|$)")
ELL_DIGIT = re.compile(r"[lI](?:(?<![\w'][lI])(?=\d{1,2}\b)|(?<=\b\d[lI])(?=[\s):.,;\]/-]|$))")
TEN = re.compile(
    r"10(?= (?:next|each|same|first|last|the|ring)\b)"
    r"(?:(?<=\b(?:sc|dc|tr|st|Sc|Dc|Tr) 10)|(?<=\b(?:hdc|sts) 10))"
)
"""Of these the letter that is looked for comes first, and what stands before it after: so the
engine leaps from one to the next.
"""


SPOILED_SC = re.compile(
    r"5(?= c\b)(?<=\b(?:next|each|last|same) 5)|5(?= c\b)(?<=\b(?:center|centre|middle) 5)"
    r"|5(?= c\b)(?<=\b(?:1st|2nd) 5)|5(?= c\b)(?<=\bfirst 5)"
)
"""A letter that a copy took for a figure: "in center 5 c of group", "top of last 5 c"."""


def with_ones(text: str) -> str:
    """The text with letters that a copy put for figures set right (l for 1, O for 0), and a 10 put
    for "in".
    """
    text = SPOILED_SC.sub("s", text) if "5 c" in text else text
    return TEN.sub("in", ELL_DIGIT.sub("1", OHS.sub("0", ELL.sub("1", text))))


LIGATURES = Sought(
    ("fi ", "ti "),
    r"\b(?P<first>[Ff]i|ti|ffi) (?P<rest>(?<=[Ff]i )[a-z]+|(?<=ti )(?:mes?|ght\w*|ll|ps?|tch\w*)"
    r"|(?<=ffi )[a-z]+)\b"
)
"""Letters that print as one, after which a copy put a space: "fi rst", "ti mes"."""


def joined_ligatures(text: str) -> str:
    """The text with such words in one piece, and the space behind them."""
    return LIGATURES.sub(lambda found: f"{found['first']}{found['rest']} ", text)


EMPHASIS = re.compile(r"(?<!\w)__?(?=\S)|(?<=[^\s_])__?(?!\w)")


def without_emphasis(text: str) -> str:
    """The text with the underscores around words, as copies mark italics and bold, turned to
    spaces.
    """
    return EMPHASIS.sub(lambda found: " " * len(found.group()), text) if "_" in text else text


def without_front_matter(text: str) -> str:
    """The text with comment lines at its top turned to spaces where at least two of them are
    entries.
    """
    lines = text.split("\n")
    top = 0
    while top < len(lines) and lines[top].startswith("# "):
        top += 1
    if sum(ENTRY.match(line) is not None for line in lines[:top]) < LEAST:
        return text
    return "\n".join([" " * len(line) for line in lines[:top]] + lines[top:])


ANY_NUMBER = Sought(
    ("number", "multiple"),
    r"\b(?P<verb>cast on|set up)\s+(?:any|an?|some)\s+(?:(?:even|odd|uneven|certain)\s+)?"
    r"(?:number|multiple)\b[^.;:]{0,80}[.;:,]\s*(?:(?:say|for instance|for example|e\.g\.|here)"
    rf",?\s+(?P<said>\d+|{SPELLED})\b|(?P<n>\d+|{SPELLED})(?:\s+stitches|\s+sts|\s+loops)?\s+"
    r"(?:is|are|will be|makes?|will make|form)\s+(?:a |an |the )?(?:very )?(?:good|nice|suitable"
    r"|usual|convenient|sufficient|enough|proper|right|pretty)\b[^.;\n]{0,40})",
    re.IGNORECASE,
)
"""How many stitches any width takes, and then a number that will do."""


def without_any_number(text: str) -> str:
    """The text with "cast on any number that divides by six; ninety-six is a good size" as "cast
    on 96".
    """
    return ANY_NUMBER.sub(_that_number, text)


def _that_number(found: re.Match[str]) -> str:
    said = found["n"] or found["said"]
    number = int(said[:4]) if said.isdigit() else word_number(said)
    return f"{found['verb']} {number} stitches".ljust(len(found.group()))


TICKS = Sought(
    (*"\u2713\u2714\u2705\u2611\u2794\u2192\u21d2\u279c\u25b6\u25ba\u00bb", "=>", ">>"),
    r"(?:[\u2713\u2714\u2705\u2611\u2794\u2192\u21d2\u279c\u25b6\u25ba\u00bb]|={2,3}>|>>)"
    r"(?=\s*[(\[]?\d)",
)
"""Signs that some put before a row's total."""


def without_ticks(text: str) -> str:
    """The text with such a sign as the dash that others put there."""
    return TICKS.sub(lambda found: "\u2014".ljust(len(found.group())), text)
