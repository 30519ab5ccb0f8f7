"""Knitting text -> the same text, length kept, with stitches picked up as patterns mostly tell
them: how they add up, in a bracket, is left out, "pick up and knit 20 (8 along the strip, 12 along
the middle). 21 sts on the needle" as "pick up and knit 20 ... (21 sts)", and so is the turn before.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, number_said
from reader.text.sought import Sought

_N = rf"(?:\d+|(?:{SPELLED})\b)"
_STS = r"(?:sts?|stitch(?:es)?|loops?)"
_PICK = rf"\b(?:pick(?:ing)?|take|taking|k(?:nit)?) up(?: (?:and|&) (?:k|knit|p|purl))? {_N}"
BROKEN_DOWN = Sought(
    ("pick", "take", "taking", "knit up", "k up"),
    rf"(?P<pick>{_PICK}(?: {_STS})?[^.;:()\n]{{0,80}}?)(?P<parts>[ ]\((?:[^()]*\d[^()]*)\))",
    re.IGNORECASE,
)
TOLD_APART = Sought(
    ("pick", "take", "taking", "knit up", "k up"),
    rf"(?P<pick>{_PICK}(?: {_STS})?[^.;:(),\d\n]{{0,60}}?)"
    r"(?P<parts>(?:,| -|:|;) (?:that is |viz\.? )?"
    rf"{_N}(?: {_STS})? (?:on|along|from|down|up|across|at|each|for|in)\b[^.;()\n]*?)"
    rf"(?=[.;(\n]|$|, (?:for|giving|making)\b)",
    re.IGNORECASE,
)
""" "Pick up 48 sts along the edge, 24 on each side of the shoulder": the same stitches again."""
BOTH = re.compile(r"\b(?:each|either|both) (?:side|edge|end|front|half|needle)s?\b", re.IGNORECASE)
LOT = re.compile(r"(?:[(,;+]|\band|\bthen)\s*(?:\w+ )?(\d+)(?= [a-z])", re.IGNORECASE)
TOTAL = Sought(
    ("pick", "take", "taking", "knit up", "k up"),
    rf"(?P<pick>{_PICK}\b[^.;()\n]{{0,120}}?)"
    rf"(?:(?P<lead>,? (?:for|giving|making|so|to (?:have|make|give))(?: a total of| now)? |[.,;] )"
    rf"(?P<n>{_N})(?P<sts> {_STS})(?P<behind>(?: (?:on (?:the )?needles?|in all|total|altogether"
    rf"|now))*))(?=[ ]*(?:[.;\n]|$))",
    re.IGNORECASE,
)
AGAIN = Sought(
    ("again", "once more", "as before"),
    r"(?:^|(?<=[.;:!] ))(?P<again>(?:again|once more|as before),? )(?=(?:pick|take|knit) up\b)",
    re.IGNORECASE | re.MULTILINE,
)
QUARTER = Sought(
    ("quarter", "90", "clockwise"),
    r"(?P<at>(?:^|(?<=[.;:!]))[ ]*)(?P<turn>(?:(?:again|now|then|next|give (?:it|the \w+)"
    r"|make),? )*(?:(?:a |another )?quarter[- ]turn\b[^.;:,\n]{0,30}?"
    r"|(?:turn|rotat|pivot)\w*[^.;:\n]{0,50}?\b(?:quarter|90|clockwise)\b[^.;:,\n]{0,30}?))"
    r"(?P<then>[.,;]? (?:and |then |again |now )*)(?=(?:pick|take|knit) up\b)",
    re.IGNORECASE | re.MULTILINE,
)
"""A piece turned on its side, before its edge is picked up."""


def picked_up(text: str) -> str:
    """The text so put; any text goes in."""
    text = QUARTER.sub(_turned, text)
    text = AGAIN.sub(lambda m: " " * len(m.group()), text)
    text = TOLD_APART.sub(_told_apart, BROKEN_DOWN.sub(_without_parts, text))
    return TOTAL.sub(_total, text)


def _turned(found: re.Match[str]) -> str:
    said = f"{found['at']}rotate, "
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _without_parts(found: re.Match[str]) -> str:
    """The bracket left out where its numbers come to what is picked up."""
    whole = re.search(rf"{_N}", found["pick"][found["pick"].lower().index(" up") :], re.IGNORECASE)
    lots = [int(one) for one in LOT.findall(found["parts"])]
    if whole is None or len(lots) < 2 or sum(lots) != number_said(whole.group()):
        return found.group()
    return found["pick"].ljust(len(found.group()))


def _told_apart(found: re.Match[str]) -> str:
    """The lots left out where they come to what is picked up, those of both sides taken twice."""
    whole = re.search(rf"{_N}", found["pick"][found["pick"].lower().index(" up") :], re.IGNORECASE)
    lots = list(SPOKEN_LOT.finditer(found["parts"]))
    ends = [one.start() for one in lots[1:]] + [len(found["parts"])]
    come_to = sum(
        number_said(one["n"]) * (2 if BOTH.search(found["parts"], one.end(), end) else 1)
        for one, end in zip(lots, ends, strict=True)
    )
    if whole is None or come_to != number_said(whole.group()):
        return found.group()
    return found["pick"].ljust(len(found.group()))


SPOKEN_LOT = re.compile(rf"(?:[,:;-]|\band|\bthen|is|viz\.?) (?P<n>{_N})(?= [a-z])", re.IGNORECASE)


def _total(found: re.Match[str]) -> str:
    number = number_said(found["n"])
    whole = found.group()
    said = f"{found['pick']} ({number} sts)"
    said = said if len(said) <= len(whole) else f"{found['pick']}. {number} sts"
    if not number or len(said) > len(whole):
        return whole
    return said.ljust(len(whole))
