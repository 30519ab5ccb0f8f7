"""Any words of a pattern in, the same words as they are spoken out: no abbreviation, no symbol, no
digit.
"""

from __future__ import annotations

import re
from functools import lru_cache

from reader.plan.sizes import only_size
from reader.plan.step import Reading
from reader.wording.marks import total_in_words, without_brackets, without_stars
from reader.wording.numbers import decimal_words, number_words, ordinal_words
from reader.wording.short_forms import short_forms_in_words

PLAIN = Reading()
"""Crochet in US terms, one size, no list of its own."""

LONGEST = 4000
"""Characters read in one go; nothing that is listened to is longer, and damaged files can be."""

_PLAIN = str.maketrans(
    {
        "\u2018": "'", "\u2019": "'", "\u201c": '"', "\u201d": '"', "\u2032": "'", "\u2033": '"',
        "\u00d7": "x", "\u2715": "x", "\u2716": "x", "\u2212": "-", "\u2010": "-", "\u2011": "-",
        "\u2012": "–", "\u2217": "*", "\u2731": "*", "\u2022": " ", "\u00b7": " ", "\u00a0": " ",
        "\u2044": "/", "\u2026": ". ", "\ufb01": "fi", "\ufb02": "fl", "\ufb00": "ff", "\u00ad": "",
        "\u200b": "", "\u2192": ", ",
    }
)  # fmt: skip
_ROWS = re.compile(
    r"\b(?P<what>rnds?|rounds?|rows?|rds?)\.?\s*(?P<first>\d+)\s*(?:-|–|—|to)\s*(?P<last>\d+)\b",
    re.IGNORECASE,
)
_SHORT_ROW = re.compile(r"^\s*R\s?(?P<first>\d+)(?:\s*[-–]\s*R?(?P<last>\d+))?(?=\s*[:.\-–(])")
_IN_WORDS = re.compile(r"(?<![\w-])R(\d{1,3})\b(?!\s*[:=-])")
_WEB = re.compile(r"https?://\S+|\bwww\.\S+", re.IGNORECASE)
_DOTTED = re.compile(r"\b[a-z]\.(?:\s?[a-z]\.)+(?:[a-z]\b\.?)?", re.IGNORECASE)
"""Letters with stops between them, "p.s.s.o."."""
_PLACES = (
    r"next|same|last|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|previous|"
    r"beginning|following|"
    r"remaining|top|ring|hook|corner|base|post|back of|front of|back loop|front loop|"
    r"chain [a-z-]+ (?:space|loop)|chain space|"
    r"(?:space|loop|marker)\b(?! stitch)|magic ring|other side|turning chain|end(?= of|[,.;]|$)|"
    r"right side|wrong side"
)
_ARTICLE = re.compile(
    rf"\b(in|into|of|to|from|over|skip|miss|skipping|missing|between|at|around|through|on|before|"
    rf"after|until) (?={_PLACES})",
    re.IGNORECASE,
)


@lru_cache(maxsize=4096)
def speak(text: str, reading: Reading = PLAIN) -> str:
    """The words as they are spoken, without capital or full stop of their own; "" for no words.

    Words that are not known are left as written; text beyond LONGEST characters is left out.
    """
    said = " ".join(text[:LONGEST].translate(_PLAIN).split())
    said = re.sub(r"\d{13,}", "a long number", said)
    said = only_size(said, reading.size, reading.sizes)
    said = _WEB.sub("a web address", said)
    said = _DOTTED.sub(lambda m: re.sub(r"[.\s]", "", m.group()), said)
    said = re.sub(r"\b([Yy]) [Oo]\b", r"\1o", said)
    said = total_in_words(said)
    said = without_stars(" ".join(without_brackets(said).split()))
    said = _labels(said, reading)
    said = short_forms_in_words(said, reading)
    said = _numbers(said)
    return _tidy(_articles(said))


