"""Clean text -> the same text, length kept, without the full stops that only end an abbreviation:
"1 d.c. into 2nd ch. from hook" -> "1 dc   into 2nd ch  from hook".
"""

from __future__ import annotations

import re

from reader.text.dots import short_words, with_spaces
from reader.text.sought import Sought

LETTERS = frozenset(
    {"dc", "sc", "hdc", "htr", "dtr", "ttr", "ss", "psso", "yo", "yrn", "yon", "yfwd", "wfwd",
     "skp", "skpo", "wrn", "won", "wrp", "wfd", "yrp",
     "ssk", "sk", "mb", "tbl", "rs", "ws", "sd", "ld", "mc", "cc"}
)  # fmt: skip
"""Abbreviations that older books write with a full stop behind each letter."""
LETTERS_STOPPED = re.compile(r"\. ?[A-Za-z]\.")
DOTTED = re.compile(r"(?<![\w.])(?:[A-Za-z]\. ?){2,4}(?![A-Za-z]\b)")
ST_ST = Sought(("st. st.", "st.st."), r"\bst\. ?st\.", re.IGNORECASE)
_GOES_ON = r"\s*(?:\((?![A-Z][a-z]+ \w)|[a-z†,;:\])/]|\*(?!\**\s?[A-Z])|—|-+\s?[a-z0-9*(])"
_NUMBER = r"\s*\d+(?!\d*(?:st|nd|rd|th|d)\b)(?!\d|[.):])"
GOES_ON = re.compile(_GOES_ON)
GOES_ON_IN_FIGURES = re.compile(
    rf"{_GOES_ON}|{_NUMBER}|(?i:\s*\d+(?:st|nd|rd|th)\s+(?:and|to|-|row(?!s?\s*[:(—-])|st))"
)
BEFORE_FIGURES = frozenset(
    ["rep", "dec", "inc", "rem", "beg", "foll", "alt", "cont", "tog", "k", "p", "sl", "prev",
     "rept", "sk"]
)  # fmt: skip
SHORT = frozenset(
    ["st", "sts", "ch", "chs", "tr", "dc", "sc", "hdc", "htr", "dtr", "rnd", "rnds", "tch", "sp",
     "sps", "lp", "lps", "patt", "pat", "incl", "fwd", "wl", "wool", "bk", "kn", "bl", "bls", "blk",
     "grp", "gr", "n", "m", "mk", "pc", "pet", "dbl", "trs", "cl"]
)  # fmt: skip
"""Short words whose full stop is followed by what goes on with the sentence."""
SHADES = frozenset(["lt", "dk", "med"])
OF_A_COLOUR = re.compile(r"\s+[A-Z][a-z]")
"""Behind light, dark and medium the name of their colour: "2 rows Dk. Green"."""
PARTED = Sought(
    (".tr", ". tr", ".ch", ". ch"),
    r"(?<![\w.])(?:(?P<a>h|d|t|tr|half|dbl|quad|lg?)\. ?(?P<b>tr\b)|(?P<t>t)\. ?(?P<ch>ch\b))\.?"
    r"(?![\w])",
    re.IGNORECASE,
)
"""Names of two parts with a full stop behind each: "1 h.tr.", "t.ch."."""
ENDS = re.compile(r"\s*(?:[A-Z]|$)|[ ]*\n\s*\d|\s*\d+(?:st|nd|rd|th|d)\s+(?:row|rnd|round)\b")
A_CHAIN = re.compile(
    r"(?:\d(?:st|nd|rd|th|d)?|(?<!of )\bthe"
    r"|\b(?:first|second|third|fourth|fifth|sixth|next|each|every|last|end|turning|starting|same))"
    r"\s*$",
    re.IGNORECASE,
)
"""Before "ch." it is a chain that is worked into, or so many, and the stop may end the sentence;
elsewhere "ch. 5" makes chains.
"""
FIGURES = re.compile(r"\s*\d+\b(?!\s*(?:st|nd|rd|th|d)\b)")
TOTAL = re.compile(
    r"\s*\d+(?:\s*[(\[][\d,;:/\s-]+[)\]])?\s*(?:sts?|stitches)\b(?! times?\b)", re.IGNORECASE
)
"""Behind "K2 tog.", how many there are now, and not how many times."""


PLACES = frozenset(["sp", "sps", "lp", "lps", "st", "sts"])
THEN_CHAIN = re.compile(r"\s+ch \d")
"""Behind a place the next sentence of one who writes no capitals: "sl st to ch-3 sp. ch 3, dc"."""
ROW_TOTAL = re.compile(
    r"\s*(?:\d\d+|[4-9])(?: ?(?:sts?|stitches|sc|dc|hdc|tr))\.?[ \t]*"
    r"(?:\n|$|(?i:\d+(?:st|nd|rd|th) (?:row|r\w*d)\b|(?:next )?(?:row|r\w*d)\b))"
)
"""At a line's end, "sc to last 2, dec. 21 sc": how many there are now."""


WRAPPED = re.compile(r"[ ]*\n[ ]*\d{1,3}(?:[,;]|\.[ ]*(?:\n|$))")
"""Behind "k." at a line's end: its number begins the next line, and is no row's."""


def undotted(text: str) -> str:
    """The text without them; a full stop that may end a sentence stays, at the same place."""
    text = ST_ST.sub(lambda m: "st st".ljust(len(m.group())), text)
    text = DOTTED.sub(_joined, text) if LETTERS_STOPPED.search(text) else text
    text = PARTED.sub(_in_one, text)
    found = []
    for at, word, before in short_words(text):
        if before[-1:].isalnum() or before[-1:] in ("_", "."):
            continue
        in_figures = word in BEFORE_FIGURES
        behind = GOES_ON_IN_FIGURES if in_figures else GOES_ON
        if word in PLACES and THEN_CHAIN.match(text, at + 1):
            continue
        chains = word == "ch" and FIGURES.match(text, at + 1) and _makes_chains(text, at - 2)
        if word == "tog" and TOTAL.match(text, at + 1):
            continue
        if word in ("dec", "inc") and ROW_TOTAL.match(text, at + 1):
            continue
        wrapped = word in ("k", "p", "m") and WRAPPED.match(text, at + 1)
        wrapped = wrapped or (word in SHADES and OF_A_COLOUR.match(text, at + 1))
        short = in_figures or word in SHORT
        if wrapped or chains or (short and behind.match(text, at + 1)):
            found.append(at)
    return with_spaces(text, found)


def _makes_chains(text: str, at: int) -> bool:
    return A_CHAIN.search(text, max(0, at - 16), at) is None


def _in_one(found: re.Match[str]) -> str:
    said = found.group()
    bare = "".join(part for part in found.groups() if part)
    ends = said.endswith(".") and ENDS.match(found.string, found.end())
    return (bare.ljust(len(said) - 1) + ".") if ends else bare.ljust(len(said))


def _joined(found: re.Match[str]) -> str:
    said = found.group()
    bare = re.sub(r"[. ]", "", said)
    if bare.lower() not in LETTERS:
        return said
    room = len(said)
    if ENDS.match(found.string, found.end()):
        return (bare.ljust(room - 1 - said.endswith(" ")) + ".").ljust(room)
    return bare.ljust(room)
