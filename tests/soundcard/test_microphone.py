"""The real microphone and canceller on the virtual card:
hearing, not hearing ourselves, loss and return.
"""

from __future__ import annotations

import queue
import time
from pathlib import Path

import numpy as np
import pytest

from reader.devices.echo import SpeexCanceller
from reader.devices.hearing import Hearing
from reader.devices.microphone import Microphone
from reader.devices.mixer import Clip, Mixer
from reader.devices.player import Player
from reader.devices.ports import (
    FRAME,
    RATE_HZ,
    DeviceBack,
    DeviceLost,
    DeviceUnavailable,
    Samples,
    SpeechEnded,
)
from reader.devices.renderer import Renderer
from reader.devices.speaking import Speaking
from reader.devices.stream_place import StreamPlace
from reader.devices.voice import MixedVoice
from tests.soundcard.absent import skip_without
from tests.soundcard.rig import SPEAKER_HZ, SoundCard, decibels, first_loud, save_wav

pytestmark = pytest.mark.soundcard
TEXT = "Go on to the next row, and say again, or back, or ask where am I. "


class Frames:
    """A microphone whose frames are kept."""

    def __init__(self) -> None:
        self.events: queue.Queue[object] = queue.Queue()
        self.frames: list[Samples] = []
        self.numbers: list[int] = []
        self.microphone = Microphone(self.take, self.events.put)

    def take(self, frame: Samples, first: int, at_s: float) -> None:
        self.frames.append(frame)
        self.numbers.append(first)

    def sound(self) -> Samples:
        return np.concatenate(self.frames) if self.frames else np.zeros(0, np.int16)


def until(what: object, events: queue.Queue[object], limit_s: float) -> object:
    """The next event of a kind; anything else before it fails the test."""
    event = events.get(timeout=limit_s)
    assert isinstance(event, what)  # type: ignore[arg-type]
    return event


def test_what_is_spoken_arrives(card: SoundCard, tmp_path: Path) -> None:
    """A 700 Hz tone played into the virtual microphone comes as 20 ms frames, numbered without
    gaps.
    """
    tone = 9000 * np.sin(2 * np.pi * 700 * np.arange(48_000) / 48_000)
    save_wav(tmp_path / "tone.wav", tone.astype(np.int16), 48_000)
    hearing = Frames()
    hearing.microphone.open()
    card.speak(tmp_path / "tone.wav")
    time.sleep(0.3)
    hearing.microphone.close()
    assert {len(f) for f in hearing.frames} == {FRAME}
    assert np.array_equal(np.diff(hearing.numbers), np.full(len(hearing.numbers) - 1, FRAME))
    sound = hearing.sound()
    start = first_loud(sound, 2000)
    assert start is not None
    part = sound[start + 1000 : start + 9000].astype(np.float64)
    assert int(np.argmax(np.abs(np.fft.rfft(part, RATE_HZ)))) == pytest.approx(700, abs=3)


def test_our_own_voice_is_taken_out(card: SoundCard) -> None:
    """With an acoustic path at -12 dB, what is left of our speech is at least 20 dB lower than
    it came.
    """
    try:
        canceller = SpeexCanceller()
    except OSError as error:
        skip_without(str(error))
    card.echo(-12)
    events: queue.Queue[object] = queue.Queue()
    speaking = Speaking(events.put, {})
    left: list[Samples] = []
    hearing = Hearing(
        lambda frame, *_: left.append(frame), events.put, speaking.played, canceller=canceller
    )
    speech = speaking.renderer.render(TEXT * 2, 170)
    speaking.open()
    hearing.open()
    speaking.mixer.play(Clip(speech))
    with card.heard_at("mic") as raw:
        time.sleep(len(speech) / RATE_HZ - 0.5)
        came = decibels(raw.samples()[4 * SPEAKER_HZ :])
        stayed = decibels(np.concatenate(left)[4 * RATE_HZ :])
        note = hearing.recent(2.0)
    hearing.close()
    speaking.close()
    print(f"echo {came:.1f} dB came, {stayed:.1f} dB left")
    assert came > -45
    assert came - stayed > 20
    assert len(note) == 2 * RATE_HZ
    assert hearing.lost_frames == 0
    assert events.empty()


def test_the_sound_server_dies_and_comes_back(card: SoundCard) -> None:
    """Each device is lost once and back once; speech cut off by it is ended;
    then all work again.
    """
    hearing, mixer = Frames(), Mixer()
    player = Player(mixer, hearing.events.put)
    voice = MixedVoice(Renderer(), mixer, hearing.events.put)
    player.changed = voice.speaker_changed
    player.open()
    hearing.microphone.open()
    time.sleep(0.5)
    voice.say(TEXT * 4, 1)
    time.sleep(0.5)
    card.kill()
    gone = [hearing.events.get(timeout=4) for _ in range(3)]
    assert {e.device for e in gone if isinstance(e, DeviceLost)} == {"speaker", "microphone"}
    assert [(e.number, e.complete) for e in gone if isinstance(e, SpeechEnded)] == [(1, False)]
    voice.say("Nobody hears this.", 2)
    assert hearing.events.get(timeout=1) == SpeechEnded(2, False)
    time.sleep(1.5)
    assert hearing.events.empty()
    card.start()
    back = [until(DeviceBack, hearing.events, 6) for _ in range(2)]
    assert {e.device for e in back if isinstance(e, DeviceBack)} == {"speaker", "microphone"}
    before = len(hearing.frames)
    with card.heard_at("spk.monitor") as heard:
        voice.say("Here again.", 3)
        assert hearing.events.get(timeout=5) == SpeechEnded(3, True, 2)
        time.sleep(0.3)
    assert first_loud(heard.samples()) is not None
    assert len(hearing.frames) > before + 20
    voice.close()
    player.close()
    hearing.microphone.close()


def test_a_microphone_pulled_out_is_noticed(card: SoundCard) -> None:
    """The server gives us the speaker's sound instead: lost is said, nothing is heard;
    then back.
    """
    hearing = Frames()
    hearing.microphone.open()
    place = StreamPlace(hearing.microphone.moved_away)
    assert place.start()
    time.sleep(0.8)
    modules = card.pactl("list", "short", "modules").splitlines()
    remap = next(line.split("\t")[0] for line in modules if "module-remap-source" in line)
    card.pactl("unload-module", remap)
    until(DeviceLost, hearing.events, 3)
    time.sleep(0.1)
    count = len(hearing.frames)
    time.sleep(0.4)
    assert len(hearing.frames) == count
    card.pactl("load-module", "module-remap-source", "source_name=mic", "master=micin.monitor")
    until(DeviceBack, hearing.events, 3)
    time.sleep(0.3)
    assert len(hearing.frames) > count
    assert hearing.events.empty()
    place.close()
    hearing.microphone.close()


def test_a_start_without_any_sound_is_one_sentence(card: SoundCard) -> None:
    """No server at the start: a sentence each, and both come by themselves once it is there."""
    card.kill()
    hearing = Frames()
    player = Player(Mixer(), hearing.events.put)
    with pytest.raises(DeviceUnavailable, match="no speaker"):
        player.open()
    with pytest.raises(DeviceUnavailable, match="no microphone"):
        hearing.microphone.open()
    card.start()
    back = [until(DeviceBack, hearing.events, 6) for _ in range(2)]
    assert {e.device for e in back if isinstance(e, DeviceBack)} == {"speaker", "microphone"}
    player.close()
    hearing.microphone.close()
