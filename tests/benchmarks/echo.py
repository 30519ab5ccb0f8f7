"""Does the program obey itself, and does it obey the maker while it speaks?

usage: python -m tests.benchmarks.echo [--minutes 30] [--interruptions 60] [--echo-db -12]
                                       [--film FILE_OR_FOLDER --film-db -12]

Simulated sound, as fast as the machine can: real voice, mixer, canceller, ear, recogniser and
session, joined by simulated air (tests/benchmarks/echo_room.py). Printed are

itself         the program reads its own command words aloud for so many minutes, nobody speaks:
               what it took for a command, and the moves that came of it (aim 0)
interruptions  a maker says a command into its speech, each time at another moment: obeyed at the
               first try (aim 85 %), taken for another command, and the longest time from the
               decision to silence in the mixer (aim 200 ms; the speaker's buffers add some 30 ms)
quiet          the same commands into silence, for comparison

With --film other people's talk sounds all the time, from files of your own (WAV; anything else
needs ffmpeg), at the level given against the maker's. The maker is as loud at the microphone as
the program is at the speaker, so that he stands above the echo by what the echo is lowered.
"""

from __future__ import annotations

import argparse
import shutil
import subprocess
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np

from reader.app.hear import read_wav
from reader.app.rehearsal.maker_voice import Speak, makers_voice
from reader.app.work import read_plan
from reader.devices.ports import RATE_HZ, Samples
from tests.benchmarks.echo_room import FRAME_S, EchoRoom, Told

LIGHTHOUSE = Path(__file__).parents[2] / "demos" / "harbour-lighthouse.txt"
VOICES = ("slt", "rms", "awb")
COMMANDS = ("next", "again", "where am i", "how many", "pause", "row done", "whole row", "hush")
READ_ALOUD = ("?", "a", "f", "?", "w", "r", "?", "h", "t")
"""Keys whose answers are read aloud without a move; the help is all command words."""

ANSWER_S = 2.5
"""Heard this long after the last sound of the command, or not at the first try."""

VOICE_RMS = 3_900.0
"""Of the program's own speech where it sounds, measured on a sentence of its help."""

AIM_OBEYED, AIM_SILENCE_S = 0.85, 0.2


@dataclass
class Tally:
    """What came of commands said once each."""

    said: int = 0
    obeyed: int = 0
    wrong: int = 0
    missed: list[str] = field(default_factory=list)
    silence_s: list[float] = field(default_factory=list)


def main() -> int:
    """Exit status 0 when every aim is met."""
    args = arguments()
    film = film_from(args.film, args.film_db) if args.film else np.zeros(0, np.int16)
    itself = by_itself(args.minutes, args.echo_db, film)
    talked = commands(args.interruptions, args.echo_db, film, into_speech=True)
    silent = commands(args.interruptions, args.echo_db, film, into_speech=False)
    told("interruptions", talked)
    told("quiet", silent)
    share = talked.obeyed / max(1, talked.said)
    slow = max(talked.silence_s, default=0.0)
    print(f"longest from decision to silence {slow * 1000:.0f} ms of {len(talked.silence_s)}")
    fine = itself == 0 and share >= AIM_OBEYED and slow <= AIM_SILENCE_S
    return 0 if fine else 1


def arguments() -> argparse.Namespace:
    """What was asked for."""
    ask = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    ask.add_argument("--minutes", type=float, default=30.0)
    ask.add_argument("--interruptions", type=int, default=60)
    ask.add_argument("--echo-db", type=float, default=-12.0)
    ask.add_argument("--film", type=Path)
    ask.add_argument("--film-db", type=float, default=-12.0)
    return ask.parse_args()


def new_room(echo_db: float, film: Samples, seed: int) -> EchoRoom:
    """A room with a fresh session on the demonstration pattern, its greeting over."""
    room = EchoRoom(read_plan(str(LIGHTHOUSE), 1), echo_db, film, seed)
    until_silent(room)
    return room


def by_itself(minutes: float, echo_db: float, film: Samples) -> int:
    """How many commands it took from the sound while nobody spoke; prints them."""
    room = new_room(echo_db, film, seed=1)
    moves, place, turn = 0, room.place(), 0
    end_s = room.clock.now_s() + minutes * 60
    while room.clock.now_s() < end_s:
        if not room.speaking():
            room.key(READ_ALOUD[turn % len(READ_ALOUD)])
            turn += 1
        room.frame()
        moves += room.place() != place
        place = room.place()
    obeyed = [one.heard.text for one in room.told if one.heard.certain]
    print(
        f"itself: {minutes:g} minutes, {room.spoken_s / 60:.1f} of them speaking: "
        f"obeyed {len(obeyed)} ({', '.join(sorted(set(obeyed))) or 'none'}), moves {moves}, "
        f"doubtful {len(room.told) - len(obeyed)}, voice lowered {room.lowered} times",
        flush=True,
    )
    room.close()
    return len(obeyed)


