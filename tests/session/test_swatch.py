"""The swatch as plays: what is asked, what is complained of, what is renamed and what is kept."""

from __future__ import annotations

import pytest

from reader.commands.asked import command_of
from reader.commands.command import Command
from reader.commands.phrases import ask_of_key
from reader.session.effects import Chime, Close, Say
from reader.session.events import CommandGiven, NotSure, TalkEnded
from reader.session.swatch import (
    BeginWord,
    KeepWords,
    LeaveWord,
    MeasureRoom,
    Named,
    NameOwn,
    RoomMeasured,
    SampleTaken,
    Stage,
    SwatchEffect,
    SwatchEvent,
    TakeSample,
    begin_swatch,
    swatch_phrases,
    weave,
)
from reader.wording.swatch_words import shown_swatch, talk_swatch


class Weaving:
    """A swatch that is spoken to; what is said by voice must be possible to hear."""

    def __init__(self, *words: str) -> None:
        self.state, effects = begin_swatch(words)
        self.effects: list[SwatchEffect] = []
        self.answer = ""
        self.took(effects)

    def took(self, effects: tuple[SwatchEffect, ...]) -> str:
        """Takes over the effects; gives what was said."""
        self.effects += effects
        said = [talk_swatch(e.sayings, self.state) for e in effects if isinstance(e, Say)]
        self.answer = " ".join(said) or self.answer
        return self.answer

    def give(self, event: SwatchEvent) -> str:
        """One event; its words are then said to their end."""
        self.effects = []
        self.state, effects = weave(self.state, event)
        answer = self.took(effects)
        if any(isinstance(one, Say) for one in effects):
            self.state, effects = weave(self.state, TalkEnded(self.state.said, True, 0.0))
            self.took(effects)
        return answer

    def quiet(self, trouble: str = "") -> str:
        """The greeting ends and the room is listened to."""
        self.give(TalkEnded(self.state.said, True, 0.0))
        assert MeasureRoom(3) in self.effects
        return self.give(RoomMeasured(trouble))

    def says(self, words: str) -> str:
        """The maker answers."""
        assert words in swatch_phrases(self.state), f"{words!r} cannot be heard now"
        return self.give(CommandGiven(command_of(words), 0.0))

    def key(self, name: str) -> str:
        """The maker presses a key."""
        ask = ask_of_key(name)
        assert ask is not None
        return self.give(CommandGiven(Command(ask), 0.0, False))

    def sample(self, trouble: str = "", taken: int = 1, **more: object) -> str:
        """A sample was judged so."""
        return self.give(SampleTaken(trouble, taken, **more))  # type: ignore[arg-type]

    def thrice(self) -> str:
        """Three good samples."""
        self.sample(taken=1)
        self.sample(taken=2)
        return self.sample(taken=3)

    def sampling(self) -> str:
        """Of which phrase the next sample will be, "" when none is waited for."""
        taken = [one.phrase for one in self.effects if isinstance(one, TakeSample)]
        return taken[-1] if taken else ""


def test_each_word_is_said_three_times_and_then_it_is_kept() -> None:
    """Room, words, no word of one's own, kept; samples are taken while the program is silent."""
    play = Weaving("yes", "next")
    assert "two words" in play.answer
    assert "quiet enough" in play.quiet()
    assert "say yes, three times" in play.answer
    assert play.sampling() == "yes"
    play.sample(taken=1)
    assert Chime("heard") in play.effects
    assert play.sampling() == "yes"
    play.sample(taken=2)
    assert "Next, three times." in play.sample(taken=3)
    assert play.sampling() == "next"
    assert "word or sound of your own" in play.thrice()
    assert "two words" in play.says("no")
    assert KeepWords() in play.effects
    assert Close() in play.effects


@pytest.mark.parametrize(
    ("trouble", "told"),
    [
        ("nothing", "heard nothing"),
        ("too loud", "too loud for the microphone"),
        ("buried", "hardly stands out"),
        ("faint", "faintly"),
        ("stray", "unlike the others"),
    ],
)
def test_what_is_wrong_is_said_plainly_and_the_word_asked_again(trouble: str, told: str) -> None:
    """Each trouble has its sentence, and the same word is waited for."""
    play = Weaving("next")
    play.quiet()
    answer = play.sample(trouble, 0)
    assert told in answer
    assert "next" in answer
    assert play.sampling() == "next"


