"""The second look: an utterance that has just ended, laid beside the maker's own samples; pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from reader.listening.acoustics import Network
from reader.listening.heard import Heard
from reader.listening.likeness import Match, Samples
from reader.listening.mfcc import RATE_HZ
from reader.listening.second_look import LIMIT, Own, combined
from reader.listening.trace import FRAME_S, SPEAKING, sample_traces, trace_of

AROUND = 8
"""Frames looked at to each side of speech."""
Sound = NDArray[np.int16]


def own_of(
    network: Network,
    sounds: Mapping[str, Sequence[Sound]],
    limit: float = LIMIT,
    renamed: frozenset[str] = frozenset(),
) -> Own:
    """What a maker's samples teach: sounds at 16 kHz by the phrase they stand for."""
    traces = {
        phrase: [trace for sound in all_ for trace in sample_traces(network, sound)]
        for phrase, all_ in sounds.items()
    }
    return Own(Samples(traces), limit, renamed)


class OwnEar:
    """Compares utterances with a maker's samples under the phrases that make sense now."""

    def __init__(self, network: Network, own: Own) -> None:
        self.network, self.own = network, own
        self._among: frozenset[str] = frozenset()

    def listen_for(self, phrases: Sequence[str]) -> None:
        """From now on these; one that may be the beginning of a longer one is left to the
        recogniser.
        """
        longer = {" ".join(p.split()[:n]) for p in phrases for n in range(1, len(p.split()))}
        self._among = frozenset(self.own.samples.phrases) & frozenset(phrases) - longer

    def listens(self) -> bool:
        """Whether any phrase that can be said now has samples."""
        return bool(self._among)

    def match(self, sound: Sound) -> tuple[Match | None, float]:
        """The nearest sample, and the second in the sound at which the part that was compared
        begins.
        """
        trace = trace_of(self.network, sound) if self._among else None
        if trace is None:
            return None, 0.0
        on = np.flatnonzero(trace.speaking > SPEAKING)
        start = max(0, int(on[0]) - AROUND) if len(on) else 0
        end = int(on[-1]) + 1 + AROUND if len(on) else len(trace)
        return self.own.samples.match(trace.part(start, end), self._among), start * FRAME_S

    def look(self, sound: Sound, heard: Heard | None, decided_s: float) -> Heard | None:
        """The decision on a sound that ends at decided_s, of which the recogniser made `heard`."""
        match, into_s = self.match(sound)
        began_s = decided_s - len(sound) / RATE_HZ + into_s
        return combined(heard, match, self.own, began_s, decided_s)
