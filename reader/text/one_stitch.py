"""Names of a change that hold the stitch it is of, "sc dec": where a text has them as one item of a
list, they are one everywhere in it; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

ITEM = re.compile(
    r"(?:,[ ]+|\d[ ]+(?:sts?[, ]+)?|;[ ]*|\band[ ]+)sc (?:dec|inc)(?:rease)?\b[ ]?"
    r"(?=[*,.;)\](]|\n|$)"
    r"|^[ \t*•-]*sc (?:dec|inc)(?:rease)?[ ]?(?:[=:—-])"
    r"|[:.)-][ ]+sc (?:dec|inc)(?:rease)?[ ](?=around|across|all|to end|x ?\d|\d+ times|in e)",
    re.IGNORECASE | re.MULTILINE,
)
"""One item behind another, or a word of the pattern's key."""
TWO_ITEMS = re.compile(
    r"[(\[*][ ]?(?:\d{1,2} ?)?sc (?:dec|inc)[ ]?[)\]*] ?(?:x ?|\*"
    r" ?)?\d+[^\n]{0,12}[(\[]\d+[)\]]", re.IGNORECASE
)
NAME = Sought(("sc dec", "sc inc"), r"\bsc (?P<what>dec|inc)(?P<long>rease)?\b", re.IGNORECASE)


TOGETHER = Sought(
    ("dec ", "decrease "),
    r"\b(?:(?:sc|hdc|dc|tr|htr) )?(?P<dec>dec(?:rease)?)(?: (?:in|over|by|by working))?(?: the)?"
    r"(?: next| first| last)? (?:2|two) (?:sts?|stitches|sc|dc|hdc)? ?tog(?:ether)?\b",
    re.IGNORECASE,
)
"""A decrease told twice: "dec next 2 sts tog"."""
TWO_INCREASED = Sought(
    ("c inc",), r"\b2 (?:sc|hdc|dc) (?P<inc>inc(?:rease)?)\b(?= (?:in|into) )", re.IGNORECASE
)
"""Two in one, told twice: "2 sc inc in next st"."""


HYPHENED = Sought(("sc-",), r"\bsc-(?P<what>dec|inc)(?:rease)?\b", re.IGNORECASE)
"""One word, whatever stands beside it: "(sc, sc-dec)"."""


def one_stitch(text: str) -> str:
    """The text with the stitch's own name left out where it is so."""
    text = TOGETHER.sub(lambda found: "dec".ljust(len(found.group())), text)
    text = HYPHENED.sub(lambda found: found["what"].rjust(len(found.group())), text)
    text = TWO_INCREASED.sub(lambda found: found["inc"].rjust(len(found.group())), text)
    if not NAME.may_stand(text) or ITEM.search(text) is None or TWO_ITEMS.search(text) is not None:
        return text
    return NAME.sub(lambda found: found["what"].rjust(len(found.group())), text)
