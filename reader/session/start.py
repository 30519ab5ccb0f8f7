"""Begin: a plan and what was kept of it -> the first state and the first words."""

from __future__ import annotations

from dataclasses import replace

from reader.plan import find
from reader.plan.step import Plan
from reader.session import noting
from reader.session.cautioning import cautioned
from reader.session.effects import Saying, SetVoice
from reader.session.moving import row_told
from reader.session.progress import from_plain
from reader.session.speaking import Out, say
from reader.session.state import Mode, State, Tastes


def begin(
    plan: Plan, saved: dict[str, object] | None, tastes: Tastes, now_s: float, days_away: int = 0
) -> Out:
    """The first state: at the kept place with a recap, or at the beginning with what is needed.

    Raises ValueError for a plan without a single step.
    """
    kept = from_plain(plan, saved) if saved else None
    if kept is None:
        return _anew(plan, tastes, now_s)
    state = replace(kept, tastes=tastes, now_s=now_s, step_since_s=now_s, sat_since_s=now_s)
    voice = SetVoice(state.tastes.rate, state.tastes.volume)
    counting = state.mode is Mode.COUNTING
    tally = (Saying("counting", state.place, state.tally),) if counting else ()
    return say(
        state,
        Saying("welcome back", state.place, days_away),
        *row_told(state, state.place),
        Saying("step", state.place),
        *tally,
        before=(voice,),
        after=noting.sounds_here(state, state.place),
    )


def _anew(plan: Plan, tastes: Tastes, now_s: float) -> Out:
    first = find.first_place(plan)
    if first is None:
        raise ValueError("the plan holds no step")
    state = State(
        plan,
        first,
        tastes=tastes,
        now_s=now_s,
        step_since_s=now_s,
        sat_since_s=now_s,
    )
    state, cautions = cautioned(state, first)
    warned = (Saying("warnings", number=len(plan.warnings)),) if plan.warnings else ()
    # A piece of one part that bears the pattern's name is not named twice.
    named = len(plan.parts) == 1 and plan.parts[0].name in ("", plan.title)
    part = () if named else (Saying("part", first),)
    return say(
        state,
        Saying("welcome", first),
        *part,
        *cautions,
        *row_told(state, first),
        Saying("step", first),
        *warned,
        before=(SetVoice(tastes.rate, tastes.volume),),
    )
