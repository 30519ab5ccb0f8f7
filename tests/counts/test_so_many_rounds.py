"""Rounds told by how many they are, in a line of their own, are so many rounds. Common practice, no
source.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.so_many_rounds import so_many_rounds


def counts(text: str) -> list[int | None]:
    """The counts of all rows."""
    return [row.count for part in count_pattern(parse_pattern(text)).parts for row in part.rows]


HOOK = [
    "then 4 rnds sc in blo", "then sc around 4 rnds", "sc around for 4 rounds",
    "Sc in every stitch, no increases, for this many rounds: 4.",
    "4 rounds of: *sc 1, dc 1* over and over.", "4 rounds of sc", "4 rounds: sc in each st",
    "sc each st x 4 rnds", "sc in each st around (4 rounds)", "Work even: 4 rounds",
    "for 4 rounds: sc around", "You need 4 rounds of sc now.", "four rounds of single crochet.",
    "Go round and round in sc, 4 rounds in all.", "Then just sc, 4 rounds.", "next 4 rnds - sc",
    "After that, 4 rounds sc.", "Then work 4 rounds straight.", "For the next 4 rounds, sc around.",
]  # fmt: skip
NEEDLES = [
    "Then 4 rounds knit.", "4 rnds knit", "4 rounds of: *k1, p1* over and over.",
    "4 rounds of k1, p1 rib", "four rounds of k1, p1 ribbing.", "For the next 4 rounds, knit.",
    "Rib for 4 rounds (k1, p1).", "K1, p1 rib: 4 rounds", "Work straight for 4 rounds.",
]  # fmt: skip


@pytest.mark.parametrize("lead", ["", "Body: ", "Next: "])
@pytest.mark.parametrize("said", HOOK)
def test_rounds_of_the_hook(said: str, lead: str) -> None:
    rounds = "R1: 6 sc in magic ring\nR2: inc x6\nR3: (sc, inc) x6\n"
    assert counts(f"BUOY\n\n{rounds}{lead}{said}\nNext round: (sc, dec) x6.\n") == [
        6, 12, 18, 18, 18, 18, 18, 12
    ]  # fmt: skip


@pytest.mark.parametrize("said", NEEDLES)
def test_rounds_of_the_needles(said: str) -> None:
    begun = "Cast on 18 sts. Join in the round.\nR1: k1, p1 around\nR2: k1, p1 around.\n"
    assert counts(f"BUOY CAP\n\n{begun}{said}\nNext round: (k1, k2tog) 6 times.\n") == [
        18, 18, 18, 18, 18, 18, 18, 12
    ]  # fmt: skip


@pytest.mark.parametrize(
    "text", ["R4: sc around (4 rounds)", "sc in next 4 sts", "4 rounds 2 in.", "Repeat 4 rounds"]
)
def test_other_lines_stay(text: str) -> None:
    assert so_many_rounds(text) == text


@pytest.mark.parametrize("said", [*HOOK, *NEEDLES])
def test_length_is_kept(said: str) -> None:
    assert len(so_many_rounds(said)) == len(said)
