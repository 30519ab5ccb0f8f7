"""A pattern's key and what it explains -> the stitches it defines itself."""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.cursor import Special
from reader.pattern.named_groups import GROUPS, OWN_KEY, parts_of
from reader.terms.crafts import Terms
from reader.terms.forms import forms, name_of, stitch_named
from reader.terms.stitches import Craft, Kind, Stitch
from reader.text.sought import Sought

DEFINED = re.compile(
    r"\(\s*([A-Za-z][A-Za-z -]{1,24}?)\s*[:=]\s*([^()]{6,240}(?:\([^()]*\)[^()]*)*)\)"
)
KEY_LINE = re.compile(
    r"(?:^[ \t#*-]*| {3,}(?=\S{1,8} ?=))([A-Za-z][A-Za-z0-9/& -]{0,22}?(?:\s*\([^)\n]{1,20}\))?)"
    r"\s*(?:=\s*(?=[0-9])|(?:=|:|—| - )\s*(?=[A-Za-z(\[*]))"
    r"((?:(?! {3,}\S{1,8} ?=)[^\n]){2,240})(?= {3,}|$)",
    re.MULTILINE,
)
GROUP_LINE = Sought(
    (*GROUPS, "cluster", "puff", "bobble", "popcorn"),
    r"^[ \t#*-]*((?:shell|fan|v[- ]?st(?:itch)?|cluster|scallop|puff|bobble|popcorn)"
    r"(?: st(?:itch)?)?(?:\s*\([^)\n]{1,20}\))?)\s*(?:=|:|—| - )\s*(\d[^\n]{2,240})$",
    re.MULTILINE | re.IGNORECASE,
)
"""A group's meaning that begins with a number: "Shell (sh): 5 dc in next st"."""
WORD_NUMBER = {"one": 1, "two": 2, "three": 3}
OF_HOOK = re.compile(r"\b(?:crochet|treble|double|insert (?:the )?hook|yo\b|yarn over)")
"""A meaning that tells how a stitch is made."""
BEGINS_WORK = re.compile(
    r"(?:with [^,.]{1,30},? )?(?:ch(?:ain)?|cast on|co|make a ch\w*) (?:of )?\d+\b"
    r"|r\d|(?:rnd|round|row|rd)s?\b|\d+(?:st|nd|rd|th) (?:rnd|round|row)", re.IGNORECASE
)
"""Not a meaning: the part of that name begins."""
INCREASE = re.compile(r"inc|increase|inc st")
ONE_PLACE = re.compile(
    r"^[\(\[]?\s*((?:\d+\s*)?(?:sc|hdc|dc|tr)(?:\s*,\s*(?:ch\s*\d+|(?:\d+\s*)?(?:sc|hdc|dc"
    r"|tr)))*)\s*[\)\]]?\s*"
    r"(?:all )?in(?:to)? (?:the )?(?:one|same|next|indicated|a single|specified|st|each)\b"
    r"[^,;.(){}\d]{0,30}[\)\]]?\s*(?:$|[.;](?!\d))"
)
"""A definition that puts several stitches into one place, and nothing else: "Edging: (sc in next
st, sk 1) around" is worked."""
DRAWN_TOGETHER = re.compile(
    r"\b(?:keep|hold|leav|retain)\w*\b[^.;]{0,24}\blast (?:\w+ )?(?:loop|lp)s?\b"
    r"|\b(?:through|thru|off) (?:all|\d+) (?:the )?(?:remaining )?(?:loops|lps)"
    r"|\b(?:remove|take out|slip out) (?:the |your )?hook|\bdrop(?:ped)? (?:the )?(?:loop|lp|st)\b"
)
"""A definition that draws them together into one."""


CLUSTERED = re.compile(r"\b(?:loop st|puff|bobble|popcorn|cluster)")
"""Names of several stitches drawn into one."""


