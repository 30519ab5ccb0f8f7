"""Things done that neither take nor make stitches: joins, turns, colours, markers, ends; and the words they take with them."""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import Act, Deed, Edge, Node, Num, Shape, ShortTurn, Start
from reader.terms.stitches import Craft

JOIN_STARTS = (
    "join with",
    "join to",
    "join in",
    "join",
    "joining",
    "sl st to join",
    "ss to join",
    "close",
    "connect",
    "slip stitch to join",
    "sl st join",
)
FINISHES = (
    "fasten off",
    "finish off",
    "f/o",
    "fo",
    "end off",
    "break off",
    "cut yarn",
    "cut thread",
    "cut",
    "break yarn",
    "break",
    "weave in",
    "bind up",
)
STRETCH = 30
"""Tokens a phrase may take along."""


def _phrase(cur: Cursor, stops: frozenset[str] = STOPS) -> None:
    for _ in range(STRETCH):
        if cur.done() or cur.low() in stops or cur.kind() == "stars":
            return
        cur.at += 1


def find_act(cur: Cursor) -> Node | None:
    """The act that stands here, taken; None (nothing taken) when there is none."""
    start = cur.at
    for reading in (
        _count_words,
        _join,
        _turn,
        _colour,
        _finish,
        _marker,
        _ring,
        _edge,
        _shape,
        _needle,
    ):
        node = reading(cur, start)
        if node is not None:
            return node
        cur.at = start
    return None


def _act(cur: Cursor, start: int, deed: Deed, into: str = "") -> Act:
    return Act(cur.span(start), cur.said(start), deed, into)


def _count_words(cur: Cursor, start: int) -> Node | None:
    """ "this counts as your first double crochet", "that doesn't count as a stitch"."""
    if cur.low() not in (
        "this",
        "that",
        "counts",
        "count",
        "does",
        "always",
        "it",
        "which",
        "will",
        "not",
        "the",
    ):
        return None
    lows = []
    for ahead in range(14):
        if cur.low(ahead) in (",", ";", ".", "(", ")", "") or cur.kind(ahead) == "stars":
            break
        lows.append(cur.low(ahead))
    from reader.pattern.instructions import chain_counts

    counts = chain_counts(lows)
    if counts is None:
        return None
    cur.at += len(lows)
    return Act(cur.span(start), cur.said(start), Deed.NOTE, counts[1], counts[0])


def _join(cur: Cursor, start: int) -> Node | None:
    slip = cur.any_words(("sl st", "ss", "slip st", "slip stitch", "sl"))
    if (
        slip
        and cur.book.craft is Craft.CROCHET
        and cur.any_words(("to join", "join", "to close", "to form"), slip)
    ):
        cur.at += slip
    elif slip and cur.book.craft is Craft.CROCHET and cur.low(slip) in ("in", "to", "into", "with"):
        rest = " ".join(cur.low(slip + n) for n in range(1, 9))
        if not rest.startswith(
            (
                "top of",
                "first",
                "1st",
                "2nd ch",
                "3rd",
                "4th",
                "5th",
                "top",
                "beg",
                "the first",
                "the top",
                "beginning",
                "first sc",
                "join",
                "last st of",
            )
        ):
            return None
        cur.at += slip
    elif not cur.any_words(JOIN_STARTS):
        return None
    if cur.low() == "join" and cur.low(1) and cur.low(1) not in STOPS and _is_colour_join(cur):
        _phrase(cur)
        return _act(cur, start, Deed.COLOUR)
    _phrase(cur)
    return _act(cur, start, Deed.JOIN, cur.said(start).lower())


def _is_colour_join(cur: Cursor) -> bool:
    return cur.low(1) not in (
        "with",
        "to",
        "in",
        "and",
        "each",
        "round",
        "rnd",
        "by",
        "into",
        "st",
        "sl",
        "ss",
        "being",
        "last",
    )


def _turn(cur: Cursor, start: int) -> Node | None:
    if cur.accept("w&t", "w + t", "wrap and turn", "wrap & turn", "wt", "w & t"):
        return ShortTurn(cur.span(start), cur.said(start), True)
    if cur.accept("turn", "turning", "rotate"):
        if cur.low(-1) == "rotate":
            _phrase(cur)
            return _act(cur, start, Deed.OTHER_SIDE)
        cur.accept("work", "your work", "the work", "and")
        return _act(cur, start, Deed.TURN)
    if cur.accept(
        "do not turn",
        "don't turn",
        "do not join",
        "don't join",
        "do not join this",
        "do not fasten off",
    ):
        _phrase(cur)
        return _act(cur, start, Deed.NOTE)
    return None


