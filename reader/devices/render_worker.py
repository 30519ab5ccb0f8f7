"""Render worker: a process of its own that turns lines of JSON into WAV files with pyttsx3;
it never plays.

A line in: {"number": 3, "text": "...", "words_per_minute": 170, "path": "/tmp/.../3.wav"}.
A line out: {"number": 3} when the file is there, {"number": 3, "trouble": "..."} when not;
the first line out is {"ready": true} or {"trouble": "..."}.
"""

from __future__ import annotations

import json
import os
import shutil
import sys
import threading
from typing import TextIO

WATCH_PARENT_S = 1.0
"""How often the worker looks whether its program is still there: judgement."""

FINISH_LIMIT_S = 10.0
"""Longest wait for the end of a text; the program's own limit is shorter. Judgement."""


def main() -> None:
    """Renders until standard input ends or the program that started the worker is gone."""
    answers = _keep_answers_apart()
    threading.Thread(target=_leave_with_parent, args=(os.getppid(),), daemon=True).start()
    voice = sys.argv[1] if len(sys.argv) > 1 else ""
    try:
        engine = _Engine(voice)
    except Exception as error:
        _answer(answers, {"trouble": _in_one_line(error)})
        return
    _answer(answers, {"ready": True, "unknown_voice": engine.unknown_voice})
    for line in sys.stdin:
        _answer(answers, _render(engine, json.loads(line)))
    # The program is gone, perhaps killed, and could not remove its sound files itself.
    if len(sys.argv) > 2:
        shutil.rmtree(sys.argv[2], ignore_errors=True)


def _keep_answers_apart() -> TextIO:
    # pyttsx3 and its driver print to standard output; their noise must not mix with our answers.
    answers = os.fdopen(os.dup(1), "w", encoding="utf-8")
    silence = os.open(os.devnull, os.O_WRONLY)
    os.dup2(silence, 1)
    return answers


def _leave_with_parent(parent: int) -> None:
    wait = threading.Event()
    while os.getppid() == parent:
        wait.wait(WATCH_PARENT_S)
    os._exit(0)


class _Engine:
    """pyttsx3, kept from cancelling itself, and waited for until a text is really finished.

    unknown_voice: a voice was asked for that is not there; the usual one speaks in its place.
    """

    def __init__(self, voice: str) -> None:
        import pyttsx3

        self._engine = pyttsx3.init()
        # At the beginning of each text pyttsx3 2.99 stops whatever espeak is still busy with: that
        # may be our new rate or the text itself. We end a text by ending the process, so its stop
        # may rest.
        driver = getattr(self._engine.proxy, "_driver", None)
        if driver is not None and hasattr(driver, "stop"):
            driver.stop = lambda: None
        self._finished = threading.Event()
        self._engine.connect("finished-utterance", self._note_end)
        known = {one.id for one in self._engine.getProperty("voices") or ()} if voice else set()
        self.unknown_voice = bool(voice) and voice not in known
        if voice and not self.unknown_voice:
            self._engine.setProperty("voice", voice)

    def render(self, text: str, words_per_minute: int, path: str) -> str:
        """What went wrong, "" when the file is there."""
        self._finished.clear()
        self._engine.setProperty("rate", words_per_minute)
        self._engine.save_to_file(text, path)
        self._engine.runAndWait()
        # With espeak, runAndWait may return before the file is written; other drivers may not tell
        # the end of a file at all, and have it ready by now.
        if "espeak" in str(self._engine):
            self._finished.wait(FINISH_LIMIT_S)
        return "" if os.path.exists(path) else "no sound file was written"

    def _note_end(self, name: str | None = None, completed: bool = True) -> None:
        if completed:
            self._finished.set()


def _render(engine: _Engine, asked: dict[str, object]) -> dict[str, object]:
    number, rate = asked["number"], asked["words_per_minute"]
    try:
        assert isinstance(rate, int)
        trouble = engine.render(str(asked["text"]), rate, str(asked["path"]))
    except Exception as error:
        trouble = _in_one_line(error)
    return {"number": number, "trouble": trouble} if trouble else {"number": number}


def _in_one_line(error: Exception) -> str:
    return " ".join(str(error).split())[:200] or type(error).__name__


def _answer(answers: TextIO, content: dict[str, object]) -> None:
    answers.write(json.dumps(content) + "\n")
    answers.flush()


if __name__ == "__main__":
    main()
