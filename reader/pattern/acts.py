"""Things done that neither take nor make stitches: joins, turns, colours, markers, ends; and the
words they take with them.
"""

from __future__ import annotations

import re

from reader.pattern.begun_at import begun_among
from reader.pattern.chain_sayings import chain_counts
from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.edges import find_edge
from reader.pattern.far_side import far_side
from reader.pattern.first_replaced import find_first_replaced
from reader.pattern.holders import set_aside
from reader.pattern.joins import find_join, into_ring
from reader.pattern.naming import find_naming
from reader.pattern.other_side import other_side
from reader.pattern.phrasing import EVERY_ROW, act_here, so_far_apart, take_phrase
from reader.pattern.piece_joined import piece_joined
from reader.pattern.rings import find_ring
from reader.pattern.tree import (
    Act,
    Deed,
    Node,
    Shape,
    ShortTurn,
)
from reader.pattern.yarns import find_yarn
from reader.terms.stitches import Craft

FINISHES = (
    "fasten off", "finish off", "f/o", "fo", "end off", "break off", "cut yarn", "cut thread",
    "cut", "break yarn", "break", "weave in", "bind up",
)  # fmt: skip
COUNT_STARTS = frozenset(
    ["this", "that", "counts", "count", "does", "always", "it", "which", "will", "not", "the",
     "to", "standing", "stands", "stand", "counting", "we", "you", "i", "don't", "doesn't", "do",
     "never", "won't", "isn't", "is", "these", "they"]
)
NOT_DONE = (
    "do not turn", "don't turn", "do not join", "don't join", "do not join this",
    "do not fasten off", "dnt", "dn turn", "no sl st", "no join", "no joining", "no slip st",
    "no slip stitch", "no turn", "no sl st to join", "without joining",
    "no incs", "no inc", "no decs", "no dec",
    "no increases", "no increase", "no decreases", "no decrease", "no increasing", "no decreasing",
    "no more increases", "no more decreases", "without increasing", "without decreasing",
    "without increases", "without decreases", "without any increases", "without any decreases",
    "with no increases", "with no decreases", "no shaping", "without shaping",
)  # fmt: skip
CHANGES = frozenset(["change", "changing", "drop", "attach", "switch", "carry", "carrying"])
DROPPED = frozenset(["st", "sts", "stitch", "stitches", "loop", "loops", "yo", "over"])
"""What is dropped off the needle, where no yarn is."""
NOT_A_YARN = frozenset(["sl", "ss", "right", "rs", "ws", "wrong", "a"])
FACING = (
    "with right side", "with rs", "right side facing", "rs facing", "with ws", "with wrong side",
    "wrong side facing",
    "ws facing",
)  # fmt: skip
MARKERS = (
    "pm", "sm", "slm", "rm", "sl marker", "slip marker", "place marker", "remove marker",
    "move marker", "slip m", "sl m", "place markers", "marker on", "slip the marker", "slip it",
    *(f"{verb} {which}{what}" for verb in ("place", "put", "set")
      for which in ("a ", "another ", "second ", "2nd ", "a second ", "the second ", "one ")
      for what in ("marker", "m")),
    "take the marker off", "take off the marker", "take off the other marker",
)  # fmt: skip
THROUGHOUT = (
    "all through", "throughout", "from now on", "from here on", "do not let", "do not count",
    "work all the rounds", "work all rounds", "work all the rows",
)  # fmt: skip
"""These begin a remark on many rows."""
_TURNED_AT = tuple(
    f"{each}{what}"
    for each in ("", "the ", "each ", "all ", "all the ", "any ", "every ", "both ", "remaining ",
                 "rem ", "each rem ", "each remaining ", "the remaining ")
    for what in ("wrap", "wraps", "wrapped", "double st", "double sts", "double stitch",
                 "double stitches", "ds", "dss", "dst", "gap", "gaps")
)
RESOLVING = ("working", "knitting", "purling", "hiding", "resolving", "closing", "picking",
             "lifting", "treating", "processing")
