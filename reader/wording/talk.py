"""Saying + state -> the sentence that is spoken; reader.wording.say words steps and counts."""

from __future__ import annotations

import re
from collections.abc import Callable

from reader.commands.numbers import read_number, say_figures
from reader.commands.phrases import BY_ASK, MORE, TABLE, ask_of
from reader.plan import find
from reader.plan.step import RowKind
from reader.session.effects import Saying
from reader.session.state import State, Words
from reader.wording import need_words, place_words
from reader.wording.fixed import FIXED
from reader.wording.gathering import say_item, say_missing
from reader.wording.howto import say_how, say_how_named, say_how_step
from reader.wording.need_words import reading_of
from reader.wording.numbers import number_words
from reader.wording.place_words import complete, noun_of, read, row_of, spoken_place, step_of
from reader.wording.say import Length, read_out, say_part, say_row, say_written, sentence, spell
from reader.wording.search_words import found_told, stop_asked


def talk(sayings: tuple[Saying, ...], state: State) -> str:
    """The spoken text of several sayings."""
    return " ".join(words for one in sayings if (words := sentence_of(one, state).strip()))


def sentence_of(one: Saying, state: State) -> str:
    """The spoken words of one saying."""
    if one.kind in FIXED:
        return FIXED[one.kind]
    return WORDED[one.kind](one, state)


def _again(one: Saying, state: State) -> str:
    counts = state.tastes.words is Words.COUNT
    length = Length.COUNT_ONLY if counts else Length.FULL
    return read_out(step_of(one, state), row_of(one, state), length)


def _after(one: Saying, state: State) -> str:
    return "After this: " + read_out(step_of(one, state), row_of(one, state), Length.FULL)


def _written(one: Saying, state: State) -> str:
    """The step's words; those of the row once, where the step holds several groups of it."""
    step, row = step_of(one, state), row_of(one, state)
    return (step.written if step.covers == 1 else "") or row.written


def _all_done(one: Saying, state: State) -> str:
    if one.words == "again":
        return "The whole piece is done. Start over again makes another; finish for today ends."
    ended = complete(one, state) if row_of(one, state).kind is RowKind.WORK else ""
    return f"{ended} That was the last step. The whole piece is done, and kept as finished."


def _warnings(one: Saying, state: State) -> str:
    many = one.number or 0
    things = "One thing" if many == 1 else sentence(f"{number_words(many)} things")[:-1]
    return f"{things} in this pattern may be wrong; each is said where it comes."


def _can_say(one: Saying, state: State) -> str:
    """The words that are taught, one for each request; numbers are told as numbers."""
    asks = [ask for phrase in one.more if (ask := ask_of(phrase))]
    called = state.tastes.called
    taught = [called(BY_ASK[ask].phrases[0]) for ask in dict.fromkeys(asks)]
    others = [phrase for phrase in one.more if ask_of(phrase) is None and phrase not in NUMERALS]
    numbers = ["a number"] if any(phrase in NUMERALS for phrase in one.more) else []
    first = f"Before each, say {state.tastes.attention}. " if state.tastes.attention else ""
    rest = "" if set(asks) >= set(MORE) else " More words opens the rest."
    plain = "" if len(taught) < 12 else rest
    return f"{first}You can say: {', '.join([*others, *numbers, *taught])}.{plain}"


def _numerals() -> frozenset[str]:
    from reader.commands.numbers import say_number

    return frozenset(say_number(number) for number in range(1000))


NUMERALS = _numerals()
"""Every number as it is heard."""


def _notes(one: Saying, state: State) -> str:
    told = [
        f"At {spoken_place(Saying('notes', note.place), state)}: {sentence(note.words)}"
        if note.words
        else f"At {spoken_place(Saying('notes', note.place), state)}: a note in sound."
        for note in reversed(state.notes[-MOST_NOTES_READ:])
    ]
    return "Your notes, the latest first. " + " ".join(told)


