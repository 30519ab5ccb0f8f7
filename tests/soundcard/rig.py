"""A virtual sound card: a PulseAudio server of its own with a speaker "spk" and a microphone "mic".

What the program plays is heard at spk.monitor; what is played into "micin" reaches the microphone.
Needs Debian's pulseaudio, pulseaudio-utils and libasound2-plugins; no hardware, no dbus, any user.
"""

from __future__ import annotations

import contextlib
import ctypes
import os
import shutil
import signal
import subprocess
import tempfile
import time
import wave
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import numpy.typing as npt

Sound = npt.NDArray[np.int16]

SPEAKER_HZ = 48_000
NEEDED = ("pulseaudio", "pactl", "paplay", "pacat")
SCRIPT = """
load-module module-native-protocol-unix socket={folder}/native auth-anonymous=1
load-module module-null-sink sink_name=spk rate=48000 channels=1 norewinds=1
load-module module-null-sink sink_name=micin rate=48000 channels=1 norewinds=1
load-module module-remap-source source_name=mic master=micin.monitor
set-default-sink spk
set-default-source mic
"""
ALSA = """
pcm.!default{type pulse}
ctl.!default{type pulse}
pcm.pulse{type pulse}
ctl.pulse{type pulse}
"""


def missing() -> str:
    """Why there can be no virtual sound card here, "" when there can."""
    absent = [name for name in NEEDED if shutil.which(name) is None]
    if absent:
        return f"the virtual sound card needs {', '.join(absent)} (Debian: pulseaudio-utils)"
    return ""


def die_with_parent() -> None:
    """For a child between fork and exec: it is killed when the test run goes away (Linux)."""
    ctypes.CDLL(None).prctl(1, signal.SIGKILL)


