"""Sayings of the swatch -> the sentences that are spoken."""

from __future__ import annotations

from collections.abc import Callable

from reader.session.effects import Saying
from reader.session.swatch import ROOM_S, Stage, Swatch
from reader.wording.numbers import number_words
from reader.wording.say import sentence
from reader.wording.shown import Shown

ROOM = {
    "dead microphone": (
        "I hear nothing at all, not even the room. If the microphone is muted, switch it on."
    ),
    "loud room": (
        "It is loud here; a film, a fan or music makes me miss words. Turn it down if you can, "
        "or come nearer to the microphone."
    ),
    "": "The room is quiet enough.",
}
SAMPLE = {
    "nothing": "I heard nothing.",
    "too loud": "That is too loud for the microphone. Turn it down, or move away a little.",
    "buried": "Your voice hardly stands out from the room. Come nearer, or make it quieter.",
    "faint": "I hear you faintly. Come nearer to the microphone, or turn it up.",
    "stray": "One of these was unlike the others.",
}
FIXED = {
    "nothing comes": (
        "The microphone gives no sound. It may be muted, or another one may be chosen; "
        "reader devices tries it. I stop here."
    ),
    "rename": (
        "Shall a command have a word or sound of your own, in any language? Say yes or no."
    ),
    "rename another": "Another one? Say yes or no.",
    "rename which": "Which command? Say it, or type it; no leaves it.",
    "rename which not": "That is no command. Say a command, such as next, or no.",
    "missed an answer": (
        "I did not catch that three times. Press y for yes, n for no, or q to end."
    ),
}


def talk_swatch(sayings: tuple[Saying, ...], state: Swatch) -> str:
    """The spoken text of several sayings."""
    return " ".join(_sentence_of(one) for one in sayings)


def shown_swatch(state: Swatch, answer: str) -> Shown:
    """What a screen shows: the word to be said, how many are left, the keys."""
    asked = state.stage in (Stage.OTHER, Stage.RENAME)
    yes_no = (("y", "yes"), ("n", "no")) if asked else (("space", "leaves this word out"),)
    ready = (*yes_no, ("a", "that again"), ("q", "ends and keeps what was learned"))
    step = state.better or state.word or "Your words"
    return Shown(
        "A swatch of your voice",
        "",
        "",
        step=step,
        brief=step,
        done=len(state.learned) if state.words else None,
        total=len(state.learned) + len(state.words) if state.words else None,
        counted="words",
        question=answer if asked else "",
        answer="" if asked else answer,
        ready=ready,
    )


def _sentence_of(one: Saying) -> str:
    return FIXED[one.kind] if one.kind in FIXED else WORDED[one.kind](one)


def _begins(one: Saying) -> str:
    many = number_words(one.number or 0)
    return (
        f"A swatch of your voice: {many} words, about two minutes. It stays on this machine. "
        f"First be quiet for {number_words(ROOM_S)} seconds, so that I hear the room."
    )


def _word(one: Saying) -> str:
    if one.more == ("first",):
        return f"Now say {one.words}, three times. Wait for the sound after each."
    return f"{sentence(one.words)[:-1]}, three times."


def _own_word(one: Saying) -> str:
    return f"Now say your own word or sound for {one.words}, three times."


def _sample(one: Saying) -> str:
    word = "".join(one.more)
    again = f"Say {word} once more" if word else "Once more"
    leave = ", or press space to leave it out." if one.words == "nothing" else ", please."
    return f"{SAMPLE[one.words]} {again}{leave}"


def _missed(one: Saying) -> str:
    better, like = one.more
    why = (
        f"As you say them, {one.words} sounds like {like}."
        if like
        else f"I would often miss {one.words} as you say it."
    )
    return f"{why} Shall the word for it be {better} instead? Say yes or no."


def _done(one: Saying) -> str:
    many = one.number or 0
    if not many:
        return "Nothing was learned."
    words = "one word" if many == 1 else f"{number_words(many)} words"
    return (
        f"I know {words} as you say them. They are kept beside your settings, on this machine "
        "only; reader swatch, two dashes, forget, deletes them."
    )


WORDED: dict[str, Callable[[Saying], str]] = {
    "swatch begins": _begins,
    "room": lambda one: ROOM[one.words],
    "say word": _word,
    "say own word": _own_word,
    "say other word": lambda one: f"Then say {one.words}, three times.",
    "sample": _sample,
    "often missed": _missed,
    "renamed": lambda one: f"That now means {one.words}.",
    "left out": lambda one: f"I leave {one.words} out.",
    "named": lambda one: f"It is written {one.words}. Now say it.",
    "swatch done": _done,
    "device lost": lambda one: one.words,
}
