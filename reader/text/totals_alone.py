"""Totals that stand alone on a line, "36 dc" under "repeat around, join" -> a full stop before
them, or brackets around them where an empty line follows; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_THING = (
    r"(?:[shd]{1,2} ?c|tr ?c?|htr|dtr|sts?|stitches|(?:half |single |double |treble )*(?:crochets?"
    r"|doubles|trebles|singles)"
    r"|(?:little |small |big |large |tiny )?(?:shells|fans|clusters|groups|loops|spaces|sps|v-sts"
    r"|petals|corners)|(?:ch|chain)[ -]?\d+[ -](?:spaces?|sps?|loops?)"
    r"|\d+[ -]ch(?:ain)?[ -](?:spaces?|sps?|loops?))"
)
ON_ITS_LINE = Sought(
    ("\n",),
    r"(?P<before>[a-z])(?P<gap>[ \t]*\n[ \t]*)"
    rf"(?P<total>\d{{1,4}} {_THING}(?:(?: and |, | \+ | & )\d{{1,4}} {_THING})*)"
    r"(?P<end>[ \t]*\.?[ \t]*(?:\n(?P<empty>(?=[ \t]*\n))?|$))",
    re.IGNORECASE,
)
LEADS_ON = re.compile(
    r"\b(?:in|into|of|next|last|first|each|every|the|and|or|with|work|make|sc|dc|to|over|skip|sk|miss"
    r"|then|repeat|rep|ch|chain|until|have|a|an|on|remaining|following|than)$",
    re.IGNORECASE,
)
"""The last word of a line that goes on with the next: "work in next / 3 dc"."""


def parted_totals(text: str) -> str:
    """The text with such lines parted from the words before them; any other text as it is."""
    out: list[str] = []
    at = 0
    for one in ON_ITS_LINE.finditer(text):
        gap = one.start("gap")
        if LEADS_ON.search(text, max(0, gap - 12), gap):
            continue
        first, over = (".", "") if one["empty"] is None else ("(", ")")
        out += [text[at:gap], first, " " * (len(one["gap"]) - 1), one["total"]]
        out.append(over + one["end"][1:] if over else one["end"])
        at = one.end()
    return "".join(out) + text[at:]
