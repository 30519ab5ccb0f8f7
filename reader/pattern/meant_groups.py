"""What a pattern says its groups are made of, in any manner: "V-shell (3 tr, 2 ch, 3 tr) all in
same place", "For a shell, work 5 dc in one st", "5 dc in one st makes a shell".

A name, a list of stitches and the one place they go into tell a group, whatever words stand
between; so all of them are known by these three and not by their sentence. Whoever lists
meanings gives each a line, a sentence or its place between semicolons.
"""

from __future__ import annotations

import re

from reader.pattern.named_groups import OWN_KEY, parts_of
from reader.terms.crafts import Terms
from reader.terms.numbers import SPELLED, number_said
from reader.terms.stitches import Craft, Kind, Stitch
from reader.text.sought import has_any

NOUNS = ("shell", "fan", "v-st", "v st", "vst", "v-shell", "scallop", "tulip", "corner", "crown")
"""What groups are called; two of these in a name are one name: "V-shell"."""
_NAME = (
    r"(?P<name>(?:(?!(?:the|an?|each|every|for|to|and|one|next|same|first|last|work|make)\b)"
    r"[a-z]{2,9}[ -])?"
    r"(?:v[ -]?st|v-shell|shell|fan|scallop|tulip|corner|crown))(?:itch)?(?:e?s)?"
    r"(?: st(?:itch)?(?:es)?)?(?:\s*[(/]\s*(?P<short>[a-z][a-z-]{0,7})\s*\)?)?"
)
_STITCH = (
    r"(?:s ?c|h ?d ?c|d ?c|h ?tr|d ?tr|t ?tr|tr ?c?|(?:single|half[ -]double|double|treble)"
    r" crochets?|half[ -](?:double|treble)s?|double trebles?|singles?|doubles?|trebles?)\b"
)
_NUMBER = rf"(?:\d{{1,2}}|\ban?\b|\b(?:{SPELLED})\b)"
_ITEM = (
    rf"(?:(?:{_NUMBER} ?)?{_STITCH}|{_NUMBER} ?ch(?:ain)?s?\b"
    r"|ch(?:ain)?s? ?\d{1,2}\b(?:[ -]sp\b)?)"
)
_LIST = (
    rf"[(\[]?\s*(?P<list>{_ITEM}(?: *(?:(?:,|\+|&|\band\b|\bthen\b)\s*| ){_ITEM}){{0,6}})\s*[)\]]?"
)
_WORK = (
    r"(?:(?:always|simply|just|here|you|then|works?|worked|working|makes?|made|do|of|up|by"
    r"|as follows|the following|a group|is|are)\b[\s:]*)*"
)
_PLACE = (
    r",?\s*(?:\b(?:all|worked|made|both)\s+)*\bin(?:to)?\s+(?:(?:the|an?|any)\s+)?"
    r"(?:one|1|same|next|single|indicated|specified|stated|named|given|st|stitch|sp|space|place)\b"
    r"(?:\s(?!from\b|\d)[a-z][a-z-]{1,9}){0,4}\s*[)\]]?"
)
_END = r"(?=\s*(?:[.;)\]\n]|$))"
_BEGIN = r"(?:^[ \t#*•>-]*|(?<=[;.:] )|(?<=;)|(?<=\. {2})|(?<=, )(?=[^,\n]{4,20}[=:(\[.-]))"
_ONE = (
    r"(?:(?:each|every|an?|the|one|all|(?:for|to (?:make|work|form)) (?:an?|each|every|the))\s+)?"
)
_SURE = (
    r"\s*(?:=|:|—|–|\bis\b|\bare\b|\bmeans?\b|\bstands? for\b|\bconsists? of\b"
    r"|\bcomprises\b|(?<=\w) - )\s*"
)
_SAID = r"\s*(?:,|\.{2,}| -|\[|\(|\s)\s*"
"""Marks that stand between other things too, so that the place must be told."""
BEFORE = re.compile(
    rf"{_BEGIN}{_ONE}[\"']?{_NAME}[\"']?"
    rf"(?:(?P<sure>{_SURE})|{_SAID}){_WORK}{_LIST}(?(sure)(?:{_PLACE})?|{_PLACE}){_END}",
    re.IGNORECASE | re.MULTILINE,
)
BEHIND = re.compile(
    rf"{_BEGIN}(?:work |make )?{_LIST}{_PLACE},?\s*"
    r"(?:=|—|–| - |\b(?:to )?makes?\b|\bforms?\b"
    rf"|\bis\b|\bare\b|\bcounts? as\b|\bfor\b)\s*(?:(?:called|known as|named)\s+)?"
    rf"(?:(?:one|1|an?|the|each)\s+)?[\"']?{_NAME}[\"']?(?:\s+throughout)?{_END}",
    re.IGNORECASE | re.MULTILINE,
)
ONLY_V = re.compile(
    rf"[(\[]\s*(?P<list>{_ITEM}(?: *(?:(?:,|\+|&|\band\b)\s*| ){_ITEM}){{1,6}})\s*[)\]]"
    r"\s*in(?:to)?\b[^,;.()\[\]]{3,30}(?:[(\[]|[—–-] ?)\s*=?\s*"
    r"(?P<name>v(?: group)?)(?: made| formed)?\s*[)\],—–-]",
    re.IGNORECASE,
)
"""A group that is called V alone, where it is made: "(1 tr, 1 ch, 1 tr) in 6th ch (V made)"."""
ITEM = re.compile(
    rf"(?P<n>{_NUMBER})? ?(?P<stitch>{_STITCH})|(?P<chains>{_NUMBER}) ?ch"
    r"|ch\D{0,5}(?P<ch>\d{1,2})",
    re.IGNORECASE,
)


