"""Saying + state -> the sentence that is spoken; steps and counts are worded by reader.wording.say."""

from __future__ import annotations

from collections.abc import Callable

from reader.commands.phrases import phrases_of
from reader.plan import find
from reader.plan.mismatch import compare
from reader.plan.pace import part_left_s, piece_left_s, row_left_s
from reader.plan.step import PlanRow, RowKind, Step
from reader.session.effects import Saying
from reader.session.state import State, Words
from reader.wording.gathering import say_gathering
from reader.wording.howto import say_how_step
from reader.wording.mismatch_words import say_choice, say_mismatch
from reader.wording.numbers import number_words
from reader.wording.say import (
    Length,
    read_out,
    say_count,
    say_label,
    say_part,
    say_passes,
    say_row,
    say_tally,
    say_written,
    spell,
)
from reader.wording.time_words import say_time

LENGTH = {Words.FULL: Length.FULL, Words.SHORT: Length.SHORT, Words.COUNT: Length.COUNT_ONLY}


def talk(sayings: tuple[Saying, ...], state: State) -> str:
    """The spoken text of several sayings."""
    return " ".join(words for one in sayings if (words := sentence_of(one, state).strip()))


def sentence_of(one: Saying, state: State) -> str:
    """The spoken words of one saying."""
    if one.kind in PLAIN:
        return PLAIN[one.kind]
    return WORDED[one.kind](one, state)


def _row(one: Saying, state: State) -> PlanRow:
    return find.row_at(state.plan, one.place or state.place)


def _step(one: Saying, state: State) -> Step:
    return find.step_at(state.plan, one.place or state.place, state.tastes.grain)


def _noun(one: Saying, state: State) -> str:
    return "round" if _row(one, state).is_round else "row"


def _read(one: Saying, state: State) -> str:
    return read_out(_step(one, state), _row(one, state), LENGTH[state.tastes.words])


def _where(one: Saying, state: State) -> str:
    row, step = _row(one, state), _step(one, state)
    part = find.part_at(state.plan, one.place or state.place)
    depth = one.number or 1
    words = [say_part(part) if part.name else "", say_label(row) or say_written(row.written)]
    if step.passes:
        words.append(say_passes(step))
    elif len(row.groups) > 1 and step.covers < len(row.groups):
        at = (one.place or state.place).step + 1
        words.append(f"Step {number_words(at)} of {number_words(len(row.groups))}.")
    if depth > 1 or not step.passes:
        words.append(say_tally(step, row))
    if depth > 2:
        rows = len(part.rows)
        at = (one.place or state.place).row + 1
        words.append(
            f"{number_words(at)} of {number_words(rows)} in this part; part {number_words((one.place or state.place).part + 1)} of {number_words(len(state.plan.parts))}."
        )
    return " ".join(word for word in words if word)


def _how_many(one: Saying, state: State) -> str:
    row, step = _row(one, state), _step(one, state)
    passes = f" {say_passes(step)}" if step.passes else ""
    return (say_tally(step, row) or "Nothing is counted here.") + passes


def _complete(one: Saying, state: State) -> str:
    row = _row(one, state)
    noun = "Round" if row.is_round else "Row"
    count = say_count(row)
    return f"{noun} complete. {count}" if count else f"{noun} complete."


def _compared(one: Saying, state: State) -> str:
    found = compare(state.plan, one.place or state.place, one.number or 0)
    if found is None:
        return "I can't tell how many there should be here."
    noun = _noun(one, state)
    return say_mismatch(found, noun) + (
        "" if not found.difference else " " + say_choice(found, noun)
    )


def _how_long(one: Saying, state: State) -> str:
    place = one.place or state.place
    row = say_time(row_left_s(state.pace, state.plan, place))
    part = say_time(part_left_s(state.pace, state.plan, place))
    piece = say_time(piece_left_s(state.pace, state.plan, place))
    guess = "" if state.pace.known else "I don't know your pace yet; by a usual pace: "
    return (
        f"{guess}{row} for this {_noun(one, state)}, {part} for this part, {piece} for the whole."
    )


def _welcome_back(one: Saying, state: State) -> str:
    days = one.number or 0
    away = (
        ""
        if days < 1
        else "You were here yesterday. "
        if days == 1
        else f"It is {number_words(days)} days since you were here. "
    )
    size = f", size {state.plan.size}" if len(state.plan.sizes) > 1 else ""
    marks = (
        f" You have {number_words(len(state.marks))} mark{'s' if len(state.marks) != 1 else ''}."
        if state.marks
        else ""
    )
    return f"Welcome back to {say_written(state.plan.title).rstrip('.') or 'your pattern'}{size}. {away}You are at: {_where(one, state)}{marks}"


def _can_say(one: Saying, state: State) -> str:
    shown = [phrase for phrase in one.more if not phrase.replace(" ", "").isdigit()][:24]
    return "You can say: " + ", ".join(shown) + "."


def _last_done(one: Saying, state: State) -> str:
    if one.place is None:
        return "Nothing has been done yet today."
    return "Last you did: " + read_out(
        find.step_at(state.plan, one.place, state.tastes.grain),
        find.row_at(state.plan, one.place),
        Length.FULL,
    )


def _finished(one: Saying, state: State) -> str:
    return f"Everything is kept. You stopped at: {_where(one, state)} Until next time."


def _notes(one: Saying, state: State) -> str:
    if not one.more:
        return "You have no notes."
    return "Your notes, the latest first: " + ". ".join(one.more) + "."


def _row_numbers(one: Saying, state: State) -> str:
    numbers = find.row_numbers(state.plan, (one.place or state.place).part)
    return (
        f"There is no {_noun(one, state)} {number_words(one.number or 0)} here; they go from {number_words(numbers[0])} to {number_words(numbers[-1])}."
        if numbers
        else "The rows here have no numbers."
    )


PLAIN: dict[str, str] = {
    "paused": "Paused. Say carry on when you are ready.",
    "still paused": "Still paused; say carry on to go on.",
    "deaf": "I have stopped listening. Keys work; press c and I listen again.",
    "carry on": "Carrying on.",
    "at start": "This is the very first step.",
    "nothing to undo": "There is no move to take back from the last ten seconds.",
    "undone": "Taken back.",
    "no mark": "There is no mark yet. Say more words, then mark this place.",
    "last step": "Nothing comes after this; it is the last step.",
    "no numbers": "The rows of this part have no numbers. Say next or go back.",
    "which part": "Which part? Say its name.",
    "one part": "This pattern has only one part.",
    "more words": "The other words. Say what you want, or no.",
    "left alone": "All right, as it was.",
    "nothing to gather": "The pattern names no materials.",
    "note begins": "Say your note now.",
    "missed often": "I did not catch that three times. Every command is also on a key; the help is on F 1.",
    "rest": "You have been at it a good while. Hands and eyes like a short rest. If something hurts and does not pass, see somebody qualified.",
}
"""Sayings that are always the same words."""

