"""One row and what lies below -> the reading that closes it best: its count, verdict and moves."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.agreeing import exactly, values
from reader.counts.along_joined import along_joined
from reader.counts.back_at_first import back_in_first, skipped_at_close
from reader.counts.beginning import begin_in_space, over_the_tall
from reader.counts.between import between_stitches
from reader.counts.chain_named import first_into_row, stands_for, under_cluster
from reader.counts.chained_gaps import chained_gaps
from reader.counts.chains_passed import chains_passed
from reader.counts.edge_loops import begins_in_shell
from reader.counts.endings import only_openings, with_closing
from reader.counts.ends import (
    Ends,
    begins_in_same,
    ends_of,
    first_work,
    leaves_on_needle,
    on_stitch,
    travels,
)  # fmt: skip
from reader.counts.fabric import SPACE, Below, Run, any_opening, foundation
from reader.counts.first_again import closed_round
from reader.counts.first_of_group import in_first_of_groups
from reader.counts.first_square import first_square, loop_begun
from reader.counts.gaps_between import gaps_between
from reader.counts.joined_chain import fills_ring, in_ring
from reader.counts.left_unworked import works_the_rest
from reader.counts.lists import knits, repeated, slips_on, to_last_loop, whole_row
from reader.counts.long_loops import lies_below
from reader.counts.loops_of_stitches import loops_of_stitches
from reader.counts.needles import by_needles
from reader.counts.openings import UNITS, is_opening, wanted
from reader.counts.passing import over_loops
from reader.counts.placing import to_other_edge
from reader.counts.readings import readings, two_in_one
from reader.counts.slips_between import as_stitches
from reader.counts.solved import Solved
from reader.counts.tally import MOVES, Choice, Tally
from reader.counts.told_of_last import with_last
from reader.counts.turned_back import without_turns
from reader.counts.turning import closing_edge, lies_over_space, on_the_hook
from reader.counts.walk import Walk
from reader.counts.worked import Move, MoveKind
from reader.counts.working import work_all
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    Edge,
    Group,
    Node,
    Repeat,
    Skip,
    Start,
    Until,
    Where,
    Work,
)  # fmt: skip
from reader.terms.stitches import Craft


def work_row(
    ends: Ends, below: Below, choice: Choice, size: int, carried: int, room: int
) -> Solved:
    """Works a row once under one reading; carried: chains made at the end of the row before. room:
    moves that may be opened.
    """
    below = lies_below(ends, below, choice, size)
    rest = on_stitch(ends.body) if choice.on_stitch else without_turns(ends.body)
    rest = to_last_loop(between_stitches(over_loops(by_needles(rest), below), below))
    rest = over_the_tall(rest if below.half else with_closing(with_last(rest)), below)
    tally = Tally(size, below, choice, Walk(below), carried=carried, room=room)
    tally.joined, tally.turned = _ended(rest, ends)
    for one in ends.lead:
        tally.moves.append(Move(_lead_kind(one), one.words, one.span))
        if isinstance(one, Act) and one.deed is Deed.OTHER_SIDE:
            to_other_edge(tally)
    if ends.foundation is not None:
        _tell_foundation(ends.foundation, tally, rest)
    elif not along_joined(ends, rest, below, tally.walk, size) and _ringed(rest, below, size):
        tally.walk.lost()
    height = carried
    if ends.chain is not None:
        height = ends.chain.number.at(size)
        tally.moves.append(
            Move(MoveKind.CHAIN, ends.chain.words, ends.chain.span, stitch="ch", times=height)
        )
    passed = ends.foundation is not None or below.chained
    chained = bool(choice.chain and (height or passed or on_the_hook(first_work(rest))))
    if _shares_first(rest) or not (chained and (carried or _stands_alone(ends))):
        begin_in_space(ends, rest, tally, chained)
    if chained:
        _count_chain(ends, rest, under_cluster(first_work(rest), height) or height, tally)
    elif loop := loop_begun(rest, height, passed, below if tally.walk.known else None):
        tally.make_space(loop)
    over = chains_passed(first_work(rest), rest) if passed else 0
    tally.turning = 0 if chained else max(height, over)
    rest = as_stitches(two_in_one(rest) if choice.doubled else rest)
    rest = repeated(rest, choice, size, below.edge if choice.over_again else 0)
    work_all(whole_row(slips_on(rest), tally), tally)
    tally.runs = closed_round(rest, tally.runs, tally.grouped)
    next_chain = ends.next_chain.number.at(size) if ends.next_chain else 0
    return _close(tally, choice, chained, next_chain, ends)


def _ended(rest: Sequence[Node], ends: Ends) -> tuple[bool, bool]:
    """Whether the row is joined to its beginning, and whether the work is turned behind it."""
    acts = {one.deed for one in rest if isinstance(one, Act)}
    joined = Deed.JOIN in acts
    return joined, not joined and (Deed.TURN in acts or ends.next_chain is not None)


def _shares_first(rest: Sequence[Node]) -> bool:
    """Whether the first stitches share the place of the chain, or are slipped to."""
    first = next((one for one in rest if isinstance(one, Work | Group)), None)
    return first is not None and (travels(first) or first.place.where is Where.SAME)


def _stands_alone(ends: Ends) -> bool:
    """Whether the turning chain stands on the row's first stitch: the yarn was joined nowhere
    else.
    """
    joined = any(isinstance(one, Act) and one.deed is Deed.JOIN for one in ends.lead)
    return ends.chain is not None and not joined


def _tell_foundation(chain: Chain, tally: Tally, rest: Sequence[Node]) -> None:
    amount = chain.number.at(tally.size)
    tally.moves.append(Move(MoveKind.START, chain.words, chain.span, stitch="ch", times=amount))
    first = next((one for one in rest if isinstance(one, Work | Group | Skip | Repeat)), None)
    work = first_work([first]) if first is not None else None
    if (
        not isinstance(first, Skip)
        and work is not None
        and work.place.where is not Where.CHAIN
        and not work.place.nth
    ):
        tally.walk.over(foundation(amount, True))


def _lead_kind(node: Node) -> MoveKind:
    if isinstance(node, Chain | Start):
        return MoveKind.START
    if isinstance(node, Act) and node.deed is Deed.JOIN:
        return MoveKind.JOIN
    if isinstance(node, Act) and node.deed is Deed.COLOUR:
        return MoveKind.COLOUR
    return MoveKind.NOTE


def _ringed(rest: Sequence[Node], below: Below, size: int) -> bool:
    return _ring_below(rest) or fills_ring(rest, below, size)


def _ring_below(body: Sequence[Node]) -> bool:
    """Whether the row is worked into a ring, below which nothing lies."""
    works = [one for one in body if isinstance(one, Work | Group | Repeat)]
    if not works:
        return False
    one = works[0]
    while isinstance(one, Repeat):
        inner = [x for x in one.body if isinstance(x, Work | Group | Repeat)]
        if not inner:
            return False
        one = inner[0]
    return isinstance(one, Work | Group) and one.place.where is Where.RING


def _count_chain(ends: Ends, rest: list[Node], height: int, tally: Tally) -> None:
    """The turning chain as the row's first stitch, and the space that its further chains make."""
    edge = closing_edge(rest)
    work = edge or first_work([one for one in rest if not travels(one)])
    told = ends.chain.counts_sp if ends.chain is not None else 0
    tally.make(1, stands_for(work, height, told))
    tall = work.stitch.height if work is not None and work.stitch.height else 3
    # For very tall stitches one chain more is no space: what stands for them differs by one.
    over = told or (height - tall if height - tall >= 1 + (tall > 4) and height >= 4 else 0)
    into_it = work is not None and work.place.noun == "tch" and tally.below.stitches is None
    if over and ends.foundation is None and not into_it:
        tally.make_space(over)
    if work is not None and work.place.where is Where.CHAIN:
        chains = first_square(work, rest, tall)
        if chains:
            tally.make_space(chains)
    if ends.foundation is None and tally.walk.known:
        _stand(rest, tally, joined_to(ends))


