"""What three takes of each word by the maker's own voice bring, by the path that listens live.

usage: python -m tests.benchmarks.tuned SPEECH [--choose] [--draws N] [--every N]
       [--curve | --films]

SPEECH: see listening_clips. For each speaker of digits three takes of each digit are learned, as
`reader swatch` learns them, and every n-th other take is heard, untuned and tuned, in quiet and
over noise, music and others' talk 10 dB below the word; so for several draws of the three. Then
what is taken for a command with the speaker's samples learned: clips of other people's speech,
other words said alone by other people, and the speaker's own words that are none (half of the
digits learned, the other half said); false moves in long stretches of sound; the delay; words amid
talk and music that go on; the time of the second look. --curve does the same for several limits.
With --choose the speakers for choosing are heard; every number of the second look was chosen on
them.
"""

from __future__ import annotations

import argparse
import time
from collections import Counter, defaultdict
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from reader.app.hear import listen
from reader.app.work import recogniser_for
from reader.devices.model_place import load_network
from reader.devices.ports import RATE_HZ, Samples
from reader.devices.recogniser import VoskRecogniser
from reader.listening.heard import Heard
from reader.listening.lesson import Lesson
from reader.listening.own_words import OwnWords
from tests.benchmarks.listening import moves_in, shares
from tests.benchmarks.listening_clips import (
    CONDITIONS,
    GRAMMARS,
    PAD,
    Clips,
    Take,
    clips_of,
    mixed,
    spoken_end_s,
)

DIGITS = GRAMMARS["ten digits"]
BEFORE_S, AFTER_S = 3, 4
"""Seconds that a film goes on before and after a word."""
LIMITS = (0.22, 0.26, 0.30, 0.34, 0.38, 0.42)


@dataclass(frozen=True, slots=True)
class Draw:
    """One speaker with what a lesson made of three takes, and the takes left to be heard."""

    speaker: str
    own: OwnWords
    left: list[Take]


def drawn(takes: list[Take], speaker: str, chance: np.random.Generator, model: str) -> Draw:
    """Three takes of each digit by chance, learned by the lesson of `reader swatch`; where it asks
    for one more, another take is said.
    """
    network = load_network(model)
    assert network is not None, "this model has no second look"
    plain = VoskRecogniser(model)
    lesson = Lesson(network, lambda sound: listen(plain, DIGITS, sound))
    lesson.room(np.rint(chance.normal(0, 3, 3 * RATE_HZ)).astype(np.int16))
    used: set[int] = set()
    for word in DIGITS:
        mine = [n for n, t in enumerate(takes) if t.speaker == speaker and t.word == word]
        for n in chance.permutation(mine):
            if word in lesson.whole():
                break
            used.add(int(n))
            lesson.take(word, mixed(takes[int(n)], None, chance))
    left = [t for n, t in enumerate(takes) if t.speaker == speaker and n not in used]
    return Draw(speaker, lesson.own_words(), left)


def ear_for(model: str, own: OwnWords | None) -> VoskRecogniser:
    """The ear as a session opens it, with what was taught ready."""
    ear = recogniser_for(model, own)
    ear.listen_for(DIGITS)
    return ear


def rooms(model: str, clips: Clips, draws: list[Draw], every: int) -> None:
    """Prints the outcomes untuned and tuned, by speaker and room."""
    ears = [(draw, kind, ear_for(model, own)) for draw in draws for kind, own in both(draw)]
    for room in CONDITIONS:
        counted: dict[tuple[str, str], Counter[str]] = defaultdict(Counter)
        for draw, kind, ear in ears:
            chance = np.random.default_rng(1)
            for take in draw.left[::every]:
                sound = mixed(take, clips.beds.get(room), chance)
                came = came_of(listen(ear, DIGITS, sound), take.word)
                counted[draw.speaker, kind][came] += 1
                counted["all", kind][came] += 1
        for (who, kind), outcomes in sorted(counted.items()):
            print(f"{room:5} {who:9} {kind:7}: {shares(outcomes)}", flush=True)


def delays(model: str, draws: list[Draw], every: int) -> None:
    """Prints the time from the end of a word in quiet to the move, untuned and tuned."""
    waits: dict[str, list[float]] = defaultdict(list)
    for draw in draws:
        for kind, own in both(draw):
            ear = ear_for(model, own)
            for take in draw.left[::every]:
                heard = listen(ear, DIGITS, mixed(take, None, np.random.default_rng(1)))
                if came_of(heard, take.word) == "understood":
                    assert heard is not None
                    ended = PAD / RATE_HZ + spoken_end_s(take.sound)
                    waits[kind].append(heard.decided_s - ended)
    for kind, each in waits.items():
        middle, late = np.percentile(each, (50, 95))
        print(f"end of word to decision, {kind}: median {middle:.2f} s, 95th {late:.2f} s")


