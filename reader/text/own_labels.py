"""Rows called by a word of the author's own, as long as their numbers count on from 1: "omg 1: 6
sc", "2nd ring: two in each", "[3] (sc, inc) around", "Round 4 of 7. ..." -> "Rnd 1: 6 sc", "2nd rnd
: two in each", "3:  (sc, inc) around", "Round 4     . ..."; length kept.
"""

from __future__ import annotations

import re
from collections import defaultdict
from functools import partial
from itertools import pairwise

from reader.text.sought import Sought

LEAST = 3
"""Labels with one word, counting on, that make it the word for a row."""
_KNOWN = re.compile(
    r"(?:rounds?|rnds?|rds?|rows?|rdns?|r|step|steps|size|sizes|note|notes|photo|picture|fig|figure"
    r"|page|part|piece|square|motif|no|nr|chapter|page|day|week|chart|sc|hdc|dc|htr|tr|ch|inc|dec"
    r"|st|sts|k|p|needle|needles|hook|item|level|version|section|panel|block|strip)\.?",
    re.IGNORECASE,
)
"""Words that are read already, or number other things than rows."""
_NUMBERS = r"\d{1,3}(?: ?(?:,|&|-|—|to|and|through|\+) ?\d{1,3})*"
WORD_FIRST = re.compile(
    rf"^(?P<lead>[ \t]*)(?P<word>[A-Za-z]{{2,8}})(?P<dot>\.?) (?P<nums>{_NUMBERS})"
    r"(?=[ \t]*[:.)=—-])",
    re.MULTILINE,
)
ORDINAL_FIRST = re.compile(
    r"^(?P<lead>[ \t]*)(?P<nums>\d{1,3})(?P<th>st|nd|rd|th|d)\.? (?P<word>[A-Za-z]{1,8})"
    r"(?P<dot>(?:\.(?=\S| ?-)|(?=[ \t]*[:.—-])))",
    re.MULTILINE,
)
BRACKETED = re.compile(
    r"^(?P<lead>[ \t]*)(?P<all>\[\d{1,3}\](?: \[\d{1,3}\])*)(?=[ \t]+[A-Za-z(*\d])", re.MULTILINE
)
OF_ALL = Sought(
    (" of ",),
    r"^(?P<label>[ \t]*(?:rounds?|rnds?|rows?|line|step) \d{1,3})(?P<of> of \d{1,3})"
    r"(?=[ \t]*[:.)=—-])",
    re.IGNORECASE | re.MULTILINE,
)
"""Which of how many: "Round 1 of 7."."""


LETTER = re.compile(
    r"(?:^|(?<=[.:] ))(?P<lead>[ \t]*)(?P<word>[A-JLOQ-Z])(?P<nums>\d{1,3})"
    r"(?P<more> ?(?:-|to|—) ?[A-Z]?\d{1,3})?(?=[ \t]*[:.)&])",
    re.MULTILINE,
)
"""A letter and a number, "F3:", "G2-G70."; K and P work stitches, C and M may, N is a needle."""
LETTERS_NUMBER = re.compile(r"[A-JLOQ-Z](?<!\S.)\d")
"""What each of them holds: far sooner looked for."""
APART = re.compile(
    r"^(?P<lead>[ \t]*)(?P<label>(?:(?:rounds?|rnds?|rds?|rows?|r)\.? ?)?(?P<nums>\d{1,3})"
    r"(?: ?(?:-|—|,|&|to) ?(?:r\.? ?)?\d{1,3})*)[ \t](?P<rest>[ \t]+)(?=[A-Za-z(*\[\d])",
    re.MULTILINE | re.IGNORECASE,
)
"""A label that only blanks part from its row."""
NAMED_APART = re.compile(
    r"^(?P<label>[ \t]*(?:last|next|final|foundation|set-?up|edge|border) (?:row|rnd|round))[ \t]"
    r"(?P<rest>[ \t]+)(?=\S)", re.MULTILINE | re.IGNORECASE,
)
APART_LEAST = 4
AND_SIGN = re.compile(
    r"^(?P<label>[ \t]*(?:(?:rounds?|rnds?|rds?|rows?|r) ?\d{1,3}&)+)(?=[ \t])",
    re.MULTILINE | re.IGNORECASE,
)
"""Labels that end with "&": "r8&r9& sc"."""


