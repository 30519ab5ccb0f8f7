"""What to gather, what to look out for, and how much yarn is worked."""

from __future__ import annotations

from dataclasses import replace

import pytest

from reader.plan.cautions import FOR_BABIES, FOR_CORDS, FOR_HEAT, FOR_SMALL_PARTS, cautions
from reader.plan.find import find_row
from reader.plan.gather import gather
from reader.plan.gauge import tool_mm
from reader.plan.place import Place
from reader.plan.step import GatherItem
from reader.plan.yarn import colour_shares, grams_of, will_last, yarns_of
from tests.plan.made import buoy_plan
from tests.session.play import plan_of

PLAN = buoy_plan()


def test_yarn_by_colour_tools_and_notions() -> None:
    """One thing each, in the order written."""
    assert [(item.kind, item.text) for item in PLAN.gather] == [
        ("yarn", "Worsted cotton, white, 60 g"),
        ("yarn", "Worsted cotton, red, 40 g"),
        ("hook", "4 mm crochet hook"),
        ("notion", "Stitch marker"),
        ("notion", "tapestry needle"),
    ]


def test_brackets_and_bare_sizes_stay_whole() -> None:
    """Commas in brackets divide nothing; headings and bullets are left out."""
    found = gather(
        ("MATERIALS\n- 4 mm needles\n• Filling, and a bag of gravel (clean, dry)\n5.5 mm",),
        "knitting",
    )
    assert [(item.kind, item.text) for item in found] == [
        ("needle", "4 mm needles"),
        ("notion", "Filling"),
        ("notion", "a bag of gravel (clean, dry)"),
        ("needle", "5.5 mm"),
    ]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("A hat for a baby", (FOR_BABIES,)),
        ("Sew on two buttons", (FOR_SMALL_PARTS,)),
        ("A toy whale with a cord", (FOR_CORDS,)),
        ("Make a cord for the lamp", ()),
        ("Steam lightly", (FOR_HEAT,)),
        ("Booties with ribbon ties", (FOR_BABIES, FOR_CORDS)),
        ("sc in next st", ()),
    ],
)
def test_cautions_follow_the_words(text: str, said: tuple[str, ...]) -> None:
    """Each once, only where its words stand."""
    assert cautions(text) == said


def test_cautions_defer() -> None:
    """None of them judges: they send to rules or to whoever knows."""
    for said in (FOR_BABIES, FOR_SMALL_PARTS, FOR_CORDS, FOR_HEAT):
        assert "follow" in said


def test_yarn_is_shared_by_colour_and_place() -> None:
    """White is worked up to round four of each buoy; at the first round five the half of it is
    done.
    """
    place = find_row(PLAN, 0, 5)
    assert place is not None
    shares = {share.colour: share for share in colour_shares(PLAN, place)}
    assert shares["white"].share == pytest.approx(0.5)
    assert shares["red"].worked == 0
    assert shares["white"].total == 2 * (6 + 12 + 18 + 24)
    done = colour_shares(PLAN, Place(2, 1, 0))
    assert all(share.share == pytest.approx(1.0) for share in done)


def test_whether_yarn_lasts() -> None:
    """A third worked with twenty grams: forty more are needed."""
    found = will_last(1 / 3, 20, 30)
    assert found is not None
    assert found.needed == pytest.approx(40)
    assert not found.lasts
    assert will_last(0.0, 0.0, 50) is None


def test_grams_are_read() -> None:
    """An ounce is 28.35 grams."""
    assert grams_of(GatherItem("yarn", "white, 60 g", "")) == 60
    assert grams_of(GatherItem("yarn", "3.5 oz", "")) == pytest.approx(99.2, abs=0.1)
    assert grams_of(GatherItem("yarn", "a little yellow", "")) is None


@pytest.mark.parametrize(
    ("text", "grams"),
    [
        ("3 x 100 g balls of DK yarn in Heather (A)", 300),
        ("Aran yarn, 100 g balls: 6 balls in Samphire", 600),
        ("2 (50g) skeins sock yarn", 100),
        ("cotton (100 g / 300 m per skein): 4 skeins", 400),
        ("4 balls of 25 g", 100),
        ("5 balls of aran yarn, 100 g each", 500),
        ("100 g (2 balls) of rust", 100),
        ("1 ball aran yarn, 100 g", 100),
        ("3 balls of aran yarn (100 g)", None),
    ],
)
def test_balls_of_a_weight_are_multiplied(text: str, grams: float | None) -> None:
    """So many balls of a weight each; a weight that may be that of one ball or of all tells none.
    Forms as yarn lists are written, common practice, no source."""
    assert grams_of(GatherItem("yarn", text, "")) == grams


def test_a_colour_that_is_a_letter_is_found_as_a_letter() -> None:
    """Colour B is Bracken (B), not the first line with a b in it."""
    lines = ("2 balls of yarn in Heather (A)", "1 ball of yarn in Bracken (B)")
    plan = replace(buoy_plan(), gather=gather(lines, "crochet"))
    assert [item.text for item in yarns_of(plan, "B")] == [lines[1]]
    assert [item.text for item in yarns_of(plan, "heather")] == [lines[0]]
    assert yarns_of(plan, "red") == ()


def test_the_tool_of_the_gauge_is_the_one_to_change() -> None:
    """A list with needles for ribs and for the rest: the gauge says which it was made with; else
    the larger ones are meant (common practice, no source)."""
    items = gather(("4.5 mm and 5 mm needles",), "knitting")
    told = replace(buoy_plan(), craft="knitting", gather=items, gauge=("18 sts = 10 cm",))
    assert tool_mm(told) == 5.0
    named = "18 sts = 10 cm on 4 mm needles"
    assert tool_mm(replace(told, gauge=(named,))) == 4.0
    american = gather(("US 7 needles",), "knitting")
    assert tool_mm(replace(told, gather=american)) == 4.5


LISTED = """Fen Bird

You need:
50 g aran yarn in teal
2.5 mm double-pointed needles, set of 5
Notes: any scraps will do.
Gauge is not critical.
Work in a spiral and do not join.

To fit: a palm
Finished height: 9 cm

BODY
Rnd 1: 6 sc in a magic ring. (6)
"""


def test_sentences_in_the_list_are_no_things_to_gather() -> None:
    """They are read with the pattern's notes, and nothing of the list is read there too; a set of
    needles is one thing; a note keeps the words that lead it."""
    plan = plan_of(LISTED)
    assert [item.text for item in plan.gather] == [
        "50 g aran yarn in teal",
        "2.5 mm double-pointed needles, set of 5",
    ]
    told = " ".join(plan.notes)
    for words in ("any scraps will do", "Gauge is not critical", "Finished height: 9 cm"):
        assert words in told
    assert "teal" not in told
