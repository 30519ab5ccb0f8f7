"""Knitting said in words: "thread over twice", "take in", "knit twice into the next",
"pass the slipped stitch over" -> Work, Shape, Group.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.knitting_fabric import NOUNS, worked
from reader.pattern.made_stitches import made_new, raised
from reader.pattern.overs import find_over, how_many, makes_by_name
from reader.pattern.places import find_place
from reader.pattern.told_where import told_where
from reader.pattern.tree import (
    ONE,
    Act,
    Group,
    Node,
    Num,
    Place,
    Repeat,
    Shape,
    Until,
    Where,
    Work,
)  # fmt: skip
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind

PASSES = frozenset(
    ["pass", "draw", "pull", "bring", "throw", "lift", "slip", "passing", "drawing", "turn", "take",
     "cast", "bind", "pulling", "lifting", "turning", "taking", "putting", "put", "leap", "binding"]
)  # fmt: skip


def find_knitting(cur: Cursor) -> Node | None:
    """The stitches that stand here in words, taken; None (nothing taken) when none do."""
    if cur.book.craft is not Craft.KNITTING:
        return None
    start = cur.at
    for reading in (
        told_where, find_over, made_new, raised, _passed_over, _slip_and_bind, _pair_alone,
        _taken_in, _twice_into, _several_into, _all_into_one,
    ):  # fmt: skip
        node = reading(cur, start)
        if node is not None:
            return node
        cur.at = start
    return None


def _passed_over(cur: Cursor, start: int) -> Node | None:
    """ "pass the slipped stitch over the knitted one"."""
    if cur.low() not in PASSES:
        return None
    lows = [cur.low(n) for n in range(1, 10)]
    stop = next((n for n, low in enumerate(lows) if low in STOPS), len(lows))
    lows = lows[:stop]
    if lows == ["over"] and _waits(cur):
        # "Slip one, knit one, pass over".
        cur.at += 2
        return worked(cur, start, "psso", None)
    if "over" not in lows[:7]:
        return None
    over = lows.index("over")
    named = {"slipped", "slip", "sl", "first", "it", "1st", "slipt"} & set(lows[:over])
    if not named or (cur.low() == "slip" and not {"first", "it", "slipped"} & set(lows[:over])):
        return None
    both = {"2", "two", "both"} & set(lows[:over])
    cur.at += over + 2
    while cur.low() in ("the", "it", "knitted", "knit", "one", "two", "next", "last", "second",
                        "others", "other", "them", "2", "k2tog", "st", "stitch", "n", "k",
                        "narrow", "narrowed", "tog", "together"):  # fmt: skip
        cur.at += 1
    return worked(cur, start, "p2sso" if both else "psso", None)


def _waits(cur: Cursor) -> bool:
    """Whether a slipped stitch stands just before, to go over what was knitted behind it."""
    if cur.low(-1) not in (",", "and", ";"):
        return False
    if cur.low() in ("turn", "throw", "put", "take") and not makes_by_name(cur):
        return False
    return bool({"sl", "slip", "s", "slipped"} & {cur.low(-ahead) for ahead in range(2, 10)})


def as_knitted(made: list[Node], node: Node) -> Node:
    """The node with what knitters mean by it: "(k1, p1, k1) in same st" is one stitch of its own,
    "sl 2, k1, psso" passes both over; other nodes as they are.
    """
    if isinstance(node, Group) and node.place.where is Where.SAME and _begins_knit(node.body):
        return replace(node, place=replace(node.place, where=Where.NEXT))
    return _both_over(made, node)


def _begins_knit(body: tuple[Node, ...]) -> bool:
    """Whether a list begins with a knit stitch, and so is not what follows on one."""
    first = body[0] if len(body) > 1 else None
    return isinstance(first, Work) and first.stitch == stitch_named("k", Craft.KNITTING)


def _both_over(made: list[Node], node: Node) -> Node:
    """ "sl 2, k1, psso": both go over; other nodes as they are."""
    if not isinstance(node, Work) or node.stitch.name != "psso":
        return node
    if sum(not isinstance(one, Act) for one in made[-3:]) < 2:
        return node
    slipped, knitted = [one for one in made[-3:] if not isinstance(one, Act)][-2:]
    pair = isinstance(slipped, Work) and slipped.stitch.name == "sl" and slipped.number == Num((2,))
    single = isinstance(knitted, Work) and knitted.stitch.name == "k"
    single = single and isinstance(knitted, Work) and knitted.number in (None, ONE)
    both = stitch_named("p2sso", Craft.KNITTING)
    return replace(node, stitch=both) if pair and single and both is not None else node


def and_narrowed(made: list[Node], node: Node) -> Node:
    """ "thread over and narrow until 3 remain": both over and over; other nodes as they are."""
    last = made[-1] if made else None
    if not isinstance(node, Work) or node.place.where is not Where.TO_LAST or node.stitch.takes < 2:
        return node
    over = isinstance(last, Work) and last.stitch.name == "yo" and last.number in (None, ONE)
    if not over or not isinstance(last, Work) or node.stitch.craft is not Craft.KNITTING:
        return node
    made.pop()
    once = replace(node, place=Place(Where.PLAIN, node.span))
    words = f"{last.words} {node.words}"
    return Repeat(last.span, words, (last, once), Until.TO_LAST, node.place.number)


def _slip_and_bind(cur: Cursor, start: int) -> Node | None:
    """ "slip, narrow and bind", "slip 1, knit 1 and bind": the slipped one goes over the rest."""
    if not cur.accept("slip 1", "slip one", "slip", "sl 1", "sl"):
        return None
    cur.accept(",")
    two = cur.accept("narrow", "n", "k2tog", "knit 2 together", "knit two together")
    name = "sk2p" if two else ""
    if not name and cur.accept("knit 1", "knit one", "k 1", "knit"):
        name = "skp"
    cur.accept(",", "and")
    cur.accept("and")
    return worked(cur, start, name, None) if name and cur.accept("bind") else None


def _taken_in(cur: Cursor, start: int) -> Node | None:
    """ "take in", "take two together", "n", "knit 2 in one": decreases."""
    if cur.accept("take in one at each end", "take in 1 at each end"):
        return Shape(cur.span(start), cur.said(start), -1, ONE, 2)
    if cur.accept("take in", "taking in", "narrow once", "narrow") or (
        cur.low() == "n" and cur.low(1) in (*STOPS, "", "and") and cur.accept("n")
    ):
        if cur.kind() == "num" and cur.low(1) in NOUNS:
            number = cur.number()
            cur.at += 2
            return worked(cur, start, "k2tog", number)
        number = how_many(cur)
        return worked(cur, start, "k2tog", number, not cur.low(-1).isdigit())
    if cur.low() == "narrowing" and cur.low(-1) in ("and", "by") and cur.low(1) in (*STOPS, ""):
        cur.at += 1
        return worked(cur, start, "k2tog", None)
    if _with_its_over(cur, start):
        return worked(cur, start, "k2tog", None)
    verb = cur.low()
    if verb not in ("take", "taking", "knit", "k", "pearl", "purl", "p", "work", "slip"):
        return None
    cur.at += 1
    these = cur.accept("these", "those", "them")
    cur.accept("the")
    which = cur.accept("next", "first", "last", "following") or these
    amount = cur.peek().value if cur.kind() == "num" else 0
    if not 1 < amount < 9:
        return None
    cur.at += 1
    cur.accept(*NOUNS)
    if cur.low() == "," and cur.low(1) == "taken":
        cur.at += 1
    joined = cur.accept("taken together", "in one", "into one", "as one", "in 1", "into 1", "as 1")
    if not joined and not ((which or verb in ("take", "taking")) and cur.accept("together", "tog")):
        return None
    return worked(cur, start, f"{'p' if verb in ('pearl', 'purl', 'p') else 'k'}{amount}tog", None)


ENDS = (*STOPS, "", "*")


def _pair_alone(cur: Cursor, start: int) -> Node | None:
    """ "K3, 2tog, k to end": an item that names no stitch."""
    amount = cur.peek().value if cur.kind() == "num" else 0
    alone = cur.low(-1) in ("", ",", ";", "*", "(", "[", "and", "then")
    together = cur.low(1) in ("tog", "together") and cur.low(2) in ENDS
    if not (alone and together and 1 < amount < 5):
        return None
    cur.at += 2
    return worked(cur, start, f"k{amount}tog", None)


PAIRED = frozenset(
    ["slipped", "made", "slip", "loop", "over", "thread", "wool", "increased", "turned"]
)
"""What lies over a slipped stitch in brioche knitting, and the stitch itself."""


def _with_its_over(cur: Cursor, start: int) -> bool:
    """Takes "knit together the slipped and the made stitch", "knit the slipped stitch and the loop
    together".
    """
    if not cur.accept("knit", "k", "take", "work"):
        return False
    first = cur.accept("together", "tog")
    lows = [cur.low(ahead) for ahead in range(12)]
    stop = next((at for at, low in enumerate(lows) if low in STOPS), len(lows))
    lows = lows[:stop]
    joined = lows.index("and") if "and" in lows else 0
    named = bool(PAIRED & set(lows[:joined])) and bool(PAIRED & set(lows[joined:]))
    together = first or {"together", "tog"} & set(lows)
    if not joined or not named or not together or {"2", "two", "over"} & set(lows[joined:]):
        cur.at = start
        return False
    cur.at += stop
    return True


def _twice_into(cur: Cursor, start: int) -> Node | None:
    """ "knit twice into the next", "k into front and back of next 2 sts": increases."""
    if not cur.accept("knit", "k", "purl", "p", "pearl", "work"):
        return None
    cur.accept("1", "one")
    front = _front_and_back(cur)
    if front and (cur.low() in (*STOPS, "", "twice", "once") or cur.kind(1) == "times"):
        cur.accept("( kfb )", "( kf&b )", "( k1f&b )", "( kfb)", "(kfb)")
        return worked(cur, start, "kfb", how_many(cur))
    if front and cur.accept("each", "every") and cur.low() in (*NOUNS, "one"):
        cur.at += 1
        stitch = stitch_named("kfb", cur.book.craft)
        place = Place(Where.EACH, cur.span(start))
        return Work(cur.span(start), cur.said(start), stitch, None, place) if stitch else None
    each = _of_each(cur) if front else None
    if each is not None:
        stitch = stitch_named("kfb", cur.book.craft)
        place = Place(Where.PLAIN, cur.span(start))
        return Work(cur.span(start), cur.said(start), stitch, each, place) if stitch else None
    if not front and not cur.accept("twice in", "twice into", "two times into", "two times in"):
        return None
    cur.accept("both", "the")
    pair = cur.accept("first and last", "1st and last")
    if pair:
        cur.accept(*NOUNS)
        span = cur.span(start)
        return Shape(span, cur.said(start), 1, ONE, 2)
    cur.at -= 1
    found = find_place(cur)
    if found is None:
        cur.at += 1
        cur.accept("1st")
        cur.accept(*NOUNS)
    place = found or Place(Where.NEXT, cur.span(start))
    stitch = stitch_named("kfb", cur.book.craft)
    return Work(cur.span(start), cur.said(start), stitch, None, place) if stitch else None


BOTH_LOOPS = (
    "front and back", "front & back", "front and then back", "front then back", "back and front",
    "front and then the back", "front and then into the back", "front and then in the back",
    "front and the back", "front and into the back", "front and in the back", "back and the front",
    "front and back loop", "front and back loops", "f&b", "f & b", "f and b", "fb",
)


def _front_and_back(cur: Cursor) -> bool:
    """Takes "into the front and back of": both loops of a stitch."""
    at = cur.at
    cur.accept("in", "into", "through", "thru")
    cur.accept("both", "the")
    cur.accept("the")
    if cur.accept(*BOTH_LOOPS):
        of = cur.accept("of the same", "of")
        cur.accept("the")
        alone = cur.low() in (*STOPS, "") or cur.kind() == "times"
        return of or alone or (cur.kind() == "num" and cur.low(1) in ("times", "x"))
    cur.at = at
    return False


def _of_each(cur: Cursor) -> Num | None:
    """ "(of) each of next 3 sts": how many, taken; None where no such words stand here."""
    at = cur.at
    each = cur.accept("each of")
    cur.accept("the")
    which = cur.accept("next", "first", "last", "following")
    number = cur.number() if (each or which) and cur.kind() == "num" else None
    if number is None:
        cur.at = at
        return None
    cur.at += 1
    cur.accept(*NOUNS)
    return number


def _several_into(cur: Cursor, start: int) -> Node | None:
    """ "work 2 into 1st st": so many of one."""
    if not cur.accept("knit", "k", "purl", "p", "work", "make") or cur.kind() != "num":
        return None
    number = cur.number()
    cur.at += 1
    stitch = stitch_named("k", cur.book.craft)
    if number is None or not 1 < number.values[0] < 8 or cur.low() not in ("in", "into"):
        return None
    place = find_place(cur)
    if stitch is None or place is None or place.number.values[0] != 1 or place.where not in INTO:
        return None
    body = Work(cur.span(start), cur.said(start), stitch, number, Place(Where.PLAIN, place.span))
    return Group(cur.span(start), cur.said(start), (body,), place)


INTO = (Where.NEXT, Where.FIRST, Where.LAST, Where.EACH)


JOINED = ("and", "then", "&", "/", "+")


def _all_into_one(cur: Cursor, start: int) -> Node | None:
    """ "k 1 and p 1 into next st", "k 1, p 1, k 1 all into the next": one becomes several."""
    body: list[Node] = []
    commas = False
    while len(body) < 7:
        one = _one_of_several(cur, cur.at)
        if one is None:
            break
        body.append(one)
        if _dashed(cur):
            continue
        if cur.low() in JOINED or (cur.low() == "," and cur.low(1) != "all"):
            commas = commas or cur.low() == ","
            cur.at += 1
            cur.accept("and", "then")
        elif cur.low() != "," or cur.low(1) != "all":
            break
    cur.accept(",")
    every = cur.accept("all")
    if len(body) < 2 or (commas and not every) or cur.low() not in ("in", "into"):
        return None
    place = find_place(cur)
    if place is None or place.where not in (Where.NEXT, Where.FIRST, Where.LAST, Where.EACH):
        return None
    if place.where is Where.NEXT and place.number.values[0] != 1 and not place.each:
        return None
    return Group(cur.span(start), cur.said(start), tuple(body), place)


def _dashed(cur: Cursor) -> bool:
    """Whether a dash alone stands before this word, "k1-yo-k1"."""
    behind, here = cur.peek(-1), cur.peek()
    return not cur.done() and cur.text[behind.end : here.start] == "-"


def _one_of_several(cur: Cursor, start: int) -> Node | None:
    """A plain stitch with its number, or an over."""
    over = find_over(cur, start)
    if over is not None:
        return over
    cur.at = start
    found = cur.stitch()
    if found is None or (found.stitch.kind is not Kind.STITCH and found.stitch.name != "yo"):
        return None
    cur.at += found.length
    number = cur.number() if cur.kind() == "num" else None
    cur.at += number is not None
    place = Place(Where.PLAIN, cur.span(start))
    return Work(cur.span(start), cur.said(start), found.stitch, number, place)
