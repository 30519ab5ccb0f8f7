"""Text with short forms in, the same text with the words for them out; numbers of stitches go
along.
"""

from __future__ import annotations

import re

from reader.plan.step import Reading
from reader.wording.amounts import measures_in_words
from reader.wording.numbers import number_words
from reader.wording.stitch_words import BOTH, word_for

_STITCH = (
    r"(?:s ?c|h ?d ?c|d ?c|t ?r|htr|h tr|d ?tr|tr ?tr|e?sc|"
    r"[fb]p ?(?:sc|hdc|dc|tr|htr|dtr)|f?sc|f?hdc|f?dc)"
)
_TOG = re.compile(
    rf"\b(?P<base>{_STITCH}|k|p|ss|st|sl)\s?(?P<count>\d|two|three|"
    rf"four)\s?tog(?:ether)?(?P<loop>tbl|\s+tbl)?\b",
    re.IGNORECASE,
)
_KNIT_RUN = re.compile(
    r"(?<![A-Za-z])(?P<deed>[kp])\s?(?P<count>\d+)(?=[^\w]|$|[kp]\d|tbl)", re.IGNORECASE
)
_SLIP_RUN = re.compile(r"\bsl\s?(?P<count>\d+)(?P<way>[kp])?(?=\b)(?!\s*st\b)", re.IGNORECASE)
_CHAIN_SPACE = re.compile(
    r"\bch[-\s]?(?P<count>\d+)[-\s]*(?P<what>sps?|lps?|loops?|spaces?|arch(?:es)?)\b", re.IGNORECASE
)
_CHAIN = re.compile(r"\b(?:ch|chain)[-\s]?(?P<count>\d+)\b", re.IGNORECASE)
_STITCH_RUN = re.compile(
    rf"(?<!\d )(?<![\w-])(?P<stitch>{_STITCH})\s?(?P<count>\d+)\b(?!\s*(?:tog|more\b|times\b|"
    rf"to\b|st\b))",
    re.IGNORECASE,
)
_REMAIN = re.compile(
    r"\b(?P<noun>sts?|stitches|rows|rnds)\s+rem\b\.?(?!\s*(?:sts?|stitches))", re.IGNORECASE
)
_FORM = re.compile(
    r"(?<![\w'])(?:d trc|d tr|rev st st|st st|g st|sl sts?|slip sts?|loop sts?|puff sts?|s d c|"
    r"h d c|tr tr c|d tr c|[sd] c|h dc|tr c|tr tr|"
    r"[fb]p (?:sc|hdc|dc|tr|htr|dtr)|rev (?:sc|dc)|lp sts?|v[- ]sts?|x[- ]sts?|t[- ]ch|"
    r"ch[- ](?:sps?|lps?)|inv\.? dec|wl fwd|"
    r"[a-z]+(?:[&'/+][a-z]+)+|w&t|k1f&b|p1f&b|\d/\d ?[lr](?:c|t|pc)|[ct]\d+[fblr]p?|[kp]-wise|"
    r"[a-z]+\d+[a-z]+\d*|[a-z]+\d*)(?![\w])\.?",
    re.IGNORECASE,
)
_DEFINED = re.compile(r"(?<![\w&/-])(?<!\d )([A-Za-z][A-Za-z0-9&/]{0,6})\s*=(?=\s*[A-Za-z0-9])")
_COLOUR = re.compile(
    r"\b(with|to|in|join|using|drop|attach|from|yarn|change to|cut)\s+(?:(?:colou?r|"
    r"col\.?)\s+)?(?-i:([A-H]))(?![\w'&-])(?!\s+\d)",
    re.IGNORECASE,
)
_COLOUR_FIRST = re.compile(
    r"(?:^|(?<=[,;] ))([A-H]) (?=(?:\d+ )?(?:sc|dc|hdc|tr|inc|dec|k\d|p\d|sc2tog|dc2tog)\b)"
)
"""A colour letter in front of its stitches, "A sc 3"."""
_CROSSES = re.compile(r"(?<![\w/])\d/\d ?[lr](?:c|t|pc)\b", re.IGNORECASE)


def short_forms_in_words(text: str, reading: Reading) -> str:
    """The text with abbreviations, runs ("k2"), decreases and measures in words; other digits
    stay.
    """
    text = _COLOUR_FIRST.sub(r"with colour \1 ", text)
    text = _REMAIN.sub(lambda m: f"{m['noun']} remain", text)
    text = _TOG.sub(lambda m: _together(m, reading), text)
    text = _CHAIN_SPACE.sub(
        lambda m: f"chain {number_words(int(m['count']))} {_space(m['what'])}", text
    )
    text = _CHAIN.sub(lambda m: f"chain {_count(m['count'])}", text)
    if reading.craft == "knitting":
        text = _CROSSES.sub(lambda m: word_for(m.group(), reading), text)
        text = _KNIT_RUN.sub(_knit_run, text)
        text = _SLIP_RUN.sub(_slip_run, text)
    else:
        text = _STITCH_RUN.sub(_stitch_run, text)
    text = measures_in_words(text)
    text = _COLOUR.sub(lambda m: f"{m[1]} colour {m[2].upper()}", text)
    text = re.sub(r"(?<=\d) ([A-H])(?=[,.;]|$)", r" in colour \1", text)
    text = _DEFINED.sub(lambda m: _defined(m, reading), text)
    return _FORM.sub(lambda m: _form(m, reading), text)


