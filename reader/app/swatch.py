"""`reader swatch`: two minutes with the maker; room, microphone and voice are learned."""

from __future__ import annotations

import argparse
import threading
from collections.abc import Callable
from typing import TYPE_CHECKING

from reader.app.hear import listen
from reader.app.loop import KeyPressed, Typed
from reader.app.swatch_loop import SwatchLoop
from reader.commands.other_words import OTHER_WORDS
from reader.commands.phrases import BY_ASK, MAIN, ask_of, phrases_of
from reader.devices.model_place import load_network
from reader.devices.own_words_file import (
    forget_own_words,
    load_own_words,
    own_words_file,
    save_own_words,
)
from reader.devices.ports import DeviceLost, ModelMissing, ReaderError
from reader.devices.settings import Settings, load_settings
from reader.listening.lesson import Lesson
from reader.session.swatch import NEEDED

if TYPE_CHECKING:
    from reader.devices.speaking import Speaking


class NoSuchWord(ReaderError):
    """A word that is no command."""


class NoMicrophone(ReaderError):
    """Nothing can be learned without one."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The words after `reader swatch`."""
    parser.add_argument(
        "words", nargs="*", help="commands to learn, each in quotes; else those needed most"
    )
    parser.add_argument(
        "--forget", action="store_true", help="delete what was learned, or only these words"
    )
    parser.add_argument("--plain", action="store_true", help="lines instead of a full screen")
    parser.add_argument("--no-voice", action="store_true", help="say nothing aloud")
    parser.add_argument("--model", default="", help="another listening model's directory")


def run(args: argparse.Namespace) -> int:
    """Exit status 0; raises ReaderError with one sentence where nothing can be learned."""
    words = tuple(_taught(word) for word in args.words)
    if args.forget:
        print(forget(words))
        return 0
    settings = load_settings()
    loop, closers = _opened(args, settings)
    attention = settings.attention.strip().lower()
    words = words or ((*NEEDED, attention) if attention else NEEDED)
    started = threading.Thread(target=_run, args=(loop, words), daemon=True, name="swatch")
    started.start()
    try:
        assert loop.screen is not None
        loop.screen.run(lambda key: loop.push(KeyPressed(key)), lambda said: loop.push(Typed(said)))
    finally:
        loop.push(KeyPressed("ctrl+c"))
        started.join(3.0)
        for close in closers:
            close()
    return 0


def _run(loop: SwatchLoop, words: tuple[str, ...]) -> None:
    loop.start(words)
    loop.run()


def forget(words: tuple[str, ...]) -> str:
    """Deletes what was learned of these words, or all of it; gives the sentence that says so."""
    if not words:
        done = forget_own_words()
        return f"Deleted: {own_words_file()}." if done else "Nothing was learned yet."
    own = load_own_words()
    known = [word for word in words if own is not None and word in own.sounds]
    if own is None or not known:
        return f"Nothing was learned of {', '.join(words)}."
    save_own_words(own.without(frozenset(known)))
    return f"Forgotten: {', '.join(known)}."


def _taught(word: str) -> str:
    """The taught phrase of a command; raises NoSuchWord."""
    ask = ask_of(" ".join(word.lower().split()))
    if ask is None or ask not in BY_ASK:
        raise NoSuchWord(f"{word!r} is no command; there are {', '.join(phrases_of(MAIN))}.")
    return phrases_of((ask,))[0]


def better(phrase: str) -> str:
    """Of the words that a command could be called instead, the one most unlike all others."""
    from reader.devices.pronunciations import sounds_of
    from reader.listening.tune import better_word

    candidates, others = OTHER_WORDS.get(phrase, ()), phrases_of(MAIN)
    return better_word(phrase, candidates, others, sounds_of((*candidates, *others)))


def _opened(
    args: argparse.Namespace, settings: Settings
) -> tuple[SwatchLoop, list[Callable[[], None]]]:
    """The loop with ear, voice and screen; raises ReaderError where there is no microphone."""
    from reader.devices.hearing import Hearing
    from reader.devices.mixer import Mixer
    from reader.devices.recogniser import VoskRecogniser
    from reader.devices.sample_ear import SampleEars
    from reader.screens.choose import choose_screen

    model = args.model or settings.model
    loop = SwatchLoop(_lesson(model), save_own_words, better)
    loop.ear = ear = SampleEars(VoskRecogniser(model), loop.push)
    speaking = None if args.no_voice else _speaking(loop, settings)
    played = speaking.played if speaking is not None else Mixer().heard
    hearing = Hearing(ear.take, loop.push, played, settings.microphone or None)
    closers = [hearing.close, ear.close]
    if speaking is not None:
        ear.know_own_voice(speaking.voice.just_said, hearing.somebody)
        closers.append(speaking.close)
    try:
        hearing.open()
    except ReaderError as trouble:
        for close in closers:
            close()
        raise NoMicrophone(
            "There is no microphone, so nothing can be learned; plug one in and begin again."
        ) from trouble
    loop.screen = choose_screen(args.plain, "dark")
    return loop, closers


def _lesson(model: str) -> Lesson:
    """A lesson that goes on from what was taught before; raises ReaderError."""
    from reader.devices.recogniser import VoskRecogniser

    plain, network = VoskRecogniser(model), load_network(model)
    if network is None:
        raise ModelMissing("This listening model cannot learn a voice; the shipped one can.")
    return Lesson(network, lambda sound: listen(plain, phrases_of(MAIN), sound), load_own_words())


def _speaking(loop: SwatchLoop, settings: Settings) -> Speaking:
    """The loop's voice and chimes; where there is no speaker the words are shown all the same."""
    from reader.devices.speaking import Speaking
    from reader.wording.chimes import CHIMES

    speaking = Speaking(loop.push, CHIMES, settings.voice, settings.speaker or None)
    speaking.voice.set_rate(settings.rate)
    speaking.voice.set_volume(settings.volume)
    loop.voice = speaking.voice
    loop.chimes = speaking.chimes if settings.chimes else None
    try:
        speaking.open()
    except ReaderError as trouble:
        loop.push(DeviceLost("speaker", str(trouble)))
    return speaking
