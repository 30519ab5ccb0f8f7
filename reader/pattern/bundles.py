"""A list of stitches with one place at its end: "1 sc, 5 dc, 1 sc in next loop", "2 dc, ch 1, 2 dc
in next st".
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from reader.pattern.tree import ONE, Act, Chain, Group, Node, Repeat, Skip, Until, Where, Work
from reader.terms.stitches import Craft, Kind

SHARED = (Where.NEXT, Where.EACH, Where.FIRST, Where.LAST, Where.SAME, Where.ONE_PLACE, Where.CHAIN)
OPENINGS = frozenset({"sp", "corner", "group", "shell", "v-st", "fan"})
CHANGES = (Kind.INCREASE, Kind.DECREASE, Kind.SLIP)

SINGLY = re.compile(r"\b(?:each|every|ea)\b", re.IGNORECASE)


def bundle_from(
    made: Sequence[Node], last: Node, clause: int, joined: bool = False
) -> int | None:
    """Where the list begins that shares the place of `last`; None where it stands alone.

    clause: the first node of the present clause, which a list does not reach over. joined: "and"
    stands before `last`.
    """
    if _first_shared(made, last):
        return len(made) - 1
    first = _list_from(made, last, clause)
    first = _knitted_from(made, last, clause) if first is None else first
    return _pair_from(made, last) if first is None and joined else first


def _first_shared(made: Sequence[Node], last: Node) -> bool:
    """ "Sc, dc in 1st dc": the stitch that a row begins with shares the first place of all."""
    one = made[-1] if made else None
    if not isinstance(last, Work) or not isinstance(one, Work):
        return False
    bare = one.place.where is Where.PLAIN and one.number is None
    crochets = last.stitch.craft is Craft.CROCHET and last.number is None
    first = bare and crochets and last.place.where is Where.FIRST and last.place.nth <= 1
    return first and all(isinstance(before, Act) for before in made[:-1])


def _list_from(made: Sequence[Node], last: Node, clause: int) -> int | None:
    if not isinstance(last, Work) or not _may_share(last):
        return None
    first, chained = len(made), _all_in(last) or _is_petal(made, last, clause)
    while first > clause:
        one = made[first - 1]
        # Bare stitches share the place where a chain parts them from it: "dc, ch 2 and dc in sp".
        chained = chained or isinstance(one, Chain)
        if not joins_list(one, chained):
            break
        first -= 1
    while first < len(made) and not (
        isinstance(made[first], Work) and not _closed_picot(made, first)
    ):
        first += 1
    works = [one for one in made[first:] if isinstance(one, Work)]
    if not works:
        return None
    chained = any(isinstance(one, Chain) for one in made[first:])
    if last.number is None and not chained and not _all_in(last):
        return first if _is_petal(made, last, clause) else None
    if last.number is None and works[-1].stitch != last.stitch:
        return None
    alike = [a for a, b in zip(works, [*works[1:], last], strict=True) if a.stitch == b.stitch]
    if not chained and alike:
        # "3 sc, 2 sc in next st": two of one kind would have been said as five.
        return None
    return first if chained or last.place.noun in OPENINGS or len(works) < 6 else None


def _closed_picot(made: Sequence[Node], at: int) -> bool:
    """Whether a picot only names what was closed before it, "sl st in 4th st from hook for picot":
    no part of the shell behind it.
    """
    one = made[at]
    before = next((x for x in reversed(made[:at]) if isinstance(x, Work)), None)
    named = isinstance(one, Work) and one.stitch.name == "picot"
    return named and before is not None and before.place.where is Where.CHAIN


def _is_petal(made: Sequence[Node], last: Work, clause: int) -> bool:
    """Whether stitches rise and fall again to the last, which goes into a space: "sc, hdc, 3 dc,
    hdc, sc in each loop", "sc, 4 dc, sc in next loop".
    """
    if last.place.noun not in OPENINGS or last.number is not None:
        return False
    heights, most = [last.stitch.height], 1
    for one in reversed(made[clause:]):
        if not joins_list(one, True) or not isinstance(one, Work):
            break
        heights.append(one.stitch.height)
        most = max(most, one.number.values[0] if one.number is not None else 1)
    top = heights.index(max(heights))
    rises = heights[: top + 1] == sorted(set(heights[: top + 1]))
    many = len(heights) > 4 or (len(heights) == 3 and most > 2 and top == 1)
    return many and rises and heights == heights[::-1]


def _knitted_from(made: Sequence[Node], last: Node, clause: int) -> int | None:
    """Where a knitted clause begins that is all worked into every stitch, "K1, p1 in every st": one
    stitch at a time, by turns; None for any other.
    """
    if not isinstance(last, Work) or last.stitch.craft is not Craft.KNITTING:
        return None
    works = [one for one in made[clause:] if not isinstance(one, Act)]
    if last.place.where is not Where.EACH or not 0 < len(works) < 5:
        return None
    if not SINGLY.search(last.place.text):
        # "K1, k2tog, k rem sts": to the end, not each.
        return None
    told = [*works, last]
    single = all(
        isinstance(one, Work) and one.stitch.makes == 1 and one.number in (None, ONE)
        for one in told
    )
    by_turns = all(
        isinstance(one, Work) and isinstance(other, Work) and one.stitch != other.stitch
        for one, other in pairwise(told)
    )
    plain = all(isinstance(one, Work) and one.place.where is Where.PLAIN for one in works)
    return clause if single and by_turns and plain else None


def _pair_from(made: Sequence[Node], last: Node) -> int | None:
    """Where a pair begins that "and" joins into one place: "sc and hdc in next st"; None where it
    is no such pair.
    """
    before = made[-1] if made else None
    if not isinstance(before, Work) or not isinstance(last, Work) or not _may_share(last):
        return None
    bare = before.number is None and last.number is None and before.place.where is Where.PLAIN
    if not bare or before.stitch == last.stitch or not joins_list(before, True):
        return None
    return len(made) - 1 if last.place.where is not Where.EACH else None


HOW = ("working", "putting", "making", "placing")


def each_and_each(before: Node | None, node: Node) -> Work | None:
    """ "1 sc in each dc and 1 sc in each ch-1 loop": one instruction for both kinds of places; "dc,
    working two stitches into every one", "dc around, working 1 dc in each st and each ch": how it
    is done; else None.
    """
    if not isinstance(before, Work) or not isinstance(node, Work) or before.stitch != node.stitch:
        return None
    all_over = before.place.where is Where.REST and node.place.noun not in (*OPENINGS, "ch")
    bare = (before.place.where is Where.PLAIN or all_over) and before.number is None
    if bare and node.place.where is Where.EACH and node.words.lower().startswith(HOW):
        return replace(node, words=f"{before.words}, {node.words}")
    places = (before.place, node.place)
    single = all(one.number is None or one.number.values == (1,) for one in (before, node))
    if not single or any(place.where is not Where.EACH or place.nth for place in places):
        return None
    if (before.place.noun in OPENINGS) == (node.place.noun in OPENINGS):
        return None
    stitches, openings = sorted(places, key=lambda place: place.noun in OPENINGS)
    text = f"{before.place.text} and {node.place.text}"
    place = replace(
        stitches, among=(*stitches.among, openings.noun), chain=openings.chain, text=text
    )
    return replace(before, place=place, words=f"{before.words} and {node.words}")


def joined_pair(before: Node | None, node: Node) -> Repeat | None:
    """ "make one and narrow five times": the two joined by "and", that many times; else None."""
    if not isinstance(node, Work) or not isinstance(before, Work):
        return None
    if node.stitch.craft is not Craft.KNITTING or before.by is not None or node.by is None:
        return None
    once = replace(node, number=None, by=None)
    words = f"{before.words} and {node.words}"
    return Repeat(before.span, words, (before, once), Until.TIMES, node.by, joined=True)


def _may_share(last: Work) -> bool:
    place = last.place
    if last.stitch.craft is not Craft.CROCHET or last.stitch.kind in CHANGES:
        return False
    if place.where not in SHARED:
        return False
    return place.where is Where.EACH or place.number.values == (1,) or place.noun in OPENINGS


def _all_in(last: Work) -> bool:
    """ "dc, ch 1 and dc all in next dc": the words say that the list shares the place."""
    return " all in" in last.words.lower()


def joins_list(one: Node, bare: bool = False) -> bool:
    """Whether a node may stand in a list that shares a place. bare: without a number too."""
    if isinstance(one, Act):
        return not one.words.strip()
    if isinstance(one, Chain):
        return True
    if not isinstance(one, Work) or one.stitch.kind in CHANGES:
        return False
    return one.place.where is Where.PLAIN and (one.number is not None or bare)


IN_IT = re.compile(
    r"^(?:all )?in(?:to)? (?:the |that |same |it|this )?(?:same )?(?:sp|space|loop|lp)?$"
)


def says_it_again(one: Work) -> bool:
    """Whether a stitch of a group only says the group's place again: "3 dc in the sp"."""
    return IN_IT.match(one.place.text.lower().strip()) is not None


