"""The ear on people it never heard, by the very path that listens in a session.

usage: python -m tests.benchmarks.listening SPEECH [--model DIR] [--every N] [--film FOLDER]
       [--choose | --curve] [--peers] [--picture FILE.svg]

SPEECH: see listening_clips. Printed for each grammar in quiet and with noise, music or others' talk
20, 10 and 5 dB below the word: understood, confused (moved, but wrongly), unsure (a chime, no
move), missed; then other speech taken for a command or a name, by clip and by hour, false moves in
an hour of speech with and without an attention word, of music and of household noise, the delay
from the end of the word to the decision, computing, load, memory. --film adds the acted speech of
models.recipe.archives that nothing was trained on, and the WAV files of its folder; --moves
measures only false moves. --peers measures quiet only, beside other recognisers on the same clips,
see listening_peers; --picture draws misses against other speech taken for each least certainty.
--curve repeats it in quiet for each filler and least certainty; --choose does the same on the
speakers for choosing, where every threshold is set. Without --choose only speakers that judge are
heard.
"""

from __future__ import annotations

import argparse
import resource
import time
from collections import Counter
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from reader.app.hear import listen
from reader.commands.phrases import MAIN, phrases_of
from reader.devices.ports import RATE_HZ, Samples
from reader.devices.recogniser import FILLER, VoskRecogniser
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.heard import Heard
from tests.benchmarks.listening_alike import grammars
from tests.benchmarks.listening_clips import (
    BEDS,
    GRAMMARS,
    LEVELS,
    PAD,
    Clips,
    Take,
    clips_of,
    film,
    mixed,
    named,
    spoken_end_s,
)
from tests.benchmarks.listening_peers import compare
from tests.benchmarks.listening_picture import Mark, draw

FILLERS = ("[unk]", "[unk2]", "[unk3]", "[unk4]")
LEASTS = (0.8, 0.85, 0.9, 0.95, 0.97, 0.99)
"""From the shipped one on: what the proof is less sure of is not told as heard at all."""
DOUBTED = ("", "low certainty")
ATTENTION = "reader"
"""The word said before each command in the figure with an attention word."""


def passes(heard: Heard | None, least: float) -> bool:
    """Whether it would have moved with this least certainty."""
    if heard is None or heard.doubt not in DOUBTED:
        return False
    return min(word.certainty for word in heard.words) >= least


def outcome(heard: Heard | None, word: str, least: float) -> str:
    """understood, confused, unsure or missed."""
    if heard is None:
        return "missed"
    if not passes(heard, least):
        return "unsure"
    return "understood" if heard.text == word else "confused"


def shares(counted: Counter[str]) -> str:
    """The four outcomes in per cent."""
    total = max(counted.total(), 1)
    kinds = ("understood", "confused", "unsure", "missed")
    return f"n={counted.total():4} " + ", ".join(
        f"{kind} {100 * counted[kind] / total:.1f} %" for kind in kinds
    )


def heard_in(
    ear: VoskRecogniser,
    takes: list[Take],
    words: tuple[str, ...],
    bed: NDArray[np.float64] | None,
    below_db: float = LEVELS[1],
) -> list[tuple[Take, Heard | None]]:
    """What the ear makes of every take of these words; the chance in mixing is always the same."""
    chance = np.random.default_rng(1)
    mine = [take for take in takes if take.word in words]
    return [(take, listen(ear, words, mixed(take, bed, chance, below_db))) for take in mine]


def moves_in(ear: VoskRecogniser, words: tuple[str, ...], sound: Samples) -> int:
    """Certain utterances in one long stretch of sound."""
    ear.listen_for(words)
    ear.begin_anew()
    moves = 0
    for at in range(0, len(sound), 1_600):
        moves += sum(isinstance(h, Heard) and h.certain for h in ear.feed(sound[at : at + 1_600]))
    return moves


