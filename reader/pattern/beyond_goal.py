"""Words that go on behind the goal of a rule: "until 3 remain, k3tog", "until there are 12
stitches. Then make 1, purl to end".
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
