"""The room's noise and the microphone's level, and what is wrong with them; pure.

Levels are decibels below the loudest that the microphone can give (0). All figures of this module
are our own judgement.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

BLOCK = 1_600
"""Samples judged at a time: 0.1 s."""
DEAD = 2
"""Height below which a microphone gives no sound at all."""
LOUD_ROOM_DB = -42.0
FAINT_DB = -45.0
CLIPPED = 32_000
CLIPPED_SHARE = 0.002
STANDS_OUT_DB = 12.0
"""How far a voice should stand above the room."""

Sound = NDArray[np.int16]


def levels_db(sound: Sound) -> NDArray[np.float64]:
    """The level of each tenth of a second; -96 for silence."""
    whole = sound[: len(sound) // BLOCK * BLOCK].astype(np.float64).reshape(-1, BLOCK)
    power = np.mean(whole**2, axis=1) if len(whole) else np.zeros(1)
    return np.asarray(np.maximum(10 * np.log10(power + 1e-9) - 20 * np.log10(32_768), -96.0))


def noise_db(sound: Sound) -> float:
    """The room's own level: the middle of what was heard while nobody spoke."""
    return float(np.median(levels_db(sound)))


def room_trouble(sound: Sound) -> str:
    """What is wrong with a room: "dead microphone", "loud room" or ""."""
    if not len(sound) or int(np.abs(sound.astype(np.int32)).max()) < DEAD:
        return "dead microphone"
    return "loud room" if noise_db(sound) > LOUD_ROOM_DB else ""


def voice_trouble(sound: Sound, room_db: float) -> str:
    """What is wrong with how somebody is heard: "too loud", "buried", "faint" or ""."""
    loudest = float(levels_db(sound).max())
    if np.mean(np.abs(sound.astype(np.int32)) >= CLIPPED) > CLIPPED_SHARE:
        return "too loud"
    if loudest < room_db + STANDS_OUT_DB:
        return "buried"
    return "faint" if loudest < FAINT_DB else ""