def rooms(ear: VoskRecogniser, clips: Clips) -> list[float]:
    """Prints the outcomes by grammar and room; gives the delays in quiet."""
    delays = []
    for name, words in GRAMMARS.items():
        delays += quiet_room(ear, clips, name, words)
        for room in BEDS:
            for level in LEVELS:
                found = heard_in(ear, clips.takes, words, clips.beds[room], level)
                counted = Counter(outcome(h, t.word, LEAST_CERTAIN) for t, h in found)
                print(f"{name}, {room} {level:.0f} dB below: {shares(counted)}", flush=True)
    return delays


def quiet_room(
    ear: VoskRecogniser, clips: Clips, name: str, words: tuple[str, ...]
) -> list[float]:
    """Prints the outcomes in quiet, all and by speaker; gives the delays."""
    found = heard_in(ear, clips.takes, words, None)
    told = [(take.speaker, outcome(h, take.word, LEAST_CERTAIN)) for take, h in found]
    print(f"{name}, clean: {shares(Counter(one for _, one in told))}", flush=True)
    for speaker in sorted({one for one, _ in told if one[0] != "w"}):
        print(f"    {speaker}: {shares(Counter(how for who, how in told if who == speaker))}")
    return [
        h.decided_s - PAD / RATE_HZ - spoken_end_s(t.sound)
        for t, h in found
        if h is not None and h.certain and h.text == t.word
    ]


def names_of_parts() -> tuple[str, ...]:
    """What can be said where a pattern's part is asked for: names mostly beyond the graph's words,
    numbers, escapes."""
    return grammars()["parts of any name 1"]


def other_clips(ear: VoskRecogniser, clips: Clips) -> None:
    """Prints how many clips of other speech were taken for a command."""
    asked = {**GRAMMARS, "main commands": phrases_of(MAIN), "names of parts": names_of_parts()}
    for name, words in asked.items():
        taken = [passes(listen(ear, words, clip), LEAST_CERTAIN) for clip in clips.speech]
        share = 100 * sum(taken) / len(taken)
        print(f"{name}: {sum(taken)} of {len(taken)} clips of other speech taken ({share:.1f} %)")


def false_moves(ear: VoskRecogniser, clips: Clips, folder: Path | None) -> None:
    """Prints the moves by one long stretch of each sound, with and without an attention word."""
    sounds = {kind: clips.beds[kind].astype(np.int16) for kind in ("talk", "music", "noise")}
    if folder is not None:
        sounds |= film(folder)
    after = tuple(f"{ATTENTION} {phrase}" for phrase in phrases_of(MAIN))
    asked = {"main commands": phrases_of(MAIN), f"the same behind {ATTENTION!r}": after}
    asked["names of parts"] = names_of_parts()
    for kind, sound in sounds.items():
        hours = len(sound) / RATE_HZ / 3600
        for name, words in asked.items():
            moves = moves_in(ear, words, sound)
            print(
                f"{name} in {60 * hours:.1f} min of {kind}: "
                f"{moves} false moves, {moves / hours:.0f} an hour",
                flush=True,
            )


def marks(ear: VoskRecogniser, clips: Clips) -> list[Mark]:
    """For each grammar and least certainty: not understood and other speech taken, in quiet."""
    hours = sum(map(len, clips.speech)) / RATE_HZ / 3600
    out = []
    for name, words in GRAMMARS.items():
        found = heard_in(ear, clips.takes, words, None)
        speech = [listen(ear, words, clip) for clip in clips.speech]
        for least in LEASTS:
            right = sum(outcome(h, t.word, least) == "understood" for t, h in found)
            taken = sum(passes(h, least) for h in speech)
            wrong = 100 * (1 - right / max(len(found), 1))
            out.append(Mark("this ear", name, taken / hours, wrong))
    return out


