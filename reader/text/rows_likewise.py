"""Rows that a sentence tells of many at once, given the label of them all: "Rnd 2: knit, and so are
4 and 6" -> "Rnds 2,4,6: knit", "In between, on 2, 4 and 6, knit." -> "Rnds 2,4,6: knit"; length
kept so that every offset stays.

Such a sentence is known by its words, in any order: all are of a few, one likens or is a plain
stitch, and it names rows behind the one it stands in.
"""

from __future__ import annotations

import re
from itertools import pairwise

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought, lowered


def of_words(said: str) -> frozenset[str]:
    """The words of a line."""
    return frozenset(said.split())


LIKENED = of_words("so same too also likewise ditto like alike this as well identical")
"""One of these must stand in the words: they say that other rows are as this one."""
PLAIN = of_words("knit knitted k purl purled p")
VERBS = of_words("knit purl")
"""Said again of other rows, they liken them too: "knit, and knit all even rounds"."""
ROWS = of_words("row rows rnd rnds round rounds rds r")
WHICH = of_words("even odd uneven alternate alt")
PASSED = (
    of_words(
        "and are is as do does for goes go on the all of other others numbered repeat work worked"
        " made done it that in way every each you will from here one ones manner again &"
    )
    | LIKENED | ROWS | WHICH | PLAIN
)  # fmt: skip
TOLD_PLAIN = (
    of_words(
        "on in between the are is just all simply plain plainly every stitch stitches sts st you"
        " across around worked work and & each of ones straight as"
    )
    | ROWS | PLAIN
)  # fmt: skip
WORD = re.compile(r"[a-z&]+|\d+(?:st|nd|rd|th)?|[^\sa-z\d,.;:()=+/&'-]", re.IGNORECASE)
LABELLED = re.compile(
    r"(?P<lead>[ ]*)(?P<what>(?:rows?|rnds?|rounds?|r)\.?[ ]?)?(?P<n>\d{1,3})"
    r"(?P<nth>(?:st|nd|rd|th) (?P<what2>rows?|rnds?|rounds?))?(?P<mark>[ ]?[:.)—–-]+[ ]+)",
    re.IGNORECASE,
)
APART = re.compile(r"[,.;(—–]|[ ]-|(?<=[ ])(?=(?:this|and|as|so)[ ])", re.IGNORECASE)
"""Where such words may begin behind those of the row."""
OF_PART = re.compile(r"\b(?:of|in|throughout) the [a-z]+(?=[ ]*[.,;)]|[ ]*$)")
ONE_ROW = re.compile(r"\b(?:are|is|for|also|ditto|likewise) \d", re.IGNORECASE)
"""A number alone that is a row's, and no total: "so is 4"."""
RANGE = re.compile(r"\d ?[-—–] ?\d")
LIST = re.compile(
    r"\w+(?:[ ]?(?:,(?:[ ]?and)?|and|&|\+|/)[ ]?(?:r|rows?|rnds?|rounds?)?[ ]?"
    r"(?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve)(?:nd|rd|th)?\b)+",
    re.IGNORECASE,
)
"""Numbers told in one list, and not one of them elsewhere."""
MAY = Sought(
    (*sorted(LIKENED), "knit", "purl", "k", "p"),
    r"(?m)^(?=[^\n]*\d)(?=[^\n]*\b(?:so|same|too|also|likewise|ditto|like|alike|this|as|well|identical"
    r"|knit|knitted|k|purl|purled|p)\b)[^\n]+",
    re.IGNORECASE,
)


SO_MANY = re.compile(
    rf"\b(?:\d{{1,3}}|{SPELLED}) (?:(?:more|such|other|further|of these|of those) )*"
    r"(?:rows|rounds|rnds)\b"
)
"""How many rows, and not which: "eight rows like this in all"."""


def rows_likewise(text: str) -> str:
    """The text with one label for rows that are told together."""
    return MAY.sub(_line, text)


def _line(found: re.Match[str]) -> str:
    line = found.group()
    label = LABELLED.match(line)
    if label is not None:
        return _with_others(line, label)
    for words in (line, line[: line.find(". ") + 1]):
        listed = _plain_list(words)
        if listed is not None:
            return listed + line[len(listed) :]
    return line


def _with_others(line: str, label: re.Match[str]) -> str:
    number = int(label["n"])
    for apart in APART.finditer(line, label.end() + 1):
        others = _others(line[apart.start() :], number, line[label.end() : apart.start()])
        if others is None:
            continue
        rows = label["what"] or f"{label['what2'] or 'Row'} "
        mark = label["mark"] if label["what"] and others[0] == " " else ": "
        head = f"{label['lead']}{rows}{number}{others}{mark}{line[label.end() : apart.start()]}"
        return _fitting(head, line) or line
    return line


def _others(words: str, number: int, row: str) -> str | None:
    """What the label gains by words behind those of its row: ",4,6", " and all even rows"; None
    where they are other words.
    """
    said = WORD.findall(OF_PART.sub(" ", lowered(words)))
    numbers = _numbers(said)
    named = [one for one in said if not _is_number(one)]
    again = ROWS.intersection(named) and VERBS.intersection(named) <= of_words(lowered(row))
    likened = LIKENED.union(VERBS if again else ())
    if len(numbers) == 1 and SO_MANY.search(lowered(words)):
        return None
    if not likened.intersection(named) or not PASSED.issuperset(named):
        return None
    if numbers:
        mounting = all(b > a for a, b in pairwise((number, *numbers)))
        named_so = len(numbers) > 1 or ROWS.intersection(named) or ONE_ROW.search(words)
        return "".join(f",{one}" for one in numbers) if mounting and named_so else None
    if WHICH.intersection(named) and ROWS.union(("ones", "numbered")).intersection(named):
        odd = number % 2
        if odd == bool({"odd", "uneven"}.intersection(named)) or "even" not in named:
            return f" and all {'odd' if odd else 'even'} rows"
    return None


def _plain_list(words: str) -> str | None:
    """"Rounds 2, 4 and 6 are all knit." as a label and its stitch; None for other words."""
    said = WORD.findall(lowered(words))
    numbers = _numbers(said)
    named = [one for one in said if not _is_number(one)]
    stitches = PLAIN.intersection(named)
    if len(numbers) < 2 or len(stitches) != 1 or not TOLD_PLAIN.issuperset(named):
        return None
    if RANGE.search(words) or len(LIST.findall(words)) != 1 or re.search(r"\d[)\]]", words):
        return None
    if any(b - a < 2 for a, b in pairwise(numbers)):
        return None
    rows = next((one for one in named if one in ROWS), "")
    rows = rows if rows in ("", "r") else f"{rows} "
    stitch = "purl" if min(stitches).startswith("p") else "knit"
    return _fitting(f"{rows}{','.join(map(str, numbers))}: {stitch}", words)


def _fitting(told: str, words: str) -> str | None:
    return told.ljust(len(words)) if len(told) <= len(words) else None


def _is_number(word: str) -> bool:
    return word[0].isdecimal() or (word != "one" and word_number(word) is not None)


def _numbers(said: list[str]) -> list[int]:
    """The numbers among words, but "one", which is a word like others here."""
    numbers = filter(_is_number, said)
    figures = (one.rstrip("stndrh") if one[0].isdecimal() else one for one in numbers)
    return [int(one) if one.isdecimal() else word_number(one) or 0 for one in figures]
