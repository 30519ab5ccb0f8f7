"""A worked row -> the numbers that its printed total may mean: stitches, spaces, groups."""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.counts.fabric import PICOT, SPACE, units_of
from reader.counts.openings import UNITS
from reader.counts.solved import Solved
from reader.counts.tally import Tally
from reader.pattern.totals import STITCHES
from reader.terms.crafts import Terms
from reader.terms.forms import forms, stitch_named
from reader.terms.stitches import Craft, Kind

SPACES = re.compile(r"\b(?:sps?|spaces?|loops?|lps?|arch(?:es)?|mesh(?:es)?)$")
"""What is counted are openings, of whatever chains."""


def values(one: Solved, kind: str) -> set[int]:
    """The numbers a printed total may stand for, none where the row cannot be counted. kind: what
    the total says it counts.
    """
    count, tally = one.count, one.tally
    if count is None:
        return set()
    out = {count, count - 1} if one.chained else {count}
    if kind and one_of(kind) not in ("st", "stitch", "stitche"):
        out |= {n for name, n in tally.kinds.items() if same_kind(name, kind)}
        out |= groups_in(tally, kind)
        if SPACES.search(kind):
            out |= {tally.spaces, loops_of(tally, kind)}
    if tally.spaces and not counts_stitches(kind):
        out |= {tally.spaces, count + tally.spaces, count + chains_in(tally)}
    return out


def groups_in(tally: Tally, kind: str) -> set[int]:
    """How many groups of a printed kind a row holds: those that the words name so, and with them
    those that are only told stitch by stitch; none where the kind is no group.
    """
    units = units_of(tally.runs)
    named = sum(n for name, n in units.items() if same_kind(name, kind))
    if not named and one_of(kind) not in UNITS:
        return set()
    return {named, named + units.get("group", 0), named + _whole_groups(tally)} - {0}


def _whole_groups(tally: Tally) -> int:
    """Groups told stitch by stitch that are as large as the largest: halves at the ends are none.
    """
    sizes = [run.n for run in tally.runs if run.is_stitch and run.unit == "group"]
    return sizes.count(max(sizes)) if sizes else 0


def counts_stitches(kind: str) -> bool:
    """Whether a total counts stitches of one kind, which spaces are not."""
    found = stitch_named(one_of(kind), Craft.CROCHET) if kind else None
    return found is not None and found.kind is not Kind.GROUP and found.name != "st"


def exactly(one: Solved, stated: int | None, kind: str) -> bool:
    """Whether a printed total of stitches is the row's count, the first chain as the words have it.
    """
    return one.count == stated and (kind in STITCHES or counts_stitches(kind))


def in_groups(
    one: Solved,
    kind: str,
    stated: int | None,
    entry_unit: str,
    units: Sequence[str],
    before: int | None = None,
) -> tuple[int | None, str]:
    """How many groups a row has, and what they are called, where its printed total counts groups,
    or that of the row it comes from, or totals of earlier rows (units, the latest last) the groups
    that this row has too; (None, "") elsewhere. before: the groups of the row below, which decide
    where a group told stitch by stitch may be one of them or not.
    """
    if entry_unit == LOOPS:
        entry_unit = ""
    if kind in LOOP_NAMES and stated and one.tally.makes < loops_only(one.tally) == stated:
        # The last loop is joined to where the round began: no stitch of its own holds it.
        return stated, LOOPS
    if kind or entry_unit:
        made = groups_told(one, kind or entry_unit, before if stated is None else stated)
        return (made, kind or entry_unit) if made is not None else (None, "")
    named = units_of(one.tally.runs)
    for unit in reversed(units) if stated is None else ():
        if any(same_kind(name, unit) for name in named):
            return groups_told(one, unit, before), unit
    loops = loops_only(one.tally)
    return (loops, LOOPS) if loops and one.count is not None and stated is None else (None, "")


LOOPS = "loops"
LOOP_NAMES = ("loops", "loop", "lps", "lp")
SHORTEST_LOOP = 3
"""Chains: fewer between two stitches are a mesh or a small space, and no loop."""


def loops_only(tally: Tally) -> int:
    """How many loops a row has that is nothing else: chains, each held by one low stitch, the last
    perhaps by a tall one that closes the round; 0 for other rows.
    """
    loops = 0
    closed = tally.runs[-1:] and tally.runs[-1].is_stitch and tally.runs[-1].n == 1
    for run in tally.runs[: -1 if closed else None]:
        if run.name == SPACE and run.chains >= SHORTEST_LOOP:
            loops += run.n
        elif run.name not in ("sc", "sl st", PICOT) or run.n > 1:
            return 0
    return loops if loops > 1 and abs(loops - tally.makes) <= 1 else 0


def groups_told(one: Solved, kind: str, stated: int | None) -> int | None:
    """How many groups of a kind a row has: the printed number where it agrees; None where the kind
    is no group.
    """
    found = groups_in(one.tally, kind) if kind and one.count is not None else set()
    if not found or any(same_kind(name, kind) for name in _single(one.tally)):
        return None
    return stated if stated in found else min(found)


def _single(tally: Tally) -> set[str]:
    """Names of stitches that are no groups: a total of their kind counts stitches."""
    units = units_of(tally.runs)
    return {name for name in tally.kinds if name not in units}


def chains_in(tally: Tally) -> int:
    """Chains in all the spaces that a row leaves."""
    return sum(run.n * run.chains for run in tally.runs if run.name == SPACE)


def loops_of(tally: Tally, kind: str) -> int:
    """How many spaces a row has of the chains that a total names, "16 ch-3 sps"."""
    said = re.search(r"\d+", kind)
    chains = int(said.group()[:4]) if said else 0
    return sum(run.n for run in tally.runs if run.name == SPACE and run.chains == chains)


def chains_counted(one: Solved, count: int | None) -> bool:
    """Whether a number holds the chains of the spaces beside the stitches."""
    if one.count is None or not one.tally.spaces:
        return False
    return count == one.count + chains_in(one.tally)


def one_of(kind: str) -> str:
    """What a printed total counts, one of it, by the trade's name."""
    return forms(Craft.CROCHET, Terms.US).get(kind) or kind.rstrip("s")


OF_A_STITCH = re.compile(r"\s*\b(?:sts?|stitch(?:es)?)$")
"""Behind a stitch's name in full: "24 single crochet stitches"."""


def us_kind(kind: str, terms: Terms) -> str:
    """What a printed total counts, a stitch by its short US name whatever it is called: "tr" of UK
    terms is "dc", and so are "double crochets" of US ones.
    """
    bare = OF_A_STITCH.sub("", kind)
    if not bare:
        return kind
    names = forms(Craft.CROCHET, terms)
    name = names.get(kind) or names.get(one_of(kind)) or names.get(bare) or names.get(one_of(bare))
    found = stitch_named(name, Craft.CROCHET) if name else None
    return name if name and found is not None and found.kind is Kind.STITCH else kind


def same_kind(name: str, kind: str) -> bool:
    """Whether a stitch's name is what a printed total counts."""
    if name == one_of(kind):
        return True
    bare = kind.replace(" ", "").replace("-", "")
    short, single = name.replace(" ", "").replace("-", ""), bare.rstrip("s")
    return short in (single, bare) or (len(single) > 2 and short.startswith(single))