def test_a_dead_microphone_ends_it_and_a_loud_room_does_not() -> None:
    """A room without any sound is told, and ends it when no word comes either; over a film it is
    said, and gone on with.
    """
    dead = Weaving("next", "again")
    assert "muted" in dead.quiet("dead microphone")
    dead.sample("nothing", 0)
    assert "reader devices" in dead.sample("nothing", 0)
    assert Close() in dead.effects
    assert KeepWords() not in dead.effects
    gated = Weaving("next")
    gated.quiet("dead microphone")
    assert "of your own" in gated.thrice()
    loud = Weaving("next")
    assert "loud here" in loud.quiet("loud room")
    assert loud.sampling() == "next"


def test_a_word_nobody_says_is_left_out_and_so_is_one_by_key() -> None:
    """Twice nothing, or the space key: the next word."""
    play = Weaving("next", "again", "pause")
    play.quiet()
    play.sample("nothing", 0)
    assert "leave next out" in play.sample("nothing", 0)
    assert LeaveWord("next") in play.effects
    assert play.sampling() == "again"
    play.key("space")
    assert play.sampling() == "pause"


def test_a_word_often_missed_is_offered_another() -> None:
    """Yes: the other word is said three times and stands for the command; no: it stays."""
    for answer in ("yes", "no"):
        play = Weaving("next", "pause")
        play.quiet()
        play.sample(taken=1)
        play.sample(taken=2)
        asked = play.sample(taken=3, missed=True, like="", better="onward")
        assert "often miss next" in asked
        assert "onward" in asked
        said = play.says(answer)
        if answer == "yes":
            assert BeginWord("next", "onward") in play.effects
            assert "say onward, three times" in said
            assert play.sampling() == "next"
            play.sample(taken=1)
            play.sample(taken=2)
            play.sample(taken=3, missed=True, better="onward")
        assert play.sampling() == "pause"


def test_two_words_that_sound_alike_are_named() -> None:
    """The maker hears which."""
    play = Weaving("pause")
    play.quiet()
    assert "pause sounds like hush" in play.sample(taken=3, missed=True, like="hush", better="wait")


def test_a_command_gets_a_word_of_the_makers_own() -> None:
    """Asked for by voice, said three times; typed words are its name; then another, or no."""
    play = Weaving("yes")
    play.quiet()
    play.thrice()
    assert "Which command" in play.says("yes")
    assert "your own word or sound for next" in play.says("next")
    assert BeginWord("next") in play.effects
    assert play.sampling() == "next"
    assert "written vorwärts" in play.give(Named("vorwärts"))
    assert NameOwn("next", "vorwärts") in play.effects
    assert play.sampling() == "next"
    assert "now means next" in play.thrice()
    assert "Another one" in play.answer
    assert "two words" in play.says("no")


def test_a_typed_command_is_renamed_and_nonsense_is_not() -> None:
    """Words that are no command are told so; a typed command is taken."""
    play = Weaving("yes")
    play.quiet()
    play.thrice()
    play.key("y")
    assert "no command" in play.give(Named("lighthouse"))
    assert "for row done" in play.give(Named("row done"))


def test_the_end_by_key_keeps_what_was_learned() -> None:
    """q after one word."""
    play = Weaving("yes", "next")
    play.quiet()
    play.thrice()
    assert "one word" in play.key("q")
    assert KeepWords() in play.effects


def test_escape_skips_the_talk_and_a_repeats_it() -> None:
    """What was announced is then waited for, so that nobody has to hear it twice."""
    play = Weaving("next")
    play.quiet()
    said = play.answer
    assert play.key("a").endswith(said.split(". ")[-1])
    play.state, _ = weave(play.state, TalkEnded(play.state.said, False, 0.0))
    assert play.state.stage is Stage.WORD


def test_three_unclear_answers_tell_the_keys() -> None:
    """Then it is quiet."""
    play = Weaving("yes")
    play.quiet()
    play.thrice()
    for _ in range(2):
        play.give(NotSure("yes", 0.0))
    assert "Press y" in play.give(NotSure("yes", 0.0))


def test_the_screen_shows_the_word_and_how_many_are_left() -> None:
    """And the keys that work."""
    play = Weaving("yes", "next")
    play.quiet()
    play.thrice()
    shown = shown_swatch(play.state, play.answer)
    assert shown.step == "next"
    assert shown.count == "1 of 2 done, 1 left"
    assert ("space", "leaves this word out") in shown.ready
