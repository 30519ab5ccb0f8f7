"""What three takes of each word by the maker's own voice bring, by the path that listens live.

usage: python -m tests.benchmarks.tuned SPEECH [--choose] [--draws N] [--every N] [--curve]

SPEECH: see listening_clips. For each speaker of digits three takes of each digit are learned, as
`reader swatch` learns them, and every n-th other take is heard, untuned and tuned, in quiet and
over noise, music and others' talk 10 dB below the word; so for several draws of the three. Then
what is taken for a command with the speaker's samples learned: clips of other people's speech,
other words said alone by other people, and the speaker's own words that are none (half of the
digits learned, the other half said). --curve does the same in quiet for several limits. With
--choose the speakers for choosing are heard; every number of the second look was chosen on them.
"""

from __future__ import annotations

import argparse
import time
from collections import Counter, defaultdict
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from reader.app.hear import listen
from reader.devices.model_place import load_network
from reader.devices.ports import Samples
from reader.devices.recogniser import VoskRecogniser
from reader.listening.heard import Heard
from reader.listening.own_ear import OwnEar, own_of
from reader.listening.second_look import LIMIT
from reader.listening.tune import strays
from tests.benchmarks.listening import shares
from tests.benchmarks.listening_clips import CONDITIONS, GRAMMARS, Clips, Take, clips_of, mixed

DIGITS = GRAMMARS["ten digits"]
LIMITS = (0.22, 0.25, 0.28, 0.31, 0.34, 0.37, 0.40)


@dataclass(frozen=True, slots=True)
class Draw:
    """One speaker with what was learned of three takes, and the takes left to be heard."""

    speaker: str
    taught: dict[str, list[Samples]]
    left: list[Take]

    def own(self, words: tuple[str, ...] = DIGITS, limit: float = LIMIT) -> OwnEar:
        """The second look that knows these words' samples."""
        network = load_network("")
        assert network is not None
        sounds = {word: self.taught[word] for word in words}
        return OwnEar(network, own_of(network, sounds, limit))


def drawn(takes: list[Take], speaker: str, chance: np.random.Generator) -> Draw:
    """Three takes of each digit by chance; one that is unlike the two others is said once more."""
    taught: dict[str, list[Samples]] = {}
    used: set[int] = set()
    network = load_network("")
    assert network is not None
    for word in DIGITS:
        mine = [n for n, t in enumerate(takes) if t.speaker == speaker and t.word == word]
        order = [int(n) for n in chance.permutation(mine)]
        chosen, spare = order[:3], order[3]
        sounds = [mixed(takes[n], None, chance) for n in chosen]
        odd = strays(network, sounds)
        used.update(chosen)
        if odd is not None:
            sounds[odd] = mixed(takes[spare], None, chance)
            used.add(spare)
        taught[word] = sounds
    left = [t for n, t in enumerate(takes) if t.speaker == speaker and n not in used]
    return Draw(speaker, taught, left)


def rooms(ear: VoskRecogniser, clips: Clips, draws: list[Draw], every: int) -> None:
    """Prints the outcomes untuned and tuned, by speaker and room."""
    for room in CONDITIONS:
        counted: dict[tuple[str, str], Counter[str]] = defaultdict(Counter)
        for draw in draws:
            for kind, own in (("untuned", None), ("tuned", draw.own())):
                ear.know(own)
                chance = np.random.default_rng(1)
                for take in draw.left[::every]:
                    sound = mixed(take, clips.beds.get(room), chance)
                    came = came_of(listen(ear, DIGITS, sound), take.word)
                    counted[draw.speaker, kind][came] += 1
                    counted["all", kind][came] += 1
        for (who, kind), outcomes in sorted(counted.items()):
            print(f"{room:5} {who:9} {kind:7}: {shares(outcomes)}", flush=True)


def came_of(heard: Heard | None, word: str) -> str:
    """understood, confused, unsure or missed, by the decision that was made."""
    if heard is None:
        return "missed"
    if not heard.certain:
        return "unsure"
    return "understood" if heard.text == word else "confused"


