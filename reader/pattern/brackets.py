"""A bracket of instructions -> a repeat, a group in one place or a remark, by what is around it."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from reader.pattern.cursor import Cursor
from reader.pattern.explanations import explains
from reader.pattern.going_on import to_its_end
from reader.pattern.over_stitches import over_so_many
from reader.pattern.place_words import AROUND
from reader.pattern.places import find_place
from reader.pattern.remarks import so_often
from reader.pattern.repeats import find_repeat
from reader.pattern.so_often import count_after
from reader.pattern.stars import around_apart
from reader.pattern.tokens import Token
from reader.pattern.tree import (
    ONE,
    Act,
    Chain,
    Deed,
    Group,
    Mesh,
    Node,
    Num,
    Place,
    Repeat,
    Until,
    Where,
    Work,
)  # fmt: skip
from reader.terms.crafts import Terms
from reader.terms.forms import forms, stitch_named
from reader.terms.stitches import Craft, Kind, Stitch

OPEN_CLOSE = {"(": ")", "[": "]", "{": "}"}


def names(cur: Cursor, made: list[Node], inner: list[Token]) -> bool:
    """Whether a bracket explains the stitch before it, or only names it: "picot (ch 3, sl st
    ...)".
    """
    last = made[-1] if made else None
    if not isinstance(last, Work):
        return False
    if inner and inner[0].low == "=" and last.stitch.kind in (Kind.GROUP, Kind.CLUSTER):
        return True
    if cur.low() in ("in", "into", "x", "*", "times", "twice"):
        return False
    if cur.kind() in ("num", "times") and cur.low(1) in ("times", "x", "more"):
        return False
    form = " ".join(token.low for token in inner)
    if explains(form, last):
        return True
    if cur.low(-len(inner) - 3) == "," and so_often(cur):
        return False
    if form in cur.book.known and not any(token.kind == "num" for token in inner):
        return True
    if inner and inner[0].low in ("in", "into", "over", "under") and not _works_number(inner, cur):
        return True
    special = last.stitch.kind in (Kind.EXTRA, Kind.GROUP, Kind.CLUSTER)
    return special and last.place.where is Where.PLAIN and len(inner) > 3


MADE_OF = re.compile(
    r"^(?:to count as |counts as |counting as )?"
    r"(?:(?:a|an|1|first|another|beg|beginning|starting) )*"
    r"(?P<name>.+?)(?: st| stitch)?(?: made| completed)?$"
)
OF_SO_MANY = re.compile(
    r"\d+ (?:- )?(?:[sd] ?c|h ?d ?c|tr ?c?|htr) (?:- )?(?=(?:shell|fan|v|group|scallop)\b)"
)
"""Before a group's name, of what it is made: "(2 dc shell)"."""


def said_made(cur: Cursor, made: list[Node]) -> Act | None:
    """ "(dc, ch 1, dc) in next ch - V-st made": the name of the group just worked, which works
    nothing; None (nothing taken) where no such words stand here.
    """
    found = cur.stitch()
    if found is None or cur.low(found.length) not in ("made", "completed", "formed"):
        return None
    start, last = cur.at, made[-1] if made else None
    cur.at += found.length + 1
    if isinstance(last, Group) and found.stitch.kind is Kind.GROUP:
        made[-1] = replace(last, name=found.stitch.name)
    return Act(cur.span(start), cur.said(start), Deed.NOTE)


def alike_named(nodes: Sequence[Node]) -> tuple[Node, ...]:
    """The row with every group called as the one like it that the words name once: "(dc, ch 1, dc)
    in next ch - V-st made, * ..., (dc, ch 1, dc) in next ch".
    """
    names = {_made_of(one): one.name for one in _groups(nodes) if one.name}
    return tuple(_called(one, names) for one in nodes) if names else tuple(nodes)


def _groups(nodes: Sequence[Node]) -> Iterator[Group]:
    for one in nodes:
        if isinstance(one, Group):
            yield one
        elif isinstance(one, Repeat):
            yield from _groups([*one.body, *one.ending])


def _made_of(group: Group) -> tuple[object, ...]:
    return tuple(
        (one.stitch.name, one.number.values if one.number else (1,)) if isinstance(one, Work)
        else (type(one).__name__, one.number.values if isinstance(one, Chain) else ())
        for one in group.body
    )  # fmt: skip


def _called(one: Node, names: dict[tuple[object, ...], str]) -> Node:
    if isinstance(one, Group) and not one.name:
        return replace(one, name=names.get(_made_of(one), ""))
    if isinstance(one, Repeat):
        body = tuple(_called(inner, names) for inner in one.body)
        return replace(one, body=body, ending=tuple(_called(inner, names) for inner in one.ending))
    return one


