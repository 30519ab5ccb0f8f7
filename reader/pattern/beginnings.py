"""Whether words before the first row begin the work: "With red, ch 6 and join" does, "Rounds are
joined, ch 3 counts as a dc" only tells how it goes.

Both speak of chains, rings and joining. What begins the work is told as something to do, at the
head of a clause or behind what it is done with; what tells says that something is, or counts.
"""

from __future__ import annotations

import re
from functools import lru_cache

from reader.pattern.said_only import STARTS
from reader.terms.numbers import SPELLED

_NUMBER = rf"(?:\d+|{SPELLED})"
_CHAIN = r"(?:(?:ch(?:ain)?s?|c)\b|ch(?=\d))"
_SIZES = r"(?: ?[(\[][\d,; /-]+[)\]])*"
BEGINS = re.compile(
    r"\W*(?:[a-z\d]+\b(?:[^.;:]|\.\s?\d){0,60}?\s)?"
    rf"(?:{_CHAIN}\W*(?:\(?{_NUMBER}|a\b|an\b|any|loose|as (?:long|many)|up to|until|enough|of"
    r"|about|to (?:the|fit|measure))|chained"
    rf"|{_NUMBER}{_SIZES}[ -]?(?:loose |base |foundation |starting )?{_CHAIN}"
    r"|cast(?:ing)? on|co ?\d|magic|m[rc]\b|(?:wind|wrap|twist)\w*"
    r"|(?:re)?(?:join|attach)(?:ing)? (?!each|every|all|at the end|in the usual|rounds|with)"
    r"|(?:re)?join(?:ing)? with (?:a )?(?:[sh]?dc|sc|h?tr|ss)|pick(?:ing)? up|f[sh]?dc\b|fsc"
    r"|foundation|slip ?(?:knot|loop)|adjustable|sliding"
    r"|in(?:to)? (?:a |an |the |your )?(?:\w+ )?(?:ring|loop|circle)|ring (?:with|of)"
    r"|make (?:a|an|your|the) (?:ring|loop|circle|chain|slip|foundation)|circle\b)",
    re.IGNORECASE,
)
"""A clause that begins the work, its lead included: "with a 4 mm hook make 45 ch"."""
RING = re.compile(r"\W*(?:(?:[ivx]+\b\W*)?\d[^a-z]*)?ring\W*$", re.IGNORECASE)
"""A first round told as in a table: "6 (ring)"."""
TELLS = re.compile(
    r"=|\bcount|\bfor (?:a )?(?:[sh]?dc|sc|h?tr)\b|\b(?:able|how) to\b"
    r"|\b(?:rounds|rows|rnds|joins|chains|ch) (?:is|are|will)\b|\bmultiple\b|\bif you\b"
    r"|^\W*(?:don't|do not)\b|^\W*(?:at |for |after |in )?(?:each|every|all) (?:round|rnd|row)s?\b",
    re.IGNORECASE,
)
"""A clause that only says what is."""
CLAUSE = re.compile(
    r"(?<!No)\.\s|\.$|\.?--|—|\band\b|[;:!?*|/]|, (?=but\b|then\b|which\b|plus\b|so\b)"
)
ASIDE = re.compile(r"\((?![^()]*\bring\b)[^()]*[a-z][^()]*\)")
COLON_SIZES = re.compile(r"(?<=\d):(?=\d)")


def begins_work(words: str) -> bool:
    """Whether a clause of the words begins a piece; any words go in."""
    if STARTS.search(words) is None:
        return False
    plain = COLON_SIZES.sub(",", ASIDE.sub(" ", " ".join(words.split())))
    return any(
        RING.match(one) is not None or (BEGINS.match(one) is not None and not TELLS.search(one))
        for one in CLAUSE.split(plain)
    )


BEGINS_SOON = re.compile(
    r"\W*(?:(?:ch|chain|cast on|co)\b(?! [-=]|\s+(?:ch(?:ain)?s?|sts?|stitch)\b)|make\b|with\b"
    r"|(?:starting|beginning|commencing|begin|start|holding|using|working|work)\b[^.;:()]{1,60}?"
    r"\b(?:ch|chain|cast on|co) \d)",
    re.IGNORECASE,
)
"""How words below a list of materials, or of what is short for what, begin the work."""
FOUNDS = re.compile(
    rf"\b(?:{_CHAIN}\W*(?:of )?\(?{_NUMBER}\b"
    rf"|{_NUMBER}{_SIZES} ?(?:loose |base |foundation )?{_CHAIN}"
    rf"|cast(?:ing)? on (?:[a-z]+ ){{0,2}}{_NUMBER}\b|co ?\d)", re.IGNORECASE
)
"""So many chains, or stitches cast on."""

FOUNDATION = re.compile(r"\W*(?:foundation|base|starting) ?(?:chain|ch|row)?:", re.IGNORECASE)


def founds(words: str) -> bool:
    """Whether words below a list of materials, or of what is short for what, begin the work; in any
    words do the chain or the cast on of a first clause: "To begin, ch 33."
    """
    if BEGINS_SOON.match(words):
        return True
    plain = FOUNDATION.sub("", " ".join(words.split()))
    first = CLAUSE.split(plain, maxsplit=1)[0]
    return (
        FOUNDS.search(first) is not None
        and BEGINS.match(first) is not None
        and not TELLS.search(first)
    )


CASTS_ON = re.compile(r"\bcast(?:ing)?[ -]on\b|\bc\.? ?o\.?(?=\s*\d)|\bmount\b", re.IGNORECASE)
SETS_UP = re.compile(
    r"\b(?:cast|pick|knit up|set[ -]?up|provisional|loops?|sts?|stitches|chain|ch \d|row|rnd|round)"
    r"\b(?!-)",
    re.IGNORECASE,
)
"""Words of knitting that may begin a piece before stitches are cast on."""


LISTS = re.compile(
    r"\W*(?:abbrev|materials|gauge|tension|note\b)|.*?\b(?:gauge|tension)\b[^.]*\d", re.IGNORECASE
)
"""Words of a list or of a gauge."""


@lru_cache(maxsize=4)
def _first_cast_on(text: str) -> int:
    """Where a text first casts on stitches; 0 where it casts on none."""
    first = CASTS_ON.search(text)
    return first.start() if first else 0


def before_cast_on(words: str, start: int, text: str) -> bool:
    """Whether words that begin at `start` stand before the first stitches that the text casts on,
    and speak of none.
    """
    if start >= _first_cast_on(text) or CASTS_ON.search(words):
        return False
    return SETS_UP.search(words) is None or LISTS.match(words) is not None
