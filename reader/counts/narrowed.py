"""Words that leave part of the stitches waiting: "these 28 sts are for the heel", "work on the
first 40 sts only" -> how many are worked on.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.copies_joined import join_copies
from reader.counts.fabric import plain
from reader.counts.heel_apart import heel_of, heel_uses, parts_first, turned_for_heel
from reader.counts.questions import ask_of_total
from reader.pattern.printed import told_in
from reader.pattern.rules import find_rule
from reader.terms.numbers import SPELLED, word_number

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_N = rf"(?P<n>\d+|{SPELLED})"
_STS = r"(?:sts?\b|stitches|loops)"
ONLY = re.compile(
    r"\b(?:on|over|with|across|upon)\s+(?:only\s+)?"
    r"(?:these|those|this|(?:the\s+)?(?:first|1st|next|last|centre|center|middle))\s+"
    r"(?:(?:remaining|rem|last)\s+)?"
    rf"{_N}(?:\s+(?:\w+\s+)?{_STS}|(?=\s*,?\s*(?:only\s+|now\s+)?(?:work|knit|cont|purl|rib)\b))"
    r"|\b(?:work|continue|cont|proceed)(?:ing)?\s+(?:only\s+)?on\s+(?:only\s+)?(?:the\s+)?"
    rf"(?:remaining|rem)\s+{_N.replace('P<n>', 'P<rest>')}\s+(?:\w+\s+)?{_STS}"
    rf"|\b(?:work|knit)(?:ing)?\s+(?:only\s+)?(?:these|those)\s+{_N.replace('P<n>', 'P<those>')}\s+"
    r"(?:sts|stitches)(?=\s+in\s)"
    rf"|\b(?:on|over|with|across)\s+the\s+{_N.replace('P<n>', 'P<left>')}\s+"
    r"(?:(?:sts|stitches)\s+)?(?:that|which)\s+(?:are|were)\s+left\b",
    re.IGNORECASE,
)
WORKING = re.compile(
    r"\b(?:work(?:ing|ed)?|continue|cont|proceed|heel|only|alone|complete|rows)\b", re.IGNORECASE
)
FOR_HEEL = re.compile(
    rf"\b(?:these|those)\s+{_N}\s+{_STS}\s+(?:are\s+|form\s+|will\s+be\s+|make\s+)*(?:for\s+)?"
    rf"(?:the\s+)?heel|\b{_N.replace('P<n>', 'P<m>')}\s+{_STS}\s+(?:left\s+|now\s+)?(?:for|on)\s+"
    r"(?:the\s+)?heel\b",
    re.IGNORECASE,
)


THOSE = re.compile(
    r"\b(?:knit|work|purl|pearl|rib)(?:ing)?\s+(?:on\s+|over\s+)?(?:the|these)\s+"
    r"(?:(?:remaining|other|rem|centre|center|middle|rest)\s+)"
    rf"{_N}\s+{_STS}[^.;]{{0,24}}?"
    r"\b(?:back(?:wards?)?\s+and\s+for(?:wards?|th)|to\s+and\s+fro|for\s+\w+\s+(?:\w+\s+)?rows)\b",
    re.IGNORECASE,
)
"""The stitches that are worked in rows from here: "knit the remaining 12 backwards and forwards".
"""
TO_AND_FRO = re.compile(
    r"\b(?:back and forth|to and fro|backwards? and forwards?)\b[^.;()]{0,30}?"
    r"\b(?:on|over|across)\b"
    rf"[^.;()]{{0,24}}?\b{_N}\s+(?:\w+\s+)?{_STS}",
    re.IGNORECASE,
)
"""Work that goes on in rows over some of the stitches."""
ON_ONE_NEEDLE = re.compile(
    rf"\bheel\b[^.;]{{0,40}}?\b(?:take|put|place|slip|arrange|knit|have)\s+(?:the\s+)?(?:first\s+|1st\s+|last\s+"
    rf"|next\s+)?{_N}\s+{_STS}\s+(?:on|on to|onto|to)\s+(?:one|a|1)\s+(?:needle|pin)\b",
    re.IGNORECASE,
)
"""The heel's stitches, put on one needle."""
FOR_HEEL_NEEDLE = re.compile(
    rf"\b(?:take|put|place|slip|arrange|knit|have|leave)\s+(?:the\s+)?(?:(?:first|1st|last|next)\s+)?{_N}\s+"
    rf"{_STS}\s*(?:\([^()]*\)\s*)?(?:on|on to|onto|to)\s+(?:one|a|1)\s+(?:needle|pin)\s+for\s+"
    rf"(?:the\s+)?"
    r"heel\b"
    r"|\bin\s+rows\s+(?:only\s+)?(?:on|over|across)\s+(?:the\s+|these\s+|those\s+)?"
    rf"{_N.replace('P<n>', 'P<m>')}\s+{_STS}",
    re.IGNORECASE,
)
"""The heel's stitches, told so, or those that are worked in rows from here."""
BUT_INSTEP = re.compile(
    rf"\b(?:slip|leave|place|put)\s+(?:the\s+)?(?:(?:first|1st|last|next|other)\s+)?{_N}\s+{_STS}\s+"
    r"(?:(?:on|onto|to)\s+(?:\d|two|one|a|another)\s+needles?\s+)?(?:for|as)\s+(?:the\s+)?instep\b",
    re.IGNORECASE,
)
"""Stitches that wait for the instep: the others are the heel's."""
EACH_SIDE = re.compile(
    rf"\b(?:place|put|take|slip)\s+{_N}\s+{_STS}\s+(?:on\s+)?each\s+side\s+of\s+(?:the\s+)?"
    r"(?:middle|centre|center|seam|back)\b",
    re.IGNORECASE,
)
"""So many on each side of one stitch."""


