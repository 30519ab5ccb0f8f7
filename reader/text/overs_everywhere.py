"""Knitting text -> the same text, length kept, with a yarn over at every stitch told as most do: "a
yarn over after EVERY stitch", "knit one, yo, knit one, yo... to the end", "yo first, then k1,
for all 12" -> "(k1, yo) around".

Such words are known by all of them, in any order: yarn overs, single stitches, and that it goes on.
"""

from __future__ import annotations

import re

from reader.text.rows_likewise import of_words
from reader.text.sought import Sought, lowered

ROW = Sought(
    ("yo", "yarn over", "yarn-over"),
    r"^(?P<label>[ ]*(?:(?:rows?|rnds?|rounds?|r)[ ]?)?\d{1,3}(?:[ ]?[-,&][ ]?\d{1,3})*"
    r"(?:st|nd|rd|th)?(?:[ ](?:row|rnd|round))?[ ]?[:.)][ ]+)(?P<words>[^\n]*"
    r"\b(?:yo|yarn[ -]over)s?\b[^\n]*)",
    re.IGNORECASE | re.MULTILINE,
)
SINGLE = re.compile(r"\b(?:knit[ ](?:one|1)|k[ ]?1)\b(?:[ ](?:st|stitch)\b)?(?!/)")
OVER = re.compile(r"\b(?:an?[ ])?(?:yarn[ -]overs?|yo'?s?)\b(?![ ]?\d)")
EACH = re.compile(
    r"\b(?:(?:knit|k)[ ])?(?:every|each|all)(?:[ ](?:of[ ])?(?:the[ ])?(?:\d+[ ]?)?)"
    r"(?:(?<=\d)|[ ]?(?:single[ ])?(?:sts?|stitch(?:es)?|one))\b|\bx[ ]?\d+|\ball[ ]\d+\b|\beach\b"
)
FILLERS = of_words(
    "after before at of the with it its make so goes go then and first to for on same trick work do"
    " this that like keep going way right as in continue over repeat round again pair all around"
    " end rnd row needle but now just plus rep times other about"
)
ON = of_words("way repeat round again pair around end on")
AT_EACH = re.compile(r"Y +(?:after|before|with|for|in|at) +E|E +with +Y")
MORE_WORK = re.compile(
    r"\b(?:k|p|knit|purl|yo|yarn|sl|slip|ssk|kfb|m1|skp|psso|inc|dec)\b|\b[kp]\d", re.IGNORECASE
)
"""Stitches behind the words: these told of a part of the row."""
TIMES = re.compile(r"\bx[ ]?(\d+)", re.IGNORECASE)
BREAK = re.compile(r"[.;,!(](?=[ .]|$|\()|[ ][-–—=][ ]|\.{3}|$")


AS_STITCHES = Sought(
    ("yo", "yarn over", "yarn-over"),
    r"(?<=[.;!:(,–—-]\s)(?:(?:treat|count|take|knit)[ ])?"
    r"(?:(?:the|those|these|all|your|any|each|no)[ ]){0,2}"
    r"(?:yo'?s?|yarn[ -]overs?)[ ](?:(?:are|is|as|count|counts|now|just|all|like|each|simply"
    r"|normal|ordinary|usual|regular|real|plain|proper|here|stitches|stitch|sts|st|a|an|one|from|then"
    r"|on|treated|counted|in|this|round|row|too|of|the|last|they|any|other|time|to|make)\b[ ]?)"
    r"{2,12}(?=[.;!)\n]|$)",
    re.IGNORECASE | re.MULTILINE,
)
"""That yarn overs are stitches like others: nothing to do."""


def overs_everywhere(text: str) -> str:
    """The text so put; any text goes in."""
    text = AS_STITCHES.sub(lambda found: " " * len(found.group()), text)
    return ROW.sub(_row, text)


def _row(found: re.Match[str]) -> str:
    words = found["words"]
    for end in reversed([one.start() for one in BREAK.finditer(words)]):
        if MORE_WORK.search(words, end):
            break
        pair = _pair(lowered(words[:end]), words[end : end + 3] == "...")
        often = TIMES.search(words, 0, end)
        told = f"({pair})x{often[1]}" if often else f"({pair}) around"
        if pair is not None and len(told) <= end:
            return found["label"] + told.ljust(end) + words[end:]
    return found.group()


def _pair(said: str, trails_off: bool) -> str | None:
    """What such words tell of at every stitch of a row; None where they tell of more."""
    marked = EACH.sub(" E ", OVER.sub(" Y ", SINGLE.sub(" K ", said)))
    if set(re.findall(r"[a-z]+|[^\sa-zKYE,:;.!?&+()\[\]'-]", marked)) - FILLERS:
        return None
    steps = "".join(re.findall("[KY]", marked))
    goes_on = "E" in marked or trails_off or ON.intersection(marked.split())
    if not goes_on or re.fullmatch("Y?(?:KY)+|(?:YK)+|Y", steps) is None:
        return None
    if "K" not in steps and AT_EACH.search(marked) is None:
        return None
    begins = steps[:2] == "YK" or (len(steps) == 1 and "before" in marked)
    return "yo,k1" if begins else "k1,yo"
