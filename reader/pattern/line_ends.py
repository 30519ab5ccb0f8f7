"""How a line ends that goes on below: amid a heading, a phrase, or a row's number of times."""

from __future__ import annotations

import re

HALF_HEADING = re.compile(r"(?:^|[.;:)]\s+)[A-Z]{3,}(?: [A-Z]{2,})*$|[,-]$")
"""A line that ends inside a heading, "... cut yarn. SHAPE ARMHOLE", or amid a sentence."""
HALF_NAMED = re.compile(
    r"(?:^|[.;:)]\s+)(?:To )?(?:Shape|Armhole|Raglan|Neck|Shoulder|Sleeve|Cap|Front|Back|Left|Right"
    r"|Crown|Thumb|Heel|Toe|Neckline)$"
)
NAMED_BEHIND = re.compile(r"[A-Za-z]+(?: [a-z]+){0,2}: ")
""" "... 12 inches. Armhole / Shaping: Bind off": the name of a section over the line's end."""
MID_PHRASE = re.compile(r"\b(?:rep|repeat|as|of|from|than|the|same as)$", re.IGNORECASE)
"""How a line ends that cannot stand alone."""
DEMANDS = re.compile(
    r"(?:^|[\s,;(*])"
    r"(?:in|into|next|each|every|to|and|or|with|ch|chain|sk|skip|miss|sl|same|first|a|an"
    r"|(?<!cast )on|over|under|by|for|at|until|till|work|make|k|p|knit|purl|from|of|the|then|rep"
    r"|repeat|between|through|cast|bind|pick|ending|remaining|foll|following|beg|your|this|these|is|are)$"
    r"|[(\[*+&/=]$",
    re.IGNORECASE,
)
"""How a line ends that demands another word, whatever its width."""
EVERY_LAST = re.compile(
    r"\b(?:every|each|other|alternate|same|last|next|side|knit|purl|k|p|dec|inc|repeat|rep|from|of"
    r"|as|in|on|\d+(?:st|nd|rd|th))$",
    re.IGNORECASE,
)
"""How a line ends behind which "row" is no label: "... every other / row 4 (5-6) times"."""
CHAIN_ALONE = re.compile(
    r"\W*(?:(?:with|using|in)\b[^.;:\n]{1,40}, )?(?:loosely )?(?:ch(?:ain)?|make(?: a chain of)?)"
    r" \d{1,3}\b[\d()\[\]{}<>,:;/ -]*(?:ch(?:ain)?s?|sts?|stitches)?(?: loosely)?\.?\s*",
    re.IGNORECASE,
)
"""A block that is only the chain a piece begins with: "Ch 42 (46, 50)."."""
CLOSES_RING = re.compile(
    r"(?:(?:being|taking|without|be|take)\b[^.;]{0,40}, )?"
    r"(?:(?:join|close|sl st|ss|slip st(?:itch)?)\b(?! (?:yarn|thread|wool|[a-z]+ (?:yarn|thread)))"
    r"[^.;]{0,40}\b(?:first|1st|beg\w*|ring|circle|round|loop)\b)", re.IGNORECASE
)
"""A line that closes such a chain to a ring."""
WORKS_ON = re.compile(
    r"(?:next|knit|purl|sl(?:ip)?(?! st)|[kp](?: ?\d+)?|cast on|bind"
    r"|(?:work|cont\w*) (?:in|even|\d))\b",
    re.IGNORECASE,
)
"""How a line that an author set on its own begins, when it tells what comes next."""
STARRED = re.compile(r"\* ?\w[^*]*(?:\brep|\*)")
"""A line that is a list with its repeat: without a label above, a row of its own."""
COLUMN_LAST = re.compile(r"[ ]{2,}= \d{1,4}(?:[ ]?(?:sts?|stitches))?[ ]*$")
"""A line that ends with its total in a column of its own."""
SPOKEN_TOTAL = re.compile(r"[a-z]\(\d{1,4}\)$")
"""A line of spoken words that ends with its total."""
