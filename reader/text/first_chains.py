"""Crochet text -> the same text, length kept, with the chain that a foundation row begins in told
as most tell it: "sc in each ch starting from the 2nd ch from hook", "insert hook in 2nd ch from
hook, sc in each ch", "make 1 ch, turn".
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted
from reader.text.sought import Sought

_NTH = r"(?:the )?(?:2nd|3rd|4th|second|third|fourth) (?:ch|chain|st|stitch)\b"
BEHIND = Sought(
    (" starting", " beginning"),
    r"(?P<each>\b(?:each|every) (?:ch(?:ain)?|st|stitch)(?: across| along| to (?:the )?end)?) "
    rf"(?=(?:starting|beginning) (?:in|with|from|at|on) {_NTH})",
    re.IGNORECASE,
)
INSERTED = Sought(
    ("insert hook in", "working in"),
    r"\b(?P<lead>insert hook|working) in(?:to)? (?P<nth>"
    rf"{_NTH} from (?:the )?hook), (?=(?:work )?(?:1 )?(?:[shd]{{1,2}}c|h?tr) in each\b)",
    re.IGNORECASE,
)
PLACE_FIRST = Sought(
    ("from hook", "from the hook"),
    rf"(?P<lead>[:.] |^)in (?P<nth>{_NTH} from (?:the )?hook),? (?:work |make )?(?P<st>(?:1 |one )?"
    r"(?:[shd]{1,2}c|h?tr))(?=,| and| then|;)",
    re.IGNORECASE | re.MULTILINE,
)
ONE_TO_TURN = Sought(
    (", make ",),
    r"(?<=, )make (?=(?:[1-4]|one|two|three) ch(?:ain)?s?,? (?:and |& )?turn\b)",
    re.IGNORECASE,
)
_STITCH = (
    r"(?:[shd]{1,2}c|h?tr|dtr|(?:half[ -]?)?(?:single|double|treble)s?(?: crochet)?|stitch|st)"
)
_GOES = (
    r"(?:goes?|going|sits|lands|is (?:worked|made|put|placed)|will (?:go|be(?: worked| made)?)|is"
    r"|belongs|comes|must go|should go)"
)
FIRST_GOES = Sought(
    ("first ", "1st "),
    r"(?P<lead>(?:^|(?<=[.:;,!\n]))[ ]*(?:(?:and|then|now|next),? )*)"
    r"(?:(?:put|work|make|place|start with) )?(?:(?:your|the|my|a) )?(?:very )?(?:first|1st) "
    rf"(?P<st>{_STITCH})(?: {_GOES})? in(?:to)? (?P<nth>{_NTH})(?: along| away)?"
    r" from (?:the |your )?hook\b(?P<rest>(?:,|;)?(?: and)?(?: the (?:rest|others?),? (?:go )?"
    r"(?:one )?(?:in|to|into)|,? (?:and )?(?:then )?(?:one|1) (?:in|to|into)"
    r"|,? followed by(?= )|,? (?:and )?then it's)?)",
    re.IGNORECASE | re.MULTILINE,
)
""" "Your first treble goes into the fourth chain from the hook, then one in each chain"."""

_SECOND = r"(?:the )?(?P<nth>2nd|3rd|4th|second|third|fourth)"
NO_NOUN = Sought(
    ("from hook", "from the hook"),
    r"\b(?P<nth>second|third|fourth)(?: one)? from (?:the )?hook\b",
    re.IGNORECASE,
)
"""Counted from the hook, and not said what: "starting with the second one from the hook"."""
FROM_SECOND = Sought(
    (" from ", "first goes in", " (start "),
    r"(?:(?<=\bch)|(?<=chain)|(?<=along)|(?<=across)|(?<=back)|(?<=down))"
    rf"[ ]*(?: from|[;,] (?:the )?first goes in(?:to)?| \(start (?:in|with)) {_SECOND}"
    r"(?: ch(?:ain)?)?\b(?! from)(?: on(?:wards)?)?\)?(?=[ .,;])",
    re.IGNORECASE,
)
"""Where a row along the chain begins, told behind it: "sc in every chain from the second"."""
ON_FROM = Sought(
    ("from ",),
    rf"(?<=[:.] )from {_SECOND} ch(?:ain)?(?: from (?:the )?hook)? on(?:wards)?,",
    re.IGNORECASE,
)
COUNT_BACK = Sought(
    (" to ",),
    rf"\b(?:count|go|skip|move)(?: back| along) to {_SECOND} ch(?:ain)?(?: from (?:the )?hook)?"
    r"(?:,? and|,)(?: then)?(?= )",
    re.IGNORECASE,
)
ONE_ALONG = Sought(
    (" along from the hook",),
    r"(?:starting|beginning) (?P<n>one|two|three) ch(?:ain)?s? along from the hook",
    re.IGNORECASE,
)
LEFT_OUT = Sought(
    ("leave the ", "ignore the ", "ignoring the ", "leaving the "),
    r"\b(?:ignor|leav)(?P<how>e|ing) the (?:(?:first|1st) ch(?:ain)?(?: out)?|ch(?:ain)? "
    r"nearest (?:to )?(?:the )?hook)\b",
    re.IGNORECASE,
)


def first_chains(text: str) -> str:
    """The text so put; any text goes in."""
    text = NO_NOUN.sub(_with_noun, text)
    text = COUNT_BACK.sub(_starts_before, ON_FROM.sub(_starts_before, text))
    text = ONE_ALONG.sub(_along, text)
    text = FROM_SECOND.sub(_starts_behind, LEFT_OUT.sub(_passed, text))
    text = BEHIND.sub(r"\g<each>,", text)
    text = INSERTED.sub(_starting, text)
    text = PLACE_FIRST.sub(_stitch_first, FIRST_GOES.sub(_first_stitch, text))
    return ONE_TO_TURN.sub(lambda found: " " * len(found.group()), text)


def _starting(found: re.Match[str]) -> str:
    return f"starting in {found['nth']}, ".rjust(len(found.group()))


def _stitch_first(found: re.Match[str]) -> str:
    said = f"{found['lead']}{found['st']} in {found['nth']}"
    return said.ljust(len(found.group()))


def _with_noun(found: re.Match[str]) -> str:
    nth = {"second": "2nd", "third": "3rd", "fourth": "4th"}[found["nth"].lower()]
    said = f"{nth} ch from hook"
    return fitted(said, found.group())


def _along(found: re.Match[str]) -> str:
    nth = {"one": "2nd", "two": "3rd", "three": "4th"}[found["n"].lower()]
    return fitted(f"starting in {nth} ch from hook", found.group())


def _starts_before(found: re.Match[str]) -> str:
    return fitted(f"starting in {found['nth']} ch,", found.group())


def _starts_behind(found: re.Match[str]) -> str:
    said, whole = f", starting in {found['nth']} ch", found.group()
    return fitted(said if len(said) <= len(whole) else said.removesuffix(" ch"), whole)


def _passed(found: re.Match[str]) -> str:
    return fitted("skip first ch" if found["how"].lower() == "e" else "skipping first ch",
                  found.group())  # fmt: skip


def _first_stitch(found: re.Match[str]) -> str:
    """ "Treble in the fourth chain from hook", and the same stitch in the others."""
    rest = found["rest"]
    if rest.rstrip().endswith(("in", "to")):
        rest = f", {found['st']} in"
    elif rest.strip():
        rest = "," if rest.endswith(("followed by", "it's")) else rest
    said = f"{found['lead']}{found['st']} in {found['nth']} from hook{rest}"
    return fitted(said, found.group())
