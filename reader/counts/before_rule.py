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

_STITCH = (
    r"(?:single|half double|double|half treble|treble|triple)(?: crochet)?(?: st(?:itch)?(?:es)?)?"
    r"|s ?c|h ?d ?c|d ?c|h ?tr|d ?tr|tr"
)
WORKED_IN = re.compile(
    r"(?:and |then,? |now )*(?:and|then|now)"
    r"|(?:(?:and|then|now|still|always),? )*"
    r"(?:work|continu|cont|keep|go|proceed|carry)(?:e|ing|ep)?\.?"
    r"(?: (?:now|on|along|straight|even|as|to work|working))*"
    rf"(?: (?:in|with) (?:the |rows of |an? )?(?:{_STITCH}|rib(?:bing)?|(?:\w+ )?pat(?:tern|t)?"
    r"|(?:this|that|the same|same|like) (?:way|manner|fashion))(?: st| stitch)?"
    r"| (?:before|established|set|directed))?(?: throughout)?(?:,| and|, and)*", re.IGNORECASE
)
"""Before a rule, only in what the rows are worked: "Work on in sc, dec 1 st at each end ..."."""
LAST_SENTENCE = re.compile(r"(?:.*[.;)\]]\s+|\W*)(?=\S)", re.DOTALL)


def _apart(ledger: Ledger, row: WrittenRow, rule: Rule) -> tuple[WrittenRow, Rule]:
    """The words before a crocheted rule without those that only say in what it is worked, which are
    the rule's.
    """
    before = ledger.text[row.start : row.start + rule.start]
    sentence = LAST_SENTENCE.match(before)
    at = sentence.end() if sentence else 0
    if WORKED_IN.fullmatch(" ".join(before[at:].split())) is None:
        return WrittenRow(row.mark, row.start, row.start + rule.start), rule
    return WrittenRow(row.mark, row.start, row.start + at), replace(rule, start=at)


def first_of(ledger: Ledger, row: WrittenRow, rule: Rule) -> tuple[WrittenRow | None, Rule]:
    """The instructions before a rule, None where they work nothing: then they are told with it."""
    crochet = ledger.pattern.craft is Craft.CROCHET
    first = WrittenRow(row.mark, row.start, row.start + rule.start)
    if crochet and rule.start:
        first, rule = _apart(ledger, row, rule)
    before = ledger.text[first.start : first.end]
    several = len(before.split()) > 1 and any(letter.isalpha() for letter in before)
    if not several and not ALONE.match(before):
        return None, rule
    words = " ".join(before.split())
    yarn = YARN_TAKEN.fullmatch(words) if crochet and row.mark is None else None
    only_told = yarn or NEEDLES_CHANGED.fullmatch(words)
    return (None, replace(rule, start=0)) if only_told else (first, rule)
