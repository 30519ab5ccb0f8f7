"""A heading -> its name and how many pieces are to be made: "Left arm (make 2)"."""

from __future__ import annotations

import re

from reader.pattern.line_words import MAKE
from reader.terms.numbers import UNITS

MANY = re.compile(
    rf"\s*(?:make|work)\s+(?P<n>\d{{1,2}}|{'|'.join(UNITS)})"
    r"(?:\s+(?:pieces?|alike|of these|the same))*\s*[.;:](?=\s)",
    re.IGNORECASE,
)
"""Behind a heading that is run in with its text: "HEAD: Work 2. Cast on ..."."""


def make_of(text: str) -> tuple[str, int]:
    """ "Left arm (make 2)" -> the name and 2."""
    found = MAKE.search(text)
    amount = 1
    if found:
        said = next(group for group in found.groups() if group)
        amount = int(said[:3]) if said.isdigit() else UNITS.get(said.lower(), 1)
        text = text[: found.start()] + text[found.end() :]
    pair = re.search(r"\(\s*(?:pair|both)\s*\)", text, re.IGNORECASE)
    # "Feelers (make 2, sand)" leaves ", sand)": the colour stays with the name.
    text = re.sub(r"\s*,\s*([^(),]+)\)\s*$", r" (\1)", text) if found else text
    name = re.sub(r"\s+", " ", text).strip(" #*_:-=—()\t")
    name += ")" if name.count("(") > name.count(")") else ""
    return name, 2 if pair else max(1, amount)
