"""One virtual sound card a test."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tests.soundcard.rig import SoundCard, missing, sound_card


@pytest.fixture
def card() -> Iterator[SoundCard]:
    """A fresh virtual sound card that this process plays to and records from."""
    reason = missing()
    if reason:
        pytest.skip(reason)
    with sound_card() as running:
        yield running
