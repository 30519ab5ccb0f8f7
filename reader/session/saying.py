"""Saying: something to be said, as a value; the wording room makes the sentence."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from reader.plan.mismatch import Mismatch, Search, Stop
from reader.plan.place import Place


class Topic(Enum):
    """What a saying is about."""

    STEP = "step"
    NEW_ROW = "new row"
    NEW_PART = "new part"
    ROW_COMPLETE = "row complete"
    ALL_DONE = "all done"
    AT_START = "at start"
    WHERE = "where"
    HOW_MANY = "how many"
    AFTER_THIS = "after this"
    WHOLE_ROW = "whole row"
    AS_WRITTEN = "as written"
    SPELL = "spell"
    EXPLAIN = "explain"
    WORDS = "words"
    MORE_WORDS = "more words"
    PAUSED = "paused"
    CARRIED_ON = "carried on"
    NOT_LISTENING = "not listening"
    LISTENING = "listening"
    RATE = "rate"
    VOLUME = "volume"
    GRAIN = "grain"
    LENGTH = "length"
    WHICH_ROW = "which row"
    WHICH_PART = "which part"
    WHICH_MARK = "which mark"
    HOW_MANY_HAVE = "how many have"
    NO_SUCH_ROW = "no such row"
    NO_MARKS = "no marks"
    MARKED = "marked"
    ASK = "ask"
    NOT_DONE = "not done"
    UNDONE = "undone"
    NOTHING_TO_UNDO = "nothing to undo"
    UNSURE = "unsure"
    TALLY = "tally"
    TALLY_BEGUN = "tally begun"
    TALLY_OVER = "tally over"
    TALLY_ODD = "tally odd"
    COUNT_RIGHT = "count right"
    COUNT_WRONG = "count wrong"
    COUNT_STOP = "count stop"
    COUNT_FOUND = "count found"
    NO_COUNT = "no count"
    PACE = "pace"
    ABOUT_DONE = "about done"
    HOW_LONG = "how long"
    NOTE_BEGUN = "note begun"
    NOTES = "notes"
    GATHER = "gather"
    GATHERED = "gathered"
    GAUGE = "gauge"
    GAUGE_MEANS = "gauge means"
    YARN = "yarn"
    LAST_TIME = "last time"
    WELCOME = "welcome"
    WELCOME_BACK = "welcome back"
    REST = "rest"
    DEVICE = "device"
    GOODBYE = "goodbye"


@dataclass(frozen=True, slots=True)
class Saying:
    """What to say: topic, the place it is about, and what else belongs to it.

    depth: how often in a row it was asked or missed, 0 first; wording differs with it.
    then: a saying that follows in the same breath.
    """

    topic: Topic
    place: Place | None = None
    number: int | None = None
    words: tuple[str, ...] = ()
    depth: int = 0
    found: Mismatch | None = None
    search: Search | None = None
    stop: Stop | None = None
    seconds: float | None = None
    then: tuple[Saying, ...] = ()
