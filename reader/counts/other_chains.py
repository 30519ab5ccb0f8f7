"""Rounds that are the last one with other chains: "as last, with 4 ch between", "like the last,
increasing 2 chain at every round", "9 ch, worked as before".
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.entries import numbers_of
from reader.pattern.layout import WrittenRow
from reader.pattern.tree import ONE, Chain, Group, Node, Num, Repeat, Work
from reader.terms.numbers import SPELLED, word_number

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_N = rf"(?P<n>\d{{1,2}}|{SPELLED})"
_CHAINS = rf"{_N}\s+(?:more\s+)?(?:chs?|chains?)\b"
_LAST = (
    r"(?:(?:the\s+)?same(?:\s+as)?|as|like|work(?:ed)?\s+(?:as|like)|repeat)\s*,?\s*"
    r"(?:(?:the\s+)?(?:last|former|preceding|previous)|before)?(?:\s+(?:row|round|rnd))?"
)
TO = re.compile(
    rf"\W*{_LAST}\s*[,;:]?\s*(?:but\s+)?(?:with|having|making|working|of)?\s*{_CHAINS}\s*"
    r"(?:between|instead|in\s+(?:each|every)|for\s+each|each|apart)\b[^.;]*\W*",
    re.IGNORECASE,
)
"""So many chains where the last round had others."""
FIRST = re.compile(
    rf"\W*{_CHAINS}\s*,?\s*(?:worked\s+|work\s+)?(?:as|like)\s+(?:before|(?:the\s+)?last)\b[^.;]*\W*",
    re.IGNORECASE,
)
BY = re.compile(
    rf"\W*{_LAST}\s*[,;:]?\s*(?:but\s+)?(?P<way>increasing|adding|with|having|making|decreasing)\s+"
    rf"(?:by\s+)?{_CHAINS}\s*(?:more\s+|less\s+)?(?:at|in|on|each|every)\b.*",
    re.IGNORECASE | re.DOTALL,
)
"""So many chains more in each round."""
BEGINS = re.compile(rf"\W*(?:{_N}\s|(?:the\s+)?same|as|like|work|repeat)", re.IGNORECASE)
"""How the words of all these begin."""


def with_other_chains(ledger: Ledger, row: WrittenRow) -> bool:
    """Works such a round, or several; False, and nothing worked, for every other row."""
    if row.mark is None or not ledger.entries or not BEGINS.match(ledger.text, row.start, row.end):
        return False
    words = " ".join(ledger.text[row.start : row.end].split())
    grows = BY.fullmatch(words)
    found = TO.fullmatch(words) or FIRST.fullmatch(words) or grows
    if found is None:
        return False
    said = int(found["n"]) if found["n"].isdigit() else word_number(found["n"]) or 0
    step = 0 if grows is None else -said if grows["way"].lower() == "decreasing" else said
    for number in numbers_of(row.mark):
        last = ledger.entries[-1]
        nodes = tuple(_changed(one, said, step) for one in last.nodes)
        ledger.work(replace(last, nodes=nodes, row=row, printed=(), quoted=True), number)
    return True


def _changed(node: Node, chains: int, step: int) -> Node:
    """An instruction with its chains so many, or so many more; a chain that it goes into is the
    loop of the row below, of whatever chains.
    """
    if isinstance(node, Chain):
        more = max(1, node.number.values[0] + step)
        return replace(node, number=Num((more if step else chains,)))
    if isinstance(node, Work) and node.place.noun == "ch" and node.place.number.values[0] > 2:
        return replace(node, place=replace(node.place, noun="sp", number=ONE, chain=0))
    if isinstance(node, Work) and node.place.chain:
        return replace(node, place=replace(node.place, chain=0))
    if isinstance(node, Repeat | Group):
        return replace(node, body=tuple(_changed(one, chains, step) for one in node.body))
    return node
