"""Text -> the same text, length kept, where the whole of a row is one thing done all the way: "2 sc
in next st around" -> "2 sc in each st around", "dec over next 2 sts to end" -> "dec around", "2 sc
in each st, repeat around" -> "2 sc in each st around".

Only where nothing else stands in the row: behind other stitches "in next st" is one.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_ST = r"(?:[shd]{1,2} ?c|h?tr|(?:single|half double|double|treble) crochets?)"
_NOUN = rf"(?:sts?|stitch(?:es)?|{_ST})"
_IN = r"(?: in(?:to)?| over| across| of)(?: the)?"
_INC = rf"(?:(?:(?:2|two|3|three|1|one) )?{_ST}(?: twice)?|inc(?:rease)?(?: (?:1|one))?)"
_DEC = rf"(?:inv(?:isible)?\.? ?dec(?:rease)?|invdec|dec(?:rease)?(?: (?:1|one)(?: {_NOUN})?)?)"
_FAR = (
    r"(?:(?:all )?(?:the way )?(?:around|round|across)(?: the (?:whole )?(?:round|rnd|row|piece))?"
    r"|(?:until|to|till) (?:the )?end(?: of (?:the )?(?:row|rnd|round))?)"
)
WHOLE_ROW = Sought(
    ("around", "round", "across", "end"),
    r"(?P<head>(?:^|[:.)\]] )[ ]*(?:ch ?\d,? (?:(?:and )?turn,? )?|turn,? )?"
    r"(?:now |then |work |make |just )*)"
    rf"(?P<what>(?P<inc>{_INC}){_IN} next (?P<noun>{_NOUN})"
    rf"|(?P<dec>{_DEC}){_IN} (?:next )?(?:2|two) {_NOUN}"
    rf"|(?P<all>{_INC}{_IN} (?:each|every) {_NOUN})"
    rf"|(?P<bare>inc(?:rease)?|{_DEC}|{_ST} ?2 ?tog))"
    rf"(?P<rep>,? (?:and )?rep(?:eat)?)?,? (?P<far>{_FAR})"
    r"(?=\s*(?:[.;(\[=<—-]|$|\n|total\b|\d))",
    re.IGNORECASE | re.MULTILINE,
)


def all_round(text: str) -> str:
    """The text so put; any text goes in."""
    return WHOLE_ROW.sub(_put, text)


def _put(found: re.Match[str]) -> str:
    whole = found.group()
    what = found["all"] or found["dec"] or found["bare"]
    if found["inc"]:
        what = f"{found['inc']} in each {found['noun']}"
    said = f"{found['head']}{what} around"
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole
