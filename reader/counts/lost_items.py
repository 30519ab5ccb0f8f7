"""Words of a row that made no sense, and whether a stitch may be among them."""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.tree import LOST, Act, Group, Node, Repeat, Work

WITH_NUMBER = re.compile(r"\W*[a-z]+ ?\d{1,2}\W*", re.IGNORECASE)


def lost_words(nodes: Sequence[Node]) -> bool:
    """Whether a row holds words that made no sense."""
    for one in nodes:
        if isinstance(one, Act) and one.into == LOST:
            return True
        if isinstance(one, Repeat) and (lost_words(one.body) or lost_words(one.ending)):
            return True
        if isinstance(one, Group) and lost_words(one.body):
            return True
    return False


def item_lost(nodes: Sequence[Node]) -> bool:
    """Whether an item of a word or two made no sense between a knitted row's stitches, or one with
    a number before or behind them: "k9, frill, k9", "edge 5, p14, edge 5".
    """
    works = [isinstance(one, Work) for one in nodes]
    for at, one in enumerate(nodes):
        if not isinstance(one, Act) or one.into != LOST or len(one.words.split()) > 2:
            continue
        beside = [works[n] for n in (at - 1, at + 1) if 0 <= n < len(nodes)]
        if all(beside) and (len(beside) == 2 or WITH_NUMBER.fullmatch(one.words)):
            return True
    return False
