"""Heard + the phrases that make sense now -> a command, unclear, or not for us."""

from __future__ import annotations

from dataclasses import dataclass

from reader.commands.asked import command_of
from reader.commands.command import Command
from reader.listening.heard import Heard


@dataclass(frozen=True, slots=True)
class Unsure:
    """Something was said that may have been for us; words: the likeliest reading; other: one as
    likely, "" for none."""

    words: str
    other: str = ""


@dataclass(frozen=True, slots=True)
class NotForUs:
    """Speech in the room, or nothing."""


def understand(
    heard: Heard, expected: tuple[str, ...], attention: str = ""
) -> Command | Unsure | NotForUs:
    """The command for an utterance; only a phrase that is expected now can be one.

    attention: the word that stands before the phrases, left out of the command.
    """
    words = heard.text.strip()
    if not words or words not in expected:
        return NotForUs()
    rival = heard.rival if heard.rival in expected else ""
    plain, other = (one.removeprefix(f"{attention} ") for one in (words, rival))
    return command_of(plain) if heard.certain else Unsure(plain, other)
