"""Whole file: writes a file entirely or not at all, whatever happens in between."""

from __future__ import annotations

import contextlib
import os
from pathlib import Path


def write_whole(path: Path, content: bytes, keep_before: Path | None = None) -> None:
    """Writes beside and renames; the file that stood there before is kept as `keep_before`.

    After a crash or a power cut there is the old file or the new one, never half of one.
    Raises OSError when the folder cannot be written; then nothing has changed.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    beside = path.with_name(f".{path.name}.{os.getpid()}.new")
    try:
        with beside.open("wb") as out:
            out.write(content)
            out.flush()
            os.fsync(out.fileno())
        if keep_before is not None and path.exists():
            _keep(path, keep_before)
        os.replace(beside, path)
    except OSError:
        with contextlib.suppress(OSError):
            beside.unlink(missing_ok=True)
        raise
    _sync_folder(path.parent)


def _keep(path: Path, kept: Path) -> None:
    # A second name for the same file first, so that at no moment both names are missing.
    beside = kept.with_name(f".{kept.name}.{os.getpid()}.new")
    beside.unlink(missing_ok=True)
    try:
        os.link(path, beside)
    except OSError:  # a file system without hard links
        beside.write_bytes(path.read_bytes())
    os.replace(beside, kept)


def _sync_folder(folder: Path) -> None:
    # Only so is the rename itself on the disk; not every system lets a folder be opened.
    with contextlib.suppress(OSError):
        opened = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(opened)
        finally:
            os.close(opened)
