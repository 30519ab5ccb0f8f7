"""The belief of the proof, fitted on the speakers for choosing, by the path that listens.

usage: python -m tests.benchmarks.listening_proof SPEECH [--film SOUND.npy] [--right 3] [--all]
       [--phones]

Heard once, and every look at a sound that was put to the proof kept: takes in quiet and in every
room and level; each speaker's words in grammars without them; clips of other speech; one long
stretch of them and of noise; SOUND (16 kHz, int16), acted speech with training's voices. Then a
logistic regression finds what each trait counts for, so that a certainty of 0.8 moves (0.9 where
the recogniser heard nothing). --right: how much oftener a right look counts than a wrong one.
--all: every take, not a part of them. --phones: words are not asked for,
which fits the weights for phrases whose words can't be.
Printed: understood and moved wrongly by weights that were fitted without the speaker, a fifth
of the speakers left out at a time; then the weights by all, as they stand in the program.
A move ends a look, so looks behind one would differ a little.
"""

from __future__ import annotations

import argparse
import hashlib
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from reader.app.hear import listen
from reader.commands.phrases import MAIN, phrases_of
from reader.devices import recogniser
from reader.devices.ports import RATE_HZ, Samples
from reader.devices.recogniser import VoskRecogniser
from reader.listening import proof
from reader.listening.belief import WEIGHTS, Verdict, traits
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.heard import Heard
from tests.benchmarks.listening_clips import BEDS, GRAMMARS, Clips, clips_of, mixed, named

FOLDS = 5
GENTLE = 0.3
"""How much large weights are held down; of standardised traits."""
STRIDES = {"ten digits": 4, "twenty words": 2}
OTHERS_STRIDES = {"ten digits": 1, "twenty words": 4, "main commands": 3}
MIXES = (("", 0.0), *((bed, level) for bed in BEDS for level in (10.0, 5.0, 20.0)))
OTHERS_IN = ("", "noise", "", "talk")
Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Look:
    """What a decision rests on, the phrase that it would be, and the least certainty asked for."""

    phrase: str
    traits: Floats
    least: float = LEAST_CERTAIN


@dataclass(slots=True)
class Sounds:
    """What was heard of one kind: for each sound the fold it belongs to, the word that was said,
    "" for none of ours, and the looks at it."""

    name: str
    takes: list[tuple[int, str, list[Look]]] = field(default_factory=list)

    def moved(self, rule: Callable[[int, Look], bool]) -> tuple[int, int, int]:
        """How many sounds, how many were understood, how many moved wrongly."""
        firsts = [
            (word, next((one.phrase for one in looks if rule(fold, one)), ""))
            for fold, word, looks in self.takes
        ]
        right = sum(bool(word) and word == said for word, said in firsts)
        return len(firsts), right, sum(said not in ("", word) for word, said in firsts)


def fold_of(name: str) -> int:
    """A fifth of the speakers, always the same for one."""
    return int(hashlib.md5(name.encode(), usedforsecurity=False).hexdigest(), 16) % FOLDS


