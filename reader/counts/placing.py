"""One instruction -> what it takes and makes: the rules of place, number and kind of stitch."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import lru_cache

from reader.counts.fabric import Run, any_space, foundation
from reader.counts.group_stitches import group_places, group_told, groups_unknown
from reader.counts.openings import BETWEEN, UNITS, is_opening, of_chain_ahead, wanted
from reader.counts.putting import cap, put, put_all_apart, put_apart, put_in_every_nth
from reader.counts.reaching import all_places
from reader.counts.tally import Need, Tally
from reader.counts.walk import Walk
from reader.counts.worked import Move, MoveKind
from reader.pattern.tree import ONE, Place, Where, Work
from reader.terms.stitches import Craft, Kind

LONGEST_PICOT = 5
"""Chains; a longer chain closed on its own stitch is a petal or a loop to be worked into."""
SHORTEST_RING = 6
"""Chains that a slip stitch closes to a ring amid a loop, which may be worked into by itself."""
OTHER_EDGE = ("other side", "opposite side", "down the other")
COMPLETES = re.compile(
    r"\b(?:complete|finish|first|1st|starting|beginning|beg)\b", re.IGNORECASE
)
LAYERS = re.compile(
    r"(?<!draw |pull |wool |yarn |over )\b(?:through|thru) (?:both|all|2|two)\b"
    r"(?!.{0,16}\b(?:loop|lp)s?\b)", re.IGNORECASE
)
ON_SO_MANY = re.compile(r"on (?:the )?\d+ (?!st|ch)", re.IGNORECASE)
"""Behind a greater number, old books tell how many all are worked on: "7 dc on 5 tc"."""
LONE = re.compile(r"\bbet(?:w|ween)? .*(?:groups?|grps?|shells?|petals?|scallops?|fans?|v-sts?)$")
"""A stitch that stands alone between groups."""
AROUND = re.compile(r"(?:all )?around\b", re.IGNORECASE)
AROUND_EDGE = re.compile(r"\b(?:a?round|evenly along)\b", re.IGNORECASE)


def work_into(work: Work, tally: Tally, need: Need, limit: tuple[int, int] | None = None) -> None:
    """Adds one Work to the tally."""
    place, stitch = work.place, work.stitch
    loop = place.number.values[0]
    if place.noun == "ch" and loop > 2 and not place.each and _one_loop(work, tally, loop):
        place = replace(place, noun="sp", chain=loop, number=ONE)
        work = replace(work, place=place)
    other_edge, layers = _edges_told(work.words, place.text)
    if other_edge:
        to_other_edge(tally)
    if layers and work.place.where is not Where.RING:
        # Two layers are worked as one: how many stitches lie below is not known from the row.
        tally.walk.lost()
    number = work.number.at(tally.size) if work.number is not None else None
    # Only the last two of the runs before can change: what all hold is not summed up again.
    last, takes_before = max(0, len(tally.runs) - 2), tally.walk.takes
    before, spaces_before = tally.made_from(last)
    if stitch.kind is Kind.SLIP and place.where is not Where.RING:
        _slip(work, number, tally, need, limit)
    else:
        _amount(work, number, tally, need, limit)
    after, spaces_after = tally.made_from(last)
    made, takes = after - before, tally.walk.takes - takes_before
    if stitch.makes > 0 and not (stitch.takes == 1 == stitch.makes):
        run = made // stitch.makes
    else:
        run = made if stitch.makes else takes // max(1, stitch.takes)
    kind = MoveKind.SLIP if stitch.kind is Kind.SLIP else MoveKind.WORK
    spaces = spaces_after - spaces_before
    tally.moves.append(
        Move(kind, work.words, work.span, takes, made, spaces, stitch.name, max(1, run), place.text)
    )


@lru_cache(maxsize=512)
def _edges_told(words: str, place: str) -> tuple[bool, bool]:
    """Whether a place is on the other edge of a chain, and whether words work two layers as one."""
    return any(told in place for told in OTHER_EDGE), LAYERS.search(words) is not None


def _one_loop(work: Work, tally: Tally, chains: int) -> bool:
    """Whether "1 dc in the 18 ch" is the loop of 18 chains, not eighteen places."""
    single = work.number is None or work.number.values[0] in (1, chains)
    if work.place.where not in (Where.NEXT, Where.FIRST, Where.LAST) or not single:
        return False
    return tally.walk.has("chains", chains)


def completes(work: Work) -> bool:
    """ "ch 3 and complete shell": a group that the row's first chain belongs to."""
    name = work.words.removesuffix(work.place.text)
    return work.stitch.kind is Kind.GROUP and COMPLETES.search(name) is not None


