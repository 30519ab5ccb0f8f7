"""The swatch with a real lesson: synthetic voices are learned, judged, kept, used and forgotten."""

from __future__ import annotations

import argparse
import shutil
import subprocess
from pathlib import Path

import numpy as np
import pytest

from reader.app import cli
from reader.app.hear import listen, read_wav
from reader.app.loop import KeyPressed, Loop, Typed
from reader.app.swatch import better
from reader.app.swatch_loop import SwatchLoop
from reader.app.tastes import tastes_of
from reader.app.work import recogniser_for
from reader.devices.fakes import FakeChimes, FakeClock, FakeSampleEar, FakeShelf, FakeVoice
from reader.devices.model_place import load_network
from reader.devices.own_words_file import (
    OwnWordsUnreadable,
    forget_own_words,
    load_own_words,
    save_own_words,
)
from reader.devices.ports import RATE_HZ, Samples
from reader.devices.settings import Settings
from reader.listening.lesson import Lesson
from reader.listening.own_words import OwnWords
from reader.session.start import begin
from tests.session.play import demo

needs_espeak = pytest.mark.skipif(not shutil.which("espeak-ng"), reason="needs espeak-ng")
ROOM = np.random.default_rng(1).normal(0, 12, 3 * RATE_HZ).astype(np.int16)
PAUSE = RATE_HZ // 2
LANGUAGE = "fi"
"""A voice of another language, with which the listening model was never trained."""


def spoken(tmp: Path, words: str, pace: int = 150, height: int = 50, loud: float = 1.0) -> Samples:
    """espeak-ng says this in a Finnish voice, in a room with a little noise."""
    file = tmp / "said.wav"
    command = ["espeak-ng", "-v", LANGUAGE, "-s", str(pace), "-p", str(height), "-w", str(file)]
    subprocess.run([*command, words], check=True, timeout=20, capture_output=True)
    said = np.pad(read_wav(file).astype(np.float64) * loud, PAUSE)
    noise = np.random.default_rng(pace + height).normal(0, 12, len(said))
    return np.clip(said + noise, -32768, 32767).astype(np.int16)


class Evening:
    """A swatch with scripted devices, a real lesson and a file of its own."""

    def __init__(self, tmp: Path, *words: str) -> None:
        self.tmp, self.file = tmp, tmp / "own-words.npz"
        network = load_network()
        assert network is not None
        self.clock = FakeClock()
        lesson = Lesson(network, known=load_own_words(self.file))
        self.loop = SwatchLoop(lesson, lambda own: save_own_words(own, self.file), better)
        self.loop.ear = self.ear = FakeSampleEar(self.loop.push, self.clock)
        self.loop.voice = self.voice = FakeVoice(self.clock, self.loop.push)
        self.loop.chimes = FakeChimes()
        self.loop.start(words)
        self.settle()

    def settle(self) -> None:
        """Everything in the queue is done, and what is said has come to its end."""
        for _ in range(4):
            while not self.loop.events.empty():
                self.loop.one(self.loop.events.get())
            self.clock.go_on(60)
            self.voice.listen_on()

    @property
    def last(self) -> str:
        """The program's last words."""
        return self.voice.said[-1].text.lower()

    def hears(self, sound: Samples | None) -> str:
        """The room, or the maker, sounds so; gives the program's last words."""
        self.ear.hears(sound)
        self.settle()
        return self.last

    def teach(self, words: str, loud: float = 1.0) -> str:
        """Says this three times, each a little otherwise."""
        for pace, height in ((140, 45), (150, 50), (165, 55)):
            self.hears(spoken(self.tmp, words, pace, height, loud))
        return self.last

    def types(self, *words: str) -> str:
        """Typed lines; gives the program's last words."""
        for one in words:
            self.loop.push(Typed(one))
            self.settle()
        return self.last


