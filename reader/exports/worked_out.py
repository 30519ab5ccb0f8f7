"""WorkedOut: a row of a plan as blocks of sentences, with repeats as "so many times" where they
are.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from itertools import groupby

from reader.counts.worked import Pass
from reader.plan.step import PlanRow, Step

Spoken = Callable[[Step, PlanRow], str]
"""A step in full spoken words."""


@dataclass(frozen=True, slots=True)
class Block:
    """Sentences that belong together: worked `times` in all, or one pass of a repeat ("pass 2 of
    3").

    times: 1 for sentences worked once. which: "" or the words that name the pass.
    """

    sentences: tuple[str, ...]
    times: int = 1
    which: str = ""


def blocks(row: PlanRow, spoken: Spoken) -> tuple[Block, ...]:
    """The row's steps in order; passes of one repeat that read the same are one block with its
    times.
    """
    found: list[Block] = []
    for repeat, steps in groupby(row.groups, key=_repeat):
        if repeat is None:
            found.append(Block(tuple(spoken(step, row) for step in steps)))
        else:
            found += _passes(list(steps), row, spoken)
    return tuple(found)


def _repeat(step: Step) -> tuple[int, int, int] | None:
    """Where the outermost repeat of a step stands; None outside repeats."""
    if not step.passes:
        return None
    span = step.passes[0].repeat
    return (span.line, span.start, span.end)


def _passes(steps: list[Step], row: PlanRow, spoken: Spoken) -> list[Block]:
    passes = [
        (group[0].passes[0], tuple(spoken(step, row) for step in group))
        for group in (list(same) for _, same in groupby(steps, key=lambda s: s.passes[0].number))
    ]
    if len(passes) > 1 and len({sentences for _, sentences in passes}) == 1:
        return [Block(passes[0][1], times=len(passes))]
    return [Block(sentences, which=_which(number)) for number, sentences in passes]


def _which(number: Pass) -> str:
    return f"pass {number.number} of {number.of}" if number.of else f"pass {number.number}"
