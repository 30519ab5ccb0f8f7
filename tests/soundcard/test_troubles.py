"""What can go wrong around the program, met by the program itself: no sound system, one that dies
and comes back, a folder that is read-only, a disk that is full. Each is told once, in one sentence;
keys go on working.
"""

from __future__ import annotations

import subprocess
import time
from pathlib import Path

import pytest

from tests.soundcard.absent import skip_without
from tests.soundcard.rig import SoundCard, decibels
from tests.soundcard.working import LIGHTHOUSE, InLines, command_of, environment_of, in_lines

pytestmark = [pytest.mark.soundcard, pytest.mark.timeout(120)]

NO_SPEAKER, NO_MICROPHONE = "There is no speaker", "There is no microphone"
QUIET = ("--no-voice", "--no-mic")
ALONE = ["unshare", "--map-root-user", "--mount", "sh", "-c"]
"""A mount of its own, seen by nobody else (util-linux)."""


def times(program: InLines, words: str) -> int:
    """In how many lines these words stand."""
    return sum(words in line.text for line in program.lines)


def keys_work(program: InLines) -> None:
    """The space bar leads to the next round."""
    program.key("space")
    program.line("Place: BASE, Round 2.")


def told_once_and_back(program: InLines, card: SoundCard) -> None:
    """Keys work while both are gone; they are taken again, heard, and were told of once."""
    keys_work(program)
    card.start()
    program.line("The speaker is back.")
    program.line("The microphone is back.")
    with card.heard_at("spk.monitor") as speaker:
        program.key("w")
        time.sleep(2)
        assert decibels(speaker.samples()) > -50
    assert times(program, NO_SPEAKER) == times(program, NO_MICROPHONE) == 1
    assert "Traceback" not in program.text()


def test_without_any_sound_system_it_says_so_and_keys_work(card: SoundCard, tmp_path: Path) -> None:
    """No speaker and no microphone at the start; both are taken as soon as they are there."""
    card.kill()
    with in_lines(command_of(LIGHTHOUSE), environment_of(card, tmp_path)) as program:
        program.line(NO_SPEAKER)
        program.line(NO_MICROPHONE)
        told_once_and_back(program, card)


def test_a_sound_system_that_dies_and_comes_back(card: SoundCard, tmp_path: Path) -> None:
    """Lost in the middle of the greeting: told once, keys work meanwhile, the voice returns."""
    with in_lines(command_of(LIGHTHOUSE), environment_of(card, tmp_path)) as program:
        program.line("Count: ")
        card.kill()
        program.line(NO_SPEAKER)
        program.line(NO_MICROPHONE)
        told_once_and_back(program, card)


def in_small_folder(folder: Path, option: str, words: list[str]) -> list[str]:
    """The command where the folder is a file system of its own, mounted with this option."""
    try_it = [*ALONE, f"mount -t tmpfs tmpfs {folder}"]
    can = subprocess.run(try_it, capture_output=True, timeout=10)
    reason = can.stderr.decode().strip()
    skip_without(f"a file system of its own cannot be mounted ({reason})" if reason else "")
    full = f"head -c 4096 /dev/zero > {folder}/filled 2>/dev/null"
    line = f'mount -t tmpfs -o {option} tmpfs {folder} && {{ {full}; exec "$@"; }}'
    return [*ALONE, line, "sh", *words]


@pytest.mark.parametrize(
    ("option", "reason"), [("ro", "read-only file system"), ("size=4k", "no space left on device")]
)
def test_a_folder_that_takes_nothing(tmp_path: Path, option: str, reason: str) -> None:
    """Where the place cannot be kept, that is told once with the system's reason; the work goes on
    and every step is still read.
    """
    home = tmp_path / "home"
    home.mkdir()
    command = in_small_folder(home, option, command_of(LIGHTHOUSE, *QUIET))
    with in_lines(command, environment_of(None, home)) as program:
        program.line("Count: ")
        keys_work(program)
        told = program.line("cannot be saved").text
        assert reason in told
        assert str(home) in told
        program.key("space")
        program.line("Place: BASE, Round 3")
        assert times(program, "cannot be saved") == 1
        assert "Traceback" not in program.text()
