"""Own words file: the maker's samples, beside the settings; never sent anywhere, deleted on demand.
"""

from __future__ import annotations

import io
import json
import struct
import zipfile
import zlib
from pathlib import Path
from typing import Any

import numpy as np

from reader.devices.folders import settings_file
from reader.devices.ports import ReaderError
from reader.devices.whole_file import write_whole
from reader.listening.own_words import OwnWords

NOTE = "words"
"""The entry of the archive that says what the others are."""
SPOILED = (
    OSError, EOFError, ValueError, LookupError, TypeError, AttributeError, RuntimeError,
    SyntaxError, MemoryError, OverflowError, struct.error, zlib.error, zipfile.BadZipFile,
)  # fmt: skip
"""What reading a spoiled archive may raise."""
PRIVATE = 0o600
"""Only the maker may read it."""


class OwnWordsUnreadable(ReaderError):
    """The file of the maker's samples cannot be read or written."""


def own_words_file() -> Path:
    """Where the samples are kept; it need not exist."""
    return settings_file().with_name("own-words.npz")


def load_own_words(path: Path | None = None) -> OwnWords | None:
    """What the maker taught, None where nothing was; raises OwnWordsUnreadable."""
    source = path or own_words_file()
    try:
        with np.load(source, allow_pickle=False) as kept:
            told = json.loads(str(kept[NOTE]))
            sounds: dict[str, tuple[np.ndarray, ...]] = {
                str(phrase): tuple(kept[name].astype(np.int16) for name in names)
                for phrase, names in told["samples"].items()
            }
            names = {str(phrase): str(name) for phrase, name in told["names"].items()}
            return OwnWords(sounds, names, float(told["limit"]), float(told["least"]))
    except (FileNotFoundError, NotADirectoryError):
        return None
    except SPOILED as error:
        raise OwnWordsUnreadable(
            f"What you taught me in {source} cannot be read; reader swatch --forget deletes it, "
            "and reader swatch learns it anew."
        ) from error


def save_own_words(own: OwnWords, path: Path | None = None) -> None:
    """Writes it whole; raises OwnWordsUnreadable with one sentence where that fails."""
    target = path or own_words_file()
    samples = {
        phrase: {f"{row}-{column}": sound for column, sound in enumerate(sounds)}
        for row, (phrase, sounds) in enumerate(own.sounds.items())
    }
    told = {
        "samples": {phrase: list(named) for phrase, named in samples.items()},
        "names": dict(own.names),
        "limit": own.limit,
        "least": own.least,
    }
    arrays: dict[str, Any] = {}
    for named in samples.values():
        arrays |= named
    content = io.BytesIO()
    np.savez_compressed(content, allow_pickle=False, **{NOTE: np.array(json.dumps(told)), **arrays})
    try:
        write_whole(target, content.getvalue())
        target.chmod(PRIVATE)
    except OSError as error:
        reason = (error.strerror or str(error)).lower()
        raise OwnWordsUnreadable(
            f"What you taught me cannot be saved in {target}, because {reason}."
        ) from error


def forget_own_words(path: Path | None = None) -> bool:
    """Deletes everything; False where there was nothing. Raises OwnWordsUnreadable."""
    target = path or own_words_file()
    try:
        target.unlink()
    except (FileNotFoundError, NotADirectoryError):
        return False
    except OSError as error:
        reason = (error.strerror or str(error)).lower()
        raise OwnWordsUnreadable(f"{target} cannot be deleted, because {reason}.") from error
    return True
