"""Chimes: short sounds by name, each as notes of pitch, length and loudness.

Pitches lie between 500 and 1500 Hz, which ageing ears keep longest, and each whole chime is under
0.4 s (our choice; figures of 80 to 220 ms for a confirmation are published in guides to sounds of
devices).
"""

from __future__ import annotations

CHIMES: dict[str, tuple[tuple[float, float, float], ...]] = {
    "heard": ((880.0, 80.0, 0.25),),
    "not sure": ((620.0, 90.0, 0.18), (520.0, 110.0, 0.16)),
    "round complete": ((660.0, 100.0, 0.3), (880.0, 100.0, 0.3), (1320.0, 140.0, 0.3)),
    "trouble": ((600.0, 120.0, 0.3), (600.0, 120.0, 0.3)),
    "waiting": ((740.0, 80.0, 0.15),),
}
"""Hz, milliseconds, share of full loudness."""
