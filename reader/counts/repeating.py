"""Repeats: a body worked a number of times, or as often as the row below has room for it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import groupby

from reader.counts.bare_repeats import as_often, groups_below
from reader.counts.bare_rounds import slipped, slips_to_close, without_last
from reader.counts.endings import (
    Worker,
    close_round,
    closes_at_begun,
    closes_at_chain,
    closes_in_pass,
    closes_openings,
    keeps_loop,
    trimmed,
    work_ending,
)
from reader.counts.ends import first_work
from reader.counts.fabric import Run
from reader.counts.group_stitches import groups_unknown, in_order
from reader.counts.last_pass import (
    IN_PATTERN,
    beyond_corner,
    last_part,
    leaves_groups,
    names_in,
    pass_over_others,
    room_for,
    room_in,
    stops_early,
    to_last_group,
    told_times,
    written_out,
)  # fmt: skip
from reader.counts.openings import UNITS, is_opening
from reader.counts.passes import moves_added, repeated
from reader.counts.steady import Stride
from reader.counts.tally import A_PASS, MOST_MADE, NOTHING, Need, Tally
from reader.counts.walk import Walk
from reader.counts.worked import Move
from reader.pattern.tree import Act, Chain, Group, Node, Num, Repeat, Skip, Until, Where, Work
from reader.terms.stitches import Craft

PASSES = 5_000
"""Passes of one repeat at most; no row that a person works has more."""
FAR_SHORT = 500
"""Stitches that a repeat may ask for and not find before it is followed no further."""


def body_of(
    body: Sequence[Node], tally: Tally, work_all: Worker, begun: bool = False
) -> Tally:
    """What one pass of a body does, over a row below of which nothing is known; worked once for all
    who ask. begun: something was worked before it, which "same space" then means.
    """
    key = tuple(map(id, body)), begun
    trial = tally.kept.find(key, tally.room)
    if trial is None:
        trial = tally.fresh()
        trial.walk.takes, trial.spaced = 1, begun
        work_all(body, trial, NOTHING)
        trial.walk.takes -= 1
        tally.kept.keep(key, tuple(body), trial)
    return trial


def work_repeat(node: Repeat, tally: Tally, need: Need, work_all: Worker) -> None:
    """A body over and over."""
    begun = bool(tally.runs) and tally.runs[-1].is_stitch
    if node.joined and not tally.choice.joined:
        work_all(node.body[:-1], tally, need)
        node = replace(node, body=node.body[-1:], joined=False)
    node = without_last(filled(node, tally, need, work_all), tally)
    if slips := slips_to_close(node):
        node = replace(node, ending=(), has_ending=False, altered=False)
    one = body_of(node.body, tally, work_all)
    if groups := groups_below(node, tally):
        # Where in each scallop is told by a stitch of it: what lies between is passed over.
        work_alike(node, one, groups, tally)
        tally.walk.take(max(0, (tally.walk.left or 0) - need.stitches))
        return
    node = as_often(node, one, tally)
    ending = body_of(node.ending, tally, work_all, True).walk if node.ending else Walk(None)
    into_tall = keeps_loop(node, tally)
    none = into_tall or closes_at_chain(node) or closes_at_begun(node, tally)
    takes = 0 if none else max(0, ending.takes - closes_openings(node, tally))
    behind = Need(need.stitches + takes, need.spaces + ending.space_takes + into_tall)
    cut = not fixed(node) and bool(node.ending) and tally.choice.cut_ending
    walks = not tally.walk.alike(names_in(node.body))
    if (cut or closes_in_pass(node)) and walks and cut_walking(node, tally, need, work_all):
        cut = True
    elif cut:
        work_cut(node, one, tally, need, work_all)
    elif _passes_alike(node, tally) and not one.unsure:
        times = told_times(node, tally) if fixed(node) else room_for(node, one, tally, behind)
        work_alike(node, one, max(0, min(times, PASSES)), tally)
    else:
        work_each(node, tally, behind, work_all)
        tally.stops_early |= not fixed(node) and stops_early(node, tally)
    if slips and (fixed(node) or not begun):
        slipped(node, tally, need)
    elif not fixed(node) and not node.ending:
        close_round(node, tally, need, begun, work_all)
    if not cut and node.ending and not (node.altered and tally.sections):
        _ended(node, tally, need, work_all)
    _told_of(node, one, tally)


def _told_of(node: Repeat, one: Tally, tally: Tally) -> None:
    """Books what is not known of a pass as not known of the row."""
    tally.unsure = tally.unsure or (one.unsure and not tally.walk.known)
    untold = any(groups_unknown(into.place, tally) for into in in_order(node.body))
    tally.unread = tally.unread or one.unread or untold
    tally.elastic = tally.elastic or one.elastic
    tally.branched = tally.branched or one.branched
    tally.spaced = tally.spaced or one.spaced


def _ended(node: Repeat, tally: Tally, need: Need, work_all: Worker) -> None:
    """Works the ending; where it begins as a pass does, it goes over what a pass would: "* sc in
    3rd dc of next shell, 5 dc in next sc; ending with sc in 3rd dc of last shell, 3 dc in last sc".
    """
    work_ending(node, tally, need, work_all)
    first, begins = first_work(node.ending), first_work(node.body)
    if _stands_for_edge(first, begins, tally) and tally.walk.left == need.stitches + 1:
        tally.walk.take(1)
        tally.uneven = None
    if first is None or begins is None or fixed(node) or tally.walk.left != need.stitches:
        return
    at_once = node.body[0] is begins and node.ending[0] is first
    if at_once and (first.stitch, first.place.noun) == (begins.stitch, begins.place.noun):
        tally.uneven = None


def _stands_for_edge(end: Work | None, body: Work | None, tally: Tally) -> bool:
    """Whether the last space has one stitch more than the others, which stands for that at the
    edge: "* 2 dc in space, dc in dc; ending with 3 dc in last space".
    """
    if end is None or body is None or end.stitch != body.stitch:
        return False
    last = end.place.where is Where.LAST and is_opening(end.place, tally.walk)
    numbers = [one.number.at(tally.size) for one in (end, body) if one.number is not None]
    return last and len(numbers) == 2 and numbers[0] == numbers[1] + 1


def _passes_alike(node: Repeat, tally: Tally) -> bool:
    """Whether every pass finds the same before it, the last one too."""
    if to_last_group(node) or (not fixed(node) and IN_PATTERN.search(node.words)):
        return False
    return tally.walk.alike(names_in(node.body))


def filled(node: Repeat, tally: Tally, need: Need, work_all: Worker) -> Repeat:
    """The repeat with "to the marker" put into stitches: every pass takes an equal share of what is
    left.
    """
    to_marker = [
        one for one in node.body if isinstance(one, Work) and one.place.where is Where.UNUSED
    ]
    if not (len(to_marker) == 1 and tally.walk.left):
        return node
    times = told_times(node, tally) if fixed(node) else tally.below.markers
    if not times:
        tally.unsure = True
        return node
    share, over = divmod(tally.walk.left - need.stitches, max(1, times))
    rest = share - body_of(node.body, tally, work_all).walk.takes
    marked = to_marker[0].stitch.craft is Craft.KNITTING
    if rest <= 0 or (over and not marked):
        return node
    # Markers lie as they lie: what is left of equal shares is worked, or stays, behind the last.
    tally.elastic = tally.elastic or over > 0
    old = to_marker[0]
    place = replace(old.place, where=Where.NEXT, number=Num((rest,)), noun="st", each=True)
    new = replace(old, place=place, number=None)
    return replace(node, body=tuple(new if one is old else one for one in node.body))


def fixed(node: Repeat) -> bool:
    """Whether the words say how often."""
    return node.until in (Until.TIMES, Until.MORE, Until.AGAIN)


def work_alike(node: Repeat, one: Tally, times: int, tally: Tally) -> None:
    """Counts a body `times` over, every pass alike, and opens its moves."""
    tally.walk.take(times * one.walk.takes)
    tally.walk.space_takes += times * one.walk.space_takes
    # Of a row that had loops none is left: what goes into more of them finds none.
    none_left = times > 1 and fixed(node) and tally.walk.known and tally.below.spaces > 0
    tally.walk.lacking += times * one.walk.space_takes * none_left
    tally.shaped += times * one.shaped
    if len(one.runs) * times > PASSES:
        tally.make(times * one.makes, "st")
    elif one.picoted and not one.makes:
        # Picots one after the other lie in one loop.
        for run in one.runs * times:
            tally.make_space(run.chains)
            tally.picoted = True
    else:
        alone = len(node.body) == 1 and isinstance(node.body[0], Group)
        tally.make_runs(one.runs, times, alone and one.grouped)
    tally.grouped, tally.fastened = one.grouped, one.fastened
    tally.sections = times
    repeated(one.moves, times, node, tally)


def work_each(node: Repeat, tally: Tally, behind: Need, work_all: Worker) -> None:
    """Works a body pass by pass along the row below, as often as is said or as there is room."""
    said = told_times(node, tally) if fixed(node) else PASSES
    group = to_last_group(node)
    keep = node.number.at(tally.size) if node.until is Until.TO_LAST else behind.stitches
    keep = max(0 if group else keep, beyond_corner(node, tally))
    stride = Stride(node.body, Need(keep, behind.spaces))
    passes: list[Tally] = []
    opened, made, start = len(tally.moves), 0, tally.walk
    while len(passes) < said:
        trial = _on_trial(node, tally, opened, work_all)
        room = fixed(node) or room_in(trial, tally.walk, keep, behind.spaces)
        if not room or not leaves_groups(node, tally, trial.walk):
            break
        passes.append(trial)
        start, tally.walk = tally.walk, trial.walk
        opened += len(trial.moves)
        made += len(trial.runs)
        if trial.walk.short > FAR_SHORT or made > MOST_MADE or tally.overgrown:
            break
        if not fixed(node) and (start.at, start.into) == (trial.walk.at, trial.walk.into):
            tally.unsure = True
            break
        if more := min(stride.passes(start, passes, tally.room - opened, made), said - len(passes)):
            tally.walk = trial.walk.on_by(start, more)
            passes += [trial] * more
            opened += more * len(trial.moves)
            made += more * len(trial.runs)
    if not fixed(node) and not node.ending and passes and not group:
        part = last_part(node, tally, keep, behind, work_all, start)
        tally.parted = part is not None
        passes += [part] if part is not None else []
    if passes and not (fixed(node) or group):
        pass_over_others(node, tally, keep)
    add_passes(passes, node, tally)
    over = 0 if fixed(node) or group else (tally.walk.left or 0) - keep
    begun_before = tally.walk.slipped or (_single(node, tally) and not tally.walk.spaces)
    if over > 0 and (over != tally.walk.before or not begun_before):
        tally.uneven = tally.uneven or (over, over + 1)


def _single(node: Repeat, tally: Tally) -> bool:
    """Whether a body has no repeat of its own, and skips no stitch of the row below."""
    return all(
        isinstance(one, Work | Chain | Act | Group)
        or (isinstance(one, Skip) and is_opening(one.place, tally.walk))
        for one in node.body
    )


def _on_trial(node: Repeat, tally: Tally, opened: int, work_all: Worker) -> Tally:
    """One pass of a body, as it would go on from where the hook stands."""
    trial = tally.fresh(tally.walk.copy())
    trial.room = max(0, tally.room - opened)
    trial.spaced = tally.spaced
    trial.cycle = tuple(node.body)
    trial.walk.ended = bool(node.ending)
    untouched = tally.walk.takes == 0
    trial.walk.takes += untouched
    work_all(node.body, trial, NOTHING)
    trial.walk.takes -= untouched
    tally.kept.spent += A_PASS + len(trial.moves)
    return trial


def add_passes(passes: Sequence[Tally], node: Repeat, tally: Tally) -> None:
    """Adds what each pass made, in order."""
    number, room = 0, True
    alone = len(node.body) == 1 and isinstance(node.body[0], Group)
    for _, run in groupby(passes, key=id):
        alike = list(run)
        trial = alike[0]
        tally.make_runs(trial.runs, len(alike), alone and trial.grouped)
        tally.shaped += trial.shaped * len(alike)
        tally.grouped, tally.fastened = trial.grouped, trial.fastened
        tally.unsure = tally.unsure or trial.unsure
        tally.elastic = tally.elastic or trial.elastic
        tally.spaced = tally.spaced or trial.spaced
        room = room and moves_added(trial.moves, number, len(alike), len(passes), node, tally)
        number += len(alike)
    tally.sections = len(passes)


def work_cut(node: Repeat, one: Tally, tally: Tally, need: Need, work_all: Worker) -> None:
    """Full passes, then the last one cut off so that the ending closes the row."""
    walk = tally.walk
    ending = _ending_takes(node, tally, work_all)
    along = any(is_opening(n.place, walk) for n in node.body if isinstance(n, Work | Group))
    if walk.left is None or one.walk.takes <= 0 or along:
        # Along spaces no arithmetic tells how often: such a reading closes nothing.
        walk.lacking += along or one.walk.space_takes > 0
        work_all(node.ending, tally, need)
        return
    room = walk.left - ending - need.stitches
    length, used = prefix_that_fits(node, one.walk.takes, room, tally, work_all)
    work_alike(node, one, max(0, room - used) // one.walk.takes, tally)
    prefix = trimmed(node.body[: length or 0], node.ending)
    if length is not None:
        work_all(prefix, tally, need)
        tally.uneven = None
    work_ending(node, tally, need, work_all)


def _ending_takes(node: Repeat, tally: Tally, work_all: Worker) -> int:
    """Stitches that an ending uses of the row below."""
    if closes_at_begun(node, tally):
        return 0
    return body_of(node.ending, tally, work_all, True).walk.takes


def cut_walking(node: Repeat, tally: Tally, need: Need, work_all: Worker) -> bool:
    """Passes along the row below while there is room, then as much of one more as leaves the ending
    its places; False, and nothing worked, where that does not close the row.
    """
    begun = _kept(tally)
    takes = _ending_takes(node, tally, work_all)
    in_loop = keeps_loop(node, tally)
    keep = Need(need.stitches + (0 if in_loop else takes), need.spaces + in_loop)
    work_each(node, tally, keep, work_all)
    tally.uneven = None
    full = _kept(tally)
    each = ((begun[0].left or 0) - (tally.walk.left or 0)) // max(1, tally.sections)
    body = written_out(node.body, tally)
    for strict in (True, False)[closes_in_pass(node) :]:
        # A part that finds each stitch by its name comes before one that takes another for it.
        for length in range(len(body) - 1, -1, -1):
            prefix = trimmed(body[:length], node.ending)
            _put_back(tally, full)
            before = _missed(tally.walk, node.ending, strict)
            work_all(prefix, tally, need)
            work_ending(node, tally, need, work_all)
            missing = _missed(tally.walk, node.ending, strict) > before
            if missing or tally.walk.left is None:
                continue
            over = tally.walk.left - need.stitches
            if _by_groups(node) and 0 < over <= each:
                # What lies between a group and the next is passed over.
                tally.walk.take(over)
            if tally.walk.left - need.stitches in (0, tally.walk.before):
                tally.uneven = None
                return True
    _put_back(tally, begun)
    return False


def _missed(walk: Walk, ending: Sequence[Node], strict: bool) -> int:
    """How much was asked for that was not there; by its name, where the ending goes to the last, or
    all of it is looked for strictly.
    """
    last = strict or any(isinstance(one, Work) and one.place.where is Where.LAST for one in ending)
    return walk.short + walk.lacking + walk.misnamed * last


def _by_groups(node: Repeat) -> bool:
    return any(
        isinstance(one, Work) and ("of next" in one.place.text or one.place.noun in UNITS)
        for one in node.body
    )


def _kept(tally: Tally) -> tuple[Walk, list[Run], list[Move], int]:
    return tally.walk.copy(), list(tally.runs), list(tally.moves), tally.sections


def _put_back(tally: Tally, kept: tuple[Walk, list[Run], list[Move], int]) -> None:
    walk, runs, moves, tally.sections = kept
    tally.walk, tally.runs, tally.moves = walk.copy(), list(runs), list(moves)


def prefix_that_fits(
    node: Repeat, takes: int, room: int, tally: Tally, work_all: Worker
) -> tuple[int | None, int]:
    """The beginning of the body (its length and stitches) after which the ending closes the row.

    Where several do, the one whose next stitch is the ending's first: the ending replaces the rest
    from there.
    """
    found: tuple[int, int] | None = None
    for length in range(len(node.body) - 1, -1, -1):
        used = body_of(node.body[:length], tally, work_all).walk.takes
        if room - used < 0 or (room - used) % takes:
            continue
        if _alike(node.body[length], node.ending[0]):
            return length, used
        found = found or (length, used)
    return found or (None, 0)


def _alike(one: Node, other: Node) -> bool:
    return isinstance(one, Work) and isinstance(other, Work) and one.stitch == other.stitch
