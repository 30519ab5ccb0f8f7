"""Rows worked again and again, so often or until a number of stitches is reached."""

from __future__ import annotations

from reader.counts.ended import is_pair, last_of_all, to_their_end
from reader.counts.entries import Entry
from reader.counts.growth import LONGEST
from reader.counts.ledger import LONGEST_ROW, Ledger
from reader.counts.nearing import distance, reached
from reader.counts.questions import ask_of_number
from reader.pattern.layout import WrittenRow

TOO_MANY, SHOWN = 1_200, 40
"""Rows that no repeat has, so that its number is a misprint; and how many of them are counted."""


def over_and_over(
    ledger: Ledger,
    entries: list[Entry],
    times: int | None,
    goal: int | None,
    span: WrittenRow,
    upto: int | None = None,
) -> None:
    """The rows worked again so many times, or until the goal is reached; upto: the next label, up
    to which the plain rows behind the goal are worked too.
    """
    if not entries:
        return
    far = distance(ledger, goal)
    ends = to_their_end(ledger, entries, span)
    pair = is_pair(ledger, entries, span)
    most = max(1, LONGEST // len(entries))
    if times is not None and times * len(entries) > TOO_MANY:
        times = max(1, SHOWN // len(entries))
        ask_of_number(ledger, span.start, span.end, SHOWN)
    rounds = min(times if times is not None else most, most)
    short = last_of_all(ledger, entries, span) if times is not None else len(entries)
    for done in range(1, 1 + rounds):
        for entry in entries[: short if done == rounds else len(entries)]:
            there = times is None and reached(ledger, goal)
            room = 0 < ledger.number < (upto or 0) - 1 or (pair and upto != ledger.number + 1)
            last = (entry.gain == 0 and room) or (ends and entry is entries[-1])
            if ledger.full() or (there and not last):
                break
            if (ledger.below.stitches or 0) > LONGEST_ROW:
                return
            ledger.again(entry, ledger.number + 1 if ledger.number else None, span)
        if times is None and goal is not None:
            before, far = far, distance(ledger, goal)
            if not 0 < far < before:
                # The goal is reached, or is not to be reached this way: the words are believed.
                ledger.settle(goal)
                break
            if done * len(entries) >= SHOWN and far > (most - done) * (before - far):
                # At this pace more rows than any piece has would lead there.
                ask_of_number(ledger, span.start, span.end, done * len(entries))
                ledger.doubted = True
                break
