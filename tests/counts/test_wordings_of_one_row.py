"""One row in many wordings, in the round, flat and crocheted: each must be counted alike. The
wordings are invented; the counts follow by addition.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

HAT = "Hat\nCast on 80 sts and join in the round.\nRnd 1: knit\nRnd 2: {words}\nRnd 3: knit"
SQUARE = "Square\nCast on 40 sts.\nRow 1: knit\nRow 2: {words}\nRow 3: purl"
PANEL = (
    "Panel\nCh 21.\nRow 1: sc in 2nd ch from hook and in each ch across. (20)\nRow 2: {words}\n"
    "Row 3: ch 1, turn, sc across"
)
EIGHT_FEWER = (
    "*k8, k2tog; rep from * around", "*k8, k2tog* around", "(k8, k2tog) 8 times",
    "[K8, K2tog] x 8", "*K8, K2tog, rep from * to end", "knit 8, knit 2 together, repeat around",
    "k8, k2tog, rep to end", "*k8, k2tog* repeat to end of round", "k8 k2tog around",
    "*knit 8, k2tog*, repeat", "(k8, k2tog), rep to end", "K2tog every 10 sts",
    "k2tog, k8 around", "(k2tog, k8) rep around", "dec 8 sts evenly",
    "decrease 8 stitches evenly spaced around", "knit, decreasing 8 sts evenly across round",
    "*k 8, k 2 tog; repeat from *", "knit every 9th and 10th stitch together",
    "knit every 9th and 10th st tog",
    "*knit 8 stitches, then knit 2 together. Repeat from * to the end of the round",
    "knit around, working k2tog over every 9th & 10th st", "* k8, ssk * around",
    "*k8, sl1, k1, psso; rep from * to end", "[k8, k2tog] to end",
    "K8, k2tog; repeat 7 more times", "rep (k8, k2tog) 8 times", "8 x (k8, k2tog)",
    "(k8, k2tog) x8", "k2tog after every 8th stitch", "*k8, dec 1; rep from * around",
    "*K8, dec; rep from *", "(k8,k2tog)8 times", "k8, k2tog repeat",
    "k2tog 8 times evenly around", "*K8, k2tog.* Repeat between *s to end", "{k8, k2tog} around",
    "repeat *k8, k2tog* to end of rnd", "*8 k, k2tog; rep from * around",
    "knit 2 together after every 8 stitches", "*K8, knit two together, repeat from * around",
    "*knit eight, knit two together; repeat from * to end",
    "k8, k2tog - repeat these 10 sts to end", "*k8, k2tog*; rep between *...* to end",
    "work (k8, k2tog) around", "*k8, k2tog, rep from * 7 more times",
    "*k8, k2tog; rep from * 7 times more", "*k8, k2tog, rep from * across",
    "k8, (k2tog, k8) 7 times, k2tog", "*k3, k2tog, k5; rep from * to end",
)  # fmt: skip
FLAT = (
    ("k1, m1, k to last st, m1, k1", 42), ("K1, M1L, knit to last stitch, M1R, K1", 42),
    ("kfb, k to last st, kfb", 42), ("inc 1 st at each end", 42),
    ("increase 1 stitch each end of row", 42), ("inc in first and last st", 42),
    ("k1, yo, k to last st, yo, k1", 42), ("knit, increasing one stitch at each end", 42),
    ("kfb, k38, kfb", 42), ("k2, m1, k to last 2 sts, m1, k2", 42),
    ("k1, k2tog, k to last 3 sts, ssk, k1", 38), ("dec 1 st at each end", 38),
    ("k2tog, k to last 2 sts, k2tog", 38), ("k1, ssk, k to 3 sts from end, k2tog, k1", 38),
    ("decrease one stitch at both ends", 38), ("bind off 5, k to end", 35),
    ("BO 5 sts, knit to end of row", 35), ("cast off 5 sts, k35", 35),
    ("Cast off 5 sts at beg of row, knit to end", 35), ("cast on 5, knit all sts", 45),
    ("CO 5 sts at beginning of row, k to end", 45), ("k20, m1, k20", 41),
    ("k18, k2tog, k2tog, k18", 38), ("k18, (k2tog) twice, k18", 38),
    ("*k2, p2; rep from * to end", 40), ("*k1, p1* to end", 40),
    ("k1, *yo, k2tog; rep from * to last st, k1", 40),
    ("k1, *p1, k1; rep from * to last st, p1", 40), ("*k4, m1; rep from * to end", 50),
    ("*k4, m1; rep from * to last 4 sts, k4", 49),
    ("k2, *k4, m1; rep from * to last 2 sts, k2", 49),
    ("*k3, inc in next st; rep from * to end", 50),
    ("k5, m1, *k10, m1; rep from * to last 5 sts, k5", 44), ("inc 8 sts evenly across", 48),
    ("knit, inc 8 sts evenly across row", 48), ("inc 1 in every 5th st", 48),
    ("k3, k2tog, yo, k to last 5 sts, yo, ssk, k3", 40), ("sl 1, k to end", 40),
    ("sl1, knit to last st, p1", 40), ("k19, cdd, k18", 38), ("k to last 3 sts, k2tog, k1", 39),
    ("k1, ssk, knit to end", 39), ("(k1, p1, k1) in first st, k to end", 42),
    ("k1, (yo, k1) 39 times", 79), ("yo, k to end", 41), ("k2, yo, knit to end", 41),
    ("knit to last 2 sts, kfb, k1", 41), ("p", 40), ("purl back", 40), ("purl across", 40),
    ("all purl", 40), ("k all", 40), ("Knit every stitch", 40), ("P40", 40),
    ("purl to end of row", 40), ("k10, p20, k10", 40), ("*k2tog; rep from * to end", 20),
    ("k2tog across", 20), ("k2tog all along", 20), ("k2tog to end", 20), ("(k2tog) 20 times", 20),
    ("k3tog to last st, k1", 14), ("k1, *k2tog, k1; rep from * to end", 27),
)  # fmt: skip
CROCHETED = (
    ("Ch 1, turn, sc across", 20), ("ch 1, sc in each st, turn", 20),
    ("Turn, ch 1, 2 sc in first st, sc to last st, 2 sc in last st", 22),
    ("ch 1, sc2tog, sc in next 16, sc2tog", 18),
    ("ch1, turn. inc in first st, sc in next 18 sts, inc in last st", 22),
    ("ch 3 (counts as dc), turn, dc in next st and each st across", 20),
    ("ch 3, turn, skip first st, dc in each st across", 20),
    ("ch 2 (does not count), turn, hdc in each st", 20),
    ("ch 2, turn, hdc in each st across", 20), ("Turn. Ch 1. Sc in BLO across", 20),
    ("ch 1, turn, sc in back loop only of each st across", 20),
    ("ch 1, turn, *sc in next st, dc in next st; rep from * across", 20),
    ("ch 1, turn, dec over first 2 sts, sc to last 2 sts, dec", 18),
    ("decrease 1 st at each end", 18), ("increase one at each end", 22),
    ("ch 1, turn, sc in next 10 sts, leave the rest unworked", 10),
    ("ch 1, turn, skip first st, sc across", 19), ("sc across, ch 1, turn", 20),
    ("20 sc, ch 1, turn", 20), ("1 sc in each sc to end, 1 ch, turn", 20),
    ("work 1 row of sc", 20), ("sc in every st", 20), ("ch 1, turn, sc 20", 20),
    ("ch1, sc x 20", 20), ("ch 1, turn, [sc 3, inc] 5 times", 25),
    ("ch 1, turn, *sc in next 3 sts, 2 sc in next st; rep from * across", 25),
    ("ch 1, turn, *sc in next 3, sc2tog; rep from * across", 16),
    ("ch 1, turn, sc in first 9 sts, 3 sc in next st, sc in last 10 sts", 22),
    ("ch 1, turn, sc in each st to last 2 sts, sc2tog", 19),
    ("ch 1, turn, sc2tog, sc to end", 19), ("ch 1, 2 sc in first sc, sc in each sc across", 21),
    ("ch 3, turn, dc in first st, dc across", 21),
    ("ch 3, turn, dc in same st, dc in each st across, 2 dc in last st", 22), ("hdc across", 20),
    ("ch 1, turn, 1 sc in every stitch until the end", 20),
    ("ch 1 and turn, single crochet in each stitch", 20), ("ch 1, turn, sc evenly across", 20),
    ("work even", 20),
)  # fmt: skip
AFTER_EVERY = (
    ("m1 after every 8 sts", 90), ("increase 1 after every 8th stitch", 90),
    ("knit, making 1 st after every 10 sts", 88), ("k2tog after every 6th stitch", 70),
    ("knit around, working ssk over every 9th & 10th st", 72), ("repeat *k6, k2tog* to end", 70),
)  # fmt: skip


def _counts(text: str) -> list[int | None]:
    counted = count_pattern(parse_pattern(text))
    assert not counted.problems
    return [row.count for part in counted.parts for row in part.rows if row.number is not None]


@pytest.mark.parametrize("words", EIGHT_FEWER)
def test_each_wording_of_eight_decreases(words: str) -> None:
    assert _counts(HAT.format(words=words)) == [80, 72, 72]


@pytest.mark.parametrize(("words", "count"), AFTER_EVERY)
def test_changes_told_by_what_stands_between(words: str, count: int) -> None:
    assert _counts(HAT.format(words=words)) == [80, count, count]


@pytest.mark.parametrize(("words", "count"), FLAT)
def test_each_wording_of_a_flat_row(words: str, count: int) -> None:
    assert _counts(SQUARE.format(words=words)) == [40, count, count]


@pytest.mark.parametrize(("words", "count"), CROCHETED)
def test_each_wording_of_a_crocheted_row(words: str, count: int) -> None:
    assert _counts(PANEL.format(words=words)) == [20, count, count]
