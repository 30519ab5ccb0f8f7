"""Clean text -> the same text, length kept, where an edge all around is told first and then side by
side: "Work a row of sc around mat, having 40 sc on each long side" -> "Work 40 sc on each ...".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

ST = r"(?:s ?c|s ?d ?c|h ?d ?c|d ?c|tr(?: ?c)?)"
AROUND = Sought(
    ("around",),
    rf"\b(?P<work>work(?:ing)?)\s+(?:(?:a|1|one)\s+(?:row|rnd|round)\s+of\s+)?(?:{ST}\s+)?(?:evenly\s+)?"
    r"(?:all\s+)?around\s*(?:[a-z]+\s+){0,4}?[a-z]*\s*,?\s*(?:and\s+)?"
    r"(?:(?:work|mak|hav|plac|allow)ing|with|work|make)?\s*"
    rf"(?=\d+ {ST} (?:in|on|across|along|at|up|down) (?:each|every) (?:corner|long|short|of the "
    r"(?:long|short|corners|four|4)))(?=[^.;]{0,120}\beach (?:of the )?(?:long|short|four|4)\b)",
    re.IGNORECASE,
)


IN_KIND = Sought(
    ("work",),
    rf"\bwork(?:ing)?\s+in\s+(?P<kind>{ST}),?\s+(?=work(?:ing)?\s+\d+\s+(?P=kind)\b)",
    re.IGNORECASE,
)
"""The stitch told before so many of it are: "working in sc work 30 sc on side"."""


def sides_first(text: str) -> str:
    """The text with such edges told by their sides alone."""
    text = IN_KIND.sub(lambda found: " " * len(found.group()), text)
    return AROUND.sub(lambda found: found["work"][:4].ljust(len(found.group())), text)
