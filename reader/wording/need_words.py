"""What is needed: the list to gather, the gauge and the yarn -> the sentences that are spoken."""

from __future__ import annotations

from reader.plan import find
from reader.plan.gauge import SWATCH_CM, check_gauge, measured, tool_mm, wanted_gauge, width_cm
from reader.plan.step import Reading
from reader.plan.tools import tool_named
from reader.plan.yarn import ColourShare, colour_shares, grams_left, will_last, yarns_of
from reader.session.effects import Saying
from reader.session.gauging import grams_listed, present_colour, present_share
from reader.session.state import State
from reader.wording.gathering import say_item, say_weight
from reader.wording.gauge_words import say_finished, say_gauge
from reader.wording.numbers import decimal_words, number_words
from reader.wording.say import say_written
from reader.wording.yarn_words import colour_said, say_share, say_yarn


def reading_of(state: State) -> Reading:
    """How the words of the present row are read."""
    return find.row_at(state.plan, state.place).reading


def gathering(one: Saying, state: State) -> str:
    """How many things are still to gather, and what to say."""
    left = one.number or 0
    things = "One thing" if left == 1 else f"{number_words(left).capitalize()} things"
    return f"{things} to gather. Say yes when you have it, no when not, carry on to leave the list."


def gauge_asked(one: Saying, state: State) -> str:
    """The pattern's gauge, and how to count one's own."""
    wanted = wanted_gauge(state.plan)
    told = " ".join(say_written(text, reading_of(state)) for text in state.plan.gauge[:1])
    over = "ten centimetres, that is four inches"
    number = number_words(round(wanted.stitches)) if wanted else "so many"
    return f"{told} Count your stitches over {over}; {number} are wanted. How many have you?"


def gauge_read(one: Saying, state: State) -> str:
    """A gauge that tells no stitches over a length, such as the width of some rounds."""
    told = " ".join(say_written(text, reading_of(state)) for text in state.plan.gauge)
    return f"{told} Measure that; I can't work it out from a number of stitches."


def gauge_told(one: Saying, state: State) -> str:
    """What the maker's gauge means."""
    wanted, found = wanted_gauge(state.plan), measured(one.number or 0, SWATCH_CM)
    if wanted is None or found is None:
        return "I can't tell from that; count again and say my gauge."
    row = find.row_at(state.plan, state.place)
    wide = say_finished(width_cm(row.count, found)) if row.count else ""
    finished = f" The {number_words(row.count or 0)} stitches here measure {wide}."
    check = check_gauge(wanted, found, state.plan.craft, tool_mm(state.plan))
    return say_gauge(check, state.plan.craft) + (finished if wide else "")


def item_explained(one: Saying, state: State) -> str:
    """What the standard weight of a yarn or the US size of a tool means; of other things the
    pattern's own words again.
    """
    item = state.plan.gather[one.number or 0]
    tool = tool_named(item.text, state.plan.craft) if item.kind in ("hook", "needle") else None
    if tool is not None:
        size = decimal_words(f"{tool.mm:g}")
        return f"In the United States that size is {size} millimetres."
    return say_weight(item) or f"The pattern says: {say_item(item, reading_of(state))}"


def grams_asked(one: Saying, state: State) -> str:
    """Asks for the weight of what is left."""
    name = colour_said(present_colour(state), reading_of(state))
    return f"To tell whether it lasts: how many grams of the {name} are left? Or no."


def lasts(one: Saying, state: State) -> str:
    """Whether the yarn lasts, from what is left of the amount on the list."""
    grams, share, left = grams_listed(state), present_share(state), one.number or 0
    found = will_last(share.share, grams - left, left) if grams and share else None
    if found is None or share is None:
        return "I can't tell from that; nothing of it is used up yet."
    return say_yarn(found, share.colour, reading_of(state))


def yarn_told(one: Saying, state: State) -> str:
    """How much of each colour is worked, and what the rest should need."""
    said = []
    shares = colour_shares(state.plan, one.place or state.place)
    named = [share for share in shares if share.colour]
    for share in named or shares:
        words = say_share(share, reading_of(state))
        grams = next((one for one in _grams_to_go(state, share) if one), 0.0)
        rest = f" By the pattern's amount, about {number_words(round(grams))} grams to go."
        said.append(words + (rest if grams else ""))
    return " ".join(said) or "I can't tell how much yarn is worked."


def _grams_to_go(state: State, share: ColourShare) -> list[float | None]:
    """The grams left of the yarns on the list that bear this colour's name."""
    return [grams_left(item, share) for item in yarns_of(state.plan, share.colour)]
