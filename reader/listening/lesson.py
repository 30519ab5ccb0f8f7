"""Lesson: a maker's samples as they are taken, judged one by one, and what they come to; pure."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from reader.listening.acoustics import Network
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.heard import Heard
from reader.listening.likeness import Match, Samples
from reader.listening.own_ear import OwnEar
from reader.listening.own_words import OwnWords
from reader.listening.room import noise_db, room_trouble, voice_trouble
from reader.listening.second_look import HIGHEST, LEAST_APART, LIMIT, LOWEST, Own
from reader.listening.trace import Trace, sample_traces
from reader.listening.tune import OFTEN, Sample, strays, tuned

EACH = 3
"""Samples of a word."""
STEP = 0.01
Sound = NDArray[np.int16]


@dataclass(frozen=True, slots=True)
class Judged:
    """What became of a sample.

    trouble: why it is asked for again: "nothing", "too loud", "buried", "faint", "stray", "" where
    it is kept. taken: samples of this word so far. missed: the word is whole and would often be
    missed. like: another word that it would be taken for, "" for none.
    """

    trouble: str
    taken: int
    missed: bool = False
    like: str = ""


class Lesson:
    """One maker's samples. hear: what the recogniser makes of a sound alone, None for nothing.
    known: what was taught before, which stands until it is taught anew.
    """

    def __init__(
        self,
        network: Network,
        hear: Callable[[Sound], Heard | None] = lambda sound: None,
        known: OwnWords | None = None,
    ) -> None:
        self._network, self._hear = network, hear
        self._known = known or OwnWords()
        self._room_db = -96.0
        self._room: Sound = np.zeros(0, np.int16)
        self._sounds: dict[str, list[Sound]] = {}
        self._traces: dict[str, list[tuple[Trace, ...]]] = {}
        self._told: set[str] = set()
        self._anew: set[str] = set()
        self.names: dict[str, str] = {}
        for phrase in self._known.sounds:
            self.leave(phrase)

    def room(self, sound: Sound) -> str:
        """The room while nobody speaks; gives what is wrong with it, "" for nothing."""
        self._room_db, self._room = noise_db(sound), sound
        return room_trouble(sound)

    @property
    def room_db(self) -> float:
        """The room's level."""
        return self._room_db

    def begin(self, phrase: str, name: str | None = None) -> None:
        """The samples of a phrase begin anew, under this name of the maker's own, None for its
        usual one.
        """
        self._sounds[phrase], self._traces[phrase] = [], []
        self.names.pop(phrase, None)
        if name is not None:
            self.names[phrase] = name
        self._anew.add(phrase)

    def leave(self, phrase: str) -> None:
        """The samples taken of a phrase do not count; what was taught before stands."""
        self.begin(phrase, self._known.names.get(phrase))
        self._sounds[phrase] = list(self._known.sounds.get(phrase, ()))
        self._traces[phrase] = [sample_traces(self._network, s) for s in self._sounds[phrase]]
        self._anew.discard(phrase)

    def take(self, phrase: str, sound: Sound | None) -> Judged:
        """Judges one sample. Each thing wrong is complained of once: a maker who cannot come
        nearer is not asked for ever.
        """
        if phrase not in self._anew:
            self.begin(phrase)
        sounds = self._sounds[phrase]
        traces = sample_traces(self._network, sound) if sound is not None else ()
        if sound is None or not traces:
            return Judged("nothing", len(sounds))
        trouble = voice_trouble(sound, self._room_db)
        if trouble and trouble not in self._told:
            self._told.add(trouble)
            return Judged(trouble, len(sounds))
        sounds.append(sound)
        self._traces[phrase].append(traces)
        if len(sounds) < EACH:
            return Judged("", len(sounds))
        odd = strays(self._network, sounds)
        if odd is not None and f"stray {phrase}" not in self._told:
            self._told.add(f"stray {phrase}")
            del sounds[odd], self._traces[phrase][odd]
            return Judged("stray", len(sounds))
        return self._whole(phrase)

    def _whole(self, phrase: str) -> Judged:
        """A word with all its samples: each of them tried against all others."""
        found = [self._without(phrase, at) for at in range(EACH)]
        wrong = [match for match in found if not _right(match, phrase)]
        others = [m.phrase for m in wrong if m is not None and m.phrase != phrase]
        missed = len(wrong) >= OFTEN
        return Judged("", EACH, missed, others[0] if missed and others else "")

    def _without(self, phrase: str, at: int) -> Match | None:
        """What the samples make of one of them that is left out."""
        left = {
            one: [t for n, pair in enumerate(all_) if (one, n) != (phrase, at) for t in pair]
            for one, all_ in self._traces.items()
        }
        samples = Samples(left)
        return samples.match(self._traces[phrase][at][0], frozenset(left))

    def whole(self) -> tuple[str, ...]:
        """The phrases that have all their samples."""
        return tuple(phrase for phrase, all_ in self._sounds.items() if len(all_) >= EACH)

    def ear(self) -> OwnEar:
        """The second look with what is whole so far."""
        traces = {one: [t for pair in self._traces[one] for t in pair] for one in self.whole()}
        renamed = frozenset(self.names) & frozenset(traces)
        return OwnEar(self._network, Own(Samples(traces), LIMIT, renamed))

    def own_words(self) -> OwnWords:
        """What the samples come to."""
        phrases = self.whole()
        sounds = {phrase: tuple(self._sounds[phrase]) for phrase in phrases}
        names = {phrase: name for phrase, name in self.names.items() if phrase in phrases}
        return OwnWords(sounds, names, self._limit(phrases), self._least(phrases))

    def _limit(self, phrases: Sequence[str]) -> float:
        """The limit that keeps most samples right, one that passes wrongly counting as two."""
        found = [(p, self._without(p, at)) for p in phrases for at in range(EACH)]
        matches = [(phrase, match) for phrase, match in found if match is not None]
        right = [match.far for phrase, match in matches if match.phrase == phrase]
        wrong = [match.far for phrase, match in matches if match.phrase != phrase]
        steps = [round(LOWEST + STEP * n, 2) for n in range(round((HIGHEST - LOWEST) / STEP) + 1)]

        def worth(limit: float) -> tuple[int, float]:
            kept = sum(one <= limit for one in right) - 2 * sum(one <= limit for one in wrong)
            return kept, -abs(limit - LIMIT)

        return max(steps, key=worth)

    def _least(self, phrases: Sequence[str]) -> float:
        """The recogniser's least certainty: raised where it takes this maker's words for others or
        hears words in the empty room; never lowered, since what was learned has its own limit.
        """
        said = [Sample(p, self._hear(sound)) for p in phrases for sound in self._sounds[p]]
        said = [one for one in said if one.word not in self.names]
        empty = self._hear(self._room) if len(self._room) else None
        room = [empty] if empty is not None else []
        return max(LEAST_CERTAIN, tuned(said, room).least) if said else LEAST_CERTAIN


def _right(match: Match | None, phrase: str) -> bool:
    if match is None or match.phrase != phrase:
        return False
    return match.far <= LIMIT and match.second - match.far >= LEAST_APART
