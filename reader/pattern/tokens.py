"""One stretch of clean text -> tokens: numbers, words, marks; numbers in words and lists of sizes
are joined.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from reader.terms.numbers import ORDINALS, TENS, TIMES, UNITS
from reader.terms.stitches import CABLE

TOKEN = re.compile(
    r"(?P<cable>\d\d?/\d\d?(?:/\d\d?)? ?[LR](?:P[CT]?|[CT]P?)\b)"
    r"|(?P<frac>\d+[ -]?[½¼¾⅓⅔⅛⅜⅝⅞]|[½¼¾⅓⅔⅛⅜⅝⅞]|\d+[ -]\d/\d+|\d+\.\d+|(?<![\d/])\d/\d(?![\d/]))"
    r"|(?P<ord>\d+(?:st|nd|rd|th|d)\b)"
    r"|(?P<num>\d+)"
    r"|(?P<dots>(?:[A-Za-z]\.){2,}(?:[A-Za-z]\b)?)"
    r"|(?P<word>[ⓐ-ⓩ]|[A-Za-z][A-Za-z0-9]*(?:[-'&/](?=[A-Za-z0-9])[A-Za-z0-9&]+)*)"
    r"|(?P<stars>\*+|†|‡)"
    r"|(?P<mark>[^\sA-Za-z0-9])",
    re.IGNORECASE,
)
TIMES_LISTED = re.compile(r"(?P<word>x)(?P<list>\d+(?:[-/]\d+)+)$")
FIRST = re.compile(r"(?:^|[02-9])1st$")
"""The end of an ordinal: "1st", "21st", and not "11st"."""
GLUED_LIST = re.compile(r"(?P<word>[a-z]{1,3}?)(?P<list>\d+(?:[-/]\d+)+)$", re.IGNORECASE)
"""A number for each size right behind a letter: "k20/22/24", "x6-7-8"."""
GLUED = re.compile(r"^([a-z]+)(\d+)$")
CHANGED_TIMES = re.compile(r"^(inc|dec|sc2tog|k2tog)(x\d+)$")
"""How often behind a change, without a blank: "incx6"."""


class Token(NamedTuple):
    """kind: num, ord, word, frac, stars or mark. low: lower-case text. values: a number's value by
    size.
    """

    kind: str
    low: str
    start: int
    end: int
    values: tuple[int, ...] = ()
    spaced: bool = True
    hyphen: bool = False

    @property
    def value(self) -> int:
        """A number's value for the first size."""
        return self.values[0] if self.values else 0


def tokens_of(text: str, offset: int, sizes: int, known: frozenset[str]) -> list[Token]:
    """Tokens of `text`, whose first character stands at `offset`; known: written forms not to be
    split.
    """
    found: list[Token] = []
    last_end = 0
    for match in TOKEN.finditer(text):
        kind = match.lastgroup or "mark"
        if match.group() == "." and found and _abbreviates(found[-1], text, match.end()):
            continue
        spaced = match.start() > last_end or match.start() == 0
        last_end = match.end()
        listed = GLUED_LIST.match(match.group()) if sizes > 1 and kind == "word" else None
        if listed and len(re.findall(r"\d+", listed["list"])) == sizes:
            _add_list(found, listed, match.start() + offset, spaced)
            continue
        _add(found, kind, match.group(), match.start() + offset, spaced, known)
    found = _clusters_named(_words_to_numbers(_needles_joined(found)), known)
    return _sizes_joined(found, sizes) if sizes > 1 else found


GOES_ON = re.compile(r"\s+(?!ch \d)[a-z]")
"""Behind the full stop of a short word; "sl st to ch-3 sp. ch 3" is two sentences."""
SHADES = frozenset({"dk", "lt", "med", "approx", "no"})


def _abbreviates(last: Token, text: str, at: int) -> bool:
    """Whether the full stop behind a word ends an abbreviation, not a sentence."""
    if last.kind != "word":
        return False
    return last.low in SHADES or (
        len(last.low) <= 4 and GOES_ON.match(text, at) is not None
    )


