"""One instruction -> what it takes and makes: the rules of place, number and kind of stitch."""

from __future__ import annotations

from reader.counts.tally import Tally
from reader.counts.worked import Move, MoveKind
from reader.pattern.tree import Chain, Edge, Group, Place, Shape, Skip, Where, Work
from reader.terms.stitches import Kind

SPACES = ("sp", "corner")
GROUPED = ("shell", "v-st", "fan", "group", "cluster", "popcorn", "puff", "bobble", "picot")
CAP = 100_000
"""More stitches than any row holds; keeps misprints from running away."""


def _cap(number: int) -> int:
    return max(-CAP, min(CAP, number))


def count_of(work: Work | Skip | Group, tally: Tally) -> int:
    """How many places a place stands for; -1 for all that is left."""
    place = work.place
    if place.where in (Where.EACH,):
        return -1
    return _cap(place.number.at(tally.size))


def place_all(place: Place, tally: Tally, tail: int) -> tuple[int, int, int]:
    """For "each", "to end", "to last n": places, stitches used, spaces used."""
    left = tally.left
    nouns = {place.noun, *place.among}
    spacey = bool(nouns & set(SPACES))
    if spacey and nouns <= set(SPACES):
        spaces = tally.spaces_left if tally.spaces_left < 10**8 else tally.below.spaces
        return spaces, 0, spaces
    if left is None:
        tally.unsure = True
        return 0, 0, 0
    if place.where is Where.TO_LAST:
        return (
            max(0, left - place.number.at(tally.size)),
            max(0, left - place.number.at(tally.size)),
            0,
        )
    here = max(0, left - tail)
    kind = place.noun if place.noun in tally.below.kinds else ""
    if kind and kind in GROUPED:
        return tally.below.kinds[kind], here, 0
    if spacey or "ch" in place.among:
        return here + tally.spaces_left, here, tally.spaces_left
    return here, here, 0


