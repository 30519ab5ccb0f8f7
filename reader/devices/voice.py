"""Voice: a text in, speech out at once; says how much of it was heard, and goes silent within 5
ms.
"""

from __future__ import annotations

import re
import threading
import time
from collections import deque

import numpy as np

from reader.devices.mixer import Clip, Mixer
from reader.devices.ports import (
    RATE_HZ,
    DeviceBack,
    DeviceLost,
    DeviceUnavailable,
    Push,
    Samples,
    SpeechEnded,
)
from reader.devices.renderer import Renderer

SENTENCE_END = re.compile(r"(?<=[.!?])\s+|\n+")

PAUSE_S = 0.28
"""Silence between sentences at 170 words a minute, shorter when faster:
common practice, no source.
"""

USUAL_RATE = 170
"""Words a minute: the middle of plain speech."""

HEARD_BEFORE_S = 1.5
HEARD_AFTER_S = 0.6
"""Words said so long ago, or to be said so soon, may be what the ear is just hearing:
its own delay. Judgement.
"""

UNKNOWN_VOICE = (
    "The voice chosen in the settings is not there, so the usual one speaks; name another in the "
    "settings file, or leave it empty."
)
SLACK_S = 0.8
"""Added before a phrase's beginning: word times are only reckoned, and sound takes its way.
Judgement.
"""

NOT_YET_S = 0.3
"""Nothing said so shortly ago is decided on already. Judgement."""

TRY_AGAIN_S = 20.0
"""A voice that failed is tried again at the first words after this long. Judgement."""


class _Speech:
    """One text being spoken: its sentences, and how far each has come."""

    def __init__(self, text: str, number: int) -> None:
        self.number = number
        self.sentences = [s for s in SENTENCE_END.split(text.strip()) if s.strip()]
        self.clips: list[Clip] = []
        self.done = 0

    def words_said(self) -> int:
        said = sum(len(s.split()) for s in self.sentences[: self.done])
        if self.done < len(self.clips):
            clip = self.clips[self.done]
            words = self.sentences[self.done].split()
            said += sum(1 for end in _word_ends(words, len(clip.sound)) if end <= clip.played)
        return said

    def at(self) -> int:
        """Samples of the whole text that have been handed over."""
        done = sum(len(c.sound) for c in self.clips[: self.done])
        return done + (self.clips[self.done].played if self.done < len(self.clips) else 0)

    def words_between(self, first: float, last: float) -> str:
        """Words of which some part lies between these two samples of the text."""
        found, start = [], 0
        for sentence, clip in zip(self.sentences, self.clips, strict=False):
            words = sentence.split()
            begin = 0
            for word, end in zip(words, _word_ends(words, len(clip.sound)), strict=True):
                if start + end >= first and start + begin <= last:
                    found.append(word)
                begin = end
            start += len(clip.sound)
        return " ".join(found)


def _word_ends(words: list[str], length: int) -> list[int]:
    """Sample at which each word is over, reckoned by its letters:
    the renderer gives no word times.
    """
    weights = np.cumsum([len(w) + 1.5 for w in words])
    return [int(w / weights[-1] * length) for w in weights] if len(words) else []


