"""Which sizes a text is written for: by their names, else by the lists that stand in it."""

from __future__ import annotations

import re

from reader.text.header_sizes import header_names
from reader.text.odd_size_lists import has_odd_lists
from reader.text.size_lists import lists_within
from reader.text.sought import Sought

MOST = 40
"""Sizes; longer lists of numbers are no sizes, and are not followed to their end."""
_ONE = r"(?:\d+|(?<![\d])[—-](?![\d]))"
_FIRST = r"\d(?<![x×*\d]\d)(?<![x×*] \d)\d*"
"""A number that no "x" stands before. The digit is told first, and what stands before it after: so
the engine leaps from digit to digit."""
SIZED = re.compile(
    rf"{_FIRST}\s*[\(\[]\s*"
    rf"({_ONE}(?:\s*(?:[,:;/—&-]|,?\s*and\b)\s*{_ONE})*)\s*[\)\]]",
    re.IGNORECASE,
)
"""A number with those of other sizes behind it; "x6 (12)" is a repeat with its total."""
_BRACKET = rf"[\(\[]\s*{_ONE}(?:\s*(?:[,:;/—&-]|,?\s*and\b)\s*{_ONE})*\s*[\)\]]"
SEVERAL = re.compile(rf"{_FIRST}\s*{_BRACKET}(?:\s*\d*\s*{_BRACKET})+")
"""Several brackets behind a number: "66 (72) (78)", "28 (32, 36) 32 (36, 40)"."""
CAST_ON_SEVERAL = re.compile(
    rf"\b(?:cast\W+on|co)\s+\d+\s*{_BRACKET}(?:\s*\d*\s*{_BRACKET})+", re.IGNORECASE
)
CAST_ON = re.compile(
    rf"\b(?:cast\W+on|co|ch|chain)\s+\d+\s*[\(\[]\s*"
    rf"({_ONE}(?:\s*[,:;/—-]\s*{_ONE})*)\s*[\)\]]\s*(?:sts?|stitches|ch)\b",
    re.IGNORECASE,
)
"""A cast-on of several sizes, "CO 92 (100) sts": a total behind it would need no bracket."""
CAST_ON_ALONE = re.compile(
    rf"\bcast\W+on\s+\d+\s*[\(\[]\s*({_ONE}(?:\s*[,:;/—-]\s*{_ONE})+)\s*[\)\]](?=\s*(?:[.;\n]|$))",
    re.IGNORECASE,
)
"""The same with no word behind: no total is a list."""
CAST_ON_BARE = re.compile(
    r"\b(?:cast\W+on|co)\s+\d+((?:\s?[-,;/]\s?\d+)+)\s*(?:sts?|stitches)\b", re.IGNORECASE
)
"""A cast-on of several sizes without brackets, "cast on 60, 64, 68 sts"."""
BARE = re.compile(
    rf"\d(?<![\d/:.-]\d)\d*((?:\s?([-/:—])\s?\d+)(?:\s?\2\s?\d+){{1,{MOST}}})(?![\d/:-])"
)
"""The numbers of three sizes or more with nothing but dashes, strokes or colons between them."""
COUNTED = re.compile(
    rf"\d(?<![\d/:.,-]\d)\d*((?:\s?([-,])\s?\d+)(?:\s?\2\s?\d+){{0,{MOST}}})\s+"
    r"(?:sts?|stitches|rows|rounds|times)\b"
)
"""Numbers parted by dashes or commas only, with what they count behind them."""
NAMED = Sought(
    ("size", "to fit", "fits", "age", "bust", "chest"),
    r"(?:^[^\w\n]*|[.;] +)(?:(?:two|three|four|five|six|\d|finished|garment) )?"
    r"(?:sizes?|to fit|fits|ages?|for ages?|bust|chest)\b[^:.\n\d]{0,24}:?\s*"
    r"(?P<list>[^\n]{3,90})$",
    re.IGNORECASE | re.MULTILINE,
)
WORKED = re.compile(r"\b(?:ch|sc|hdc|dc|tr|htr|inc|dec|st|sts|k\d|p\d|rep|in next)\b")
"""Behind the word "size" these are a row, no list of sizes."""
_LETTER = (
    r"(?:extra[ -]|x-?)?(?:small|large)|medium|(?:\d?x{0,3})?[sml]|[2-6]x|preemie|newborn|infant"
    r"|baby|toddler|child(?:ren)?|youth|teen|adult|women|men|wom[ae]n's|men's|lady|ladies"
)
_PEOPLE = (
    r"(?:(?:adult|adults|child|children|child's|kids?|baby|women|women's|womens|men|men's|mens"
    r"|ladies|misses|girls|boys|youth|doll)[ -])?"
)
_NAME = rf"{_PEOPLE}(?:{_LETTER})"
LETTERS = re.compile(
    rf"(?<![\w'])(?:{_NAME})(?:\s*[,(/|[—-]\s*(?:{_NAME})(?![\w']))+", re.IGNORECASE
)
"""Sizes by letters or by words: "S - M - L", "Baby (Child, Adult)"."""
IN_BRACKETS = re.compile(
    r"\b(?:sizes?|changes?|figures?|numbers?|larger|directions?|instructions?)\b[^.\n]{0,80}?"
    r"(?:\n[^.\n]{0,60}?)?"
    r"\b(?:in|within)\s+(?:the\s+)?(?:round |square )?"
    r"(?:parenthes[ie]s|brackets?|[(\[]\s*[)\]])",
    re.IGNORECASE,
)
"""Words that say where the numbers of other sizes stand."""
FOR_OTHERS = re.compile(
    r"\b(?:sizes?|lengths?|(?:for|to)\b[^.\n]{0,24}\b(?:small|medium|large|larger|longer|bigger))\b",
    re.IGNORECASE,
)
"""What such words are of."""
TOTALS = re.compile(
    r"\b(?:counts?|totals?|number of (?:sts?|stitches)"
    r"|end of (?:the |each |every )*(?:row|r(?:ou)?nd))\b",
    re.IGNORECASE,
)
"""What else stands in brackets."""
GROUPED = re.compile(
    r"^\W*sizes?\b[^\w\n]*\n(?P<lines>(?:[^\w\n]*[A-Za-z][\w' ]{2,16}:[^\n]{3,80}\n){2,4})",
    re.IGNORECASE | re.MULTILINE,
)
"""Sizes by groups of people, one to a line: "SIZES: / LADIES: Small, Large / MENS: ..."."""
NEAR_TOP = 2_000
"""Characters: sizes are listed before the rows."""