def _defined(found: re.Match[str], reading: Reading) -> str:
    """A known short form in front of its meaning is spelt, so that "sc = single crochet" makes
    sense.
    """
    form = found[1]
    if not word_for(form, reading):
        return found.group()
    return f"{' '.join(re.sub(r'[^A-Za-z0-9]', '', form).upper())} ="


def _together(found: re.Match[str], reading: Reading) -> str:
    base = found["base"]
    word = {"sl": "slip", "st": "stitch"}.get(base.lower()) or word_for(base, reading) or base
    count = found["count"]
    many = number_words(int(count)) if count.isdigit() else count
    loop = " through the back loop" if found["loop"] else ""
    return f"{word} {many} together{loop}"


def _stitch_run(found: re.Match[str]) -> str:
    """ "sc 5" and "Sc 5" as "5 sc"."""
    stitch = found["stitch"]
    return f"{found['count']} {stitch.lower() if stitch[1:].islower() else stitch}"


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


_KEEP = {
    "a",
    "i",
    "an",
    "in",
    "on",
    "no",
    "to",
    "of",
    "or",
    "so",
    "at",
    "by",
    "it",
    "is",
    "be",
    "do",
    "up",
    "all",
}


_EVERYDAY = {"seam", "drop", "surf"}
"""Everyday words that stand for a stitch only where its number follows, as "seam 1" of old books
for one purled."""
_ENDS = re.compile(r"\s*$|\s+(?:[A-Z\d]|$)")
"""After a short form's stop: the end of a sentence, and not only the end of the short form."""


def _form(found: re.Match[str], reading: Reading) -> str:
    written = found.group()
    stop = "." if written.endswith(".") else ""
    bare = written.rstrip(".")
    low = bare.lower()
    counted = re.match(r"\s*\d", found.string[found.end() :])
    if low in _EVERYDAY and not counted:
        return bare + stop
    if low == "st" and _several(found):
        return "stitches" + (stop if _ENDS.match(found.string, found.end()) else "")
    if low in _KEEP or (_is_english(low) and low not in BOTH):
        return _calm(bare) + stop
    if re.fullmatch(r"[A-Z] [A-Z]", bare):
        return bare + stop
    if len(low) == 1 and not _single_letter(bare, reading):
        return bare + stop
    words = {"Dk": "dark", "Lt": "light"}.get(bare) or word_for(bare, reading)
    glued = re.fullmatch(r"([A-Za-z]+)(\d+)", bare)
    if not words and glued and word_for(glued[1], reading):
        words = f"{word_for(glued[1], reading)} {glued[2]}"
    if words:
        end = stop if bare not in ("Dk", "Lt") and _ENDS.match(found.string, found.end()) else ""
        return _like(found, words) + end
    return _calm(bare) + stop


def _several(found: re.Match[str]) -> bool:
    """Whether a short form stands behind a number above one and is not the first half of a name:
    "sc in all 24 st", not "2 st markers".
    """
    number = re.search(r"(\d+)\s*$", found.string[: found.start()])
    named = re.match(r"\.?[\s-]*(?:markers?|holders?|patt|rep|cable)", found.string[found.end() :])
    return bool(number and int(number[1]) > 1 and not named)


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


def _like(found: re.Match[str], words: str) -> str:
    """The words with a capital where the written form began a sentence with one, as "Sc" and "K"
    can.
    """
    written = found.group()
    capital = written[0].isupper() and (len(written) == 1 or written[1:2].islower())
    before = found.string[: found.start()].rstrip()
    begins = not before or before[-1] in ".!?:"
    return words[0].upper() + words[1:] if capital and begins else words


def _calm(word: str) -> str:
    """A word in capitals as a synthesiser reads it best; two or three letters without a vowel are
    spelt out.
    """
    if word.isupper() and len(word) > 2 and any(vowel in word for vowel in "AEIOUY"):
        return word.capitalize()
    if (
        word.isalpha()
        and 1 < len(word) < 5
        and not any(vowel in word.lower() for vowel in "aeiouy")
    ):
        return " ".join(word.upper())
    if word == "US" or word == "UK":
        return " ".join(word)
    return word
