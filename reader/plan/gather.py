"""The materials as written in, single things to gather out."""

from __future__ import annotations

import re

from reader.plan.step import GatherItem

YARN = re.compile(
    r"\byarns?\b|\bwools?\b|\bcotton\b|\bacrylic\b|\bskeins?\b|\bballs?\b|\bhanks?\b|\bply\b|"
    r"\bworsted\b|\baran\b|\bDK\b|\bchunky\b|\bbulky\b|\bfingering\b|\bthread\b|\bmercerized\b|"
    r"\d\s?(?:g|gr|grams?|oz|yds?|yards?)\b|#\d\)?\s*(?:yarn)?",
    re.IGNORECASE,
)
HOOK = re.compile(r"\bhooks?\b", re.IGNORECASE)
NEEDLE = re.compile(r"\bneedles?\b|\bdpns?\b|\bcirculars?\b", re.IGNORECASE)
SEWING = re.compile(
    r"\b(?:tapestry|darning|yarn|sewing|embroidery|wool)\s+needles?\b", re.IGNORECASE
)
EYES = re.compile(r"\beyes?\b(?! needle)|\bnoses?\b|\bbuttons?\b|\bbeads?\b", re.IGNORECASE)
"""Things told by their millimetres that are no tools."""
FILLING = re.compile(
    r"\bfill(?:ing|er)?\b|\bfib(?:re|er)fill\b|\bstuffing\b|\bgravel\b|\bbatting\b", re.I
)
AMOUNT = re.compile(
    r"\d\s?(?:g|gr|grams?|oz|ounces?|yds?|yards?|m|metres?|meters?|balls?|skeins?)\b", re.I
)
NEXT = re.compile(
    r"^\s*(?:gauge|tension|abbreviations?|notes?|sizes?|finished size|[A-Z][A-Z ]{3,})\s*:?\s*$"
)
ONLY_MEASURE = re.compile(
    r"set of (?:\d+|four|five)|(?:about )?[\d.½¼¾]+\s?"
    r"(?:mm|cm|m|metres?|meters?|yds?|yards?|in|inch|inches|\"|”)(?: \w+)?",
    re.I,
)
"""A measure alone, which belongs to the thing named before it: "a brass ring, 2 cm"."""
_AMOUNT_LATE = re.compile(r"(?<=[a-z])\s+(?=\d)")
_RUN_IN = re.compile(
    r"^(?:materials?|supplies|you (?:will )?need|what you need)\s*:\s*", re.IGNORECASE
)
LABEL = re.compile(r"^\s*(?:yarns?|wools?|threads?)\s*(?::\s*|$)", re.IGNORECASE)
"""What only says that a yarn comes."""
MORE_NEEDED = re.compile(
    r"^\s*(?:other|others|notions?|extras?|also|you will also need|haberdashery)\s*:\s*",
    re.IGNORECASE,
)
"""Lines outside a list that tell more things to gather."""
BULLET = re.compile(r"^\s*(?:[-–—•*]|\d+[.)](?=\s))\s*")
HEADING = re.compile(
    r"^\s*(?:materials?|supplies|you (?:will )?need|what you need)\s*:?\s*$", re.IGNORECASE
)
REMARK = re.compile(
    r"(?:(?:notes?|n\.?b\.?)\s*[:.-]|(?:gauge|tension|work|worked|do not|don't|read|see|please|"
    r"this|these|the (?:pattern|piece)|you can|all rounds|rounds? (?:is|are)|rows? (?:is|are))\b)",
    re.IGNORECASE,
)
"""How a sentence about the work begins that stands in a list of things."""


