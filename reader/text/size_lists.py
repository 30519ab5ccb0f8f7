"""Lists of sizes in unusual brackets, put into usual ones, length kept: "60 <64, 68>" reads as
"60 (64, 68)", "60 (64: 68) [72 (76: 80)]" as "60 (64: 68) [72 ,76: 80 ]", "60 (64, 68); 72, 76, 80
sts" as "60 (64, 68, 72, 76, 80) sts", "sixty (sixty-four) stitches" as "60 (64) stitches".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_LIST = r"\s*\d+(?:\s*[,;:/]\s*(?:\d+|-))*\s*"
ANGLED = Sought(("<", "{"), rf"(?<=\d)(?P<gap>\s?)[<{{](?P<list>{_LIST})[>}}](?!\s*\()")
INNER = Sought(
    ("[",), rf"(?<=[\)\]])(?P<gap>\s*)\[(?P<first>\s*\d+\s*)\((?P<list>{_LIST})\)\s*\]"
)


SEMICOLONS = Sought((";",), r"\d+(?:;\s?\d+)+(?=\s*(?:sts?|stitches|rows|rounds|times)\b)")


BRACES = re.compile(r"\{(?=\s*\d)(?P<body>[^{}\n]{1,60})\}")
"""A total between braces: "{10 (11, 12) dc}"."""
MISSING = re.compile(
    r"[-—](?:(?<=[.;,\[(→=>:]\s[-—])|(?<=[\[(][-—]))(?=\s*\((?:\s*(?:-|—|\d+)\s*,)*\s*(?:-|—|\d+)\s*\)"
    r"(?:\s*(?:sts?|stitches|sc|dc|hdc|tr)\b|\.?[ \t]*$))",
    re.MULTILINE,
)
"""A dash for the first size in a list of totals: it does not work this row."""
DASH_LAST = re.compile(r"[-—]\s*[,)]")
DASHED = re.compile(r"(?<=[(,])\s*(?P<dash>[-—])\s*(?=[,)])")


_IN_WORDS = rf"(?:{SPELLED})"
SPELLED_LIST = re.compile(
    rf"\b{_IN_WORDS}\s*[(\[]\s*{_IN_WORDS}(?:\s*(?:,|;|:|,?\s*and\b)\s*{_IN_WORDS})*\s*[)\]]",
    re.IGNORECASE,
)
"""Numbers in words, those of the further sizes in a bracket."""
WORDS_FIRST = re.compile(rf"[(\[]\s*{_IN_WORDS}", re.IGNORECASE)
IN_WORDS = re.compile(rf"\b{_IN_WORDS}\b", re.IGNORECASE)
PIPES = Sought(
    ("|",),
    r"(?<=\d)(?P<gap> ?)\|(?= ?\d+(?: ?\|| ?(?:sts?|stitches|rows|rounds|times)\b))",
)
"""Sizes parted by upright strokes: "60 | 64 | 68 sts"."""
ALL_PIPES = Sought(
    ("|",), r"(?<![\d|])(?<!\|[ ])\d{1,4}(?:[ ]?\|[ ]?\d{1,4}){2,}(?![ ]?\||\d|[ ]\d)"
)
"""Three sizes or more parted so, whatever stands behind them."""
_SIZE = r"\d+(?: ?[½¼¾⅓⅔⅛⅜⅝⅞])?"
_BRACKETED = rf"[(\[]\s*{_SIZE}(?:\s*[,:/-]\s*{_SIZE})*\s*[)\]]"
LIST_THEN_LIST = re.compile(r"[)\]]\s*[;/]\s*\d")
GROUPS = re.compile(
    rf"(?P<first>(?<![\d/]){_SIZE}\s?{_BRACKETED})(?P<between>\s*[;/]\s*)"
    rf"(?P<second>{_SIZE}\s?{_BRACKETED}|{_SIZE}(?:,\s*{_SIZE})+(?!\d))"
)
"""The sizes of two groups of people, one list behind the other: "60 (64, 68); 72 (76, 80)"."""


_LETTER = r"(?:\d?X{0,3}[SL]|M|\d?X+L)"
LETTER_BESIDE = re.compile(r"[SMLf](?:(?<=[SML])(?:\s?\)|[:=])|(?<=f)or [\dXSML])")
"""Without a letter so no list of them stands in a text; sooner found than all of LETTERED."""
LETTERED = re.compile(
    rf"(?<![\d.])(?:\d+ ?\(\s?{_LETTER}\s?\)|\d+ for {_LETTER}|{_LETTER}[:=] ?\d+)"
    rf"(?:(?:\s*[,;/]\s*|\s+)(?:and |or )?"
    rf"(?:\d+ ?\(\s?{_LETTER}\s?\)|\d+ for {_LETTER}|{_LETTER}[:=] ?\d+))+(?![\w])"
)
"""A number for each size with the size's letter: "61 (S), 67 (M)", "61 for S, 67 for M",
"S: 61, M: 67".
"""


def letters_told(text: str) -> tuple[str, ...]:
    """The letters of the sizes in the first list that names them beside its numbers; () where none
    does.
    """
    found = LETTERED.search(text) if LETTER_BESIDE.search(text) else None
    return tuple(re.findall(_LETTER, re.sub(r"for", "", found.group()))) if found else ()


def _unlettered(found: re.Match[str]) -> str:
    first, *more = re.findall(r"\d+(?!\d*X)", found.group())
    return f"{first} ({','.join(more)})".ljust(len(found.group()))


def _one_list(found: re.Match[str]) -> str:
    """Both lists as one; as they are where they are not of equal length, or one is no list."""
    first, second = (re.findall(_SIZE, found[which]) for which in ("first", "second"))
    if len(first) != len(second):
        return found.group()
    opening = found["first"].rstrip("])").replace("\n", " ")
    made = f"{opening}, {', '.join(second)})"
    short = made if len(made) <= len(found.group()) else made.replace(", ", ",")
    if len(short) > len(found.group()):
        return found.group()
    # Lines stay as long as they were, near enough: they tell where a copy was wrapped.
    for at in [n for n, mark in enumerate(found.group()) if mark == "\n"]:
        gap = short.find(" ", min(at, short.rfind(" ")))
        short = f"{short[:gap]}\n{short[gap + 1 :]}" if gap > 0 else short
    return short.ljust(len(found.group()))


def _in_figures(found: re.Match[str]) -> str:
    """The list in figures."""
    return IN_WORDS.sub(
        lambda one: str(word_number(one.group()) or 0).ljust(len(one.group())), found.group()
    )


def with_usual_brackets(text: str) -> str:
    """The text with such lists put right; any text goes in, its length stays."""
    # Each shape that is dear to look for has a cheap sign, without which it does not stand.
    if LETTER_BESIDE.search(text):
        text = LETTERED.sub(_unlettered, text)
    if WORDS_FIRST.search(text):
        text = SPELLED_LIST.sub(_in_figures, text)
    text = ALL_PIPES.sub(lambda m: m.group().replace("|", "/"), text)
    text = PIPES.sub(lambda m: f"{m['gap']}/", text)
    text = BRACES.sub(lambda m: f"[{m['body']}]", text)
    text = MISSING.sub("0", text)
    if DASH_LAST.search(text):
        text = DASHED.sub(lambda m: m.group().replace(m["dash"], "0"), text)
    text = SEMICOLONS.sub(lambda m: m.group().replace(";", ","), text)
    text = ANGLED.sub(lambda m: f"{m['gap']}({m['list']})", text)
    text = INNER.sub(_flat, text)
    return GROUPS.sub(_one_list, text) if LIST_THEN_LIST.search(text) else text


def _flat(found: re.Match[str]) -> str:
    flat = f"{found['gap']}[{found['first']},{found['list']}"
    return flat + " " * (len(found.group()) - len(flat) - 1) + "]"


DASHES = re.compile(
    r"(?<![\d/.,])(?<!rows )(?<!rnds )(?<!rounds )(?P<first>\d+\s?[(\[]\s*)"
    r"(?P<list>\d+(?:\s?[–—-]\s?\d+)+)(?=\s*[)\]])", re.IGNORECASE
)
"""Dashes between the further sizes: "6 (7-8)"; of three sizes no range."""


def _with_commas(found: re.Match[str], sizes: int) -> str:
    told = re.sub(r"[–—-]", ",", found["list"])
    return found["first"] + told if told.count(",") == sizes - 2 else found.group()


PARTED = re.compile(
    r"(?<![\d/.,:(–—-])(?<!\d[ ])(?P<before> ?)"
    r"(?P<list>\d{1,4}(?P<mark> ?(?:[/:–—<>~-]|\.{3}) ?)\d{1,4}(?:(?P=mark)\d{1,4})*)"
    r"(?![\d/]|[ ]?[–—-] ?\d)(?P<after>(?:,? )?)"
)
"""Numbers of sizes with the same mark between all of them: "43-49-55 sts", "10 / 12 / 14, k"."""
BY_COMMAS = re.compile(
    r"(?<![\d/.,:(\[–—-])(?<!\d[ ])(?P<before> ?)(?P<list>\d{1,4}(?P<mark>,[ ]?)\d{1,4}"
    r"(?:(?P=mark)\d{1,4})+)(?![,\d/]|[ ]\d)(?P<after>)"
    r"(?= ?(?:sts?|stitches|rows|rounds|rnds|times)\b|[.;)]|\s*$)",
    re.MULTILINE,
)
"""The same with commas, where what they count or a stop stands behind."""
COMMAS_ALL = re.compile(
    r"(?<![\d/.,:(\[–—-])(?<!\d[ ])(?<!rows )(?<!rnds )(?<!rounds )(?P<before> ?)"
    r"(?P<list>\d{1,4}(?P<mark>,[ ]?)\d{1,4}(?:(?P=mark)\d{1,4})+)(?![,\d/]|[ ]\d)"
    r"(?P<after>(?:,? )?)",
    re.IGNORECASE,
)
"""The same anywhere, in a text that casts on so."""
CAST_ON_COMMAS = re.compile(
    r"\b(?:cast\W+on|co)\s+(?P<list>\d{2,4}(?:,\s?\d{2,4}){2,9})(?![,\d]|\s?[(\[])", re.IGNORECASE
)
TWO_ENDED = re.compile(r"\s?(?:[.;)]|cm\b|ins?\b|$)", re.MULTILINE)
COUNTED = re.compile(r" ?(?:sts?|stitches|rows|rounds|rnds|times)\b")


EACH_IN_ITS_OWN = re.compile(
    r"(?<![\d/.(\[])(?P<first>\d{1,4} ?)(?P<list>(?:[(\[] ?\d{1,4}(?: ?/ ?\d{1,4})* ?[)\]] ?)+)"
    r"(?<=[)\]] |.[)\]])(?![ ]?[(\[]\d)"
)
"""A bracket for each further size, or strokes within it: "20 (24) (30)", "20 (24/30)"."""
ALL_WITHIN = re.compile(
    r"(?:(?<=[a-z] )|(?<=\b[kp]))[(\[](?P<list> ?\d{1,4}(?: ?[,/;:] ?\d{1,4})+ ?)[)\]]"
    r"(?=,? (?:sts?|stitches|ch|chs|chains|more|rows|rounds|rnds|times|[shd]{1,2}c|tr|next)\b"
    r"|, |\.(?:\s|$))",
    re.IGNORECASE,
)
"""All sizes in the bracket, behind a verb: "cast on (72, 80, 88) sts"."""
MADE = re.compile(
    r"\b(?:on|ch|chain|next|k|p|knit|purl|work|first|last|make|co|bo|off|over)$", re.IGNORECASE
)


def _as_one(found: re.Match[str], sizes: int) -> str:
    more = re.findall(r"\d+", found["list"])
    apart = found["list"].count("(") + found["list"].count("[") > 1 or "/" in found["list"]
    if len(more) != sizes - 1 or not apart:
        return found.group()
    return f"{found['first']}({','.join(more)})".ljust(len(found.group()))


def lists_within(text: str, sizes: int) -> int:
    """How many brackets hold a number for every size."""
    return sum(_first_before(one, sizes) != one.group() for one in ALL_WITHIN.finditer(text))


def _first_before(found: re.Match[str], sizes: int) -> str:
    numbers = re.findall(r"\d+", found["list"])
    before = found.string[max(0, found.start() - 12) : found.start()].rstrip()
    if len(numbers) != sizes or not MADE.search(before):
        return found.group()
    return f"{numbers[0]} ({','.join(numbers[1:])})".ljust(len(found.group()))


def in_brackets(text: str, sizes: int) -> str:
    """The text with such a list of one number for each size as "43(49,55)sts", length kept; of two
    sizes only before what is counted, since a dash may make a range.
    """
    if sizes < 2:
        return text
    text = DASHES.sub(lambda found: _with_commas(found, sizes), text)
    text = EACH_IN_ITS_OWN.sub(lambda found: _as_one(found, sizes), text)
    text = ALL_WITHIN.sub(lambda found: _first_before(found, sizes), text)
    begun = CAST_ON_COMMAS.search(text)
    if begun is not None and begun["list"].count(",") == sizes - 1 > 1:
        text = COMMAS_ALL.sub(lambda found: _bracketed(found, sizes, True), text)
    if sizes == 2 and told_in_pairs(text):
        text = PAIRS.sub(_of_two, text)
    text = BY_COMMAS.sub(lambda found: _bracketed(found, sizes), text)
    return PARTED.sub(lambda found: _bracketed(found, sizes), text)


PAIRS = Sought(
    ("/",),
    r"(?<![\d/.,-])(?<!\d[ ])(?P<a>\d{1,3})[ ]?/[ ]?(?P<b>\d{1,3})"
    r"(?![\d/]|[ ]?(?:mm|inch|\")|[ ]?rib)(?P<gap>[ ]?)",
)
LEAST_PAIRS = 4
"""Pairs with a stroke, the second not smaller, that are too large for fractions."""


def told_in_pairs(text: str) -> bool:
    """Whether the numbers of two sizes stand with a stroke between them."""
    pairs = [(int(one["a"]), int(one["b"])) for one in PAIRS.finditer(text)]
    pairs = [(a, b) for a, b in pairs if 5 < a <= b <= 2 * a]
    return len(pairs) >= LEAST_PAIRS and any(a < b for a, b in pairs)


def _of_two(found: re.Match[str]) -> str:
    a, b = int(found["a"]), int(found["b"])
    said = f"{a}({b})"
    return said.ljust(len(found.group())) if 0 < a <= b and (
        len(said) <= len(found.group())
    ) else found.group()


def _bracketed(found: re.Match[str], sizes: int, alike: bool = False) -> str:
    numbers = found["list"].split(found["mark"])
    counted = COUNTED.match(found.string, found.end())
    values = [int(one) for one in numbers]
    ended = "/" in found["mark"] and 5 < values[0] < values[-1] <= 2 * values[0]
    ends = ended and TWO_ENDED.match(found.string, found.end()) is not None
    if len(numbers) != sizes or (sizes == 2 and not counted and not ends):
        return found.group()
    rising = sorted(values)
    if "," in found["mark"] and not alike and values not in (rising, rising[::-1]):
        return found.group()
    told = f"{numbers[0]}({','.join(numbers[1:])})"
    # The bracket takes one place more: that of a space behind the list, or before it.
    for before, after in (
        (found["before"], found["after"]),
        (found["before"], found["after"].rstrip()),
        ("", found["after"].rstrip()),
    ):
        if len(before + told + after) <= len(found.group()):
            return (before + told).ljust(len(found.group()) - len(after)) + after
    return found.group()