class Watched:
    """An ear whose looks are kept; nothing moves."""

    def __init__(self) -> None:
        self._ear = VoskRecogniser(named=named)
        self._looks: list[Look] = []
        recogniser.proven = self.noted  # type: ignore[assignment, attr-defined]

    def noted(
        self, heard: Heard | None, verdict: Verdict | None, _: float, __: float, least: float
    ) -> None:
        """In the place of the decision."""
        if verdict is not None:
            text = heard.text if heard is not None else ""
            seen = traits(verdict, text, heard is not None and heard.certain)
            self._looks.append(Look(verdict.phrase, seen, least))

    def clip(self, words: tuple[str, ...], sound: Samples) -> list[Look]:
        """The looks at one clip."""
        self._looks = []
        listen(self._ear, words, sound)
        return self._looks

    def stretch(self, words: tuple[str, ...], sound: Samples) -> Iterator[tuple[int, Look]]:
        """The looks at a long sound and the fold each belongs to, by the minute."""
        self._ear.listen_for(words)
        self._ear.begin_anew()
        for at in range(0, len(sound), 1_600):
            self._looks = []
            self._ear.feed(sound[at : at + 1_600])
            yield from ((at // (60 * RATE_HZ) % FOLDS, look) for look in self._looks)


def all_sounds(clips: Clips, film: Samples | None, whole: bool) -> Iterator[Sounds]:
    """Every kind of sound heard once."""
    ear, main = Watched(), phrases_of(MAIN)
    for name, words in GRAMMARS.items():
        mine = [take for take in clips.takes if take.word in words]
        for turn, (bed, level) in enumerate(MIXES):
            chance = np.random.default_rng(1)
            found = Sounds(f"{name}, {bed or 'quiet'} {level:.0f} dB below")
            stride = 1 if whole else STRIDES[name]
            for n, take in enumerate(mine):
                sound = mixed(take, clips.beds.get(bed), chance, level)
                if n % stride == turn % stride:
                    looks = ear.clip(words, sound)
                    found.takes.append((fold_of(take.speaker), take.word, looks))
            yield found
    for name, words in {**GRAMMARS, "main commands": main}.items():
        known = {word for phrase in words for word in phrase.split()}
        others = [take for take in clips.takes if take.word not in known]
        chance, found = np.random.default_rng(2), Sounds(f"{name}, other words")
        for n, take in enumerate(others[:: OTHERS_STRIDES[name]]):
            sound = mixed(take, clips.beds.get(OTHERS_IN[n % 4]), chance)
            found.takes.append((fold_of(take.speaker), "", ear.clip(words, sound)))
        yield found
        speech = [(fold_of(f"s{n}"), "", ear.clip(words, c)) for n, c in enumerate(clips.speech)]
        yield Sounds(f"{name}, other speech", speech)
    long = {bed: clips.beds[bed].astype(np.int16) for bed in ("talk", "noise")}
    for bed, sound in {**long, **({"film": film} if film is not None else {})}.items():
        yield Sounds(bed, [(fold, "", [look]) for fold, look in ear.stretch(main, sound)])


def fitted(seen: Floats, right: Floats, weight: Floats) -> Floats:
    """The bias and a weight for each trait, by Newton's steps. seen: [n, traits]."""
    middle, spread = seen.mean(0), seen.std(0) + 1e-6
    plain = np.column_stack([np.ones(len(seen)), (seen - middle) / spread])
    held = np.diag([0.0, *[GENTLE] * seen.shape[1]])
    out = np.zeros(plain.shape[1])
    for _ in range(30):
        p = 1 / (1 + np.exp(-plain @ out))
        slope = plain.T @ (weight * (p - right)) + held @ out
        bend = plain.T @ (plain * (weight * p * (1 - p))[:, None]) + held
        out -= np.linalg.solve(bend, slope)
    counts = out[1:] / spread
    return np.asarray([out[0] - float(counts @ middle), *counts])


class Fit:
    """Weights by all looks, and for each fold by those of the others."""

    def __init__(self, heard: list[Sounds], times: float) -> None:
        rows = [
            (fold, bool(word) and look.phrase == word, look.traits)
            for sounds in heard
            for fold, word, looks in sounds.takes
            for look in looks
        ]
        folds, right = np.array([r[0] for r in rows]), np.array([r[1] for r in rows], float)
        seen, weight = np.array([r[2] for r in rows]), np.where(right > 0, times, 1.0)
        self.whole = fitted(seen, right, weight)
        self._without = [
            fitted(seen[folds != n], right[folds != n], weight[folds != n]) for n in range(FOLDS)
        ]

    def moves(self, fold: int, look: Look) -> bool:
        """Whether a look would move by the weights of the other speakers."""
        bias, *counts = self._without[fold]
        return bool(1 / (1 + np.exp(-bias - np.dot(counts, look.traits))) >= look.least)


def main() -> None:
    """Prints the figures and the weights."""
    ask = argparse.ArgumentParser()
    ask.add_argument("speech", type=Path)
    ask.add_argument("--film", type=Path)
    ask.add_argument("--right", type=float, default=3.0)
    ask.add_argument("--all", action="store_true")
    ask.add_argument("--phones", action="store_true")
    want = ask.parse_args()
    if want.phones:
        proof.Proof._pieces = lambda self, phrase: ()  # type: ignore[method-assign]
    clips = clips_of(want.speech, 1, judging=False)
    heard = list(all_sounds(clips, np.load(want.film) if want.film else None, want.all))
    tell(heard, Fit(heard, want.right), "_BY_PHONES" if want.phones else "")


def tell(heard: list[Sounds], fit: Fit, end: str) -> None:
    """Prints each kind of sound by weights that never saw the speaker, then the weights by all."""
    for sounds in heard:
        count, right, wrong = sounds.moved(fit.moves)
        print(f"{sounds.name}: {count}, understood {right}, moved wrongly {wrong}")
    bias, *counts = fit.whole
    print(f"BIAS{end} = {bias:.2f}\nWEIGHTS{end} = {{")
    for name, value in zip(WEIGHTS, counts, strict=False):
        print(f'    "{name}": {value:.2f},')
    print("}")


if __name__ == "__main__":
    main()
