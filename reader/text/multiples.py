"""Text -> the same text, length kept, where the chains or stitches that a piece begins with are
told by what any width takes: "Chain a multiple of 3 plus 1 (I did 31), then ch 3 more" -> "ch 34",
"Cast on a multiple of 4 sts; mine is 44" -> "cast on 44 sts".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, number_said
from reader.text.sought import Sought

_N = rf"(?:\d{{1,4}}|\b(?:{SPELLED})\b)"
_STS = r"(?:ch(?:ain)?s?|sts?|stitches|loops|chain st(?:itche)?s)\b"
_FOR = (
    r"(?: (?:for|to) (?:the |a )?(?:first )?(?:\w+ )?"
    r"(?:turn\w*|ch(?:ain)?|[sh]?dc|h?tr|row|edges?)\b)?"
)
_OWN = (
    r"(?:e\. ?g\.|(?:(?:for )?(?:example|instance)|sample|example|shown|here|mine|my|ours|say|like"
    r"|such as|in (?:this|my|the) \w+|(?:i|we)(?:'ve|'ll)? (?:\w+ )?(?:used|use|did|do|made|make"
    r"|have|had|chose|chained|chain|ch|cast on|went with|worked|started with))\b)"
)
_TOLD = (
    r"[ ]*(?:\.?[ ]?\(|[:,;—-]|\.\s)[ ]*"
    rf"(?:[^.;\n\d()]{{0,40}}?\b{_OWN}[^.;\n\d()]{{0,30}}?|(?<=[(:,;—-][ ])|(?<=[(:,;—-]))"
    r"|[^.;:\n\d()]{0,24}\([^.;\n\d()]{0,24}?"
)
"""How the own number is told behind: in brackets, by a stop, by "I used"."""
_MORE = (
    r"[ ]?(?:,|;|\.|and|then|\+|plus| )*(?:ch(?:ain)?|add|make|plus|\+)[ ]?"
    rf"(?P<added>\d|{SPELLED})\b(?:[ ](?:more|extra|additional))?(?:[ ]{_STS})?(?:[ ]more)?"
    r"(?: (?:for|to) (?:the |a )?[^.;:\n\d()]{1,24})?(?=[.;,)\n])"
)
MULTIPLE = Sought(
    ("multiple",),
    r"\b(?P<verb>(?:loosely )?(?:ch(?:ain)?|cast on|co)|(?:start|begin|work|make)\b[^.;:\n\d]{0,24}"
    r"\b(?:ch(?:ain)?|cast[ -]on)|foundation(?: chain| row)?:|base chain:?)(?<![a-z](?=[a-z]))"
    rf"[^.;:\n\d]{{0,24}}?\bmultiples? of (?P<of>{_N})(?: {_STS})?"
    rf"(?:,? ?(?:plus|\+|and) ?(?P<plus>{_N})(?: (?:extra|more|over))?(?: {_STS})?{_FOR})?"
    rf"(?:{_TOLD})(?P<own>{_N})(?![\d.]*\d)"
    rf"(?:[ ]?{_STS})?(?:[ ](?:used|here|shown|in mine|in the (?:sample|photo)))?[ ]?\)?"
    rf"(?P<more>{_MORE})?",
    re.IGNORECASE,
)
MORE = Sought(
    ("more", "extra", "additional"),
    rf"\b(?P<verb>ch(?:ain)?) (?P<own>{_N})(?: {_STS})?(?:,|;| and|,? then|, and then)* "
    rf"(?:(?:ch(?:ain)?|make|add|another)(?: another)?) (?P<added>\d|{SPELLED})"
    rf"(?: {_STS})? (?:more|extra|additional)(?: {_STS})?"
    r"(?: (?:for|to) (?:the |a )?[^.;:\n\d()]{1,24})?(?=\s*[.;,)\n]|\s*$)",
    re.IGNORECASE,
)
"""Chains of two lots, the second for the turn."""


def without_multiples(text: str) -> str:
    """The text so put; any text goes in."""
    return MORE.sub(_together, MULTIPLE.sub(_this_piece, text))


def _this_piece(found: re.Match[str]) -> str:
    """The own number, where it is such a multiple and more than one of it."""
    of, own = number_said(found["of"]), number_said(found["own"])
    plus = number_said(found["plus"])
    fits = of > 0 and own >= 2 * of and any((own - one) % of == 0 for one in (plus, 0))
    return _put(found, own + number_said(found["added"])) if fits else found.group()


def _together(found: re.Match[str]) -> str:
    return _put(found, number_said(found["own"]) + number_said(found["added"]))


def _put(found: re.Match[str], number: int) -> str:
    knits = "cast" in found["verb"].lower() or found["verb"].lower().endswith("co")
    said = f"cast on {number} sts" if knits else f"ch {number}"
    whole = found.group()
    opened = whole.count("(") - whole.count(")")
    ends = ")" * (opened < 0)
    return (said + ends).ljust(len(whole))
