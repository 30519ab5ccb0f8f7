"""A piece told by one before it up to some place, "as given for back until armhole measures 10 cm",
"follow instructions for back to end of armhole shaping" -> its name, and the words of the place.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_GIVEN = r"(?:\s+(?:given|described|instructed|directed|set\s+out|told))?"
_LIKE = (
    rf"(?:(?:exactly|just|the|in\s+the)\s+)*(?:same(?:\s+(?:way|manner))?\s+as{_GIVEN}|as{_GIVEN}|like|to\s+match"
    r"|(?:all\s+)?(?:instructions|directions)(?:\s+given)?)(?:\s+(?:for|of|on))?"
)
AS_FAR = Sought(
    ("as", "like", "match", "instructions", "directions"),
    r"^\W*(?:(?:cast\s+on|begin)\s+and\s+)?(?:(?:work|make|knit|follow|repeat|proceed|continue|cont)\s+)?"
    rf"{_LIKE}\s+(?:the\s+)?(?P<name>[a-z]+(?:\s+[a-z]+)??)(?:\s+piece)?,?\s+"
    r"(?P<far>(?:up\s+)?(?:to|until|till|as\s+far\s+as|through|including)\b[^.;:]*)(?P<turned>(?!x)x)?",
    re.IGNORECASE,
)
