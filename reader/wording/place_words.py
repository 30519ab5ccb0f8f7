"""Where the work is, what is done and what is left -> the sentences that are spoken for it."""

from __future__ import annotations

import re

from reader.plan import find
from reader.plan.mismatch import compare
from reader.plan.pace import part_left_s, piece_left_s, row_left_s, seconds_a_stitch
from reader.plan.place import Place
from reader.plan.step import PlanRow, Reading, RowKind, Step
from reader.session.answering import last_deed
from reader.session.choosing import LETTERS
from reader.session.effects import Saying
from reader.session.state import State, Words
from reader.wording.mismatch_words import say_choice, say_mismatch
from reader.wording.numbers import number_words
from reader.wording.say import (
    Length,
    counted,
    groups,
    read_out,
    say_count,
    say_label,
    say_part,
    say_passes,
    say_tally,
    say_written,
    sentence,
)
from reader.wording.speak import speak
from reader.wording.time_words import say_time

LENGTH = {Words.FULL: Length.FULL, Words.SHORT: Length.SHORT, Words.COUNT: Length.COUNT_ONLY}
_SIDE = re.compile(r", (?:right|wrong) side$")
LONG_AWAY_DAYS = 21
"""Days after which a recap tells everything. Our own choice."""


def row_of(one: Saying, state: State) -> PlanRow:
    """The row a saying speaks of."""
    return find.row_at(state.plan, one.place or state.place)


def step_of(one: Saying, state: State) -> Step:
    """The step a saying speaks of, at the maker's grain."""
    return find.step_at(state.plan, one.place or state.place, state.tastes.grain)


def noun_of(one: Saying, state: State) -> str:
    """ "round" or "row"."""
    return "round" if row_of(one, state).is_round else "row"


def read(one: Saying, state: State) -> str:
    """The step as it is read on coming to it."""
    return read_out(step_of(one, state), row_of(one, state), LENGTH[state.tastes.words])


def where(one: Saying, state: State) -> str:
    """Part, row and pass; deeper with the count, deepest with how much of the piece is done."""
    place, row, step = one.place or state.place, row_of(one, state), step_of(one, state)
    part = find.part_at(state.plan, place)
    depth = one.number or 1
    words = [
        say_part(part) if part.name else "",
        say_label(row) or say_written(row.written, row.reading),
    ]
    if row.number is None and sum(one.label == row.label for one in part.rows) > 1:
        # Two rows called "next row" would sound alike.
        words.append(sentence(f"{_of(place.row, len(part.rows))} in this part"))
    group = row.groups[place.step]
    if step.passes:
        words.append(say_passes(step))
    elif place.step and group.passes:
        # A bigger step holds several passes; the work stands in one of them all the same.
        words.append(say_passes(group))
    elif len(row.groups) > 1 and step.covers < len(row.groups):
        words.append(f"Step {_of(place.step, len(row.groups))}.")
    if depth > 1 or not step.passes:
        words.append(say_tally(step, row))
    if depth > 2:
        words.append(_of_the_whole(place, state))
    return " ".join(word for word in words if word)


def _of_the_whole(place: Place, state: State) -> str:
    """ "Three of six rounds of this part are done; part two of eight."."""
    part = find.part_at(state.plan, place)
    worked = [at for at, row in enumerate(part.rows) if row.kind is RowKind.WORK]
    noun = "rounds" if find.row_at(state.plan, place).is_round else "rows"
    done = sum(at < place.row for at in worked)
    share = f"{sentence(number_words(done))[:-1]} of {number_words(len(worked))} {noun}"
    return f"{share} of this part are done; part {_of(place.part, len(state.plan.parts))}."


def _of(index: int, many: int) -> str:
    return f"{number_words(index + 1)} of {number_words(many)}"


def how_many(one: Saying, state: State) -> str:
    """Done, left and in all, then the passes."""
    step = step_of(one, state)
    passes = f" {say_passes(step)}" if step.passes else ""
    return (say_tally(step, row_of(one, state)) or "Nothing is counted here.") + passes


def tally(one: Saying, state: State) -> str:
    """What has been counted aloud, and what is left of the row."""
    counted, total = one.number or 0, row_of(one, state).count
    told = sentence(f"{number_words(counted)} counted")
    if total is None or counted > total:
        return told
    return sentence(f"{told[:-1]}, {number_words(total - counted)} left, of {number_words(total)}")


def complete(one: Saying, state: State) -> str:
    """The row is complete, and how many stitches there should be."""
    row = row_of(one, state)
    what = f"{noun_of(one, state).capitalize()} complete."
    if row.number is None and row.label:
        what = f"{_SIDE.sub('', say_label(row).rstrip('.'))} done."
    return f"{what} {say_count(row)}".strip()


def compared(one: Saying, state: State) -> str:
    """The maker's count beside the expected one, the likeliest slip, and what can be done.

    The row is named where it is not the present one.
    """
    place = one.place or state.place
    found = compare(state.plan, place, one.number or 0)
    if found is None:
        return "I can't tell how many there should be here."
    noun = noun_of(one, state)
    choice = say_choice(found, noun) if found.difference else ""
    other = find.row_start(place) != find.row_start(state.place)
    after = f"After {_label_inside(row_of(one, state))}. " if other else ""
    return f"{after}{say_mismatch(found, noun)} {choice}".strip()


def in_groups(one: Saying, state: State) -> str:
    """A count that the maker told in groups, beside the groups there should be."""
    row, number = row_of(one, state), one.number or 0
    there = find.row_start(one.place or state.place) != find.row_start(state.place)
    after = f" after {_label_inside(row)}" if there else ""
    if number == row.groups_made:
        return sentence(f"right: {groups(row, number)}{after}")
    right = row.groups_made or 0
    way = "too few" if number < right else "too many"
    off = number_words(abs(number - right))
    told = sentence(number_words(number))[:-1]
    return f"{told}: there should be {groups(row, right)}{after}, so {off} {way}."


def right_before(one: Saying, state: State) -> str:
    """A count that is right before the row is begun."""
    row = row_of(one, state)
    what = counted(one.number or 0, "", row.reading)
    return f"Right: {what}, before {_label_inside(row)}."


def _label_inside(row: PlanRow) -> str:
    """A row's label within a sentence, without its side."""
    label = _SIDE.sub("", say_label(row).rstrip("."))
    return label[:1].lower() + label[1:] if label else "this"


def right_so_far(one: Saying, state: State) -> str:
    """A count in mid-row that is right, before or after the present step."""
    step, row, number = step_of(one, state), row_of(one, state), one.number or 0
    when = "before" if number == step.done else "with"
    total = counted(row.count or 0, row.of, row.reading)
    return (
        f"{sentence(number_words(number))[:-1]} is right {when} this step; "
        f"the {noun_of(one, state)} ends with {total}."
    )


def how_long(one: Saying, state: State) -> str:
    """Time left of the row, the part and the piece, by the maker's own pace once it is known."""
    place = one.place or state.place
    row, part, piece = (
        say_time(left(state.pace, state.plan, place))
        for left in (row_left_s, part_left_s, piece_left_s)
    )
    guess = "" if state.pace.known else "I don't know your pace yet; by a usual pace: "
    each = _each_stitch(one, state)
    noun = noun_of(one, state)
    times = f"{row} for this {noun}, {part} for this part, {piece} in all"
    return f"{guess}{times}.{each}" if guess else f"{sentence(times)}{each}"


def _each_stitch(one: Saying, state: State) -> str:
    """ " Double crochet takes you about seven seconds.", for the step's most frequent stitch."""
    moves = [move for move in step_of(one, state).moves if move.stitch]
    move = max(moves, key=lambda move: move.makes, default=None)
    seconds = seconds_a_stitch(state.pace, move.stitch) if move else None
    name = speak(move.stitch, Reading(state.plan.craft)) if move else ""
    if not seconds or not name:
        return ""
    return f" {sentence(name)[:-1]} takes you about {number_words(max(1, round(seconds)))} seconds."


def row_due(one: Saying, state: State) -> str:
    """By the maker's pace the row should be about done."""
    count = say_count(row_of(one, state))
    return f"By your pace the {noun_of(one, state)} should be about done. {count}".strip()


def on_hand(one: Saying, state: State) -> str:
    """The stitches there should be before the row begins; "" where that is not known."""
    before = row_of(one, state).count_before
    if before is None:
        return ""
    return f"You should have {number_words(before)} stitches to work into."


def ripped(one: Saying, state: State) -> str:
    """Ripped back to a row, and what should be on hand there."""
    to = f"{noun_of(one, state)} {number_words(one.number or 0)}"
    return f"Ripped back to {to}. {on_hand(one, state)}"


def rows_there(one: Saying, state: State) -> str:
    """Which row numbers there are, where one was named that is not."""
    numbers = find.row_numbers(state.plan, (one.place or state.place).part)
    if not numbers:
        return "The rows here have no numbers."
    first, last = number_words(numbers[0]), number_words(numbers[-1])
    named = f"{noun_of(one, state)} {number_words(one.number or 0)}"
    return f"There is no {named} here; they go from {first} to {last}."


def last_done(one: Saying, state: State) -> str:
    """The step done last, with its part and row."""
    if one.place is None:
        return "Nothing has been done yet."
    row, part = row_of(one, state), find.part_at(state.plan, one.place)
    step = find.step_at(state.plan, one.place, state.tastes.grain)
    if one.words == "row-done":
        return f"Last you finished {spoken_place(one, state)}."
    at = "" if step.starts_row else say_label(row)
    name = say_part(part) if part.name and one.place.part != state.place.part else ""
    words = (name, at, read_out(step, row, Length.FULL))
    return "Last you did: " + " ".join(word for word in words if word)


def title(state: State, otherwise: str) -> str:
    """The pattern's title without its full stop."""
    return say_written(state.plan.title).rstrip(".") or otherwise


def size_said(state: State) -> str:
    """The size behind the title; "" where the pattern has one only."""
    size = state.plan.size
    return f", {LETTERS.get(size.strip().lower(), size)}" if len(state.plan.sizes) > 1 else ""


def welcome(one: Saying, state: State) -> str:
    """The pattern, and how to go on."""
    first = [phrase for phrase, there in (("materials", state.plan.gather),
             ("opening notes", state.plan.notes)) if there]  # fmt: skip
    more = f" First, if you like: {' or '.join(first)}." if first else ""
    how = "Say next at each step's end, or what can I say."
    return f"{title(state, 'A pattern')}{size_said(state)}. {how}{more}{_only_counts(state)}"


def _only_counts(state: State) -> str:
    """That no instructions are read, which was chosen another evening and may be forgotten."""
    if state.tastes.words is not Words.COUNT:
        return ""
    return " Only the counts are read; more words, then full words, reads everything."


def welcome_back(one: Saying, state: State) -> str:
    """The recap: short on the same day, with the last step after a day, with all after weeks."""
    days = one.number or 0
    name = f"{title(state, 'your pattern')}{size_said(state)}"
    words = [f"Welcome back to {name}.{_only_counts(state)}", _away(days)]
    if state.finished:
        return " ".join([*words, "The piece is finished. Start over again makes another."])
    if days >= LONG_AWAY_DAYS:
        words += _long_away(state)
    at = Saying("where", one.place, 3 if days >= LONG_AWAY_DAYS else 1)
    words.append(f"You are at: {where(at, state)}")
    if days >= 1:
        words += [_counted_on(one, state), "Now:"]
    return " ".join(word for word in words if word)


def _away(days: int) -> str:
    if days < 1:
        return ""
    if days == 1:
        return "You were here yesterday."
    return f"It is {number_words(days)} days since you were here."


def _long_away(state: State) -> list[str]:
    """What a maker has forgotten after weeks: tools, what is done, marks and notes."""
    tools = [item.text for item in state.plan.gather if item.kind in ("hook", "needle")]
    reading = find.row_at(state.plan, state.place).reading
    parts = state.place.part
    words = [f"You use: {speak(tool, reading)}." for tool in tools[:1]]
    if parts:
        done = "One part is" if parts == 1 else f"{sentence(number_words(parts))[:-1]} parts are"
        words.append(f"{done} done, of {number_words(len(state.plan.parts))}.")
    if state.marks:
        words.append(f"You have {_many(len(state.marks), 'mark')}.")
    if state.notes:
        words.append(f"You have {_many(len(state.notes), 'note')}; more words, read my notes.")
    return words


def _many(number: int, thing: str) -> str:
    return f"{number_words(number)} {thing}{'s' if number != 1 else ''}"


def _counted_on(one: Saying, state: State) -> str:
    """The last thing done, and the stitches to check before going on."""
    done = last_deed(state)
    last = last_done(done, state) if done.place is not None else ""
    return f"{last} {on_hand(one, state)}".strip()


def finished(one: Saying, state: State) -> str:
    """The end for today."""
    at = where(Saying("where", one.place), state)
    return f"Everything is kept. You stopped at: {at} Until next time."


def spoken_place(one: Saying, state: State) -> str:
    """Part and row in a few words: "tower, round four"."""
    part = find.part_at(state.plan, one.place or state.place)
    row = row_of(one, state)
    label = say_label(row) or say_written(row.written, row.reading)
    words = (say_part(part).rstrip(".") if part.name else "", label.rstrip("."))
    return ", ".join(word.lower() for word in words if word)
