"""A row that loses stitches in a pattern whose rows keep them is the row that is told of. The
pieces are invented, the counts arithmetic.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

GULL_LACE = """Gull lace
Cast on 37 sts. Knit 2 rows.
Row 1: K3, *k1, yo, k3, sk2p, k3, yo; repeat from * twice more, k4.
Row 2: Purl.
Row 3: K3, *k3, yo, k1, sk2p, k1, k2; repeat from * twice more, k4.
Row 4: Purl.
Row 5: K3, *k4, yo, sk2p, yo, k3; repeat from * twice more, k4.
"""
TIDE_COWL = """Tide cowl
Cast on 120 sts and join. Every line is one round, repeat it to the marker.
Round 1: k2 sand, k4 sea.
Round 2: k3 sea, k1 sand, k4 sea, k1 sand, k2 sea.
Round 3: k6 sea, k6 sand.
"""


def test_the_row_that_lost_stitches_is_named() -> None:
    """Row 3 makes 34 of 37, and row 5 needs 37 again."""
    problems = count_pattern(parse_pattern(GULL_LACE)).problems
    assert [(one.label, one.verdict) for one in problems] == [("Row 3", Verdict.DOES_NOT_FIT)]


def test_a_colour_list_that_does_not_go_into_the_round_keeps_the_count() -> None:
    """11 stitches do not divide 120; the rounds after it go on with 120."""
    counted = count_pattern(parse_pattern(TIDE_COWL))
    rows = [row for part in counted.parts for row in part.rows if row.number]
    assert [row.count for row in rows] == [120, 120, 120]
    assert [one.label for one in counted.problems] == ["Round 2"]


def test_a_goal_that_no_step_leads_to_is_asked_about() -> None:
    """42 and two at a time are never 61."""
    text = "Cast on 42 sts. Inc 1 st at each end of next row and every foll 6th row until {} sts."
    asked = [count_pattern(parse_pattern(text.format(n))).problems for n in (60, 61)]
    assert [len(problems) for problems in asked] == [0, 1]
    assert "never reached" in asked[1][0].message
