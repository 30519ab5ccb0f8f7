"""Words below a heading without rows in, a part of their own out, so that they are not read first.

"Right mitt: work as left mitt" and "Foot: work even until it measures 18 cm" hold no row that could
be counted, and are worked all the same.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.counts.counted import CountedPart, CountedPattern, Remark

_HEADING = re.compile(r"[A-Z][A-Za-z'’ -]{1,40}(?:\((?:make|work|knit) \d+\))?:?")
"""A line that can be a heading: a few words, no stop at their end."""
_AGAIN = re.compile(
    r"(?:work(?:ed)?|make|made|knit|crochet)?\s*(?:exactly )?(?:the )?(?:same )?"
    r"as (?:for )?(?:the )?(?P<name>[A-Za-z][A-Za-z ]*?)",
    re.IGNORECASE,
)
"""Words that ask for another part once more and nothing else: "work same as front"."""
LONGEST_HEADING = 5
"""Words of a heading at most."""


def orphans_in_place(counted: CountedPattern, text: str) -> CountedPattern:
    """The pattern with its notes that stand below a heading behind the first row as parts, in the
    order of the text; other notes stay the pattern's own.
    """
    first = min((row.span.start for part in counted.parts for row in part.rows), default=None)
    if first is None:
        return counted
    made: dict[int, CountedPart] = {}
    for note in counted.notes:
        name = heading_line(text[: note.span.start]) if note.span.start > first else ""
        if name and name not in (part.name for part in counted.parts):
            made[note.span.start] = _below(name, note, counted.parts)
    if not made:
        return counted
    at = [(_start(part), part) for part in counted.parts]
    parts = sorted([*at, *made.items()], key=lambda one: one[0])
    left = tuple(one for one in counted.notes if one.span.start not in made)
    return replace(counted, parts=tuple(part for _, part in parts), notes=left)


def _below(name: str, note: Remark, parts: tuple[CountedPart, ...]) -> CountedPart:
    """The part of a heading with words alone; where these ask for no more than the part right
    before again, with that part's rows.
    """
    before = max((part for part in parts if _start(part) < note.span.start), key=_start)
    asked = _AGAIN.fullmatch(note.text.strip(" .!"))
    if asked is None or asked["name"].lower() != before.name.lower() or before.make > 1:
        return CountedPart(name, 1, (), (replace(note, before_row=None),))
    return CountedPart(name, 1, before.rows, (replace(note, before_row=0), *before.notes))


def heading_line(before: str) -> str:
    """The heading in the last line of a text, "" where that is none."""
    above = before.rstrip().rpartition("\n")[2].strip()
    if not _HEADING.fullmatch(above) or len(above.split()) > LONGEST_HEADING:
        return ""
    return above.rstrip(":").strip()


def without_listed(counted: CountedPattern, needed: tuple[str, ...]) -> CountedPattern:
    """The pattern without parts that are lines of the list of what is needed, taken for a heading;
    the words that stood below them, where nothing is counted, are the pattern's notes.
    """
    lines = {" ".join(line.split()) for text in needed for line in text.splitlines()}
    whole = " ".join(" ".join(needed).split())
    listed = [
        part
        for part in counted.parts
        if part.name in lines and all(row.count is None for row in part.rows)
    ]
    words = tuple(
        Remark("note", row.written, row.span)
        for part in listed
        for row in part.rows
        if " ".join(row.written.split()) not in whole
    )
    kept = tuple(part for part in counted.parts if part not in listed)
    return replace(counted, parts=kept, notes=(*counted.notes, *words))


def _start(part: CountedPart) -> int:
    spans = [row.span.start for row in part.rows] + [note.span.start for note in part.notes]
    return min(spans, default=0)
