"""Clean text of crochet -> the same text, length kept, with stitches that are told in homely words
as most tell them: "double every stitch", "pop three into every ninth", "3 sc in next (center) sc".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

PUT = Sought(
    ("pop ", "stick ", "tuck ", "squeeze ", "cram "),
    r"\b(?:pop|stick|tuck|squeeze|cram)(?= (?:in )?(?:\d+|two|three|four|five|six|seven|eight) "
    r"(?:[a-z]+ ){0,3}in(?:to)?\b)",
    re.IGNORECASE,
)
"""Said of stitches that are worked: "pop three into every ninth"."""
DOUBLED = Sought(
    ("double", "doubling"),
    r"(?:(?<=[,;.:*(\[] )|^)doubl(?P<many>e|ing)(?= (?:the (?!number|amount|total)|each |every "
    r"|all |next |first |last |in"
    r" every )"
    r"(?:[\w-]+ ){0,3}(?:sts?|stitch(?:es)?|sc|loops?|mesh(?:es)?)\b)",
    re.IGNORECASE | re.MULTILINE,
)
"""A stitch doubled is worked into twice: "double every 3rd stitch"."""
ALL_DOUBLED = Sought(
    ("double", "doubling"),
    r"\bdoubl(?:e|ing) (?:all )?(?:of )?the (?:sts|stitches)\b",
    re.IGNORECASE,
)
CHN = Sought(("chn",), r"\b(ch)ns?\b", re.IGNORECASE)
"""Chains, as some shorten them."""
ASIDE = re.compile(
    r"\((?P<which>cent(?:er|re)|middle|corner|marked|tip)\)(?= (?:st|sc|dc|hdc|tr|stitch|ch)\b)",
    re.IGNORECASE,
)
"""Which stitch it is, between brackets."""


def in_plain_words(text: str) -> str:
    """The text so told; any text goes in."""
    text = ALL_DOUBLED.sub(lambda found: "inc in each st".ljust(len(found.group())), text)
    text = DOUBLED.sub(lambda found: "inc in".ljust(len(found.group())), text)
    text = CHN.sub(lambda found: f"{found[1]}{' ' * (len(found.group()) - 2)}", text)
    text = PUT.sub(lambda found: "put".ljust(len(found.group())), text)
    return ASIDE.sub(lambda found: f" {found['which']} ", text)
