"""A walk along the row below: where the hook stands, what is left, what was asked for and not
there.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from reader.counts.fabric import GAP, SPACE, Held, Run, held, units_of
from reader.counts.strides import StridingWalk


class Walk(StridingWalk):
    """The same with the spaces of the row, and where in it a round begins."""

    __slots__ = ()

    def take_square(self, chains: int) -> None:
        """Uses one square of a net: its space or its stitches, and the stitch at its edge."""
        at = self.at
        while self.known and at < len(self._runs) and self._runs[at].name == GAP:
            at += 1
        if self.known and at < len(self._runs) and self._runs[at].name == SPACE:
            self.take_spaces(1, lambda run: run.name == SPACE)
            self.take(1)
        else:
            self.take(1 + chains)

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
        fits = [at for at, one in enumerate(self._runs) if not one.is_stitch and wanted(one)]
        index = (fits[-1] if fits else None) if last else self._next(wanted)
        if index:
            passed = self._runs[index - 1 if last else 0 : index]
            self.before = sum(run.n for run in passed if run.is_stitch)
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

    def slip_past(self, number: int) -> bool:
        """A round that slips over stitches beside a space begins on the last of them: those before
        it come last, and need not be worked into. False where they are not so.
        """
        first = self._runs[0] if self._runs else None
        if not self.known or self.takes or self.space_takes or first is None or not self.spaces:
            return False
        if not first.is_stitch or first.n <= number or first.unit:
            return False
        passed, rest = replace(first, n=number), replace(first, n=first.n - number)
        self.before, self.slipped = number, True
        self._lie((rest, *self._runs[1:], passed))
        return True

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

    def chains_ahead(self) -> int:
        """The chains of the space that the hook stands right before, 0 where none lies there."""
        return self._runs[self.at].chains if self.at_space() else 0

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
        if gone is not None and gone.is_middle and self.at < len(self._runs):
            own = self._runs[self.at]
            if own.is_stitch:
                rest = min(self._own_half(self.at), self._own_half(self.at - 2) or own.n)
        return rest

    def _own_half(self, index: int) -> int:
        """Stitches of one group beside a middle: of those between two middles one half each, an odd
        one in their midst is nobody's.
        """
        one = self._runs[index] if 0 <= index < len(self._runs) else None
        if one is None or not one.is_stitch:
            return 0
        sides = self._runs[max(0, index - 1) : index] + self._runs[index + 1 : index + 2]
        shared = len(sides) == 2 and all(run.is_middle for run in sides) and one.n > 1
        return one.n // 2 if shared else one.n

    def leave_unit(self) -> None:
        """Goes past the rest of the group whose middle was just gone into: it is used as one."""
        if self.known and (rest := self.beyond()):
            self._pass(self._runs[self.at], rest)

    def leave_loop(self) -> None:
        """A row that begins at the top of a loop goes past it, and past the stitch beside it."""
        if not self.known or self.takes or self.space_takes:
            return
        if len(self._runs) > 1 and self._runs[0].is_stitch and self._runs[1].name == SPACE:
            self._pass(self._runs[0], self._runs[0].n)
            self._pass(self._runs[1], 1)

    def _half_of(self, index: int, unit: bool) -> int:
        """Stitches of a group that lie before its middle, where the whole of it is meant."""
        run = self._runs[index]
        if not unit or not run.unit or not self.at < index < len(self._runs) - 1:
            return 0
        halves = self._runs[index - 1], self._runs[index + 1]
        return min(half.n for half in halves) if all(half.is_stitch for half in halves) else 0

    def to_next(
        self, wanted: Callable[[Run], bool], unit: bool = False
    ) -> tuple[int, int] | None:
        """Stitches and spaces before the next wanted space, None where none lies ahead. unit:
        before the group whose middle it is.
        """
        index = self._next(wanted)
        if index is None:
            return None
        before = self.ahead()[: index - self.at]
        stitches = sum(run.n for run in before if run.is_stitch) - self._half_of(index, unit)
        return stitches, sum(run.n for run in before if run.name == SPACE)

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

    def middle_size(self) -> float:
        """Chains between those of the row's smallest and largest loop, 0 where all are alike."""
        sizes = {run.chains for run in self._runs if run.name == SPACE}
        return (min(sizes) + max(sizes)) / 2 if len(sizes) > 1 else 0

    def chained_apart(self) -> bool:
        """Whether chains part the row's groups of stitches, all of them."""
        if self.united or self._last("space", False) >= 0:
            return False
        return self._last("told", True) >= 0 and self._last("space", True) >= 0

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
