"""Totals that an author sets off in a way of his own, on line after line: "«17 sc»", "<84 dc>",
"*12 tr*", "| 24 |", "7 in the loop ......... 7" -> in round brackets, or behind "="; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_TOTAL = r"(?:(?:=|total:?|count:?|sts?:) ?)?\d{1,4}(?: ?[A-Za-z][^\n«»‹›<>*|~{}]{0,60}?)?"
ANGLES = Sought(
    ("\u00bb", "\u203a", "\u27e9", "\u3011", "\u300d", ">"),
    rf"(?P<open>[«‹⟨【「]|(?<![<\w])<(?!<)) ?(?P<total>{_TOTAL}) ?"
    r"(?P<close>[»›⟩】」]|(?<![-=>])>(?!>))",
)
"""Signs that open and close, and hold a number first: nothing else is told so."""
MARKED = Sought(
    ("*", "|", "~", "/", "#"),
    rf"(?P<before>[.;:)\]\w] +)(?P<mark>[*|~/#])(?P<total>{_TOTAL})(?P=mark)(?P<end>[ \t.]*)$",
    re.MULTILINE,
)
"""At a line's end between two marks alike; one such line may be a list to repeat."""
LEADERS = Sought(
    ("...", ". . .", "____", "-----", "//", "::", ">>"),
    rf"(?P<lead>[ \t]*(?:\.{{3,}}|(?:\. ){{3,}}\.?|_{{4,}}|-{{5,}}|//|::|>>))"
    rf"(?P<gap> ?)(?P<total>{_TOTAL})"
    r"(?=[ \t.]*$)",
    re.MULTILINE,
)
"""Dots that lead the eye to the number at a line's end."""
BEHIND_DEED = Sought(
    ("turn", "join", "yarn", "thread", "fasten off", "across", "around", "end of"),
    r"(?P<deed>\b(?:turn|join(?:ed)?(?:\s(?:in|to|with)\s[^,.;:()]{2,40})?|cut (?:yarn|thread)"
    r"|fasten off|across(?: the)? (?:row|round)|all around|end of (?:row|round)))[,;]\s"
    r"(?P<total>\d{1,4}(?:\s?\([\d, ]+\))?\s(?:sts|stitches|loops|lps"
    r"|mesh(?:es)?|spaces|sps|shells|clusters|groups|popcorns))\.(?=\s|$)",
    re.IGNORECASE,
)
"""What ends a row, and behind it only how many there are: "join in 3rd st of ch, 26 meshes."."""
LEAST = 2


def totals_set_off(text: str) -> str:
    """The text with such totals as usual ones; any other text as it is."""
    text = ANGLES.sub(_in_brackets, text)
    text = BEHIND_DEED.sub(_told_last, text)
    if len(list(MARKED.finditer(text))) >= LEAST:
        text = MARKED.sub(lambda found: f"{found['before']}({found['total']}){found['end']}", text)
    if len(list(LEADERS.finditer(text))) >= LEAST:
        text = LEADERS.sub(_behind_equals, text)
    return text


def _in_brackets(found: re.Match[str]) -> str:
    inner = found.group()[1:-1]
    return f"({inner})"


def _told_last(found: re.Match[str]) -> str:
    return f"{found['deed']}({found['total']})."


SIZES = re.compile(r"\d ?(?:\.{3}|//) ?\d+$")


def _behind_equals(found: re.Match[str]) -> str:
    if SIZES.search(found.string[max(0, found.start() - 12) : found.start()]):
        # "53 ... 57 ... 61": one size more.
        return found.group()
    room = len(found["lead"]) + len(found["gap"])
    return "= ".rjust(room) + found["total"]
