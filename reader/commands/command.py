"""Command: what the maker asked for, however it was asked (word, key or foot)."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Ask(Enum):
    """Every thing a maker can ask. The value is its stable name in settings and saved files."""

    NEXT = "next"
    AGAIN = "again"
    BACK = "back"
    WHERE = "where"
    HOW_MANY = "how-many"
    AFTER_THIS = "after-this"
    WHOLE_ROW = "whole-row"
    AS_WRITTEN = "as-written"
    GO_TO_ROW = "go-to-row"
    GO_TO_PART = "go-to-part"
    ROW_DONE = "row-done"
    I_HAVE = "i-have"
    PAUSE = "pause"
    CARRY_ON = "carry-on"
    SLOWER = "slower"
    FASTER = "faster"
    LOUDER = "louder"
    SOFTER = "softer"
    SMALLER_STEPS = "smaller-steps"
    BIGGER_STEPS = "bigger-steps"
    FULL_WORDS = "full-words"
    SHORT_WORDS = "short-words"
    COUNT_ONLY = "count-only"
    SPELL = "spell"
    EXPLAIN = "explain"
    WHICH_STITCH = "which-stitch"
    WHAT_CAN_I_SAY = "what-can-i-say"
    STOP_LISTENING = "stop-listening"
    FINISH_TODAY = "finish-today"
    START_OVER = "start-over"
    ROW_START = "row-start"
    RIP_BACK = "rip-back"
    MARK = "mark"
    LIFELINE = "lifeline"
    GO_TO_MARK = "go-to-mark"
    LAST_TIME = "last-time"
    COUNT_ALONG = "count-along"
    PACE = "pace"
    HOW_LONG = "how-long"
    NOTE = "note"
    PATTERN_NOTES = "pattern-notes"
    READ_NOTES = "read-notes"
    MATERIALS = "materials"
    GAUGE = "gauge"
    YARN_LEFT = "yarn-left"
    UNDO = "undo"
    HUSH = "hush"
    YES = "yes"
    NO = "no"
    NUMBER = "number"
    WORD = "word"
    MORE = "more-words"
    BY_ONE = "by-one"
    BY_FIVE = "by-five"
    BY_TEN = "by-ten"


@dataclass(frozen=True, slots=True)
class Command:
    """One request: what, and the number or word that came with it."""

    ask: Ask
    number: int | None = None
    word: str = ""
