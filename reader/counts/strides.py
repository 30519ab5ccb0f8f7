"""A walk that goes on in equal steps, so that many passes of a repeat are taken in one."""

from __future__ import annotations

from typing import Self

from reader.counts.stitch_walk import StitchWalk

STILL = ("_runs", "aside", "before", "known", "lacking", "misnamed", "short", "slipped")
MOVING = ("at", "into", "left", "passed", "space_takes", "spaces", "takes")
AT_THE_END = 4
"""Passes before the row, or what lies alike in it, ends: they may be unlike those before them."""


class StridingWalk(StitchWalk):
    """The same with equal steps seen as such."""

    __slots__ = ()

    def strides_ahead(self, before: Self, start: Self) -> int:
        """How often the step from `before` to here, the same as that from `start` to `before`, can
        be taken over stitches and spaces that lie as those before; 0 where the steps differ.
        """
        if not self.known or any(getattr(self, one) != getattr(before, one) for one in STILL):
            return 0
        if start._runs is not self._runs or self._step(before) != before._step(start):
            return 0
        width, along = self.at - before.at, self.into - before.into
        if width == 0 and along > 0:
            return (self._runs[self.at].n - self.into) // along - AT_THE_END
        if width > 0 and along == 0:
            return (self._alike_up_to(start.at, width) - self.at) // width - AT_THE_END
        return 0

    def strides_left(self, before: Self, keep: int, spaces: int) -> int:
        """How often the step from `before` to here can be taken before no more than so many
        stitches and spaces, and those of a few steps, are left.
        """
        stitches, openings = (before.left or 0) - (self.left or 0), before.spaces - self.spaces
        rooms = [
            (left - kept) // taken - AT_THE_END
            for left, kept, taken in (
                (self.left or 0, keep, stitches), (self.spaces, spaces, openings),
            )
            if taken > 0
        ]  # fmt: skip
        return min(rooms, default=0)

    def on_by(self, before: Self, times: int) -> Self:
        """The walk after so many more of the step from `before` to here."""
        other = self.copy()
        for slot, step in zip(MOVING, self._step(before), strict=True):
            setattr(other, slot, getattr(self, slot) + times * step)
        return other

    def _step(self, before: Self) -> list[int]:
        return [(getattr(self, one) or 0) - (getattr(before, one) or 0) for one in MOVING]

    def _alike_up_to(self, start: int, width: int) -> int:
        """How far the runs from a place on repeat with that width."""
        at = start + width
        while at < len(self._runs) and self._runs[at] == self._runs[at - width]:
            at += 1
        return at
