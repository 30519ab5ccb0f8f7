"""Crochet text -> the same text, length kept, where what an oval gains at its two ends is told by
end: "sc with 6 extra spread over each end", "and at each end 12 times 2 in a st", "2 into every
third of the 24 curve sts of each end" -> "inc 12 evenly", how many in the round.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, ordinal_number, word_number
from reader.text.fitting import fitted
from reader.text.sought import Sought

_N = rf"(?:\d{{1,2}}|{SPELLED})"
_END = r"(?:(?:short|round|rounded|curved|narrow|of[ ]the)[ ])*(?:ends?|curves?|half[- ]circles?)\b"
_ENDS = rf"(?:(?:each|either|both)(?:[ ]of[ ]the(?:[ ](?:two|2))?)?|the[ ](?:two|2))[ ]{_END}"
_AT = rf"(?:at|over|around|round|in|into|on|to|along|across|for|of)[ ]{_ENDS}"
_STS = r"(?:sts?|stitch(?:es)?)"
_MORE = (
    rf"(?:(?:extra|more|additional|new)(?:[ ]{_STS}|[ ]inc(?:rease)?s)?|inc(?:rease)?s?"
    rf"|{_STS}[ ](?:more|extra))\b"
)
_LESS = rf"(?:(?:fewer|less)(?:[ ]{_STS})?|dec(?:rease)?s?|{_STS}[ ](?:fewer|less))\b"
_SPREAD = r"(?:(?:all[ ])?(?:evenly|equally|spread|spaced|out|apart|distributed|worked)[ ]){0,3}"
_LEAD = r"(?<=[\w)])(?:[,;:]|\.(?=[ ]at\b))?[ ](?:(?:and|then|but|with|by|plus|now)[ ]){0,3}"
_PLAIN = rf"(?:,?[ ](?:with[ ])?{_N}[ ]plain(?:[ ](?:ones?|{_STS}))?[ ]between(?:[ ]them)?)?"
_TWO = (
    rf"(?:(?:put(?:ting)?|work(?:ing)?|mak(?:e|ing)|go)[ ])?(?:(?:2|two)(?:[ ][a-z]{{2,4}})?"
    rf"[ ](?:in|into|to)[ ](?:a|one|the[ ]same|1)[ ](?:{_STS}|one)"
    r"|(?:an?[ ])?inc(?:rease)?)"
)
AT_EACH = Sought(
    ("end", "curve", "circle"),
    rf"{_LEAD}(?:(?P<verb>inc(?:reas(?:e|ing))?|add(?:ing)?|gain(?:ing)?|los(?:e|ing)"
    rf"|dec(?:reas(?:e|ing))?|spread(?:ing)?|work(?:ing)?|mak(?:e|ing))[ ])?(?P<n>{_N})[ ]"
    rf"(?:(?:(?P<more>{_MORE})|(?P<less>{_LESS})|{_STS})[ ])?(?P<spread>{_SPREAD}){_AT}{_PLAIN}",
    re.IGNORECASE,
)
HERE_THERE = Sought(
    ("one ", "here"),
    rf"{_LEAD}(?P<n>{_N})[ ](?:{_MORE}|(?P<less>{_LESS}))[ ]"
    rf"(?:here|(?:at|over|in)[ ]one[ ]{_END}),?[ ]and[ ](?P=n)(?:[ ](?:{_MORE}|{_LESS}))?[ ]"
    rf"(?:there|(?:at|over|in)[ ]the[ ](?:other|second)(?:[ ]{_END})?)",
    re.IGNORECASE,
)
SO_OFTEN = Sought(
    ("end", "curve", "circle"),
    rf"{_LEAD}(?:{_AT},?[ ](?:{_TWO}[ ](?P<n>{_N})[ ]times|(?P<n2>{_N})[ ]times[ ]{_TWO}){_PLAIN}"
    rf"|(?P<n3>{_N})[ ]times[ ](?:{_TWO}[ ]{_AT}|{_AT},?[ ]{_TWO}){_PLAIN})",
    re.IGNORECASE,
)
_EVERY = (
    r"(?:(?:put(?:ting)?|work(?:ing)?|mak(?:e|ing)|go)[ ])?(?:(?:2|two)(?:[ ][a-z]{2,4})?[ ]"
    r"(?:in|into|to)|(?:an?[ ])?inc(?:rease|reasing)?[ ]in(?:to)?|doubling)[ ]every[ ]"
    rf"(?P<nth>\w{{2,8}})(?:[ ](?:one|{_STS}))?[ ]of[ ]"
)
_OF = rf"the[ ](?P<all>{_N})(?:[ ](?:curve|end|curved))?(?:[ ]{_STS})?"
OF_THE_CURVE = Sought(
    ("every ",),
    rf"{_LEAD}(?:{_AT},?[ ]{_EVERY}{_OF}|{_EVERY.replace('<nth>', '<nth2>')}"
    rf"{_OF.replace('<all>', '<all2>')}[ ]{_AT})"
    rf"|(?<=\w)[.,;:][ ](?:each|either)[ ]{_END}[ ]has[ ](?P<all3>{_N})[ ]"
    rf"(?:curve[ ]|end[ ])?{_STS}(?:[ ](?:by[ ])?now)?[:;,.-]+[ ]"
    rf"{_EVERY.replace('<nth>', '<nth3>')}(?:them|these|those)",
    re.IGNORECASE,
)


def more_at_ends(text: str) -> str:
    """The text so put; any text goes in."""
    text = OF_THE_CURVE.sub(_of_the_curve, text)
    return SO_OFTEN.sub(_so_often, HERE_THERE.sub(_twice, AT_EACH.sub(_at_each, text)))


def _at_each(found: re.Match[str]) -> str:
    verb = (found["verb"] or "").lower()
    told = found["more"] or found["less"] or verb.startswith(("add", "gain", "los"))
    if not told and not (verb.startswith(("inc", "dec")) and found["spread"]):
        # "inc 2 sts at each end" is read as it stands.
        return found.group()
    less = found["less"] or verb.startswith(("los", "dec"))
    return _put(found, _value(found["n"]), "dec" if less else "inc")


def _twice(found: re.Match[str]) -> str:
    return _put(found, _value(found["n"]), "dec" if found["less"] else "inc")


def _so_often(found: re.Match[str]) -> str:
    return _put(found, _value(found["n"] or found["n2"] or found["n3"]), "inc")


def _of_the_curve(found: re.Match[str]) -> str:
    total = _value(found["all"] or found["all2"] or found["all3"])
    said = (found["nth"] or found["nth2"] or found["nth3"]).lower()
    figures = re.match(r"\d+", said)
    step = 2 if said == "other" else ordinal_number(said) or 0
    step = int(figures.group()) if figures else step
    if step < 1 or total % step:
        return found.group()
    return _put(found, total // step, "inc")


def _put(found: re.Match[str], at_one_end: int, way: str) -> str:
    whole = found.group()
    return fitted(f", {way} {2 * at_one_end} evenly", whole) if at_one_end else whole


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0
