"""Work that goes on to a measure or for so many rows, whatever verb and manner tell it, and changes
called back by their kind; common practice, no source. The pieces are invented.
"""

from __future__ import annotations

from itertools import product

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

CAP = """Harbour cap
CO 60 sts. Join in the round.
Round 1: *K2, p2; rep from * around.
{}
Crown
Round 1: *K8, k2tog; rep from * around.
"""
VERBS = ("Work", "Cont.", "Carry on", "Keep going", "Go on", "Proceed", "Continue working")
MANNERS = ("as set", "even", "in this way", "in patt as est", "like this", "without shaping")
FAR = ("until rib measures 1½ in.", "for 5 cm.", "until it is as long as you like.", "to 2 in.")


def counts_of(text: str, size: int = 0) -> list[int | None]:
    counted = count_pattern(parse_pattern(text), size)
    return [row.count for part in counted.parts for row in part.rows]


def test_to_a_measure() -> None:
    for at, (verb, manner) in enumerate(product(VERBS, MANNERS)):
        far = FAR[at % len(FAR)]
        assert counts_of(CAP.format(f"{verb} {manner} {far}")) == [60, 60, 60, 54]


@pytest.mark.parametrize(
    "words",
    ["Knit next 4 rnds.", "Purl the next four rnds.", "Knit 4 additional rounds.",
     "Work k1, p1 rib for 4 rnds without shaping.", "Continue in k2/p2 rib for 4 rnds.",
     "Work (k2, p2) rib for another 4 rnds."],
)  # fmt: skip
def test_so_many_rows(words: str) -> None:
    assert counts_of(CAP.format(words)) == [60, 60, 60, 60, 60, 60, 54]


TOE = """Gull sock
CO 40 sts. Join in the round.
Rnd 1: {}
Rnd 2: Knit.
{}
"""
BY_MARKERS = "*K1, ssk, k to 3 sts before m, k2tog, k1; rep from * once more."


@pytest.mark.parametrize(
    ("words", "counts"),
    [
        ("Work dec rnd once more.", [32]),
        ("Work the decrease round twice only. 28 sts.", [32, 28]),
        ("Work 2 more dec rnds.", [32, 28]),
        ("Work another dec rnd.", [32]),
        ("Repeat the decrease round.", [32]),
        ("Rep dec rnd until 28 sts rem.", [32, 28]),
        ("Rep these 2 rnds until 28 sts rem.", [32, 32, 28, 28]),
        ("Continue to repeat these two rounds until there are 28 sts.", [32, 32, 28, 28]),
        ("Cont to rep rnds 1 and 2 until 28 sts remain.", [32, 32, 28, 28]),
    ],
)
def test_change_called_back(words: str, counts: list[int]) -> None:
    assert counts_of(TOE.format(BY_MARKERS, words)) == [40, 36, 36, *counts]


@pytest.mark.parametrize(
    "row",
    ["K to 3 sts before side, k2tog, k2, ssk, k to 3 sts before other side, k2tog, k2, ssk, k to"
     " end.",
     "*K1, ssk, k to last 3 sts on needle, k2tog, k1; rep from * once more."],
)  # fmt: skip
def test_sides_are_places(row: str) -> None:
    assert counts_of(TOE.format(row, "Rep these 2 rnds twice more.")) == [
        40, 36, 36, 32, 32, 28, 28,
    ]  # fmt: skip


GUSSET = """Mooring mitt
Sizes: S (M, L)
CO 24 (28, 32) sts. Join in the round.
Rnd 1: K12 (14, 16), pm, m1, pm, k to end.
Rnd 2: K to m, sm, m1, k to m, m1, sm, k to end.
Rnd 3: Knit.
{}
Next rnd: K to m, place next 5 (5, 7) sts on a holder, cast on 2 sts, k to end.
"""


@pytest.mark.parametrize(
    "words",
    ["Rep last 2 rnds until there are 5 (5, 7) sts between markers.",
     "Repeat these 2 rounds until you have 5 (5, 7) thumb sts.",
     "Repeat the last 2 rnds until thumb gusset has 5 (5, 7) sts.",
     "Rep last two rnds until 5 (5, 7) sts are between your markers."],
)  # fmt: skip
def test_gusset_in_sizes(words: str) -> None:
    assert counts_of(GUSSET.format(words)) == [24, 25, 27, 27, 29, 29, 26]
    assert counts_of(GUSSET.format(words), 2) == [32, 33, 35, 35, 37, 37, 39, 39, 34]


