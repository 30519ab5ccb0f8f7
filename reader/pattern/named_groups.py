"""Groups of stitches that a pattern names where it makes them: "2 dc, ch 1, 2 dc in next st
(shell)" -> special stitches, each with the place from which its name is so meant.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.cursor import Special
from reader.pattern.unnamed_groups import named_later
from reader.terms.crafts import Terms
from reader.terms.forms import name_of
from reader.terms.numbers import SPELLED, word_number
from reader.terms.stitches import Craft, Kind, Stitch
from reader.text.sought import Sought

OWN_KEY = "the pattern's own key"
GROUPS = ("shell", "fan", "v-st", "v st", "vst", "group", "scallop", "corner")
_STITCH = (
    r"(?:s\s?c|h\s?d\s?c|d\s?c|tr\s?c?|trebles?|doubles?|htr|d\s?tr\s?c?)\b(?! tog)"
    r"(?:\s\(\d times over (?:the )?hook\))?"
)
_CLUSTER = (
    rf"(?:\d+[\s-]+{_STITCH}[\s-]+)?(?:cls?|cluster(?:s|\s+sts?)?|popcorns?(?:\s+sts?)?)\b"
)
SIZE_OF_CLUSTER = re.compile(rf"\d+[\s-]+{_STITCH}[\s-]+(?=cl|popcorn)", re.IGNORECASE)
ITEM = rf"(?:(\d+|an?|{SPELLED})\s+)?({_STITCH}|{_CLUSTER}|ch(?:ain)?s?(?![a-z])(?:\s*\d+)?)"
_GROUP_NAME = (
    rf"(?:\d+[\s-]+{_STITCH}[\s-]+)?"
    rf"(?P<name>(?:{_STITCH} |{_CLUSTER}[- ]|(?:double|large|small|big|half|open) )?"
    r"(?:shell|fan|group|v[- ]?st|scallop|corner))"
)
_WORKED = r"(?:always |simply |just |here |work(?:ed)? |made (?:of |as )?)*"
_SAID_TO_BE = (
    r"(?:\"?\s*(?:=|:|—|\b(?:is|are|means?|stands for)\b)"
    rf"\s*{_WORKED}[(\[]?|\s*\(\s*=?|,?\s+(?:you )?(?:work|make)\s+[(\[]?)"
)
"""Between a group's name and what it is made of."""
_AT = r"\s+in\s+(?:the\s+)?(?:next|same)\s+(?:ch[ -]?\d+[ -])?(?:st|stitch|sp|space|ch|loop)\b"
_BETWEEN = r"\s+with\s+ch\s*\d+\s+between(?:\s+(?:each|them|sts?|stitches))*"
_INTO = rf"(?:{_BETWEEN})?(?:{_AT})?"
INTO = re.compile(_AT, re.IGNORECASE)
SPREAD = re.compile(
    rf"(?P<n>\d+)\s+(?P<stitch>{_STITCH})\s+with\s+ch\s*(?P<ch>\d+)\s+between\b", re.IGNORECASE
)
"""Stitches with a chain between them, each: "2 tr c with ch 2 between"."""
OVER_HOOK = re.compile(r"\(\d times over (?:the )?hook\)", re.IGNORECASE)
NAMED_BEHIND = Sought(
    GROUPS,
    rf"(?P<list>(?:{_CLUSTER}|(?<=,\s){_STITCH}(?=\s*,\s*ch\b)|"
    rf"\d(?<!\d\d)(?<!next \d)(?<!of \d)(?<!the \d)(?<!each \d)(?<!skip \d)"
    rf"(?<!miss \d)(?<!sk \d)\d*\s+(?:{_STITCH}|{_CLUSTER})){_INTO}"
    rf"(?:\s*(?:,|and)\s*(?:(?:{_CLUSTER}|(?:\d+\s*)?{_STITCH}){_INTO}|(?:\d+\s*)?ch\b\s*\d*))+)"
    r"\)?(?:\s+in\s+[^,;.()]{2,24})?\s*,?\s*"
    r"(?:\(\s*|[—–,-]\s*(?=[a-z\d -]{3,24}\s(?:made|formed|completed)\b))"
    rf"(?:(?:an?|1|another|first|1st|beg) )?{_GROUP_NAME}"
    r"(?:\s+(?:is\s+)?(?:made|formed|completed))?(?:\s+(?:over|on|in)\s+(?:\w+\s+)?\w+)?\s*"
    r"(?:\)|(?<=made)|(?<=formed)|(?<=completed))",
    re.IGNORECASE,
)
NAMED_ALONE = Sought(
    GROUPS,
    rf"(?<!\d)(?P<list>\d+\s+{_STITCH})\s+in\s+[^,;.()*—]{{2,24}}?\s*(?:\(\s*|[—–,-]\s*"
    r"(?=[a-z\d -]{3,24}\s(?:made|formed|completed)\b))(?:(?:an?|1|another|first|1st|beg) )?"
    rf"{_GROUP_NAME}(?:\s+(?:is\s+)?(?:made|formed|completed))?\s*"
    r"(?:\)|(?<=made)|(?<=formed)|(?<=completed))",
    re.IGNORECASE,
)
"""The same of stitches of one kind: "5 dc in next ch (shell made)"."""
NAMED_BEFORE = Sought(
    GROUPS,
    rf"(?<!\d )\b{_GROUP_NAME}(?:\s+of\s|s?{_SAID_TO_BE})\s*"
    rf"(?P<list>(?:(?:\d+|{SPELLED})\s+{_STITCH}|{_STITCH}(?=\s*,\s*ch))"
    rf"(?:\s*(?:,|and)\s*(?:\d+\s*)?(?:{_STITCH}|ch(?:ain)?\b\s*\d*))*)",
    re.IGNORECASE,
)
NAMED_BY_TOTAL = Sought(
    GROUPS,
    rf"^[^\n]{{0,600}}\(\s*(?P<list>(?:\d+\s*)?{_STITCH}(?:\s*,\s*(?:ch\s*\d+|(?:\d+\s*)?"
    rf"{_STITCH})){{1,6}})\s*\)\s+in\b[^\n(]{{0,160}}[.;:—(]\s*\d+\s+{_GROUP_NAME}s\b",
    re.IGNORECASE | re.MULTILINE,
)
"""A round of groups whose total gives them their name: "(2 dc, ch 2, 2 dc) in next ch-2 sp; rep
from * around. (8 shells)".
"""
AFTER_CHAIN = re.compile(r"\bch ?\d+(?: \([^()]*\))?,\s*\(\s*$", re.IGNORECASE)


