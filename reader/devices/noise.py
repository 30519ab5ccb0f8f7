"""Noise: what sound libraries write to file descriptor 2 goes to a log, never over a screen."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from pathlib import Path

LARGEST = 1_000_000
"""Bytes; a longer log is begun anew. Judgement."""


def noise_to(log: Path | None) -> Callable[[], None]:
    """Sends descriptor 2 to the log (None: nowhere) and gives back how to undo it.

    Python's own sys.stderr goes on writing where it wrote before, so our sentences stay seen, and
    so does the stream that a full screen is drawn on, which is sys.__stderr__. A log that cannot be
    written is replaced by nowhere.
    """
    try:
        before = os.dup(2)
    except OSError:
        return lambda: None
    old_stderr, old_first = sys.stderr, sys.__stderr__
    target = _open(log)
    os.dup2(target, 2)
    os.close(target)
    if _writes_to(old_stderr, 2):
        sys.stderr = os.fdopen(before, "w", buffering=1, closefd=False, errors="backslashreplace")
        sys.__stderr__ = sys.stderr  # type: ignore[misc]

    def undo() -> None:
        sys.stderr = old_stderr
        sys.__stderr__ = old_first  # type: ignore[misc]
        os.dup2(before, 2)

    return undo


def _open(log: Path | None) -> int:
    if log is not None:
        try:
            log.parent.mkdir(parents=True, exist_ok=True)
            begin = log.exists() and log.stat().st_size > LARGEST
            flags = os.O_WRONLY | os.O_CREAT | (os.O_TRUNC if begin else os.O_APPEND)
            return os.open(log, flags, 0o600)
        except OSError:
            pass
    return os.open(os.devnull, os.O_WRONLY)


def _writes_to(stream: object, number: int) -> bool:
    try:
        return bool(stream.fileno() == number)  # type: ignore[attr-defined]
    except (AttributeError, OSError, ValueError):
        return False
