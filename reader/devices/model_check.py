"""Model check: whether a recogniser's model directory is there and loads, as a sentence."""

from __future__ import annotations

from pathlib import Path

import reader


def model_folder(chosen: str = "") -> Path:
    """The model directory that will be used:
    the chosen one, else the shipped one of wheel or checkout.
    """
    if chosen:
        return Path(chosen)
    package = Path(reader.__file__).parent
    inside = package / "models" / "english"
    return inside if inside.is_dir() else package.parent / "models" / "english"


def model_trouble(folder: Path) -> str:
    """One sentence on what is wrong with the model, "" when it loads."""
    if not folder.is_dir():
        return f"There is no model in {folder}; commands by key go on working."
    try:
        from vosk import Model, SetLogLevel

        SetLogLevel(-1)
        Model(str(folder))
    except Exception as error:  # vosk raises a bare Exception for a broken model
        return f"The model in {folder} cannot be loaded: {error}."
    return ""