def _colour(cur: Cursor, start: int) -> Node | None:
    if cur.low() in ("change", "changing", "drop", "attach", "switch", "carry", "carrying", "pick"):
        if cur.low() == "pick":
            return None
        _phrase(cur)
        return _act(cur, start, Deed.COLOUR)
    if cur.low() in ("with", "using") and cur.low(1) not in (
        "sl",
        "ss",
        "right",
        "rs",
        "ws",
        "wrong",
        "a",
    ):
        cur.at += 1
        for _ in range(3):
            if (
                cur.done()
                or cur.low() in STOPS
                or cur.stitch()
                or cur.kind() in ("num", "stars")
                or cur.low() in ("ch", "chain", "make", "work", "cast", "and")
            ):
                break
            cur.at += 1
        return _act(cur, start, Deed.COLOUR) if cur.at > start + 1 else None
    if cur.any_words(
        (
            "with right side",
            "with rs",
            "right side facing",
            "rs facing",
            "with ws",
            "with wrong side",
            "wrong side facing",
            "ws facing",
        )
    ):
        _phrase(cur)
        return _act(cur, start, Deed.NOTE)
    return None


def _finish(cur: Cursor, start: int) -> Node | None:
    length = cur.any_words(FINISHES)
    if not length or (cur.low() == "fo" and cur.book.craft is Craft.KNITTING):
        return None
    cur.at += length
    _phrase(cur)
    return _act(cur, start, Deed.FINISH)


def _marker(cur: Cursor, start: int) -> Node | None:
    if cur.accept(
        "pm",
        "sm",
        "slm",
        "rm",
        "sl marker",
        "slip marker",
        "place marker",
        "remove marker",
        "place a marker",
        "move marker",
        "slip m",
        "sl m",
        "place markers",
    ):
        if cur.low() not in STOPS and not cur.stitch() and cur.kind() not in ("num", "stars"):
            _phrase(cur)
        return _act(cur, start, Deed.MARKER)
    if cur.low() in (
        "stuff",
        "stuffing",
        "place",
        "start",
        "insert",
        "leave",
        "sew",
        "flatten",
        "pull",
        "tighten",
        "divide",
        "thread",
        "draw",
    ):
        if cur.low() == "start" and cur.low(1) not in ("stuffing",):
            return None
        _phrase(cur)
        return _act(cur, start, Deed.NOTE)
    return None


def _ring(cur: Cursor, start: int) -> Node | None:
    if cur.any_words(
        (
            "magic ring",
            "mr",
            "magic circle",
            "magic loop",
            "make a magic ring",
            "make magic ring",
            "using a magic loop",
            "with a magic ring",
            "make a ring",
            "adjustable ring",
            "make an adjustable ring",
            "create a magic ring",
            "start with a magic ring",
            "form a ring",
        )
    ):
        _phrase(cur)
        return Start(cur.span(start), cur.said(start), "ring", Num((0,)))
    return None


def _edge(cur: Cursor, start: int) -> Node | None:
    """Cast on, bind off, pick up: with a number, all when none stands."""
    cast_on = (
        bool(
            cur.accept(
                "co",
                "cast on",
                "casting on",
                "pick up and knit",
                "pick up and k",
                "pick up",
                "pu",
                "puk",
            )
        )
        and cur.book.craft is Craft.KNITTING
    )
    if not cast_on:
        cur.at = start
        if cur.book.craft is not Craft.KNITTING or not cur.accept(
            "bo",
            "bind off",
            "cast off",
            "binding off",
            "loosely bind off",
            "casting off",
            "loosely cast off",
        ):
            return None
    cur.accept("loosely", "first", "next", "a total of", "another", "the", "1st")
    number = cur.number()
    if number is not None:
        cur.at += 1
    cur.accept("sts", "st", "stitches", "stitch")
    rows = 1
    for _ in range(STRETCH):
        if (
            cur.done()
            or cur.low() in STOPS
            or cur.kind() == "stars"
            or cur.stitch()
            and cur.low() not in ("sl", "s")
            and cur.low(-1) not in ("in", "of", "as", "with")
        ):
            break
        if (
            cur.kind() == "num"
            and cur.low(1) in ("rows", "rnds")
            and cur.low(-1) in ("next", "following", "foll")
        ):
            rows = cur.peek().value
        cur.at += 1
    return Edge(cur.span(start), cur.said(start), number, cast_on, rows)


def _shape(cur: Cursor, start: int) -> Node | None:
    from reader.pattern.shaping import find_shape

    shape: Shape | None = find_shape(cur, start)
    return shape


def _needle(cur: Cursor, start: int) -> Node | None:
    """Needle and holder talk: passed over."""
    if cur.low() in ("needle", "onto", "place", "holder"):
        _phrase(cur)
        return _act(cur, start, Deed.NOTE)
    return None
