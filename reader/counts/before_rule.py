"""What stands before a rule in its row: instructions, or only what is taken to hand."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.sentences import ALONE
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

NEEDLES_CHANGED = re.compile(
    r"(?=\S)(?:(?:change|switch) to [^.;]{0,40}?(?:needles?|hook|yarn|colou?r|circulars?|dpns?)"
    r"(?:,? and(?: then)?|[.,;]|$)\s*)?(?:(?:working|continuing|keeping) (?:in )?(?:the )?"
    r"(?:st st|stocking stitch|stockinette(?: stitch| st)?|garter(?: stitch| st)?|pattern|patt|rib"
    r"|continuity of (?:the )?pattern(?: correct)?)(?: as (?:set|before))?,?)?", re.IGNORECASE
)
"""Before a rule, what is only taken to hand for it."""
YARN_TAKEN = re.compile(
    r"(?:with|using|attach|join|change to|changing to|drop) [^,.;:\d]{1,40}[,;:]", re.IGNORECASE
)
"""The same of a yarn: "With White, work 4 rows of sc"."""


def first_of(ledger: Ledger, row: WrittenRow, rule: Rule) -> tuple[WrittenRow | None, Rule]:
    """The instructions before a rule, None where they work nothing: then they are told with it."""
    before = ledger.text[row.start : row.start + rule.start]
    several = len(before.split()) > 1 and any(letter.isalpha() for letter in before)
    if not several and not ALONE.match(before):
        return None, rule
    first = WrittenRow(row.mark, row.start, row.start + rule.start)
    words = " ".join(before.split())
    crochet = ledger.pattern.craft is Craft.CROCHET
    yarn = YARN_TAKEN.fullmatch(words) if crochet and row.mark is None else None
    only_told = yarn or NEEDLES_CHANGED.fullmatch(words)
    return (None, replace(rule, start=0)) if only_told else (first, rule)
