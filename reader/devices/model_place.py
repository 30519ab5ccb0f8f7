"""The recogniser's model: found, loaded quietly, or one sentence on what is wrong."""

from __future__ import annotations

import struct
from functools import cache
from pathlib import Path

from reader.devices.model_check import model_folder
from reader.devices.noise import noise_to
from reader.devices.ports import ModelMissing
from reader.listening.acoustics import Network, read_network
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
