"""The proof: paths of phones by hand, its decision, its network against what it was trained as."""

from __future__ import annotations

import itertools
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from reader.devices.model_place import load_proof
from reader.devices.recogniser import UNHEARD_LEAST
from reader.listening.belief import WEIGHTS, WEIGHTS_BY_PHONES, Verdict, belief, traits
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.few_bits import matrices
from reader.listening.heard import Heard, HeardWord
from reader.listening.log_mel import log_mel, mel_filters
from reader.listening.phone_paths import place_of, worst_per_phone
from reader.listening.proof import Proof, proven
from reader.listening.proof_network import ProofNetwork


def scores_of(reading: list[int], sure: float = 0.9) -> np.ndarray:
    """Log probabilities that read so, frame by frame."""
    scores = np.full((len(reading), 40), (1 - sure) / 39, np.float32)
    scores[np.arange(len(reading)), reading] = sure
    return np.asarray(np.log(scores), np.float32)


def test_what_was_read_costs_nothing_and_lies_where_it_was_read() -> None:
    """Blanks, a phone twice as long, two of the same with a blank between."""
    scores = scores_of([0, 0, 5, 5, 7, 0, 7, 0, 0])
    assert worst_per_phone(scores, [(5, 7, 7)])[0] == pytest.approx(0, abs=1e-5)
    assert place_of(scores, (5, 7, 7)) == (2, 7)


def test_the_best_path_is_the_best_of_all() -> None:
    """Against every path there is, on small scores of chance."""
    chance = np.random.default_rng(3)
    raw = chance.standard_normal((5, 40)).astype(np.float32)
    scores = raw - np.log(np.exp(raw).sum(1, keepdims=True))

    def reads(path: tuple[int, ...]) -> tuple[int, ...]:
        return tuple(p for p, _ in itertools.groupby(path) if p)

    for said in ((3,), (3, 4), (4, 4), (4, 3, 4)):
        best = max(
            float(scores[np.arange(5), path].sum())
            for path in itertools.product((0, 3, 4), repeat=5)
            if reads(path) == said
        )
        worse = (float(scores.max(1).sum()) - best) / len(said)
        assert worst_per_phone(scores, [(9, 9), said])[1] == pytest.approx(worse, abs=1e-4)


def heard_as(text: str, certain: bool) -> Heard:
    """What a recogniser made of a word."""
    return Heard((HeardWord(text, 0.9, 1.0, 1.4),), certain, 1.0, 1.4, 2.0)


def just_believed() -> Verdict:
    """A verdict on "next" that is believed, and no more than that."""
    near = [Verdict("next", worse, 9.0, 0.2, 0.6, words=-1.5) for worse in np.arange(8, 0, -0.05)]
    return next(one for one in near if belief(one, "", False) >= LEAST_CERTAIN)


def test_disagreement_gives_a_doubt() -> None:
    """The same distance from the sound: with the recogniser, without it, against it."""
    near = just_believed()
    agreed = proven(heard_as("next", True), near, 1.0, 2.0)
    assert agreed is not None
    assert agreed.certain
    assert agreed.said_at_s == pytest.approx(1.2)
    assert proven(None, near, 1.0, 2.0, UNHEARD_LEAST) is None
    against = proven(heard_as("back", True), near, 1.0, 2.0)
    assert against is not None
    assert not against.certain
    assert against.doubt == "not proven"
    far, doubtful = replace(near, words=-9.0), heard_as("back", False)
    assert proven(doubtful, far, 1.0, 2.0) is doubtful
    assert proven(doubtful, None, 1.0, 2.0) is doubtful


def test_two_phrases_as_likely_are_a_doubt() -> None:
    """A sound that two phrases explain nearly alike is asked about, if it is clear otherwise."""
    far = next(
        worse
        for worse in np.arange(8, 0, -0.05)
        if belief(Verdict("five", worse, 9.0, 0.2, 0.6, words=-2.5), "", False) >= LEAST_CERTAIN
    )
    found = proven(None, Verdict("five", far, 0.1, 0.2, 0.6, words=-2.5), 1.0, 2.0)
    assert found is not None
    assert not found.certain
    assert found.doubt == "between two phrases"


