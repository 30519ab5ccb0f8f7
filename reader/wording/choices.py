"""Sayings of a choice before the work -> the sentences that are spoken."""

from __future__ import annotations

from reader.session.choosing import LETTERS, Choosing
from reader.session.effects import Saying
from reader.wording.numbers import number_words
from reader.wording.say import say_written, sentence
from reader.wording.shown import Shown
from reader.wording.speak import speak

MOST_READ = 8
"""Choices read out at once; the rest are there by number. Our own choice."""


def talk_choice(sayings: tuple[Saying, ...], state: Choosing) -> str:
    """The spoken text of several sayings."""
    return " ".join(_sentence_of(one, state) for one in sayings)


def shown_choice(state: Choosing, answer: str) -> Shown:
    """What a screen shows of a choice: the choices with their numbers, or the one to be confirmed.

    answer: what the program said last.
    """
    if state.at is not None:
        name = state.names[state.at]
        ready = (("y", "yes"), ("n", "no"))
        return Shown(
            state.title, "", "", step=name, brief=name, heard=state.heard, question=answer,
            ready=ready,
        )  # fmt: skip
    numbered = [f"{at}: {name}." for at, name in enumerate(state.names, start=1)]
    words = " ".join(numbered)
    ready = (("enter", "after the number, chooses it"), ("a", "the question again"))
    return Shown(
        state.title, "", "", step=words, brief=words, heard=state.heard, answer=answer, ready=ready
    )


def _sentence_of(one: Saying, state: Choosing) -> str:
    if one.kind == "which size":
        many = number_words(len(one.more))
        return f"{_title(state)} comes in {many} sizes: {_listed(one.more)}. Which one do you make?"
    if one.kind == "which project":
        many = number_words(len(one.more))
        return f"You have {many} pieces on the go: {_numbered(one.more)} Which one?"
    if one.kind == "confirm size":
        return (
            f"{sentence(_name(one.words))} Only its numbers are said from now on. "
            "Is that right? Yes or no."
        )
    if one.kind == "confirm project":
        return f"{sentence(_name(one.words))} Is that right? Yes or no."
    if one.kind.startswith("no such"):
        return f"That is not one of them. There are: {_listed(one.more)}. Or say a number."
    if one.kind == "choose by number":
        return f"Say a number: {_numbered(one.more)}"
    if one.kind == "missed a choice":
        return (
            "I did not catch that three times. Press the number of the one you want, "
            "then enter, then y for yes."
        )
    return one.words


def _title(state: Choosing) -> str:
    return say_written(state.title).rstrip(".") or "This pattern"


def _name(name: str) -> str:
    """The name as it is said; the letters of a size as what they stand for."""
    return LETTERS.get(name.strip().lower(), "") or speak(name)


def _listed(names: tuple[str, ...]) -> str:
    """ "small, medium and large"; sizes are all read, since each is a choice."""
    said = [_name(name) for name in names]
    return f"{', '.join(said[:-1])} and {said[-1]}" if len(said) > 1 else "".join(said)


def _numbered(names: tuple[str, ...]) -> str:
    """ "One, the lighthouse. Two, the pennant."; long lists are cut, and say so."""
    read = [
        sentence(f"{number_words(at)}, {_name(name)}")
        for at, name in enumerate(names[:MOST_READ], start=1)
    ]
    rest = len(names) - MOST_READ
    return " ".join([*read, *([f"And {number_words(rest)} more."] if rest > 0 else [])])
