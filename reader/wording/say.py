"""Steps, rows and written words of a plan in, the sentences that are spoken for them out."""

from __future__ import annotations

import re
from enum import Enum

from reader.counts.worked import Pass
from reader.plan.find import one_of
from reader.plan.step import PlanPart, PlanRow, Reading, RowKind, Step
from reader.wording.fold import folded
from reader.wording.numbers import number_words, ordinal_words
from reader.wording.speak import PLAIN, speak
from reader.wording.stitch_words import plural, singular, word_for


class Length(Enum):
    """How many words a step is said with."""

    FULL = "full"
    SHORT = "short"
    COUNT_ONLY = "count only"


def say_step(step: Step, row: PlanRow, length: Length = Length.FULL) -> str:
    """One sentence for a step: what the hands do, and nothing about where that is.

    FULL says every word, SHORT the fewest that still say it, COUNT_ONLY the stitches there are
    after it; a step
    that makes no stitch is then said short. What could not be read begins "As written".
    """
    if length is Length.COUNT_ONLY and step.done_after != step.done and step.moves:
        return sentence(_so_far(step.done_after, step.total))
    if step.moves:
        return sentence(folded(step.moves, row.reading, length is not Length.FULL))
    said = speak(step.written, row.reading)
    return sentence(f"as written: {said}" if step.unread else said)


def say_row(row: PlanRow, length: Length = Length.FULL) -> str:
    """A whole row: its label, all its steps with repeats as "so many times", and what it ends
    with.
    """
    label = say_label(row)
    count = say_count(row)
    if length is Length.COUNT_ONLY:
        return " ".join(piece for piece in (label, count) if piece)
    if not row.groups[0].moves:
        return " ".join(
            piece for piece in (label, say_step(row.groups[0], row, length), count) if piece
        )
    moves = tuple(move for step in row.groups for move in step.moves)
    body = sentence(folded(moves, row.reading, length is Length.SHORT))
    return " ".join(piece for piece in (label, body, count) if piece)


def read_out(step: Step, row: PlanRow, length: Length = Length.FULL) -> str:
    """A step as it is read when the maker comes to it: the row's label where one begins, the
    step, its pass.

    The second pass of a repeat and those after it are said short, because the first was just
    said in full.
    """
    label = say_label(row) if step.starts_row and row.kind is RowKind.WORK else ""
    again = bool(step.passes) and step.passes[-1].number > 1 and step.covers == 1
    if again and length is Length.FULL:
        length = Length.SHORT
    turn = "" if length is Length.COUNT_ONLY else say_pass(step, brief=again)
    return " ".join(piece for piece in (label, say_step(step, row, length), turn) if piece)


def say_label(row: PlanRow) -> str:
    """ "Round four, right side."; "" for a row without a label."""
    if not row.label:
        return ""
    side = _SIDES.get(row.side.lower(), row.side.lower())
    label = speak(row.label, row.reading)
    return sentence(f"{label}, {side}" if side and side not in label.lower() else label)


_SIDES = {"rs": "right side", "ws": "wrong side", "right": "right side", "wrong": "wrong side"}


def say_part(part: PlanPart) -> str:
    """ "Sleeve, the second of two, as the first." of "Sleeves, make 2"; the program's own word
    where a part has no name.
    """
    name = speak(one_of(part.name) if part.copies > 1 else part.name) or "the piece"
    if part.copies < 2:
        return sentence(name)
    which = f"{name}, the {ordinal_words(part.copy)} of {number_words(part.copies)}"
    return sentence(which if part.copy == 1 else f"{which}, worked as the first")


def say_pass(step: Step, brief: bool = False) -> str:
    """ "Pass two of six.", "Last pass of six.", for the innermost repeat; "" outside repeats.

    brief: "Two of six.", "Last of six.".
    """
    if not step.passes:
        return ""
    words = _pass_words(step.passes[-1])
    return sentence(words.replace("pass ", "", 1) if brief else words)


def say_passes(step: Step) -> str:
    """Every repeat the step stands in, outermost first: "pass two of four, and in it pass one of
    three".
    """
    return sentence(", and in it ".join(_pass_words(one) for one in step.passes))


