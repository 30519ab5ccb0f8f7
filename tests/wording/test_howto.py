"""How stitches are made: the motions must leave one loop on the hook."""

from __future__ import annotations

import re

import pytest

from reader.plan.step import Reading
from reader.terms.forms import STITCHES
from reader.terms.howto import CROCHET, KNITTING, how_to
from reader.terms.stitches import SHORT_TO_HEIGHT, Craft
from reader.wording.howto import find_how, meaning, say_how, say_how_step
from tests.plan.made import buoy_plan

TIMES = {"once": 1, "twice": 2, "three times": 3, "four times": 4, "five times": 5}


@pytest.mark.parametrize(("name", "wraps"), [("dc", 1), ("tr", 2), ("dtr", 3), ("trtr", 4)])
def test_tall_stitches_wrap_and_pull_as_the_handbook_says(name: str, wraps: int) -> None:
    """Handbook of Wool Knitting and Crochet, 1918: a treble (US double) has one wrap and is
    worked off by
    twos, and each taller stitch has a wrap and a pull more: 1 + wraps + 1 loops, each pull
    takes one off.
    """
    words = CROCHET[name].words
    first = re.match(r"Yarn over(?: (\w+(?: times)?))? first", words)
    assert first is not None
    assert TIMES.get(first.group(1) or "once") == wraps
    pulls = re.search(r"Then (\w+(?: times)?): yarn over, pull through two loops", words)
    assert pulls is not None
    assert TIMES[pulls.group(1)] == wraps + 1


def test_every_stitch_of_the_table_can_be_explained() -> None:
    """No stitch that is read is unknown to "how do I do that"; a source stands beside each."""
    unknown = []
    for craft, table in STITCHES.items():
        unknown += [name for name in table if how_to(name, craft) is None]
    assert unknown in ([], ["cable twist"])
    assert set(SHORT_TO_HEIGHT) <= set(CROCHET)
    assert all(how.source for how in (*CROCHET.values(), *KNITTING.values()))


def test_explanations_are_short_and_name_no_abbreviation() -> None:
    """Eighteen seconds at most at 170 words a minute; words only."""
    for how in (*CROCHET.values(), *KNITTING.values()):
        assert len(how.words.split()) <= 50
        assert re.fullmatch(r"[A-Za-z ,.:;-]+", how.words)


def test_the_same_form_in_us_and_uk_terms() -> None:
    """A UK double crochet is made as a US single crochet is."""
    us, uk = Reading(), Reading("crochet", "UK")
    assert find_how("dc", uk) == find_how("sc", us)
    assert find_how("tr", uk) == find_how("dc", us)
    assert say_how("dc", uk).startswith("Double crochet. Insert the hook")


def test_meanings_come_from_the_pattern_first() -> None:
    """A recipe is read out as the pattern has it; an unknown form has none."""
    own = Reading("crochet", "US", (("inc", "2 sc in the same stitch"),))
    assert (
        meaning("inc", own)
        == "Increase: two single crochet in the same stitch, as this pattern says."
    )
    assert meaning("zqx", own) == ""
    assert say_how("sc5tog", own).startswith(
        "Single crochet five together. Work into each of the next five"
    )


def test_a_step_is_explained_stitch_by_stitch() -> None:
    """Each stitch once."""
    row = buoy_plan().parts[0].rows[4]
    said = say_how_step(row.groups[0], row)
    assert said.startswith("Single crochet: insert the hook")
    assert "Increase: make two stitches in the same place." in said


def test_cables_and_posts_are_made_on_demand() -> None:
    """Front crosses wait in front, back crosses behind."""
    assert "at the front" in (how_to("c4f", Craft.KNITTING) or KNITTING["k"]).words
    assert "at the back" in (how_to("c6b", Craft.KNITTING) or KNITTING["k"]).words
    assert "from the back" in (how_to("bpdc", Craft.CROCHET) or CROCHET["sc"]).words
