"""Spoken words of one instruction in, the fewest that still say it out."""

from __future__ import annotations

import re

_NUMBER_WORD = (
    r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|"
    r"fifteen|sixteen|seventeen|"
    r"eighteen|nineteen|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:-[a-z]+)?|"
    r"[a-z-]+ hundred[a-z -]*)"
)
_BEGINS_WITH_NUMBER = re.compile(rf"^{_NUMBER_WORD} ", re.IGNORECASE)
_NEXT_MANY = re.compile(
    rf"^(?P<what>.+?) in (?:each of )?the next (?P<count>{_NUMBER_WORD})(?: (?:stitches|chains|"
    rf"[a-z ]*crochet|trebles?))?$",
    re.IGNORECASE,
)
_NEXT_ONE = re.compile(r"^(?P<what>.+?) in the next stitch$", re.IGNORECASE)
_EACH = re.compile(
    r" in each (?:stitch|chain|single crochet|double crochet|treble)(?= (?:around|across)\b)",
    re.IGNORECASE,
)


def shortened(said: str) -> str:
    """ "single crochet in the next two stitches" -> "two single crochet"; what has no shorter form
    stays.
    """
    many = _NEXT_MANY.match(said)
    if many:
        if _BEGINS_WITH_NUMBER.match(many["what"]):
            return f"{many['what']} in each of {many['count']}"
        return f"{many['count']} {many['what']}"
    one = _NEXT_ONE.match(said)
    if one:
        if _BEGINS_WITH_NUMBER.match(one["what"]):
            return f"{one['what']} in one"
        return one["what"]
    said = _EACH.sub("", said)
    said = re.sub(r"^skip the next (?=\w)", "skip ", said)
    return re.sub(r" stitch(?:es)?$", "", said) if re.match(r"^(?:skip|knit|purl) ", said) else said
