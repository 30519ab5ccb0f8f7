"""A ball and a hat in every manner of numbering rows and of printing totals that we could think of:
each must be counted alike. The pieces are invented; their counts follow from the words by addition.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BALL = (
    ("6 sc in magic ring", 6), ("2 sc in each st", 12),
    ("*sc in next st, 2 sc in next st; repeat from * around", 18), ("(2 sc, inc) x 6", 24),
    ("sc in each st around", 24), ("(2 sc, dec) 6 times", 18), ("(sc, dec) repeat around", 12),
    ("dec x6", 6),
)  # fmt: skip
HAT = (
    ("*k8, k2tog; rep from * to end of rnd", 72), ("Knit", 72),
    ("*k7, k2tog; rep from * around", 64), ("k all sts", 64), ("[k6, k2tog] 8 times", 56),
    ("knit around", 56), ("(k5, k2tog) to end", 48), ("k2tog around", 24),
)  # fmt: skip
PIECES = {
    "Ball": (BALL, ()), "Hat": (HAT, ("Cast on 80 sts. Join to work in the round.",)),
}  # fmt: skip
LABELS = (
    "Rnd {n}:", "R{n}:", "R{n} -", "{n}.", "{n})", "({n})", "Round {n}.", "Rd. {n}:", "RND{n}",
    "R{n}", "{n}:", "{n} -", "Round {n} –", "Rnd. {n}.", "#{n}", "r{n}:", "rnd {n}", "- R{n}:",
    "• Rnd {n}:", "**Rnd {n}:**", "[R{n}]", "Round {n} =", "R.{n}", "Rnd{n}.", "Step {n}:",
)  # fmt: skip
TOTALS = (
    "{w} ({n})", "{w} [{n}]", "{w} = {n}", "{w}. {n} sts", "{w} - {n}", "{w} – {n} sts",
    "{w} {{{n}}}", "{w} <{n}>", "{w} -> {n}", "{w}. {n}", "{w} (={n})", "{w}, {n} sts",
    "{w} (total {n})", "{w}...{n}", "{w} /{n}/", "{w} ({n} total sts)", "{w} *{n}*", "{w} -{n}-",
    "{w} __ {n} sts", "{w} {n} sts", "{w} ({n}) sts", "{w}. St count: {n}", "{w}: {n}", "{w}\t{n}",
    "{w} (sts: {n})", "{w} [tot {n}]", "{w} ={n}=", "{w} … {n}", "{w} Σ{n}", "{w} #{n}",
    "{w} ........ {n}", "{w}. Count {n}.", "{w}. Stitches: {n}", "{w}. Total sts: {n}",
    "{w} «{n}»", "{w} (({n}))", "{w}. {n} ✔", "{w} / {n} sts", "{w}. End with {n} sts.",
    "{w}, ending with {n} sts", "{w} until you have {n} sts", "{w}, for a total of {n} sts",
)  # fmt: skip


def _counts(piece: str, label: str, total: str) -> tuple[list[int | None], list[int]]:
    rows, first = PIECES[piece]
    lines = [
        f"{label.format(n=at)} {total.format(w=words, n=count)}"
        for at, (words, count) in enumerate(rows, 1)
    ]
    counted = count_pattern(parse_pattern("\n".join((piece, *first, *lines))))
    found = [row.count for part in counted.parts for row in part.rows if row.number is not None]
    return found, [count for _, count in rows]


@pytest.mark.parametrize("piece", PIECES)
@pytest.mark.parametrize("label", LABELS)
def test_each_manner_of_numbering_is_counted_alike(piece: str, label: str) -> None:
    found, counts = _counts(piece, label, TOTALS[0])
    assert found == counts


@pytest.mark.parametrize("piece", PIECES)
@pytest.mark.parametrize("total", TOTALS)
def test_each_manner_of_a_total_is_counted_alike(piece: str, total: str) -> None:
    found, counts = _counts(piece, LABELS[0], total)
    assert found == counts


@pytest.mark.parametrize("total", TOTALS)
def test_one_wrong_total_is_told_once_in_each_manner(total: str) -> None:
    lines = [
        f"Rnd {at}: {total.format(w=words, n=count + (at == 5))}"
        for at, (words, count) in enumerate(BALL, 1)
    ]
    found = count_pattern(parse_pattern("\n".join(("Ball", *lines)))).problems
    assert [one.label for one in found] == ["Round 5"]


@pytest.mark.parametrize("words", ["R2 - 2 dc in each st", "R2 – 2dc in each st"])
def test_a_number_of_stitches_behind_the_dash_is_no_range_of_rounds(words: str) -> None:
    text = f"Whale\nR1 - 6 dc in magic ring\n{words}\nR3 - 12 dc"
    (part,) = count_pattern(parse_pattern(text, "UK")).parts
    assert [row.count for row in part.rows] == [6, 12, 12]