def joined_to(ends: Ends) -> str:
    """The words that tell where the yarn is fastened before a row, "" where none do."""
    acts = [one for one in ends.lead if isinstance(one, Act)]
    return " ".join(one.words for one in acts if FASTENS.search(one.words)).lower()


FASTENS = re.compile(r"\b(?:attach|join|fasten|tie)\w*\b", re.IGNORECASE)
OPENING = re.compile(r"\b(?:sps?|spaces?|loops?|lps?|ch(?:ain)?[- ]?\d+|\d+[- ]ch(?:ain)?)\b")


def _begins_in_opening(nxt: Node | None, fastened: str, tally: Tally) -> bool:
    """Whether the yarn is fastened to a loop, on which the chain stands, and the first stitch goes
    into the next; that loop is then used.
    """
    first = first_work([nxt]) if nxt is not None else None
    if first is None or first.place.where is not Where.NEXT:
        return False
    if not is_opening(first.place, tally.walk) or not OPENING.search(fastened):
        return False
    tally.walk.begin_at(any_opening)
    tally.walk.take_spaces(1, any_opening)
    return True


def _stand(rest: list[Node], tally: Tally, fastened: str) -> None:
    """Uses the place that the turning chain stands on. fastened: where the yarn was joined."""
    nxt = first_into_row(rest)
    if nxt is not None and travels(nxt):
        # The chain stands where the slip stitches have gone to.
        return
    if _begins_in_last(nxt, tally) or (fastened and _begins_in_opening(nxt, fastened, tally)):
        tally.spaced = True
        return
    shared = isinstance(nxt, Work | Group) and nxt.place.where in (Where.SAME, Where.ONE_PLACE)
    if shared and isinstance(nxt, Work | Group) and is_opening(nxt.place, tally.walk):
        tally.walk.take_spaces(1, wanted(nxt.place, tally.walk))
        tally.spaced = True
        return
    on_first = isinstance(nxt, Work) and nxt.place.where is Where.FIRST and nxt.place.nth <= 1
    made = tally.runs[-1].chains if tally.runs else 0
    # "ch 8, turn, dc in 1st dc" over a stitch and its space: the first behind that space.
    on_first = on_first and not (made and lies_over_space(tally.below, made + 3))
    # "Ch 5, sc in center dc of first shell" over a row that begins with another stitch.
    on_first = on_first and not (isinstance(nxt, Work) and nxt.place.noun in UNITS)
    if on_first and isinstance(nxt, Work) and not is_opening(nxt.place, tally.walk):
        # "ch 3, 2 dc in 1st st": the stitch that the chain stands on.
        at = rest.index(nxt)
        rest[at] = replace(nxt, place=replace(nxt.place, where=Where.SAME))
    if isinstance(nxt, Skip) and (nxt.place.where is Where.FIRST or _misses_its_own(nxt, tally)):
        # "miss first st" is the stitch that the chain stands on.
        return
    tally.walk.take(1)


