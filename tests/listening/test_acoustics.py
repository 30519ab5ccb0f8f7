"""Cepstra as the recogniser computes them, and the shipped network worked out in numpy."""

from __future__ import annotations

import shutil

import numpy as np
import pytest

from reader.app.rehearsal.maker_voice import makers_voice
from reader.devices.model_check import model_folder
from reader.devices.model_place import load_network
from reader.devices.vosk_graph import PHONES
from reader.listening.acoustics import read_network
from reader.listening.mfcc import mfcc

THIRD = (133.705, -47.915, -16.475, -12.865, -1.494, 0.060)
TWENTIETH = (133.387, -44.851, -8.646, -12.970, -0.100, -4.342)
"""Cepstra 0, 1, 2, 5, 20 and 39 of two frames."""


def test_cepstra_are_kaldis() -> None:
    """Against figures of kaldi-native-fbank (no dither) for the same noise; ours adds one step of
    dither, which here is 70 dB below.
    """
    noise = np.rint(3000 * np.random.default_rng(4).standard_normal(4000)).astype(np.int16)
    got = mfcc(noise)
    assert got.shape == (23, 40)
    assert np.abs(got[3, [0, 1, 2, 5, 20, 39]] - THIRD).max() < 0.02
    assert np.abs(got[20, [0, 1, 2, 5, 20, 39]] - TWENTIETH).max() < 0.02


def test_too_short_a_sound_has_no_frames() -> None:
    """Below one window of 25 ms there is nothing."""
    assert mfcc(np.zeros(399, np.int16)).shape == (0, 40)
    assert mfcc(np.zeros(400, np.int16)).shape == (1, 40)


@pytest.mark.skipif(not shutil.which("flite"), reason="needs flite")
def test_the_network_in_numpy_spells_what_is_said() -> None:
    """The likeliest phones of a spoken sentence, repeats and blanks left out, are its own."""
    network = load_network()
    assert network is not None
    (scores,) = network.outputs(("scores",), mfcc(makers_voice("slt")("go back to the lifeline")))
    best = scores.argmax(1)
    kept = [n for n, before in zip(best, [-1, *best[:-1]], strict=True) if n != before and n]
    said = ["G", "OW", "B", "AE", "K", "T", "UW", "DH", "AH", "L", "AY", "F", "L", "AY", "N"]
    assert [PHONES[n - 1] for n in kept] == said
    assert np.allclose(np.exp(scores).sum(1), 1, atol=1e-4)


@pytest.mark.parametrize("content", [b"", b"\0B<Nnet3> \nno network", b"\0B" + bytes(2000)])
def test_what_is_no_network_is_refused(content: bytes) -> None:
    """ValueError, never a guess."""
    with pytest.raises(ValueError, match="network"):
        read_network(content)


def test_another_model_has_no_second_look(tmp_path) -> None:
    """A folder without a network of our kind gives None, so the recogniser is alone."""
    (tmp_path / "am").mkdir()
    (tmp_path / "am" / "final.mdl").write_bytes(b"\0Bsomething else")
    assert load_network(str(tmp_path)) is None
    ours = (model_folder() / "am" / "final.mdl").read_bytes()
    other = tmp_path / "other"
    (other / "am").mkdir(parents=True)
    (other / "am" / "final.mdl").write_bytes(ours.replace(b"head1.norm", b"other.norm"))
    assert load_network(str(other)) is None
