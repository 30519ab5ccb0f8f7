"""ShowStep: a step of a plan in, what a screen shows of it out."""

from __future__ import annotations

from dataclasses import replace

from reader.counts.worked import Pass
from reader.plan.find import one_of
from reader.plan.step import PlanPart, PlanRow, RowKind, Step
from reader.wording.figures import in_figures
from reader.wording.say import Length, say_step, say_written
from reader.wording.shown import Shown


def shown_step(title: str, part: PlanPart, row: PlanRow, step: Step) -> Shown:
    """Place, step, count and notices of this step; state, keys and messages are added by `replace`.

    Notices and a warning belong to the row and stand as long as it is worked. Nothing is counted
    outside worked rows.
    """
    worked = row.kind is RowKind.WORK
    shown = Shown(
        title=title,
        part=_part(part),
        row=in_figures(row.label),
        passes=", ".join(_pass(one) for one in step.passes),
        step=in_figures(say_step(step, row, Length.FULL)),
        brief=in_figures(say_step(step, row, Length.SHORT)),
        notices=tuple(in_figures(notice.text) for notice in row.notices),
        trouble=(in_figures(row.warning),) if row.warning else (),
    )
    if not worked:
        return shown
    counted = say_written(row.of, row.reading).rstrip(".").lower() if row.of else "stitches"
    return replace(shown, done=step.done, total=step.total, counted=counted)


def _part(part: PlanPart) -> str:
    name = " ".join(part.name.split())
    return f"{one_of(name)} {part.copy} of {part.copies}".strip() if part.copies > 1 else name


def _pass(one: Pass) -> str:
    return f"pass {one.number} of {one.of}" if one.of else f"pass {one.number}"
