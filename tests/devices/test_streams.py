"""Streams without any device: lost and back once each, noise kept off the screen, no orphans."""

from __future__ import annotations

import os
import queue
import signal
import subprocess
import sys
import time
from pathlib import Path

import numpy as np
import pytest

from reader.devices import kept_stream
from reader.devices.echo import NoCanceller
from reader.devices.fakes import FakeChimes, FakeClock, FakeEar, FakeRecogniser, heard
from reader.devices.hearing import Hearing
from reader.devices.kept_stream import KeptStream, Kind
from reader.devices.mixer import Clip, Mixer
from reader.devices.player import Player
from reader.devices.ports import (
    FRAME,
    ChimePlayer,
    Clock,
    DeviceBack,
    DeviceLost,
    Ear,
    Recogniser,
    SpeechStarted,
)
from reader.devices.sound_ring import SoundRing
from reader.devices.stream_place import hears_the_speaker

ROOT = Path(__file__).parents[2]


class Silent:
    """A stream that opens and never calls."""

    latency = 0.01

    def abort(self) -> None:
        """Nothing to do."""

    def close(self) -> None:
        """Nothing to do."""


def test_a_silent_stream_is_lost_once_and_back_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """No callback: lost, tried again until it opens, back; whoever listens is told the same."""
    monkeypatch.setattr(kept_stream, "SILENT_S", 0.2)
    monkeypatch.setattr(kept_stream, "LOOK_S", 0.02)
    monkeypatch.setattr(kept_stream, "TRY_AGAIN_S", 0.05)
    events: queue.Queue[object] = queue.Queue()
    tries: list[float] = []

    def make() -> Silent:
        tries.append(time.monotonic())
        if 1 < len(tries) < 4:
            raise OSError("not yet")
        return Silent()

    kept = KeptStream(Kind("speaker", "It is gone."), make, events.put)
    told: list[bool] = []
    kept.changed = told.append
    kept.open()
    assert events.get(timeout=2) == DeviceLost("speaker", "It is gone.")
    assert events.get(timeout=2) == DeviceBack("speaker")
    kept.close()
    assert told[:2] == [False, True]
    assert len(tries) >= 4


def test_a_monitor_as_microphone_is_seen() -> None:
    """The shape of pactl's own listing: our process on the monitor, on a microphone, not there."""
    sources = [
        {"index": 0, "name": "spk.monitor", "monitor_source": "spk"},
        {"index": 1, "name": "mic", "monitor_source": ""},
    ]

    def output(source: int, process: int) -> dict[str, object]:
        return {"source": source, "properties": {"application.process.id": str(process)}}

    assert hears_the_speaker([output(0, 7), output(1, 8)], sources, 7) is True
    assert hears_the_speaker([output(0, 7), output(1, 8)], sources, 8) is False
    assert hears_the_speaker([output(0, 7)], sources, 9) is None


NOISY = """
import os, sys
from pathlib import Path
from reader.devices.noise import noise_to
undo = noise_to(Path(sys.argv[1]) if len(sys.argv) > 1 else None)
os.write(2, b"ALSA lib complains\\n")
print("our sentence", file=sys.stderr)
undo()
os.write(2, b"after\\n")
"""