def _pass_words(one: Pass) -> str:
    if one.of is None:
        return f"pass {number_words(one.number)}"
    if one.number == one.of and one.of > 1:
        return f"last pass of {number_words(one.of)}"
    return f"pass {number_words(one.number)} of {number_words(one.of)}"


def say_count(row: PlanRow) -> str:
    """ "You should have twenty-four stitches.", "You should have eleven V stitches, twenty-four
    stitches in all."; "" where the count is unknown or nothing is counted.
    """
    if row.count is None:
        return ""
    if row.count == 0:
        return "No stitches are left." if row.count_before else ""
    stitches = counted(row.count, row.of, row.reading)
    if row.groups_made is not None:
        return sentence(f"you should have {groups(row, row.groups_made)}, {stitches} in all")
    return sentence(f"you should have {stitches}")


def groups(row: PlanRow, number: int) -> str:
    """So many of the groups that a row is counted in: "eleven V stitches"."""
    return counted(number, row.group, row.reading)


def say_tally(step: Step, row: PlanRow) -> str:
    """What is done before this step, what is left and the total; "" outside worked rows.

    Where the steps do not add up to the row's count, what is left is not told.
    """
    of = row.of
    if row.kind is not RowKind.WORK:
        return ""
    if step.total is None:
        told = f"{counted(step.done, of, row.reading)} done; "
        if row.count is None:
            return sentence(f"{told}I can't tell how many there should be")
        noun = "round" if row.is_round else "row"
        return sentence(f"{told}the {noun} should end with {counted(row.count, of, row.reading)}")
    left = step.total - step.done
    if left <= 0:
        return sentence(f"all {counted(step.total, of, row.reading)} done")
    total = counted(step.total, of, row.reading)
    return sentence(f"{number_words(step.done)} done, {number_words(left)} left, of {total}")


def say_written(text: str, reading: Reading = PLAIN) -> str:
    """Words of the pattern in their own order, every short form and symbol as words, as a
    sentence.
    """
    return sentence(speak(text, reading))


_NAMES = {
    "*": "star", "(": "open bracket", ")": "close bracket", "[": "open square bracket",
    "]": "close square bracket", ",": "comma", ".": "full stop", ";": "semicolon",
    ":": "colon", "-": "dash", "–": "dash", "—": "dash", "/": "slash", "+": "plus",
    "=": "equals", "#": "number sign", "&": "and", '"': "inch mark", "'": "apostrophe",
    "½": "one half", "¼": "one quarter", "¾": "three quarters", "×": "times",
    "?": "question mark", "!": "exclamation mark",
}  # fmt: skip


def spell(text: str) -> str:
    """The characters one by one: "s, c, two, t, o, g"; capitals are named, a space is a pause."""
    words = []
    for piece in re.findall(r"\d+|\s+|.", text):
        if piece.isspace():
            words.append("space")
        elif piece.isdigit():
            words.append(number_words(int(piece)))
        elif piece.isalpha() and piece.isupper():
            words.append(f"capital {piece}")
        else:
            words.append(_NAMES.get(piece, piece))
    return ", ".join(words)


def counted(number: int, of: str = "", reading: Reading = PLAIN) -> str:
    """A number with what is counted: "twenty-four stitches", "one stitch", "five shells", "six
    single crochet".
    """
    thing = word_for(of, reading) or speak(of, reading) or "stitch"
    single = singular(thing)
    return f"{number_words(number)} {single if number == 1 else plural(single)}"


def sentence(words: str) -> str:
    """The words with a capital at each beginning and a full stop; "" for no words."""
    plain = words.strip(" ,;")
    if not plain:
        return ""
    plain = re.sub(r"(^|[.!?] )([a-z])", lambda m: m[1] + m[2].upper(), plain)
    return plain if plain[-1] in ".!?:" else f"{plain}."


def _so_far(done: int, total: int | None) -> str:
    if total is None:
        return f"to {number_words(done)}"
    return f"{number_words(done)} of {number_words(total)}"
