"""Knitting text -> the same text, length kept, with rows in words of some authors' own as most tell
them: "k to 2 sts before each marker, k2tog", "2 sts from marker", "kfb in first and last st",
"Rows 2-7: no shaping", "starting with a purl row, work", "dec 1 st at beg and 1 st at end".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

BEFORE_EACH = Sought(
    ("before each m", "before every m"),
    r"(?P<k>\b(?:k|knit|p|purl|work)) to (?P<n>\d+) (?P<sts>sts |stitches )?before (?:each|every)"
    r" (?:marker|m)\b,? (?P<dec>k2tog|ssk|p2tog|skp|m1[lr]?)(?P<sm>, (?:sm|sl m|slip marker))?"
    r"(?=\s*\.?\s*$)",
    re.IGNORECASE | re.MULTILINE,
)
FROM_MARKER = Sought(
    ("from marker", "from next marker", "from the marker"),
    r"(?<=\d )(?P<sts>(?:sts|stitches) )from (?:the |next )?marker\b",
    re.IGNORECASE,
)
BEFORE_SIDE = Sought(
    ("before",),
    r"(?<=\bbefore\s)(?P<side>(?:the\s)?(?:(?:first|second|1st|2nd|next|other|opposite|left|right|same)"
    r"\s)?(?:side|seam|underarm|toe|edge)(?: (?:st|stitch|seam|line|point))?(?: marker| m)?"
    r"|(?:the\s)?(?:last|final)\s(?:m|marker))"
    r"(?=\s*[,;:])",
    re.IGNORECASE,
)
""" "K to 3 sts before side, k2tog, k2": the side of a round is a place as a marker is."""
LAST_OF_NEEDLE = Sought(
    ("needle",),
    r"\bto (?:the )?last (?P<n>\d+)(?P<sts> (?:sts?|stitches))? (?:on|of|in) "
    r"(?:(?:the|this|each|every) )?needle\b"
    r"(?=[^\n.]{1,60}(?:\brep|\bx ?\d|[)\]] |\btwice\b|\btimes\b))",
    re.IGNORECASE,
)
""" "*K1, ssk, k to last 3 sts on needle, k2tog, k1; rep from * once more": as before a marker."""
FIRST_AND_LAST = Sought(
    ("first and",), r"\bkfb(?= in (?:the )?first and (?:the )?last st)", re.IGNORECASE
)
ALSO_AT_END = Sought(
    ("end",),
    r"(?P<begun>\b(?:inc|dec)\w*\.? (?:1|one) (?:st|stitch) at (?:the )?beg\w*\.? and )"
    r"(?P<again>(?:1|one) (?:st|stitch) at (?:the )?)(?=end\b)",
    re.IGNORECASE,
)
BEGUN_WITH = Sought(
    ("start", "beg", "commenc"),
    r"\b(?:start|beg|commenc)(?:inn?ing|ing|e|in)?\.? (?:with|on) (?:a |the )?"
    r"(?P<what>purl|knit|plain|[kp]|[rw]s) (?:row|rnd|round)\b"
    r"(?=,? (?:and )?(?:work|cont|knit|st\b))",
    re.IGNORECASE,
)
""" "Starting with a purl row, work 6 rows in stocking stitch": no row of its own."""
NO_SHAPING = Sought(
    ("shaping", "creas"),
    r"(?P<label>^[^\n:]{0,24}\d[^\n:\w]{0,6}: ?)(?P<said>(?:with )?(?:no|without) (?:any )?"
    r"(?:shaping|increases|decreases|increasing|decreasing))(?=\W*$)",
    re.IGNORECASE | re.MULTILINE,
)


def row_words(text: str) -> str:
    """The text so put; any text goes in."""
    text = BEFORE_EACH.sub(_repeated, text)
    text = FROM_MARKER.sub(lambda m: f"{m['sts']}before m".ljust(len(m.group())), text)
    text = BEFORE_SIDE.sub(lambda m: "m".ljust(len(m["side"])), text)
    text = LAST_OF_NEEDLE.sub(
        lambda m: f"to {m['n']} sts before m".ljust(len(m.group())), text
    )
    text = FIRST_AND_LAST.sub("inc", text)
    text = ALSO_AT_END.sub(lambda m: m["begun"] + " " * len(m["again"]), text)
    text = BEGUN_WITH.sub(_begun, text)
    return NO_SHAPING.sub(_even, text)


def _begun(found: re.Match[str]) -> str:
    what = "p" if found["what"].lower() in ("purl", "p", "ws") else "k"
    whole = found.group()
    said = f"{'B' if whole[0].isupper() else 'b'}eg with a {what} row"
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _even(found: re.Match[str]) -> str:
    return found["label"] + "work" + "even".rjust(len(found["said"]) - 4)


def _repeated(found: re.Match[str]) -> str:
    said = f"({found['k']} to {found['n']} st before m,{found['dec']}) to end"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole
