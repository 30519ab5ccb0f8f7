"""Tally: what the hands have used and made so far in one row, and what lies below to be used."""

from __future__ import annotations

from dataclasses import dataclass, field

from reader.counts.worked import Move


@dataclass(frozen=True, slots=True)
class Below:
    """The row below: stitches, chain spaces, how many of each kind, and an unworked foundation chain."""

    stitches: int | None = None
    spaces: int = 0
    kinds: dict[str, int] = field(default_factory=dict)
    chain: int | None = None
    sections: int = 0


@dataclass(frozen=True, slots=True)
class Choice:
    """One way of reading a row: whether the first chain counts, "N times" as N more, equal numbers as one each."""

    chain: bool | None = None
    again_more: bool = True
    pair_each: bool = True
    cut_ending: bool = False

    def oddity(self) -> int:
        """How far from the usual reading; the smaller the better."""
        return 2 * (not self.again_more) + (not self.pair_each) + 3 * self.cut_ending


@dataclass(slots=True)
class Tally:
    """A running count. left: stitches below still unused, None while unknown."""

    size: int
    below: Below
    choice: Choice
    left: int | None = None
    spaces_left: int = 0
    takes: int = 0
    makes: int = 0
    spaces: int = 0
    kinds: dict[str, int] = field(default_factory=dict)
    moves: list[Move] = field(default_factory=list)
    short: int = 0
    uneven: tuple[int, int] | None = None
    elastic: bool = False
    unsure: bool = False
    unread: bool = False
    sections: int = 0
    spaced: bool = False

    def use(self, stitches: int) -> None:
        """Uses stitches of the row below; what is not there is noted as short."""
        self.takes += stitches
        if self.left is not None:
            if stitches > self.left:
                self.short += stitches - self.left
            self.left = max(0, self.left - stitches)

    def use_spaces(self, spaces: int) -> None:
        """Uses chain spaces of the row below."""
        self.spaced = True
        self.spaces_left = max(0, self.spaces_left - spaces)

    def make(self, stitches: int, kind: str, spaces: int = 0) -> None:
        """Leaves stitches of a kind, and spaces, for the row above."""
        self.makes += stitches
        self.spaces += spaces
        if stitches and kind:
            self.kinds[kind] = self.kinds.get(kind, 0) + stitches

    def fresh(self) -> Tally:
        """An empty tally over the same row below, for trying a body; nothing is ever short in it."""
        return Tally(self.size, self.below, self.choice, None, 10**9)