def _add(
    found: list[Token], kind: str, text: str, start: int, spaced: bool, known: frozenset[str]
) -> None:
    low = text.lower()
    end = start + len(text)
    if kind == "num":
        found.append(Token("num", low, start, end, (int(low[:9]),), spaced))
    elif kind == "ord" and low.endswith("st") and not FIRST.search(low):
        # "in next 2st": a number and its noun, glued.
        found.append(Token("num", low[:-2], start, end - 2, (int(low[:-2][:9]),), spaced))
        found.append(Token("word", "st", end - 2, end, (), False))
    elif kind == "ord":
        found.append(Token("ord", low, start, end, (int(re.sub(r"\D", "", low)[:9]),), spaced))
    elif kind == "dots":
        bare = low.rstrip(".")
        if bare not in known and bare.replace(".", "") in known | {"tbl", "wyib", "wyif"}:
            bare = bare.replace(".", "")
            found.append(Token("word", bare, start, end, (), spaced))
            return
        found.append(Token("word", bare, start, start + len(bare), (), spaced))
        if len(bare) < len(low) and bare not in known:
            found.append(Token("mark", ".", end - 1, end, (), False))
    elif kind == "cable":
        found.append(Token("word", low.replace(" ", ""), start, end, (), spaced))
    elif kind == "word":
        _add_word(found, low, start, spaced, known)
    else:
        found.append(Token(kind, low, start, end, (), spaced))


SHORTER = {"hk": "hook"}
"""Words that some cut shorter than others."""


def _add_word(
    found: list[Token], low: str, start: int, spaced: bool, known: frozenset[str]
) -> None:
    end = start + len(low)
    if low in known or low.isalpha() or CABLE.match(low):
        found.append(Token("word", SHORTER.get(low, low), start, end, (), spaced))
        return
    listed = TIMES_LISTED.match(low)
    if listed:
        _add_list(found, listed, start, spaced)
        return
    changed = CHANGED_TIMES.match(low)
    if changed:
        _add_word(found, changed[1], start, spaced, known)
        _add_word(found, changed[2], start + len(changed[1]), False, known)
        return
    glued = GLUED.match(low)
    if glued:
        cut = start + len(glued.group(1))
        found.append(Token("word", glued.group(1), start, cut, (), spaced))
        found.append(Token("num", glued.group(2), cut, end, (int(glued.group(2)[:9]),), False))
        return
    cut_at = re.search(r"[-/]|(?<=\d)(?=[a-z])|(?<=[a-z])(?=\d)", low)
    if cut_at and cut_at.start() > 0 and re.search(r"\d", low):
        hyphen = low[cut_at.start()] in "-/"
        _add_word(found, low[: cut_at.start()], start, spaced, known)
        rest = cut_at.start() + hyphen
        if rest < len(low):
            _rest_of_word(found, low[rest:], start + rest, known, hyphen)
        return
    if "-" in low and not re.search(r"\d", low):
        _hyphened(found, low, start, spaced, known)
        return
    found.append(Token("word", low, start, end, (), spaced))


def _add_list(found: list[Token], listed: re.Match[str], start: int, spaced: bool) -> None:
    """Adds "x6-7-8": what the numbers are of, and a number for each size."""
    word = listed["word"].lower()
    found.append(Token("word", word, start, start + len(word), (), spaced))
    for piece in re.finditer(r"\d+|[-/]", listed["list"]):
        at, digit = start + len(word) + piece.start(), piece.group().isdigit()
        values = (int(piece.group()[:9]),) if digit else ()
        kind = "num" if digit else "mark"
        found.append(Token(kind, piece.group(), at, at + len(piece.group()), values, False))


def _rest_of_word(
    found: list[Token], low: str, start: int, known: frozenset[str], hyphen: bool
) -> None:
    digits = re.match(r"\d+", low)
    if digits:
        value = (int(digits.group()[:9]),)
        end = start + digits.end()
        found.append(Token("num", digits.group(), start, end, value, False, hyphen))
        rest = low[digits.end() :].lstrip("-")
        if rest:
            _add_word(found, rest, start + len(low) - len(rest), False, known)
    else:
        _add_word(found, low, start, False, known)


