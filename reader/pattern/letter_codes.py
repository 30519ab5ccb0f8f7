"""Stitches told by single capital letters, "X = single crochet, V = 2X in one st": (4X,V)*6 ->
stitches of the pattern's own. The letters become circled ones, so that no X is taken for "times".
"""

from __future__ import annotations

import re

from reader.terms.crafts import Terms
from reader.terms.forms import name_of, stitch_named
from reader.terms.stitches import Craft, Kind, Stitch

OWN_CODE = "the pattern's own letters"
USUAL = {"X": "sc", "V": "2 sc in one st", "A": "2 sc together", "W": "3 sc in one st",
         "M": "3 sc together", "T": "hdc", "F": "dc"}  # fmt: skip
"""What the letters mean where a pattern of such rows does not say: common practice for toys."""
_SEPARATED = r"(?:[ \t]{2,}|\t|[;,|/]\s*|\.\s+)"
MEANS = re.compile(r"[A-Z][ ]?(?:[=:]|[-—] )")
"""Without this no letter is told; sooner found than all of DEFINITION."""
DEFINITION = re.compile(
    rf"(?:^[ \t*-]*|{_SEPARATED})(?P<name>[A-Z])[ ]?(?:[=:]|[-—](?= ))[ ]?"
    r"(?P<meaning>[^=\n]{2,60}?)"
    rf"(?=\s*$|\.\s|{_SEPARATED}[A-Z]{{1,4}}[ ]?(?:[=:]|[-—] ))",
    re.MULTILINE,
)
IN_USE = re.compile(r"\(\s*\d*X\s*,\s*\d*[VA]\s*\)")
LEAST_IN_USE = 2
_NUMBER = r"(?P<n>\d|two|three|four|five)"
IN_ONE = re.compile(
    rf"{_NUMBER} ?(?P<of>[a-z ]*?)(?: ?\bst(?:itche)?s?)?,? (?:(?:all|worked) )?"
    r"(?:in|into) (?:the )?"
    r"(?:one|1|a|same|a single|each|next)(?: (?!and\b)\w+)?"
)
TOGETHER = re.compile(
    rf"{_NUMBER} ?(?P<of>[a-z ]*?)(?: ?\bst(?:itche)?s?)?"
    r" (?:(?:worked|taken|made|crocheted|closed|drawn|joined) )?(?:tog(?:ether)?|as one|into one)"
)
WORDS = {"two": 2, "three": 3, "four": 4, "five": 5}
CIRCLED = {chr(ord("A") + at): chr(ord("ⓐ") + at) for at in range(26)}


def letter_codes(text: str, craft: Craft, terms: Terms) -> dict[str, Stitch]:
    """The stitch that each capital letter stands for; {} where the text tells none so."""
    if craft is not Craft.CROCHET:
        return {}
    defined = DEFINITION.finditer(text) if MEANS.search(text) else ()
    told = {one["name"]: one["meaning"] for one in defined}
    used = len(IN_USE.findall(text)) >= LEAST_IN_USE
    if used and not told:
        told = USUAL
        terms = Terms.US
    elif used:
        told.setdefault("X", "sc" if terms is Terms.US else "dc")
    found: dict[str, Stitch] = {}
    for _ in range(2):
        # A letter may be told by another that is told behind it.
        for letter, meaning in told.items():
            stitch = _meant(meaning.lower().strip(" .,;"), found, terms)
            if stitch is not None:
                found.setdefault(letter, stitch)
    return found


def _meant(low: str, codes: dict[str, Stitch], terms: Terms) -> Stitch | None:
    low = re.sub(r"\s*\([^)]*\)$", "", low)
    several, joined = IN_ONE.fullmatch(low), TOGETHER.fullmatch(low)
    found = several or joined
    if found is None:
        name = name_of(low, Craft.CROCHET, terms) or name_of(f"{low} stitch", Craft.CROCHET, terms)
        return stitch_named(name, Craft.CROCHET) if name else None
    of = found["of"].strip() or "single crochet"
    plain = codes.get(of.upper()) or _meant(of, {}, terms if found["of"].strip() else Terms.US)
    if plain is None:
        return None
    number = WORDS.get(found["n"]) or int(found["n"])
    takes, makes = (1, number) if several else (number, 1)
    kind = Kind.INCREASE if several else Kind.DECREASE
    spoken = f"{number} {plain.spoken} {'in one stitch' if several else 'together'}"
    return Stitch(low, spoken, takes, makes, Craft.CROCHET, kind, OWN_CODE, 1, base=plain.name)


def with_circled(text: str, codes: dict[str, Stitch]) -> str:
    """The text with those letters circled where they stand alone; length kept."""
    if not codes:
        return text
    letters = "".join(codes)
    # "A row of ...": a letter before a word in small letters is the article, unless counted.
    alone = re.compile(
        rf"(?<![A-Za-z'])(?:(?<=\d)[{letters}]|[{letters}](?! [a-z]))(?![A-Za-z'\d])"
    )
    return TIMES_FIRST.sub(_times_behind, alone.sub(lambda found: CIRCLED[found.group()], text))


TIMES_FIRST = re.compile(
    r"(?<![\w)\]])(?P<times>\d{1,2}) ?(?P<open>[(\[])(?P<body>[^()\[\]\n]*[ⓐ-ⓩ][^()\[\]\n]*)"
    r"(?P<close>[)\]])(?P<blank> ?)(?![*x×]|\d+ times)"
)
"""How often before a list of letters: "6(X,V)"."""


def _times_behind(found: re.Match[str]) -> str:
    """ "6(X, V)" as "(X,V)x6"; as it is where the sign has no room."""
    said = found.group()
    body = found["body"] if found["blank"] else found["body"].replace(", ", ",", 1)
    new = f"{found['open']}{body}{found['close']}x{found['times']}"
    return new.ljust(len(said)) if len(new) <= len(said) else said
