"""Lazily: a sequence that is made when it is first looked at, so that ten thousand rows cost
nothing until read.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from typing import TypeVar, overload

T = TypeVar("T")


class Lazily(Sequence[T]):
    """The items `make` gives, made once, at the first look; equal to any sequence of equal
    items.
    """

    __slots__ = ("_items", "_make")

    def __init__(self, make: Callable[[], tuple[T, ...]]) -> None:
        self._make: Callable[[], tuple[T, ...]] | None = make
        self._items: tuple[T, ...] = ()

    @property
    def items(self) -> tuple[T, ...]:
        """The items, as a tuple."""
        if self._make is not None:
            self._items, self._make = self._make(), None
        return self._items

    @property
    def made(self) -> bool:
        """Whether anybody has looked yet."""
        return self._make is None

    def __len__(self) -> int:
        return len(self.items)

    def __iter__(self) -> Iterator[T]:
        return iter(self.items)

    @overload
    def __getitem__(self, at: int) -> T: ...
    @overload
    def __getitem__(self, at: slice) -> tuple[T, ...]: ...
    def __getitem__(self, at: int | slice) -> T | tuple[T, ...]:
        return self.items[at]

    def __eq__(self, other: object) -> bool:
        if isinstance(other, Sequence) and not isinstance(other, str):
            return self.items == tuple(other)
        return NotImplemented

    def __hash__(self) -> int:
        return hash(self.items)

    def __repr__(self) -> str:
        return repr(self.items)
