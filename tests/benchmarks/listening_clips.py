"""Clips of people for the listening bench: split by speaker before anything is chosen, and mixed.

SPEECH holds takes/ (one word a clip, NAME_WORD_TAKE), noise/, and the clips of other speech that
the recipe's held_out.txt names. No clip used here was trained on, except noise/, which was mixed
under speech in training. A speaker belongs to "choosing" or "judging" by a hash of the name that
never changes; takes that begin with w_ give no name, so there the take's number stands for the
speaker. Sentences that one person spoke may lie in both halves: their speakers are not known.
"""

from __future__ import annotations

import hashlib
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from models.recipe.measure import DIGITS, HELD_OUT, WORDS, samples
from reader.app.hear import read_wav
from reader.commands.asked import is_name
from reader.devices.ports import RATE_HZ, Samples

GRAMMARS = {"ten digits": tuple(DIGITS), "twenty words": tuple(WORDS)}
BEDS = ("noise", "music", "talk")
CONDITIONS = ("clean", *BEDS)
LEVELS = (20.0, 10.0, 5.0)
"""How far below the word the other sound lies, dB: its power against that of the spoken part."""
PAD = RATE_HZ // 2



@dataclass(frozen=True, slots=True)
class Take:
    """One word by one speaker."""

    speaker: str
    word: str
    sound: Samples


@dataclass(frozen=True, slots=True)
class Clips:
    """What is measured on: takes, other speech, and the beds of noise and music."""

    takes: list[Take]
    speech: list[Samples]
    beds: dict[str, NDArray[np.float64]]


def named(phrase: str) -> bool:
    """Whether a phrase is a name, in a session: but every word of the takes stands for a request.
    """
    return is_name(phrase) and not any(phrase in words for words in GRAMMARS.values())


def judges(name: str) -> bool:
    """Whether this speaker (or this clip of other speech) judges; the rest is for choosing."""
    return hashlib.sha256(name.encode()).digest()[-1] % 2 == 1


def clips_of(folder: Path, every: int, judging: bool) -> Clips:
    """Every n-th clip of one half."""
    takes = []
    for path in sorted((folder / "takes").glob("*.opus")):
        name, word, number = path.stem.split("_")
        speaker = f"w{number}" if name == "w" else name
        if judges(speaker) == judging:
            takes.append((speaker, word, path))
    others = [
        line
        for line in HELD_OUT.read_text(encoding="utf-8").split()
        if not line.startswith("words/") and judges(line) == judging
    ]
    # Noise has no speaker: choosing takes every second one, judging by --every 2 the others.
    noises = sorted((folder / "noise").glob("*.opus"))[0 if judging else 1 :: 1 if judging else 2]
    with ThreadPoolExecutor(4) as several:
        speech = list(several.map(samples, [folder / line for line in others[::every]]))
        noise = list(several.map(samples, noises[::every]))
        words = list(several.map(samples, [path for _, _, path in takes[::every]]))
    said = [Take(s, w, sound) for (s, w, _), sound in zip(takes[::every], words, strict=True)]
    beds = {
        "noise": np.concatenate(noise).astype(np.float64),
        "music": music(60),
        "talk": np.concatenate(speech).astype(np.float64),
    }
    return Clips(said, speech, beds)


def music(seconds: int) -> NDArray[np.float64]:
    """Invented music, always the same: chords of falling harmonics over a beat."""
    chance = np.random.default_rng(7)
    out = np.zeros(seconds * RATE_HZ)
    t = np.arange(RATE_HZ) / RATE_HZ
    at = 0
    while at < len(out) - RATE_HZ:
        root = 110.0 * 2 ** (chance.integers(0, 24) / 12)
        for step in (0, 4, 7, 12)[: chance.integers(1, 5)]:
            for harmonic in range(1, 7):
                wave = np.sin(2 * np.pi * root * 2 ** (step / 12) * harmonic * t)
                out[at : at + RATE_HZ] += chance.random() / harmonic * wave * np.exp(-3 * t)
        beat = chance.standard_normal(RATE_HZ // 8) * np.exp(-40 * t[: RATE_HZ // 8])
        out[at : at + RATE_HZ // 8] += chance.random() * beat
        at += int(RATE_HZ * chance.uniform(0.15, 0.5))
    return np.asarray(out / np.abs(out).max() * 8_000)


def spoken_power(sound: NDArray[np.float64]) -> float:
    """Mean power of the blocks of 10 ms that lie within 25 dB of the loudest."""
    power = (sound[: len(sound) // 160 * 160].reshape(-1, 160) ** 2).mean(1)
    loud = power[power > power.max() * 10**-2.5] if len(power) else power
    return max(float(loud.mean()) if len(loud) else 1.0, 1.0)


def spoken_end_s(sound: Samples) -> float:
    """Second at which the last block within 25 dB of the loudest ends."""
    power = (sound[: len(sound) // 160 * 160].astype(float).reshape(-1, 160) ** 2).mean(1)
    return float(np.nonzero(power >= power.max() * 10**-2.5)[0][-1] + 1) / 100


def film(folder: Path) -> dict[str, Samples]:
    """Speech by many that was never trained on, one clip after the other, by kind: acted, and
    announcements in other languages; the sources of models.recipe.archives that only measure, as it
    packs them; and what WAV files the folder has. A kind of which it has nothing is left out.
    """
    from models.recipe.archives import ABROAD, LOUD, MEASURED, clips

    gap = np.zeros(RATE_HZ * 3 // 10, np.float32)
    found: dict[str, Samples] = {}
    for kind, sources in (("acted speech", MEASURED), ("talk in other languages", ABROAD)):
        held = [one for one in sources if any(folder.glob(f"raw-{one}*.json"))]
        parts = [part for one in held for _, sound in clips(folder, one) for part in (sound, gap)]
        if parts:
            found[kind] = np.asarray(np.concatenate(parts) * 12_000, np.int16)
    loose = [read_wav(path).astype(np.float64) for path in sorted(folder.glob("*.wav"))]
    if loose:
        level = [one / max(np.abs(one).max(), 1) * LOUD * 12_000 for one in loose]
        found["talk in files"] = np.concatenate(level).astype(np.int16)
    return found


def mixed(
    take: Take,
    bed: NDArray[np.float64] | None,
    chance: np.random.Generator,
    below_db: float = LEVELS[1],
) -> Samples:
    """The word with half a second around it, in quiet (no bed) or over a stretch of the bed."""
    sound = np.pad(take.sound.astype(np.float64), PAD)
    if bed is not None:
        under = np.resize(np.roll(bed, -int(chance.integers(len(bed)))), len(sound))
        gain = np.sqrt(spoken_power(sound) / spoken_power(under) / 10 ** (below_db / 10))
        sound = sound + gain * under
    return np.clip(sound, -32_768, 32_767).astype(np.int16)