@needs_espeak
def test_a_renamed_command_is_learned_kept_and_moves_the_work(tmp_path: Path) -> None:
    """Finnish words for "next" and "again" are learned by three samples each, kept in a file, and
    then heard by the real recogniser; the English word and other Finnish ones are not.
    """
    evening = Evening(tmp_path, "again")
    evening.hears(ROOM)
    assert "word or sound of your own" in evening.teach("uudestaan")
    evening.types("y", "next", "eteenpäin mennään")
    assert "written eteenpäin mennään" in evening.last
    assert "another one" in evening.teach("eteenpäin")
    evening.types("n")
    assert "two words" in evening.last
    assert evening.loop.closing
    own = load_own_words(evening.file)
    assert own is not None
    assert dict(own.names) == {"next": "eteenpäin mennään"}
    assert {phrase: len(sounds) for phrase, sounds in own.sounds.items()} == {"again": 3, "next": 3}
    ear = recogniser_for("", own)
    phrases = ("next", "again", "pause", "where am i")
    for words, meant in (("eteenpäin", "next"), ("uudestaan", "again")):
        heard = listen(ear, phrases, spoken(tmp_path, words, 156, 47))
        assert heard is not None
        assert (heard.text, heard.certain) == (meant, True)
    for words in ("next", "aallonmurtaja", "majakka seisoo satamassa"):
        heard = listen(ear, phrases, spoken(tmp_path, words, 156, 47))
        assert heard is None or not heard.certain


@needs_espeak
def test_what_is_wrong_with_the_microphone_is_said_once(tmp_path: Path) -> None:
    """Faint, then accepted; clipped is told too; nothing said is asked again."""
    evening = Evening(tmp_path, "next")
    evening.hears(ROOM)
    faint = np.asarray(spoken(tmp_path, "eteenpäin", loud=0.004) * 0.02, np.int16)
    assert "hardly stands out" in evening.hears(faint)
    loud = np.clip(spoken(tmp_path, "eteenpäin").astype(np.int64) * 20, -32768, 32767)
    assert "too loud" in evening.hears(loud.astype(np.int16))
    assert "heard nothing" in evening.hears(None)
    assert "word or sound of your own" in evening.teach("eteenpäin")


@needs_espeak
def test_a_sample_of_another_word_is_asked_for_again(tmp_path: Path) -> None:
    """Two alike and one stray: "unlike the others", and one more makes it whole."""
    evening = Evening(tmp_path, "next")
    evening.hears(ROOM)
    evening.hears(spoken(tmp_path, "eteenpäin", 140))
    evening.hears(spoken(tmp_path, "kissa", 150))
    assert "unlike the others" in evening.hears(spoken(tmp_path, "eteenpäin", 165))
    assert "of your own" in evening.hears(spoken(tmp_path, "eteenpäin", 155))


@needs_espeak
def test_two_commands_said_alike_are_noticed_and_another_word_offered(tmp_path: Path) -> None:
    """The same sound for two commands: named, and another word offered for the second."""
    evening = Evening(tmp_path, "next", "pause")
    evening.hears(ROOM)
    evening.teach("eteenpäin")
    asked = evening.teach("eteenpäin")
    assert "pause sounds like next" in asked
    assert "shall the word for it be" in asked
    evening.types("y")
    assert "three times" in evening.last
    evening.teach("tauko")
    evening.types("n")
    own = load_own_words(evening.file)
    assert own is not None
    assert own.names["pause"]


@needs_espeak
def test_learning_again_leaves_the_other_words(tmp_path: Path) -> None:
    """A second swatch of one word keeps what was taught of the others; leaving out keeps it too."""
    first = Evening(tmp_path, "next", "again")
    first.hears(ROOM)
    first.teach("eteenpäin")
    first.teach("uudestaan")
    first.types("n")
    second = Evening(tmp_path, "next", "again")
    second.hears(ROOM)
    second.teach("seuraava")
    second.loop.push(KeyPressed("space"))
    second.settle()
    second.types("n")
    own = load_own_words(second.file)
    assert own is not None
    assert set(own.sounds) == {"next", "again"}


def test_control_c_keeps_nothing(tmp_path: Path) -> None:
    """Broken off, nothing is written."""
    evening = Evening(tmp_path, "next")
    evening.loop.push(KeyPressed("ctrl+c"))
    evening.settle()
    assert evening.loop.closing
    assert load_own_words(evening.file) is None


