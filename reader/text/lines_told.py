"""Knitting told line by line as it is spoken, "next one: knit six, knit two together, and keep
doing that all the way round. twenty eight / plain round again" -> the same text, length kept, with
labels, "around", totals and plain rounds as patterns have them.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_N = rf"(?:(?:{SPELLED})\b|\d+)"
_ROWS = r"(?:rounds?|rows?|rnds?)"
_BEGINS = r"(?P<at>(?:^|(?<=[a-z)\]][.;!] ))[ ]*)"
_LEADS = (
    r"(?:(?:and|now|then|next|so|okay|ok|right|alright|after that|from here)\b,? )*"
    r"(?:(?:it's|there's|that's|comes|just|simply|only)\s)*"
)
PLAIN = Sought(
    ("plain",),
    rf"{_BEGINS}{_LEADS}(?:(?P<n>{_N}|an?|another|one more)\s)?(?:more )?"
    rf"(?:plain(?: (?:knit(?:ted)?|old))* (?P<rows>{_ROWS})"
    rf"|(?P<rows2>{_ROWS}) (?:plain|of plain(?: knit(?:ting)?)?))"
    r"(?: (?:again|next|now|after that|on top|here))*(?=[ ]*(?:[.,;!\n]|$))",
    re.IGNORECASE | re.MULTILINE,
)
""" "Plain round again", "then one round plain": no verb tells what is done."""
KEEPS = Sought(
    ("keep", "carry", "go ", "do ", "repeat", "work ", "over and over", "again and again"),
    r",?\s+(?:and |then |just |you |we |so )*(?:(?:keep|carry|go) (?:on )?(?:doing|repeating|going"
    r"(?: with)?)(?: (?:that|this|it|so|like (?:that|this)))?|(?:do|repeat|work) (?:that|this|it)"
    r"(?: again)?|over and over(?: again)?|again and again)\s+"
    r"(?P<way>(?:all|the whole) (?:the )?(?:way )?(?:a?round|across|along)|to the (?:very )?end"
    r"(?: of the (?:row|round|needle))?|until the end)",
    re.IGNORECASE,
)
""" "Knit six, knit two together, and keep doing that all the way round"."""
FIRST_ROWS = Sought(
    ("first ",),
    rf"{_BEGINS}{_LEADS}(?:for |on |in |over )?(?:the |your )?first (?P<n>{_N}) (?P<rows>{_ROWS})"
    r"(?::|,? (?:are|is|will be|it's|they're|you|we|i)\b(?: (?:all|just|do|work|in))*)(?=\s)",
    re.IGNORECASE | re.MULTILINE,
)
NEXT_ONE = Sought(
    ("next one", "one after"),
    rf"{_BEGINS}(?:(?:and|now|then|so|okay|ok),? )*(?:on |for |in )?(?:the )?"
    r"(?:next one|one after(?: that| it)?)(?::|,| is| goes)(?=\s)",
    re.IGNORECASE | re.MULTILINE,
)
SAYS = Sought(
    ("knit ", "purl "), rf"\b(?:knit|purl) (?:{SPELLED})\b", re.IGNORECASE
)
LEAST = 4
"""Stitches told with their numbers in words, by which a text is spoken."""
LED = Sought(
    ("knit", "purl", "slip"),
    r"^[ ]*(?:(?:and|now|then|next|so|okay|ok|right|alright|after that),? )*"
    r"(?:(?:you|we|i|just|simply|only)\s)*"
    rf"(?=(?:knit|purl|slip) (?:all|every|to|across|around|(?:{SPELLED})\b))",
    re.IGNORECASE | re.MULTILINE,
)
TOTAL = re.compile(
    r"(?<!until)(?<!till)(?<!when)(?<!til)(?<!if)(?<!once)(?P<at>[,.!]? )"
    r"(?:(?:and|so|then|now|which) )*(?:that's|that is|that makes|that leaves"
    r"|makes|leaves|leaving|making|gives|giving|you(?:'ll| will| should)? (?:have|get|be at)"
    r"|you(?:'ve| have) (?:now )?got|we(?:'ll| will)? have|we(?:'ve| have) got|there are"
    r"|(?:you're |we're )?down to)(?: (?:you|us|with|now|just|only|to|at))*,? "
    rf"(?P<n>{_N})(?: (?:stitches|sts))?(?: (?:left|now|remaining|in all|altogether|total"
    r"|on the needles?))*(?=[ ]*(?:[.!\n,]|$))",
    re.IGNORECASE,
)
ALONE = re.compile(
    rf"(?:(?<=together)|(?<=round)|(?<=across)|(?<=way)|(?<=end))(?P<at>[.,;] )"
    rf"(?P<n>(?:{SPELLED}))(?: stitches)?(?P<last>)(?=[ ]*(?:\n|$|[.!]))",
    re.IGNORECASE,
)
"""A total that nothing leads to: "knit four, knit two together, around. thirty"."""
FEWEST = 3
"""Stitches a total is of, where nothing says that it is one."""


def lines_told(text: str) -> str:
    """The text so put; any text goes in."""
    text = PLAIN.sub(_plain, text)
    if sum(1 for _ in SAYS.finditer(text)) < LEAST:
        return text
    text = KEEPS.sub(_around, text)
    text = FIRST_ROWS.sub(_first, text)
    text = NEXT_ONE.sub(lambda m: "next:".rjust(len(m.group())), text)
    text = LED.sub(lambda m: " " * len(m.group()), text)
    return ALONE.sub(_total, TOTAL.sub(_total, text))


def _plain(found: re.Match[str]) -> str:
    n = (found["n"] or "one").lower()
    number = int(n) if n.isdigit() else word_number(n) or 1
    rows = found["rows"] or found["rows2"]
    if rows.lower().endswith("s") and number == 1:
        return found.group()
    return f"{found['at']}k {number} {rows}".ljust(len(found.group()))


def _around(found: re.Match[str]) -> str:
    way = "around" if "round" in found["way"].lower() else "to end"
    return f", {way}".ljust(len(found.group()))


def _first(found: re.Match[str]) -> str:
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"])
    said = f"next {number} {found['rows']}:"
    whole = found.group()
    return said.rjust(len(whole)) if number and len(said) <= len(whole) else whole


def _total(found: re.Match[str]) -> str:
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"])
    whole = found.group()
    if not number or number < FEWEST:
        return whole
    said = next(
        (one for one in (f" ({number} sts)", f" ({number})") if len(one) <= len(whole)), whole
    )
    return said.ljust(len(whole))