def take_place(cur: Cursor, made: list[Node], inner: list[Token]) -> Work | None:
    """ "3 dc, ch 1, 3 dc (shell) in next loop": the last stitch, taken off the list, with the place
    behind the name; None (nothing taken) where the bracket names no such list.
    """
    last = made[-1] if made else None
    name = OF_SO_MANY.sub("", " ".join(token.low for token in inner))
    if not isinstance(last, Work) or last.place.where is not Where.PLAIN:
        return None
    trade = None if name in cur.book.specials else _of_trade(name)
    named = name in cur.book.specials or (trade is not None and trade.kind is Kind.GROUP)
    if not named or cur.low() not in ("in", "into", "over"):
        return None
    place = find_place(cur)
    if place is not None:
        made.pop()
    return replace(last, place=place) if place is not None else None


def named_behind(cur: Cursor, made: list[Node], inner: list[Token], start: int) -> bool:
    """ "5 dc in next sp, drop loop, ... (1 pc st)": what the bracket names takes the place of the
    stitches that it is made of; False where it names no such thing.
    """
    found = MADE_OF.match(OF_SO_MANY.sub("", " ".join(token.low for token in inner)))
    at = len(made) - 1
    while at > 0 and isinstance(made[at], Act):
        at -= 1
    last = made[at] if made else None
    if found is None or not isinstance(last, Work | Group):
        return False
    name = _bare(found["name"])
    special = cur.book.specials.get(name)
    stitch = special.stitch if special is not None else _of_trade(name)
    if isinstance(last, Group):
        if stitch is None or stitch.kind is not Kind.GROUP:
            return False
        made[at] = replace(last, name=stitch.name)
        return True
    if stitch is not None and stitch.kind is Kind.DECREASE:
        return _with_chain(made, at, stitch)
    grouped = last.place.where is Where.SAME and stitch is not None
    if grouped and stitch is not None and _ends_group(made, at, stitch):
        return True
    if last.number is None:
        return False
    amount = last.number.values[0]
    if stitch is None or cur.book.craft is not Craft.CROCHET or amount < 2:
        return False
    group = stitch.kind is Kind.GROUP and stitch.makes == amount and not stitch.spaces
    if not group and stitch.kind is not Kind.CLUSTER:
        return False
    words = " ".join(one.words for one in made[at:])
    made[at:] = [Work(made[at].span, words, stitch, None, last.place)]
    if last.place.where is Where.SAME and at == 1 and isinstance(made[0], Chain):
        # Chain and stitches of one place: the chain is one of them.
        made[0] = replace(made[0], counts=False, inside=True)
    return True


def _ends_group(made: list[Node], at: int, stitch: Stitch) -> bool:
    """Whether a stitch list ends as the group does whose name stands behind it: "2 dc in next loop,
    ch 2, 2 dc in same loop (2 dc shell)".
    """
    last, chain = made[at], made[at - 1] if at else None
    if stitch.kind is not Kind.GROUP or len(stitch.parts) < 3:
        return False
    if not isinstance(last, Work) or not isinstance(chain, Chain):
        return False
    amount = last.number.values[0] if last.number else 1
    ends = ((last.stitch.name, amount), ("ch", chain.number.values[0]))
    return (stitch.parts[-1], stitch.parts[-2]) == ends


def _with_chain(made: list[Node], at: int, stitch: Stitch) -> bool:
    """ "Ch 2, dc in next dc (a decrease)": the chain and the stitch behind it are that decrease."""
    works = [n for n, one in enumerate(made) if not isinstance(one, Act)]
    last, first = made[at], made[works[0]]
    alone = isinstance(last, Work) and last.stitch.takes == 1 and last.place.where is Where.NEXT
    if len(works) != 2 or not isinstance(first, Chain) or not alone:
        return False
    made[works[0]] = replace(first, counts=False, inside=True)
    place = Place(Where.PLAIN, last.span)
    made[at] = Work(last.span, last.words, stitch, None, place)
    return True


def _of_trade(name: str) -> Stitch | None:
    return stitch_named(forms(Craft.CROCHET, Terms.US).get(name, name), Craft.CROCHET)


def _bare(name: str) -> str:
    return {"pc": "popcorn"}.get(name, name)


def _works_number(inner: list[Token], cur: Cursor) -> bool:
    """Whether a bracket has a number with a stitch behind it: something is worked in it."""
    return any(
        one.kind == "num" and other.low in cur.book.known
        for one, other in pairwise(inner)
    ) or any(one.low in ("work", "make") for one in inner)


