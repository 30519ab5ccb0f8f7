"""Rows called back of which the words say by how many stitches each grows, "Rnds 3-6: repeat rnd 2.
Every round grows by 6 dc": as many more each time, where the row as it is written does not come to
that.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.entries import Entry, numbers_of
from reader.counts.rows_called import rows_of
from reader.pattern.layout import WrittenRow
from reader.pattern.line_words import STITCHY
from reader.pattern.read_once import rule_of
from reader.pattern.rule import Rule
from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_N = rf"(?P<n%d>\d{{1,3}}|{SPELLED})"
_S = r"(?: (?:sts?|stitches|[sd] ?c|h ?d ?c|h?tr|doubles|trebles|singles))?"
_EACH = r"(?:each|every|per) (?:new |of these |other )?(?:row|rnd|round|time|one)s?"
_MORE = r"(?P<more%d>more|extra|additional|wider|longer|fewer|less)"
_GROWS = (
    r"(?P<way%d>grow|increase|gain|add|rise|widen|expand|shrink|decrease|lose|drop|narrow"
    r"|increas|decreas|los|ris|narrow|shrink)"
)
GROWTH = Sought(
    ("each", "every", "per "),
    rf"{_EACH} (?:will |should |now |then )*{_GROWS % 1}s? (?:by )?{_N % 1}{_S}"
    rf"|{_EACH} (?:will |should |now |then )*(?:has|have|having|gets|is|being|with) {_N % 2}"
    rf"{_S} ?{_MORE % 2}{_S}"
    rf"|{_GROWS % 3}ing (?:it )?(?:by )?{_N % 3}{_S} (?:in |on |at |with |for )?{_EACH}"
    rf"|{_N % 4}{_S} {_MORE % 4}{_S} (?:in |on |at |with |for )?{_EACH}"
    rf"|{_EACH},? (?:there (?:are|will be)|you (?:will )?(?:have|gain|get)) {_N % 5}{_S}"
    rf" {_MORE % 5}{_S}",
    re.IGNORECASE,
)
NOT_ALL = re.compile(
    r"\W*(?:\w+ )?(?:between|before|after|(?:at|on|in) (?:each|either|both|every)|each (?:end|side)"
    r"|groups?|clusters?|shells?|sp|spaces?|loops?|chs?|chains?|times)\b", re.IGNORECASE
)
FEWER = ("fewer", "less", "shrink", "decreas", "decrease", "lose", "los", "drop", "narrow")
WHY = "as many more or fewer stitches as the words say of each of these rows"


def growth_in(words: str) -> int:
    """By how many stitches each row is said to grow, fewer below 0; 0 where nothing is said."""
    found = GROWTH.search(words)
    if found is None or NOT_ALL.match(words, found.end()):
        return 0
    told = {name: said for name, said in found.groupdict().items() if said}
    number = next(said for name, said in told.items() if name.startswith("n"))
    many = int(number) if number.isdigit() else word_number(number) or 0
    return -many if any(said.lower() in FEWER for said in told.values()) else many


def grown_as_told(ledger: Ledger, row: WrittenRow) -> bool:
    """Books such rows; False (nothing booked) for all others."""
    words = ledger.text[row.start : row.end]
    growth = growth_in(words)
    if not growth or ledger.below.stitches is None:
        return False
    rule = rule_of(words, row.mark is not None, ledger.size, ledger.pattern.book)
    if rule is None or rule.kind not in ("same", "rows", "last") or STITCHY.search(
        words[: rule.start]
    ):
        return False
    entry, numbers = _called(ledger, rule), _numbers(ledger, row, rule, growth)
    if entry is None or not numbers:
        return False
    for number in numbers:
        if not ledger.full():
            _one(ledger, row, entry, growth, number)
    ledger.check_total(row, 0, len(words), settled=False)
    return True


def _called(ledger: Ledger, rule: Rule) -> Entry | None:
    """The one row that is called back."""
    if rule.kind != "same":
        found = rows_of(ledger, rule)
    elif rule.named == (0,):
        found = list(ledger.entries[-1:])
    else:
        named = [ledger.entry_of(number, rule.rest) for number in rule.named]
        found = [one for one in named if one is not None]
    return found[0] if len(found) == 1 else None


def _numbers(
    ledger: Ledger, row: WrittenRow, rule: Rule, growth: int
) -> tuple[int | None, ...]:
    """The numbers of the rows that are worked; none where nothing says how many they are."""
    labelled = numbers_of(row.mark)
    if row.mark is not None and (row.mark.numbers or rule.kind == "same"):
        return labelled
    times = rule.times
    if times is None and rule.goal is not None and ledger.below.stitches is not None:
        times, over = divmod(rule.goal - ledger.below.stitches, growth)
        times = 0 if over else times
    first = ledger.number + 1 if ledger.number else None
    return tuple(None if first is None else first + at for at in range(min(times or 0, 200)))


def _one(
    ledger: Ledger, row: WrittenRow, entry: Entry, growth: int, number: int | None
) -> None:
    """One of them: by its words where they come to as many, else by what is told."""
    goal = (ledger.below.stitches or 0) + growth
    again = replace(entry, row=row, printed=(), quoted=True)
    solved = ledger.solve(again, None, "")
    if solved.fits is True and solved.count == goal:
        ledger.work(again, number)
    else:
        ledger.even(goal, row.mark, row.start, row.end, WHY)
