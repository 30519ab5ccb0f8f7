"""A counted pattern in, the plan of everything to be worked, in order, out."""

from __future__ import annotations

import hashlib
import re
from dataclasses import replace
from functools import partial

from reader.counts.counted import CountedPart, CountedPattern, CountedRow, Problem, Remark, Verdict
from reader.counts.worked import Move
from reader.plan.ahead import with_notices
from reader.plan.alike import one_at_a_time
from reader.plan.cautions import caution_rows, cautions
from reader.plan.colour_headings import under_their_headings
from reader.plan.colour_names import with_names
from reader.plan.colours import with_colours
from reader.plan.elsewhere import with_elsewhere
from reader.plan.finishing import FINISHING, finishing_apart, headed, making_up_apart
from reader.plan.gather import BULLET, MORE_NEEDED, gather, materials_in, remarks_among
from reader.plan.groups import cuts, phrase_starts
from reader.plan.lazily import Lazily
from reader.plan.orphans import orphans_in_place, without_listed
from reader.plan.own_key import own_key
from reader.plan.pairs import pair_wanted, paired, with_finishing_of_each
from reader.plan.place import Place
from reader.plan.sentences import sentences
from reader.plan.sizes import only_size
from reader.plan.step import Notice, Plan, PlanPart, PlanRow, Reading, RowKind, Step
from reader.plan.steps import steps, whole_step
from reader.text.span import Span

MOST_COPIED = 15_000
"""Rows of a part's copies that are unrolled; nobody lives to work more."""
MOST_COPIES = 999
"""Copies of a part that are unrolled; published rugs ask for 672 motifs, a slip of the pen for any
number.
"""

MOST_OPENING = 40
"""Words under the first heading that are said before the first row; more are the pattern's notes.
Our own judgement."""

MANY_MEANINGS = 3
"""Equal signs from which a note is a list of abbreviations, which the plan's key holds already."""

_LEAD = re.compile(r"(?!notes?:)[A-Za-z][A-Za-z ]{3,30}:", re.IGNORECASE)

_WORTH_SAYING = (Verdict.TOTAL_DISAGREES, Verdict.DOES_NOT_FIT, Verdict.UNCLEAR)


def make_plan(counted: CountedPattern, text: str) -> Plan:
    """The plan for the counted size: every copy of a part is a part of its own, remarks and
    finishing are rows.

    text: the pattern as the maker has it; only its words, not its spacing, make the
    fingerprint. Any counted
    pattern gives a plan; one without rows gives a plan without parts.
    """
    reading = Reading(
        counted.craft,
        counted.terms,
        own_key(counted.key),
        counted.size,
        counted.sizes,
    )
    counted = making_up_apart(headed(_lines_kept(counted, text), text))
    pair = pair_wanted(counted)
    counted = with_finishing_of_each(counted) if pair else finishing_apart(counted)
    needed = _materials(counted, text)
    counted = without_listed(counted, needed)
    counted = orphans_in_place(under_their_headings(counted, text), text)
    opening = _opening_of(counted, text)
    counted = replace(counted, notes=tuple(one for one in counted.notes if one not in opening))
    names, said = counted.sizes, cautions(text)
    parts = _opened(_all_parts(counted, reading), _said(opening, counted))
    things = gather(needed, counted.craft)
    parts = with_names(with_elsewhere(parts), things)
    return Plan(
        title=counted.title,
        craft=counted.craft,
        terms=counted.terms,
        size=names[counted.size] if 1 < len(names) > counted.size else "",
        sizes=names,
        parts=parts,
        gather=things,
        cautions=said,
        notes=_notes(counted, needed),
        gauge=_said(counted.gauge, counted),
        key=tuple(counted.key.items()),
        warnings=_warnings(counted.problems),
        fingerprint=fingerprint(text),
        caution_rows=caution_rows(said, parts),
    )


def fingerprint(text: str) -> str:
    """Sixteen letters and digits that tie progress to this text, however its lines are broken."""
    return hashlib.sha256(" ".join(text.split()).encode("utf-8", "replace")).hexdigest()[:16]


def _lines_kept(counted: CountedPattern, text: str) -> CountedPattern:
    """The pattern with the lists among its remarks in lines again, where the maker's text has them
    so.
    """

    def lined(remark: Remark) -> Remark:
        own = text[remark.span.start : remark.span.end]
        return replace(remark, text=own) if own.split() == remark.text.split() else remark

    return replace(
        counted,
        materials=tuple(lined(one) for one in counted.materials),
        notes=tuple(_labelled(lined(one), text) for one in counted.notes),
        gauge=tuple(lined(one) for one in counted.gauge),
        finishing=tuple(lined(one) for one in counted.finishing),
    )