def work_into(work: Work, tally: Tally, tail: int) -> None:
    """Adds one Work to the tally."""
    place, stitch = work.place, work.stitch
    if (
        "other side" in place.text
        or "opposite side" in place.text
        or "down the other" in place.text
    ):
        tally.left = None
    number = work.number.at(tally.size) if work.number is not None else None
    takes, makes, spaces = _amount(work, number, tally, tail)
    if stitch.kind is Kind.SLIP and place.where not in (Where.RING,):
        made = 0 if place.where not in (Where.REST, Where.EACH) else takes
        makes = made
    extra = work.between * max(0, makes - 1) and max(0, makes - 1)
    tally.make(
        _cap(makes),
        stitch.name if stitch.name not in ("inc",) else stitch.base or "sc",
        spaces + extra,
    )
    run = max(
        1,
        makes
        if stitch.takes == 1 == stitch.makes
        else (makes // stitch.makes if stitch.makes > 0 else takes // max(1, stitch.takes)),
    )
    kind = MoveKind.SLIP if stitch.kind is Kind.SLIP else MoveKind.WORK
    tally.moves.append(
        Move(
            kind,
            work.words,
            work.span,
            takes,
            _cap(makes),
            spaces + extra,
            stitch.name,
            run,
            place.text,
        )
    )


def _amount(work: Work, number: int | None, tally: Tally, tail: int) -> tuple[int, int, int]:
    """Takes, makes, spaces of a Work, the stitches below already used."""
    place, stitch = work.place, work.stitch
    where = place.where
    n = 1 if number is None else max(0, _cap(number))
    if where is Where.RING:
        return 0, n * max(stitch.makes, 1), 0
    if where is Where.CHAIN:
        return _into_chain(work, n, tally)
    if where is Where.SAME:
        return _into_same(work, n, tally)
    if where in (Where.EACH, Where.REST, Where.TO_LAST):
        return _into_all(work, number, tally, tail)
    if where is Where.UNUSED:
        tally.elastic = True
        return 0, 0, 0
    if where is Where.PLAIN:
        tally.use(n * stitch.takes)
        return n * stitch.takes, n * stitch.makes, n * stitch.spaces
    return _into_next(work, n, number is not None, tally)


def _into_chain(work: Work, n: int, tally: Tally) -> tuple[int, int, int]:
    chain = tally.below.chain
    place = work.place
    if chain is None:
        tally.use(1)
        return 1, n * work.stitch.makes, 0
    tally.left = max(0, chain - place.nth)
    tally.short += max(0, place.nth - chain)
    takes = max(1, work.stitch.takes)
    tally.takes += 1
    if takes > 1:
        tally.use(takes - 1)
    return takes, n * work.stitch.makes, work.stitch.spaces


def _into_same(work: Work, n: int, tally: Tally) -> tuple[int, int, int]:
    takes = 0
    if tally.takes == 0 and not tally.spaced and work.place.noun not in SPACES:
        takes = 1
        tally.use(1)
    if work.place.noun in SPACES:
        tally.spaced = True
    return takes, n * work.stitch.makes, n * work.stitch.spaces


def _into_all(work: Work, number: int | None, tally: Tally, tail: int) -> tuple[int, int, int]:
    place, stitch = work.place, work.stitch
    if (
        place.where is not Where.EACH
        and place.sides == 1
        and number is not None
        and place.where is Where.REST
        and number > 1
        and stitch.takes == 1
    ):
        tally.use(number)
        return number, number * stitch.makes, 0
    places, used, spaces = place_all(place, tally, tail)
    if place.nth > 1:
        return _every_nth(work, number or 1, tally, used)
    per = number if number is not None and (place.each or place.where is Where.EACH) else 1
    times = places // stitch.takes if stitch.takes > 1 else places
    if stitch.takes > 1 and places % stitch.takes:
        tally.uneven = (places, stitch.takes)
        if stitch.takes == 2:
            times += 1 if tally.choice.cut_ending else 0
    tally.use(used)
    tally.use_spaces(spaces) if spaces else None
    return used, _cap(times * per * stitch.makes), times * stitch.spaces


def _every_nth(work: Work, n: int, tally: Tally, used: int) -> tuple[int, int, int]:
    nth = work.place.nth
    times = used // nth
    tally.use(used)
    return used, used + times * (n - 1 if n > 1 else work.stitch.makes - 1), 0


def _into_next(work: Work, n: int, given: bool, tally: Tally) -> tuple[int, int, int]:
    place, stitch = work.place, work.stitch
    m = _cap(place.number.at(tally.size))
    plural = place.each or m > 1
    if tally.below.chain is not None and tally.takes == 0 and tally.left is None and place.nth > 1:
        return _into_chain(work, n, tally)
    if place.noun in SPACES:
        spaces = m if plural else 1
        tally.use_spaces(spaces)
        return 0, n * spaces * stitch.makes, n * spaces * stitch.spaces
    if stitch.takes > 1:
        total = m if plural and m > stitch.takes and m % stitch.takes == 0 else stitch.takes
        times = max(n, total // stitch.takes)
        tally.use(times * stitch.takes)
        return times * stitch.takes, times * stitch.makes, 0
    if not plural:
        used = 1 if stitch.takes or stitch.name in ("yo",) else 0
        tally.use(used)
        return used, n * stitch.makes, n * stitch.spaces
    each = place.each or stitch.kind is Kind.INCREASE or not given
    per = n if each or n != m or not tally.choice.pair_each else 1
    tally.use(m)
    return m, m * per * stitch.makes, m * per * stitch.spaces


def skip_over(skip: Skip, tally: Tally) -> None:
    """Passes over stitches or spaces."""
    m = _cap(skip.place.number.at(tally.size))
    if skip.place.noun in SPACES:
        tally.use_spaces(m)
        takes = 0
    else:
        tally.use(m)
        takes = m
    tally.moves.append(Move(MoveKind.SKIP, skip.words, skip.span, takes, 0, times=m))


def chain_space(chain: Chain, tally: Tally) -> None:
    """Chains inside a row: one space."""
    tally.spaces += 1
    tally.moves.append(
        Move(
            MoveKind.CHAIN,
            chain.words,
            chain.span,
            spaces=1,
            stitch="ch",
            times=chain.number.at(tally.size),
        )
    )


def shape_by_rule(shape: Shape, tally: Tally, tail: int) -> None:
    """Increases or decreases by rule over all that is left."""
    before = tally.left if tally.left is not None else tally.below.stitches
    change = shape.gain * shape.number.at(tally.size) * shape.spots * shape.repeats.at(tally.size)
    if before is None:
        tally.unsure = True
        return
    before = max(0, before - tail)
    if shape.every:
        change = (
            shape.gain * (before // shape.every)
            if shape.repeats.at(tally.size) == 1
            else shape.gain * shape.repeats.at(tally.size) * shape.spots
        )
    if shape.until is not None:
        change = shape.until.at(tally.size) - before
    tally.use(before)
    made = max(0, before + change)
    tally.make(made, "st")
    tally.moves.append(
        Move(MoveKind.WORK, shape.words, shape.span, before, made, stitch="st", times=1)
    )


def edge(one: Edge, tally: Tally) -> None:
    """Cast on or bind off."""
    number = one.number.at(tally.size) if one.number is not None else None
    if one.cast_on:
        amount = (number or 0) * one.rows
        tally.make(amount, "st")
        tally.moves.append(
            Move(MoveKind.WORK, one.words, one.span, 0, amount, stitch="co", times=max(1, amount))
        )
        tally.elastic = tally.elastic or tally.below.stitches is not None
        return
    amount = (number * one.rows) if number is not None else (tally.left or 0)
    tally.use(amount)
    tally.elastic = tally.elastic or number is not None
    tally.moves.append(
        Move(MoveKind.FINISH, one.words, one.span, amount, 0, stitch="bo", times=max(1, amount))
    )
