"""The second look: an utterance that has just ended, laid beside the maker's own samples; pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from reader.listening.acoustics import Network
from reader.listening.heard import Heard
from reader.listening.likeness import Match, Samples, around_costs
from reader.listening.mfcc import RATE_HZ
from reader.listening.second_look import LIMIT, Own, combined
from reader.listening.trace import FRAME_S, SPEAKING, Trace, sample_traces, trace_of

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
        self._called: dict[str, str] = {}
        self._attention = ""

    def listen_for(self, phrases: Sequence[str]) -> None:
        """From now on these; one that may be the beginning of a longer one is left to the
        recogniser. An attention word before a phrase is compared where it was learned as well.
        """
        longer = {" ".join(p.split()[:n]) for p in phrases for n in range(1, len(p.split()))}
        known, whole = frozenset(self.own.samples.phrases), frozenset(phrases) - longer
        self._among = known & whole
        first, rests = _attention(whole)
        self._attention = first if first in known else ""
        self._called = {rest: f"{first} {rest}" for rest in rests & known if self._attention}

    def listens(self) -> bool:
        """Whether any phrase that can be said now has samples."""
        return bool(self._among or self._called)

    def renamed(self) -> frozenset[str]:
        """The phrases that only the maker's own sound stands for now."""
        called = (phrase for rest, phrase in self._called.items() if rest in self.own.renamed)
        return self.own.renamed.union(called)

    def match(self, sound: Sound) -> tuple[Match | None, float]:
        """The nearest sample, and the second in the sound at which the part that was compared
        begins.
        """
        trace = trace_of(self.network, sound) if self.listens() else None
        if trace is None:
            return None, 0.0
        on = np.flatnonzero(trace.speaking > SPEAKING)
        start = max(0, int(on[0]) - AROUND) if len(on) else 0
        end = int(on[-1]) + 1 + AROUND if len(on) else len(trace)
        part = trace.part(start, end)
        found = self._after_attention(part) if self._called else None
        return found or self.own.samples.match(part, self._among), start * FRAME_S

    def _after_attention(self, heard: Trace) -> Match | None:
        """A phrase with the attention word before it: as far as the farther of the two."""
        samples = self.own.samples
        phrase = samples.match(heard, frozenset(self._called))
        if phrase is None:
            return None
        before = heard.part(0, phrase.start + 1)
        called = samples.match(before, frozenset((self._attention,)))
        if called is None:
            return None
        price = around_costs(heard, (called.start, called.end), (phrase.start, phrase.end))
        far = max(called.bare, phrase.bare) + price
        second = far + phrase.second - phrase.far
        name = self._called[phrase.phrase]
        return Match(name, far, second, called.start, phrase.end, far - price)

    def look(self, sound: Sound, heard: Heard | None, decided_s: float) -> Heard | None:
        """The decision on a sound that ends at decided_s, of which the recogniser made `heard`."""
        match, into_s = self.match(sound)
        began_s = decided_s - len(sound) / RATE_HZ + into_s
        among = self._among.union(self._called.values())
        return combined(heard, match, self.own, among, began_s, decided_s)


def _attention(phrases: frozenset[str]) -> tuple[str, frozenset[str]]:
    """The word with which all phrases begin, and what follows it in each; "" and nothing where they
    begin otherwise.
    """
    split = [phrase.partition(" ") for phrase in phrases]
    firsts = {first for first, _, _ in split}
    if len(firsts) != 1 or not all(rest for _, _, rest in split):
        return "", frozenset()
    return firsts.pop(), frozenset(rest for _, _, rest in split)
