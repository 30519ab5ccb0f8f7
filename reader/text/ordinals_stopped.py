"""Rows told by their ordinal and a full stop, "1st. Knit. 2nd. Purl." -> "1st: Knit. 2nd: Purl.",
length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_BEGINS = r"(?:^[ \t]*|(?<=[.;!—] )|(?<=\) )|(?<=[.;]\n))"
_AS_PLACE = r"(?:rows?|rnds?|rounds?|st(?:s|itch\w*)?|ch(?:ain)?s?|loops?|sc|dc|[sdt] ?c)\b"
LABEL = Sought(
    ("st.", "nd.", "rd.", "th.", "d."),
    rf"{_BEGINS}(?P<n>\d{{1,3}})(?:st|nd|d|rd|th)(?P<stop>\.(?:\s?(?:—|–|--)|(?=\s)))"
    rf"(?=\s*[A-Za-z\d*+(\[])(?!\s+{_AS_PLACE})",
    re.MULTILINE,
)
"""At a line's or a sentence's start; "in 2nd. stitch" is a place."""
FEWEST = 2
"""Of them counting on from each other, by which they are labels."""


def with_labels(text: str) -> str:
    """The text with a colon for the stop of such ordinals, where they count on, each from the one
    before; any other text as it is.
    """
    found = list(LABEL.finditer(text))
    if len(found) < FEWEST:
        return text
    out = list(text)
    for run in _runs(found):
        if len(run) < FEWEST or (int(run[0]["n"]) > 2 and len(run) == FEWEST):
            continue
        for one in run:
            out[one.start("stop")] = ":"
            for at in range(one.start("stop") + 1, one.end("stop")):
                out[at] = " "
    return "".join(out)


def _runs(found: list[re.Match[str]]) -> list[list[re.Match[str]]]:
    """The ordinals in stretches that count on."""
    runs: list[list[re.Match[str]]] = []
    for one in found:
        if runs and int(one["n"]) == int(runs[-1][-1]["n"]) + 1:
            runs[-1].append(one)
        else:
            runs.append([one])
    return runs
