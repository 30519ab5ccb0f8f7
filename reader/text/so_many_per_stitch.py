"""How many of the row's stitch each stitch gets, told behind it, "sc, one per st", "LP in Fern, two
to every stitch" -> "1 sc per st", "2 LP per st in Fern"; a row that is stitch upon stitch, "dc on
dc" -> "all dc"; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import word_number
from reader.text.fitting import fitted
from reader.text.sought import Sought

_N = r"(?P<n>\d|one|two|three|four)"
_STITCH = (
    r"(?P<what>(?:single|half[ -]double|double|treble)[ ]crochets?|loop[ ]st(?:itch)?(?:es)?"
    r"|[a-z][a-z0-9]{0,9})"
)
_NOUN = r"(?:sts?\b|stitch(?:es)?\b|one\b(?![ ]of)|[shd]{1,2}c\b|h?tr\b)"
_OFTEN = r"(?:(?:always|just|only|simply|all|still|plain|again|exactly|now)[ ,]+)*"
PER_STITCH = Sought(
    ("per ", " each ", " every ", " to a ", " to the "),
    rf"(?P<lead>^[^\S\n]*|[.:;)][^\S\n]+)(?:work[ ]|all[ ])?{_STITCH}"
    rf"(?P<where>[ ]in[ ][a-z]{{1,12}})?(?:[ ](?:all[ ])?(?:plain|around|across|again))?"
    rf"[,:;–—-]+[ ]{_OFTEN}{_N}[ ]"
    rf"(?:(?:in|into|on|for|to|over)[ ](?:each|every)|per|each|to[ ](?:a|the))[ ]{_NOUN}",
    re.IGNORECASE | re.MULTILINE,
)
ONE_BEHIND = Sought(
    ("one per ", "1 per ", "one each ", "1 each "),
    rf"(?<=\d),[ ]{_OFTEN}(?:one|1)[ ](?:per|each)[ ]{_NOUN}(?=\s*(?:[.;(\[,]|$))",
    re.IGNORECASE | re.MULTILINE,
)
"""Behind the rows that it is said of, "sc on 41 and 43, one per st": what a plain row is anyway."""
TO_ONE = Sought(
    (" to ", " for each "),
    rf"(?P<what>\b{_N}[ ](?:[shd]{{1,2}}c|h?tr|(?:half |single |double |treble )+crochets?))"
    r"[ ](?:to (?:an?|one|each|every)|for each)[ ](?P<noun>st(?:itch)?|ch(?:ain)?|sp(?:ace)?)\b",
    re.IGNORECASE,
)
UPON = Sought(
    (" on ", " over ", " upon ", " into ", " above "),
    r"(?P<lead>[.:;)][^\S\n]+|[,;][ ]turn,?[ ])(?P<what>[shd]{1,2}c|h?d?tr)"
    r"[ ](?:on|over|upon|into|above)[ ](?P=what)(?:s\b)?"
    r"(?:[ ](?:all[ ])?(?:the[ ]way[ ])?(?:a?round|across|along|to[ ](?:the[ ])?end))?"
    r"(?=[^\S\n]*(?:[.;(\[=—-]|$))",
    re.IGNORECASE | re.MULTILINE,
)


def so_many_per_stitch(text: str) -> str:
    """The text so put; any text goes in."""
    text = TO_ONE.sub(lambda m: fitted(f"{m['what']} per {m['noun']}", m.group()), text)
    text = ONE_BEHIND.sub(lambda found: " " * len(found.group()), text)
    return UPON.sub(_all_of_it, PER_STITCH.sub(_number_first, text))


def _number_first(found: re.Match[str]) -> str:
    number = found["n"] if found["n"].isdigit() else word_number(found["n"])
    said = f"{found['lead']}{number} {found['what']} per st{found['where'] or ''}"
    return fitted(said, found.group())


def _all_of_it(found: re.Match[str]) -> str:
    return fitted(f"{found['lead']}all {found['what']}", found.group())