def _warning(one: Saying, state: State) -> str:
    """What may be wrong, without the row's own words, since the row is read next."""
    plain = re.sub(r"(?::\s*)?“[^”]*”", "", one.words).replace(" .", ".").replace("..", ".")
    return "Look out: " + say_written(plain, row_of(one, state).reading)


def _note_kept(one: Saying, state: State) -> str:
    return f"The note is kept: {sentence(one.words)}" if one.words else "The note is kept."


def _note_here(one: Saying, state: State) -> str:
    if not one.words:
        return "A note of yours in sound follows."
    return f"Your note here: {sentence(one.words)}"


def _row_named(one: Saying, state: State) -> str:
    return f"{noun_of(one, state)} {number_words(one.number or 0)}"


def _number_unasked(one: Saying, state: State) -> str:
    """What a number alone could mean, where none was asked for."""
    number, noun = number_words(one.number or 0), noun_of(one, state)
    told = f"I asked for no number. Say go to {noun} {number}, or I have {number}."
    key = next((words for words in TABLE if words.key == str(one.number)), None)
    return f"{told} Typed, key {number} is: {key.does}." if key else told


def _one_or_other(one: Saying, state: State) -> str:
    first, second = one.more
    numbers = [number for said in one.more if (number := read_number(said)) is not None]
    if len(numbers) == 2 and min(numbers) > 9:
        ways = ", or ".join(say_figures(number) for number in numbers)
    else:
        ways = "the first, or the second"
    return f"{sentence(first)[:-1]}, or {second}? Say {ways}."


def _skipped(one: Saying, state: State) -> str:
    expected = number_words(int(one.words))
    return f"You said {number_words(one.number or 0)}; I had expected {expected}."


def _counting(one: Saying, state: State) -> str:
    each = {1: "for each stitch", 5: "every five stitches", 10: "every ten stitches"}
    how = each.get(state.tally_by, "for each stitch")
    return f"Counting along from {number_words(one.number or 0)}. Say the number, or next, {how}."


def _which_part(one: Saying, state: State) -> str:
    named = [(at, name) for at, name in enumerate(one.more, start=1) if name]
    read = [f"{number_words(at)}, {name}" for at, name in named[:MOST_PARTS_READ]]
    more = "; and so on" if len(named) > MOST_PARTS_READ else ""
    return f"Which part? Say its name or number: {'; '.join(read)}{more}."


MOST_NOTES_READ = 5
MOST_PARTS_READ = 12
NOT_EXPLAINED = "I have no words for how that is made. As written says what the pattern has."
VOICE = {"slower": "Slower.", "faster": "Faster.", "louder": "Louder.", "softer": "Softer."}
WORDS_NOW = {
    "full": "Full words.",
    "short": "Short words.",
    "count only": "Only the counts.",
}

