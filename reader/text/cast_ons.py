"""Clean text -> the same text, length kept, with a cast on as most write it: "cast-on 31", "Caston
31", "C.O. 31", "c/o 31", "Begin by casting on 31" and "Cast on: 31" read as "cast on 31"; how it is
done, "(knitted cast on)", turned to spaces; how many put before for what, and on which needles.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_NUMBER = rf"(?=(?:\d|(?:{SPELLED})\b))"
WRITTEN = Sought(
    ("caston", "cast on", "cast-on", "casting", "o.", "c/o", "set on", "throw on", "loop on",
     "lay on", "put up"),
    r"\b(?:(?P<word>(?:(?:begin|start)(?:ning|ing)? (?:by|with) casting|cast)[ -]?on\b)"
    r"(?:\s*[:=—-])?"
    rf"|c\.\s?o\.|c/o|\b(?:set|throw|loop|lay) on\b|\bput up\b)(?:\s+a total of)?\s+{_NUMBER}",
    re.IGNORECASE,
)
BOUND = Sought(
    ("b.", "b/o"),
    rf"\b(?:b\.\s?o\.|b/o)(?=\s+(?:next |first |all |in |rem))|\b(?:b\.\s?o\.|b/o)\s+{_NUMBER}",
    re.IGNORECASE,
)
"""Stitches bound off, by their letters."""
RAISED = Sought(
    ("rais",),
    r"\brais(?:e|ing)(?=\s+(?!1\b|one\b|a\b)"
    rf"(?:\d+|{SPELLED})\s+(?:stitches|sts|loops)\b)",
    re.IGNORECASE,
)
"""Stitches taken up from an edge, in old books, to begin a piece."""
MANNER = Sought(
    ("caston", "cast on", "cast-on"),
    r"(?<=sts|.es)\.?\s*\((?![^()]*\d)(?:[^()]{0,60} )?cast[ -]?on\b[^()]{0,60}\)", re.IGNORECASE
)
"""In which way, behind the number: "CO 31 sts (knitted cast on)"."""


COLOUR_FIRST = Sought(
    ("cast on ", "cast-on "),
    r"(?P<cast>\bcast[ -]on )(?:with|in|using) (?:the )?[a-z]{3,12}(?: [A-Z])? "
    r"(?=\d{1,4} (?:sts?|stitches)\b)",
    re.IGNORECASE,
)
"""What is cast on with, before how many: "cast on with grey 108 sts"."""
FOR_WHAT = Sought(
    ("cast", "co"),
    r"(?P<cast>\b(?:cast(?:ing)?[ -]on|co),?\s+)"
    r"(?P<what>(?:for|with|using|in|loosely|rather|very)\s"
    rf"(?!\d)(?:(?!\b(?:{SPELLED}|needles?|each|and (?:knit|k|purl|p|work|join)|then)\b)"
    r"[^.;:()\n\d]|\n(?!\n)){2,50}?,?\s)"
    rf"(?P<n>(?:\d{{1,3}}|{SPELLED})(?:\s+or\s+\d{{1,3}})?)\s+(?=sts\b|stitches\b|loops\b)",
    re.IGNORECASE,
)
"""For what or how, before how many: "cast on for the back 100 stitches", "100 or 110"."""
NEEDLES_FIRST = Sought(
    ("cast", "co ", "set"),
    r"\b(?:cast|set)(?:ing)?\s+(?:on|up)?\s*(?:(?:on|upon|on\s+to|onto)\s+)?(?:each\s+of\s+)?"
    rf"(?P<needles>[2345]|two|three|four|five)\s+(?:\w+\s+)?(?:needles|pins),?\s+(?P<n>\d{{1,3}}"
    rf"|{SPELLED})\s+(?:stitches|sts|loops)(?:\s+(?:on|to|upon)\s+each(?:\s+(?:needle|pin|one))?"
    r"|\s+each)?(?=\s*[.,;:(])",
    re.IGNORECASE,
)
"""On how many needles, before how many on each: "cast on three needles 20 stitches each"."""
THREE_NEEDLES = Sought(
    ("needle",),
    r"(?:\b(?:work|do|join(?:ing)?\s[^.;:\d]{0,40}?\b(?:with|by|using)|(?:bind|cast)\s+off"
    r"\s[^.;:\d]{0,40}?\b(?:with|by|using|in)|(?:use|using))|(?:^|(?<=[.;:]\s))with)\s+"
    r"(?:(?:an?|the)\s+)?(?:3|three)[ -]needles?\s+(?:bind|cast)(?:ing)?[ -]?off"
    r"(?:\s+(?:method|technique|seam))?(?=\s*(?:[.;]|$)"
    r"|\s+(?:to|on|across|at|for)\b[^.;\d]*(?:[.;]|$))",
    re.IGNORECASE | re.MULTILINE,
)
"""All stitches bound off with those of another needle, named by its manner."""
_N = rf"(?:\d{{1,3}}|{SPELLED})"
_STS = r"(?:\s+(?:stitches|sts|loops))?"
_NEEDLE = r"(?:\s+(?:needle|pin)s?)?"
BY_NEEDLES = Sought(
    ("cast", "co ", "set"),
    rf"\b(?:cast|set)(?:ing)?\s+(?:on|up)\s+(?P<a>{_N}){_STS}\s+(?:up)?on(?:to)?\s+(?:the\s+)?"
    rf"(?:first|1st|one){_NEEDLE},?\s+(?:and\s+)?(?P<b>{_N}){_STS}\s+(?:up)?on(?:to)?\s+"
    r"(?:(?P<each>each\s+of\s+(?:the\s+)?(?:other\s+)?(?P<n>[234]|two|three|four)(?:\s+others)?)"
    rf"|(?:the\s+)?(?:second|2nd|other|another))\b{_NEEDLE}(?:,?\s+(?:and\s+)?(?P<c>{_N}){_STS}\s+"
    rf"(?:up)?on(?:to)?\s+(?:the\s+)?(?:third|3rd|last)\b{_NEEDLE})?",
    re.IGNORECASE,
)
"""How many lie on each needle, and not how many they are: all of them together."""
SIDE_STITCHES = Sought(
    ("side", "edge", "selv", "heel", "flap"),
    rf"(?P<lead>\b(?:take|pick)(?:ing)?\s+up\s+{_N}\s+)(?P<kind>(?:side|edge|selv[ae]d?ge|heel|flap)"
    r"[- ]\s?)(?=(?:stitches|sts|loops)\b)",
    re.IGNORECASE,
)
""" "Take up 10 side-stitches": where they are taken from, in the midst."""
EACH = re.compile(r"\beach\b", re.IGNORECASE)


def cast_ons(text: str) -> str:
    """The text with such words put right; any text goes in, its length stays."""
    text = SIDE_STITCHES.sub(lambda found: found["lead"].ljust(len(found.group())), text)
    text = BY_NEEDLES.sub(_all_of_them, text)
    text = FOR_WHAT.sub(_number_first, NEEDLES_FIRST.sub(_on_each, text))
    text = THREE_NEEDLES.sub(lambda found: "bind off".ljust(len(found.group())), text)
    text = COLOUR_FIRST.sub(lambda found: found["cast"].ljust(len(found.group())), text)
    text = RAISED.sub(lambda found: "co".ljust(len(found.group())), text)
    text = BOUND.sub(lambda found: "bo".ljust(len(found.group())), text)
    return MANNER.sub(_spaces, WRITTEN.sub(_usual, text))


def _usual(found: re.Match[str]) -> str:
    told = "cast on" if found["word"] and len(found["word"]) > len("caston") else "co"
    told = told.capitalize() if found.group()[0].isupper() else told
    room = len(found.group())
    return told.rjust(room - 1) + " " if told.lower() == "co" else told.ljust(room)


def _number_first(found: re.Match[str]) -> str:
    return f"{found['cast'].replace(',', ' ')}{found['n']} ".ljust(len(found.group()))


def _on_each(found: re.Match[str]) -> str:
    if not EACH.search(found.group()):
        return found.group()
    told = (found["n"], found["needles"])
    number, needles = (_value(said) for said in told)
    said = f"co {number} sts on each of {needles} needles"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _all_of_them(found: re.Match[str]) -> str:
    often = _value(found["n"]) if found["each"] else 1
    total = _value(found["a"]) + often * _value(found["b"]) + _value(found["c"] or "0")
    return f"co {total} sts".ljust(len(found.group()))


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0


def _spaces(found: re.Match[str]) -> str:
    return " " * len(found.group())
