"""Rows labelled in one manner throughout, whatever it is, "[Rows 5-8] k", "For round 5, k", "5th
r.: k", "(5) K", "The fifth row: k", "### Row 5" over "k" -> "Rows 5-8: k", "Rnd 5:       k";
length kept.
"""

from __future__ import annotations

import re
from collections import defaultdict
from itertools import pairwise

from reader.terms.numbers import ORDINALS, TENTHS, ordinal_number, word_number

LEAST = 3
"""Labels that make a manner wherever they stand; of two, one may go on with a line's sentence."""
ENDED = re.compile(r"(?:^|[.:!?)\]*])\s*\Z")
_CARDINAL = (
    r"(?:(?:twenty|thirty|forty|fifty)[ -])?(?:one|two|three|four|five|six|seven|eight|nine)\b"
    r"|ten\b|eleven\b|twelve\b|(?:thir|four|fif|six|seven|eigh|nine)teen\b|twenty\b|thirty\b"
    r"|forty\b|fifty\b"
)
_ORDINAL = (
    rf"(?:\d{{1,3}}(?:st|nd|rd|th|d)\b"
    rf"|(?:(?:twenty|thirty|forty|fifty)[ -])?(?:{'|'.join([*ORDINALS, *TENTHS])})\b)"
)
_ROWS = r"(?:rounds?|rnds?|rds?|rows?|rws?)\b"
_LEAD = (
    r"(?P<lead>(?:#{1,6}[ ]+|==+[ ]*|[^\w\s()\[\]*\"'#=|_+>/\\.,]{1,2}[ ]+)?"
    rf"(?:(?-i:\([A-Z]\)|[A-Z][ ]-|o)[ ](?={_ROWS}))?"
    r"(?:(?:now|then|so|and|next(?: is| are)?)[ ,]+)?(?:(?:for|in|on|from|to work|work|the)[ ]+"
    r"(?:the[ ]+|rows?(?=[ ]from)|rounds?(?=[ ]from))?)?)(?P<open>\*{1,3}(?=[ro\d])|__|[\[(])?"
)
_TO = (
    r"\)?(?:[ ]?(?:[-—](?<!\s.)|[-—][ ]?(?=\d{1,3}[ ]?[:.)\]])|to|through|thru|and|&)"
    r"|,(?: and)?(?=[ ]?\d+[a-z]{0,2}(?:[ ]?(?:[,:.&—-]|and)|[ ]{2})))[ ]?\(?"
)
_SIDE = (
    r"(?P<side>[ ]?[(\[](?!(?:sc|dc|hdc|tr|htr|ch|inc|dec|k|p|yo|sl|sk|kfb|m)\b)"
    r"[^()\[\]\n\d,]{1,24}[)\]])?"
)
"""In brackets the side, or what the row is for."""
_BEHIND = (
    r"(?P<close>[\])])?(?P<all>(?:/|[ ]of[ ])\d{1,3})?"
    rf"{_SIDE}(?:[ ](?:is|are)?[ ]?(?:worked[ ])?(?:as follows|thus|goes?)(?=[ ]?[:,])"
    r"|[ ](?:is|are)(?=[ ](?:[\d(*\[]|(?:[kp]\d*|knit|purl|sc|dc|hdc|tr|ch|inc|plain)\b)))?"
    r"(?P<mark>(?:[ ]?(?:[:.,;=|>~)\]—/]|-+|==+)|(?(open)(?:\*+|__)|(?!)))*)"
    r"(?:(?P<gap>[ \t]+(?=[A-Za-z(*\[\d])|(?<=[^\w\s])(?=[A-Za-z*]))"
    r"(?!(?:and|to|or|times|of|is|are|only)\b|\([ ]?\d|(?:\w+[ ]){1,2}times\b)"
    r"|(?P<own>[ \t]*\n[ \t]*\n?[ \t]*(?:[-•][ ])?)(?=[A-Za-z(*\[\d]))"
)
SHAPES = tuple(
    re.compile(rf"^(?P<at>[ \t]*){_LEAD}{label}{_BEHIND}", re.IGNORECASE | re.MULTILINE)
    for label in (
        rf"(?P<word>{_ROWS}|r(?=[\d.# -]))\.?[ ]?"
        r"(?P<sign>nos?\.?[ ]?|#[ ]?|-|\((?=\d[^()\n]{0,12}\)))?"
        rf"(?P<first>\d{{1,3}}|{_CARDINAL})"
        rf"(?P<more>(?:{_TO}(?:(?:{_ROWS}|r)\.?[ ]?)?(?:\d{{1,3}}(?![\d/])|{_CARDINAL}))*)",
        rf"(?P<sign>)(?P<first>{_ORDINAL})(?P<more>(?:{_TO}{_ORDINAL})*)[ ](?P<word>{_ROWS}|r\b)"
        r"(?:\.(?=[ ]?[:—-]))?",
        r"(?P<sign>)(?P<word>)(?P<first>\d{1,3})(?P<more>(?:"
        rf"{_TO}\d{{1,3}}(?!\d))*)",
    )
)
USUAL = re.compile(
    rf"(?:{_ROWS}|r)\.? ?\d[\d,&and to-]*(?: ?\([^()]*\))?[:.)]"
    rf"|\d+[a-z]{{2}}[^()\[]* {_ROWS}(?: ?\([^()]*\))?:", re.IGNORECASE
)
"""Labels that are read anyhow."""
ROW = re.compile(rf"^[ \t]*{_ROWS}[ ]?\d", re.IGNORECASE | re.MULTILINE)
NUMBER = re.compile(rf"{_ORDINAL}|\d+|{_CARDINAL}", re.IGNORECASE)
Manner = tuple[str, ...]