def bracketed(
    cur: Cursor, made: list[Node], start: int, body: tuple[Node, ...], before: Num | None
) -> Node | None:
    """The node a bracket of instructions makes, by what follows."""
    times = before or count_after(cur)
    # In a list that a star opened, "; around" is said of that list.
    starred = sum(token.kind == "stars" for token in cur.tokens[:start]) % 2
    cur.at += 0 if times or starred else around_apart(cur)
    if times is not None:
        return Repeat(cur.span(start), cur.said(start), body, Until.TIMES, times)
    works = [one for one in body if not isinstance(one, Act)]
    if works and cur.book.craft is Craft.CROCHET and (to_its_end(cur) or _to_its_marker(cur)):
        return Repeat(cur.span(start), cur.said(start), body, Until.OPEN)
    told = (works or cur.low() not in (",", ";")) and not _to_star(cur)
    if found := find_repeat(cur, bare=True) if told else None:
        return Repeat(cur.span(start), cur.said(start), body, found.until, found.number)
    if not works:
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    spread = over_so_many(cur, start, body)
    if spread is not None:
        return spread
    place = _place_behind(cur)
    if place is not None and place.where in (Where.REST, Where.TO_LAST):
        until = Until.OPEN if place.where is Where.REST else Until.TO_LAST
        return Repeat(cur.span(start), cur.said(start), body, until, place.number)
    if place is not None:
        group = Group(cur.span(start), cur.said(start), body, place)
        often = count_after(cur)
        if often is None:
            return group
        # "(sc, ch 3, sc) in ring 6 times"
        return Repeat(cur.span(start), cur.said(start), (group,), Until.TIMES, often)
    if cur.book.craft is Craft.KNITTING and not made and _stands_alone(cur):
        return Repeat(cur.span(start), cur.said(start), body, Until.OPEN)
    if len(works) == 1 and isinstance(works[0], Work) and works[0].number is None and made:
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    if len(works) == 1 and isinstance(works[0], Mesh) and any(isinstance(x, Work) for x in made):
        # "Dc in next 3 ch (1 bl)": the square that those stitches are.
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    return Repeat(cur.span(start), cur.said(start), body, Until.TIMES, ONE)


BEFORE_PLACE = (
    "in", "into", "all", "over", "under", "around", "round", "across", "to", "until"
)  # fmt: skip


def _place_behind(cur: Cursor) -> Place | None:
    """The place of all that a bracket holds, taken."""
    if cur.low() == "all" and cur.low(1) in ("in", "into"):
        # "(k1, p1, k1) all in next st": in one, and not in all of them.
        cur.at += 1
    told = cur.low() in BEFORE_PLACE or cur.any_words(AROUND)
    return find_place(cur) if told else None


TO_MARKER = tuple(
    f"{to} {the}marker" for to in ("to", "till", "until", "up to", "until you reach", "back to",
                                   "until you are back at", "all the way to")
    for the in ("", "the ", "your ", "first ", "the first ")
)  # fmt: skip


def _to_its_marker(cur: Cursor) -> bool:
    """Takes "to marker" where nothing is worked behind it: a spiral's round ends there."""
    length = cur.any_words(TO_MARKER)
    ends = length and cur.low(length) in ("", ".", "(", "[", "=", "—", "-")
    worked = any(cur.stitch(ahead) for ahead in range(length, length + 12))
    cur.at += length if ends and not worked else 0
    return bool(ends and not worked)


def _stands_alone(cur: Cursor) -> bool:
    """Whether nothing, or only a star, stands behind a row's one bracket, "(k1, kfb)*", up to the
    end of its sentence; the star is taken.
    """
    at = 1 if cur.kind() == "stars" else 0
    alone = cur.low(at) in ("", ".", "-", "—", "=") and cur.kind(at + 1) in ("end", "num")
    cur.at += at * alone
    return alone


def _to_star(cur: Cursor) -> bool:
    """Whether the repeat behind a bracket goes back to a star, and so is not the bracket's own."""
    return any(cur.kind(ahead) == "stars" for ahead in range(1, 5)) and any(
        cur.low(ahead) in ("rep", "repeat", "repeating") for ahead in range(2)
    )


def repeats_bracket(cur: Cursor) -> int:
    """How many tokens "repeat" takes before a bracket of its own, "repeat (3 dc, ch 2, 3 dc) in
    each of the other corners", which is worked there; 0 elsewhere.
    """
    if cur.low() not in ("repeat", "rep", "work") or cur.low(1) not in OPEN_CLOSE:
        return 0
    at = cur.at
    cur.at += 1
    close = closing(cur) - at
    cur.at = at
    listed = any(cur.stitch(ahead) is not None for ahead in range(2, max(2, close)))
    return int(listed and cur.low(close + 1) in ("in", "into"))


def closing(cur: Cursor) -> int:
    """The index of the bracket that closes the one here, -1 when none does."""
    depth = 0
    for index in range(cur.at, len(cur.tokens)):
        low = cur.tokens[index].low
        if low in OPEN_CLOSE:
            depth += 1
        elif low in OPEN_CLOSE.values():
            depth -= 1
            if depth == 0:
                return index
    return -1
