"""What is printed and how it is said. Spoken forms are common practice, no source, unless one is
named.
"""

from __future__ import annotations

import re
import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reader.plan.step import Reading
from reader.wording.speak import speak

CROCHET = Reading()
KNITTING = Reading("knitting")
UK = Reading("crochet", "UK")


@pytest.mark.parametrize(
    ("printed", "spoken"),
    [
        ("sc2tog", "single crochet two together"),
        ("2 sc in next st", "two single crochet in the next stitch"),
        ("(sc, inc) x 6", "single crochet, increase; six times"),
        ("ch-3 sp", "chain three space"),
        (
            "*sc in next 2 sts, inc; rep from * around",
            "single crochet in the next two stitches, increase; repeat to the end of the round",
        ),
        ("FPdc", "front post double crochet"),
        ("Rnds 5-8", "Rounds five to eight"),
        ("sk next 2 sts", "skip the next two stitches"),
        ("ch 1 (does not count as a st), turn", "chain one, it does not count; turn"),
        ("BLO", "back loop only"),
        ('5½"', "five and a half inches"),
        ("sc in 2nd ch from hook", "single crochet in the second chain from the hook"),
        (
            "(2 dc, ch 2, 2 dc) in corner sp",
            "two double crochet, chain two, two double crochet, all in the corner space",
        ),
        (
            "ch 2, *dc in next 3 sts, ch 2; rep from * 5 more times",
            "chain two, star, double crochet in the next three stitches, chain two; repeat from "
            "the star "
            "five more times",
        ),
        (
            "[(2 dc, ch 1) 3 times, sk 2] 4 times",
            "two double crochet, chain one; three times; skip two; all of that four times",
        ),
        ("ch 3 (counts as dc)", "chain three, it counts as a double crochet"),
        (
            "sc in each st around (24 sts)",
            "single crochet in each stitch around; twenty-four stitches",
        ),
        (
            "sc in BLO of next 2 sts",
            "single crochet in the back loop only of the next two stitches",
        ),
        ("sc 5, inc", "five single crochet, increase"),
        ("inc x 6", "increase six times"),
        ("1 s c in next d c", "one single crochet in the next double crochet"),
        ("until 16 sts rem", "until sixteen stitches remain"),
        ("change to B in last yo", "change to colour B in the last yarn over"),
        ("place eyes between rnds 8 and 9", "place eyes between rounds eight and nine"),
        ("4 mm (G-6) crochet hook", "four millimetre, G six, crochet hook"),
        ('Leave a 12" tail', "Leave a twelve inch tail"),
        ("1 1/2 inch buttons", "one and a half inch buttons"),
        ("10 cm x 12 cm", "ten centimetres by twelve centimetres"),
        ("100 g", "one hundred grams"),
        ("2.5 mm hook", "two point five millimetre hook"),
        (
            "18 sc and 20 rounds = 4 inches",
            "eighteen single crochet and twenty rounds make four inches",
        ),
        ("sc = single crochet", "S C means single crochet"),
        (
            "* sc in next st, inc, repeat from * 5 times",
            "single crochet in the next stitch, increase, repeat five times",
        ),
        ("*sc, inc* around", "single crochet, increase; repeat to the end of the round"),
        ("1 sc, inc *6", "one single crochet, increase six times"),
        ("wobble the left anchor", "wobble the left anchor"),
        ("puff st, 2 V-sts", "puff stitch, two V stitches"),
        ('¾" ribbon', "three quarters of an inch ribbon"),
        ("", ""),
    ],
)
def test_crochet(printed: str, spoken: str) -> None:
    """US terms."""
    assert speak(printed, CROCHET) == spoken


@pytest.mark.parametrize(
    ("printed", "spoken"),
    [
        ("k2tog", "knit two together"),
        ("sk2p", "slip one, knit two together, pass the slipped stitch over"),
        ("C4F", "cable four front"),
        ("k2, p2", "knit two, purl two"),
        ("k1p1 rib", "knit one, purl one rib"),
        ("k to last 2 sts", "knit to the last two stitches"),
        ("*k1, p1; rep from * to end", "knit one, purl one; repeat to the end"),
        (
            "CO 80 sts, pm, join in the rnd",
            "cast on eighty stitches, place a marker, join in the round",
        ),
        ("ssk, k to 1 st before m", "slip slip knit, knit to one stitch before the marker"),
        ("sl1, k1, psso", "slip one, knit one, pass the slipped stitch over"),
        ("p2tog tbl", "purl two together through the back loop"),
        ("2/2 LC", "two over two left cross"),
        ("Row 2 (WS): purl", "Row two, wrong side: purl"),
        ("(k1, yo, k1) in next st", "knit one, yarn over, knit one, all in the next stitch"),
        ("kfb", "knit front and back"),
        ("St st", "Stockinette stitch"),
        ("k2 (p2, k2) 5 times", "knit two, purl two, knit two; five times"),
        ("4 mm needles", "four millimetre needles"),
    ],
)
def test_knitting(printed: str, spoken: str) -> None:
    """Craft Yarn Council names, from memory."""
    assert speak(printed, KNITTING) == spoken


