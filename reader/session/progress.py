"""Progress: a state as plain values to be kept, and back; strange values are left out."""

from __future__ import annotations

from reader.commands.command import Ask
from reader.plan import find
from reader.plan.pace import Pace
from reader.plan.place import Place
from reader.plan.step import Plan
from reader.session.state import Mark, Mode, Moved, Note, State

VERSION = 1


def to_plain(state: State, today: str = "") -> dict[str, object]:
    """Everything worth keeping, as plain values."""
    return {
        "version": VERSION,
        "title": state.plan.title,
        "size": state.plan.size,
        "saved_on": today,
        "place": _place(state.place),
        "marks": [
            {"name": one.name, "place": _place(one.place), "lifeline": one.lifeline}
            for one in state.marks
        ],
        "notes": [
            {"name": one.name, "place": _place(one.place), "words": one.words}
            for one in state.notes
        ],
        "timing": state.timing,
        "counting": [state.tally, state.tally_by] if state.mode is Mode.COUNTING else [],
        "journal": [
            {"before": _place(one.before), "after": _place(one.after), "ask": one.ask.value}
            for one in state.journal[-20:]
        ],
        "pace": [[kind, list(samples)] for kind, samples in state.pace.kinds],
        "learned": state.pace.learned,
        "cautions_told": sorted(state.cautions_told),
        "ticked": sorted(state.ticked),
        "finished": state.finished,
    }


def _place(place: Place) -> list[int]:
    return [place.part, place.row, place.step]


def _read_place(raw: object, plan: Plan) -> Place | None:
    if isinstance(raw, list) and len(raw) == 3 and all(isinstance(n, int) for n in raw):
        return find.nearest(plan, Place(*raw))
    return None


def from_plain(plan: Plan, saved: dict[str, object]) -> State | None:
    """The state that was kept, for this plan; None where it holds no place."""
    place = _read_place(saved.get("place"), plan)
    if place is None:
        return None
    marks = [
        Mark(str(one.get("name", "mark")), spot, bool(one.get("lifeline")))
        for one in _dicts(saved, "marks")
        if (spot := _read_place(one.get("place"), plan))
    ]
    tally, by = _counting(saved)
    return State(
        plan,
        place,
        mode=Mode.COUNTING if by else Mode.STEP,
        tally=tally,
        tally_by=by or 1,
        marks=tuple(marks),
        notes=tuple(
            Note(spot, str(one.get("name", "note")), str(one.get("words", "")))
            for one in _dicts(saved, "notes")
            if (spot := _read_place(one.get("place"), plan))
        ),
        timing=bool(saved.get("timing")),
        journal=_journal(saved, plan),
        pace=_pace(saved),
        cautions_told=_indices(saved, "cautions_told", len(plan.cautions)),
        ticked=_indices(saved, "ticked", len(plan.gather)),
        finished=bool(saved.get("finished")),
    )


def _journal(saved: dict[str, object], plan: Plan) -> tuple[Moved, ...]:
    known = {ask.value: ask for ask in Ask}
    moves = []
    for one in _dicts(saved, "journal"):
        before, after = _read_place(one.get("before"), plan), _read_place(one.get("after"), plan)
        ask = known.get(str(one.get("ask")))
        if before and after and ask:
            moves.append(Moved(-1e9, before, after, ask))
    return tuple(moves)


def _counting(saved: dict[str, object]) -> tuple[int, int]:
    """The tally and what each word counts; (0, 0) where nothing was being counted."""
    raw = saved.get("counting")
    if isinstance(raw, list) and len(raw) == 2 and all(isinstance(n, int) for n in raw):
        return (raw[0], raw[1]) if raw[0] >= 0 and raw[1] in (1, 5, 10) else (0, 0)
    return 0, 0


def _indices(saved: dict[str, object], name: str, many: int) -> frozenset[int]:
    raw, there = saved.get(name), range(many)
    return frozenset(n for n in raw if n in there) if isinstance(raw, list) else frozenset()


def _pace(saved: dict[str, object]) -> Pace:
    raw, learned = saved.get("pace"), saved.get("learned")
    pairs = raw if isinstance(raw, list) else []
    kinds = tuple(
        (str(one[0]), tuple(float(v) for v in one[1] if isinstance(v, int | float)))
        for one in pairs
        if isinstance(one, list) and len(one) == 2 and isinstance(one[1], list)
    )
    return Pace(kinds, learned if isinstance(learned, int) else 0)


def _dicts(saved: dict[str, object], name: str) -> list[dict[str, object]]:
    raw = saved.get(name)
    return [one for one in raw if isinstance(one, dict)] if isinstance(raw, list) else []
