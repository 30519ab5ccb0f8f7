"""A miscount in, what to count and what to do about it in spoken words out."""

from __future__ import annotations

from reader.plan.mismatch import Likely, Mismatch, Search, Stop, narrowed
from reader.wording.numbers import number_words, ordinal_words, times_words
from reader.wording.say import sentence

FEW = 2
"""Stitches that may be skipped or doubled without being noticed. Our own judgement."""
_SLIPS = {
    Likely.INCREASE_MISSED: ("an increase was missed", "{n} increases were missed"),
    Likely.INCREASE_EXTRA: ("there is an increase too many", "there are {n} increases too many"),
    Likely.DECREASE_MISSED: ("a decrease was missed", "{n} decreases were missed"),
    Likely.DECREASE_EXTRA: ("there is a decrease too many", "there are {n} decreases too many"),
}


def say_mismatch(found: Mismatch, noun: str = "round") -> str:
    """Both numbers, the difference and the likeliest slip. noun: "round" or "row"."""
    if found.likely is Likely.RIGHT:
        return f"Right: {_stitches(found.have)}."
    off = abs(found.difference)
    way = "too few" if found.difference < 0 else "too many"
    have = sentence(number_words(found.have))[:-1]
    head = f"{have}: there should be {number_words(found.expected)}, so {number_words(off)} {way}."
    return f"{head} {sentence(_slip(found, noun))}"


def _slip(found: Mismatch, noun: str) -> str:
    if found.likely is Likely.WHOLE_PASS:
        if found.difference < 0:
            left = "a pass was" if found.slips == 1 else f"{number_words(found.slips)} passes were"
            return f"most likely {left} left out; each pass makes {_stitches(found.each)}"
        again = (
            "a pass was worked once" if found.slips == 1 else f"{number_words(found.slips)} passes"
        )
        return f"perhaps {again} too often; each pass makes {_stitches(found.each)}"
    if found.likely is Likely.ROW_BELOW:
        return f"the slip may be in the {noun} below; count that one too"
    if found.likely is Likely.STITCH and found.slips > FEW:
        return "count once more to be sure; so many are seldom skipped or doubled"
    if found.likely is Likely.STITCH:
        if found.difference < 0:
            return "most likely a stitch was skipped, often the first or the last"
        return f"most likely a place was worked twice, often at the start or the end of the {noun}"
    one, many = _SLIPS[found.likely]
    words = one if found.slips == 1 else many.format(n=number_words(found.slips))
    return f"most likely {words}"


def say_stop(found: Mismatch, stop: Stop, noun: str = "round") -> str:
    """ "Count from the start to the end of the third pass. There should be twelve. How many?" """
    what = "pass" if found.each else "step"
    return (
        f"Count from the start of the {noun} to the end of the {ordinal_words(stop.number)} "
        f"{what}. "
        f"There should be {number_words(stop.count)}. How many are there?"
    )


def say_found(found: Mismatch, search: Search) -> str:
    """Where the slip lies once the counting has narrowed it down."""
    first, last = narrowed(found, search)
    what = "pass" if found.each else "step"
    if first == last:
        return f"The slip is in the {ordinal_words(first)} {what}."
    return f"The slip is between the {ordinal_words(first)} and the {ordinal_words(last)} {what}."


def say_choice(found: Mismatch, noun: str = "round") -> str:
    """Mend in place, make good in the next row, or go on: what each of them means."""
    if found.likely is Likely.RIGHT:
        return ""
    choices = [f"You can go back and mend the {noun}."]
    if found.mend:
        deed = "increase" if found.gain else "decrease"
        count = len(found.mend)
        where = _where(found.mend)
        choices.append(f"Or {deed} {times_words(count)} in the next {noun}{where}.")
    if found.later:
        _, printed, adjusted = found.later[0]
        choices.append(
            f"Or go on as it is: the next {noun} then ends with {number_words(adjusted)} in "
            f"place of "
            f"{number_words(printed)}, and the later counts shift too."
        )
    return " ".join(choices)


def _where(groups: tuple[int, ...]) -> str:
    if len(groups) == 1:
        return ", where it shows least"
    return f", about every {number_words(round(sum(groups) / len(groups)))} stitches"


def _stitches(number: int) -> str:
    return "one stitch" if number == 1 else f"{number_words(number)} stitches"
