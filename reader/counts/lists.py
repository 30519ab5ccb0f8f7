"""The list of a row's instructions as it is meant: repeated where the words have it so, one stitch
alone for the whole row.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from reader.counts.bare_rounds import slips_to_close
from reader.counts.endings import AROUND
from reader.counts.ends import first_work, travels
from reader.counts.readings import begun_at, list_to_end, times_of_list
from reader.counts.tally import Choice, Tally
from reader.counts.untold_repeat import is_once
from reader.pattern.tree import (
    LOST,
    ONE,
    Act,
    Deed,
    Group,
    Node,
    Num,
    Place,
    Repeat,
    Shape,
    Until,
    Where,
    Work,
)
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft


def _as_list(rest: list[Node], size: int) -> list[Node]:
    """ "2 sc, inc x 6" as six times the list."""
    times = times_of_list(rest)
    works = [one for one in rest if not isinstance(one, Act)]
    last = works[-1] if works else None
    if times is None or not isinstance(last, Work) or last.number is None:
        return rest
    once = Num(tuple(n // max(1, times.at(k)) for k, n in enumerate(last.number.values)))
    body = tuple(
        replace(one, number=once, by=None) if one is last else one
        for one in works
        if isinstance(one, Work)
    )
    words = " ".join(one.words for one in works)
    return [
        Repeat(last.span, words, body, Until.TIMES, times),
        *(one for one in rest if isinstance(one, Act)),
    ]


def repeated(rest: list[Node], choice: Choice, size: int, edge: int) -> list[Node]:
    """The list repeated where this reading has it so; edge: stitches beside the pattern."""
    rest = begun_at(rest, choice.begin)
    if choice.whole_list:
        rest = _as_list(rest, size)
    to_end = choice.to_end and list_to_end(rest)
    if not to_end and not choice.over_again:
        return rest
    works = [one for one in rest if not isinstance(one, Act)]
    words = " ".join(one.words for one in works)
    # Behind a knitted list the yarn may be cut, which is no part of it.
    ended = 1 + max(at for at, one in enumerate(rest) if one is works[-1])
    ended = ended if knits(rest) else len(rest)
    body, behind = [_in_list(one) for one in rest[:ended]], rest[ended:]
    again = Repeat(works[0].span, words, tuple(body), Until.OPEN)
    if len(works) == 1 and isinstance(works[0], Repeat):
        again = replace(works[0], until=Until.OPEN) if is_once(works[0]) else works[0]
    plain = stitch_named("st", Craft.KNITTING)
    if not edge or plain is None:
        return [again, *behind]
    place = Place(Where.PLAIN, again.span)
    return [again, Work(again.span, "", plain, Num((edge,)), place), *behind]


def _in_list(one: Node) -> Node:
    """An instruction of a list that is repeated: "to the end" is said of all of it."""
    if not isinstance(one, Work) or one.place.where in (Where.NEXT, Where.FIRST):
        return one
    return replace(one, place=replace(one.place, where=Where.PLAIN))


def to_last_loop(rest: list[Node]) -> list[Node]:
    """ "Repeat to last loop, ch 3, tr in same loop": the last loop is worked into too, where what
    follows goes into it again.
    """
    out = list(rest)
    works = [at for at, one in enumerate(rest) if isinstance(one, Work | Group | Repeat)]
    for at, behind in pairwise(works):
        one, after = rest[at], rest[behind]
        if not isinstance(one, Repeat) or not isinstance(after, Work | Group):
            continue
        last = one.until is Until.TO_LAST and one.noun == "sp" and one.number == ONE
        again = after.place.where is Where.SAME or after.place.noun in TALL
        if last and again:
            same = replace(after.place, where=Where.SAME, noun="sp")
            out[at], out[behind] = replace(one, until=Until.OPEN), replace(after, place=same)
    return out


TALL = ("dc", "tr", "dtr", "trtr")
"""Stitches that may end a loop: "tr in tr" uses none of its own."""


def slips_on(rest: list[Node]) -> list[Node]:
    """The row with the slip stitches behind what uses it up told as a joining: they only go on to
    where the next round begins.
    """
    worked = [n for n, one in enumerate(rest) if not (isinstance(one, Act) or travels(one))]
    last = rest[worked[-1]] if worked else None
    if isinstance(last, Repeat) and last.until is Until.OPEN:
        only = _around(last.words) and all(map(travels, last.ending))
        # "Ending last repeat with sl st in first sc": in place of a stitch, and no way to go.
        slips = last.ending if only and not slips_to_close(last) else ()
        whole: Node = replace(last, ending=(), has_ending=False) if slips else last
    elif isinstance(last, Work) and last.place.where in (Where.REST, Where.EACH):
        if not _around(last.place.text) and not _one_in_next(last, rest[worked[-1] + 1 :]):
            return rest
        whole, slips = last, ()
    else:
        return rest
    return [*rest[: worked[-1]], whole, *map(_joined, (*slips, *rest[worked[-1] + 1 :]))]


def _one_in_next(last: Work, behind: Sequence[Node]) -> bool:
    """ "2 sc in each sc, sl st in next st": all are used, and the next is of this very round."""
    slips = [one for one in behind if isinstance(one, Work)]
    return last.place.where is Where.EACH and len(slips) == 1 and (
        slips[0].place.where is Where.NEXT and slips[0].place.number == ONE
        and not slips[0].place.each
    )


def _around(words: str) -> bool:
    return AROUND.search(words) is not None


def _joined(one: Node) -> Node:
    return Act(one.span, one.words, Deed.JOIN) if travels(one) else one


def _only_adds(one: Node) -> bool:
    return isinstance(one, Work) and not one.stitch.takes


def _changes_each(works: Sequence[Node]) -> bool:
    """Whether a plain stitch for the whole row is followed by an increase in every one of them."""
    plain, change = works
    if not isinstance(plain, Work) or not isinstance(change, Work):
        return False
    even = plain.stitch.takes == plain.stitch.makes and plain.number is None
    each = change.place.where is Where.EACH and change.stitch.makes > change.stitch.takes
    return even and each and plain.place.where in (Where.PLAIN, Where.REST)


def whole_row(rest: list[Node], tally: Tally) -> list[Node]:
    """ "Purl." alone: the one stitch goes into all."""
    works = [one for one in rest if not isinstance(one, Act)]
    if len(works) == 2 and _changes_each(works):
        # "Knit plain, increasing in every stitch": one row, and not one behind the other.
        rest = [one for one in rest if one is not works[0]]
        works = works[1:]
    shaped = len(works) > 1 and all(isinstance(one, Shape) for one in works[1:])
    added = len(works) > 1 and all(_only_adds(one) for one in works[:-1])
    if works and (len(works) == 1 or shaped or added):
        one = works[-1 if added else 0]
        if not isinstance(one, Work):
            return rest
        alone = one.place.where is Where.PLAIN and one.number is None
        # "Wool forward, knit 2 together": a pattern of two, worked over and over.
        alone = alone and not (added and one.stitch.takes > 1)
        # "Narrow beside the ...": where, if that was not read, is not all along the row.
        lost = any(isinstance(x, Act) and x.into == LOST for x in rest)
        alone = alone and not (lost and one.stitch.takes != one.stitch.makes)
        if alone and (tally.walk.left is not None or knits(rest)):
            whole = replace(one, place=replace(one.place, where=Where.REST))
            return [whole if x is one else x for x in rest]
    return rest


def knits(nodes: Sequence[Node]) -> bool:
    """Whether a row is knitted."""
    work = first_work(nodes)
    return work is not None and work.stitch.craft is Craft.KNITTING
