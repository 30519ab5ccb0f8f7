"""Phrases that name sizes, "Size M only:", "Sizes M and L:", "All sizes:" -> which they are."""

from __future__ import annotations

import re
from collections.abc import Sequence

ALIKE = (
    ("xs", "x-small", "extra small"), ("s", "small", "sm", "sml"), ("m", "medium", "med"),
    ("l", "large", "lg", "lge"), ("xl", "x-large", "extra large", "1x"),
    ("xxl", "2xl", "2x", "xx-large"), ("xxxl", "3xl", "3x"), ("xxxxl", "4xl", "4x"),
    ("xxxxxl", "5xl", "5x"),
)  # fmt: skip
"""Names of one size."""
SIZE_WORD = re.compile(r"\b(?:sizes?|only)\b", re.IGNORECASE)
BESIDES = re.compile(r"\b(?:for|the|sizes?|only|work|in|continue|cont)\b", re.IGNORECASE)
JOINED = re.compile(r",|&|/|\+|\band\b|\bor\b", re.IGNORECASE)
EVERY = re.compile(
    r"\W*(?:for )?(?:all|both|every|each)(?: of)?(?: the)? sizes?\W*(?:again|continue|cont)?\W*",
    re.IGNORECASE,
)
LONGEST = 60
"""Characters of a phrase that names sizes."""


def sizes_in(words: str, names: Sequence[str]) -> frozenset[int] | None:
    """Which sizes (0-based) a phrase is for; None where it is no such phrase, or names a size that
    the pattern does not have.
    """
    words = " ".join(words.split())
    if len(names) < 2 or len(words) > LONGEST or not SIZE_WORD.search(words):
        return None
    if EVERY.fullmatch(words):
        return frozenset(range(len(names)))
    bare = BESIDES.sub(" ", words)
    said = [one.strip(" .:-—()[]") for one in JOINED.split(bare)]
    found = [index_of(one, names) for one in said if one]
    if not found or any(one is None for one in found):
        return None
    return frozenset(one for one in found if one is not None)


def index_of(said: str, names: Sequence[str]) -> int | None:
    """Which of the sizes a name is, None for none of them."""
    low = " ".join(said.lower().split())
    for at, name in enumerate(names):
        own = name.lower().strip()
        if low == own or any({low, own} <= set(group) for group in ALIKE):
            return at
    parts = [at for at, name in enumerate(names) if low in name.lower().split()]
    if len(parts) == 1:
        return parts[0]
    ends = {"smallest": 0, "first": 0, "largest": len(names) - 1, "last": len(names) - 1}
    return ends.get(low)


LEFT_OUT = re.compile(
    r"[(\[]?\s*(?:(?:skip|omit|miss|leave out|do not work|don't work)(?: (?:this|it|the))?"
    r"(?: (?:row|round|rnd))?(?: for| in)?|not(?: worked)? (?:for|in)"
    r"|(?:for |in )?all(?: sizes)? (?:but|except)|except(?: for| in)?)\s+(?:the )?(?:sizes? )?"
    r"(?P<named>[\w ,&/-]{1,40}?)\s*(?:[)\]]\s*[:.—-]?|[:.—])\s*",
    re.IGNORECASE,
)
"""Behind a row's label, the sizes that do not work it: "(skip this for baby):"."""
ALONE = re.compile(r"(?P<named>[A-Za-z][\w ,&/-]{0,40}?)(?P<only> only)?\s*[.:]\s+", re.IGNORECASE)
"""Behind a row's label, the only sizes that work it, or all again: "ADULT ONLY.", "BOTH."."""


def row_sizes(words: str, names: Sequence[str]) -> tuple[int, frozenset[int]] | None:
    """How long the phrase is that a row's words begin with, "(skip this for baby):", "Adult only.",
    and the sizes that work the row; None where they begin with none.
    """
    if len(names) < 2:
        return None
    every = frozenset(range(len(names)))
    for shape in (LEFT_OUT, ALONE):
        found = shape.match(words)
        if found is None:
            continue
        said = [one.strip() for one in JOINED.split(found["named"]) if one.strip()]
        if shape is ALONE and not found["only"]:
            whole = said and said[0].lower() in ("all", "both", "all sizes", "both sizes")
            return (found.end(), every) if whole and len(said) == 1 else None
        which = [index_of(one, names) for one in said]
        if which and None not in which:
            told = frozenset(one for one in which if one is not None)
            return found.end(), every - told if shape is LEFT_OUT else told
    return None


HEADED = re.compile(r"^(?P<phrase>[^:\n]{3,60}?)\s*(?::|—|-(?=\s))\s*")


def run_in_sizes(words: str, names: Sequence[str]) -> tuple[int, frozenset[int]] | None:
    """How long the phrase is that a paragraph begins with, "Size M only: Round 6: ...", and its
    sizes; None where it begins with none.
    """
    found = HEADED.match(words)
    which = sizes_in(found["phrase"], names) if found else None
    return (found.end(), which) if found and which is not None else None


INSIDE = re.compile(
    r"(?<=[.;)\]])\s+(?=(?P<phrase>(?:(?:for|all|both|work|on)\s+)*(?:the\s+)?(?:\w+\s+)?sizes?\b"
    r"[^:.;\n]{0,40}):\s+(?P<first>\w+))",
    re.IGNORECASE,
)
"""Sizes named in the middle of a paragraph, with what they work."""
BEGINS_WORK = re.compile(
    r"(?:rows?|rnds?|rounds?|next|rep|repeat|work|cont|continue|bind|cast|bo|dec|inc|decrease"
    r"|increase|shape)$",
    re.IGNORECASE,
)
"""The first word of what rows, and not some stitches of one, are made of."""


def sizes_inside(words: str, names: Sequence[str]) -> int | None:
    """Where the first sentence of a paragraph begins that is for sizes it names; None where none
    is.
    """
    if len(names) < 2:
        return None
    parted = run_in_sizes(words, names) is not None
    for found in INSIDE.finditer(words):
        named = sizes_in(found["phrase"], names) is not None
        rows = BEGINS_WORK.match(found["first"]) or ROWS.match(words, found.end("phrase"))
        if named and (parted or rows):
            return found.end()
    return None


ROWS = re.compile(r":\s+(?:\w+\s+){1,3}(?:rows?|rnds?|rounds?)\b", re.IGNORECASE)
