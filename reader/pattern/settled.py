"""The list of a row once it is read to its end -> the list as it is meant: what only the whole row
tells of an instruction.
"""

from __future__ import annotations

from reader.pattern.after_missed import counted_with_missed
from reader.pattern.brackets import alike_named
from reader.pattern.by_turns import over_and_over
from reader.pattern.chained_places import loops_in_each, nth_at_first
from reader.pattern.cursor import Cursor
from reader.pattern.ends_plain import ends_plain
from reader.pattern.in_kind import one_in_each
from reader.pattern.last_chain import at_its_top
from reader.pattern.last_square import last_squares
from reader.pattern.legs import on_legs
from reader.pattern.picots import closed_on_last
from reader.pattern.plain_work import told_to_leave
from reader.pattern.points import points
from reader.pattern.ring_chain import before_ring
from reader.pattern.rows_below import long_stitches
from reader.pattern.told_of_change import told_of_change
from reader.pattern.tree import Node
from reader.pattern.understood import changed_every_nth, nouns_understood, passed_over
from reader.terms.stitches import Craft


def settled(made: list[Node], cur: Cursor) -> tuple[Node, ...]:
    """The instructions of a whole row; cur: the words that they were read from."""
    nodes = at_its_top(before_ring(long_stitches(told_of_change(made), cur)))
    if cur.book.craft is Craft.CROCHET:
        nodes = points(closed_on_last(nouns_understood(passed_over(changed_every_nth(nodes)))))
        nodes = on_legs(one_in_each(nodes))
        nodes = last_squares(nth_at_first(counted_with_missed(nodes)))
    else:
        nodes = ends_plain(nodes)
    read = loops_in_each(alike_named(told_to_leave(nodes, cur.book.craft)))
    return over_and_over(read) if cur.book.craft is Craft.CROCHET else read