def _hyphened(
    found: list[Token], low: str, start: int, spaced: bool, known: frozenset[str]
) -> None:
    at = start
    for index, piece in enumerate(low.split("-")):
        if piece:
            found.append(
                Token("word", piece, at, at + len(piece), (), spaced and index == 0, index > 0)
            )
        at += len(piece) + 1


def _words_to_numbers(found: list[Token]) -> list[Token]:
    made: list[Token] = []
    for token in found:
        low, last = token.low, made[-1] if made else None
        value = TENS.get(low, UNITS.get(low))
        if _under_hundred(made, token):
            # "a hundred and four" is one number.
            made[:] = [one for one in made if one is not made[-1] or one.low != "and"]
            added = made[-1].value + (value or 0)
            kept = low if low in TENS else ""
            made[-1] = made[-1]._replace(low=kept, end=token.end, values=(added,))
        elif token.kind != "word":
            made.append(token)
        elif value is not None and low != "no":
            if last and last.kind == "num" and last.low in TENS and 1 <= value <= 9:
                joined = (last.value + value,)
                made[-1] = last._replace(low=f"{last.low} {low}", end=token.end, values=joined)
            else:
                made.append(token._replace(kind="num", values=(value,)))
        elif low in ORDINALS:
            made.append(token._replace(kind="ord", values=(ORDINALS[low],)))
        elif low in TIMES:
            made.append(token._replace(kind="times", values=(TIMES[low],)))
        elif low == "hundred" and last and (last.kind == "num" or last.low == "a"):
            hundreds = (100 * (last.value if last.kind == "num" else 1),)
            made[-1] = last._replace(kind="num", low="hundred", end=token.end, values=hundreds)
        else:
            made.append(token)
    return made


def _under_hundred(made: list[Token], token: Token) -> bool:
    """Whether a number in words goes on with the hundred before it."""
    before = made[:-1] if made and made[-1].low == "and" else made
    if token.kind != "word" or not before or before[-1].low != "hundred":
        return False
    return token.low in TENS or (token.low in UNITS and token.low not in ("no", "zero"))


CLUSTERS = frozenset(["cluster", "cl", "popcorn", "pc", "puff", "bobble"])
CLUSTERS_OF = frozenset(["sc", "hdc", "dc", "tr", "dtr", "treble", "trc", "triple"])


def _clusters_named(found: list[Token], known: frozenset[str]) -> list[Token]:
    """ "3-tr cluster", "dc popcorn" as the cluster alone: of what it is made says nothing of how
    many there are. "3 tr clusters" are three.
    """
    if not any(token.low.rstrip("s") in CLUSTERS for token in found):
        return found
    made: list[Token] = []
    for token in found:
        if token.low.rstrip("s") in CLUSTERS and made:
            of = _of_what(made, known, token.low)
            dashed = of and any(one.low == "-" or one.hyphen for one in made[-of:])
            # "2-3 tr clusters" are two of three.
            counted = of and [one.low for one in made[-of - 1 : -of]] == ["-"]
            single = dashed or counted or not token.low.endswith("s")
            if of and made[-of].kind == "num" and not single:
                # Only the stitch's name goes.
                of = next(n for n in range(of, 0, -1) if made[-n].low.isalpha())
            if of:
                token = token._replace(start=made[-of].start)
                del made[-of:]
        made.append(token)
    return made


