"""What one place holds after the stitches that are worked into it."""

from __future__ import annotations

from reader.counts.fabric import Run
from reader.terms.stitches import Craft, Kind, Stitch

LEAST_TOLD = 3
"""Stitches in one place that make a group."""


def made_name(stitch: Stitch) -> str:
    """What kind of stitch is left: increases and decreases leave plain ones."""
    if stitch.base:
        return stitch.base
    plain = stitch.kind in (Kind.INCREASE, Kind.DECREASE)
    return "sc" if plain and stitch.craft is Craft.CROCHET else stitch.name


def made_by(stitch: Stitch, times: int) -> list[Run]:
    """What one place holds after `times` of a stitch: a group of several keeps its middle."""
    name = made_name(stitch)
    total = times * stitch.makes
    if stitch.kind is not Kind.GROUP or stitch.makes < 2 or times < 1:
        return [Run(name, total)] if total else []
    half = stitch.makes // 2
    if stitch.spaces:
        middle = Run("sp", stitch.spaces, 1, True, stitch.name)
    else:
        middle = Run("gap", 1, 0, False, stitch.name)
    unit = [Run(name, half), middle, Run(name, stitch.makes - half)]
    return unit * times


def told_group(stitch: Stitch, per: int, places: int, opening: bool) -> bool:
    """Whether stitches of one place are a group told stitch by stitch, "5 dc in next st"."""
    single = stitch.kind is Kind.STITCH and stitch.craft is Craft.CROCHET
    return single and per >= LEAST_TOLD and stitch.height >= 2 and (places == 1 or opening)
