"""The settings file reaches the session: keys of one's own, choices kept, an attention word."""

from __future__ import annotations

from pathlib import Path

import pytest

from reader.app.loop import KeyPressed, Loop, Tick, Typed
from reader.app.tastes import keeper, tastes_of
from reader.devices.fakes import FakeClock, FakeEar, FakeShelf, FakeVoice
from reader.devices.settings import Settings, SettingsUnreadable, load_settings
from reader.plan.step import Grain
from reader.session.start import begin
from reader.session.state import Mode, Tastes
from tests.session.play import demo

PLAN = demo("harbour-lighthouse")


class Room:
    """A loop with scripted devices."""

    def __init__(self, settings: Settings, file: Path | None = None) -> None:
        self.clock = FakeClock()
        tastes = tastes_of(settings)
        keep = keeper(tastes, file) if file else lambda tastes: None
        self.loop = Loop(
            None,
            None,
            None,
            None,
            FakeShelf(),
            self.clock,
            keys=settings.keys,
            keep_tastes=keep,
        )
        self.loop.voice = self.voice = FakeVoice(self.clock, self.loop.push)
        self.loop.ear = self.ear = FakeEar(self.loop.push, self.clock)
        self.loop.start(*begin(PLAN, None, tastes, 0.0))

    def give(self, *events: object) -> None:
        """Events through the loop, and what they bring about."""
        for event in events:
            self.loop.push(event)
            while not self.loop.events.empty():
                self.loop.one(self.loop.events.get())

    def step(self) -> tuple[int, int, int]:
        """Where the session is."""
        assert self.loop.state is not None
        place = self.loop.state.place
        return place.part, place.row, place.step


def test_a_pedal_with_keys_of_its_own_moves_the_work() -> None:
    """A key that the maker has given a command does that, and no longer what it did."""
    room = Room(Settings(keys={"f9": "next", "space": "again"}))
    before = room.step()
    room.give(KeyPressed("space"))
    assert room.step() == before
    room.give(KeyPressed("f9"))
    assert room.step() > before


def test_a_key_for_no_command_is_refused_with_the_names_there_are(tmp_path: Path) -> None:
    """One sentence names the key, what it asked for, and what could be asked."""
    file = tmp_path / "settings.toml"
    file.write_text('[keys]\nf9 = "forward"\n')
    with pytest.raises(SettingsUnreadable, match=r"forward.*row-done"):
        load_settings(file, {})


def test_slower_is_kept_and_the_rest_of_the_file_stands(tmp_path: Path) -> None:
    """What was changed by voice is in the file; what came from elsewhere is not."""
    file = tmp_path / "settings.toml"
    file.write_text('rest_minutes = 20\n[keys]\nf9 = "next"\n')
    room = Room(load_settings(file, {"READER_VOLUME": "0.5"}), file)
    assert room.voice.volume == 0.5
    room.give(Typed("slower"), Typed("more words"), Typed("bigger steps"))
    kept = load_settings(file, {})
    assert (kept.rate, kept.grain, kept.volume) == (150, "phrase", 1.0)
    assert (kept.rest_minutes, kept.keys) == (20, {"f9": "next"})
    assert tastes_of(kept).grain is Grain.PHRASE


def test_a_settings_file_that_cannot_be_written_is_told_once(tmp_path: Path) -> None:
    """The voice is slower all the same, and the trouble is said once."""
    blocked = tmp_path / "file"
    blocked.write_text("")
    room = Room(Settings(), blocked / "settings.toml")
    room.give(Typed("slower"), Typed("slower"))
    assert room.voice.rate == 130
    told = [one.text for one in room.voice.said if "cannot be" in one.text]
    assert len(told) == 1


def test_digits_make_a_number_only_where_one_is_asked_for() -> None:
    """ "g", "4", enter goes to round four; without the question "4" is a command of its own."""
    room = Room(Settings())
    room.give(KeyPressed("g"), KeyPressed("4"), KeyPressed("enter"))
    assert PLAN.parts[0].rows[room.step()[1]].number == 4
    room.give(KeyPressed("4"))
    assert room.loop.state is not None
    assert room.loop.state.mode is Mode.COUNTING


def test_a_film_without_the_attention_word_moves_nothing() -> None:
    """ "next" in the film is nothing; "captain next" is a command."""
    room = Room(Settings(attention="Captain"))
    before = room.step()
    room.ear.speak("next")
    room.give()
    room.give(Tastes)  # an event of no meaning only empties the queue
    assert room.step() == before
    room.ear.speak("captain next")
    room.give(Tastes)
    assert room.step() > before


def test_a_number_typed_as_a_line_is_whole_and_a_letter_is_a_key() -> None:
    """ "5", entered as a line, answers the question; with no question open it is the key."""
    room = Room(Settings())
    room.give(KeyPressed("g"), Typed("5"))
    assert PLAN.parts[0].rows[room.step()[1]].number == 5
    room.give(Typed("b"))
    assert PLAN.parts[0].rows[room.step()[1]].number == 4


def test_without_barge_in_nothing_is_heard_while_the_program_speaks() -> None:
    """The ear gets no phrases until the words are over."""
    room = Room(Settings())
    room.loop.barge_in = False
    room.give(KeyPressed("a"))
    assert room.ear.phrases == ()
    room.clock.go_on(60)
    room.voice.listen_on()
    room.give(Tick())
    assert "next" in room.ear.phrases


def test_a_digit_typed_as_a_line_without_a_question_is_told_what_it_could_mean() -> None:
    """It changes nothing: "3" is no wish for counts only; the key can be typed as a key."""
    room = Room(Settings())
    before = room.loop.state
    assert before is not None
    room.give(Typed("3"))
    assert room.loop.state is not None
    assert (room.loop.state.tastes, room.loop.state.place) == (before.tastes, before.place)
    said = room.voice.said[-1].text
    assert "go to round three, or I have three" in said
    assert "key three is: counts only" in said
