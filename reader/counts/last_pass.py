"""The last pass of an open repeat: as much of it as uses up the row below."""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.counts.endings import Worker, into_openings
from reader.counts.fabric import SPACE, any_space
from reader.counts.group_stitches import group_told
from reader.counts.openings import SPACES, UNITS, is_opening, wanted
from reader.counts.tally import NOTHING, Need, Tally
from reader.counts.walk import Walk
from reader.pattern.tree import Chain, Group, Node, Repeat, Skip, Until, Where, Work
from reader.terms.stitches import Kind


def names_in(body: Sequence[Node]) -> set[str]:
    """What a body's stitches are said to go into; "group" where it is one, or a stitch of one."""
    names: set[str] = set()
    for one in body:
        if isinstance(one, Work | Skip | Group):
            grouped = one.place.noun in UNITS or group_told(one.place.text)[1]
            names |= {one.place.noun, "group"} if grouped else {one.place.noun}
        elif isinstance(one, Repeat):
            names |= names_in(one.body)
    return names


MOST_WRITTEN_OUT = 60
"""Instructions of one pass, its inner repeats written out; longer ones are kept whole."""


def written_out(body: Sequence[Node], tally: Tally) -> Sequence[Node]:
    """A pass with its inner repeats of a told number written out, so that it may end in the midst
    of one; as it is where there are none, or it gets too long.
    """
    out: list[Node] = []
    for one in body:
        inner = isinstance(one, Repeat) and told_times(one, tally) and not one.ending
        if inner and isinstance(one, Repeat):
            for _ in range(min(told_times(one, tally), MOST_WRITTEN_OUT)):
                out += written_out(one.body, tally)
        else:
            out.append(one)
    return out if len(out) <= MOST_WRITTEN_OUT else body


def told_times(node: Repeat, tally: Tally) -> int:
    """How often the words of a repeat say, the original included; 0 where they say nothing."""
    if node.until not in (Until.TIMES, Until.MORE, Until.AGAIN):
        return 0
    more = node.until is Until.MORE or (node.until is Until.AGAIN and tally.choice.again_more)
    return node.number.at(tally.size) + more


LARGEST_REST = 12
"""Stitches of a group behind the one that its last pass goes into, and before where it began."""


def pass_over_others(node: Repeat, tally: Tally, keep: int) -> None:
    """Passes over what is left at the row's end, as each pass did between: where it is of no kind
    that the body goes into, or the rest of the last group of those whose stitches it names.
    """
    if any(isinstance(one, Work | Group | Repeat) for one in node.ending):
        return
    left = (tally.walk.left or 0) - keep
    grouped = 0 < left <= LARGEST_REST and "group" in names_in(node.body)
    rest = grouped and not tally.walk.group_ahead()
    if rest or _only_others(node, tally.walk, left):
        tally.walk.take(left)


def _only_others(node: Repeat, walk: Walk, left: int) -> bool:
    """Whether a few stitches are left, none of a kind that the body goes into."""
    kinds = names_in(node.body) - {"st", "sp", "ch", "tch"}
    ahead = [run for run in walk.ahead() if run.is_stitch]
    return bool(kinds) and 0 < left < 4 and not any(run.name in kinds for run in ahead)


def last_part(
    node: Repeat,
    tally: Tally,
    keep: int,
    behind: Need,
    work_all: Worker,
    start: Walk | None,
) -> Tally | None:
    """As much of one more pass as uses up the row: its end is where the row began; None for none.
    start: where the last whole pass began. What is left over may be the part of a group before the
    space where the round began, or that space with as much before it as in every pass.
    """
    walk = tally.walk
    again = _goes_on_in_same(node.body)
    openings = again or node.chained
    openings = openings or (walk.spaces > behind.spaces and "sp" in names_in(node.body))
    if walk.left is None or (walk.left <= keep and not openings):
        return None
    body = written_out(node.body, tally)
    for length in range(len(body) - 1, 0, -1):
        prefix = body[:length]
        if not any(isinstance(one, Work | Group | Repeat) for one in prefix):
            return None
        if node.chained != isinstance(prefix[-1], Chain) and (node.chained or tally.turned):
            continue
        if walk.left <= keep and not (again or node.chained or "sp" in names_in(prefix)):
            return None
        trial = tally.fresh(tally.walk.copy())
        trial.spaced = tally.spaced
        work_all(prefix, trial, NOTHING)
        over = (trial.walk.left or 0) - keep
        left_out = body[length]
        more = _part_of_next(node, left_out, over, tally)
        spare = _spare(left_out, trial.walk, behind, node, tally)
        fits = bool(more) or over in spare or _only_others(node, trial.walk, over)
        if not fits and over > 0 and start is not None and tally.walk.before:
            fits = over == _gone_over(body, tally, start, length, work_all)
        if room_in(trial, tally.walk, keep, behind.spaces) and fits:
            trial.walk.take(over)
            trial.make(over if more else 0, more)
            tally.walk = trial.walk
            return trial
    return None


def _goes_on_in_same(body: Sequence[Node]) -> bool:
    """Whether each pass begins in the opening that the one before went into: "* ch 7, cluster in
    same loop, cluster in next loop".
    """
    for one in body:
        if isinstance(one, Repeat):
            return _goes_on_in_same(one.body)
        if isinstance(one, Work | Group):
            return one.place.where is Where.SAME and one.place.noun == "sp"
        if isinstance(one, Skip):
            return False
    return False


