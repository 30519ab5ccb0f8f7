"""Progress file: what the session wants remembered, one JSON file a pattern, with the last good
copy beside it.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from pydantic import BaseModel, ConfigDict, ValidationError

from reader.devices.folders import data_folder
from reader.devices.ports import ProgressUnreadable
from reader.devices.whole_file import write_whole

VERSION = 1
"""Version of the file, not of the session's progress inside it."""

Content = dict[str, object]
MIGRATIONS: dict[int, Callable[[Content], Content]] = {}
"""From a version to the next one; empty while there is one version only."""


class Saved(BaseModel):
    """The file: which pattern it belongs to, when it was written, and the session's own
    progress.
    """

    model_config = ConfigDict(extra="forbid", frozen=True)
    version: int = VERSION
    fingerprint: str
    saved_at: str = ""
    progress: dict[str, object]


class FileShelf:
    """Keeps progress in a folder; saves whole or not at all; keeps the last good copy.

    folder: None for the maker's own. notice: after `load`, a sentence to say, "" when all was well.
    """

    def __init__(self, folder: Path | None = None) -> None:
        self.folder = (folder or data_folder()) / "progress"
        self.notice = ""

    def load(self, fingerprint: str) -> dict[str, object] | None:
        """The progress saved last, None when this pattern is new.

        A damaged file is set aside and the copy before it is taken; `notice` says so.
        Raises ProgressUnreadable when neither can be read, or a newer program wrote them.
        """
        self.notice = ""
        path, before = self._paths(fingerprint)
        trouble: ProgressUnreadable | None = None
        for candidate in (path, before):
            try:
                saved = read_saved(candidate)
            except ProgressUnreadable as error:
                trouble = trouble or error
                continue
            if saved is not None:
                if trouble is not None:
                    self._set_aside(path)
                    self.notice = (
                        "The place saved last was damaged, so the one before it is used; "
                        "check where you are."
                    )
                return dict(saved.progress)
        if trouble is not None:
            raise trouble
        return None

    def save(self, fingerprint: str, progress: dict[str, object]) -> None:
        """Saves before it returns; raises ProgressUnreadable when it cannot, and the old file
        stands.
        """
        path, before = self._paths(fingerprint)
        saved = Saved(
            fingerprint=fingerprint,
            saved_at=datetime.now(UTC).isoformat(timespec="seconds"),
            progress=progress,
        )
        try:
            write_whole(path, saved.model_dump_json(indent=1).encode(), keep_before=before)
        except OSError as error:
            raise ProgressUnreadable(
                f"Your place cannot be saved in {self.folder}, because {_reason(error)}; "
                "the session goes on, but nothing is remembered until that is mended."
            ) from error

    def all_saved(self) -> tuple[Saved, ...]:
        """Every project that can be read, the one worked last first;
        unreadable ones are left out.
        """
        found = []
        for path in self.folder.glob("*.json"):
            try:
                saved = read_saved(path)
            except ProgressUnreadable:
                continue
            if saved is not None:
                found.append(saved)
        return tuple(sorted(found, key=lambda s: s.saved_at, reverse=True))

    def _paths(self, fingerprint: str) -> tuple[Path, Path]:
        name = re.sub(r"[^A-Za-z0-9_-]", "_", fingerprint)[:100] or "unnamed"
        return self.folder / f"{name}.json", self.folder / f"{name}.before"

    def _set_aside(self, path: Path) -> None:
        try:
            path.replace(path.with_suffix(".damaged"))
        except OSError:
            self.notice = "The place saved last is damaged and cannot be set aside."


def read_saved(path: Path) -> Saved | None:
    """The file's content brought to the present version, None when there is no file.

    Raises ProgressUnreadable with one sentence.
    """
    try:
        text = path.read_bytes()
    except FileNotFoundError:
        return None
    except OSError as error:
        raise ProgressUnreadable(
            f"Your saved place in {path} cannot be read, because {_reason(error)}."
        ) from error
    try:
        saved = Saved.model_validate_json(text)
        if saved.version == VERSION:
            return saved
        return Saved.model_validate(_migrated(saved.model_dump(), path))
    except ValidationError as error:
        raise ProgressUnreadable(
            f"Your saved place in {path} is damaged; move that file away to begin anew, "
            "or put back a copy of your own."
        ) from error


def _migrated(content: Content, path: Path) -> Content:
    version = content["version"]
    assert isinstance(version, int)
    if version > VERSION:
        raise ProgressUnreadable(
            f"Your saved place in {path} was written by a newer version of this program; "
            "install that version to go on from it."
        )
    while version < VERSION:
        step = MIGRATIONS.get(version)
        if step is None:
            raise ProgressUnreadable(f"Your saved place in {path} is of an unknown older kind.")
        content = step(content)
        version += 1
        content["version"] = version
    return content


def _reason(error: OSError) -> str:
    return (error.strerror or str(error) or "of an unknown fault").lower()
