"""Knitting text -> the same text, length kept, with rows told in pairs put as rows: "six turns" and
"6 ribs" of plain knitting as "12 rows", "increasing one stitch at each end" behind them as a change
of every other row; "knit around 30 times" as "knit 30 rounds". Worked round, a turn is a round.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_N = rf"(?:\d{{1,3}}|{SPELLED})"
IN_ROUNDS = re.compile(
    r"\b(?:rounds|rnds|each needle|(?:three|four|3|4) (?:\w+ )?(?:needles|pins))\b", re.IGNORECASE
)
_VERB = r"\b(?:knit|knitted|knitting|purl|pearl|work|worked|do|make|for|then)\b"
PAIRS = Sought(
    ("turns", "ribs"),
    rf"(?P<lead>{_VERB}[^.;:\d]{{0,60}}?\s)(?P<n>{_N})\s+"
    r"(?P<how>(?:(?:plain|more|single|full|other|further|such)\s+)*)(?P<what>turns|ribs)\b"
    r"(?!\s+(?:of|wide|apart|across|between))",
    re.IGNORECASE,
)
UNTIL_SO_MANY = Sought(
    ("turns", "ribs"),
    rf"(?P<lead>\b(?:until|till)\s+(?:you\s+have|there\s+are)\s+)(?P<n>{_N})\s+"
    r"(?P<how>(?:(?:plain|more|single|full)\s+)*)(?P<what>turns|ribs)\b",
    re.IGNORECASE,
)
_WHERE = (
    r"(?:at|on)\s+(?:each\s+end|both\s+ends|one\s+end|the\s+(?:beginning(?:\s+and\s+end)?|end|toe"
    r"|heel|front|thumb|same\s+(?:end|side)))(?:\s+only)?"
)
_PACE = (
    r"(?:of\s+|in\s+|on\s+)?(?:every|each)\s+"
    r"(?:(?P<nth>other|second|2nd|third|3rd|fourth|4th|\d+th)\s+)?(?:turn|rib)\b"
)
CHANGED = Sought(
    ("creas", "narrow", "widen"),
    r"\b(?P<verb>(?:in|de)creas(?:e|ing)|narrow(?:ing)?|widen(?:ing)?)"
    r"(?:\s+(?P<n>one|1|a|two|2)\b)?(?:\s+(?:stitch(?:es)?|sts?|loops?))?(?:\s+only)?,?\s+"
    rf"(?:(?P<where>{_WHERE})(?:\s+of\s+(?:the\s+)?(?:needle|pin|row))?(?:,?\s+{_PACE})?"
    rf"|(?P<first>{_PACE.replace('P<nth>', 'P<nth1>')}),?\s+(?P<where1>{_WHERE})"
    rf"|{_PACE.replace('P<nth>', 'P<nth2>')})(?!\s+of)",
    re.IGNORECASE,
)
"""A change told of turns or ribs, its place before its pace or behind."""
AFTER = re.compile(r"\b(?:turns|ribs)\b(?:(?![.;]).){0,40}$", re.IGNORECASE | re.DOTALL)
PACED = re.compile(r",?\s*(?:of |in |on )?(?:every|each)\b", re.IGNORECASE)
TIMES_ROUND = Sought(
    ("round", "about"),
    r"(?P<verb>\b(?:knit|purl|pearl|rib|work|go))(?P<how>(?: plain)?)\s+"
    rf"(?:(?:a?round|about)\s+(?P<n>{_N})\s+times|(?P<m>{_N})\s+times\s+(?:a?round|about))\b"
    r"(?!\s+(?:the|each|every|a|your))",
    re.IGNORECASE,
)
NTH = {"other": 2, "second": 2, "third": 3, "fourth": 4}


def in_rows(text: str) -> str:
    """The text so put; any text goes in."""
    text = TIMES_ROUND.sub(_rounds, text)
    if not PAIRS.may_stand(text):
        return text
    by = 1 if IN_ROUNDS.search(text) else 2
    text = CHANGED.sub(lambda found: _change(found, by), text)
    text = UNTIL_SO_MANY.sub(lambda found: _so_many(found, by, "for "), text)
    return PAIRS.sub(lambda found: _so_many(found, by, found["lead"]), text)


def _so_many(found: re.Match[str], by: int, lead: str) -> str:
    """ "Knit six turns" as "Knit 12 rows"; the verb gives room where the figures need it."""
    rows = by if found["what"].lower() == "turns" else 2
    kind = "rows" if rows == 2 else "rounds" if len(found["what"]) > len("turn") else "rnds"
    how = "more " if "more" in found["how"].lower() else ""
    whole = found.group()
    for verb in (lead, re.sub(r"(?i)\b(?:knit|work)\b", "do", lead, count=1)):
        for name in (kind, "rnds" if kind == "rounds" else kind):
            said = f"{verb}{rows * _value(found['n'])} {how}"
            if len(said) + len(name) <= len(whole):
                return said + name.rjust(len(whole) - len(said))
    return whole


def _change(found: re.Match[str], by: int) -> str:
    """ "increasing one stitch at each end of every turn" as "inc 1 at each end of alt rows"."""
    nth = found["nth"] or found["nth1"] or found["nth2"]
    told = re.search(r"\b(?:turn|rib)$", found.group(), re.IGNORECASE) is not None or found["first"]
    behind = found.string[found.end() : found.end() + 24]
    after = AFTER.search(found.string, max(0, found.start() - 80), found.start()) is not None
    if not told and (PACED.match(behind) or not after):
        return found.group()
    every = by * (NTH.get(nth.lower()) or int(re.sub(r"\D", "", nth)) if nth else 1)
    return _put(found, every)


def _put(found: re.Match[str], every: int) -> str:
    whole = found.group()
    verb = "inc" if found["verb"].lower().startswith(("inc", "wid")) else "dec"
    number = 2 if (found["n"] or "").lower() in ("two", "2") else 1
    where = " ".join((found["where"] or found["where1"] or "").lower().split())
    both = "each" in where or "both" in where or "and end" in where
    place = " at each end" if both else " at 1 end" if where else ""
    pace = {1: "every row", 2: "alt rows"}.get(every, f"every {every}th row")
    for amount in (f" {number} st", f" {number}", "" if number == 1 else " 2"):
        said = f"{verb}{amount}{place} of "
        if len(said) + len(pace) <= len(whole):
            return said + pace.rjust(len(whole) - len(said))
    return whole


def _rounds(found: re.Match[str]) -> str:
    said = f"{found['verb']}{found['how']} {_value(found['n'] or found['m'])} "
    return said + "rounds".rjust(len(found.group()) - len(said))


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0