@pytest.mark.parametrize("place", ["log", "nowhere", "unwritable"])
def test_noise_goes_to_the_log_and_our_sentences_do_not(tmp_path: Path, place: str) -> None:
    """Descriptor 2 is silent, sys.stderr is not, and afterwards all is as before."""
    (tmp_path / "file").write_text("")
    log = tmp_path / ("file" if place == "unwritable" else "deep") / "sound.log"
    words = [] if place == "nowhere" else [str(log)]
    done = subprocess.run(
        [sys.executable, "-c", NOISY, *words],
        capture_output=True,
        text=True,
        timeout=20,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    assert done.stderr == "our sentence\nafter\n"
    if place == "log":
        assert log.read_text() == "ALSA lib complains\n"


SPEAKER = """
import sys
from reader.devices.renderer import Renderer
renderer = Renderer()
renderer.warm()
print(renderer._worker._process.pid, renderer._folder.name, flush=True)
sys.stdin.read()
"""


@pytest.mark.skipif(not Path("/proc/self").exists(), reason="looks into /proc")
def test_a_killed_program_leaves_no_worker_behind() -> None:
    """kill -9 on the program: its renderer and its sound files are gone within three seconds."""
    pytest.importorskip("pyttsx3")
    child = subprocess.Popen(
        [sys.executable, "-c", SPEAKER],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    assert child.stdout is not None
    line = child.stdout.readline()
    if not line.strip():
        child.wait(5)
        pytest.skip("there is no voice here")
    number, folder = line.split(maxsplit=1)
    worker = Path(f"/proc/{number}")
    assert worker.exists()
    child.send_signal(signal.SIGKILL)
    child.wait(5)
    deadline = time.monotonic() + 3
    while worker.exists() and time.monotonic() < deadline:
        if worker.joinpath("stat").read_text().split()[2] == "Z":
            break
        time.sleep(0.05)
    gone = not worker.exists() or worker.joinpath("stat").read_text().split()[2] == "Z"
    assert gone
    assert not Path(folder.strip()).exists()


def test_hearing_hands_on_every_frame_in_order_and_keeps_the_last() -> None:
    """Frames pass to the consumer with their numbers; a note by voice gets the last of them."""
    got: list[int] = []
    hearing = Hearing(
        lambda frame, first, at_s: got.append(first),
        lambda event: None,
        SoundRing(),
        canceller=NoCanceller(),
    )
    for number in range(10):
        frame = np.full(FRAME, number, np.int16)
        hearing._take(frame, number * FRAME, number * 0.02)
    hearing._thread.start()
    deadline = time.monotonic() + 2
    while len(got) < 10 and time.monotonic() < deadline:
        time.sleep(0.01)
    assert got == [n * FRAME for n in range(10)]
    assert hearing.recent(0.04).tolist() == [8] * FRAME + [9] * FRAME
    assert len(hearing.recent(60)) == 10 * FRAME
    hearing.close()


def test_sound_that_a_slow_consumer_misses_is_counted() -> None:
    """The sound thread never waits: what finds no room is dropped, the rest keeps its numbers."""
    hearing = Hearing(
        lambda frame, first, at_s: None, lambda event: None, SoundRing(), canceller=NoCanceller()
    )
    for number in range(260):
        hearing._take(np.zeros(FRAME, np.int16), number * FRAME, number * 0.02)
    assert hearing.lost_frames == 10


def test_the_fakes_keep_the_ports() -> None:
    """Each twin can stand where the real thing stands, and hears only what it listens for."""
    events: list[object] = []
    clock = FakeClock()
    ear: Ear = FakeEar(events.append, clock)
    chimes: ChimePlayer = FakeChimes()
    recogniser: Recogniser = FakeRecogniser([(heard("next"),)])
    its_clock: Clock = clock
    chimes.chime("heard")
    ear.listen_for(("next", "where am i"))
    assert isinstance(ear, FakeEar)
    ear.speak("next")
    ear.speak("banana next")
    ear.mute(True)
    ear.speak("next")
    texts = [e.text for e in events if not isinstance(e, SpeechStarted)]  # type: ignore[attr-defined]
    assert texts == ["next", "next"]
    assert recogniser.feed(np.zeros(FRAME, np.int16)) == (heard("next"),)
    assert recogniser.feed(np.zeros(FRAME, np.int16)) == ()
    assert its_clock.now_s() == 0.0


class Late:
    """A sound stream's word that it came too late."""

    output_underflow = True


def test_a_machine_too_busy_gets_a_longer_buffer_once_all_is_said() -> None:
    """Three gaps in ten seconds ask for a longer buffer, never in the middle of a text, and no more
    often than there are longer ones.
    """
    mixer = Mixer()
    player = Player(mixer, lambda event: None)
    out = np.zeros((160, 1), np.int16)
    for _ in range(2):
        player._fill(out, 160, None, Late())
    assert not player._should_begin_anew()
    mixer.play(Clip(np.full(800, 1000, np.int16)))
    player._fill(out, 160, None, Late())
    assert not player._should_begin_anew()
    for _ in range(5):
        player._fill(out, 160, None, None)
    assert [player._should_begin_anew(), player._should_begin_anew()] == [True, False]
    for _ in range(6):
        player._fill(out, 160, None, Late())
    assert player._should_begin_anew()
    for _ in range(6):
        player._fill(out, 160, None, Late())
    assert not player._should_begin_anew()
