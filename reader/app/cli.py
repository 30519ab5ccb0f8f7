"""The `reader` command: finds the verb, runs its module, turns our errors into one sentence."""

from __future__ import annotations

import argparse
import importlib
import os
import sys
from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol

from reader import __version__
from reader.app.failing import BROKEN_OFF, WRONG_USE, sentence_for


class VerbModule(Protocol):
    """What each verb's module offers."""

    def add_arguments(self, parser: argparse.ArgumentParser) -> None: ...
    def run(self, args: argparse.Namespace) -> int: ...


@dataclass(frozen=True, slots=True)
class Verb:
    """A word after `reader`: the module that does it and what it is for, as a sentence's end."""

    module: str
    purpose: str
    sounds: bool = False
    """Whether sound libraries run beside it whose complaints would be drawn over its words."""


VERBS: dict[str, Verb] = {
    "work": Verb("reader.app.work", "work a pattern by voice or keys", sounds=True),
    "check": Verb("reader.app.check", "count a pattern and say what does not add up"),
    "rehearse": Verb("reader.app.rehearse", "hear a whole session without microphone or hands"),
    "swatch": Verb("reader.app.swatch", "learn in two minutes how you speak", sounds=True),
    "hear": Verb("reader.app.hear", "say what the ear makes of a sound file"),
    "print-large": Verb("reader.app.print_large", "print a pattern in large type"),
    "devices": Verb("reader.app.devices_check", "try microphone, speaker, voice and ear"),
}


def main(argv: list[str] | None = None) -> int:
    """The exit status: 0 done, 1 not done, 2 asked for wrongly, 130 broken off by the keyboard."""
    words = sys.argv[1:] if argv is None else argv
    if not words or words[0] in ("-h", "--help", "help"):
        print(short_help())
        return 0
    if words[0] in ("-V", "--version"):
        print(f"reader for makers {__version__}")
        return 0
    verb = VERBS.get(words[0])
    if verb is None:
        print(_unknown(words[0]), file=sys.stderr)
        return WRONG_USE
    return _run_verb(words[0], verb, words[1:])


def short_help() -> str:
    """A help text that makes sense when a screen reader reads it: one fact a line, no columns."""
    lines = ["Reader reads a crochet or knitting pattern aloud, one step at a time, and listens."]
    lines += [f"reader {name}: {verb.purpose}." for name, verb in VERBS.items()]
    lines += [
        "To begin: reader work, then the name of your pattern file.",
        "For more on one of them: reader work --help.",
    ]
    return "\n".join(lines)


def _unknown(word: str) -> str:
    if os.path.exists(word):
        return f"To work {word}, say: reader work {word}."
    return f"Reader does not know the word {word!r}; it knows {', '.join(VERBS)}."


def _run_verb(name: str, verb: Verb, words: list[str]) -> int:
    module: VerbModule = importlib.import_module(verb.module)
    parser = argparse.ArgumentParser(prog=f"reader {name}", description=verb.purpose.capitalize())
    module.add_arguments(parser)
    try:
        args = parser.parse_args(words)
    except SystemExit as left:
        return left.code if isinstance(left.code, int) else WRONG_USE
    undo = _noise_away() if verb.sounds else None
    try:
        return _outcome(module, args)
    finally:
        if undo is not None:
            undo()


def _noise_away() -> Callable[[], None]:
    from reader.devices.folders import log_file
    from reader.devices.noise import noise_to

    return noise_to(log_file())


def _outcome(module: VerbModule, args: argparse.Namespace) -> int:
    try:
        return module.run(args)
    except KeyboardInterrupt:
        return BROKEN_OFF
    except BrokenPipeError:
        # The reading end is gone; a second complaint at shutdown would only confuse.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 1
    except Exception as error:
        sentence = sentence_for(error)
        if sentence is None:
            raise
        print(sentence, file=sys.stderr)
        return 1


if __name__ == "__main__":
    sys.exit(main())