def values_in(one: str) -> int:
    """How many sizes the inside of a bracket lists: numbers, and dashes that stand for none."""
    return len(re.findall(r"\d+|(?<![\d\s])\s*[—-]\s*(?!\s*\d)|^\s*[—-]", one))


COUNTED_LINES = re.compile(
    r"^[^\w\n]*[A-Za-z]+ \d{1,2} ?/ ?\d{1,2}[^\w\n]*$", re.MULTILINE
)
"""Lines that only count what a text was sent in, "Photo 3/6": no sizes."""


def sizes_named(text: str) -> tuple[str, ...]:
    """The names of the sizes, ("one size",) where the text names none."""
    text = COUNTED_LINES.sub("", text)
    lists = [values_in(one.group(1)) for one in SIZED.finditer(text) if not _is_total(text, one)]
    bare = [len(re.findall(r"\d+", one.group(1))) for one in BARE.finditer(text)]
    lists += [number for number in bare if number < MOST]
    several = [values_in(one.group()) - 1 for one in SEVERAL.finditer(text)]
    names = _names(text)
    headed = header_names(text)
    if headed and _listed_so(text, len(headed), lists):
        return headed
    most = max(set(several), key=several.count) if several else 0
    if several and several.count(most) >= (2 if CAST_ON_SEVERAL.search(text) else 3):
        return tuple(f"size {n + 1}" for n in range(most + 1))
    if names and (len(names) - 1 in lists or len(names) - 1 in several):
        return names
    if names and (_bare_lists(text, len(names) - 1) or lists_within(text, len(names)) > 1):
        return names
    if _begun_for_two(text):
        return _by_brackets(text) or ("size 1", "size 2")
    begun_with = (*CAST_ON.findall(text), *CAST_ON_ALONE.findall(text)) if lists else ()
    cast_on = [values_in(one) for one in begun_with]
    for common in sorted(set(lists), key=lambda n: (-lists.count(n), -n)):
        often = lists.count(common)
        told = IN_BRACKETS.search(text) or _by_letters(text, common + 1)
        plainly = _told_plainly(text[:NEAR_TOP])
        grown = common == 1 and _begun_grown(text)
        begun = grown or (common in cast_on and (common > 1 or often > 1 or bool(told)))
        begun = begun or (common == 1 and bool(_by_brackets(text)))
        begun = begun or (common > 1 and bool(_by_letters(text, common + 1)))
        if often >= 3 or (common > 1 and often == 2 and bool(names)) or begun or plainly:
            named = _by_groups(text, common + 1) or _by_letters(text, common + 1)
            named = named or (_by_brackets(text) if common == 1 else ())
            named = named or _by_ages(text, common + 1)
            return named or tuple(f"size {n + 1}" for n in range(common + 1))
    return ("one size",)