def _labelled(note: Remark, text: str) -> Remark:
    """The note with the words that lead it in its line: "To fit chest: 86 cm" and not "86 cm"."""
    start = text.rfind("\n", 0, note.span.start) + 1
    lead = text[start : note.span.start].strip()
    return replace(note, text=f"{lead} {note.text}") if _LEAD.fullmatch(lead) else note


def _opening_of(counted: CountedPattern, text: str) -> tuple[Remark, ...]:
    """The notes that stand under the first part's heading, before its first row.

    "With grey." there is something to do at the first row, not something about the pattern.
    """
    part = counted.parts[0] if counted.parts else None
    if part is None or not part.name or not part.rows:
        return ()
    heading = text.rfind(part.name, 0, part.rows[0].span.start)
    first = part.rows[0].span.start
    under = tuple(note for note in counted.notes if 0 <= heading < note.span.start < first)
    return under if sum(len(note.text.split()) for note in under) <= MOST_OPENING else ()


def _opened(parts: tuple[PlanPart, ...], said: tuple[str, ...]) -> tuple[PlanPart, ...]:
    """The parts with these sentences said when the first row begins."""
    if not said:
        return parts
    where = Place(0, 0, 0)
    heading = Remark("note", " ".join(said), Span(0, 0, 0))
    led = _remark_row(heading, heading.text, where, parts[0].rows[0].reading)
    # The colour that is named here is the one the first rows are worked in.
    first, *rest = with_colours((led, *parts[0].rows))[1:]
    notices = (*(Notice("opening", words) for words in said), *first.notices)
    rows = (replace(first, notices=notices), *rest)
    return (replace(parts[0], rows=rows), *parts[1:])


def _texts(remarks: tuple[Remark, ...], counted: CountedPattern) -> tuple[str, ...]:
    return tuple(only_size(remark.text, counted.size, counted.sizes) for remark in remarks)


def _materials(counted: CountedPattern, text: str) -> tuple[str, ...]:
    """The list under the heading for materials as the maker has it, else what was read as
    materials.
    """
    listed = materials_in(text)
    if listed:
        return (only_size(listed, counted.size, counted.sizes),)
    more = tuple(note for note in counted.notes if MORE_NEEDED.match(note.text))
    told = _texts((*counted.materials, *more), counted)
    return tuple(MORE_NEEDED.sub("", text) for text in told)


def _notes(counted: CountedPattern, needed: tuple[str, ...]) -> tuple[str, ...]:
    """What the pattern says first: without pieces of the list of what is needed, with the sentences
    that stand in that list.
    """
    lines = (BULLET.sub("", line) for one in needed for line in one.splitlines())
    listed, among = " ".join(" ".join(lines).split()), remarks_among(needed)
    own = tuple(
        one
        for one in counted.notes
        if " ".join(MORE_NEEDED.sub("", _texts((one,), counted)[0]).split()) not in listed
    )
    said = _said(own, counted)
    told = (line for text in among for line in sentences(text))
    whole = (*said, *(line for line in told if line not in said))
    return tuple(line for line in whole if line not in counted.sizes)


def _said(remarks: tuple[Remark, ...], counted: CountedPattern) -> tuple[str, ...]:
    texts = [text for text in _texts(remarks, counted) if text.count(" = ") < MANY_MEANINGS]
    return tuple(line for text in texts for line in sentences(text))


def _warnings(problems: tuple[Problem, ...]) -> tuple[str, ...]:
    """The first faults; their echoes further down would only be the same again."""
    return tuple(problem.message for problem in problems if problem.verdict in _WORTH_SAYING)


def _all_parts(counted: CountedPattern, reading: Reading) -> tuple[PlanPart, ...]:
    made = _copies(counted, reading, 0)
    if pair_wanted(counted):
        made = paired(made, _copies(counted, reading, len(made)))
    for kind in ("finishing", "assembly", ""):
        rows = _finishing(counted, kind, len(made), reading)
        if rows:
            made.append(PlanPart("Assembly" if kind == "assembly" else "Finishing", 1, 1, rows))
    return tuple(made)


