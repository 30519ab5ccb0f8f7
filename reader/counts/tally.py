"""Tally: what the hands have used and made so far in one row, and what lies below to be used."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from reader.counts.fabric import GAP, PICOT, SPACE, Below, Run, added, kinds_of
from reader.counts.walk import Walk
from reader.counts.worked import Move
from reader.pattern.tree import Node

MOST_MADE = 20_000
"""Runs that one row leaves at most, twice as many as the longest one that is followed has."""
MOST_SPENT, A_PASS = 100_000, 10
"""Moves tried for one row at most, a pass told as so many: ten times what the longest rows take. A
row that asks for more grew by misprints, or is misread."""
MOVES = 4_000
"""Moves opened in one row at most; longer rows keep their counts, the rest is told as one move."""


@dataclass(frozen=True, slots=True)
class Choice:
    """One way of reading a row.

    chain: the first chain counts as a stitch. again_more: "N times" is N more. pair_each: equal
    numbers are one each. cut_ending: the last repeat is cut off. bundle: a list of stitches with
    one place at its end goes into that place. chains_below: every chain below is a place of its
    own. whole_list: "x 6" at the end of a list is of the whole list. joined: so is
    "twice" behind two joined by "and". over_again: the whole list is repeated to the end of the
    row, though the words don't say so. to_end: "k4, k2tog around" repeats the list, not its last
    stitch alone. begin: where in the list "repeat this 3 times" begins. on_stitch: the "same space"
    that a round begins in is the stitch where it was joined. any_name: a stitch that is named is
    whichever comes next. doubled: "1 hdc, 2 hdc" has the two in one stitch.
    """

    chain: bool | None = None
    again_more: bool = True
    pair_each: bool = True
    cut_ending: bool = False
    bundle: bool = True
    chains_below: bool = False
    whole_list: bool = True
    joined: bool = True
    over_again: bool = False
    to_end: bool = True
    begin: int = 0
    on_stitch: bool = False
    any_name: bool = False
    doubled: bool = True

    def oddity(self) -> int:
        """How far from the usual reading; the smaller the better."""
        return (
            2 * (not self.again_more)
            + 3 * (self.begin > 0)
            + (not self.pair_each)
            + 3 * self.cut_ending
            + (not self.bundle)
            + 4 * self.chains_below
            + (not self.whole_list)
            + (not self.joined)
            + 2 * self.over_again
            + (not self.to_end)
            + 2 * self.any_name
            + (not self.doubled)
        )


@dataclass(frozen=True, slots=True)
class Need:
    """What the instructions after an open one will use: stitches and spaces."""

    stitches: int = 0
    spaces: int = 0


NOTHING = Need()


@dataclass(slots=True)
class Tally:
    """A running count of one row. sections: how often its last repeat was worked. cycle: the body
    of the repeat that is being worked, whose beginning follows its end. branched: stitches were
    worked back along a chain, whose other side may be worked into later. carried: chains made at
    the end of the row before. turning: chains of a turning chain that is no stitch. netted: the
    chains of a square, where squares of a net were worked. squares_left: so many squares below were
    passed over. stops_early: a repeat stops before an opening in which its next pass would begin.
    room: moves that may be opened. picoted: the last chains were closed to a picot, so that those
    to come belong to the same loop. closed: the chain that closes the round was made though no word
    had told of it yet. fastened: a slip stitch into the row below ended the last chain. untold:
    stitches that the row goes on over though no word tells of them. joined: the row is joined to
    its own beginning. turned: the work is turned behind it, so that no chain ends it. parted: the
    last repeat ended with a part of a pass. kept: what was worked once for the whole row.
    """

    size: int
    below: Below
    choice: Choice
    walk: Walk
    runs: list[Run] = field(default_factory=list)
    moves: list[Move] = field(default_factory=list)
    uneven: tuple[int, int] | None = None
    elastic: bool = False
    untold: int = 0
    unsure: bool = False
    unread: bool = False
    sections: int = 0
    spaced: bool = False
    grouped: bool = False
    cycle: tuple[Node, ...] = ()
    shaped: int = 0
    branched: bool = False
    carried: int = 0
    turning: int = 0
    netted: int = 0
    squares_left: int = 0
    room: int = MOVES
    picoted: bool = False
    stops_early: bool = False
    closed: bool = False
    fastened: bool = False
    joined: bool = False
    turned: bool = False
    parted: bool = False
    kept: Kept = field(default_factory=lambda: Kept())

    @property
    def overgrown(self) -> bool:
        """Whether the row asks for more than is followed."""
        return self.kept.spent > MOST_SPENT

    @property
    def makes(self) -> int:
        """Stitches left for the row above."""
        return self.shaped + sum(run.n for run in self.runs if run.is_stitch)

    @property
    def spaces(self) -> int:
        """Chain spaces left for the row above."""
        return sum(run.n for run in self.runs if run.name == SPACE)

    def made_from(self, run: int) -> tuple[int, int]:
        """Stitches and spaces left from a run on, those taken away included."""
        stitches, spaces = self.shaped, 0
        for one in self.runs[run:]:
            if one.name == SPACE:
                spaces += one.n
            elif one.is_stitch:
                stitches += one.n
        return stitches, spaces

    @property
    def kinds(self) -> dict[str, int]:
        """Stitches made, by name."""
        return kinds_of(self.runs)

    def make(self, stitches: int, name: str) -> None:
        """Leaves stitches of a kind for the row above; taking more away than there are is kept as a
        debt.
        """
        self.picoted = False
        if stitches < 0:
            self.shaped += stitches
        else:
            added(self.runs, (Run(name, stitches),))

    def make_runs(self, runs: list[Run], times: int, group: bool) -> None:
        """Leaves whole runs, `times` over; group: each time in a place of its own, so a gap parts
        neighbours.
        """
        if len(runs) == 1 and not group and not runs[0].unit:
            # Neighbours alike are one run: no need to join them one by one.
            only = runs[0]
            runs = [Run(only.name, only.n * times, only.chains, only.corner)]
            times = min(times, 1)
        if len(self.runs) + len(runs) * times > MOST_MADE:
            # A misprint, or a misreading: the row is not counted, but asked about.
            self.unread = self.unsure = True
            return
        stitches = bool(runs) and runs[0].is_stitch
        for done in range(times):
            last, at = self.runs[-1] if self.runs else None, len(self.runs) - 1
            if group and self.grouped and stitches and self.runs and self.runs[-1].is_stitch:
                self.runs.append(Run(GAP))
            added(self.runs, runs)
            self.grouped = group
            if done and last is not None and self.runs[-1] == last:
                # It ends as it began: what this time added, every further time adds.
                self.runs[at:] = [*self.runs[at:-1] * (times - done), last]
                break

    def make_space(self, chains: int) -> None:
        """Leaves a chain space; chains on chains are one space, with picots between too."""
        last = self.runs[-1] if self.runs and not self.fastened else None
        self.fastened = False
        if last is not None and last.name == SPACE and (last.n == 1 or self.picoted):
            longer = replace(last, n=1, chains=last.chains + chains)
            self.runs[-1:] = [replace(last, n=last.n - 1), longer] if last.n > 1 else [longer]
        else:
            self.runs.append(Run(SPACE, 1, chains))

    def close_picot(self) -> None:
        """Makes the chain that stands on a stitch, and was closed on it, a picot."""
        chain = self.runs[-1] if len(self.runs) > 1 and self.runs[-2].is_stitch else None
        if chain is not None and chain.name == SPACE and chain.n == 1:
            self.runs[-1] = replace(chain, name=PICOT)

    def close_group(self) -> None:
        """The stitch just made shares its place with the one before the last space."""
        for index in range(len(self.runs) - 2, max(-1, len(self.runs) - 4), -1):
            run = self.runs[index]
            if run.name == SPACE:
                self.runs[index] = replace(run, corner=True, unit=run.unit or "group")
                return

    def fresh(self, walk: Walk | None = None) -> Tally:
        """An empty tally for trying a body, along the given walk or along nothing known."""
        return Tally(
            self.size, self.below, self.choice, walk or Walk(None), room=self.room,
            kept=self.kept,
        )  # fmt: skip


@dataclass(slots=True)
class Kept:
    """What the groups and the bodies of a row hold, each worked once though every pass of a repeat
    comes to it. spent: moves and passes that were tried.
    """

    spent: int = 0
    worked: dict[object, tuple[object, Tally]] = field(default_factory=dict)

    def find(self, key: object, room: int) -> Tally | None:
        """What was worked, where no less room for its moves would have made it otherwise."""
        trial = self.worked[key][1] if key in self.worked else None
        if trial is None or trial.room == room or len(trial.moves) <= room < trial.room:
            return trial
        return None

    def keep(self, key: object, nodes: object, trial: Tally) -> None:
        """Keeps it, and its instructions, so that no others come to have their identity."""
        self.worked[key] = nodes, trial
