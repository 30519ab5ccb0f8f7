"""Echo: takes the program's own voice out of what the microphone heard, by Debian's libspeexdsp."""

from __future__ import annotations

import ctypes
import ctypes.util
from typing import Protocol

import numpy as np

from reader.devices.ports import FRAME, RATE_HZ, Samples

TAIL_MS = 200
"""Echo heard up to this much later is taken out:
a living room, and what the delay is guessed wrong. Judgement.
"""

SET_SAMPLING_RATE = 24
SET_DENOISE = 0
SET_ECHO_STATE = 24
SET_ECHO_SUPPRESS = 20
SET_ECHO_SUPPRESS_ACTIVE = 22
"""Request numbers of speex_echo.h and speex_preprocess.h, SpeexDSP 1.2."""

SUPPRESS_DB = -40
SUPPRESS_ACTIVE_DB = -15
"""What is left of the echo is pushed down this far, less while somebody speaks:
the library's defaults.
"""

LIBRARIES = ("libspeexdsp.so.1", "libspeexdsp.so", "libspeexdsp.1.dylib", "libspeexdsp.dll")

NO_CANCELLER = (
    "The echo canceller is missing, so the program may hear itself while it speaks: use "
    "headphones, or on Debian install libspeexdsp1."
)


class Canceller(Protocol):
    """Takes what was played out of what was heard; both 20 ms, 16 kHz mono.

    cancels: whether it can.
    """

    cancels: bool

    def clean(self, heard: Samples, played: Samples) -> Samples: ...
    def reset(self) -> None: ...
    def close(self) -> None: ...


class NoCanceller:
    """Gives back what was heard: the twin without a library."""

    cancels = False

    def clean(self, heard: Samples, played: Samples) -> Samples:
        """The same samples."""
        return heard

    def reset(self) -> None:
        """Nothing was learned."""

    def close(self) -> None:
        """Nothing to give back."""


class SpeexCanceller:
    """libspeexdsp's adaptive filter, and its preprocessor for what the filter leaves over.

    Raises OSError when the library is not there. One thread at a time.
    """

    cancels = True

    def __init__(self, tail_ms: int = TAIL_MS) -> None:
        self._library = _load()
        self._echo: int | None = None
        self._rest: int | None = None
        self._tail = RATE_HZ * tail_ms // 1000
        self._open()

    def clean(self, heard: Samples, played: Samples) -> Samples:
        """int16[320] without the echo; what was not played at all passes nearly unchanged."""
        out = np.empty(FRAME, np.int16)
        near = np.ascontiguousarray(heard, np.int16)
        far = np.ascontiguousarray(played, np.int16)
        self._library.speex_echo_cancellation(self._echo, _at(near), _at(far), _at(out))
        self._library.speex_preprocess_run(self._rest, _at(out))
        return out

    def reset(self) -> None:
        """Forgets the room: after the delay has jumped, or another device was taken."""
        self._library.speex_echo_state_reset(self._echo)

    def close(self) -> None:
        """Gives the library's memory back; harmless twice."""
        if self._echo is not None:
            self._library.speex_preprocess_state_destroy(self._rest)
            self._library.speex_echo_state_destroy(self._echo)
            self._echo = self._rest = None

    def _open(self) -> None:
        library = self._library
        self._echo = library.speex_echo_state_init(FRAME, self._tail)
        self._rest = library.speex_preprocess_state_init(FRAME, RATE_HZ)
        rate = ctypes.c_int(RATE_HZ)
        library.speex_echo_ctl(self._echo, SET_SAMPLING_RATE, ctypes.byref(rate))
        library.speex_preprocess_ctl(self._rest, SET_ECHO_STATE, self._echo)
        # Denoising would change the sound that the recogniser was trained on.
        for request, value in (
            (SET_DENOISE, 0),
            (SET_ECHO_SUPPRESS, SUPPRESS_DB),
            (SET_ECHO_SUPPRESS_ACTIVE, SUPPRESS_ACTIVE_DB),
        ):
            number = ctypes.c_int(value)
            library.speex_preprocess_ctl(self._rest, request, ctypes.byref(number))


def open_canceller() -> tuple[Canceller, str]:
    """The best canceller there is, and a sentence to say once when it is none, else ""."""
    try:
        return SpeexCanceller(), ""
    except (OSError, AttributeError):
        return NoCanceller(), NO_CANCELLER


def _load() -> ctypes.CDLL:
    found = ctypes.util.find_library("speexdsp")
    for name in (*LIBRARIES, *([found] if found else [])):
        try:
            library = ctypes.CDLL(name)
        except OSError:
            continue
        _declare(library)
        return library
    raise OSError("libspeexdsp is not installed")


def _declare(library: ctypes.CDLL) -> None:
    state, samples, number = ctypes.c_void_p, ctypes.POINTER(ctypes.c_int16), ctypes.c_int
    shapes: dict[str, tuple[object, list[object]]] = {
        "speex_echo_state_init": (state, [number, number]),
        "speex_echo_state_destroy": (None, [state]),
        "speex_echo_state_reset": (None, [state]),
        "speex_echo_ctl": (number, [state, number, state]),
        "speex_echo_cancellation": (None, [state, samples, samples, samples]),
        "speex_preprocess_state_init": (state, [number, number]),
        "speex_preprocess_state_destroy": (None, [state]),
        "speex_preprocess_run": (number, [state, samples]),
        "speex_preprocess_ctl": (number, [state, number, state]),
    }
    for name, (result, arguments) in shapes.items():
        function = getattr(library, name)
        function.restype, function.argtypes = result, arguments


def _at(samples: Samples) -> object:
    return samples.ctypes.data_as(ctypes.POINTER(ctypes.c_int16))
