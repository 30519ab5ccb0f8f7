"""A room where the program hears itself: the real voice, mixer, canceller, ear, recogniser and
session, joined by simulated air instead of a sound card, as fast as the machine can.

Of the program only the two sound streams and the clock are replaced. The time between a decision
and silence in the speaker's own buffers is so not measured here; tests.benchmarks.latency does it.
"""

from __future__ import annotations

import threading
import time
from dataclasses import dataclass, field

import numpy as np

from reader.app.loop import KeyPressed, Loop
from reader.devices.ear import ThreadedEar
from reader.devices.echo import open_canceller
from reader.devices.echo_line import EchoLine
from reader.devices.fakes import FakeChimes, FakeClock, FakeShelf
from reader.devices.mixer import Mixer
from reader.devices.ports import FRAME, RATE_HZ, Samples, SpeechStarted
from reader.devices.recogniser import VoskRecogniser
from reader.devices.renderer import Renderer
from reader.devices.voice import MixedVoice
from reader.listening.heard import Heard
from reader.plan.step import Plan
from reader.session.start import begin
from reader.session.state import Tastes

FRAME_S = FRAME / RATE_HZ
DELAY_S = 0.07
"""From the mixer through both streams' buffers and two metres of air. Judgement."""

NOISE = 12.0
"""A quiet room's own noise at the microphone, RMS of 32 768: -69 dB. Judgement."""

PATIENCE_S = 60.0
"""Real seconds that the voice's or the ear's own thread may take for a step."""


class CountedEar:
    """A recogniser that tells how much it has taken, so that the room can wait for it."""

    def __init__(self, recogniser: VoskRecogniser) -> None:
        self._recogniser = recogniser
        self._taken = threading.Condition()
        self.frames = 0

    def listen_for(self, phrases: tuple[str, ...]) -> None:
        """As the recogniser does."""
        self._recogniser.listen_for(phrases)

    def feed(self, samples: Samples) -> tuple[Heard | SpeechStarted, ...]:
        """As the recogniser does; counts."""
        found = self._recogniser.feed(samples)
        with self._taken:
            self.frames += 1
            self._taken.notify_all()
        return found

    def flush(self) -> tuple[Heard | SpeechStarted, ...]:
        """As the recogniser does."""
        return self._recogniser.flush()

    def wait_for(self, frames: int) -> None:
        """Until so many frames are taken."""
        with self._taken:
            if not self._taken.wait_for(lambda: self.frames >= frames, PATIENCE_S):
                raise AssertionError("the ear has stopped taking sound")


@dataclass
class Told:
    """What the ear told, and when."""

    at_s: float
    heard: Heard


@dataclass
class Air:
    """What reaches the microphone: our own voice late and lowered with some echoes of the room, the
    maker, a film, and the room's noise.
    """

    echo_db: float
    film: Samples
    chance: np.random.Generator
    played: Samples = field(default_factory=lambda: np.zeros(RATE_HZ, np.int16))
    maker: Samples = field(default_factory=lambda: np.zeros(0, np.int16))
    film_at: int = 0

    def __post_init__(self) -> None:
        # A living room: direct sound, then reflections that fall by 60 dB in 0.4 s. Judgement.
        length = RATE_HZ // 5
        fall = 10 ** (-3 * np.arange(length) / (0.4 * RATE_HZ))
        tail = self.chance.standard_normal(length) * fall
        tail[: RATE_HZ // 200] = 0
        tail *= 0.5 / np.sqrt(np.sum(tail**2))
        tail[0] = 1.0
        self._room = tail / np.sqrt(np.sum(tail**2))

    def frame(self, played: Samples) -> Samples:
        """int16[320] at the microphone."""
        self.played = np.concatenate([self.played[FRAME:], played])
        late, length = round(DELAY_S * RATE_HZ), len(self._room)
        end = len(self.played) - late
        near = self.played[end - FRAME - length + 1 : end].astype(np.float64)
        sound = np.convolve(near, self._room, "valid") * 10 ** (self.echo_db / 20)
        sound += self.chance.standard_normal(FRAME) * NOISE
        spoken, self.maker = self.maker[:FRAME], self.maker[FRAME:]
        sound[: len(spoken)] += spoken
        if len(self.film):
            at = np.arange(self.film_at, self.film_at + FRAME) % len(self.film)
            sound += self.film[at]
            self.film_at += FRAME
        return np.clip(sound, -32768, 32767).astype(np.int16)


class EchoRoom:
    """A session in the room. told: what the ear told; spoken_s: seconds of the program's speech;
    lowered: how often it lowered its voice because somebody seemed to speak.
    """

    def __init__(self, plan: Plan, echo_db: float, film: Samples, seed: int) -> None:
        self.clock = FakeClock()
        self.air = Air(echo_db, film, np.random.default_rng(seed))
        self.mixer, self.recogniser = Mixer(), CountedEar(VoskRecogniser())
        self.told: list[Told] = []
        self.spoken_s = 0.0
        self.lowered = 0
        self.last_played = np.zeros(FRAME, np.int16)
        self.loop = Loop(None, FakeChimes(), None, None, FakeShelf(), self.clock)
        self.loop.voice = self.voice = MixedVoice(Renderer(), self.mixer, self.loop.push)
        self.loop.ear = self.ear = ThreadedEar(self.recogniser, self._from_ear)
        canceller, trouble = open_canceller()
        if trouble:
            raise AssertionError(trouble)
        self._line = EchoLine(canceller, self.mixer.heard)
        self.ear.know_own_voice(self.voice.just_said, self._line.somebody)
        self._frames = 0
        state, effects = begin(plan, None, Tastes(rest_minutes=0), self.clock.now_s())
        self.loop.start(state, effects)

    def frame(self) -> None:
        """Twenty milliseconds go by for everybody."""
        self._let_render()
        now_s = self.clock.now_s()
        self.last_played = self.mixer.pull(FRAME, now_s)
        self.spoken_s += FRAME_S * bool(np.abs(self.last_played.astype(int)).max() > 100)
        at_microphone = self.air.frame(self.last_played)
        clean = self._line.clean(at_microphone, self._frames * FRAME, now_s)
        self._frames += 1
        self.ear.take(clean, self._frames * FRAME, now_s)
        self.recogniser.wait_for(self._frames)
        self.clock.go_on(FRAME_S)
        self._work()

    def wait(self, seconds: float) -> None:
        """Lets time go by."""
        for _ in range(round(seconds / FRAME_S)):
            self.frame()

    def key(self, name: str) -> None:
        """Presses a key."""
        self.loop.push(KeyPressed(name))
        self._work()

    def speaking(self) -> bool:
        """Whether the program is speaking."""
        return bool(self.voice.speaking())

    def place(self) -> object:
        """The maker's place."""
        return self.loop.state.place if self.loop.state else None

    def close(self) -> None:
        """Gives everything back."""
        self.ear.close()
        self.voice.close()

    def _from_ear(self, event: object) -> None:
        if isinstance(event, Heard):
            self.told.append(Told(self.clock.now_s(), event))
        self.lowered += isinstance(event, SpeechStarted)
        self.loop.push(event)

    def _work(self) -> None:
        while not self.loop.events.empty():
            self.loop.one(self.loop.events.get())

    def _let_render(self) -> None:
        """The voice renders in a thread of its own; the room's time stands still meanwhile."""
        until_s = time.monotonic() + PATIENCE_S
        while self.voice.waiting():
            if time.monotonic() > until_s:
                raise AssertionError("the voice does not render")
            time.sleep(0.001)
