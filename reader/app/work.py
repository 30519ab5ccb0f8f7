"""`reader work`: the job itself; a pattern worked by voice, by keys or by foot."""

from __future__ import annotations

import argparse
import threading
from collections.abc import Callable
from typing import TYPE_CHECKING

from reader.app.loop import KeyPressed, Loop, Typed
from reader.app.opening import Opening, plan_of, read_paper
from reader.app.tastes import keeper, tastes_of
from reader.app.troubles import Troubles
from reader.devices.clock import SystemClock
from reader.devices.model_place import load_network
from reader.devices.notes_folder import NotesFolder
from reader.devices.own_words_file import load_own_words
from reader.devices.ports import DeviceLost, ReaderError
from reader.devices.progress_file import FileShelf
from reader.devices.settings import Settings, load_settings
from reader.plan.step import Plan

if TYPE_CHECKING:
    from reader.devices.recogniser import VoskRecogniser
    from reader.devices.sound_ring import SoundRing
    from reader.listening.own_ear import OwnEar
    from reader.listening.own_words import OwnWords


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The words after `reader work`."""
    parser.add_argument(
        "file", nargs="?", default="", help="the pattern; without one, a piece on the go"
    )
    parser.add_argument("--plain", action="store_true", help="lines instead of a full screen")
    parser.add_argument("--no-voice", action="store_true", help="say nothing aloud")
    parser.add_argument("--no-mic", action="store_true", help="do not listen; keys only")
    parser.add_argument("--model", default="", help="another listening model's directory")
    parser.add_argument(
        "--size", type=int, default=None, help="which size, counted from 1; else you are asked"
    )
    parser.add_argument(
        "--again", action="store_true", help="from the beginning, not where you were"
    )


def read_plan(file: str, size: int) -> Plan:
    """The plan of a pattern file for a size, counted from 1.

    Raises PatternUnreadable with one sentence.
    """
    return plan_of(read_paper(file), size - 1)


def run(args: argparse.Namespace) -> int:
    """Exit status 0 when the session ended; raises ReaderError with one sentence if none begins."""
    from reader.commands.phrases import TABLE
    from reader.screens.choose import choose_screen
    from reader.wording.show import help_lines

    settings = load_settings()
    own, unknown = own_words()
    tastes = tastes_of(settings, own)
    clock, shelf = SystemClock(), FileShelf()
    table = tuple((words.does, tastes.called(words.phrases[0]), words.key) for words in TABLE)
    screen = choose_screen(args.plain, "dark", help_lines(table))
    loop = Loop(
        None,
        None,
        None,
        screen,
        shelf,
        clock,
        keys=settings.keys,
        keep_tastes=keeper(tastes),
        barge_in=settings.barge_in,
    )
    size = None if args.size is None else args.size - 1
    start = Opening(loop, shelf, tastes, size, args.again).ready(args.file)
    closers = open_devices(loop, args, settings, own, unknown)
    thread = threading.Thread(target=_run, args=(loop, start), daemon=True, name="loop")
    thread.start()
    try:
        screen.run(lambda key: loop.push(KeyPressed(key)), lambda words: loop.push(Typed(words)))
    finally:
        loop.push(KeyPressed("ctrl+c"))
        thread.join(3.0)
        for close in closers:
            close()
    return 0


def _run(loop: Loop, start: Callable[[], None]) -> None:
    start()
    loop.run()


def own_words() -> tuple[OwnWords | None, str]:
    """What the maker taught, and a sentence of trouble with it."""
    try:
        return load_own_words(), ""
    except ReaderError as trouble:
        return None, str(trouble)


def open_devices(
    loop: Loop,
    args: argparse.Namespace,
    settings: Settings,
    own: OwnWords | None = None,
    unknown: str = "",
) -> list[Callable[[], None]]:
    """Voice and ear as far as they are there; each that is not is told in one sentence.

    unknown: the trouble with what the maker taught.
    """
    from reader.devices.mixer import Clip
    from reader.devices.speaking import Speaking
    from reader.wording.chimes import CHIMES

    closers: list[Callable[[], None]] = []
    played, troubles = None, Troubles(loop.push)
    if args.no_voice:
        troubles.at_once()
    else:
        speaking = Speaking(troubles.push, CHIMES, settings.voice, settings.speaker or None)
        try:
            speaking.open()
        except ReaderError as trouble:
            troubles.add(DeviceLost("speaker", str(trouble)))
            troubles.unheard()
        loop.voice, played = speaking.voice, speaking.played
        loop.chimes = speaking.chimes if settings.chimes else None
        loop.notes.load = lambda of, name: NotesFolder(of).sound(name)
        loop.notes.play = lambda sound: speaking.mixer.play(Clip(sound))
        loop.notes.stop = speaking.mixer.drop
        closers.append(speaking.close)
    if unknown:
        troubles.add(DeviceLost("own words", unknown))
    if not args.no_mic:
        model = args.model or settings.model
        closers += open_ear(loop, troubles, model, played, settings.microphone, own)
    return closers


def open_ear(
    loop: Loop,
    troubles: Troubles,
    model: str,
    played: SoundRing | None,
    microphone: str = "",
    own: OwnWords | None = None,
) -> list[Callable[[], None]]:
    """The ear, where model and microphone are there; own: what the maker taught.

    Raises ModelMissing only for a model that was asked for.
    """
    from reader.devices.ear import ThreadedEar
    from reader.devices.hearing import Hearing
    from reader.devices.mixer import Mixer
    from reader.devices.voice import MixedVoice

    try:
        recogniser = recogniser_for(model, own)
    except ReaderError as trouble:
        if model:
            raise
        troubles.add(DeviceLost("recogniser", str(trouble)))
        return []
    ear = ThreadedEar(recogniser, loop.push)
    hearing = Hearing(ear.take, loop.push, played or Mixer().heard, microphone or None)
    if isinstance(loop.voice, MixedVoice):
        ear.know_own_voice(loop.voice.just_said, hearing.somebody)
    try:
        hearing.open()
    except ReaderError as trouble:
        troubles.add(DeviceLost("microphone", str(trouble)))
    if hearing.notice and played is not None:
        troubles.add(DeviceLost("echo canceller", hearing.notice))
    loop.ear, loop.notes.recent = ear, hearing.recent
    loop.notes.keep = lambda of, name, sound: NotesFolder(of).keep(name, sound)
    return [hearing.close, ear.close]


def recogniser_for(model: str, own: OwnWords | None) -> VoskRecogniser:
    """The recogniser, with a second look where the maker taught words and the model allows one."""
    from reader.devices.recogniser import VoskRecogniser

    if own is None:
        return VoskRecogniser(model)

    def taught() -> OwnEar | None:
        network = load_network(model)
        return own.ear(network) if network is not None else None

    return VoskRecogniser(model, least=own.least, own=taught)
