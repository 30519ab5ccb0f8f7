"""Old lace whose rows are called needles: "1st needle--" reads as "1st row   --"; a round told
with a line for each needle, "Rnd 1: / N1: K to end.", as one line. The length is kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

LABEL = re.compile(r"^[^\w\n]*(\d+)(?:st|nd|rd|th)\s+needle\b\s*(?:[.:—-])", re.MULTILINE)
NEEDLE = re.compile(
    r"(?<=\d(?:st|nd|rd|th)\s)needles?\b|(?<=\bfirst\s)needle\b|(?<=\blast\s)needle\b",
    re.IGNORECASE,
)
MOST_NEEDLES = 5
"""A set has no more; a higher number is that of a row."""


def needles_as_rows(text: str) -> str:
    """The text with "needle" put as "row" where its lines are labelled by more needles than a set
    has.
    """
    highest = max((int(found.group(1)[:4]) for found in LABEL.finditer(text)), default=0)
    if highest <= MOST_NEEDLES:
        return text
    return NEEDLE.sub(lambda m: "row".rjust(len(m.group())), text)


_NEEDLE = r"(?:needles?|ndls?|n)"
AS_ANOTHER = re.compile(
    rf"(?P<which>\b(?:{_NEEDLE} ?[1-5](?: ?(?:and|&|,) ?[1-5])*"
    rf"|(?:(?:1st|2nd|3rd|4th|first|second|third|fourth) {_NEEDLE})))[ ]"
    r"(?=(?:the )?(?:same )?(?:as|like)(?: (?:for|on|the))*"
    rf" (?:{_NEEDLE} ?[1-5]|(?:1st|2nd|3rd|first|second|third) (?:{_NEEDLE}|[;.,])))",
    re.IGNORECASE,
)
"""A needle told by another, with no mark between: "needle 3 as needle 1"."""
ONE_NEEDLE = re.compile(
    r"^[ \t]*(?:N|Ndl|Needle)s?\.? ?[1-5](?: ?(?:&|\+|and|,) ?[1-5])*[ ]?(?:[:.—]|-(?=\s))",
    re.MULTILINE | re.IGNORECASE,
)
OF_ROUND = re.compile(
    r"\b(?:rnd|round|row)s?\b[^\n:]{0,20}:[ \t]*$|^\W*R ?\d+[ ]?:[ \t]*$", re.IGNORECASE
)
TOTAL_ONLY = re.compile(r"[ \t]*[(\[<]?\d+ ?(?:sts?|stitches)\b[^\n]{0,20}$", re.IGNORECASE)


_HALF = r"(?:sole|instep|palm|back of (?:the )?hand|heel|front|back|top|bottom|underside)"
_OF_IT = r"(?: (?:needle|sts|stitches|side|half))?"
TWO_HALVES = Sought(
    (
        "sole", "instep", "palm", "hand", "heel", "front", "back", "top", "bottom", "underside",
    ),
    rf"(?P<label>\b(?:rnd|round|row)\b[^\n:]{{0,30}}:\s{{0,4}}(?:[A-Z][^\n.:]{{0,30}}[.:] )?)"
    rf"(?P<a>{_HALF}{_OF_IT}):(?=\s)(?P<first>[^\n:]{{6,140}}\n?[ ]{{0,4}})(?<=[.;,\n ])"
    rf"(?P<b>{_HALF}{_OF_IT}):(?=\s)",
    re.IGNORECASE,
)
""" "Rnd 1: Sole: ... Instep: ...": each half lies on a needle of its own."""


def _halves(found: re.Match[str]) -> str:
    if found["a"].lower() == found["b"].lower():
        return found.group()
    one, other = "N1".ljust(len(found["a"])), "N2".ljust(len(found["b"]))
    return f"{found['label']}{one}:{found['first']}{other}:"


AT_EACH = re.compile(
    r"\bat (?P<ends>each end|both ends|either end|(?:the )?(?:beginning|beg|start|end))\.? of"
    r" (?:each|every) (?:needle|ndl|pin)s?\b"
    r"(?=[^.;:]{0,60}\b(?:(?:every|each) (?:\w+ )?(?:row|round|rnd)|until|till|times)\b)"
    r"|(?<=each round )at (?P<ends2>(?:the )?(?:beginning|beg|start|end))\.? of"
    r" (?:each|every) (?:needle|ndl|pin)s?\b",
    re.IGNORECASE,
)
UNTIL_EACH = re.compile(
    rf"(?P<until>\b(?:until|till|til)\s(?:(?!\bthe\b)[^.;,:\d]){{0,40}}?)\b(?P<n>\d{{1,3}}|{SPELLED})"
    r"(?P<sts>\s+(?:sts?|stitches|loops))?(?P<left>(?:\s+(?:only|are|is|left|remain(?:ing|s)?|rem))*)"
    rf"\s+(?:up)?on\s+each(?:\s+one)?(?:\s+of\s+(?:the\s+)?(?P<m>[2345]|{SPELLED})?)?\s*"
    r"(?:needles?|pins?)\b",
    re.IGNORECASE,
)
"""A goal told for each needle."""


def at_each_needle(text: str, needles: int) -> str:
    """The text with the changes of rounds to come told by their places: "decrease 1 st at the
    beginning of each needle every round" is in 4 places, and the goal told of each needle put for
    all of them. needles: 0 where they are not told.
    """

    def all_of(found: re.Match[str]) -> str:
        so_many = _value(found["m"]) if found["m"] else needles
        if not 1 < so_many <= MOST_NEEDLES:
            return found.group()
        total = so_many * _value(found["n"])
        said = f"{found['until']}{total}{found['sts'] or ' sts'}{found['left'] or ' in all'}"
        return said.ljust(len(found.group()))

    def told(found: re.Match[str]) -> str:
        ends = (found["ends"] or found["ends2"]).lower()
        often = 2 if ends.split()[0] in ("each", "both", "either") else 1
        said = f"in {needles * often} places" if needles else found.group()
        return said.ljust(len(found.group()))

    text = UNTIL_EACH.sub(all_of, text) if "each" in text else text
    return AT_EACH.sub(told, text)


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0


def needles_in_rounds(text: str) -> str:
    """The text with the lines of a round's needles, and its total, behind the round's label."""
    text = TWO_HALVES.sub(_halves, text)
    if " as " in text or " like " in text:
        text = AS_ANOTHER.sub(lambda found: f"{found['which']}:", text)
    if not ONE_NEEDLE.search(text):
        return text
    lines = text.split("\n")
    made = [lines[0]]
    inside = False
    for before, line in pairwise(lines):
        needle = ONE_NEEDLE.match(line) is not None
        begins = needle and OF_ROUND.search(before) is not None
        goes_on = inside and (needle or TOTAL_ONLY.match(line) is not None)
        inside = begins or goes_on
        made += [" " if inside else "\n", line]
    return "".join(made)


SO_MANY_MARKERS = re.compile(
    r"\b(?:insert|plac\w+|put|add|hang|set)\s+(?P<n>[2-9]|two|four|six|eight)\s+"
    r"(?:\w+\s+)?markers\b",
    re.IGNORECASE,
)
AT_ALL = re.compile(
    r"(?P<at>\b(?:(?:each|either|both) sides? of|before and after)\s+)"
    r"(?P<all>(?:all(?: of)?(?: the)?|each(?: of the)?|every|the)\s+markers?)\b(?![^.;]{0,8}\d)",
    re.IGNORECASE,
)
FIGURE = {"two": 2, "four": 4, "six": 6, "eight": 8}


def at_so_many_markers(text: str) -> str:
    """The text with changes at all markers told by how many there are, where it was said once, "put
    in 4 markers"; any other text as it is.
    """
    told = {found["n"].lower() for found in SO_MANY_MARKERS.finditer(text)}
    if len(told) != 1:
        return text
    said = told.pop()
    number = FIGURE.get(said) or int(said)
    return AT_ALL.sub(
        lambda found: f"{found['at']}{f'{number} markers'.ljust(len(found['all']))}", text
    )
