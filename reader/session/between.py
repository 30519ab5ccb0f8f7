"""Between two: the ear takes what was said for either of two answers, and asks which.

Said again, both would sound alike again; so each can be said in another way as well: a number by
its figures, any answer by its place in the question.
"""

from __future__ import annotations

from dataclasses import replace

from reader.commands.asked import command_of
from reader.commands.command import Ask, Command
from reader.commands.numbers import read_number, say_figures, sounds_like
from reader.session.effects import Chime, Saying
from reader.session.events import NotSure
from reader.session.speaking import Out, say
from reader.session.state import Mode, State

ANSWERED = (
    Mode.ROW_NUMBER, Mode.HAVE_NUMBER, Mode.RIP_NUMBER, Mode.GAUGE_NUMBER, Mode.FIND_NUMBER,
    Mode.YARN_NUMBER, Mode.MARK_NAME, Mode.MARK_GO, Mode.STITCH_NAME, Mode.PART_NAME,
)  # fmt: skip
"""Questions that are answered by a number or a name; elsewhere two commands need no third way."""
PLACES = ("the first", "the second")
OTHER = "other"
"""With a number to be confirmed: the one it is easily taken for was refused before."""


def asked(state: State, event: NotSure) -> Out | None:
    """Asks which of two answers was meant; None where that is no question."""
    if not event.other or state.mode not in ANSWERED:
        return None
    two = (event.words, event.other)
    state = replace(state, between=two)
    return say(state, Saying("one or other", more=two), before=(Chime("not sure"),))


def said_so(state: State) -> tuple[str, ...]:
    """What the two can be answered by; () while nothing of the kind is asked."""
    figures = (say_figures(n) for one in state.between if (n := read_number(one)) is not None)
    return tuple(dict.fromkeys((*state.between, *figures, *PLACES))) if state.between else ()


def meant(state: State, command: Command) -> tuple[State, Command]:
    """The command with "the first" as what stood first; whatever is said ends the question."""
    two = dict(zip(PLACES, state.between, strict=False))
    command = command_of(two[command.word]) if command.word in two else command
    again = command.ask is Ask.AGAIN
    return (state if again else replace(state, between=())), command


def refused(state: State) -> Command | None:
    """Once a number was refused that was said back since it sounds like another: that other, to be
    said back next; None where no other was meant either.
    """
    pending = state.pending
    if state.mode is not Mode.CONFIRM or pending is None or pending.number is None:
        return None
    said_back = pending.ask is Ask.GO_TO_ROW or (pending.ask is Ask.I_HAVE and pending.word)
    alike = sounds_like(pending.number) if said_back and pending.word != OTHER else None
    return None if alike is None else Command(pending.ask, alike, OTHER)
