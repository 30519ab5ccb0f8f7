"""One pattern labelled in many manners, set in capitals, in small letters or in a page's tags: its
counts stay.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

ORDINALS = ["", "first", "second", "third", "fourth", "fifth", "sixth"]
WORDS = ["", "one", "two", "three", "four", "five", "six"]
ENDINGS = {1: "st", 2: "nd", 3: "rd"}
BUOY = (
    (1, "6 sc in magic ring"),
    (2, "2 sc in each st around"),
    (3, "(sc in next st, 2 sc in next st) 6 times"),
    (4, "4 sc in next 4 sts, sc in each st around"),
    (5, "(sc in next 2 sts, 2 sc in next st) 6 times"),
    (6, "sc in each st around"),
)
COUNTS = [6, 12, 18, 18, 24, 24]
MANNERS = (
    "Round {n}: ", "Rnd {n} - ", "R{n} ", "r{n}. ", "R-{n}: ", "({n}) ", "[Round {n}] ",
    "(Round {n}) ", "Round No. {n}: ", "Round #{n}: ", "{nth} round. ",
    "{nth} round.—", "{Oth} round. ",
    "Round {w} - ",

    "Round {n} is worked as follows: ", "Now round {n}: ",
    "Round {n} of 6: ", "(A) Round {n}: ", "★ Round {n}: ",
    "o Round {n}: ", "**Round {n}:** ", "**Round {n}**: ",
    "***Round {n}:*** ", "*Round {n}:* ", "__Round {n}:__ ", "### Round {n}\n",
    "**Round {n}**\n\n", "Round {n}:\n\n", "Round {n}\n", "<b>Round {n}:</b> ",
    "<p><strong>Round {n}</strong>: ", "[b]Round {n}:[/b] ", "Round {n}:&nbsp;", "{n}\t",
)


def _counts(text: str) -> list[int | None]:
    told = count_pattern(parse_pattern(text), 0)
    return [row.count for part in told.parts for row in part.rows if row.label != "Start"]


def _text(manner: str) -> str:
    rows = [
        manner.format(
            n=n, nth=f"{n}{ENDINGS.get(n, 'th')}", oth=ORDINALS[n], Oth=ORDINALS[n].capitalize(),
            w=WORDS[n],
        )
        + words
        for n, words in BUOY
    ]
    return "BUOY\n\n" + "\n".join(rows) + "\nFasten off.\n"


@pytest.mark.parametrize("manner", MANNERS)
def test_a_manner_of_labels_leaves_the_counts_as_they_are(manner: str) -> None:
    assert _counts(_text(manner)) == COUNTS


@pytest.mark.parametrize("manner", MANNERS[1:12:4])
def test_the_manners_in_small_letters_throughout(manner: str) -> None:
    assert _counts(_text(manner).lower()) == COUNTS


RANGES = (
    ("[Rounds {a}-{b}] ", "[Round {n}] "), ("({a}-{b}) ", "({n}) "), ("R{a}-{b} ", "R{n} "),
    ("{a}th to {b}th rounds. ", "{n}th round. "),
    ("Rounds {a}, 5, {b}   ", "Round {n}   "),
)


@pytest.mark.parametrize(("several", "one"), RANGES)
def test_several_rows_under_one_label_in_such_a_manner(several: str, one: str) -> None:
    first = [one.format(n=n) + words for n, words in BUOY[:3]]
    told = "\n".join([*first, several.format(a=4, b=6) + "sc in each st around"])
    text = told.replace("1th", "1st").replace("2th", "2nd").replace("3th", "3rd")
    assert _counts(text) == [6, 12, 18, 18, 18, 18]


MOORING = """Mooring collar

Materials: 1 ball of rope wool, 1 pair of needles no. 9.

Cast on 40 sts.
1st row: K. 2, p. 2 to end.
2nd row: K. 1, k. 2 tog., k. to last 3 sts., k. 2 tog., k. 1. Turn. 38 sts.
Work 7 rows in k. 2, p. 2 rib.
Next row: K. 1, * inc. in next st., k. 3; rep. from * to last st., k. 1.
Work 3 more rows in st. st. Cast off.
"""
GULL = """Gull mat

1st round: 12 d.c. into ring. Join with s.s. to first d.c.
2nd round: 2 d.c. into each d.c. of the round. Join.
3rd round: * 1 d.c. into next d.c., 2 d.c. into next d.c.; rep. from * to end. Join.
4th round: 1 d.c. into each d.c. here and to the end. Fasten off. Sew in the ends, then press
under a damp cloth.
"""


@pytest.mark.parametrize("text", [MOORING, GULL])
@pytest.mark.parametrize("how", [str.upper, str.lower])
def test_old_shortenings_in_one_kind_of_letter(text: str, how: object) -> None:
    assert callable(how)
    assert _counts(how(text)) == _counts(text)
    assert None not in _counts(text)


def test_sentences_that_begin_with_small_letters_inside_a_line() -> None:
    assert _counts("\n".join(line[:1] + line[1:].lower() for line in MOORING.split("\n"))) == (
        _counts(MOORING)
    )
