"""Numbers of several sizes as some set them, put as most do, length kept: "(48) 52 (56) 60" and
"[48 52 56 60]" as "48 (52,56,60)", "48 . 52 . 56" as "48 / 52 / 56", "b 48, c 52, a 56" and "(a) 48
(b) 52" as "48 (52,56)". One such list may be anything: several of one length must stand there.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable

from reader.text.sought import Sought

LEAST = 3
"""Lists alike, for them to be those of sizes."""
BY_TURNS = re.compile(
    r"\((?<![\d)\]] \()(?<![\w)\]]\()\d{1,4}\)[ ]\d{1,4}(?:[ ]\(\d{1,4}\)[ ]\d{1,4})*"
    r"(?:[ ]\(\d{1,4}\))?(?![ ]?\(?\d)"
)
"""Every other number in a bracket, the first among them. The bracket is told first, and what stands
before it after: so the engine leaps from bracket to bracket."""
POINTS = Sought((" . ", " · "), r"(?<![\d.])\d{1,4}(?:[ ][.·][ ]\d{1,4}){2,}(?![\d])")
SPACED = re.compile(r"(?<!\d)[\[({]\d{1,4}(?:[ ]{1,2}\d{1,4}){2,}[\])}]")
WITHIN = re.compile(r"(?<!\d[ ])(?<!\d)[\[({]\d{1,4}(?:,[ ]?\d{1,4}){2,}[\])}]")
BEGUN_WITHIN = re.compile(r"\b(?:cast[ -]?on|co|ch|chain)\s+[\[({]\d", re.IGNORECASE)
USUAL = re.compile(r"\d,?[ ]?[\[(]\d{1,4}(?:\s?[,:;/-]\s?\d{1,4})+[\])]")
_CODE = (
    r"(?:\([A-Za-z]{1,3}\)"
    r"|(?<![\w(])(?!(?:[kp]|[shd]{1,2}c|h?tr|ch|sl|st)[ \d])[A-Za-z]{1,3}[:=)]?)"
)
CODED = re.compile(
    rf"(?<![\w-]){_CODE}[ ]?\d{{1,4}}"
    rf"(?:(?:,|;|[ ]?[/-]|,? and)?[ ]{_CODE}[ ]?\d{{1,4}})+(?![\d/])"
)
NEXT_CODE = re.compile(r"\d(?:[,;]|[ ]?[/-]|,? and)?[ ]\(?[A-Za-z]{1,3}[):=]{0,2}[ ]?\d")
"""What every such list holds: a number, and the next with its code."""
CODES = re.compile(r"(?P<code>[A-Za-z]{1,3})\)?[:=]?[ ]?(?P<n>\d{1,4})")
NO_CODES = frozenset(
    ["k", "p", "sl", "co", "bo", "yo", "ch", "sc", "dc", "tr", "hdc", "htr", "st", "sts", "row",
     "rnd", "r", "m", "x", "to", "at", "on", "in", "of", "and", "or", "by", "for", "no", "inc",
     "dec", "rep", "ssk", "skp", "kfb", "pfb", "n", "us", "uk", "mm", "cm", "ss", "fig", "pm",
     "sm", "the", "all"]
)  # fmt: skip
"""Short words before a number that name no size."""
SIZE_NAMES = frozenset(["xs", "s", "m", "l", "xl", "xxl", "sm", "med", "lg"])
"""Where all words of a list are such, its "M" makes no stitch."""


def sizes_as_usual(text: str) -> str:
    """The text so put; any text goes in."""
    text = _each(text, BY_TURNS, _usual)
    text = POINTS.sub(lambda found: found.group().replace(" . ", " / ").replace(" · ", " / "), text)
    if USUAL.search(text) is None:
        if BEGUN_WITHIN.search(text):
            text = _each(_each(text, SPACED, _usual), WITHIN, _usual)
        text = _strokes(text)
    return _coded(text)


_BEHIND = r"(?![\d/]|[.,;]\d|[ ]?(?:-|—)[ ]?\d)"
PARTED = (
    ("; ", "/ ", re.compile(r"\d(?<![\d.,;/(\[*-]\d)\d{0,3}(?:; \d{1,4}){2,}" + _BEHIND)),
    (".. ", " / ", re.compile(r"\d(?<![\d.,;/(\[*-]\d)\d{0,3}(?:\.\. \d{1,4}){2,}" + _BEHIND)),
    *((mark, "/", re.compile(
        rf"\d(?<![\d.,;/(\[*-]\d)\d{{0,3}}(?:{mark}\d{{1,4}}){{{least},}}" + _BEHIND
    )) for mark, least in ((" --- ", 2), (" -- ", 2), (" // ", 1))),
    (" or ", "/", re.compile(
        r"\d(?<![\d.,;/(\[*-]\d)(?<!\d, \d)\d{0,3}(?:, \d{1,4})*,? or \d{1,4}" + _BEHIND
    )),
    (". ", "/ ", re.compile(
        r"\d(?<![\d.,;/(\[*-]\d)(?<!\d\. \d)\d{0,3}(?:\. \d{1,4}){2,}" + _BEHIND
    )),
    (" & ", " / ", re.compile(r"\d(?<![\d.,;/(\[*-]\d)\d{0,3}(?: & \d{1,4})+" + _BEHIND)),
    (", ", "/ ", re.compile(
        r"\d(?<![\d.,;/(\[*-]\d)(?<!\d \d)(?<!\d, \d)(?<!ows \d)(?<!nds \d)(?<!izes \d)(?<!ow \d)"
        r"(?<!nd \d)\d{0,3}(?:, \d{1,4}){2,}" + _BEHIND
    )),
    (" ", "/", re.compile(
        r"\d(?<![\d.,;/(\[*-]\d)(?<!\d \d)\d{0,3}(?: \d{1,4}){2,}"
        r"(?=[.:;,)]| (?:sts?|stitches|rows|rounds|times|cm)\b|$)", re.MULTILINE,
    )),
)  # fmt: skip
"""What may stand between the numbers of sizes, and what is put for it. The first figure is told
first, and what stands before it after: so the engine leaps from number to number."""
LEAST_PARTED = 4
MOST_ALTERNATIVES = 6
"""As many "2 or 3" may stand in a text of one size."""


def _strokes(text: str) -> str:
    """The text with strokes between the numbers of sizes that anything else parts."""
    for mark, put, shape in PARTED:
        if text.count(mark) < (LEAST_PARTED if mark[0] == " " else 2 * LEAST_PARTED):
            continue
        lists = [[int(n) for n in _numbers(found.group())] for found in shape.finditer(text)]
        lengths = Counter(len(one) for one in lists)
        most, often = lengths.most_common(1)[0] if lengths else (0, 0)
        rising = sum(one == sorted(one) for one in lists if len(one) == most)
        if often < (MOST_ALTERNATIVES if mark == " or " else LEAST_PARTED):
            continue
        if 3 * rising < 2 * often:
            continue
        out = list(text)
        for found in shape.finditer(text):
            if len(_numbers(found.group())) == most:
                out[found.start() : found.end()] = _parted(found.group(), mark, put)
        return "".join(out)
    return text


def _parted(words: str, mark: str, put: str) -> str:
    """The numbers with another mark between them, which takes no more room."""
    if put != "/":
        return words.replace(mark, put)
    numbers = _numbers(words)
    wide = " / ".join(numbers)
    return (wide if len(wide) <= len(words) else "/".join(numbers)).ljust(len(words))


def _numbers(words: str) -> list[str]:
    return re.findall(r"\d+", words)


def _each(text: str, shape: re.Pattern[str], put: Callable[[re.Match[str]], str]) -> str:
    """The text with all lists of the commonest length put so, where there are enough of them."""
    lengths = Counter(
        len(numbers) for found in shape.finditer(text)
        if len(numbers := _numbers(found.group())) > 2
    )
    if not lengths:
        return text
    most, often = lengths.most_common(1)[0]
    if often < LEAST:
        return text
    return shape.sub(
        lambda found: put(found) if len(_numbers(found.group())) == most else found.group(), text
    )


def _usual(found: re.Match[str]) -> str:
    first, *more = _numbers(found.group())
    return f"{first} ({','.join(more)})".ljust(len(found.group()))


def _coded(text: str) -> str:
    """The text with the sizes named by a letter or two before each number."""
    if NEXT_CODE.search(text) is None:
        return text
    lists = Counter(
        codes for found in CODED.finditer(text) if (codes := _codes_of(found)) is not None
    )
    if not lists or lists.most_common(1)[0][1] < LEAST:
        return text
    most = lists.most_common(1)[0][0]
    text = CODED.sub(
        lambda found: _uncoded(found) if _codes_of(found) == most else found.group(), text
    )
    # "a) 3 months - b) 6 months": the names of the sizes, and no more than these.
    return re.sub(rf"(?<![\w(])(?:{'|'.join(most)})\)", "  ", text)


def _codes_of(found: re.Match[str]) -> tuple[str, ...] | None:
    codes = tuple(one["code"] for one in CODES.finditer(found.group()))
    low = [one.lower() for one in codes]
    named = SIZE_NAMES.issuperset(low) or not NO_CODES & set(low)
    apart = len(set(low)) == len(low) and named
    return codes if apart and len(codes) == len(_numbers(found.group())) else None


def _uncoded(found: re.Match[str]) -> str:
    first, *more = (one["n"] for one in CODES.finditer(found.group()))
    return f"{first} ({','.join(more)})".ljust(len(found.group()))
