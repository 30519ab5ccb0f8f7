"""How repeats end: what "ending with" asks for, loops closed by a tall stitch, rounds that close
with the chain of a pass begun.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace

from reader.counts.bare_rounds import nothing_begun, one_each
from reader.counts.begun_inside import close_begun
from reader.counts.ends import first_work, travels
from reader.counts.fabric import any_opening
from reader.counts.openings import is_opening, wanted
from reader.counts.tally import Need, Tally
from reader.counts.worked import Move, MoveKind
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
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind

Worker = Callable[[Sequence[Node], Tally, Need], None]
INTO_ONE = re.compile(
    r"^in(?:to)?(?: the)?(?: top of(?: the)?)?(?! (?:next|each|every|first|1st|last|same|\d))"
)
"""A stitch named alone: the only one of its kind, that closed the round of loops below."""

def trimmed(prefix: Sequence[Node], ending: Sequence[Node]) -> list[Node]:
    """The beginning of a last pass without the chains that the ending makes in their place: "* ch
    5, skip 1, sc in next; ending with ch 2, dc in 1st sc".
    """
    kept = list(prefix)
    if not ending or not isinstance(ending[0], Chain):
        return kept
    worked = [n for n, one in enumerate(kept) if isinstance(one, Work | Group | Repeat)]
    last = worked[-1] if worked else -1
    return [one for n, one in enumerate(kept) if n <= last or not isinstance(one, Chain)]


def work_ending(node: Repeat, tally: Tally, need: Need, work_all: Worker) -> None:
    """Works the ending; "ch 2, dc in first sc" closes a round of loops with a last loop, half
    chain, half stitch.
    """
    if keeps_loop(node, tally) and tally.walk.spaces:
        _end_in_loop(node, tally, need, work_all)
        return
    tally.spaced = tally.spaced or tally.walk.takes > 0
    if _replaces_last_chain(node, tally):
        tally.runs.pop()
    closing = _closing(node.ending)
    skips = any(isinstance(one, Skip) for one in node.body)
    used_up = tally.walk.left == 0 and (skips or one_each(node.body, tally))
    used_up = used_up and not closes_at_begun(node, tally)
    work_all(node.ending[: len(node.ending) - closing], tally, need)
    before, made = tally.makes, tally.spaces
    last = node.ending[len(node.ending) - closing :]
    in_chain = bool(last) and isinstance(last[-1], Work) and last[-1].place.noun == "tch"
    begun = node.until is not Until.OPEN or closes_at_chain(node) or (
        not tally.walk.left and (in_chain or closes_openings(node, tally))
    )
    begun = begun or closes_at_begun(node, tally)
    work_all(_into_beginning(last) if begun else last, tally, need)
    begun_bare = nothing_begun(_last_work(node.ending), tally) and not used_up
    if begun_bare and tally.walk.left == need.stitches + 1:
        # The stitch that the round below was joined to.
        tally.walk.take(1)
    if not closes_loop(node) or into_tall_of(node) or begun_bare:
        return
    alone = node.altered and _slips_last(node)
    if tally.makes != before + 1 or (tally.spaces != made + 1 and not alone):
        return
    if tally.runs[-1].is_stitch and tally.runs[-1].n == 1:
        tally.runs.pop()
        if used_up and tally.runs and not tally.runs[-1].is_stitch:
            # The last pass came back to where the round began: its loop is the one so closed.
            tally.runs.pop()


def _end_in_loop(node: Repeat, tally: Tally, need: Need, work_all: Worker) -> None:
    """Ends a round in the loop where it began, with a tall stitch of its own."""
    tall = _last_work(node.ending)
    for one in node.ending:
        if one is not tall or tall is None:
            work_all([one], tally, need)
            continue
        tally.walk.take_spaces(1, any_opening)
        if tally.walk.left == need.stitches + 1:
            # Behind the last loop lies the tall stitch that closed the round below.
            tally.walk.take(1)
        tally.make(1, "dc")
        move = Move(MoveKind.WORK, tall.words, tall.span, 0, 1, 0, tall.stitch.name)
        tally.moves.append(move._replace(into=tall.place.text))


def _replaces_last_chain(node: Repeat, tally: Tally) -> bool:
    """Whether the loop that the ending closes stands for the chain that the last pass ended with:
    "* skip 1, dc in next, ch 3; ending with ch 1, hdc in 3rd ch".
    """
    alone = sum(isinstance(one, Work | Group | Repeat) for one in node.ending) == 1
    chained = isinstance(node.body[-1], Chain) and bool(tally.sections and tally.runs)
    return alone and chained and closes_at_chain(node) and not tally.runs[-1].is_stitch


def _into_beginning(closing: Sequence[Node]) -> list[Node]:
    """A tall stitch "in 1st sc" behind so many passes goes into what the round began with; behind
    passes "all around" it stands for the last of them.
    """
    return [
        replace(one, place=replace(one.place, where=Where.RING, noun="st"))
        if isinstance(one, Work) and one.stitch.height > 1 and _at_first(one)
        else one
        for one in closing
    ]


def _at_first(work: Work) -> bool:
    return work.place.where is Where.FIRST or work.place.noun == "tch" or _into_one(work)


def _closing(ending: Sequence[Node]) -> int:
    """How many of the last instructions are the chain and the tall stitch that close a loop."""
    chains = [at for at, one in enumerate(ending) if isinstance(one, Chain)]
    return len(ending) - chains[-1] if chains else len(ending)


def _last_work(ending: Sequence[Node]) -> Work | None:
    """The stitch that an ending ends with, whatever is only said behind it."""
    last = [one for one in ending if not isinstance(one, Act)][-1:]
    return last[0] if last and isinstance(last[0], Work) else None


def into_tall_of(node: Repeat) -> bool:
    """Whether the ending goes into the tall stitch that closed the round below: in the loop that it
    made this round began, and ends.
    """
    last = _last_work(node.ending)
    if last is not None and last.place.noun == "sl st" and last.place.where is Where.LAST:
        # A round that slipped to a loop ends in that slip stitch.
        return last.stitch.height > 1
    return last is not None and _into_one(last)


def _into_one(work: Work) -> bool:
    """Whether a stitch goes into the tall stitch, or the slip stitch, in which the round began."""
    if work.place.where is not Where.NEXT:
        return False
    into = stitch_named(work.place.noun, Craft.CROCHET)
    tall = into is not None and into.height > 1 and into.kind is Kind.STITCH
    # A round that slipped to the center of a loop ends in that slip stitch.
    tall = tall or work.place.noun == "sl st"
    return tall and INTO_ONE.match(work.place.text.lower()) is not None


def closes_in_pass(node: Repeat) -> bool:
    """Whether the loop that the ending closes stands for the last loop of a longer pass: "* ch 5,
    sc in same loop, ch 5, sc in next loop, repeat from * around ending with ch 2, dc in dc".
    """
    works = [one for one in node.body if isinstance(one, Work | Group | Repeat)]
    return node.until is Until.OPEN and len(works) > 1 and closes_loop(node)


BEGUN_IN_IT = re.compile(r"\bsame\b|\bjust made\b|^over (?:the )?[a-z ]{1,12}$")
"""The round's first stitches went into the loop in which it began."""


