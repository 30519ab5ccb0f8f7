"""A list of instructions -> the moves that work it, each instruction by its kind."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.fabric import CORNER, GAP, PICOT, SPACE, Run, cornered_in, with_corners
from reader.counts.group_stitches import group_places, leaves_group
from reader.counts.made import middled
from reader.counts.meshes import work_mesh
from reader.counts.openings import SPACES, UNITS, is_opening, wanted
from reader.counts.passes import repeated
from reader.counts.passing import chain_space, skip_over
from reader.counts.placing import (
    OTHER_EDGE,
    along_chain,
    to_other_edge,
    work_into,
)
from reader.counts.putting import cap
from reader.counts.reaching import all_places
from reader.counts.repeating import work_repeat
from reader.counts.shaped import edge, gain, shape_by_rule
from reader.counts.tally import MOVES, NOTHING, Need, Tally
from reader.counts.too_often import too_often
from reader.counts.worked import Move, MoveKind
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    Edge,
    Gain,
    Group,
    LeaveRest,
    Mesh,
    Node,
    Place,
    Repeat,
    Shape,
    ShortTurn,
    Skip,
    Start,
    Unread,
    Until,
    Where,
    Work,
)

DEEDS = {
    Deed.JOIN: MoveKind.JOIN,
    Deed.TURN: MoveKind.TURN,
    Deed.COLOUR: MoveKind.COLOUR,
    Deed.MARKER: MoveKind.MARKER,
    Deed.FINISH: MoveKind.FINISH,
    Deed.START: MoveKind.START,
}
ALL_ACROSS = re.compile(r"\b(?:across|around|to end|around (?:the )?(?:entire|whole|outer))\b\W*$")
UP_TO = re.compile(r"\b(?:to|until|till|before)\b(?! end\b| the end\b)")
SHELLS = UNITS - {"group"}
FAR_AHEAD = 120
"""Instructions looked at behind an open one; a row that a person works has fewer."""
OPEN_PLACES = (Where.EACH, Where.REST, Where.TO_LAST)


def is_open(node: Node) -> bool:
    """Whether a node takes whatever is left."""
    if isinstance(node, Work | Group):
        spaces = node.place.noun in SPACES and not node.place.among
        return node.place.where in OPEN_PLACES and not spaces
    if isinstance(node, Repeat):
        return node.until in (Until.OPEN, Until.TO_LAST) or any(is_open(one) for one in node.body)
    return isinstance(node, Shape)


def work_all(nodes: Sequence[Node], tally: Tally, need: Need = NOTHING) -> None:
    """Works nodes in order; need: what whatever follows this list will use."""
    if scattered(nodes, tally):
        return
    for index, node in enumerate(nodes):
        after, limit = need, None
        if is_open(node):
            rest = _on_this_side(nodes[index + 1 : index + 1 + FAR_AHEAD])
            more = needed_by(rest, tally)
            after = Need(need.stitches + more.stitches, need.spaces + more.spaces)
            limit = up_to_opening([*rest, *tally.cycle], tally)
            passed = isinstance(node, Repeat) and isinstance(next(iter(rest), None), Skip)
            if limit is not None and not passed:
                after = Need(0, after.spaces)
        work_one(node, tally, after, limit)
        if leaves_group(node, [*nodes[index + 1 : index + 1 + FAR_AHEAD], *tally.cycle], tally):
            tally.walk.leave_group()


def _on_this_side(nodes: Sequence[Node]) -> Sequence[Node]:
    """The instructions before the work goes on along the other side of the chain."""
    for at, one in enumerate(nodes):
        if isinstance(one, Act) and one.deed is Deed.OTHER_SIDE:
            return nodes[:at]
    return nodes


def up_to_opening(rest: Sequence[Node], tally: Tally) -> tuple[int, int] | None:
    """Stitches and spaces before the space that comes next in the words, None where none does."""
    for node in rest:
        if isinstance(node, Work | Skip | Group) and is_opening(node.place, tally.walk):
            if node.place.where in (Where.SAME, *OPEN_PLACES):
                return None
            passed = tally.walk.has("corner", True) and not tally.walk.lies_ahead("corner", True)
            if "corner" in node.place.text.lower() and passed:
                return None
            shell = node.place.noun in SHELLS
            return tally.walk.to_next(wanted(node.place, tally.walk), shell)
        if isinstance(node, Repeat):
            return up_to_opening(node.body, tally)
        if isinstance(node, Work | Group | Skip):
            return None
    return None


def needed_by(nodes: Sequence[Node], tally: Tally) -> Need:
    """What fixed nodes use; open ones count as nothing."""
    trial = tally.fresh()
    # Something was worked before them: "in same loop" asks for no other.
    trial.walk.takes, trial.spaced = 1, True
    for node in nodes:
        if not is_open(node):
            work_one(node, trial, NOTHING)
    return Need(trial.walk.takes - 1, trial.walk.space_takes)


def work_one(node: Node, tally: Tally, need: Need, limit: tuple[int, int] | None = None) -> None:
    """Works one node."""
    if not isinstance(node, Group):
        tally.grouped = tally.grouped and isinstance(node, Act | Skip | Repeat | Work)
    if isinstance(node, Work):
        work_into(node, tally, need, limit)
    elif isinstance(node, Skip):
        skip_over(node, tally)
    elif isinstance(node, Chain):
        chain_space(node, tally)
    elif isinstance(node, Group):
        work_group(node, tally, need, limit)
    elif isinstance(node, Repeat) and too_often(node, tally.size):
        # Worked once, so that its words are told; how many stitches it leaves nobody knows.
        work_all(node.body, tally, need)
        tally.unread = tally.unsure = True
    elif isinstance(node, Repeat):
        work_repeat(node, tally, need, work_all)
    elif isinstance(node, Shape):
        shape_by_rule(node, tally, need)
    elif isinstance(node, Edge):
        edge(node, tally)
    elif isinstance(node, Gain):
        gain(node, tally)
    elif isinstance(node, Mesh):
        work_mesh(node, tally)
    else:
        other(node, tally)


def other(node: Node, tally: Tally) -> None:
    """Nodes that neither take nor make."""
    if isinstance(node, ShortTurn):
        tally.elastic = True
        kind = MoveKind.TURN
    elif isinstance(node, LeaveRest):
        tally.walk.left = 0 if tally.walk.left is not None else None
        kind = MoveKind.NOTE
    elif isinstance(node, Unread):
        tally.unread = True
        kind = MoveKind.UNREAD
    elif isinstance(node, Start):
        kind = MoveKind.START
    else:
        kind = DEEDS.get(node.deed, MoveKind.NOTE) if isinstance(node, Act) else MoveKind.NOTE
        if isinstance(node, Act) and node.deed is Deed.MOVED:
            tally.elastic = True
        if isinstance(node, Act) and node.deed is Deed.OTHER_SIDE:
            to_other_edge(tally)
        if isinstance(node, Act) and "picot" in node.words.lower():
            tally.picoted = bool(tally.runs) and not tally.runs[-1].is_stitch
        if isinstance(node, Act) and ON_ITS_STITCH.match(node.words):
            tally.close_picot()
    tally.moves.append(Move(kind, node.words, node.span))


ON_ITS_STITCH = re.compile(
    r"(?:sl(?:ip)? ?st\w*|ss) (?:back )?(?:in|into|to|on)(?! (?:the )?(?:first|1st)\b)\b"
    r"(?![^,;]*\b(?:first made|made first|made at (?:the )?(?:beg|start)))[^,;]*"
    r"\b(?:made|just worked|picot)\b",
    re.IGNORECASE,
)
"""A slip stitch that closes the chain before it on the stitch that it stands on."""


def work_group(
    group: Group, tally: Tally, need: Need, limit: tuple[int, int] | None = None
) -> None:
    """Several instructions in one place, or in each of many."""
    place, walk = group.place, tally.walk
    if group.maybe and not tally.choice.bundle:
        *first, last = group.body
        work_all(first, tally, need)
        if isinstance(last, Work):
            work_into(replace(last, place=place), tally, need, limit)
        return
    trial = _held_by(group, tally)
    opening = is_opening(place, walk)
    before = walk.takes
    number = cap(place.number.at(tally.size) * place.sides)
    times = 1
    if any(words in place.text for words in OTHER_EDGE):
        to_other_edge(tally)
    if place.where in OPEN_PLACES:
        times, _ = all_places(place, tally, need, limit)
        times //= max(1, place.nth)
    elif place.where is Where.CHAIN:
        if tally.below.chained:
            along_chain(place, tally)
        walk.take(1)
    elif place.where in (Where.RING, Where.SAME):
        _same_place(place, tally, opening)
    else:
        times = max(1, number) if place.each or number > 1 else 1
        if opening:
            walk.take_spaces(times, wanted(place, walk))
            if place.noun in UNITS:
                walk.leave_unit()
        elif place.noun not in UNITS or not group_places(place, times, tally):
            walk.take(times, place.noun if place.noun not in ("st", "ch", "tch") else "")
    tally.spaced = tally.spaced or opening
    runs = as_picot(trial.runs) if makes_picot(group) else trial.runs
    tally.make_runs(middled(runs, group.name or "group"), times, True)
    tally.sections = times
    tally.unread = tally.unread or trial.unread
    repeated(trial.moves, times, group, tally, spread=(walk.takes - before) // max(1, times))


def _held_by(group: Group, tally: Tally) -> Tally:
    """What is worked into one place of a group, over nothing known. It is the same in every pass,
    unless there is no room for all its moves.
    """
    trial = tally.kept.find(id(group), tally.room)
    if trial is None:
        known = id(group) in tally.kept.worked
        trial = tally.fresh()
        trial.walk.takes = 1
        trial.room = tally.room if known else MOVES
        work_all(list(group.body), trial)
        if not known:
            tally.kept.keep(id(group), group, trial)
    return trial


def makes_picot(group: Group) -> bool:
    """Whether a group is called a picot: "1 sc, ch 3, 1 sc (picot) in next loop"."""
    kinds = [type(one) for one in group.body]
    return kinds == [Work, Chain, Work] and PICOT_SAID.search(group.words) is not None


PICOT_SAID = re.compile(r"\((?:a |1 |for )?(?:picot|p)(?: made)?\)", re.IGNORECASE)


def as_picot(runs: Sequence[Run]) -> list[Run]:
    """The runs with their spaces as picots."""
    return [replace(run, name=PICOT) if run.name == SPACE else run for run in runs]


def _same_place(place: Place, tally: Tally, opening: bool) -> None:
    walk = tally.walk
    if place.where is not Where.SAME:
        return
    if opening and walk.space_takes == 0 and not tally.spaced:
        walk.take_spaces(1, wanted(place, walk))
    elif not opening and walk.takes == 0 and not tally.spaced:
        walk.take(1)


def scattered(nodes: Sequence[Node], tally: Tally) -> bool:
    """ "1 sc in each st and 3 sc in each corner loop": every place below gets what is said of its
    kind.

    Done (True) only where the whole list is of such instructions and the row below is known.
    """
    works = [one for one in nodes if not isinstance(one, Act)]
    walk = tally.walk
    # The chain that begins the round may stand on its first stitch.
    if len(works) < 2 or not walk.known or walk.takes > len(tally.runs):
        return False
    lead = works[:1] if len(works) > 2 and _leads(works[0]) else []
    works = works[len(lead) :]
    everywhere = all(_everywhere(one, works[0], tally) for one in works)
    if not everywhere and not _each_and_one(works, tally):
        return False
    places = [one.place for one in works if isinstance(one, Work | Group)]
    corners = [CORNER in place.text.lower() for place in places]
    if len({(p.noun, p.chain, at) for p, at in zip(places, corners, strict=True)}) < 2:
        return False
    if len(walk.ahead()) < 2 and not any(corners):
        return False
    work_all(lead, tally)
    _scatter([one for one in works if isinstance(one, Work | Group)], tally)
    return True


def _leads(node: Node) -> bool:
    """Whether only what a row begins with: "skip first dc", "sc in first sc"."""
    one = isinstance(node, Skip) or (isinstance(node, Work) and node.number in (None, ONE))
    return one and isinstance(node, Skip | Work) and (
        node.place.where is Where.FIRST and node.place.number == ONE
    )


def _everywhere(node: Node, first: Node, tally: Tally) -> bool:
    """Whether a node speaks of every place of its kind: "in each ...", or, behind what goes all
    across, "3 sc in the ch-2 sp at the point", where the row has no other such space.
    """
    if not isinstance(node, Work | Group):
        return False
    if node.place.where is Where.EACH:
        return True
    across = isinstance(first, Work) and ALL_ACROSS.search(first.place.text)
    if across and node is first and isinstance(node, Work):
        return node.place.where is Where.REST and node.number in (None, ONE)
    return bool(across) and node.place.chain > 0 and _only_such(node, tally)


def _each_and_one(works: Sequence[Node], tally: Tally) -> bool:
    """Whether a row is told as "sc in each st and 2 sc in the ch-2 sp", in the one that is there.
    """
    first, last = works[0], works[-1]
    if len(works) != 2 or not isinstance(first, Work) or is_opening(first.place, tally.walk):
        return False
    if UP_TO.search(first.place.text):
        return False
    return first.place.where in (Where.EACH, Where.REST) and _only_such(last, tally)


def _only_such(node: Node, tally: Tally) -> bool:
    """Whether what goes into "the ch-2 sp" names as many as the row below has of that kind."""
    if not isinstance(node, Work | Group) or not is_opening(node.place, tally.walk):
        return False
    spaces = tally.walk.count_spaces(wanted(node.place, tally.walk))
    return node.place.where is Where.NEXT and spaces == node.place.number.at(tally.size)


def _scatter(works: list[Work | Group], tally: Tally) -> None:
    met: set[int] = set()
    below = tally.walk.ahead()
    if any(CORNER in one.place.text.lower() for one in works) and not cornered_in(below):
        below = with_corners(below)
    if any(run.unit == CORNER for run in below):
        below = [run for run in below if run.name != GAP]
    for run in below:
        node = _meant(works, run, tally)
        if node is None:
            continue
        met.add(id(node))
        trial = tally.fresh()
        body = node.body if isinstance(node, Group) else [replace(node, place=_one(node))]
        work_all(list(body), trial)
        tally.make_runs(
            middled(trial.runs) if isinstance(node, Group) else trial.runs, run.n, not run.is_stitch
        )
        tally.moves += trial.moves * min(run.n, 200)
    walk = tally.walk
    tally.spaced = True
    tally.unsure = tally.unsure or any(id(one) not in met for one in works)
    walk.take(walk.left or 0)


def _one(node: Work) -> Place:
    return replace(node.place, where=Where.RING)


def _meant(works: list[Work | Group], run: Run, tally: Tally) -> Work | Group | None:
    """The instruction for a run: the one that names it most closely."""
    best, score = None, 0
    for one in works:
        place = one.place
        corner = CORNER in place.text.lower()
        if run.is_stitch and (run.unit == CORNER or corner):
            fits = 3 if corner and run.unit == CORNER else 0 if corner else 1
        elif run.is_stitch:
            fits = 0 if is_opening(place, tally.walk) else 2 if place.noun == run.name else 1
        else:
            meant = is_opening(place, tally.walk) and wanted(place, tally.walk)(run)
            meant = meant or ("sp" in place.among and place.chain in (0, run.chains))
            fits = (2 if place.chain or corner else 1) if meant else 0
        if fits > score:
            best, score = one, fits
    return best
