"""What can be said and pressed for each request: phrases as data, the taught one first."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from reader.commands.command import Ask


@dataclass(frozen=True, slots=True)
class Words:
    """A request: its phrases (the taught one first), its key, what it does in a few words."""

    ask: Ask
    phrases: tuple[str, ...]
    key: str
    does: str


TABLE: tuple[Words, ...] = (
    Words(Ask.NEXT, ("next",), "space", "the next step"),
    Words(Ask.AGAIN, ("again", "say again"), "a", "the same step again"),
    Words(Ask.BACK, ("go back", "back"), "b", "one step back"),
    Words(Ask.WHERE, ("where am i",), "w", "where you are"),
    Words(Ask.HOW_MANY, ("how many",), "h", "stitches done, left and in all"),
    Words(Ask.AFTER_THIS, ("what's after this",), "f", "what comes after this"),
    Words(Ask.WHOLE_ROW, ("whole row",), "r", "the whole row"),
    Words(Ask.GO_TO_ROW, ("go to row",), "g", "another row"),
    Words(Ask.GO_TO_PART, ("go to part",), "p", "another part"),
    Words(Ask.ROW_DONE, ("row done",), "d", "the row is done"),
    Words(Ask.PAUSE, ("pause",), "u", "silence until you carry on"),
    Words(Ask.CARRY_ON, ("carry on",), "c", "goes on"),
    Words(Ask.SLOWER, ("slower",), "-", "slower speech"),
    Words(Ask.FASTER, ("faster",), "+", "faster speech"),
    Words(Ask.LOUDER, ("louder",), "l", "louder speech"),
    Words(Ask.SOFTER, ("softer",), "k", "softer speech"),
    Words(Ask.WHAT_CAN_I_SAY, ("what can i say",), "?", "what you can say now"),
    Words(Ask.STOP_LISTENING, ("stop listening",), "m", "stops listening; keys go on working"),
    Words(Ask.FINISH_TODAY, ("finish for today",), "q", "ends for today"),
    Words(Ask.UNDO, ("undo that",), "z", "takes the last move back"),
    Words(Ask.I_HAVE, ("check my count",), "i", "compares the stitches you have"),
    Words(Ask.MORE, ("more words",), "o", "the other words"),
    Words(Ask.AS_WRITTEN, ("as written",), "t", "the step as the pattern writes it"),
    Words(Ask.SPELL, ("spell that",), "s", "spells it"),
    Words(Ask.EXPLAIN, ("explain that",), "e", "how the stitch is made"),
    Words(Ask.WHICH_STITCH, ("which stitch",), "v", "how a stitch that you name is made"),
    Words(Ask.SMALLER_STEPS, ("smaller steps",), ",", "smaller steps"),
    Words(Ask.BIGGER_STEPS, ("bigger steps",), ".", "bigger steps"),
    Words(Ask.FULL_WORDS, ("full words",), "1", "everything in full"),
    Words(Ask.SHORT_WORDS, ("short words",), "2", "short wording"),
    Words(Ask.COUNT_ONLY, ("only the count",), "3", "counts only"),
    Words(Ask.COUNT_ALONG, ("count along",), "4", "keeps the tally while you count"),
    Words(Ask.ROW_START, ("start of the row",), "home", "back to the row's first step"),
    Words(Ask.RIP_BACK, ("rip back",), "x", "back to an earlier row"),
    Words(Ask.MARK, ("mark this place",), "5", "puts a mark here"),
    Words(Ask.LIFELINE, ("lifeline here",), "6", "a lifeline in this row"),
    Words(Ask.GO_TO_MARK, ("back to the mark",), "7", "back to the last mark"),
    Words(Ask.LAST_TIME, ("what did we do last",), "8", "what was done last"),
    Words(Ask.HOW_LONG, ("how long",), "9", "how long it will take"),
    Words(Ask.PACE, ("keep time",), ";", "says when the row should be done, or no longer"),
    Words(Ask.NOTE, ("note this",), "/", "a note to this row"),
    Words(Ask.READ_NOTES, ("read my notes",), "0", "reads the notes"),
    Words(Ask.PATTERN_NOTES, ("opening notes",), "*", "what the pattern says first"),
    Words(Ask.MATERIALS, ("materials",), "j", "what you need"),
    Words(Ask.GAUGE, ("my gauge",), "[", "what your gauge means"),
    Words(Ask.YARN_LEFT, ("how much yarn",), "]", "yarn worked and still to go"),
    Words(Ask.START_OVER, ("start over again",), "end", "from the very beginning"),
    Words(Ask.YES, ("yes",), "y", "yes"),
    Words(Ask.NO, ("no",), "n", "no"),
    Words(Ask.BY_ONE, ("every stitch",), "<", "counts every stitch"),
    Words(Ask.BY_FIVE, ("every five",), "=", "counts every five stitches"),
    Words(Ask.BY_TEN, ("every ten",), ">", "counts every ten stitches"),
    Words(Ask.HUSH, ("hush",), "escape", "stops speaking"),
)
PEDAL = {
    "pagedown": Ask.NEXT,
    "right": Ask.NEXT,
    "enter": Ask.NEXT,
    "pageup": Ask.BACK,
    "left": Ask.BACK,
}
"""Keys that presenters and pedals send."""

BY_ASK = {words.ask: words for words in TABLE}
MAIN = (
    Ask.NEXT, Ask.AGAIN, Ask.BACK, Ask.WHERE, Ask.HOW_MANY, Ask.AFTER_THIS, Ask.WHOLE_ROW,
    Ask.GO_TO_ROW, Ask.GO_TO_PART, Ask.ROW_DONE, Ask.PAUSE, Ask.SLOWER, Ask.FASTER, Ask.LOUDER,
    Ask.SOFTER, Ask.WHAT_CAN_I_SAY, Ask.STOP_LISTENING, Ask.FINISH_TODAY, Ask.UNDO, Ask.I_HAVE,
    Ask.MORE, Ask.HUSH,
)  # fmt: skip
"""Requests that can be said while a step waits."""

MORE = (
    Ask.AS_WRITTEN, Ask.SPELL, Ask.EXPLAIN, Ask.WHICH_STITCH, Ask.SMALLER_STEPS,
    Ask.BIGGER_STEPS, Ask.FULL_WORDS,
    Ask.SHORT_WORDS, Ask.COUNT_ONLY, Ask.COUNT_ALONG, Ask.ROW_START, Ask.RIP_BACK, Ask.MARK,
    Ask.LIFELINE, Ask.GO_TO_MARK, Ask.LAST_TIME, Ask.HOW_LONG, Ask.PACE, Ask.NOTE,
    Ask.READ_NOTES,
    Ask.PATTERN_NOTES, Ask.MATERIALS, Ask.GAUGE, Ask.YARN_LEFT, Ask.START_OVER,
)  # fmt: skip
"""Requests behind "more words"."""


def phrases_of(asks: tuple[Ask, ...]) -> tuple[str, ...]:
    """Every phrase of these requests, in their order."""
    return tuple(phrase for ask in asks for phrase in BY_ASK[ask].phrases)


def ask_of(phrase: str) -> Ask | None:
    """The request a phrase stands for."""
    return next((words.ask for words in TABLE if phrase in words.phrases), None)


def ask_of_key(key: str, own: Mapping[str, str] | None = None) -> Ask | None:
    """The request a key stands for; own: the maker's keys, key -> the request's stable name."""
    if own and key in own:
        return next((ask for ask in Ask if ask.value == own[key]), None)
    if key in PEDAL:
        return PEDAL[key]
    return next((words.ask for words in TABLE if words.key == key), None)
