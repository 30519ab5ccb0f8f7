"""Rows by rule that call others back: "rep rows 2 and 3 four times", "repeat the last 2 rows until
20 remain", "repeat inc row every 6th row".
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.beyond_goal import FURTHER_WORK
from reader.pattern.changes import pace_in
from reader.pattern.goals import goal_in, times_in, value_of
from reader.pattern.rows_listed import in_order, rows_listed
from reader.pattern.rows_told import rows_told
from reader.pattern.rule import Rule
from reader.pattern.rule_words import (
    KEEP_ON,
    LIKE_FIRST,
    MORE,
    ODD_AND_EVEN,
    PER_SECTION,
    REPEAT_CHANGE,
    REPEAT_LAST,
    REPEAT_ROWS,
    REPEAT_THIS,
    THEN,
    UNTIL_LABEL,
    UNTIL_ROW,
    UP_TO_ROW,
    VARIED,
)
from reader.pattern.schedules import find_schedule, rows_of_stripes


def _again(
    kind: str, words: str, found: re.Match[str], first: int, last: int, rows: int, listed: int = 0
) -> Rule:
    """listed: where a list of rows ends, of which the match is the beginning."""
    behind = max(listed, found.end())
    tail = _sentence(words, behind)
    beyond = FURTHER_WORK.search(tail)
    tail = tail[: beyond.start()] if beyond else tail
    end = behind + len(tail)
    until = UNTIL_ROW.search(tail)
    row = int((until.group(1) or until.group(2))[:4]) if until else rows_of_stripes(words)
    planned = find_schedule(words[behind : behind + LONGEST_PLAN])
    told = len(tail) + (ANNOUNCED if FOR_PATTERN.search(tail) else 0)
    if planned is not None and planned.start <= told:
        # The colours of the rows tell how many they are.
        tail, until, row = words[behind :][: planned.end], None, None
        end = behind + planned.end
    planned_rows = planned.rows if planned is not None and end > behind else None
    if planned_rows is not None and THROUGHOUT.match(tail):
        # The colours are those of all rows, also of those worked already.
        planned_rows, row = None, planned_rows
    times = planned_rows or (None if until or row else times_in(tail))
    so_many = None if times is not None else rows_told(tail, _cycle(kind, first, last, rows))
    if so_many is not None:
        times, until, row = so_many, None, None
    goal, each = goal_in(tail), by_section(tail)
    named = IN_BRACKET.search(tail) if goal is None and times is None else None
    goal = int(named.group(1)[:5]) if named else goal
    times = 1 if times is None and goal is None and ONCE_AGAIN.match(tail) else times
    whole = times is not None and ALL_OF_THEM.search(found.group() + tail) is not None
    whole = whole and not (MORE.search(tail) or ONCE_AGAIN.match(tail) or ANOTHER.match(tail))
    return Rule(
        kind, first, last, rows, times, goal, found.start(), end, tail, until_row=row,
        per_section=goal is not None and each, in_all=whole,
    )  # fmt: skip


def _cycle(kind: str, first: int, last: int, rows: int) -> int:
    """How many rows are called back, 0 where that is not told."""
    told = rows if kind == "last" else last - first + 1 if last else 0
    return max(0, told)


THROUGHOUT = re.compile(r"\s*throughout\b")
ONCE_AGAIN = re.compile(r"\s*again\b(?! (?:until|till|for|\d|and again))", re.IGNORECASE)
ANOTHER = re.compile(r"\s*(?:another|a further)\b")
"""Beside those worked already: "work row 2 another four times"."""
ALL_OF_THEM = re.compile(
    r"^\W*(?:work|do|knit)\b|\b(?:in all|in total|altogether|total)\b", re.IGNORECASE
)
"""Rows worked so often with those that were worked already: "work these 2 rows 12 times"."""
FOR_PATTERN = re.compile(r"^\W*(?:for|as|throughout)\b[^.;]{0,12}\bpatt(?:ern)?\b", re.IGNORECASE)
"""A row that is repeated "for pattern": how often, the sentence behind it tells by its colours."""
ANNOUNCED = 12
"""Characters between such a sentence and the first number of the next: ". Work the "."""
LONGEST_PLAN = 900
"""Characters in which the colours of rows are looked for."""


IN_BRACKET = re.compile(r"\b(?:until|till)\b[^.;]*\(\s*(\d+)\s*(?:sts?|stitches)\b[^()]{0,12}\)")
"""A goal that is told behind other words: "until all are worked off at each side (22 sts)"."""


THEM_AGAIN = re.compile(
    r"\b(?:these|those|the last|last) (?P<n>\d+) (?:rows|rnds|rounds) (?:form|make|are|complete|set"
    r"|establish)\b[^.;]{0,30}[.;,]\s*(?:and )?(?:rep(?:eat)?|work)\s+(?:them|these|(?:the |this )?"
    r"(?:whole )?(?:pattern|patt)(?: repeat)?)\s+(?=\d+ (?:more )?times|\d+ times more|once|twice"
    r"|thrice|until|till)",
    re.IGNORECASE,
)
"""Rows that are told to form the pattern, and then how often they come: "Rep them 3 times more"."""


MORE_LIKE = re.compile(
    r"\W*(?:(?:then|and|work|do|make|crochet|knit)\s+)*(?P<start>(?P<n>\d{1,2})|(?P<word>[a-z]+))"
    r"\s+more\s+(?:rows|rnds|rounds)\s+(?:just |exactly )?(?:(?:like|as)\s+"
    r"(?:this|that|the last|before)|the same)\b", re.IGNORECASE,
)
"""So many more as the last one: "3 more rows like this"."""
SEVERAL = re.compile(
    r"\b(?:these|those|above|previous|preceding|last)\b.*\b(?:rows|rounds|rnds)$", re.IGNORECASE
)
"""Rows called back of which no number says how many they are."""
BOTH = re.compile(r"\bboth\b", re.IGNORECASE)


ON_THE_NEXT = re.compile(
    r"(?:^\W*|[.;] )(?:rep(?:eat)?(?: this| that)?(?: shaping)?|do the same)"
    r" (?:on|for|at (?:the )?(?:beg\w*|start) of) (?:the )?(?:next|following|foll)"
    r" (?:(?P<n>\d) )?(?:rows?|rounds?|rnds?)\b(?=\W*$)",
    re.IGNORECASE,
)
""" "BO 4 sts, k to end. Repeat on next row."."""
OF_A_LIST = re.compile(
    r"(?:^|[.;:])(?![^.;:]*\b(?:ends?|around|round|across|(?<!\d )(?:sts|stitches)|every|all|rows?"
    r"|each(?! of (?:the )?next)|(?:knit|purl)(?! \d| next))\b)"
    r"[^.;:]*[a-z\d)\]][,;]? (?:(?:and|then) )*$", re.IGNORECASE,
)
"""Before "repeat that six times" a list that does not go all the way: "sc 1, inc, and ..."."""


def last_again(words: str, rows: bool) -> Rule | None:
    """ "Repeat the last 2 rows 15 times", "keep doing that till you've got 18 rows"; rows: whether
    the words name any.
    """
    kept = KEEP_ON.search(words) if rows else None
    if kept:
        row = int(kept.group("row")[:4])
        return Rule("last", start=kept.start(), end=kept.end(), rest=kept.group(), until_row=row)
    this = REPEAT_THIS.search(words)
    if this and not OF_A_LIST.search(words, 0, this.start()):
        return _again("last", words, this, 0, 0, 1)
    following = ON_THE_NEXT.search(words)
    if following:
        at, end, many = following.start(), following.end(), following["n"]
        return Rule("last", times=int(many or 1), start=at, end=end, rest=following.group())
    them = THEM_AGAIN.search(words)
    if them:
        return _again("last", words, them, 0, 0, int(them["n"][:3]))
    more = MORE_LIKE.match(words) if rows else None
    if more:
        times = value_of(more["n"], more["word"])
        return Rule("last", times=times, start=more.start("start"), end=more.end(), rest=more[0])
    found = REPEAT_LAST.search(words) if rows else None
    if not found:
        return None
    goal = goal_in(words[found.end() :])
    if goal is not None and VARIED.search(words[found.end() :]):
        # Each time with one stitch fewer between: the counts go on as they went.
        many = value_of(found.group(1), found.group(2)) or 1
        start, end = found.start(), len(words)
        return Rule("grow", rows=many, goal=goal, start=start, end=end, rest=words)
    said = value_of(found.group(1), found.group(2)) or (2 if BOTH.search(found.group()) else None)
    return _again("last", words, found, 0, 0, said or (0 if SEVERAL.search(found.group()) else 1))
IN_ALL_TIMES = re.compile(r"\b(?:in all|in total|altogether|total)\b", re.IGNORECASE)


def change_again(words: str) -> Rule | None:
    """ "Repeat inc row every 6th row 8 more times": as the last such change, at this pace."""
    found = REPEAT_CHANGE.search(words)
    pace = pace_in(found.group("tail")) if found else 0
    if not found or not pace:
        return _change_so_often(words)
    then = THEN.search(words, found.start("tail"), found.end())
    end = then.start() if then else found.end()
    tail = words[found.start("tail") : end]
    pace, times = pace_in(tail) or pace, times_in(tail)
    if times and found.group("way") and IN_ALL_TIMES.search(tail):
        # The row that is called back is one of them.
        times -= 1
    return Rule(
        "grow", times=times, goal=goal_in(tail), start=found.start(), end=end,
        rest=words[found.start() : end], paced=True, every=pace,
        sign={"inc": 1, "dec": -1}.get((found.group("way") or "").lower(), 0),
    )  # fmt: skip


_LINE = r"(?:rows?|rnds?|rounds?|rds?)\b"
CHANGE_SO_OFTEN = re.compile(
    r"\b(?:(?P<rep>rep(?:eat)?(?:ing)?)|work(?:ing)?|do|knit)\s+"
    r"(?:(?:the|this|that|last|previous|above)\s+)*"
    rf"(?:(?P<way>inc|dec)\w*\.?\s+{_LINE}(?:\s+only)?"
    r"(?:\s+(?:for\s+)?(?:(?P<n>\d+)\s+(?:more\s+)?times"
    r"|(?P<once>once|again|one (?:more )?time)|(?P<twice>twice))(?:\s+(?:more|again|only|in all))?"
    r"|(?=\s+(?:until|till)\s(?P<until>[^.;]*))|(?(rep)(?=\s*[.;,])|(?!)))"
    rf"|(?P<more>\d+|one|another)\s+(?:more\s+)?(?P<kind>inc|dec)\w*\.?\s+{_LINE})"
    r"(?=\s*(?:[.;,:(—]|-\s|$|(?:and|then|until|till)\b))",
    re.IGNORECASE,
)
""" "Work dec rnd once more", "work 2 more dec rnds": the last such row, with no row between."""


def _change_so_often(words: str) -> Rule | None:
    found = CHANGE_SO_OFTEN.search(words)
    if not found:
        return None
    number = found["n"] or found["more"] or ("2" if found["twice"] else "1")
    goal = goal_in(found.group() + " until " + found["until"]) if found["until"] else None
    if found["until"] and goal is None:
        return None
    times = int(number[:3]) if number.isdigit() else 1
    return Rule(
        "grow", times=None if goal else times, goal=goal, start=found.start(),
        end=found.end("until") if goal else found.end(), rest=found.group(), paced=True,
        sign=1 if (found["way"] or found["kind"]).lower() == "inc" else -1,
    )  # fmt: skip


def odd_and_even(words: str) -> Rule | None:
    """ "Continue until the 40th row, the odd rows like the 5th and the even rows like the 6th"."""
    found = ODD_AND_EVEN.search(words)
    until = UNTIL_LABEL.search(words) if found else None
    if not found or not until:
        return None
    odd, even = int(found.group(1)[:4]), int(found.group(2)[:4])
    end = found.end() + len(_sentence(words, found.end()))
    row = int(until.group(1)[:4])
    return Rule("turns", odd, even, start=found.start(), end=end, rest=words, until_row=row)


def rows_again(words: str) -> Rule | None:
    """ "Rep rows 2 and 3 until ...", "work 6 rows like the first 6 rows of palm"."""
    like = LIKE_FIRST.search(words)
    if like:
        last = int(like.group("n")[:4])
        return Rule("rows", 1, last, 1, 1, None, like.start(), like.end(), like.group())
    upto = UP_TO_ROW.search(words)
    if upto:
        return _again("rows", words, upto, 1, int(upto.group(1)[:4]), 1)
    found = REPEAT_ROWS.search(words)
    if not found:
        return None
    first = int((found.group("a") or found.group("c"))[:4])
    final = int((found.group("b") or found.group("d") or str(first))[:4])
    if found.group("from") and not (found.group("b") or found.group("d")):
        # "Repeat from the 1st row": up to the last that was worked.
        return _again("rows", words, found, first, 0, 1)
    goal = goal_in(words[found.end() :])
    if goal is not None and VARIED.search(words[found.end() :]):
        many = max(1, final - first + 1)
        start, end = found.start(), len(words)
        return Rule("grow", rows=many, goal=goal, start=start, end=end, rest=words)
    listed, end = rows_listed(words, found.start("a" if found["a"] else "c"))
    if in_order(listed):
        return _again("rows", words, found, first, max(first, final), 1)
    rule = _again("rows", words, found, first, listed[-1], 1, end)
    return replace(rule, named=listed)


def by_section(words: str) -> bool:
    """Whether the stitches that the words run to are those of one section."""
    until = re.search(r"\b(?:until|till)\b", words)
    return until is not None and PER_SECTION.search(words, until.end()) is not None


def _sentence(words: str, at: int) -> str:
    found = re.search(r"[.;](?:\s|$)|,\s+then\b|\n\n", words[at:])
    return words[at : at + found.start()] if found else words[at:]
