"""Binding off that leaves some stitches on the needle -> how far it goes: "cast off all but 10"."""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.tree import ONE, Node, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

ALL_BUT = tuple(
    f"all {sts}but" for sts in ("", "sts ", "stitches ", "the sts ", "the stitches ", "of them ")
)
MANNER = ("loosely", "knitwise", "purlwise", "kwise", "pwise", "in pattern", "firmly", "tightly")
THERE_ARE = (
    "there is only", "there are only", "you have only", "there is", "there are", "you have", "only",
    "just",
)  # fmt: skip
ON_NEEDLE = tuple(
    f"on {the}{side}needle" for the in ("", "the ", "your ") for side in ("", "right ", "rh ",
                                                                       "right hand ", "left ")
)  # fmt: skip
LEAVING = ("leaving", "and leave", "but leave", "except", "except for", "keep", "keeping")


def all_but(cur: Cursor, start: int) -> Node | None:
    """ "Cast off all the stitches but 10", "bind off until 1 st is left on the right needle", "bind
    off, leaving the last st on the needle": so many are left on the needle.
    """
    stitch = stitch_named("drop", Craft.KNITTING)
    at = cur.at
    while cur.accept("on the next row", "on next row", "on this row", "across", *MANNER):
        pass
    but, last = cur.accept(*ALL_BUT), cur.accept("to last", "until last", "to the last")
    leaving = not but and not last and _leaving(cur)
    until = not (but or last or leaving) and cur.accept("until", "till", "to")
    if until:
        cur.accept(*THERE_ARE)
    last = cur.accept("the last", "last", "a single") if but or leaving else last
    number = cur.number() if cur.kind() == "num" else ONE if last else None
    cur.at += cur.kind() == "num"
    told = cur.accept("sts", "stitches", "st", "stitch", "loop")
    left = cur.accept("remain", "remains", "rem", "left", "is left", "are left", "remaining")
    held = cur.accept(*ON_NEEDLE)
    known = but or last or (until and (left or held)) or (leaving and (told or held or last))
    if number is None or stitch is None or not known:
        cur.at = at
        return None
    place = Place(Where.TO_LAST, cur.span(start), number)
    return Work(cur.span(start), cur.said(start), stitch, None, place)


def _leaving(cur: Cursor) -> bool:
    """Whether "leaving" follows at once, or behind a comma: "bind off, leaving the last st"."""
    at = cur.at
    cur.at += cur.low() == ","
    cur.accept("all sts", "all stitches", "all the stitches", "all the sts", "all")
    cur.at += cur.low() == ","
    if cur.accept(*LEAVING):
        return True
    cur.at = at
    return False
