"""Where the last pass of a repeat stops: "rep from * around, ending last rep at **", "then from *
to ** once".
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.cursor import Cursor
from reader.pattern.tree import Node, Num, Repeat, Until

_LAST = r"(?:the )?(?:last|final) (?:repeat|rep|time|one|repetition|pass)"
_STOP = r"(?:end|ending|ends|stop|stopping|stops|finish|finishing|finishes|break off|work)"
_MARK = r"(?:at|with|after|before|to|as far as|only to|up to) (?:the )?(?P<mark>\*{2,})"
STOPPED = re.compile(
    rf"(?:[,;] )?(?:(?:and|but) )?(?:(?:(?:on|in|for|at) )?{_LAST} (?:, )?)?(?:{_STOP} )?"
    rf"(?:(?:on|in|for|at) )?(?:{_LAST} )?(?:{_STOP} )?{_MARK}"
    rf"(?P<behind> (?:on|in|of|for|at) {_LAST})?(?= |$)"
)
LONGEST = 16
"""Tokens of such a phrase."""


def last_pass_stops(
    cur: Cursor, ending: bool, altered: bool, stars: Sequence[tuple[str, int]], index: int
) -> int:
    """How many instructions of the body from `index` on the last pass has, the words that say so
    taken; 0, and nothing taken, where no such words stand here or their mark stands nowhere.

    ending: "ending" was taken before; altered: "last repeat" too.
    """
    said = " ".join(filter(None, (cur.low(ahead) for ahead in range(LONGEST))))
    found = STOPPED.match(said)
    if found is None:
        return 0
    words = found.group()
    told = altered or re.search(_LAST, words) or (ending and " at " in f" {words}")
    marks = [at for label, at in stars if label == found["mark"] and at > index]
    if not told or not marks:
        return 0
    cur.at += words.count(" ") + 1
    return marks[-1] - index


PART_AGAIN = re.compile(
    r"(?:[,;] )?(?:(?:and|then) )*(?:(?:rep|repeat|work) )?(?:once |again )?(?:more )?"
    r"(?:from |between )?(?:the )?\* (?:to|until|and|through) (?P<mark>\*{2,})"
    r" (?:once(?: more)?|again|1 time(?: more)?|1 more time)(?= |$)"
)


def part_again(
    cur: Cursor, made: Sequence[Node], stars: Sequence[tuple[str, int]], marks: dict[str, int]
) -> Repeat | None:
    """ "Then from * to ** once": the beginning of the passes before once more, as far as their
    mark; None, and nothing taken, where no such words stand here or nothing follows the mark.

    marks: those inside the repeat that stands last in `made`, with how many instructions are before
    them.
    """
    if "*" not in (cur.low(ahead) for ahead in range(6)):
        return None
    start = cur.at
    said = " ".join(filter(None, (cur.low(ahead) for ahead in range(LONGEST))))
    found = PART_AGAIN.match(said)
    if found is None:
        return None
    body = _as_far_as(found["mark"], made, stars, marks)
    if not body:
        return None
    cur.at += found.group().count(" ") + 1
    return Repeat(cur.span(start), cur.said(start), body, Until.TIMES, Num((1,)))


def _as_far_as(
    mark: str, made: Sequence[Node], stars: Sequence[tuple[str, int]], marks: dict[str, int]
) -> tuple[Node, ...]:
    last = made[-1] if made else None
    if isinstance(last, Repeat) and 0 < marks.get(mark, 0) < len(last.body):
        return last.body[: marks[mark]]
    here = [at for label, at in stars if label == mark and at < len(made)]
    first = [at for label, at in stars if label == "*" and here and at < here[-1]]
    return tuple(made[first[-1] : here[-1]]) if first else ()