RESOLVED = tuple(
    f"{verb}{' up' if verb == 'picking' else ''} {what}"
    for what in _TURNED_AT for verb in RESOLVING
)
"""Where short rows were turned, how their last stitches are worked: told only."""
ONLY_TOLD = (
    "made into a cluster", "made into cluster", "worked off together", "making the last",
    "working the last", "making last", "working last",
)  # fmt: skip
THOSE_STITCHES = tuple(
    f"{into} {the}same {sts} {where}" for into in ("in", "into") for the in ("", "the ")
    for sts in ("stitches", "sts") for where in ("where", "as", "in which", "that")
)
"""Which stitches the ones before go into, told again."""
HANDWORK = frozenset(
    [
    "stuff", "stuffing", "mark", "place", "start", "insert", "leave", "sew", "flatten", "pull",
    "tighten", "divide", "taking", "keeping", "thread", "draw", "weave", "gather", "secure", "hide",
    "tuck", "darn", "close", "cinch", "knot", "fold",
    "folding",
    ]
)  # fmt: skip


def find_act(cur: Cursor) -> Node | None:
    """The act that stands here, taken; None (nothing taken) when there is none."""
    start, named = cur.at, cur.stitch()
    if named is not None and named.special is not None:
        # "TWIST over 4 sts = ...": the pattern's own stitch.
        return None
    for reading in (
        _count_words,
        find_first_replaced,
        begun_among,
        find_naming,
        so_far_apart,
        far_side,
        other_side,
        into_ring,
        piece_joined,
        find_join,
        _turn,
        _facing,
        find_yarn,
        _colour,
        _waiting,
        _finish,
        _marker,
        find_ring,
        find_edge,
        _shape,
        _needle,
    ):
        node = reading(cur, start)
        if node is not None:
            return node
        cur.at = start
    return None


def _count_words(cur: Cursor, start: int) -> Node | None:
    """ "this counts as your first double crochet", "that doesn't count as a stitch"; a chain that
    is twisted looks like a stitch, and counts as one.
    """
    if cur.book.craft is Craft.CROCHET and cur.accept("twist", "twisted", "twist it"):
        cur.accept("it", "them", "the chain", "these")
        return Act(cur.span(start), cur.said(start), Deed.NOTE, "", True)
    if cur.low() not in COUNT_STARTS:
        return None
    lows = []
    for ahead in range(14):
        low = cur.low(ahead)
        if low in (",", ";", ".", "(", ")", "", "—") or cur.kind(ahead) == "stars":
            break
        if low == "-" and cur.tokens[cur.at + ahead].spaced:
            # "ch 3 - counts as dc - 2 dc in next st"
            break
        lows.append(cur.low(ahead))
    counts = chain_counts(lows)
    if counts is None or (cur.low() == "to" and cur.low(1) not in ("count", "stand")):
        return None
    cur.at += len(lows)
    return Act(cur.span(start), cur.said(start), Deed.NOTE, counts[1], counts[0])


WRAPS = (
    "w&t", "w + t", "wt", "w & t",
    *(f"wrap{the}{st}{then} turn" for the in ("", " the", " the next", " next", " the following")
      for st in ("", " st", " stitch") for then in (" and", " &", " ,", " , and", " then")),
)  # fmt: skip
"""A short row turned with the next stitch wrapped."""


def _turn(cur: Cursor, start: int) -> Node | None:
    if cur.accept(*WRAPS):
        return ShortTurn(cur.span(start), cur.said(start))
    if cur.accept("turn", "turning", "rotate", "to turn"):
        if cur.low(-1) == "rotate":
            take_phrase(cur)
            return act_here(cur, start, Deed.OTHER_SIDE)
        cur.accept("work", "your work", "the work", "and", "piece", "the piece")
        if cur.kind() == "num" and cur.low(1) in ("degrees", "degree", "deg"):
            take_phrase(cur)
            return act_here(cur, start, Deed.OTHER_SIDE)
        cur.accept(*EVERY_ROW)
        return act_here(cur, start, Deed.TURN)
    if cur.accept(*NOT_DONE):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    return None