def _listed_so(text: str, sizes: int, lists: list[int]) -> bool:
    """Whether a text whose top names so many sizes has a list of as many numbers."""
    return sizes - 1 in lists or (sizes > 2 and has_odd_lists(text, sizes))


BEGUN_PAIR = re.compile(
    r"\b(?:cast\W+on|co|ch|chain)\s+(?P<pair>(?P<a>\d{1,5})\s?[(\[](?P<b>\d{1,5})[)\]])",
    re.IGNORECASE,
)
"""How a piece begins with two numbers: those of two sizes, or one with its total."""


def _begun_for_two(text: str) -> bool:
    """Whether a piece begins with two numbers that come again as a row's total: "Chain 72 (84)"."""
    for found in BEGUN_PAIR.finditer(text):
        if int(found["b"]) > int(found["a"]) and text.count(found["pair"]) > 1:
            return True
    return False


def _begun_grown(text: str) -> bool:
    """Whether a piece begins with two numbers of which the second is more, "Cast on 38 (42).", as
    no total is.
    """
    begun = [(int(one["a"]), int(one["b"])) for one in BEGUN_PAIR.finditer(text)]
    return bool(begun) and all(a + 1 < b <= 2 * a for a, b in begun)


def _told_plainly(top: str) -> bool:
    """Whether the text says that brackets hold the numbers of another size: "Changes for the large
    size are in parentheses".
    """
    found = IN_BRACKETS.search(top)
    around = top[max(0, found.start() - 60) : found.end() + 60] if found is not None else ""
    return FOR_OTHERS.search(around) is not None and TOTALS.search(around) is None


def _bare_lists(text: str, more: int) -> bool:
    """Whether the numbers of that many sizes more stand without brackets: three times before what
    they count, or in a cast-on.
    """
    counted = [len(re.findall(r"\d+", one.group(1))) for one in COUNTED.finditer(text)]
    if counted.count(more) >= 3:
        return True
    return more in [len(re.findall(r"\d+", one)) for one in CAST_ON_BARE.findall(text)]


BRACKETED = re.compile(
    r"\b(?:for|fits?|makes)\s+(?:the |an? )?(?P<first>[a-z][\w -]{1,24}?)\s*[(\[,;—-]+\s*"
    r"(?:and )?(?:(?:numbers|figures|changes) )?(?:for )?(?:the |an? )?"
    r"(?P<second>[a-z][\w -]{1,24}?)"
    r"\s+(?:(?:is|are) )?(?:given )?in (?:square |round )?(?:brackets|parenthes[ie]s)\b",
    re.IGNORECASE,
)
"""Two sizes by what they are for: "for the small boat (the big boat in brackets)"."""


def _by_brackets(text: str) -> tuple[str, ...]:
    """The names of the two, () where the text does not tell them so."""
    found = BRACKETED.search(text[:NEAR_TOP])
    return (found["first"], found["second"]) if found else ()


def _by_groups(text: str, number: int) -> tuple[str, ...]:
    """So many names told by groups of people, "Ladies Small", "Mens Small"; () elsewhere."""
    found = GROUPED.search(text)
    names: list[str] = []
    for line in found["lines"].splitlines() if found else []:
        who, _, sizes = line.strip().partition(":")
        said = [one.strip(" .") for one in re.split(r"[,;/]|\band\b", sizes)]
        names += [f"{who.strip().capitalize()} {one}" for one in said if one]
    return tuple(names) if len(names) == number else ()


TOTALLED = re.compile(r"^\W*(?:(?:rnd|round|row|r)\.? ?)?\d+(?: ?[—-] ?\d+)?[).:]", re.IGNORECASE)


LABELLED = re.compile(r"\b(?:rnds?|rounds?|rows?|r|rd|step|part)s?\.? ?(?:\d+ ?[—-] ?)?$", re.I)
FARTHEST = 4
"""The stitches of one size are at most so many times another's, and as many more."""


