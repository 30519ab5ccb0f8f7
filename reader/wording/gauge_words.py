"""A gauge check in, what it means in spoken words out."""

from __future__ import annotations

from reader.plan.gauge import Advice, Gauge, GaugeCheck
from reader.plan.tools import Tool
from reader.wording.numbers import decimal_words, mixed_words
from reader.wording.say import sentence
from reader.wording.speak import speak


def say_gauge(check: GaugeCheck, craft: str) -> str:
    """Fits, or which way the stitches are off, what to try, and how the piece comes out as it
    is.
    """
    if check.advice is Advice.FITS:
        return "Your gauge fits the pattern."
    found, wanted = _number(check.measured), _number(check.wanted)
    off = f"you have {found} stitches over ten centimetres, and the pattern has {wanted}"
    small = check.advice is Advice.LARGER
    size, way = ("small", "larger") if small else ("large", "smaller")
    named = f", {say_tool(check.tool, craft)}" if check.tool else ""
    tool = "needles" if craft == "knitting" else "a hook"
    far = f"{tool} two sizes {way}" if check.sizes == 2 else f"{tool} one size {way}"
    advice = f"So your stitches are a little too {size}. Try {far}{named}."
    return f"{sentence(off)} {advice} {_outcome(check)}"


def _outcome(check: GaugeCheck) -> str:
    percent = abs(round((check.share - 1) * 100))
    way = "narrower" if check.share < 1 else "wider"
    return f"As it is, the piece comes out about {decimal_words(str(percent))} percent {way}."


def _number(gauge: Gauge) -> str:
    """Stitches over the swatch to the nearest half."""
    value = round(gauge.stitches * 2) / 2
    return mixed_words(int(value), "½") if value % 1 else decimal_words(str(int(value)))


def say_tool(tool: Tool, craft: str) -> str:
    """ "four and a half millimetres, in the US G six"."""
    words = f"{decimal_words(str(tool.mm))} millimetres"
    if not tool.us:
        return words
    name = speak(tool.us.replace("-", " "))
    size = "size " if craft == "knitting" or tool.us[0].isdigit() else ""
    return f"{words}, in the U S {size}{name}"


def say_finished(length_cm: float, unit: str = "cm") -> str:
    """A finished length as "about fifteen centimetres" or "about six inches"; unit: "cm" or
    "in".
    """
    value = length_cm if unit == "cm" else length_cm / 2.54
    rounded = round(value) if value >= 10 else round(value * 2) / 2
    noun = "centimetres" if unit == "cm" else "inches"
    return f"about {decimal_words(str(rounded))} {noun}"