def to_other_edge(tally: Tally) -> None:
    """Goes on along the other side of the foundation chain, as far as the first side went, and
    without its last chain where the work went around that; without a chain nothing is known of
    what lies there.
    """
    chain = sum(run.n for run in tally.below.runs) if tally.below.chained else 0
    if chain:
        worked = (one for one in reversed(tally.moves[-4:]) if one.kind is MoveKind.WORK)
        last = next(worked, None)
        around = last is not None and last.makes > last.takes > 0
        tally.walk.over(foundation(max(1, chain - tally.turning - around), True))
        tally.elastic = True
    else:
        tally.walk.lost()


def _slip(
    work: Work, number: int | None, tally: Tally, need: Need, limit: tuple[int, int] | None
) -> None:
    """Slip stitches leave nothing, unless the whole row is of them."""
    place = work.place
    if place.where in (Where.REST, Where.EACH):
        places, used = all_places(place, tally, need, limit)
        tally.make(used or places, "sl st")
        return
    if is_opening(place, tally.walk):
        again = place.where is Where.SAME and (tally.spaced or tally.walk.space_takes > 0)
        tally.spaced = tally.fastened = True
        tally.walk.take_spaces(0 if again else 1, wanted(place, tally.walk))
        return
    own = place.noun in ("ch", "tch") and bool(tally.runs) and not tally.runs[-1].is_stitch
    # "* ch 4, skip 2 ch, sl st in next ch" goes along the chain below, not along its own.
    chain = tally.below.stitches is None or set(tally.below.kinds) == {"ch"}
    along = chain and not (tally.picoted or tally.branched) and place.where is Where.NEXT
    own = own and not (along and "next" in place.text)
    last = tally.runs[-1] if tally.runs else None
    if place.where is Where.CHAIN and place.nth == 2 and last is not None and last.chains > 3:
        # "ch 4, sl st in 2nd ch from hook, sc, hdc": worked back along the chain just made.
        _into_chain(work, 1, tally)
        return
    if place.where in (Where.SAME, Where.CHAIN) or own:
        whole = last is not None and last.chains == place.nth
        tally.picoted = place.where is Where.CHAIN and not (whole and len(tally.runs) > 1)
        tally.fastened = place.where is Where.CHAIN and not tally.picoted
        if tally.picoted and last is not None and last.n == 1 and place.nth >= SHORTEST_RING:
            tally.runs[-1] = replace(last, ring=place.nth)
        if last is not None and last.chains <= LONGEST_PICOT and (whole or not tally.picoted):
            tally.close_picot()
        return
    named = place.noun if place.noun not in ("st", "ch", "tch") else ""
    tally.fastened = place.where is Where.NEXT
    if place.where is Where.PLAIN and not tally.runs and (number or 1) > 5:
        # "32 sl st" over 32 stitches: the whole round is of them.
        tally.make(number or 0 if number == tally.walk.left else 0, "sl st")
    tally.walk.take(max(number or 1, place.number.at(tally.size)), named)


def _amount(
    work: Work, number: int | None, tally: Tally, need: Need, limit: tuple[int, int] | None
) -> None:
    """Takes and makes what a Work says."""
    place, stitch = work.place, work.stitch
    if completes(work) and tally.makes == 1:
        # "ch 3 and complete shell": the chain is its first stitch.
        stitch = replace(stitch, makes=stitch.makes - 1)
        work = replace(work, stitch=stitch)
    n = 1 if number is None else max(0, cap(number))
    where = place.where
    if where is Where.RING:
        put(work, tally, n, 1)
    elif where is Where.CHAIN:
        _into_chain(work, n, tally)
    elif where is Where.SAME:
        _into_same(work, n, tally)
    elif where in (Where.EACH, Where.REST, Where.TO_LAST):
        _into_all(work, number, tally, need, limit)
    elif where is Where.UNUSED:
        tally.elastic = not _to_corner(work, number or 1, tally) or tally.elastic
    elif where is Where.ELSEWHERE:
        alike = tally.below.stitches if place.each and place.number.values == (1,) else None
        put(work, tally, 1, alike or n * place.number.at(tally.size))
    elif where is Where.PLAIN:
        tally.walk.take(n * stitch.takes)
        put(work, tally, n, 1)
    else:
        _into_next(_alone(work, tally), n, number is not None, tally)