def test_belief_falls_with_whatever_speaks_against_a_phrase() -> None:
    """Worse, less ahead, read less distinctly, less likely as words."""
    for words in (-0.5, None):
        good = Verdict("five", 1.0, 5.0, 0.2, 0.6, 3, 0.9, words)
        sure = belief(good, "five", True)
        poorer = [replace(good, worse=3.0), replace(good, apart=0.5), replace(good, clear=0.6)]
        poorer += [replace(good, words=-4.0)] if words is not None else []
        assert all(belief(one, "five", True) < sure for one in poorer)
        assert belief(good, "nine", True) < belief(good, "", False) == sure
    assert len(traits(good, "", False)) == len(WEIGHTS_BY_PHONES)
    assert len(traits(replace(good, words=-0.5), "", False)) == len(WEIGHTS)


def test_a_sound_too_short_or_a_word_without_phones_says_nothing() -> None:
    """No scores, no verdict."""
    proof = load_proof("")
    assert proof is not None
    assert proof.look(np.zeros(800, np.int16), ("next",)) is None
    assert proof.look(np.zeros(16_000, np.int16), ("xqzt",)) is None


def test_a_folder_without_it_is_no_error(tmp_path: Path) -> None:
    """Another model decides by the recogniser alone; so does a damaged file."""
    assert load_proof(str(tmp_path)) is None
    (tmp_path / "proof.npz").write_bytes(b"PK\x03\x04 not whole")
    load_proof.cache_clear()
    assert load_proof(str(tmp_path)) is None


