"""The turning chain gone along chain by chain: "skip 2 ch of turning chain, dc in next ch" -> the
stitch at its top.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Act, Deed, Node, Skip, Where, Work

OF_TURNING = re.compile(
    r"\b(?:of|in) (?:the )?(?:(?:last |previous )?turning[ -]?ch(?:ain)?|t[ -]?ch|tch)\b",
    re.IGNORECASE,
)


def at_its_top(nodes: Sequence[Node]) -> list[Node]:
    """The row with such a stitch at the top of the turning chain, and nothing skipped before it."""
    out = list(nodes)
    for at, one in enumerate(out[:-1]):
        then = out[at + 1]
        if isinstance(one, Skip) and (_of_long_chain(one, then) or _before_join(one, then)):
            out[at] = Act(one.span, one.words, Deed.NOTE)
            continue
        if not (isinstance(one, Skip) and one.place.noun in ("ch", "tch")):
            continue
        if not (isinstance(then, Work) and then.place.noun in ("ch", "tch")):
            continue
        told = OF_TURNING.search(one.words) or OF_TURNING.search(then.words)
        if told is None or then.place.where is not Where.NEXT:
            continue
        out[at] = Act(one.span, one.words, Deed.NOTE)
        nth = one.place.number.values[0] + 1
        out[at + 1] = replace(then, place=replace(then.place, noun="tch", nth=nth, text=TOP))
    return out


def _before_join(one: Skip, then: Node) -> bool:
    """Whether "skip ch and join to first dc" passes over the chain that the round began with."""
    return isinstance(then, Act) and then.deed is Deed.JOIN and one.place.noun in ("ch", "tch")


NTH = re.compile(r"\b(?P<nth>[4-7])th (?:st|stitch|ch|chain) of (?:the |end |turning |last )*ch")


def _of_long_chain(one: Skip, then: Node) -> bool:
    """Whether "skip 2, dc in 5th st of ch" passes over chains of the turning chain, which is a
    stitch and a space of so many.
    """
    if not isinstance(then, Work) or then.place.noun != "tch" or one.place.noun != "st":
        return False
    nth = NTH.search(then.words.lower())
    bare = one.words.lower().split()[-1].isdigit()
    return nth is not None and bare and one.place.number.values[0] < int(nth["nth"]) - 1


TOP = "in top of turning chain"
"""What such a place is called."""