LAST_OF_THEM = tuple(
    f"{how} {the}last" for the in ("the ", "")
    for how in ("with", "placing", "putting", "making", "working", "having", "taking", "setting")
)
"""Behind stitches worked to the end, only where the last of them goes."""


SIDE_FACING = tuple(
    f"{lead}{side}{of} facing{you}{then}"
    for lead in ("with ", "with the ", "") for side in ("right side", "wrong side", "rs", "ws")
    for of in ("", " of work", " of the work", " of piece") for you in ("", " you")
    for then in ("", " and")
)
"""Which side is seen: nothing is worked by that."""


def _facing(cur: Cursor, start: int) -> Node | None:
    if cur.book.craft is not Craft.KNITTING or not cur.accept(*SIDE_FACING):
        return None
    return act_here(cur, start, Deed.NOTE)


def _colour(cur: Cursor, start: int) -> Node | None:
    if cur.any_words(("sl loop off", "slip loop off", "slip the loop off", "sl the loop off")):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    to_end = cur.low(-2 if cur.low(-1) == "," else -1) in ("end", "across", "around")
    last = cur.low() == "last" and cur.stitch(1) is not None and to_end
    if last or (cur.any_words(LAST_OF_THEM) and (to_end or cur.low(-1) in (",", "("))):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    dropped = {cur.low(n) for n in range(1, 5)} & DROPPED
    if cur.low() in ("drop", "dropping") and dropped:
        if cur.book.craft is Craft.KNITTING:
            return None
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if cur.low() in CHANGES:
        take_phrase(cur)
        return act_here(cur, start, Deed.COLOUR)
    if cur.low() in ("with", "using") and cur.low(1) not in NOT_A_YARN:
        cur.at += 1
        for _ in range(3):
            if _ends_colour(cur):
                break
            cur.at += 1
        return act_here(cur, start, Deed.COLOUR) if cur.at > start + 1 else None
    if cur.any_words(FACING):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    return None


def _ends_colour(cur: Cursor) -> bool:
    """Whether the yarn's name is over: a mark, a number, a stitch or an instruction stands here."""
    if cur.done() or cur.low() in STOPS or cur.stitch() or cur.kind() in ("num", "stars"):
        return True
    return cur.low() in ("ch", "chain", "make", "work", "cast", "co", "and", "fsc", "knit", "purl",
                         "pick", "take", "bind")


def _finish(cur: Cursor, start: int) -> Node | None:
    length = cur.any_words(FINISHES)
    if not length or (cur.low() == "fo" and cur.book.craft is Craft.KNITTING):
        return None
    cur.at += length
    take_phrase(cur)
    # "Break off at end of 4th row" is not done in each of "2nd, 3rd and 4th rows".
    later = AT_ROW.search(cur.said(start)) is not None
    return act_here(cur, start, Deed.NOTE if later else Deed.FINISH)


AT_ROW = re.compile(
    r"\bat (?:the )?end of (?:the )?(?:last|\d+(?:st|nd|rd|th)) (?:row|round|rnd)", re.IGNORECASE
)


RUN_THROUGH = tuple(
    f"{verb}{the}{end}through"
    for verb in ("run ", "pass ", "slip ", "run it ", "pass it ")
    for the in ("", "the ") for end in ("", "end ", "yarn ", "wool ", "thread ", "tail ")
    if end or not the
)
"""How the end of the yarn closes a crown."""


OF_LAST = ("last", "the last", "having last", "having the last", "bringing last",
           "bringing the last", "with last", "with the last", "so that last", "so that the last")
HAVING = ("bringing", "having", "with", "placing", "putting")
COMES = frozenset(["coming", "being", "falling", "worked", "made", "going", "placed", "comes",
                   "is", "falls", "goes"])  # fmt: skip