def keeps_loop(node: Repeat, tally: Tally) -> bool:
    """Whether a repeat leaves the loop where the round began for the ending to go into: it does,
    unless the round's first stitches went into it ("sc in same loop").
    """
    if not (closes_loop(node) and into_tall_of(node) and tally.below.spaces):
        return False
    worked = next((one.into for one in tally.moves if one.kind is MoveKind.WORK), None)
    if worked is None:
        first = first_work(node.body)
        worked = first.place.text if first is not None else ""
    return not BEGUN_IN_IT.search(worked.lower())


def _slips_last(node: Repeat) -> bool:
    """Whether each pass ends with a chain and a slip stitch: loops that a tall stitch can close."""
    kinds = [one for one in node.body if isinstance(one, Chain | Work)][-2:]
    return (
        [type(one) for one in kinds] == [Chain, Work]
        and isinstance(kinds[1], Work)
        and kinds[1].stitch.kind is Kind.SLIP
    )


SAME_AS_FIRST = re.compile(r"\b(?:as|with|where|join\w*|sl st|beg\w*|first|1st)\b", re.IGNORECASE)
"""Behind other stitches, "in same space" is theirs; with these, that of the round's beginning."""


def closes_loop(node: Repeat) -> bool:
    """Whether the ending of a repeat of loops is a chain and a tall stitch into the beginning."""
    works = [one for one in node.ending if isinstance(one, Chain | Work)][-2:]
    if node.altered and len(works) == 1 and _slips_last(node):
        tall = works[0]
        return isinstance(tall, Work) and tall.stitch.height > 2 and tall.place.where is Where.FIRST
    if [type(one) for one in works] != [Chain, Work]:
        return False
    tall = works[1]
    if not isinstance(tall, Work) or tall.stitch.height < 2:
        return False
    place = tall.place
    alone = sum(isinstance(one, Work | Group) for one in node.ending) == 1
    same = place.where is Where.SAME and (alone or SAME_AS_FIRST.search(place.text) is not None)
    beginning = same or place.noun == "tch" or place.nth == 1
    at_start = place.where is Where.FIRST or (beginning and not node.flat)
    at_start = at_start or place.noun == "sl st" or into_tall_of(node)
    loops = [one.number.values[0] for one in node.body if isinstance(one, Chain)]
    # The tall stitch stands for the rest of the loop: as many chains as in the body close none.
    half = works[0]
    return at_start and isinstance(half, Chain) and half.number.values[0] < max(loops, default=0)


