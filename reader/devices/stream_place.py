"""Stream place: notices when PulseAudio or PipeWire moves our microphone stream to the speaker's
own sound.

When a microphone is pulled out, the sound server may go on with another source: the monitor of the
speaker, and then the program would hear itself. Only `pactl` can tell; without it nothing is
noticed.
"""

from __future__ import annotations

import contextlib
import ctypes
import json
import os
import shutil
import signal
import subprocess
import sys
import threading
from collections.abc import Callable
from typing import Any

ASK_LIMIT_S = 5.0
"""A sound server that takes longer to answer is not asked further for now. Judgement."""

SETTLE_S = 0.15
"""A move causes several notices at once; the last of them counts. Judgement."""

TRY_AGAIN_S = 2.0
"""How often a sound server that does not answer is tried. Judgement."""

Listing = list[dict[str, Any]]


def hears_the_speaker(outputs: Listing, sources: Listing, process: int) -> bool | None:
    """Whether this process's microphone stream is fed by a speaker's monitor;
    None when it has none.
    """
    monitors = {s["index"] for s in sources if s.get("monitor_source")}
    ours = [
        stream["source"]
        for stream in outputs
        if str(stream.get("properties", {}).get("application.process.id")) == str(process)
    ]
    return any(source in monitors for source in ours) if ours else None


class StreamPlace:
    """Watches where our microphone stream is, and tells `moved(True)` and `moved(False)`.

    A stream that is on a monitor from the beginning was put there by the maker and is left alone.
    """

    def __init__(self, moved: Callable[[bool], None]) -> None:
        self._moved = moved
        self._closing = threading.Event()
        self._child: subprocess.Popen[str] | None = None
        self._first: bool | None = None
        self._away = False
        self._thread: threading.Thread | None = None

    def start(self) -> bool:
        """Begins to watch; False when there is no pactl."""
        if shutil.which("pactl") is None:
            return False
        self._thread = threading.Thread(target=self._watch, daemon=True, name="stream place")
        self._thread.start()
        return True

    def close(self) -> None:
        """Ends watching; harmless twice."""
        self._closing.set()
        child = self._child
        if child is not None:
            child.kill()
        if self._thread is not None:
            self._thread.join(2.0)

    def look(self) -> None:
        """Asks the sound server once, and tells when the stream has moved."""
        outputs, sources = _listing("source-outputs"), _listing("sources")
        if outputs is None or sources is None:
            return
        on_monitor = hears_the_speaker(outputs, sources, os.getpid())
        if on_monitor is None:
            return
        if self._first is None:
            self._first = on_monitor
        away = on_monitor and not self._first
        if away != self._away:
            self._away = away
            self._moved(away)

    def _watch(self) -> None:
        while not self._closing.is_set():
            self.look()
            with contextlib.suppress(OSError):
                self._follow()
            self._closing.wait(TRY_AGAIN_S)

    def _follow(self) -> None:
        """Looks after each notice until the server goes away."""
        child = subprocess.Popen(
            ["pactl", "subscribe"],
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
            start_new_session=True,
            preexec_fn=_die_with_parent if sys.platform == "linux" else None,
        )
        self._child = child
        due = threading.Event()
        looker = threading.Thread(target=self._look_when_due, args=(due, child), daemon=True)
        looker.start()
        assert child.stdout is not None
        for line in child.stdout:
            # A client line is our own question; to answer it with another would never end.
            if "source" in line or "server" in line:
                due.set()
        child.wait(2.0)
        due.set()
        looker.join(ASK_LIMIT_S)

    def _look_when_due(self, due: threading.Event, child: subprocess.Popen[str]) -> None:
        while child.poll() is None and not self._closing.is_set():
            if due.wait(1.0):
                self._closing.wait(SETTLE_S)
                due.clear()
                self.look()


def _listing(what: str) -> Listing | None:
    try:
        done = subprocess.run(
            ["pactl", "--format=json", "list", what],
            stdin=subprocess.DEVNULL,
            capture_output=True,
            text=True,
            timeout=ASK_LIMIT_S,
            check=False,
        )
        found = json.loads(done.stdout) if done.returncode == 0 else None
    except (OSError, ValueError, subprocess.TimeoutExpired):
        return None
    return found if isinstance(found, list) else None


def _die_with_parent() -> None:
    # The watching thread lives as long as the program, so its end is the program's end.
    ctypes.CDLL(None).prctl(1, signal.SIGKILL)
