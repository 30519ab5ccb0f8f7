"""The proof: a sound that has just ended, put to what two networks make of it; pure.

The recogniser finds where something was said while it is being said; whether it was one of our
phrases, and which, is then asked of a second network, which knows more voices, over the whole
sound. A phrase must explain all of it: what else was said near the speaker costs as much as a
phrase that was not said. What is far quieter than the voice in front, such as a television, that
network was taught to leave out. The recogniser's own network is asked too, where the phrase lies.
Phones alone can't tell a word of ours from one that sounds like it; so the phrases that come
nearest are asked for as words too, as the second network would write down what it hears. Where one
phrase begins with all the sounds of another ("eighty", "eight"), what is written is likely to be
the shorter whichever was said, so between those two the phones decide. Nor are words asked for of
the names that a pattern or a maker gives: the second network has no writing for most of them and
writes others as what sounds the same ("heel", "he'll").
"""

from __future__ import annotations

from collections.abc import Callable, Container, Sequence
from dataclasses import replace
from itertools import islice, product

import numpy as np
from numpy.typing import NDArray

from reader.listening.acoustics import Network
from reader.listening.belief import LEAST_LIKELY, Verdict, belief
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.heard import Heard, HeardWord
from reader.listening.log_mel import Floats
from reader.listening.mfcc import mfcc
from reader.listening.phone_paths import Phones, place_of, worst_per_phone
from reader.listening.proof_network import FRAME_S, ProofNetwork
from reader.listening.trace import FRAME_S as FIRST_FRAME_S
from reader.listening.trace import SCORES
from reader.listening.words_network import Pieces

FIRST_SHARE = 0.6
"""What the recogniser's own network says counts so much beside the second's."""
PHONES_SHARE = 0.35
"""What a nat of the phones counts beside one of the words where the likeliest phrase is chosen;
chosen on the speakers for choosing."""
NEAREST = 6
"""Phrases whose words are asked for."""
AROUND_S = 0.15
"""It is asked of the phrase and so much to each side: talk elsewhere, which it doesn't leave out,
is not its matter."""
MOST_WAYS = 8
"""Ways of saying a phrase that are tried."""
BETWEEN = 1.0
"""Nats between two phrases below which it is asked which was meant. Judgement."""
BEGUN_BETWEEN = 0.7
"""The same where one phrase begins with the other's sounds, however sure it is otherwise. Chosen on
numbers by synthetic voices, none of those that measure."""
UNWRITTEN_LEAST = 0.9
"""The least certainty where a phrase's words are not asked for: with one witness fewer, more is
asked of the other. Chosen on names by synthetic voices, none of those that measure, and on other
speech and words of the speakers for choosing, of which then no more are taken for a name than when
words were asked for."""
ALONE = 99.0
"""How far ahead a phrase is where no other can be said."""
Sound = NDArray[np.int16]


class Proof:
    """first: the recogniser's own network. ways: for a word its phones by number, one way of saying
    it after another; () for none. written: for a word its pieces; () where they are not known.
    """

    def __init__(
        self,
        network: ProofNetwork,
        first: Network,
        ways: Callable[[str], tuple[Phones, ...]],
        written: Callable[[str], Pieces] = lambda _: (),
    ) -> None:
        self._network, self._first = network, first
        self._ways, self._written = ways, written
        self._said: dict[str, tuple[Phones, ...]] = {}

    def can_say(self, phrase: str) -> bool:
        """Whether it is known how each of its words sounds."""
        return bool(self._all(phrase))

    def look(
        self, sound: Sound, phrases: Sequence[str], names: Container[str] = ()
    ) -> Verdict | None:
        """The likeliest phrase for a sound at 16 kHz; None where no phrase can be said, or the
        sound is too short. names: those of the phrases that are told by their phones alone."""
        moments = self._network.moments(sound)
        tried = [(phrase, way) for phrase in dict.fromkeys(phrases) for way in self._all(phrase)]
        if not len(moments) or not tried:
            return None
        scores = self._network.phones(moments)
        said = [way for _, way in tried]
        worse = worst_per_phone(scores, said)
        span = place_of(scores, said[int(worse.argmin())])
        (first,) = self._first.outputs((SCORES,), mfcc(sound[-len(scores) * 320 :]))
        there = worst_per_phone(_around(first, span), said)
        both = np.asarray((worse + FIRST_SHARE * there) / (1 + FIRST_SHARE), np.float32)
        near = _by_phrase(both, tried, span)
        clear = float(np.exp(scores[slice(*span)].max(1)).mean())
        return replace(self._likeliest(moments, near[:NEAREST], names), clear=clear)

    def _likeliest(
        self, moments: Floats, near: Sequence[Verdict], names: Container[str]
    ) -> Verdict:
        """Of the verdicts on the nearest phrases the likeliest: the nearest itself where its words
        can't be asked for, else the one that words and phones together make likeliest."""
        asked = [() if one.phrase in names else self._pieces(one.phrase) for one in near]
        begun = self._begun(near)
        # By phones alone all can be compared; words stand beside them for some.
        costs = np.array([one.worse * one.phones for one in near])
        written = np.array([bool(one) for one in asked])
        if not written[0]:
            return _ahead(near, 0, costs, begun)
        texts = [one for one in asked if one]
        likely = np.full(len(near), LEAST_LIKELY)
        likely[written] = np.maximum(self._network.words.likely(moments, texts), LEAST_LIKELY)
        likely = np.where(begun & written, likely, LEAST_LIKELY).max(1)
        whole = PHONES_SHARE * costs - likely
        best = int(np.where(written, whole, np.inf).argmin())
        behind = np.where(written, whole, whole[best] + np.maximum(costs - costs[best], 0))
        return replace(_ahead(near, best, behind, begun), words=float(likely[best]))

    def _begun(self, near: Sequence[Verdict]) -> NDArray[np.bool_]:
        """[n, n]: whether the first phrase begins with all the sounds of the second, or is it."""
        phrases = [one.phrase for one in near]
        return np.array([[a == b or self._begins(a, b) for b in phrases] for a in phrases])

    def _begins(self, longer: str, shorter: str) -> bool:
        ways = [(one, two) for one in self._all(longer) for two in self._all(shorter)]
        return any(len(one) > len(two) and one[: len(two)] == two for one, two in ways)

    def _pieces(self, phrase: str) -> Pieces:
        """() where a word's are not known, and for a phrase that is too long."""
        each = [self._written(word) for word in phrase.split()]
        joined = tuple(piece for one in each for piece in one)
        return joined if all(each) and len(joined) <= self._network.words.longest else ()

    def _all(self, phrase: str) -> tuple[Phones, ...]:
        if phrase not in self._said:
            each = [self._ways(word) for word in phrase.split()]
            joined = (tuple(p for way in ways for p in way) for ways in product(*each))
            self._said[phrase] = tuple(islice((one for one in joined if one), MOST_WAYS))
        return self._said[phrase]