def test_labels_fenced_in_one_paragraph() -> None:
    rows = "{} Knit even. {} K12, pm, m1, pm, k to end. {} Knit."
    start = "Lamp mitt\nCO 24 sts. Join in the round. {} K2, p2 rib around.\n\n"
    for fence in ("**Rnd {}:**", "[Rnd {}]"):
        labels = [fence.format(one) for one in (5, 6, 7)]
        text = start.format(fence.format("1-2")) + rows.format(*labels)
        assert counts_of(text)[-4:] == [24, 24, 25, 25]


def test_list_of_short_words_above_the_start() -> None:
    text = (
        "Lamp cowl\nAbbr.: beg = beginning, CO = cast on, BO = bind off, pm = place marker\n"
        "Loosely cast on 40 sts. Join in the round.\n"
        "*Knit 2, purl 2; rep from * all around.\nKnit 2 rnds.\n"
    )
    assert counts_of(text) == [40, 40, 40, 40]


def test_lines_set_by_hand_stand_alone() -> None:
    text = (
        "Lamp sock\nSizes: S (M, L)\nCO 40 (44, 48) sts. Join in the round.\nHeel\n"
        "K the first 20 (22, 24) sts onto one needle for heel; leave rem 20 (22, 24) sts on hold.\n"
        "Slip 1, knit across.\nSlip 1, purl to end.\nRep these two rows twice.\n"
    )
    assert counts_of(text, 1) == [44, 22, 22, 22, 22, 22, 22, 22]


@pytest.mark.parametrize(
    ("words", "count"),
    [
        ("Knit, decreasing 1 st.", 59),
        ("Knit, inc 1 st.", 61),
        ("Knit around, decreasing one stitch.", 59),
        ("K, dec 1 st.", 59),
        ("Knit, increasing 3 stitches.", 63),
    ],
)
def test_one_stitch_of_the_whole_round(words: str, count: int) -> None:
    assert counts_of(f"Tide cap\nCO 60 sts. Join in the round.\nRnd 1: {words}\n") == [60, count]


@pytest.mark.parametrize(
    "total",
    [" (6 thumb sts).", " — 6 sts for thumb.", ": 6 gusset sts.", ". 6 sts between markers.",
     " (6 sts between the markers, 40 sts total)."],
)  # fmt: skip
def test_total_of_a_part_is_not_the_rounds(total: str) -> None:
    text = (
        "Mooring mitt\nCO 36 sts. Join in the round.\n"
        "Rnd 1: K17, pm, m1, k2, m1, pm, k to end.\n"
        f"Rnd 2: K to m, sm, m1, k to m, m1, sm, k to end{total}\nRnd 3: Knit.\n"
    )
    assert counts_of(text) == [36, 38, 40, 40]


@pytest.mark.parametrize(
    "words",
    ["Return 12 held thumb sts to needles. Rejoin yarn, knit across, pick up and k 2 sts.",
     "Put the 12 thumb sts back on the needles, attach yarn and k12, pick up and k2.",
     "Divide the 12 thumb sts over 3 dpns. Rejoin yarn and pick up 2 sts over the gap.",
     "Slip 12 sts from waste yarn onto dpns. Knit these sts, then pick up 2 sts along the edge."],
)  # fmt: skip
def test_thumb_taken_up(words: str) -> None:
    text = (
        "Mooring mitt\nCO 36 sts. Join in the round.\nRnd 1: Knit.\n"
        f"Next rnd: K to last 12 sts, place next 12 sts on a holder.\nThumb\n{words}\n"
        "Rnds 1-2: Knit.\nRnd 3: K2tog around.\n"
    )
    assert counts_of(text)[-3:] == [14, 14, 7]


@pytest.mark.parametrize(
    "words",
    ["K plain for 2 in.", "K each row for 3 inches.", "P every row until piece measures 2 in.",
     "K on right side, p on wrong side until piece measures 12 inches."],
)  # fmt: skip
def test_short_verbs_to_a_measure(words: str) -> None:
    text = f"Skipper's vest\nCast on 72 sts. Work 2 rows plain knitting. {words}\n"
    assert counts_of(text) == [72, 72, 72, 72]


def test_beginnings_before_what_is_bound_off() -> None:
    text = "Skipper's vest\nCast on 72 sts.\nKnit 2 rows. At beg of next two rows bind off 6 sts.\n"
    assert counts_of(text) == [72, 72, 72, 66, 60]
