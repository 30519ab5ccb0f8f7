"""Finishing and making up, which are for the whole piece, apart from the part they stand behind."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.counts.counted import CountedPart, CountedPattern, Remark

FINISHING = ("finishing", "assembly")
"""Kinds of remarks that are for the whole piece."""
HEADING = re.compile(
    r"^\W*(?P<name>(?:to )?(?:making|make) up|(?:to )?finish(?:ing)?|assembly)\b\W*", re.IGNORECASE
)


def finishing_apart(counted: CountedPattern) -> CountedPattern:
    """The pattern with the finishing that stands after the last part's rows taken out of that part,
    and with it all that follows, in its order.

    It is for the whole piece and is not worked with every copy of the part it happens to follow. A
    last part that is the making up keeps it.
    """
    if not counted.parts or not counted.parts[-1].rows or HEADING.match(counted.parts[-1].name):
        return counted
    last = counted.parts[-1]
    end = len(last.rows)
    behind = tuple(one for one in last.notes if one.before_row is None or one.before_row >= end)
    starts = [one.span.start for one in behind if one.kind in FINISHING]
    if not starts:
        return counted
    apart = tuple(
        one if one.kind in FINISHING else replace(one, kind=FINISHING[0])
        for one in behind
        if one.kind in FINISHING or one.span.start > min(starts)
    )
    moved = {(one.span, one.text) for one in apart}
    kept = tuple(one for one in last.notes if (one.span, one.text) not in moved)
    parts = (*counted.parts[:-1], replace(last, notes=kept))
    whole = sorted((*apart, *counted.finishing), key=lambda one: one.span.start)
    return replace(counted, parts=parts, finishing=tuple(whole))


def headed(counted: CountedPattern, text: str) -> CountedPattern:
    """The pattern with the words below a heading such as "To make up", behind the last part's rows,
    known as finishing.
    """
    if not counted.parts:
        return counted
    last = counted.parts[-1]
    end = len(last.rows)
    starts = [
        note.span.start
        for note in last.notes
        if (note.before_row is None or note.before_row >= end)
        and HEADING.fullmatch(text[: note.span.start].rstrip().rpartition("\n")[2].strip())
    ]
    if not starts:
        return counted
    notes = tuple(
        replace(one, kind=FINISHING[0]) if one.span.start >= min(starts) else one
        for one in last.notes
    )
    return replace(counted, parts=(*counted.parts[:-1], replace(last, notes=notes)))


def making_up_apart(counted: CountedPattern) -> CountedPattern:
    """The pattern with the rows behind "Making up" in a part of their own.

    Rows worked there, such as a neckband, are for the whole piece and not for each copy of the part
    they happen to follow.
    """
    for index, part in enumerate(counted.parts):
        heading = _heading(part)
        if heading is not None:
            parts = counted.parts
            own, made_up = _cut(part, heading)
            told = tuple(
                replace(one, part=made_up.name)
                if one.part == part.name and one.span.start >= heading.span.start
                else one
                for one in counted.problems
            )
            whole = (*parts[:index], own, made_up, *parts[index + 1 :])
            return replace(counted, parts=whole, problems=told)
    return counted


def _heading(part: CountedPart) -> Remark | None:
    """The remark that begins the making up, where rows of the part stand behind it."""
    for note in part.notes:
        inside = note.before_row is not None and 0 < note.before_row < len(part.rows)
        if inside and note.kind in FINISHING and HEADING.match(note.text):
            return note
    return None


def _cut(part: CountedPart, heading: Remark) -> tuple[CountedPart, CountedPart]:
    """The part up to the heading, and what is behind it."""
    at = heading.before_row or 0
    before, behind = [], []
    for note in part.notes:
        if note is heading:
            found = HEADING.match(note.text)
            plain = note.text[found.end() :] if found else note.text
            behind.append(replace(note, text=plain, before_row=0))
        elif note.span.start < heading.span.start:
            before.append(note)
        else:
            row = None if note.before_row is None else max(0, note.before_row - at)
            behind.append(replace(note, before_row=row))
    found = HEADING.match(heading.text)
    name = " ".join(found["name"].split()).capitalize() if found else "Making up"
    own = replace(part, rows=part.rows[:at], notes=tuple(before))
    return own, CountedPart(name, 1, part.rows[at:], tuple(one for one in behind if one.text))
