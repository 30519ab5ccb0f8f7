"""What the last pass of a repeat leaves out: "rep from * around, omitting last ch 2", "omit 2 ch at
end of last rep".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_words import CHAIN_NOUNS
from reader.pattern.tree import Chain, Node, Num, Repeat, Until, Work

OMITS = (
    "omitting", "omit", "leaving off", "leave off", "leaving out", "leave out", "but omitting",
    "but omit", "and omit", "and omitting", "but leave off", "but leave out", "skipping the last",
    "without the last",
)  # fmt: skip
LAST_PASS = (
    "on last repeat", "in last repeat", "on last rep", "in last rep", "on final repeat",
    "in the last repeat", "on the last repeat", "in the last rep", "on the last rep",
    "at last repeat", "the last time", "last time",
)  # fmt: skip
LONGEST = 14
"""Words of such a phrase."""


def omitted(cur: Cursor) -> str:
    """What is left out, taken: "ch", or a stitch's name; "" (nothing taken) where nothing is."""
    start = cur.at
    cur.accept(",", ";")
    cur.accept(*LAST_PASS)
    cur.accept(",")
    what = _named(cur) if cur.accept(*OMITS) else ""
    if not what:
        cur.at = start
        return ""
    while not cur.done() and cur.low() not in STOPS and cur.low() != ",":
        cur.at += 1
    return what


def _named(cur: Cursor) -> str:
    for ahead in range(LONGEST):
        if not cur.low(ahead) or cur.low(ahead) in STOPS:
            return ""
        if cur.low(ahead) in CHAIN_NOUNS:
            return "ch"
        found = cur.stitch(ahead)
        if found is not None and found.stitch.name != "st":
            return found.stitch.name
    return ""


def last_pass_cut(repeat: Repeat, what: str) -> tuple[tuple[Node, ...], Repeat] | None:
    """The same stitches told from the other end: the body up to what the last pass leaves out,
    then that and the body again; None where the body holds no such thing.
    """
    return cut_at(repeat, _last_of(repeat.body, what))


def cut_at(repeat: Repeat, at: int) -> tuple[tuple[Node, ...], Repeat] | None:
    """The same for a last pass of `at` instructions; None where that is none or all of them."""
    if not 0 < at < len(repeat.body):
        return None
    head, tail = repeat.body[:at], repeat.body[at:]
    number = repeat.number
    if repeat.until in (Until.TIMES, Until.MORE, Until.AGAIN):
        number = Num(tuple(max(0, one - 1) for one in number.values))
    return head, replace(repeat, body=(*tail, *head), number=number)


def _last_of(body: Sequence[Node], what: str) -> int:
    for at in range(len(body) - 1, 0, -1):
        one = body[at]
        if what == "ch" and isinstance(one, Chain):
            return at
        if isinstance(one, Work) and one.stitch.name == what:
            return at
    return 0
