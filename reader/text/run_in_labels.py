"""Rows that run on in one line, their labels in one manner counting on from 1, "(1) 6 sc in ring
(2) inc around (3) ...", "1st rnd. 6 dc in ring 2nd rnd. ...": each label begins a line of its own;
length kept.
"""

from __future__ import annotations

import re
from collections import defaultdict

from reader.text.wrapped import is_wrapped

LEAST = 3
"""Labels in one manner that count on without a gap."""
SHORTEST = 60
"""Letters of a line that may hold more than one row."""
LABEL = re.compile(
    r"(?:^|(?<=[ ]))(?P<open>[\[(*]{0,3})"
    r"(?P<word>(?:rounds?|rnds?|rds?|rows?|steps?|no)\b\.?[ \n]?|R(?=\d))?(?P<sign>#[ ]?)?"
    r"(?P<first>\d{1,3})(?P<th>st|nd|rd|th|d)?(?:[ ]?(?:-|to|and|&)[ ]?R?(?P<last>\d{1,3})(?:th)?)?"
    r"(?P<close>[\])*]{0,3})(?P<noun>(?(th)[ ](?:rows?|rounds?|rnds?)\b|(?!)))?"
    r"(?P<mark>[ ]?(?:of \d{1,3})?[ ]?(?:[:.>|=;,)]|-+|\*\*)*)(?=[ ][A-Za-z(*\[\d])",
    re.IGNORECASE | re.MULTILINE,
)
WRAPPED = re.compile(r"(?<=[^\n]{46})(?:(?<![.:;!)\]\s])\n(?=[ ]*[^\s\n])"
    r"|(?<=\d\))\n(?=[ ]*(?:[a-z*\d(]|[KP][ ]?\d)))")
"""The end of a wide line amid a sentence."""
AMID = re.compile(r"[^\s:][ ]+\Z")
"""Before a label inside a line, but behind a colon: "Large size only: 5th round: ..."."""
SPOKEN_OF = re.compile(
    r"(?:\b(?:rep|repeat|as|of|work|like|than|from|to|and|through|after|before|in|for|until|till|by"
    r"|with|at|on|this|that|the|next|last|every|rows?|rnds?|rounds?|same|[kp]|[rw]s|side|facing)|[,&+/-])\s*$",
    re.IGNORECASE,
)
"""Before a number that labels nothing, "repeat row 2"."""


def lines_of_labels(text: str) -> str:
    """The text with such labels at the start of lines; any other text as it is."""
    paragraphs = text.split("\n\n")
    for at, paragraph in enumerate(paragraphs):
        if any(len(line) >= SHORTEST for line in paragraph.split("\n")):
            spots = _run_in(paragraph)
            # Lines cut short by the labels would no longer be seen to have been wrapped.
            if spots and is_wrapped(paragraph.strip("\n").split("\n")):
                paragraph = WRAPPED.sub(" ", paragraph)
            for spot in spots:
                paragraph = f"{paragraph[: spot - 1]}\n{paragraph[spot:]}"
            paragraphs[at] = paragraph
    return "\n\n".join(paragraphs)


def _run_in(paragraph: str) -> list[int]:
    """Where labels stand inside the lines of a paragraph, each behind the last without a gap."""
    runs: dict[tuple[str, ...], list[re.Match[str]]] = defaultdict(list)
    fenced = []
    for one in LABEL.finditer(paragraph):
        manner = _manner(one)
        if _is_fenced(one) and _may_label(paragraph, one, manner):
            fenced.append(one)
        run = runs[manner]
        awaited = int(run[-1]["last"] or run[-1]["first"]) + 1 if run else 1
        if int(one["first"]) == awaited and _may_label(paragraph, one, manner):
            run.append(one)
    told = [run for run in runs.values() if len(run) >= LEAST]
    told += [fenced] if fenced else []
    spots = [
        [at for at in map(re.Match.start, run) if AMID.search(paragraph[max(0, at - 9) : at])]
        for run in told
    ]
    return max(spots, key=len, default=[])


def _is_fenced(label: re.Match[str]) -> bool:
    """Whether a label stands between brackets or signs of weight, "[Rnd 2]", "**Row 5:**": two
    such labels stand for rows whatever their number.
    """
    if not label["word"]:
        return False
    behind = label["close"] + label["mark"]
    return (label["open"], label["close"]) == ("[", "]") or (
        label["open"] == "**" and behind.endswith("**")
    )


def _manner(label: re.Match[str]) -> tuple[str, ...]:
    """What the labels of one manner have in common."""
    word = (label["word"] or "").strip(" .\n").removesuffix("s")
    th = "th" if label["th"] else ""
    noun = (label["noun"] or "").removesuffix("s")
    mark = re.sub(r"\d", "", label["mark"]).strip()
    return label["open"], word, label["sign"] or "", th, label["close"], noun, mark


def _may_label(paragraph: str, label: re.Match[str], manner: tuple[str, ...]) -> bool:
    """Whether a number with its marks can label a row there."""
    before = paragraph[max(0, label.start() - 12) : label.start()]
    if not any(manner[:3]) and not (manner[3] and manner[5]) and manner[4] != ")":
        # A bare number may be one of the row before: only behind its end it is a label.
        ended = before.rstrip()[-1:] in ("", ".", ";", ":", ")", "]", "!")
        return ended and manner[6] in (".", ":", ".-", ":-")
    return not SPOKEN_OF.search(before)
