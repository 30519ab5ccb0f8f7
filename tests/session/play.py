"""Plays: a conversation as a script of maker, program and place, performed by the session itself.

Lines are "who: words". maker: says a phrase that can be heard now. key: presses one. program: the
last answer holds these words. silent: it holds none of these words. quiet: nothing was said.
place: part and row now hold these words. wait: seconds go by. away: the session is kept, closed and
begun again that many days later. unclear: the ear was not sure,
or between two.
"""

from __future__ import annotations

import json
from pathlib import Path

from reader.commands.asked import command_of
from reader.commands.command import Command
from reader.commands.phrases import ask_of_key
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.plan import find
from reader.plan.step import Plan
from reader.plan.unroll import make_plan
from reader.session.breaths import breaths_for
from reader.session.effects import Effect, Say
from reader.session.events import CommandGiven, NotSure, TalkEnded, Ticked
from reader.session.listening import phrases_for
from reader.session.progress import to_plain
from reader.session.start import begin
from reader.session.state import State, Tastes
from reader.session.transitions import respond
from reader.wording.say import say_label, say_part
from reader.wording.talk import talk

DEMOS = Path(__file__).parents[2] / "demos"


def plan_of(text: str, size: int = 0) -> Plan:
    """The plan of a pattern's text."""
    return make_plan(count_pattern(parse_pattern(text), size), text)


def demo(name: str, size: int = 0) -> Plan:
    """The plan of a demonstration pattern."""
    return plan_of((DEMOS / f"{name}.txt").read_text(encoding="utf-8"), size)


class Play:
    """A session that is spoken to; only phrases that can be heard now are accepted."""

    def __init__(self, plan: Plan, tastes: Tastes | None = None) -> None:
        self.tastes = tastes or Tastes()
        self.now = 0.0
        self.answer = ""
        self.effects: tuple[Effect, ...] = ()
        self.plan = plan
        self.state, effects = begin(plan, None, self.tastes, 0.0)
        self.took(self.state, effects)

    def took(self, state: State, effects: tuple[Effect, ...]) -> str:
        """Takes over what a session answered; gives the words that were said."""
        self.state, self.effects = state, effects
        said = [talk(one.sayings, state) for one in effects if isinstance(one, Say)]
        self.answer = " ".join(said)
        return self.answer

    def maker(self, words: str, after_s: float = 5.0) -> str:
        """The maker says this; gives what the program says."""
        heard = (*phrases_for(self.state), *breaths_for(self.state))
        assert words in heard, f"{words!r} cannot be heard now"
        self.now += after_s
        return self.took(
            *respond(self.state, CommandGiven(command_of(self.plain(words)), self.now))
        )

    def plain(self, words: str) -> str:
        """The words without the attention word."""
        word = self.state.tastes.attention
        return words.removeprefix(f"{word} ") if word else words

    def key(self, name: str, after_s: float = 5.0) -> str:
        """The maker presses a key."""
        ask = ask_of_key(name)
        assert ask is not None, f"{name!r} is no key"
        self.now += after_s
        return self.took(*respond(self.state, CommandGiven(Command(ask), self.now, False)))

    def wait(self, seconds: float) -> str:
        """Time goes by; what is being said comes to its end."""
        self.now += seconds
        state, _ = respond(self.state, TalkEnded(self.state.said, True, self.now))
        return self.took(*respond(state, Ticked(self.now)))

    def unclear(self, words: str) -> str:
        """The ear was not sure of these words, or between "this / that"."""
        self.now += 2.0
        one, _, other = words.partition(" / ")
        return self.took(*respond(self.state, NotSure(one, self.now, other)))

    def away(self, days: int) -> str:
        """Kept as a file would keep it, and begun again after some days."""
        kept = json.loads(json.dumps(to_plain(self.state, "2026-01-01")))
        self.now = 0.0
        return self.took(*begin(self.plan, kept, self.tastes, 0.0, days))

    def place(self) -> str:
        """Part and row of the present place."""
        part = find.part_at(self.plan, self.state.place)
        row = find.row_at(self.plan, self.state.place)
        return f"{say_part(part)} {say_label(row)}"


def perform(script: str, play: Play) -> Play:
    """The script performed; a line that does not hold fails with the line and what was found."""
    acts = {
        "maker": play.maker,
        "key": play.key,
        "unclear": play.unclear,
        "wait": lambda words: play.wait(float(words)),
        "away": lambda words: play.away(int(words)),
    }
    for number, line in enumerate(script.strip().splitlines(), start=1):
        who, _, words = line.strip().partition(":")
        words = words.strip()
        where = f"line {number}: {line.strip()}"
        if who in acts:
            acts[who](words)
        elif who == "program":
            assert words.lower() in play.answer.lower(), f"{where}; said: {play.answer}"
        elif who == "silent":
            assert words.lower() not in play.answer.lower(), f"{where}; said: {play.answer}"
        elif who == "quiet":
            assert not play.answer, f"{where}; said: {play.answer}"
        elif who == "place":
            assert words.lower() in play.place().lower(), f"{where}; at: {play.place()}"
        else:
            assert not line.strip() or line.strip().startswith("#"), f"{where}: who is that?"
    return play
