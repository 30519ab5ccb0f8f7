"""The words of a bracket behind a row that is over -> the part of them that states the total: "28
dc" of "28 dc - 7 each side", "24 sc" of "24 sc, i.e. 4 in each wedge", "12 dc" of "12 dc; the
corners are spaces".

What else such a bracket says is only told. Work in brackets goes somewhere, or is repeated.
"""

from __future__ import annotations

import re

from reader.pattern.totals import STITCH

BEGINS = re.compile(
    rf"\s*=?\s*(?P<total>\d{{1,4}}(?:\s*[(\[][\d,;:/\s-]+[)\]])?\s*(?:{STITCH}))(?![\w-])",
    re.IGNORECASE,
)
WORKS = re.compile(
    r"\b(?:in|into|over|through|to|from)\s+(?:the\s+)?(?:next|each|same|first|last|following|ring"
    r"|top|st|sp|ch|loop)\b(?!\s+(?:side|edge|wedge|section|corner|petal|point|needle|half))"
    r"|\b(?:repeat|rep|times|skip|sk|miss|yo|inc|dec)\b|\*|^\s*(?:(?:,|\+|&|and)\s*(?:\d+ )?ch\b|$)"
    rf"|^\s*(?:,|and|\+|&)\s*\d+\s*(?:{STITCH})\b(?!\s*(?:on|per|each|a|to|in|along)\b)",
    re.IGNORECASE,
)
OVER = re.compile(
    r"(?:[.;!]|\b(?:join(?:ed)?|close|sl st to join|(?:sl st|slip st|ss) (?:in|to|into|on)"
    r" (?:the )?(?:top|first|1st|beg\w*|\d(?:rd|th))\b[^,;.()]{0,24}))\s*$",
    re.IGNORECASE,
)
JOINED = re.compile(r"[a-z0-9]\s*$", re.IGNORECASE)
LEADS = re.compile(r"\s*(?:so|thus|that makes|(?:round|rnd|row) \d+\s*:)\s*(?=\d)", re.IGNORECASE)
AGAIN = re.compile(
    r"\*|\b(?:rep(?:eat)?|times|twice|ch|skip|sk|miss|next|each|same)\b"
    r"|[,;&+] ?\d+(?!\d|st|nd|rd|th)"
)


def stated_part(body: str, before: str, after: str) -> str:
    """That part; "" where the row is not over before the bracket, or goes on behind it, or where
    the bracket may be work.
    """
    if after.strip(" .;!\n") or not OVER.search(before):
        return ""
    lead = LEADS.match(body)
    found = BEGINS.match(body, lead.end() if lead else 0)
    if found is None:
        return ""
    # Behind the join a round is over, whatever place a bracket names: "(18 dc in ring)".
    works = AGAIN if JOINED.search(before) else WORKS
    if works.search(body, found.end()):
        return ""
    return found["total"]