WORDED: dict[str, Callable[[Saying, State], str]] = {
    "step": read,
    "step again": _again,
    "after": _after,
    "row": lambda one, state: say_row(row_of(one, state), Length.FULL),
    "written": lambda one, state: (
        "Written: " + say_written(_written(one, state), row_of(one, state).reading)
    ),
    "spelled": lambda one, state: spell(_written(one, state)),
    "explained": lambda one, state: (
        (
            say_how(one.words, row_of(one, state).reading)
            if one.words
            else say_how_step(step_of(one, state), row_of(one, state))
        )
        or NOT_EXPLAINED
    ),
    "stitch explained": lambda one, state: (
        say_how_named(one.words, one.more[0], row_of(one, state).reading) or NOT_EXPLAINED
    ),
    "which stitch": lambda one, state: f"Which one? This pattern has: {', '.join(one.more)}.",
    "part": lambda one, state: say_part(find.part_at(state.plan, one.place or state.place)),
    "notice": lambda one, state: say_written(one.words, row_of(one, state).reading),
    "warning": _warning,
    "pattern note": lambda one, state: say_written(one.words, reading_of(state)),
    "caution": lambda one, state: one.words,
    "row complete": complete,
    "where": place_words.where,
    "how many": place_words.how_many,
    "all done": _all_done,
    "compared": place_words.compared,
    "right before": place_words.right_before,
    "in groups": place_words.in_groups,
    "right so far": place_words.right_so_far,
    "confirm count": lambda one, state: (
        f"{sentence(number_words(one.number or 0))[:-1]}, is that right? Yes or no."
    ),
    "count here": stop_asked,
    "slip found": found_told,
    "how long": place_words.how_long,
    "row due": place_words.row_due,
    "long repeat": lambda one, state: (
        f"You need not say next at each pass; say row done at the {noun_of(one, state)}'s end."
    ),
    "welcome": place_words.welcome,
    "welcome back": place_words.welcome_back,
    "warnings": _warnings,
    "can say": _can_say,
    "last done": place_words.last_done,
    "finished": place_words.finished,
    "notes": _notes,
    "note kept": _note_kept,
    "note here": _note_here,
    "which row": lambda one, state: f"Which {noun_of(one, state)}?",
    "rip to which": lambda one, state: f"Rip back to the start of which {noun_of(one, state)}?",
    "which part": _which_part,
    "which mark": lambda one, state: f"Which one? There are: {', '.join(one.more)}.",
    "no such row": place_words.rows_there,
    "number unasked": _number_unasked,
    "one or other": _one_or_other,
    "row ahead": lambda one, state: (
        f"{sentence(_row_named(one, state))[:-1]} is still ahead; ripping back goes back."
    ),
    "confirm row": lambda one, state: (
        f"{sentence(_row_named(one, state))[:-1]}, is that right? Yes or no."
    ),
    "confirm rip": lambda one, state: (
        f"Rip back to the start of {_row_named(one, state)}? Yes or no."
    ),
    "confirm rip to mark": lambda one, state: f"Rip back to {one.words}? Yes or no.",
    "ripped": place_words.ripped,
    "ripped to mark": lambda one, state: (
        f"Ripped back to {one.words}. {place_words.on_hand(one, state)}"
    ),
    "marked": lambda one, state: f"{sentence(one.words)[:-1]} is here. Give it a name, or say no.",
    "mark named": lambda one, state: f"It is called {one.words}.",
    "at mark": lambda one, state: f"Back at {one.words}: {spoken_place(one, state)}.",
    "words": lambda one, state: WORDS_NOW[one.words],
    "voice": lambda one, state: VOICE[one.words],
    "grain": lambda one, state: f"Now by {one.words}.",
    "grain limit": lambda one, state: f"It can't go further than {one.words}.",
    "counting": _counting,
    "skipped": _skipped,
    "said twice": lambda one, state: (
        f"{sentence(number_words(one.number or 0))[:-1]} was said already."
    ),
    "tally": place_words.tally,
    "gathering": need_words.gathering,
    "item": lambda one, state: say_item(state.plan.gather[one.number or 0], reading_of(state)),
    "item explained": need_words.item_explained,
    "grams asked": need_words.grams_asked,
    "lasts": need_words.lasts,
    "missing": lambda one, state: say_missing(state.plan, state.ticked, reading_of(state)),
    "gauge asked": need_words.gauge_asked,
    "gauge read": need_words.gauge_read,
    "gauge": need_words.gauge_told,
    "yarn": need_words.yarn_told,
    "question put otherwise": lambda one, state: _otherwise(one, state),
    "no such key": lambda one, state: f"{one.words} is no key of mine. F 1 has the keys.",
    "device lost": lambda one, state: one.words,
    "device back": lambda one, state: f"The {one.words} is back.",
}
"""Sayings with something of the moment in them."""


def _otherwise(one: Saying, state: State) -> str:
    """The open question in other words: what can be answered to it."""
    numbers = [phrase for phrase in one.more if phrase in NUMERALS]
    names = [phrase for phrase in one.more if phrase not in NUMERALS and ask_of(phrase) is None]
    if names:
        also = " Or its number." if numbers else ""
        return f"One of these: {', '.join(names)}.{also} Or no to leave it."
    if numbers:
        return f"Say a number from {numbers[0]} to {numbers[-1]}, or no to leave it."
    return "Yes does it, no leaves everything as it is."