def _misses_its_own(skip: Skip, tally: Tally) -> bool:
    """Whether "3 ch, miss 1" misses the stitch that the chain stands on, as English words have it:
    a chain no longer than its stitch, and one stitch.
    """
    one = skip.place.where is Where.NEXT and skip.place.number == ONE and skip.place.noun == "st"
    plain = not tally.runs or tally.runs[-1].is_stitch
    return one and plain and skip.words.lower().startswith("miss 1")


def _begins_in_last(nxt: Node | None, tally: Tally) -> bool:
    """Whether the chain stands in the loop that the round before ended in, and the first stitch in
    the next; that loop is then used.
    """
    nxt = nxt.body[0] if isinstance(nxt, Repeat) else nxt
    if not isinstance(nxt, Work | Group) or nxt.place.where is not Where.NEXT:
        return False
    ahead = is_opening(nxt.place, tally.walk)
    return tally.below.in_loop and ahead and tally.walk.stand_in_last()


def _close(tally: Tally, choice: Choice, chained: bool, next_chain: int, ends: Ends) -> Solved:
    walk = tally.walk
    left = walk.left or 0
    if tally.overgrown:
        tally.runs, tally.unread, tally.unsure = [], True, True
    made = tally.makes
    # More taken away than there is to take: the words cannot mean that.
    tally.unsure = tally.unsure or made < 0
    rest = works_the_rest(ends.body, tally.unread)
    if left and (short_row(ends) or rest or leaves_on_needle(ends)):
        tally.elastic = True
    if left and left == skipped_at_close(ends.body, tally):
        # "* ch 3, skip 1, sc in next; repeat 6 times, ch 3, join": the last chain passes over as
        # many as the others.
        walk.take(left)
        left, tally.uneven = 0, None
    count: int | None = made
    if tally.elastic and walk.left is not None and not tally.below.chained:
        count = made + left
        tally.make(left, "st")
        tally.untold, left = left, 0
    edges = any(isinstance(one, Edge) for one in ends.body)
    off = any(isinstance(one, Edge) and not one.cast_on and one.number for one in ends.body)
    tally.unsure = tally.unsure or (off and walk.left is None)
    if tally.unsure or (not made and not walk.takes and not edges and not tally.spaces):
        count = None
    elif tally.spaces and (not made or (made == 1 and at_half(tally.runs))):
        # Nothing but loops: what is on hand to be worked into are the loops.
        count = tally.spaces
    if count is not None and left and tally.uneven and knits(ends.body) and balanced(tally.moves):
        # Every pass leaves what it takes, so that the gain does not hang on how often.
        count += left
        tally.make(left, "st")
    fits = _closes(left, tally, ends) if walk.known else None
    return Solved(count, fits, left, choice, tally, chained, next_chain)


