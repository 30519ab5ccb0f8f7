"""Text -> the same text, length kept, without sentences behind a row's printed total that only say
how the piece grows: "[149 tr] So every row grows by 6 sts.", "(18) You gain six in each round."

What a row is said to gain has been worked in it. A sentence that says so where no total ends the
row may be all that tells how to go on, and stays.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_IN = r"[^.;:*()\[\]]"
_GROWS = (
    r"\b(?:grow(?:s|n|ing)?|longer|wider|bigger|larger|shorter|narrower|smaller|increases?"
    r"|decreases?|gains?|loses?|lose|adds?|added|more|fewer|shrinks?)\b"
)
_EACH = (
    r"\b(?:(?:every|each|per|a|this|any) (?:other |second |new )?(?:row|round|rnd)s?|(?:each|every)"
    r" time|row by row|round by round)\b"
)
_WORKS = (
    r"\b(?:until|till|rep(?:eat)?|work(?! (?:grows|gets|is|will))|skip|miss|join|turn|next"
    r"|continue|in this way|ch \d)\b"
)
SAID = Sought(
    ("every", "each", "per", "row", "round", "rnd"),
    r"(?<=[)\]])(?P<gap>\.?\s+)"
    r"(?P<said>(?:(?:so|thus|note|that|which|means|from here on)\b,? )*"
    rf"(?=(?:every|each|all|the|your|you|it|this|we|that)\b)(?!{_IN}*{_WORKS})"
    rf"(?={_IN}*{_EACH}){_IN}*{_GROWS}{_IN}*\.)",
    re.IGNORECASE,
)


def without_growth_told(text: str) -> str:
    """The text so put; any text goes in."""
    return SAID.sub(lambda one: one["gap"] + re.sub(r"\S", " ", one["said"]), text)
