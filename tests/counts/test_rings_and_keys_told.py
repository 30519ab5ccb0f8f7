"""Chains that are checked and then joined, lines that only say what the start is for, magic rings
behind another piece, keys of single letters and labels told together. Common practice, no source;
the pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

RINGS = (
    "With navy, make 30 chain. Check the chain lies straight, then slip stitch into the "
    "first chain.",
    "TO START With navy, make 30 chain. Check the chain lies straight, then slip stitch into "
    "the first chain.",
    "TO BEGIN: Make 30 chain, check it is not twisted, slip stitch into the first chain.",
    "Make 30 chain and slip stitch into the first.",
    "Make 30 chain. Without twisting, slip stitch to the first chain.",
    "Chain 30. Join into a ring with a slip stitch, taking care it is not twisted.",
    "Chain 30. Make sure the chain isn't twisted and join it with a slip stitch.",
    "Chain 30 in navy; lay it straight and close with a slip stitch.",
    "Begin with 30 chain in navy. Slip stitch into the first chain to make a ring.",
    "Start Chain 30 with navy, then slip stitch in the first chain, minding the twist.",
    "START With navy chain 30. Do not twist. Join with a slip stitch to the first chain.",
    "BEGIN HERE Using navy, make a chain of 30. Lay it flat and slip stitch the ends together.",
    "To begin Work 30 chain in navy and join them in a ring with a slip stitch.",
    "FIRST With navy make 30 chain, then slip stitch into the first chain you made.",
    "You start with navy and 30 chain. Slip stitch into the first chain.",
    "Beginning: 30 chain in navy, joined into a ring with a slip stitch.",
    "FOUNDATION With navy, 30 chain, slip stitch to first chain.",
    "Using navy make 30 chain; slip stitch into the first chain for a ring.",
    "In navy: 30 chain, slip stitch to join.",
    "With navy work thirty chain. Check they lie straight and slip stitch into the first one.",
    "To start: with navy, make 30 chain stitches. Slip stitch in the first chain, being "
    "careful not to twist.",
)  # fmt: skip
LEADS = (
    "To begin:", "To start:", "Start:", "Begin:", "Foundation:", "Set-up:", "Ring:", "Base:",
    "To begin,", "START", "Foundation chain:", "Setup round:", "Start here:",
)  # fmt: skip
KEYS = (
    "X sc • V two sc in one • A invisible dec • MR magic ring • everything spirals",
    "X sc, V two sc in one, A invisible dec, MR magic ring",
    "X = sc, V = inc, A = dec, MR = magic ring",
    "X: sc / V: 2 sc in one st / A: invisible decrease / MR: magic ring",
    "X sc | V inc | A dec | MR magic ring",
    "X - single crochet; V - increase; A - decrease; MR - magic ring",
    "X is sc, V is 2 sc in one st, A is invdec",
    "X sc\nV two sc in one\nA invisible dec\nMR magic ring",
    "X = sc\nV = 2 sc in same st\nA = 2 sc together\nMR = magic ring",
    "X → sc • V → increase • A → decrease",
    "(X sc) (V inc) (A dec) (MR magic ring)",
    "X sc · V two sc in the same stitch · A invisible decrease · MR magic ring · US terms",
    "★ X sc ★ V inc ★ A dec ★",
    "X sc, V inc, A dec.",
    "Key: X sc • V inc • A dec • spirals",
)  # fmt: skip
LABELS = ("4{m} 5{m} 6{m}", "4{m}, 5{m}, 6{m}", "4{m} to 6{m}", "4{m} 5{m} and 6{m}", "4-6{m}")


def counts(text: str) -> list[int | None]:
    pattern = count_pattern(parse_pattern(text), 0)
    return [row.count for part in pattern.parts for row in part.rows]


@pytest.mark.parametrize("told", RINGS)
def test_a_chain_is_checked_and_joined(told: str) -> None:
    top = "Buoy collar\n\nMaterials: cotton in navy and cream, 3.5 mm hook\n\n"
    rounds = "\nRound 1: Ch 1, sc in each ch around.\nRound 2: Ch 1, sc in each st around."
    assert counts(top + told + rounds)[-2:] == [30, 30]


@pytest.mark.parametrize("ring", ["Ch 30, join with sl st to first ch.", "With navy, ch 30. Join."])
@pytest.mark.parametrize("lead", LEADS)
def test_what_a_start_is_for(lead: str, ring: str) -> None:
    rounds = "\n1st rnd: 1 sc in each ch.\n2nd rnd: 1 sc in each sc.\n3rd rnd: As 2nd."
    assert counts(f"Buoy\n\n{lead} {ring}{rounds}")[-3:] == [30, 30, 30]


@pytest.mark.parametrize("ring", ["MR 5 sc", "MR, 5 sc", "MR: 5 sc", "magic ring 5 sc"])
def test_a_ring_has_nothing_below(ring: str) -> None:
    head = "Gull\n\nhead\n1. MR 6 sc\n2. 6 inc (12)\n3. 6 dec (6)\nsew shut\n\n"
    pattern = count_pattern(parse_pattern(f"{head}wing\n1. {ring}\n2. 5 inc (10)\n"), 0)
    assert [row.count for part in pattern.parts for row in part.rows] == [6, 12, 6, 5, 10]
    assert not pattern.problems


@pytest.mark.parametrize("key", KEYS)
def test_a_key_of_letters_is_no_row(key: str) -> None:
    text = (
        f"Gull\n\n{key}\n\nHEAD\n1. MR 6X\n2. 6V (12)\n3. (X, V)*6 (18)\n4. (X, A)*6 (12)\n"
        "5. 6A (6)\n"
    )
    assert counts(text) == [6, 12, 18, 12, 6]


@pytest.mark.parametrize("mark", [")", "."])
@pytest.mark.parametrize("label", LABELS)
def test_labels_of_a_numbered_list_told_together(label: str, mark: str) -> None:
    text = (
        f"Gull\n\nhead\n1{mark} six sc in a magic ring\n2{mark} inc x 6\n"
        f"3{mark} (sc, inc) x 6\n"
        f"{label.format(m=mark)} sc in each st. 18\n7{mark} (sc, dec) x 6\n"
    )
    assert counts(text) == [6, 12, 18, 18, 18, 18, 12]


def test_lines_that_count_what_was_sent_are_no_sizes() -> None:
    lines = "".join(f"Photo {n}/3\nRnd {n}: 6 sc in MR (6)\n\n" for n in (1, 2, 3))
    assert parse_pattern(f"Gull\n\n{lines}").sizes == ("one size",)


def test_rows_of_a_list_like_others() -> None:
    text = (
        "Band\n\nCast on 40, join.\n1 p\n2 k\n3 p\n4 k2 yo k2tog\n5 k\n6 k\n7-9 = 4 to 6\n10 p\n"
    )
    assert counts(text) == [40] * 11
