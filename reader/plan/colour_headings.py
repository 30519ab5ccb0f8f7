"""Parts named by a line such as "With black:" in, the same under their own headings out."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.counts.counted import CountedPart, CountedPattern, Remark
from reader.plan.orphans import heading_line
from reader.text.span import Span

_COLOUR = re.compile(r"(?:with|using|in|starting with) [a-z0-9 -]{1,30}", re.IGNORECASE)
_MAKE = re.compile(
    r"\s*\(?\s*\b(?:make|work|knit|crochet)\s+(?P<many>\d{1,3})\b\s*\)?", re.IGNORECASE
)


def under_their_headings(counted: CountedPattern, text: str) -> CountedPattern:
    """The pattern with such parts named, and made as often, as the heading above that line says;
    the line itself is read first.

    Where no heading stands above it the part keeps its name.
    """
    parts, problems = [], counted.problems
    for part in counted.parts:
        named = part
        if part.rows and _COLOUR.fullmatch(part.name.strip()):
            named = _headed(part, text)
            inside = range(part.rows[0].span.start, part.rows[-1].span.end + 1)
            problems = tuple(
                replace(one, part=named.name)
                if one.part == part.name and one.span.start in inside
                else one
                for one in problems
            )
        parts.append(named)
    return replace(counted, parts=tuple(parts), problems=problems)


def _headed(part: CountedPart, text: str) -> CountedPart:
    line = text.rfind(part.name, 0, part.rows[0].span.start)
    heading = heading_line(text[:line]) if line >= 0 else ""
    name = _MAKE.sub("", heading).strip(" :-,")
    if not name:
        return part
    found = _MAKE.search(heading)
    many = int(found["many"]) if found else part.make
    lead = Remark("note", f"{part.name.strip()}.", Span(line, line + len(part.name), 0), 0)
    return replace(part, name=name, make=many, notes=(lead, *part.notes))