def commands(count: int, echo_db: float, film: Samples, into_speech: bool) -> Tally:
    """Says so many commands, each once, into the program's speech or into its silence."""
    tally, chance = Tally(), np.random.default_rng(7)
    room = new_room(echo_db, film, seed=2)
    speakers = [makers_voice(name) for name in VOICES]
    for turn in range(count):
        words = COMMANDS[turn % len(COMMANDS)]
        if into_speech:
            room.key("?")
            room.wait(float(chance.uniform(0.8, 6.0)))
        one_command(room, words, speakers[turn % len(speakers)], tally)
        room.key("c")
        room.key("escape")
        room.wait(0.6)
    room.close()
    return tally


def one_command(room: EchoRoom, words: str, speak: Speak, tally: Tally) -> None:
    """Says one command and waits for what comes of it."""
    sound = at_voice_level(speak(words))
    room.air.maker = sound
    before, heard = len(room.told), ""
    end_s = room.clock.now_s() + len(sound) / RATE_HZ + ANSWER_S
    while room.clock.now_s() < end_s and not heard:
        room.frame()
        heard = next((one.heard.text for one in obeyed_in(room.told[before:])), "")
    if heard == words == "hush":
        tally.silence_s.append(until_quiet(room))
    tally.said += 1
    tally.obeyed += heard == words
    tally.wrong += heard not in ("", words)
    if heard != words:
        tally.missed.append(f"{words}: {heard or 'nothing'}")


def obeyed_in(told: list[Told]) -> list[Told]:
    """Those that the session acts on."""
    return [one for one in told if one.heard.certain]


def until_quiet(room: EchoRoom) -> float:
    """Seconds until nothing of the speech that was hushed is played any more."""
    began_s = room.clock.now_s()
    while np.abs(room.last_played.astype(int)).max() > 100 and room.clock.now_s() < began_s + 3:
        room.frame()
    return room.clock.now_s() - began_s + FRAME_S


def until_silent(room: EchoRoom) -> None:
    """Lets the program speak to its end."""
    room.wait(1.0)
    while room.speaking():
        room.frame()


def at_voice_level(sound: Samples) -> Samples:
    """The sound as loud as the program's own voice."""
    loud = sound[np.abs(sound.astype(int)) > 300]
    rms = float(np.sqrt(np.mean(loud.astype(np.float64) ** 2))) if len(loud) else 1.0
    level: Samples = np.clip(sound * (VOICE_RMS / rms), -32768, 32767).astype(np.int16)
    return level


def film_from(path: Path, level_db: float) -> Samples:
    """Every sound of a file or folder, one after another, each at the level."""
    files = sorted(p for p in path.rglob("*") if p.is_file()) if path.is_dir() else [path]
    sounds = [at_voice_level(sound_of(file)) for file in files if file.suffix != ".csv"]
    return (np.concatenate(sounds) * 10 ** (level_db / 20)).astype(np.int16)


def sound_of(file: Path) -> Samples:
    """16 kHz sound of a file."""
    if file.suffix.lower() == ".wav":
        return read_wav(file)
    if shutil.which("ffmpeg") is None:
        raise SystemExit(f"To read {file.name}, ffmpeg is needed; or give WAV files.")
    command = ["ffmpeg", "-v", "error", "-i", str(file), "-f", "s16le", "-ac", "1"]
    command += ["-ar", str(RATE_HZ), "-"]
    done = subprocess.run(command, capture_output=True, check=True, timeout=60)
    return np.frombuffer(done.stdout, np.int16)


def told(name: str, tally: Tally) -> None:
    """One line of what came of the commands."""
    share = 100 * tally.obeyed / max(1, tally.said)
    print(
        f"{name}: {tally.said} commands, obeyed at the first try {tally.obeyed} ({share:.0f} %), "
        f"wrong {tally.wrong}; missed: {', '.join(tally.missed) or 'none'}"
    )


if __name__ == "__main__":
    raise SystemExit(main())