def _spare(left_out: Node, walk: Walk, behind: Need, node: Repeat, tally: Tally) -> set[int]:
    """How many stitches a part of a pass may leave: none, those before where the round began, or
    the one behind its last loop that the round below was joined to.
    """
    spare = {0, tally.walk.before}
    if _goes_on_in_same(node.body):
        spare.add(walk.beyond())
    if walk.spaces == behind.spaces and into_openings(node, tally):
        spare.add(1)
    if isinstance(left_out, Work) and left_out.stitch.kind is Kind.GROUP and tally.walk.before:
        spare |= set(range(1 + (walk.left or 0)))
    return spare


def _gone_over(
    body: Sequence[Node], tally: Tally, start: Walk, length: int, work_all: Worker
) -> int:
    """Stitches that a whole pass goes over on its way to the next place behind a part of it."""
    trial = tally.fresh(start.copy())
    trial.spaced = True
    work_all(body[:length], trial, NOTHING)
    passed = trial.walk.passed
    for one in body[length:]:
        work_all([one], trial, NOTHING)
        if isinstance(one, Work | Group | Skip | Repeat):
            break
    return trial.walk.passed - passed


IN_PATTERN = re.compile(r"\bin (?:the )?patt(?:ern)?\b|\bas established\b", re.IGNORECASE)


def _part_of_next(node: Repeat, left_out: Node, over: int, tally: Tally) -> str:
    """The stitch of which so many end the row, as a part of what would come next in the pass; ""
    where none does: "ending in pattern" says so, or the rest of what the round began with is there.
    """
    if over > 0 and _rest_of_first(left_out, over, tally):
        return tally.runs[0].name
    if isinstance(left_out, Work) and IN_PATTERN.search(node.words) and _part_of(left_out, over):
        return left_out.stitch.name
    return ""


def _part_of(node: Node, over: int) -> bool:
    """Whether what is left are the first of several plain stitches side by side."""
    if not isinstance(node, Work) or node.place.where not in (Where.NEXT, Where.PLAIN):
        return False
    each = node.number is None or node.number.values == (1,) or node.place.where is Where.PLAIN
    plain = node.stitch.takes == node.stitch.makes == 1 and node.place.noun not in SPACES
    several = max(node.place.number.values[0], node.number.values[0] if node.number else 1)
    return each and plain and 0 < over < several


def _rest_of_first(node: Node, over: int, tally: Tally) -> bool:
    """Whether the stitches that are left are the rest of those that the round began with: "1 sc in
    each of next 2 sc, * ... 1 sc in each of next 4 sc, repeat from *" ends with the other two.
    """
    if not isinstance(node, Work) or node.place.where is not Where.NEXT or not tally.runs:
        return False
    first = tally.runs[0]
    return first.name == node.stitch.name and first.n + over == node.place.number.at(tally.size)


def room_in(trial: Tally, before: Walk, keep: int, spaces: int) -> bool:
    """Whether a pass on trial found all it asked for, and left enough for what follows."""
    walk = trial.walk
    if walk.short > before.short or walk.lacking > before.lacking:
        return False
    if walk.misnamed > before.misnamed:
        return False
    return (walk.left or 0) >= keep and walk.spaces >= spaces


def stops_early(node: Repeat, tally: Tally) -> bool:
    """Whether a repeat ends in its own way just before the opening in which a pass begins."""
    first = next((one for one in node.body if isinstance(one, Work | Group)), None)
    ahead = tally.walk.ahead()[:1]
    end = next((one for one in node.ending if isinstance(one, Work | Group)), None)
    if end is not None and is_opening(end.place, tally.walk):
        # "Ending with 3 dc in last space": that opening is the ending's.
        return False
    return (
        bool(node.ending) and first is not None and bool(ahead) and ahead[0].name == SPACE
        and is_opening(first.place, tally.walk) and wanted(first.place, tally.walk)(ahead[0])
    )  # fmt: skip


TO_CORNER = re.compile(r"\bto (?:the )?(?:next )?corner\b", re.IGNORECASE)


def beyond_corner(node: Repeat, tally: Tally) -> int:
    """Stitches from the next corner on, where a repeat goes as far as that; 0 for others."""
    walk = tally.walk
    if not TO_CORNER.search(node.words) or walk.left is None:
        return 0
    corners = any(run.corner for run in walk.ahead())
    ahead = walk.to_next((lambda run: run.corner) if corners else any_space)
    return walk.left - ahead[0] if ahead is not None else 0


def to_last_group(node: Repeat) -> bool:
    """Whether a repeat runs to the last group, "to last shell", and so leaves that whole group."""
    return node.until is Until.TO_LAST and node.noun in UNITS


def leaves_groups(node: Repeat, tally: Tally, walk: Walk) -> bool:
    """Whether as many groups lie ahead as a repeat "to last 2 shells" is to leave."""
    return not to_last_group(node) or walk.units_ahead(node.noun) >= node.number.at(tally.size)


def room_for(node: Repeat, one: Tally, tally: Tally, behind: Need) -> int:
    """How often an open repeat fits into what is left below, where only stitches of one kind are
    left.
    """
    walk = tally.walk
    keep = node.number.at(tally.size) if node.until is Until.TO_LAST else behind.stitches
    if one.walk.takes > 0 and walk.left is not None:
        room = walk.left - keep
        if room % one.walk.takes:
            tally.uneven = (room, one.walk.takes)
        return max(0, room) // one.walk.takes
    tally.unsure = True
    return tally.below.sections or 1
