"""The swatch end to end, by voice alone: `reader swatch` is taught through the virtual microphone
by a voice the ear was never trained with, then `reader work` is moved by a word of that voice's own
language. Both programs are processes of their own, never looked into.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.soundcard.absent import skip_without
from tests.soundcard.rig import SoundCard
from tests.soundcard.working import LIGHTHOUSE, InLines, command_of, environment_of, in_lines

pytestmark = [pytest.mark.soundcard, pytest.mark.slow, pytest.mark.timeout(170)]

TRIES = 4
WAYS = (("140", "45"), ("150", "50"), ("165", "55"))
"""Words a minute and pitch: a maker never says a word twice alike."""
SLOWEST_S = 8.0
"""Longest time to an answer on a busy machine; a free one needs half a second."""


class Finn:
    """A maker who speaks English as espeak-ng's Finnish voice does."""

    def __init__(self, card: SoundCard, folder: Path) -> None:
        self._card, self._folder = card, folder

    def say(self, words: str, way: int = 1) -> None:
        """Once, to its end."""
        path = self._folder / "said.wav"
        pace, height = WAYS[way]
        command = ["espeak-ng", "-v", "fi", "-s", pace, "-p", height, "-w", str(path), words]
        subprocess.run(command, check=True, timeout=20, capture_output=True)
        self._card.speak(path)

    def teach(self, words: str, program: InLines, asked: str, told: str, after: int) -> int:
        """Waits to be asked, cuts the talk short and says it, three times or as often as it takes
        until the program says so; gives the number of lines before.
        """
        program.line(asked, after)
        before = len(program.lines)
        time.sleep(0.5)
        program.key("escape")
        time.sleep(0.6)
        for tried in range(TRIES * len(WAYS)):
            self.say(words, tried % len(WAYS))
            try:
                program.line(told, before, 1.2 if tried + 1 < len(WAYS) else SLOWEST_S / 2)
            except AssertionError:
                continue
            return before
        raise AssertionError(f"{words!r} was not learned: {program.text(before)}")

    def answer(self, words: str, program: InLines, told: str, after: int) -> None:
        """Answers until the program says so.

        A word is only said again once it is plain that it was not understood: said too early, on a
        busy machine, it would answer the next question.
        """
        for _ in range(TRIES):
            time.sleep(0.5)
            program.key("escape")
            time.sleep(0.4)
            before = len(program.lines)
            self.say(words)
            until_s = time.monotonic() + SLOWEST_S
            while time.monotonic() < until_s and "not sure" not in program.text(before):
                if told in program.text(after):
                    return
                time.sleep(0.02)
        raise AssertionError(f"{words!r} was said {TRIES} times: {program.text(after)}")


def test_taught_by_voice_alone_a_word_of_another_language_moves_the_work(
    card: SoundCard, tmp_path: Path
) -> None:
    """Yes, no and next are learned; asked, the maker says yes, next, and three times "eteenpäin";
    no ends it. In the evening "eteenpäin" leads to round two; forgotten, it does nothing.
    """
    skip_without("" if shutil.which("espeak-ng") else "the maker needs Debian's espeak-ng")
    maker, home = Finn(card, tmp_path), tmp_path / "home"
    environment = environment_of(card, home, READER_RATE="300")
    swatch = [sys.executable, "-m", "reader.app.cli", "swatch"]
    with in_lines([*swatch, "yes", "no", "next"], environment) as program:
        own = "your own word or sound for next"
        after = maker.teach("yes", program, "Now say yes, three times", "No, three times", 0)
        after = maker.teach("no", program, "No, three times", "Next, three times", after)
        after = maker.teach("next", program, "Next, three times", "sound of your own", after)
        maker.answer("yes", program, "Which command", after)
        maker.answer("next", program, own, after)
        after = maker.teach("eteenpäin", program, own, "That now means next", after)
        maker.answer("no", program, "I know", after)
        assert "three words" in program.line("I know", after).text
        program.running.wait(20)
    assert (home / "own-words.npz").exists()
    with in_lines(command_of(LIGHTHOUSE), environment) as program:
        program.line("Count: ")
        program.key("escape")
        time.sleep(0.5)
        before = len(program.lines)
        maker.answer("eteenpäin", program, "Heard: next", before)
        program.line("Place: BASE, Round 2.", before)
    subprocess.run([*swatch, "--forget"], env=environment, check=True, timeout=30)
    assert not (home / "own-words.npz").exists()


def test_without_a_microphone_it_says_so_in_one_sentence(tmp_path: Path) -> None:
    """Status 1, one line, nothing kept."""
    environment = environment_of(None, tmp_path, PULSE_SERVER=f"unix:{tmp_path}/nobody")
    command = [sys.executable, "-m", "reader.app.cli", "swatch", "--plain", "--no-voice"]
    done = subprocess.run(command, env=environment, capture_output=True, text=True, timeout=60)
    assert done.returncode == 1
    assert done.stderr.strip().splitlines() == [
        "There is no microphone, so nothing can be learned; plug one in and begin again."
    ]
    assert not list(tmp_path.glob("*.npz"))
