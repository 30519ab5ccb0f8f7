"""Words of the trade that are misspelt by one letter (the slips are of our own making)."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.clean import clean
from reader.text.misspelt import LONG, REAL, put_right, spelled
from reader.wording.report import report_lines

SLIPS = [
    "eahc>each", "stich>stitch", "stiches>stitches", "sitches>stitches", "sigle>single",
    "doulbe>double", "crotchet>crochet", "repaet>repeat", "repeate>repeat", "arround>around",
    "accross>across", "untill>until", "reamin>remain", "togeather>together",
    "begining>beginning", "trun>turn", "nxt>next", "jion>join", "kint>knit", "prul>purl",
    "smae>same", "bakc>back", "evey>every", "roud>round", "Rwo>row", "stitchs>stitches",
    "tmies>times", "twcie>twice", "fisrt>first", "conrer>corner", "sapce>space",
    "increse>increase", "decresing>decreasing", "cluser>cluster", "stitoh>stitch",
]  # fmt: skip


@pytest.mark.parametrize("slip", SLIPS)
def test_a_slip_is_put_right(slip: str) -> None:
    written, right = slip.split(">")
    assert put_right(written.lower()) == right


@pytest.mark.parametrize("word", ["there", "time", "chin", "cats", "form", "least", "tree", "ribs"])
def test_other_words_stay(word: str) -> None:
    assert put_right(word) == ""


def test_no_word_is_in_both_lists() -> None:
    assert not LONG & REAL
    assert all(put_right(word) == "" for word in LONG | REAL)


def test_a_capital_amid_a_sentence_is_a_name() -> None:
    assert spelled(clean("Yarn: two balls of Sigle. Sigle crochet is sc.")).text == (
        "Yarn: two balls of Sigle. Single crochet is sc."
    )


def test_every_word_keeps_its_place_in_the_text() -> None:
    raw = "Ronud 1: 6 sc in eahc \ufb01n, jion \u2026 untill 3 reamin"
    source = spelled(clean(raw))
    assert source.text == "Round 1: 6 sc in each fin, join ... until 3 remain"
    for right, written in (("Round", "Ronud"), ("join", "jion"), ("remain", "reamin"), ("3", "3")):
        start = source.text.index(right, 9 if right == "3" else 0)
        end = start + len(right)
        assert raw[source.origin(start) : source.origin(end)] == written


TEXT = """Mooring mat
Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (11)
Row 2: Ch 1, 2 sc in first stitch, sc in each stitch to last stitch, 2 sc in last stitch, turn.
Rows 3 to 5: Repeat row 2.
Row 6: Ch 1, sc in next 3 stitches, skip next 2 stitches, sc in each stitch across, turn.
Row 7: Ch 1, (sc in next stitch, 2 sc in next stitch) twice, sc in each remaining stitch, turn.
Row 8: Ch 1, sc in same stitch and in every stitch until 2 stitches remain, sc next 2 together.
"""
COUNTS = [11, 13, 15, 17, 19, 17, 19, 18]
OF_TEXT = ["eahc>each", "stich>stitch", "stiches>stitches", "repaet>repeat", "accross>across",
           "untill>until", "reamin>remain", "togther>together", "trun>turn", "nxt>next",
           "smae>same", "evry>every", "twcie>twice", "fisrt>first", "remaning>remaining",
           "skipp>skip", "hoook>hook"]  # fmt: skip


@pytest.mark.parametrize("slip", OF_TEXT)
def test_no_row_changes_its_count(slip: str) -> None:
    written, right = slip.split(">")
    text = TEXT.replace(f" {right} ", f" {written} ").replace(f" {right},", f" {written},")
    text = text.replace(f" {right}.", f" {written}.").replace(right.capitalize(), written)
    counted = count_pattern(parse_pattern(text, "", ""))
    assert written in text
    assert [row.count for part in counted.parts for row in part.rows if row.number] == COUNTS
    assert any(f'"{written}"' in line for line in report_lines(counted))