def _closes(left: int, tally: Tally, ends: Ends) -> bool | None:
    """Whether a row uses what lies below, but for what is nobody's; None where it is not known.
    left: stitches that no word takes.
    """
    walk = tally.walk
    if tally.unread or tally.unsure:
        return None
    beyond = walk.beyond()
    open_end = any(isinstance(x, Repeat) and x.until is Until.OPEN for x in ends.body)
    turned = tally.below.flat or ends.next_chain is not None
    before = beyond or open_end or not turned or begins_in_shell(ends.body)
    before = walk.before if before else 0
    spare = {0, before, beyond, before + beyond}
    around = tally.joined or tally.choice.over_again
    loops = around and not walk.spaces and only_openings(ends.body, tally)
    # Every loop is worked into: the stitches between them are nobody's.
    even = (left in spare and tally.uneven is None) or loops
    lacking = walk.lacking and not (around and back_in_first(ends.body, tally))
    fits = even and walk.short == 0 and not lacking
    return fits and not tally.squares_left


def at_half(runs: Sequence[Run]) -> bool:
    """Whether the only stitch of several loops is the tall one that ends the last of them."""
    loops = sum(run.n for run in runs if run.name == SPACE)
    return loops > 2 and len(runs) > 2 and runs[-1].is_stitch and runs[-2].name == SPACE


def balanced(moves: Sequence[Move]) -> bool:
    """Whether a pass of the row's repeat leaves as many stitches as it takes."""
    first = [move for move in moves if move.passes and move.passes[0].number == 1]
    return bool(first) and sum(one.takes for one in first) == sum(one.makes for one in first)


def short_row(ends: Ends) -> bool:
    """Whether a knitted row is turned before its end."""
    work = first_work(ends.body)
    turns = any(isinstance(one, Act) and one.deed is Deed.TURN for one in ends.body)
    return turns and work is not None and work.stitch.craft is Craft.KNITTING


PASSED_BY = 0.8
"""How much worse a reading is that stops before an opening in which its next pass would begin: more
than one that cuts off the last repeat, less than one that does not close the row."""


EXACTLY = 0.15
"""A total that is the row's count, not only one of its kinds, outweighs the usual reading."""


def best(
    nodes: Sequence[Node],
    below: Below,
    chains: Sequence[bool | None],
    size: int,
    carried: int,
    stated: int | None,
    kind: str = "",
    room: int = MOVES,
) -> Solved:
    """The reading that closes the row and agrees with the printed total, the usual one where
    several do. room: moves that may be opened.
    """
    nodes = in_first_of_groups(in_ring(nodes, below), below)
    nodes, below = gaps_between(chained_gaps(nodes, below), below)
    ends = ends_of(loops_of_stitches(nodes, below), below.stitches is not None)
    found: Solved | None = None
    mark = -1e9
    same = begins_in_same(ends) and not below.in_loop
    for number, choice in enumerate(readings(ends.body, chains, below, same)):
        most = (3.0 + EXACTLY) * (stated is not None) + 2.0 - 0.2 * choice.oddity()
        most -= 0.1 * (number > 0)
        if most <= mark:
            # Even if it closed the row and agreed, it would stand behind what was found.
            continue
        one = work_row(ends, below, choice, size, carried, room)
        agrees = stated is not None and one.count is not None and stated in values(one, kind)
        score = (
            3.0 * agrees
            + EXACTLY * exactly(one, stated, kind)
            + 2.0 * (one.fits is True)
            - 0.2 * choice.oddity()
            - 0.1 * (number > 0)
            - 0.001 * (one.left + one.short)
            - PASSED_BY * one.tally.stops_early
        )
        if one.tally.overgrown and (found is None or found.fits is not True):
            # The readings behind it would be worked no further.
            return one
        if found is None or score > mark:
            found, mark = one, score
    assert found is not None
    return found