LAID_ON = re.compile(
    rf"\b(?:re-?arrange|arrange|divide|distribute|place|put|slip)\s+(?:these|those)\s+{_N}\s+{_STS}\s+"
    r"(?:\w+\s+)?(?:on|onto|on to|over|between|among)\s+(?:the\s+)?(?:\w+\s+){0,3}needles\b",
    re.IGNORECASE,
)
"""Some stitches laid on needles of their own, to be worked from here."""
TOLD_ON = re.compile(
    r"\b(?:heel|flap|toe|panel|band|thumb|cuff|yoke|crown|strap|tab|piece|sampler)\b[^.;:]{0,28}?"
    r"\b(?:on|over|across)\s+(?:only\s+)?"
    rf"{_N}(?:\s*[(\[][\d,;:\s/-]+[)\]])?\s+{_STS}"
    r"|\byou\s+(?:should\s+|will\s+|now\s+)*(?:be|are)\s+(?:now\s+)?(?:on|working\s+(?:on|with|over))"
    rf"\s+{_N.replace('P<n>', 'P<m>')}\s+{_STS}",
    re.IGNORECASE,
)
"""What a piece is worked on, told before its first row: "Heel is worked on 24 sts only"."""


def begun_on(words: str) -> int | None:
    """How many stitches a piece begins on, where words before its first row tell it."""
    found = TOLD_ON.search(words)
    return _value(found.group("n") or found.group("m")) if found else None


_BACK = r"(?:back\s+and\s+forth(?:\s+in\s+rows)?|to\s+and\s+fro|in\s+rows|flat|straight)"
ONLY_ON = re.compile(
    rf"\W*(?:(?:now|then|and)\s+)*(?:(?:work|knit|cont|continue|proceed)(?:ing)?\s+)?(?:{_BACK}\s+)?"
    rf"(?:only\s+)?(?:on|over|across|with)\s+(?:only\s+)?(?:(?:the|these|those|this|remaining|rem|first|1st|last"
    rf"|next|heel|same|(?:set|group) of)\s+)*{_N}\s+(?:\w+\s+)?{_STS}"
    rf"(?:\s+(?:only|alone|now|{_BACK}))*"
    r"(?:,?\s+(?:leaving|leave|while|keeping)\b[^.;:]{0,60}|,?\s+for\s+(?:the\s+)?(?:heel|flap"
    r"|thumb)[a-z ]{0,12})?"
    r"(?:,?\s*(?:in\s+st\s?st|as\s+follows|thus|in\s+rows))?\s*[.:;,]*\s*",
    re.IGNORECASE,
)
"""A sentence that only says which stitches are worked on from here."""


