"""The invented pieces as copies spoil them: set wide, run together, quoted, with page numbers amid
their rows, with letters for figures. What is read of the piece is read of its copy.
"""

from __future__ import annotations

import re
import textwrap
from collections.abc import Callable, Iterator

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from tests.examples.test_pieces import PIECES

NAMES = """
angled-sizes bollard-vandyke chart-room-mat-columns copied-wharf-rug cross-over-child
dock-hat-arrows filet-told-in-full gangway-square-bold-totals gull-net-flat
harbour-jumper-1940 hug-me-tight kelp-edging-sideways lantern-cushion-uk-chain-apart
mate-cap-sizes-told-inside moorings-jumper-1938 oilskin-letters-behind
pilot-cap-and-peak pinwheel-cloth quay-half-shawl rope-coil-dashes
sailor-collar-slashes sandbar-shawl signal-cap-colours slouch-four-sizes stoker-cover
tideline-shawl urchin-pincushion wristlets-1916
"""
SAMPLE = [piece for piece in PIECES if piece.stem in NAMES.split()]
LABEL = r"(?m)^((?:Rnd|Round|Row|R)s? ?\d+(?:-\d+)?)"


def wrapped(text: str, width: int = 60) -> list[str]:
    """The lines of a text set to a width."""
    out: list[str] = []
    for line in text.split("\n"):
        out += textwrap.wrap(line, width, break_long_words=False, break_on_hyphens=False) or [""]
    return out


def with_pages(text: str, page: str) -> str:
    """The text with a line behind every ninth."""
    out: list[str] = []
    for at, line in enumerate(wrapped(text)):
        out.append(line)
        if at % 9 == 8:
            out.append(page.format(n=3 + at // 9))
    return "\n".join(out)


COPIES: dict[str, Callable[[str], str]] = {
    "set wide": lambda text: text.replace(" ", "  "),
    "blanks lost": lambda text: re.sub(r"(\d) (?=(?:sc|dc|hdc|tr|sts?|ch)\b)", r"\1", text),
    "an l for a 1": lambda text: re.sub(r"(?<![\w.,])1(?= [a-z])", "l", text),
    "an O for a 0": lambda text: re.sub(r"(?<=\d)0\b", "O", text),
    "quoted": lambda text: re.sub(r"(?m)^", "> ", text),
    "an empty line behind each": lambda text: text.replace("\n", "\n\n"),
    "ligatures": lambda text: text.replace("fi", "ﬁ").replace("fl", "ﬂ").replace("ff", "ﬀ"),
    "a stop behind labels": lambda text: re.sub(LABEL + ":", r"\1.", text),
    "page numbers": lambda text: with_pages(text, "\n{n}\n"),
    "page lines": lambda text: with_pages(text, "Page {n} of 9 - www.harbour.example"),
}
LOST = {"page numbers": 11, "page lines": 11, "set wide": 3}
"""Of some rows too little is left; elsewhere no row may be lost."""


def lost(wanted: list[int], counts: Iterator[int | None]) -> int:
    """How many of the wanted counts do not come, in order."""
    found = list(counts)
    missing, at = 0, 0
    for one in wanted:
        if one in found[at:]:
            at = found.index(one, at) + 1
        else:
            missing += 1
    return missing


@pytest.mark.parametrize("copy", COPIES)
def test_a_copy_is_read_like_the_piece(copy: str) -> None:
    missing: dict[str, int] = {}
    for piece in SAMPLE:
        text = COPIES[copy](piece.read_text(encoding="utf-8"))
        counts = piece.with_suffix(".counts").read_text(encoding="utf-8").splitlines()[0]
        rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
        gone = lost([int(one) for one in counts.split()], iter(row.count for row in rows))
        if gone:
            missing[piece.stem] = gone
    assert sum(missing.values()) <= LOST.get(copy, 0), missing


def test_a_leaflet_in_capitals_is_read_as_sentences() -> None:
    """Most pieces lose nothing when all of their letters are capitals."""
    kept = 0
    for piece in SAMPLE:
        text = piece.read_text(encoding="utf-8").upper()
        counts = piece.with_suffix(".counts").read_text(encoding="utf-8").splitlines()[0]
        rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
        kept += not lost([int(one) for one in counts.split()], iter(row.count for row in rows))
    assert kept >= len(SAMPLE) - 5
