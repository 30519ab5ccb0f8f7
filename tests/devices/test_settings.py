"""Settings: file over defaults, environment over file, every mistake named."""

from __future__ import annotations

from pathlib import Path

import pytest

from reader.devices.settings import Settings, SettingsUnreadable, load_settings, save_settings


def test_without_file_or_environment_the_defaults_hold(tmp_path: Path) -> None:
    """A first start needs no settings; 170 words a minute, a rest after 30 minutes."""
    settings = load_settings(tmp_path / "none.toml", {})
    assert (settings.rate, settings.rest_minutes, settings.attention) == (170, 30, "")


def test_the_environment_overrules_the_file(tmp_path: Path) -> None:
    """READER_RATE wins over the line `rate`; READER_KEYS gives pairs."""
    file = tmp_path / "settings.toml"
    file.write_text('rate = 200\nattention = "harbour"\n[keys]\npagedown = "next"\n')
    settings = load_settings(file, {"READER_RATE": "240", "READER_HOME": "/nowhere"})
    assert (settings.rate, settings.attention) == (240, "harbour")
    assert settings.keys == {"pagedown": "next"}
    assert load_settings(file, {"READER_KEYS": "b=next, c = again"}).keys == {
        "b": "next",
        "c": "again",
    }


def test_what_is_saved_is_loaded(tmp_path: Path) -> None:
    """Odd signs in keys and words survive the file."""
    settings = Settings(rate=80, volume=0.5, attention='a "b" \\ c', keys={'"': "next", "=": "no"})
    save_settings(settings, tmp_path / "deep" / "settings.toml")
    assert load_settings(tmp_path / "deep" / "settings.toml", {}) == settings


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("rate = 900\n", "'rate' cannot be 900"),
        ('grain = "huge"\n', "'grain'"),
        ("speed = 3\n", "'speed', which is no setting"),
        ("rate = = 3\n", "not written as it should be"),
        ("rate = \xff\n", "not written as it should be"),
    ],
)
def test_mistakes_are_named(tmp_path: Path, text: str, part: str) -> None:
    """One sentence with the setting's name and the file."""
    file = tmp_path / "settings.toml"
    file.write_bytes(text.encode("latin-1"))
    with pytest.raises(SettingsUnreadable) as caught:
        load_settings(file, {})
    assert part in str(caught.value)
    assert str(file) in str(caught.value)


def test_a_folder_that_cannot_be_written(tmp_path: Path) -> None:
    """Saving fails with a sentence."""
    (tmp_path / "x").write_text("in the way")
    with pytest.raises(SettingsUnreadable, match="cannot be saved"):
        save_settings(Settings(rate=90), tmp_path / "x" / "settings.toml")
