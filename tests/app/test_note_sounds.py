"""A spoken note without words: kept from what was heard, played when the notes have been read."""

from __future__ import annotations

from pathlib import Path

import numpy as np

from reader.app.loop import KeyPressed, Tick, Typed
from reader.devices.notes_folder import NotesFolder
from reader.devices.ports import RATE_HZ, ProgressUnreadable, Samples
from reader.devices.settings import Settings
from tests.app.test_settings_used import PLAN, Room


def room_with_sound(folder: Path, played: list[int]) -> Room:
    """A room whose notes are kept in a folder, and whose speaker notes how long a sound was."""
    room = Room(Settings())
    notes = NotesFolder(PLAN.fingerprint, folder)
    room.loop.notes.recent = lambda seconds: np.ones(round(seconds * RATE_HZ), np.int16)
    room.loop.notes.keep = lambda of, name, sound: notes.keep(name, sound)
    room.loop.notes.load = lambda of, name: notes.sound(name)
    room.loop.notes.play = lambda sound: played.append(len(sound))
    return room


def spoken_note(room: Room) -> None:
    """The maker asks for a note by voice and says what nobody understands."""
    for words in ("more words", "note this"):
        room.ear.speak(words)
        room.give()
        room.give(Tick())
    room.clock.go_on(20)
    room.give(Tick(), Tick())


def test_a_note_in_sound_is_kept_and_played_after_the_words(tmp_path: Path) -> None:
    """Twelve seconds are kept; they are played when the reading is over, not over it."""
    played: list[int] = []
    room = room_with_sound(tmp_path, played)
    spoken_note(room)
    assert NotesFolder(PLAN.fingerprint, tmp_path).names() == ("note_1",)
    room.give(Typed("read my notes"))
    assert "a note in sound" in room.voice.said[-1].text
    assert played == []
    room.clock.go_on(60)
    room.voice.listen_on()
    room.give(Tick())
    assert played == [12 * RATE_HZ]
    stops: list[bool] = []
    room.loop.notes.stop = lambda: stops.append(True)
    room.give(KeyPressed("space"), KeyPressed("space"))
    assert stops == [True]


def test_a_command_keeps_a_note_from_being_played(tmp_path: Path) -> None:
    """Going on while the notes are read plays nothing later."""
    played: list[int] = []
    room = room_with_sound(tmp_path, played)
    spoken_note(room)
    room.give(Typed("read my notes"), KeyPressed("space"))
    room.clock.go_on(60)
    room.voice.listen_on()
    room.give(Tick())
    assert played == []


def test_a_note_that_cannot_be_kept_is_told_and_the_work_goes_on(tmp_path: Path) -> None:
    """One sentence, and the next step."""
    room = room_with_sound(tmp_path, [])

    def full(of: str, name: str, sound: Samples) -> None:
        raise ProgressUnreadable("Your note cannot be saved, because the disk is full.")

    room.loop.notes.keep = full
    spoken_note(room)
    assert any("disk is full" in one.text for one in room.voice.said)
    before = room.step()
    room.give(KeyPressed("space"))
    assert room.step() > before
