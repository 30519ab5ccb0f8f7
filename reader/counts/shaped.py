"""Shaping by rule, binding off and casting on within a row -> what they take and make."""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.counts.fabric import Below
from reader.counts.tally import Need, Tally
from reader.counts.worked import Move, MoveKind
from reader.pattern.tree import Edge, Gain, Node, Shape

LAST = re.compile(r"\b(?:off|bo|the) (?:last|rem|remaining) \d", re.IGNORECASE)
"""Binding off the last so many of a row."""


RATE = re.compile(
    r"(?:pick|pu\b|tak|k(?:nit)? up)[^.;]*?(?:\d|\bsame\b|\b(?:a|one) \w+ (?:in|for|from|to|at)"
    r" (?:each|every)\b)"
    r"|(?:cast on|co|set up)\b.*?\b(?:number|multiples?|as many|required|desired)\b",
    re.IGNORECASE,
)
"""Stitches that come on to the needle, and no number that says how many."""


def shape_by_rule(shape: Shape, tally: Tally, need: Need) -> None:
    """Increases or decreases by rule over all that is left, or over what the words before have
    worked.
    """
    walk = tally.walk
    if shape.of:
        tally.shaped += dropped(shape, tally)
        tally.moves.append(Move(MoveKind.NOTE, shape.words, shape.span))
        return
    if walk.left is None and not tally.makes:
        tally.unsure = True
        return
    worked = not walk.left and tally.makes > 0
    before = 0 if worked else max(0, (walk.left or 0) - need.stitches)
    change = change_of(shape, tally, tally.makes if worked else before)
    walk.take(before)
    made = before + change
    if made >= 0:
        last = tally.runs[-1].name if tally.runs and tally.runs[-1].is_stitch else "st"
        tally.make(made, last)
    else:
        tally.shaped += made
    tally.moves.append(
        Move(MoveKind.WORK, shape.words, shape.span, before, made, stitch="st", times=1)
    )


def change_of(shape: Shape, tally: Tally, before: int) -> int:
    """Stitches gained (or lost) by a rule worked over `before` stitches."""
    repeats = shape.repeats.at(tally.size)
    number = shape.number.at(tally.size)
    if shape.markers:
        tally.unsure = tally.unsure or not tally.below.markers
        return shape.gain * number * shape.markers * tally.below.markers
    if shape.until is not None:
        return shape.until.at(tally.size) - before
    if shape.every:
        if repeats > 1:
            return shape.gain * repeats * shape.spots
        over = shape.over.at(tally.size) * shape.spots if shape.over else before
        return shape.gain * (over // shape.every)
    return shape.gain * number * shape.spots * repeats


def markers_untold(nodes: Sequence[Node], below: Below) -> bool:
    """Whether a change is told for each marker, and nothing tells how many there are."""
    return not below.markers and any(isinstance(one, Shape) and one.markers for one in nodes)


def dropped(shape: Shape, tally: Tally) -> int:
    """Stitches lost (below 0) by overs of the row below that are dropped; where that row is known
    only by its number, or "extra" loops lie side by side, nothing tells how many.
    """
    overs = [run.n for run in tally.below.runs if run.name == "yo"]
    told = any(run.name not in ("yo", "st") for run in tally.below.runs)
    number = shape.number.at(tally.size)
    if not told and shape.of != "yo":
        # Yarn wound twice round the needle is no stitch, so neither is what is let go of it.
        return 0
    if not told or (shape.of != "yo" and any(n > 1 for n in overs)):
        tally.unsure = True
        return 0
    return -sum(min(n, number or n) for n in overs) if shape.of == "yo" else -sum(overs)


def gain(one: Gain, tally: Tally) -> None:
    """Stitches gained or lost over those just made."""
    if one.number > 0:
        tally.make(one.number, "st")
    else:
        tally.shaped += one.number
    tally.moves.append(Move(MoveKind.NOTE, one.words, one.span))


def edge(one: Edge, tally: Tally) -> None:
    """Cast on or bind off."""
    walk = tally.walk
    number = one.number.at(tally.size) if one.number is not None else None
    if one.cast_on:
        amount = (number or 0) * one.rows
        if one.waited:
            amount = tally.below.waiting
            tally.unsure = tally.unsure or not amount
        # Picked up at a rate, "1 st in every row": only a printed total tells how many.
        by_rate = number is None and RATE.match(one.words) is not None
        # A cast on without a number that nothing lies below begins with nobody knows how many.
        untold = number is None and not one.waited and not tally.below.stitches
        tally.unsure = tally.unsure or by_rate or untold
        tally.make(amount, "st")
        tally.elastic = tally.elastic or tally.below.stitches is not None
        kind, takes, made, stitch = MoveKind.WORK, 0, amount, "co"
    else:
        amount = number * one.rows if number is not None else (walk.left or 0)
        worked = walk.takes > 0
        walk.take(amount)
        # One more than told is the stitch that stayed on the needle after binding off; where the
        # last ones are bound off, more than that do not fit.
        misfit = worked and one.rows == 1 and (walk.left or 0) > 1 and LAST.search(one.words)
        tally.elastic = (tally.elastic or number is not None) and not misfit
        kind, takes, made, stitch = MoveKind.FINISH, amount, 0, "bo"
    tally.moves.append(
        Move(kind, one.words, one.span, takes, made, stitch=stitch, times=max(1, amount))
    )
