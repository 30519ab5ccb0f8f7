"""Totals that stand behind a row's words among words that only speak of them, "24 again.", "(no
change: 24)", "Check: 24 stitches.", "I make it 24." -> "(24)", "(24 stitches)"; length kept.
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted
from reader.text.row_notes import behind_a_label
from reader.text.sought import has_any

_UNIT = r"(?P<unit>[shd]{1,2}c|h?tr|sts?|stitches)\b"
_TELLS = (
    "again", "still", "now", "total", "tot", "altogether", "in all", "all told", "unchanged",
    "as before", "same as before", "no change", "stays", "stays at", "st count", "stitch count",
    "check", "tally", "expect", "makes", "gives", "i make it", "i get", "looking good at",
    "of them", "on the hook side", "on hook", "on the hook", "on the needles", "on your needles",
    "done",
)  # fmt: skip
_TELL = "|".join(re.escape(one) for one in sorted(_TELLS, key=len, reverse=True))
_MARKS = r"[ ,:=?!✓✔—-]*"
PIECES = tuple({one.split()[-1] for one in _TELLS})
SPOKEN_OF = re.compile(
    rf"(?P<gap>(?<=[\w)\]*])[.,;:!?]?[ ]+)(?P<open>[(\[])?(?:(?P<before>{_TELL})\b{_MARKS}"
    rf"(?:(?:now|still|at)\b{_MARKS})?)?(?<![-\d])(?P<n>\d{{1,4}})(?!\d)(?:[ ]?{_UNIT})?{_MARKS}"
    rf"(?P<behind>(?:(?:{_TELL})\b{_MARKS}){{0,2}})(?(open)[)\]])[ ]*[.!?]*[ ]*$",
    re.IGNORECASE | re.MULTILINE,
)

ENDED = re.compile(
    r"(?:[.!?)\]*,;:—-]|\b(?:a?round|across|end|st|sts|ring|loop|inc|dec|all|times|twice"
    r"|each|knit|purl|turn|join|[kp]\d+|\d+))$",
    re.IGNORECASE,
)
"""What a row's words end with: behind others a number is a part of them, "sc in next 5 again"."""


def spoken_totals(text: str) -> str:
    """The text so put; any text goes in."""
    return SPOKEN_OF.sub(_bracketed, text) if has_any(text, PIECES) else text


def _bracketed(found: re.Match[str]) -> str:
    whole = found.group()
    told = found["before"] or found["behind"]
    before = found.string[: found.start()][-12:] + found["gap"].strip()
    if not told or not ENDED.search(before) or not behind_a_label(found):
        return whole
    unit = f" {found['unit']}" if found["unit"] else ""
    said = f"{found['gap']}({found['n']}{unit})"
    if len(said) > len(whole):
        said = said.replace("  ", " ")
    return fitted(said, whole)
