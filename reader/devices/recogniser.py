"""Recogniser: 16 kHz sound in, utterances out, under the phrases that make sense now; over vosk."""

from __future__ import annotations

import json
import time
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np

from reader.commands.asked import is_name, opening_of
from reader.devices.model_place import known_words, load_model, load_proof
from reader.devices.ports import RATE_HZ, Samples, SpeechStarted
from reader.listening.decide import LEAST_CERTAIN, settled
from reader.listening.heard import Heard, HeardWord
from reader.listening.own_ear import OwnEar
from reader.listening.proof import proven
from reader.listening.voice_activity import BLOCK, Level

FILLER = "[unk3]"
"""The filler word that catches speech which is not for us; chosen on the speakers for choosing only
(`python -m tests.benchmarks.listening SPEECH --choose`)."""
STEADY_BLOCKS = 3
"""Blocks of 0.1 s for which a whole phrase must stand, in quiet, before silence is waited for."""
LONGEST_BLOCKS = 50
"""Speech longer than 5 s is no command: the look ends and begins anew."""
QUIET_BLOCKS = 3
"""Blocks of quiet after a sound before it is looked at for a maker's own, which the recogniser may
take for silence (a whistle, a knock).
"""
LOOK_BLOCKS, WINDOW_BLOCKS, OVER_S = 3, 20, 0.25
"""In talk that goes on, every so many blocks the last two seconds are looked at for a maker's own
word that ended a quarter of a second ago or earlier.
"""
PROOF_S = 2.5
"""Seconds that are put to the proof where a sound is over in which the recogniser heard nothing."""
UNHEARD_LEAST = 0.9
"""The least certainty there: with one witness for two, more is asked of it. Chosen on the speakers
for choosing, where it spares a wrong move for two words missed, nearly all in loud rooms."""
LEAD_S = 0.7
"""Seconds before the first word that are put to it with what the recogniser heard."""
MOST_PUT = 150
"""Phrases that are put to the proof beside the one heard; of more (numbers to 999) none is, since
each costs time."""
REPLAYED_S = 1.0
"""Sound not yet decided on that is heard again when the phrases change in the middle of a word."""


