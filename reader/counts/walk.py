"""A walk along the row below: where the hook stands, what is left, what was asked for and not
there.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from reader.counts.fabric import GAP, SPACE, Below, Held, Run, held, units_of


class Walk:
    """Takes stitches and spaces of a row in working order.

    aside: chains of a chain just made that are worked back along. before: stitches that lay before
    where the round begins. left: stitches ahead, None while the row below is unknown. short:
    stitches asked for that were not there. opened, united: whether the row has spaces, or groups
    with a middle. takes, space_takes: how many were asked for in all. lacking: spaces asked for
    that were not there. passed: stitches gone over to reach a space, of which the words say
    nothing. misnamed: stitches named that were no longer there, where others were taken.
    """

    __slots__ = (
        "_farthest", "_runs", "aside", "at", "before", "into", "known", "lacking", "left",
        "misnamed", "opened", "passed", "short", "space_takes", "spaces", "takes", "united",
    )  # fmt: skip

    def __init__(self, below: Below | None) -> None:
        self._lie(below.runs if below is not None else ())
        self.known = below is not None and below.stitches is not None
        self.left: int | None = below.stitches if below is not None and self.known else None
        self.spaces = below.spaces if below is not None else 0
        self.opened = any(not run.is_stitch for run in self._runs)
        self.united = any(run.unit and not run.is_stitch for run in self._runs)
        self.at = 0
        self.into = 0
        self.aside = 0
        self.before = 0
        self.takes = 0
        self.space_takes = 0
        self.short = 0
        self.lacking = 0
        self.passed = 0
        self.misnamed = 0

    def _lie(self, runs: tuple[Run, ...]) -> None:
        self._runs = runs
        self._farthest: dict[tuple[str, str | int], int] | None = None

    def _last(self, what: str, kind: str | int) -> int:
        """Where the last run of a name lies, or the last opening of a kind; -1 for none. Looked
        up for the whole row at once: every pass asks, and would go through all that lies ahead.
        """
        if self._farthest is None:
            self._farthest = {}
            for index, run in enumerate(self._runs):
                self._farthest["name", run.name] = index
                if run.is_stitch:
                    self._farthest["told", bool(run.unit)] = index
                else:
                    self._farthest["space", run.name == SPACE] = index
                    self._farthest["chains", run.chains] = index
                    self._farthest["corner", run.corner] = index
                    self._farthest["unit", run.unit] = index
        return self._farthest.get((what, kind), -1)

    def copy(self) -> Walk:
        """Another walk that stands at the same place."""
        other = Walk.__new__(Walk)
        for slot in Walk.__slots__:
            setattr(other, slot, getattr(self, slot))
        return other

    def lost(self) -> None:
        """From here on nothing is known of what lies below."""
        self.known = False
        self.left = None
        self._lie(())
        self.spaces = 0
        self.at = self.into = 0

    def over(self, below: Below) -> None:
        """Goes on along another edge."""
        self._lie(below.runs)
        self.known = below.stitches is not None
        self.left = below.stitches
        self.spaces = below.spaces
        self.at = self.into = 0

    def alike(self, names: set[str]) -> bool:
        """Whether arithmetic is enough: no spaces ahead, and of the stitches named at most one kind
        there is.
        """
        if not self.known:
            return True
        kinds: set[str] = set()
        for run in self._runs[self.at :]:
            if not run.is_stitch:
                return False
            kinds.add(run.name)
        return len(kinds) < 2 or not names & kinds

    def ahead(self) -> list[Run]:
        """The runs still ahead, the first one cut where the hook stands."""
        out = list(self._runs[self.at :])
        if out and self.into:
            first = out[0]
            out[0] = Run(first.name, first.n - self.into, first.chains, first.corner, first.unit)
        return out

    def take(self, stitches: int, name: str = "") -> None:
        """Uses stitches, passing over spaces; name: of that kind where the row has it ahead."""
        if name:
            # A stitch of the row below is named: back from the chain.
            self.aside = 0
        on_chain = min(self.aside, stitches)
        self.aside -= on_chain
        stitches -= on_chain
        self.takes += stitches
        if not self.known or self.left is None:
            return
        if name and (last := self._last("name", name)) < self.at:
            # None of them is left; where there were some, another kind is hardly meant.
            others = max(self._last("name", "st"), self._last("name", "ch")) < self.at
            self.misnamed += last >= 0 and others
            name = ""
        while stitches > 0:
            if self.at >= len(self._runs):
                self.short += stitches
                return
            run = self._runs[self.at]
            have = run.n - self.into
            if not run.is_stitch or (name and run.name not in (name, "st", "ch")):
                self._pass(run, have)
            else:
                took = min(have, stitches)
                stitches -= took
                self._pass(run, took)

    def _pass(self, run: Run, amount: int) -> None:
        if run.is_stitch:
            self.left = (self.left or 0) - amount
        elif run.name == SPACE:
            self.spaces -= amount
        self.into += amount
        if self.into >= run.n:
            self.at += 1
            self.into = 0

    def to_last(self) -> tuple[int, int]:
        """Goes on to the last stitch, over whatever lies before it: so many stitches and
        spaces.
        """
        before = (self.left or 0, self.spaces)
        while self.known and (self.left or 0) > 1 and self.at < len(self._runs):
            run = self._runs[self.at]
            have = run.n - self.into
            self._pass(run, min(have, (self.left or 0) - 1) if run.is_stitch else have)
        # The space right before the last stitch is gone over with it.
        return before[0] - (self.left or 0), before[1]

    def to_pineapple(self) -> None:
        """Goes on to the first loop that two low stitches hold: the loops beside a shell are not
        the pineapple's own.
        """
        for at in range(self.at, len(self._runs) - 1):
            held = [self._runs[at - 1].name, self._runs[at + 1].name] if at else []
            if self._runs[at].name == SPACE and held == ["sc", "sc"]:
                self._go_to(at)
                return

    def to_group(self) -> None:
        """Goes on to where the next group of stitches begins."""
        at = self.at + (self.into > 0)
        while at < len(self._runs) and not self._begins_group(at):
            at += 1
        if self.known and at >= len(self._runs):
            self.lacking += 1
        if at < len(self._runs):
            self._go_to(at)

    def _go_to(self, at: int) -> None:
        while self.at < at:
            run = self._runs[self.at]
            self._pass(run, run.n - self.into)

    def take_group(self) -> bool:
        """Uses the next group, several stitches alike; False where none lies ahead."""
        if not self.known:
            return False
        told = self._last("told", True) >= self.at
        for at in range(self.at, len(self._runs)):
            run = self._runs[at]
            whole = run.is_stitch and run.n > 1 and (at > self.at or not self.into)
            if whole and (run.unit or not told):
                self._go_to(at)
                self.take(run.n)
                return True
        return False

    def _begins_group(self, at: int) -> bool:
        if self._runs[at].is_stitch and self._runs[at].unit:
            # Several stitches in one place, whatever stands beside them.
            return True
        if self._runs[at].is_stitch and at + 1 < len(self._runs) and self._inner(at + 1):
            # The one side of a shell of two stitches and the space in its middle.
            return not (at and self._inner(at - 1))
        if at and self._runs[at - 1].is_stitch:
            return False
        many = 0
        for run in self._runs[at:]:
            if not run.is_stitch or many > 1:
                break
            many += run.n
        return many > 1

    def _inner(self, at: int) -> bool:
        return self._runs[at].name == SPACE and bool(self._runs[at].unit)

    def take_square(self) -> None:
        """Uses one square of a net: its space or its two stitches, and the stitch at its edge."""
        at = self.at
        while self.known and at < len(self._runs) and self._runs[at].name == GAP:
            at += 1
        if self.known and at < len(self._runs) and self._runs[at].name == SPACE:
            self.take_spaces(1, lambda run: run.name == SPACE)
            self.take(1)
        else:
            self.take(3)

    def take_spaces(self, number: int, wanted: Callable[[Run], bool]) -> None:
        """Uses spaces of the wanted kind, passing over the stitches before each."""
        self.space_takes += number
        if not self.known:
            return
        for _ in range(min(number, 20_000)):
            if not self._to_space(wanted):
                self.lacking += 1
                return

    def _to_space(self, wanted: Callable[[Run], bool]) -> bool:
        index = self._next(wanted)
        if index is not None:
            before = self.left or 0
            self._go_to(index)
            self.passed += before - (self.left or 0)
            self._pass(self._runs[index], 1)
        return index is not None

    def _next(self, wanted: Callable[[Run], bool]) -> int | None:
        for index in range(self.at, len(self._runs)):
            run = self._runs[index]
            if not run.is_stitch and wanted(run) and held(self._runs, index, wanted):
                return index
        return None

    def chain_follows(self, steps: int) -> bool:
        """Whether a row of loops begins here, so that so many steps go along the first chain."""
        if not self.known or self.takes or len(self._runs) < 2 or self._runs[0].n > 1:
            return False
        first, chain = self._runs[:2]
        return first.is_stitch and chain.name == SPACE and chain.chains >= max(2, steps)

    def begin_at(self, wanted: Callable[[Run], bool], last: bool = False) -> None:
        """A round that begins in a space: the row is seen from there on, what lay before comes
        last. last: the space is the last of its kind, not the first.
        """
        if not self.known or self.takes or self.space_takes:
            return
        index = self._next(wanted)
        if last:
            fits = [at for at, one in enumerate(self._runs) if not one.is_stitch and wanted(one)]
            index = fits[-1] if fits else None
        if index:
            self.before = sum(run.n for run in self._runs[:index] if run.is_stitch)
            self._lie(self._runs[index:] + self._runs[:index])
            self.at = self.into = 0

    def begin_at_stitch(self, number: int, name: str) -> None:
        """A round that slips past loops to a stitch begins there: what it passed comes last."""
        if not self.known or self.takes or self.space_takes:
            return
        gone = self.copy()
        gone.take(number, name)
        at = gone.at if gone.into else gone.at - 1
        alone = gone.into == 1 or (not gone.into and at >= 0 and self._runs[at].n == 1)
        passed = self._runs[:max(at, 0)]
        if gone.short or not alone or not any(run.name == SPACE for run in passed):
            return
        self.before = sum(run.n for run in passed if run.is_stitch)
        self._lie(self._runs[at:] + passed)

    def begin_after(self, wanted: Callable[[Run], bool]) -> None:
        """A round that only starts from a space: the row is seen from behind it, and the space
        itself comes last.
        """
        self.begin_at(wanted)
        if self.known and not self.takes and not self.space_takes and len(self._runs) > 1:
            self._lie(self._runs[1:] + self._runs[:1])

    def stand_in_last(self) -> bool:
        """Uses the row's last space, in which the round before ended and this one begins; False
        where it has none.
        """
        at = self._last("space", True)
        if not self.known or at < self.at:
            return False
        last = self._runs[at]
        kept = (replace(last, n=last.n - 1),) if last.n > 1 else ()
        self._lie((*self._runs[:at], *kept, *self._runs[at + 1 :]))
        self.spaces -= 1
        self.space_takes += 1
        return True

    def at_space(self) -> bool:
        """Whether the hook stands right before a chain space."""
        at_run = self.known and not self.into and self.at < len(self._runs)
        return at_run and self._runs[self.at].name == SPACE

    def leave_opening(self) -> None:
        """A round that goes past the space at its beginning: that space comes last."""
        if self.known and not self.takes and len(self._runs) > 1 and not self._runs[0].is_stitch:
            self._lie(self._runs[1:] + self._runs[:1])

    def beyond(self) -> int:
        """Stitches ahead that nothing is worked into: those before where the round began, and the
        rest of the group whose middle was the last to be worked into.
        """
        gone = self._runs[self.at - 1] if 0 < self.at <= len(self._runs) and not self.into else None
        rest = 0
        if gone is not None and not gone.is_stitch and gone.unit and self.at < len(self._runs):
            half = self._runs[self.at - 2] if self.at > 1 else None
            own = self._runs[self.at]
            if own.is_stitch:
                rest = min(own.n, half.n if half is not None and half.is_stitch else own.n)
        return rest

    def leave_loop(self) -> None:
        """A row that begins at the top of a loop goes past it, and past the stitch beside it."""
        if not self.known or self.takes or self.space_takes:
            return
        if len(self._runs) > 1 and self._runs[0].is_stitch and self._runs[1].name == SPACE:
            self._pass(self._runs[0], self._runs[0].n)
            self._pass(self._runs[1], 1)

    def to_next(self, wanted: Callable[[Run], bool]) -> tuple[int, int] | None:
        """Stitches and spaces before the next wanted space, None where none lies ahead."""
        index = self._next(wanted)
        if index is None:
            return None
        before = self.ahead()[: index - self.at]
        stitches = sum(run.n for run in before if run.is_stitch)
        return stitches, sum(run.n for run in before if run.name == SPACE)

    def past_corners(self) -> bool:
        """Whether all spaces between stitches of one place lie behind."""
        return 0 <= self._last("corner", True) < self.at

    def lies_ahead(self, what: str, kind: str | int) -> bool:
        """Whether a "corner" (True: a space inside stitches of one place), a group "told" stitch by
        stitch (True), or the middle of a "unit" of that name lies ahead.
        """
        return self._last(what, kind) >= self.at

    def units_ahead(self, name: str) -> int:
        """How many groups of that name lie ahead; where none is named so, how many of any name."""
        units = units_of(self._runs[self.at + (self.into > 0) :])
        return units.get(name, 0) or sum(units.values())

    def has(self, what: str, kind: str | int) -> bool:
        """Whether the row has a space of so many "chains", or a "unit" of that name, at all."""
        return self._last(what, kind) >= 0

    def has_held(self, wanted: Held) -> bool:
        """Whether the row has a wanted space at all, used or not."""
        return any(held(self._runs, at, wanted) for at in range(len(self._runs)))

    def count_spaces(self, wanted: Callable[[Run], bool]) -> int:
        """How many wanted spaces lie ahead."""
        return sum(
            run.n for at, run in enumerate(self.ahead(), self.at)
            if not run.is_stitch and wanted(run) and held(self._runs, at, wanted)
        )

    def in_row(self, name: str) -> int:
        """How many stitches of that kind follow each other next, no more than two chains between
        them.
        """
        found = 0
        for run in self.ahead():
            if run.is_stitch and run.name == name:
                found += run.n
            elif found and (run.is_stitch or run.chains > 2):
                break
        return found

    def named(self, name: str) -> int:
        """How many stitches of that kind lie ahead."""
        return sum(run.n for run in self.ahead() if run.name == name)
