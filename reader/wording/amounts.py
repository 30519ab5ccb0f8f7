"""Lengths, weights, sizes, ranges and fractions as written in, the same in words out."""

from __future__ import annotations

import re
from collections.abc import Callable

from reader.wording.numbers import decimal_words, mixed_words, times_words

_NUMBER = (
    r"(?<![\w./])(?:(?P<whole>\d+(?:\.\d+)?)(?:[ -]?(?P<part>[½¼¾⅓⅔⅛⅜⅝⅞])|"
    r"[ -](?P<slash>\d{1,2}/\d{1,2}))?"
    r"|(?P<only>[½¼¾⅓⅔⅛⅜⅝⅞]|\d{1,2}/\d{1,2}))"
)
_UNITS: tuple[tuple[str, str, str], ...] = (
    (
        r"(?:\"|inch(?:es)?\b\.?|ins?\.(?=[\s,;)]|$)|in\b(?=\s*(?:[,;)./]|$|x\b|wide|long|tall|"
        r"square|high|deep|diameter|from|across|by|and\b|or\b)))",
        "inch",
        "inches",
    ),
    (r"(?:cms?\b\.?|centimet(?:er|re)s?\b)", "centimetre", "centimetres"),
    (r"(?:mms?\b\.?|millimet(?:er|re)s?\b)", "millimetre", "millimetres"),
    (r"(?:kg\b)", "kilogram", "kilograms"),
    (r"(?:g\b|grs?\b\.?|gms?\b\.?|grams?\b)", "gram", "grams"),
    (r"(?:ozs?\b\.?|ounces?\b)", "ounce", "ounces"),
    (r"(?:yds?\b\.?|yards?\b)", "yard", "yards"),
    (r"(?:lbs?\b\.?|pounds?\b)", "pound", "pounds"),
    (r"(?:ft\b\.?|feet\b|foot\b)", "foot", "feet"),
    (r"(?:ml\b)", "millilitre", "millilitres"),
    (r"(?:m\b(?!\s*(?:\d|[a-z]{1,2}\b))|met(?:er|re)s?\b)", "metre", "metres"),
)
_TOOL = (
    r"(?=(?:\s*,[^,]{1,14},)?\s+(?:(?:steel|aluminum|aluminium|crochet|knitting|circular|"
    r"straight|double|"
    r"pointed|wooden|bamboo|plastic|tapestry|safety|long|wide)\s+){0,3}"
    r"(?:hooks?|needles?|dpns?|eyes?|buttons?|beads?|tail|ring|square|circle|balls?|strip|ribbon|"
    r"circulars?)\b)"
)
_RULES: tuple[tuple[re.Pattern[str], str, str], ...] = tuple(
    (re.compile(rf"{_NUMBER}\s?-?{unit}", re.IGNORECASE), one, many) for unit, one, many in _UNITS
)
_BEFORE_TOOL = re.compile(_TOOL, re.IGNORECASE)
_NOUN = re.compile(
    r"\s+(?!(?:from|wide|long|tall|square|high|deep|across|by|and|or|in|of|at|to|x)\b)[a-z]{4,}",
    re.I,
)
_MIXED = re.compile(
    r"(?<![\w./])(?:(?P<whole>\d+)[ -]?)?(?P<part>[½¼¾⅓⅔⅛⅜⅝⅞])|"
    r"(?<![\w./])(?:(?P<w2>\d+)[ -])?(?P<p2>\d{1,2}/\d{1,2})(?![\w/])"
)
_RANGE = re.compile(r"(?<![\w.])(\d+)\s?(?:-|–|—|to)\s?(\d+)(?![\w/])(?!\.\d)")
_UNIT_RANGE = re.compile(
    r"(?<![\w.])(\d+(?:\.\d+)?)\s?(?:-|–|—)\s?(?=\d+(?:\.\d+)?\s?(?:\"|cm|mm|in\b|inch|g\b|oz|yd|"
    r"m\b))"
)
_HOOK_LETTER = re.compile(r"\b([B-U])(?:/[A-Z])?\s?[-/]\s?(?=\d)")
_BY = re.compile(r"(?<=[\d\"m])\s?x\s?(?=\d)", re.IGNORECASE)
_TIMES_AFTER = re.compile(r"(?<![\w])x\s?(\d+)(?:\s*times)?\b", re.IGNORECASE)
_TIMES_BEFORE = re.compile(r"(?<![\w.])(\d+)\s?x(?=\s)", re.IGNORECASE)


def measures_in_words(text: str) -> str:
    """The text with measures, hook letters, ranges, fractions and "x 6" in words; other numbers
    stay digits.
    """
    text = _UNIT_RANGE.sub(lambda m: f"{decimal_words(m.group(1))} to ", text)
    text = _HOOK_LETTER.sub(r"\1 ", text)
    text = re.sub(r"#\s?(?=\d)", "number ", text)
    text = re.sub(r"(?<=\d)\s?°\s?([CF])\b", lambda m: f" degrees {m.group(1)}", text)
    text = re.sub(r"(?<=\d)\s?%", " percent", text)
    text = _BY.sub(" by ", text)
    for rule, one, many in _RULES:
        text = rule.sub(_unit(one, many), text)
    text = _MIXED.sub(_mixed, text)
    text = _RANGE.sub(r"\1 to \2", text)
    text = _TIMES_AFTER.sub(lambda m: times_words(int(m.group(1))), text)
    return _TIMES_BEFORE.sub(lambda m: times_words(int(m.group(1))), text)


def _unit(one: str, many: str) -> Callable[[re.Match[str]], str]:
    def said(found: re.Match[str]) -> str:
        whole, part = found.group("whole"), found.group("part") or found.group("slash")
        if whole is None:
            return _part_of(found.group("only"), one)
        as_noun = found.group().rstrip().lower().endswith(one) and _NOUN.match(
            found.string, found.end()
        )
        single = bool(as_noun or _BEFORE_TOOL.match(found.string, found.end()))
        if part:
            return f"{mixed_words(int(float(whole or 0)), part)} {one if single else many}"
        single = single or float(whole or 0) == 1
        return f"{decimal_words(whole or '0')} {one if single else many}"

    return said


def _part_of(part: str, one: str) -> str:
    """ "half an inch", "three quarters of an inch"."""
    article = "an" if one[0] in "aeiou" else "a"
    words = mixed_words(0, part)
    if words == "a half":
        return f"half {article} {one}"
    return f"{words} of {article} {one}"


def _mixed(found: re.Match[str]) -> str:
    whole = found.group("whole") or found.group("w2")
    return mixed_words(int(whole or 0), found.group("part") or found.group("p2"))