TOLD = re.compile(
    rf"\W*(?:(?:note|notes)\W+)?(?:an?|the|each|every|all|for (?:each|every|an?)"
    rf"|to (?:make|work) (?:an?|the|each))?\s?\"?{_GROUP_NAME}s?{_SAID_TO_BE}\s*(?=\d|{_STITCH})",
    re.IGNORECASE,
)


def tells_group(words: str) -> bool:
    """Whether a paragraph begins by telling what a group is, "A corner is always 2 dc, ch 2, 2 dc";
    "Shell of 5 dc in next st", and a shell in brackets, are worked.
    """
    found = TOLD.match(words)
    return found is not None and re.search(r"\bof\W*$|[a-z]\s*\(\W*$", found.group()) is None


def named_groups(text: str, terms: Terms) -> list[tuple[int, Special]]:
    """Groups that the text names where it makes them, "2 dc, ch 1, 2 dc in next st (shell)", "shell
    of 3 dc", each with where that is: a later row may make them otherwise.
    """
    found: list[tuple[int, Special]] = []
    told = text[:200_000]
    shapes = (NAMED_BEHIND, NAMED_BEFORE, NAMED_BY_TOTAL)
    told_so = [one for shape in shapes for one in shape.finditer(told)]
    ends = {one.end() for one in told_so}
    told_so += [one for one in NAMED_ALONE.finditer(told) if one.end() not in ends]
    for one in told_so:
        listed = one.start("list")
        if one.re is NAMED_BY_TOTAL.shape and AFTER_CHAIN.search(told, one.start(), listed):
            # The first group of a round lacks the stitch that its chain stands for.
            continue
        before = told[max(0, listed - 60) : listed]
        begun = one.re is NAMED_BEHIND.shape and BEGUN_BY_CHAIN.search(before) is not None
        listed_there = _in_one_place(one["list"], told[one.end() : one.end() + 12])
        begun = begun and listed_there == one["list"]
        found += _group(one.start(), one["name"].lower(), listed_there, terms, begun)
    for at, name, stitches in named_later(told, {special.name for _, special in found}):
        found += _group(at, name, stitches, terms)
    return sorted([*found, *_short_names(told, found)], key=lambda pair: pair[0])


INTO_NEXT = re.compile(
    r"\s+in\s+(?:the\s+)?next\s+(?:ch[ -]?\d+[ -])?(?:sp|space|loop|lp)\b"
    r"(?:\s*(?:,|and)\s*ch\s*\d+)*\s*(?:,|and)\s*",
    re.IGNORECASE,
)
NEXT_BEHIND = re.compile(r"\s*in\s+(?:the\s+)?(?:next|each)\b", re.IGNORECASE)


