"""A line that only starts the work, booked: a chain, a ring, a cast on, with a label or without."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.closing_gap import closes_gap
from reader.counts.counted import Verdict
from reader.counts.entries import Entry, numbers_of
from reader.counts.fabric import Below, Run
from reader.counts.foundation import begins_anew, is_start, start_row, started
from reader.pattern.tree import Act, Chain, Deed
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def starts_work(ledger: Ledger, entry: Entry) -> bool:
    """Whether a line only starts the work; one with a label only where it is a chain that is the
    first of its part: "Row 1: ch 11".
    """
    if not is_start(entry.nodes):
        return False
    if entry.row.mark is None:
        turned = TO_TURN.search(ledger.text, entry.row.start, entry.row.end) and ledger.rows
        return not turned and not _told_otherwise(ledger, entry)
    chained = all(isinstance(one, Chain | Act) for one in entry.nodes)
    joined = any(isinstance(one, Act) and one.deed is Deed.JOIN for one in entry.nodes)
    first = not ledger.rows and numbers_of(entry.row.mark) in ((None,), (0,), (1,))
    return chained and first and not joined


TO_TURN = re.compile(r"\bch(?:ain)?s? \d+(?: \w+)?\s(?:to|for) turn", re.IGNORECASE)
"""A chain that only turns the work, told by itself: "then ch 1 more to turn"."""
PICKS = re.compile(r"\b(?:pick|take|taking|k(?:nit)?)(?:ing)? up\b", re.IGNORECASE)


def _told_otherwise(ledger: Ledger, entry: Entry) -> bool:
    """Whether stitches are picked up whose printed total is not what the words come to."""
    words = ledger.words(entry.row.start, entry.row.end)
    stated = ledger.stated(entry)[0]
    if stated is None or not PICKS.search(words):
        return False
    below, size, craft = ledger.below, ledger.size, ledger.pattern.craft
    made = [started(entry.nodes, below, size, craft, afresh)[1] for afresh in (True, False)]
    return stated not in made


def start(ledger: Ledger, entry: Entry) -> None:
    """Books a foundation: what the first row is worked into."""
    words = ledger.words(entry.row.start, entry.row.end)
    craft = ledger.pattern.craft
    stated = ledger.stated(entry)[0]
    runs_on = ledger.text[: entry.row.start].rstrip()[-1:] == ","
    below, size = ledger.below, ledger.size
    if added_at_edge(ledger, entry):
        return
    told = ledger.in_figures(entry.row.start, entry.row.end)
    afresh = not runs_on and begins_anew(entry.nodes, told, below, size, craft, stated)
    afresh = (afresh and not amid_paragraph(ledger, entry)) or _only_told(ledger)
    near = [one for one in ledger.entries if _same_paragraph(ledger, one, entry)]
    afresh = afresh and not closes_gap(entry.nodes, near, below.stitches, size)
    afresh = afresh if stated is None or not PICKS.search(words) else _told_afresh(
        entry, below, size, stated, afresh
    )
    if craft is Craft.KNITTING and not afresh and below.stitches is None and ledger.rows:
        # Added to what is not known.
        ledger.even(-1, None, entry.row.start, entry.row.end, "")
        return
    ledger.below, count, moves = started(entry.nodes, below, size, craft, afresh)
    label = "Cast on" if craft is Craft.KNITTING else "Foundation" if count is not None else "Start"
    span = ledger.span(entry.row.start, entry.row.end)
    ledger.rows.append(start_row(label, ledger.is_round, words, span, count, moves))
    ledger.carried = 0
    if afresh:
        ledger.number, ledger.doubted = 0, False
    chain = next((one for one in entry.nodes if isinstance(one, Chain)), None)
    if entry.row.mark is not None and chain is not None:
        _number(ledger, entry, chain, stated)


def _told_afresh(entry: Entry, below: Below, size: int, stated: int, afresh: bool) -> bool:
    """Whether stitches are picked up anew, by their printed total where it tells, else as they are
    taken to be.
    """
    new = started(entry.nodes, below, size, Craft.KNITTING, True)[1]
    added = started(entry.nodes, below, size, Craft.KNITTING, False)[1]
    return afresh if stated not in (new, added) or new == added else stated == new


def _only_told(ledger: Ledger) -> bool:
    """Whether what stands before a knitted cast on only tells how many stitches there are to be."""
    knits = ledger.pattern.craft is Craft.KNITTING
    moves = [move for row in ledger.rows for move in row.moves]
    return knits and bool(ledger.rows) and not any(one.takes or one.makes for one in moves)


PARAGRAPH = re.compile(r"\n[ \t]*\n")
AT_AN_END = re.compile(
    r"\b(?:(?:bind|cast|bound|bo) (?:it |them )?(?:off|all)|off (?:all|loosely)|fasten|break|cut"
    r"|finish|complete[ds]?\b(?! (?:the|this|face))|holders?|waste|spare|extra needle|leave|another"
    r"|set (?:it |them )?aside|second|other|draw|sew|fold|piece|part|again|repeat|alike"
    r"|for the (?:heel|thumb|sole|ear|border|band|strap))\b",
    re.IGNORECASE,
)
"""Before a cast on, or in its own words: what was on hand is left there."""
NEARBY = 160
"""Characters before a cast on that tell so."""


def amid_paragraph(ledger: Ledger, entry: Entry) -> bool:
    """Whether stitches are cast on in the paragraph that works those on hand, fewer than these, and
    nothing says that these are left: then they are added.
    """
    here, at = ledger.below.stitches, entry.row.start
    if ledger.pattern.craft is not Craft.KNITTING or not here or not ledger.entries:
        return False
    begun = max((one.end() for one in PARAGRAPH.finditer(ledger.text, 0, at)), default=0)
    before = ledger.entries[-1].row
    told = ledger.text[max(begun, at - NEARBY) : entry.row.end]
    made = started(entry.nodes, ledger.below, ledger.size, ledger.pattern.craft, True)[1] or 0
    return begun <= before.start < at and 0 < made <= here and not AT_AN_END.search(told)


def added_at_edge(ledger: Ledger, entry: Entry) -> bool:
    """ "Attach a length of yarn to the beginning, ch 8, cut yarn": books chains that are added at
    the far edge of the row on hand; False where a line is no such thing.
    """
    deeds = {one.deed for one in entry.nodes if isinstance(one, Act)}
    chain = next((one for one in entry.nodes if isinstance(one, Chain)), None)
    joined = Deed.COLOUR in deeds or Deed.JOIN in deeds
    if chain is None or not joined or Deed.FINISH not in deeds or not ledger.below.stitches:
        return False
    number = chain.number.at(ledger.size)
    below, span = ledger.below, ledger.span(entry.row.start, entry.row.end)
    ledger.below = replace(
        below, runs=(*below.runs, Run("ch", number)), stitches=ledger.below.stitches + number
    )
    words = ledger.words(entry.row.start, entry.row.end)
    moves = started(entry.nodes, below, ledger.size, ledger.pattern.craft, True)[2]
    ledger.rows.append(start_row("Start", ledger.is_round, words, span, None, moves))
    return True


def _same_paragraph(ledger: Ledger, before: Entry, entry: Entry) -> bool:
    """Whether no blank line parts a row from another behind it."""
    return PARAGRAPH.search(ledger.text, before.row.start, entry.row.start) is None


def _number(ledger: Ledger, entry: Entry, chain: Chain, stated: int | None) -> None:
    """ "Row 1: ch 11 (11)": a row of its own, of chains; before the first of all without a number,
    "Foundation row: ch 11".
    """
    count = chain.number.at(ledger.size)
    agrees = stated is None or stated == count
    number = numbers_of(entry.row.mark)[0]
    ledger.number = number or 0
    ledger.rows[-1] = replace(
        ledger.rows[-1], label=ledger.name(entry.row.mark, number), number=number, stated=stated,
        count=count if agrees else None,
        verdict=Verdict.FITS if stated == count else Verdict.NO_TOTAL, of="ch",
    )  # fmt: skip