class MixedVoice:
    """The voice over renderer and mixer; its calls return at once, a thread of its own renders."""

    def __init__(self, renderer: Renderer, mixer: Mixer, push: Push) -> None:
        self._renderer, self._mixer, self._push = renderer, mixer, push
        self._turn = threading.Condition()
        self._speech: _Speech | None = None
        self._ended: deque[tuple[_Speech, int]] = deque(maxlen=4)
        self._ahead: deque[str] = deque(maxlen=4)
        self._rate = USUAL_RATE
        self._there = True
        self._mute_since_s: float | None = None
        self._unknown_told = False
        self._closing = False
        self._thread = threading.Thread(target=self._work, daemon=True, name="voice")
        self._thread.start()

    def say(self, text: str, number: int) -> None:
        """Cuts off what is being said and says this; its end comes as SpeechEnded with this number.

        With no speaker the end comes at once and not complete; with no voice at once and complete,
        since the words are shown. A text without words is over at once.
        """
        with self._turn:
            self._cut()
            speech = _Speech(text, number)
            if speech.sentences and self._there and not self._mute():
                self._speech = speech
                self._turn.notify_all()
                return
        self._push(SpeechEnded(number, complete=self._there))

    def prepare(self, text: str) -> None:
        """Renders a text that is likely to come next, in idle time, so that it starts without
        delay.
        """
        with self._turn:
            self._ahead.append(text)
            self._turn.notify_all()

    def warm(self) -> None:
        """Has the renderer started now and not at the first words; returns at once."""
        self.prepare("Ready.")

    def stop(self) -> None:
        """Silence within 5 ms; what was being said ends incomplete, with its words said so far."""
        with self._turn:
            self._cut()

    def soften(self, on: bool) -> None:
        """12 dB quieter while on, for some seconds at most."""
        self._mixer.soften(on)

    def set_rate(self, words_per_minute: int) -> None:
        """80-500 words a minute, from the next sentence not yet rendered on."""
        self._rate = max(80, min(500, words_per_minute))

    def set_volume(self, share: float) -> None:
        """0 to 2, at once; 1 is as rendered."""
        self._mixer.set_volume(share)

    def speaking(self) -> str:
        """The words at this moment, some before and after them included; "" when silent."""
        with self._turn:
            if self._speech is None:
                return ""
            at = self._speech.at()
            first, last = at - HEARD_BEFORE_S * RATE_HZ, at + HEARD_AFTER_S * RATE_HZ
            return self._speech.words_between(first, last)

    def just_said(self, ago_s: float) -> str:
        """The words that sounded since so many seconds ago, texts that have ended since included:
        what the ear may take for the maker's if it hears this voice.
        """
        with self._turn:
            now, found = self._mixer.heard.written(), []
            texts = [*self._ended, *([(self._speech, now)] if self._speech else [])]
            for speech, at in texts:
                here = speech.at() + (now - at)
                first = here - (ago_s + SLACK_S) * RATE_HZ
                last = min(speech.at(), here - NOT_YET_S * RATE_HZ)
                found.append(speech.words_between(first, last))
            return " ".join(words for words in found if words)

    def waiting(self) -> bool:
        """Whether words were given of which none is rendered yet."""
        with self._turn:
            return self._speech is not None and not self._speech.clips

    def speaker_changed(self, there: bool) -> None:
        """The speaker went or came; what nobody hears is ended."""
        with self._turn:
            self._there = there
            if not there:
                self._cut()

    def close(self) -> None:
        """Silence, and the renderer's process is ended; harmless twice."""
        with self._turn:
            self._cut()
            self._closing = True
            self._turn.notify_all()
        self._thread.join(1.0)
        self._renderer.close()

    def _mute(self) -> bool:
        since_s = self._mute_since_s
        return since_s is not None and time.monotonic() - since_s < TRY_AGAIN_S

    def _cut(self) -> None:
        speech, self._speech = self._speech, None
        if speech is not None:
            self._ended.append((speech, self._mixer.heard.written()))
            self._mixer.drop()
            self._push(SpeechEnded(speech.number, complete=False, words_said=speech.words_said()))

    def _work(self) -> None:
        while True:
            with self._turn:
                task = self._next_task()
                while task is None and not self._closing:
                    self._turn.wait()
                    task = self._next_task()
                if self._closing:
                    return
            assert task is not None
            self._do(*task)

    def _next_task(self) -> tuple[_Speech | None, str] | None:
        """What to render now: the sentence after the one being heard, else something ahead of
        time.
        """
        speech = self._speech
        if speech is not None:
            due = len(speech.clips) < len(speech.sentences)
            if due and len(speech.clips) <= speech.done + 1:
                return speech, speech.sentences[len(speech.clips)]
        if self._ahead and self._mute_since_s is None:
            return None, self._ahead.popleft()
        return None

    def _do(self, speech: _Speech | None, text: str) -> None:
        if speech is None:
            for sentence in _Speech(text, 0).sentences:
                if self._render(sentence) is None or self._speech is not None:
                    return
            return
        sound = self._render(text)
        with self._turn:
            if sound is None or self._speech is not speech:
                return
            if len(speech.clips) + 1 < len(speech.sentences):
                sound = np.concatenate([sound, self._pause()])
            clip = Clip(sound, over=lambda _: self._sentence_over(speech))
            speech.clips.append(clip)
            self._mixer.play(clip)

    def _pause(self) -> Samples:
        return np.zeros(int(PAUSE_S * RATE_HZ * USUAL_RATE / self._rate), np.int16)

    def _render(self, sentence: str) -> Samples | None:
        try:
            sound = self._renderer.render(sentence, self._rate)
        except DeviceUnavailable as error:
            self._no_voice(str(error))
            return None
        if self._mute_since_s is not None:
            self._mute_since_s = None
            self._push(DeviceBack("voice"))
        if getattr(self._renderer, "unknown_voice", False) and not self._unknown_told:
            self._unknown_told = True
            self._push(DeviceLost("chosen voice", UNKNOWN_VOICE))
        return sound

    def _no_voice(self, sentence: str) -> None:
        with self._turn:
            first, self._mute_since_s = self._mute_since_s is None, time.monotonic()
            speech, self._speech = self._speech, None
            self._ahead.clear()
            if self._closing:
                return
        if first:
            self._push(DeviceLost("voice", sentence))
        if speech is not None:
            self._push(SpeechEnded(speech.number, complete=True, words_said=speech.words_said()))

    def _sentence_over(self, speech: _Speech) -> None:
        # Called by the sound thread: a few assignments and one push, no waiting for rendering.
        with self._turn:
            if self._speech is not speech:
                return
            speech.done += 1
            if speech.done < len(speech.sentences):
                self._turn.notify_all()
                return
            self._ended.append((speech, self._mixer.heard.written()))
            self._speech = None
        self._push(SpeechEnded(speech.number, True, speech.words_said()))
