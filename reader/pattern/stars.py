"""Where the body of a repeat begins: at its star, at the beginning, or, without a star, behind the
turning chain.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.one_pass import once_inside, one_pass
from reader.pattern.repeats import SO, Found
from reader.pattern.so_often import IN_TOTAL, SO_OFTEN
from reader.pattern.tree import Act, Chain, Group, Node, Num, Repeat, Skip, Until, Where, Work
from reader.terms.stitches import Craft, Kind


def body_start(made: Sequence[Node], stars: Sequence[tuple[str, int]], target: str) -> int:
    """The index in `made` that "repeat from TARGET" goes back to; stars: each star and where it
    stands.
    """
    if target == "beginning":
        return 0
    wanted = "**" if "**" in target else "*"
    found = [at for label, at in stars if label == wanted and at < len(made)]
    if not found and target == "*" and any(label == "**" for label, _ in stars):
        # The inner star is missing: the last loop and what follows it are repeated.
        chains = [at for at, one in enumerate(made[:-1]) if isinstance(one, Chain)]
        found = chains[-1:]
    if not found:
        found = [at for _, at in stars if at < len(made)]
    if not found:
        return _after_start(made)
    return found[0] if target.startswith("1st") else found[-1]


def _star_meant(
    found: Found, made: Sequence[Node], stars: Sequence[tuple[str, int]], went_back: set[int]
) -> tuple[Found, list[tuple[str, int]]]:
    """The repeat and the row's stars, with the star that "and so on" means as its own; a star that
    the print lost is put back.
    """
    here = [(label, at) for label, at in stars if at < len(made)]
    if found.target == SO:
        closed = bool(here) and here[-1][1] in went_back
        outer = [label for label, _ in here if label == "**"] if closed else []
        first = f"1st {outer[0] if outer else here[0][0]}" if closed else "*"
        return replace(found, target=first), list(stars)
    lost = _lost_star(made, here, went_back) if found.target == "*" else None
    if lost is None:
        return found, list(stars)
    return replace(found, no_star=True), [*stars, ("*", lost)]


def _lost_star(
    made: Sequence[Node], stars: Sequence[tuple[str, int]], went_back: set[int]
) -> int | None:
    """Where the star is missing that a row's second "repeat from *" goes back to: before the very
    words that the first one repeated. None where none is missing.
    """
    label, at = stars[-1] if stars else ("", -1)
    first = made[at] if at in went_back else None
    if label != "*" or not isinstance(first, Repeat) or first.until is Until.OPEN:
        return None
    begin = len(made) - len(first.body)
    same = [one.words for one in made[begin:]] == [one.words for one in first.body]
    return begin if begin > at + 1 and same else None


PAIR = re.compile(r"(?:\*+ ?(?:to|through|thru|and|-) ?\*|\bbetween\b)")


def taken_back(
    made: list[Node], stars: Sequence[tuple[str, int]], found: Found, said: str,
    went_back: set[int],
) -> tuple[int, tuple[Node, ...], list[Node], Found]:
    """What a repeat goes back to: where it begins, its instructions, the list that is left, and the
    repeat itself. "* A *, B, repeat from * to * once" leaves all of the list, and works A as often
    as is said beside the once that it has. said: the words of the repeat. went_back: the stars that
    repeats before it went back to.
    """
    found, stars = _star_meant(found, made, stars, went_back)
    begin = body_start(made, stars, found.target)
    if not stars and _begins_anew(made[begin:]):
        made = made[:-1]
    if not stars and found.until is Until.OPEN and not found.ending:
        return begin, one_pass(made[begin:]), made[:begin], found
    ends = [at for label, at in stars if label == found.target]
    if len(ends) < 2 or not begin == ends[-1] > ends[-2] or not PAIR.search(said):
        return begin, once_inside(made[begin:]), made[:begin], found
    if found.until in (Until.AGAIN, Until.MORE):
        found = replace(found, until=Until.TIMES)
    elif found.until is Until.TIMES:
        found = replace(found, number=Num(tuple(max(0, n - 1) for n in found.number.values)))
    return ends[-2], tuple(made[ends[-2] : ends[-1]]), made, found


def _begins_anew(body: Sequence[Node]) -> bool:
    """Whether a list without a star ends with the chain that begins its next pass: "d c in next, ch
    1, d c in next, ch 1, and so on".
    """
    if len(body) < 3 or not isinstance(body[0], Chain) or not isinstance(body[-1], Chain):
        return False
    return body[0].number == body[-1].number and isinstance(body[-2], Work)


def _after_start(made: Sequence[Node]) -> int:
    """Without a star: the list before, its start and turning chain left out."""
    index = 0
    while index < len(made) and (isinstance(made[index], Act | Chain) or _slips(made[index])):
        one, after = made[index], made[index + 1 : index + 2]
        if isinstance(one, Chain) and len(made) > index + 2 and after and _in_same(after[0]):
            # "Ch 4, cluster in same space, ch 2, ...": no pass begins in the same space.
            index += 2
            break
        if isinstance(one, Chain) and _begins_loop(made[index : index + 3]):
            break
        after = made[index + 2 : index + 3] if after and isinstance(after[0], Skip) else after
        height = after[0].stitch.height if after and isinstance(after[0], Work) else None
        if isinstance(one, Chain) and height is not None and one.number.values[0] != max(height, 1):
            return _same_loop(made, index, one.number.values[0] - height) if height > 2 else index
        index += 1
    index += _only_begins(made[index:])
    return index if index < len(made) else 0


def _only_begins(made: Sequence[Node]) -> bool:
    """Whether a stitch stands before the passes of loops: "1 sc in first, 4 ch, miss 2, 1 sc in
    next; continue thus".
    """
    if len(made) < 3 or not isinstance(made[1], Chain):
        return False
    first, last = made[0], made[-1]
    ends = isinstance(last, Work) and last.place.where in (Where.NEXT, Where.PLAIN)
    begins = isinstance(first, Work) and first.place.where in (Where.FIRST, Where.SAME)
    return begins and ends and isinstance(first, Work) and isinstance(last, Work) and (
        first.stitch == last.stitch
    )


def _in_same(one: Node) -> bool:
    return isinstance(one, Work | Group) and one.place.where is Where.SAME


def _slips(one: Node) -> bool:
    """Whether a slip stitch only goes to where the round begins: no part of what is repeated."""
    if not isinstance(one, Work) or one.stitch.craft is not Craft.CROCHET:
        return False
    return one.stitch.kind is Kind.SLIP


def _same_loop(made: Sequence[Node], first: int, chains: int) -> int:
    """ "Ch 6, dc in next, ch 3, dc in next, repeat 5 times": the first chain is a dc and a loop
    like those that are repeated; where a pass of them begins, else the list's own beginning.
    """
    if len(made) == first + 3 and _is_chain(made[-1], chains) and isinstance(made[-2], Work):
        # "Ch 4, dc in next dc, ch 1, repeat": a dc and a loop, then as many as there are.
        return first + 1
    like = [
        at
        for at in range(first + 2, len(made) - 1)
        if _is_chain(made[at], chains) and isinstance(made[at - 1], Work)
    ]
    return like[-1] if like else first


def _is_chain(node: Node, chains: int) -> bool:
    return isinstance(node, Chain) and node.number.values[0] == chains


def _begins_loop(nodes: Sequence[Node]) -> bool:
    """Whether a chain is the loop of each pass: "4 ch, miss 1, sc in next; repeat"."""
    if len(nodes) < 3 or not isinstance(nodes[1], Skip) or nodes[1].place.where is Where.FIRST:
        return False
    chain, low = nodes[0], nodes[2]
    loops = isinstance(chain, Chain) and chain.number.values[0] > 1
    return loops and isinstance(low, Work) and low.stitch.height <= 1


def goes_on_by_chain(cur: Cursor) -> bool:
    """Whether ", ch 2, tr in same" goes on with an ending, and is not the chain of the next row."""
    if cur.low() != "," or cur.low(1) not in ("ch", "chain") or cur.kind(2) != "num":
        return False
    after = 4 if cur.low(3) in (",", "and") else 3
    after += cur.kind(after) == "num"
    return cur.stitch(after) is not None and cur.low(after) not in ("sl", "ss", "ch", "chain")


ALL_AROUND = (
    "all the way round", "all the way across", "right round", "the whole way round",
    "the whole way around", "all around", "all round", "around", "all across", "across",
    "all the way around", "to end",
    "to the end", "to end of round", "to the end of the round", "to end of row",
    "to the end of the row", "to end of needle", "all along",
)  # fmt: skip


PARTS = (";", "-", "—", ".")
"""Marks that may part a list from how far it goes: "1 sc, 2 in the next; around"."""


def around_apart(cur: Cursor, ahead: int = 0) -> int:
    """How many tokens the mark takes that parts a closed list from how far it goes, "(1 sc, inc);
    around": 1, or 0 where no such words stand here.
    """
    length = cur.any_words(ALL_AROUND, ahead + 1)
    marked = cur.low(ahead) in (",", *PARTS)
    return int(marked and length > 0 and cur.low(ahead + 1 + length) in (*STOPS, ""))


def all_around(cur: Cursor, made: list[Node], clause: int) -> bool:
    """ "knit 3, narrow, all round", "1 sc, 2 in the next, all the way around": the list since
    `clause`, made into a repeat to the end; False (nothing taken) where no such words stand here.
    """
    by_turns = cur.low() == "alternately" and cur.book.craft is Craft.KNITTING
    length = 1 if by_turns else cur.any_words(ALL_AROUND)
    into_next = len(made) > 1 and cur.low(-1) == "next" and cur.low(-2) in ("the", "in", "into")
    told_apart = cur.low(-1) == "," or (cur.low(-1) in PARTS and cur.low(length) in (*STOPS, ""))
    if not length or not (told_apart or by_turns or into_next):
        return False
    if by_turns:
        length += cur.any_words(ALL_AROUND, 1)
    last = made[-1] if made else None
    if isinstance(last, Work) and last.place.where in (Where.EACH, Where.REST):
        # "2 sc in each ch 1 space, all around": no more than was said.
        cur.at += length if cur.low(length) in (*STOPS, "") else 0
        return cur.low(-1) != ","
    if told_apart and sum(isinstance(one, Work) for one in made[clause:]) < 2:
        clause = 0
    clause += _turning(made[clause:])
    body = tuple(made[clause:])
    body = _from_next(body) if cur.book.craft is Craft.CROCHET else body
    works = [one for one in body if not isinstance(one, Act)]
    knits = cur.book.craft is Craft.KNITTING
    places = (Where.PLAIN,) if knits else (Where.PLAIN, Where.NEXT)
    listed = all(isinstance(one, Work) and one.place.where in places for one in works)
    if len(works) < 2 or not listed or cur.low(length) not in (*STOPS, ""):
        return False
    cur.at += length
    made[clause:] = [Repeat(body[0].span, body[0].words, one_pass(body), Until.OPEN)]
    return True


def _turning(listed: Sequence[Node]) -> int:
    """How many of a list are its turning chain and what is said of it, where only stitches follow.
    """
    at = next((n for n, one in enumerate(listed) if not isinstance(one, Act | Chain)), 0)
    rest = [one for one in listed[at:] if not isinstance(one, Act)]
    plain = len(rest) > 1 and all(isinstance(one, Work) for one in rest)
    return at if plain and any(isinstance(one, Chain) for one in listed[:at]) else 0


def _from_next(body: tuple[Node, ...]) -> tuple[Node, ...]:
    """The list with "sc in first 2 sts" as "in next 2 sts": so it is each time it comes again."""
    first = body[0] if body else None
    if not isinstance(first, Work) or first.place.where is not Where.FIRST:
        return body
    return (replace(first, place=replace(first.place, where=Where.NEXT)), *body[1:])


def counted_behind(cur: Cursor) -> bool:
    """Whether a star that closes has a number of times, or of stitches, behind it: "* x 5", "*
    twice", "* over next 12 sts".
    """
    if cur.low(1) in ("over", "across", "for") and cur.book.craft is Craft.KNITTING:
        return any(cur.low(ahead) in ("sts", "stitches") for ahead in range(2, 6))
    if cur.low(1) == "," and (cur.kind(2) == "times" or cur.low(3) in ("times", "time")):
        # "† 2 ch, miss 2, 1 dc, †, twice"
        return True
    boxed = cur.low(1) in ("(", "[") and cur.low(2) in ("x", "repeat", "rep")
    crossed = cur.low(1) in ("x", "*") and cur.kind(2) == "num"
    told = 1 + cur.any_words(IN_TOTAL, 1)
    times = cur.kind(told) == "num" and cur.low(told + 1) in SO_OFTEN
    return boxed or crossed or times or cur.kind(1) == "times"


def left_open(made: list[Node], at: int, went_back: bool) -> None:
    """ "* k 1, over, k 1.", "over, k 1 *": a star that nothing goes back to: to the end."""
    if went_back:
        return
    index = 0 if at >= len(made) else at
    body = tuple(made[index:])
    works = [one for one in body if isinstance(one, Work | Group)]
    if any(one.place.where is Where.TO_LAST for one in works):
        return
    if any(one.place.where is Where.EACH for one in works) and any(map(_crochets, works)):
        # "** Attach Blue, sc in each st, turn": where rows to be repeated begin.
        return
    last = works[-1] if works else None
    if isinstance(last, Work) and last is body[-1] and last.place.where is Where.REST:
        # "k 1, * k 2 tog across": as often as it goes into the row.
        body = (*body[:-1], replace(last, place=replace(last.place, where=Where.PLAIN)))
    if works and works[0].place.where not in (Where.RING, Where.CHAIN):
        made[index:] = [Repeat(body[0].span, body[0].words, body, Until.OPEN)]


def _crochets(one: Work | Group) -> bool:
    return isinstance(one, Work) and one.stitch.craft is Craft.CROCHET


def pairs_up(cur: Cursor, made: list[Node], stars: list[tuple[str, int]]) -> bool:
    """ "k1 *yo, k2tog* k1": two stars and no word of a repeat; what they hold goes on as
    far as the rest leaves room.
    """
    label, index = stars[-1]
    if cur.book.craft is not Craft.KNITTING or cur.low() != label:
        return False
    if any(one.low in ("rep", "repeat", "*") for one in cur.tokens[cur.at + 1 :]):
        return False
    body = tuple(made[index:])
    stars.pop()
    cur.at += 1
    made[index:] = [Repeat(body[0].span, body[0].words, body, Until.OPEN)]
    return True
