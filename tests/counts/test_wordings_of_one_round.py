"""One round of a ball in all the wordings that we could think of: each must be counted alike. The
wordings are invented; the counts follow by addition (6 into a ring, doubled, six more, six fewer).
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

STARTS = (
    "6 sc in magic ring", "Magic ring, 6 sc", "6 sc in a MR", "MR, 6 sc",
    "Make a magic circle and work 6 sc into it", "Start with a magic ring; 6 sc in ring",
    "6 sc into magic loop", "Ch 2, 6 sc in 2nd ch from hook",
    "Chain 2. Work 6 single crochet in the second chain from the hook",
    "Ch 2, work 6 sc in 2nd ch", "6 sc in MC", "MC 6 sc", "Work 6 sc into an adjustable ring",
    "sc 6 in magic ring", "sc 6 into a magic circle", "sc x6 in MR",
    "Form a ring, ch 1, 6 sc into ring, join", "Ch 3, sl st to form ring, ch 1, 6 sc in ring",
    "ch 3 and join into a ring, 6 sc in ring", "6sc in mr", "magic ring with 6 sc",
    "(6sc) into MR", "Into a magic ring work 6 sc", "AR, 6 sc",
    "Begin by making a magic ring with 6 single crochets", "6 sc in sliding loop",
    "Wrap yarn to form ring, 6 sc in ring, pull closed",
    "6 single crochet stitches in a magic ring", "ch1, 6 sc into a magic ring, sl st in first sc",
    "Start 6 sc in magic ring", "Starting with a magic ring, sc 6 times into the ring",
    "Make 6 sc in the ring", "Sc 6 in ring", "In magic ring: 6 sc",
    "6 sc in the magic ring, tighten", "MR 6 sc", "mr 6",
)  # fmt: skip
DOUBLED = (
    "2 sc in each st around", "2sc in each sc", "inc in each st", "inc around", "inc x 6",
    "inc 6 times", "6 inc", "(inc) x 6", "[inc] 6 times", "*inc* 6 times",
    "increase in every stitch", "increase 6 times", "6 increases", "inc 6", "inc *6", "inc×6",
    "2 sc into every stitch", "two sc in each stitch around", "work 2 sc in each st",
    "double every stitch", "2 sc in every stitch to the end", "each st gets 2 sc",
    "2 sc per stitch", "inc all around", "increase all the way around",
    "(2 sc in next st) 6 times", "2 sc in next st, repeat around",
    "*2 sc in next st; rep from * around", "*2 sc in the next st* repeat 6 times",
    "2 single crochet in each stitch around", "inc. in each st.", "make an increase in each st",
    "sc inc around", "sc inc x6", "sc-inc in each", "6x inc", "6 x inc", "inc (6x)",
    "Inc in ea st", "2 sc in ea sc around", "increase (2 sc in one st) in each stitch",
    "put two single crochets in each stitch", "2 sc in each of the 6 sts",
    "2 sc in each of next 6 sts", "2 sc in next 6 sts", "work two stitches into each stitch",
    "inc to end", "Inc each", "(sc 2 in next st) 6 times", "sc twice in each st",
    "sc 2 in each st",
)  # fmt: skip
SIX_MORE = (
    "*sc in next st, 2 sc in next st; rep from * around", "(sc, inc) x 6", "(sc, inc) 6 times",
    "[sc, inc] x6", "*sc, inc* x6", "*1 sc, inc* repeat around", "(1 sc, 1 inc) * 6",
    "sc, inc, repeat around", "1 sc, inc, repeat 6 times",
    "(sc in next st, inc in next st) around", "sc 1, inc 1, repeat",
    "1 sc, 2 sc in next - repeat around", "6x (sc, inc)", "6 x [1 sc, 1 inc]", "6*(sc, inc)",
    "{sc, inc} 6 times", "inc every other st", "2 sc in every other st", "2 sc in every 2nd st",
    "inc in every second stitch", "sc in first st, inc in next, rep around",
    "1 sc in next st, inc in next st, rep around",
    "[1 single crochet, 1 increase] repeat 6 times", "(inc, sc) x6",
    "*inc, 1 sc, rep from * to end", "sc1, inc1 around", "<sc, inc> x 6", "sc, inc (x6)",
    "(sc, inc)6", "sc, inc x 6", "alternate 1 sc and 1 inc", "(1,inc)x6",
    "[sc 1, 2 sc in next] 6x", "*1 sc in next sc, 2 sc in next sc, repeat from * 5 more times",
    "* 1 sc in next sc, 2 sc in next sc * six times in all", "repeat (sc, inc) around",
    "repeat [sc, inc] six times", "work (sc, inc) 6 times",
    "(sc in the next st, 2 sc in the following st) six times",
    "single crochet in one stitch, increase in the next, all the way around", "(sc, inc) to end",
    "sc, inc, sc, inc, sc, inc, sc, inc, sc, inc, sc, inc", "(sc, inc) - 6 times",
    "(sc, inc), repeat 5 times more", "inc in every other st around", "6 inc evenly spaced",
    "inc 6 times evenly", "sc around, increasing 6 sts evenly",
    "sc in each st, increasing in every 2nd st", "(sc, inc), rep. x 6", "x6 (sc, inc)",
    "6 (sc, inc)",
)  # fmt: skip
SIX_FEWER = (
    "(sc, dec) x 6", "*sc, sc2tog; rep from * around", "[1 sc, dec] 6 times",
    "sc, dec, repeat around", "(sc in next st, sc2tog) around", "(1 sc, invdec) x6",
    "*sc 1, dec 1* around", "(sc, inv dec) x 6", "(dec, sc) x6",
    "sc in next st, dec over next 2 sts, repeat", "dec every 2nd and 3rd st",
    "sc2tog every 2nd & 3rd st", "(1 sc, sc next 2 sts together) 6 times",
    "*sc in next st, sc 2 tog* 6 times", "sc, decrease, all the way around", "6x (sc, dec)",
    "[sc 1, decrease 1] x 6", "(sc1, sc2tog)*6", "(sc, sc dec) six times",
    "sc around, decreasing 6 sts evenly", "dec 6 times evenly", "*1 sc, skip 1, 1 sc* around",
    "1 sc, 1 dec - repeat 6 times", "(1 single crochet, 1 decrease) around",
    "(sc in next, dec in next 2) around", "(sc, sc-dec) x 6",
)  # fmt: skip
ROUNDS = {
    1: (STARTS, 6), 2: (DOUBLED, 12), 3: (SIX_MORE, 18), 4: (SIX_FEWER, 12),
}  # fmt: skip
USUAL = ("6 sc in magic ring", "inc x 6", "(sc, inc) x 6", "(sc, dec) x 6", "sc around")


@pytest.mark.parametrize(
    ("number", "words"), [(n, words) for n, (all_of, _) in ROUNDS.items() for words in all_of]
)
def test_each_wording_makes_the_same_count(number: int, words: str) -> None:
    rounds = [*USUAL[: number - 1], words, USUAL[-1]]
    text = "\n".join(["Ball", *(f"Rnd {n}: {told}" for n, told in enumerate(rounds, 1))])
    counted = count_pattern(parse_pattern(text))
    counts = [row.count for part in counted.parts for row in part.rows]
    expected = [count for _, count in ROUNDS.values()][:number]
    assert counts == [*expected, expected[-1]]
    assert not counted.problems


RANGES = (
    "Rnds 5-9:", "Rnd 5 to 9:", "Rnds 5 through 9 (5 rnds):", "Rounds 5, 6, 7, 8, 9:", "Rnd 5-9.",
    "Rounds 5–9:", "Rnd 5 - Rnd 9:", "Rnd 5 thru Rnd 9:", "Rnds #5-9:", "Rnd 5 - 9 (5 rnds):",
    "Rnds 5, 6, 7, 8 and 9:", "Rnds 5-9 (5 rounds):", "Rnd 5~9:", "Rnd 5..9:",
    "Rnd 5-9 [5 rounds]:",
)  # fmt: skip


@pytest.mark.parametrize("label", RANGES)
@pytest.mark.parametrize("words", ["sc in each st around (12)", "12 sc (12)", "sc around. 12 sts"])
def test_each_manner_of_naming_several_rounds(label: str, words: str) -> None:
    rounds = [f"Rnd {n}: {told}" for n, told in enumerate(USUAL[:4], 1)]
    text = "\n".join(["Ball", *rounds, f"{label} {words}", "Rnd 10: dec x6 (6)"])
    counted = count_pattern(parse_pattern(text))
    counts = [row.count for part in counted.parts for row in part.rows]
    assert counts == [6, 12, 18, 12, 12, 12, 12, 12, 12, 6]
