"""Several knitted into one stitch, in whatever words, as "k3 in next st": "knit the next st three
times (front, back, front)", "k into front, back and front of next st", "inc 2 in the centre st",
"make 3 of the middle one"; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, number_said
from reader.text.fitting import fitted
from reader.text.sought import has_any

_N = rf"(?P<n>[2-5]|{SPELLED})"
_TIMES = rf"(?:{_N} times|(?P<once>twice|thrice))"
_PLACE = (
    r"(?:the )?(?P<place>next|same|first|last|cent(?:re|er)|middle|marked|corner|following)"
    r"(?: st(?:itch)?| one| loop)\b"
)
_WORK = r"\b(?:knit|purl|work|make|k|p)(?:ting|ing)? "
_SIDES = (
    r"(?:(?:the )?(?:front|back)(?: loops?)?(?: again)?"
    r"(?:,? (?:and )?(?:then )?(?:in(?:to)? )?|, ?))"
)
SHAPES = (
    re.compile(rf"{_WORK}{_PLACE} {_TIMES}(?: \([^()\n]{{4,40}}\))?(?!,? more)", re.IGNORECASE),
    re.compile(rf"{_WORK}(?:in(?:to)? )?(?P<sides>{_SIDES}{{3,4}}) ?of {_PLACE}", re.IGNORECASE),
    re.compile(
        rf"\binc(?:rease)? (?P<more>[2-4]|two|three)(?: sts)? (?:in(?:to)?|out of) {_PLACE}",
        re.IGNORECASE,
    ),
    re.compile(
        rf"\b(?:work|make)(?:ing)? {_N}(?: sts?| stitches)? (?:in(?:to)?|out of|of|from) {_PLACE}",
        re.IGNORECASE,
    ),
    re.compile(
        r"\b(?P<list>k ?1, ?p ?1, ?k ?1|p ?1, ?k ?1, ?p ?1|knit, purl,? (?:and )?knit),?"
        rf" (?:all )?in(?:to)? (?!(?:the )?last){_PLACE}", re.IGNORECASE,
    ),
    re.compile(rf"(?<=st, )(?:knit|k|work) {_TIMES} in(?:to)? it(?: \([^()\n]{{4,40}}\))?", re.I),
)
IN_CENTRE = re.compile(
    r"(?P<row>\b(?:knit|k|purl|p)(?: across| all(?: sts)?| all the stitches| plain)?), "
    rf"(?:work|mak|knitt?)ing (?:{_TIMES} into|(?P<m>[2-5]|{SPELLED})"
    r" (?:sts? )?(?:of|out of|in(?:to)?)) the (?:cent(?:re|er)|middle) (?:st(?:itch)?|one)",
    re.IGNORECASE,
)
PIECES = ("times", "twice", "thrice", "front", "inc", "make", "mak", "work", "1")
OFTEN = {"twice": 2, "thrice": 3}


def several_in_one(text: str) -> str:
    """The text of a knitted pattern so put; any text goes in."""
    if not has_any(text, PIECES):
        return text
    for shape in SHAPES:
        text = shape.sub(_usual, text)
    return IN_CENTRE.sub(_spread, text)


def _number(found: re.Match[str]) -> int:
    told = found.groupdict()
    if told.get("list"):
        return 3
    if told.get("more"):
        return number_said(told["more"]) + 1
    if sides := told.get("sides"):
        return len(re.findall(r"front|back", sides.lower()))
    once = (told.get("once") or "").lower()
    return OFTEN.get(once) or number_said(told.get("n"))


def _usual(found: re.Match[str]) -> str:
    number, place = _number(found), found.groupdict().get("place") or "next"
    if not 1 < number < 6:
        return found.group()
    return fitted(f"k{number} in {place} st", found.group())


def _spread(found: re.Match[str]) -> str:
    number = number_said(found["m"]) or _number(found)
    said = f"{found['row']}, inc {number - 1} sts evenly"
    return fitted(said, found.group()) if number > 1 else found.group()
