"""Where the list begins that is worked so often: "k2tog, four times; yo, k1, eight times" works the
over and the plain stitch eight times, and not what was done so often before them.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.cursor import Cursor
from reader.pattern.tree import ONE, Chain, Node, Repeat, Until, Work
from reader.terms.stitches import Craft


def own_list(cur: Cursor, made: Sequence[Node], clause: int) -> int:
    """The first node of the list that the "N times" at the cursor tells of: behind what is counted
    so itself, and behind a semicolon where the list goes on without one. clause: the first node of
    the present clause. 0, the whole list, where every item has its semicolon, and in crochet, but
    for the chain that turns the row.
    """
    if cur.book.craft is not Craft.KNITTING:
        return _behind_chain(made)
    if cur.low(-1) == ";":
        return 0
    counted = [at + 1 for at, one in enumerate(made) if _counted(one)]
    first = max([clause if clause < len(made) else 0, *counted])
    return first if first < len(made) else 0


def _behind_chain(made: Sequence[Node]) -> int:
    """1 behind the one chain that turns a row, which is no stitch; 0 elsewhere."""
    first = made[0] if len(made) > 1 else None
    return int(isinstance(first, Chain) and first.number == ONE and not first.counts)


def _counted(one: Node) -> bool:
    """Whether a node tells itself how often."""
    times = isinstance(one, Repeat) and one.until is Until.TIMES
    return times or (isinstance(one, Work) and one.by is not None)
