"""Waiting times of the real program, heard and spoken to through the virtual sound card.

usage: python -m tests.benchmarks.latency [--runs 5] [--voice slt]

Each run starts `reader work` anew in a process of its own, speaks commands into the microphone and
listens at the speaker. Printed are the median and the worst of all runs beside the aim:

start to first word   from the start of the process to the first sound of the greeting
word end to move      from the last sound of a command at the microphone to its line on the screen
move to first sound   from that line to the first sound of the answer at the speaker
stop to silence       from the key that hushes to the last sound at the speaker
memory                of the program and all that it started, at its highest
gaps                  underruns that the sound system complained of: torn speech (aim 0)

One start before the first run is not measured: it compiles the program, as installing it does.
Chimes are off, so that the first sound is a word. Both recorders come some 10 ms late, which
lengthens the third and fourth figure and shortens the second.
"""

from __future__ import annotations

import argparse
import statistics
import sys
import tempfile
import time
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np

from reader.app.rehearsal.maker_voice import Speak, makers_voice
from reader.devices.ports import RATE_HZ
from tests.soundcard.rig import (
    SPEAKER_HZ,
    Recording,
    SoundCard,
    first_loud,
    last_loud,
    missing,
    save_wav,
    sound_card,
)
from tests.soundcard.working import LIGHTHOUSE, InLines, command_of, environment_of, in_lines

COMMANDS = ("next", "where am i", "next", "how many", "again", "whole row")
"""Said in this order in each run."""

AIMS = {
    "start to first word": (2.0, "s"),
    "word end to move": (0.6, "s"),
    "move to first sound": (0.15, "s"),
    "stop to silence": (0.03, "s"),
    "memory": (250.0, "MB"),
}

ANSWER_S = 3.0
"""A command not answered by then was not heard."""

LET_TALK_S = 0.9
"""The answer is hushed after this long, in the middle of its words."""

SOUNDING_S = 0.06
"""A hush with no sound this shortly before it fell into a pause and tells nothing."""


@dataclass
class Figures:
    """What was measured: by name, in seconds or megabytes."""

    found: dict[str, list[float]] = field(default_factory=lambda: {name: [] for name in AIMS})
    spoken: int = 0
    heard: int = 0
    gaps: int = 0


@dataclass
class Room:
    """One run's program, and its two recordings."""

    card: SoundCard
    program: InLines
    speaker: Recording
    microphone: Recording

    def sound_after(self, at_s: float) -> float | None:
        """The second of the first sound at the speaker from this second on."""
        sound, first = self._from(self.speaker, at_s)
        loud = first_loud(sound)
        return None if loud is None else first + loud / SPEAKER_HZ

    def last_sound_after(self, at_s: float, recording: Recording, least: int = 200) -> float | None:
        """The second of the last sound of a recording, None when all from `at_s` on is quiet."""
        sound, first = self._from(recording, at_s)
        loud = last_loud(sound, least)
        return None if loud is None else first + loud / SPEAKER_HZ

    def _from(self, recording: Recording, at_s: float) -> tuple[np.ndarray, float]:
        start = max(0, round((at_s - recording.started_s) * SPEAKER_HZ))
        return recording.samples()[start:], recording.started_s + start / SPEAKER_HZ


def main() -> int:
    """Exit status 0 when every median meets its aim, 1 when not, 2 without a sound card."""
    ask = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    ask.add_argument("--runs", type=int, default=5)
    ask.add_argument("--voice", default="slt", help="the maker's voice, one of flite's own")
    args = ask.parse_args()
    if missing():
        print(missing(), file=sys.stderr)
        return 2
    figures = Figures()
    speak = makers_voice(args.voice)
    with tempfile.TemporaryDirectory(prefix="reader-latency-") as compiled:
        for run in range(args.runs + 1):
            with tempfile.TemporaryDirectory() as folder, sound_card(False) as card:
                more = {"PYTHONPYCACHEPREFIX": compiled, "PYTHONDONTWRITEBYTECODE": ""}
                environment = environment_of(card, Path(folder), READER_CHIMES="false", **more)
                one_run(card, environment, speak, figures if run else Figures())
    return told(figures)


