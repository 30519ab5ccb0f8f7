"""The second star of a pair that closes what it repeats: "*2 sc, inc* around", "*2 sc, inc* x 5",
"*sk 2, 5 dc in next*, ending with 3 dc in last st".
"""

from __future__ import annotations

from collections.abc import Callable

from reader.pattern.brackets import bracketed
from reader.pattern.cursor import Cursor
from reader.pattern.place_words import AROUND, TO_LAST
from reader.pattern.repeats import ENDING, find_ending
from reader.pattern.stars import around_apart, counted_behind, pairs_up
from reader.pattern.tree import Node, Repeat, Until


def closes_star(
    cur: Cursor,
    made: list[Node],
    stars: list[tuple[str, int]],
    read_ending: Callable[[Cursor], tuple[Node, ...]],
) -> bool:
    """Whether the star here closes a repeat, which then stands in `made`; what follows says how
    often, or how it ends. read_ending: reads the instructions behind "ending with".
    """
    if not stars or stars[-1][1] >= len(made):
        return False
    ends = cur.any_words(ENDING, 1 + (cur.low(1) in (",", ".", ";"))) > 0
    counted = counted_behind(cur)
    far = cur.any_words(AROUND, 1) or cur.any_words(TO_LAST, 1) or around_apart(cur, 1)
    if not (counted or ends or far):
        return pairs_up(cur, made, stars)
    index = stars.pop()[1]
    body = tuple(made[index:])
    del made[index:]
    start = cur.at
    cur.at += 1
    if ends and not counted:
        made.append(_with_ending(cur, start, body, read_ending))
        return True
    node = bracketed(cur, made, start, body, None)
    if node is not None:
        made.append(node)
    return True


def _with_ending(
    cur: Cursor,
    start: int,
    body: tuple[Node, ...],
    read_ending: Callable[[Cursor], tuple[Node, ...]],
) -> Repeat:
    """To the end of the row, though no word of a repeat stands there."""
    told, altered = find_ending(cur)
    ending = read_ending(cur) if told else ()
    return Repeat(
        cur.span(start), cur.said(start), body, Until.OPEN, ending=ending, has_ending=told,
        altered=altered,
    )  # fmt: skip
