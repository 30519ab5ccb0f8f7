"""The row below as it lies in the hand: runs of stitches and spaces, in working order."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace

SPACE = "sp"
GAP = "gap"
"""A space without a chain, between two groups that were worked into different places."""
APART = "apart"
"""Unit of a gap that the row above is told to go into: between two groups of a flat row."""
PICOT = "picot on a stitch"
"""A chain closed on the stitch that it stands on: no loop to go into, unless it is called so."""
OPENINGS = frozenset((SPACE, GAP, PICOT))
MOST_RUNS = 4_000
"""Runs kept of one row at most; a longer row is kept as one plain run. Looking for the next loop,
loop by loop, takes time in the square of the length, and no hand works such a row.
"""


@dataclass(frozen=True, slots=True)
class Run:
    """`n` things alike, one after the other.

    name: the stitch's US name, or opening. chains: how many chains a space has. corner: the space
    lies inside stitches that share one place. unit: the group that the space or gap lies in the
    middle of; of stitches, that they are such a group by themselves, told stitch by stitch. ring:
    chains of the ring amid the space that a slip stitch closed, 0 for none.
    """

    name: str
    n: int = 1
    chains: int = 0
    corner: bool = False
    unit: str = ""
    ring: int = 0

    @property
    def is_stitch(self) -> bool:
        """Whether stitches, not spaces."""
        return self.name not in OPENINGS

    @property
    def is_open(self) -> bool:
        """Whether a chain space, or a gap that is gone into as one."""
        return self.name == SPACE or self.unit == APART

    @property
    def is_middle(self) -> bool:
        """Whether the opening in the middle of a group."""
        return not self.is_stitch and self.unit not in ("", APART)

    def alike(self, other: Run) -> bool:
        """Whether two runs differ only in their number."""
        return (
            self.name == other.name
            and self.chains == other.chains
            and self.corner == other.corner
            and self.unit == other.unit
            and self.ring == other.ring
        )


@dataclass(frozen=True, slots=True)
class Held:
    """Wanted are spaces between several stitches of a kind: "next sp (between dc-groups)". least:
    so many on each side, one of a "picot loop", which two low stitches hold.
    """

    name: str
    least: int = 2

    def __call__(self, run: Run) -> bool:
        """Whether a chain space."""
        return run.name == SPACE


def held(runs: Sequence[Run], at: int, wanted: Callable[[Run], bool]) -> bool:
    """Whether the stitches beside a space are such as are wanted."""
    if not isinstance(wanted, Held):
        return True
    beside = [runs[at - 1], runs[(at + 1) % len(runs)]]
    if wanted.least == 1 and not at:
        # A loop that the round begins with stands on the stitch where the one below was joined.
        del beside[0]
    return wanted(runs[at]) and all(
        run.name == wanted.name and run.n >= wanted.least for run in beside
    )


CORNER = "corner"
"""Unit of the middle one of the stitches worked into a corner."""


def cornered(run: Run) -> list[Run]:
    """An odd number of stitches in a corner, the middle one known as the corner's own."""
    side = replace(run, n=run.n // 2, unit="")
    return [side, replace(run, n=1, unit=CORNER), side]


def cornered_in(runs: Iterable[Run]) -> bool:
    """Whether a row tells of its corners, by a stitch or by spaces."""
    return any(run.unit == CORNER or run.name == SPACE for run in runs)


def with_corners(runs: Iterable[Run]) -> list[Run]:
    """A row whose groups of three or five in one place are its corners."""
    out: list[Run] = []
    for run in runs:
        group = run.is_stitch and run.unit != "" and run.n > 2 and run.n % 2 == 1
        out += cornered(run) if group else [run]
    return out


@dataclass(frozen=True, slots=True)
class Below:
    """What the next row is worked into. stitches None: unknown. chained: an unworked foundation
    chain. markers: how many lie in it, 0 where that is not known.
    edge: stitches outside the pattern that a row is told for. waiting: those on a holder, 0 where
    none or several groups wait. flat: the piece is turned, its edge is more than this row. in_loop:
    the round ended with a tall stitch that closed its last loop, in which the next begins.
    turning: chains of the turning chain that begins it, where it is no stitch. half: the row ended
    with a chain and a tall stitch into a loop, at whose top it was turned. hooked: the rows before
    called their stitches loops.
    ring: chains of the ring that is worked into, where nothing else lies below. set_aside: what a
    part leaves on holders for the next.
    """

    stitches: int | None = None
    runs: tuple[Run, ...] = ()
    sections: int = 0
    chained: bool = False
    is_round: bool = False
    markers: int = 0
    edge: int = 0
    waiting: int = 0
    flat: bool = False
    in_loop: bool = False
    turning: int = 0
    ring: int = 0
    half: bool = False
    hooked: bool = False
    set_aside: tuple[int, ...] = ()

    @property
    def spaces(self) -> int:
        """How many chain spaces lie in it, and gaps that are gone into as such."""
        return sum(run.n for run in self.runs if run.is_open)

    @property
    def kinds(self) -> dict[str, int]:
        """Stitches by name."""
        return kinds_of(self.runs)


def kinds_of(runs: Iterable[Run]) -> dict[str, int]:
    """Stitches by name in a list of runs."""
    kinds: dict[str, int] = {}
    for run in runs:
        if run.is_stitch:
            kinds[run.name] = kinds.get(run.name, 0) + run.n
    return kinds


def units_of(runs: Iterable[Run]) -> dict[str, int]:
    """Groups by name in a list of runs, each known by its middle, or by its stitches."""
    units: dict[str, int] = {}
    for run in runs:
        if run.unit:
            units[run.unit] = units.get(run.unit, 0) + (1 if run.is_stitch else run.n)
    return units


def plain(stitches: int | None, sections: int = 0) -> Below:
    """A row of stitches of no particular kind."""
    if stitches is None:
        return Below(None, (), sections)
    return Below(stitches, (Run("st", max(0, stitches)),), sections)


def foundation(chains: int, joined: bool = False) -> Below:
    """A foundation chain; joined: closed to a ring of stitches to be worked into."""
    return Below(chains if joined else None, (Run("ch", max(0, chains)),), 0, not joined, joined)


def added(runs: list[Run], more: Iterable[Run]) -> None:
    """Appends runs, joining alike neighbours; marks the space that comes to lie inside a group."""
    for run in more:
        if run.n <= 0:
            continue
        if runs and runs[-1].alike(run) and not run.unit:
            runs[-1] = Run(run.name, runs[-1].n + run.n, run.chains, run.corner)
        else:
            runs.append(run)


def of_runs(runs: Sequence[Run], stitches: int | None, sections: int) -> Below:
    """The finished row for the next one; a row whose runs do not add up to its stitches is kept
    plain.
    """
    kept = named_alike(runs)
    made = sum(run.n for run in kept if run.is_stitch)
    if stitches is None or made != stitches or len(kept) > MOST_RUNS:
        return plain(stitches, sections)
    return Below(stitches, kept, sections)


def named_alike(runs: Sequence[Run]) -> tuple[Run, ...]:
    """The runs with a group that was given no name called as those that are made like it: the first
    of a round is told stitch by stitch, behind its chain.
    """
    if len(runs) < 3:
        return tuple(runs)
    names: dict[tuple[object, ...], str] = {}
    nameless: list[tuple[int, tuple[object, ...]]] = []
    for at in range(1, len(runs) - 1):
        run, before, after = runs[at], runs[at - 1], runs[at + 1]
        if run.is_stitch or not run.unit or not (before.is_stitch and after.is_stitch):
            continue
        made: tuple[object, ...] = (
            before.name, before.n, run.name, run.chains, after.name, after.n,
        )  # fmt: skip
        if run.unit == "group":
            nameless.append((at, made))
        else:
            names.setdefault(made, run.unit)
    out = _first_as_others(list(runs))
    for at, made in nameless:
        if made in names:
            out[at] = replace(out[at], unit=names[made])
    return tuple(_told_as_named(out))


def _told_as_named(runs: list[Run]) -> list[Run]:
    """The runs with a group that was told stitch by stitch in its halves, as those that the row
    calls by a name have their middle: "ch 4, 4 tr in same loop, ..., shell in next shell".
    """
    halves: dict[int, tuple[Run, Run, Run]] = {}
    for one, gap, other in zip(runs, runs[1:], runs[2:], strict=False):
        if gap.name == GAP and gap.unit and one.is_stitch and other.is_stitch:
            halves.setdefault(one.n + other.n, (one, gap, other))
    out: list[Run] = []
    for run in runs if halves else ():
        chain = out[-1] if len(out) == 1 else None
        begun = chain is not None and chain.n == 1 and chain.name == run.name
        made = halves.get(run.n + begun) if run.unit == "group" and run.is_stitch else None
        if made is None or made[0].name not in (run.name, made[1].unit):
            out.append(run)
            continue
        out = [] if begun else out
        out += [replace(made[0], name=run.name), made[1], replace(made[2], name=run.name)]
    return out or runs


def _first_as_others(runs: list[Run]) -> list[Run]:
    """The runs with the first group as a group too, where it is as the next one: its chain was told
    as its first stitch.
    """
    first, later = runs[0], next((run for run in runs[1:] if run.is_stitch), None)
    alike = later is not None and later.unit == "group" and later == replace(first, unit="group")
    return [replace(first, unit="group"), *runs[1:]] if alike and first.n > 1 else runs


def stretched(runs: Sequence[Run], stitches: int) -> list[Run]:
    """The runs brought to so many stitches where every section between two spaces gets as many more
    (or less); as they are where that does not come out even.
    """
    parts: list[list[int]] = [[]]
    for at, run in enumerate(runs):
        if run.is_stitch:
            parts[-1].append(at)
        elif parts[-1]:
            parts.append([])
    sections = [part for part in parts if part]
    more = stitches - sum(run.n for run in runs if run.is_stitch)
    out = list(runs)
    if not sections or more % len(sections):
        return out
    for part in sections:
        longest = max(part, key=lambda at: out[at].n)
        out[longest] = replace(out[longest], n=out[longest].n + more // len(sections))
    return out if all(run.n > 0 for run in out) else list(runs)


def turned(below: Below, turning: int = 0, half: bool = False) -> Below:
    """The same row seen from its other end; turning, half: as in Below."""
    return replace(below, runs=below.runs[::-1], flat=True, turning=turning, half=half)


def nameless(below: Below) -> Below:
    """The row as stitches of no particular kind."""
    runs: list[Run] = []
    for run in below.runs:
        added(runs, [replace(run, name="st") if run.is_stitch else run])
    return replace(below, runs=tuple(runs))


def chains_as_stitches(below: Below) -> Below:
    """The row with every chain of its spaces as a place to work into."""
    runs: list[Run] = []
    for run in below.runs:
        added(runs, [Run("ch", run.n * run.chains) if run.name == SPACE else run])
    total = sum(run.n for run in runs if run.is_stitch)
    return replace(below, runs=tuple(runs), stitches=total)


def any_space(run: Run) -> bool:
    """A chain space of any size."""
    return run.name == SPACE


def any_opening(run: Run) -> bool:
    """A chain space, or a gap between groups."""
    return run.name == SPACE or (run.name == GAP and run.unit in ("", APART))


def any_picot(run: Run) -> bool:
    """A picot that stands on a stitch."""
    return run.name == PICOT


def rings_apart(below: Below) -> Below | None:
    """The row with the rings amid its loops as loops of their own, and what lies on both sides of
    each; None where it has none.
    """
    if not any(run.ring for run in below.runs):
        return None
    runs: list[Run] = []
    for run in below.runs:
        side = (run.chains - run.ring) // 2
        if not run.ring or side < 1:
            runs.append(run)
            continue
        other = run.chains - run.ring - side
        runs += [Run(SPACE, 1, side), Run(SPACE, 1, run.ring), Run(SPACE, 1, other)] * run.n
    return replace(below, runs=tuple(runs))
