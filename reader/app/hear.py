"""`reader hear`: what the ear makes of sound files, by the very path that listens in a session."""

from __future__ import annotations

import argparse
import json
import sys
import wave
from dataclasses import replace
from pathlib import Path

import numpy as np

from reader.app.work import recogniser_for
from reader.commands.phrases import MAIN, phrases_of
from reader.devices.own_words_file import load_own_words
from reader.devices.ports import RATE_HZ, ReaderError, Samples
from reader.devices.recogniser import VoskRecogniser
from reader.listening.heard import Heard

LEAD_IN_S = 0.2
"""Silence put before a clip, for clips whose first sound is cut."""
PIECE = 1_600
"""Samples fed at a time: 0.1 s, as live."""


class SoundUnreadable(ReaderError):
    """A sound file that cannot be read."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The words after `reader hear`."""
    parser.add_argument("files", nargs="+", help="WAV files, any rate")
    parser.add_argument("--words", default="", help="the phrases that may be heard, with commas")
    parser.add_argument("--model", default="", help="another model directory")
    parser.add_argument("--json", action="store_true", help="one JSON object a line")


def run(args: argparse.Namespace) -> int:
    """Exit status: 0, or 2 when a file could not be read."""
    phrases = tuple(w.strip().lower() for w in args.words.split(",") if w.strip())
    recogniser = recogniser_for(args.model, load_own_words())
    status = 0
    for file in args.files:
        try:
            sound = read_wav(Path(file))
        except SoundUnreadable as trouble:
            print(trouble, file=sys.stderr)
            status = 2
            continue
        print(line_of(file, listen(recogniser, phrases or phrases_of(MAIN), sound), args.json))
    return status


def read_wav(path: Path) -> Samples:
    """16 kHz mono int16 of a WAV file; raises SoundUnreadable with one sentence."""
    try:
        with wave.open(str(path), "rb") as sound:
            width, channels = sound.getsampwidth(), sound.getnchannels()
            rate, raw = sound.getframerate(), sound.readframes(sound.getnframes())
    except (OSError, wave.Error, EOFError) as trouble:
        raise SoundUnreadable(
            f"{path} cannot be read as a WAV file: {trouble}. Convert it to WAV first."
        ) from trouble
    kinds = {1: np.uint8, 2: np.int16, 4: np.int32}
    if width not in kinds or not raw:
        raise SoundUnreadable(f"{path} holds no sound that can be read; use 16 bit WAV.")
    values = np.frombuffer(raw[: len(raw) // (width * channels) * width * channels], kinds[width])
    values = values.astype(np.float64).reshape(-1, channels).mean(axis=1)
    values = (values - 128) * 256 if width == 1 else values / 65536 if width == 4 else values
    return at_our_rate(values, rate)


def at_our_rate(values: np.ndarray, rate: int) -> Samples:
    """The sound at 16 kHz, by its spectrum, so that nothing folds over."""
    if rate != RATE_HZ and len(values) > 1:
        length = round(len(values) * RATE_HZ / rate)
        spectrum = np.fft.rfft(values)
        bins = length // 2 + 1
        fitted = np.zeros(bins, complex)
        shared = min(bins, len(spectrum))
        fitted[:shared] = spectrum[:shared]
        values = np.fft.irfft(fitted, length) * (length / len(values))
    return np.clip(np.round(values), -32768, 32767).astype(np.int16)


def listen(recogniser: VoskRecogniser, phrases: tuple[str, ...], sound: Samples) -> Heard | None:
    """The first certain utterance of a clip, else the first doubtful one, else None."""
    recogniser.listen_for(phrases)
    recogniser.begin_anew()
    before = np.zeros(round(LEAD_IN_S * RATE_HZ), np.int16)
    after = np.zeros(RATE_HZ * 6 // 10, np.int16)
    padded = np.concatenate([before, sound, after])
    found: list[Heard] = []
    for at in range(0, len(padded), PIECE):
        found += [one for one in recogniser.feed(padded[at : at + PIECE]) if isinstance(one, Heard)]
    found += [one for one in recogniser.flush() if isinstance(one, Heard)]
    certain = [one for one in found if one.certain]
    first = next(iter(certain or found), None)
    return in_clip_time(first) if first is not None else None


def in_clip_time(heard: Heard) -> Heard:
    """The same with its times counted from the clip's own beginning, the lead-in taken off."""
    return replace(
        heard,
        said_at_s=heard.said_at_s - LEAD_IN_S,
        ended_s=heard.ended_s - LEAD_IN_S,
        decided_s=heard.decided_s - LEAD_IN_S,
    )


def line_of(file: str, heard: Heard | None, as_json: bool) -> str:
    """The line for one file."""
    certain = heard is not None and heard.certain
    if as_json:
        values = {
            "file": file,
            "heard": heard.text if heard and certain else None,
            "certain": certain,
            "doubt": heard.doubt if heard else "",
            "end_of_speech_s": round(heard.ended_s, 2) if heard else None,
            "decided_s": round(heard.decided_s, 2) if heard else None,
            "compute_s": round(heard.compute_s, 3) if heard else None,
        }
        return json.dumps(values)
    if heard is None:
        return f"{file}: nothing heard"
    if not certain:
        return f"{file}: nothing heard (not sure of: {heard.text}; {heard.doubt})"
    times = f"end of speech {heard.ended_s:.2f} s, decided {heard.decided_s:.2f} s"
    return f"{file}: {heard.text} ({times}, computing {heard.compute_s:.3f} s)"
