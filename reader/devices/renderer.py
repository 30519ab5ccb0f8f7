"""Renderer: a sentence in, its sound out, by a warm worker process that is replaced when it
hangs or dies.
"""

from __future__ import annotations

import contextlib
import json
import os
import queue
import subprocess
import sys
import tempfile
import threading
import wave
from collections import OrderedDict
from pathlib import Path
from typing import IO

import numpy as np

from reader.devices.ports import DeviceUnavailable, Samples
from reader.devices.resample import at_our_rate

START_LIMIT_S = 15.0
"""A cold pyttsx3 takes 0.2 s to be ready; a slow disk gets fifteen seconds. Judgement."""

RENDER_LIMIT_S = 4.0
"""Five seconds of speech render in some 30 ms; what takes this long hangs. Judgement."""

LIMIT_PER_CHARACTER_S = 0.01
"""Added for long texts. Judgement."""

KEPT = 96
"""Sentences kept rendered; at five seconds each about 15 MB. Judgement."""

NO_VOICE = (
    "There is no voice: the speech program espeak-ng is missing or broken, so nothing is spoken "
    "and the words are shown only; on Debian, install espeak-ng and start again."
)


class Renderer:
    """Renders sentences; may be called from any thread, one at a time is rendered.

    voice: pyttsx3's identifier of a voice, "" for its own choice. command: the worker, for tests.
    unknown_voice: the one asked for is not there, and the usual one speaks.
    """

    def __init__(self, voice: str = "", command: tuple[str, ...] = ()) -> None:
        self._lock = threading.Lock()
        self._kept: OrderedDict[tuple[str, int], Samples] = OrderedDict()
        self._folder = tempfile.TemporaryDirectory(prefix="reader-voice-")
        module = ("-m", "reader.devices.render_worker")
        self._command = command or (sys.executable, *module, voice, self._folder.name)
        self._worker: _Worker | None = None
        self._number = 0
        self._closed = False
        self.unknown_voice = False
        self.restarts = 0

    def render(self, text: str, words_per_minute: int) -> Samples:
        """int16[n], 16 kHz mono. words_per_minute: 80-500, anything outside is brought inside.

        Raises DeviceUnavailable with one sentence when there is no voice at all.
        """
        rate = max(80, min(500, int(words_per_minute)))
        if not any(c.isalnum() for c in text):
            return np.zeros(0, np.int16)
        key = (text, rate)
        with self._lock:
            if key in self._kept:
                self._kept.move_to_end(key)
                return self._kept[key]
            sound = self._render_now(text, rate)
            self._kept[key] = sound
            while len(self._kept) > KEPT:
                self._kept.popitem(last=False)
            return sound

    def has(self, text: str, words_per_minute: int) -> bool:
        """Whether a sentence is rendered already."""
        return (text, max(80, min(500, int(words_per_minute)))) in self._kept

    def warm(self) -> None:
        """Starts the worker, so that the first sentence does not wait for it;
        raises as render does.
        """
        with self._lock:
            self._running()

    def close(self) -> None:
        """Ends the worker and removes its files; harmless twice."""
        with self._lock:
            self._closed = True
            self._drop_worker()
            self._folder.cleanup()

    def _render_now(self, text: str, rate: int) -> Samples:
        trouble = ""
        for _ in range(2):
            worker = self._running()
            self._number += 1
            path = Path(self._folder.name) / f"{self._number}.wav"
            asked = {
                "number": self._number,
                "text": text,
                "words_per_minute": rate,
                "path": str(path),
            }
            limit_s = RENDER_LIMIT_S + LIMIT_PER_CHARACTER_S * len(text)
            answer = worker.ask(asked, limit_s)
            if answer is not None and "trouble" not in answer:
                return _take(path)
            trouble = str((answer or {}).get("trouble", "it did not answer"))
            self._drop_worker()
            self.restarts += 1
        raise DeviceUnavailable(NO_VOICE) from RuntimeError(trouble)

    def _running(self) -> _Worker:
        if self._closed:
            raise DeviceUnavailable("The voice is closed.")
        if self._worker is not None and self._worker.alive():
            return self._worker
        self._drop_worker()
        worker = _Worker(self._command)
        answer = worker.answer(START_LIMIT_S)
        if answer is None or "ready" not in answer:
            worker.end()
            raise DeviceUnavailable(NO_VOICE)
        self._worker = worker
        self.unknown_voice = bool(answer.get("unknown_voice"))
        return worker

    def _drop_worker(self) -> None:
        if self._worker is not None:
            self._worker.end()
            self._worker = None


class _Worker:
    """The process, and a thread that takes its answers so that waiting for one can have a limit."""

    def __init__(self, command: tuple[str, ...]) -> None:
        root = str(Path(__file__).parents[2])
        paths = [root, os.environ.get("PYTHONPATH", "")]
        environment = {**os.environ, "PYTHONPATH": os.pathsep.join(p for p in paths if p)}
        try:
            self._process = subprocess.Popen(
                command,
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
                text=True,
                env=environment,
                # Ctrl C at the keyboard belongs to the program; the worker is ended by it.
                start_new_session=True,
            )
        except OSError as error:
            raise DeviceUnavailable(NO_VOICE) from error
        self._answers: queue.SimpleQueue[dict[str, object] | None] = queue.SimpleQueue()
        threading.Thread(target=self._take_answers, daemon=True, name="voice answers").start()

    def alive(self) -> bool:
        return self._process.poll() is None

    def ask(self, asked: dict[str, object], limit_s: float) -> dict[str, object] | None:
        stdin = self._stdin()
        try:
            stdin.write(json.dumps(asked) + "\n")
            stdin.flush()
        except (OSError, ValueError):
            return None
        return self.answer(limit_s)

    def answer(self, limit_s: float) -> dict[str, object] | None:
        try:
            return self._answers.get(timeout=limit_s)
        except queue.Empty:
            return None

    def end(self) -> None:
        self._process.kill()
        with contextlib.suppress(OSError):
            self._stdin().close()
        with contextlib.suppress(subprocess.TimeoutExpired):
            self._process.wait(2.0)

    def _stdin(self) -> IO[str]:
        assert self._process.stdin is not None
        return self._process.stdin

    def _take_answers(self) -> None:
        assert self._process.stdout is not None
        with contextlib.suppress(ValueError, OSError):
            for line in self._process.stdout:
                self._answers.put(json.loads(line))
        self._answers.put(None)


def _take(path: Path) -> Samples:
    with wave.open(str(path)) as sound:
        rate = sound.getframerate()
        samples = np.frombuffer(sound.readframes(sound.getnframes()), dtype=np.int16)
    path.unlink(missing_ok=True)
    return trimmed(at_our_rate(samples, rate))


def trimmed(sound: Samples) -> Samples:
    """The sound without the silence at its ends, save 10 ms before and 60 ms behind."""
    loud = np.flatnonzero(np.abs(sound.astype(np.int32)) > 80)
    if len(loud) == 0:
        return sound[:0]
    return sound[max(0, loud[0] - 160) : loud[-1] + 960]
