"""Working: the real `reader work`, started as a maker starts it, on the virtual sound card.

Nothing of the program is imported: it is heard at the speaker, spoken to at the microphone, and
read as its lines or its terminal are read.
"""

from __future__ import annotations

import contextlib
import os
import shutil
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from tests.soundcard.rig import SoundCard, die_with_parent

ROOT = Path(__file__).parents[2]
LIGHTHOUSE = ROOT / "demos" / "harbour-lighthouse.txt"
PATIENCE_S = 20.0
"""Longest wait for anything that should come: ten times what a free machine needs."""


@dataclass(frozen=True, slots=True)
class Line:
    """A line that the program printed, and the second of the monotonic clock when it came."""

    text: str
    at_s: float


def command_of(pattern: Path, *words: str) -> list[str]:
    """The program's command line."""
    return [sys.executable, "-m", "reader.app.cli", "work", str(pattern), *words]


def environment_of(card: SoundCard | None, home: Path, **more: str) -> dict[str, str]:
    """A maker's environment with a data folder of its own."""
    sound = card.environment if card is not None else {}
    return {
        **os.environ,
        **sound,
        "READER_HOME": str(home),
        "PYTHONPATH": str(ROOT),
        "PYTHONUNBUFFERED": "1",
        **more,
    }


class InLines:
    """The program in plain lines: keys through a pipe, its lines with their moments."""

    def __init__(self, command: list[str], environment: dict[str, str]) -> None:
        self.lines: list[Line] = []
        self.began_s = time.monotonic()
        self.running = subprocess.Popen(
            command,
            cwd=ROOT,
            env=environment,
            text=True,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            preexec_fn=die_with_parent,
        )
        threading.Thread(target=self._read, daemon=True).start()

    def key(self, name: str) -> float:
        """Presses a key; gives the moment."""
        assert self.running.stdin is not None
        at_s = time.monotonic()
        self.running.stdin.write(f"{name}\n")
        self.running.stdin.flush()
        return at_s

    def line(self, words: str, after: int = 0, limit_s: float = PATIENCE_S) -> Line:
        """The first line with these words, from line number `after` on; fails when none comes."""
        until_s = time.monotonic() + limit_s
        while time.monotonic() < until_s:
            for one in self.lines[after:]:
                if words in one.text:
                    return one
            time.sleep(0.005)
        raise AssertionError(f"{words!r} did not come; there came: {self.text(after)}")

    def text(self, after: int = 0) -> str:
        """All lines from number `after` on."""
        return "\n".join(line.text for line in self.lines[after:])

    def cut_power(self) -> None:
        """Ends it as a power cut does."""
        self.running.send_signal(signal.SIGKILL)
        self.running.wait(10)

    def _read(self) -> None:
        assert self.running.stdout is not None
        with contextlib.suppress(ValueError):
            for raw in self.running.stdout:
                self.lines.append(Line(raw.rstrip("\n"), time.monotonic()))


@contextlib.contextmanager
def in_lines(command: list[str], environment: dict[str, str]) -> Iterator[InLines]:
    """The program in plain lines for a while; ended at the end."""
    working = InLines([*command, "--plain"], environment)
    try:
        yield working
    finally:
        if working.running.poll() is None:
            working.cut_power()


def missing_terminal() -> str:
    """Why there can be no full screen here, "" when there can."""
    return "" if shutil.which("tmux") else "the full screen needs a terminal (Debian: tmux)"


class OnScreen:
    """The program on a full screen, in a terminal of its own."""

    def __init__(self, folder: Path, columns: int, rows: int) -> None:
        # A name of its own: a server that is just ending would take the next one with it.
        self._socket = str(folder / f"terminal-{time.monotonic_ns()}")
        self._size = ("-x", str(columns), "-y", str(rows))

    def start(self, command: list[str], environment: dict[str, str]) -> None:
        """Starts the program; the terminal ends with it."""
        terminal = {**environment, "TERM": "xterm-256color", "LANG": "C.UTF-8"}
        words = ["-f", os.devnull, "new-session", "-d", *self._size, *command]
        self._tmux(words, terminal)
        self._tmux(["set-option", "-g", "status", "off"])

    def key(self, *names: str) -> None:
        """Presses keys, by tmux's names for them."""
        self._tmux(["send-keys", *names])

    def seen(self, colours: bool = False) -> str:
        """What the terminal shows now, with the codes of its colours if asked for."""
        return self._tmux(["capture-pane", "-p", *(["-e"] if colours else [])])

    def until(self, holds: Callable[[str], bool], limit_s: float = PATIENCE_S) -> str:
        """What is shown as soon as this holds of it; fails when it never does."""
        until_s = time.monotonic() + limit_s
        seen = ""
        while time.monotonic() < until_s:
            seen = self.seen()
            if holds(seen):
                return seen
            time.sleep(0.05)
        raise AssertionError(f"never shown; at last there stood:\n{seen}")

    def cut_power(self) -> None:
        """Ends program and terminal as a power cut does."""
        process = int(self._tmux(["display-message", "-p", "#{pane_pid}"]))
        os.kill(process, signal.SIGKILL)

    def close(self) -> None:
        """Ends the terminal, whatever runs in it."""
        subprocess.run(["tmux", "-S", self._socket, "kill-server"], capture_output=True, timeout=10)

    def _tmux(self, words: list[str], environment: dict[str, str] | None = None) -> str:
        done = subprocess.run(
            ["tmux", "-S", self._socket, *words],
            cwd=ROOT,
            env=environment,
            text=True,
            capture_output=True,
            timeout=10,
        )
        assert done.returncode == 0, f"tmux {words[0]}: {done.stderr}"
        return done.stdout


@contextlib.contextmanager
def on_screen(
    folder: Path, columns: int, rows: int, command: list[str], environment: dict[str, str]
) -> Iterator[OnScreen]:
    """The program on a full screen of this size for a while."""
    terminal = OnScreen(folder, columns, rows)
    try:
        terminal.start(command, environment)
        yield terminal
    finally:
        terminal.close()
