"""Clusters told in words: "1 tr in each of next 5 tr, keeping the last loop of each on the hook,
thread over and pull through all loops" -> one stitch.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from reader.pattern.cursor import Cursor, Found
from reader.pattern.tree import ONE, Act, Chain, Node, Num, Place, Repeat, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind, Stitch

KEPT = re.compile(
    r"\b(?:keeping|holding(?: back)?|leaving|retaining)(?: on (?:the )?hook)?"
    r" (?:the )?last (?:\w+ )?(?:loops?|lps?)\b"
    r"|\bmade into a cluster|\bworked off (?:together|as one)\b",
    re.IGNORECASE,
)
"""Said of stitches that are finished together."""
DROPPED = re.compile(
    r"(?:remove|take out) (?:the |your )?hook\b|drop(?:ping)? (?:the )?(?:loop|lp|st|stitch)\b"
    r"|sl(?:ip)? (?:the )?loop off\b",
    re.IGNORECASE,
)
"""Said of stitches of one place that are drawn together to a popcorn."""


MADE_OF_ONE = ("cluster", "popcorn", "puff", "bobble")
"""Stitches that may be called by what they are made of: "3-dc cluster"."""


def sized_cluster(cur: Cursor, ahead: int = 0) -> tuple[Found, int, int] | None:
    """ "5 tr cluster", "3-dc popcorn" that stands here, or so far ahead: the one stitch that it is,
    the stitches it is made of and the tokens it takes; None where none stands. Nothing is taken.
    """
    if cur.kind(ahead) != "num" or cur.book.craft is not Craft.CROCHET:
        return None
    at = ahead + 1 + (cur.low(ahead + 1) == "-")
    part = cur.stitch(at)
    if part is None or part.special is not None or part.stitch.kind is not Kind.STITCH:
        return None
    at += part.length
    at += cur.low(at) == "-"
    group = _sized_group(cur, at, part, ahead)
    if group is not None:
        return group
    whole = cur.stitch(at)
    if whole is None or whole.form.split()[0].rstrip("s") not in (*MADE_OF_ONE, "cl", "pc"):
        return None
    size = cur.peek(ahead).value
    named = stitch_named(whole.stitch.name if whole.stitch.takes == 1 else "cluster", Craft.CROCHET)
    if named is None or named.name not in MADE_OF_ONE or size < 2:
        return None
    made = replace(named, height=part.stitch.height, parts=((part.stitch.name, size),))
    return replace(whole, stitch=made, special=None), size, at + whole.length


def cluster_behind(cur: Cursor) -> bool:
    """Whether a dash parts the number that stands here from the clusters that it counts: "2-3 tr
    clusters".
    """
    if cur.low(1) != "-":
        return False
    bare = cur.stitch(2)
    return (bare is not None and bare.stitch.name in MADE_OF_ONE) or (
        sized_cluster(cur, 2) is not None
    )


GROUP_WORDS = ("shell", "shells", "fan", "fans", "scallop", "group", "grp")
BEFORE_ITEM = frozenset(["", ",", ";", ".", ":", "(", "[", "*", "**", "a", "an", "work", "make",
                         "and", "then", "one"])


def _sized_group(cur: Cursor, at: int, part: Found, ahead: int) -> tuple[Found, int, int] | None:
    """ "7-dc shell in next st": so many stitches of one place; None where it is a place itself, "in
    next 7-dc shell".
    """
    size, shell = cur.peek(ahead).value, stitch_named("shell", Craft.CROCHET)
    into = cur.low(at + 1) in ("in", "into")
    if cur.low(at) not in GROUP_WORDS or not into or cur.low(-1) not in BEFORE_ITEM:
        return None
    if shell is None or size < 2:
        return None
    parts = ((part.stitch.name, size),)
    made = replace(shell, makes=size, height=part.stitch.height, parts=parts)
    return Found(made, "shell", 1), size, at + 1


OVER_THEM = ("over", "across", "through")
GROUPED = ("group", "shell", "fan", "v-st")


def over_so_many(node: Node | None) -> Node | None:
    """ "5 tr cluster over next 5 tr", "cluster over next 4 dc": the decrease of so many; others
    as they are.
    """
    if not isinstance(node, Work) or node.stitch.kind is not Kind.CLUSTER:
        return node
    place, parts = node.place, node.stitch.parts
    size = parts[0][1] if parts else 0
    places = place.number.values[0] if place.where is Where.NEXT else 1
    over = place.text.lower().startswith(OVER_THEM)
    if parts and over and place.noun in GROUPED and places == 1:
        # "4 tr cluster over next tr group": each of its stitches.
        places, place = size, replace(place, noun=parts[0][0], number=Num((size,)), text="")
    told = places == size if over or not place.each else False
    told = told or (over and not (place.each or parts))
    if places < 2 or not told or place.noun in ("sp", "ch", "tch", *GROUPED):
        return node
    stitch = replace(node.stitch, takes=places, base="", kind=Kind.DECREASE)
    place = replace(place, where=Where.NEXT, each=False)
    return replace(node, stitch=stitch, number=node.number, place=place)


def begun_with_chain(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """ "Ch 3, work next 3 sts tog, * ... work next 4 sts tog": the chain is the first of the four;
    other rows as they are.
    """
    works = [at for at, one in enumerate(nodes) if not isinstance(one, Act)]
    if len(works) < 3:
        return nodes
    chain, first = nodes[works[0]], nodes[works[1]]
    if not isinstance(chain, Chain) or not isinstance(first, Work) or chain.counts is not None:
        return nodes
    if first.stitch.kind is not Kind.DECREASE or first.stitch.takes < 2:
        return nodes
    full = next((one for one in _inside(nodes[works[1] + 1 :], first.stitch.takes + 1)), None)
    if full is None:
        return nodes
    out = list(nodes)
    out[works[0]] = replace(chain, counts=False, inside=True)
    out[works[1]] = replace(first, stitch=full)
    return tuple(out)


def _inside(nodes: tuple[Node, ...], takes: int) -> Iterator[Stitch]:
    """Decreases of so many stitches in a list and its repeats."""
    for one in nodes:
        if isinstance(one, Repeat):
            yield from _inside(one.body, takes)
        elif isinstance(one, Work) and (one.stitch.kind, one.stitch.takes) == (
            Kind.DECREASE, takes
        ):  # fmt: skip
            yield one.stitch


def _slips(one: Node) -> bool:
    return isinstance(one, Work) and one.stitch.kind is Kind.SLIP


def chain_joins_in(made: list[Node], upto: int | None = None) -> bool:
    """Makes the chain that a row begins with a part of the cluster behind it, no stitch of its own;
    False where the row begins otherwise. upto: where the cluster stands in the list.
    """
    begins = [at for at, one in enumerate(made[:upto]) if not (isinstance(one, Act) or _slips(one))]
    first = made[begins[-1]] if begins else None
    # Before it there may be the chain of the ring.
    if not isinstance(first, Chain) or not all(isinstance(made[at], Chain) for at in begins):
        return False
    made[begins[-1]] = replace(first, counts=False, inside=True)
    return True


COUNTED_AS_ONE = re.compile(
    r"\b(?:these|this|both|they|together|which)\b[^()]{0,20}?\bcounts?\b[^()]{0,30}?\b(?:[a-z]{2,3}[2-9]tog"
    r"|cluster|cl|dec(?:rease)?|first decrease)\b",
    re.IGNORECASE,
)


def counted_as_one(made: list[Node], told: Act) -> bool:
    """ "2 ch, 1 tr in next tr (these count as the first tr2tog)": the chain and the stitch as the
    one they make; False where the words say no such thing.
    """
    chain, last = ([None, None, *made])[-2:]
    if not isinstance(chain, Chain) or not isinstance(last, Work):
        return False
    if last.number not in (None, ONE) or not COUNTED_AS_ONE.search(told.words):
        return False
    stitch = stitch_named(f"{last.stitch.name}2tog", last.stitch.craft)
    if stitch is None or last.place.where is not Where.NEXT:
        return False
    place = Place(Where.PLAIN, last.place.span)
    words = f"{chain.words}, {last.words}"
    made[-2:] = [Work(chain.span, words, stitch, None, place)]
    return True


def clustered(made: list[Node], told: Act) -> bool:
    """Turns the stitches before into one, together with the chain that begins such a row; False
    where the words say no such thing.
    """
    last = made[-1] if made else None
    popcorn = DROPPED.match(told.words) is not None
    if not (popcorn or KEPT.search(told.words)) or not isinstance(last, Work):
        return False
    per = last.number.values[0] if last.number is not None else 1
    places = last.place.number.values[0] if last.place.where is Where.NEXT else 1
    if last.stitch.craft is not Craft.CROCHET or (popcorn and places > 1):
        return False
    named = last.stitch.kind is Kind.CLUSTER or last.stitch.name == "cluster"
    if (popcorn and per < 2) or named:
        # Of a cluster called so the words only tell how it is made.
        return False
    begun = chain_joins_in(made, len(made) - 1)
    if per * places < 2 and not begun:
        # A single stitch is a cluster only together with the chain before it.
        return False
    takes = places + (begun and last.place.where is Where.NEXT)
    name = "popcorn" if popcorn else "cluster"
    stitch = replace(
        last.stitch, name=name, spoken=name, spoken_uk="", takes=takes, makes=1, base="",
        kind=Kind.DECREASE if places > 1 else Kind.CLUSTER,
        parts=((last.stitch.name, per),) if places == 1 else (),
    )  # fmt: skip
    place = replace(last.place, where=Where.PLAIN) if places > 1 else last.place
    made[-1] = replace(last, stitch=stitch, number=None, place=place)
    return True