def leaves_place(made: Sequence[Node], last: Node) -> bool:
    """Whether the list that shares a place is over before `last`, which has a place of its own; in
    knitting such a list knits, purls or lays the yarn over by turns, one at a time.
    """
    if isinstance(last, Skip | Repeat):
        return True
    if isinstance(last, Group):
        return last.place.where not in (Where.PLAIN, Where.SAME)
    if isinstance(last, Work) and last.place.where not in (Where.PLAIN, Where.SAME):
        return not (says_it_again(last) or slips_back(last))
    works = [one for one in made if isinstance(one, Work)]
    if not works or works[-1].stitch.craft is not Craft.KNITTING:
        return False
    if not isinstance(last, Work):
        return True
    single = last.number is None or last.number.values == (1,)
    return not single or last.stitch.takes > 1 or last.stitch == works[-1].stitch


def slips_back(one: Work) -> bool:
    """ "ch 8, sl st in last sc": a slip stitch into what was just made, that closes a picot."""
    made = one.place.where is Where.LAST or "made" in one.place.text.lower()
    return one.stitch.kind is Kind.SLIP and made


def in_it(one: Node) -> Node:
    """A stitch that says its group's place again, as one without a place; others as they are."""
    if isinstance(one, Work) and (says_it_again(one) or slips_back(one)):
        return replace(one, place=replace(one.place, where=Where.PLAIN))
    return one
