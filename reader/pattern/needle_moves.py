"""Stitches that only go from one needle to another: "slip the last 16 sts on to the other end of
the same needle", "knit 16 sts (from 1st needle) on to one needle" -> Act; none is worked by that,
and those not named stay where they are.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import Act, Deed
from reader.terms.stitches import Craft

FARTHEST = 26
"""Tokens in which such a move is told."""
MOVED = re.compile(
    r"^(?:sl|slip|transfer|move|put|place|return|pass|rearrange|re-arrange)\b"
    r"(?:(?! (?:k|p|knit|purl|yo|ssk|k2tog|turn|work)\b).)*? "
    r"(?:on to|onto|on|to|with|at) (?:(?!\b(?:spare|extra|holder|st|stitch|waste|cable|cn|safety"
    r"|crochet"
    r"|thread|scrap|hold)\b)"
    r"[\w-]+ ){0,7}?(?:needles?|pins?|ndls?|dpns?)\b"
)
WHICH = re.compile(
    r"\b(?:first|second|third|fourth|1st|2nd|3rd|4th|last|next|same|other|end|beg\w*|one|2|two|3|three|4"
    r"|four|previous|left|right|back|instep|heel|front|sole)\b(?: \w+){0,4} (?:needles?|pins?"
    r"|ndls?|dpns?)\b"
)
BACK_AGAIN = re.compile(
    r"\bback (?:on|onto|to|on to)\b|\b(?:unworked|waiting|held)\b"
    r"|\b(?:from|off) (?:(?:the|a|its|1st|2nd|first|second|st|stitch) )*(?:holders?|waste|scrap"
    r"|spare|thread|safety)\b"
)
"""They come back from where they waited."""
NAMED = re.compile(r"\b(?:needle|pin|dpn)")
BEHIND = re.compile(
    r"^(?:of (?:the |this )?(?:rnd|round|row)\b ?)?"
    r"(?:from (?:the )?(?:(?:\w+) )?(?:needle|pin) ?)?"
    r"(?:(?:on to|onto|on|to) (?:the |a )?(?:(?:one|same|1|end of|beginning of|beg of"
    r"|other end of|last"
    r"|first|second|third|1st|2nd|3rd|4th|next|heel|instep|previous)(?: the)? )+(?:needle|pin"
    r"|dpn)\b)?"
)


def find_move(cur: Cursor, start: int) -> Act | None:
    """The move that stands here, taken; None (nothing taken) where none does."""
    if cur.book.craft is not Craft.KNITTING:
        return None
    lows: list[str] = []
    ends: list[int] = []
    for ahead in range(FARTHEST):
        low = cur.low(ahead)
        if low in STOPS or low in ("", "(", "[") or cur.kind(ahead) == "stars":
            break
        lows.append(low)
        ends.append(len(" ".join(lows)))
    said = " ".join(lows)
    found = MOVED.match(said)
    if found is not None:
        if BACK_AGAIN.search(found.group()):
            return None
        if {"hold", "front", "back"} & set(lows) and "needle" not in said[found.end() - 8 :]:
            return None
        if not WHICH.search(found.group()):
            return None
    elif cur.at and cur.low(-1) not in (*STOPS, "", "(", "and"):
        found = BEHIND.match(said)
        found = found if found and NAMED.search(found.group()) else None
    length = len(found.group().rstrip()) if found else 0
    taken = next((at + 1 for at, end in enumerate(ends) if end >= length), 0) if length else 0
    if not taken:
        return None
    cur.at += taken
    return Act(cur.span(start), cur.said(start), Deed.MOVED)

