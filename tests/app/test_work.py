"""`reader work`, started as a maker starts it: keys through a pipe, bad files, a power cut."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
LIGHTHOUSE = ROOT / "demos" / "harbour-lighthouse.txt"
QUIET = ("--plain", "--no-voice", "--no-mic")


def _start(home: Path, *words: str) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-m", "reader.app.cli", "work", *words],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        cwd=ROOT,
        env={**os.environ, "READER_HOME": str(home), "PYTHONPATH": str(ROOT)},
    )


def _lines_until(running: subprocess.Popen[str], words: str) -> str:
    assert running.stdout is not None
    seen = []
    for line in running.stdout:
        seen.append(line)
        if words in line:
            return "".join(seen)
    raise AssertionError(f"{words!r} was never shown; instead: {''.join(seen)}")


@pytest.mark.timeout(60)
def test_a_place_outlives_a_power_cut(tmp_path: Path) -> None:
    """Killed without warning after two moves, it starts again at the step that was worked on."""
    first = _start(tmp_path, str(LIGHTHOUSE), *QUIET)
    assert first.stdin is not None
    first.stdin.write(" \n \n")
    first.stdin.flush()
    _lines_until(first, "Place: BASE, Round 3")
    first.kill()
    first.wait(10)
    second = _start(tmp_path, str(LIGHTHOUSE), *QUIET)
    _lines_until(second, "You are at: Base. Round 3")
    second.kill()
    second.wait(10)


BAD = {
    "empty": b"",
    "garbage": bytes(range(256)) * 80,
    "novel": b"It was a dark evening at the harbour and nobody spoke of it.\n" * 1500,
}


@pytest.mark.parametrize("content", BAD.values(), ids=BAD)
def test_what_is_no_pattern_is_refused_in_one_sentence(tmp_path: Path, content: bytes) -> None:
    """One line on stderr, status 1, nothing saved."""
    file = tmp_path / "file.txt"
    file.write_bytes(content)
    running = _start(tmp_path / "home", str(file), *QUIET)
    _, told = running.communicate("", timeout=60)
    assert running.returncode == 1
    assert len(told.strip().splitlines()) == 1
    assert file.name in told
    assert not list((tmp_path / "home").rglob("*.json"))


def test_a_model_that_is_not_there_is_named(tmp_path: Path) -> None:
    """Asked for a model that is missing, it names the directory in one sentence, status 1."""
    words = (str(LIGHTHOUSE), "--plain", "--no-voice", "--model", str(tmp_path / "none"))
    running = _start(tmp_path / "home", *words)
    _, told = running.communicate("", timeout=60)
    assert running.returncode == 1
    assert str(tmp_path / "none") in told


@pytest.mark.timeout(60)
def test_a_folder_that_cannot_be_written_is_told_and_the_work_goes_on(tmp_path: Path) -> None:
    """Where nothing can be saved it says so, and the next step is still read."""
    blocked = tmp_path / "blocked"
    blocked.write_text("a file where the folder should be")
    running = _start(blocked, str(LIGHTHOUSE), *QUIET)
    assert running.stdin is not None
    running.stdin.write(" \n")
    running.stdin.flush()
    _lines_until(running, "Place: BASE, Round 2")
    running.kill()
    shown, told = running.communicate(timeout=10)
    assert "blocked" in told + shown
