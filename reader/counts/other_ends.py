"""Rows called back with another end than their own: "repeat 3rd row but end with ...", "ending last
row ch 5, turn".
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.counts.quoted_parts import with_end
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule
from reader.pattern.tree import Node, Unread

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

OTHER_END = re.compile(
    r"\b(?:but|except|only)\s+(?:(?:to|that|by)\s+)?end(?:ing|s)?\s+(?:(?:the |last |each )*"
    r"(?:row|rnd|round|repeat)\s+)?(?:with\s+|in\s+)?(?P<end>.+)$",
    re.IGNORECASE | re.DOTALL,
)
"""A row that is quoted with another end."""


def differing(
    ledger: Ledger, entry: Entry, nodes: tuple[Node, ...], rule: Rule
) -> tuple[Node, ...]:
    """The row that is quoted with what differs: another end; other differences are not read."""
    ended = OTHER_END.search(ledger.text, entry.row.start, entry.row.end)
    if ended is not None:
        end = ledger.read(WrittenRow(None, ended.start("end"), entry.row.end)).nodes
        found = with_end(ledger, entry, nodes, end)
        if found is not None:
            return found
    return (*nodes, Unread(ledger.span(entry.row.start, entry.row.end), rule.rest.strip()))


LAST_CHAIN = re.compile(
    r"\bend(?:ing)? (?:the )?last (?:row|rnd|round) (?:with |in )?(?:a )?ch(?:ain)? (?:of )?"
    r"(\d{1,3})\b|\bch (\d{1,3}) at (?:the )?end of (?:the )?last (?:row|rnd|round)\b",
    re.IGNORECASE,
)
"""What the last of several rows is ended with, "ending last row ch 5, turn"."""


def chain_at_end(ledger: Ledger, rule: Rule) -> None:
    """The chain that the last of the rows called back is turned with, where the words tell it."""
    found = LAST_CHAIN.search(" ".join(rule.rest.split()))
    if found is not None:
        ledger.carried = int(found[1] or found[2])