def curve(model: str, clips: Clips) -> None:
    """Prints understood and confused against other clips taken, for fillers and certainties."""
    for filler in FILLERS:
        ear = VoskRecogniser(model, filler, named=named)
        for name, words in GRAMMARS.items():
            found = heard_in(ear, clips.takes, words, None)
            speech = [listen(ear, words, clip) for clip in clips.speech]
            for least in LEASTS:
                counted = Counter(outcome(h, t.word, least) for t, h in found)
                taken = sum(passes(h, least) for h in speech)
                print(
                    f"{filler:6} at least {least:.2f}, {name}: {shares(counted)}; "
                    f"others taken {100 * taken / len(speech):.1f} %",
                    flush=True,
                )


def quiet(takes: list[Take]) -> list[tuple[str, Samples]]:
    """The word of each take and its sound in quiet."""
    return [(take.word, mixed(take, None, np.random.default_rng(1))) for take in takes]


def costs(ear: VoskRecogniser, clips: Clips) -> str:
    """Computing a second of sound and the memory of this whole process, as one line."""
    computing, heard_s = time.process_time(), 0.0
    for clip in clips.speech[:20]:
        listen(ear, phrases_of(MAIN), clip)
        heard_s += len(clip) / RATE_HZ + 0.8
    share = (time.process_time() - computing) / max(heard_s, 1e-9)
    memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    return f"computing {100 * share:.1f} % of a core, memory {memory:.0f} MB"


def main() -> None:
    """Prints the figures."""
    ask = argparse.ArgumentParser()
    ask.add_argument("speech", type=Path)
    ask.add_argument("--model", default="")
    ask.add_argument("--every", type=int, default=1, help="only every n-th clip")
    ask.add_argument("--film", type=Path, help="a folder that models.recipe.archives wrote")
    ask.add_argument("--moves", action="store_true", help="only the false moves, no takes")
    ask.add_argument("--choose", action="store_true", help="the speakers for choosing; the curve")
    ask.add_argument("--curve", action="store_true")
    ask.add_argument("--peers", action="store_true")
    ask.add_argument("--picture", type=Path)
    want = ask.parse_args()
    clips = clips_of(want.speech, want.every, not want.choose)
    seconds = sum(map(len, clips.speech)) / RATE_HZ
    print(
        f"{'choosing' if want.choose else 'judging'}: {len(clips.takes)} takes, "
        f"{len(clips.speech)} clips of other speech ({seconds / 60:.1f} min); "
        f"filler {FILLER}, least certainty {LEAST_CERTAIN}",
        flush=True,
    )
    began = time.perf_counter()
    ear = VoskRecogniser(want.model, named=named)
    load = time.perf_counter() - began
    if want.curve or want.choose:
        curve(want.model, clips)
        return
    if want.peers or want.picture:
        beside(ear, clips, want.peers, want.picture)
        return
    if want.moves:
        false_moves(ear, clips, want.film)
        return
    delays = rooms(ear, clips)
    other_clips(ear, clips)
    false_moves(ear, clips, want.film)
    if delays:
        middle, late = np.percentile(delays, (50, 95))
        print(f"end of word to decision: median {middle:.2f} s, 95th percentile {late:.2f} s")
    print(f"{costs(ear, clips)}, load {load:.2f} s", flush=True)


def beside(ear: VoskRecogniser, clips: Clips, with_peers: bool, picture: Path | None) -> None:
    """Prints this ear in quiet and, if asked, its peers on the same clips; draws the picture."""
    for name, words in GRAMMARS.items():
        quiet_room(ear, clips, name, words)
    other_clips(ear, clips)
    others = compare(GRAMMARS, quiet(clips.takes), clips.speech) if with_peers else ()
    drawn = marks(ear, clips) if picture else []
    if picture:
        picture.write_text(draw(drawn), encoding="utf-8")
    for more in others:
        drawn.append(more)
        if picture:
            picture.write_text(draw(drawn), encoding="utf-8")


if __name__ == "__main__":
    main()