def test_words_are_kept_whole_and_forgotten(tmp_path: Path) -> None:
    """The file gives back what was kept; one word, then all, can be forgotten."""
    file = tmp_path / "own-words.npz"
    sounds = {"next": (ROOM, ROOM[:99]), "again": (ROOM[:50],)}
    save_own_words(OwnWords(sounds, {"next": "vorwärts"}, 0.28, 0.9), file)
    own = load_own_words(file)
    assert own is not None
    assert (dict(own.names), own.limit, own.least) == ({"next": "vorwärts"}, 0.28, 0.9)
    assert np.array_equal(own.sounds["next"][1], ROOM[:99])
    assert set(own.without(frozenset(("next",))).sounds) == {"again"}
    assert forget_own_words(file)
    assert not forget_own_words(file)
    assert load_own_words(file) is None
    file.write_bytes(b"no archive")
    with pytest.raises(OwnWordsUnreadable, match="--forget"):
        load_own_words(file)


def test_a_spoiled_file_is_told_and_nobody_else_may_read_it(tmp_path: Path) -> None:
    """Bytes changed or cut off anywhere: the words, or one sentence; never another error."""
    file = tmp_path / "own-words.npz"
    save_own_words(OwnWords({"next": (ROOM[:4000],), "again": (ROOM[:4000],)}, {}), file)
    assert file.stat().st_mode & 0o077 == 0
    whole, chance = file.read_bytes(), np.random.default_rng(5)
    for _ in range(300):
        spoiled = bytearray(whole)
        for at in chance.integers(0, len(whole), 3):
            spoiled[at] = int(chance.integers(256))
        cut = len(whole) if chance.random() < 0.5 else int(chance.integers(len(whole)))
        file.write_bytes(bytes(spoiled[:cut]))
        try:
            own = load_own_words(file)
        except OwnWordsUnreadable:
            continue
        assert own is not None


def test_forgetting_by_command(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """`reader swatch --forget` deletes one word or everything, and says so; no word, no deed."""
    monkeypatch.setenv("READER_HOME", str(tmp_path))
    assert cli.main(["swatch", "--forget"]) == 0
    assert "Nothing was learned" in capsys.readouterr().out
    save_own_words(OwnWords({"next": (ROOM,), "go back": (ROOM,)}, {}))
    assert cli.main(["swatch", "--forget", "back"]) == 0
    assert "Forgotten: go back" in capsys.readouterr().out
    own = load_own_words()
    assert own is not None
    assert set(own.sounds) == {"next"}
    assert cli.main(["swatch", "--forget"]) == 0
    assert not list(tmp_path.glob("*.npz"))
    assert cli.main(["swatch", "--forget", "lighthouse"]) == 1
    assert "no command" in capsys.readouterr().err


def test_the_devices_tell_what_was_taught(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """None yet; then each word with what it is called; a spoiled file is told and fails."""
    monkeypatch.setenv("READER_HOME", str(tmp_path))
    quiet = ["devices", "--no-voice", "--no-mic"]
    cli.main(quiet)
    assert "Own words: none yet" in capsys.readouterr().out
    save_own_words(OwnWords({"next": (ROOM,), "go back": (ROOM,)}, {"next": "vorwärts"}))
    cli.main(quiet)
    assert "Own words: next as vorwärts, go back, in " in capsys.readouterr().out
    (tmp_path / "own-words.npz").write_bytes(b"PK nonsense")
    assert cli.main(quiet) == 1
    assert "Own words: What you taught me" in capsys.readouterr().out


def test_a_renamed_command_is_called_by_its_name_and_can_be_typed() -> None:
    """What can I say tells the maker's word; typed it moves; a sound without a name is told so."""
    own = OwnWords({}, {"next": "vorwärts", "again": ""})
    clock = FakeClock()
    loop = Loop(None, None, None, None, FakeShelf(), clock)
    loop.voice = voice = FakeVoice(clock, loop.push)
    loop.start(*begin(demo("harbour-lighthouse"), None, tastes_of(Settings(), own), 0.0))
    for words in ("what can i say", "vorwärts"):
        before = loop.state
        loop.push(Typed(words))
        while not loop.events.empty():
            loop.one(loop.events.get())
        if words == "what can i say":
            assert "say: vorwärts, your own sound for again" in voice.said[-1].text
    assert before is not None
    assert loop.state is not None
    assert loop.state.place > before.place


def test_the_arguments_name_commands() -> None:
    """--help works and words are taken as they are taught."""
    parser = argparse.ArgumentParser()
    cli.importlib.import_module("reader.app.swatch").add_arguments(parser)
    assert parser.parse_args(["next", "row done"]).words == ["next", "row done"]