class SoundCard:
    """The server, and how a test speaks into its microphone and hears its speaker."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.environment = _environment(folder)
        self._server: subprocess.Popen[bytes] | None = None
        self._modules: list[str] = []

    def start(self) -> None:
        """Starts the server and waits until it answers; also after `kill`."""
        (self.folder / "rig.pa").write_text(SCRIPT.format(folder=self.folder))
        (self.folder / "alsa.conf").write_text(ALSA)
        (self.folder / "native").unlink(missing_ok=True)
        command = ["pulseaudio", "-n", "-F", str(self.folder / "rig.pa"), "--daemonize=no"]
        command += ["--exit-idle-time=-1", "--disable-shm=yes", "--use-pid-file=no"]
        command += ["--realtime=no", "--high-priority=no"]
        with (self.folder / "server.log").open("ab") as log:
            self._server = subprocess.Popen(
                command,
                env={**os.environ, **self.environment},
                stdin=subprocess.DEVNULL,
                stdout=log,
                stderr=log,
                preexec_fn=die_with_parent,
            )
        self._wait_until_it_answers()

    def kill(self) -> None:
        """The server is gone at once, as when a sound system crashes."""
        if self._server is not None:
            self._server.kill()
            self._server.wait(5)
            self._server = None

    def pactl(self, *words: str) -> str:
        """What pactl says; a failing command fails the test."""
        done = subprocess.run(
            ["pactl", *words],
            env={**os.environ, **self.environment},
            capture_output=True,
            text=True,
            timeout=10,
        )
        assert done.returncode == 0, f"pactl {' '.join(words)}: {done.stderr}"
        return done.stdout.strip()

    def echo(self, level_db: float, delay_ms: int = 40) -> None:
        """Opens an acoustic path from speaker to microphone, this many decibels down."""
        module = self.pactl(
            "load-module",
            "module-loopback",
            "source=spk.monitor",
            "sink=micin",
            f"latency_msec={delay_ms}",
            "adjust_time=0",
            "source_dont_move=true",
            "sink_dont_move=true",
        )
        stream = _stream_of_module(self.pactl("list", "sink-inputs"), module)
        self.pactl("set-sink-input-volume", stream, f"{level_db}dB")

    def speak(self, path: Path, wait: bool = True) -> subprocess.Popen[bytes]:
        """Plays a WAV file into the microphone."""
        child = self._child(["paplay", "-d", "micin", str(path)], subprocess.DEVNULL)
        if wait:
            child.wait(60)
        return child

    @contextlib.contextmanager
    def heard_at(self, source: str) -> Iterator[Recording]:
        """Records a source ("spk.monitor" is what the speaker plays) at 48 kHz while the block
        runs.
        """
        words = ["pacat", "-r", "-d", source, "--raw", "--format=s16le", "--channels=1"]
        words += [f"--rate={SPEAKER_HZ}", "--latency-msec=10"]
        path = self.folder / f"heard-{time.monotonic_ns()}.raw"
        with path.open("wb") as target:
            child = self._child(words, target.fileno())
            recording = Recording(path)
            deadline = time.monotonic() + 5
            while path.stat().st_size == 0 and time.monotonic() < deadline:
                time.sleep(0.005)
            recording.started_s = time.monotonic()
            recording.before = path.stat().st_size // 2
            try:
                yield recording
            finally:
                child.terminate()
                child.wait(5)

    def _child(self, words: list[str], out: int) -> subprocess.Popen[bytes]:
        return subprocess.Popen(
            words,
            env={**os.environ, **self.environment},
            stdin=subprocess.DEVNULL,
            stdout=out,
            stderr=subprocess.DEVNULL,
            preexec_fn=die_with_parent,
        )

    def _wait_until_it_answers(self) -> None:
        deadline = time.monotonic() + 10
        while time.monotonic() < deadline:
            done = subprocess.run(
                ["pactl", "list", "short", "sources"],
                env={**os.environ, **self.environment},
                capture_output=True,
                text=True,
                timeout=10,
            )
            if done.returncode == 0 and "micin.monitor" in done.stdout:
                return
            time.sleep(0.02)
        raise AssertionError((self.folder / "server.log").read_text()[-2000:])


class Recording:
    """What was heard so far."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self.started_s = 0.0
        self.before = 0

    def samples(self) -> Sound:
        """Everything from the moment that the block began, int16 at 48 kHz."""
        raw = self._path.read_bytes()
        return np.frombuffer(raw[: len(raw) // 2 * 2], np.int16)[self.before :]


def decibels(sound: npt.NDArray[np.generic]) -> float:
    """Level against full scale; -120 for silence and for nothing."""
    if len(sound) == 0:
        return -120.0
    mean = float(np.mean(sound.astype(np.float64) ** 2))
    return float(10 * np.log10(max(mean, 1e-3) / 32768**2))


def first_loud(sound: Sound, least: int = 200) -> int | None:
    """Number of the first sample louder than `least`, None when all is quiet."""
    loud = np.flatnonzero(np.abs(sound.astype(np.int32)) > least)
    return int(loud[0]) if len(loud) else None


def last_loud(sound: Sound, least: int = 200) -> int | None:
    """Number of the last sample louder than `least`, None when all is quiet."""
    loud = np.flatnonzero(np.abs(sound.astype(np.int32)) > least)
    return int(loud[-1]) if len(loud) else None


def save_wav(path: Path, sound: Sound, rate_hz: int) -> None:
    """A mono WAV file."""
    with wave.open(str(path), "wb") as out:
        out.setnchannels(1)
        out.setsampwidth(2)
        out.setframerate(rate_hz)
        out.writeframes(sound.astype(np.int16).tobytes())


@contextlib.contextmanager
def sound_card(set_environment: bool = True) -> Iterator[SoundCard]:
    """A running virtual sound card; with set_environment this process's sound goes to it
    meanwhile.
    """
    folder = Path(tempfile.mkdtemp(prefix="reader-card-"))
    card = SoundCard(folder)
    before = {name: os.environ.get(name) for name in card.environment}
    try:
        card.start()
        if set_environment:
            os.environ.update(card.environment)
        yield card
    finally:
        card.kill()
        for name, value in before.items():
            if value is None:
                os.environ.pop(name, None)
            else:
                os.environ[name] = value
        shutil.rmtree(folder, ignore_errors=True)


def _environment(folder: Path) -> dict[str, str]:
    # HOME stays: Python's own packages may live under it; the server is kept from it by the rest.
    return {
        "PULSE_SERVER": f"unix:{folder}/native",
        "PULSE_RUNTIME_PATH": str(folder),
        "PULSE_STATE_PATH": str(folder),
        "PULSE_COOKIE": str(folder / "cookie"),
        "XDG_RUNTIME_DIR": str(folder),
        "XDG_CONFIG_HOME": str(folder / "config"),
        "ALSA_CONFIG_PATH": str(folder / "alsa.conf"),
    }


def _stream_of_module(listing: str, module: str) -> str:
    for block in listing.split("Sink Input #")[1:]:
        if f"Owner Module: {module}\n" in block:
            return block.split("\n", 1)[0].strip()
    raise AssertionError(f"no stream of module {module} in:\n{listing}")
