"""Explaining: how a stitch is made, the one at hand or one of the pattern's by its name."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.commands.phrases import phrases_of
from reader.plan.step import Plan
from reader.session.effects import Saying
from reader.session.speaking import Out, say
from reader.session.state import Mode, State
from reader.terms.crafts import Terms
from reader.terms.forms import stitch_named
from reader.terms.howto import how_to
from reader.terms.stitches import Craft

DEEDS = (
    ("magic ring", "mr", re.compile(r"\bmagic (?:ring|circle)\b|\bMR\b", re.IGNORECASE)),
    ("chain", "ch", re.compile(r"\bch(?:s|ains?)?\b", re.IGNORECASE)),
    ("slip stitch", "sl st", re.compile(r"\bsl st\b|\bslip stitch|\bss\b", re.IGNORECASE)),
)
"""What is made in crochet without being a stitch of the row, its short name, how it is written."""
MOST_NAMES = 30
"""Names that can be said at once; no pattern met so far has more stitches."""


def explained(state: State, command: Command) -> Out:
    """How the step's stitches are made, or one that was named."""
    named = command.word not in phrases_of((Ask.EXPLAIN,))
    return say(state, Saying("explained", state.place, words=command.word if named else ""))


def which(state: State, command: Command) -> Out:
    """Asks which of the pattern's stitches."""
    found = names(state)
    if not found:
        return explained(state, Command(Ask.EXPLAIN, word=phrases_of((Ask.EXPLAIN,))[0]))
    return say(replace(state, mode=Mode.STITCH_NAME), Saying("which stitch", more=found))


def named(state: State, command: Command) -> Out:
    """How the stitch of that name is made; the place stays."""
    state, short = replace(state, mode=Mode.STEP), _named(state).get(command.word, "")
    if not short:
        return explained(state, command)
    return say(state, Saying("stitch explained", state.place, words=command.word, more=(short,)))


def names(state: State) -> tuple[str, ...]:
    """The pattern's stitches by their names in its terms, in the order they are first worked, small
    letters; those of which the making is known.
    """
    return tuple(_named(state))[:MOST_NAMES]


def _named(state: State) -> dict[str, str]:
    """Spoken name -> US short name."""
    craft = Craft.KNITTING if state.plan.craft == "knitting" else Craft.CROCHET
    uk = state.plan.terms == Terms.UK.value
    found: dict[str, str] = {}
    for short in _worked(state.plan):
        stitch = stitch_named(short, craft)
        if stitch is not None and short != "st" and how_to(short, craft) is not None:
            spoken = stitch.spoken_uk if uk and stitch.spoken_uk else stitch.spoken
            found[" ".join(spoken.lower().replace("-", " ").replace(",", " ").split())] = short
    if craft is Craft.CROCHET:
        rows = [row.written for part in state.plan.parts for row in part.rows]
        found |= {name: short for name, short, form in DEEDS if any(map(form.search, rows))}
    return found


def _worked(plan: Plan) -> tuple[str, ...]:
    """The US short names of the stitches, each once; later copies of a part have no others."""
    moves = (
        move
        for part in plan.parts
        if part.first is None
        for row in part.rows
        for step in row.groups
        for move in step.moves
    )
    return tuple(dict.fromkeys(move.stitch for move in moves if move.stitch))
