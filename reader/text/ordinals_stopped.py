"""Rows told by their ordinal alone and a mark, "1st. Knit. 2nd. Purl.", "First row - plain. Second
- make one, knit one." -> "1st: Knit. 2nd: Purl.", length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import ORDINALS, TENTHS, ordinal_number
from reader.text.sought import Sought

_BEGINS = r"(?:^[ \t]*|(?<=[.;!—] )|(?<=\) )|(?<=[.;]\n))"
_AS_PLACE = r"(?:rows?|rnds?|rounds?|st(?:s|itch\w*)?|ch(?:ain)?s?|loops?|sc|dc|[sdt] ?c)\b"
LABEL = re.compile(
    rf"{_BEGINS}(?P<n>\d{{1,3}})(?:st|nd|d|rd|th)"
    r"(?P<more>(?:(?:,?\s(?:and|&|to)|,|\s?[-–])\s?\d{1,3}(?:st|nd|d|rd|th))*)"
    r"(?:\s(?:rows?|rnds?|rounds?))?(?P<stop>(?:,?\sinclusive)?\.(?:\s?(?:—|–|--)|(?=\s)))"
    rf"(?=\s*[A-Za-z\d*+(\[])(?!\s+{_AS_PLACE})",
    re.MULTILINE,
)
"""At a line's or a sentence's start; "in 2nd. stitch" is a place."""
STOPPED = re.compile(r"\d(?:st|n?d|rd|th)\.")
"""Without it no such label stands in a text: sooner found than that."""
_WORD = rf"(?:(?:twenty|thirty|forty|fifty)[ -])?(?:{'|'.join([*ORDINALS, *TENTHS])})"
_MARK = r"(?:[.:]?\s?(?:—|--?(?=\s|-|[a-z*(\d]))|[.:](?=\s))"
BEGUN = Sought(("first", "1st"), r"\b(?:first|1st)\b", re.IGNORECASE)
IN_WORDS = re.compile(
    rf"(?:^|[.;:!)}}—])\s*(?P<ord>{_WORD}|\d{{1,2}}(?:st|nd|d|rd|th))\b"
    rf"(?:,\s+(?:{_WORD}|\d{{1,2}}(?:nd|d|rd|th))){{0,6}}"
    rf"(?:\s*(?:and|to|&|through|thru)\s+(?P<last>{_WORD}|\d{{1,2}}(?:st|nd|d|rd|th))\b)?"
    rf"(?:(?P<row>\s+(?:row|round|rnd)s?\b)|\s+times?(?:\s+(?:a?round|about|over))?\b)?\s?"
    rf"(?P<mark>{_MARK})(?=\s*[A-Za-z\d*+(\[])"
    rf"(?!\s*(?:{_WORD}\b|\d+(?:st|nd|d|rd|th)\b))",
    re.MULTILINE | re.IGNORECASE,
)
"""An ordinal in words, or in figures, with or without its word for a row."""
FEWEST = 2
"""Of them counting on from each other, by which they are labels."""


def with_labels(text: str) -> str:
    """The text with a colon for the stop of such ordinals, where they count on, each from the one
    before; any other text as it is.
    """
    text = _in_figures(text)
    found = list(LABEL.finditer(text)) if STOPPED.search(text) else []
    if len(found) < FEWEST:
        return text
    out = list(text)
    for run in _runs(found):
        if len(run) < FEWEST or (int(run[0]["n"]) > 2 and len(run) == FEWEST):
            continue
        for one in run:
            start, end = one.span("stop")
            # The colon stands last, so that nothing of the mark is told with the row.
            out[start:end] = ":".rjust(end - start)
    return "".join(out)


def _runs(found: list[re.Match[str]]) -> list[list[re.Match[str]]]:
    """The ordinals in stretches that count on."""
    runs: list[list[re.Match[str]]] = []
    for one in found:
        if runs and int(one["n"]) == _last(runs[-1][-1]) + 1:
            runs[-1].append(one)
        else:
            runs.append([one])
    return runs


def _last(found: re.Match[str]) -> int:
    """The last row that a label names: 13 of "11th, 12th and 13th"."""
    return max(int(n) for n in [found["n"], *re.findall(r"\d+", found["more"])])


def _in_figures(text: str) -> str:
    """The text with the ordinals in words that lack their word for a row in figures and with a
    colon, where they count on from the first row, each by one or by two.
    """
    if not (BEGUN.search(text) or SECOND_LINE.search(text)):
        return text
    out = list(text)
    worked = 0
    for one in IN_WORDS.finditer(text):
        first, last = _number(one["ord"]), _number(one["last"] or one["ord"])
        second = first == 2 and SECOND_LINE.shape.match(text, one.start("ord")) is not None
        if first != 1 and not (worked and worked < first <= worked + 2) and not second:
            worked = 0
            continue
        begins, worked = first == 1 and not one["row"], max(first, last)
        if not one["row"] and not (begins and not _goes_on(text, one.end())):
            start, end = one.start("ord"), one.end("mark")
            said = one["ord"] if one["ord"][0].isdigit() else f"{first}{_ending(first)}"
            if one["last"]:
                said += f"{' to' if last > first + 1 else ','} {last}{_ending(last)}"
            if len(said) < end - start:
                out[start:end] = said.ljust(end - start - 1) + ":"
    return "".join(out)


def _goes_on(text: str, at: int) -> bool:
    """Whether the second row follows before long."""
    return SECOND.search(text, at, at + 600) is not None


SECOND = re.compile(r"(?:second|2n?d)\b\s*(?:(?:row|round|rnd)\b\s*)?(?:[.:]|--?|—)", re.IGNORECASE)


SECOND_LINE = Sought(
    ("second",),
    rf"(?<![^\n])second\b(?:\s+times?)?[^\n]{{3,300}}\n[ \t]*\n?(?=third\b[^\n.;]{{0,40}}{_MARK})",
    re.IGNORECASE,
)
"""Lines that count on from the second, the first having been told in running words."""


def _number(ordinal: str) -> int:
    figures = re.match(r"\d+", ordinal)
    return int(figures.group()) if figures else ordinal_number(ordinal) or 0


def _ending(number: int) -> str:
    if number % 100 in (11, 12, 13):
        return "th"
    return {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
