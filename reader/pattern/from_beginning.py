"""A round "repeated from the beginning" whose first chain stands for a stitch: the passes to come
work that stitch.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.tree import (
    Act,
    Chain,
    Node,
    Num,
    Place,
    Repeat,
    Until,
    Where,
    Work,
)
from reader.terms.stitches import Kind


def chain_begins_once(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """ "Ch 3, dc in next 2 dc, ch 5, repeat from beginning" -> the chain, one pass, and the others
    with a dc in the chain's place; other rows as they are.
    """
    works = [at for at, one in enumerate(nodes) if not isinstance(one, Act)]
    again = nodes[works[0]] if works else None
    if not isinstance(again, Repeat) or again.until is Until.TO_LAST:
        return nodes
    first = next((at for at, one in enumerate(again.body) if not _leads(one)), None)
    chain = again.body[first] if first is not None else None
    if first is None or not isinstance(chain, Chain):
        return nodes
    rest = again.body[first + 1 :]
    stitch = _for_chain(chain, rest)
    if stitch is None:
        return nodes
    others = _once_less(again, (stitch, *rest))
    head = (*nodes[: works[0]], *again.body[:first], replace(chain, counts=True), *rest)
    return (*head, *others, *nodes[works[0] + 1 :])


def _leads(one: Node) -> bool:
    """Whether something only leads to where a round begins: a remark, or a slip stitch."""
    return isinstance(one, Act) or (isinstance(one, Work) and one.stitch.kind is Kind.SLIP)


def _for_chain(chain: Chain, rest: tuple[Node, ...]) -> Work | None:
    """The stitch that a row's first chain stands for, None where it is no stitch: a chain that is
    said to count, or one just as high as the stitches beside it.
    """
    after = next((one for one in rest if not isinstance(one, Act)), None)
    if not isinstance(after, Work) or after.stitch.height < 3 or chain.counts is False:
        return None
    if chain.counts is None and chain.number.values != (after.stitch.height,):
        return None
    if after.place.where not in (Where.NEXT, Where.SAME):
        return None
    place = Place(Where.NEXT, after.place.span, noun=after.place.noun, text=_next(after))
    return replace(after, number=None, place=place, words=f"{after.stitch.name} {place.text}")


def _next(after: Work) -> str:
    return "in next loop" if after.place.noun == "sp" else "in next st"


def _once_less(again: Repeat, body: tuple[Node, ...]) -> tuple[Repeat, ...]:
    """The passes behind the first one."""
    if again.until is Until.OPEN:
        return (replace(again, body=body),)
    if again.until is Until.MORE:
        return (replace(again, body=body, until=Until.TIMES),)
    number = Num(tuple(max(0, one - 1) for one in again.number.values))
    return (replace(again, body=body, number=number),) if any(number.values) else ()
