"""The second side of a neck, or of a piece, told by the first: "complete to match first side",
"finish the other shoulder in the same way".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_SIDE = r"(?:side|half|shoulder|front|strap)"
_AS = r"(?:to\s+(?:match|correspond(?:\s+(?:to|with))?)|(?:the\s+)?same\s+as|as(?:\s+for)?|like)"
_VERB = r"\b(?:complete|finish|work|make|knit|shape|do)\s+"
_SECOND = rf"(?:this|that|(?:the\s+)?(?:second|2nd|other|opposite|remaining))\s+{_SIDE}"
COMPLETE = Sought(
    ("side", "half", "shoulder", "front", "strap"),
    rf"{_VERB}(?:{_SECOND}\s+)?{_AS}\s+(?:the\s+)?(?:first|1st|other)\s+{_SIDE}\b[^.;]*"
    rf"|{_VERB}{_SECOND}\s+(?:{_AS}\s+(?:the\s+)?(?:first|1st|other)\b"
    r"|to\s+(?:match|correspond)|in\s+the\s+same\s+(?:way|manner)|likewise|(?:just\s+)?the\s+same"
    r"|similarly|alike)[^.;]*",
    re.IGNORECASE,
)