def _is_total(text: str, found: re.Match[str]) -> bool:
    """Whether a bracket of one number is the total that ends a short numbered row, "4) sc 24
    (24)", stands behind a row's number or before the next one's, or is far from the number before.
    """
    one = found.group(1)
    if one.isdecimal():
        start = found.start()
        if "\n" in found.group() or LABELLED.search(text, max(0, start - 14), start):
            return True
        if int(one[:5]) > FARTHEST * (int(re.findall(r"\d+", found.group())[0][:5]) + 1):
            return True
    if not found.group(1).isdecimal() or text[found.end() :].split("\n", 1)[0].strip(" ."):
        return False
    return TOTALLED.match(text[text.rfind("\n", 0, found.start()) + 1 : found.start()]) is not None


def _by_letters(text: str, number: int) -> tuple[str, ...]:
    """The names in a list of so many sizes by letters or words, "S - M - L", where one stands
    before the rows; () elsewhere.
    """
    for found in LETTERS.finditer(text[:NEAR_TOP]):
        names = re.findall(rf"\b(?:{_NAME})(?![\w'])", found.group(), re.IGNORECASE)
        if len(names) == number and len({name.lower() for name in names}) == number:
            return tuple(names)
    return ()


_UNIT = r"(?:\s?(?:years?|yrs?|y|months?|mos?|m)\b\.?)"
_SPAN = rf"\d{{1,2}}\s?(?:-|—|to)\s?\d{{1,2}}{_UNIT}?"
AGES = re.compile(rf"(?P<first>{_SPAN})\s*[(\[](?P<more>{_SPAN}(?:\s*[,;/]\s*{_SPAN})*)[)\]]", re.I)
"""Sizes by age, "2-4 years (6-8 years, 10-12 years)"."""


def _by_ages(text: str, number: int) -> tuple[str, ...]:
    """So many sizes named by age before the rows; () elsewhere."""
    for found in AGES.finditer(text[:NEAR_TOP]):
        names = [found["first"], *re.split(r"\s*[,;/]\s*", found["more"])]
        if len(names) == number and any(re.search(r"[a-z]", name) for name in names):
            return tuple(" ".join(name.split()) for name in names)
    return ()


LEAD = re.compile(r"^\W*(?:to fit |fits )?(?:[a-z']+ ){0,2}(?:sizes?|ages?)\s*:?\s*(?=\d)", re.I)
"""Before the first of the names: "To fit child sizes 2 (4-6-8)"."""


def _names(text: str) -> tuple[str, ...]:
    lines = NAMED.finditer(text)
    found = next((one for one in lines if not WORKED.search(one.group("list"))), None)
    if not found or not re.search(r"[\[(,;/|-]", found.group("list")):
        return ()
    listed = re.split(r"\.\s+(?=[A-Z])", found.group("list"))[0]
    said = re.sub(r"[\[\](){}]", ",", LEAD.sub("", listed))
    spans = re.search(r"\d\s?[—-]\s?\d", said) and re.search(r"[,;/|]\s*\d", said)
    dashes = "" if spans else r"|(?<=\d)\s*[—-]\s*(?=\d)|\bto\b"
    parts = re.split(rf"[,;/:|]{dashes}|\band\b", said)
    names = [name.strip(" .") for name in parts if name.strip(" .")]
    names = [name for name in names if len(name) < 20]
    if sum(name[:1].isdigit() for name in names) > 1:
        # "32, 34 and 36 inch chest": what is left over behind the numbers is no size.
        names = [name for name in names if name[:1].isdigit()]
    return tuple(names) if 1 < len(names) <= 12 else ()


PARTS = re.compile(r"\s*[|;,/~]\s*|\s+-\s+")
ENTITLED = re.compile(
    r"[\[(](?P<list>[^\[\]()\n]{3,80})[\])]|[~:–—-] (?P<rest>[^\n]{3,80})$", re.MULTILINE
)


def names_of(text: str, number: int) -> tuple[str, ...]:
    """So many names, as a line near the top lists them, else "size 1", "size 2", ..."""
    letters = _by_letters(text, number)
    if letters:
        return letters
    for line in text[:NEAR_TOP].splitlines():
        told = [one["list"] or one["rest"] for one in ENTITLED.finditer(line)]
        for listed in (line, *told):
            names = [one.strip(" .") for one in PARTS.split(LEAD.sub("", listed))]
            short = all(0 < len(name) < 20 and len(name.split()) < 4 for name in names)
            if len(names) == number and short and any(re.search("[a-z]", n, re.I) for n in names):
                return tuple(names)
    return tuple(f"size {n + 1}" for n in range(number))
