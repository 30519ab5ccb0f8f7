"""Clusters told in words: "1 tr in each of next 5 tr, keeping the last loop of each on the hook,
thread over and pull through all loops" -> one stitch.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.tree import Act, Chain, Node, Where, Work
from reader.terms.stitches import Craft, Kind

KEPT = re.compile(
    r"\b(?:keeping|holding(?: back)?|leaving|retaining) (?:the )?last (?:\w+ )?(?:loops?|lps?)\b"
    r"|\bmade into a cluster|\bworked off (?:together|as one)\b",
    re.IGNORECASE,
)
"""Said of stitches that are finished together."""
DROPPED = re.compile(r"drop(?:ping)? (?:the )?(?:loop|lp|st|stitch)\b", re.IGNORECASE)
"""Said of stitches of one place that are drawn together to a popcorn."""


def clustered(made: list[Node], told: Act) -> bool:
    """Turns the stitches before into one, together with the chain that begins such a row; False
    where the words say no such thing.
    """
    last = made[-1] if made else None
    popcorn = DROPPED.match(told.words) is not None
    if not (popcorn or KEPT.search(told.words)) or not isinstance(last, Work):
        return False
    per = last.number.values[0] if last.number is not None else 1
    places = last.place.number.values[0] if last.place.where is Where.NEXT else 1
    if last.stitch.craft is not Craft.CROCHET or per * places < 2 or (popcorn and places > 1):
        return False
    begins = [at for at, one in enumerate(made) if not isinstance(one, Act)]
    first = made[begins[0]]
    begun = len(begins) == 2 and isinstance(first, Chain)
    takes = places + (begun and last.place.where is Where.NEXT)
    if begun and isinstance(first, Chain):
        made[begins[0]] = replace(first, counts=False)
    name = "popcorn" if popcorn else "cluster"
    stitch = replace(
        last.stitch, name=name, spoken=name, spoken_uk="", takes=takes, makes=1, base="",
        kind=Kind.DECREASE if places > 1 else Kind.CLUSTER,
    )  # fmt: skip
    place = replace(last.place, where=Where.PLAIN) if places > 1 else last.place
    made[-1] = replace(last, stitch=stitch, number=None, place=place)
    return True
