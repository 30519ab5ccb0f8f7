"""Rows by rule: "rep rows 2 and 3 four times", "same as 4th row", "work 6 rows even", "until there
are 39 sts".
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from reader.pattern.changes import find_change
from reader.pattern.labels import opened
from reader.terms.numbers import ORDINALS, SPELLED, TENS, word_number
from reader.terms.numbers import TIMES as TIMES_WORDS

_N = r"(\d+)(?:st|nd|rd|th|d)?"
_ROWS = r"(?:rows?|rnds?|rounds?|rds?)"
_ONES = (
    r"(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen"
    r"|twenty)"
)

REPEAT_LAST = re.compile(
    rf"\b(?:rep(?:eat)?|work)\s+(?:the\s+)?(?:last|these|previous)\s*(?:(\d+)|{_ONES})?\s*{_ROWS}",
    re.IGNORECASE,
)
REPEAT_ROWS = re.compile(
    rf"\b(?:rep(?:eat)?(?:ing)?)\s+(?:the\s+)?(?:from\s+)?(?:{_ROWS}\s*(?P<a>\d+)(?:\s*(?:-|—|to"
    rf"|through|thru|&|and)\s*(?P<b>\d+))?|(?P<c>\d+)(?:st|nd|rd|th|d)(?:\s*{_ROWS})?(?:\s*(?:,|-"
    rf"|to|through|and|&)\s*(?:\d+(?:st|nd|rd|th)\s*(?:,|and)\s*)*(?P<d>\d+)(?:st|nd|rd"
    rf"|th))?\s*{_ROWS})",
    re.IGNORECASE,
)
_LIST = r"(?:\s*(?:,|-|&|and|to|through)\s*(?:the\s+)?"
SAME_AS = re.compile(
    rf"^\W*(?:(?:attach|join|with|using|change to|carry|behind|still|always)\b"
    rf"(?:[^.;:]|\b(?:dk|lt|med)\.)*?[, ]\s*(?:and\s+)?)?(?:work\s+|working\s+)?(?:the\s+)?"
    rf"(?:(?:same|exactly)\s+as|as|like|follow "
    rf"directions for|repeat|rep|just repeat)\s+(?:for\s+|in\s+)?(?:the\s+)?(?:(?P<last>last"
    rf"|previous|preceding|prev)\s+{_ROWS}|(?P<a>{_N}{_LIST}{_N})*)\s*{_ROWS}"
    rf"|{_ROWS}\s*(?P<b>\d+{_LIST}\d+)*))\b(?P<rest>.*)$",
    re.IGNORECASE | re.DOTALL,
)
TIMES = re.compile(rf"(?:(\d+)|{_ONES})\s*(?:more\s*)?times|\b(once|twice|thrice)\b", re.IGNORECASE)
UNTIL = re.compile(
    r"\b(?:until|till|to)\s+(?:there\s+are|you\s+have|there\s+is|it\s+has)?\s*(\d+)\s*(?:\([\d,\s]"
    r"+\)\s*)?(?:sts?|stitches|sc|dc|doubles|k|loops)?\s*(?:on needles?)?\s*(?:rem(?:ain)?s?|are "
    r"left|left)?",
    re.IGNORECASE,
)
_AT = r"(?:^\W*|(?<=[.,;:)\]]\s))"
"""Where a sentence may begin."""
_FABRIC = (
    r"(?:garter|stockinette|stockinet|stocking|st st|s\.? ?s\b|stst|seed|moss"
    r"|rev(?:erse)?\b[^.;,]{0,20}"
    r"|(?:back and forth|plain|even|straight)?,? ?(?:without|no) (?:any )?(?:widen\w*|narrow\w*"
    r"|increas\w*|decreas\w*|shaping)"
    r"|k(?:nit)? the k\w* sts?,? and p(?:url)? the p\w* sts?|sts? as they appear"
    r"|(?:\w+ ){0,3}rib\w*|k ?1,? ?p ?1|k ?2,? ?p ?2|(?:the )?(?:established )?patt(?:ern)?)"
)
NOT_STITCHES = re.compile(
    r"\s*(?:in\b|inch|cm|\"|mm|(?:\w+ )?(?:rows|rounds|rnds|ridges|ribs|repeats|patterns|scallops"
    r"|motifs|blocks|times|points)\b)",
    re.IGNORECASE,
)
"""What a number behind "until" may count instead of stitches."""
UNTIL_ROW = re.compile(
    rf"\b(?:until|till)\b[^.]*?\b(\d+)\s+{_ROWS}\b|\((\d+)\s+{_ROWS}\)", re.IGNORECASE
)
EVEN = re.compile(
    rf"{_AT}(?:then\s+)?(?:(?:beg\w*|start\w*)\s+with\s+[^,.;]{{2,20}},\s*)?"
    r"(?:work|knit|k|purl|p|crochet|sc|dc|hdc|make|cont(?:inue)?)\b"
    r"(?:(?!\binc|\bdec|[.:;\d]|\beach\b|\bnext\b)[^.;]){0,60}?(?:in k ?\d,? ?p ?\d [^.;\d]{0,20})?"
    rf"\b(?:(\d+)|{_ONES})\s+(?:more\s+)?{_ROWS}\b(?P<rest>[^.;]*)",
    re.IGNORECASE,
)
EVEN_ROUND = re.compile(
    rf"{_AT}(?:(?:and\s+)?then\s+)?(?:(\d+)|{_ONES})\s+{_ROWS}\s+(?:even|plain|straight"
    rf"|of\s+(?:sc|dc|garter|st st"
    rf"|stockinette)|(?:in|with|of)\s+[A-Z][\w ]{{1,18}}(?=[,.;]|$))",
    re.IGNORECASE,
)
LIKE_LAST = re.compile(
    r"\s*,?\s*(?:(?:worked\s+)?(?:the\s+)?same\b|(?:in (?:the )?same (?:way|manner))|like the"
    r"|as the (?:last|previous)|as before)",
    re.IGNORECASE,
)
"""Behind a number of rows, these say that they are the last row again."""
CHART = re.compile(
    rf"{_AT}?[^.;]*?\b(?:work|knit|follow|purl)\w*\s+(?:the\s+)?(?:from\s+)?chart\b[^.;]*?{_ROWS}"
    rf"\s*(\d+)\s*(?:-|to|through)\s*(\d+)",
    re.IGNORECASE,
)
"""Rows that only a chart shows: their count is taken to stay."""
FABRIC = re.compile(
    r"(?!.*\b(?:in|into) (?:the )?(?:next|first|same|last|each)\b)"
    rf"^[^\w*]*(?:work(?:ing)?\s+|cont(?:inue)?\s+)?(?:even\s+|straight\s+)?(?:in\s+)?{_FABRIC}"
    r"(?:\s+(?:st|stitch|ribbing))?\b[^.\d*]*(?:\([^)*]*\))?[^.\d*]*\.?\s*$",
    re.IGNORECASE,
)
"""A whole row in a fabric that is named and not spelled out."""
MEASURE = re.compile(
    rf"{_AT}(?:(?:change|switch|with|using)\b[^.;]*[.,;]\s*)?(?:then\s+|now\s+)?(?:work"
    rf"|cont(?:inue|inuing|\.)?|knit|purl|crochet|keep|rib|k ?\d+,? ?p "
    rf"?\d+)\b(?P<how>[^.;]*?)\b(?:until|till|to|for)\b[^.;]*?(?:\bmeasures?\b|\binch(?:es)?\b"
    rf"|[\d½¼¾⅓⅔⅛⅜⅝⅞] ?ins?\b|[\"″]|\bcms?\b|\blong\b|\bdeep\b|\bdesired\b|\brequired\b)"
    r"(?P<rest>[^.;]*)",
    re.IGNORECASE,
)
"""Work that goes on until a measure is reached: as many rows as it takes, the count unchanged."""
SHAPED = re.compile(r"\b(?:inc(?!h)|dec|shap|rnds? \d|rows? \d)", re.IGNORECASE)
GOES_ON = re.compile(
    r"\b(?:continue|continuing|cont|keep|proceed)\b[^.]*?\b(?:inc|dec|having|adding|with|working"
    r"|skipping|in this (?:manner|way)|in (?:the )?same (?:manner|way)|until|till)",
    re.IGNORECASE,
)
"""Rows go on as they went before, or as the words say."""
NEXT_ROW = re.compile(r"\bnext (?:\w+ )?(?:row|rnd|round)", re.IGNORECASE)
VARIED = re.compile(
    r"\b(?:\d+|one) (?:\w+ ){0,2}?(?:fewer|less|more)\b[^.]*\b(?:before|between)\b", re.IGNORECASE
)
PLAIN_DIFFERENCE = re.compile(
    r"\b(?:but|except)\b(?! (?:(?:with|making|having|of) )?(?:ch(?:ain)? \d|\d+ ch)"
    r"| (?:work(?:ing)? |taking )?(?:up )?(?:through|in(?:to)?|under) (?:the )?(?:both|back|front)"
    r"| (?:with|in|using) [a-z]+(?: [a-z])?\s*[.,;])",
    re.IGNORECASE,
)
"""A difference that changes the stitches; other chains, loops or colours don't."""


