"""Clean text -> the same text, length kept, without the full stops that only end an abbreviation:
"1 d.c. into 2nd ch. from hook" -> "1 dc   into 2nd ch  from hook"; and with the chains of a space
behind it.
"""

from __future__ import annotations

import re

from reader.text.dots import short_words

LETTERS = frozenset(
    {"dc", "sc", "hdc", "htr", "dtr", "ttr", "ss", "psso", "yo", "yrn", "yon", "yfwd", "wfwd",
     "skp", "skpo", "ssk", "sk", "mb", "tbl", "rs", "ws", "sd", "ld", "mc", "cc"}
)  # fmt: skip
"""Abbreviations that older books write with a full stop behind each letter."""
DOTTED = re.compile(r"(?<![\w.])(?:[A-Za-z]\. ?){2,4}(?![A-Za-z]\b)")
ST_ST = re.compile(r"\bst\. ?st\.", re.IGNORECASE)
_GOES_ON = r"\s*(?:[a-z†(,;:\])/]|\*(?!\s?[A-Z])|—|-+\s?[a-z0-9*(])"
_NUMBER = r"\s*\d+(?!\d*(?:st|nd|rd|th|d)\b)(?!\d|[.):])"
GOES_ON = re.compile(_GOES_ON)
GOES_ON_IN_FIGURES = re.compile(
    rf"{_GOES_ON}|{_NUMBER}|(?i:\s*\d+(?:st|nd|rd|th)\s+(?:and|to|-|row|st))"
)
BEFORE_FIGURES = frozenset(
    ["rep", "dec", "inc", "rem", "beg", "foll", "alt", "cont", "tog", "k", "p", "sl", "prev",
     "rept"]
)  # fmt: skip
SHORT = frozenset(
    ["st", "sts", "ch", "chs", "tr", "dc", "sc", "hdc", "htr", "dtr", "rnd", "rnds", "tch", "sp",
     "sps", "lp", "lps", "patt", "pat", "incl", "fwd", "wl", "wool", "bk", "kn", "bl", "bls", "blk",
     "grp", "gr", "n", "m", "mk", "pc", "pet", "dbl", "trs", "cl"]
)  # fmt: skip
"""Short words whose full stop is followed by what goes on with the sentence."""
SPACE_OF = re.compile(
    r"(?P<n>\d(?<!\w\d)\d*)(?P<gap>[ -]?)ch"
    r"(?=[ -](?:sp|space|lp|loop|arch|corner|gap)(?P<many>s?)\b)",
    re.IGNORECASE,
)
"""A space named by its chains, number first: "next 2-ch sp"."""
ONE_OF_THEM = re.compile(
    r"\b(?:next|each|same|last|the|any|first|every|corner)\s$", re.IGNORECASE
)
"""Before the number, these tell that it is of chains and not of spaces."""
ENDS = re.compile(r"\s*(?:[A-Z]|$)")


def undotted(text: str) -> str:
    """The text without them; a full stop that may end a sentence stays, at the same place."""
    for sign in ("+", "#", "@"):
        back = rf"\brep(?:eat)?\.? (?:from )?{re.escape(sign)}"
        if sign in text and re.search(back, text, re.IGNORECASE):
            # A sign of the writer's own in place of the star.
            text = re.sub(rf"(?<=\s){re.escape(sign)}(?=\s)", "*", text)
    text = SPACE_OF.sub(_chains_first, text)
    text = ST_ST.sub(lambda m: "st st".ljust(len(m.group())), text)
    text = DOTTED.sub(_joined, text)
    out = list(text)
    for at, word, before in short_words(text):
        if before[-1:].isalnum() or before[-1:] in ("_", "."):
            continue
        in_figures = word in BEFORE_FIGURES
        behind = GOES_ON_IN_FIGURES if in_figures else GOES_ON
        if (in_figures or word in SHORT) and behind.match(text, at + 1):
            out[at] = " "
    return "".join(out)


def _chains_first(said: re.Match[str]) -> str:
    """ "next 2-ch sp" -> "next ch-2 sp"; "2 ch sps" may be two spaces and stays."""
    before = said.string[max(0, said.start() - 9) : said.start()]
    if said["gap"] != "-" and (said["many"] or not ONE_OF_THEM.search(before)):
        return said.group()
    return f"ch{said['gap']}{said['n']}"


def _joined(found: re.Match[str]) -> str:
    said = found.group()
    bare = re.sub(r"[. ]", "", said)
    if bare.lower() not in LETTERS:
        return said
    room = len(said)
    if ENDS.match(found.string, found.end()):
        return (bare.ljust(room - 1 - said.endswith(" ")) + ".").ljust(room)
    return bare.ljust(room)
