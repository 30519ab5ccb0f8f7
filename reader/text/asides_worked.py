"""Text -> the same text, length kept, without the brackets around words that lead to another edge:
"3 sc in last ch, (work on the other side) sc in next 7" -> "..., work on the other side, sc ...".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

OTHER_SIDE = Sought(
    ("side", "edge"),
    r"[(\[](?P<words>(?:now |then |do not turn,? |rotate (?:the )?(?:work|piece)?,? )?"
    r"(?:work(?:ing)?|continu(?:e|ing)|go(?:ing)?|turn(?:ing)?|crochet(?:ing)?)"
    r" (?:back )?(?:on|along|down|up|in|into|to|across|around)"
    r" (?:the )?(?:other|opposite|second|bottom|under) (?:side|edge)[^()\[\]]{0,40})[)\]]"
    r"(?P<gap>[,:;.]?)",
    re.IGNORECASE,
)


def led_to_other_side(text: str) -> str:
    """The text so put; any text goes in."""
    return OTHER_SIDE.sub(_open, text)


def _open(found: re.Match[str]) -> str:
    return f" {found['words']},{' ' * len(found['gap'])}"
