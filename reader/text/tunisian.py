"""Clean text of a Tunisian crochet pattern -> the same text, length kept, with its rows as most
write rows: the way back, which changes no count, turned to spaces, loops drawn up as the stitches
they make, bars as the stitches they belong to.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

TUNISIAN = Sought(
    ("tunisian", "tss", "afghan stitch", "vertical bar", "forward pass", "return pass"),
    r"\btunisian\b|\btss\b|\bafghan stitch|\bvertical bars?\b.{0,400}\b(?:return|loops? on)\b"
    r"|\bforward pass|\breturn pass",
    re.IGNORECASE | re.DOTALL,
)
_BACK = (
    r"(?:return(?:ing)?(?: pass| row)?|rtn|ret(?: pass)?|rp|rev(?:erse)? pass|backward pass"
    r"|closing pass)"
)
BACK_LINE = re.compile(
    rf"^[ \t]*(?:(?:row|r) ?\d+[ ,:(-]*)?(?:standard |the )?{_BACK}\b\)?[ \t]*"
    r"(?:\(?[A-Z]{2,3}\)? ?)?[:.=—-][^\n]*"
    r"(?:\n(?![ \t]*(?:row|r ?\d|rnd|\d+(?:[.:]|st|nd|rd|th)|for|next|return|bind|fin|\n))[^\n]*)*",
    re.IGNORECASE | re.MULTILINE,
)
"""A line that tells how the loops are worked off again."""
BACK_SENTENCE = re.compile(
    rf"(?<=[.;:)] )(?:then )?{_BACK}[ ]?[:—-] ?[^\n]*?(?:\bremains?\b|\bleft\b|\bon hook\b"
    rf"|\bend\b)[^.;\n]*[.;]?",
    re.IGNORECASE,
)
BACK_WORD = re.compile(
    r"(?<=[,.;)—-])\s*(?:and |then |&|\+ ?)*(?:work (?:a |the )?|do (?:a |the )?|complete (?:a "
    r"|with a )?|with )?"
    rf"(?:standard |normal |the |a )?{_BACK}(?: as (?:before|usual|for row \d+|in row \d+|normal"
    rf"|above))?"
    r"(?=\s*[.;,(\n]|\s*$)",
    re.IGNORECASE,
)
FORWARD = re.compile(
    r"(?<=\d)[ ,]*[(—-]? ?\b(?:forward(?: pass)?|fwd(?: pass)?|fwp|fp)\b\)?(?= ?[:.—-])|^["
    r" \t]*forward"
    r"(?: pass)?(?= ?:)",
    re.IGNORECASE | re.MULTILINE,
)
LOOP = (
    r"insert (?:the )?hook (?:in(?:to)?|through|under|behind|between) (?P<at>[^,;.\n]{2,40}),"
    r" (?:yo|yarn over|yoh),? ?(?:and |then )?(?:pull|draw|pick) up (?:a |1 )?(?:loop|lp)",
    r"(?:(?:pull|draw|pick)(?:ing)? up (?:a |1 |one )?(?:loop|lp)s?"
    r" (?:in|from|through|under)(?:to)?) (?P<at>)",
)  # fmt: skip
EACH_LOOP = tuple(re.compile(one, re.IGNORECASE) for one in LOOP)
BARS = re.compile(r"\b(?:front |next )?vertical (?:bars?|strands?)\b|\bbars?\b", re.IGNORECASE)
FIRST_LOOP = re.compile(
    r"\b(?:skip|sk|skipping|miss|missing|passing|ignore|ignoring) (?:the )?(?:very )?(?:first|1st)"
    r" (?:st(?:itch)?|bar)?(?=[ ,;.)])(?: ?\(.{4,40}\))?",
    re.IGNORECASE,
)
ON_HOOK = re.compile(
    r"\b(?:loops|lps) (?:now )?on (?:the |your )?hook\b|\b(?:loops|lps)(?=\s*[)\]])", re.I)


def as_rows(text: str) -> str:
    """The text so written, where it is of such crochet; any text goes in."""
    if not TUNISIAN.search(text):
        return text
    for told in (BACK_LINE, BACK_SENTENCE, BACK_WORD, FORWARD):
        text = told.sub(_blank, text)
    for loop in EACH_LOOP:
        text = loop.sub(_stitch, text)
    text = BARS.sub(_bar, text)
    text = FIRST_LOOP.sub(_first, text)
    return ON_HOOK.sub(lambda found: "sts".ljust(len(found.group())), text)


def _blank(found: re.Match[str]) -> str:
    return re.sub(r"[^\n]", " ", found.group())


def _stitch(found: re.Match[str]) -> str:
    told = f"tss in {found['at']}"
    return told.ljust(len(found.group()))


def _bar(found: re.Match[str]) -> str:
    word = found.group().lower()
    many = "sts" if word.endswith("s") else "st"
    return ("next " * word.startswith("next ") + many).ljust(len(word))


def _first(found: re.Match[str]) -> str:
    """The first bar is passed over, since its loop is on the hook: a stitch of the row."""
    return "tss in 1st".ljust(len(found.group()))
