"""Names of a change that hold the stitch it is of, "sc dec": where a text has them as one item of a
list, they are one everywhere in it; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

ITEM = re.compile(
    r"(?:,[ ]+|\d[ ]+(?:sts?[, ]+)?|;[ ]*|\band[ ]+)sc (?:dec|inc)(?:rease)?\b[ ]?"
    r"(?=[*,.;)\](]|\n|$)"
    r"|^[ \t*•-]*sc (?:dec|inc)(?:rease)?[ ]?(?:[=:—-])",
    re.IGNORECASE | re.MULTILINE,
)
"""One item behind another, or a word of the pattern's key."""
TWO_ITEMS = re.compile(
    r"[(\[*][ ]?sc (?:dec|inc)[ ]?[)\]*] ?(?:x ?|\* ?)?\d+[^\n]{0,12}[(\[]\d+[)\]]", re.IGNORECASE
)
NAME = Sought(("sc dec", "sc inc"), r"\bsc (?P<what>dec|inc)(?P<long>rease)?\b", re.IGNORECASE)


def one_stitch(text: str) -> str:
    """The text with the stitch's own name left out where it is so."""
    if not NAME.may_stand(text) or ITEM.search(text) is None or TWO_ITEMS.search(text) is not None:
        return text
    return NAME.sub(lambda found: found["what"].rjust(len(found.group())), text)
