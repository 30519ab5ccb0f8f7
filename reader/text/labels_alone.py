"""Labels that stand alone on their line, "row 2" over "ch 1, sc in each st" -> "row 2:" before the
words, length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_NUMBERS = r"\d{1,3}(?:[ ]?(?:-|—|to|through|&|and|,)[ ]?\d{1,3})*"
ALONE = Sought(
    ("row", "rnd", "round", "rd"),
    rf"^(?P<lead>[ \t]*)(?P<label>(?:rows?|rnds?|rounds?|rds?)[ ]?#?[ ]?(?P<n>{_NUMBERS})"
    r"|(?P<nth>\d{1,3})(?:st|nd|rd|th)[ ](?:row|rnd|round))"
    r"(?:[ ]?\([^()\n]{1,24}\))?(?P<gap>[ \t]*\n[ \t]*(?:\n[ \t]*)?)(?=[a-z*(\[\d])",
    re.IGNORECASE | re.MULTILINE,
)
OVER = re.compile(r"(?:^|[.;:!?)\]\d])\s*$|\n[ \t]*\n[ \t]*$")
"""Words behind which a line begins something new."""


def with_colons(text: str) -> str:
    """The text with a colon behind such labels, where they follow each other by number or begin
    something new; any other text as it is.
    """
    found = list(ALONE.finditer(text))
    alone = len(found) == 1
    out: list[str] = []
    last = at = 0
    for one in found:
        numbers = [int(n) for n in re.findall(r"\d+", one["n"] or one["nth"])]
        follows = numbers[0] in (1, last + 1) and not alone
        before = text[: one.start()]
        if not (follows or OVER.search(before) or _next_of(before, numbers[0])):
            continue
        last = numbers[-1]
        gap = one.start("gap")
        out += [text[at:gap], ":", " " * (one.end("gap") - gap - 1)]
        at = one.end("gap")
    return "".join(out) + text[at:]


def _next_of(before: str, number: int) -> bool:
    """Whether the last line above is labelled with the number before."""
    line = before.rstrip()[before.rstrip().rfind("\n") + 1 :]
    label = rf"[ \t]*(?:rows?|rnds?|rounds?|rds?)\b[^:\n]{{0,9}}?\b{number - 1}[ ]?[:.) -]"
    return re.match(label, line, re.IGNORECASE) is not None
