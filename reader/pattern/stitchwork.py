"""Stitches with their number and place: "2 sc in next st", "k3", "inc x 6", "p to last 3 sts" ->
Work.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.along_edge import along_edge, edges_untold
from reader.pattern.begun_at import begun_at
from reader.pattern.by_colour import in_colour, skip_colour
from reader.pattern.center_stitch import in_center
from reader.pattern.chained_places import over_whole_chain
from reader.pattern.clusters import cluster_behind, over_so_many, sized_cluster
from reader.pattern.cursor import STOPS, Cursor, Found
from reader.pattern.evenly_placed import evenly_in
from reader.pattern.groups_of import find_groups_of
from reader.pattern.knitting_fabric import at_ends, taken_up, the_number
from reader.pattern.no_stitch import nth_of_list, of_no_stitch, plain_before
from reader.pattern.number_behind import number_behind, times_behind
from reader.pattern.on_the_needle import until_on_needle
from reader.pattern.other_place import in_other_place, on_as_many
from reader.pattern.picots import at_picot
from reader.pattern.place_first import (
    PLACES_FIRST,
    VERBS,
    each_first,
    entered,
    inverted,
    place_first,
)
from reader.pattern.places import find_place
from reader.pattern.rings import closed
from reader.pattern.so_often import count_after
from reader.pattern.times_of_one import times_of_one
from reader.pattern.to_opening import to_opening
from reader.pattern.together import drawn_as_one, drawn_together, place_or_plain, sts_together
from reader.pattern.told_behind import (
    chained_each,
    chains_after,
    chains_between,
    explained,
    made_of,
    parted,
    so_many_changes,
)
from reader.pattern.tree import ONE, Act, Deed, Group, Node, Num, Place, Where, Work
from reader.pattern.up_to import to_last_of
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind, Stitch

NOUNS = ("sts", "st", "stitches", "stitch")


def find_work(cur: Cursor, made: list[Node]) -> Node | None:
    """The stitches that stand here, taken; None (nothing taken) when none do."""
    start = cur.at
    number: Num | None = None
    more = False
    _verbs(cur)
    if cur.at > start and cur.accept("even in", "across in", "around in", "in"):
        whole = _in_stitch(cur, start)
        if whole is not None:
            return whole
        cur.at = start + 1
    if cur.at > start and entered(cur):
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    if (cur.low() in PLACES_FIRST and place_first(cur)) or each_first(cur):
        return inverted(cur, start)
    ahead = _told_first(cur, start, made) or sts_together(cur, start)
    if ahead is not None:
        return ahead
    sized = sized_cluster(cur)
    if sized is None and cur.kind() == "num":
        number = cur.number()
        cur.at += 1 + cluster_behind(cur)
        more = cur.accept("more")
        cur.accept("plain", "x", "complete")
    elif cur.accept("a pair of", "a couple of"):
        number = Num((2,))
    elif cur.low() in ("a", "an", "one", "another"):
        cur.at += 1
    elif cur.kind() == "ord" and cur.at > start and cur.stitch(1) is not None:
        # "work 1st corner": which one it is, not how many.
        cur.at += 1
    sized = sized or sized_cluster(cur)
    found, length = (sized[0], sized[2]) if sized else (cur.stitch(), 0)
    if found is None:
        counted = in_colour(cur, start, number, made) or _stitches_in(cur, start, number, made)
        counted = counted or _before_change(cur, start, number)
        return counted or _bare_number(cur, start, number, made)
    cur.at += length or found.length
    node = over_so_many(_finish(cur, start, number, found, made))
    node = times_of_one(cur, at_picot(cur, on_as_many(node), made), made)
    return _once_more(node) if more and made else begun_at(cur, closed(node, made), made)


def _verbs(cur: Cursor) -> None:
    while cur.low() in VERBS:
        cur.at += 1


def _told_first(cur: Cursor, start: int, made: list[Node]) -> Node | None:
    """ "Working into 2nd ch from hook, 2 sc": the stitches behind their place; "4 groups of 3 dc":
    behind how many groups.
    """
    at = cur.at
    if (groups := find_groups_of(cur, made, find_work)) is not None:
        return groups
    if cur.low(-1) != "working" or cur.low() not in ("in", "into") or at == start:
        return None
    place = find_place(cur)
    if place is None or place.where is not Where.CHAIN or not cur.accept(","):
        cur.at = at
        return None
    node = find_work(cur, made)
    if not isinstance(node, Work) or node.place.where is not Where.PLAIN:
        cur.at = at
        return None
    return replace(node, span=cur.span(start), words=cur.said(start), place=place)


def _once_more(node: Node | None) -> Node | None:
    """ "Working 1 more dc in last st": in a stitch that was worked into already."""
    if not isinstance(node, Work) or node.place.where not in (Where.LAST, Where.NEXT):
        return node
    last = node.place.where is Where.LAST or node.place.noun == "tch"
    return replace(node, place=replace(node.place, where=Where.SAME, noun="st")) if last else node


def _stitches_in(cur: Cursor, start: int, number: Num | None, made: list[Node]) -> Node | None:
    """ "8 stitches in double crochet", "2 stitches in every stitch": of the stitch named, or of the
    one before.
    """
    if number is None or cur.book.craft is Craft.KNITTING or cur.low() not in NOUNS:
        return None
    at = cur.at
    cur.at += 1
    if cur.accept("in", "of"):
        found = cur.stitch()
        if found is not None and cur.low(found.length) not in NOUNS:
            cur.at += found.length
            return _finish(cur, start, number, found, made)
        cur.at = at + 1
    place = find_place(cur) if cur.low() in ("in", "into", "under", "over") else None
    if place is None or place.where is Where.PLAIN:
        cur.at = at
        return None
    last = next((one.stitch for one in reversed(made) if isinstance(one, Work)), None)
    stitch = last or stitch_named("st", cur.book.craft)
    return Work(cur.span(start), cur.said(start), stitch, number, place) if stitch else None


PATTERNS = (
    "pattern", "patt", "meshes", "mesh",
    *(f"{what} pattern" for what in ("mesh", "shell", "loop", "the", "same", "this")),
)  # fmt: skip
"""What a row goes on in, whatever its stitches are."""


def _in_stitch(cur: Cursor, start: int) -> Node | None:
    """ "work in sc": the whole row of it; "work in pattern across 12 sts": so many."""
    found = cur.stitch()
    if found is None and not cur.accept(*PATTERNS):
        return None
    stitch = found.stitch if found else stitch_named("st", cur.book.craft)
    cur.at += found.length if found else 0
    changed = cur.low() == "working" and cur.kind(1) == "num"
    place = None if changed else _so_many(cur) or find_place(cur)
    if place is not None and place.where is Where.REST:
        # "work in pattern across row to within last 6 sts"
        place = to_last_of(cur) or place
    here = cur.span(start)
    if place is None or place.where is Where.PLAIN:
        place = Place(Where.REST, here)
    return Work(here, cur.said(start), stitch, None, place) if stitch else None


def _so_many(cur: Cursor) -> Place | None:
    """ "across 1st 12 sts"."""
    start = cur.at
    cur.accept("across", "over", "for")
    cur.accept("the")
    cur.accept("first", "1st", "next", "last")
    number = cur.number() if cur.kind() == "num" and cur.low(1) in NOUNS else None
    if number is None:
        cur.at = start
        return None
    cur.at += 2
    return Place(Where.NEXT, cur.span(start), number, "st", True)


def _numbered(cur: Cursor, stitch: Stitch, number: Num | None) -> tuple[Stitch, Num | None]:
    """The stitch with the number before or behind it, and the decrease that "together" makes of
    the two.
    """
    if stitch.name in ("inc", "dec") and number is None:
        number = so_many_changes(cur)
    together = drawn_together(cur, stitch.name, number)
    if together is not None:
        stitch = together
        number = None if cur.book.craft is Craft.KNITTING else number
    cur.accept(*NOUNS)
    if number is None and number_behind(cur):
        number = cur.number()
        cur.at += 1
        later = drawn_together(cur, stitch.name, number)
        if later is not None:
            stitch, number = later, None
        cur.accept(*NOUNS)
    if cur.book.craft is Craft.KNITTING and number is not None:
        # "knit 2 stitches together", "knit 4 plain stitches"
        cur.accept("plain stitches", "plain sts")
        stitch = drawn_together(cur, stitch.name, number) or stitch
        number = None if stitch.takes > 1 and stitch.takes == number.values[0] else number
    return stitch, number


def _finish(
    cur: Cursor, start: int, number: Num | None, found: Found, made: list[Node]
) -> Node | None:
    stitch = found.stitch
    plain = cur.book.craft is Craft.KNITTING and stitch.kind is Kind.STITCH
    if plain and (back := taken_up(cur, start, number)) is not None:
        return back
    stitch, number = _numbered(cur, stitch, number)
    by = times_behind(cur)
    number = _multiplied(number, by)
    skip_colour(cur, number)
    if cur.book.craft is Craft.KNITTING and stitch.makes != stitch.takes:
        ends = at_ends(cur, start, stitch.makes - stitch.takes, number)
        if ends is not None:
            return ends
    if stitch.kind in (Kind.GROUP, Kind.CLUSTER):
        made_of(cur)
    cur.accept(*AS_BEFORE)
    explained(cur, stitch)
    if cur.book.craft is Craft.KNITTING:
        if cur.any_words(IN_ITS_BACK) and cur.low(cur.any_words(IN_ITS_BACK)) in (*STOPS, ""):
            cur.accept(*IN_ITS_BACK)
        number = number or until_on_needle(cur, made)
        number, place = _how_far(cur, number)
    elif (untold := edges_untold(cur, start, number)) is not None:
        return untold
    else:
        place = _where(cur, stitch, number, made)
        number = _multiplied(number, _times_in_ring(cur, place))
    stitch, place = drawn_as_one(cur, stitch, over_whole_chain(number, place))
    name = found.special.name if found.special else ""
    after = chains_after(cur)
    if after:
        cur.accept(",")
        place = place_or_plain(cur) if place.where is Where.PLAIN else place
        one = Work(cur.span(start), cur.said(start), stitch, None, place, 0, name)
        return chained_each(one, after, number or ONE)
    between = chains_between(cur)
    place = place_or_plain(cur) if between and place.where is Where.PLAIN else place
    return parted(Work(cur.span(start), cur.said(start), stitch, number, place, between, name, by))


def _where(cur: Cursor, stitch: Stitch, number: Num | None, made: list[Node]) -> Place:
    """In crochet: where the stitches go."""
    place = along_edge(cur, number) or in_center(cur, made) or to_opening(cur, stitch, number)
    return place or evenly_in(cur, number) or place_or_plain(cur)


IN_ITS_BACK = (
    "in back of st", "in back of the st", "in the back of st", "in the back of the st",
    "into back of st", "into the back of st", "into back of the st", "in back of stitch",
    "in the back of the stitch", "into the back of the stitch", "in back loop", "in the back loop",
    "into the back", "in the back", "in back",
)  # fmt: skip
"""How a stitch is entered, where nothing says which."""
AS_BEFORE = (
    "as before", "as usual", "made as before", "from cn", "from dpn", "from cable needle",
    "from the cable needle", "from holder",
)  # fmt: skip
"""Said of stitches that are known already, or wait on a needle."""
ONWARD = ("plain", "straight", "even", "on", "along", "forward", "across", "over", "down")
"""Between a stitch and how far it goes, these add nothing."""


def _how_far(cur: Cursor, number: Num | None) -> tuple[Num | None, Place]:
    """In knitting: the number where it only follows now, and how far the stitch is worked."""
    if cur.low() in ONWARD and cur.low(1) in ("until", "till", "to", "up", "all", "as"):
        cur.at += 1
    if number is not None and cur.low() == "plain" and cur.low(1) in (*STOPS, ""):
        cur.at += 1
        return number, Place(Where.PLAIN, cur.span(max(cur.at - 1, 0)))
    if cur.low() == "across" and cur.low(1) in ("remaining", "rem", "other"):
        cur.at += cur.kind(2) == "num" and cur.low(3) in NOUNS
    if number is None and cur.low() in ("the", "remaining", "rem", "other"):
        number = the_number(cur)
    place = place_or_plain(cur)
    if place.where is Where.SAME and "needle" in place.text.lower():
        place = Place(Where.PLAIN, place.span)
    return number, place


def _times_in_ring(cur: Cursor, place: Place) -> Num | None:
    """How often, told behind "in ring"; a star there closes a list, "*ch 2, 3 dc in ring* x 3"."""
    ringed = place.where is Where.RING and cur.kind() != "stars"
    return count_after(cur) if ringed else None


def _multiplied(number: Num | None, times: Num | None) -> Num | None:
    """ "2 sc x 3" is 6; a number or a "times" alone is itself."""
    if number is None or times is None:
        return number or times
    return Num(tuple(one * times.at(size) for size, one in enumerate(number.values)))


def _bare_number(cur: Cursor, start: int, number: Num | None, made: list[Node]) -> Node | None:
    """ "2 in next": the stitch understood from the one before; "dec" words with no stitch are left.
    """
    if number is None and cur.kind() == "times" and cur.low(1) in ("in", "into"):
        # "hdc once in next st and twice in the one after"
        number = cur.number()
        cur.at += 1
    if number is not None and cur.low() in ("in", "into", "over"):
        last = plain_before(made, cur.book.craft)
        if last is not None:
            place = in_center(cur, made) or nth_of_list(cur) or find_place(cur)
            if place is not None:
                here, words = cur.span(start), cur.said(start)
                return replace(last, span=here, words=words, number=number, place=place)
        if last is None and (untold := of_no_stitch(cur, start, number)) is not None:
            return untold
        cur.at = start if last is None else cur.at
    elif number is not None and cur.accept("to finish", "at the end", "to close", "to end it"):
        last = next((one for one in reversed(made) if isinstance(one, Work)), None)
        if last is not None:
            alone = Place(Where.PLAIN, cur.span(start))
            words = cur.said(start)
            return replace(last, span=cur.span(start), words=words, number=number, place=alone)
    cur.at = start
    if (number is None and made and isinstance(made[-1], Work | Group)) or (
        len(made) > 1
        and isinstance(made[-1], Act)
        and isinstance(made[-2], Work)
        and number is None
    ):
        again = in_other_place(cur, start, made)
        if again is not None:
            return again
    cur.at = start
    if cur.low() in ("even", "straight", "plain"):
        place = find_place(cur)
        stitch = stitch_named("st", cur.book.craft)
        if place is not None and stitch is not None:
            return Work(cur.span(start), cur.said(start), stitch, None, place)
    cur.at = start
    return None


def _before_change(cur: Cursor, start: int, number: Num | None) -> Node | None:
    """ "two and a decrease": so many plain stitches before it, in a crocheted row."""
    crochets = cur.book.craft is Craft.CROCHET and cur.low() in ("and", "then")
    if number is None or not crochets:
        return None
    found = cur.stitch(2) if cur.low(1) in ("a", "an", "one") else cur.stitch(1)
    plain = stitch_named("sc", cur.book.craft)
    if found is None or plain is None:
        return None
    if found.stitch.kind not in (Kind.DECREASE, Kind.INCREASE):
        return None
    here = Place(Where.PLAIN, cur.span(start))
    return Work(cur.span(start), cur.said(start), plain, number, here)
