"""A number of passes that no row has room for: asked about, and not counted; and a group that many
passes come to.
"""

from reader.counts.account import count_pattern
from reader.counts.counted import CountedPattern
from reader.pattern.parser import parse_pattern


def counted(text: str) -> CountedPattern:
    """The counted pattern of a text."""
    return count_pattern(parse_pattern(text))


def test_so_many_passes_are_asked_about() -> None:
    """The number is named in the question, and the row is not counted."""
    buoy = counted(
        "Rnd 1: 8 sc in ring\nRnd 2: *sc in next st, inc; rep from * 15000 times.\n"
        "Rnd 3: sc in each st around.\n"
    )
    rows = [row for part in buoy.parts for row in part.rows]
    assert [row.count for row in rows] == [8, None, None]
    assert any("15000 times are more than any row has room for" in p.message for p in buoy.problems)


def test_a_printed_total_is_gone_on_with() -> None:
    """The rows behind are counted from the total that is printed, and only the number is asked."""
    buoy = counted(
        "Rnd 1: 8 sc in ring. (8)\nRnd 2: (sc in next st, inc) 4000 times. (12)\n"
        "Rnd 3: sc in each st around. (12)\n"
    )
    rows = [row for part in buoy.parts for row in part.rows]
    assert [row.count for row in rows] == [8, 12, 12]
    assert len(buoy.problems) == 1


def test_a_number_inside_another_repeat() -> None:
    """It is found there too."""
    jetty = counted("Cast on 40 sts.\nRow 1: *k2, (p1, k1) 9999 times; rep from * to end.\n")
    assert any("9999 times" in one.message for one in jetty.problems)


def test_a_long_row_is_no_misprint() -> None:
    """Four hundred passes are those of a wide blanket."""
    net = counted("Cast on 800 sts.\nRow 1: (k1, p1) 400 times.\n")
    assert not net.problems
    assert net.parts[0].rows[-1].count == 800


def test_a_repeat_in_an_ending_is_not_opened_without_end() -> None:
    """A thousand loops for each of a thousand loops are not laid down one by one."""
    loops = "* ch 6, 1 sc in next (ch 5) loop; repeat from * around"
    ring = counted(
        "Rnd 1: Ch 6, join with a sl st into a ring, ch 4, 1896 tr into ring, sl st in ch 4.\n"
        "Rnd 2: Ch 1, 1 sc in same st, * ch 5, 1 sc in next tr; repeat from * around.\n"
        f"Rnd 3: Ch 1, 1 sc in same (ch 5) loop, {loops} ending with ch 6, a sl st in {loops}.\n"
    )
    assert sum(len(row.moves) for row in ring.parts[0].rows) < 20_000
