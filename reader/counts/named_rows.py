"""Rows called back by their name: "work inc row again", "work rib rnd 6 times in total", "alternate
rows A and B".
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.counted import Problem, Verdict
from reader.counts.entries import Entry
from reader.counts.faults import quoted
from reader.counts.nearing import reached
from reader.pattern.goals import goal_in, times_in
from reader.pattern.labels import Mark
from reader.pattern.layout import WrittenRow
from reader.pattern.rule_words import FOR_ROWS
from reader.terms.numbers import SPELLED, word_number

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_ROWS = r"(?:rows?|rnds?|rounds?)"
VERB = re.compile(
    r"\W*(?:(?:then|now|and|next|again)\W+)*(?:(?:keep|go|carry|continue|cont)\W+(?:on\s+)?)?"
    r"(?:work|rep(?:eat)?|do|knit|make|alternat(?:e|ing)|with(?=\s+[rR]))(?:ing)?\s+"
    r"(?:(?:both|between)\s+)?"
    rf"(?:(?P<count>another|(?-i:an?)|the|\d+|{SPELLED})\s+)?(?P<more>(?:more|further|additional)\s+)?"
    r"(?:(?:last|same|above|previous|other)\s+)*",
    re.IGNORECASE,
)
AS_NAMED = re.compile(
    r"\W*(?:(?:work|knit|is|the|exactly|just)\s+)*(?:same\s+as|as|like|rep(?:eat)?|work|do)\s+"
    r"(?:(?:for|on|in|the|last)\s+)*",
    re.IGNORECASE,
)
"""Behind a label, what leads to the name of another row."""
BEHIND = re.compile(r"(?P<rest>[^.;:]*)(?P<end>[.;:]|$)")
AT_A_PACE = re.compile(
    r"\b(?:every|foll\w*|same time|alternate rows?|as (?:set|before))\b", re.IGNORECASE
)
MEASURED = re.compile(
    r"\b(?:until|till|to|for)\b.*(?:\bmeasures?\b|\d ?(?:cm|in\b|inch|\")|\blong\b)",
    re.IGNORECASE,
)
_AND = r"\s*(?:,|and|&|then|to|-)\s*"
LETTERS = re.compile(
    rf"(?:{_ROWS}\s+([A-Z](?:{_AND}(?:{_ROWS}\s+)?[A-Z])*)|((?-i:[A-H](?:{_AND}[A-H])+|[A-H](?=\W*$))))\b",
    re.IGNORECASE,
)
"""Rows by their letters, "rows A and B"; several need no word before them, "C and D"."""
SENTENCE = re.compile(r"\s*[^.]+(?:\.(?=\s|$)|$)")
IN_ALL = re.compile(r"\b(?:in all|in total|total|altogether)\b", re.IGNORECASE)
STANDARD = (("inc", r"inc(?:reas\w+|\.)?"), ("dec", r"dec(?:reas\w+|\.)?"))
MOST = 400


def called_by_name(ledger: Ledger, row: WrittenRow) -> int:
    """Works the rows that the words call back by their names; where the words go on behind that,
    0 where they call back none.
    """
    if row.mark is not None:
        return _as_named(ledger, row, row.mark)
    words = ledger.text[row.start : row.end]
    verb = VERB.match(words)
    if verb is None:
        return 0
    found = _named(ledger, words, verb.end())
    entries, at = found if found is not None else ([], 0)
    behind = BEHIND.match(words, at)
    if not entries or behind is None or AT_A_PACE.search(behind["rest"]):
        return 0
    if behind["end"] == ":" and not _only_a_total(ledger, words[behind.end() :]):
        # What is worked is told anew behind the name.
        ledger.plain(WrittenRow(None, row.start + behind.end(), row.end))
        return row.end
    end = behind.end()
    stop = SENTENCE.match(words, end)
    total = stop is not None and _only_a_total(ledger, stop.group())
    end = stop.end() if stop and total else end
    span = WrittenRow(None, row.start, row.start + end)
    _work(ledger, entries, verb, behind["rest"], span, total)
    ledger.check_total(span, at, end)
    return row.start + end


def _as_named(ledger: Ledger, row: WrittenRow, mark: Mark) -> int:
    """Works a labelled row that is told by the name of another, "Row C: As row A"."""
    words = ledger.text[row.start : row.end]
    said = AS_NAMED.match(words)
    found = _named(ledger, words, said.end()) if said else None
    if found is None or not _only_a_total(ledger, words[found[1] :], nothing=True):
        return 0
    entries, end = found
    for at in range(max(mark.times, len(mark.numbers), len(entries))):
        number = mark.numbers[at] if at < len(mark.numbers) else None
        entry = entries[at % len(entries)]
        ledger.work(replace(entry, row=row, printed=(), quoted=True), number)
    ledger.check_total(row, end, len(words))
    return row.end


def _only_a_total(ledger: Ledger, words: str, nothing: bool = False) -> bool:
    if nothing and not re.search(r"\w", words):
        return True
    stop = SENTENCE.match(words)
    printed, rest = ledger.printed(f"({stop.group().strip(' .()[]')})" if stop else "")
    return bool(printed) and not re.search(r"\w", rest)


def _named(ledger: Ledger, words: str, at: int) -> tuple[list[Entry], int] | None:
    """The rows whose names stand at a place of the words, and where the names end."""
    latest = {name: ledger.entries[spot] for name, spot in ledger.entries.named.items()}
    for name, entry in reversed(latest.items()):
        letter = re.fullmatch(rf"{_ROWS} ([a-z])", name)
        if letter:
            found = LETTERS.match(words, at)
            letters = re.findall(r"\b[A-Za-z]\b", found.group(1) or found.group(2)) if found else []
            called = [latest.get(f"row {one.lower()}") for one in letters]
            if found and called and all(called):
                return [one for one in called if one is not None], found.end()
            continue
        core = re.sub(rf"\s+{_ROWS}$", "", name)
        shape = dict(STANDARD).get(core[:3], re.escape(core))
        found = re.compile(rf"(?:{shape})\s+{_ROWS}\b", re.IGNORECASE).match(words, at)
        if found and core not in ("next", "following", "last", "first", "final"):
            return [entry], found.end()
    return None


def _work(
    ledger: Ledger,
    entries: list[Entry],
    verb: re.Match[str],
    rest: str,
    span: WrittenRow,
    total: bool,
) -> None:
    """Works them as often as the words say; total: what they come to is printed behind."""
    goal = goal_in(rest)
    if goal is None and MEASURED.search(rest):
        why = "as many rows as the measure takes"
        same = sum(one.gain or 0 for one in entries) == 0
        ledger.even(ledger.below.stitches if same else -1, None, span.start, span.end, why, True)
        return
    times = _times(verb, rest, entries, ledger)
    for _ in range(min(MOST, times if goal is None else MOST)):
        for entry in entries:
            if ledger.full() or (goal is not None and reached(ledger, goal)):
                return
            _again(ledger, entry, span, total)


def _times(verb: re.Match[str], rest: str, entries: list[Entry], ledger: Ledger) -> int:
    """How often the rows are worked from here on."""
    many, told = FOR_ROWS.search(rest), times_in(rest)
    if many:
        return max(1, int(many.group(1)) // len(entries))
    if told is not None:
        before = sum(one.row == entries[0].row for one in ledger.entries)
        return max(0, told - before * (IN_ALL.search(rest) is not None))
    count = (verb["count"] or "").lower()
    number = int(count) if count.isdigit() else word_number(count) if count else None
    return number or 1


def _again(ledger: Ledger, entry: Entry, span: WrittenRow, total: bool) -> None:
    """The row once more; a question where its fixed numbers gain otherwise than they did, and no
    printed total decides.
    """
    before = ledger.below.stitches
    ledger.again(entry, ledger.number + 1 if ledger.number else None, span)
    row, gain = ledger.rows[-1], entry.gain
    if total or not gain or before is None or row.count in (None, before + gain):
        return
    made = row.count
    said = (
        f"{row.label}: the row that is called back makes {made} here, but gaining as it did there "
        f"would be {before + gain}: {quoted(row.written)}. Please check it."
    )
    ledger.problems.append(Problem(
        Verdict.UNCLEAR, said, row.span, ledger.part, row.label, None, made
    ))  # fmt: skip
    ledger.doubted = True
    ledger.rows[-1] = replace(row, verdict=Verdict.UNCLEAR)
