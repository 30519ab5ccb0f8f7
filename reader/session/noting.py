"""Notes: what the maker wants to remember here; read again when the row is reached."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Command
from reader.plan.place import Place
from reader.session.effects import KeepSound, PlaySound, Save, Saying
from reader.session.speaking import Out, say
from reader.session.state import Mode, Note, State

SOUND_S = 12
"""Seconds of sound kept of a spoken note. Our own choice."""
MOST_NOTES = 200
MOST_PLAYED = 3
"""Notes in sound that are played one after the other."""
SPOKEN = (
    "one stitch too many", "one stitch too few", "changed the hook", "changed the needles",
    "changed the yarn", "new ball", "other colour", "too big", "too small",
    "one row more", "one row less", "left out", "check the length", "count again", "looks wrong",
    "looks good", "ask about this", "do the same again",
)  # fmt: skip
"""Notes whose words the ear can know; anything else is kept as sound, or typed."""


def begin(state: State, command: Command) -> Out:
    """Asks for the note; its sound is kept from now on."""
    name = f"note {len(state.notes) + 1}"
    note = Note(state.place, name)
    state = replace(
        state, notes=(*state.notes, note)[-MOST_NOTES:], mode=Mode.NOTE, asked_at_s=state.now_s
    )
    if not state.by_voice:
        return say(state, Saying("note typed"), before=(Save(),))
    return say(state, Saying("note asked"), before=(Save(),), after=(KeepSound(name, SOUND_S),))


def worded(state: State, words: str) -> Out:
    """The note's words, spoken from the list or typed."""
    note = replace(state.notes[-1], words=words)
    state = replace(state, notes=(*state.notes[:-1], note), mode=Mode.STEP)
    return say(state, Saying("note kept", words=words), before=(Save(),))


def sounded(state: State) -> Out:
    """The time for a spoken note is over; its sound is kept."""
    return say(replace(state, mode=Mode.STEP), Saying("note kept"), before=(Save(),))


def without_empty(state: State) -> State:
    """The state without a note that was begun by key and never typed."""
    empty = state.mode is Mode.NOTE and not state.by_voice and not state.notes[-1].words
    return replace(state, notes=state.notes[:-1]) if empty else state


def left(state: State) -> Out:
    """No note after all."""
    state = replace(state, notes=state.notes[:-1], mode=Mode.STEP)
    return say(state, Saying("left alone"), Saying("step", state.place), before=(Save(),))


def read(state: State, command: Command) -> Out:
    """The notes, the latest first; those without words are played."""
    sounds = tuple(PlaySound(one.name) for one in reversed(state.notes) if not one.words)
    return say(state, Saying("notes" if state.notes else "no note"), after=sounds[:MOST_PLAYED])


def here(state: State, place: Place) -> tuple[Saying, ...]:
    """A row's notes as they are read on reaching it; a later copy reads the first one's too."""
    return tuple(Saying("note here", place, words=one.words) for one in _of_row(state, place))


def sounds_here(state: State, place: Place) -> tuple[PlaySound, ...]:
    """The sounds of a row's notes that have no words, played behind what is read there."""
    return tuple(PlaySound(one.name) for one in _of_row(state, place) if not one.words)


def _of_row(state: State, place: Place) -> tuple[Note, ...]:
    part = state.plan.parts[place.part]
    parts = {place.part, *([part.first] if part.first is not None else [])}
    return tuple(
        one for one in state.notes if one.place.part in parts and one.place.row == place.row
    )
