"""Chains that share a place with stitches: "2 dc, ch 1 in first sp", "1 dc, 1 chain, in each dc",
"5 ch, 1 sc in every third st" -> Group.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.bundles import OPENINGS, SHARED, joins_list
from reader.pattern.cursor import Cursor
from reader.pattern.passing import find_chain
from reader.pattern.place_nouns import find_noun_chain
from reader.pattern.place_words import SPACE_NOUNS
from reader.pattern.places import find_place
from reader.pattern.tree import (
    ONE,
    Chain,
    Group,
    Node,
    Num,
    Place,
    Repeat,
    Skip,
    Until,
    Where,
    Work,
)
from reader.terms.stitches import Craft, Kind

INTO = ("in", "into", "on", "over", "under")


def chain_in_place(cur: Cursor, made: list[Node]) -> Node | None:
    """The chain that stands here, taken; with the stitches before it one group where a place that
    all share follows: "2 dc, ch 1 in first ch-1 sp"; None (nothing taken) where no chain stands.
    """
    beside = _space_beside(cur, made)
    if beside is not None:
        return beside
    chain = find_chain(cur)
    last = made[-1] if made else None
    listed = isinstance(last, Work) and last.place.where is Where.PLAIN
    if not isinstance(chain, Chain) or not listed or not isinstance(last, Work):
        return chain
    at, numbered = cur.at, last.number is not None and cur.low() != ","
    cur.accept(",")
    place = find_place(cur) if cur.low() in INTO else None
    if place is None or not (_of_each(place) or (numbered and _one_opening(place))):
        cur.at = at
        return chain
    first = len(made)
    while first > 0 and joins_list(made[first - 1], _of_each(place)):
        if isinstance(made[first - 1], Chain):
            break
        first -= 1
    body = (*made[first:], chain)
    del made[first:]
    words = " ".join(one.words for one in body)
    return Group(body[0].span, f"{words} {place.text}", body, place)


def _space_beside(cur: Cursor, made: list[Node]) -> Work | None:
    """The stitch once more in a space that is named beside its place: "sl st in next dc and ch-1
    sp"; None (nothing taken) elsewhere.
    """
    last = made[-1] if made else None
    if not isinstance(last, Work) or last.place.where is not Where.NEXT or cur.low(-1) != "and":
        return None
    named = cur.low() in ("ch", "chain") and cur.kind(1) == "num" and cur.low(2) in SPACE_NOUNS
    if not named:
        return None
    start = cur.at
    noun, chain = find_noun_chain(cur)
    place = Place(Where.NEXT, cur.span(start), noun=noun, chain=chain, text=cur.said(start))
    return replace(last, span=cur.span(start), words=cur.said(start), place=place)


def _of_each(place: Place) -> bool:
    return place.where is Where.EACH and place.each


def _one_opening(place: Place) -> bool:
    return place.where in SHARED and place.noun in OPENINGS


LOOP = 2
"""Chains more than a stitch's height: before "1 sc in each loop" they do not only turn then."""


def nth_ahead(body: Sequence[Node]) -> tuple[Node, ...]:
    """A pass with the stitches passed over by "ch 4, sc in third dc" as skipped: counted from where
    the hook stands.
    """
    out: list[Node] = []
    told, counted = 0, False
    for one in body:
        before = None if counted or not out else out[-1]
        if isinstance(one, Work) and _counts_on(one, before):
            counted = True
            # "sc in 1st dc, ch 3, sc in 4th dc" counts them all from the first.
            _pass(out, one, one.place.nth - 1 - told)
            told = one.place.nth if told else 0
            one = replace(one, place=replace(one.place, nth=0))
        elif isinstance(one, Work) and one.place.where is Where.FIRST and one.place.nth == 1:
            told = 1
        out.append(one)
    return tuple(out)


def _pass(out: list[Node], one: Work, stitches: int) -> None:
    """Adds the stitches that are passed over before one."""
    if stitches > 0:
        place = replace(one.place, number=Num((stitches,)), nth=0)
        out.append(Skip(one.span, one.words, place))


STANDS = 3
"""Chains that stand on the first stitch of a round, where the words do not say whether they do."""


def nth_at_first(nodes: Sequence[Node]) -> list[Node]:
    """The row with the stitches passed over by "ch 5, dc in 3rd dc" as skipped, where that is its
    first: counted from the one that the chain stands on.
    """
    works = [at for at, one in enumerate(nodes) if isinstance(one, Work | Group | Skip | Repeat)]
    at = works[0] if works else -1
    first, before = nodes[at] if works else None, nodes[at - 1] if at > 0 else None
    if not isinstance(first, Work) or not isinstance(before, Chain):
        return list(nodes)
    if first.number not in (None, ONE) or not _counts_on(first, before):
        return list(nodes)
    out = list(nodes[:at])
    stands = before.number.values[0] >= STANDS if before.counts is None else before.counts
    _pass(out, first, first.place.nth - 1 - stands)
    return [*out, replace(first, place=replace(first.place, nth=0)), *nodes[at + 1 :]]