def one_run(card: SoundCard, environment: dict[str, str], speak: Speak, figures: Figures) -> None:
    """Starts the program, says every command once, and notes what it took."""
    with (
        card.heard_at("spk.monitor") as speaker,
        card.heard_at("mic") as microphone,
        in_lines(command_of(LIGHTHOUSE), environment) as program,
    ):
        room = Room(card, program, speaker, microphone)
        program.line("Count: ")
        time.sleep(1.0)
        first_s = room.sound_after(program.began_s)
        if first_s is not None:
            figures.found["start to first word"].append(first_s - program.began_s)
        hush(room, figures)
        for words in COMMANDS:
            one_command(room, words, speak, figures)
        figures.gaps += gaps_in(Path(environment["READER_HOME"]))
        figures.found["memory"].append(megabytes(program.running.pid))


def one_command(room: Room, words: str, speak: Speak, figures: Figures) -> None:
    """Says one command into silence; its answer is hushed in the middle."""
    path = room.card.folder / "said.wav"
    save_wav(path, speak(words), RATE_HZ)
    figures.spoken += 1
    before, began_s = len(room.program.lines), time.monotonic()
    room.card.speak(path)
    try:
        answered_s = room.program.line(f"Heard: {words}", before, ANSWER_S).at_s
    except AssertionError:
        return
    figures.heard += 1
    ended_s = room.last_sound_after(began_s, room.microphone)
    if ended_s is not None:
        figures.found["word end to move"].append(answered_s - ended_s)
    time.sleep(LET_TALK_S)
    sound_s = room.sound_after(answered_s)
    if sound_s is not None:
        figures.found["move to first sound"].append(sound_s - answered_s)
    hush(room, figures)


def hush(room: Room, figures: Figures) -> None:
    """Presses the key that hushes, and waits until all is quiet."""
    pressed_s = room.program.key("escape")
    time.sleep(0.6)
    last_s = room.last_sound_after(pressed_s - SOUNDING_S, room.speaker)
    if last_s is not None:
        figures.found["stop to silence"].append(max(0.0, last_s - pressed_s))


def gaps_in(home: Path) -> int:
    """How many underruns stand in the program's log of the sound system's noise."""
    log = home / "sound.log"
    return log.read_text(errors="replace").count("underrun") if log.is_file() else 0


def megabytes(process: int) -> float:
    """Memory of a process and its children, each shared page counted by its share (Linux)."""
    total = highest_over_now(process)
    for one in [process, *children_of(process)]:
        lines = Path(f"/proc/{one}/smaps_rollup").read_text().splitlines()
        total += next(int(line.split()[1]) for line in lines if line.startswith("Pss:")) / 1000
    return total


def highest_over_now(process: int) -> float:
    """How many megabytes the program once had more than now."""
    lines = Path(f"/proc/{process}/status").read_text().splitlines()
    sizes = {line.split(":")[0]: line.split()[1] for line in lines if line.startswith("Vm")}
    return (int(sizes["VmHWM"]) - int(sizes["VmRSS"])) / 1000


def children_of(process: int) -> list[int]:
    """Processes started by it, and by those."""
    text = Path(f"/proc/{process}/task/{process}/children")
    found = []
    for thread in text.parent.parent.iterdir():
        found += [int(word) for word in (thread / "children").read_text().split()]
    return found + [one for child in found for one in children_of(child)]


def told(figures: Figures) -> int:
    """Prints the figures; the exit status."""
    late = 0
    print(f"{'':22}{'median':>9}{'worst':>9}{'aim':>9}  of")
    for name, (aim, unit) in AIMS.items():
        found = figures.found[name]
        if not found:
            print(f"{name:22}never measured")
            late += 1
            continue
        shown = [statistics.median(found), max(found), aim]
        scale, mark = (1000, "ms") if unit == "s" else (1, unit)
        columns = "".join(f"{one * scale:>6.0f} {mark}" for one in shown)
        print(f"{name:22}{columns}  {len(found)}")
        late += shown[0] > aim
    print(f"gaps {figures.gaps}")
    print(f"commands spoken {figures.spoken}, heard at the first try {figures.heard}")
    return 1 if late else 0


if __name__ == "__main__":
    raise SystemExit(main())