def long_sounds(model: str, clips: Clips, draws: list[Draw]) -> None:
    """Prints false moves in long stretches of other speech, music and noise, untuned and tuned."""
    for kind, bed in (("speech", "talk"), ("music", "music"), ("noise", "noise")):
        sound = clips.beds[bed].astype(np.int16)
        minutes = len(sound) / RATE_HZ / 60
        before = moves_in(ear_for(model, None), DIGITS, sound)
        after = [moves_in(ear_for(model, draw.own), DIGITS, sound) for draw in draws]
        print(
            f"{minutes:.1f} min of {kind}: untuned {before} false moves, "
            f"tuned {', '.join(map(str, after))}",
            flush=True,
        )


def amid(take: Take, bed: NDArray[np.float64], chance: np.random.Generator) -> Samples:
    """The word in a bed that began before and goes on after it."""
    said = np.pad(take.sound, (BEFORE_S * RATE_HZ, AFTER_S * RATE_HZ))
    # What `mixed` puts around a clip is taken off again: nothing here is quiet.
    return mixed(replace(take, sound=said), bed, chance)[PAD:-PAD]


def films(model: str, clips: Clips, draws: list[Draw], every: int) -> None:
    """Prints what becomes of words amid talk and music that go on, untuned and tuned."""
    for room in ("talk", "music"):
        for kind in ("untuned", "tuned"):
            counted: Counter[str] = Counter()
            waits: list[float] = []
            for draw in draws:
                ear = ear_for(model, dict(both(draw))[kind])
                chance = np.random.default_rng(7)
                for take in draw.left[::every]:
                    ended = BEFORE_S + spoken_end_s(take.sound)
                    found = certain(ear, amid(take, clips.beds[room], chance))
                    right = [h for h in found if h.text == take.word and h.ended_s > BEFORE_S]
                    counted.update(words=1, understood=bool(right), wrong=len(found) - len(right))
                    waits += [h.decided_s - ended for h in right[:1]]
            share = 100 * counted["understood"] / counted["words"]
            middle, late = np.percentile(waits or [0.0], (50, 95))
            print(
                f"{room} goes on, {kind}: {share:.1f} % of {counted['words']} understood, "
                f"{counted['wrong']} false moves in {counted['words'] * 8 / 60:.0f} min, "
                f"decided after {middle:.2f} s, 95th {late:.2f} s",
                flush=True,
            )


def certain(ear: VoskRecogniser, sound: Samples) -> list[Heard]:
    """The moves in a stretch of sound."""
    ear.listen_for(DIGITS)
    ear.begin_anew()
    found = [one for at in range(0, len(sound), 1_600) for one in ear.feed(sound[at : at + 1_600])]
    return [one for one in found if isinstance(one, Heard) and one.certain]


def both(draw: Draw) -> tuple[tuple[str, OwnWords | None], ...]:
    """Untuned and tuned."""
    return ("untuned", None), ("tuned", draw.own)


def came_of(heard: Heard | None, word: str) -> str:
    """understood, confused, unsure or missed, by the decision that was made."""
    if heard is None:
        return "missed"
    if not heard.certain:
        return "unsure"
    return "understood" if heard.text == word else "confused"


def moves(ear: VoskRecogniser, words: tuple[str, ...], sound: Samples) -> bool:
    """Whether a move would follow."""
    heard = listen(ear, words, sound)
    return heard is not None and heard.certain


def taken(name: str, sounds: list[Samples], draws: list[Draw], model: str) -> None:
    """Prints how many of these sounds were taken for a command, untuned and tuned."""
    plain = ear_for(model, None)
    before = sum(moves(plain, DIGITS, sound) for sound in sounds)
    found = 0
    for draw in draws:
        ear = ear_for(model, draw.own)
        found += sum(moves(ear, DIGITS, sound) for sound in sounds)
    total = len(sounds) * len(draws)
    print(
        f"{name}: untuned {before} of {len(sounds)} ({100 * before / len(sounds):.1f} %), "
        f"tuned {found} of {total} ({100 * found / total:.1f} %)",
        flush=True,
    )


