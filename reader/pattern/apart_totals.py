"""Totals told in parts: of one side of a piece with corners, "(7 dc on each side)", "You have 7 dc
per side.", or of the stitches beside a chain over an opening, "18 dc, 18 ch".
"""

from __future__ import annotations

import re

from reader.pattern.totals import TOLD, Printed
from reader.text.sought import Sought

SIDE = "side"
"""The kind of such a total."""
_LIST = r"\d{1,3}(?:\s*[(\[][\d,;:\s/-]+[)\]])?"
_KIND = r"(?:sts?|stitches|[sd] ?c|h ?d ?c|h?tr|[a-z]+s)"
_SIDES = (
    r"(?:(?:on|along|at|in|for|to|across|down) )?(?:(?:each|every|per|a|all|any) (?:one )?"
    r"(?:of (?:the |its )?)?|the )(?:(?:3|4|5|6|8|three|four|five|six|eight|straight) )?"
    r"(?:sides?|edges?)(?: (?:between|not counting|without|counting|including)[^()\[\].;]{3,40})?"
)
TOTAL = Sought(
    ("side", "edge"),
    rf"(?:[(\[]\s*(?:(?:{TOLD})\s+)?(?P<a>{_LIST}) (?:{_KIND} )?{_SIDES}\s*[.)\]]+"
    rf"|(?:(?<=[.;)] )|(?<=— )|(?<=- )|(?<== )|^(?=[a-z]))(?:(?:{TOLD})\s+)?(?P<b>"
    rf"(?:(?P<whole>{_LIST}) {_KIND}[,:] (?:i\.e\. |that is,? |or )?)?{_LIST})"
    rf" (?:{_KIND} )?{_SIDES}\s*[.)]*\s*$)",
    re.IGNORECASE,
)


BESIDE_CHAIN = Sought(
    ("ch",),
    rf"(?:(?<=[.;:)] )|(?<=[.;:)]  ))(?P<a>{_LIST}) ?(?P<kind>sts?|stitches|[sd] ?c|h ?d ?c|h?tr)"
    rf"[ .]*(?:,(?: and)?|and|\+|&|plus) ?(?P<ch>{_LIST}) ?(?:ch|chs|chains?)[\s.)]*$",
    re.IGNORECASE,
)
MADE = re.compile(r"\bch(?:ain)? ?(\d{1,3})\b|\b(\d{1,3})(?: ?[(\[][^()\[\]]*[)\]])? ?ch\b(?! ?sp)")


def told_apart(words: str) -> tuple[list[Printed], str]:
    """Such totals, and the words with each turned to spaces."""
    found: list[Printed] = []
    for told in [*TOTAL.finditer(words), *BESIDE_CHAIN.finditer(words)]:
        sides = told.re is TOTAL.shape
        if sides and told["b"] and _inside(words, told.start()):
            continue
        if not sides and not _made(int(told["ch"].split("(")[0]), words[: told.start()]):
            continue
        whole = told["whole"] if sides else None
        said = whole or (told["a"] or told["b"] if sides else told["a"])
        numbers = tuple(int(one) for one in re.findall(r"\d+", said))
        kind = "" if whole else SIDE if sides else " ".join(told["kind"].lower().split())
        found.append(Printed(told.start(), told.end(), numbers, kind, each=sides and not whole))
        blank = " " * (told.end() - told.start())
        words = words[: told.start()] + blank + words[told.end() :]
    return found, words


def _inside(words: str, at: int) -> bool:
    """Whether a bracket is open there, which tells more than this."""
    before = words[:at]
    return max(before.rfind("("), before.rfind("[")) > max(before.rfind(")"), before.rfind("]"))


def _made(number: int, before: str) -> bool:
    """Whether the row makes such chains: so many, or so many together."""
    made = [int(one[0] or one[1]) for one in MADE.findall(before.lower())]
    return any(one and number % one == 0 for one in made)