def _copies(counted: CountedPattern, reading: Reading, index: int) -> list[PlanPart]:
    """Every copy of every part, the first of them with this index."""
    made: list[PlanPart] = []
    for written in counted.parts:
        part = replace(written, rows=one_at_a_time(written.rows))
        copies = max(1, min(part.make, MOST_COPIES))
        first = index + len(made)
        for copy in range(1, 1 + min(copies, max(1, MOST_COPIED // max(1, len(part.rows))))):
            rows = _rows(part, index + len(made), counted, reading)
            if rows:
                made.append(PlanPart(part.name, copy, copies, rows, None if copy == 1 else first))
    return made


def _rows(
    part: CountedPart, index: int, counted: CountedPattern, reading: Reading
) -> tuple[PlanRow, ...]:
    """The rows of one copy, remarks in their places, each with what must be known before it."""
    made: list[PlanRow] = []
    last = len(part.rows)
    before: dict[int, list[Remark]] = {}
    for note in part.notes:
        at = last if note.before_row is None else min(max(note.before_row, 0), last)
        before.setdefault(at, []).append(note)
    warned = _problems_by_row(part, counted.problems)
    for number in range(last + 1):
        for note in before.get(number, []):
            for line in sentences(only_size(note.text, counted.size, counted.sizes)):
                made.append(_remark_row(note, line, Place(index, len(made), 0), reading))
        if number < last:
            warning = warned.get(number, "")
            made.append(_work_row(part.rows[number], Place(index, len(made), 0), reading, warning))
    return with_notices(with_colours(tuple(made)), part.name)


def _remark_row(note: Remark, line: str, where: Place, reading: Reading) -> PlanRow:
    kinds = {
        "finishing": RowKind.FINISH,
        "assembly": RowKind.FINISH,
        "unread": RowKind.UNREAD,
    }
    kind = kinds.get(note.kind, RowKind.REMARK)
    step = whole_step(where, line, None, unread=kind is RowKind.UNREAD)
    return PlanRow(kind, "", None, False, line, None, None, (step,), (0,), reading=reading)


def _finishing(
    counted: CountedPattern, kind: str, index: int, reading: Reading
) -> tuple[PlanRow, ...]:
    """Finishing or assembly as rows, one sentence a row; kind "" gathers what is neither."""
    texts = [
        only_size(remark.text, counted.size, counted.sizes)
        for remark in counted.finishing
        if (remark.kind == kind if kind else remark.kind not in FINISHING)
    ]
    made: list[PlanRow] = []
    for line in (line for text in texts for line in sentences(text)):
        number = len(made) + 1
        step = whole_step(Place(index, len(made), 0), line, None)
        label = f"Step {number}"
        made.append(
            PlanRow(
                RowKind.FINISH,
                label,
                number,
                False,
                line,
                None,
                None,
                (step,),
                (0,),
                reading=reading,
            )
        )
    return tuple(made)


def _work_row(row: CountedRow, where: Place, reading: Reading, warning: str) -> PlanRow:
    words = " ".join(row.written.split())
    if row.moves:
        cut = partial(cuts, row.moves)
        groups = Lazily(partial(_groups, row.moves, where, row.count))
        phrases = Lazily(lambda: phrase_starts(cut()))
    else:
        whole = whole_step(where, words, row.count)
        groups = Lazily(lambda: (whole,))
        phrases = Lazily(lambda: (0,))
    return PlanRow(
        kind=RowKind.WORK,
        label=row.label,
        number=row.number,
        is_round=row.is_round,
        written=words,
        count_before=row.before,
        count=row.count,
        groups=groups,
        phrases=phrases,
        warning=warning,
        side=row.side,
        colour=row.colour,
        of=row.of if row.groups is None and row.stated in (None, row.count) else "",
        assumed=row.assumed,
        reading=reading,
        groups_made=row.groups,
        group=row.of if row.groups is not None else "",
    )


def _groups(moves: tuple[Move, ...], where: Place, count: int | None) -> tuple[Step, ...]:
    return steps(moves, cuts(moves), where, count)


def _problems_by_row(part: CountedPart, problems: tuple[Problem, ...]) -> dict[int, str]:
    """Row index -> what does not add up there, first fault first; by label, else by where the
    words stand.
    """
    found: dict[int, str] = {}
    for problem in problems:
        if problem.verdict not in _WORTH_SAYING or problem.part not in ("", part.name):
            continue
        for number, row in enumerate(part.rows):
            inside = row.span.start <= problem.span.start < max(row.span.end, row.span.start + 1)
            if number not in found and inside and problem.label in ("", row.label):
                found[number] = problem.message
                break
    return found
