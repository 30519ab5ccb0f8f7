"""The readings worth trying for a row whose words leave a choice."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise, product

from reader.counts.fabric import Below
from reader.counts.openings import SPACES, UNITS
from reader.counts.passing import in_the_chains
from reader.counts.patterned import takes_of
from reader.counts.tally import Choice
from reader.counts.untold_repeat import goes_on
from reader.pattern.chains_too import told_of_chains
from reader.pattern.tree import (
    LOST,
    ONE,
    Act,
    Chain,
    Deed,
    Group,
    Node,
    Num,
    Repeat,
    Skip,
    Until,
    Where,
    Work,
)  # fmt: skip
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind


def readings(
    nodes: Sequence[Node], chains: Sequence[bool | None], below: Below, same: bool = False
) -> Iterator[Choice]:
    """Every combination of what the words leave open, the usual ones first. same: the row begins in
    the "same space", and nothing says that this is a space of chains.
    """
    again = pair = ending = bundle = opening = joined = False
    stack = list(nodes)
    while stack:
        one = stack.pop()
        if isinstance(one, Work | Group | Skip):
            opening = opening or one.place.noun in SPACES | UNITS or in_the_chains(one.place)
        if isinstance(one, Repeat):
            again = again or one.until is Until.AGAIN
            joined = joined or one.joined
            ending = ending or (one.has_ending and one.until in (Until.OPEN, Until.TO_LAST))
            stack += [*one.body, *one.ending]
        elif isinstance(one, Work):
            pair = pair or _equal_numbers(one)
            rest = one.place.where in (Where.REST, Where.EACH)
            ending = ending or (one.stitch.takes == 2 and rest)
        elif isinstance(one, Group):
            bundle = bundle or one.maybe
            stack += one.body
    opening = opening or _names_stitches(nodes, below)
    listed = _either(times_of_list(nodes) is not None)
    spaces = (False, True) if below.spaces and not opening else (False,)
    spaces = (True,) if below.spaces and told_of_chains(nodes) else spaces
    options = product(
        chains, _either(again), _either(pair), _either(ending)[::-1], _either(bundle), spaces,
        listed, _either(joined), _again_all(nodes, below),
        _lists_to_end(nodes),
    )  # fmt: skip
    begins = _beginnings(nodes)
    names = (False, True) if named_of_several(nodes, below) else (False,)
    stitch = (True, False) if same and below.spaces else (same,)
    doubled = _either(two_in_one(nodes) != list(nodes))
    for chain, more, each, cut, bundled, spaced, whole, both, again_all, to_end in options:
        for begin, on, any_, double in product(begins, stitch, names, doubled):
            yield Choice(
                chain, more, each, cut and ending, bundled, spaced, whole, both, again_all, to_end,
                begin, on, any_, double,
            )  # fmt: skip


def _names_stitches(nodes: Sequence[Node], below: Below) -> bool:
    """Whether a repeat of chains names stitches of the row below only, "* ch 2, dc in next dc":
    then no chain of that row is gone into as a stitch.
    """
    kinds = set(below.kinds) - {"st", "ch"}
    for one in nodes:
        if not isinstance(one, Repeat) or one.until is not Until.OPEN:
            continue
        places = [inner.place for inner in one.body if isinstance(inner, Work | Skip | Group)]
        chained = any(isinstance(inner, Chain) for inner in one.body)
        if chained and places and all(place.noun in kinds for place in places):
            return True
    return False


def two_in_one(nodes: Sequence[Node]) -> list[Node]:
    """The row with "2 hdc" beside another number of the same stitch as two in one place: "1 hdc, 2
    hdc, repeat", since more of them one after the other would be told as one number.
    """
    out = list(nodes)
    for at, one in enumerate(out):
        if isinstance(one, Repeat):
            body = tuple(two_in_one(one.body))
            out[at] = one if body == one.body else replace(one, body=body)
        elif _is_two(one) and any(_another(one, out[n]) for n in (at - 1, at + 1) if _lies(n, out)):
            out[at] = _increase_of(one)
    return out


def _lies(at: int, nodes: Sequence[Node]) -> bool:
    return 0 <= at < len(nodes)


def _is_two(one: Node) -> bool:
    if one.words[-2:-1] == " " and one.words[-1:].isupper():
        # "2 sc A, 1 sc B": so many of each colour.
        return False
    plain = isinstance(one, Work) and one.place.where is Where.PLAIN and one.by is None
    return plain and isinstance(one, Work) and one.number == Num((2,)) and (
        one.stitch.craft is Craft.CROCHET and one.stitch.kind is Kind.STITCH
    )


def _another(one: Node, other: Node) -> bool:
    """Whether another number of the same stitch stands beside one: "1 sc", "sc", "sc in 3"."""
    if not isinstance(one, Work) or not isinstance(other, Work) or one.stitch != other.stitch:
        return False
    if other.number is None:
        return other.place.where in (Where.PLAIN, Where.NEXT) and other.place.noun == "st"
    return other.place.where is Where.PLAIN and other.number != one.number


def _increase_of(one: Node) -> Node:
    if not isinstance(one, Work):
        return one
    stitch = stitch_named(f"{one.stitch.name} inc", Craft.CROCHET)
    return replace(one, stitch=stitch, number=None) if stitch is not None else one


MANY = 5
"""One stitch of so many at least is no rare one."""


def named_of_several(nodes: Sequence[Node], below: Below) -> bool:
    """Whether a crocheted row names stitches of one kind over a row of several: makers say "sc"
    of whatever comes next, too. In lace that has many of them the name tells which.
    """
    kinds = set(below.kinds) - {"st", "ch"}
    if below.spaces > 1:
        kinds = {name for name in kinds if MANY * below.kinds[name] < (below.stitches or 0)}
    if len(set(below.kinds) - {"st", "ch"}) < 2:
        return False
    for one in nodes:
        if isinstance(one, Repeat) and named_of_several((*one.body, *one.ending), below):
            return True
        if isinstance(one, Work | Skip | Group) and one.place.noun in kinds:
            return True
    return False


def _beginnings(nodes: Sequence[Node]) -> range:
    """Where in its list a knitted "repeat this 3 times" may begin, the whole list first; in crochet
    with its last stitch alone, too: "sc in next 6 sts, dec over next 2 sts 5 times".
    """
    lost = [one for one in nodes if isinstance(one, Repeat) and _unmarked(one)]
    last = lost[0].body[-1] if len(lost) == 1 and len(lost[0].body) > 1 else None
    if isinstance(last, Work) and last.stitch.craft is Craft.CROCHET and _of_one_spot(last):
        return range(0, len(lost[0].body), len(lost[0].body) - 1)
    works = [one for repeat in lost for one in repeat.body if isinstance(one, Work)]
    knits = bool(works) and all(one.stitch.craft is Craft.KNITTING for one in works)
    if len(lost) != 1 or not knits:
        return range(1)
    return range(min(len(lost[0].body), 16))


def _of_one_spot(one: Work) -> bool:
    """Whether a stitch of crochet changes how many there are, in the next of them."""
    several = one.number is not None and one.number.values[0] > 1 and one.place.number == ONE
    spots = (Where.NEXT, Where.PLAIN)
    return one.place.where in spots and (one.stitch.takes != one.stitch.makes or several)


def _unmarked(one: Repeat) -> bool:
    """Whether nothing marks where a list begins that is worked again, or ", three times"."""
    if one.until is Until.TIMES:
        return not one.words
    return one.lost and one.until in (Until.AGAIN, Until.MORE)


def begun_at(nodes: Sequence[Node], begin: int) -> list[Node]:
    """The nodes with the list that is repeated beginning that far on."""
    out: list[Node] = []
    for one in nodes:
        if begin and isinstance(one, Repeat) and (one.lost or _unmarked(one)):
            out += [*one.body[:begin], replace(one, body=one.body[begin:])]
        else:
            out.append(one)
    return out


def list_to_end(nodes: Sequence[Node]) -> bool:
    """ "K 4, k2tog around", "3 sc, inc around": whether a list ends in a change that goes on to the
    row's end, so that all of it may be repeated.
    """
    crochets = any(isinstance(one, Work) and one.stitch.craft is Craft.CROCHET for one in nodes)
    listed = [one for one in nodes if not (crochets and isinstance(one, Act))]
    while listed and isinstance(listed[-1], Act):
        listed.pop()
    if len(listed) < 2 or not all(isinstance(one, Work) for one in listed):
        return False
    *first, last = [one for one in listed if isinstance(one, Work)]
    changes = last.stitch.takes != last.stitch.makes and last.place.where is Where.REST
    if crochets and not (last.stitch.kind in CHANGES and all(map(_plain, first))):
        return False
    counted = not crochets and last.number is not None and last.place.where is Where.REST
    return ((changes and last.number is None) or counted) and (
        crochets or all(one.place.where is Where.PLAIN for one in first)
    )


CHANGES = (Kind.INCREASE, Kind.DECREASE)


def _plain(one: Work) -> bool:
    """Whether a stitch of a list is one after the other: "3 sc", "sc in next 3 sts"."""
    return one.stitch.takes == one.stitch.makes == 1 and (
        one.place.where in (Where.PLAIN, Where.NEXT) and one.place.noun != "sp"
    )


def _lists_to_end(nodes: Sequence[Node]) -> tuple[bool, ...]:
    """Whether a list goes on to the end with all of it, or with its last stitch alone: an edge
    stitch before decreases is worked once, and overs alone would never end.
    """
    if not list_to_end(nodes):
        return (True,)
    *first, last = [one for one in nodes if isinstance(one, Work)]
    if not last.stitch.takes:
        return (True,)
    if last.stitch.craft is Craft.CROCHET:
        return (True, False)
    edge = len(first) == 1 and first[0].stitch.takes == 1 and first[0].number in (None, ONE)
    return (False, True) if edge else (True, False)


MANY_TIMES = 4
"""So many times as many stitches lie below, where a list with a bracket in it is one pattern."""


def over_again(nodes: Sequence[Node], below: Below) -> bool:
    """Whether a knitted list may be meant to be repeated to the row's end: plain numbers only, and
    they go into the row, or into what its edge stitches leave.
    """
    acts = [one for one in nodes if isinstance(one, Act)]
    if below.stitches is None or any(one.deed in (Deed.TURN, Deed.NEEDLE) for one in acts):
        return False
    repeats = [one for one in nodes if isinstance(one, Repeat)]
    works = [one for one in nodes if isinstance(one, Work)]
    if not below.edge and repeats and not (_names_yarns(nodes) and _keeps_count(nodes)):
        # "Knit 2, (over, narrow) 3 times, knit 2": far too few for the row, so one pattern of it.
        fixed = all(one.until is Until.TIMES and one.number is not None for one in repeats)
        if not (fixed and works and below.stitches >= MANY_TIMES * takes_of(nodes) > 1):
            return False
    if len(works) < 2 and any(one.stitch.craft is Craft.CROCHET for one in works):
        # "Work across 5 sts": so many, and no list.
        return False
    takes, width = takes_of(nodes), below.stitches - below.edge
    divides = takes > 1 and width % takes == 0
    return takes > 1 and width >= 2 * takes and (divides or is_rib(nodes))


def is_rib(nodes: Sequence[Node]) -> bool:
    """Whether a row tells knit and purl stitches by turns and nothing else: a rib, which goes on to
    the end wherever that falls.
    """
    works = [one for one in nodes if isinstance(one, Work)]
    names = [one.stitch.name for one in works]
    plain = len(works) == len(nodes) and all(one.place.where is Where.PLAIN for one in works)
    turns = all(first != second for first, second in pairwise(names))
    return plain and turns and set(names) == {"k", "p"} and len(names) % 2 == 0


def _names_yarns(nodes: Sequence[Node]) -> bool:
    """Whether words that work nothing stand behind the numbers, as the colours of a round do."""
    return any(
        (isinstance(one, Act) and (one.into == LOST or one.deed is Deed.COLOUR))
        or (isinstance(one, Repeat) and _names_yarns(one.body))
        for one in nodes
    )


def _keeps_count(nodes: Sequence[Node]) -> bool:
    """Whether each stitch of a list, those in brackets too, is made of one below: the colours of a
    round, of which one repeat is told.
    """
    told = [one for one in nodes if not isinstance(one, Act)]
    works = [one for one in told if isinstance(one, Work)]
    repeats = [one for one in told if isinstance(one, Repeat)]
    if len(works) + len(repeats) < max(2, len(told)):
        return False
    each = all(one.stitch.takes == one.stitch.makes == 1 for one in works)
    return each and all(
        one.until is Until.TIMES and _keeps_count((*one.body, *one.body)) for one in repeats
    )


def _again_all(nodes: Sequence[Node], below: Below) -> tuple[bool, ...]:
    """Whether a list is repeated to the row's end beside its edge stitches: where the words repeat
    it themselves, it is.
    """
    if goes_on(nodes, below):
        return (False, True)
    if not over_again(nodes, below):
        return (False,)
    beside = below.edge and any(isinstance(one, Repeat) for one in nodes)
    return (True,) if beside else (False, True)


def times_of_list(nodes: Sequence[Node]) -> Num | None:
    """The "x 6" behind the last of several plain stitches, None where there is none."""
    works = [one for one in nodes if not isinstance(one, Act)]
    if len(works) < 2 or not all(
        isinstance(one, Work) and one.place.where in (Where.PLAIN, Where.NEXT) for one in works
    ):
        return None
    by = [one.by for one in works if isinstance(one, Work)]
    return by[-1] if not any(by[:-1]) else None


def _either(open_to_choice: bool) -> tuple[bool, ...]:
    return (True, False) if open_to_choice else (True,)


def _equal_numbers(one: Work) -> bool:
    """ "3 sc in next 3 sts": three in all, or three in each."""
    return (
        one.number is not None
        and one.place.where in (Where.NEXT, Where.FIRST, Where.LAST)
        and one.place.number.values[0] > 1
        and one.number.values == one.place.number.values
    )
