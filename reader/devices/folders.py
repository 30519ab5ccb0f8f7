"""Folders: where the program keeps what is the maker's own;
READER_HOME puts all of it in one place.
"""

from __future__ import annotations

import os
from pathlib import Path

import platformdirs

NAME = "reader-for-makers"


def data_folder() -> Path:
    """Progress and notes; it need not exist yet."""
    home = os.environ.get("READER_HOME")
    return Path(home) if home else platformdirs.user_data_path(NAME, appauthor=False)


def settings_file() -> Path:
    """The settings file; it need not exist."""
    home = os.environ.get("READER_HOME")
    folder = Path(home) if home else platformdirs.user_config_path(NAME, appauthor=False)
    return folder / "settings.toml"


def log_file() -> Path:
    """Where the noise of sound libraries goes; it need not exist yet."""
    home = os.environ.get("READER_HOME")
    folder = Path(home) if home else platformdirs.user_log_path(NAME, appauthor=False)
    return folder / "sound.log"
