"""Rounds of one stitch in each, with so many in each corner, "sc in each sc around, 3 sc in the
centre sc of each corner" -> as many more as the corners give, wherever they lie.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.by_label import called_by_label
from reader.counts.entries import Entry, numbers_of
from reader.pattern.layout import WrittenRow
from reader.terms.numbers import SPELLED, word_number

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_ST = r"(?:(?:s ?d ?c|e ?s ?c|s ?c|h ?d ?c|d ?c|h?tr)(?:'?s)?|sts?|stitch(?:es)?)\b"
_MADE = rf"(?:(?:\d{{1,2}}|an?|one|two|three|five)\s+)?{_ST}"
_LIST = rf"(?<!each )(?<!every )(?P<list>{_MADE}(?:\s*(?:,|and|&|\+|,\s*and)\s*{_MADE})*)"
_WHICH = (
    r"(?:(?:each|every|all|both|the|any|of|other|remaining|next)\s+)*"
    rf"(?:(?P<n>[3-8]|{SPELLED})\s+)?(?:other\s+|remaining\s+)?(?:\d\s*-?\s*{_ST}\s*)?"
)
_CENTRE = rf"(?:(?:the\s+)?(?:cent(?:er|re)|middle|corner)\s*(?:{_ST}|one\b)?\s*"
_CENTRE += r"(?:(?:of|at|in)\s+)?)?"
_CORNERS = rf"(?:{_WHICH}corners?\b(?:\s+(?:{_ST}|groups?\b))?)"
GROUP = re.compile(
    rf"[(\[]?\s*{_LIST}\s*[)\]]?\s*(?:all\s+)?(?:in|into|at)\s+{_CENTRE}(?:(?:of\s+)?{_MADE}\s+(?:at|in)\s+)?"
    rf"{_CORNERS}",
    re.IGNORECASE,
)
"""So many in each corner."""
BY = re.compile(
    rf"\b(?:inc|increas)\w*\.?(?:\s+(?P<by>\d)(?:\s+{_ST})?)?\s+(?:in|at)\s+{_CENTRE}{_CORNERS}",
    re.IGNORECASE,
)
"""Corners that only grow: by two, where no number is told."""
AT_FIRST = re.compile(
    r"\b(?:attach|join|start|begin|sl st|slip stitch|with)\b(?:[^.;*]|\b[A-Z][a-z]\.)*?\bcorner\b"
    r"[^.;*]*?"
    rf"(?:\bwork|,|\bmake|\band|\bch 1)\s*[(\[]?\s*{_LIST}\s*[)\]]?\s*(?:all\s+)?in(?:to)?\s+"
    rf"(?:the\s+)?same\s+(?:sp(?:ace)?|{_ST}|corner|place)\b",
    re.IGNORECASE,
)
"""The first corner, in which the round begins."""
PLAIN = re.compile(
    rf"(?:(?:1|one|an?)\s+)?{_ST}\s*(?:evenly\s+)?(?:in|into)\s+(?:each|every)(?:\s+of\s+the)?"
    rf"(?:\s+(?:remaining|other))?\s+{_ST}"
    r"(?:\s+(?:to|until|up to)\s+(?:the\s+)?(?:next\s+)?corner)?"
    rf"|{_ST}\s+(?:evenly\s+|all\s+|the\s+way\s+)*a?round\b|\bin each {_ST}"
    rf"|\bwork(?:ing)?\s+even\s+in\s+{_ST}|\b(?:same|as|like|rep(?:eat)?)\s+(?:as\s+)?(?:the\s+)?"
    r"(?:last|previous)\s+(?:row|round|rnd)"
    rf"|\*(?:\s*,?\s*(?:with\s+[A-Za-z]{{2,12}}\s+)?(?:1\s+)?{_ST}\s+in\s+(?:each\s+of\s+)?(?:the\s+)?next"
    rf"\s+(?:\d+\s+)?{_ST})+\s*[,;]\s*rep(?:eat)?\s+from\s+\*\s+(?:all\s+)?a?round\b",
    re.IGNORECASE,
)
"""One stitch in each of the others, in one colour or in several."""
COUNTED = re.compile(rf"(?:(\d{{1,2}}|an?|one|two|three|five)\s+)?{_ST}", re.IGNORECASE)
STITCH = re.compile(rf"\b{_ST}|corner", re.IGNORECASE)
NO_MORE = re.compile(
    rf"\b(?:work(?:ing)?|making|make|always|with|having|and|then|all|around|round|evenly|the"
    r"|as before|join(?:ing)?(?: (?:with|in|to)[^.;]*)?|(?:sl st|ss)(?: (?:in|to)[^.;]*)?|turn|ch 1"
    r"|attach [a-z. ]+|cut [a-z. ]+|fasten off|break off|in each row|each row"
    r"|rep(?:eat)? from \* (?:a?round|\d times|to end)"
    rf"|{_ST} to end|in each round|of each|at|to|in [a-z]+)\b|[\W]",
    re.IGNORECASE,
)
"""What may stand beside these and works no other stitch."""
SHAPES = {"triang": 3, "pentag": 5, "hexag": 6, "octag": 8, "square": 4, "rectang": 4}


def in_corners(ledger: Ledger, row: WrittenRow) -> bool:
    """Books such rounds; False (nothing booked) for other rows, and where the round below is not
    known or has spaces in its corners, or where nothing tells how many corners there are.
    """
    if row.mark is None or ledger.below.stitches is None:
        return False
    words = " ".join(ledger.text[row.start : row.end].split())
    if "corner" not in words.lower():
        return False
    if ledger.below.spaces or len(words) > MOST:
        return False
    if ledger.below.flat and row.mark.is_round is not False:
        # Around a piece worked to and fro the edge is more than its last row, whatever that gained.
        return False
    printed, told = ledger.printed(words)
    gain = _gain(told)
    found = BY.search(told) or GROUP.search(told)
    if not gain or found is None:
        return False
    stated, _ = ledger.stated(Entry(None, (), row, printed))
    said = (found["n"] or "").lower()
    number = int(said) if said.isdigit() else word_number(said) or 0
    number = number or _corners(ledger, gain, stated)
    if not number:
        return False
    ledger.corners = number
    for one in numbers_of(row.mark):
        if ledger.full():
            break
        why = f"{number} corners are taken, each with {gain} stitches more"
        ledger.even((ledger.below.stitches or 0) + gain * number, row.mark, row.start, row.end, why)
        called_by_label(ledger, row.mark, one)
    ledger.check_total(row, 0, row.end - row.start, settled=False)
    return True


MOST = 260
"""Characters of such a round at most: a longer one is written out."""


def _gain(words: str) -> int:
    """By how many stitches each corner grows; 0 for other rounds."""
    sentences = re.split(r"(?<=\w\w\w[.;)]) (?=[A-Z])", words)
    rest, gains = " ".join(one for one in sentences if STITCH.search(one)), set()
    for shape in (AT_FIRST, BY, GROUP):
        found = shape.search(rest)
        if found is None:
            continue
        gains.add(int(found["by"] or 2) if shape is BY else _made(found["list"]) - 1)
        rest = f"{rest[: found.start()]} {rest[found.end() :]}"
    if len(gains) != 1 or PLAIN.search(rest) is None:
        return 0
    rest = NO_MORE.sub("", PLAIN.sub(" ", rest))
    return 0 if rest else gains.pop()


def _made(listed: str) -> int:
    """How many stitches a list makes, "1 sc, 1 dc, 1 sc"."""
    made = 0
    for one in COUNTED.finditer(listed):
        said = (one[1] or "1").lower()
        made += int(said) if said.isdigit() else word_number(said) or 1
    return made


def _corners(ledger: Ledger, gain: int, stated: int | None) -> int:
    """How many corners there are: as the rounds below, the shape or the printed total have it; 0
    where nothing tells, as around a piece that was worked to and fro.
    """
    text = ledger.text[:4000].lower()
    shape = next((many for name, many in SHAPES.items() if name in text), 0)
    last = (ledger.entries[-1].gain if ledger.entries else None) or 0
    if ledger.corners or (shape and last > 0 and not ledger.below.flat):
        return ledger.corners or shape
    if last > 0 and last % 4 == 0:
        return 4
    for known in (last, (stated or 0) - (ledger.below.stitches or 0)):
        if known > 0 and known % gain == 0 and 3 <= known // gain <= 8:
            return known // gain
    return 0
