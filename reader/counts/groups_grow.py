"""Rows that grow by a group, told in groups: "repeat the 3rd row, having one more shell in each row
until there are 18 shells", and the rows behind them that go on "in same manner".
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from reader.pattern.layout import WrittenRow
from reader.pattern.tree import ONE, Group, Node, Repeat, Until, Where, Work
from reader.terms.numbers import SPELLED, word_number
from reader.terms.stitches import Kind
from reader.text.sought import Sought

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

WHY = "one row like the last, with as many groups more or fewer as the words say"
MOST = 200
"""Rows that one sentence stands for at most."""
_N = rf"(?:\d{{1,3}}|{SPELLED}|an?|another)"
_UNIT = r"(?P<unit%d>shell|scallop|fan|group|cluster|block|petal|point|v[- ]st)(?:e?s)?"
_EACH = (
    r"(?:in|on|at|for|to|with|of)?\s*(?:each|every)\s+(?:succeeding\s+|following\s+)?"
    r"(?:row|time)s?"
)
_MORE = r"(?P<way%d>more|less|fewer|additional|extra|further)"
GROWS = Sought(
    ("each", "every"),
    rf"\b(?P<n1>{_N})\s+{_MORE % 1}\s+{_UNIT % 1}\s+{_EACH}"
    rf"|\b(?P<n2>{_N})\s+{_UNIT % 2}\s+{_MORE % 2}\s+{_EACH}"
    rf"|\b(?P<way3>adding|increasing|decreasing|dropping|losing|omitting)\s+(?:by\s+)?(?P<n3>{_N})"
    rf"\s+{_UNIT % 3}\s+{_EACH}",
    re.IGNORECASE,
)
FEWER = ("less", "fewer", "decreasing", "dropping", "losing", "omitting")
GOAL = re.compile(
    rf"\buntil\s+(?:(?:there\s+(?:are|is)|you\s+have|(?:the\s+)?row\s+has|only)\s+)*"
    rf"(?P<goal>\d{{1,3}}|{SPELLED})\s+{_UNIT % 0}\b",
    re.IGNORECASE,
)
TIMES = re.compile(
    rf"\b(?:for\s+)?(?P<times>\d{{1,3}}|{SPELLED})\s+(?:more\s+|further\s+)?(?:times|rows)\b"
    r"|\b(?P<twice>once|twice)\b", re.IGNORECASE,
)
CALLS = re.compile(r"\b(?:repeat|rep|work|continue|cont|proceed)\b", re.IGNORECASE)
"""How a sentence begins that calls rows back."""
SAME = Sought(
    ("manner", "way", "more"),
    r"\b(?:work(?:ing)?|continue|cont|repeat)\b[^.;*]{0,24}?(?:in (?:the )?(?:same|like|this)"
    rf" (?:manner|way)|\b(?:{_N})\s+more\s+rows?\b)", re.IGNORECASE,
)
SO_MANY = re.compile(rf"\b(?P<n>\d{{1,3}}|{SPELLED})\s+(?:more\s+)?rows?\b", re.IGNORECASE)
STITCHES = re.compile(r"\*|\b(?:s ?c|d ?c|tr|sl ?st|ch|skip|shell)\b(?!\w)", re.IGNORECASE)
SENTENCE = re.compile(r"(?<=[.;])\s+")


@dataclass(frozen=True, slots=True)
class Growing:
    """How rows grow: by so many groups of a name each."""

    step: int
    unit: str


def groups_grow(ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]) -> bool:
    """Books such rows; False (nothing booked) for all others. work: books a row by its words."""
    words = ledger.text[row.start : row.end]
    found = GROWS.search(words)
    if found is None:
        return _as_they_grew(ledger, row, words)
    begin = max((one.end() for one in SENTENCE.finditer(words, 0, found.start())), default=0)
    end = next((one.start() for one in SENTENCE.finditer(words, found.end())), len(words))
    told = words[begin:end]
    if CALLS.match(told.lstrip(" ,")) is None:
        return False
    if words[:begin].strip():
        ledger.plain(replace(row, end=row.start + begin))
        row = WrittenRow(None, row.start + begin, row.end)
    name = next(n for n in "123" if found[f"n{n}"])
    many = _number(found[f"n{name}"])
    growing = Growing(-many if found[f"way{name}"].lower() in FEWER else many,
                      found[f"unit{name}"].lower())
    now = _known_groups(ledger, growing)
    times = _times(told, growing, now)
    if now is None or not times:
        ledger.plain(replace(row, end=row.start + len(told)))
    else:
        _tell_before(ledger, growing, now)
        _book(ledger, row.start, row.start + len(told), growing, [now] * times)
    if ledger.text[row.start + len(told) : row.end].strip(" .;\n"):
        work(WrittenRow(None, row.start + len(told), row.end))
    return True


def _number(said: str) -> int:
    low = said.lower()
    return int(low) if low.isdigit() else 1 if low in ("a", "an", "another") else (
        word_number(low) or 1
    )


def _times(told: str, growing: Growing, now: int | None) -> int:
    """How many rows a sentence stands for, 0 where it does not tell."""
    goal = GOAL.search(told)
    if goal is not None and now is not None and growing.step:
        times, over = divmod(_number(goal["goal"]) - now, growing.step)
        return times if not over and 0 < times <= MOST else 0
    often = TIMES.search(told)
    if often is None:
        return 0
    times = {"once": 1, "twice": 2}[often["twice"].lower()] if often["twice"] else 0
    return min(times or _number(often["times"]), MOST)


def _known_groups(ledger: Ledger, growing: Growing) -> int | None:
    """How many groups the last row has; None where its words do not tell."""
    last = ledger.rows[-1] if ledger.rows else None
    if last is not None and last.groups is not None and last.of.startswith(growing.unit[:4]):
        return last.groups
    return groups_of(ledger.entries[-1].nodes) if ledger.entries else None


def groups_of(nodes: Sequence[Node]) -> int | None:
    """How many groups a row's words make: several stitches in one place, or a shell by its name;
    None where a list goes on to the row's end.
    """
    made = 0
    for one in nodes:
        if isinstance(one, Repeat):
            inner = groups_of(one.body)
            if inner is None or one.until not in (Until.TIMES, Until.MORE, Until.AGAIN):
                return None
            made += inner * (one.number.values[0] + (one.until is not Until.TIMES))
        elif isinstance(one, Group) or (isinstance(one, Work) and _is_group(one)):
            made += one.place.number.values[0] if one.place.where is not Where.SAME else 1
        elif isinstance(one, Work) and one.place.where in (Where.REST, Where.EACH):
            return None
    return made or None


def _is_group(one: Work) -> bool:
    several = one.number is not None and one.number.values[0] > 1
    alone = one.place.number == ONE and not one.place.each and one.place.where is not Where.PLAIN
    return one.stitch.kind is Kind.GROUP or (several and alone)


def _tell_before(ledger: Ledger, growing: Growing, now: int) -> None:
    """Tells the rows before in groups too, as far as each has so many fewer than the next."""
    told = {one.number: groups_of(one.nodes) for one in ledger.entries if one.number is not None}
    for at in range(len(ledger.rows) - 1, -1, -1):
        row = ledger.rows[at]
        if row.number not in told or told[row.number] != now or row.groups is not None:
            return
        if now < 2:
            # One group alone is told by its stitches.
            return
        ledger.rows[at] = replace(row, groups=now, of=f"{growing.unit}s")
        now -= growing.step


def _book(
    ledger: Ledger, start: int, end: int, growing: Growing, rows: Sequence[int]
) -> None:
    """Books the rows one by one; rows: for each of them the groups of the row before all."""
    counts = [one.count for one in ledger.rows[-2:] if one.count is not None]
    gain = abs(counts[1] - counts[0]) if len(counts) > 1 else 0
    groups = rows[0]
    for _ in rows:
        if ledger.full() or groups + growing.step < 1:
            return
        groups += growing.step
        count = ledger.below.stitches
        if count is not None:
            count = max(1, count + (gain if growing.step > 0 else -gain))
        ledger.even(count, None, start, end, WHY)
        ledger.rows[-1] = replace(ledger.rows[-1], groups=groups, of=f"{growing.unit}s")


def _as_they_grew(ledger: Ledger, row: WrittenRow, words: str) -> bool:
    """ "Work 1 more row in White", "continue in same manner working 2 rows White, 11 rows Red"
    behind rows that grew: they go on so.
    """
    last, before = ([None, None, *ledger.rows])[-2:]
    if last is None or before is None or WHY not in before.assumed:
        return False
    if before.groups is None or last.groups is None or last.of != before.of:
        return False
    told = SAME.search(words)
    if told is None or STITCHES.search(words[: told.end()]):
        return _only_yarn(words)
    growing = Growing(before.groups - last.groups, before.of.removesuffix("s"))
    rows = min(sum(map(_rows_in, SENTENCE.split(words))), MOST)
    _book(ledger, row.start, row.end, growing, [before.groups] * rows)
    return True


def _rows_in(sentence: str) -> int:
    """How many rows a sentence tells, "working 2 rows White, 11 rows Red"; one where it only says
    that the work goes on.
    """
    numbers = [_number(one["n"]) for one in SO_MANY.finditer(sentence)]
    return sum(numbers) if numbers else int(SAME.search(sentence) is not None)


YARN = re.compile(
    r"\W*(?:(?:break|cut|attach|join|with|drop|pick up)\s+(?:off\s+)?[\w ]{1,24}?(?:\s+and)?\W*)+$",
    re.IGNORECASE,
)


def _only_yarn(words: str) -> bool:
    """Whether only a yarn is changed: "Attach Red and"."""
    return YARN.match(words) is not None and len(words) < 60
