"""The recogniser's model: found, loaded quietly, or one sentence on what is wrong."""

from __future__ import annotations

import struct
import zipfile
from functools import cache
from pathlib import Path

import numpy as np

from reader.devices.model_check import model_folder
from reader.devices.noise import noise_to
from reader.devices.ports import ModelMissing
from reader.devices.pronunciations import ways_of
from reader.devices.vosk_graph import PHONES
from reader.devices.written import pieces_by_word
from reader.listening.acoustics import Network, read_network
from reader.listening.proof import Proof
from reader.listening.proof_network import ProofNetwork
from reader.listening.trace import LAYER, SCORES

NEEDED = ("am/final.mdl", "conf/mfcc.conf", "conf/model.conf", "graph/words.txt")


@cache
def load_model(chosen: str = "") -> object:
    """The vosk model of a directory, "" for the one that ships; raises ModelMissing."""
    folder = model_folder(chosen)
    missing = [name for name in NEEDED if not (folder / name).is_file()]
    if missing:
        raise ModelMissing(
            f"There is no whole listening model in {folder}: {missing[0]} is missing. "
            "Name another with --model, or go on with the keys."
        )
    from vosk import Model, SetLogLevel

    SetLogLevel(-1)
    undo = noise_to(None)
    try:
        return Model(str(folder))
    except Exception as error:  # vosk raises a bare Exception for a broken model
        raise ModelMissing(
            f"The listening model in {folder} cannot be loaded; it may be damaged. "
            "Name another with --model, or go on with the keys."
        ) from error
    finally:
        undo()


@cache
def known_words(chosen: str = "") -> frozenset[str]:
    """The words a model can hear."""
    path: Path = model_folder(chosen) / "graph" / "words.txt"
    lines = path.read_text(encoding="utf-8").splitlines()
    return frozenset(line.split()[0] for line in lines if line.strip())


@cache
def load_network(chosen: str = "") -> Network | None:
    """The network of a model directory for a second look of our own; None for a model of another
    kind than ours, and where the file cannot be read.
    """
    try:
        network = read_network((model_folder(chosen) / "am" / "final.mdl").read_bytes())
        return network if {LAYER, SCORES}.issubset(network.names()) else None
    except (OSError, ValueError, KeyError, IndexError, UnicodeDecodeError, struct.error):
        return None


@cache
def load_proof(chosen: str = "") -> Proof | None:
    """The second network of a model directory, to which utterances are put; None where the
    directory has none or it cannot be read: the recogniser then decides alone.
    """
    first = load_network(chosen)
    try:
        with np.load(model_folder(chosen) / "proof.npz") as file:
            network = ProofNetwork({name: file[name] for name in file.files})
    except (OSError, ValueError, KeyError, zipfile.BadZipFile):
        return None
    if first is None:
        return None
    written = pieces_by_word(chosen)
    return Proof(network, first, _numbers, lambda word: written.get(word, ()))


def _numbers(word: str) -> tuple[tuple[int, ...], ...]:
    """The ways in which a word is said, in the numbers of the network's outputs."""
    return tuple(tuple(1 + PHONES.index(phone) for phone in way) for way in ways_of(word))