def _labels(text: str, reading: Reading) -> str:
    text = _SHORT_ROW.sub(
        lambda m: f"rows {m['first']} to {m['last']}" if m["last"] else f"row {m['first']}", text
    )
    text = _ROWS.sub(_rows_range, text)
    # In crochet "R8" in running words is nearly always a round, in knitting a row.
    noun = "round" if reading.craft == "crochet" else "row"
    return _IN_WORDS.sub(lambda m: f"{noun} {m[1]}", text)


def _rows_range(found: re.Match[str]) -> str:
    many = "rows" if found["what"].lower().startswith("row") else "rounds"
    begins = found.start() == 0 and found["what"][0].isupper()
    return f"{many.capitalize() if begins else many} {found['first']} to {found['last']}"


def _numbers(text: str) -> str:
    text = re.sub(r"(?<=[A-Za-z])(?=\d)|(?<=\d)(?=[A-Za-z]{3})(?!(?:st|nd|rd|th)\b)", " ", text)
    text = re.sub(r"\b(\d*[23])d\b", r"\1nd", text)
    text = re.sub(
        r"\b(\d+)(?:st|nd|rd|th)\b", lambda m: ordinal_words(int(m[1])), text, flags=re.IGNORECASE
    )
    text = re.sub(r"(?<=\d),(?=\d{3}\b)", "", text)
    return re.sub(r"\d+\.\d+|\d+", lambda m: _number(m.group()), text)


def _number(digits: str) -> str:
    return decimal_words(digits) if "." in digits else number_words(int(digits))


def _articles(text: str) -> str:
    text = re.sub(r"  +", " ", text)
    text = _ARTICLE.sub(lambda m: m.group().rstrip() + " the ", text)
    text = re.sub(r"\bwith slip stitch\b", "with a slip stitch", text)
    text = re.sub(r"\b([Aa])n (?=single|stitch|slip)", r"\1 ", text)
    return re.sub(
        r"\b(form|into|in) ring\b",
        lambda m: f"{m[1]} {'a' if m[1] == 'form' else 'the'} ring",
        text,
    )


_NUMBER_STARTS = {number_words(number) for number in range(20)} | {
    number_words(number) for number in range(20, 100, 10)
}


def _equals(text: str) -> str:
    """Equal signs in words: a gauge "makes", an abbreviation "means"; after a count comes what
    that is.
    """
    left, *rest = re.split(r" ?=+>? ?", text)
    for right in rest:
        clause = re.split(r"[=,;:]", left)[-1].strip()
        verb = "that is" if not clause else "make" if _counted(clause) else "means"
        left = f"{left} {verb} {right}" if right else left
    return left


def _counted(left: str) -> bool:
    """Whether the words begin with a number word, or tell of the first rounds or rows."""
    words = re.sub(r"^(?:the )?first ", "", left.strip(), flags=re.IGNORECASE).split()
    return bool(words) and words[0].split("-")[0].lower() in _NUMBER_STARTS


def _tidy(text: str) -> str:
    """Symbols out, pauses once, single spaces."""
    text = _equals(text)
    text = re.sub(r"(?<=\w)\s?\+\s?(?=\w)", " plus ", text)
    text = text.replace("&", " and ").replace("@", " at ").replace("~", " about ")
    text = re.sub(r"(?<=[A-Za-z])/(?=[A-Za-z])", " or ", text)
    text = re.sub(r"\s*(?:--+|—|–|\s-\s|\s-$|^-\s)\s*", ", ", text)
    text = re.sub(r"[^\w\s.,;:?!'%-]|_", " ", text)
    text = re.sub(r"(?<!\w)['-]+|['-]+(?!\w)", " ", text)
    text = re.sub(r"\s+([.,;:?!])", r"\1", text)
    text = re.sub(r"[,;]+(?=[.:?!])|,+(?=;)", "", text)
    text = re.sub(r"([.:;?!])[,;.:]+", r"\1", text)
    text = re.sub(r"([.,;:?!])(?=[A-Za-z])", r"\1 ", text)
    text = re.sub(r",(?:\s*,)+", ",", text)
    text = re.sub(r"([;:])\s*[,;]", r"\1", text)
    text = re.sub(r",\s*([;:.])", r"\1", text)
    return " ".join(text.split()).strip(" ,;:-")
