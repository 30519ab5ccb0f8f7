"""Any words of a pattern in, the same words as they are spoken out: no abbreviation, no symbol, no digit."""

from __future__ import annotations

import re
from functools import lru_cache

from reader.plan.sizes import only_size
from reader.plan.step import Reading
from reader.wording.amounts import measures_in_words
from reader.wording.marks import total_in_words, without_brackets, without_stars
from reader.wording.numbers import decimal_words, number_words, ordinal_words
from reader.wording.stitch_words import BOTH, word_for

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
_STITCH = r"(?:s ?c|h ?d ?c|d ?c|t ?r|htr|h tr|d ?tr|tr ?tr|e?sc|[fb]p ?(?:sc|hdc|dc|tr|htr|dtr)|f?sc|f?hdc|f?dc)"
_TOG = re.compile(
    rf"\b(?P<base>{_STITCH}|k|p|ss|st|sl)\s?(?P<count>\d|two|three|four)\s?tog(?:ether)?(?P<loop>tbl|\s+tbl)?\b", re.IGNORECASE
)
_KNIT_RUN = re.compile(r"(?<![A-Za-z])(?P<deed>[kp])\s?(?P<count>\d+)(?=[^\w]|$|[kp]\d|tbl)", re.IGNORECASE)
_SLIP_RUN = re.compile(r"\bsl\s?(?P<count>\d+)(?P<way>[kp])?(?=\b)(?!\s*st\b)", re.IGNORECASE)
_CHAIN_SPACE = re.compile(r"\bch[-\s]?(?P<count>\d+)[-\s]*(?P<what>sps?|lps?|loops?|spaces?|arch(?:es)?)\b", re.IGNORECASE)
_CHAIN = re.compile(r"\b(?:ch|chain)[-\s]?(?P<count>\d+)\b", re.IGNORECASE)
_STITCH_RUN = re.compile(
    rf"(?<!\d )(?<![\w-])(?P<stitch>{_STITCH})\s?(?P<count>\d+)\b(?!\s*(?:tog|more\b|times\b|to\b|st\b))", re.IGNORECASE
)
_ROWS = re.compile(r"\b(?P<what>rnds?|rounds?|rows?|rds?)\.?\s*(?P<first>\d+)\s*(?:-|–|—|to)\s*(?P<last>\d+)\b", re.IGNORECASE)
_SHORT_ROW = re.compile(r"^\s*R\s?(?P<first>\d+)(?:\s*[-–]\s*R?(?P<last>\d+))?(?=\s*[:.\-–(])")
_REMAIN = re.compile(r"\b(?P<noun>sts?|stitches|rows|rnds)\s+rem\b\.?(?!\s*(?:sts?|stitches))", re.IGNORECASE)
_FORM = re.compile(
    r"(?<![\w'])(?:rev st st|st st|g st|sl sts?|slip sts?|loop sts?|puff sts?|s d c|h d c|tr tr c|d tr c|[sd] c|h dc|tr c|tr tr|"
    r"[fb]p (?:sc|hdc|dc|tr|htr|dtr)|rev (?:sc|dc)|lp sts?|v[- ]sts?|x[- ]sts?|t[- ]ch|ch[- ](?:sps?|lps?)|inv\.? dec|wl fwd|"
    r"[a-z]+(?:[&'/+][a-z]+)+|w&t|k1f&b|p1f&b|\d/\d ?[lr](?:c|t|pc)|[ct]\d+[fblr]p?|[kp]-wise|"
    r"[a-z]+\d+[a-z]+\d*|[a-z]+\d*)(?![\w])\.?",
    re.IGNORECASE,
)
_COLOUR = re.compile(
    r"\b(with|to|in|join|using|drop|attach|from|yarn|change to|cut)\s+(?:(?:colou?r|col\.?)\s+)?(?-i:([A-H]))(?![\w'&-])(?!\s+\d)", re.IGNORECASE
)
_CROSSES = re.compile(r"(?<![\w/])\d/\d ?[lr](?:c|t|pc)\b", re.IGNORECASE)
_PLACES = (
    r"next|same|last|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|previous|beginning|following|"
    r"remaining|top|ring|hook|corner|base|post|back of|front of|back loop|front loop|chain [a-z-]+ (?:space|loop)|chain space|"
    r"(?:space|loop|marker)\b(?! stitch)|magic ring|other side|turning chain|end(?= of|[,.;]|$)|right side|wrong side"
)
_ARTICLE = re.compile(
    rf"\b(in|into|of|to|from|over|skip|miss|skipping|missing|between|at|around|through|on|before|after|until) (?={_PLACES})", re.IGNORECASE
)


