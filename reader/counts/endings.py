"""How repeats end: what "ending with" asks for, loops closed by a tall stitch, rounds that close
with the chain of a pass begun.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from reader.counts.tally import Need, Tally
from reader.counts.walk import any_opening
from reader.pattern.tree import Chain, Group, Node, Repeat, Skip, Until, Where, Work
from reader.terms.stitches import Kind

Worker = Callable[[Sequence[Node], Tally, Need], None]
INTO_TALL = re.compile(r"^in(?:to)?(?: the)? (?:dc|d c|tr|tr c|treble)$")
"""The tall stitch that closed the round of loops below."""

def trimmed(prefix: Sequence[Node], ending: Sequence[Node]) -> list[Node]:
    """The beginning of a last pass without the chains that the ending makes in their place: "* ch
    5, skip 1, sc in next; ending with ch 2, dc in 1st sc".
    """
    kept = list(prefix)
    if not ending or not isinstance(ending[0], Chain):
        return kept
    worked = [n for n, one in enumerate(kept) if isinstance(one, Work | Group | Repeat)]
    last = worked[-1] if worked else -1
    return [one for n, one in enumerate(kept) if n <= last or not isinstance(one, Chain)]


def work_ending(node: Repeat, tally: Tally, need: Need, work_all: Worker) -> None:
    """Works the ending; "ch 2, dc in first sc" closes a round of loops with a last loop, half
    chain, half stitch.
    """
    if closes_loop(node) and into_tall_of(node) and tally.walk.spaces:
        # The round ends in the loop where it began, with a tall stitch of its own.
        work_all(node.ending[:-1], tally, need)
        tally.walk.take_spaces(1, any_opening)
        tally.make(1, "dc")
        return
    closing = _closing(node.ending)
    work_all(node.ending[: len(node.ending) - closing], tally, need)
    before, made = tally.makes, tally.spaces
    work_all(node.ending[len(node.ending) - closing :], tally, need)
    if not closes_loop(node) or into_tall_of(node):
        return
    alone = node.altered and _slips_last(node)
    if tally.makes != before + 1 or (tally.spaces != made + 1 and not alone):
        return
    if tally.runs[-1].is_stitch and tally.runs[-1].n == 1:
        tally.runs.pop()


def _closing(ending: Sequence[Node]) -> int:
    """How many of the last instructions are the chain and the tall stitch that close a loop."""
    chains = [at for at, one in enumerate(ending) if isinstance(one, Chain)]
    return len(ending) - chains[-1] if chains else len(ending)


def into_tall_of(node: Repeat) -> bool:
    """Whether the ending goes into the tall stitch that closed the round below: in the loop that it
    made this round began, and ends.
    """
    last = node.ending[-1] if node.ending else None
    return isinstance(last, Work) and INTO_TALL.match(last.place.text.lower()) is not None


def _slips_last(node: Repeat) -> bool:
    """Whether each pass ends with a chain and a slip stitch: loops that a tall stitch can close."""
    kinds = [one for one in node.body if isinstance(one, Chain | Work)][-2:]
    return (
        [type(one) for one in kinds] == [Chain, Work]
        and isinstance(kinds[1], Work)
        and kinds[1].stitch.kind is Kind.SLIP
    )


def closes_loop(node: Repeat) -> bool:
    """Whether the ending of a repeat of loops is a chain and a tall stitch into the beginning."""
    works = [one for one in node.ending if isinstance(one, Chain | Work)][-2:]
    if node.altered and len(works) == 1 and _slips_last(node):
        tall = works[0]
        return isinstance(tall, Work) and tall.stitch.height > 2 and tall.place.where is Where.FIRST
    if [type(one) for one in works] != [Chain, Work]:
        return False
    tall = works[1]
    if not isinstance(tall, Work) or tall.stitch.height < 2:
        return False
    place = tall.place
    at_start = place.where in (Where.FIRST, Where.SAME) or place.noun == "tch" or place.nth == 1
    at_start = at_start or into_tall_of(node)
    return at_start and any(isinstance(one, Chain) for one in node.body)


AROUND = re.compile(r"\b(?:a?round)\b", re.IGNORECASE)


def close_round(node: Repeat, tally: Tally, need: Need, begun: bool, work_all: Worker) -> None:
    """Works the chain (and the skip) that close a round "* ch 5, skip 3, sc in next; rep around",
    where the round began with a stitch and nothing else is said of its end.
    """
    if node.until is not Until.OPEN or not AROUND.search(node.words) or tally.walk.left is None:
        return
    lead: list[Node] = []
    for one in node.body:
        if not isinstance(one, Chain | Skip):
            break
        lead.append(one)
    skipped = sum(one.place.number.at(tally.size) for one in lead if isinstance(one, Skip))
    chained = any(isinstance(one, Chain) for one in lead)
    if chained and begun and tally.walk.left - need.stitches == skipped:
        work_all(lead, tally, need)
        tally.uneven = None
