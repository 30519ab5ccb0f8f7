"""Span: where a piece of text stands in the pattern as the maker has it."""

from __future__ import annotations

from typing import NamedTuple


class Span(NamedTuple):
    """A stretch of the original text: character offsets [start, end) and the 1-based line of its
    start.
    """

    start: int
    end: int
    line: int
