"""The voice's parts without any device: mixing, fading, chimes, resampling, a renderer that
hangs.
"""

from __future__ import annotations

import queue
import shutil
import sys
import time

import numpy as np
import pytest

from reader.devices.chime_player import MixedChimes, sound_of
from reader.devices.fakes import FakeClock, FakeVoice
from reader.devices.mixer import Clip, Mixer
from reader.devices.notes_folder import NotesFolder
from reader.devices.ports import RATE_HZ, DeviceLost, DeviceUnavailable, SpeechEnded
from reader.devices.renderer import Renderer
from reader.devices.resample import at_our_rate
from reader.devices.sound_ring import SoundRing
from reader.devices.voice import MixedVoice

TONE = (8000 * np.sin(2 * np.pi * 440 * np.arange(16_000) / 16_000)).astype(np.int16)


def test_resampling_keeps_a_tone_and_drops_what_cannot_be_kept() -> None:
    """A 1 kHz tone at 22 050 Hz stays itself; a 10 kHz tone, above half of 16 kHz, is gone."""
    at_s = np.arange(22_050) / 22_050
    kept = at_our_rate((8000 * np.sin(2 * np.pi * 1000 * at_s)).astype(np.int16), 22_050)
    wanted = 8000 * np.sin(2 * np.pi * 1000 * np.arange(16_000) / 16_000)
    assert len(kept) == 16_000
    assert np.abs(kept[800:-800] - wanted[800:-800]).max() < 80
    gone = at_our_rate((8000 * np.sin(2 * np.pi * 10_000 * at_s)).astype(np.int16), 22_050)
    assert np.abs(gone[800:-800]).max() < 80


def test_mixed_sound_is_the_sound_and_is_remembered() -> None:
    """In blocks of any size what goes out is the clip, and the reference holds the same samples."""
    mixer = Mixer()
    over: list[Clip] = []
    mixer.play(Clip(TONE, over.append))
    out = np.concatenate([mixer.pull(n) for n in (1, 319, 320, 7, 5000, 11_000)])
    assert np.array_equal(out[:16_000], TONE)
    assert not out[16_000:].any()
    assert len(over) == 1
    assert np.array_equal(mixer.heard.read(0, len(out)), out)


def test_a_dropped_sentence_fades_within_5_ms() -> None:
    """No click and no more than 80 samples."""
    mixer = Mixer()
    mixer.play(Clip(TONE))
    before = mixer.pull(1600)
    mixer.drop()
    after = mixer.pull(1600)
    assert after[:40].any()
    assert not after[80:].any()
    steps = np.abs(np.diff(np.concatenate([before[-20:], after]).astype(int)))
    assert steps.max() <= np.abs(np.diff(TONE.astype(int))).max() + 110
    assert mixer.quiet()


def test_softened_is_12_db_down_and_chimes_are_not() -> None:
    """Speech goes to a quarter of its height, a chime stays as it is."""
    mixer = Mixer()
    mixer.soften(True)
    mixer.pull(640)
    mixer.play(Clip(TONE))
    assert np.abs(mixer.pull(8000)).max() == pytest.approx(8000 * 0.2512, abs=20)
    mixer.drop()
    mixer.pull(320)
    mixer.chime(TONE)
    assert np.abs(mixer.pull(8000)).max() == 8000


def test_a_lowered_voice_comes_back_by_itself() -> None:
    """Nobody tells the end of talk that was no command: after two and a half seconds it is over."""
    mixer = Mixer()
    mixer.soften(True)
    mixer.play(Clip(np.full(4 * RATE_HZ, 8000, np.int16)))
    sound = np.concatenate([mixer.pull(160) for _ in range(300)])
    assert np.abs(sound[RATE_HZ : 2 * RATE_HZ]).max() < 2100
    assert np.abs(sound[int(2.6 * RATE_HZ) :]).min() == 8000


def test_what_was_played_can_be_read_back_for_eight_seconds() -> None:
    """Before the first, behind the last and what is too old are silence."""
    played = SoundRing(seconds=1)
    for start in range(0, 40_000, 700):
        block = np.arange(start, start + 700)
        played.write((block % 30_000).astype(np.int16), start / 16_000)
    end = played.written()
    assert np.array_equal(played.read(end - 500, 500), np.arange(end - 500, end) % 30_000)
    assert not played.read(end, 50).any()
    assert not played.read(end - 17_000, 1000).any()
    assert not played.read(-100, 50).any()


def test_chimes_have_the_pitch_and_length_that_was_asked() -> None:
    """100 ms of 660 Hz and 50 ms of rest are 2400 samples with their energy at 660 Hz."""
    sound = sound_of(((660.0, 100.0, 0.5), (0.0, 50.0, 0.0)))
    assert len(sound) == 2400
    spectrum = np.abs(np.fft.rfft(sound, 16_000))
    assert int(np.argmax(spectrum)) == pytest.approx(660, abs=6)
    assert abs(int(sound[0])) < 50
    mixer = Mixer()
    MixedChimes(mixer, {}).chime("no such chime")
    assert mixer.quiet()


