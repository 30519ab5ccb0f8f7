"""Words behind a row that only say that its chains are gone into as its stitches are: "sc in each
st around, counting each ch as a st", "sc around, working 1 sc in each of the 8 chains".
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Act, Deed, Node, Repeat, Until, Where, Work

CHAINS = "chains"
"""What such a remark is about."""
_CHAINS = r"(?:each|every|all|the|any|those|\d+)\b[^.;]{0,24}?\bch(?:ain)?(?:s|es)?\b(?:[ ]sts?\b)?"
MANNER = re.compile(
    r"^\W*(?:and )?(?:be sure to |remember to |make sure to )?"
    r"(?:work(?:ing)?|count(?:ing)?|treat(?:ing)?|mak(?:e|ing)|includ(?:e|ing)|us(?:e|ing)"
    rf"|tak(?:e|ing)|crochet(?:ing)?)\b[^.;]{{0,20}}?(?:\b{_CHAINS}|\bchains\b)",
    re.IGNORECASE,
)
BARE = re.compile(r"^\W*(?:in(?:to)?|on) (?:the )?chains\W*$", re.IGNORECASE)
OTHER = re.compile(
    r"\b(?:not?|never|don't|turning|beginning|starting|first|beg|t-?ch|sps?|spaces?|loops?|lps?"
    r"|hook|between|foundation|over|around|behind)\b|\bch ?-?\d"
    r"|\bch(?:ain)? (?:of )?(?:\d|one|two)",
    re.IGNORECASE,
)
"""Words of chains that are no stitches, or of another chain."""


def chains_too(nodes: Sequence[Node]) -> tuple[Node, ...]:
    """The row with such words as a remark of chains; any other row as it is."""
    out: list[Node] = []
    whole = False
    for one in nodes:
        if whole and _tells(one):
            one = Act(one.span, one.words, Deed.NOTE, CHAINS)
        elif out and isinstance(one, Act) and _told(out[-1]):
            one = replace(one, into=CHAINS)
        out.append(one)
        # Kept, not looked for anew: a row may have thousands of instructions.
        whole = whole or _whole_row(one)
    return tuple(out)


def _told(one: Node) -> bool:
    return isinstance(one, Act) and one.into == CHAINS


def told_of_chains(nodes: Sequence[Node]) -> bool:
    """Whether a row says that its chains are stitches."""
    return any(_told(one) for one in nodes)


def _whole_row(one: Node) -> bool:
    """Whether an instruction goes on to the row's end."""
    if isinstance(one, Repeat):
        return one.until in (Until.OPEN, Until.TO_LAST)
    return isinstance(one, Work) and one.place.where in (Where.REST, Where.EACH)


def _tells(one: Node) -> bool:
    if not isinstance(one, Act | Work) or OTHER.search(one.words):
        return False
    if isinstance(one, Work) and one.place.noun != "ch":
        return False
    return MANNER.match(one.words) is not None or BARE.match(one.words) is not None
