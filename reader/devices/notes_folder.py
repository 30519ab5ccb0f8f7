"""Notes folder: what the maker said as a note, kept as a sound file beside the progress."""

from __future__ import annotations

import io
import re
import wave
from pathlib import Path

import numpy as np

from reader.devices.folders import data_folder
from reader.devices.ports import RATE_HZ, ProgressUnreadable, Samples
from reader.devices.whole_file import write_whole


class NotesFolder:
    """Sound notes of one pattern; folder: None for the maker's own data folder."""

    def __init__(self, fingerprint: str, folder: Path | None = None) -> None:
        name = re.sub(r"[^A-Za-z0-9_-]", "_", fingerprint)[:100] or "unnamed"
        self.folder = (folder or data_folder()) / "notes" / name

    def keep(self, name: str, sound: Samples) -> Path:
        """Saves int16[n] at 16 kHz mono as NAME.wav and gives its path;
        raises ProgressUnreadable.
        """
        path = self._path(name)
        content = io.BytesIO()
        with wave.open(content, "wb") as out:
            out.setnchannels(1)
            out.setsampwidth(2)
            out.setframerate(RATE_HZ)
            out.writeframes(sound.astype(np.int16).tobytes())
        try:
            write_whole(path, content.getvalue())
        except OSError as error:
            reason = (error.strerror or str(error)).lower()
            raise ProgressUnreadable(
                f"Your note cannot be saved in {self.folder}, because {reason}."
            ) from error
        return path

    def sound(self, name: str) -> Samples:
        """The note's sound; raises ProgressUnreadable when it is missing or no sound file."""
        path = self._path(name)
        try:
            with wave.open(str(path)) as kept:
                return np.frombuffer(kept.readframes(kept.getnframes()), np.int16)
        except (OSError, EOFError, wave.Error) as error:
            raise ProgressUnreadable(f"The note {name} cannot be played from {path}.") from error

    def names(self) -> tuple[str, ...]:
        """The names of all notes kept, in alphabetical order."""
        return tuple(sorted(path.stem for path in self.folder.glob("*.wav")))

    def _path(self, name: str) -> Path:
        return self.folder / f"{re.sub(r'[^A-Za-z0-9_-]', '_', name)[:80] or 'note'}.wav"
