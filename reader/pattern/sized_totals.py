"""The sizes of a total's numbers: whether a list has one for each, and all of them by commas."""

from __future__ import annotations

import re


def whole_list(before: str, sizes: int) -> bool:
    """Whether words end with a number for every size already, "x6-7-8"."""
    found = re.search(r"\d+(?:\s?[-/:]\s?\d+)+\s*$", before)
    return found is not None and len(re.findall(r"\d+", found.group())) == sizes


def by_commas(body: str, sizes: int) -> str:
    """The words of a bracket with the numbers of all sizes parted by commas: "60-70-80"."""
    found = re.match(r"\d+(?:\s?[-/:]\s?\d+)+", body)
    if found is None or len(re.findall(r"\d+", found.group())) != sizes or sizes < 2:
        return body
    return re.sub(r"\s?[-/:]\s?", ", ", found.group()) + body[found.end() :]
