"""Clean text of crochet -> the same text, length kept, with stitches that are told in homely words
as most tell them: "double every stitch", "pop three into every ninth", "3 sc in next (center) sc".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

PUT = Sought(
    ("pop ", "stick ", "tuck ", "squeeze ", "cram ", "place "),
    r"\b(?:pop|stick|tuck|squeeze|cram|place(?= \w+ (?:[shd]{1,2}c|tr|single|double|half)\b))"
    r"(?= (?:in )?(?:\d+|two|three|four|five|six|seven|eight) (?:[a-z]+ ){0,3}in(?:to)?\b)",
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
_NAME = r"(?:[shd]{1,2}c|h?tr|(?:single|double|half double) crochets?|singles|doubles)"
USUAL = Sought(
    ("regular", "normal", "ordinary", "standard"),
    rf"\b(?:regular|normal|ordinary|standard) (?={_NAME}\b)",
    re.IGNORECASE,
)
FOR_SO_MANY = Sought(
    (" for ",),
    rf"(?<=[a-z])(?<!each) for (?P<the>(?:the )?)(?=(?:next|following|first|last|remaining|rem"
    rf"|\d+|two|three|four|five|six|seven|eight)\b (?:\w+ )?(?:sts?|stitches|{_NAME})\b)",
    re.IGNORECASE,
)
""" "Sc for the next 3 stitches"."""
NAMED = re.compile(rf"(?:^|[^\w]){_NAME}$", re.IGNORECASE)
SO_OFTEN_IN_ONE = Sought(
    ("2x", "3x", "4x", "2 x", "3 x", "4 x"),
    rf"\b(?P<name>{_NAME}) (?P<n>[234]) ?x(?= in(?:to)? (?:the )?(?:next|same|first|last|one)\b)",
    re.IGNORECASE,
)
""" "Sc 2x in next st"."""
EACH_PAIR = Sought(
    ("each 2", "each two", "every 2", "every two", "pair"),
    r"\b(?:inv(?:isible)? )?dec(?:rease)? (?:in|over|across|on) (?:each|every) (?:2|two|pair of)"
    r" (?:sts|stitches|sc)\b(?: a?round\b)?",
    re.IGNORECASE,
)
CLOSED = Sought(
    ("end", "finish", "complet", "clos"),
    r"\b(?:end|finish|complete|close)(?:ing)?(?: (?:the )?(?:round|rnd))?(?: off)? with (?:a|1|one)"
    r" (?:sl st|slip st(?:itch)?|sl-st|slst|ss)(?=\s*(?:[.;(\[=]|$))",
    re.IGNORECASE | re.MULTILINE,
)
ONE_SLIP = Sought(
    ("1 s", "one s", "a s"),
    r"(?<=, )(?:1|one|a) (?=(?:sl st|slip st(?:itch)?|sl-st|slst|ss) (?:in|into|to|on) (?:the )?"
    r"(?:first|1st|top|beg\w*)\b)",
    re.IGNORECASE,
)
"""The slip stitch that joins a round."""
MANY_IN_BRACKETS = Sought(
    ("(s)", "(es)"),
    r"\b(?P<one>st|stitch|ch|sp|space|loop|row|round|rnd|time|sc|dc|hdc|tr)\((?P<end>e?s)\)"
    r"(?!\w)",
    re.IGNORECASE,
)
MANY_BY_STROKE = Sought(
    ("'s",), r"\b(?P<one>st|ch|sp|sc|dc|hdc|htr|tr|rnd)'(?P<end>s)\b", re.IGNORECASE
)
""" "Stitch(es)", "st's": several, as some write them."""
AT_BASE = Sought(
    (" base",), rf"(?P<one>\b1 {_NAME}|\b{_NAME}) (?:at|in|into) (?:the )?base\b(?! (?:of|ch|row))",
    re.IGNORECASE,
)
""" "Ch 3, 1 dc at base"."""
BOTH_ENDS = Sought(
    ("tog at ", "tog on "),
    r"\b(?:[shd]{1,2}c|h?tr|[kp])(?: ?2 ?)tog (?:at|on)"
    r" (?:(?:each|both) ends?|(?:beg|beginning|start) and (?:at )?end)\b"
    r"(?: of (?:the |this )?(?:row|rnd|round)\b)?",
    re.IGNORECASE,
)
""" "Sc2tog at each end"."""


def in_plain_words(text: str) -> str:
    """The text so told; any text goes in."""
    text = ALL_DOUBLED.sub(lambda found: "inc in each st".ljust(len(found.group())), text)
    text = DOUBLED.sub(lambda found: "inc in".ljust(len(found.group())), text)
    text = CHN.sub(lambda found: f"{found[1]}{' ' * (len(found.group()) - 2)}", text)
    text = MANY_BY_STROKE.sub(_several, MANY_IN_BRACKETS.sub(_several, text))
    text = AT_BASE.sub(lambda m: f"{m['one']} in same".ljust(len(m.group())), text)
    text = BOTH_ENDS.sub(lambda found: "dec at each end".ljust(len(found.group())), text)
    text = USUAL.sub(_blank, SO_OFTEN_IN_ONE.sub(_number_first, ONE_SLIP.sub(_blank, text)))
    text = CLOSED.sub(lambda found: "join".ljust(len(found.group())), text)
    text = EACH_PAIR.sub(lambda found: "dec around".ljust(len(found.group())), text)
    text = FOR_SO_MANY.sub(_into, text)
    text = PUT.sub(lambda found: "put".ljust(len(found.group())), text)
    return ASIDE.sub(lambda found: f" {found['which']} ", text)


def _blank(found: re.Match[str]) -> str:
    return " " * len(found.group())


def _several(found: re.Match[str]) -> str:
    return f"{found['one']}{found['end']}".ljust(len(found.group()))


def _number_first(found: re.Match[str]) -> str:
    return f"{found['n']} {found['name']}".ljust(len(found.group()))


def _into(found: re.Match[str]) -> str:
    stitch = NAMED.search(found.string[max(0, found.start() - 24) : found.start()])
    return f" in  {found['the']}" if stitch else found.group()
