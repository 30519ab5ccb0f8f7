"""`reader work`: the job itself; a pattern worked by voice, by keys or by foot."""

from __future__ import annotations

import argparse
import datetime
import sys
import threading
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from reader.app.loop import KeyPressed, Loop, Typed
from reader.app.tastes import keeper, tastes_of
from reader.counts.account import count_pattern
from reader.devices.clock import SystemClock
from reader.devices.pattern_file import read_pattern
from reader.devices.ports import PatternUnreadable, ReaderError, Shelf
from reader.devices.settings import Settings, load_settings
from reader.pattern.parser import parse_pattern
from reader.plan import find
from reader.plan.step import Plan
from reader.plan.unroll import make_plan
from reader.session.effects import Effect
from reader.session.start import begin
from reader.session.state import State

if TYPE_CHECKING:
    from reader.commands.phrases import Words
    from reader.devices.sound_ring import SoundRing

LEAST_STITCHY = 0.002
"""Rows found for each word below which a long text is no pattern (our choice)."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The words after `reader work`."""
    parser.add_argument("file", help="the pattern")
    parser.add_argument("--plain", action="store_true", help="lines instead of a full screen")
    parser.add_argument("--no-voice", action="store_true", help="say nothing aloud")
    parser.add_argument("--no-mic", action="store_true", help="do not listen; keys only")
    parser.add_argument("--model", default="", help="another listening model's directory")
    parser.add_argument("--size", type=int, default=1, help="which size, counted from 1")
    parser.add_argument(
        "--again", action="store_true", help="from the beginning, not where you were"
    )


def read_plan(file: str, size: int) -> Plan:
    """The plan of a pattern file; raises PatternUnreadable with one sentence."""
    text = read_pattern(Path(file))
    pattern = parse_pattern(text)
    if not 1 <= size <= len(pattern.sizes):
        raise PatternUnreadable(
            f"There is no size {size}; the pattern has {len(pattern.sizes)}. "
            "Choose one with --size."
        )
    counted = count_pattern(pattern, size - 1)
    rows = sum(1 for part in counted.parts for row in part.rows if row.count or row.moves)
    if not rows or rows < LEAST_STITCHY * len(text.split()):
        raise PatternUnreadable(
            f"No rows or rounds were found in {file}; is it a crochet or knitting pattern in words?"
        )
    plan = make_plan(counted, text)
    if find.first_place(plan) is None:
        raise PatternUnreadable(f"{file} holds no step that could be worked.")
    return plan


def run(args: argparse.Namespace) -> int:
    """Exit status 0 when the session ended; raises ReaderError with one sentence if none begins."""
    plan = read_plan(args.file, args.size)
    from reader.devices.progress_file import FileShelf
    from reader.screens.choose import choose_screen
    from reader.wording.show import help_lines

    settings = load_settings()
    tastes = tastes_of(settings)
    clock, shelf = SystemClock(), FileShelf()
    table = tuple((w.does, w.phrases[0], w.key) for w in _table())
    screen = choose_screen(args.plain, "dark", help_lines(table))
    loop = Loop(
        None, None, None, screen, shelf, clock, keys=settings.keys, keep_tastes=keeper(tastes)
    )
    closers = open_devices(loop, args, settings)
    saved = None if args.again else _kept(shelf, plan)
    state, effects = begin(plan, saved, tastes, clock.now_s(), _days(saved, clock.today()))
    thread = threading.Thread(target=_run, args=(loop, state, effects), daemon=True, name="loop")
    thread.start()
    try:
        screen.run(lambda key: loop.push(KeyPressed(key)), lambda words: loop.push(Typed(words)))
    finally:
        loop.push(KeyPressed("ctrl+c"))
        thread.join(3.0)
        for close in closers:
            close()
    return 0


def _run(loop: Loop, state: State, effects: tuple[Effect, ...]) -> None:
    loop.start(state, effects)
    loop.run()


def _table() -> tuple[Words, ...]:
    from reader.commands.phrases import TABLE

    return TABLE


def _kept(shelf: Shelf, plan: Plan) -> dict[str, object] | None:
    try:
        return shelf.load(plan.fingerprint)
    except ReaderError as trouble:
        print(trouble, file=sys.stderr)
        return None


def _days(saved: dict[str, object] | None, today: str) -> int:
    try:
        then = datetime.date.fromisoformat(str((saved or {}).get("saved_on", ""))[:10])
        return (datetime.date.fromisoformat(today[:10]) - then).days
    except ValueError:
        return 0


def open_devices(
    loop: Loop, args: argparse.Namespace, settings: Settings
) -> list[Callable[[], None]]:
    """Voice and ear as far as they are there; each that is not is told in one sentence."""
    from reader.devices.speaking import Speaking
    from reader.wording.chimes import CHIMES

    closers: list[Callable[[], None]] = []
    played = None
    if not args.no_voice:
        speaking = Speaking(loop.push, CHIMES, settings.voice, settings.speaker or None)
        try:
            speaking.open()
        except ReaderError as trouble:
            print(trouble, file=sys.stderr)
        loop.voice, played = speaking.voice, speaking.played
        loop.chimes = speaking.chimes if settings.chimes else None
        closers.append(speaking.close)
    if not args.no_mic:
        closers += open_ear(loop, args.model or settings.model, played, settings.microphone)
    return closers


def open_ear(
    loop: Loop, model: str, played: SoundRing | None, microphone: str = ""
) -> list[Callable[[], None]]:
    """The ear, where model and microphone are there.

    Raises ModelMissing only for a model that was asked for.
    """
    from reader.devices.ear import ThreadedEar
    from reader.devices.hearing import Hearing
    from reader.devices.mixer import Mixer
    from reader.devices.recogniser import VoskRecogniser

    try:
        recogniser = VoskRecogniser(model)
    except ReaderError as trouble:
        if model:
            raise
        print(trouble, file=sys.stderr)
        return []
    ear = ThreadedEar(recogniser, loop.push)
    hearing = Hearing(ear.take, loop.push, played or Mixer().heard, microphone or None)
    try:
        hearing.open()
    except ReaderError as trouble:
        print(trouble, file=sys.stderr)
    loop.ear = ear
    return [hearing.close, ear.close]


def pattern_name(path: str) -> str:
    """The file's name without its ending."""
    return Path(path).stem
