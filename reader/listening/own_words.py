"""OwnWords: what a maker taught, as it is kept; pure."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from reader.listening.acoustics import Network
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.own_ear import OwnEar, own_of
from reader.listening.second_look import LIMIT

Sound = NDArray[np.int16]


@dataclass(frozen=True, slots=True)
class OwnWords:
    """sounds: samples at 16 kHz by the phrase they stand for. names: phrases that were given a word
    or sound of the maker's own, with how it is written, "" for a sound without a name. limit: how
    far a match may be. least: the recogniser's least certainty.
    """

    sounds: Mapping[str, tuple[Sound, ...]] = field(default_factory=dict)
    names: Mapping[str, str] = field(default_factory=dict)
    limit: float = LIMIT
    least: float = LEAST_CERTAIN

    def ear(self, network: Network) -> OwnEar:
        """The second look that knows these samples."""
        return OwnEar(network, own_of(network, self.sounds, self.limit, frozenset(self.names)))

    def without(self, phrases: frozenset[str]) -> OwnWords:
        """The same with these phrases forgotten."""
        sounds = {phrase: all_ for phrase, all_ in self.sounds.items() if phrase not in phrases}
        names = {phrase: name for phrase, name in self.names.items() if phrase not in phrases}
        return replace(self, sounds=sounds, names=names)
