"""A written form or a step in, what it means and how it is made out, in spoken words."""

from __future__ import annotations

from reader.counts.worked import Move
from reader.plan.step import PlanRow, Reading, Step
from reader.terms.crafts import Terms
from reader.terms.forms import name_of
from reader.terms.howto import HowTo, how_to
from reader.terms.stitches import Craft
from reader.wording.say import sentence
from reader.wording.speak import speak
from reader.wording.stitch_words import stitch_name, word_for

_ACTIONS = {
    "ch": "ch", "chain": "ch", "mr": "mr", "magic ring": "mr", "mc": "mr", "adjustable ring": "mr",
    "blo": "blo", "bl": "blo", "back loop only": "blo", "flo": "flo", "fl": "flo",
    "front loop only": "flo", "co": "co", "cast on": "co", "bo": "bo", "bind off": "bo",
    "cast off": "bo", "w&t": "w&t", "pm": "pm", "sm": "sm",
}  # fmt: skip
"""Things done that stand in no stitch table."""


def meaning(form: str, reading: Reading) -> str:
    """ "s c: single crochet." from the pattern's own list or the trade; "" for an unknown form.

    A recipe in the pattern's own list ("inc = 2 sc in the same stitch") is read out as it stands.
    """
    own = dict(reading.key).get(form.lower().strip(" ."), "")
    words = word_for(form.strip(), reading)
    if not words and find_how(form, reading) is not None:
        words = speak(form, reading)
    if own and speak(own, reading) != words:
        name = f"{words}: " if words else ""
        return sentence(f"{name}{speak(own, reading)}, as this pattern says")
    return sentence(words)


def say_how(form: str, reading: Reading) -> str:
    """What a form means and how that stitch is made; "" where neither is known."""
    said = meaning(form, reading)
    found = find_how(form, reading)
    return " ".join(piece for piece in (said, found.words if found else "") if piece)


def say_how_named(spoken: str, short: str, reading: Reading) -> str:
    """How the stitch of that US short name is made, under its spoken name in the pattern's terms;
    what the pattern's own list says of it comes first.
    """
    craft = Craft.KNITTING if reading.craft == "knitting" else Craft.CROCHET
    terms = Terms.UK if reading.terms == "UK" else Terms.US
    own = next((form for form, _ in reading.key if name_of(form, craft, terms) == short), "")
    said = say_how(own, reading) if own else ""
    made = how_to(short, craft)
    return said or (sentence(f"{spoken}: {made.words[0].lower()}{made.words[1:]}") if made else "")


def find_how(form: str, reading: Reading) -> HowTo | None:
    """The making of a written form, with its source; None for an unknown one."""
    craft = Craft.KNITTING if reading.craft == "knitting" else Craft.CROCHET
    low = form.lower().strip(" .")
    if low in _ACTIONS and not (low == "mc" and dict(reading.key).get("mc", "").startswith("main")):
        found = how_to(_ACTIONS[low], craft)
        if found is not None:
            return found
    terms = Terms.UK if reading.terms == "UK" else Terms.US
    name = name_of(low, craft, terms)
    return how_to(name, craft) if name else how_to(low, craft)


def say_how_step(step: Step, row: PlanRow) -> str:
    """How each different stitch of a step is made, each once, in working order; "" where none is
    known.
    """
    craft = Craft.KNITTING if row.reading.craft == "knitting" else Craft.CROCHET
    told: dict[str, str] = {}
    for move in step.moves:
        name = _name(move, row.reading)
        made = how_to(name, craft) if name and name not in told else None
        if made is not None:
            said = stitch_name(name, row.reading.craft, row.reading.terms)
            said = said or word_for(name, row.reading) or speak(move.words, row.reading)
            told[name] = f"{sentence(said)[:-1]}: {made.words[0].lower()}{made.words[1:]}"
    return " ".join(told.values())


def _name(move: Move, reading: Reading) -> str:
    """The US short name of what a move makes; a chain has none in the table."""
    if move.stitch:
        return move.stitch
    words = move.words.lower()
    for form in ("magic ring", "mr", "blo", "flo", "ch"):
        if form in words.replace("-", " ").split() or (" " in form and form in words):
            return _ACTIONS[form]
    return ""
