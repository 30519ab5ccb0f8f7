"""Filet: rows told in squares of a net, "3 sps, 2 bls, 5 sps" -> Mesh."""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import ONE, Mesh
from reader.terms.stitches import Craft
from reader.text.sought import Sought

OPEN_SQUARES = (
    "sps", "sp", "spaces", "space", "open meshes", "open mesh", "meshes", "mesh", "open squares",
    "open square", "open sps", "open sp", "s",
)  # fmt: skip
SOLID_SQUARES = (
    "bls", "bl", "blocks", "block", "solid meshes", "solid mesh", "solid squares", "solid square",
    "solid sps", "solid sp", "b",
)  # fmt: skip
SAID = Sought(
    (" bl", " sp"),
    r"\b(?:\d+|an?|one|two|three) (?:more )?(bls?|blocks?|sps?|spaces?)\b",
    re.IGNORECASE,
)
WITH = ("over", "above", "in", "on", "at")


def is_filet(text: str) -> bool:
    """Whether a pattern counts in squares: spaces and blocks told by number, several of both."""
    said = [found.group(1)[0].lower() for found in SAID.finditer(text)]
    return said.count("b") >= 2 and said.count("s") >= 2


def find_mesh(cur: Cursor) -> Mesh | None:
    """The squares that stand here, taken; None (nothing taken) where none do."""
    if not cur.book.filet or cur.book.craft is not Craft.CROCHET:
        return None
    start = cur.at
    cur.accept("make", "work", "then")
    number = cur.number() if cur.kind() == "num" else None
    if number is not None:
        cur.at += 1
        cur.accept("more")
    elif not cur.accept("a", "an"):
        number = None
        cur.at = start
        return None
    solid = cur.accept(*SOLID_SQUARES)
    if not (solid or cur.accept(*OPEN_SQUARES)) or not _ends(cur):
        cur.at = start
        return None
    while not cur.done() and cur.low() not in STOPS and cur.low() not in ("and", "then"):
        cur.at += 1
    return Mesh(cur.span(start), cur.said(start), number or ONE, solid)


def _ends(cur: Cursor) -> bool:
    return cur.done() or cur.low() in STOPS or cur.low() in (*WITH, "and", "then", "to", "across")