class VoskRecogniser:
    """Keeps the Recogniser port. unknown: phrases that cannot be heard.

    filler and least: other choices than the program's own, for measuring. own: gives what the maker
    taught, None for nothing; asked when listening begins, since it takes a moment. named: whether a
    phrase is the name of something and no request.
    """

    def __init__(
        self,
        model: str = "",
        filler: str = FILLER,
        least: float = LEAST_CERTAIN,
        own: Callable[[], OwnEar | None] = lambda: None,
        named: Callable[[str], bool] = is_name,
    ) -> None:
        self._chosen, self._filler, self._least = model, filler, least
        self._model, self._proof = load_model(model), load_proof(model)
        self._phrases: tuple[str, ...] = ()
        self._ear: Any = None
        self._at = 0
        self._started_at = 0
        self._waiting = np.zeros(0, np.int16)
        self._kept = self._whole = np.zeros(0, np.int16)
        self._breaths: list[str] = []
        self._put: list[str] = []
        self._named, self._names = named, frozenset[str]()
        self._openings: tuple[str, ...] = ()
        self._level = Level()
        self._steady, self._blocks, self._text, self._told = 0, 0, "", False
        self._sounding, self._quiet = False, 0
        self._learn = own
        self._own: OwnEar | None = None
        self._compute_s = 0.0
        self.unknown: tuple[str, ...] = ()

    def know(self, own: OwnEar | None) -> None:
        """From now on the maker's own samples are these."""
        self._learn = lambda: own
        self._own = None
        self._anew()

    def begin_anew(self) -> None:
        """Forgets the sound so far: times begin at nought, the room's floor is unknown again."""
        self._at, self._waiting = 0, np.zeros(0, np.int16)
        self._level, self._compute_s = Level(), 0.0
        self._anew()

    def listen_for(self, phrases: tuple[str, ...]) -> None:
        """From now on these phrases can be heard, () is none; a word begun before counts whole."""
        if phrases == self._phrases:
            return
        begun = self._kept
        self._phrases = phrases
        self._anew()
        if self._ear is not None and len(begun):
            self._started_at -= len(begun)
            self._kept = self._whole = begun
            self._ear.AcceptWaveform(begun.tobytes())

    def _anew(self) -> None:
        known, renamed = known_words(self._chosen), self._taught()
        asked = [p for p in self._phrases if p not in renamed]
        usable = [p for p in asked if all(w in known for w in p.split())]
        self._breaths = [p for p in usable if opening_of(p)]
        # Numbers stay out of the first look: with them among the phrases fewer words are certain.
        openings = {opening_of(p) for p in self._breaths}
        self._openings = tuple(f"{one} " for one in sorted(openings))
        plain = dict.fromkeys([*usable, *sorted(openings)])
        first = [p for p in plain if p not in self._breaths]
        # A name with a word that is not in the recogniser's graph is left to the proof.
        proof = self._proof
        lost = [p for p in asked if p not in usable]
        beyond = [p for p in lost if proof is not None and proof.can_say(p)]
        others = [p for p in (*usable, *beyond) if p not in self._breaths]
        self._put = others if len(others) <= MOST_PUT else []
        self._names = frozenset(p for p in self._put if self._named(p))
        self.unknown = tuple(p for p in lost if p not in self._put)
        self._ear = self._new_ear(first) if first or self._put or self._owns() else None
        self._started_at, self._kept = self._at, np.zeros(0, np.int16)
        self._whole = np.zeros(0, np.int16)
        self._steady, self._blocks, self._text, self._told = 0, 0, "", False
        self._sounding, self._quiet = False, 0

    def _taught(self) -> frozenset[str]:
        """Asks for the maker's samples the first time; gives the phrases with a sound of their own.
        """
        if self._own is None:
            self._own = self._learn()
            self._learn = lambda: None
        if self._own is None:
            return frozenset()
        self._own.listen_for(self._phrases)
        return self._own.renamed()

    def _owns(self) -> bool:
        return self._own is not None and self._own.listens()

    def _new_ear(self, phrases: list[str]) -> Any:
        from vosk import KaldiRecognizer

        ear = KaldiRecognizer(self._model, RATE_HZ, json.dumps([*phrases, self._filler]))
        ear.SetWords(True)
        return ear

    def feed(self, samples: Samples) -> tuple[Heard | SpeechStarted, ...]:
        """What was decided with this sound."""
        self._waiting = np.concatenate([self._waiting, samples.astype(np.int16)])
        out: list[Heard | SpeechStarted] = []
        while len(self._waiting) >= BLOCK:
            block, self._waiting = self._waiting[:BLOCK], self._waiting[BLOCK:]
            out += self._block(block)
        return tuple(out)

    def _block(self, block: Samples) -> list[Heard | SpeechStarted]:
        self._at += len(block)
        loud = self._level.above(block)
        if self._ear is None:
            return []
        out: list[Heard | SpeechStarted] = []
        began = time.perf_counter()
        self._kept = np.concatenate([self._kept, block])[-round(REPLAYED_S * RATE_HZ) :]
        if self._breaths or self._owns() or self._proof is not None:
            self._whole = np.concatenate([self._whole, block])[-LONGEST_BLOCKS * BLOCK :]
        ended = self._ear.AcceptWaveform(block.tobytes())
        text = "" if ended else str(json.loads(self._ear.PartialResult()).get("partial", ""))
        self._compute_s += time.perf_counter() - began
        if ended:
            return self._decide(json.loads(self._ear.Result()))
        if text and not self._told:
            self._told = True
            out.append(SpeechStarted(self._at / RATE_HZ))
        self._blocks = self._blocks + 1 if text else 0
        same = text == self._text and text in self._phrases and not self._longer(text)
        self._steady = self._steady + 1 if same and not loud else 0
        self._text = text
        if self._steady >= STEADY_BLOCKS or self._blocks > LONGEST_BLOCKS:
            out += self._decide(json.loads(self._ear.FinalResult()))
        elif self._sound_over(loud):
            out += self._unheard(text) or self._only_own(self._whole)
        elif self._talk_goes_on(text):
            out += self._only_own(self._whole[-WINDOW_BLOCKS * BLOCK :])
        return out

    def _talk_goes_on(self, text: str) -> bool:
        """Whether it is time to look into talk that does not end."""
        return bool(text) and self._blocks % LOOK_BLOCKS == 0 and self._owns()

    def _sound_over(self, loud: bool) -> bool:
        """Whether something sounded and quiet has just followed, once for each sound."""
        self._sounding = self._sounding or loud
        self._quiet = 0 if loud else self._quiet + 1
        over = self._sounding and self._quiet == QUIET_BLOCKS
        self._sounding = self._sounding and not over
        return over

    def _only_own(self, sound: Samples) -> list[Heard | SpeechStarted]:
        """What the maker's samples alone are sure of, once it is over; else the recogniser goes on
        listening.
        """
        return self._taken(self._looked_at(None, sound))

    def _taken(self, heard: Heard | None) -> list[Heard | SpeechStarted]:
        if heard is None or not heard.certain or heard.ended_s > self._at / RATE_HZ - OVER_S:
            return []
        self._anew()
        return [heard]

    def _unheard(self, text: str) -> list[Heard | SpeechStarted]:
        """What the proof alone is sure of in a sound in which the recogniser heard nothing."""
        if text:
            return []
        least = max(self._least, UNHEARD_LEAST)
        heard = self._proven(None, self._at / RATE_HZ - PROOF_S, least)
        return [] if heard is None or self._longer(heard.text) else self._taken(heard)

    def _proven(
        self, heard: Heard | None, since_s: float, least: float | None = None
    ) -> Heard | None:
        """What comes of it once the sound since then is put to the proof."""
        put = [*self._put, heard.text] if heard is not None and heard.certain else self._put
        if self._proof is None or not put:
            return heard
        began = time.perf_counter()
        first = self._at - len(self._whole)
        sound = self._whole[max(0, round(since_s * RATE_HZ) - first) :]
        verdict, now_s = self._proof.look(sound, put, self._names), self._at / RATE_HZ
        began_s = now_s - len(sound) / RATE_HZ
        seen = proven(heard, verdict, began_s, now_s, self._least if least is None else least)
        took = time.perf_counter() - began
        return replace(seen, compute_s=seen.compute_s + took) if seen is not None else None

    def _looked_at(self, heard: Heard | None, sound: Samples) -> Heard | None:
        """The second look at a sound that ends now."""
        if self._own is None or not self._owns():
            return heard
        began = time.perf_counter()
        seen = self._own.look(sound, heard, self._at / RATE_HZ)
        took = time.perf_counter() - began
        return replace(seen, compute_s=seen.compute_s + took) if seen is not None else None

    def _longer(self, text: str) -> bool:
        return any(one.startswith(text + " ") for one in self._phrases)

    def flush(self) -> tuple[Heard | SpeechStarted, ...]:
        """What the sound so far comes to; nothing more will follow."""
        if len(self._waiting):
            rest = np.zeros(BLOCK, np.int16)
            rest[: len(self._waiting)] = self._waiting
            self._waiting = np.zeros(0, np.int16)
            first = self._block(rest)
            if any(isinstance(one, Heard) for one in first):
                return tuple(first)
        if self._ear is None:
            return ()
        return tuple(self._decide(json.loads(self._ear.FinalResult())))

    def _decide(self, result: dict[str, object]) -> list[Heard | SpeechStarted]:
        words = _words(result, self._started_at / RATE_HZ)
        text = " ".join(one.word for one in words) + " "
        # A short opening ("i have") is often taken for other speech whole.
        unheard = bool(words) and all(one.word.startswith("[") for one in words)
        begun = text.startswith(self._openings) and text[:-1] not in self._phrases
        if self._breaths and (unheard or begun):
            words = self._with_numbers() or words
        heard = settled(words, self._phrases, self._at / RATE_HZ, self._compute_s, self._least)
        if words or self._text:
            # What stood while it was said may be gone from the last reading.
            since_s = words[0].start_s - LEAD_S if words else self._at / RATE_HZ - PROOF_S
            heard = self._proven(heard, since_s)
        heard = self._looked_at(heard, self._whole)
        self._compute_s = 0.0
        self._anew()
        return [heard] if heard is not None else []

    def _with_numbers(self) -> tuple[HeardWord, ...]:
        """The words of the sound since the last decision, an opening and its number expected."""
        began = time.perf_counter()
        ear = self._new_ear(self._breaths)
        ear.AcceptWaveform(self._whole.tobytes())
        words = _words(json.loads(ear.FinalResult()), (self._at - len(self._whole)) / RATE_HZ)
        self._compute_s += time.perf_counter() - began
        return words


def _words(result: dict[str, object], offset_s: float) -> tuple[HeardWord, ...]:
    raw = result.get("result")
    return tuple(
        HeardWord(one["word"], float(one["conf"]), one["start"] + offset_s, one["end"] + offset_s)
        for one in (raw if isinstance(raw, list) else [])
    )