def _in_one_place(listed: str, behind: str) -> str:
    """The end of a list that goes into one place: "6 tr in next loop, ch 3, 2 dc, ch 2, 2 dc
    (shell) in next loop" without the six, which have a place of their own.
    """
    cuts = [found.end() for found in INTO_NEXT.finditer(listed)]
    rest = listed[cuts[-1] :] if cuts else ""
    again = NEXT_BEHIND.match(behind) or NEXT_BEHIND.search(rest)
    return rest if cuts and again else listed


def _short_names(text: str, found: Sequence[tuple[int, Special]]) -> list[tuple[int, Special]]:
    """Groups that the text says to call by a shorter name from there on: "All shells are double
    shells".
    """
    short: list[tuple[int, Special]] = []
    for _, one in found:
        last = one.name.split()[-1]
        whole = r"\s+".join(map(re.escape, one.name.split()))
        said = rf"\b{re.escape(last)}s?\s+(?:are|is|means?)\s+(?:an?\s+|all\s+)?{whole}s?\b"
        told = re.search(said, text, re.IGNORECASE) if last != one.name else None
        if told is not None:
            short.append((told.start(), Special(last, one.stitch)))
    return short


def _group(
    at: int, name: str, stitches: str, terms: Terms, begun: bool = False
) -> list[tuple[int, Special]]:
    """A group of that name, made of the stitches listed; none where they are not two or more.
    begun: a chain before them stands for the first.
    """
    listed = INTO.sub("", OVER_HOOK.sub("", SIZE_OF_CLUSTER.sub("", stitches)))
    items = re.findall(ITEM, SPREAD.sub(_spread, listed), re.IGNORECASE)
    chains = sum(1 for number, stitch in items if stitch.lower().startswith("ch"))
    made = sum(_amount(number) for number, stitch in items if not stitch.lower().startswith("ch"))
    if begun:
        items, made = _with_its_chain(items, made)
    if made < 2:
        return []
    stitch = Stitch(
        V_STITCH.sub("v-st", name), name, 1, made, Craft.CROCHET, Kind.GROUP, OWN_KEY, 3,
        spaces=chains, parts=_parts(items, terms),
    )  # fmt: skip
    return [(at, Special(name, stitch))]


V_STITCH = re.compile(r"\bv[ -]?st$")


def _spread(told: re.Match[str]) -> str:
    """ "2 tr c with ch 2 between" as "1 tr c, ch 2, 1 tr c"."""
    each = f"1 {told['stitch']}"
    return f", ch {told['ch']}, ".join([each] * min(int(told["n"]), 20))


BEGUN_BY_CHAIN = re.compile(
    r"\bch(?:ain)? ?[2-5](?: \([^()]{1,40}\))?,\s*"
    r"(?:(?:in|into) (?:the )?same \w+ (?:make |work )?)?$",
    re.IGNORECASE,
)


def _with_its_chain(items: list[tuple[str, str]], made: int) -> tuple[list[tuple[str, str]], int]:
    """The stitches of a group that its row begins with, "ch 3, 2 dc, ch 2, 3 dc in same st
    (shell)": with the one that the chain stands for, where only so both sides are alike.
    """
    spaces = [at for at, (_, stitch) in enumerate(items) if stitch.lower().startswith("ch")]
    left = sum(_amount(number) for number, _ in items[: spaces[0]]) if spaces else made
    right = sum(_amount(number) for number, _ in items[spaces[0] + 1 :]) if spaces else made + 1
    if len(spaces) > 1 or left + 1 != right:
        return items, made
    return [(str(_amount(items[0][0]) + 1), items[0][1]), *items[1:]], made + 1


def parts_of(stitches: str, terms: Terms) -> tuple[tuple[str, int], ...]:
    """What a list of stitches is made of, in order; () where one is not known."""
    return _parts(re.findall(ITEM, stitches, re.IGNORECASE), terms)


def _parts(items: Sequence[tuple[str, str]], terms: Terms) -> tuple[tuple[str, int], ...]:
    """What a group is made of, in order; () where a stitch is not known by its form."""
    parts: list[tuple[str, int]] = []
    for number, stitch in items:
        low = " ".join(stitch.lower().split())
        if low.startswith("ch"):
            parts.append(("ch", int((re.sub(r"\D", "", low) or str(_amount(number)))[:3])))
            continue
        name = name_of(low, Craft.CROCHET, terms)
        if not name:
            return ()
        parts.append((name, _amount(number)))
    return tuple(parts)


def _amount(number: str) -> int:
    return int(number[:3]) if number.isdigit() else word_number(number) or 1
