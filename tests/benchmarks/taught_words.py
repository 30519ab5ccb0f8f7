"""The commands themselves, taught to `reader swatch` by voices that the ear never heard.

usage: python -m tests.benchmarks.taught_words [SPEECH]

espeak-ng's voices of other languages say the words of the swatch as they read English letters,
three times each, with other paces and pitches; then each word twice more, otherwise again, under
the grammar of a session's step, untaught and taught, in quiet and over a pink noise 10 dB below
(the noise of the samples' own copies, so the easiest there is). Nobody has recorded these words
yet, and synthetic voices are nearer to themselves than people are: this says that the words can be
told apart and that the grammar's other words do no harm, not how many of people's would be
understood. With SPEECH (see listening_clips) also how much of other people's speech is taken for
one of the step's commands, untaught and taught by each voice.
"""

from __future__ import annotations

import argparse
import subprocess
import tempfile
import time
from collections import Counter
from pathlib import Path

import numpy as np

from reader.app.hear import listen, read_wav
from reader.app.work import recogniser_for
from reader.commands.command import Ask
from reader.commands.phrases import MAIN, phrases_of
from reader.devices.model_place import load_network
from reader.devices.ports import RATE_HZ, Samples
from reader.listening.lesson import Lesson
from reader.listening.own_words import OwnWords
from reader.listening.trace import over_noise
from reader.session.swatch import NEEDED
from tests.benchmarks.listening import shares
from tests.benchmarks.listening_clips import clips_of
from tests.benchmarks.tuned import came_of, moves

VOICES = ("fi", "de", "cs", "it", "hu", "es")
TAUGHT = ((140, 42), (150, 50), (165, 58), (155, 46), (145, 54))
SAID = ((147, 53), (160, 45))
"""Words a minute and pitch."""
PAUSE, HISS = RATE_HZ // 2, 25.0
GRAMMAR = tuple(dict.fromkeys(phrases_of((*MAIN, Ask.YES, Ask.NO, Ask.CARRY_ON))))


def spoken(voice: str, words: str, way: tuple[int, int], seed: int) -> Samples:
    """The words in a quiet room."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "said.wav"
        command = ["espeak-ng", "-v", voice, "-s", str(way[0]), "-p", str(way[1])]
        subprocess.run([*command, "-w", str(file), words], check=True, timeout=20)
        said = np.pad(read_wav(file).astype(np.float64) * 0.4, PAUSE)
    return np.asarray(said + np.random.default_rng(seed).normal(0, HISS, len(said)), np.int16)


def taught(voice: str) -> OwnWords:
    """What a lesson makes of the voice; where it asks for more than three, more are said."""
    network = load_network("")
    assert network is not None
    lesson = Lesson(network)
    lesson.room(np.asarray(np.random.default_rng(0).normal(0, HISS, 3 * RATE_HZ), np.int16))
    for word in NEEDED:
        for seed, way in enumerate(TAUGHT):
            if word not in lesson.whole():
                lesson.take(word, spoken(voice, word, way, seed))
    return lesson.own_words()


def main() -> None:
    """Prints the figures."""
    ask = argparse.ArgumentParser()
    ask.add_argument("speech", nargs="?", type=Path)
    folder = ask.parse_args().speech
    clips = clips_of(folder, 1, True).speech if folder is not None else []
    counted: dict[tuple[str, str], Counter[str]] = {}
    for voice in VOICES:
        own = taught(voice)
        said = [(word, spoken(voice, word, way, 99)) for word in NEEDED for way in SAID]
        for kind, known in (("untaught", None), ("taught", own)):
            ear = recogniser_for("", known)
            ear.listen_for(GRAMMAR)
            began = time.process_time()
            for room in ("quiet", "noise"):
                into = counted.setdefault((room, kind), Counter())
                mine = Counter(
                    came_of(listen(ear, GRAMMAR, over_noise(s, 10) if room == "noise" else s), w)
                    for w, s in said
                )
                into.update(mine)
                print(f"{voice}, {room}, {kind}: {shares(mine)}", flush=True)
            took = (time.process_time() - began) / (2 * len(said))
            others = sum(moves(ear, GRAMMAR, clip) for clip in clips)
            print(
                f"{voice}, {kind}: {1000 * took:.0f} ms of computing a word"
                + (f"; {others} of {len(clips)} clips of other speech taken" if clips else ""),
                flush=True,
            )
    for (room, kind), outcomes in counted.items():
        print(f"all, {room}, {kind}: {shares(outcomes)}")


if __name__ == "__main__":
    main()
