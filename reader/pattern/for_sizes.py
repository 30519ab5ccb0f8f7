"""Phrases that name sizes, "Size M only:", "Sizes M and L:", "All sizes:" -> which they are."""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.terms.numbers import word_number

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
    return named_sizes(bare, names)


def indices_of(said: str, names: Sequence[str]) -> frozenset[int] | None:
    """Which of the sizes such words name, "M", "2nd", "adult", "M to XL", "two larger"; None for
    none of them.
    """
    low = " ".join(said.lower().split())
    one = index_of(low, names)
    if one is not None:
        return frozenset((one,))
    many = range(len(names))
    parts = frozenset(at for at in many if low in re.split(r"[^a-z0-9]+", names[at].lower()))
    if parts:
        return parts
    some = SOME.fullmatch(low)
    if some is not None:
        often = word_number(some["n"] or "") or int(some["n"] or 0) if some["n"] else 0
        number = often or len(names) - 1
        larger = some["way"].startswith(("larg", "big", "last"))
        chosen = many[-number:] if larger else many[:number]
        return frozenset(chosen) if number < len(names) else None
    ends = RANGED.split(low)
    both = [index_of(end.strip(), names) for end in ends]
    if len(both) == 2 and both[0] is not None and (both[1] is not None or not ends[1].strip()):
        last = both[1] if both[1] is not None else len(names) - 1
        return frozenset(range(both[0], last + 1)) or None
    return None


SOME = re.compile(
    r"(?:all )?(?:(?P<n>\d|two|three|four|five) )?(?P<way>larger|larger ones|bigger|smaller"
    r"|smallest|largest|last|first)"
)
RANGED = re.compile(r"\s*(?:-|—|\bto\b|\bthrough\b|\bthru\b|\band up\b|\+|\bupwards?\b)\s*")
ORDER = {"first": 0, "second": 1, "third": 2, "fourth": 3, "fifth": 4, "sixth": 5, "seventh": 6}


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
    ends = {"smallest": 0, "largest": len(names) - 1, "last": len(names) - 1, **ORDER}
    nth = re.fullmatch(r"(\d)(?:st|nd|rd|th)", low)
    at_end = int(nth[1]) - 1 if nth else ends.get(low, len(names))
    return at_end if 0 <= at_end < len(names) else None


def named_sizes(words: str, names: Sequence[str]) -> frozenset[int] | None:
    """The sizes of a list of their names; None where any of it names none."""
    whole = indices_of(words.strip(" .:-—()[]"), names)
    if whole is not None:
        return whole
    said = [one.strip(" .:-—()[]") for one in JOINED.split(words)]
    found = [indices_of(one, names) for one in said if one]
    if not found or any(one is None for one in found):
        return None
    return frozenset(at for one in found if one is not None for at in one)


LEFT_OUT = re.compile(
    r"[(\[]?\s*(?:(?:skip|omit|miss|leave out|do not work|don't work)(?: (?:this|it|the))?"
    r"(?: (?:row|round|rnd))?(?: for| in)?|not(?: worked)? (?:for|in)"
    r"|(?:for |in )?all(?: sizes)? (?:but|except)|except(?: for| in)?)\s+(?:the )?(?:sizes? )?"
    r"(?P<named>[\w ,&/-]{1,40}?)\s*(?:[)\]]\s*[:.—-]?|[:.—])\s*",
    re.IGNORECASE,
)
"""Behind a row's label, the sizes that do not work it: "(skip this for baby):"."""
BRACKETED = re.compile(
    r"[(\[]\s*(?:for )?(?P<named>[\w ,&/+-]{1,40}?)(?P<only>"
    r" only)\s*[)\]]\s*[:.—-]?\s*", re.IGNORECASE
)
ALONE = re.compile(
    r"[-—]?\s*(?P<named>[A-Za-z][\w ,&/+-]{0,40}?)(?P<only> only)?\s*[.:]\s+", re.IGNORECASE
)
"""Behind a row's label, the only sizes that work it, or all again: "ADULT ONLY.", "BOTH."."""


def row_sizes(words: str, names: Sequence[str]) -> tuple[int, frozenset[int]] | None:
    """How long the phrase is that a row's words begin with, "(skip this for baby):", "Adult only.",
    and the sizes that work the row; None where they begin with none.
    """
    if len(names) < 2:
        return None
    every = frozenset(range(len(names)))
    for shape in (LEFT_OUT, BRACKETED, ALONE):
        found = shape.match(words)
        if found is None:
            continue
        if shape is ALONE and not found["only"]:
            whole = found["named"].strip().lower() in ("all", "both", "all sizes", "both sizes")
            return (found.end(), every) if whole else None
        told = named_sizes(BESIDES.sub(" ", found["named"]), names)
        if told:
            return found.end(), every - told if shape is LEFT_OUT else told
    return None


LEAVES = re.compile(
    r"\W*(?:for |if (?:you are |you're )?making (?:the )?|if )?(?:the )?(?:sizes? )?(?P<named>[\w"
    r" ,&/+-]{1,40}?)"
    r"(?: sizes?)?(?: only)?\s*[:,—-]?\s+(?:you )?(?:can |now |please )*"
    r"(?:skip|go|move|jump|proceed|continue|head|stops?|is (?:done|finished|complete)|are (?:done"
    r"|finished))\b"
    r"(?P<where>[^.;\n]{0,60})[.;)\]]*\s*",
    re.IGNORECASE,
)
"""A line that sends sizes past the rows that follow: "Baby: skip ahead to Body."."""
TO_ROW = re.compile(r"\b(?:row|rnd|round|r)\.? ?(?P<n>\d+)", re.IGNORECASE)
PAST = re.compile(r"\b(?:to|ahead|on|here|now|this|at)\b", re.IGNORECASE)


def sizes_leaving(words: str, names: Sequence[str]) -> tuple[frozenset[int], int] | None:
    """The sizes that such a line sends past the rows to come, and the number of the row that they
    go to, 0 for the next part; None for any other line.
    """
    found = LEAVES.fullmatch(words) if len(names) > 1 and len(words) < 2 * LONGEST else None
    if found is None or (found["where"].strip(" .") and not PAST.search(found["where"])):
        return None
    named = named_sizes(BESIDES.sub(" ", found["named"]), names)
    row = TO_ROW.search(found["where"])
    return (named, int(row["n"]) if row else 0) if named and len(named) < len(names) else None


NOT_ALL = re.compile(
    r"(?:→|=|—|->|>|:|[(\[])\s*(?P<list>(?:\d+|[-—])\s*[(\[]\s*(?:\d+|[-—])(?:\s*[,:;/]\s*(?:\d+"
    r"|[-—]))*\s*[)\]])"
    r"(?:\s*(?:sts?|stitches|sc|dc|hdc|tr))?[\s.)\]]*$"
)


def sizes_of_total(words: str, names: Sequence[str]) -> frozenset[int] | None:
    """The sizes that a row's total has a number for, where others have a dash or a nought; None
    where all have one.
    """
    found = NOT_ALL.search(words[-80:]) if len(names) > 1 else None
    values = re.findall(r"\d+|[-—]", found["list"]) if found else []
    if len(values) != len(names):
        return None
    some = frozenset(at for at, one in enumerate(values) if one.isdigit() and int(one))
    return some if some and len(some) < len(names) else None


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
