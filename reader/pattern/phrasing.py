"""Phrases that belong to one act: the words up to the next mark, or to the next instruction inside
it.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_words import SPACE_NOUNS
from reader.pattern.tree import Act, Deed

STRETCH = 30
VERBS = frozenset(["work", "make", "ch", "chain"])
BINDS = ("bind off", "cast off", "bo", "binding off", "casting off")
"""Behind "and", these are done with the yarn that was joined."""
IN_PATTERN = tuple(
    f"work in {the}{patt} {over}"
    for the in ("", "the ") for patt in ("pattern", "patt", "pat")
    for over in ("across", "over", "to", "on", "until")
)
OF_CHAIN = frozenset(
    ["of", "the", "to", "in", "into", "beg", "beginning", "first", "starting", "turning", "1st",
     "initial", "last"]
)  # fmt: skip
"""Before a chain, these say that it is there already."""
"""Tokens a phrase may take along."""

EVERY_ROW = tuple(
    f"{which} {row}" for which in ("all", "each", "every")
    for row in ("row", "rows", "round", "rounds", "rnd", "rnds")
)  # fmt: skip
"""Behind "turn": the chain before it turns them all."""


def take_phrase(cur: Cursor, stops: frozenset[str] = STOPS) -> None:
    """Takes the rest of the phrase that stands here."""
    start = cur.at
    for _ in range(STRETCH):
        if cur.done() or cur.low() in stops or cur.kind() == "stars":
            return
        if cur.at > start and _goes_on(cur):
            return
        cur.at += 1


def _goes_on(cur: Cursor) -> bool:
    """ "and work 1 sc ...": the next instruction begins inside the same phrase."""
    ahead = 1 if cur.low() == "and" else 0
    if cur.low() in ("ch", "chain") and cur.low(2) in SPACE_NOUNS:
        # "in any ch 2 loop": a place, not a chain to be made.
        return False
    if cur.low() in ("ch", "chain") and cur.low(-1) in OF_CHAIN:
        # "join in top of ch 3", "join to ch 3": the chain that is there.
        return False
    if ahead and cur.any_words(BINDS, 1):
        return True
    if ahead and cur.low(1) == "pick" and cur.low(2) == "up":
        return True
    if cur.low() == "work" and cur.any_words(IN_PATTERN):
        return True
    verb = cur.low(ahead) in VERBS
    stitch = ahead == 1 and (cur.stitch(1) is not None or cur.low(1) in ("ch", "chain"))
    return (
        verb
        and (
            ahead == 1
            or cur.stitch(1) is not None
            or (cur.kind(1) == "num" and not cur.peek(1).hyphen)
        )
    ) or stitch


def so_far_apart(cur: Cursor, start: int) -> Act | None:
    """ "Eyes between rnds 8 and 9, 6 sc apart": how far, and nothing is worked."""
    found = cur.stitch(1) if cur.kind() == "num" else None
    noun = found.length if found is not None else int(cur.low(1) in ("sts", "stitches", "rows"))
    if cur.kind() != "num" or not noun or cur.low(1 + noun) != "apart":
        return None
    cur.at += 2 + noun
    return act_here(cur, start, Deed.NOTE)


def act_here(cur: Cursor, start: int, deed: Deed, into: str = "") -> Act:
    """The act that the tokens taken since `start` are."""
    return Act(cur.span(start), cur.said(start), deed, into)