def only_on(words: str) -> int | None:
    """How many stitches are worked on, where the words say nothing else; None elsewhere."""
    found = ONLY_ON.fullmatch(words)
    return _value(found.group("n")) if found else None


def worked_on(words: str) -> int | None:
    """How many stitches the words say are worked on from here; None where they say nothing."""
    sides = EACH_SIDE.search(words)
    if sides:
        return 2 * (_value(sides.group("n")) or 0) + 1
    those = THOSE.search(words)
    if those:
        return _value(those.group("n"))
    fro = TO_AND_FRO.search(words) or ON_ONE_NEEDLE.search(words)
    if fro:
        return _value(fro.group("n"))
    heel = FOR_HEEL_NEEDLE.search(words) or FOR_HEEL.search(words)
    if heel:
        return _value(heel.group("n") or heel.group("m"))
    laid = LAID_ON.search(words)
    if laid:
        return _value(laid.group("n"))
    for sentence in re.split(r"[.;]", words):
        only = ONLY.search(sentence)
        if only is not None and _part_of_row(only, sentence):
            continue
        if only and WORKING.search(sentence) and not _passing(only.group(), sentence):
            told = ("n", "rest", "left", "those")
            return _value(next(only[one] for one in told if only[one]))
    return None


def worked_apart(ledger: Ledger, words: str) -> int | None:
    """The same, and where the words part a heel or one side from the rest."""
    some = worked_on(words) or half_of(ledger, words)
    return some or (heel_of(ledger, words) if parts_first(words) else None)


def told_last(words: str) -> bool:
    """Whether the words work whole rounds by number, and only a sentence behind says that some
    wait.
    """
    *before, last = [one for one in re.split(r"[.;](?=\s)", words) if one.strip(" .;")] or [""]
    if not before or worked_on(last) is None or worked_on(" ".join(before)) is not None:
        return False
    rule = find_rule(before[-1], False)
    return rule is not None and rule.kind == "even" and not rule.start


RIBBED = re.compile(r"\b(?:k|p|knit|purl) ?\d+\)?,?\s*$", re.IGNORECASE)
IN_FABRIC = re.compile(
    r"\b(?:pat|patt|pattern|seed|moss|garter|rib|ribbing|stockinette|cable|twist)\b\.?"
    r"(?:\s+st(?:itch)?\b)?\.?\s*$",
    re.IGNORECASE,
)
THOSE_AHEAD = re.compile(r"\w+\s+(?:the\s+)?(?:first|1st|next|last)\b", re.IGNORECASE)
GOES_ON_SO = re.compile(r"\b(?:only|alone|inch|inches|until|till|for \d+|rows)\b", re.IGNORECASE)


def _part_of_row(only: re.Match[str], sentence: str) -> bool:
    """Whether so many stitches are a part of the row: "K 1, P 1 across last 6 sts", "work row 1 of
    pattern st on last 15 sts".
    """
    before = sentence[: only.start()]
    if RIBBED.search(before):
        return True
    ahead = IN_FABRIC.search(before) and THOSE_AHEAD.match(only.group())
    return ahead is not None and GOES_ON_SO.search(sentence, only.end()) is None


SEPARATELY = re.compile(
    r"\b(?:each (?:side|half|shoulder|front)|both sides|two sides|the sides|shoulders)\b[^.;]{0,12}"
    r"\b(?:separately|individually|in turn)\b|\b(?:one|1) side (?:at a time|only)\b"
    r"|\b(?:on|over) (?:the )?(?:right|left|first|1st|one|1|this) (?:side|half|shoulder|front)"
    r"(?: of (?:the )?neck)?,? (?:only|alone|first)\b",
    re.IGNORECASE,
)
"""Where the middle was bound off: the work goes on with one of two halves."""
ON_THESE = re.compile(
    r"\b(?:on|over|with) (?:these|those|this last set of|the last set of|last set of)"
    r" (?:last )?(?:sts|stitches)\b",
    re.IGNORECASE,
)
AMID = re.compile(
    r"\d[^.;]*\b(?:(?:bind|cast) off|bo)\b[^.;]*,[^.;]*\b(?:end|rem\w*|last|\d+)\b", re.IGNORECASE
)
"""Stitches bound off between others that are worked: "k22, bind off 16, k to end"."""