def _counts_on(work: Work, before: Node | None) -> bool:
    place = work.place
    bare = not {"of", "hook", "needle", "from", "last"} & set(place.text.lower().split())
    one = place.number == ONE and not place.each and place.noun not in ("ch", "tch", "sp")
    here = place.where is Where.NEXT and place.nth > 1 and isinstance(before, Chain | None)
    return here and one and bare and work.stitch.craft is Craft.CROCHET and (
        work.stitch.kind is Kind.STITCH
    )


def loops_in_each(nodes: Sequence[Node]) -> tuple[Node, ...]:
    """The row with a chain too long to be a turning chain as told of every place: "5 ch, 1 sc in
    each loop all round".
    """
    out: list[Node] = []
    for one in nodes:
        if isinstance(one, Repeat):
            one = _all_at_once(replace(one, body=loops_in_each(nth_ahead(one.body))))
        chain = out[-1] if out else None
        if isinstance(chain, Chain) and isinstance(one, Work) and _makes_loops(chain, one):
            place = one.place
            body = (chain, replace(one, place=Place(Where.PLAIN, place.span)))
            one = Group(chain.span, f"{chain.words} {one.words}", body, place)
            out.pop()
        out.append(one)
    return tuple(out)


def _all_at_once(node: Repeat) -> Node:
    """ "* 1 dc, ch 1, in each dc; repeat": the repeat says again what "each" says."""
    if node.until is not Until.OPEN or node.ending:
        return node
    works = [at for at, one in enumerate(node.body) if isinstance(one, Work | Group | Repeat)]
    first = node.body[works[0]] if len(works) == 1 else None
    if not isinstance(first, Work | Group) or not _of_each(first.place):
        return node
    if len(node.body) == 1:
        return first if isinstance(first, Group) else node
    others = [one for one in node.body if one is not first]
    if first.place.among or not all(isinstance(one, Chain | Skip) for one in others):
        return node
    if first.place.nth < 2:
        # "* sc in each loop, ch 5; repeat": in the next, each time.
        one = replace(first, place=_the_next(first.place))
        return replace(node, body=(*node.body[: works[0]], one, *node.body[works[0] + 1 :]))
    chain = others[0] if len(others) == 1 else None
    if not isinstance(chain, Chain) or not isinstance(first, Work):
        return node
    plain = not first.between and first.number in (None, ONE)
    return replace(first, between=chain.number.values[0]) if plain else node


def _the_next(place: Place) -> Place:
    return replace(place, where=Where.NEXT, each=False)


def _makes_loops(chain: Chain, work: Work) -> bool:
    """Whether each of the stitches has that chain before it."""
    place, stitch = work.place, work.stitch
    one = work.number in (None, ONE) and not work.between and chain.counts is None
    plain = stitch.kind is Kind.STITCH and stitch.craft is Craft.CROCHET
    told = one and plain and _of_each(place) and not place.among
    return told and chain.number.values[0] >= stitch.height + LOOP


OVER_IT = re.compile(r"(?P<over>around|round|over|under)?\b.*\b(?:the|each|every|that|this) "
                     r"(?:handle |strap |long |new )*ch(?:ain)?$", re.IGNORECASE)  # fmt: skip
ON_THE_CHAINS = re.compile(
    r"^(?:in|into|on|upon|over|under|round|around) the (?P<chains>\d+) ch(?:ains?)?"
    r"(?: st(?:itche)?s)?(?: (?:in|of) (?:the )?(?:last|previous|preceding) (?:round|row|rnd))?$",
    re.IGNORECASE,
)
"""All of a space's chains, or a ring's: "24 sc on the 12 chain" are 24."""
IN_ONE_CHAIN = 5
"""Stitches into one chain that none would take: a chain of many is meant."""


EACH_OF_THE_CHAINS = re.compile(
    r"^(?:in|into|on|upon|over|under|round) each of the (?P<chains>\d+) ch(?:ains?)?\b",
    re.IGNORECASE,
)


def groups_in_chains(place: Place, stitches: int) -> Place:
    """ "Into the 7 chain 11 dc", "into each of the 5 chain 1 sc, 5 dc, 1 sc": the place of so many
    stitches told behind it, which are one group in the loop of those chains, or in each such loop.
    """
    if place.noun != "ch" or place.nth or stitches < FEWEST_IN_LOOP:
        return place
    held, each = ON_THE_CHAINS.search(place.text), EACH_OF_THE_CHAINS.search(place.text)
    found = held or each
    if found is None or place.number.values[0] != int(found["chains"]):
        return place
    where = Where.EACH if each else place.where
    return replace(place, noun="sp", where=where, number=ONE, chain=int(found["chains"]))


FEWEST_IN_LOOP = 3


def over_whole_chain(number: Num | None, place: Place) -> Place:
    """ "10 sc around each chain", "12 sc over the chain": all that a chain of many takes, which is
    then an opening; other places as they are.
    """
    many = number.values[0] if number is not None else 1
    if place.noun != "ch" or place.nth or place.where not in (Where.NEXT, Where.EACH):
        return place
    held = ON_THE_CHAINS.search(place.text) if number is not None else None
    if held is not None and place.number.values[0] == int(held["chains"]) != many:
        return replace(place, noun="sp", number=ONE, chain=int(held["chains"]))
    told = OVER_IT.search(place.text) if many > 1 else None
    if told is None or place.number != ONE or not (told["over"] or many >= IN_ONE_CHAIN):
        return place
    return replace(place, noun="sp")