def _to_corner(work: Work, per: int, tally: Tally) -> bool:
    """ "1 dc in each dc to next corner": every stitch before the corner's space; False where the
    row below has no spaces that tell of a corner.
    """
    walk = tally.walk
    if work.place.noun != "corner" or not walk.known or not work.place.each:
        return False
    corners = any(run.corner for run in walk.ahead())
    ahead = walk.to_next((lambda run: run.corner) if corners else any_space)
    if ahead is None or not ahead[0]:
        return False
    walk.take(ahead[0])
    put(work, tally, per, ahead[0] + ahead[1] * ("sp" in work.place.among))
    return True


def _into_chain(work: Work, n: int, tally: Tally) -> None:
    """ "in 2nd ch from hook": the chains before it are passed."""
    walk, place = tally.walk, work.place
    last = tally.runs[-1] if tally.runs else None
    if last is not None and last.name == "sp" and last.chains > place.nth > 1 and place.nth < 6:
        # "ch 7, sc in 2nd ch from hook, dc in next 5": worked back along the chain just made.
        walk.aside = last.chains - place.nth
        tally.branched = True
        tally.runs[-1:] = [Run("sp", last.n - 1, last.chains)] if last.n > 1 else []
        put(work, tally, n, 1)
        return
    if tally.below.chained:
        along_chain(place, tally)
        walk.take(max(1, work.stitch.takes))
    elif walk.takes == 0 and tally.carried >= place.nth > 1 and not tally.runs:
        walk.aside = tally.carried - place.nth
    # Otherwise the chain was made in this row: nothing of the row below is used.
    put(work, tally, n, 1)


def along_chain(place: Place, tally: Tally) -> None:
    """Passes over the chains before the one that is worked into, where the row is the first."""
    if tally.walk.takes == 0:
        tally.walk.over(foundation(sum(run.n for run in tally.below.runs), True))
        tally.walk.take(max(0, place.nth - 1))


def _into_same(work: Work, n: int, tally: Tally) -> None:
    walk = tally.walk
    opening = is_opening(work.place, walk)
    if opening:
        if walk.space_takes == 0 and not tally.spaced:
            walk.take_spaces(1, wanted(work.place, walk))
        tally.spaced = True
    elif walk.takes == 0 and not tally.spaced:
        walk.take(1)
    passed = "skipped" in work.place.text or "missed" in work.place.text
    put(work, tally, n, work.place.number.at(tally.size) if passed else 1)
    tally.grouped = tally.grouped or opening
    tally.close_group()


def _into_all(
    work: Work, number: int | None, tally: Tally, need: Need, limit: tuple[int, int] | None
) -> None:
    place, stitch, walk = work.place, work.stitch, tally.walk
    counted = place.where is Where.REST and place.sides == 1 and number is not None and number > 1
    if counted and stitch.takes == 1 and stitch.craft is Craft.CROCHET:
        # "sc 24 around": the number is that of the row; "evenly" tells that it may be another.
        spread = "even" in place.text and limit is None and bool(walk.left)
        walk.take(max(0, (walk.left or 0) - need.stitches) if spread else number or 0)
        put(work, tally, number or 0, 1)
        return
    opening = is_opening(place, walk)
    tally.unread = tally.unread or groups_unknown(place, tally)
    if place.where is Where.REST and tally.below.flat and AROUND_EDGE.search(place.text):
        # Around a piece that was turned: what lies along its sides is not known.
        walk.lost()
    none_left = walk.known and walk.left == 0 and walk.takes > 0 and AROUND.match(place.text)
    places, used = all_places(place, tally, need, limit)
    if none_left and not (places or opening) and stitch.craft is Craft.CROCHET:
        # "sc around leg 2, sc around leg 1": somewhere else, since all of the row is worked.
        tally.unread = True
    if place.nth > 1 and not opening:
        put_in_every_nth(work, used, number or 1, opening, tally)
        return
    per = number if number is not None and (place.each or place.where is Where.EACH) else 1
    if stitch.craft is Craft.KNITTING and stitch.takes == stitch.makes == 1:
        # "k 1, p 2 to end": each is worked into a stitch of its own.
        per = 1 if place.where is Where.REST else per
    times = places // stitch.takes if stitch.takes > 1 else places
    if stitch.takes > 1 and places % stitch.takes:
        tally.uneven = (places, stitch.takes)
        if stitch.takes == 2:
            times += tally.choice.cut_ending
    if work.between and per == 1 and times > 1:
        put_all_apart(work, tally, times)
        tally.sections = places if opening else tally.sections
        return
    put(work, tally, per, times, (opening or place.noun in UNITS) and per > 1)
    if opening:
        tally.sections = places