NO_KEY = re.compile(
    r"(?:r\d|rnd|round|row|next|note|size|hook|yarn|gauge|rep|to \w+|with|ch \d)"
)
"""How a line before a colon begins that tells no meaning, in small letters."""


def specials_in(
    text: str, craft: Craft, terms: Terms, groups: Sequence[tuple[int, Special]]
) -> tuple[dict[str, Special], dict[str, str]]:
    """Stitches the pattern defines itself, and its key as written. groups: named where they are
    made.
    """
    key: dict[str, str] = {}
    specials: dict[str, Special] = {}
    told = text[:200_000]
    lines = [*KEY_LINE.finditer(told), *GROUP_LINE.finditer(told), *DEFINED.finditer(told)]
    for found in lines:
        name, meaning = found.group(1).strip(), found.group(2).strip()
        short = name.lower() if "(" not in name else _without_brackets(name).lower()
        if NO_KEY.match(short) or len(short) > 22 or BEGINS_WORK.match(meaning):
            continue
        key.setdefault(short, meaning)
        stitch = _defined(short, meaning, craft, terms)
        if stitch is not None:
            specials.setdefault(short, Special(short, stitch))
            alias = re.search(r"\(([^)]{1,12})\)", name)
            if alias:
                specials.setdefault(alias.group(1).strip().lower(), Special(short, stitch))
    for _, special in groups:
        specials.setdefault(special.name, special)
    return specials, key


def _without_brackets(name: str) -> str:
    return re.sub(r"\s*\(.*\)", "", name).strip()


def _defined(name: str, meaning: str, craft: Craft, terms: Terms) -> Stitch | None:
    """What a definition takes and makes, None where the stitch table knows better."""
    low = meaning.lower()
    if INCREASE.fullmatch(name):
        return _defined_increase(name, low, craft)
    if craft is not Craft.CROCHET:
        return None
    group = ONE_PLACE.match(low)
    usual = name_of(name, craft, Terms.US) or name
    if group and DRAWN_TOGETHER.search(low):
        return Stitch(usual, name, 1, 1, craft, Kind.CLUSTER, OWN_KEY, 1)
    if group:
        made = re.findall(r"(?:(\d+)\s*)?(?:sc|hdc|dc|tr)\b", group.group(1))
        spaces = len(re.findall(r"\bch", group.group(1)))
        makes = sum(int(number or 1) for number in made)
        parts = parts_of(group.group(1), terms) if spaces else ()
        unit = "v-st" if name == "v" else name
        return Stitch(
            unit, name, 1, makes, craft, Kind.GROUP, OWN_KEY, 3, spaces=spaces, parts=parts
        )
    known = forms(craft, Terms.US).get(f"{name} st")
    if known is not None:
        return stitch_named(known, craft)
    plain = re.fullmatch(r"[a-z]{2,8}", name) and name not in forms(craft, Terms.US)
    if plain and name not in forms(craft, Terms.UK) and OF_HOOK.search(low):
        takes = 2 if re.search(r"\btog(?:ether)?\b|\bdecrease", low) else 1
        return Stitch(name, name, takes, 1, craft, Kind.STITCH, OWN_KEY, 3)
    if CLUSTERED.search(name) or CLUSTERED.match(low):
        # Whatever form of it the key explains, it is the stitch that other rows call otherwise.
        return Stitch(usual, name, 1, 1, craft, Kind.CLUSTER, OWN_KEY, 1)
    return None


def _defined_increase(name: str, low: str, craft: Craft) -> Stitch | None:
    """ "inc = 2 sc in one st"."""
    found = re.match(r"^(\d+|two|three) ", low)
    said = found.group(1) if found else "0"
    amount = int(said) if said.isdigit() else WORD_NUMBER[said]
    in_same = amount > 1 and craft is Craft.CROCHET and "same" in low
    if in_same or "one st" in low or "in one" in low or "next st" in low:
        return Stitch(name, name, 1, max(amount, 2), craft, Kind.INCREASE, OWN_KEY, 1, base="sc")
    return None