def worker(script: str) -> tuple[str, ...]:
    """A stand-in for the render worker."""
    return (sys.executable, "-u", "-c", script)


def test_no_voice_is_said_once_and_texts_go_on() -> None:
    """Without a speech program each text is over at once, complete, and the reason comes once."""
    events: queue.Queue[object] = queue.Queue()
    renderer = Renderer(command=worker('print(\'{"trouble": "no espeak"}\')'))
    voice = MixedVoice(renderer, Mixer(), events.put)
    voice.say("Row one.", 1)
    assert isinstance(lost := events.get(timeout=5), DeviceLost)
    assert lost.device == "voice"
    assert "espeak-ng" in lost.sentence
    assert events.get(timeout=5) == SpeechEnded(1, True)
    voice.say("Row two.", 2)
    assert events.get(timeout=1) == SpeechEnded(2, True)
    assert events.empty()
    voice.close()


def test_a_worker_that_hangs_is_replaced(monkeypatch: pytest.MonkeyPatch) -> None:
    """A renderer that never answers costs its time limit twice, then one sentence;
    nothing hangs.
    """
    monkeypatch.setattr("reader.devices.renderer.RENDER_LIMIT_S", 0.2)
    renderer = Renderer(
        command=worker("import time; print('{\"ready\": true}', flush=True); time.sleep(60)")
    )
    started_s = time.monotonic()
    with pytest.raises(DeviceUnavailable, match="missing or broken"):
        renderer.render("Row one.", 170)
    assert time.monotonic() - started_s < 5
    assert renderer.restarts == 2
    renderer.close()


needs_espeak = pytest.mark.skipif(
    shutil.which("espeak-ng") is None, reason="espeak-ng is not installed"
)


@needs_espeak
def test_a_killed_worker_is_replaced() -> None:
    """Killed between two sentences, the next one is rendered all the same."""
    renderer = Renderer()
    first = renderer.render("Chain one.", 170)
    assert renderer._worker is not None
    renderer._worker._process.kill()
    renderer._worker._process.wait(5)
    assert len(renderer.render("Chain two.", 170)) > 4000
    assert np.array_equal(renderer.render("Chain one.", 170), first)
    renderer.close()


@needs_espeak
def test_faster_is_shorter() -> None:
    """Twice the words a minute takes about half the time, from 80 to 500."""
    renderer = Renderer()
    text = "Single crochet in each of the next six stitches, then turn the work."
    lengths = [len(renderer.render(text, rate)) for rate in (80, 160, 320, 500)]
    renderer.close()
    assert lengths[0] / lengths[1] == pytest.approx(2, abs=0.4)
    assert lengths[1] / lengths[2] == pytest.approx(2, abs=0.4)
    assert lengths[2] / lengths[3] == pytest.approx(1.56, abs=0.4)


@needs_espeak
def test_the_voice_without_a_speaker_ends_and_tells_its_words() -> None:
    """The words around the moment are known, the end is told with all words said."""
    events: queue.Queue[object] = queue.Queue()
    mixer = Mixer()
    voice = MixedVoice(Renderer(), mixer, events.put)
    voice.say("Row three. Six single crochet in the ring, then join and turn the work.", 4)
    while mixer.quiet():
        time.sleep(0.01)
    mixer.pull(1600)
    assert voice.speaking().startswith("Row three")
    pulled = 0
    while events.empty() and pulled < 20 * 16_000:
        pulled += len(mixer.pull(1600))
        time.sleep(0.005)
    assert events.get(timeout=1) == SpeechEnded(4, True, 14)
    assert voice.speaking() == ""
    voice.close()


def test_the_fake_voice_takes_its_time() -> None:
    """Six words at 120 a minute take three seconds; cut off after one second two were said."""
    clock, events = FakeClock(), queue.SimpleQueue[object]()
    voice = FakeVoice(clock, events.put)
    voice.set_rate(120)
    voice.say("one two three four five six", 1)
    clock.go_on(1.0)
    voice.stop()
    assert events.get_nowait() == SpeechEnded(1, False, 2)
    voice.say("one two three four five six", 2)
    clock.go_on(3.0)
    voice.listen_on()
    assert events.get_nowait() == SpeechEnded(2, True, 6)


def test_sound_notes_are_kept(tmp_path: object) -> None:
    """A note's sound comes back sample for sample."""
    from pathlib import Path

    notes = NotesFolder("a1", Path(str(tmp_path)))
    path = notes.keep("row 3: colour?", TONE)
    assert path.exists()
    assert notes.names() == (path.stem,)
    assert np.array_equal(notes.sound("row 3: colour?"), TONE)


def test_an_unknown_voice_is_noticed_and_the_usual_one_speaks() -> None:
    """No voice is replaced without a word."""
    renderer = Renderer("a voice that nobody has")
    try:
        assert len(renderer.render("next", 170)) > 0
        assert renderer.unknown_voice
    finally:
        renderer.close()