WORDED: dict[str, Callable[[Saying, State], str]] = {
    "step": _read,
    "step again": lambda one, state: read_out(
        _step(one, state),
        _row(one, state),
        Length.FULL if state.tastes.words is not Words.COUNT else Length.COUNT_ONLY,
    ),
    "after": lambda one, state: (
        "After this: " + read_out(_step(one, state), _row(one, state), Length.FULL)
    ),
    "row": lambda one, state: say_row(_row(one, state), Length.FULL),
    "written": lambda one, state: (
        "Written: " + say_written(_step(one, state).written or _row(one, state).written)
    ),
    "spelled": lambda one, state: spell(_step(one, state).written or _row(one, state).written),
    "explained": lambda one, state: say_how_step(_step(one, state), _row(one, state)),
    "part": lambda one, state: say_part(find.part_at(state.plan, one.place or state.place)),
    "notice": lambda one, state: one.words,
    "warning": lambda one, state: "Look out: " + one.words,
    "caution": lambda one, state: one.words,
    "row complete": _complete,
    "where": _where,
    "how many": _how_many,
    "all done": lambda one, state: (
        (_complete(one, state) + " " if _row(one, state).kind is RowKind.WORK else "")
        + "That was the last step. The whole piece is done."
    ),
    "compared": _compared,
    "count unknown": lambda one, state: (
        "I can't tell how many there should be here, so there is nothing to compare."
    ),
    "how long": _how_long,
    "welcome": lambda one, state: (
        f"{say_written(state.plan.title).rstrip('.') or 'A pattern'}. Say next when a step is done; what can I say tells you the words."
    ),
    "welcome back": _welcome_back,
    "warnings": lambda one, state: (
        f"{number_words(one.number or 0)} thing{'s' if one.number != 1 else ''} in this pattern may be wrong; I say each where it comes.".capitalize()
    ),
    "can say": _can_say,
    "last done": _last_done,
    "finished": _finished,
    "notes": _notes,
    "note kept": lambda one, state: (
        "The note is kept." + (f" I heard: {one.words}." if one.words else "")
    ),
    "which row": lambda one, state: f"Which {_noun(one, state)}?",
    "rip to which": lambda one, state: f"Rip back to the start of which {_noun(one, state)}?",
    "no such row": _row_numbers,
    "going to row": lambda one, state: (
        f"{_noun(one, state).capitalize()} {number_words(one.number or 0)}."
    ),
    "confirm row": lambda one, state: (
        f"{_noun(one, state).capitalize()} {number_words(one.number or 0)}, is that right? Yes or no."
    ),
    "confirm rip": lambda one, state: (
        f"Rip back to the start of {_noun(one, state)} {number_words(one.number or 0)}? Yes or no."
    ),
    "ripped": lambda one, state: (
        f"Ripped back to {_noun(one, state)} {number_words(one.number or 0)}. "
        + _on_needles(one, state)
    ),
    "confirm finish": lambda one, state: "Finish for today? Yes or no.",
    "confirm start over": lambda one, state: "Start again from the very first step? Yes or no.",
    "how many have you": lambda one, state: "How many stitches have you?",
    "marked": lambda one, state: f"{one.words.capitalize()} is here.",
    "at mark": lambda one, state: f"Back at {one.words}.",
    "words": lambda one, state: {
        "full": "Full words.",
        "short": "Short words.",
        "count only": "Only the counts.",
    }.get(one.words, one.words),
    "voice": lambda one, state: {
        "slower": "Slower.",
        "faster": "Faster.",
        "louder": "Louder.",
        "softer": "Softer.",
    }.get(one.words, ""),
    "grain": lambda one, state: f"Now by {one.words}.",
    "grain limit": lambda one, state: f"It can't go further than {one.words}.",
    "counting": lambda one, state: (
        f"Counting along from {number_words(one.number or 0)}. Say the number, or next, for each stitch."
    ),
    "skipped": lambda one, state: (
        f"You said {number_words(one.number or 0)}; I had expected {number_words(int(one.words))}."
    ),
    "said twice": lambda one, state: (
        f"{number_words(one.number or 0)} was said already.".capitalize()
    ),
    "tally full": lambda one, state: _complete(one, state),
    "gathering": lambda one, state: " ".join(say_gathering(state.plan, _row(one, state).reading)),
    "device lost": lambda one, state: one.words,
    "device back": lambda one, state: f"The {one.words} is back.",
}
"""Sayings with something of the moment in them."""


def _on_needles(one: Saying, state: State) -> str:
    row = _row(one, state)
    if row.count_before is None:
        return ""
    return f"You should have {number_words(row.count_before)} stitches to work into."


def taught() -> tuple[str, ...]:
    """Every phrase the program knows, for a table of help."""
    from reader.commands.phrases import TABLE

    return phrases_of(tuple(words.ask for words in TABLE))
