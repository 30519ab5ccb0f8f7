"""The way back of a short row: the row before was turned before its end, so that fewer stitches
than are on hand are worked, and none is missing.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.counts.fabric import plain
from reader.pattern.tree import Act, ShortTurn, Where, Work
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

FLAP = re.compile(r"\b(?:heel|flap|earflap)\b", re.IGNORECASE)
"""What a part is called that is worked in rows over some of a round's stitches."""
TURNED = re.compile(r"\b(?:turn|turning|short|cup|gusset|toe)\b", re.IGNORECASE)
"""What else such a name tells: a part that is made of short rows."""
WHY = "the flap is worked on {} stitches, as its first two rows are; the others wait"


def way_back(ledger: Ledger, entry: Entry) -> Entry:
    """The row as one that ends where the stitches do that the row before worked, where it is told
    by numbers that come to just so many; a flap goes on with those alone.
    """
    if _goes_on_as_flap(ledger, entry):
        return entry
    below, left = ledger.below, ledger.short
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    if not left or below.stitches is None or not works:
        return entry
    takes = 0
    for one in works:
        if not isinstance(one, Work) or one.place.where is not Where.PLAIN:
            return entry
        if one.stitch.craft is not Craft.KNITTING or (one.number is None and one.stitch.takes == 1):
            return entry
        takes += one.stitch.takes * (one.number.at(ledger.size) if one.number else 1)
    if takes != below.stitches - left:
        return entry
    turn = ShortTurn(entry.nodes[-1].span, "")
    return replace(entry, nodes=(*entry.nodes, turn))


def _goes_on_as_flap(ledger: Ledger, entry: Entry) -> bool:
    """Whether the second row of a heel's flap works just those stitches that the first did; then
    they are what is on hand, from the first row on.
    """
    here, left = ledger.below.stitches, ledger.short
    named = FLAP.search(ledger.part) and not TURNED.search(ledger.part)
    if not named or len(ledger.rows) != 1 or here is None or not 0 < left < here:
        return False
    worked = here - left
    over = plain(worked)
    solved = ledger.solve(entry, None, "", over)
    if solved.fits is not True or solved.tally.walk.takes != worked or solved.count != worked:
        return False
    first = ledger.rows[-1]
    if first.count != here:
        return False
    ledger.rows[-1] = replace(first, count=worked, assumed=(*first.assumed, WHY.format(worked)))
    ledger.waiting = ledger.waiting or (left,)
    ledger.below, ledger.short = over, 0
    return True
