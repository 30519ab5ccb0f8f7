"""Knitting text -> the same text, length kept, with a row that is worked again told in a chatty way
as "rep last row until": "Same again next row, 44, and so forth until", "Keep on with those two
until"; and what leads up to it, "Then the way back: k1, k2tog", as its label.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_BEGINS = r"(?P<at>(?:^|(?<=[.!?;)\n]))[ ]*)"
_LEADS = r"(?:(?:and|then|now|just|simply|so|you|we|i|from here|after that|okay|ok),? )*"
_UNTIL = (
    r",? (?:until|till|til|'til) (?:(?:there(?:'s|'re|s| are| is)|you(?:'ve| have|'re at| are at"
    r"| get to| reach)?(?: got)?|it(?:'s| is)|we have|i have|down to|back to|only|just) )*"
    rf"(?P<n>\d{{1,4}}|(?:{SPELLED})\b)(?P<sts> (?:sts|stitches)\b)?"
    r"(?! ?[(\[,/\d]| (?:rows|rounds|rnds|inches|in\b|cm|times|ridges|holes|repeats))"
)
_KEEP = r"(?:keep|keeping|carry|go|stay)(?: on)?"
SAME_AGAIN = Sought(
    (" again", "ditto", "the same"),
    rf"{_BEGINS}{_LEADS}(?:(?:the )?same again|ditto|the same)(?: (?:on|in|for|with))?"
    r"(?: the)? (?:next|following) (?:row|round)[^.;\n]{0,30}?,? and so (?:forth|on)"
    rf"{_UNTIL}",
    re.IGNORECASE | re.MULTILINE,
)
THOSE = Sought(
    ("those", "these", "the last", "this"),
    rf"{_BEGINS}{_LEADS}(?:{_KEEP}(?: (?:with|doing|repeating|working|knitting|alternating))+"
    rf"|do|work|repeat|alternate) (?:those|these|the last) (?P<many>two|three|four|five|six|[2-9])"
    rf"(?P<rows> (?:rows|rounds|rnds)\b)?(?: over and over| again and again)?{_UNTIL}",
    re.IGNORECASE | re.MULTILINE,
)
""" "Keep on with those two until it is 48 again"."""
AMID_LIST = Sought(
    ("end with", "ending with"),
    r"(?<=\*),? (?:and )?(?:keep going|keep repeating|so on|so forth|over and over(?: again)?"
    r"|keep doing (?:this|that)|carry on|go on|continue)(?: (?:like (?:that|this)|so|thus))?"
    r"(?: (?:(?:to|till|until) the end|across|all the way(?: across| along)?))?"
    r",?(?= (?:and |then )?end(?:ing)? with\b)",
    re.IGNORECASE,
)
""" "*knit 2, purl 2*, keep going, end with knit 2": the stars say it already."""
LIST_COLON = Sought(
    ("this:", "that:", "thus:", "so:", "way:", "manner:", "before:", "set:", "established:"),
    r"(?P<go>\b(?:carry(?:ing)? on|continu(?:e|ing)|cont\.?|go(?:ing)? on|keep (?:on|going)"
    r"|proceed)(?: on)?(?: shaping| decreasing| increasing)? (?:like (?:this|that)|thus|so"
    r"|as (?:before|set|established)|in (?:this|that|the same) (?:way|manner))):"
    r"(?=\s[^\n]{0,120}\b(?:until|till|til)\b)",
    re.IGNORECASE,
)
""" "Carry on like this: one stitch fewer each side on every RS row, until 3 sts remain"."""
LEADS_UP = Sought(
    (":",),
    rf"{_BEGINS}(?:(?:and|now|then|next|finally|after that),? )+(?:comes |for |we )?"
    r"(?:the |a |your )"
    r"(?:turn|way (?:back|down|up)|decreas\w+|increas\w+|narrowing|widening|shrinking|growing)"
    r"(?: (?:part|half|bit|side|stretch))?:(?=\s+(?:[*(\[]?[kp] ?\d|[kp]\b|knit|purl|sl\b|slip|yo\b"
    rf"|ssk|with|(?:{SPELLED})\b))",
    re.IGNORECASE | re.MULTILINE,
)


def keeps_at_it(text: str) -> str:
    """The text so put; any text goes in."""
    for one in (SAME_AGAIN, THOSE):
        text = one.sub(_again, text)
    text = LIST_COLON.sub(lambda m: f"{m['go']},", text)
    return LEADS_UP.sub(_label, AMID_LIST.sub(lambda m: ",".ljust(len(m.group())), text))


def _again(found: re.Match[str]) -> str:
    """The row before this one, until there are so many."""
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"])
    whole, at = found.group(), found["at"]
    many = found.groupdict().get("many")
    last = f"rep last {many} rows" if many else "rep last row"
    for said in (f"{last} until there are {number} sts", f"{last} until {number} sts"):
        if len(at + said) <= len(whole):
            return f"{at}{said}".ljust(len(whole))
    return whole


def _label(found: re.Match[str]) -> str:
    return f"{found['at']}{'Next row:'.rjust(len(found.group()) - len(found['at']))}"
