"""The listening model that ships: its size, its words, and that it hears a synthesised command."""

from __future__ import annotations

import shutil
from pathlib import Path

import numpy as np
import pytest

from reader.app.hear import listen
from reader.app.rehearsal.maker_voice import makers_voice
from reader.commands.numbers import say_number
from reader.commands.phrases import TABLE
from reader.devices.model_place import known_words, load_model
from reader.devices.ports import ModelMissing
from reader.devices.recogniser import VoskRecogniser

MODEL = Path(__file__).parents[2] / "models" / "english"


def test_it_is_small() -> None:
    """At most 15 MB on disk, of which the proof has 8."""
    assert sum(p.stat().st_size for p in MODEL.rglob("*") if p.is_file()) <= 15_000_000


def test_it_knows_every_command_and_number() -> None:
    """No phrase of the program holds a word the model cannot hear."""
    needed = {word for words in TABLE for phrase in words.phrases for word in phrase.split()}
    needed |= {word for n in range(1000) for word in say_number(n).split()}
    assert needed - known_words("") == set()


def test_a_missing_model_is_one_sentence(tmp_path: Path) -> None:
    """An empty folder says what is missing and what to do."""
    with pytest.raises(ModelMissing, match="--model"):
        load_model(str(tmp_path))


@pytest.mark.skipif(shutil.which("flite") is None, reason="flite speaks the command")
def test_it_hears_a_command_and_not_silence() -> None:
    """A voice says next; then nobody says anything."""
    recogniser = VoskRecogniser()
    heard = listen(recogniser, ("next", "again", "pause"), makers_voice("slt")("next"))
    assert heard is not None
    assert heard.text == "next"
    assert listen(recogniser, ("next", "again", "pause"), np.zeros(32_000, np.int16)) is None


@pytest.mark.skipif(shutil.which("flite") is None, reason="flite speaks the command")
def test_a_clip_is_heard_alike_whatever_came_before() -> None:
    """Times are the clip's own, not those of all clips together."""
    recogniser = VoskRecogniser()
    clip = makers_voice("slt")("next")
    first, second = (listen(recogniser, ("next", "again"), clip) for _ in range(2))
    assert first is not None
    assert second is not None
    assert abs(first.ended_s - second.ended_s) < 0.15
    assert second.ended_s < len(clip) / 16_000 + 0.1


def test_training_goes_on_from_what_ships(tmp_path: Path) -> None:
    """The weights read back from the shipped file write the same file again, byte by byte."""
    pytest.importorskip("torch")
    from models.recipe.export import write_acoustics
    from models.recipe.shipped import shipped_state

    write_acoustics(tmp_path, shipped_state(MODEL))
    written = (tmp_path / "am" / "final.mdl").read_bytes()
    assert written == (MODEL / "am" / "final.mdl").read_bytes()
