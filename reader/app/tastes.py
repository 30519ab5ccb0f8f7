"""Settings of the file in, the session's tastes out, and what was changed by voice back into the
file.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from reader.devices.settings import Settings, load_settings, save_settings
from reader.listening.own_words import OwnWords
from reader.plan.step import Grain
from reader.session.state import Tastes, Words


def tastes_of(settings: Settings, own: OwnWords | None = None) -> Tastes:
    """What the session needs to know of the settings and of what the maker taught."""
    return Tastes(
        grain=Grain(settings.grain),
        words=Words(settings.length),
        rate=settings.rate,
        volume=settings.volume,
        rest_minutes=settings.rest_minutes,
        attention=settings.attention.strip().lower(),
        cautions=settings.cautions,
        own_names=tuple(own.names.items()) if own is not None else (),
    )


def keeper(began: Tastes, path: Path | None = None) -> Callable[[Tastes], None]:
    """Keeps tastes for next time: only what was changed since `began` is written.

    A rate that came from the environment is so never written into the file unasked. The kept
    function raises SettingsUnreadable with one sentence where the file cannot be written.
    """

    def keep(tastes: Tastes) -> None:
        changed = {
            name: value for name, value in _lines(tastes).items() if value != _lines(began)[name]
        }
        if changed:
            save_settings(load_settings(path, {}).model_copy(update=changed), path)

    return keep


def _lines(tastes: Tastes) -> dict[str, object]:
    return {
        "rate": tastes.rate,
        "volume": tastes.volume,
        "grain": tastes.grain.value,
        "length": tastes.words.value,
    }
