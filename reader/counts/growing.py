"""Rows that go on by rule, "continue in this way, having 1 more in each until there are 15",
booked one by one; where the words do not say how many they are, as one row that is asked about.
"""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import chain, islice, pairwise

from reader.counts.entries import Entry
from reader.counts.growth import reaches, run_through, steps_of
from reader.counts.gusset import told_behind
from reader.counts.heel_turn import rest_of_heel
from reader.counts.ledger import Ledger
from reader.counts.nearing import sections_of
from reader.counts.questions import ask_how_often, ask_of_goal
from reader.counts.rows_called import rows_worked
from reader.pattern.changes import BY_MEASURE
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule
from reader.terms.stitches import Craft

SO_MANY_ROUNDS = re.compile(
    r"\buntil (?:there are )?(\d{1,3}) (?:rnds|rounds|rows) (?:in all )?"
    r"(?:(?:have been|are|were) )?(?:completed|made|worked|done|finished|in all)", re.IGNORECASE
)
"""How many rounds there are in the end."""

SHAPES = re.compile(
    r"\b(?:inc|dec|narrow|widen)(?:reas\w+|ing)?\b|\b(?:mak|tak)ing\b|\btog", re.IGNORECASE
)
"""Words that change the number of stitches."""

HAVING_MORE = re.compile(
    r"\b(?:having|with|always having|working) (?:always )?(?:\d+|one|two) (?:more|less|fewer)\b"
    r"|\b(?:\d+|one|two) (?:\w+ ){0,3}(?:more|less|fewer) (?:\w+ ){0,2}?(?:between|before|after)\b",
    re.IGNORECASE,
)
"""The numbers of a row that is repeated grow with it."""


def grow(ledger: Ledger, row: WrittenRow, rule: Rule, upto: int | None) -> None:
    """ "Continue in this way, having 1 more in each section until there are 15"."""
    ledger.go_on(None)
    first = [one.before for one in ledger.rows[:1]]
    known = chain((one.count for one in reversed(ledger.rows)), first)
    counts = list(islice((one for one in known if one is not None), 12))[::-1]
    here = ledger.below.stitches
    if here is not None and counts[-1:] != [here]:
        # Some wait since the last row: how it changed tells nothing of these.
        counts = [here]
    last = row.mark.numbers[-1] if row.mark and row.mark.numbers else upto - 1 if upto else None
    rounds = SO_MANY_ROUNDS.search(rule.rest)
    last = int(rounds[1]) if rounds and last is None else last
    start, end = row.start + rule.start, row.start + rule.end
    if rule.as_before:
        _as_before(ledger, row, rule, counts)
        return
    sections = max(1, sections_of(ledger.below))
    if rule.goal is None and rule.times is None and ledger.pattern.craft is Craft.KNITTING:
        step = steps_of(counts, rule)[0]
        rule = replace(rule, goal=told_behind(ledger, end, row.end, step))
    through = run_through(counts, rule, sections, ledger.number, last)
    through = rest_of_heel(ledger, ledger.text[start:end]) or through
    if not through:
        _as_one_row(ledger, row, rule, counts, sections)
    _book(ledger, row, rule, counts[-1:], through)
    ledger.check_total(row, rule.start, rule.end)


def by_their_gains(
    ledger: Ledger, entries: list[Entry], times: int | None, span: WrittenRow
) -> list[Entry]:
    """Rows whose numbers grow from row to row, so that only what they gained tells; none where
    these are booked here, so often, each gaining as before.
    """
    gains, count = [one.gain for one in entries if one.gain is not None], ledger.below.stitches
    known = count is not None and len(gains) == len(entries)
    if not times or count is None or not known or count + times * sum(gains) < 1:
        return [replace(one, told=one.told or one.gain is not None) for one in entries]
    for gain in gains * times:
        if ledger.full():
            break
        count += gain
        why = f"goes on by {abs(gain)} a row as the words say" if gain else ""
        ledger.even(count, None, span.start, span.end, why)
    return []


def _as_before(ledger: Ledger, row: WrittenRow, rule: Rule, counts: list[int]) -> None:
    """So many rows as those before: with the change that these had, if they had one, and it went
    one way; where it went to and fro, they are asked about.
    """
    changes = [b - a for a, b in pairwise(counts[-SEEN:])]
    worked = rows_worked(ledger)
    many = rule.rows if rule.until_row is None else rule.until_row - worked
    if not many:
        many = row.mark.numbers[-1] - worked if row.mark and row.mark.numbers else 0
    one_way = all(one >= 0 for one in changes) or all(one <= 0 for one in changes)
    # Rows of the same change: what is told once is done again and again.
    same = len({one for one in changes if one}) < 2
    rule = replace(rule, rows=1)
    if not counts or many < 1 or not one_way or not same:
        _as_one_row(ledger, row, replace(rule, paced=True), counts, 1)
        return
    through = run_through(counts, rule, 1, 1, 1 + many)
    _book(ledger, row, rule, counts[-1:], (through or counts[-1:] * many)[:many])
    ledger.check_total(row, rule.start, rule.end)


MEASURED = re.compile(
    r"\b(?:inc|dec|narrow|widen)(?:reas\w+|ing)?\b[^.;]*\b(?:until|till)\b[^.;]*"
    r"\b(?:inch(?:es)?|ins?|cm)\b",
    re.IGNORECASE,
)
"""Rows that change the count, and go on to a measure."""
SEEN = 6
"""Counts that tell how rows went."""


def _as_one_row(
    ledger: Ledger, row: WrittenRow, rule: Rule, counts: list[int], sections: int
) -> None:
    """The words as one row, never dropped, though their rows are not known."""
    here, start, end = ledger.below.stitches, row.start + rule.start, row.start + rule.end
    why = "how many rows these are is not known"
    knits = ledger.pattern.craft is Craft.KNITTING
    away = rule.goal is not None and rule.goal != here and SHAPES.search(rule.rest)
    changes = steps_of(counts, rule)[0] or (rule.goal is not None and rule.rows > 1) or away
    grows = rule.goal is None and MEASURED.search(rule.rest)
    unknown = rule.step or rule.paced or (knits and changes) or grows
    told = rule.goal if knits and unknown and sections < 2 and not rule.between else None
    if told is not None:
        why = f"{why}; {told} stitches are taken from the words"
        unknown = False
    missed = rule.step and told is not None and here not in (None, told)
    missed = missed and not ledger.doubted and not reaches(here or 0, rule.step, told or 0)
    count = -1 if unknown else told or ledger.below.stitches
    ledger.even(count, row.mark, start, end, why, True)
    ledger.doubted = True
    if missed and here is not None and told is not None:
        ask_of_goal(ledger, here, rule.step, told, start, end)
    if (unknown or rule.endless) and not ledger.printed(ledger.text[start : row.end])[0]:
        ask_how_often(ledger, row, start, end)


def _book(
    ledger: Ledger, row: WrittenRow, rule: Rule, counts: list[int], through: list[int]
) -> None:
    """The rows one by one; counts: the last one before them."""
    start, end = row.start + rule.start, row.start + rule.end
    measured = BY_MEASURE.search(rule.rest) is not None
    through += through[-1:] * min(max(0, rule.rows - len(through)), rule.every - 1)
    for count in through:
        if ledger.full():
            return
        before = counts[-1]
        why = f"goes on by {abs(count - before)} a row as the words say" if count != before else ""
        why = "as many plain rows before it as the measure takes" if measured else why
        ledger.even(count, row.mark, start, end, why, measured)
        counts.append(count)