def _of_what(made: list[Token], known: frozenset[str], low: str) -> int:
    """How many tokens tell what the cluster behind them is made of, 0 for none."""
    letters = [one.low for one in made[-3:]]
    dashed = letters[-1:] == ["-"]
    words = letters[: len(letters) - dashed]
    length = 1 if words and words[-1] in CLUSTERS_OF else 0
    for two in (("d", "c"), ("s", "c"), ("tr", "c"), ("d", "tr")):
        length = 2 if tuple(words[-2:]) == two else length
    name = " ".join([*words[-length:], low])
    if not length or name in known or name.rstrip("s") in known:
        return 0
    length += dashed
    before = made[-length - 1 :][:1]
    if before and before[0].low == "-" and len(made) > length + 1:
        length, before = length + 1, made[-length - 2 :][:1]
    counted = bool(before) and before[0].kind == "num" and 1 < before[0].value < 10
    return length + counted


def _needles_joined(found: list[Token]) -> list[Token]:
    """ "d p n" is a needle, not a purl stitch."""
    if not any(token.low == "d" for token in found):
        return found
    made: list[Token] = []
    for token in found:
        before = made[-2:]
        if token.low in ("n", "needle") and [one.low for one in before] == ["d", "p"]:
            made[-2:] = [before[0]._replace(low="dpn", end=token.end)]
        else:
            made.append(token)
    return made


BLANK = {"-", "—", "–"}


def _sizes_joined(found: list[Token], sizes: int) -> list[Token]:
    """Joins "8 (9, 10, 11)" into one number with a value for each size."""
    made: list[Token] = []
    at = 0
    while at < len(found):
        end, values = _size_list(found, at, sizes)
        if end:
            token = found[at]
            made.append(token._replace(kind="num", end=found[end - 1].end, values=values))
            at = end
        else:
            made.append(found[at])
            at += 1
    return made


def _size_list(found: list[Token], at: int, sizes: int) -> tuple[int, tuple[int, ...]]:
    """Where a list of sizes that starts at `at` ends, and its values; (0, ()) when none does."""
    first = found[at]
    bare = _without_brackets(found, at, sizes) if first.kind == "num" else ()
    if bare:
        return at + 2 * sizes - 1, bare
    if first.kind not in ("num", "frac") and first.low not in BLANK:
        return 0, ()
    values = [first.value]
    here = at + 1
    while len(values) < sizes and here < len(found) and found[here].low in ("(", "["):
        close = ")" if found[here].low == "(" else "]"
        inner, here = _inside(found, here + 1, close)
        if not inner:
            return 0, ()
        values += inner
        if len(values) < sizes and here < len(found) and found[here].kind == "num":
            values.append(found[here].value)
            here += 1
    return (here, tuple(values)) if len(values) == sizes else (0, ())


COUNTED = frozenset(["st", "sts", "stitch", "stitches", "rows", "rounds", "rnds", "times"])


def _without_brackets(found: list[Token], at: int, sizes: int) -> tuple[int, ...]:
    """ "98-104-110", "98, 104, 110 sts": a number for each size with no brackets; () elsewhere."""
    end = at + 2 * sizes - 1
    marks = {one.low for one in found[at + 1 : end : 2]}
    numbers = [one for one in found[at:end:2] if one.kind == "num"]
    if len(numbers) != sizes or len(marks) != 1 or not marks <= {"-", "/", "—", ":", ",", ";"}:
        return ()
    counted = end < len(found) and found[end].low in COUNTED
    if (sizes == 2 or marks in ({","}, {";"})) and not counted:
        return ()
    return tuple(one.value for one in numbers)


def _parts(found: list[Token], here: int) -> bool:
    """Whether a dash only parts two sizes: "(38-40-42)"."""
    after = found[here + 1] if here + 1 < len(found) else None
    return found[here - 1].kind == "num" and after is not None and after.kind == "num"


def _inside(found: list[Token], here: int, close: str) -> tuple[list[int], int]:
    values: list[int] = []
    while here < len(found) and found[here].low != close:
        token = found[here]
        if token.kind in ("num", "frac"):
            values.append(token.value)
        elif token.low in BLANK and _parts(found, here):
            pass
        elif token.low in BLANK:
            values.append(0)
        elif token.low not in (",", ";", ":", "/", ".", "and", "&"):
            return [], here
        here += 1
    if here >= len(found):
        # The list never closes: it is no list of sizes.
        return [], here
    return values, here + 1