def own_other_words(draws: list[Draw], model: str, every: int) -> None:
    """Prints how many of the speaker's own words that are no command were taken for one."""
    known, unknown = DIGITS[::2], DIGITS[1::2]
    counted: dict[str, list[bool]] = defaultdict(list)
    for draw in draws:
        for kind, own in both(draw):
            ear = ear_for(model, own.without(frozenset(unknown)) if own is not None else None)
            for take in draw.left[::every]:
                if take.word in unknown:
                    sound = mixed(take, None, np.random.default_rng(1))
                    counted[kind].append(moves(ear, known, sound))
    for kind, moved in counted.items():
        share = 100 * sum(moved) / max(len(moved), 1)
        print(
            f"own words that are no command, {kind}: {sum(moved)} of {len(moved)} ({share:.1f} %)"
        )


def curve(model: str, clips: Clips, draws: list[Draw], every: int) -> None:
    """Prints understood, in quiet and in the other rooms, against other speech taken, for each
    limit.
    """
    for limit in LIMITS:
        ears = [(draw, ear_for(model, replace(draw.own, limit=limit))) for draw in draws]
        told = []
        for room in CONDITIONS:
            counted: Counter[str] = Counter()
            for draw, ear in ears:
                chance = np.random.default_rng(1)
                for take in draw.left[::every]:
                    sound = mixed(take, clips.beds.get(room), chance)
                    counted[came_of(listen(ear, DIGITS, sound), take.word)] += 1
            right, wrong = (100 * counted[k] / counted.total() for k in ("understood", "confused"))
            told.append(f"{room} {right:.1f} (confused {wrong:.1f})")
        found = [moves(ear, DIGITS, clip) for _, ear in ears for clip in clips.speech]
        share = 100 * sum(found) / len(found)
        print(f"limit {limit:.2f}: {', '.join(told)} %; others taken {share:.1f} %", flush=True)


def look_costs(draw: Draw, clips: Clips, model: str) -> None:
    """Prints the computing time of the second look alone."""
    network = load_network(model)
    assert network is not None
    began = time.perf_counter()
    own = draw.own.ear(network)
    print(f"preparing {3 * len(DIGITS)} samples: {time.perf_counter() - began:.2f} s")
    own.listen_for(DIGITS)
    for name, sounds in (
        ("a word", [mixed(t, None, np.random.default_rng(1)) for t in draw.left[:40]]),
        ("other speech, up to 5 s", [clip[:80_000] for clip in clips.speech[:40]]),
    ):
        took = [_timed(own.match, sound) for sound in sounds]
        middle, late = np.percentile(took, (50, 95))
        print(f"second look, {name}: median {1000 * middle:.0f} ms, 95th {1000 * late:.0f} ms")


def _timed(call: Callable[[Samples], object], sound: Samples) -> float:
    began = time.perf_counter()
    call(sound)
    return time.perf_counter() - began


def main() -> None:
    """Prints the figures."""
    ask = argparse.ArgumentParser()
    ask.add_argument("speech", type=Path)
    ask.add_argument("--model", default="")
    ask.add_argument("--choose", action="store_true", help="the speakers for choosing")
    ask.add_argument("--draws", type=int, default=2, help="draws of three takes for each speaker")
    ask.add_argument("--every", type=int, default=2, help="only every n-th take is heard")
    ask.add_argument("--curve", action="store_true")
    ask.add_argument("--films", action="store_true", help="only words amid sound that goes on")
    want = ask.parse_args()
    clips = clips_of(want.speech, 1, not want.choose)
    takes = [take for take in clips.takes if take.word in DIGITS]
    speakers = sorted({take.speaker for take in takes})
    chance = np.random.default_rng(11)
    draws = [drawn(takes, who, chance, want.model) for who in speakers for _ in range(want.draws)]
    limits = ", ".join(f"{draw.own.limit:.2f}" for draw in draws)
    print(
        f"{'choosing' if want.choose else 'judging'}: {', '.join(speakers)}, {want.draws} draws, "
        f"{len(clips.speech)} clips of other speech; limits {limits}",
        flush=True,
    )
    if want.curve:
        return curve(want.model, clips, draws, want.every)
    if want.films:
        return films(want.model, clips, draws, want.every)
    rooms(want.model, clips, draws, want.every)
    taken("other speech", clips.speech, draws, want.model)
    alone = [mixed(t, None, chance) for t in clips.takes if t.word not in DIGITS]
    taken("other people's other words, each alone", alone, draws, want.model)
    own_other_words(draws, want.model, want.every)
    long_sounds(want.model, clips, draws)
    delays(want.model, draws, want.every)
    films(want.model, clips, draws, want.every)
    look_costs(draws[0], clips, want.model)
    return None


if __name__ == "__main__":
    main()