def _by_letters(text: str) -> str:
    """The text with rows called by a letter of their part, "F3: as F2", called R in each part."""
    if LETTERS_NUMBER.search(text) is None:
        return text
    surely = [letter for letter in _counting_on(LETTER, text) if letter not in "cm"]
    begun = {one["word"] for one in LETTER.finditer(text) if one["nums"] == "1"}
    for own in sorted(begun) if surely else ():
        text = re.sub(rf"(?<![A-Za-z\d]){own}(?=\d{{1,3}}\b)", "R", text)
    return text


def _apart(text: str) -> str:
    """The text with a colon behind labels that only blanks part from their rows."""
    numbers = [int(one["nums"]) for one in APART.finditer(text)]
    if len(numbers) < APART_LEAST or not _counts(numbers):
        return text
    text = NAMED_APART.sub(lambda m: f"{m['label']}:{m['rest']}", text)
    return APART.sub(lambda m: f"{m['lead']}{m['label']}:{m['rest']}", text)


def with_known_words(text: str) -> str:
    """The text with such labels as usual ones; any other text as it is."""
    if len(AND_SIGN.findall(text)) >= LEAST:
        text = AND_SIGN.sub(lambda m: m["label"][:-1] + ":", text)
    text = _apart(_by_letters(text))
    text = OF_ALL.sub(lambda m: m["label"] + " " * len(m["of"]), text)
    for word in _counting_on(WORD_FIRST, text):
        text = WORD_FIRST.sub(partial(_as_round, word), text)
    for word in _counting_on(ORDINAL_FIRST, text):
        text = ORDINAL_FIRST.sub(partial(_as_ordinal, word), text)
    numbers = [_first(one["all"]) for one in BRACKETED.finditer(text)]
    if len(numbers) >= LEAST and _counts(numbers):
        text = BRACKETED.sub(_as_number, text)
    return text


def _counting_on(shape: re.Pattern[str], text: str) -> list[str]:
    """The words that such labels have in common."""
    found: dict[str, list[int]] = defaultdict(list)
    for one in shape.finditer(text):
        if not _KNOWN.fullmatch(one["word"]):
            found[one["word"].lower()].append(_first(one["nums"]))
    return [word for word, numbers in found.items() if len(numbers) >= LEAST and _counts(numbers)]


def _first(numbers: str) -> int:
    first = re.search(r"\d+", numbers)
    return int(first.group()) if first else 0


def _counts(numbers: list[int]) -> bool:
    """Whether they begin with 1 (or a row later) and each is more than the last, or begins anew."""
    begins = numbers[0] <= 2
    return begins and all(later > one or later == 1 for one, later in pairwise(numbers))


def _as_round(word: str, found: re.Match[str]) -> str:
    if found["word"].lower() != word:
        return found.group()
    said = "Rnd" if len(word) > 2 else "R"
    gap = " " * (len(word) - len(said) + len(found["dot"]) + 1)
    return f"{found['lead']}{said}{gap}{found['nums']}"


def _as_ordinal(word: str, found: re.Match[str]) -> str:
    if found["word"].lower() != word:
        return found.group()
    whole = found.group()
    said = f"{found['lead']}{found['nums']}{found['th']}"
    if len(word) > 2:
        return f"{said} rnd".ljust(len(whole) - len(found["dot"])) + found["dot"]
    return said.ljust(len(whole) - 1) + ":" if found["dot"] else said.ljust(len(whole))


def _as_number(found: re.Match[str]) -> str:
    numbers = re.findall(r"\d+", found["all"])
    said = numbers[0] if len(numbers) == 1 else f"{numbers[0]}-{numbers[-1]}"
    return found["lead"] + f"{said}:".ljust(len(found["all"]))
