"""What stitches leave for the row above: so many in each of so many places, with chains between."""

from __future__ import annotations

from dataclasses import replace

from reader.counts.fabric import CORNER, Run, cornered
from reader.counts.made import made_by, made_name, told_group
from reader.counts.tally import Tally
from reader.pattern.tree import Where, Work
from reader.terms.stitches import Craft, Kind

CAP = 10_000
"""More stitches than any row holds; keeps misprints from running away."""


def cap(number: int) -> int:
    """The number, kept within what a row can hold."""
    return number if -CAP <= number <= CAP else CAP if number > 0 else -CAP


def put(work: Work, tally: Tally, per: int, places: int, group: bool = False) -> None:
    """Leaves `per` stitches in each of `places`; the stitches of one place may have chains between.
    """
    stitch = work.stitch
    if stitch.makes < 0:
        tally.make(cap(places * per * stitch.makes), made_name(stitch))
        return
    runs = made_by(stitch, cap(per))
    if len(runs) == 1 and stitch.name in UNNAMED and not stitch.base:
        runs = [replace(runs[0], name=_kind_of_row(work, tally, runs[0].name))]
    if told_group(stitch, per, places, group):
        runs = [replace(runs[0], unit="group")]
    if per > 2 and per % 2 and len(runs) == 1 and CORNER in work.place.text.lower():
        runs = cornered(runs[0])
    if work.between and per > 1:
        one, chain = [Run(made_name(stitch), 1)], Run("sp", 1, work.between, True, "group")
        if stitch.kind is Kind.GROUP:
            # "2 shells with ch 5 between": whole groups, and the chain is the middle of none.
            one, chain = made_by(stitch, 1), Run("sp", 1, work.between)
        runs = [*one, *[run for _ in range(per - 1) for run in (chain, *one)]]
        if work.place.where is Where.RING and not (tally.below.flat or tally.below.chained):
            # Around a ring the last of them stands beside the first.
            runs.append(chain)
    if len(runs) > 1 or group or (runs and runs[0].unit):
        tally.make_runs(runs, cap(places), group or work.between > 0)
    elif runs:
        tally.make(cap(runs[0].n * places), runs[0].name)


UNNAMED = frozenset(["inc", "dec"])
USUAL = ("sc", "hdc", "dc", "tr")


def _kind_of_row(work: Work, tally: Tally, name: str) -> str:
    """The kind that an increase or decrease is of where its name tells none, "dec in next 2 dc": of
    the stitches beside it, else of those it goes into.
    """
    if work.stitch.craft is not Craft.CROCHET:
        return name
    beside = tally.runs[-1].name if tally.runs else work.place.noun
    if beside not in USUAL and len(tally.below.kinds) == 1:
        beside = next(iter(tally.below.kinds))
    return beside if beside in USUAL else name


def put_in_every_nth(work: Work, used: int, per: int, opening: bool, tally: Tally) -> None:
    """ "inc in every 3rd st"; "dc in every 3rd st": those between are passed over."""
    stitch, times = work.stitch, used // work.place.nth
    if work.between and per == 1 and times > 1:
        put_all_apart(work, tally, times)
        return
    if stitch.takes == stitch.makes == 1 and per != 2:
        put(work, tally, per, times, opening and per > 1)
        return
    more = times * (per - 1 if per > 1 else stitch.makes - 1)
    tally.make(used + more, made_name(stitch))


def put_apart(work: Work, tally: Tally, times: int) -> None:
    """Leaves so many stitches with the chains between them."""
    one = made_by(work.stitch, 1)
    tally.make_runs(one, 1, False)
    tally.make_runs([Run("sp", 1, work.between), *one], times - 1, False)


def put_all_apart(work: Work, tally: Tally, times: int) -> None:
    """The same to the end of the row; of a round one more chain closes it."""
    put_apart(work, tally, times)
    closed = tally.joined or not (tally.below.flat or tally.below.chained)
    tally.make_runs([Run("sp", 1, work.between)], int(closed), False)
