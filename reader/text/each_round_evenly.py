"""Crochet text -> the same text, length kept, with so many changes in each of several rounds told
as most tell them: "inc 8 sc evenly spaced in each round, do not place inc over inc" as "inc 8 sts
evenly"; and "complete row in pattern" as "work pattern across row".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_N = rf"(?:\d+(?:\s*[(\[][\d\s,:;/-]+[)\]])?|{SPELLED})"
_STS = r"(?:sts?|stitches|s ?c|h ?d ?c|d ?c|tr ?c?)"
EACH_ROUND = Sought(
    ("each", "every"),
    r"(?P<label>\b(?:rounds?|rnds?|rows?)(?:\s+\d+)?:\s+)?"
    r"(?P<lead>\b(?:working|work)\s+in\s+s ?c,?\s+|\bcontinue\s+(?:to\s+)?)?"
    rf"(?P<way>\b(?:inc|dec)(?:rease|reasing|ing)?\.?)\s+(?P<n>{_N})\s+{_STS}"
    r"(?P<even>,?\s+evenly(?:\s+spaced)?|\s+spaced\s+evenly)?\s+(?:in|on)\s+(?:each|every)\s+"
    r"(?:of\s+(?:these|the)\s+)?(?:rounds?|rnds?|rows?)\b"
    r"(?P<remark>,?\s*(?:and\s+|but\s+)?(?:do\s+not|don't|being\s+careful|taking\s+care|having"
    r"|keeping|with|placing|without|never)\b[^.;()]{0,140}?)?(?=\s*(?:[.;()]|$))",
    re.IGNORECASE | re.MULTILINE,
)
COMPLETED = Sought(
    ("complete", "finish"),
    r"(?<=[,;]\s)(?P<verb>complete|finish)\s+(?:the\s+)?(?:row|round|rnd)(?P<how>\s+in\s+(?:the\s+)?"
    r"(?:pattern|patt|pat))?(?=\s*(?:[.;,]|$))",
    re.IGNORECASE | re.MULTILINE,
)


IN_LAST = Sought(
    ("last",),
    rf"(?P<total>\(\s*\d+\s+{_STS})(?P<which>\s+(?:in|on)\s+(?:the\s+)?last\s+(?:round|rnd|row))\)",
    re.IGNORECASE,
)
""" "(56 sts in last round)": of several rows the total printed is the last one's."""
LABELLED = Sought(
    ("dec", "inc"),
    r"(?P<label>\b(?:rows?|rounds?|rnds?)(?:\s+\d+)?:\s+)(?P<said>\((?:dec|inc)(?:rease)?(?:\s+(?:rows?|rounds?"
    r"|rnds?))?\.?\))(?=\s+(?!around\b)(?:(?-i:[A-WYZ])|\*\s+[A-Z]|skip|sk\b|ch\b|work\b))",
    re.IGNORECASE,
)
""" "NEXT 2 ROWS: (Dec) Skip 1st d c": what the row is, and no change of its own."""


PLAIN_FOR = Sought(
    ("each",),
    r"(?P<at>[.;)]\s+)(?P<said>work\s+(?:1\s+|one\s+)?s ?c\s+in\s+each\s+(?:s ?c|st|stitch)"
    r"(?:\s+around)?\s+for)"
    rf"(?=\s+{_N}\s+(?:more\s+)?(?:rounds|rnds|rows)\b)",
    re.IGNORECASE,
)
""" "... Work 1 s c in each s c for 10 rounds": rows of their own behind a labelled one."""
KEPT_ON = Sought(
    ("loops",),
    r"\b(?:keeping|holding|leaving|retaining)\s+(?:all\s+|the\s+)+loops\s+on\s+(?:the\s+)?hook,?\s+"
    r"(?=(?:pull|draw|pick)\s+up\s+(?:a\s+|1\s+|one\s+)?loop\b)",
    re.IGNORECASE,
)
""" "Keeping all loops on hook pull up a loop in ...": that is what a star does anyway."""


def each_round_evenly(text: str) -> str:
    """The text so put; any text goes in."""
    text = IN_LAST.sub(lambda m: m["total"] + ")" + " " * len(m["which"]), text)
    text = LABELLED.sub(lambda m: m["label"] + " " * len(m["said"]), text)
    text = PLAIN_FOR.sub(lambda m: m["at"] + "Work even for".ljust(len(m["said"])), text)
    text = KEPT_ON.sub(lambda m: re.sub(r"\S", " ", m.group()), text)
    return COMPLETED.sub(_completed, EACH_ROUND.sub(_evenly, text))


def _evenly(found: re.Match[str]) -> str:
    """ "Continue to inc 8 sc in each round" says how many rounds only behind a label of so many."""
    whole, label = found.group(), found["label"] or ""
    if not label and (found["lead"] or "").lower().startswith("cont"):
        return whole
    said = f"{label}{found['way']} {found['n']} sts evenly"
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _completed(found: re.Match[str]) -> str:
    said = "work pattern across row" if found["how"] else "work across"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole
