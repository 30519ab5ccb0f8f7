"""Which phrases that can be said at the same time are taken for one another.

usage: python -m tests.benchmarks.listening_alike [--kokoro FOLDER] [--takes 4] [--model DIR]
       [--state WORDS]

For every state of a session on a demonstration pattern, for the numbers, for names of parts whose
words mostly are in no graph and partly in no dictionary, and for the question which of two numbers
that sound alike was said: each phrase is said by several voices, in quiet and over a noise 10 dB
below it. Printed: how many of a state's phrases were understood, heard as another one or not at
all; then the pairs that collide. A pair collides where a phrase was moved on as another one, or
where the network's own scores hold the other one for as likely (nats by which the best path of
what was said is ahead of the other's, the least over all samples). With --kokoro (see
models.recipe.voices) the voices are four that were never trained on; without it they are flite's,
which were: silence there proves little.
"""

from __future__ import annotations

import argparse
import random
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from itertools import product
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from models.recipe.phones import NUMBER
from reader.app.hear import listen
from reader.app.rehearsal.maker_voice import makers_voice
from reader.commands.numbers import CONFUSABLE, read_number, say_number
from reader.commands.phrases import phrases_of
from reader.devices import pronunciations
from reader.devices.model_place import load_network
from reader.devices.ports import Samples
from reader.devices.recogniser import VoskRecogniser
from reader.listening.acoustics import Network
from reader.listening.heard import Heard
from reader.listening.mfcc import mfcc
from reader.listening.trace import SCORES, over_noise
from reader.session.listening import ESCAPES, phrases_for
from reader.session.start import begin
from reader.session.state import Mode, Tastes
from tests.session.play import demo

NUMBERS = tuple(say_number(n) for n in (*range(21), *range(30, 100, 10)))
PARTS = (
    (
        "gangway", "barnacle", "keel", "lobster pot", "seagull", "pebble", "wheelhouse", "bollard",
        "jetty", "starfish", "galley", "hammock",
    ),
    (
        "spyglass", "life ring", "tiller", "first fender", "second fender", "harbour wall",
        "dinghy", "capstan", "ballast", "oilskin", "mackerel", "mermaid",
    ),
    (
        "seaweed", "kipper", "foghorn", "cormorant", "breakwater", "driftwood", "windlass",
        "boathook", "fishwife", "mudflat", "halyard",
    ),
)  # fmt: skip
"""Names of parts as a pattern may have them; written down before any of them was heard."""
FLITE = ("slt", "rms", "awb", "kal16")
BELOW_DB = 10.0
AHEAD = 2.0
"""Nats; a phrase that is less far ahead of another in any sample is named. Our own choice."""
QUIET_S = 0.3
Voice = Callable[[str, int], Samples]
"""A phrase and which take of it -> its sound."""


def grammars() -> dict[str, tuple[str, ...]]:
    """What can be said by state; numbers stand in one grammar of their own."""
    state = begin(demo("harbour-lighthouse"), None, Tastes(), 0.0)[0]
    found: dict[str, tuple[str, ...]] = {}
    for mode in Mode:
        phrases = dict.fromkeys(phrases_for(replace(state, mode=mode)))
        words = tuple(one for one in phrases if read_number(one) is None)
        if len(words) > 1 and words not in found.values():
            found[mode.value] = words
    for which, names in enumerate(PARTS, start=1):
        numbers = (say_number(n) for n in range(1, len(names) + 1))
        found[f"parts of any name {which}"] = (*names, *numbers, *phrases_of(ESCAPES))
    asked = replace(state, mode=Mode.ROW_NUMBER)
    for teen, ten in CONFUSABLE:
        two = (say_number(teen), say_number(ten))
        found[f"either {' or '.join(two)}"] = phrases_for(replace(asked, between=two))
    return {**found, "numbers": NUMBERS}


@cache
def ways_of(phrase: str) -> list[tuple[int, ...]]:
    """Every way of saying a phrase, as outputs of the network."""
    words = [pronunciations.ways_of(word) for word in phrase.split()]
    return [tuple(NUMBER[p] for way in ways for p in way) for ways in product(*words)]


def best_paths(scores: NDArray[np.float32], said: Sequence[tuple[int, ...]]) -> NDArray[np.float64]:
    """Log probability of the best path of each phone string, by CTC's rules: [len(said)].

    scores: [frames, 40], 0 is blank. A string that needs more frames than there are: -inf.
    """
    size = 2 * max(map(len, said)) + 1
    states = np.zeros((len(said), size), int)
    skips = np.zeros((len(said), size), bool)
    for row, phones in enumerate(said):
        states[row, 1 : 2 * len(phones) : 2] = phones
        skips[row, 3 : 2 * len(phones) : 2] = np.diff(phones) != 0
    paths = np.full(states.shape, -np.inf)
    paths[:, :2] = scores[0][states[:, :2]]
    for frame in scores[1:]:
        one, two = np.full_like(paths, -np.inf), np.full_like(paths, -np.inf)
        one[:, 1:], two[:, 2:] = paths[:, :-1], paths[:, :-2]
        best = np.maximum(np.maximum(paths, one), np.where(skips, two, -np.inf))
        paths = best + frame[states]
    rows, last = np.arange(len(said)), np.array([2 * len(phones) for phones in said])
    return np.maximum(paths[rows, last], paths[rows, last - 1])


