"""Clean text of a crochet pattern that came from another language word for word, "12 air stitches",
"3 fixed stitches", "a half stick", as the short names that English has; length kept.
"""

from __future__ import annotations

import re
from functools import partial

from reader.text.sought import Sought

_THING = r"(?:st(?:itch)?(?:es|s)?|mesh(?:es)?|loops?|points?|mails?|masks?|eyelets?|chains?)"
FOREIGN = Sought(
    ("thread ring", "air", "post", "fixed", "firm", "tight", "low", "column", "stick", "stave",
     "solid", "warp", "bar"),
    rf"\bair[- ]{_THING}|\b(?:fixed|solid|tight|firm|low|warp)[- ](?:mesh|stitch|point|mask"
    rf"|loop)(?:es|s)?\b"
    r"|\b(?:columns?|bars?|posts?) (?:with|without) (?:an? |one )?(?:yarn[- ]?overs?|crochet"
    r"|double)"
    r"|\b\d (?:firm|fixed|tight|solid|low) st|\bthread ring"
    r"|\bhalf[- ](?:stick|stave|column)s?\b|\b\d (?:sticks|staves|columns)\b",
    re.IGNORECASE,
)
"""Names that no English pattern has."""
NAMES = (
    (rf"(?:air[- ]{_THING}|chain[- ](?:mesh|loop|point|mask)(?:es|s)?)", "ch"),
    (r"(?:very low|lowest|slipped|raised|warp|kett|slip|blind)[- ](?:mesh|point|stitch|mask|loop)"
     r"(?:es|s)?", "sl st"),
    (rf"(?:fixed|solid|tight|firm|low|close)[- ]{_THING}", "sc"),
    (r"half[- ](?:high )?(?:sticks?|staves?|stave|points?|high points?|rods?)", "hdc"),
    (r"half[- ]columns? with (?:an? |one )?yarn[- ]?overs?", "hdc"),
    (r"half[- ]columns?", "sl st"),
    (r"(?:columns?|bars?|posts?) without (?:an? )?(?:yarn[- ]?overs?|crochet)", "sc"),
    (r"(?:columns?|bars?|posts?) with (?:an? |one |1 )?(?:yarn[- ]?overs?|crochet)", "dc"),
    (r"(?:columns?|bars?|posts?) with (?:two|2) (?:yarn[- ]?overs?|crochets?)", "tr"),
    (r"double (?:sticks?|staves?|rods?)", "tr"),
    (r"(?:(?:high|whole|full|single) (?:points?|sticks?|staves?|stave)|sticks?|staves?"
     r"|stave)", "dc"),
)  # fmt: skip
EACH_NAME = tuple((re.compile(rf"\b{name}\b", re.IGNORECASE), short) for name, short in NAMES)
NET = Sought(("open",), r"\bopen (?:mesh(?:es)?|squares?)\b", re.IGNORECASE)
"""Beside open meshes a solid one is a square of a net, and no single crochet."""
SHORT = re.compile(r"\blow points?\b|\bfixed (?:stitch|mesh)", re.IGNORECASE)
SHORT_NAME = re.compile(r"(\b\d{1,3} ?)(?:lp|fs|fm)\b")
"""The same by their first letters."""
TURNING = re.compile(r"\b(turning )(ch)\b( *)", re.IGNORECASE)
OF_HOOK = re.compile(
    r"\b(?:from|in|into|starting (?:from|in|at)|beginning (?:from|in|at)|starting with|at)"
    r" (the )?(\d(?:nd|rd|th)|second|third|fourth|fifth) (?:st(?:itch)?|mesh|loop|ch(?:ain)?) *"
    r"(?:of|from|after|on|counted from) (?:the )?(?:hook|needle)\b"
)


def in_english(text: str) -> str:
    """The text with such names in their usual short form, where it has any that tell that it was
    translated; any text goes in.
    """
    if not FOREIGN.search(text) or NET.search(text):
        return text
    short_named = SHORT.search(text) is not None
    for name, short in EACH_NAME:
        text = name.sub(partial(_named, short), text)
    if short_named:
        text = SHORT_NAME.sub(r"\1sc", text)
    text = TURNING.sub(lambda found: found[2] + " " * len(found[1]) + found[3], text)
    return OF_HOOK.sub(_of_hook, text)


def _named(short: str, found: re.Match[str]) -> str:
    return short.ljust(len(found.group()))


def _of_hook(found: re.Match[str]) -> str:
    told = f"in {found[2]} ch from hook"
    return told.ljust(len(found.group())) if len(told) <= len(found.group()) else found.group()
