"""A hat's brim and a knitted hat in three sizes, with the sizes named and their numbers listed in
every manner that we could think of: each must be counted alike. Invented; counts by addition.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

HEADS = (
    "Sizes: S (M, L)", "Size: Small (Medium, Large)", "Sizes: Small, Medium, Large",
    "To fit: small [medium, large]", "Sizes: 6 months (12 months, 2 years)", "Size S/M/L",
    "Sizes S, M and L", "Sizes: 3 (4, 5) years", "For sizes 2, 4 and 6",
    "Finished size: 16 (18, 20) in", "To fit head 18 (20, 22) ins", "Chest: 32[36:40] in",
    "Directions are for size 2. Changes for sizes 4 and 6 are in brackets.",
    "This hat comes in three sizes: baby, child and adult.", "Sizes: XS(S:M)",
)  # fmt: skip
LISTS = (
    "{a} ({b}, {c})", "{a} [{b}, {c}]", "{a}({b},{c})", "{a} [{b}: {c}]", "{a}/{b}/{c}",
    "{a}-{b}-{c}", "{a} ({b}; {c})", "{a} ({b}) ({c})", "({a}, {b}, {c})", "{a} ({b}/{c})",
    "{a}:{b}:{c}", "{a} - {b} - {c}", "[{a}, {b}, {c}]", "{a} [{b}] ({c})", "{a}, ({b}, {c})",
)  # fmt: skip
BRIM = (
    "Brim\n\nCh {0}.\nRow 1: Sc in 2nd ch from hook and in each ch across. {1} sc\n"
    "Row 2: Ch 1, turn, sc in next {2} sts, 2 sc in next st, sc to end. ({3} sts)\n"
    "Row 3: Ch 1, turn, sc across.\n",
    ((21, 25, 31), (20, 24, 30), (10, 12, 15), (21, 25, 31)),
    ((20, 21, 21), (24, 25, 25), (30, 31, 31)),
)
HAT = (
    "Hat\n\nCast on {0} sts. Join to work in the round.\nRnd 1: *K2, p2; rep from * around.\n"
    "Rnd 2: *K{1}, k2tog; rep from * around. {2} sts.\n"
    "Rnd 3: *K{3}, k2tog; rep from * around. ({4} sts)\n",
    ((72, 80, 88), (16, 18, 20), (68, 76, 84), (15, 17, 19), (64, 72, 80)),
    ((72, 68, 64), (80, 76, 72), (88, 84, 80)),
)


def _counts(head: str, listed: str, piece: tuple[str, tuple[tuple[int, int, int], ...]]) -> object:
    words, numbers = piece
    lists = (listed.format(a=a, b=b, c=c) for a, b, c in numbers)
    pattern = parse_pattern(f"{head}\n{words.format(*lists)}")
    assert len(pattern.sizes) == 3
    counted = [count_pattern(pattern, size) for size in range(3)]
    return tuple(
        tuple(row.count for part in one.parts for row in part.rows if row.number is not None)
        for one in counted
    )


@pytest.mark.parametrize("piece", [BRIM, HAT], ids=["brim", "hat"])
@pytest.mark.parametrize("head", HEADS)
def test_each_manner_of_naming_sizes(
    head: str, piece: tuple[str, tuple[tuple[int, int, int], ...], object]
) -> None:
    words, numbers, counts = piece
    assert _counts(head, LISTS[0], (words, numbers)) == counts


@pytest.mark.parametrize("piece", [BRIM, HAT], ids=["brim", "hat"])
@pytest.mark.parametrize("listed", LISTS)
def test_each_manner_of_listing_their_numbers(
    listed: str, piece: tuple[str, tuple[tuple[int, int, int], ...], object]
) -> None:
    words, numbers, counts = piece
    assert _counts(HEADS[0], listed, (words, numbers)) == counts
