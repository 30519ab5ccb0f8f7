"""Rounds told once over, as old books tell them: "1 dc on centre of 3 ch, 3 ch, miss 3." -> whether
the list may be meant to go on all round, though no word says so.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.fabric import Below
from reader.counts.passing import in_the_chains
from reader.pattern.place_words import SPACE_NOUNS
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    Group,
    Node,
    Repeat,
    Skip,
    Until,
    Where,
    Work,
)
from reader.terms.stitches import Craft, Kind

ALONG = (Where.PLAIN, Where.NEXT, Where.FIRST)
"""Places that a list goes on to one after the other."""
FEWEST = 6
"""Stitches and spaces below, fewer than which a list told once may well be all."""
ENDS = (Deed.TURN, Deed.NEEDLE, Deed.FINISH)


def goes_on(nodes: Sequence[Node], below: Below) -> bool:
    """Whether the list is one of chains, stitches passed or loops, over a round of crochet. That it
    closes the round is not looked at: only a reading that does is preferred.
    """
    if below.flat or below.chained or below.stitches is None:
        return False
    if below.stitches + below.spaces < FEWEST:
        return False
    if any(isinstance(one, Act) and one.deed in ENDS for one in nodes):
        return False
    listed: list[Node] = [one for one in nodes if not isinstance(one, Act)]
    alone = len(listed) == 1 and isinstance(listed[0], Repeat) and is_once(listed[0])
    if alone and isinstance(listed[0], Repeat):
        # "(sc, ch 5, skip 2 sc)." and nothing behind it.
        listed = list(listed[0].body)
    worked = [one for one in listed if isinstance(one, Work | Group)]
    placed = [one for one in listed if isinstance(one, Work | Group | Skip)]
    chains = [one for one in listed if isinstance(one, Chain)]
    if not worked or len(placed) + len(chains) < len(listed):
        return False
    if not all(one.place.where in ALONG for one in placed):
        return False
    stitches = [one.stitch for one in worked if isinstance(one, Work)]
    if any(one.craft is not Craft.CROCHET or one.kind is Kind.SLIP for one in stitches):
        return False
    loops = any(one.place.noun in SPACE_NOUNS or in_the_chains(one.place) for one in worked)
    passed = bool(chains) or len(placed) > len(worked)
    # "(sc, inc), join": a list of two in brackets is one to repeat.
    return (loops or passed or (alone and len(worked) > 1)) and isinstance(listed[0], Work | Group)


def is_once(repeat: Repeat) -> bool:
    """Whether it is a list in brackets with no word of how often."""
    return repeat.until is Until.TIMES and repeat.number == ONE and not repeat.ending
