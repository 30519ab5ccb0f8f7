"""Labelled rows that only name another row, by whatever verb: "Row 4: exactly like row 2", "R7
follow R3", "5th round: identical to the second round" -> "Row 4:           as row 2"; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import ORDINALS, SPELLED
from reader.text.sought import Sought, has_any

_ROW = r"(?:row|rnd|round|rd)"
_ORD = rf"(?:\d{{1,3}}(?:st|nd|rd|th|d)|{'|'.join(ORDINALS)}|last|previous)"
_LABEL = (
    rf"^[ \t>*•-]*(?:(?:{_ROW}s?|R)[ .#]{{0,2}}\d(?:[\d ,&—-]|and |to ){{0,12}}"
    rf"|{_ORD}(?: (?:and|&|to) (?:the )?{_ORD})? {_ROW}s?|{_ROW}s? {SPELLED}|\d{{1,3}}(?=[:.)]))"
    r"(?: ?[(\[][^)\]\n]{1,16}[)\]])?[ ]?(?:[:.,)=—-]+)?[ ]+"
)
_DID = (
    r"(?:do[ ])?(?:exactly[ ]|just[ ]|precisely[ ])*(?:what|as|like|how|the[ ]same[ ]as)[ ]"
    r"(?:you|we|i)(?:'ve|[ ]have)?[ ](?:just[ ])?(?:did|worked|made|done|knit(?:ted)?|crocheted)"
    r"(?:[ ](?:it|them))?(?:[ ](?:for|in|on|with|at))?"
)
""" "Exactly what you did for row 2"."""
_VERB = (
    rf"(?:{_DID}"
    r"|(?:(?:every|each)[ ]one[ ](?:of[ ](?:them|these)[ ])?|all(?:[ ]of[ ](?:them|these))?[ ])?"
    r"(?:(?:is|are|it is|it's|that's)[ ])?"
    r"(?:(?:worked|made|done|knit|knitted|crocheted|works?|do|goes)[ ])?"
    r"(?:exactly[ ]|just[ ]|again[ ]|the[ ]|very[ ])*"
    r"(?:(?:like|same(?:[ ](?:thing|again|idea|way|deal))?[ ]as|as)(?:[ ](?:for|in|on|per))?"
    r"|identical[ ](?:to|with)|a[ ](?:repeat|copy)[ ]of|copies[ ]of|repeats[ ]of"
    r"|(?:no|not)[ ]different[ ](?:from|to|than)|nothing[ ]but"
    r"|follow|copy|see|use|per|repeats|duplicate|as[ ]given[ ]for|repeat[ ]as|ditto(?:[ ]of)?"
    r"|another|(?:(?:rep(?:eat)?|same|use|follow)[ ])?(?:the[ ])?instructions[ ](?:for|of|from|as)"
    r"|same[ ]instructions[ ]as))"
)
CALLED = re.compile(
    rf"(?P<label>{_LABEL})(?P<verb>{_VERB})"
    rf"(?=[ ](?:the[ ])?(?:{_ROW}s?[ ]?\d|R\d|{_ORD}[ ]{_ROW}\b|{_ROW}[ ]{SPELLED}\b))",
    re.IGNORECASE | re.MULTILINE,
)
IS_ROW = Sought(
    (" = ",),
    rf"^(?P<label>[ \t]*(?:(?:{_ROW}s?|R)[ ]?\d{{1,3}}|\d{{1,3}}(?:st|nd|rd|th) {_ROW}))[ ]=[ ]"
    rf"(?=(?:the )?(?:{_ROW}s?[ ]?\d|R\d|{_ORD}[ ]{_ROW}\b|{_ROW}[ ]{SPELLED}\b))",
    re.IGNORECASE | re.MULTILINE,
)
""" "Row 4 = row 2"."""
STANDS_FOR = Sought(
    (": = ", ". = "),
    rf"^(?P<label>[ \t]*(?:(?:{_ROW}s?|R)[ ]?\d{{1,3}}(?: ?[—-] ?\d{{1,3}})?"
    rf"|\d{{1,3}}(?:st|nd|rd|th) {_ROW})[:.]) = "
    rf"(?=(?:the )?(?:{_ROW}s?[ ]?\d|R\d|{_ORD}[ ]{_ROW}\b|{_ROW}[ ]{SPELLED}\b))",
    re.IGNORECASE | re.MULTILINE,
)
NAMED_AGAIN = re.compile(
    rf"^(?P<label>{_LABEL})(?P<row>(?:{_ROW}[ ]?\d{{1,3}}|R\d{{1,3}}))[ ]"
    r"(?P<again>again|repeat(?:ed|s)?|once more)(?=[ ]*\.?[ ]*(?:$|[(\[]))",
    re.IGNORECASE | re.MULTILINE,
)
""" "Row 4: Row 2 again"."""
BUT_ONE = Sought(
    ("but one", "before last", "before the last"),
    rf"^(?P<before>[ \t]*(?:{_ROW}s?[ .#]?|R[ .#]?)?(?P<n>\d{{1,3}})(?!\d|[ ]?[-&,])[^\n]{{0,40}}?)"
    rf"(?P<what>\b(?:the )?(?:(?:last|previous) {_ROW} but one|{_ROW} before (?:the )?last))\b",
    re.IGNORECASE | re.MULTILINE,
)
""" "Row 5: as the last row but one": as row 3."""
STOPPED = re.compile(
    rf"(?<=[ ])(?P<rep>rep)\.(?=[ ](?:{_ROW}s?[ ]?\d|R\d|{_ORD}[ ]{_ROW}\b))", re.IGNORECASE
)
VERBS = (
    "like", "same as", " as", "identical", "repeat", "follow", "copy", "see", "use", "per ",
    "duplicate", "instructions", "ditto", "another", "what ", "how ", "differ", "nothing but",
    "copies",
)  # fmt: skip
"""One of these stands in every such row: far sooner looked for."""
AGAINS = (" again", " repeat", " once more")
USUAL = frozenset(["as", "like", "same as", "the same as", "as for", "as in"])


def with_one_verb(text: str) -> str:
    """The text with "as" for such verbs; any text goes in."""
    text = STOPPED.sub(r"\g<rep> ", BUT_ONE.sub(_two_back, text))
    text = CALLED.sub(_as, text) if has_any(text, VERBS) else text
    text = STANDS_FOR.sub(r"\g<label>as ", text)
    text = NAMED_AGAIN.sub(_named, text) if has_any(text, AGAINS) else text
    return IS_ROW.sub(r"\g<label>:as ", text)


def _named(found: re.Match[str]) -> str:
    label = found["label"]
    return label + f"as {found['row']}".ljust(len(found.group()) - len(label))


def _two_back(found: re.Match[str]) -> str:
    number = int(found["n"]) - 2
    return found["before"] + f"row {number}".ljust(len(found["what"])) if number else found.group()


def _as(found: re.Match[str]) -> str:
    verb = " ".join(found["verb"].lower().split())
    if verb in USUAL:
        return found.group()
    label = found["label"]
    if re.search(r"[:.)=,—-]\s*$", label) is None:
        label = label.rstrip() + ":" + label[len(label.rstrip()) + 1 :]
    return label + "as".rjust(len(found["verb"]))
