"""A row of stitches and spaces, gone along in working order: stitches and groups of them."""

from __future__ import annotations

from typing import Self

from reader.counts.fabric import SPACE, Below, Run


class StitchWalk:
    """Takes stitches and spaces of a row in working order.

    aside: chains of a chain just made that are worked back along. before: stitches that lay before
    where the round begins. left: stitches ahead, None while the row below is unknown. short:
    stitches asked for that were not there. opened, united: whether the row has spaces, or groups
    with a middle. takes, space_takes: how many were asked for in all. lacking: spaces asked for
    that were not there. passed: stitches gone over to reach a space, of which the words say
    nothing. misnamed: stitches named that were no longer there, where others were taken. slipped:
    the round slipped past those before where it begins.
    """

    __slots__ = (
        "_farthest", "_runs", "aside", "at", "before", "ended", "into", "known", "lacking", "left",
        "misnamed", "opened", "passed", "short", "slipped", "space_takes", "spaces", "takes",
        "united",
    )  # fmt: skip

    def __init__(self, below: Below | None) -> None:
        self._lie(below.runs if below is not None else ())
        self.known = below is not None and below.stitches is not None
        self.left: int | None = below.stitches if below is not None and self.known else None
        self.spaces = below.spaces if below is not None else 0
        self.ended = False
        self.opened = any(not run.is_stitch for run in self._runs)
        self.united = any(run.is_middle for run in self._runs)
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
        self.slipped = False

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

    def copy(self) -> Self:
        """Another walk that stands at the same place."""
        other = type(self).__new__(type(self))
        for slot in StitchWalk.__slots__:
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
            if not run.is_stitch or (run.unit and "group" in names):
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
        elif run.is_open:
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
        """Goes on to the first loop that two low stitches hold, or that lies among tall ones in one
        place: the loops beside a shell are not the pineapple's own.
        """
        for at in range(self.at, len(self._runs) - 1):
            held = [self._runs[at - 1].name, self._runs[at + 1].name] if at else []
            low = self._runs[at].name == SPACE and held == ["sc", "sc"]
            if low or (at and self._fanned(at)):
                self._go_to(at)
                return

    def _fanned(self, at: int) -> bool:
        """Whether a loop and the next one lie between single stitches of one kind and place."""
        around = self._runs[at - 1 : at + 4]
        if len(around) < 5:
            return False
        first, loop, other, again, third = around
        alike = first.name == other.name == third.name and other.n == 1 and first.is_stitch
        return alike and loop.name == SPACE and loop == again and loop.corner

    def in_group(self) -> Run | None:
        """The stitches of a group amid which the hook stands, None where it does not."""
        end = self._group_end()
        return None if end is None else self._runs[end]

    def _group_end(self) -> int | None:
        """Where the group ends amid which the hook stands: one told stitch by stitch, or the two
        halves beside a middle.
        """
        runs, at = self._runs, self.at
        if not self.known or at >= len(runs):
            return None
        behind = self._has_middle(at + 1) and at + 2 < len(runs)
        if self._has_middle(at):
            return at + 1 if at and runs[at - 1].is_stitch and at + 1 < len(runs) else None
        if not self.into or not runs[at].is_stitch:
            return None
        return at + 2 if behind else at if runs[at].unit or self._has_middle(at - 1) else None

    def _has_middle(self, at: int) -> bool:
        run = self._runs[at] if 0 <= at < len(self._runs) else None
        return run is not None and not run.is_stitch and run.unit != ""

    def leave_group(self) -> None:
        """Goes past the rest of the group amid which the hook stands."""
        end = self._group_end()
        while end is not None and self.at <= end:
            run = self._runs[self.at]
            self._pass(run, run.n - self.into)

    def to_group(self, nth: int = 0) -> None:
        """Goes on to where the next group of stitches begins; nth: stays in the one amid which the
        hook stands before its stitch of that number.
        """
        if self.into < nth and self.in_group() is not None:
            return
        at = self.at + (self.into > 0)
        while at < len(self._runs) and not self._begins_group(at):
            at += 1
        if self.known and at >= len(self._runs):
            self.lacking += 1
        if at < len(self._runs):
            self._go_to(at)

    def group_ahead(self) -> bool:
        """Whether a group of stitches begins where the hook stands, or farther on."""
        first = self.at + (self.into > 0)
        return any(self._begins_group(at) for at in range(first, len(self._runs)))

    def has_lone(self, name: str) -> bool:
        """Whether a stitch of a kind stands alone anywhere in the row."""
        return any(run.name == name and run.n == 1 and not run.unit for run in self._runs)

    def to_lone(self, name: str) -> None:
        """Goes on to the next stitch of a kind that stands alone, where one lies ahead."""
        for at in range(self.at, len(self._runs)):
            if self._runs[at].name == name and self._runs[at].n == 1:
                self._go_to(at)
                return

    def to_amid(self, name: str) -> bool:
        """Goes on to the stitch in the middle of those of a kind between two shells of the same
        kind: it stands there by itself; False where none lies so.
        """
        for at in range(self.at - (self.into > 0), len(self._runs)):
            if at < 0 or not self._has_middle(at - 1):
                continue
            upto = at
            while upto < len(self._runs) and self._runs[upto].name == name:
                upto += 1
            many = sum(run.n for run in self._runs[at:upto])
            gone = 0 if self.at < at else self.into + sum(
                run.n for run in self._runs[at : self.at]
            )
            if many % 2 and many > 2 and gone <= many // 2 and self._ends_or_middle(upto):
                self._go_to(at)
                self.take(many // 2 - gone)
                self.takes -= many // 2 - gone
                return True
        return False

    def _ends_or_middle(self, at: int) -> bool:
        return at >= len(self._runs) or self._has_middle(at)

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
                if self._is_half(at):
                    self.lacking += 1
                    return False
                self._go_to(at)
                self.take(run.n)
                return True
        return False

    def _is_half(self, at: int) -> bool:
        """Whether the stitches at the row's end are half of a group as the others are."""
        one = self._runs[at]
        if not self.ended or at < len(self._runs) - 2:
            return False
        alike = [run.n for run in self._runs if run.name == one.name]
        return sum(n > one.n for n in alike) > 1 and 2 * one.n <= max(alike) + 1

    def _begins_group(self, at: int) -> bool:
        if self._runs[at].is_stitch and self._runs[at].unit:
            # Several stitches in one place, whatever stands beside them.
            return True
        if self._runs[at].is_stitch and self._has_middle(at + 1):
            # The first half of a shell, whatever stands before it.
            return not self._has_middle(at - 1)
        if at and (self._runs[at - 1].is_stitch or self._has_middle(at - 1)):
            return False
        many = 0
        for run in self._runs[at:]:
            if not run.is_stitch or many > 1:
                break
            many += run.n
        return many > 1
