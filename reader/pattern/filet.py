"""Filet: rows told in squares of a net, "3 sps, 2 bls, 5 sps" -> Mesh."""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import ONE, Mesh
from reader.terms.crafts import Terms
from reader.terms.forms import name_of, stitch_named
from reader.terms.stitches import Craft
from reader.text.sought import Sought

OPEN_SQUARES = (
    "sps", "sp", "spaces", "space", "open meshes", "open mesh", "meshes", "mesh", "open squares",
    "open square", "open sps", "open sp", "s", "os", "o s", "o",
)  # fmt: skip
SOLID_SQUARES = (
    "bls", "bl", "blocks", "block", "solid meshes", "solid mesh", "solid squares", "solid square",
    "solid sps", "solid sp", "filled meshes", "filled mesh", "filled squares", "filled square",
    "filled sps", "filled sp", "b", "close squares", "close square", "cs", "c s", "c",
)  # fmt: skip
LETTERS = Sought(
    ("o", "c"), r"\b\d+\s(?:(?P<solid>c\.?\s?s?)|o\.?\s?s?)\b\.?(?=\s*[,;])", re.IGNORECASE
)
"""Squares by their letters alone, as books of the 1850s have them: "12 os., 4 cs."."""
FEWEST = 6
MAKES = Sought(
    ("sp",),
    r"\b(?:make|work)\s(?:\d+\s(?:more\s)?(?:open\s)?(?:sps?|spaces?)\b(?!\s(?:in|into|of)\b)"
    r"|(?:an?\s|1\s)?(?:sp|space)\s(?:over|above)\seach\s(?:sp|space)\b)",
    re.IGNORECASE,
)
"""Open squares alone, told by number."""
SQUARE = Sought(
    ("sk", "miss"),
    r"\bch\s(?P<chains>[1-4]),?\s(?:skip|sk|miss)\s(?P=chains)\b[^,;.*]{0,12},?\s(?:1\s)?"
    r"(?P<stitch>d ?c|tr ?c|tr|htr|h ?d ?c|dtr)\sin\b",
    re.IGNORECASE,
)
"""An open square told in full, "ch 3, skip 3 sts, tr in next tr": its chains and its stitch."""
OF_HOOK = Sought(
    ("hook",),
    r"\b(?P<stitch>d ?c|tr ?c|tr|htr|dtr)\sin\s(?P<nth>\d+)th\s(?:ch|st)\w*(?: of ch)?\sfrom\shook",
    re.IGNORECASE,
)
"""The first open square of all, "tr in 11th ch from hook": the chains tell its width."""
NUMBER = r"\b(?:\d+|an?|one|two|three|four|five|six|seven|eight|nine|ten)\s(?:more\s)?"
SAID = Sought(
    ("bl", "sp", "mesh", "square"),
    NUMBER + r"(?:(?P<solid>bls?|blocks?|(?:solid|filled)\s(?:mesh(?:es)?|squares?|sps?|spaces?))"
    r"|sps?|spaces?|open\s(?:mesh(?:es)?|squares?|sps?|spaces?))\b",
    re.IGNORECASE,
)
SQUARE_MADE = Sought(
    ("made",), r"\b(?:(?P<solid>bl|block)|sp|space)\s+made\b", re.IGNORECASE
)
WITH = ("over", "above", "in", "on", "at")


def is_filet(text: str) -> bool:
    """Whether a pattern counts in squares: spaces and blocks told by number, several of both."""
    said = [found["solid"] is not None for found in SAID.finditer(text)]
    if said.count(True) >= 2 and said.count(False) >= 2:
        return True
    made = [found["solid"] is not None for found in SQUARE_MADE.finditer(text)]
    if (made and True in said) or (True in made and said):
        return True
    letters = [found["solid"] is None for found in LETTERS.finditer(text)]
    return letters.count(True) >= FEWEST or MAKES.search(text) is not None


def square_of(text: str, terms: Terms) -> tuple[str, int]:
    """The stitch at the edge of an open square, and the chains in it, as the pattern first tells
    them; a dc and two chains where it does not.
    """
    told = SQUARE.search(text)
    if told is not None:
        name = name_of(" ".join(told["stitch"].lower().split()), Craft.CROCHET, terms)
        return name or "dc", int(told["chains"])
    first = OF_HOOK.search(text)
    name = name_of(first["stitch"].lower(), Craft.CROCHET, terms) if first is not None else ""
    stitch = stitch_named(name or "", Craft.CROCHET)
    if first is None or stitch is None:
        return USUAL
    # The chains up to the hook: the height of the stitch, those of the square and those below it.
    over = int(first["nth"]) - 1 - stitch.height
    return (stitch.name, over // 2) if over % 2 == 0 and 0 < over // 2 < 5 else USUAL


USUAL = ("dc", 2)
"""Common practice, no source."""


def find_mesh(cur: Cursor) -> Mesh | None:
    """The squares that stand here, taken; None (nothing taken) where none do."""
    if not cur.book.filet or cur.book.craft is not Craft.CROCHET:
        return None
    start = cur.at
    cur.accept("make", "work", "then", "and")
    cur.accept("make", "work")
    over = _over_each(cur, start)
    if over is not None:
        return over
    number = cur.number() if cur.kind() == "num" else None
    if number is not None:
        cur.at += 1
        cur.accept("more")
    elif not cur.accept("a", "an") and not _alone(cur):
        number = None
        cur.at = start
        return None
    solid = cur.accept(*SOLID_SQUARES)
    if not (solid or cur.accept(*OPEN_SQUARES)) or not _ends(cur):
        cur.at = start
        return None
    while not cur.done() and cur.low() not in STOPS and cur.low() not in ("and", "then"):
        cur.at += 1
    return Mesh(cur.span(start), cur.said(start), number or ONE, solid, *cur.book.square)


NAMED = frozenset(["bl", "block", "sp", "space", "mesh"])


def _alone(cur: Cursor) -> bool:
    """Whether one square is told without its number: "bl over bl, 5 sps, bl"."""
    first = cur.at == 0 or cur.low(-1) in (*STOPS, ",", "*", "(", "and", "turn")
    return cur.low() in NAMED and first and (cur.low(1) in (*STOPS, *WITH, ""))


OVER_EACH = tuple(
    f"{sp} {over} {each}"
    for sp in ("sp", "sps", "a sp", "1 sp", "space", "spaces", "a space", "1 space")
    for over in ("over", "above", "in", "on")
    for each in ("each", "every", "all")
)


def _over_each(cur: Cursor, start: int) -> Mesh | None:
    """ "Make sp over each sp across": as many squares as lie below."""
    if not (cur.accept(*OVER_EACH) and cur.accept(*OPEN_SQUARES)):
        cur.at = start
        return None
    cur.accept("across the row", "across row", "across", "to end of row", "to end", "of row below")
    return Mesh(cur.span(start), cur.said(start), ONE, False, *cur.book.square, each=True)


def _ends(cur: Cursor) -> bool:
    return cur.done() or cur.low() in STOPS or cur.low() in (*WITH, "and", "then", "to", "across")
