"""What one place holds after the stitches that are worked into it."""

from __future__ import annotations

from dataclasses import replace

from reader.counts.fabric import SPACE, Run, added
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
    if stitch.parts:
        return middled(_told(stitch), stitch.name) * times
    # Of what it is made nobody says: of the usual tall stitch (common practice, no source).
    name, half = "dc", stitch.makes // 2
    if stitch.spaces:
        middle = Run("sp", stitch.spaces, 1, True, stitch.name)
    else:
        middle = Run("gap", 1, 0, False, stitch.name)
    unit = [Run(name, half), middle, Run(name, stitch.makes - half)]
    return unit * times


def _told(stitch: Stitch) -> list[Run]:
    """A group's stitches and chains as the pattern tells them, without the first of them where a
    chain stands for it already.
    """
    runs: list[Run] = []
    over = sum(n for name, n in stitch.parts if name != "ch") - stitch.makes
    for name, number in stitch.parts:
        if over > 0 and name != "ch":
            number, over = max(0, number - over), over - number
        added(runs, [Run(SPACE, 1, number) if name == "ch" else Run(name, number)])
    return runs


def told_group(stitch: Stitch, per: int, places: int, opening: bool) -> bool:
    """Whether stitches of one place are a group told stitch by stitch, "5 dc in next st"."""
    single = stitch.kind is Kind.STITCH and stitch.craft is Craft.CROCHET
    return single and per >= LEAST_TOLD and stitch.height >= 2 and (places == 1 or opening)


def middled(runs: list[Run], name: str = "group") -> list[Run]:
    """The runs of one place with its middle marked: the space inside, or the center of the
    stitches.
    """
    runs = [replace(run, unit="") if run.is_stitch else run for run in runs]
    stitches = sum(run.n for run in runs if run.is_stitch)
    spaces = [index for index, run in enumerate(runs) if run.name == "sp"]
    inside = [at for at in spaces if 0 < at < len(runs) - 1]
    if inside:
        at, corners = inside[len(inside) // 2], frozenset(inside)
        return [
            replace(run, corner=True, unit=name if index == at else run.unit)
            if index in corners
            else run
            for index, run in enumerate(runs)
        ]
    if stitches < 3 or spaces or any(not run.is_stitch for run in runs):
        return runs
    return _halved(runs, stitches // 2, name)


def _halved(runs: list[Run], half: int, name: str) -> list[Run]:
    out: list[Run] = []
    for run in runs:
        first = min(run.n, max(0, half))
        if 0 < half <= run.n:
            out += [replace(run, n=first), Run("gap", 1, 0, False, name)]
            run = replace(run, n=run.n - first)
        half -= first
        if run.n:
            out.append(run)
    return out