@pytest.mark.parametrize(
    ("printed", "spoken"),
    [
        ("dc2tog", "double crochet two together"),
        ("4 tr into ring", "four treble into the ring"),
        ("htr", "half treble"),
        ("1 dtr in next tr", "one double treble in the next treble"),
        ("miss 2 sts, ss", "miss two stitches, slip stitch"),
    ],
)
def test_uk_names_stay_uk(printed: str, spoken: str) -> None:
    """The Handbook of 1918 (Project Gutenberg 26113) names the stitches so: double crochet,
    treble.
    """
    assert speak(printed, UK) == spoken


def test_only_the_chosen_size_is_said() -> None:
    """Medium of three."""
    assert (
        speak("S (M, L): 36 (40, 44)", Reading("crochet", "US", (), 1, ("S", "M", "L")))
        == "M: forty"
    )


def test_the_patterns_own_list_comes_first() -> None:
    """MC can be a magic circle; a recipe in the list is not read out in place of its name."""
    own = Reading("crochet", "US", (("inc", "2 sc in the same stitch"), ("mc", "magic circle")))
    assert speak("6 sc in MC", own) == "six single crochet in magic circle"
    assert speak("inc", own) == "increase"


TRADE = [
    "sc",
    "2 sc",
    "inc",
    "sc2tog",
    "ch 3",
    "ch-1 sp",
    "*",
    "**",
    "(",
    ")",
    "[",
    "]",
    "x 6",
    "3 times",
    "rep from *",
    "next st",
    "next 2 sts",
    '5½"',
    "4 mm",
    "Rnds 5-8",
    ",",
    ";",
    ".",
    "around",
    "k2",
    "p2tog",
    "C4F",
    "24",
    "=",
    "–",
    "BLO",
    "#4",
    "1/2",
    "&",
]


@given(st.lists(st.sampled_from(TRADE), max_size=12), st.sampled_from([CROCHET, KNITTING, UK]))
def test_nothing_is_left_that_a_voice_garbles(pieces: list[str], reading: Reading) -> None:
    """Whatever the order of the trade's marks, only words and pauses are left."""
    said = speak(" ".join(pieces), reading)
    assert re.fullmatch(r"[A-Za-z ,.;:'-]*", said), said
    assert "  " not in said
    assert not re.search(r"\b(sc|sts?|rep|inc|ch|tog)\b", said)


@given(st.text(max_size=200))
def test_any_text_can_be_said(text: str) -> None:
    """No text makes it fail, and no digit is left."""
    assert not re.search(r"[0-9*()\[\]{}=#+/]", speak(text, CROCHET))


@pytest.mark.parametrize("piece", ["(", "()", "*", "7", "= ", "a.", "( ", "sc ", "x 3 ", "ch-"])
def test_damaged_text_is_said_quickly(piece: str) -> None:
    """Thousands of the same mark cost no noticeable time."""
    began = time.perf_counter()
    speak(piece * 4000, CROCHET)
    assert time.perf_counter() - began < 3


def test_everyday_words_that_were_stitches_once_are_left_alone() -> None:
    """A shoulder seam is no purl; "seam 1" of old books is (old usage, from memory)."""
    knitting = Reading("knitting")
    assert speak("Join right shoulder seam.", knitting).startswith("Join right shoulder seam")
    assert speak("drop the stitch", knitting) == "drop the stitch"
    assert speak("knit 2, seam 1", knitting) == "knit two, purl one"


def test_several_st_are_stitches() -> None:
    """Toy patterns write "24 st"; a marker's name keeps its word."""
    assert speak("sc in all 24 st") == "single crochet in all twenty-four stitches"
    assert speak("inc in next 1 st").endswith("one stitch")
    assert speak("2 st markers") == "two stitch markers"
