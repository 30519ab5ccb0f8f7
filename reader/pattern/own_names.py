"""Crochet stitches that a pattern names in its own words, wherever in a line it does so: '"trough"
- 3 dc worked together', "twin = 2 sc in one st; pinch = sc 2 together", "tog = invisible decrease".
"""

from __future__ import annotations

import re

from reader.pattern.named_groups import OWN_KEY, parts_of
from reader.terms.crafts import Terms
from reader.terms.forms import forms, name_of, stitch_named
from reader.terms.numbers import word_number
from reader.terms.stitches import Craft, Kind, Stitch
from reader.text.sought import Sought

_NAME = r"(?P<name>[A-Za-z][A-Za-z0-9-]{1,13})"
_BEGINS = r"(?:^[ \t#*>-]*|(?<=[;.,:|(] )|(?<=// )|(?<=\bone )|(?<=\ba )|(?<=//)|(?<=[;|(]))"
ENTRY = Sought(
    ("=", '"'),
    rf"{_BEGINS}(?:\"{_NAME}\"(?P<over1> over \d (?:sts?|stitches))?\s*(?:=|-|—|:|\bmeans\b|\bis\b)"
    rf"|{_NAME.replace('name', 'bare')}(?P<over2> over \d (?:sts?|stitches))?\s*=)"
    r"\s*(?P<meaning>[^=\n;|\"]{3,200}?)"
    r"(?=\.\s|\.?$|;|\s*//|\||\)|,\s*\"?[A-Za-z][A-Za-z0-9-]{0,13}\"?\s*=)",
    re.MULTILINE,
)
_N = r"(?P<n>\d|one|two|three|four|five|six|seven)"
_OF = r"(?P<of>[a-z][a-z ]{0,22}?)?(?: ?\bst(?:itche)?s?)?"
IN_ONE = re.compile(
    rf"(?:work |make )?{_N} ?{_OF},? (?:(?:all|worked|made) )*(?:in|into) "
    r"(?:the |a )?(?:one|1|same|single|next|each)\b(?: (?:st|stitch|sp|space|place|spot|ch|loop))?"
)
TOGETHER = re.compile(
    rf"(?:work |take )?(?:{_N} ?{_OF}|(?P<first>[a-z]{{2,3}}) (?P<m>\d)) "
    r"(?:(?:worked|taken|made|crocheted|closed|drawn|joined) )?(?:tog(?:ether)?|as one|into one)"
    r"(?: (?:over|in|into) (?:the )?(?:next )?\d (?:sts?|stitches|places))?"
)
CLUSTERED = re.compile(
    rf"(?:work )?{_N} ?{_OF} (?:(?:worked|closed|drawn|finished) )?(?:off )?"
    r"(?:tog(?:ether)?|as one)"
    r" (?:in|into) (?:the |a )?(?:one|1|same|single|next)\b(?: (?:st|stitch|sp|space|place))?"
)
NO_NAME = re.compile(
    r"(?:r|rnd|round|row|rd)s?\d*|note|notes|size|sizes|hook|yarn|gauge|rep|next|ch\d*|st|sts|sp|sps"
    r"|mc|cc|[a-c]|pm|sm|rs|ws|total|and|with", re.IGNORECASE,
)
USED = 2
"""How often a name stands in the text at least, its definition counted."""


def own_names(text: str, terms: Terms) -> dict[str, Stitch]:
    """The stitches that the text names so, by their names in small letters; names that the trade
    has already stay as they are.
    """
    found: dict[str, Stitch] = {}
    known = forms(Craft.CROCHET, terms)
    for one in ENTRY.finditer(text[:200_000]):
        said = one["name"] or one["bare"]
        name = said.lower()
        if name in known or name in found or NO_NAME.fullmatch(name):
            continue
        stitch = _meant(name, one["meaning"].lower().strip(), one["over1"] or one["over2"], terms)
        used = re.findall(rf"(?<![\w-]){re.escape(name)}(?![\w-])", text, re.IGNORECASE)
        if stitch is not None and len(used) >= USED:
            found[name] = stitch
    return found


def _meant(name: str, low: str, over: str | None, terms: Terms) -> Stitch | None:
    low = re.sub(r"^(?:an?|the) ", "", re.sub(r"\s*\([^)]*\)", "", low)).strip(" .,")
    several, joined = IN_ONE.fullmatch(low), TOGETHER.fullmatch(low)
    if CLUSTERED.fullmatch(low):
        return Stitch(name, name, 1, 1, Craft.CROCHET, Kind.CLUSTER, OWN_KEY, 3)
    if joined is not None:
        said = joined["n"] or joined["m"]
        number = int(said) if said.isdigit() else word_number(said) or 0
        base = name_of((joined["of"] or joined["first"] or "").strip(), Craft.CROCHET, terms)
        return _own(name, number, 1, Kind.DECREASE, base or "sc") if number > 1 else None
    if several is not None:
        number = int(several["n"]) if several["n"].isdigit() else word_number(several["n"]) or 0
        of = (several["of"] or "").strip()
        base = name_of(of, Craft.CROCHET, terms)
        if number < 2 or (of and not base):
            return None
        if number == 2:
            return _own(name, 1, 2, Kind.INCREASE, base or "sc")
        parts = parts_of(f"{number} {of}", terms) if of else ()
        return Stitch(
            name, name, 1, number, Craft.CROCHET, Kind.GROUP, OWN_KEY, 3, base=base, parts=parts
        )
    if over is not None and "tog" not in low:
        width = int(re.sub(r"\D", "", over))
        return Stitch(name, name, width, width, Craft.CROCHET, Kind.STITCH, OWN_KEY, 3)
    alias = name_of(low, Craft.CROCHET, terms)
    return stitch_named(alias, Craft.CROCHET) if alias else None


def _own(name: str, takes: int, makes: int, kind: Kind, base: str) -> Stitch:
    return Stitch(name, name, takes, makes, Craft.CROCHET, kind, OWN_KEY, 1, base=base)
