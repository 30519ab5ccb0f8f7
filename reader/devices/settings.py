"""Settings: the maker's own choices, from a file and from the environment, checked before use."""

from __future__ import annotations

import os
import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError, field_validator

from reader.commands.command import Ask
from reader.devices.folders import settings_file
from reader.devices.ports import ReaderError
from reader.devices.whole_file import write_whole

PREFIX = "READER_"
"""READER_RATE=200 in the environment overrules `rate` in the file."""


COMMANDS = frozenset(ask.value for ask in Ask)
"""The stable names of everything that can be asked."""


class SettingsUnreadable(ReaderError):
    """The settings file, or a setting in the environment, says something that cannot be."""


class Settings(BaseModel):
    """What a maker can choose; each field is a line of the file."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    rate: int = Field(170, ge=80, le=500)
    """Words a minute."""
    volume: float = Field(1.0, ge=0.0, le=2.0)
    """1 is as rendered."""
    voice: str = ""
    """The voice's identifier, "" for the usual one."""
    grain: Literal["whole row", "phrase", "stitch group"] = "stitch group"
    length: Literal["full", "short", "count only"] = "full"
    attention: str = ""
    """A word to be said before each command, "" for none: useful beside a film."""
    rest_minutes: int = Field(30, ge=0, le=240)
    """Minutes until a rest is suggested; 0 is never."""
    cautions: bool = True
    """Whether cautions of a pattern are spoken once."""
    chimes: bool = True
    """Whether the short sounds are played."""
    barge_in: bool = True
    """Whether commands are listened for while the program speaks."""
    model: str = ""
    """A recogniser's model directory, "" for the one that ships."""
    microphone: str = ""
    speaker: str = ""
    """Names of sound devices, "" for the system's choice."""
    keys: dict[str, str] = Field(default_factory=dict)
    """The maker's own keys: a key's name to a command's stable name ("pagedown" to "next")."""

    @field_validator("keys")
    @classmethod
    def _keys_are_commands(cls, keys: dict[str, str]) -> dict[str, str]:
        for key, command in keys.items():
            if command not in COMMANDS:
                raise ValueError(
                    f"the key {key} asks for {command!r}, which is no command; "
                    f"there are {', '.join(sorted(COMMANDS))}"
                )
        return keys


def load_settings(
    path: Path | None = None, environment: Mapping[str, str] = os.environ
) -> Settings:
    """The defaults, overruled by the file, overruled by the environment.

    path: None for the maker's own file; a missing file is no fault. Raises SettingsUnreadable with
    one sentence that names the setting.
    """
    source = path or settings_file()
    chosen: dict[str, object] = dict(_file_content(source))
    for name in Settings.model_fields:
        value = environment.get(PREFIX + name.upper())
        if value is not None:
            chosen[name] = _keys_of(value) if name == "keys" else value
    try:
        return Settings.model_validate(chosen)
    except ValidationError as error:
        raise SettingsUnreadable(_sentence(error, source)) from error


def save_settings(settings: Settings, path: Path | None = None) -> None:
    """Writes what differs from the defaults;
    raises SettingsUnreadable when the file cannot be written.
    """
    target = path or settings_file()
    lines = ["# Settings of reader-for-makers. Lines left out have their usual value.\n"]
    content = settings.model_dump(exclude_defaults=True)
    keys = content.pop("keys", {})
    lines += [f"{name} = {_toml(value)}\n" for name, value in content.items()]
    if keys:
        lines += ["\n[keys]\n", *(f"{_toml(k)} = {_toml(v)}\n" for k, v in keys.items())]
    try:
        write_whole(target, "".join(lines).encode())
    except OSError as error:
        reason = (error.strerror or str(error)).lower()
        raise SettingsUnreadable(
            f"Your settings cannot be saved in {target}, because {reason}."
        ) from error


def _file_content(path: Path) -> dict[str, object]:
    try:
        return tomllib.loads(path.read_text(encoding="utf-8"))
    except (FileNotFoundError, NotADirectoryError):
        return {}
    except OSError as error:
        reason = (error.strerror or str(error)).lower()
        raise SettingsUnreadable(
            f"The settings file {path} cannot be read, because {reason}."
        ) from error
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
        raise SettingsUnreadable(
            f"The settings file {path} is not written as it should be: {error}."
        ) from error


def _keys_of(value: str) -> dict[str, str]:
    """From "pagedown=next,pageup=again"."""
    pairs = (part.split("=", 1) for part in value.split(",") if "=" in part)
    return {key.strip(): command.strip() for key, command in pairs}


def _sentence(error: ValidationError, path: Path) -> str:
    first = error.errors()[0]
    name = str(first["loc"][0]) if first["loc"] else "a setting"
    if first["type"] == "extra_forbidden":
        known = ", ".join(Settings.model_fields)
        return f"The settings file {path} names {name!r}, which is no setting; there are {known}."
    reason = first["msg"].removeprefix("Value error, ")
    reason = reason[0].lower() + reason[1:]
    return (
        f"The setting {name!r} cannot be {first['input']!r}: {reason}; "
        f"change it in {path} or in the environment variable {PREFIX}{name.upper()}."
    )


def _toml(value: object) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, int | float):
        return str(value)
    plain = str(value).replace("\\", "\\\\").replace('"', '\\"')
    return '"' + "".join(c if c.isprintable() else " " for c in plain) + '"'
