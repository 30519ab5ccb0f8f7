"""Crochet rows told without a stitch: "work across 16 sts", "pattern to within 3 sts of end", "work
even on first 12 sts only", "work across remaining sts" -> Work of whatever stitch the row is of.
"""

from __future__ import annotations

from reader.pattern.all_but import LEFT_OUT
from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.leaving import ONE_SIDE
from reader.pattern.place_words import AROUND, STITCH_NOUNS
from reader.pattern.places import find_place
from reader.pattern.tree import Act, Chain, Deed, LeaveRest, Node, Place, Where, Work
from reader.pattern.up_to import to_last_of
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind

PATTERNS = tuple(
    f"{verb}{even}{in_}{manner}"
    for verb in ("work ", "continue ", "cont ", "keep ", "")
    for even in ("even ", "")
    for in_ in ("in ", "in the ", "in est ", "in established ", "")
    for manner in ("pattern", "patt", "pat", "patterns", "same manner")
    if verb or in_
)
TO_AND_FRO = tuple(
    f"{verb}{fro}"
    for verb in ("work ", "continue ", "crochet ", "go ", "continue working ", "keep on ", "")
    for fro in (
        "back and forth", "backward and forward", "backwards and forwards", "to and fro",
        "forward and back", "forwards and backwards",
    )
)  # fmt: skip
MANNERS = (
    *PATTERNS, *TO_AND_FRO,
    "work even", "work straight", "work plain", "work evenly", "work as before", "work",
    "pattern", "patt", "pat", "plain", "even", "straight", "continue", "cont",
    "working in pattern", "working even",
)  # fmt: skip
"""What stands for the stitch of the row, whatever it is."""
ALONG = ("across", "over", "on", "along", "around", "the length of", "back across", "back over")
ACROSS = tuple(
    f"{across}{row}" for across in ("across", "around", "over", "along")
    for row in ("", " row", " the row", " round", " the round", " needle")
)
ROW = tuple(
    f"{across} {which}{row}" for across in ("across", "around", "along", "over")
    for which in ("", "the ", "entire ", "whole ", "rest of ", "rest of the ", "remainder of ",
                  "remainder of the ", "the rest of ", "the rest of the ", "the remainder of ",
                  "the remainder of the ")
    for row in ("row", "round", "rnd")
)  # fmt: skip
LAID_OUT = ("as established", "as set", "as before", "as it stands", "as given", "in pattern")
THE_REST = ("the remaining", "the rem", "remaining", "rem", "the rest of the", "rest of the",
            "the other", "other", "the unworked")  # fmt: skip
FIRST = ("the first", "the 1st", "the next", "the last", "these", "those", "the", "first", "1st",
         "next", "last")  # fmt: skip


def find_plain_work(cur: Cursor) -> Node | None:
    """The stitches that such words mean, taken; None (nothing taken) where none stand here."""
    if cur.book.craft is not Craft.CROCHET:
        return None
    told = _of_pattern(cur) or _row_of(cur)
    if told is not None or not cur.any_words(MANNERS):
        return told
    start = cur.at
    stitch = stitch_named("st", Craft.CROCHET)
    cur.accept(*MANNERS)
    cur.accept(*LAID_OUT)
    place = _so_many(cur, start) or _the_rest(cur, start) or _to_last(cur) or _to_end(cur, start)
    if place is None or stitch is None:
        cur.at = start
        return None
    return Work(cur.span(start), cur.said(start), stitch, None, place)


ON_IT = ("on it", "upon it", "into it", "along it", "over it", "on this", "upon this", "on these")


def _row_of(cur: Cursor) -> Work | None:
    """ "Work a row of dc on it": one in every stitch, or chain."""
    start = cur.at
    cur.accept("work", "make", "do", "crochet")
    whole = cur.accept("a row of", "one row of", "1 row of", "a round of", "one round of")
    found = cur.stitch() if whole else None
    if found is None or found.stitch.kind is not Kind.STITCH:
        cur.at = start
        return None
    cur.at += found.length
    place = Place(Where.EACH, cur.span(start), each=True, text="in each")
    cur.accept(*ON_IT)
    if cur.low() not in (*STOPS, ""):
        cur.at = start
        return None
    return Work(cur.span(start), cur.said(start), found.stitch, None, place)


