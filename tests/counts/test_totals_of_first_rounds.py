"""Totals in brackets behind a piece's first round, and totals that name their stitch in full: right
ones agree, wrong ones are told, and none is worked. Common practice, no source; invented rows.
"""

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

SAID = (
    "({} dc in all)", "({} sts in total)", "({} in all)", "({} altogether)", "({} dc made)",
    "({} dc, ring complete)", "({} dc all told)", "({} dc in ring)", "({} dc on the ring)",
    "(so {} dc)", "({} dc - first round)", "({} dc, 1st rnd)", "({} double crochets in all)",
    "({} dc in all, including the ch 3)",
)  # fmt: skip
BEGUN = (
    "Ch 6, join; ch 3 (counts as dc), 17 dc into ring, join",
    "Ch 6, sl st into ring. Ch 3 (counts as dc), 17 dc in ring, sl st to top of ch 3",
    "Rnd 1: in a magic ring, ch 3 (counts as dc), 17 dc, join",
)


def _read(text: str) -> tuple[list[int | None], int]:
    told = as_json(count_pattern(parse_pattern(text), 0))
    return [row["count"] for part in told["parts"] for row in part["rounds"]], len(told["problems"])


@pytest.mark.parametrize("begun", BEGUN)
@pytest.mark.parametrize("said", SAID)
def test_a_bracket_behind_the_first_round_is_its_total(said: str, begun: str) -> None:
    rest = "\nRnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each dc around, join.\n"
    assert _read(f"Coaster\n\n{begun} {said.format(18)}{rest}") == ([18, 36], 0)
    assert _read(f"Coaster\n\n{begun} {said.format(20)}{rest}")[1] > 0


NAMES = (
    "single crochet", "single crochets", "single crochet stitches", "singles", "single crochet sts",
    "sc", "stitches",
)  # fmt: skip


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("total", ["({})", ". {}."])
def test_totals_that_name_their_stitch_in_full_are_held_against_the_row(
    name: str, total: str
) -> None:
    text = (
        "Coaster\n\nRnd 1: 6 sc in ring (6)\nRnd 2: 2 sc in each st around{}\n"
        "Rnd 3: *sc in next st, 2 sc in next st; rep from * around.\n"
    )
    right, wrong = (" " * (total[0] == "(") + total.format(f"{n} {name}") for n in (12, 13))
    assert _read(text.format(right)) == ([6, 12, 18], 0)
    assert _read(text.format(wrong))[1] == 1


@pytest.mark.parametrize("said", ["Twelve.", "Twelve now.", "That makes twelve.", "(twelve)"])
def test_a_number_word_alone_is_a_total(said: str) -> None:
    text = "Coaster\n\nRound one: 6 sc in ring.\nRound two: 2 sc in each st around. {}\n"
    assert _read(text.format(said)) == ([6, 12], 0)
