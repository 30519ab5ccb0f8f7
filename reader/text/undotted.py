"""Clean text -> the same text, length kept, without the full stops that only end an abbreviation:
"1 d.c. into 2nd ch. from hook" -> "1 dc   into 2nd ch  from hook"; and with the chains of a space
behind it.
"""

from __future__ import annotations

import re

LETTERS = frozenset(
    {"dc", "sc", "hdc", "htr", "dtr", "ttr", "ss", "psso", "yo", "yrn", "yon", "yfwd", "wfwd",
     "skp", "skpo", "ssk", "sk", "mb", "tbl", "rs", "ws", "sd", "ld", "mc", "cc"}
)  # fmt: skip
"""Abbreviations that older books write with a full stop behind each letter."""
DOTTED = re.compile(r"(?<![\w.])(?:[A-Za-z]\. ?){2,4}(?![A-Za-z]\b)")
ST_ST = re.compile(r"\bst\. ?st\.", re.IGNORECASE)
_GOES_ON = r"(?-i:\s*(?:[a-z†(,;:\])/]|\*(?!\s?[A-Z])|—|-+\s?[a-z0-9*(]))"
_NUMBER = r"(?-i:\s*\d+(?!\d*(?:st|nd|rd|th|d)\b)(?!\d|[.):]))"
SHORT = re.compile(
    r"(?<![\w.])(?:(?:rep|dec|inc|rem|beg|foll|alt|cont|tog|[kp]|sl|prev|rept)\."
    rf"(?={_GOES_ON}|{_NUMBER}|\s*\d+(?:st|nd|rd|th)\s+(?:and|to|-|row|st))"
    r"|(?:sts?|chs?|tr|dc|sc|hdc|htr|d ?tr|rnds?|tch|sps?|lps?|patt|pat|incl|fwd|wl|wool|bk|kn"
    rf"|bls?|blk|grp|gr|n|m|mk|pc|pet|dbl|trs|cl)\.(?={_GOES_ON}))",
    re.IGNORECASE,
)
"""A short word whose full stop is followed by what goes on with the sentence."""
SPACE_OF = re.compile(
    r"(?P<before>\b(?:next|each|same|last|the|any|first|every|corner)\s)?"
    r"\b(?P<n>\d+)(?P<gap>[ -]?)ch(?=[ -](?:sp|space|lp|loop|arch|corner|gap)(?P<many>s?)\b)",
    re.IGNORECASE,
)
"""A space named by its chains, number first: "next 2-ch sp"."""
ENDS = re.compile(r"\s*(?:[A-Z]|$)")


def undotted(text: str) -> str:
    """The text without them; a full stop that may end a sentence stays, at the same place."""
    for sign in ("+", "#", "@"):
        if re.search(rf"\brep(?:eat)?\.? (?:from )?{re.escape(sign)}", text, re.IGNORECASE):
            # A sign of the writer's own in place of the star.
            text = re.sub(rf"(?<=\s){re.escape(sign)}(?=\s)", "*", text)
    text = SPACE_OF.sub(_chains_first, text)
    text = ST_ST.sub(lambda m: "st st".ljust(len(m.group())), text)
    text = DOTTED.sub(lambda m: _joined(m.group(), text[m.end() :]), text)
    return SHORT.sub(lambda m: m.group()[:-1] + " ", text)


def _chains_first(said: re.Match[str]) -> str:
    """ "next 2-ch sp" -> "next ch-2 sp"; "2 ch sps" may be two spaces and stays."""
    if said["gap"] != "-" and (said["many"] or not said["before"]):
        return said.group()
    return f"{said['before'] or ''}ch{said['gap']}{said['n']}"


def _joined(said: str, after: str) -> str:
    bare = re.sub(r"[. ]", "", said)
    if bare.lower() not in LETTERS:
        return said
    room = len(said)
    if ENDS.match(after):
        return (bare.ljust(room - 1 - said.endswith(" ")) + ".").ljust(room)
    return bare.ljust(room)
