"""Goals told otherwise than for the whole row: "until there are 13 sts between markers", where the
rows before tell how many lie between; "until all are worked. 18 sts remain.", where the total
behind tells.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import TYPE_CHECKING

from reader.counts.markers import PLACED
from reader.pattern.figures import tightened
from reader.pattern.tree import Act, Deed, Node, Where, Work
from reader.terms.stitches import Kind
from reader.text.sought import Sought

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger

BETWEEN = re.compile(
    r"\b(?:until|till|to)\b[^.;]*?\b(?P<n>\d+)\s*(?:\w+\s+)?(?:sts?\b|stitches)?\s*"
    r"(?:(?:are|lie)\s+)?(?:between\s+(?:(?:the|your|these|those|both)\s+)?(?:(?:two|2)\s+)?"
    r"(?:m\b|markers?|inc\w*)"
    r"|(?:in|for|of)\s+(?:the\s+)?(?:thumb|gusset))"
    r"|\b(?:until|till)\b[^.;]*?\b(?P<of>\d+)\s+(?:sts\s+)?(?:thumb|gusset)\s+(?:gusset\s+)?(?:sts|stitches)"
    r"|\b(?:until|till)\s+(?:the\s+)?(?:thumb|gusset)\s+(?:gusset\s+)?(?:has|contains|counts|is)\s+"
    r"(?P<has>\d+)\s+(?:sts|stitches)",
    re.IGNORECASE,
)

BETWEEN_SAID = Sought(("between", "thumb", "gusset"), r"between|thumb|gusset", re.IGNORECASE)
NEAR = 24
"""Characters: a total stands at most so far behind its rule."""


def whole_of_part(ledger: Ledger, words: str) -> int | None:
    """The stitches of the whole row when its part has as many as the words say; None where they
    speak of no part, or the rows before do not tell how many it has: more than are on hand at all
    cannot be.
    """
    if not BETWEEN_SAID.search(words):
        return None
    found = BETWEEN.search(tightened(words, ledger.size, len(ledger.pattern.sizes)))
    here = ledger.below.stitches
    if found is None or here is None:
        return None
    gained = 0
    for entry in reversed(ledger.entries):
        held = _held_between(entry, ledger.size)
        if held is not None:
            others = here - (held + gained)
            goal = int((found["n"] or found["of"] or found["has"])[:4])
            return others + goal if others >= 0 else None
        if entry.gain is None:
            return None
        gained += entry.gain
    return None


def told_behind(ledger: Ledger, start: int, end: int, step: int) -> int | None:
    """The total printed directly behind a rule, where steps of that sign lead to it; else None."""
    here = ledger.below.stitches
    printed, _ = ledger.printed(ledger.text[start:end])
    totals = [one for one in printed if not one.change and not one.each and one.start < NEAR]
    if not totals or here is None or not step:
        return None
    sized = len(totals[0].numbers) == len(ledger.pattern.sizes)
    told = totals[0].numbers[ledger.size if sized else 0]
    way = told - here
    return told if way * step > 0 and way % step == 0 else None


def _held_between(entry: Entry, size: int) -> int | None:
    """The stitches that a row makes between two markers it places, or from one increase to the
    other; None where it does not tell.
    """
    marks = [at for at, one in enumerate(entry.nodes) if _places_marker(one)]
    if len(marks) == 2:
        return _made(entry.nodes[marks[0] : marks[1]], 0, size)
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    incs = [at for at, one in enumerate(works) if _increases(one)]
    if marks or len(incs) != 2:
        return None
    return _made(works[incs[0] : incs[1] + 1], 1, size)


def _places_marker(one: Node) -> bool:
    placed = one.words.lower().startswith(PLACED) if isinstance(one, Act) else False
    return placed and isinstance(one, Act) and one.deed is Deed.MARKER


def _increases(one: Node) -> bool:
    return isinstance(one, Work) and one.stitch.kind is Kind.INCREASE


def _made(nodes: Sequence[Node], fixed: int, size: int) -> int | None:
    """The stitches that plain numbers make; None for anything else. fixed: the least number of
    them that are no increase.
    """
    made, plain = 0, 0
    for one in nodes:
        if isinstance(one, Act):
            continue
        if not isinstance(one, Work) or one.place.where not in (Where.PLAIN, Where.NEXT):
            return None
        number = one.number.at(size) if one.number else 1
        made += one.stitch.makes * number
        plain += not _increases(one)
    return made if plain >= fixed and made else None