def phrase_scores(
    network: Network, phrases: tuple[str, ...], sound: Samples
) -> NDArray[np.float64]:
    """How likely the network holds each phrase for what was said; the best way of saying it."""
    ways = [(n, way) for n, phrase in enumerate(phrases) for way in ways_of(phrase)]
    (scores,) = network.outputs((SCORES,), mfcc(sound))
    best = best_paths(scores, [way for _, way in ways])
    out = np.full(len(phrases), -np.inf)
    for (n, _), value in zip(ways, best, strict=True):
        out[n] = max(out[n], value)
    return out


def flite_voice() -> Voice:
    """flite's voices by turns."""
    voices = [makers_voice(name) for name in FLITE]
    return lambda phrase, take: voices[take % len(voices)](phrase)


def kokoro_voice(folder: Path) -> Voice:
    """The voices of Kokoro that were never trained on, each take by chance another, at its pace."""
    from models.recipe.texts import Text
    from models.recipe.voices import kokoro, trimmed

    engine = kokoro(folder)

    def say(phrase: str, take: int) -> Samples:
        sound = trimmed(engine(Text("hold", phrase), random.Random(f"{phrase} {take}"))[1])
        assert sound is not None, f"{phrase!r} was not said"
        return np.asarray(sound * 32_767, np.int16)

    return say


@dataclass(slots=True)
class Found:
    """Of one state: outcomes; how often a phrase gave no move; how often a phrase (first) was moved
    on as another, and how little it was ahead of it."""

    outcomes: Counter[str] = field(default_factory=Counter)
    unheard: Counter[str] = field(default_factory=Counter)
    taken: Counter[tuple[str, str]] = field(default_factory=Counter)
    ahead: dict[tuple[str, str], float] = field(default_factory=dict)

    def add(self, phrase: str, heard: Heard | None, leads: dict[str, float]) -> None:
        """One sample: what was heard, and by how much the phrase is ahead of each other."""
        if heard is None or not heard.certain:
            self.outcomes["missed" if heard is None else "unsure"] += 1
            self.unheard[phrase] += 1
        else:
            self.outcomes["understood" if heard.text == phrase else "confused"] += 1
            self.taken[phrase, heard.text] += heard.text != phrase
        for other, lead in leads.items():
            self.ahead[phrase, other] = min(lead, self.ahead.get((phrase, other), lead))


def measure(
    ear: VoskRecogniser, network: Network, phrases: tuple[str, ...], voice: Voice, takes: int
) -> Found:
    """Every phrase said by every take, in quiet and over noise."""
    found = Found()
    for phrase, take in product(phrases, range(takes)):
        quiet = np.pad(voice(phrase, take), round(QUIET_S * 16_000))
        for sound in (quiet, over_noise(quiet, BELOW_DB)):
            scores = dict(zip(phrases, phrase_scores(network, phrases, sound), strict=True))
            leads = {one: float(scores[phrase] - scores[one]) for one in phrases if one != phrase}
            found.add(phrase, listen(ear, phrases, sound), leads)
    return found


def main() -> None:
    """Prints the states and their pairs."""
    ask = argparse.ArgumentParser()
    ask.add_argument("--kokoro", type=Path)
    ask.add_argument("--takes", type=int, default=4)
    ask.add_argument("--model", default="")
    ask.add_argument("--state", default="", help="only the states in whose name this stands")
    want = ask.parse_args()
    voice = cache(kokoro_voice(want.kokoro) if want.kokoro else flite_voice())
    ear, network = VoskRecogniser(want.model), load_network(want.model)
    assert network is not None, "The model's network cannot be read."
    for state, phrases in grammars().items():
        if want.state not in state:
            continue
        say(state, phrases, measure(ear, network, phrases, voice, want.takes))


def say(state: str, phrases: tuple[str, ...], found: Found) -> None:
    """Prints a state: the outcomes, what gave no move most often, the pairs that collide."""
    counts = found.outcomes
    told = ", ".join(f"{kind} {count}" for kind, count in sorted(counts.items()))
    print(f"{state}: {len(phrases)} phrases, {counts.total()} samples: {told}", flush=True)
    if found.unheard:
        print(f"  no move: {', '.join(f'{p} {n}' for p, n in found.unheard.most_common(12))}")
    for pair in sorted(found.ahead, key=lambda one: (-found.taken[one], found.ahead[one])):
        taken, ahead = found.taken[pair], found.ahead[pair]
        if taken or ahead < AHEAD:
            moved = f", moved on as it {taken} times" if taken else ""
            print(f"  {pair[0]} / {pair[1]}: ahead by {ahead:.1f}{moved}", flush=True)


if __name__ == "__main__":
    main()
