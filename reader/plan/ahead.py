"""The rows of a part in, the same rows with what must be known before each of them out."""

from __future__ import annotations

import re
from bisect import bisect_left
from dataclasses import replace

from reader.plan.alike import alike_told
from reader.plan.sizes import only_size
from reader.plan.step import Notice, PlanRow, RowKind

COLOUR_AHEAD = 2
"""Work rows before a colour change at which it is first named. Our own judgement."""

MARKER_AGAIN = 6
"""Work rows after which a marker is named again. Our own judgement."""

CLOSING = 10
"""Stitches at which a hollow piece can hardly be filled any more. Our own judgement."""

TOOL = re.compile(
    r"\bchange (?:back )?to (?:the )?(?:[\w.]+ ){0,3}?(?:needles?|hooks?|dpns?|"
    r"double[- ]pointed(?: needles?)?)\b",
    re.IGNORECASE,
)
DECREASE = re.compile(
    r"\bdec|\d\s?tog|\btog(?:ether)?\b|\bssk|\bssp|\bskp|\bsk2p|\bs2kp|\bcdd|\bpsso|\bp\.s\.s\.o|"
    r"\bnarrow|\bmiss\b|"
    r"\bbind off|\bBO\b|\bcast off|\binv",
    re.IGNORECASE,
)
GOES_ON = re.compile(r"\b(?:work even|continue|cont|repeat|rep|work straight)\b", re.IGNORECASE)
SAME_TIME = re.compile(r"\bat (?:the )?same time\b", re.IGNORECASE)
MEASURE = re.compile(
    r"\buntil\b[^.;]*?\bmeasures?\b[^.;]*|\bmeasures?\b[^.;]*|\buntil\b[^.;]*?\b(?:long|tall|"
    r"wide|from)\b",
    re.IGNORECASE,
)
REPEATED = re.compile(
    r"\b(?:rep|repeat|repeating)\b (?:the )?(?:last )?(?P<noun>rows?|rounds?|rnds?)\.? "
    r"(?P<first>\d+)(?:\s*(?P<last>-|–|to|and|&|,))?",
    re.IGNORECASE,
)
LENGTH = re.compile(r"\d[\d./½¼¾⅓⅔⅛ ]*\s?(?:\"|”|″|in\b|inch|cm\b|mm\b)", re.IGNORECASE)
MARKER = re.compile(
    r"\bplace (?:a |the )?(?:stitch )?markers?\b|\bPM\b|\bmark the first\b", re.IGNORECASE
)
MARKER_EXACT = re.compile(r"\bpm\b")
TAIL = re.compile(
    r"\blong (?:tail|end)|\b(?:leav(?:e|ing)) (?:an? )?[^.;,]{0,24}(?:tail|end)\b", re.IGNORECASE
)
FILL = re.compile(r"\bstuff|\bfill(?:ing)?\b|\beyes\b|\bpellets\b", re.IGNORECASE)


def with_notices(rows: tuple[PlanRow, ...], part: str) -> tuple[PlanRow, ...]:
    """The rows with their notices; every notice stands at or before the row that it affects,
    never after.

    part: the part's name, said with its last row.
    """
    worked = [index for index, row in enumerate(rows) if row.kind is RowKind.WORK]
    if not worked:
        return rows
    found: dict[int, list[Notice]] = {}
    for finder in (
        _colours,
        _same_time,
        _measures,
        _markers,
        _turns,
        _decreases,
        _tails,
        _filling,
        _tools,
        alike_told,
    ):
        for index, notice in finder(rows, worked):
            if notice not in found.setdefault(index, []):
                found[index].append(notice)
    last = _last_row(rows, worked, part)
    if last:
        found.setdefault(worked[-1], []).append(last)
    return tuple(
        replace(row, notices=tuple(found[index])) if index in found else row
        for index, row in enumerate(rows)
    )


LONGEST_NAME = 4
"""Words of a part's name that are said with its last row; a longer one is the pattern's title."""
_DEED = re.compile(
    r"(?:shape|work|make|making|join|sew|decrease|increase|divide|turn|with|using|change)\b",
    re.IGNORECASE,
)
"""A heading that tells what is done names no thing that could have a last row."""