def tuned_outcome(ear: VoskRecogniser, sound: Samples) -> bool:
    """Whether a move would follow."""
    heard = listen(ear, DIGITS, sound)
    return heard is not None and heard.certain


def taken(name: str, sounds: list[Samples], draws: list[Draw], ear: VoskRecogniser) -> None:
    """Prints how many of these sounds were taken for a command, untuned and tuned."""
    ear.know(None)
    plain = sum(tuned_outcome(ear, sound) for sound in sounds)
    found = 0
    for draw in draws:
        ear.know(draw.own())
        found += sum(tuned_outcome(ear, sound) for sound in sounds)
    total = len(sounds) * len(draws)
    print(
        f"{name}: untuned {plain} of {len(sounds)} ({100 * plain / len(sounds):.1f} %), "
        f"tuned {found} of {total} ({100 * found / total:.1f} %)",
        flush=True,
    )


def own_other_words(draws: list[Draw], ear: VoskRecogniser, every: int) -> None:
    """Prints how many of the speaker's own words that are no command were taken for one."""
    for kind in ("untuned", "tuned"):
        found = total = 0
        for draw in draws:
            known, unknown = DIGITS[::2], DIGITS[1::2]
            ear.know(draw.own(known) if kind == "tuned" else None)
            for take in draw.left[::every]:
                if take.word in unknown:
                    heard = listen(ear, known, mixed(take, None, np.random.default_rng(1)))
                    found += heard is not None and heard.certain
                    total += 1
        share = 100 * found / max(total, 1)
        print(f"own words that are no command, {kind}: {found} of {total} ({share:.1f} %)")


def curve(ear: VoskRecogniser, clips: Clips, draws: list[Draw], every: int) -> None:
    """Prints understood in quiet against other speech taken, for each limit."""
    for limit in LIMITS:
        counted: Counter[str] = Counter()
        found = total = 0
        for draw in draws:
            ear.know(draw.own(limit=limit))
            for take in draw.left[::every]:
                heard = listen(ear, DIGITS, mixed(take, None, np.random.default_rng(1)))
                counted[came_of(heard, take.word)] += 1
            found += sum(tuned_outcome(ear, clip) for clip in clips.speech)
            total += len(clips.speech)
        print(
            f"limit {limit:.2f}: {shares(counted)}; other speech taken {100 * found / total:.1f} %",
            flush=True,
        )


def look_costs(draws: list[Draw], clips: Clips) -> None:
    """Prints the computing time of the second look alone."""
    own = draws[0].own()
    own.listen_for(DIGITS)
    for name, sounds in (
        ("a word", [mixed(t, None, np.random.default_rng(1)) for t in draws[0].left[:40]]),
        ("other speech, up to 5 s", [clip[:80_000] for clip in clips.speech[:40]]),
    ):
        took = [_timed(own.match, sound) for sound in sounds]
        middle, late = np.percentile(took, (50, 95))
        print(f"second look, {name}: median {1000 * middle:.0f} ms, 95th {1000 * late:.0f} ms")
    began = time.perf_counter()
    draws[0].own()
    print(f"preparing 30 samples: {time.perf_counter() - began:.2f} s")


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
    want = ask.parse_args()
    clips = clips_of(want.speech, 1, not want.choose)
    takes = [take for take in clips.takes if take.word in DIGITS]
    speakers = sorted({take.speaker for take in takes})
    chance = np.random.default_rng(11)
    draws = [drawn(takes, who, chance) for who in speakers for _ in range(want.draws)]
    print(
        f"{'choosing' if want.choose else 'judging'}: {', '.join(speakers)}, {want.draws} draws, "
        f"{len(clips.speech)} clips of other speech; limit {LIMIT}",
        flush=True,
    )
    ear = VoskRecogniser(want.model)
    if want.curve:
        curve(ear, clips, draws, want.every)
        return
    rooms(ear, clips, draws, want.every)
    taken("other speech", clips.speech, draws, ear)
    alone = [mixed(t, None, chance) for t in clips.takes if t.word not in DIGITS]
    taken("other people's other words, each alone", alone, draws, ear)
    own_other_words(draws, ear, want.every)
    look_costs(draws, clips)


if __name__ == "__main__":
    main()
