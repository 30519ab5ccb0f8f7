"""Sound system: the list of devices that PortAudio makes once, made anew while it is empty."""

from __future__ import annotations

import threading

_LOCK = threading.Lock()


def look_for_devices() -> None:
    """Has PortAudio look again where it found no device at all; raises what it raises.

    It looks only when it begins, so a program begun before the sound system would stay silent for
    ever. To begin anew ends every stream, but without a device there is none.
    """
    import sounddevice

    with _LOCK:
        if len(sounddevice.query_devices()) == 0:
            sounddevice._terminate()
            sounddevice._initialize()