def gather(texts: tuple[str, ...], craft: str) -> tuple[GatherItem, ...]:
    """The things to gather, in the order written: yarn by colour and weight, hook or needle,
    notions.

    texts: materials as written, already for one size. kind: "yarn", "hook", "needle" or
    "notion". craft decides
    nothing but what a bare "size 4 mm" is. Words that name nothing known are a notion, kept as
    written.
    """
    items: list[GatherItem] = []
    for text in texts:
        for line in text.splitlines():
            plain = " ".join(BULLET.sub("", line).split()).rstrip(".")
            if plain and not HEADING.match(plain) and not REMARK.match(plain):
                items += _line(plain, craft)
    return tuple(items)


def remarks_among(texts: tuple[str, ...]) -> tuple[str, ...]:
    """The lines of a list that are no things to gather but sentences about the work."""
    lines = (BULLET.sub("", line).strip() for text in texts for line in text.splitlines())
    return tuple(line for line in lines if REMARK.match(line))


def materials_in(text: str) -> str:
    """The lines under a heading like "MATERIALS", up to the next empty line or heading; "" where
    none stands.
    """
    lines = text.splitlines()
    for at, line in enumerate(lines):
        if not HEADING.match(line):
            continue
        rest = lines[at + 1 :]
        while rest and not rest[0].strip():
            rest = rest[1:]
        end = next(
            (n for n, one in enumerate(rest) if not one.strip() or NEXT.match(one)), len(rest)
        )
        return "\n".join(rest[:end])
    return ""


def _line(line: str, craft: str) -> list[GatherItem]:
    body = _RUN_IN.sub("", line)
    things = re.split(r";\s*(?![^(\[]*[)\]])", body)
    if len(things) > 1:
        return [item for one in things if one.strip() for item in _line(one.strip(), craft)]
    kind = _kind(body, craft)
    pieces = _commas(body)
    if kind == "yarn":
        return [GatherItem("yarn", text, line) for text in _colours(body)]
    if len(pieces) == 1:
        return [GatherItem(kind, body, line)]
    return [GatherItem(_kind(piece, craft), piece, line) for piece in pieces]


def _kind(text: str, craft: str) -> str:
    if FILLING.search(text):
        return "notion"
    if EYES.search(text):
        return "notion"
    if SEWING.search(text) and not AMOUNT.search(text):
        return "notion"
    if HOOK.search(text):
        return "hook"
    if NEEDLE.search(text):
        return "needle"
    if YARN.search(text):
        return "yarn"
    if re.search(r"^\s*(?:size\s+)?\S+\s?mm\b", text):
        return "needle" if craft == "knitting" else "hook"
    return "notion"


def _colours(line: str) -> list[str]:
    """A yarn line with several colours, each with its amount, as one text a colour; else the line
    itself.
    """
    head, colon, tail = line.rpartition(":")
    pieces = _commas(tail if colon else line)
    if not colon and len(pieces) > 2 and not AMOUNT.search(pieces[0]):
        # "Worsted yarn, 100 g navy, 50 g gold": the first piece is what all have in common.
        head, colon, pieces = pieces[0], ",", pieces[1:]
    listed = colon and len(pieces) > 1 and sum(bool(AMOUNT.search(p)) for p in pieces) > 1
    if not listed:
        return [LABEL.sub("", line)]
    head = LABEL.sub("", head)
    if not head.strip():
        return [_AMOUNT_LATE.sub(", ", piece, count=1) for piece in pieces]
    return [f"{head.strip()}, {_AMOUNT_LATE.sub(', ', piece, count=1)}" for piece in pieces]


def _commas(text: str) -> list[str]:
    """The stretches between commas that stand outside brackets, without a leading "and"."""
    pieces = re.split(r"[,;](?![^(\[]*[)\]])(?!\d)", text)
    plain = [re.sub(r"^(?:and|plus)\s+", "", piece.strip()) for piece in pieces if piece.strip()]
    joined: list[str] = []
    for piece in plain:
        if joined and ONLY_MEASURE.fullmatch(piece) and not HOOK.search(piece):
            joined[-1] = f"{joined[-1]}, {piece}"
        else:
            joined.append(piece)
    return joined
