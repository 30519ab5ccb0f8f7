"""Knitting told aloud and written down with a few commas, "row two, wrong side, purl two ... still
twenty-six" -> the same text, length kept, with its rows marked and its totals in brackets.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_N = rf"(?:(?:{SPELLED})\b|\d+)"
_ROW = r"(?:row|round)"
SAID = Sought(("row", "round"), rf"\b{_ROW}s? (?:{SPELLED})\b", re.IGNORECASE)
SPELLED_OUT = Sought(
    ("s s k", "s s p", "y o", "p s s o"), r"\b(?:s s [kp]|p s s o|y o)\b", re.IGNORECASE
)
"""Abbreviations told letter by letter."""
CABLED = Sought(
    ("cable ",),
    rf"\bcable (?P<n>{_N}),? (?:to the |in |at )?(?P<way>front|back|forward|left|right)\b",
    re.IGNORECASE,
)
LEAST = 4
"""Labels in words that a text told aloud has."""
_NO_LABEL = (
    r"(?<!after )(?<!of )(?<!in )(?<!from )(?<!before )(?<!as )(?<!like )(?<!repeat )(?<!do )"
    r"(?<!more )(?<!the )"
)
PARAGRAPH = re.compile(r"(?<=[a-z\d])(?: (?=\n)|\n(?=[ \t]*\n))", re.IGNORECASE)
"""A paragraph that ends without a mark."""
SIDE = re.compile(
    rf"{_NO_LABEL}\b(?P<row>{_ROW} {_N}),? (?:(?:this|that|which) is (?:the|a|our) )?"
    r"(?:(?P<wrong>wrong)|right)[ -]side(?: row)?(?P<end>,|\.|:)",
    re.IGNORECASE,
)
SPOKEN_OF = re.compile(
    rf"{_NO_LABEL}\b(?P<row>{_ROW} {_N})(?:(?:,| and)? (?:i'm|i am|we're|you're"
    rf"|this)\b[^,.;\d]{{3,60}}"
    r"[,.]| is (?:where|when|the (?!same)|our|a|gonna|going)\b[^.,;\d]{3,50}[.,])(?= (?:we |i |you"
    r" )?(?:just )?"
    r"(?:k|p|knit|purl|slip|work|cable|yarn|make|ssk|s s k)\b)",
    re.IGNORECASE,
)
"""A label that a few words are said of: "row three is where the magic happens. knit two"."""
LED = re.compile(
    r"(?:^|(?<=[.!?\n])) ?(?:(?:now|so|okay|ok|and|then|alright|all right|next|for|on to|onto),? )+"
    rf"(?={_ROW} {_N}\b(?!,? (?:and|to|through) {_N}))",
    re.IGNORECASE | re.MULTILINE,
)
ANOTHER = re.compile(
    rf"(?P<and>,? (?:and|then) )(?=(?:then )?{_ROW} {_N},? (?:is |are )?(?:the )?same as\b)",
    re.IGNORECASE,
)
EXPLAINED = re.compile(
    r"(?P<what>\b(?:(?:cable|cross|twist) \w+(?: \w+)? (?:front|back|left|right)|C\d+[FB][ ]*))"
    r"(?P<talk>,? (?:so |and )?"
    r"(?:that's|that is|that means|which is|meaning|same thing|just like before)\b[^.;\n]*[.;]?"
    r"(?: (?:and )?then)?)(?= )",
    re.IGNORECASE,
)
"""How a cable is crossed, told in the middle of a row."""
TOTAL = re.compile(
    r"(?P<at>[,.]|\n)? ?(?P<say>(?:(?:alright|okay|ok|so|and|now|yay|then) )*"
    r"(?:that's|that is|that makes|that gives you|still|count 'em|count them|you have|you should"
    r" have"
    r"|we have|we're at|we are at|we're back to|we are back to|you're at|you're back to|back to)"
    rf"(?: all| at| back to| now)*,? (?P<n>{_N})(?! (?:more|rows|rounds|times|row|inches|or|knits"
    r"|purls))"
    r"(?: (?:stitches|sts))?(?: (?:of them|in all|altogether|total|now|again))?"
    r"(?: (?:woohoo|yay|okay|ok|perfect|great))?)(?=[.,!\n]|$)",
    re.IGNORECASE,
)
ALONE = re.compile(
    rf"(?<=\. )(?P<n>{_N}) stitches(?P<end>(?: total| in all| altogether)?)(?=[.\n]|$)",
    re.IGNORECASE,
)
"""A sentence that is a total and nothing else."""
TO_DO = re.compile(
    r"(?:and |so |then |now )*(?:you're|we're|i'm|you are|we are|you|we) (?:gonna|going to|wanna"
    r"|want"
    rf" to) (?:do|work|repeat|knit)(?= (?:{_ROW}s |the last {_N} {_ROW}s))",
    re.IGNORECASE,
)
DID_MORE = re.compile(
    rf"(?:and |so |then |now )*(?:i|we) (?:did|do|worked|made|knit|knitted)(?= {_N} more {_ROW}s)",
    re.IGNORECASE,
)


def told_aloud(text: str) -> str:
    """The text so marked; a text without rows told in words stays as it is."""
    text = SPELLED_OUT.sub(lambda m: m.group().replace(" ", "").ljust(len(m.group())), text)
    text = CABLED.sub(_cable, text)
    if sum(1 for _ in SAID.finditer(text)) < LEAST:
        return text
    text = PARAGRAPH.sub(".", text)
    text = LED.sub(lambda m: " " * len(m.group()), text)
    text = EXPLAINED.sub(lambda m: f"{m['what']}," + " " * (len(m["talk"]) - 1), text)
    text = SIDE.sub(lambda m: _label(m, " (ws)" if m["wrong"] else " (rs)"), text)
    text = SPOKEN_OF.sub(lambda m: _label(m, ""), text)
    text = ANOTHER.sub(lambda m: ".".ljust(len(m["and"])), text)
    text = TO_DO.sub(lambda m: "repeat".rjust(len(m.group())), text)
    text = DID_MORE.sub(lambda m: "work".rjust(len(m.group())), text)
    return ALONE.sub(_total, TOTAL.sub(_total, text))


def _cable(found: re.Match[str]) -> str:
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"])
    way = "B" if found["way"].lower() in ("back", "right") else "F"
    return f"C{number}{way}".ljust(len(found.group())) if number else found.group()


def _label(found: re.Match[str], side: str) -> str:
    return f"{found['row']}{side}:".ljust(len(found.group()))[: len(found.group())]


def _total(found: re.Match[str]) -> str:
    said = found["n"]
    number = int(said) if said.isdigit() else word_number(said)
    whole = found.group()
    lead = whole[0] if whole[0] in "\n,. " else ""
    bracket = f" ({number} sts)"
    if not number or len(lead + bracket) > len(whole):
        return whole
    return (("\n" if lead == "\n" else "") + bracket).ljust(len(whole))
