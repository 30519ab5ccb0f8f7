"""Rows that are said to form the pattern and then to go on, "These two rows form the pattern. Carry
on until 36 sts remain" -> "rep last two rows until 36 sts remain"; length kept.

Else the sentence before the rule would be a row of its own, worked once.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_MANY = r"(?:[2-9]|1\d|two|three|four|five|six|seven|eight|ten|twelve)"
_ROWS = r"(?:rows|rnds|rounds)"
FORM = Sought(
    ("patt", "repeat"),
    r"(?P<at>(?:^|(?<=[.!:;])) *)(?:(?:these|the last|last|the above|the previous)"
    rf" (?P<many>{_MANY})"
    rf" (?P<kind>{_ROWS})|(?P<named>{_ROWS} \d{{1,3}}(?: ?(?:and|to|-|&) ?\d{{1,3}})))"
    r"(?: (?:between them|now|together|will|then))* (?:form|make|are|set|complete|give"
    r"|establish)\b[^.;\n]{0,24}\b(?:patt(?:ern)?|repeat)\b[^.;\n]{0,24}[.;] +"
    r"(?:repeat|rep|continue|cont|carry on|keep going|keep on|keep repeating|go on|work on|work)\b"
    r"(?: (?:them|these|with them|(?:in|with) (?:the |this )?patt(?:ern)?|in this way"
    r"|in this manner|like this|so|thus|as set|these (?:two )?rows))*"
    r"(?= (?:until|till|for|to|\d|twice)\b)",
    re.IGNORECASE | re.MULTILINE,
)


def rows_repeated(text: str) -> str:
    """The text so put; any text goes in."""
    return FORM.sub(_told, text)


def _told(found: re.Match[str]) -> str:
    rows = found["named"] or f"last {found['many']} {found['kind']}"
    return f"{found['at']}rep {rows}".ljust(len(found.group()))
