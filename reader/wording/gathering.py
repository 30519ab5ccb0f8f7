"""What has to be gathered in, the sentences that read it out, out."""

from __future__ import annotations

from reader.plan.step import GatherItem, Plan, Reading
from reader.plan.tools import YarnWeight, weight_of
from reader.wording.numbers import decimal_words, number_words
from reader.wording.say import sentence
from reader.wording.speak import speak

MOST_MISSING = 3
"""Missing things that are named again at the end of the list. Our own choice."""

_KINDS = (("yarn", "yarn"), ("hook", "hook"), ("needle", "needles"), ("notion", "other things"))


def say_item(item: GatherItem, reading: Reading) -> str:
    """ "White worsted yarn, sixty grams." for one thing to gather."""
    return sentence(speak(item.text, reading))


def say_missing(plan: Plan, ticked: frozenset[int], reading: Reading) -> str:
    """What is not ticked yet, by index into the plan's list; says so when everything is there."""
    left = [item for index, item in enumerate(plan.gather) if index not in ticked]
    if not left:
        return "You have everything."
    if len(left) == 1:
        return f"One thing is missing: {_inside(say_item(left[0], reading))}"
    many = sentence(number_words(len(left)))[:-1]
    if len(left) > MOST_MISSING:
        return f"{many} things are missing. Materials reads them again."
    return f"{many} things are missing. " + " ".join(say_item(item, reading) for item in left)


def say_weight(item: GatherItem) -> str:
    """What the yarn's standard weight usually asks for, "" where the item names none."""
    weight = weight_of(item.text) if item.kind == "yarn" else None
    return _weight_words(weight) if weight is not None else ""


def _weight_words(weight: YarnWeight) -> str:
    least, most = weight.hook_mm
    hooks = f"{decimal_words(str(least))} millimetres and larger"
    if most is not None:
        hooks = f"{decimal_words(str(least))} to {decimal_words(str(most))} millimetres"
    return sentence(
        f"that is weight number {number_words(weight.number)}, {weight.name}; usual hooks are "
        f"{hooks}"
    )


def _inside(said: str) -> str:
    """A sentence as it reads after a colon."""
    return said[:1].lower() + said[1:] if said[1:2].islower() else said
