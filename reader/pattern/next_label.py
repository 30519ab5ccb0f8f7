"""Whether a line in small letters begins with the label of a row, and goes on with no line."""

from __future__ import annotations

import re

from reader.pattern.labels import label_at

OWN_LABEL = re.compile(
    r"[\[(]R ?\d{1,3}[\])] |r ?\d{1,3}(?:[-—]r?\d{1,3})?[:.)]? "
    r"|(?:rnd|round|row)s? ?\d{1,3}(?:(?:[-—,/]| ?[,+&] ?| and | to )\d{1,3}){0,20}"
    r"(?: ?[:)]|\.| [-—=]) "
)


def next_label(before: str, line: str) -> bool:
    """Whether a line begins with the next number's label in small letters or in a bracket, as a
    line that goes on may begin: "r2: knit / r3: *k7".
    """
    label = label_at(line, 0, True) if OWN_LABEL.match(line) else None
    above = label_at(before.lstrip(), 0, True) if label is not None else None
    if label is None or above is None or not above.numbers:
        return False
    follows = {number + 1 for number in above.numbers}
    return bool(follows.intersection(label.numbers[:1])) or (
        label.numbers[:1] > above.numbers[:1] and ":" in line[: label.end]
    )
