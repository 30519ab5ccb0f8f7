"""Marks and lifelines: put here, named by the maker, gone back to, ripped back to."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.commands.numbers import say_number
from reader.session import moving
from reader.session.effects import Save, Saying
from reader.session.speaking import Out, say
from reader.session.state import Mark, Mode, State

MOST_MARKS = 50
NAMES = (
    "neck edge", "sleeve", "heel", "toe end", "end of the cuff", "shoulder", "edge", "corner",
    "middle", "beginning", "left side", "right side", "front", "body", "head", "arm", "leg",
    "top of the ear", "wing", "window", "opening", "border", "ribbing", "seam", "thumb", "pocket",
    "good place",
)  # fmt: skip
"""Names that can be spoken; any other name can be typed. Words of the trade and of shapes. "Neck"
was taken for "next", "hush" for "cuff", "door" for "window"; "toe" and "ear" came near others
(`python -m tests.benchmarks.listening_alike`): they are gone or have longer names."""


def put_mark(state: State, command: Command) -> Out:
    """A mark here, numbered in the order they are put, until it gets a name."""
    return _put(state, "mark", False)


def put_lifeline(state: State, command: Command) -> Out:
    """A lifeline: the stitches here are known to be good."""
    return _put(state, "lifeline", True)


def _put(state: State, kind: str, lifeline: bool) -> Out:
    numbers = sum(one.lifeline == lifeline for one in state.marks) + 1
    name = f"{kind} {say_number(numbers)}"
    mark = Mark(name, state.place, lifeline)
    state = replace(state, marks=(*state.marks, mark)[-MOST_MARKS:], mode=Mode.MARK_NAME)
    return say(state, Saying("marked", state.place, words=name), before=(Save(),))


def named(state: State, command: Command) -> Out:
    """The mark put last gets a name; a name that is taken is put to the new mark alone."""
    name = command.word
    marks = tuple(one for one in state.marks[:-1] if one.name != name)
    state = replace(state, marks=(*marks, replace(state.marks[-1], name=name)), mode=Mode.STEP)
    return say(state, Saying("mark named", words=name), before=(Save(),))


def free_names(state: State) -> tuple[str, ...]:
    """Names that no mark bears yet."""
    taken = {one.name for one in state.marks}
    return tuple(name for name in NAMES if name not in taken)


def names(state: State) -> tuple[str, ...]:
    """The names of the marks, the one put last first."""
    return tuple(dict.fromkeys(one.name for one in reversed(state.marks)))


def to_mark(state: State, command: Command) -> Out:
    """To the only mark, or asks which."""
    if not state.marks:
        return say(replace(state, mode=Mode.STEP), Saying("no mark"))
    if len(state.marks) == 1:
        return _go(state, state.marks[0])
    return say(replace(state, mode=Mode.MARK_GO), Saying("which mark", more=names(state)))


def chosen(state: State, command: Command) -> Out:
    """To the mark that was named."""
    mark = mark_called(state, command.word)
    if mark is None:
        return say(state, Saying("which mark", more=names(state)))
    return _go(state, mark)


def mark_called(state: State, name: str) -> Mark | None:
    """The mark of that name, the latest of them."""
    return next((one for one in reversed(state.marks) if one.name == name), None)


def _go(state: State, mark: Mark) -> Out:
    return moving.moved(
        state, mark.place, Ask.GO_TO_MARK, Saying("at mark", mark.place, words=mark.name)
    )


def rip_asked(state: State, command: Command) -> Out:
    """Asks before ripping back to a mark; one that lies ahead is no place to rip back to."""
    mark = mark_called(state, command.word)
    if mark is None or mark.place > state.place:
        return say(state, Saying("which mark", more=behind(state)))
    pending = Command(Ask.RIP_BACK, None, mark.name)
    state = replace(state, mode=Mode.CONFIRM, pending=pending)
    return say(state, Saying("confirm rip to mark", mark.place, words=mark.name))


def behind(state: State) -> tuple[str, ...]:
    """The names of the marks at or before the present place."""
    return tuple(
        dict.fromkeys(one.name for one in reversed(state.marks) if one.place <= state.place)
    )


def ripped(state: State, name: str) -> Out:
    """Back at the mark; the stitches after it are gone."""
    mark = mark_called(state, name)
    if mark is None:
        return say(state, Saying("no mark"))
    told = Saying("ripped to mark", mark.place, words=mark.name)
    return moving.moved(state, mark.place, Ask.RIP_BACK, told)
