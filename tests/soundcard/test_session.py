"""A session end to end: spoken into the virtual microphone, heard at the virtual speaker, read on
the screen, and cut off in the middle. The program is a process of its own, never looked into.
"""

from __future__ import annotations

import json
import time
from pathlib import Path

import pytest

from reader.app.rehearsal.maker_voice import makers_voice
from reader.devices.ports import RATE_HZ, DeviceUnavailable
from tests.soundcard.absent import skip_without
from tests.soundcard.listener import missing_listener, sentence_heard
from tests.soundcard.picture import SIZES, path_of, picture_of, words_of
from tests.soundcard.rig import SPEAKER_HZ, SoundCard, decibels, missing, save_wav
from tests.soundcard.working import (
    LIGHTHOUSE,
    InLines,
    command_of,
    environment_of,
    in_lines,
    missing_terminal,
    on_screen,
)

pytestmark = [pytest.mark.soundcard, pytest.mark.slow, pytest.mark.timeout(170)]

TRIES = 3
"""A maker says a word again when nothing comes of it; the ear is measured elsewhere."""

TOTALS = tuple(f"You should have {n} stitches." for n in ("six", "twelve", "eighteen", "thirty"))


class Maker:
    """Speaks with a voice that is not the program's, and again when it was not understood."""

    def __init__(self, card: SoundCard, folder: Path) -> None:
        self._card, self._folder = card, folder
        try:
            self._speak = makers_voice("slt")
        except DeviceUnavailable as trouble:
            skip_without(str(trouble))

    def say(self, words: str) -> None:
        """Once, to its end."""
        path = self._folder / f"{words.replace(' ', '-')}.wav"
        save_wav(path, self._speak(words), RATE_HZ)
        self._card.speak(path)

    def until_heard(self, words: str, program: InLines, told: str) -> str:
        """Says it until the program prints `told`; gives the lines from the first try on."""
        before = len(program.lines)
        for _ in range(TRIES):
            self.say(words)
            try:
                program.line(told, before, 4.0)
            except AssertionError:
                continue
            time.sleep(0.3)
            return program.text(before)
        raise AssertionError(f"{words!r} was said {TRIES} times: {program.text(before)}")


@pytest.fixture
def maker(card: SoundCard, tmp_path: Path) -> Maker:
    """A maker in front of the virtual microphone."""
    skip_without(missing_listener())
    return Maker(card, tmp_path)


def quiet(program: InLines) -> None:
    """Ends the greeting, so that the maker speaks into silence."""
    program.line("Count: ")
    program.key("escape")
    time.sleep(0.3)


def test_a_spoken_word_moves_the_place_and_the_answer_is_heard(
    card: SoundCard, maker: Maker, tmp_path: Path
) -> None:
    """ "Next" leads to round two, and the speaker says how many stitches round one should have; the
    place asked for is told, and after a power cut the work goes on exactly there.
    """
    home = tmp_path / "home"
    command, environment = command_of(LIGHTHOUSE), environment_of(card, home)
    with in_lines(command, environment) as program:
        quiet(program)
        with card.heard_at("spk.monitor") as speaker:
            lines = maker.until_heard("next", program, "Heard: next")
            time.sleep(3.5)
            heard = speaker.samples()
        assert "Place: BASE, Round 2." in lines
        assert sentence_heard(heard, TOTALS) == TOTALS[0]
        program.key("escape")
        lines = maker.until_heard("where am i", program, "Heard: where am i")
        assert "Reader: Base. Round 2. 0 done, 12 left, of 12 stitches." in lines
        assert "Place:" not in lines
        program.cut_power()
    assert saved_row(home) == 2
    with in_lines(command, environment) as program, card.heard_at("spk.monitor") as speaker:
        assert "Welcome back" in program.line("Reader: ").text
        assert "Round 2." in program.line("Reader: ").text
        program.line("Count: 0 of 12 done")
        time.sleep(6)
        again = ("Welcome back to Harbour Lighthouse Doorstop.", "Say next when a step is done.")
        assert sentence_heard(speaker.samples(), again) == again[0]


def saved_row(home: Path) -> int:
    """The printed number of the row where the saved place lies: the 1-based row of the part."""
    (path,) = (home / "progress").glob("*.json")
    place = json.loads(path.read_text())["progress"]["place"]
    row = place["row"] if isinstance(place, dict) else place[1]
    assert isinstance(row, int)
    return row + 1


def test_it_does_not_obey_itself_but_the_maker(
    card: SoundCard, maker: Maker, tmp_path: Path
) -> None:
    """With an acoustic path at -12 dB it reads all its command words aloud and takes none for the
    maker's; said over it by the maker, "next" is obeyed and the reading ends.
    """
    card.echo(-12)
    environment = environment_of(card, tmp_path / "home")
    with in_lines(command_of(LIGHTHOUSE), environment) as program:
        program.line("Count: ")
        time.sleep(8)
        program.key("?")
        program.line("You can say: next")
        before = len(program.lines)
        time.sleep(12)
        assert "Heard" not in program.text(before)
        for _ in range(TRIES):
            program.key("?")
            time.sleep(1.5)
            maker.say("next")
            time.sleep(2.0)
            if "Heard: next" in program.text(before):
                break
        lines = program.text(before)
        assert "Heard: next" in lines
        assert "Place: BASE, Round 2." in lines
        assert "Round 3" not in lines


@pytest.mark.parametrize(("columns", "rows"), [(80, 24), (40, 12)])
def test_the_same_on_a_full_screen(
    card: SoundCard, maker: Maker, tmp_path: Path, columns: int, rows: int
) -> None:
    """A spoken "next" changes the screen, the speaker is heard, nothing of the sound system's own
    noise is drawn, and after a power cut the screen opens at the same place.
    """
    skip_without(missing_terminal())
    command, environment = command_of(LIGHTHOUSE), environment_of(card, tmp_path / "home")
    with on_screen(tmp_path, columns, rows, command, environment) as screen:
        first = screen.until(lambda seen: "of 6" in seen)
        assert "ALSA" not in first
        screen.key("Escape")
        time.sleep(0.5)
        with card.heard_at("spk.monitor") as speaker:
            for _ in range(TRIES):
                maker.say("next")
                time.sleep(2.5)
                if "of 12" in screen.seen():
                    break
            seen = screen.until(lambda seen: "of 12" in seen, 1.0)
            assert decibels(speaker.samples()[-2 * SPEAKER_HZ :]) > -50
        assert "ALSA" not in seen
        screen.cut_power()
    with on_screen(tmp_path, columns, rows, command, environment) as screen:
        screen.until(lambda seen: "of 12" in seen)


@pytest.mark.parametrize(("columns", "rows"), SIZES)
def test_the_pictures_show_what_the_screen_shows(columns: int, rows: int) -> None:
    """The README's pictures are true; `python -m tests.soundcard.picture` draws them anew."""
    skip_without(missing_terminal() or missing())
    kept = path_of(columns, rows).read_text(encoding="utf-8")
    assert words_of(picture_of(columns, rows)) == words_of(kept)