def closes_at_chain(node: Repeat) -> bool:
    """Whether a round's last loop is closed into the chain that it began with, "ending with ch 2,
    dc in 3rd ch of ch-6": nothing of the row below is used by that.
    """
    tall = next((one for one in reversed(node.ending) if not isinstance(one, Act)), None)
    at_chain = isinstance(tall, Work) and tall.place.noun == "tch" and OF_CHAIN.search(
        tall.place.text.lower()
    )
    return bool(at_chain) and closes_loop(node)


OF_CHAIN = re.compile(
    r"\b(?:\d(?:st|nd|rd|th)|top|second|third|fourth|fifth) (?:\w+ )?of (?:the )?ch"
)


def with_closing(rest: list[Node]) -> list[Node]:
    """The row with the chain and the tall stitch that close its last loop as the ending of its
    repeat: "repeat from * 13 times, ch 3, tr in 1st sc" ends as "ending with ch 3, tr in 1st sc".
    """
    begun = next((one for one in rest if not (isinstance(one, Act) or travels(one))), None)
    rest = [part for one in rest for part in (_chain_apart(one) if one is begun else (one,))]
    works = [at for at, one in enumerate(rest) if not isinstance(one, Act)]
    deeds = {one.deed for one in rest if isinstance(one, Act)}
    if Deed.TURN in deeds and Deed.JOIN not in deeds:
        return [replace(one, flat=True) if isinstance(one, Repeat) else one for one in rest]
    if len(works) < 3 or Deed.TURN in deeds:
        return rest
    repeat, chain, tall = (rest[at] for at in works[-3:])
    if not isinstance(repeat, Repeat):
        return _joined_by_tall(rest, chain, tall)
    if repeat.ending or not isinstance(chain, Chain):
        return rest
    closed = replace(repeat, ending=(chain, tall), has_ending=True)
    at_top = isinstance(tall, Work) and tall.place.noun == "tch" and not tall.place.nth
    if at_top or not closes_loop(closed):
        return rest
    return [closed if one is repeat else one for one in rest if one not in (chain, tall)]


def _chain_apart(one: Node) -> tuple[Node, ...]:
    """What a round begins with, "* ch 5, sc in next loop; ending with ch 5", as "* ch 5, sc in next
    loop, repeat, ch 5": all of the last pass is worked.
    """
    if not isinstance(one, Repeat) or len(one.body) != 2 or len(one.ending) != 1 or one.altered:
        return (one,)
    chain, last = one.body[0], one.ending[0]
    if not isinstance(chain, Chain) or not isinstance(last, Chain) or chain.number != last.number:
        return (one,)
    return replace(one, ending=(), has_ending=False), last


def _joined_by_tall(rest: list[Node], chain: Node, tall: Node) -> list[Node]:
    """The row with a tall stitch that only joins it: "..., sc in next loop, ch 2, dc in 1st sc",
    where the row begins with that sc and its loops are longer.
    """
    repeats = [one for one in rest if isinstance(one, Repeat)]
    first = first_work([one for one in rest if not travels(one)])
    if not repeats or first is None or not isinstance(tall, Work):
        return rest
    closed = replace(repeats[-1], ending=(chain, tall), has_ending=True)
    own = tall.place.where is Where.FIRST and tall.place.noun == first.stitch.name
    own = own or closes_at_chain(closed)
    if not (own and closes_loop(closed)):
        return rest
    join = Act(tall.span, tall.words, Deed.JOIN, tall.place.text)
    return [join if one is tall else one for one in rest]


