"""What was spoken and written down without marks, "round two two single crochet in each stitch you
should have twelve": labels and the totals behind rows get their marks; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number

MARKS = ".,;:()[]*"
FEWEST_WORDS = 40
MOST_MARKS = 0.01
"""Marks for each word of a text that was spoken; written patterns have several in each row."""
FARTHEST = 3
"""Rows between two labels that follow one another, at most."""
LEAST = 5
"""Labels that such a text has."""
_NUMBER = rf"(?:{SPELLED}|\d+)"
LABEL = re.compile(
    rf"(?<![\w-])(?P<what>rounds?|rows?)[ ]+(?P<first>{_NUMBER})"
    rf"(?:[ ]+(?:to|through|and|until)[ ]+(?P<last>{_NUMBER}))?(?=\s)",
    re.IGNORECASE,
)
NO_LABEL = re.compile(
    r"\b(?:after|in|of|between|from|before|than|until|till|with|at|on|into|like|as|repeat|and|each"
    r"|every|this|that|to|all|the whole)\s+$",
    re.IGNORECASE,
)
"""Behind these a round is only spoken of."""
TENS = re.compile(r"^(?P<tens>(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety))[ -]")
TOTAL = re.compile(
    rf"(?<=[a-z])(?:(?<!round)(?<!rounds)(?<!row)|(?<=all round)) (?P<n>{_NUMBER})"
    r"(?: (?:stitches|trebles|doubles|singles|single crochets|double crochets|half trebles))?"
    r"(?: altogether| in all| total| now)?\s*$",
    re.IGNORECASE,
)
EACH_ROUND = re.compile(
    rf"(?<=[a-z]) (?P<n>{_NUMBER}) stitches (?:each|every|in each) (?:round|row)(?=\s|$)",
    re.IGNORECASE,
)


def hardly_marked(text: str) -> bool:
    """Whether a text was written down as it was spoken, with hardly a stop."""
    words = len(text.split())
    return words >= FEWEST_WORDS and sum(map(text.count, MARKS)) <= MOST_MARKS * words + 4


def punctuated(text: str) -> str:
    """The text with its rows marked, where it was spoken; any other text as it is."""
    if not hardly_marked(text):
        return text
    labels = _labels(text)
    if len(labels) < LEAST:
        return text
    made = list(text)
    for number, (start, end, said) in enumerate(labels):
        if start and made[start - 1] == " ":
            made[start - 1] = "."
        made[start:end] = said.ljust(end - start)
        made[end] = ":"
        stop = labels[number + 1][0] if number + 1 < len(labels) else len(text)
        _mark_totals(made, text, end + 1, stop)
    return "".join(made)


def _labels(text: str) -> list[tuple[int, int, str]]:
    """Where each label stands, and what it says in figures."""
    found: list[tuple[int, int, str]] = []
    before = 0
    for one in LABEL.finditer(text):
        if NO_LABEL.search(text[max(0, one.start() - 20) : one.start()]):
            continue
        first, end = _counting_on(one, "first", before)
        if first is None or (before and first != 1 and not before < first <= before + FARTHEST):
            continue
        said, before = f"{one['what']} {first}", first
        if one["last"] and end == one.end("first"):
            last, end = _counting_on(one, "last", 0)
            if last is not None and last > first:
                said, before = f"{said}-{last}", last
            else:
                end = one.end("first")
        found.append((one.start(), end, said))
    return found


def _counting_on(one: re.Match[str], which: str, before: int) -> tuple[int | None, int]:
    """A label's number and its end: of "twenty two" only the twenty, where that counts on."""
    said = one[which]
    tens = TENS.match(said.lower())
    short = word_number(tens["tens"]) if tens else None
    if short is not None and before and short == before + 1:
        return short, one.start(which) + len(tens["tens"] if tens else "")
    number = int(said) if said.isdigit() else word_number(said)
    return number, one.end(which)


def _mark_totals(made: list[str], text: str, start: int, stop: int) -> None:
    """Puts the total at the end of a line, or of the row, into a bracket."""
    at = start
    for line in text[start:stop].split("\n"):
        total = TOTAL.search(line) or EACH_ROUND.search(line)
        if total is not None:
            value = int(total["n"]) if total["n"].isdigit() else word_number(total["n"])
            bracket = f"({value})".ljust(total.end() - total.start())
            if value and value > 1 and len(bracket) == total.end() - total.start():
                made[at + total.start() : at + total.end()] = bracket
        at += len(line) + 1
