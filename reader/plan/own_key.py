"""A pattern's list of abbreviations as it was read in, one entry for each abbreviation out."""

from __future__ import annotations

import re
from collections.abc import Mapping

_ENTRY = re.compile(r"^\s*(?P<form>[^=:]{1,24}?)\s*[=:]\s*(?P<meaning>.+?)\s*$")


def own_key(key: Mapping[str, str]) -> tuple[tuple[str, str], ...]:
    """Abbreviation in small letters and its meaning, sorted.

    A list in one line ("ch = chain; tr = treble") is taken apart; a meaning with a semicolon that
    begins no further entry stays whole.
    """
    found: dict[str, str] = {}
    for form, meaning in key.items():
        first, *rest = meaning.split(";")
        entries = [_ENTRY.match(one) for one in rest]
        if not rest or not all(entries):
            found[form.lower()] = meaning
            continue
        found[form.lower()] = first.strip()
        found.update({m["form"].lower(): m["meaning"] for m in entries if m})
    return tuple(sorted(found.items()))