def _into_next(work: Work, n: int, given: bool, tally: Tally) -> None:
    place, stitch, walk = work.place, work.stitch, tally.walk
    m = cap(place.number.at(tally.size)) * place.sides
    plural = place.each or m > 1
    if tally.below.chained and walk.takes == 0 and place.nth > 1:
        _into_chain(work, n, tally)
        return
    if is_opening(place, walk) or of_chain_ahead(place, walk):
        _into_openings(work, n, m if plural else 1, tally)
        return
    if stitch.takes > 1:
        total = m if plural and m > stitch.takes and m % stitch.takes == 0 else stitch.takes
        times = max(n, total // stitch.takes)
        walk.take(times * stitch.takes, _kind_in_lace(place, walk, times * stitch.takes))
        put(work, tally, times, 1)
        return
    if place.noun == "tch" and tally.spaced:
        stitches, spaces = walk.to_last()
        # The square that ends the row lies over the last of those passed.
        squares = (stitches + tally.netted * spaces + 1) // (1 + tally.netted) - 1
        tally.squares_left = max(0, squares) if tally.netted else 0
    name = place.noun if place.noun not in ("st", "ch", "tch") else ""
    if m == 2 and BETWEEN.search(place.text) and not group_told(place.text)[0]:
        # "tr between next 2 tr": one place; the second of them is the first of the next two, where
        # more follow.
        walk.take(1 if walk.in_row(name) > 2 else m, name)
        put(work, tally, n, 1)
        return
    if _into_group(work, n, m if plural else 1, tally):
        return
    if not plural:
        walk.take(1 if stitch.takes or stitch.name == "yo" else 0, name)
        put(work, tally, n, 1)
        return
    each = place.each or stitch.kind is Kind.INCREASE or not given
    per = n if each or n != m or not tally.choice.pair_each else 1
    walk.take(m, name)
    m = 1 if n > m and not each and ON_SO_MANY.match(place.text) else m
    put_apart(work, tally, m) if work.between and per == 1 else put(work, tally, per, m)


def _kind_in_lace(place: Place, walk: Walk, many: int) -> str:
    """The kind of stitch that is named, where so many of it lie ahead in lace: those alone are
    meant, past what lies between them; "" elsewhere.
    """
    return place.noun if walk.opened and walk.named(place.noun) >= many else ""


def _alone(work: Work, tally: Tally) -> Work:
    """Stitches with their place as it is meant: "sc between groups" is the gap between them where
    no such stitch stands alone; where one does, the hook goes on to it.
    """
    place, walk = work.place, tally.walk
    if LONE.search(place.text) is None or place.noun in ("st", "ch", "tch", "sp", "group"):
        return work
    if not walk.known or place.number != ONE:
        return work
    if not walk.has_lone(place.noun) and not walk.to_amid(place.noun):
        return replace(work, place=replace(place, noun="group"))
    walk.to_lone(place.noun)
    return work


def _into_openings(work: Work, n: int, m: int, tally: Tally) -> None:
    """Stitches into the next m spaces; "between next 2 petals" is the one gap between the two."""
    place, walk = work.place, tally.walk
    spaces = 1 if BETWEEN.search(place.text) else m
    tally.spaced = True
    of_pineapple = "pineapple" in place.text
    if of_pineapple and (place.where is Where.FIRST or "remaining" in place.text):
        walk.to_pineapple()
    which = wanted(place, walk)
    begun = place.where is Where.FIRST and walk.known and walk.space_takes > 0 and not of_pineapple
    if not begun or walk.count_spaces(which):
        # Where none is left, "the 1st loop" is the one that the round began in.
        walk.take_spaces(spaces, which)
        if place.noun in UNITS:
            walk.leave_unit()
    if work.stitch.takes > 1 and spaces == work.stitch.takes:
        # "dc2tog over next 2 sps": one stitch.
        put(work, tally, n, 1)
    else:
        put(work, tally, n, spaces, n > 1)


def _into_group(work: Work, n: int, m: int, tally: Tally) -> bool:
    """Stitches into the next group, all of which they use; False where no whole group is meant."""
    places = group_places(work.place, m, tally)
    if places:
        put(work, tally, n, places)
    return places > 0