@lru_cache(maxsize=4096)
def speak(text: str, reading: Reading = Reading()) -> str:
    """The words as they are spoken, without capital or full stop of their own; "" for no words.

    Words that are not known are left as written; text beyond LONGEST characters is left out.
    """
    said = " ".join(text[:LONGEST].translate(_PLAIN).split())
    said = only_size(said, reading.size, reading.sizes)
    said = total_in_words(said)
    said = without_stars(without_brackets(said))
    said = _labels(said)
    said = _short_forms(said, reading)
    said = _numbers(said)
    return _tidy(_articles(said))


def _labels(text: str) -> str:
    text = _SHORT_ROW.sub(lambda m: f"rows {m['first']} to {m['last']}" if m["last"] else f"row {m['first']}", text)
    return _ROWS.sub(lambda m: f"{_rows_word(m['what'])} {m['first']} to {m['last']}", text)


def _rows_word(what: str) -> str:
    many = "rows" if what.lower().startswith("row") else "rounds"
    return many.capitalize() if what[0].isupper() else many


def _short_forms(text: str, reading: Reading) -> str:
    text = _REMAIN.sub(lambda m: f"{m['noun']} remain", text)
    text = _TOG.sub(lambda m: _together(m, reading), text)
    text = _CHAIN_SPACE.sub(lambda m: f"chain {number_words(int(m['count']))} {_space(m['what'])}", text)
    text = _CHAIN.sub(lambda m: f"chain {_count(m['count'])}", text)
    if reading.craft == "knitting":
        text = _CROSSES.sub(lambda m: word_for(m.group(), reading), text)
        text = _KNIT_RUN.sub(_knit_run, text)
        text = _SLIP_RUN.sub(_slip_run, text)
    else:
        text = _STITCH_RUN.sub(lambda m: f"{m['count']} {m['stitch']}", text)
    text = measures_in_words(text)
    text = _COLOUR.sub(lambda m: f"{m[1]} colour {m[2].upper()}", text)
    return _FORM.sub(lambda m: _form(m, reading), text)


def _together(found: re.Match[str], reading: Reading) -> str:
    base = found["base"]
    word = {"sl": "slip", "st": "stitch"}.get(base.lower()) or word_for(base, reading) or base
    count = found["count"]
    many = number_words(int(count)) if count.isdigit() else count
    loop = " through the back loop" if found["loop"] else ""
    return f"{word} {many} together{loop}"


def _space(what: str) -> str:
    low = what.lower()
    one = "loop" if low[0] == "l" else "arch" if low[0] == "a" else "space"
    return f"{one}{'es' if one == 'arch' else 's'}" if low.endswith("s") else one


def _count(digits: str) -> str:
    return number_words(int(digits))


def _knit_run(found: re.Match[str]) -> str:
    deed = "knit" if found["deed"].lower() == "k" else "purl"
    after = found.string[found.end() : found.end() + 1]
    glue = ", " if after.lower() in ("k", "p") and after else " " if after.lower() == "t" else ""
    return f"{deed} {_count(found['count'])}{glue}"


def _slip_run(found: re.Match[str]) -> str:
    way = {"k": " knitwise", "p": " purlwise"}.get((found["way"] or "").lower(), "")
    return f"slip {_count(found['count'])}{way}"


