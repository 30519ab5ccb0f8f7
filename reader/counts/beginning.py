"""Where a round begins: the row below turned about so that it begins in the space in which the yarn
is joined, or to which slip stitches lead.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.endings import AROUND
from reader.counts.ends import Ends, travels
from reader.counts.fabric import Below
from reader.counts.openings import is_opening, wanted
from reader.counts.placing import completes
from reader.counts.tally import Tally
from reader.counts.walk import Walk
from reader.counts.worked import Move, MoveKind
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    Group,
    Node,
    Repeat,
    Until,
    Where,
    Work,
)  # fmt: skip

BARE_SPACE = re.compile(
    r"^(?:all )?(?:in|into|under|over|inside)(?: the| this)? (?:sp|space|loop|lp|corner|corner sp"
    r"|corner space)$"
)


JUST = re.compile(r"\bjust (?:made|formed|completed|worked)\b", re.IGNORECASE)
"""The loop that the round before closed with."""


OF_CHAINS = re.compile(r"\bch(?:ain)?[- ]?(?P<n>\d+)[- ](?=sp|lo|lp)")


def _bare(place: str, way: str) -> bool:
    """Whether a place is only "in sp", or "in ch-2 sp" where the way there told the same."""
    chains, told = OF_CHAINS.search(place.lower()), OF_CHAINS.search(way.lower())
    same = chains is not None and told is not None and chains["n"] == told["n"]
    return BARE_SPACE.match(OF_CHAINS.sub("", place.lower()) if same else place.lower()) is not None


def _in_that_space(rest: list[Node]) -> None:
    """ "Sl st to next sp, ch 3, 2 dc in sp": the space that the slip stitch went to."""
    works = [at for at, one in enumerate(rest) if isinstance(one, Work | Group | Repeat)]
    if len(works) < 2 or not travels(rest[works[0]]):
        return
    for at in works[1:3]:
        one = rest[at]
        if isinstance(one, Work) and completes(one):
            rest[at] = replace(one, place=replace(one.place, where=Where.SAME, noun="sp"))
            return
        if isinstance(one, Work | Group) and _bare(one.place.text, rest[works[0]].words):
            rest[at] = replace(one, place=replace(one.place, where=Where.SAME))


OVER_TALL = re.compile(
    r"^over (?:the |same |last )*(?:[dt]? ?tr(?: ?c)?|h? ?d ?c"
    r"|(?:double |half )?(?:double|treble)(?: crochet)?)$"
)
"""Around the tall stitch that closed the round below: in the loop that it made."""


def over_the_tall(nodes: Sequence[Node], below: Below) -> list[Node]:
    """The row with "ch 4, tr over tr" as worked into the loop that the round below ended with."""
    rest = list(nodes)
    for at, one in enumerate(rest if below.in_loop else ()):
        if isinstance(one, Repeat):
            break
        if isinstance(one, Work | Group) and OVER_TALL.match(one.place.text.lower()):
            told = f"{one.place.text} just made"
            place = replace(one.place, where=Where.SAME, noun="sp", number=ONE, text=told)
            rest[at] = replace(one, place=place)
    return rest


def _along_its_chains(rest: list[Node], walk: Walk) -> None:
    """ "Sl st in next 2 ch", "sl st in each of next 2 sts" over a row of loops: along the chains of
    the next loop, so into it.
    """
    works = [n for n, one in enumerate(rest) if isinstance(one, Work | Group | Repeat)]
    first = rest[works[0]] if works else None
    if not travels(first) or not isinstance(first, Work) or first.place.nth:
        return
    place = first.place
    chains = place.noun == "ch" and walk.spaces and not walk.named("ch")
    steps = max(place.number.values[0], first.number.values[0] if first.number else 1)
    if place.where is not Where.NEXT or not (
        chains or (place.noun == "st" and walk.chain_follows(steps))
    ):
        return
    rest[works[0]] = replace(first, place=replace(place, noun="sp", number=ONE))
    then = rest[works[1]] if len(works) > 1 else None
    if isinstance(then, Work | Group) and then.place.where is Where.SAME and not chains:
        rest[works[1]] = replace(then, place=replace(then.place, noun="sp"))


def _begin_at_stitch(first: Node | None, tally: Tally) -> None:
    """ "Sl st to next tr, ch 4, ... repeat from * all around": the loops passed come last."""
    if not isinstance(first, Work) or not travels(first) or first.place.where is not Where.NEXT:
        return
    name = first.place.noun if first.place.noun not in ("st", "ch", "tch") else ""
    if name and not tally.below.flat:
        tally.walk.begin_at_stitch(1, name)


def _slip_past(first: Node | None, rest: list[Node], tally: Tally) -> None:
    """ "Sl st in next st, ch 3" over stitches and spaces: the chain stands on the next stitch, and
    the one that the round below was joined to comes last.
    """
    around = any(isinstance(one, Act) and one.deed is Deed.JOIN for one in rest) or any(
        isinstance(one, Repeat) and AROUND.search(one.words) for one in rest
    )
    if not (around and isinstance(first, Work) and travels(first)) or tally.below.flat:
        return
    place, number = first.place, first.number.at(tally.size) if first.number else 1
    if place.where is not Where.NEXT or place.nth or place.noun in ("ch", "tch", "sp"):
        return
    if tally.walk.slip_past(max(number, place.number.at(tally.size))):
        tally.moves.append(Move(MoveKind.SLIP, first.words, first.span))
        rest.remove(first)


def closes_by_chain(rest: Sequence[Node]) -> bool:
    """Whether the words close the round themselves, by the chain that begins each of its passes:
    "* ch 3, sc in next sc, repeat from * all around, ch 3, join" leaves out where it began.
    """
    works = [one for one in rest if not isinstance(one, Act) and not travels(one)]
    joins = [one for one in rest if isinstance(one, Act) and one.deed is Deed.JOIN]
    if len(works) != 2 or not joins or rest.index(joins[-1]) < rest.index(works[1]):
        return False
    again, chain = works
    if not isinstance(again, Repeat) or again.ending or again.until is not Until.OPEN:
        return False
    first = next((one for one in again.body if not isinstance(one, Act)), None)
    last = [one for one in again.body if isinstance(one, Work | Group | Repeat)][-1:]
    alike = isinstance(first, Chain) and isinstance(chain, Chain) and first.number == chain.number
    return alike and isinstance(again.body[-1], Work | Group) and last == [again.body[-1]]


OVER_ITSELF = re.compile(r"^(?:in|into|over|on) (?:the )?(?:shell|fan|v[- ]?st|group)$")


def _over_itself(node: Node | None) -> bool:
    """Whether a group goes over the one that the hook stands at, "shell over shell"."""
    one = node.body[0] if isinstance(node, Repeat) and node.body else node
    at = isinstance(one, Work | Group) and one.place.where is Where.NEXT
    return at and isinstance(one, Work | Group) and (
        OVER_ITSELF.match(one.place.text.lower()) is not None
    )


def _on_one_way(rest: list[Node], tally: Tally) -> None:
    """ "Sl st in next dc and in next sp", "sl st across each tr and to center of next loop": the
    first slip stitches are only the way to the second.
    """
    works = [one for one in rest if isinstance(one, Work | Group | Repeat)]
    if len(works) < 2 or not (travels(works[0]) and travels(works[1])):
        return
    first, then = works[0], works[1]
    if not isinstance(first, Work) or not isinstance(then, Work):
        return
    stitch = first.place.where in (Where.NEXT, Where.EACH)
    stitch = stitch and not is_opening(first.place, tally.walk)
    if stitch and then.place.where is Where.NEXT and is_opening(then.place, tally.walk):
        tally.moves.append(Move(MoveKind.SLIP, first.words, first.span))
        rest.remove(first)


def _begin_on_stitches(
    first: Node | None, rest: list[Node], tally: Tally, chained: bool
) -> None:
    """Turns the row below so that it begins at the stitch to which the first words lead."""
    works = [one for one in rest if isinstance(one, Work | Group | Repeat)]
    if any(isinstance(one, Repeat) and AROUND.search(one.words) for one in works):
        tally.walk.leave_opening()
        _begin_at_stitch(first, tally)
    if chained and works and first is works[0] and not tally.walk.before:
        _slip_past(first, rest, tally)
    if not (chained or tally.below.flat or travels(first)) and closes_by_chain(rest):
        # The stitch that the round below was joined to: nothing goes into it.
        tally.walk.take(1)


def begin_in_space(ends: Ends, rest: list[Node], tally: Tally, chained: bool) -> None:
    """Turns the row below so that it begins where the yarn is joined, when that is a space.
    chained: the first chain is a stitch, and stands there.
    """
    _in_that_space(rest)
    _along_its_chains(rest, tally.walk)
    _on_one_way(rest, tally)
    works = [one for one in rest if isinstance(one, Work | Group | Repeat)]
    first: Node | None = works[0] if works else None
    while isinstance(first, Repeat):
        first = next((one for one in first.body if isinstance(one, Work | Group | Repeat)), None)
    if not isinstance(first, Work | Group) or not is_opening(first.place, tally.walk):
        _begin_on_stitches(first, rest, tally, chained)
        return
    lead = " ".join(one.words for one in ends.lead if isinstance(one, Act))
    same = first.place.where is Where.SAME
    which = wanted(first.place, tally.walk, lead if same else "")
    if not same and first.place.where not in (Where.NEXT, Where.FIRST, Where.ONE_PLACE):
        return
    second = works[1] if len(works) > 1 else None
    into_it = isinstance(second, Work | Group) and second.place.where is Where.SAME
    into_it = into_it or closes_by_chain(rest)
    if first is works[0] and travels(first) and not chained and not into_it:
        if _over_itself(second):
            # "Sl st in next sp, * shell over shell": the first goes over the one slipped to.
            tally.walk.begin_at(which)
        else:
            # Slipped to and not worked into: its turn comes at the end of the round.
            tally.walk.begin_after(which)
        tally.moves.append(Move(MoveKind.SLIP, first.words, first.span))
        rest.remove(first)
        return
    if tally.below.half and first.place.where is Where.NEXT:
        # The hook stands at the top of the last loop: the next one is the one behind it.
        tally.walk.leave_loop()
    elif not tally.below.turning:
        # In the loop that the round below ended with the hook stands already.
        ended_in = same and tally.below.in_loop
        tally.walk.begin_at(which, ended_in or JUST.search(first.place.text) is not None)
