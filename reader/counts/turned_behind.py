"""Behind a row told by rule only the chain that it is turned with, "Work even. Ch 2, turn."
-> that chain, which is no row and no foundation.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_CHAIN = r"(?:ch(?:ain)?s?[ -]?(?P<n%d>\d)|(?P<m%d>\d)[ -]?ch(?:ain)?s?)(?: sts?)?"
_DEED = (
    r"(?:turn(?:ing)?(?: (?:the )?work)?|join(?:ed|ing)?(?: (?:rnd|round|as before))?"
    r"(?: with (?:a )?(?:sl st|ss|slip stitch))?|sl st to join|at (?:the )?end of"
    r" (?:each|every|the) (?:row|rnd|round)|(?:for|as|to) (?:the )?turn(?:ing)?(?: ch(?:ain)?)?)"
)
ONLY_TURNED = re.compile(
    rf"\W*(?:(?:and|then|always|work|make|with) )*(?:{_DEED}\W+(?:(?:and|then|with) )*)?"
    rf"(?:a )?{_CHAIN % (1, 1)}(?:\W+(?:(?:and|then) )*{_DEED})*\W*",
    re.IGNORECASE,
)


def turned_behind(ledger: Ledger, after: str) -> bool:
    """Whether only a turning chain stands behind a row of crochet; then it is carried on."""
    if ledger.pattern.craft is not Craft.CROCHET or not ledger.rows:
        return False
    found = ONLY_TURNED.fullmatch(" ".join(after.split()))
    if found is None:
        return False
    ledger.carried = int(found["n1"] or found["m1"])
    return True
