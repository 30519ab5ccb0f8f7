"""`reader devices`: says which microphone, speaker, voice, canceller and ear there are, and
tries them.
"""

from __future__ import annotations

import argparse
import queue
import time
from collections.abc import Callable

import numpy as np

from reader.devices.echo import open_canceller
from reader.devices.folders import log_file, settings_file
from reader.devices.microphone import Microphone
from reader.devices.model_check import model_folder, model_trouble
from reader.devices.noise import noise_to
from reader.devices.own_words_file import load_own_words, own_words_file
from reader.devices.ports import (
    DeviceLost,
    DeviceUnavailable,
    ReaderError,
    Samples,
    SpeechEnded,
)
from reader.devices.renderer import Renderer
from reader.devices.settings import Settings, load_settings
from reader.devices.speaking import Speaking
from reader.devices.voice import USUAL_RATE, MixedVoice

SENTENCE = "This is the voice that will read your pattern."
LISTEN_S = 3.0
SPEAK_LIMIT_S = 20.0
QUIET = 30
"""Height (of 32 768) that a live microphone's own noise passes;
a muted one stays at zero. Judgement.
"""

SPEECH = 1000
"""Height that somebody speaking near the microphone passes. Judgement."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Options of the verb."""
    parser.add_argument("--no-voice", action="store_true", help="do not speak")
    parser.add_argument("--no-mic", action="store_true", help="do not listen")
    parser.add_argument("--model", metavar="DIR", help="a recogniser's model directory of your own")


def run(args: argparse.Namespace) -> int:
    """0 when all that was tried works, 1 when something is missing; each thing is one line."""
    settings = load_settings()
    undo = noise_to(log_file())
    try:
        fine = [_ear(args.model or settings.model), _own_words(), _canceller()]
        if not args.no_voice:
            fine.append(_voice(settings))
        if not args.no_mic:
            fine.append(_microphone(settings))
    finally:
        undo()
    print(f"Settings: {settings_file()}. Noise of the sound system: {log_file()}.")
    return 0 if all(fine) else 1


def _say(line: str) -> None:
    print(line, flush=True)


def _ear(chosen: str) -> bool:
    folder = model_folder(chosen)
    trouble = model_trouble(folder)
    _say(f"Ear: {trouble}" if trouble else f"Ear: the model in {folder} is loaded.")
    return not trouble


def _own_words() -> bool:
    try:
        own = load_own_words()
    except ReaderError as error:
        _say(f"Own words: {error}")
        return False
    if own is None or not own.sounds:
        _say("Own words: none yet; reader swatch learns them.")
        return True
    named = {phrase: f"{phrase} as {name or 'a sound'}" for phrase, name in own.names.items()}
    told = ", ".join(named.get(phrase, phrase) for phrase in own.sounds)
    _say(f"Own words: {told}, in {own_words_file()}.")
    return True


def _canceller() -> bool:
    canceller, sentence = open_canceller()
    canceller.close()
    _say(sentence or "Echo canceller: there.")
    return not sentence


def _voice(settings: Settings) -> bool:
    events: queue.Queue[object] = queue.Queue()
    speaking = Speaking(events.put, {}, settings.voice, settings.speaker or None)
    speaking.voice.set_rate(settings.rate)
    speaking.voice.set_volume(settings.volume)
    try:
        speaking.open()
        _say(f"Speaker: open, {speaking.player.latency_s() * 1000:.0f} milliseconds of buffer.")
        return _spoken(speaking.voice, events)
    except DeviceUnavailable as error:
        _say(f"Speaker: {error}")
        _say(f"Voice: {_renders(speaking.renderer)}")
        return False
    finally:
        speaking.close()


def _renders(renderer: Renderer) -> str:
    try:
        renderer.render(SENTENCE, USUAL_RATE)
    except DeviceUnavailable as error:
        return str(error)
    return "it works, but nothing can play it."


def _spoken(voice: MixedVoice, events: queue.Queue[object]) -> bool:
    started_s = time.monotonic()
    voice.say(SENTENCE, 1)
    while True:
        try:
            event = events.get(timeout=SPEAK_LIMIT_S)
        except queue.Empty:
            _say("Voice: the speaker takes no sound.")
            return False
        if isinstance(event, DeviceLost):
            _say(f"Voice: {event.sentence}")
            return False
        if isinstance(event, SpeechEnded):
            took_s = time.monotonic() - started_s
            _say(f"Voice: said {event.words_said} words in {took_s:.1f} seconds. Did you hear it?")
            return event.complete


def _microphone(settings: Settings) -> bool:
    peaks: list[int] = []
    microphone = Microphone(_peak_into(peaks), lambda event: None, settings.microphone or None)
    try:
        microphone.open()
        _say(f"Microphone: open. Say something within {LISTEN_S:.0f} seconds.")
        time.sleep(LISTEN_S)
    except ReaderError as error:
        _say(f"Microphone: {error}")
        return False
    finally:
        microphone.close()
    loudest = max(peaks, default=0)
    if loudest < QUIET:
        _say("Microphone: open but silent; it may be muted, or another one may be chosen.")
        return False
    speech = "somebody spoke" if loudest > SPEECH else "it hears the room, but nobody spoke"
    share = loudest * 100 // 32768
    _say(f"Microphone: {speech}; the loudest sound was {share} per cent of its range.")
    return True


def _peak_into(peaks: list[int]) -> Callable[[Samples, int, float], None]:
    def take(frame: Samples, first: int, at_s: float) -> None:
        peaks.append(int(np.abs(frame.astype(np.int32)).max()))

    return take