def _ahead(
    near: Sequence[Verdict], best: int, costs: Floats, begun: NDArray[np.bool_]
) -> Verdict:
    """The verdict on one phrase and how far the others lie behind it, by what each costs."""
    behind = costs - costs[best]
    others = np.arange(len(near)) != best
    kin = (begun[best] | begun[:, best]) & others
    second = int(np.where(others, behind, np.inf).argmin())
    return replace(
        near[best],
        apart=float(behind[others].min(initial=ALONE)),
        from_kin=float(behind[kin].min(initial=ALONE)),
        second=near[second].phrase if len(near) > 1 else "",
    )


def _around(first: Floats, span: tuple[int, int]) -> Floats:
    """The first network's scores where the phrase lies, by frames of the second."""
    start, end = span[0] * FRAME_S - AROUND_S, span[1] * FRAME_S + AROUND_S
    begin = min(max(0, int(start / FIRST_FRAME_S)), len(first) - 1)
    return first[begin : max(begin + 1, int(end / FIRST_FRAME_S) + 2)]


def _by_phrase(
    worse: Floats, tried: Sequence[tuple[str, Phones]], span: tuple[int, int]
) -> list[Verdict]:
    """A verdict on each phrase by the way that fits it best as a whole, the nearest first; how far
    apart they are stands in none of them yet."""
    whole: dict[str, tuple[float, float, int]] = {}
    for cost, (phrase, way) in zip(worse.tolist(), tried, strict=True):
        one = (cost * len(way), cost, len(way))
        whole[phrase] = min(whole.get(phrase, one), one)
    start_s, end_s = span[0] * FRAME_S, span[1] * FRAME_S
    return [
        Verdict(phrase, whole[phrase][1], ALONE, start_s, end_s, whole[phrase][2])
        for phrase in sorted(whole, key=lambda phrase: whole[phrase])
    ]


def proven(
    heard: Heard | None,
    verdict: Verdict | None,
    began_s: float,
    decided_s: float,
    least: float = LEAST_CERTAIN,
) -> Heard | None:
    """The decision.

    heard: the recogniser's, None where it heard nothing of ours. began_s: second of the stream at
    which the sound of the verdict begins. least: the least certainty, 0.8 as shipped.
    """
    if verdict is None:
        return heard
    sure = heard is not None and heard.certain
    text = heard.text if heard is not None else ""
    certainty = belief(verdict, text, sure)
    least = least if verdict.words is not None else max(least, UNWRITTEN_LEAST)
    if certainty >= least:
        doubt = "between two phrases" if verdict.from_kin < BEGUN_BETWEEN else ""
        return _said(verdict, certainty, began_s, decided_s, heard, doubt)
    alone = belief(replace(verdict, apart=ALONE), text, sure)
    if verdict.apart < BETWEEN and alone >= least:
        return _said(verdict, alone, began_s, decided_s, heard, "between two phrases")
    if heard is not None and sure:
        return replace(heard, certain=False, doubt="not proven")
    return heard


def _said(
    verdict: Verdict,
    certainty: float,
    began_s: float,
    decided_s: float,
    heard: Heard | None,
    doubt: str,
) -> Heard:
    """The verdict as an utterance; each word has its share of the time."""
    start, end = began_s + verdict.start_s, began_s + verdict.end_s
    words = verdict.phrase.split()
    each = (end - start) / len(words)
    said = tuple(
        HeardWord(word, certainty, start + each * n, start + each * (n + 1))
        for n, word in enumerate(words)
    )
    compute_s = heard.compute_s if heard is not None else 0.0
    rival = verdict.second if doubt else ""
    return Heard(said, not doubt, start, end, decided_s, compute_s, doubt, rival)
