"""Skips and chains inside a row -> what they pass over and leave."""

from __future__ import annotations

from reader.counts.fabric import foundation
from reader.counts.openings import is_opening, wanted
from reader.counts.placing import cap
from reader.counts.tally import Tally
from reader.counts.worked import Move, MoveKind
from reader.pattern.holders import ASIDE
from reader.pattern.tree import Chain, Skip, Where


def skip_over(skip: Skip, tally: Tally) -> None:
    """Passes over stitches or spaces."""
    m = cap(skip.place.number.at(tally.size)) * skip.place.sides
    before = tally.walk.takes
    tally.elastic = tally.elastic or skip.place.text == ASIDE
    if is_opening(skip.place, tally.walk):
        tally.spaced = True
        tally.walk.take_spaces(m, wanted(skip.place, tally.walk))
    elif skip.place.where is Where.CHAIN or (tally.below.chained and before == 0):
        tally.walk.over(foundation(sum(run.n for run in tally.below.runs), True))
        tally.walk.take(max(m, skip.place.nth))
    else:
        tally.walk.take(m)
    takes = tally.walk.takes - before
    tally.moves.append(Move(MoveKind.SKIP, skip.words, skip.span, takes, 0, times=m))


def chain_space(chain: Chain, tally: Tally) -> None:
    """Chains inside a row: one space."""
    tally.walk.aside = 0
    amount = chain.number.at(tally.size)
    if tally.closed:
        # "repeat from * around, ch 5, join": the chain that closed the round already.
        tally.moves.pop()
    else:
        tally.make_space(amount)
    tally.closed = False
    tally.moves.append(
        Move(MoveKind.CHAIN, chain.words, chain.span, spaces=1, stitch="ch", times=amount)
    )