def meant_groups(text: str, terms: Terms) -> dict[str, Stitch]:
    """The groups that a text of crochet says the meaning of, by their names in small letters, and
    by what it says they are called for short; any text goes in.
    """
    found: dict[str, Stitch] = {}
    for shape in _shapes(text):
        for one in shape.finditer(text[:200_000]):
            name = " ".join(one["name"].lower().split())
            stitch = _group(name, one["list"], terms)
            if stitch is not None:
                found.setdefault(name, stitch)
                if one["short"]:
                    found.setdefault(one["short"].lower(), stitch)
    told_so = has_any(text, ("(v", "[v", "= v", "- v"))
    for one in ONLY_V.finditer(text[:200_000]) if told_so else ():
        stitch = _group("v", one["list"], terms)
        if stitch is not None:
            found.setdefault(one["name"].lower(), stitch)
    return found


def without_meant(words: str) -> str:
    """The words without what they say of groups."""
    for shape in _shapes(words):
        words = shape.sub("", words)
    return words


def only_meant(words: str) -> bool:
    """Whether a paragraph begins by saying what a group is made of."""
    return any(shape.match(words) is not None for shape in _shapes(words))


def _shapes(text: str) -> tuple[re.Pattern[str], ...]:
    """What the meanings are looked for by; none in a text that speaks of no group."""
    return (BEFORE, BEHIND) if has_any(text, NOUNS) else ()


def _group(name: str, listed: str, terms: Terms) -> Stitch | None:
    """The group of that name; None where it is of fewer than two stitches."""
    made = spaces = 0
    usual: list[str] = []
    for one in ITEM.finditer(listed):
        if chains := one["ch"] or one["chains"]:
            spaces += 1
            usual.append(f"ch {number_said(chains) or 1}")
        else:
            number = number_said(one["n"]) or 1
            made += number
            usual.append(f"{number} {one['stitch']}")
    if made < 2:
        return None
    unit = "v-st" if name == "v" else re.sub(r"\bv[ -]?st$", "v-st", name)
    return Stitch(
        unit, name, 1, made, Craft.CROCHET, Kind.GROUP, OWN_KEY, 3, spaces=spaces,
        parts=parts_of(", ".join(usual), terms),
    )  # fmt: skip
