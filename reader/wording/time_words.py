"""Seconds in, spoken durations out, no finer than they deserve."""

from __future__ import annotations

from reader.wording.numbers import number_words


def say_time(seconds: float) -> str:
    """ "less than a minute", "about three minutes", "about an hour and a half", "about five hours".

    Estimates are rounded: to a minute below twenty, to five minutes below an hour, to a quarter
    of an
    hour below three hours, to an hour above.
    """
    minutes = seconds / 60
    if minutes < 1:
        return "less than a minute"
    if minutes < 57.5:
        rounded = max(1, round(minutes)) if minutes < 20 else 5 * round(minutes / 5)
        return "about a minute" if rounded == 1 else f"about {number_words(rounded)} minutes"
    if minutes < 172.5:
        return f"about {_quarters(round(minutes / 15))}"
    return f"about {number_words(round(minutes / 60))} hours"


def _quarters(quarters: int) -> str:
    hours, rest = divmod(quarters, 4)
    whole = "an hour" if hours == 1 else f"{number_words(hours)} hours"
    part = ("", " and a quarter", " and a half", " and three quarters")[rest]
    if hours == 0:
        return "three quarters of an hour"
    return f"{whole}{part}"
