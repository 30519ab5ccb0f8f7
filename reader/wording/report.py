"""CountedPattern -> the report for a designer's tester: counts, what was assumed, faults."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from reader.counts.counted import CountedPart, CountedPattern, CountedRow, Problem, Verdict

WRONG = (Verdict.TOTAL_DISAGREES, Verdict.DOES_NOT_FIT)


def report_lines(counted: CountedPattern) -> Iterator[str]:
    """The report, line by line, in plain sentences."""
    yield counted.title or "A pattern without a title"
    terms = f", {counted.terms} terms ({counted.terms_why})" if counted.craft == "crochet" else ""
    yield f"Read as {counted.craft}{terms}."
    if len(counted.sizes) > 1:
        yield f"Size: {counted.sizes[counted.size]} (of {', '.join(counted.sizes)})."
    for said in counted.assumed:
        yield f"assumed: {said}"
    for part in counted.parts:
        yield ""
        yield (
            part.name + (f" (make {part.make})" if part.make > 1 else "")
            if part.name
            else "The piece"
        )
        yield from _rows(part)
    yield ""
    yield from _problems(counted)


def _rows(part: CountedPart) -> Iterator[str]:
    at = 0
    rows = part.rows
    while at < len(rows):
        end = at
        while (
            end + 1 < len(rows)
            and rows[end + 1].number
            and rows[end].number
            and _alike(rows[at], rows[end + 1])
        ):
            end += 1
        first, last = rows[at], rows[end]
        label = first.label if end == at else f"{first.label} to {last.number}"
        count = (
            "not counted"
            if first.count is None
            else f"{first.count} stitch{'es' if first.count != 1 else ''}"
        )
        if first.groups is not None:
            count = f"{first.groups} {first.of} ({count})"
        spaces = f", {first.spaces} chain spaces" if first.spaces else ""
        stated = (
            f", printed {first.stated}"
            if first.stated not in (None, first.count, first.groups)
            else ""
        )
        yield f"  {label}: {count}{spaces}{stated}"
        for said in first.assumed:
            yield f"    assumed: {said}"
        at = end + 1


def _alike(a: CountedRow, b: CountedRow) -> bool:
    return (
        a.count == b.count
        and a.groups == b.groups
        and a.spaces == b.spaces
        and a.stated == b.stated
        and a.assumed == b.assumed
        and a.is_round == b.is_round
    )


def _problems(counted: CountedPattern) -> Iterator[str]:
    wrong = [one for one in counted.problems if one.verdict in WRONG]
    asked = [one for one in counted.problems if one.verdict is Verdict.UNCLEAR]
    echoes = [one for one in counted.problems if one.verdict is Verdict.ECHO]
    for head, group in (("To mend", wrong), ("To ask", asked)):
        if group:
            yield f"{head}:"
            for one in group:
                where = f"{one.part}, " if one.part else ""
                yield f"  line {one.span.line}: {where}{one.message}"
    if echoes:
        yield "Echoes of the above:"
        for _, alike in groupby(echoes, lambda one: (one.part, one.span)):
            yield _echoes(list(alike))
    if not counted.problems:
        yield "Nothing wrong was found."


def _echoes(alike: list[Problem]) -> str:
    """One line for the rows that repeat the same words."""
    first, last = alike[0], alike[-1]
    where = f"{first.part}, " if first.part else ""
    if len(alike) == 1:
        return f"  line {first.span.line}: {where}{first.message}"
    rows = f"{len(alike)} rows from {first.label} to {last.label}"
    return f"  line {first.span.line}: {where}{rows} repeat the words above."


def wrong_in(counted: CountedPattern) -> bool:
    """Whether any printed total or stitch count is wrong."""
    return any(one.verdict in WRONG for one in counted.problems)