def labelled_as_usual(text: str) -> str:
    """The text with such labels as usual ones; any other text as it is."""
    for shape in SHAPES:
        alike: dict[Manner, list[re.Match[str]]] = defaultdict(list)
        for one in shape.finditer(text):
            if not _as_is(one):
                alike[_manner(one)].append(one)
        for manner, labels in alike.items():
            if _count_on(labels, bool(manner[2])):
                mixed = not manner[2] and ROW.search(text) is not None
                out, at = [], 0
                for one in labels:
                    out += [text[at : one.start()], _usual(one, mixed)]
                    at = one.end()
                text = "".join(out) + text[at:]
    return text


def _as_is(label: re.Match[str]) -> bool:
    """Whether a label is read anyhow, or may be no label, as without a mark: "1st row 7 times"."""
    if label["own"] or label["lead"] or label["open"]:
        return False
    said = label.group().strip()
    bare = not label["mark"] and label["word"].lower() != "r"
    return bare or USUAL.fullmatch(said) is not None


def _manner(label: re.Match[str]) -> Manner:
    """What the labels of one manner have in common: of a number alone its marks as well."""
    word = label["word"].lower().rstrip("s")
    lead = label["lead"].lower().replace(" are", " is").replace("rows", "row")
    if "-" in lead or "(" in lead:
        lead = "colour"
    marks = "".join(label["mark"].split()) if not word else ""
    own = "own" if label["own"] else ""
    return lead, label["open"] or "", word, label["close"] or "", marks, own, label["all"] or ""


def _value(said: str) -> int:
    figures = re.match(r"\d+", said)
    return int(figures.group()) if figures else word_number(said) or ordinal_number(said) or 0


def _numbers(label: re.Match[str]) -> list[int]:
    """The first and the last row of a label, and those named between."""
    return [_value(one.group()) for one in NUMBER.finditer(f"{label['first']} {label['more']}")]


def _count_on(labels: list[re.Match[str]], told: bool) -> bool:
    """Whether half the labels at least number the row behind the one before; of numbers alone
    several must, none may go back but to the first rows, and brackets must stand around them.
    """
    if len(labels) < LEAST and not all(map(_begins, labels)):
        return False
    if not told and not (labels[0]["open"] and labels[0]["close"]):
        return False
    if not told and labels[0]["own"]:
        return False
    on = back = 0
    for one, after in pairwise(labels):
        begins = _numbers(after)[0]
        step = begins - _numbers(one)[-1]
        on += step == 1
        back += step < 1 and begins > 2
    if 2 * on < len(labels) - 1:
        return False
    return on > 0 if told else on >= LEAST - 1 and 4 * back <= on and _numbers(labels[0])[0] < LEAST


def _begins(label: re.Match[str]) -> bool:
    """Whether nothing goes on with it that a line before it began."""
    return ENDED.search(label.string[max(0, label.start() - 40) : label.start()]) is not None


def _usual(label: re.Match[str], mixed: bool) -> str:
    """The label as most write it, as long as it was; a number alone is a row's where other rows
    have their word.
    """
    whole, word = label.group(), label["word"].lower()
    numbers = [str(one) for one in _numbers(label)]
    to = "," if "," in label["more"] else "&" if re.search("and|&", label["more"]) else "-"
    said = to.join(numbers)
    names = ["Row "] if word.startswith(("row", "rw")) else ["Rnd "] if word[1:] else []
    sides = dict.fromkeys((label["side"] or "", ""))
    forms = [f"{name}{said}{side}:" for side in sides for name in [*names, "R"]]
    room = len(whole) - len(label["at"])
    if not (word or mixed):
        forms, room = [f"{said}{label['side'] or ''}."], room - 1
    best = next((one for one in forms if len(one) <= room), "")
    return (label["at"] + best).ljust(len(whole)) if best else whole
