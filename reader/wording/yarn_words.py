"""Yarn shares in, what is used and whether it lasts in spoken words out."""

from __future__ import annotations

from reader.plan.step import Reading
from reader.plan.yarn import ColourShare, YarnLeft
from reader.wording.numbers import decimal_words, fraction_words, number_words
from reader.wording.say import sentence
from reader.wording.speak import speak


def say_share(share: ColourShare, reading: Reading) -> str:
    """ "Of the white, about a third is worked."; without a colour "Of the yarn"."""
    if share.share >= 0.995:
        return sentence(f"the {colour_said(share.colour, reading)} is all worked")
    if share.worked <= 0:
        return sentence(f"the {colour_said(share.colour, reading)} is not begun")
    return sentence(
        f"of the {colour_said(share.colour, reading)}, about {_part(share.share)} is worked"
    )


def say_yarn(found: YarnLeft, colour: str, reading: Reading, unit: str = "grams") -> str:
    """Whether a yarn lasts and by how much; close calls are called close. unit: "grams" or
    "metres".
    """
    name = colour_said(colour, reading)
    needed, left = max(0, round(found.needed)), max(0, round(found.left))
    rest = f"about {number_words(needed)} {unit} to go and {number_words(left)} left"
    if found.left < found.needed * 0.95:
        return sentence(f"the {name} will probably not last: {rest}")
    if found.left < found.needed * 1.1:
        return sentence(f"the {name} will be close: {rest}. Have more ready")
    return sentence(f"the {name} should last: {rest}")


def colour_said(colour: str, reading: Reading) -> str:
    """ "white", "colour B"; "yarn" without a name."""
    if not colour:
        return "yarn"
    name = speak(f"with {colour}", reading).removeprefix("with ")
    return name if len(colour) <= 3 else speak(colour, reading)


def _part(share: float) -> str:
    """The nearest everyday fraction, else percent."""
    near = ((1, 4), (1, 3), (1, 2), (2, 3), (3, 4))
    for above, below in near:
        if abs(share - above / below) < 0.04:
            return "half" if below == 2 else fraction_words(above, below)
    return f"{decimal_words(str(round(share * 100)))} percent"