def tells_of_last(cur: Cursor) -> bool:
    """Whether it is told where the last stitch of a row comes, "the last dc coming in top of 3 ch":
    that stitch is made before.
    """
    length = cur.any_words(OF_LAST)
    found = cur.stitch(length) if length and cur.book.craft is Craft.CROCHET else None
    if found is None:
        return False
    behind = length + found.length
    behind += cur.low(behind) == "being" and cur.low(behind + 1) in COMES
    comes = cur.low(behind) in COMES
    into = cur.low(behind + comes) in ("in", "into", "on", "over", "to", "at")
    return into and (comes or cur.low() in HAVING)


def _marker(cur: Cursor, start: int) -> Node | None:
    if cur.words("sl st in last") and cur.words("sts at end of last", 5):
        # Only where the last of several rounds ends.
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if cur.any_words(THROUGHOUT):
        manner = cur.accept("throughout", "from now on", "from here on")
        worked = cur.low() in ("skip", "sk", "miss", *STOPS) or cur.stitch(1) is not None
        if not (manner and worked):
            take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if cur.low() == "to" and cur.low(1) in ("complete", "finish", "correspond", "match"):
        # What is reached thereby: "1 sc in last st to complete last shell".
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if cur.low(-1) == "," and cur.any_words(THOSE_STITCHES):
        # "down other side of chain, in same stitches where the first were worked"
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    resolved = cur.low() in RESOLVING and cur.any_words(RESOLVED)
    if cur.any_words(ONLY_TOLD) or resolved or tells_of_last(cur):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if cur.accept(*MARKERS):
        if cur.low() not in STOPS and not cur.stitch() and cur.kind() not in ("num", "stars"):
            take_phrase(cur)
        return act_here(cur, start, Deed.MARKER)
    if cur.any_words(RUN_THROUGH):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if cur.book.craft is Craft.CROCHET and cur.accept("shape", "shaping"):
        # A heading in the midst of a row: "Next row: Shape armholes: ..."
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if _draws_together(cur):
        return None
    if cur.low() in HANDWORK and not (cur.low() == "start" and cur.low(1) != "stuffing"):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    return None


def _draws_together(cur: Cursor) -> bool:
    """Whether "taking the next 2 together" stands here, which decreases."""
    if cur.low() not in ("taking", "draw", "drawing") or cur.book.craft is not Craft.CROCHET:
        return False
    ahead = range(1, 7)
    counted = any(cur.kind(n) == "num" for n in ahead)
    return counted and any(cur.low(n) in ("together", "tog") for n in ahead)


def _waiting(cur: Cursor, start: int) -> Node | None:
    """ "place next 12 sts on waste yarn": stitches that leave the row, or come back to it."""
    return set_aside(cur, start) if cur.book.craft is Craft.KNITTING else None


def _shape(cur: Cursor, start: int) -> Node | None:
    from reader.pattern.shaping import find_shape

    shape: Shape | None = find_shape(cur, start)
    return shape


SPOTS = frozenset(
    [
    "ch", "chain", "chains", "shell", "corner", "center", "centre", "point", "marker", "space",
    "sp", "loop",
    ]
)  # fmt: skip


def _towards(cur: Cursor) -> bool:
    """ "up to the 2 chain": how far, where the next instruction says what is done there."""
    if not cur.accept("up to", "as far as"):
        return False
    cur.accept("the", "next", "first")
    if cur.kind() == "num":
        cur.at += 1
    return cur.low() in SPOTS


def _needle(cur: Cursor, start: int) -> Node | None:
    """Needle and holder talk: passed over."""
    aside = set_aside(cur, start)
    if aside is not None:
        return aside
    cur.at = start
    if cur.low() == "including" or _towards(cur):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    cur.at = start
    if cur.low() == "yarn" and cur.low(1) in ("in", "to", "at", "forward", "front", "back"):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    if cur.low() in ("needle", "onto", "place", "holder"):
        take_phrase(cur)
        return act_here(cur, start, Deed.NOTE)
    return None
