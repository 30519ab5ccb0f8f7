"""One virtual sound card a test."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tests.soundcard.absent import skip_without
from tests.soundcard.rig import SoundCard, missing, sound_card


@pytest.fixture
def card() -> Iterator[SoundCard]:
    """A fresh virtual sound card that this process plays to and records from."""
    skip_without(missing())
    with sound_card() as running:
        yield running
