"""State: everything a session knows; replaced whole, never changed."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum

from reader.commands.command import Ask, Command
from reader.plan.mismatch import Search
from reader.plan.pace import Pace
from reader.plan.place import Place
from reader.plan.step import Grain, Plan
from reader.session.effects import Saying


class Mode(Enum):
    """What the session waits for."""

    STEP = "waiting for the next word"
    MORE = "waiting for one of the other words"
    ROW_NUMBER = "waiting for a row number"
    PART_NAME = "waiting for the name of a part"
    HAVE_NUMBER = "waiting for the stitches you have"
    RIP_NUMBER = "waiting for the row to rip back to"
    FIND_NUMBER = "waiting for a count on the way"
    MARK_NAME = "waiting for the name of a mark"
    MARK_GO = "waiting for which mark"
    STITCH_NAME = "waiting for the name of a stitch"
    NOTE = "waiting for a note"
    GAUGE_NUMBER = "waiting for the stitches of your gauge"
    YARN_NUMBER = "waiting for the grams that are left"
    GATHER = "waiting to hear whether you have it"
    CONFIRM = "waiting for yes or no"
    COUNTING = "counting along"
    PAUSED = "paused"
    FINISHED = "finished"


class Words(Enum):
    """How much is said of a step."""

    FULL = "full"
    SHORT = "short"
    COUNT = "count only"


@dataclass(frozen=True, slots=True)
class Moved:
    """A move in the journal."""

    at_s: float
    before: Place
    after: Place
    ask: Ask


@dataclass(frozen=True, slots=True)
class Mark:
    """A named place; lifeline: stitches known good there."""

    name: str
    place: Place
    lifeline: bool = False


@dataclass(frozen=True, slots=True)
class Note:
    """A note of the maker's: where, and its words."""

    place: Place
    name: str
    words: str = ""


@dataclass(frozen=True, slots=True)
class Tastes:
    """What the maker has chosen, the same for every pattern.

    rate: words a minute. volume: 1 is as rendered. rest_minutes: until a rest is suggested, 0
    never. attention: a word before each command, "" for none. cautions: whether they are spoken.
    own_names: what the maker calls a command, by its taught phrase; "" for a sound without a name.
    """

    grain: Grain = Grain.GROUP
    words: Words = Words.FULL
    rate: int = 170
    volume: float = 1.0
    rest_minutes: int = 30
    attention: str = ""
    cautions: bool = True
    own_names: tuple[tuple[str, str], ...] = ()

    def called(self, phrase: str) -> str:
        """What a command is called to the maker's ears."""
        name = dict(self.own_names).get(phrase)
        return phrase if name is None else name or f"your own sound for {phrase}"

    def meant(self, words: str) -> str:
        """The taught phrase for a word of the maker's own; other words stay as they are."""
        return next((phrase for phrase, name in self.own_names if name and name == words), words)


@dataclass(frozen=True, slots=True)
class State:
    """The whole session.

    now_s: the latest time. said: the number of the text spoken last. talking: whether it is still
    being said. misses: unclear words in a row. deaf: the maker asked it not to listen. ticked:
    things gathered, by index; gather_at: the one asked about. finished: the last step was done.
    have, have_at, search: the count that was wrong, of which row, and between which passes the slip
    is. timing: pace
    aloud; due_told: said for this row. by_voice: the latest command was spoken. asked_at_s: when a
    note was asked for. between: two answers of which one was said, as asked.
    """

    plan: Plan
    place: Place
    mode: Mode = Mode.STEP
    tastes: Tastes = field(default_factory=Tastes)
    now_s: float = 0.0
    said: int = 0
    talking: bool = False
    last: tuple[Saying, ...] = ()
    heard: str = ""
    pending: Command | None = None
    journal: tuple[Moved, ...] = ()
    marks: tuple[Mark, ...] = ()
    notes: tuple[Note, ...] = ()
    misses: int = 0
    tally: int = 0
    tally_by: int = 1
    pace: Pace = field(default_factory=Pace)
    step_since_s: float = 0.0
    sat_since_s: float = 0.0
    where_depth: int = 0
    where_at_s: float = -99.0
    lost: tuple[str, ...] = ()
    deaf: bool = False
    ticked: frozenset[int] = frozenset()
    gather_at: int = 0
    finished: bool = False
    have: int | None = None
    have_at: Place | None = None
    search: Search | None = None
    timing: bool = False
    due_told: bool = False
    by_voice: bool = False
    asked_at_s: float = 0.0
    between: tuple[str, ...] = ()
    cautions_told: frozenset[int] = frozenset()
    rounds_announced: int = 0
    hinted: bool = False


UNDO_S = 10.0
"""Seconds in which a move is taken back by one word (our choice; a wrong move costs one word)."""
JOURNAL = 60
"""Moves kept in the journal."""
MISSES = 3
"""Unclear words in a row before the program explains the keys and goes quiet about it."""
