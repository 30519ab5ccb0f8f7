"""Parts of a text that are worked in the other craft than most of it: a knitted cover in a text
whose trimmings are all crocheted.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from reader.pattern.layout import Layout, WrittenPart, WrittenRow
from reader.terms.crafts import CROCHET_WORDS, KNITTING_WORDS
from reader.terms.stitches import Craft

CAST_ON = re.compile(r"\bcast(?:ing)?[ -]?on\b|\bpick up and k", re.IGNORECASE)
HOOKED = re.compile(r"\bhook\b|\bcrochet\b|\bch(?:ain)? ?\d", re.IGNORECASE)
VOTES = {
    Craft.KNITTING: re.compile(KNITTING_WORDS, re.IGNORECASE),
    Craft.CROCHET: re.compile(CROCHET_WORDS, re.IGNORECASE),
}
Stretch = tuple[int, int]


def mixed(text: str, craft: Craft) -> bool:
    """Whether a text of that craft may hold parts of the other."""
    return craft is Craft.CROCHET and CAST_ON.search(text) is not None


def stretches(text: str, layout: Layout) -> list[Stretch]:
    """Where the knitted parts of a text of crochet stand, each from the end of the part before."""
    out: list[Stretch] = []
    before, knits = 0, False
    for part in layout.parts:
        rows = [item for item in part.items if isinstance(item, WrittenRow)]
        if not rows:
            continue
        words = text[rows[0].start : rows[-1].end]
        knits = _knits(words, knits)
        end = max(item.end for item in part.items)
        if knits:
            out.append((before, end))
        before = end
    return out


def _knits(words: str, after_knitting: bool) -> bool:
    """Whether a part is knitted: cast on, or going on with what was."""
    knit, crochet = (len(VOTES[craft].findall(words)) for craft in (Craft.KNITTING, Craft.CROCHET))
    begun = CAST_ON.search(words) is not None or (after_knitting and not HOOKED.search(words))
    return begun and knit > crochet


def within(part: WrittenPart, places: list[Stretch]) -> bool:
    """Whether a part stands in one of the stretches."""
    at = next((item.start for item in part.items if isinstance(item, WrittenRow)), -1)
    return any(start <= at < end for start, end in places)


def rewritten(text: str, places: list[Stretch], put_right: Callable[[str], str]) -> str:
    """The text with the stretches put right, each place for place."""
    for start, end in places:
        text = text[:start] + put_right(text[start:end]) + text[end:]
    return text