AROUND = re.compile(r"\b(?:a?round)\b", re.IGNORECASE)


def into_openings(node: Repeat, tally: Tally) -> bool:
    """Whether all stitches of a repeat go into loops."""
    works = [one for one in node.body if isinstance(one, Work | Group)]
    return bool(works) and all(is_opening(one.place, tally.walk) for one in works)


def only_openings(nodes: Sequence[Node], tally: Tally) -> bool:
    """Whether all stitches of a row go into loops; slip stitches that only travel aside."""
    works = [one for one in nodes if isinstance(one, Work | Group | Repeat | Skip)]
    inner = [one for one in works if not travels(one)]
    return bool(inner) and all(
        only_openings([*one.body, *one.ending], tally) if isinstance(one, Repeat)
        else is_opening(one.place, tally.walk)
        for one in inner if isinstance(one, Work | Group | Repeat | Skip)
    )


def closes_at_begun(node: Repeat, tally: Tally) -> bool:
    """Whether a round's last loop is closed into the stitch that the round began with: "sc in first
    sc, * ch 3, sc in next sc; ending with ch 1, hdc in first sc" uses nothing of the row below.
    """
    tall = _last_work(node.ending)
    if tall is None or not closes_loop(node):
        return False
    if into_tall_of(node) and tally.below.spaces and not keeps_loop(node, tally):
        return True
    if tall.place.where is not Where.FIRST:
        return False
    works = [one for one in node.body if isinstance(one, Work | Group)]
    if any(is_opening(one.place, tally.walk) for one in works):
        # The last of the loops may be the one that the round began in.
        return False
    star = node.body[0].span.start
    return any(one.kind is MoveKind.WORK and one.span.start < star for one in tally.moves)


def closes_openings(node: Repeat, tally: Tally) -> bool:
    """Whether an ending closes a round whose stitches all go into loops: of the stitches between
    them it needs none.
    """
    return closes_loop(node) and into_openings(node, tally)


def close_round(node: Repeat, tally: Tally, need: Need, begun: bool, work_all: Worker) -> None:
    """Works the chain (and the skip) that close a round "* ch 5, skip 3, sc in next; rep around",
    where the round began with a stitch and nothing else is said of its end.
    """
    close_begun(node, tally, need, work_all)
    if node.until is not Until.OPEN or not AROUND.search(node.words) or tally.walk.left is None:
        return
    if tally.parted:
        return
    lead: list[Node] = []
    for one in node.body:
        if not isinstance(one, Chain | Skip):
            break
        lead.append(one)
    skipped = sum(one.place.number.at(tally.size) for one in lead if isinstance(one, Skip))
    chained = any(isinstance(one, Chain) for one in lead)
    left = tally.walk.left - need.stitches
    if into_openings(node, tally) and not skipped:
        # Loops are worked into: the stitches between them are nobody's, nor are other loops.
        works = [one for one in node.body if isinstance(one, Work | Group)]
        left = max(tally.walk.count_spaces(wanted(one.place, tally.walk)) for one in works)
        left -= need.spaces
    if chained and begun and left == skipped:
        work_all(lead, tally, need)
        tally.closed = len(lead) == 1
        tally.uneven = None
    elif chained and begun and left > 0:
        _close_at_first(node, left, tally, need, work_all)


def _close_at_first(
    node: Repeat, left: int, tally: Tally, need: Need, work_all: Worker
) -> None:
    """Works the last pass of "* ch 4, cluster over next 4 dc, ch 4, sc in next dc" up to the stitch
    that the round began with, where all before it uses up the row.
    """
    works = [at for at, one in enumerate(node.body) if isinstance(one, Work | Group | Repeat)]
    last, first = node.body[works[-1]] if works else None, tally.runs[0]
    if len(works) < 2 or not isinstance(last, Work) or into_openings(node, tally):
        return
    if last.stitch.name != first.name or last.number not in (None, ONE):
        return
    trial = tally.fresh()
    trial.walk.takes = 1
    work_all(node.body[: works[-1]], trial, need)
    if trial.walk.takes - 1 == left and not trial.walk.space_takes:
        work_all(node.body[: works[-1]], tally, need)
        tally.uneven = None