@dataclass(frozen=True, slots=True)
class Rule:
    """What a row's words ask for by rule.

    kind: "last" (the last `rows` rows again), "rows" (rows first to last again), "same" (as row
    `first`), "even" (rows plain rows), "grow" (go on as the last rounds grew). times: how often
    more, None for open. goal: a stitch number to stop at.
    """

    kind: str
    first: int = 0
    last: int = 0
    rows: int = 1
    times: int | None = None
    goal: int | None = None
    start: int = 0
    end: int = 0
    rest: str = ""
    step: int = 0
    every: int = 1
    named: tuple[int, ...] = ()
    differs: bool = False
    measured: bool = False
    charted: bool = False
    total: int | None = None
    between: bool = False
    at_once: bool = False
    until_row: int | None = None


def _value(digits: str | None, word: str | None) -> int | None:
    if digits:
        return int(digits[:4])
    return TIMES_WORDS.get(word.lower(), word_number(word)) if word else None


def times_in(words: str) -> int | None:
    """The "15 times", "twice" in a rule; None where it is open."""
    found = TIMES.search(words)
    if not found:
        return None
    return _value(found.group(1), found.group(2) or found.group(3))


def goal_in(words: str) -> int | None:
    """The stitch number a rule runs to."""
    found = UNTIL.search(words)
    if found and not NOT_STITCHES.match(words[found.end() :]):
        return int(found.group(1)[:5])
    return None


