"""The last pass of an open repeat: as much of it as uses up the row below."""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.counts.endings import Worker
from reader.counts.fabric import SPACE, any_space
from reader.counts.openings import SPACES, is_opening, wanted
from reader.counts.tally import NOTHING, Need, Tally
from reader.counts.walk import Walk
from reader.pattern.tree import Group, Node, Repeat, Skip, Where, Work
from reader.terms.stitches import Kind


def names_in(body: Sequence[Node]) -> set[str]:
    """What a body's stitches are said to go into."""
    names: set[str] = set()
    for one in body:
        if isinstance(one, Work | Skip | Group):
            names.add(one.place.noun)
        elif isinstance(one, Repeat):
            names |= names_in(one.body)
    return names


def pass_over_others(node: Repeat, tally: Tally, keep: int) -> None:
    """Passes over what is left at the row's end where it is of no kind that the body goes into, as
    each pass did between.
    """
    if any(isinstance(one, Work | Group | Repeat) for one in node.ending):
        return
    left = (tally.walk.left or 0) - keep
    if _only_others(node, tally.walk, left):
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
    openings = again or (walk.spaces > behind.spaces and "sp" in names_in(node.body))
    if walk.left is None or (walk.left <= keep and not openings):
        return None
    for length in range(len(node.body) - 1, 0, -1):
        prefix = node.body[:length]
        if not any(isinstance(one, Work | Group | Repeat) for one in prefix):
            return None
        if walk.left <= keep and "sp" not in names_in(prefix) and not again:
            return None
        trial = tally.fresh(tally.walk.copy())
        trial.spaced = tally.spaced
        work_all(node.body[:length], trial, NOTHING)
        over = (trial.walk.left or 0) - keep
        left_out = node.body[length]
        more = _part_of_next(node, left_out, over, tally)
        if more:
            trial.make(over, more)
        grouped = isinstance(left_out, Work) and left_out.stitch.kind is Kind.GROUP
        beyond = trial.walk.beyond() if again else 0
        fits = over in (0, walk.before, beyond) or (grouped and walk.before > 0)
        if more or _only_others(node, trial.walk, over):
            fits = True
        elif not fits and over > 0 and start is not None and tally.walk.before:
            fits = over == _gone_over(node, tally, start, length, work_all)
        if room_in(trial, tally.walk, keep, behind.spaces) and fits:
            trial.walk.take(over)
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


def _gone_over(
    node: Repeat, tally: Tally, start: Walk, length: int, work_all: Worker
) -> int:
    """Stitches that a whole pass goes over on its way to the next place behind a part of it."""
    trial = tally.fresh(start.copy())
    trial.spaced = True
    work_all(node.body[:length], trial, NOTHING)
    passed = trial.walk.passed
    for one in node.body[length:]:
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
