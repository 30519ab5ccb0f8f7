"""Whether a row's first chain may count as a stitch: what the words, the notes and the heights say.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from reader.counts.chain_named import under_cluster
from reader.counts.chains_passed import chains_in, told_by_height
from reader.counts.edge_loops import beside_group, goes_on_netting, leads_up, loop_at_edge
from reader.counts.ends import ends_of, first_work, travels
from reader.counts.fabric import SPACE, Below, Run
from reader.counts.first_cluster import belongs_to_cluster, drawn_together
from reader.counts.net_edge import begins_a_square, foundation_square
from reader.counts.next_row import chain_is_worked
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    Group,
    Node,
    Repeat,
    Skip,
    Where,
    Work,
)  # fmt: skip
from reader.terms.stitches import Craft


def chain_options(
    nodes: Sequence[Node],
    below: Below,
    carried: int,
    size: int,
    craft: Craft,
    held: dict[int, bool],
    silent: bool | None,
    told: Mapping[int, bool],
    coming: str,
) -> list[bool | None]:
    """The answers worth trying, the likelier first. held: what is known by height, added to where
    words say it. told: what notes say of the whole text. coming: the words of the next row.
    """
    ends = ends_of(nodes, below.stitches is not None)
    work = first_work([one for one in ends.body if not travels(one)])
    if craft is Craft.KNITTING:
        return [False]
    if ends.foundation is not None or (below.chained and ends.chain is None and not carried):
        return _skipped(work, nodes, chain_is_worked(coming), below, held)
    chain = ends.chain
    height = chain.number.at(size) if chain is not None else carried
    if chain is not None and chain.counts is not None:
        if not chain.inside:
            held.setdefault(height, chain.counts)
        return [chain.counts]
    if not height or (height <= 1 and not held.get(height, True)):
        return [False, True] if chain is None and on_the_hook(work) else [False]
    upon = chain is not None and under_cluster(work, height) > 0
    looped = makes_loop(work, height, below) or leads_up(work, chain is None, ends.body, height)
    if upon or looped or belongs_to_cluster(work, ends.body, size):
        return [upon, not upon]
    netted = goes_on_netting(work, ends.body, height) and not chain_is_worked(coming)
    if height in told or netted:
        return [told.get(height, False)]
    known = (mirrored(ends.body, size) or chain_is_worked(coming)) if height >= 3 else None
    if work is not None and work.place.where is Where.SAME:
        # "Sl st in shell, ch 6, dc in same": the next row ends in the opening beside the chain.
        known = known or None
    known = held.get(height) if known is None else known
    if known is None:
        return _by_height(height, work, ends.body, size, silent)
    return [known, not known]


SHORTEST_RING = 5
TUNISIAN = frozenset(["tss", "tks", "tps", "tfs"])


def on_the_hook(work: Work | None) -> bool:
    """Whether a row is of Tunisian stitches, whose first loop is on the hook already: the row's
    first stitch, which its words may leave out.
    """
    return work is not None and (work.stitch.base or work.stitch.name) in TUNISIAN


def _by_height(
    height: int, work: Work | None, body: Sequence[Node], size: int, silent: bool | None
) -> list[bool | None]:
    """The answers where only the height of the chain and the row itself tell."""
    tall = work.stitch.height if work else 3
    if beside_group(work, body, height):
        return [False, True]
    if tall <= 1 and begins_a_square(body, height):
        return [True, False]
    if height <= 1 or (tall <= 1 and work is not None):
        if height < 3:
            return [True, False] if tall >= 3 and _joined_higher(body, height) else [False]
        likely = stands_for_one(body, size) or symmetric_edge(body) is not None
        likely = likely or closed_in_its_stitch(body, height)
        return [likely, not likely]
    first = next((one for one in body if not isinstance(one, Act)), None)
    usual = (height >= 3 if silent is None else silent) or stands_for_one(body, size)
    if isinstance(first, Skip) and first.place.where is Where.FIRST and height == tall:
        # "Ch 2, skip first st, hdc in each st across"
        usual = usual or first.place.number == ONE
    usual = usual or (height == tall == HALF_DOUBLE and begins_increase(body))
    return [usual, not usual]


HALF_DOUBLE = 2
"""Chains of the turning chain for it, which counts in some books and not in others."""


def begins_increase(body: Sequence[Node]) -> bool:
    """Whether a round without repeats has one stitch beside its chain and increases next: "ch 2,
    hdc in same space, 3 hdc in next st", so that the chain makes two of the first.
    """
    works = [one for one in body if isinstance(one, Work | Group | Repeat)]
    if len(works) < 3 or any(isinstance(one, Repeat) for one in works):
        return False
    first, second = works[:2]
    if not isinstance(first, Work) or not isinstance(second, Work):
        return False
    alone = first.place.where is Where.SAME and first.number in (None, ONE)
    several = second.number is not None and second.number.values[0] > 1
    into_one = second.place.where is Where.NEXT and second.place.number == ONE
    return alone and several and into_one and first.stitch == second.stitch


NTH_OF_CHAIN = re.compile(
    r"\b(?P<nth>[2-7])(?:nd|rd|th) (?:st|stitch|ch|chain)(?: of| on)?(?: the)?(?: first| 1st"
    r"| beginning| starting)? ch",
    re.IGNORECASE,
)


def closed_in_its_stitch(body: Sequence[Node], height: int) -> bool:
    """Whether a round is closed in a stitch of its first chain, which is longer: "ch 9, * ...,
    ending with ch 3, tr in 3rd st of ch" began with a stitch and a loop.
    """
    last = body[-1] if body else None
    if isinstance(last, Repeat):
        return closed_in_its_stitch(last.ending, height)
    told = NTH_OF_CHAIN.search(last.words) if isinstance(last, Act | Work) else None
    return told is not None and 2 < int(told["nth"]) < height


def _joined_higher(nodes: Sequence[Node], height: int) -> bool:
    """Whether a round is joined in a chain that its first chain does not reach, "ch 1, 2 tr in same
    space, ..., join in 4th st of ch": the number is misprinted, and the chain stands for a stitch.
    """
    acts = [one for one in nodes if isinstance(one, Act) and one.deed is Deed.JOIN]
    told = NTH_OF_CHAIN.search(acts[-1].words) if acts else None
    return height == 1 and told is not None and int(told["nth"]) > 2


ALL_ROWS = re.compile(r"\b(?:all|each|every) (?:rows?|rnds?|rounds?)\b", re.IGNORECASE)


def turns_always(nodes: Sequence[Node]) -> bool:
    """Whether the chain that a row is turned with turns every row: "ch 3 to turn all rows"."""
    turns = [one for one in nodes if isinstance(one, Act) and one.deed is Deed.TURN]
    return any(ALL_ROWS.search(one.words) for one in turns)


def turns_at_end(nodes: Sequence[Node]) -> bool:
    """Whether a row is turned, and not turned back only."""
    turns = any(isinstance(one, Act) and one.deed is Deed.TURN for one in nodes)
    return turns and not turns_back(nodes)


def turns_back(nodes: Sequence[Node]) -> bool:
    """Whether a row is turned before its first stitches only, behind slip stitches and a chain: "sl
    st back to center of shell just made, ch 3, turn, dc in same space".
    """
    turns = [at for at, one in enumerate(nodes) if isinstance(one, Act) and one.deed is Deed.TURN]
    slips = [at for at, one in enumerate(nodes) if travels(one)]
    works = [
        at for at, one in enumerate(nodes)
        if isinstance(one, Work | Group | Repeat) and not travels(one)
    ]
    return len(turns) == 1 and bool(slips and works) and slips[0] < turns[0] < works[0]


def makes_loop(work: Work | None, height: int, below: Below) -> bool:
    """Whether a turning chain is a loop to be worked into later: "ch 8, turn, d c in 1st d c" is
    fastened where it began, and far longer than its stitch is tall; not so where the row below
    begins with a stitch and a space as long as what is left of the chain. Where that row ended at
    the top of a loop, it is one anyhow: "ch 7, sc in same loop".
    """
    if below.half and work is not None and work.stitch.height <= 1:
        return height >= 4
    if below.in_loop and work is not None and work.stitch.height == 1 and height >= 3:
        # "Ch 3, sc over tr just made": from the tall stitch that closed the round below.
        return work.place.where is Where.SAME
    if work is None or work.place.where is not Where.FIRST or work.place.noun == "sp":
        return False
    single = work.number is None or work.number.values == (1,)
    if single and work.stitch.height == 1 and not below.flat:
        # "Ch 3, sc in first sc" goes on in a spiral.
        return height >= 3
    long = single and work.stitch.height > 1 and height >= work.stitch.height + 4
    return long and not lies_over_space(below, height)


def lies_over_space(below: Below, height: int) -> bool:
    """Whether a turning chain is the like of the stitch and the space that the row below has at
    this edge: "ch 8, turn" over a dc and its 5 chains.
    """
    edge = below.runs[:2]
    if len(edge) < 2 or not edge[0].is_stitch or edge[0].n > 1 or edge[1].name != SPACE:
        return False
    return 2 <= height - edge[1].chains <= 5 and edge[1].chains > 2


TURNING_SPACE = re.compile(
    r"\b(?:turning|t-?)[- ]?ch(?:ain)?(?:[- ]?\d)?[- ]?(?:sp|space|loop)\b"
)
LAST_INTO = re.compile(r"\b(?:working|with|placing|making) (?:the )?last\b|\blast [hs]?d?c in\b")
"""Only where the last stitch of all goes."""


def with_turning_space(below: Below, body: Sequence[Node]) -> Below:
    """The row below with its turning chain as a space at the end, where the words go into it by its
    number of chains or by its name, and no other space is meant: moss stitch and its like.
    """
    if not below.turning or not below.spaces:
        return replace(below, turning=0) if below.turning else below
    chains = {run.chains for run in below.runs if run.name == SPACE}
    said = _words_of(body)
    by_number = re.search(rf"\bch[- ]?{below.turning}(?: turning)?[- ]?(?:sp|space|loop)\b", said)
    by_name = TURNING_SPACE.search(said)
    if not by_name and (by_number is None or below.turning in chains):
        return replace(below, turning=0)
    like = max(chains) if LAST_INTO.search(said) or by_name else below.turning
    return replace(below, runs=(*below.runs, Run(SPACE, 1, like)))


def _words_of(body: Sequence[Node]) -> str:
    """All the words of a list, those of its endings and remarks too."""
    said = [one.words for one in body]
    inner = [(*one.body, *one.ending) for one in body if isinstance(one, Repeat)]
    return " ".join([*said, *map(_words_of, inner)]).lower()


def symmetric_edge(body: Sequence[Node]) -> Work | None:
    """The tall stitch at the end of "* ch 5, sc in next loop; ending with ch 2, dc in last sc": the
    chain at the beginning of such a row is its like; None in other rows.
    """
    last = [one for one in body if not isinstance(one, Act | Chain)]
    repeat = last[-1] if last else None
    short = isinstance(repeat, Repeat) and len(repeat.ending) == 2
    return closing_edge(body) if short else None


def closing_edge(body: Sequence[Node]) -> Work | None:
    """The tall stitch that closes the last loop at the edge, "..., ch 2, dc in last sc"."""
    works: Sequence[Node] = [one for one in body if not isinstance(one, Act)]
    last = works[-1] if works else None
    works = last.ending if isinstance(last, Repeat) else works
    if len(works) < 2:
        return None
    chain, tall = works[-2:]
    fits = isinstance(chain, Chain) and isinstance(tall, Work) and tall.stitch.height >= 3
    at_end = isinstance(tall, Work) and tall.place.where is Where.LAST
    return tall if fits and at_end and isinstance(tall, Work) else None


def stands_for_one(body: Sequence[Node], size: int) -> bool:
    """Whether the first group lacks one stitch against those of the repeat: "ch 3, 2 dc, * 3 dc in
    next sp".
    """
    works = [one for one in body if isinstance(one, Work | Group | Repeat) and not travels(one)]
    first = works[0] if works else None
    again = next((one for one in works if isinstance(one, Repeat)), None)
    if isinstance(first, Group):
        return _lacks_one(first, body, size)
    if not isinstance(first, Work) or again is None:
        return False
    if _one_more_in_same(first, again, size):
        return True
    if first.number is None:
        return False
    alike = [
        one for one in again.body
        if isinstance(one, Work) and one.stitch == first.stitch and one.number is not None
    ]  # fmt: skip
    numbers = {one.number.at(size) for one in alike if one.number is not None}
    own = first.number.at(size)
    return numbers == {own + 1} and own > 1


def _lacks_one(first: Group, body: Sequence[Node], size: int) -> bool:
    """Whether the first group lacks one stitch at its beginning against those to come: "ch 3, (dc,
    ch 2, 2 dc) in same sp, (2 dc, ch 2, 2 dc) in each sp".
    """
    rest = body[list(body).index(first) + 1 :]
    inner = [(one, *one.body) if isinstance(one, Repeat) else (one,) for one in rest]
    full = next((one for many in inner for one in many if isinstance(one, Group)), None)
    mine, like = _parts(first, size), _parts(full, size) if full is not None else []
    if not mine or len(mine) != len(like):
        return False
    own, other = mine[0], like[0]
    return own[0] == other[0] and own[1] + 1 == other[1] and mine[1:] == like[1:]


def _parts(group: Group, size: int) -> list[tuple[str, int]]:
    """The stitches and chains of a group, in order, each with its number; without the chain behind
    it, which parts it from the next.
    """
    parts = [one for one in group.body if isinstance(one, Work | Chain)]
    if len(parts) > 1 and isinstance(parts[-1], Chain):
        parts.pop()
    return [
        (one.stitch.name if isinstance(one, Work) else "ch",
         one.number.at(size) if one.number is not None else 1)
        for one in parts
    ]  # fmt: skip


def _one_more_in_same(first: Work, again: Repeat, size: int) -> bool:
    """Whether "ch 2, hdc in same st, hdc in next st, * 2 hdc in next st, hdc in next st" begins as
    each pass does, its chain for one of the two.
    """
    full = next((one for one in again.body if isinstance(one, Work | Group | Repeat)), None)
    if not isinstance(full, Work) or full.number is None or full.stitch != first.stitch:
        return False
    own = first.number.at(size) if first.number is not None else 1
    same = first.place.where is Where.SAME and full.place.where is Where.NEXT
    return same and full.number.at(size) == own + 1 and full.place.number.at(size) == 1


def mirrored(body: Sequence[Node], size: int) -> bool:
    """Whether the first stitches are one fewer than the last, in a row of two like halves: "ch 3, 4
    dc in ring, ch 2, 5 dc in ring".
    """
    works = [one for one in body if not isinstance(one, Act)]
    if len(works) != 3 or not isinstance(works[1], Chain):
        return False
    first, last = works[0], works[2]
    if not isinstance(first, Work) or not isinstance(last, Work) or first.stitch != last.stitch:
        return False
    numbers = [one.number.at(size) for one in (first, last) if one.number is not None]
    return len(numbers) == 2 and numbers[0] + 1 == numbers[1] and numbers[0] > 1


def _skipped(
    work: Work | None,
    body: Sequence[Node],
    worked: bool | None,
    below: Below,
    held: dict[int, bool],
) -> list[bool | None]:
    """Whether the chains passed over at the start of a foundation count. worked: whether the next
    row ends in them as in a stitch. held: what is known of turning chains by their height.
    """
    chains = sum(run.n for run in below.runs) if below.chained else 0
    if work is not None and work.place.nth > SHORTEST_RING and work.place.nth == chains:
        # "Ch 7, dc in 7th st": the chain is a loop.
        return [False, True]
    said = (one.counts_chain for one in body if isinstance(one, Act))
    told = next((one for one in said if one is not None), None)
    chain = next((one for one in body if isinstance(one, Chain)), None)
    if chain is not None and chain.counts is not None:
        told = chain.counts
    if told is not None:
        return [told]
    if (rule := told_by_height(work, body, held)) is not None:
        return [rule, not rule]
    if work is not None and work.stitch.height == 1 and work.place.nth > 3 and worked:
        # "Sc in 4th ch from hook": the next row ends in the chains that were passed.
        return [True, False]
    if on_the_hook(work):
        return [True, False]
    if work is not None and work.stitch.height < 3 and foundation_square(body, work.place.nth):
        return [True, False]
    if work is None or work.stitch.height < 3:
        return [False, True] if work is not None and work.stitch.height == 2 else [False]
    first = next((one for one in body if isinstance(one, Skip | Work | Repeat | Group)), None)
    nth = first.place.nth if isinstance(first, Group) else work.place.nth
    if worked:
        return [True, False]
    if first is work and drawn_together(work.stitch) and not work.stitch.parts:
        # Told by the hands, it is the row's own stitch, of which the chain is none.
        return [False, True]
    passed = chains_in(first) + 1 if isinstance(first, Skip) else nth
    if first is work and work.number is not None and loop_at_edge(work, body, nth - 1):
        return [False, True]
    return [True, False] if passed >= work.stitch.height + 1 else [False, True]
