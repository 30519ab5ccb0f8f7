"""Skips and chains inside a row -> what they pass over and leave."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import TypeVar

from reader.counts.fabric import SPACE, Below, any_space, foundation
from reader.counts.openings import SPACES, UNITS, is_opening, wanted
from reader.counts.putting import cap
from reader.counts.tally import Tally
from reader.counts.worked import Move, MoveKind
from reader.pattern.holders import ASIDE
from reader.pattern.tree import ONE, Act, Chain, Deed, Group, Node, Place, Repeat, Skip, Where, Work


def over_loops(nodes: Sequence[Node], below: Below) -> list[Node]:
    """The row with "skip 5 sts of ch" as the skip of a space, where the row below has spaces of so
    many chains, and no chains to be worked into.
    """
    chains = {run.chains for run in below.runs if run.name == SPACE}
    single = all(run.name != "ch" for run in below.runs)
    if not chains or not single:
        return list(nodes)
    return [_over_loop(node, chains) for node in _to_next_centre(nodes)]


def _to_next_centre(nodes: Sequence[Node]) -> list[Node]:
    """ "1 dc on centre of 3 ch, 3 ch, miss 3": the chains and the stitch up to the next centre lie
    between, and no stitch of the row is passed.
    """
    out: list[Node] = []
    chain = 0
    for node in nodes:
        if isinstance(node, Work):
            centred = node.place.noun == "sp" and CENTRE.search(node.place.text) is not None
            chain = node.place.chain if centred else 0
        bare = isinstance(node, Skip) and chain > 1 and node.place.noun == "st"
        if isinstance(node, Skip) and bare and node.place.number.values[0] == chain:
            node = Act(node.span, node.words, Deed.NOTE)
        out.append(node)
    return out


CENTRE = re.compile(r"\b(?:centre|center|middle)\b", re.IGNORECASE)


def _over_loop(node: Node, chains: set[int]) -> Node:
    if isinstance(node, Repeat):
        body = tuple(_over_loop(one, chains) for one in _to_next_centre(node.body))
        ending = tuple(_over_loop(one, chains) for one in node.ending)
        same = body == node.body and ending == node.ending
        return node if same else replace(node, body=body, ending=ending)
    if isinstance(node, Work):
        return _over_chain(_into_loop(node, chains))
    if isinstance(node, Group):
        return _into_loop(node, chains)
    if not isinstance(node, Skip):
        return node
    number = node.place.number.values[0]
    if number < 2 or number not in chains or not OF_CHAIN.search(node.words):
        return node
    return replace(node, place=replace(node.place, noun="sp", number=ONE, chain=number))


THE_CHAIN = re.compile(r"^(?:over|under) (?:the |that |each |every |next )*ch(?:ain)?$")


def _over_chain(work: Work) -> Work:
    """ "6 sc over ch": the loop that the chain makes."""
    if work.place.noun != "ch" or not THE_CHAIN.match(work.place.text.lower()):
        return work
    return replace(work, place=replace(work.place, noun="sp", number=ONE))


THE_CHAINS = re.compile(
    r"^(?:in|into|over|under|on|round|around) (?:the |that )\d+ ch", re.IGNORECASE
)
"""Told by its number, a chain is the loop that it makes: "11 dc into the 9 ch"."""


def in_the_chains(place: Place) -> bool:
    """Whether a place is a loop told so."""
    return place.noun == "ch" and THE_CHAINS.match(place.text) is not None


_Placed = TypeVar("_Placed", Work, Group)


def _into_loop(work: _Placed, chains: set[int]) -> _Placed:
    """ "3 tr on 3 ch": the loop of so many chains, not three places."""
    place, number = work.place, work.place.number.values[0]
    told = in_the_chains(place)
    single = told or isinstance(work, Group) or work.number is None
    single = single or (isinstance(work, Work) and work.number in (ONE, place.number))
    here = place.where is Where.NEXT and place.noun == "ch" and not place.each
    if (number < 3 and not told) or number not in chains or not (single and here):
        return work
    return replace(work, place=replace(place, noun="sp", number=ONE, chain=number))


OF_CHAIN = re.compile(r"\b(?:sts?|stitches) of (?:the )?ch", re.IGNORECASE)


def skip_over(skip: Skip, tally: Tally) -> None:
    """Passes over stitches or spaces."""
    m = cap(skip.place.number.at(tally.size)) * skip.place.sides
    before = tally.walk.takes
    tally.elastic = tally.elastic or skip.place.text == ASIDE
    if _within_space(skip, tally):
        # "skip first 3 ch of ch-4, tr in next ch": the space is the next stitch's.
        tally.spaced = True
    elif _whole_space(skip, m, tally):
        tally.spaced = True
        tally.walk.take_spaces(1, any_space)
    elif is_opening(skip.place, tally.walk):
        tally.spaced = True
        tally.walk.take_spaces(m, wanted(skip.place, tally.walk))
    elif skip.place.where is Where.CHAIN or (tally.below.chained and before == 0):
        tally.walk.over(foundation(sum(run.n for run in tally.below.runs), True))
        tally.walk.take(max(m, skip.place.nth))
    else:
        noun = skip.place.noun
        tally.walk.take(m, noun if noun not in ("st", "ch", "tch", *SPACES, *UNITS) else "")
    takes = tally.walk.takes - before
    tally.moves.append(Move(MoveKind.SKIP, skip.words, skip.span, takes, 0, times=m))


OF_ITS_CHAINS = re.compile(r"\bch(?:s|ains?)? of (?:the |next |that )*ch(?:ain)?[- ]?(?P<n>\d+)")


def _within_space(skip: Skip, tally: Tally) -> bool:
    """Whether only some chains of a space are skipped."""
    told = OF_ITS_CHAINS.search(skip.words.lower())
    few = told is not None and skip.place.number.values[0] < int(told["n"])
    return few and skip.place.noun == "ch" and tally.walk.at_space()


BARE = re.compile(r"^[a-z]+(?: over| the| next| following)* \d+$", re.IGNORECASE)


def _whole_space(skip: Skip, number: int, tally: Tally) -> bool:
    """Whether the chains that are skipped are the space that the hook stands before: "* ch 1, skip
    next ch, dc in next dc".
    """
    told = skip.place.noun == "ch" or (skip.place.noun == "st" and BARE.match(skip.words))
    return bool(told) and tally.walk.chains_ahead() == number


def chain_space(chain: Chain, tally: Tally) -> None:
    """Chains inside a row: one space."""
    tally.walk.aside = 0
    amount = chain.number.at(tally.size)
    if chain.back:
        tally.moves.append(Move(MoveKind.CHAIN, chain.words, chain.span, stitch="ch", times=amount))
        return
    if tally.closed:
        # "repeat from * around, ch 5, join": the chain that closed the round already.
        tally.moves.pop()
    else:
        tally.make_space(amount)
    tally.closed = False
    tally.moves.append(
        Move(MoveKind.CHAIN, chain.words, chain.span, spaces=1, stitch="ch", times=amount)
    )