_KEEP = {"a", "i", "an", "in", "on", "no", "to", "of", "or", "so", "at", "by", "it", "is", "be", "do", "up", "all"}


def _form(found: re.Match[str], reading: Reading) -> str:
    written = found.group()
    stop = "." if written.endswith(".") else ""
    bare = written.rstrip(".")
    low = bare.lower()
    if low in _KEEP or (_is_english(low) and low not in BOTH):
        return _calm(bare) + stop
    if len(low) == 1 and not _single_letter(bare, reading):
        return bare + stop
    words = word_for(bare, reading)
    if words:
        end = stop if stop and found.end() == len(found.string) else ""
        return _like(bare, words) + end
    return _calm(bare) + stop


def _single_letter(letter: str, reading: Reading) -> bool:
    """Whether a lone letter is a short form: k, p and m in knitting, a small p in crochet."""
    if reading.craft == "knitting":
        return letter in ("k", "p", "K", "P", "m")
    return letter == "p"


def _is_english(low: str) -> bool:
    """Whether a form is made of full words only, which stay as they are written."""
    words = re.findall(r"[a-z]+", low)
    return not re.search(r"[\d&/+]", low) and all(
        len(word) > 4 and any(vowel in word for vowel in "aeiouy") for word in words
    )


def _like(written: str, words: str) -> str:
    """The words with a capital where the written form began a sentence with one ("Sc" but not "RS" or "FPdc")."""
    begins = written[0].isupper() and (len(written) == 1 or written[1:2].islower())
    return words[0].upper() + words[1:] if begins else words


def _calm(word: str) -> str:
    """A word in capitals as a synthesiser reads it best; two or three letters without a vowel are spelt out."""
    if word.isupper() and len(word) > 2 and any(vowel in word for vowel in "AEIOUY"):
        return word.capitalize()
    if word.isalpha() and 1 < len(word) < 5 and not any(vowel in word.lower() for vowel in "aeiouy"):
        return " ".join(word.upper())
    if word == "US" or word == "UK":
        return " ".join(word)
    return word


def _numbers(text: str) -> str:
    text = re.sub(r"(?<=[A-Za-z])(?=\d)|(?<=\d)(?=[A-Za-z]{3})(?!(?:st|nd|rd|th)\b)", " ", text)
    text = re.sub(r"\b(\d+)(?:st|nd|rd|th)\b", lambda m: ordinal_words(int(m[1])), text, flags=re.IGNORECASE)
    text = re.sub(r"(?<=\d),(?=\d{3}\b)", "", text)
    return re.sub(r"\d+\.\d+|\d+", lambda m: _number(m.group()), text)


def _number(digits: str) -> str:
    return decimal_words(digits) if "." in digits else number_words(int(digits))


def _articles(text: str) -> str:
    text = re.sub(r"  +", " ", text)
    text = _ARTICLE.sub(lambda m: m.group().rstrip() + " the ", text)
    text = re.sub(r"\bwith slip stitch\b", "with a slip stitch", text)
    return re.sub(r"\b(form|into|in) ring\b", lambda m: f"{m[1]} {'a' if m[1] == 'form' else 'the'} ring", text)


_NUMBER_STARTS = {number_words(number) for number in range(20)} | {
    number_words(number) for number in range(20, 100, 10)
}


def _equals(found: re.Match[str]) -> str:
    """A gauge "makes", an abbreviation "means"."""
    return f"{found[1]} make " if _counted(found[1]) else f"{found[1]} means "


def _counted(left: str) -> bool:
    """Whether the words begin with a number word."""
    first = left.split()[0].split("-")[0].lower() if left.split() else ""
    return first in _NUMBER_STARTS


def _tidy(text: str) -> str:
    """Symbols out, pauses once, single spaces."""
    text = re.sub(r"^([^=]*?)\s*=\s*(?=\w)", _equals, text)
    text = text.replace("=", " equals ")
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