def _of_pattern(cur: Cursor) -> Work | None:
    """ "work 1 pattern st in each of next 4 sts", "6 pattern sts"."""
    start = cur.at
    if not {"pattern", "patt", "pat"} & {cur.low(1), cur.low(2)}:
        return None
    cur.accept("work", "make")
    number = cur.number() if cur.kind() == "num" else None
    cur.at += number is not None
    one = number is not None or cur.accept("a", "one")
    stitch = stitch_named("st", Craft.CROCHET)
    named = cur.accept("pattern", "patt", "pat") and cur.accept("st", "sts", "stitch", "stitches")
    if not (one and named) or stitch is None:
        cur.at = start
        return None
    said = cur.said(start)
    place = find_place(cur) or Place(Where.PLAIN, cur.span(start))
    words = cur.said(start) if place.text else said
    return Work(cur.span(start), words, stitch, number, place)


def _so_many(cur: Cursor, start: int) -> Place | None:
    """ "across the first 16 sts only"."""
    at = cur.at
    along = cur.accept(*ALONG)
    cur.accept(*FIRST)
    number = cur.number() if along and cur.kind() == "num" else None
    cur.at += number is not None
    bare = number is not None and cur.low(-2) in ("these", "those")
    named = cur.stitch() if number is not None else None
    noun = False if named is not None and named.length > 1 else cur.accept(*STITCH_NOUNS)
    noun = noun or (bare and cur.low() in (*STOPS, ""))
    named = None if noun else named
    if named is not None and cur.low(named.length) in (*STOPS, "", "only", "and"):
        cur.at += named.length
        noun = True
    if number is None or not noun or cur.low() in ("tog", "together", "of"):
        cur.at = at
        return None
    cur.accept("only")
    return Place(Where.NEXT, cur.span(start), number, "st", True)


def _the_rest(cur: Cursor, start: int) -> Place | None:
    """ "across remaining sts"."""
    at = cur.at
    if cur.accept(*ALONG) and cur.accept(*THE_REST) and cur.accept(*STITCH_NOUNS, "row"):
        return Place(Where.REST, cur.span(start), text=cur.said(at))
    cur.at = at
    return None


def _to_last(cur: Cursor) -> Place | None:
    """ "across to last 3 sts"."""
    at = cur.at
    place = to_last_of(cur)
    if place is None and cur.accept(*ACROSS):
        place = to_last_of(cur)
    if place is None or place.where is not Where.TO_LAST:
        cur.at = at
        return None
    return place


def _to_end(cur: Cursor, start: int) -> Place | None:
    """ "work in pattern to end", "work across" where the words end there."""
    at = cur.at
    each = cur.accept("in each", "in every", "into each", "into every", "each", "every")
    if each and cur.accept("st", "stitch", "sts", "stitches"):
        cur.accept(*AROUND)
        return Place(Where.EACH, cur.span(start), each=True, text=cur.said(at))
    cur.at = at
    length = max(cur.any_words(AROUND), cur.any_words(ROW))
    over = cur.low(length) in (*STOPS, "", "only") or cur.any_words(LEFT_OUT, length)
    if length and over:
        cur.at += length
        return Place(Where.REST, cur.span(start), text=cur.said(at))
    return None


def _slips_one(node: Node) -> bool:
    """Whether a single stitch is slipped."""
    single = isinstance(node, Work) and node.place.number.values == (1,)
    return single and isinstance(node, Work) and node.stitch.kind is Kind.SLIP


def told_to_leave(made: list[Node], craft: Craft) -> list[Node]:
    """The row with what is left at its end told to stay: "work to last 10 sts, turn", "work on
    first 12 sts only".
    """
    at = next((n for n in range(len(made) - 1, -1, -1) if isinstance(made[n], Work)), None)
    if craft is not Craft.CROCHET or at is None:
        return made
    if any(isinstance(one, Act) and one.into == ONE_SIDE for one in made):
        ended = max(n for n, one in enumerate(made) if not isinstance(one, Act | Chain))
        return [*made[: ended + 1], LeaveRest(made[ended].span, ""), *made[ended + 1 :]]
    last, behind = made[at], made[at + 1 :]
    before = [one for one in made[:at] if not isinstance(one, Act)]
    if before and isinstance(before[-1], Work) and _slips_one(last):
        # "work to within last 6 sts, sl st in next st, turn": that one ends the row.
        last = before[-1]
    if not isinstance(last, Work) or not all(isinstance(one, Act | Chain) for one in behind):
        return made
    turned = any(isinstance(one, Act) and one.deed in (Deed.TURN, Deed.FINISH) for one in behind)
    # "Sc in each sc to within last 3 sc." says so by itself.
    turned = turned or "within" in last.place.text
    to_last = last.place.where is Where.TO_LAST and turned
    only = last.place.number.values[0] > 1 and last.words.lower().endswith(" only")
    if not to_last and not only:
        return made
    return [*made[: at + 1], LeaveRest(last.span, ""), *behind]