def half_of(ledger: Ledger, words: str) -> int | None:
    """The stitches of one side, where the words work each by itself behind a row that bound off the
    middle; None elsewhere.
    """
    here = ledger.below.stitches
    if here is None or here % 2 or not ledger.rows:
        return None
    written = ledger.rows[-1].written
    amid = SEPARATELY.search(words) and BOUND.search(written)
    amid = amid or (ON_THESE.search(words) and AMID.search(written))
    return here // 2 if amid else None


BOUND = re.compile(r"\b(?:bind|cast) off\b|\bbo\b", re.IGNORECASE)
NECK_EDGE = re.compile(r"\bneck edge\b", re.IGNORECASE)


def side_of_neck(ledger: Ledger, words: str) -> int | None:
    """The stitches of the side that was knitted before a turn, where words tell of its neck edge
    and none of the others was said to wait; None elsewhere.
    """
    here, left = ledger.below.stitches, ledger.short
    if not left or here is None or ledger.waiting or not NECK_EDGE.search(words):
        return None
    last = ledger.rows[-1] if ledger.rows else None
    turned = last is not None and re.search(r"\bturn\b", last.written, re.IGNORECASE)
    return here - left if turned and last and last.count == last.before == here else None


def _passing(words: str, sentence: str) -> bool:
    """ "work cable over next 6 sts": a part of the row, with what stands before and behind."""
    over_next = re.match(r"(?:over|across)\s+(?:the\s+)?next\b", words, re.IGNORECASE)
    return over_next is not None and not re.search(r"\b(?:only|alone)\b", sentence)


_OTHERS = rf"(?:the\s+)?(?:other|others|remaining|rem|rest\s+of\s+the)\s+{_N}(?:\s+{_STS})?"
OTHERS_WAIT = re.compile(
    rf"\b{_OTHERS}\.?\s+(?:will\s+|to\s+)?"
    r"(?:wait|stay|rest\b|are\s+(?:left|held|kept)|are\s+(?:for\s+)?the\s+instep)",
    re.IGNORECASE,
)
OTHERS_LEFT = re.compile(
    rf"\b(?:leave|leaving|keep|keeping)\s+{_OTHERS}\.?\s+[^.;]{{0,30}}"
    r"\b(?:needles?|holder|instep|pins?)\b",
    re.IGNORECASE,
)
"""How many of all are not worked on from here."""


def all_but_instep(ledger: Ledger, words: str) -> int | None:
    """The stitches of the heel, where a row that slips those of the instep on to needles of their
    own has kept the count; None elsewhere.
    """
    found = BUT_INSTEP.search(words) or OTHERS_WAIT.search(words) or OTHERS_LEFT.search(words)
    waits = _value(found.group("n")) if found else None
    last = ledger.rows[-1] if ledger.rows else None
    if waits is None or last is None or last.count != last.before or not last.count:
        return None
    return last.count - waits if last.count > waits else None


def begins_with_them(words: str) -> bool:
    """Whether a sentence first says which stitches are worked on, and then what is done."""
    only = THOSE.search(words) or ONLY.search(words) or EACH_SIDE.search(words)
    only = only or SEPARATELY.search(words) or ON_THESE.search(words)
    if only is None:
        return parts_first(words)
    return len(words[: only.start()].split()) < 3 or ROWS_ON.match(words) is not None


ROWS_ON = re.compile(
    r"\W*(?:(?:then|and|now)\s+)*(?:work|knit|k|purl|rib|cont(?:inue)?)\s+(?:\w+\s+){0,4}"
    r"(?:rows?|inches|ins|rounds|rnds)\b[^.;,\d]{0,24}\b(?:on|over)\s+(?:only\s+)?(?:these|those)\b",
    re.IGNORECASE,
)
"""So many rows on some of the stitches: they are told before they are named."""
ALL_AGAIN = re.compile(
    rf"\b(?:on|over|across|with)\s+all\s+(?:the\s+|of\s+the\s+)?{_N}\s+{_STS}", re.IGNORECASE
)


