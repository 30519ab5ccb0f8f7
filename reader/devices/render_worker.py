"""Render worker: a process of its own that turns lines of JSON into WAV files with pyttsx3;
it never plays.

A line in: {"number": 3, "text": "...", "words_per_minute": 170, "path": "/tmp/.../3.wav"}.
A line out: {"number": 3} when the file is there, {"number": 3, "trouble": "..."} when not;
the first line out is {"ready": true} or {"trouble": "..."}.
"""

from __future__ import annotations

import json
import os
import sys
import threading
from typing import TextIO

WATCH_PARENT_S = 1.0
"""How often the worker looks whether its program is still there: judgement."""


def main() -> None:
    """Renders until standard input ends or the program that started the worker is gone."""
    answers = _keep_answers_apart()
    threading.Thread(target=_leave_with_parent, args=(os.getppid(),), daemon=True).start()
    voice = sys.argv[1] if len(sys.argv) > 1 else ""
    try:
        import pyttsx3

        engine = pyttsx3.init()
        if voice:
            engine.setProperty("voice", voice)
    except Exception as error:
        _answer(answers, {"trouble": _in_one_line(error)})
        return
    _answer(answers, {"ready": True})
    for line in sys.stdin:
        _answer(answers, _render(engine, json.loads(line)))


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


def _render(engine: object, asked: dict[str, object]) -> dict[str, object]:
    number = asked["number"]
    try:
        engine.setProperty("rate", asked["words_per_minute"])  # type: ignore[attr-defined]
        engine.save_to_file(asked["text"], asked["path"])  # type: ignore[attr-defined]
        engine.runAndWait()  # type: ignore[attr-defined]
    except Exception as error:
        return {"number": number, "trouble": _in_one_line(error)}
    if not os.path.exists(str(asked["path"])):
        return {"number": number, "trouble": "no sound file was written"}
    return {"number": number}


def _in_one_line(error: Exception) -> str:
    return " ".join(str(error).split())[:200] or type(error).__name__


def _answer(answers: TextIO, content: dict[str, object]) -> None:
    answers.write(json.dumps(content) + "\n")
    answers.flush()


if __name__ == "__main__":
    main()