def test_level_does_not_matter_to_the_bands() -> None:
    """A sound and the same at a quarter of its level."""
    sound = (np.random.default_rng(1).standard_normal(8_000) * 4_000).astype(np.int16)
    assert mel_filters().shape == (80, 201)
    loud, quiet = log_mel(sound), log_mel(sound // 4)
    assert loud.shape == (80, 50)
    assert np.abs((loud - loud.max()) - (quiet - quiet.max())).max() < 0.05


def test_the_program_reckons_as_the_training_does(tmp_path: Path) -> None:
    """The same weights in both: the same phones and words but for rounding in the few bits."""
    torch = pytest.importorskip("torch")
    from models.recipe.proof_network import LogMel, write_proof
    from models.recipe.proof_train import Ear

    torch.manual_seed(3)
    ear = Ear(50).eval()
    torch.nn.init.normal_(ear.words.pieces)
    write_proof(tmp_path / "proof.npz", ear.state_dict())
    plain = ProofNetwork(dict(np.load(tmp_path / "proof.npz")))
    sound = (np.random.default_rng(1).standard_normal(24_000) * 4_000).astype(np.int16)
    texts = ((7,), (5, 9, 11), (4, 4))
    with torch.no_grad():
        loud = LogMel()(torch.tensor(sound / 32_768.0).float()[None])
        both = [ear(loud, torch.tensor([[0, 1, *text]])) for text in texts]
    moments = plain.moments(sound)
    there, here = both[0][0][0].numpy(), plain.phones(moments)
    assert here.shape == there.shape == (75, 40)
    assert np.abs(np.exp(here) - np.exp(there)).max() < 2e-3
    told = [
        sum(float(scores[0, 1 + n, piece]) for n, piece in enumerate(text))
        for text, (_, scores) in zip(texts, both, strict=True)
    ]
    assert plain.words.likely(moments, texts) == pytest.approx(told, rel=1e-3)


def test_numbers_of_four_bits_stand_two_in_a_byte() -> None:
    """The first in the lower half, with 8 added; each group has a scale; a byte each otherwise."""
    few = np.array([[0x8F, 0x17]], np.uint8)
    scales = np.array([[0.5, 2.0]], np.float16)
    read = matrices({"few": few, "few.scale": scales, "bias": np.array([1.5], np.float16)})
    assert read["few"].tolist() == [[3.5, 0.0, -2.0, -14.0]]
    assert read["bias"].tolist() == [1.5]
    more = np.array([[[1, -2], [3, 4]]], np.int8)
    read = matrices({"more": more, "more.scale": np.array([[0.5]], np.float16)})
    assert read["more"].tolist() == [[[0.5, -1.0], [1.5, 2.0]]]
    with pytest.raises(ValueError, match="reshape"):
        matrices({"few": few, "few.scale": np.ones((3, 1), np.float16)})


class Said:
    """Two networks that always read the same: the phones 4 and 6, and as a word the piece 8."""

    longest = 3

    def __init__(self) -> None:
        self.words = self

    def moments(self, sound: np.ndarray) -> np.ndarray:
        """As many as there are phones."""
        return np.zeros((50, 384), np.float32)

    def phones(self, moments: np.ndarray) -> np.ndarray:
        """The second's."""
        return scores_of([0] * 20 + [4] * 3 + [6] * 3 + [0] * 24)

    def outputs(self, nodes: tuple[str, ...], frames: np.ndarray) -> tuple[np.ndarray, ...]:
        """The first's, with talk long before the word."""
        return (scores_of([9] + [0] * 13 + [4] * 2 + [6] * 2 + [0] * 16),)

    def likely(self, moments: np.ndarray, texts: list[tuple[int, ...]]) -> np.ndarray:
        """Sure of one piece."""
        return np.array([-0.5 if text == (8,) else -7.0 for text in texts], np.float32)


def test_ways_of_saying_a_phrase_are_tried() -> None:
    """The second way of a word explains what the first does not."""
    said: Any = Said()
    proof = Proof(said, said, lambda word: ((4, 5), (4, 6)) if word == "one" else ((9, 9),))
    found = proof.look(np.zeros(16_000, np.int16), ("two", "one"))
    assert found is not None
    assert found.phrase == "one"
    assert found.worse == pytest.approx(0.0, abs=1e-3)
    assert found.start_s == pytest.approx(0.4)
    assert found.phones == 2
    assert found.clear == pytest.approx(0.9)
    assert found.words is None
    assert found.apart > 3


def test_words_tell_apart_what_phones_do_not() -> None:
    """Two phrases of the same phones: the one that would be written, unless they are names; a third
    without pieces is as near as it is by its phones."""
    said: Any = Said()
    pieces = {"won": (7,), "one": (8,)}
    proof = Proof(said, said, lambda _: ((4, 6),), lambda word: pieces.get(word, ()))
    found = proof.look(np.zeros(16_000, np.int16), ("won", "one"))
    assert found is not None
    assert (found.phrase, found.words) == ("one", pytest.approx(-0.5))
    assert found.apart == pytest.approx(6.5)
    found = proof.look(np.zeros(16_000, np.int16), ("won", "one", "wan"))
    assert found is not None
    assert (found.phrase, found.second) == ("one", "wan")
    assert found.apart == pytest.approx(0.0, abs=1e-3)
    found = proof.look(np.zeros(16_000, np.int16), ("won", "one"), ("won", "one"))
    assert found is not None
    assert (found.phrase, found.second, found.words) == ("won", "one", None)
    found = proof.look(np.zeros(16_000, np.int16), ("one one one one",))
    assert found is not None
    assert found.words is None, "longer than what is told apart"


def test_phones_decide_between_a_word_and_its_beginning() -> None:
    """What is written begins a longer phrase as well; where the phones don't tell, it is asked."""
    said: Any = Said()
    ways = {"eight": ((4,),), "eighty": ((4, 6),), "oat": ((4, 7),)}
    proof = Proof(said, said, lambda word: ways[word], lambda word: (8 if word == "eight" else 7,))
    found = proof.look(np.zeros(16_000, np.int16), ("eight", "eighty"))
    assert found is not None
    assert (found.phrase, found.words) == ("eighty", pytest.approx(-0.5))
    assert found.from_kin == found.apart > 0.5
    alone = proof.look(np.zeros(16_000, np.int16), ("eighty", "oat"))
    assert alone is not None
    assert alone.from_kin > 90
    near = replace(just_believed(), worse=0.0, from_kin=0.3)
    doubted = proven(heard_as("next", True), near, 1.0, 2.0)
    assert doubted is not None
    assert (doubted.certain, doubted.doubt) == (False, "between two phrases")