Found = list[tuple[int, Notice]]


def _noun(row: PlanRow) -> str:
    return "round" if row.is_round else "row"


def _coming(rows: tuple[PlanRow, ...], worked: list[int], at: int, ahead: int) -> str:
    """ "in the next row" or "in two rows", as seen `ahead` work rows before the at-th work row."""
    noun = _noun(rows[worked[at]])
    return f"in the next {noun}" if ahead == 1 else f"in {ahead} {noun}s"


def _before(worked: list[int], index: int) -> int:
    """How many work rows stand before the row at `index`."""
    return bisect_left(worked, index)


def _colours(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    found: Found = []
    changes = _changes(rows, worked)
    for at, colour in changes:
        for ahead in (COLOUR_AHEAD, 1):
            busy = any(at - ahead <= other < at for other, _ in changes)
            if at - ahead < 0 or (ahead == COLOUR_AHEAD and busy):
                continue
            text = f"{colour} comes {_coming(rows, worked, at, ahead)}"
            found.append(
                (worked[at - ahead], Notice("colour", f"Colour change ahead: {text}.", ahead))
            )
    return found


def _changes(rows: tuple[PlanRow, ...], worked: list[int]) -> list[tuple[int, str]]:
    """(which work row, its new colour) for every work row after the first that begins in another
    colour.
    """
    found: list[tuple[int, str]] = []
    now = rows[worked[0]].colour
    for at, index in enumerate(worked[1:], start=1):
        colour = rows[index].colour
        if colour and colour != now:
            found.append((at, colour))
            now = colour
    return found


def _same_time(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    """Named at the row before the words and at the first row after them, and at the first row of
    the part.
    """
    found: Found = []
    for index, row in enumerate(rows):
        if not SAME_TIME.search(row.written):
            continue
        before = _before(worked, index)
        what = _bare(only_size(row.written, row.reading.size, row.reading.sizes))
        text = f"Two things go on at the same time here: {what}"
        places = {worked[max(0, before - 1)], worked[min(before, len(worked) - 1)]}
        found += [(at, Notice("same time", text, 1 if at < index else 0)) for at in sorted(places)]
        if before > 1:
            # What goes on meanwhile may begin long before the line that tells of it.
            ahead = Notice(
                "same time", f"Further on in this part, at the same time: {what}", before
            )
            found.append((worked[0], ahead))
    return found


def _bare(written: str) -> str:
    """The words without a leading "at the same time", which is said already."""
    start = SAME_TIME.match(written)
    return written[start.end() :].lstrip(" ,:") if start else written


def _measures(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    found: Found = []
    for index, row in enumerate(rows):
        words = _length(row)
        if not words:
            continue
        before = _before(worked, index)
        text = f"Measure here, do not count rows: {words}."
        if row.kind is RowKind.WORK:
            found.append((index, Notice("measure", _again(row, rows) or text, 0)))
        if before > 0:
            found.append(
                (
                    worked[before - 1],
                    Notice("measure", f"Next, a length in place of a count. {text}", 1),
                )
            )
    return found


def _length(row: PlanRow) -> str:
    """The words of a row that name a length to be measured, in the chosen size; "" for none."""
    written = only_size(row.written, row.reading.size, row.reading.sizes)
    words = MEASURE.search(written)
    return words.group().strip() if words and LENGTH.search(written) else ""


def _again(row: PlanRow, rows: tuple[PlanRow, ...]) -> str:
    """How to hear the rows again that are repeated until a length is reached; "" where they bear no
    number here.
    """
    named = REPEATED.search(row.written)
    if named is None or not any(one.number == int(named["first"]) for one in rows):
        return ""
    noun = "row" if named["noun"].lower().startswith("row") else "round"
    s = "s" if named["last"] else ""
    return (
        f"Measure here, do not count. To hear the {noun}{s} again, say go to {noun} "
        f"{named['first']}; next goes on."
    )


def _markers(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    found: Found = []
    last = -MARKER_AGAIN
    for at, index in enumerate(worked):
        row = rows[index]
        wanted = MARKER.search(row.written) or MARKER_EXACT.search(row.written)
        if not wanted or at - last < MARKER_AGAIN:
            continue
        last = at
        if at == 0:
            found.append((index, Notice("marker", "Have a stitch marker ready.", 0)))
        else:
            text = f"You need a stitch marker {_coming(rows, worked, at, 1)}."
            found.append((worked[at - 1], Notice("marker", text, 1)))
    return found


def _turns(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    """The first turned row after rows that were not turned."""
    earlier = False
    for index in worked:
        if re.search(r"\bturn\b", rows[index].written, re.IGNORECASE):
            text = f"From this {_noun(rows[index])} on, the work is turned."
            return [(index, Notice("turn", text, 0))] if earlier else []
        earlier = earlier or rows[index].number is not None
    return []


def _decreases(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    """The first row that has fewer stitches than the one before it, named one row earlier."""
    for at, index in enumerate(worked):
        row = rows[index]
        fewer = row.count and row.count_before and row.count < row.count_before
        if at == 0 and fewer and DECREASE.search(row.written):
            return []  # They begin with the part; said later it would be wrong.
        if at > 0 and fewer and DECREASE.search(row.written):
            text = f"The decreases begin {_coming(rows, worked, at, 1)}."
            return [(worked[at - 1], Notice("decreases", text, 1))]
    return []


def _tails(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    """A long tail is named with the row before the words, and at the start where they stand
    first.
    """
    found: Found = []
    for index, row in enumerate(rows):
        words = TAIL.search(row.written)
        if not words:
            continue
        before = _before(worked, index)
        at = worked[before - 1] if before else worked[0]
        when = "at the end" if before and row.kind is not RowKind.WORK else "here"
        if row.kind is RowKind.WORK:
            at = index
        found.append((at, Notice("tail", f"Leave a long tail {when}.", int(at < index))))
    return found


def _filling(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    """Stuffing and eyes go in before the piece closes: named two rows before it does.

    A piece that is open where it begins, as a cap is, is filled only where the words say so.
    """
    counts = [rows[index].count for index in worked]
    widest = max((count for count in counts if count), default=0)
    last = counts[-1]
    if not last or last > CLOSING or widest < 2 * CLOSING or len(worked) < 4:
        return []
    asked = any(FILL.search(row.written) for row in rows)
    hollow = (counts[0] or last) <= CLOSING
    if not asked and not hollow:
        return []
    words = (
        "Stuff it before it closes" if asked else "If it is to be stuffed, do it before it closes"
    )
    text = f"{words}, and fix anything that needs the inside, such as eyes."
    return [(worked[-3], Notice("filling", text, 2))]


def _tools(rows: tuple[PlanRow, ...], worked: list[int]) -> Found:
    """Another hook or other needles are named one row before they are wanted."""
    found: Found = []
    for index, row in enumerate(rows):
        words = TOOL.search(row.written)
        before = _before(worked, index)
        if words and before:
            deed = words.group()[:1].lower() + words.group()[1:]
            text = (
                f"Have the next tool ready: after this {_noun(rows[worked[before - 1]])}, {deed}."
            )
            found.append((worked[before - 1], Notice("tool", text, 1)))
    return found


def _last_row(rows: tuple[PlanRow, ...], worked: list[int], part: str) -> Notice | None:
    after = " ".join(row.written for row in rows[worked[-1] + 1 :])
    if _length(rows[worked[-1]]):
        return None  # It stands for as many rows as the measure takes.
    if len(worked) < 3 or MEASURE.search(after) or GOES_ON.search(after):
        return None
    unsaid = _DEED.match(part) or len(part.split()) > LONGEST_NAME
    plain = "" if unsaid else re.sub(r"\s*\([^)]*\)", "", part.lower()).removeprefix("the ")
    name = f" of the {plain}" if plain else ""
    return Notice("last", f"This is the last {_noun(rows[worked[-1]])}{name}.", 0)
