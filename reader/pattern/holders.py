"""Stitches that wait on a holder, and those that come back from it -> Skip, Edge, LeaveRest.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.phrasing import act_here, take_phrase
from reader.pattern.tree import (
    ONE,
    Act,
    Deed,
    Edge,
    LeaveRest,
    Node,
    Num,
    Place,
    Skip,
    Unread,
    Where,
    Work,
)

CABLE_NEEDLES = (
    "cn", "c n", "cable", "dpn", "dp needle", "dp", "d p n", "double pointed", "double-pointed",
    "needle",
)  # fmt: skip
NEEDLES = ("needles", "needle", "dpns", "larger", "smaller", "double pointed", "size", "no")
HOLDERS = (
    "holder", "holders", "st holder", "stitch holder", "waste", "spare", "thread", "scrap",
    "contrasting", "safety", "st pin", "stitch pin",
    "extra needle", "another needle", "length of", "piece of", "strand",
)  # fmt: skip
VERBS = (
    "sl", "slip", "place", "put", "leave", "leaving", "placing", "return", "take off", "take",
    "taking", "slipping", "putting", "transfer", "transferring", "move", "moving", "hold",
    "holding", "thread", "threading", "slide", "sliding", "park", "set", "run",
)  # fmt: skip
WHOSE = ("sleeve", "thumb", "gusset", "front", "back", "body", "heel", "underarm", "shoulder",
         "neck", "instep", "pocket", "armhole", "between")  # fmt: skip
"""Whose stitches they are: "the 20 sleeve sts", "sts between markers".
"""
ALL_OTHERS = ("rest", "remainder", "others")
OTHER_SIDE = tuple(
    f"the {which} {side}"
    for which in ("other", "second") for side in ("side", "shoulder", "half", "front", "strap")
)  # fmt: skip
"""What those that are left are for."""
ASIDE = "set aside"
"""The place of stitches that wait; those that are left stay on hand."""


def set_aside(cur: Cursor, start: int) -> Node | None:
    """ "sl 3 sts to cn": worked later, from there; "sl 10 sts to a holder": gone from this row."""
    verb = cur.low()
    if not cur.accept(*VERBS):
        return None
    if cur.accept("these", "these sts", "these stitches", "them", "those sts", "those stitches"):
        told = cur.number() if cur.kind() == "num" else None
        cur.at += 0 if told is None else 1 + (cur.low(1) in ("sts", "stitches"))
        if verb in STAY and cur.accept("on needle", "on the needle", "on needles"):
            take_phrase(cur)
            return act_here(cur, start, Deed.NOTE)
        return _the_last(cur, start, told)
    cur.accept("the")
    which = cur.accept(
        "next", "following", "foll", "first", "last", "remaining", "rem", "other", *ALL_OTHERS,
        *AMID,
    )
    one = which and cur.low(-1) in ONE_OF and cur.low() in ("st", "stitch")
    number = ONE if one else cur.number()
    if number is None or (not one and cur.kind() != "num"):
        if which and cur.low(-1) in ("remaining", "rem", "other", *ALL_OTHERS):
            return _the_rest(cur, start)
        return _taken_up_all(cur, start) or _the_last(cur, start) or _unnumbered(cur, start)
    cur.at += 0 if one else 1
    cur.accept("held", "rem", "remaining", *WHOSE)
    cur.accept("sts", "st", "stitches")
    cur.accept("back", "off", "aside")
    _detour(cur)
    back = cur.accept(*FROM_HOLDER)
    cur.accept("back")
    return _put_there(cur, start, verb, number, back)


STAY = ("leave", "leaving", "keep", "keeping")
AMID = ("center", "centre", "middle")
ONE_OF = ("next", "following", "foll", "first", *AMID)
"""Before "st" these tell of one stitch."""


def _put_there(
    cur: Cursor, start: int, verb: str, number: Num, back: bool = False
) -> Node | None:
    """Where so many stitches go: to a holder, to a needle (back: from a holder), or to a cable
    needle.
    """
    if not _onto(cur) or (verb.startswith("tak") and not cur.any_words(HOLDERS)):
        return None
    if (back or verb != "sl") and cur.any_words(NEEDLES):
        # Stitches that waited on a holder are taken up again.
        take_phrase(cur)
        return Edge(cur.span(start), cur.said(start), number, True)
    if cur.any_words(HOLDERS) and _held_beside(cur):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if cur.any_words(HOLDERS) or cur.low() == "hold":
        take_phrase(cur)
        place = Place(Where.NEXT, cur.span(start), number, "st", True, text=ASIDE)
        return Skip(cur.span(start), cur.said(start), place)
    if not cur.any_words(CABLE_NEEDLES):
        return None
    take_phrase(cur)
    return act_here(cur, start, Deed.NOTE)


def _held_beside(cur: Cursor) -> bool:
    """Whether they are kept in front or at the back, as those of a cable are."""
    lows = [cur.low(ahead) for ahead in range(1, 12)]
    stop = next((at for at, low in enumerate(lows) if low in STOPS and low != ","), len(lows))
    kept = {"hold", "leave", "keep", "bring", "drop", "let"} & set(lows[:stop])
    beside = " ".join(lows[:stop])
    told = any(f"{at}{side}" in beside for at in ("at the ", "at ", "in ") for side in SIDES)
    sides = (at for at, low in enumerate(lows[:stop]) if low in SIDES)
    return told or (bool(kept) and any(lows[at - 1] not in OF_PIECE for at in sides if at))


SIDES = ("front", "back")
OF_PIECE = ("for", "the", "left", "right", "of")
"""Before "front" these make a piece of it: "for front neck"."""


def _onto(cur: Cursor) -> bool:
    """Takes "on to a stout" before a holder; False where the words go nowhere."""
    if not cur.accept("on to", "onto", "on", "to"):
        return False
    cur.accept("a", "an", "the", "2", "3", "4", "two", "three", "four")
    for ahead in range(1, 3):
        if cur.any_words(HOLDERS, ahead) and cur.kind(ahead - 1) in ("word", "ord"):
            cur.at += ahead
            break
    return True


def _detour(cur: Cursor) -> None:
    """Takes what is said between the stitches and where they go, "for sleeve", "purlwise"."""
    for ahead in range(6):
        if cur.low(ahead) in (*STOPS, "") or cur.kind(ahead) == "num":
            return
        kept = any(cur.any_words(HOLDERS, ahead + further) for further in range(1, 4))
        kept = kept or cur.low(ahead + 1) == "hold"
        if kept and cur.low(ahead) in ("on", "onto", "to", "upon"):
            cur.at += ahead
            return


def _unnumbered(cur: Cursor, start: int) -> Unread | None:
    """ "place sleeve sts on holder" amid a row, where no number tells how many are gone."""
    lows = [cur.low(ahead) for ahead in range(start - cur.at, 12)]
    lows = lows[: next((at for at, low in enumerate(lows) if low in (*STOPS, "")), len(lows))]
    held = {"holder", "holders", "waste", "scrap", "spare", "hold", "thread"} & set(lows[2:])
    named = set(WHOSE) & set(lows[:6]) and {"sts", "stitches"} & set(lows)
    if not start or not held or not named or {"from", "back"} & set(lows):
        return None
    cur.at = start + len(lows)
    return Unread(cur.span(start), cur.said(start))


def _the_rest(cur: Cursor, start: int) -> Node | None:
    """ "leave remaining sts on a holder": all that are not worked yet."""
    cur.accept("of the", "of your", "of")
    cur.accept("sts", "stitches")
    other_side = cur.low() == "for" and cur.any_words(OTHER_SIDE, 1)
    if not other_side and (not _onto(cur) or not cur.any_words(HOLDERS)):
        return None
    take_phrase(cur)
    return LeaveRest(cur.span(start), cur.said(start))


def _the_last(cur: Cursor, start: int, told: Num | None = None) -> Node | None:
    """ "knit 20 and slip these on to a holder": those that were worked just now; told: how many
    the words say they are.
    """
    if not _onto(cur) or not cur.any_words(HOLDERS):
        return None
    take_phrase(cur)
    place = Place(Where.SAME, cur.span(start), told or ONE, text=ASIDE)
    return Skip(cur.span(start), cur.said(start), place)


def waits(made: list[Node], node: Node) -> bool:
    """Puts the stitches that were worked last aside where the node says so; False for another node,
    or where what was worked is no plain number.
    """
    if not isinstance(node, Skip) or node.place.text != ASIDE or node.place.where is not Where.SAME:
        return False
    last = made[-1] if made else None
    worked = _worked_last(made) or _narrowed_last(made, node.place.number)
    if worked:
        first = min(worked)
        words, span = " ".join(one.words for one in (*made[first:], node)), made[first].span
        place = Place(Where.NEXT, span, _sum(list(worked.values())), "st", True, text=ASIDE)
        made[first:] = [Skip(span, words, place)]
    elif isinstance(last, Work) and last.place.where is Where.TO_LAST:
        # "K to last 6 sts, place these on a holder".
        made.append(LeaveRest(node.span, node.words))
    else:
        made.append(Act(node.span, node.words, Deed.NOTE))
    return True


def _worked_last(made: list[Node]) -> dict[int, Num]:
    """The last stitches worked by number, "rib 6, k 33", by where they stand; {} where the last
    that was worked has none.
    """
    out: dict[int, Num] = {}
    for at in range(len(made) - 1, -1, -1):
        one = made[at]
        if isinstance(one, Act) and one.deed is Deed.NOTE:
            continue
        plain = isinstance(one, Work) and one.place.where is Where.PLAIN
        if not plain or not isinstance(one, Work) or one.number is None:
            break
        if (one.stitch.takes, one.stitch.makes) != (1, 1):
            break
        out[at] = one.number
    return out


def _narrowed_last(made: list[Node], told: Num) -> dict[int, Num]:
    """The stitches that the last ones were worked in, two together among them, where they come to
    as many as the words say: "work 26, p 2 tog, slip these 27 sts to a holder"; {} elsewhere.
    """
    took: dict[int, Num] = {}
    left = told.at(0)
    for at in range(len(made) - 1, -1, -1):
        one = made[at]
        if isinstance(one, Act) and one.deed is Deed.NOTE:
            continue
        if not isinstance(one, Work) or one.place.where is not Where.PLAIN:
            break
        times = (one.number or ONE).values
        left -= times[0] * one.stitch.makes
        took[at] = Num(tuple(n * one.stitch.takes for n in times))
        if left <= 0:
            break
    return took if left == 0 else {}


def _sum(numbers: list[Num]) -> Num:
    sizes = max(len(one.values) for one in numbers)
    return Num(tuple(sum(one.at(size) for one in numbers) for size in range(sizes)))


FROM_HOLDER = tuple(
    f"{where} {holder}"
    for where in ("from", "from the", "from 1st", "from first", "from 2nd", "from second",
                  "from both", "from all", "held on", "off", "off the")
    for holder in ("holder", "holders", "waste yarn", "st holder", "stitch holder", "thread",
                   "spare needle", "scrap yarn")
)  # fmt: skip


def _taken_up_all(cur: Cursor, start: int) -> Edge | None:
    """ "sl sts from holder": all that waited come back, and nothing says how many they are."""
    held = cur.accept("held", "waiting", "reserved")
    if not cur.accept("sts", "stitches") or not (cur.accept(*FROM_HOLDER) or held):
        return None
    take_phrase(cur)
    return Edge(cur.span(start), cur.said(start), None, True, waited=True)
