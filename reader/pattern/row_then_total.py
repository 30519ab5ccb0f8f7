"""A row of one stitch in each, and behind it how many that makes: "hdc in each ch across: 59 hdc",
"dc in each tr making 40 dc" -> the total. So many go into no single stitch.
"""

from __future__ import annotations

import re

from reader.pattern.totals import STITCH, Printed

_NOUN = rf"(?:(?:ch(?:ain)?s?|rem(?:aining)?|one|{STITCH})[ .-]*)"
_FAR = (
    r"(?:a?cross|all (?:a)?round|around|along|(?:to|till?|until) (?:the )?end|of row)"
    r"(?: (?:of|the|this|row|rnd|round|ch|chain))*"
)
EACH = (
    rf"\b(?:each|every) (?:of (?:the )?)?{_NOUN}{{1,2}}(?! ?(?:sps?|spaces?|loops?|lps?)\b)"
    rf"(?:{_FAR})?"
)
LINK = (
    r"[\s,;:.(=—-]*(?:\b(?:thus|thereby|so|now|and|making|makes?|to|giving|gives?|for|being|is|there"
    r"|are|which|that|you|should|will|have|a|total|of)\b[\s:=]*)*"
)
BEHIND = (
    r"(?=\s*(?:$|[.;:)(]|,? ?(?:turn|join|fasten|break|cut|(?:ch|chain) \d|sl st)\b"
    r"|,? ?(?:not |do not )?(?:counting|including|count)\b|, (?:the )?(?:turning|first|ch)\b))"
)
TOTAL = re.compile(
    rf"{EACH}(?P<told>{LINK}(?P<n>\d{{2,4}})(?P<more>\s*[(\[][\d,;:\s]+[)\]]|(?:/\d+)+)?"
    rf" ?(?P<kind>{STITCH})\b\.?{BEHIND})",
    re.IGNORECASE,
)
MANY = 13
"""Stitches: fewer may all go into one place."""


def _behind_each(text: str) -> Printed | None:
    """The total behind the last row of one in each; None where none stands there."""
    every = list(TOTAL.finditer(text))
    if not every or int(every[-1]["n"]) < MANY:
        return None
    last = every[-1]
    start, end = last.start("told"), last.end("told")
    while text[start:end].count("(") > text[start:end].count(")"):
        if text[end : end + 1] != ")":
            return None
        end += 1
    numbers = tuple(int(one) for one in re.findall(r"\d+", last["n"] + (last["more"] or "")))
    kind = re.sub(r"[\s.]+", " ", last["kind"].lower()).strip()
    return Printed(start, end, numbers, kind)


def without_each(text: str, found: list[Printed]) -> str:
    """The text without such a total, which is put to those found; as it is where one is known."""
    one = _behind_each(text) if not found else None
    if one is None:
        return text
    found.append(one)
    return text[: one.start] + " " * (one.end - one.start) + text[one.end :]