def all_again(ledger: Ledger, words: str) -> None:
    """Goes on with all stitches where the words say so, "working in rounds on all 60 sts", and some
    of them waited.
    """
    found = ALL_AGAIN.search(words)
    told = _value(found.group("n")) if found else None
    here = ledger.below.stitches
    if told is None or here is None or here >= told:
        return
    if any(one.count == told for one in ledger.rows):
        ledger.below, ledger.doubted = plain(told), False


def _value(said: str) -> int | None:
    return int(said[:5]) if said.isdigit() else word_number(said)


def others_wait(ledger: Ledger, stitches: int) -> None:
    """Keeps how many wait while only some are worked on, where nothing waits yet."""
    here = ledger.below.stitches
    if here is not None and stitches < here and not ledger.waiting:
        ledger.waiting = (here - stitches,)


SOME_LEFT = re.compile(
    r"\b(?:turn|needles?|pins?|holders?|leav\w+|leave|slip|wait\w*|aside)\b", re.IGNORECASE
)
"""Words of a row that did not come to the round's end, or that laid stitches on other needles."""


def narrow(ledger: Ledger, stitches: int | None, before: bool = False) -> None:
    """Goes on with some of the stitches; the others wait on a needle or holder. before: the words
    stand before what is worked on them, so that the last row had all.
    """
    if stitches is not None and not ledger.rows:
        # A part that begins with some of what the part before it left.
        ledger.go_on(None)
    here = ledger.below.stitches
    if stitches is None or here == stitches:
        return
    if not ledger.rows:
        others_wait(ledger, stitches)
        ledger.below = plain(stitches) if here is None or 0 < stitches < here else ledger.below
        return
    if here is None or 0 < stitches < here or ledger.doubted:
        others_wait(ledger, stitches)
        why = f"the work goes on with {stitches} stitches, as the words say; the others wait"
        last = ledger.rows[-1]
        told = SOME_LEFT.search(last.written) or worked_on(last.written) is not None
        count = last.count if before and here is not None and not told else stitches
        ledger.rows[-1] = replace(last, count=count, assumed=(*last.assumed, why))
        ledger.below, ledger.doubted = plain(stitches), False


def turn_for_heel(ledger: Ledger, words: str) -> None:
    """Goes on with the stitches of a heel that a round was turned for; the others wait."""
    stitches = turned_for_heel(ledger, words)
    narrow(ledger, stitches)
    ledger.short = ledger.short if stitches is None else 0


def settled_on(ledger: Ledger, stitches: int) -> bool:
    """Goes on with so many of the stitches; whether they are what is on hand then."""
    ledger.go_on(None)
    here = ledger.below.stitches
    if here is None or 0 < stitches < here or ledger.doubted:
        others_wait(ledger, stitches)
        ledger.below, ledger.doubted = plain(stitches), False
    return ledger.below.stitches == stitches


def begin_on(ledger: Ledger, words: str, kind: str = "note") -> None:
    """Takes what a remark of that kind says that a piece is worked on, where nothing else tells
    what is on hand.
    """
    told = begun_on(words)
    if told is None or ledger.rows or kind != "note":
        return
    ledger.go_on(None)
    if ledger.below.stitches is None or 0 < told < ledger.below.stitches:
        ledger.below = plain(told)


def hear(ledger: Ledger, start: int, end: int) -> None:
    """Takes the total that a remark between rows tells of, where the rows leave it in doubt."""
    words = ledger.in_figures(start, end)
    join_copies(ledger, words)
    told = heel_uses(ledger, words) or worked_on(words) or half_of(ledger, words)
    narrow(ledger, told, before=True)
    begin_on(ledger, words)
    told = told_in(ledger.text[start:end])
    if told is not None and ledger.rows and (ledger.below.stitches is None or ledger.doubted):
        if ledger.below.stitches != told:
            ledger.settle(told)
        ledger.doubted = False
    elif told is not None and ledger.rows and told != ledger.below.stitches:
        ask_of_total(ledger, told, start, end)