def find_rule(words: str, labelled: bool) -> Rule | None:
    """The rule a row's words are, or contain at their end; None where they are plain instructions.
    """
    tight, places = tightened(words)
    rule = _rule_in(tight, labelled)
    if rule is None:
        return None
    return replace(rule, start=places[rule.start], end=places[rule.end])


PIECE = re.compile(
    rf"(?P<space>\s+)|\b(?P<number>{SPELLED})|\b(?P<ordinal>(?:(?:twenty|thirty|forty|fifty)"
    rf"[ -])?(?:{'|'.join(ORDINALS)}))\b",
    re.IGNORECASE,
)
"""What is put otherwise before rules are looked for: white space, numbers in words."""


def tightened(words: str) -> tuple[str, list[int]]:
    """The words with single spaces and their numbers in figures, and for each of their places where
    it stood.
    """
    letters: list[str] = []
    places: list[int] = []
    at = 0
    for found in PIECE.finditer(words):
        letters.append(words[at : found.start()])
        places += range(at, found.start())
        new = _in_figures(found)
        letters.append(new)
        places += [found.start()] * len(new)
        at = found.end()
    letters.append(words[at:])
    places += range(at, len(words) + 1)
    return "".join(letters), places


def _in_figures(found: re.Match[str]) -> str:
    if found.group("space"):
        return " "
    if found.group("number"):
        return str(word_number(found.group()) or 0)
    *tens, last = re.split(r"[\s-]+", found.group().lower())
    value = ORDINALS[last] + (TENS[tens[0]] if tens else 0)
    ending = {1: "st", 2: "nd", 3: "rd"}.get(value % 10 if value not in (11, 12, 13) else 0, "th")
    return f"{value}{ending}"


def _rule_in(words: str, labelled: bool) -> Rule | None:
    return (
        (_same_as(words) if labelled else None)
        or _last_again(words)
        or _rows_again(words)
        or _fabric(words)
        or _even(words)
        or _measured(words)
        or _grow(words)
    )


def _same_as(words: str) -> Rule | None:
    """ "Same as 4th row"; a difference named behind it makes it something else."""
    found = SAME_AS.match(words)
    if not found:
        return None
    rest = found.group("rest")
    goes_on = re.match(r"\s*(?:,|for|until|\d+|through|to\b|and\b|once|twice|alternately)", rest)
    if goes_on and re.match(r"\W*(?:rep|repeat)\b", words, re.IGNORECASE):
        return None
    if found.group("last") and re.match(r"\W*(?:rep|repeat)\b", words, re.IGNORECASE):
        return None
    numbers = opened(found.group("a") or found.group("b") or "0")
    differs = PLAIN_DIFFERENCE.search(rest[:40]) is not None
    return Rule("same", numbers[0], numbers[-1], rest=rest, named=numbers, differs=differs)


def _measured(words: str) -> Rule | None:
    """ "Work in rib until piece measures 2 inches"."""
    found = MEASURE.search(words)
    if not found or SHAPED.search(found.group()):
        return None
    return Rule("even", start=found.start(), end=found.end(), rest=found.group(), measured=True)


