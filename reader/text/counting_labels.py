"""Rows told by numbers that count on, in whatever manner: "1/ ch 3, ...", "Row 2 . sc ...", "3 ch
1, sc ..." on line after line, "... (6). 2: inc each (12). 3: ..." and "3rd, 2 in every second. 4th,
..." amid a paragraph -> labels as most write them; length kept.
"""

from __future__ import annotations

import re

LEAST = 4
"""Labels in one manner that count on without a gap."""
_LAST = r"(?: ?(?:-|—|\.\.|\.\.\.|to) ?(?P<last>\d{1,3}))?"
_WORK = r"(?=[ ]*(?:[a-z(\[*]|[A-Z][a-z]|\d))"
AT_LINE = re.compile(
    rf"^(?P<label>[ \t]*(?:(?:rounds?|rnds?|rds?|rows?|r)\.? ?)?(?P<first>\d{{1,3}}){_LAST})"
    rf"(?P<mark> ?(?:/|\.|>+|=)(?=[ ])){_WORK}",
    re.MULTILINE | re.IGNORECASE,
)
BARE = re.compile(
    rf"^(?P<label>[ \t]*(?P<first>\d{{1,3}}){_LAST})(?P<mark>[ ])"
    r"(?!(?:rows?|rnds?|rounds?|rds?)\b)"
    r"(?=(?:[a-z(\[*]|[A-Z][a-z]* |\d+ ?(?:sc|dc|hdc|tr|htr|ch|inc|dec)\b))", re.MULTILINE,
)
LETTERED = re.compile(
    r"(?:^|(?<=[.;] ))(?P<label>[ \t]*(?P<word>[a-jlo-z])(?P<first>\d{1,3})"
    r"(?: ?(?:-|to) ?[a-z]?(?P<last>\d{1,3}))?)(?P<mark>[ ])(?=[a-z(\[*\d])", re.MULTILINE,
)
"""A small letter and a number, "h3 ch 1, ..."."""
AMID = re.compile(
    r"(?<=[.)])(?P<mark>[ ])(?P<label>(?P<first>\d{1,2})(?:-(?P<last>\d{1,2}))?)(?=: )"
)
ORDINAL = re.compile(
    r"(?:^|(?<=[.;)] )|(?<=[.;)]\n))(?P<label>(?P<first>\d{1,2})(?:st|nd|rd|th)"
    r"(?: (?:rounds?|rows?|rnds?))?(?: \([^()\n]{3,20}\))?)(?P<last>(?!))?(?P<mark>,)"
    r"(?=\s)", re.MULTILINE,
)

ALL = re.compile(r"")
MANNERS = (
    (AT_LINE, LEAST, ALL),
    (ORDINAL, LEAST, re.compile(r"\d(?:st|nd|rd|th)[ ,]")),
    (BARE, LEAST + 1, ALL),
    (LETTERED, LEAST, re.compile(r"[a-jlo-z](?<!\S.)\d")),
)
"""Each with the labels that must count on, and what every such label holds: far sooner looked for.
"""


def labels_counted(text: str) -> str:
    """The text with such labels as usual ones; any other text as it is."""
    for shape, least, held in MANNERS:
        if held.search(text) is None:
            continue
        for one in _counting(list(shape.finditer(text)), least):
            text = _marked(text, one)
    for one in _counting(list(AMID.finditer(text)), LEAST):
        text = text[: one.start("mark")] + "\n" + text[one.end("mark") :]
    return text


def _counting(found: list[re.Match[str]], least: int = LEAST) -> list[re.Match[str]]:
    """Those that belong to a run from 1 or 2 on, each behind the last without a gap."""
    runs: list[list[re.Match[str]]] = []
    for one in found:
        first = int(one["first"])
        if runs and first == int(runs[-1][-1]["last"] or runs[-1][-1]["first"]) + 1:
            runs[-1].append(one)
        elif first in (1, 2):
            runs.append([one])
    long = [run for run in runs if len(run) >= least]
    short = [run for run in runs if len(run) < least] if long else []
    return sorted([one for run in [*long, *short] for one in run], key=lambda one: one.start())


def _marked(text: str, one: re.Match[str]) -> str:
    """The text with a colon for the mark behind a label."""
    label = one["label"]
    if "word" in one.re.groupindex:
        start = one.start("word")
        text = f"{text[:start]}R{text[start + 1 :]}"
        label = label.replace(one["word"], "R")
    mark = ":".ljust(len(one["mark"]))
    said = re.sub(r"(?<=\d) ?\.{2,3} ?(?=\d)", "-", label)
    said = re.sub(r"(?<=-)[a-z](?=\d)", "", said)
    return text[: one.start("label")] + (said + mark).ljust(len(label) + len(mark)) + (
        text[one.end("mark") :]
    )
