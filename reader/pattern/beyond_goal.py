"""Words that go on behind the goal of a rule, or behind so many rows: "until 3 remain, k3tog",
"knit 6 rounds and bind off".
"""

from __future__ import annotations

import re

_ROWS = r"(?:rows?|rnds?|rounds?|rds?|r(?=\d))"
BEYOND_GOAL = re.compile(
    r"\b(?:until|till|to)\b[^.;,]*?\b\d+\b[^.;,()]*(?P<next>[,;.]\s+(?:and\s+|then\s+)*"
    r"(?:k\d|p\d|knit|purl|k\b|p\b|narrow|slip|sl\b|work|bind|cast|bo\b|fasten|break|draw)"
    r"|[.;]\s+(?:(?:and|then|now|next),?\s+)*(?:make|m|take|turn|pearl|seam|pick|put|place|divide|rib"
    r"|o|over|wool|yarn|thread|change|join)\b"
    r"|,?\s+(?:and\s+)?then\s+(?:bind|cast|bo\b|k|p|sl|work|knit|purl|fasten|break|rep"
    rf"|(?:only\s+)?(?:the\s+)?(?:{_ROWS}\s*\d|\d+\w\w\s+{_ROWS}|(?:dec|inc)\w*\.?\s+{_ROWS})))",
    re.IGNORECASE,
)
"""What is worked when a goal is reached, in the same breath: "until 3 remain, k3tog"."""
FURTHER_WORK = re.compile(
    r",?\s+(?:and\s+)?then\b"
    r"|(?:,\s+(?:and\s+)?|;\s+|\s+and\s+)(?=(?:bind off|cast o(?:n|ff)|bo\b|co \d"
    r"|(?:pick|take) up(?: and k(?:nit)?)? \d+)\b)"
    r"|,\s+(?:and\s+)?(?=(?:dec|inc)\w* \d)"
    r"|,\s+(?:and\s+)?(?=(?:narrow|widen|take in|decrease|increase|make 1|tak?e? 2 tog)\b"
    r"(?![^.;]*\b(?:of|in|on|at) (?:(?:each|every)\b(?! (?:side|end|edge|needle|pin))"
    r"|these|the last|them|\d+(?:st|nd|rd|th))\b))"
    r"|\s+and\s+(?=(?:knit|purl|pearl|seam|rib|work|k|p) (?:\d+|an?|another) (?:more |plain "
    r"|purl )?"
    rf"{_ROWS}\b(?! ?(?:,? ?(?:alternat|by turns|for\b|until|till|in turn))))",
    re.IGNORECASE,
)
"""Behind so many rows in the same sentence, what is worked next."""