def _fabric(words: str) -> Rule | None:
    """ "Garter stitch", "work in rib": every row of the label."""
    found = FABRIC.match(words)
    if found:
        return Rule("fabric", start=0, end=found.end(), rest=words)
    chart = CHART.match(words)
    if not chart:
        return None
    rows = max(1, int(chart.group(2)[:4]) - int(chart.group(1)[:4]) + 1)
    return Rule("even", rows=rows, start=0, end=chart.end(), rest=words, charted=True)


def _again(kind: str, words: str, found: re.Match[str], first: int, last: int, rows: int) -> Rule:
    tail = _sentence(words, found.end())
    end = found.end() + len(tail)
    until = UNTIL_ROW.search(tail)
    row = int((until.group(1) or until.group(2))[:4]) if until else None
    times = None if until else times_in(tail)
    return Rule(
        kind, first, last, rows, times, goal_in(tail), found.start(), end, tail, until_row=row
    )


def _last_again(words: str) -> Rule | None:
    """ "Repeat the last 2 rows 15 times"."""
    found = REPEAT_LAST.search(words)
    if not found:
        return None
    goal = goal_in(words[found.end() :])
    if goal is not None and VARIED.search(words[found.end() :]):
        # Each time with one stitch fewer between: the counts go on as they went.
        return Rule("grow", goal=goal, start=found.start(), end=len(words), rest=words)
    return _again("last", words, found, 0, 0, _value(found.group(1), found.group(2)) or 1)


def _rows_again(words: str) -> Rule | None:
    """ "Rep rows 2 and 3 until ..."."""
    found = REPEAT_ROWS.search(words)
    if not found:
        return None
    first = int((found.group("a") or found.group("c"))[:4])
    final = int((found.group("b") or found.group("d") or str(first))[:4])
    goal = goal_in(words[found.end() :])
    if goal is not None and VARIED.search(words[found.end() :]):
        return Rule("grow", goal=goal, start=found.start(), end=len(words), rest=words)
    return _again("rows", words, found, first, max(first, final), 1)


def _even(words: str) -> Rule | None:
    """ "Work 6 rounds even"; "knit 6 rows, increasing 1 st at the beginning of each"."""
    found = EVEN.search(words) or EVEN_ROUND.search(words)
    if not found:
        return None
    rows = _value(found.group(1), found.group(2)) or 1
    if LIKE_LAST.match(found.groupdict().get("rest") or ""):
        return Rule("last", times=rows, start=found.start(), end=found.end(), rest=found.group())
    tail = re.split(r"[.;]", words[found.start() :], maxsplit=1)[0]
    change = find_change(tail)
    if change is not None and change.step:
        end = found.start() + len(tail)
        times = change.times or rows // change.every
        return Rule(
            "grow", times=times, start=found.start(), end=end, rest=tail, step=change.step,
            every=change.every, at_once=change.at_once, rows=rows,
        )  # fmt: skip
    return Rule("even", rows=rows, start=found.start(), end=found.end(), rest=found.group())


def _grow(words: str) -> Rule | None:
    """ "Continue in this way until there are 15", "inc 1 st each end every 4th row 5 times"."""
    change = find_change(words)
    found = GOES_ON.search(words)
    if found is None and change is None:
        return None
    start = min(found.start() if found else len(words), change.start if change else len(words))
    tail = words[start:]
    goal = goal_in(tail) or _section_goal(tail)
    times = change.times if change is not None else None
    if times is None:
        times = times_in(tail)
    if found is None and goal is None and times is None:
        return None
    total = re.search(r"\((\d+)\s*(?:[a-z][a-z .]{0,12})?\)", tail)
    between = re.search(r"\bbetween\b", tail) is not None
    return Rule(
        "grow",
        times=times if change is not None and goal is None else None,
        goal=goal,
        start=start,
        end=len(words),
        rest=tail,
        step=change.step if change is not None else 0,
        every=change.every if change is not None else 1,
        at_once=(change is not None and change.at_once) or NEXT_ROW.search(tail) is not None,
        total=int(total.group(1)[:5]) if total and goal is not None else None,
        between=between,
    )


def _section_goal(words: str) -> int | None:
    found = re.search(
        r"\b(?:until|till)[^.]*?(\d+)\s*(?:sc|dc|sts?|stitches|s c|d c|doubles)\b", words
    )
    return int(found.group(1)) if found else None


def _sentence(words: str, at: int) -> str:
    found = re.search(r"[.;](?:\s|$)|,\s+then\b|\n\n", words[at:])
    return words[at : at + found.start()] if found else words[at:]
