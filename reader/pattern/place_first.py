"""Places told before their stitches: "In each loop work 1 sc, 5 dc", "under each loop 1 dc"."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.chained_places import groups_in_chains
from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.loops_entered import skip_loop_words
from reader.pattern.place_words import CHAIN_NOUNS, RING_WORDS
from reader.pattern.places import find_place
from reader.pattern.tree import Act, Deed, Group, Node, Place, Where, Work
from reader.terms.stitches import Craft, Kind

VERBS = ("work", "make", "place", "worked", "working", "complete", "finish", "go", "goes",
         "putting", "placing", "making")
NEAR, FARTHEST = 8, 13
"""Tokens in which the verb behind a place is looked for, and farther on in the same clause."""
NOT_OURS = frozenset(
    ["times", "x", "more", "row", "round", "rnd", "rows", "rnds", "rounds", "inches", "in", "tog",
     "together"]
)  # fmt: skip
"""Behind a number, these say that it does not count the stitch before it."""
PLACES_FIRST = ("in", "into", "over", "under", "at", "on", "upon", "round", "around")
UPON = ("on", "upon", "round", "around")
"""Before a place of crochet only where it is all told by it: "On every loop: 1 sc, 5 dc"."""
OPEN_NOUNS = ("sp", "space", "loop", "lp", "corner", "corners", "sps", "spaces")


OF_CROCHET = ("single", "double", "half", "treble", "triple", "half-double", "slip")
"""Before "crochet", these make it a stitch."""
NAMES = ("each", "every", "next", "the", "same", "that", "corner", "last", "first", "all",
         "successive")


def place_first(cur: Cursor) -> bool:
    """ "In each loop work 1 sc, 5 dc", "under each loop 1 dc, 3 tr": the place before its stitches.
    """
    if cur.low(1) in ("pattern", "patt"):
        return False
    if cur.low() in UPON and not _begins(cur):
        return False
    if cur.low() == "at" and not any(cur.low(n) in OPEN_NOUNS for n in range(1, 6)):
        return False
    for ahead in range(1, FARTHEST):
        if cur.low(ahead) in VERBS and cur.low(ahead - 1) != "same":
            # "In each dc across, working last dc in turning ch" tells of one of them.
            if cur.low(-1) == "and" and _placed_behind(cur, ahead):
                return False
            return cur.low(ahead + 1) != "last" and cur.words("the last", ahead + 1) == 0
        if cur.low(ahead) == "crochet" and cur.low(ahead - 1) not in OF_CROCHET:
            return True
        chained = cur.low(ahead) in ("ch", "chain") and cur.low(ahead - 1) == ","
        if chained or cur.low(ahead) in (".", ";", "(", "["):
            break
        if ahead >= NEAR and "," in {cur.low(far) for far in range(1, ahead + 1)}:
            break
    at = cur.at
    named = cur.low(1) in NAMES
    named = named or cur.any_words(RING_WORDS, 1 + (cur.low(1) in ("a", "your", "an"))) > 0
    place = find_place(cur) if named else None
    if place is not None:
        _parted(cur, at)
    counted = cur.kind() == "num" and cur.low(1) not in NOT_OURS and cur.stitch(1) is not None
    counted = counted or (cur.kind() == "num" and cur.low(1) in ("stitches", "sts"))
    counted = counted or cur.stitch() is not None or cur.low() in VERBS or _listed(cur)
    cur.at = at
    return place is not None and counted


def _placed_behind(cur: Cursor, verb: int) -> bool:
    """Whether what is worked behind a comma has a place of its own, so that the place before is the
    stitch's before it: "sc in 2nd ch and in next 7 ch, work 3 sc in last ch".
    """
    if cur.low(verb - 1) != ",":
        return False
    for ahead in range(verb + 1, verb + 6):
        if cur.low(ahead) in STOPS or not cur.low(ahead):
            return False
        if cur.low(ahead) in ("in", "into"):
            return True
    return False


def _listed(cur: Cursor) -> bool:
    """Whether a bracket of stitches stands here, and no remark: "and in next 2 ch (made)"."""
    if cur.low() not in ("(", "["):
        return False
    return cur.kind(1) == "num" or cur.stitch(1) is not None or cur.low(1) in CHAIN_NOUNS


def each_first(cur: Cursor) -> bool:
    """ "Every stitch 1 sc", "each st: 2 sc": the places without their "in", before the stitches."""
    if cur.book.craft is not Craft.CROCHET or cur.low(-1) not in (*STOPS, "", "then", "*"):
        return False
    if cur.low() not in ("each", "every"):
        return False
    at = cur.at
    place = find_place(cur)
    cur.accept(":", "—", "-", "=", "gets")
    counted = cur.kind() == "num" and cur.low(1) not in NOT_OURS and cur.stitch(1) is not None
    cur.at = at
    return place is not None and place.where is Where.EACH and counted


def _begins(cur: Cursor) -> bool:
    """Whether a row or a pass of crochet begins here."""
    before = cur.low(-1) if cur.at else ""
    return cur.book.craft is Craft.CROCHET and before in ("", "*", ":", ".", "—")


def _is_opening(cur: Cursor, start: int) -> bool:
    """Whether the place read from there on is a loop, or chains: "each loop", "the 5 chain"."""
    nouns = {token.low for token in cur.tokens[start + 1 : cur.at]}
    return bool(nouns & {*OPEN_NOUNS, "ch", "chain", "chains", "loops"}) and not (
        nouns & {"hook", "from", "top"}
    )


def _parted(cur: Cursor, start: int) -> None:
    """Takes the mark between a place and what goes into it: "In each loop: 3 dc, ch 1, 3 dc"."""
    cur.accept("around", "across")
    cur.accept(":", "—", "-", "=")
    before = cur.tokens[start - 1].low if start else ""
    if cur.book.craft is Craft.CROCHET and before in ("", "*", ":") and _is_opening(cur, start):
        # "Into each 5 ch, 1 sc, 5 dc, 1 sc.": nothing stands before, whose place it could be.
        cur.accept(",")
    if cur.book.craft is Craft.KNITTING and before in ("", ",", ";", ".", "*", "then", "and"):
        # "In next st, k1, yo, k1": behind a stitch it would be that stitch's place.
        cur.accept(",")


def entered(cur: Cursor) -> bool:
    """Takes "in front loop of st," behind "working": how the stitches to come are entered; False
    (nothing taken) where a place follows.
    """
    at = cur.at
    if skip_loop_words(cur) and cur.low() in (",", ";", ":"):
        return True
    cur.at = at
    if cur.low() in OVER and find_place(cur) is not None and cur.low() == "," and _into_below(cur):
        return True
    cur.at = at
    return False


OVER = ("over", "around", "across", "behind", "before")
BELOW = frozenset(["skipped", "missed", "below", "starting", "foundation", "previous"])
FAR = 14
"""Tokens of the instruction behind "working over ch 1" that may say where it goes."""


def _into_below(cur: Cursor) -> bool:
    """Whether the next instruction goes into a stitch farther down: "working over ch 1, sc in
    skipped st", so that what it goes over is no place of its own.
    """
    ahead = 1 + (cur.low(1) == "long") + (cur.kind(1) == "num")
    found = cur.stitch(ahead)
    if found is None or cur.low(ahead + found.length) not in ("in", "into", "around"):
        return False
    lows = [cur.low(ahead + far) for far in range(FAR)]
    clause = lows[: lows.index(",")] if "," in lows else lows
    return bool(BELOW & set(clause))


def _in_bracket(cur: Cursor) -> tuple[Node, ...]:
    """The instructions of a bracket that is all that goes into the place, "(ch 3, 2 dc, ch 2, 3
    dc), ch 1"; nothing where none stands here, or is worked several times.
    """
    from reader.pattern.brackets import closing
    from reader.pattern.instructions import read_tokens

    close = closing(cur) - cur.at if cur.low() in ("(", "[") else -1
    if close < 0 or cur.low(close + 1) not in (*STOPS, "") or cur.kind(close + 2) == "times":
        return ()
    if cur.kind(close + 2) == "num" and cur.low(close + 3) in ("times", "time", "more"):
        return ()
    body = read_tokens(cur.tokens[cur.at + 1 : cur.at + close], cur.text, cur.book)
    cur.at += close + 1
    return body


NAME_MADE = re.compile(
    r"\(?(?:an? |1 |first )?(?P<name>[a-z][a-z -]*?)(?: st| stitch)? (?:made|completed)\)?",
    re.IGNORECASE,
)


def _name_made(cur: Cursor, body: tuple[Node, ...]) -> str:
    """What the group is called behind its stitches, "(shell made)"; "" where nothing is said."""
    last = body[-1]
    found = NAME_MADE.fullmatch(last.words) if isinstance(last, Act) else None
    special = cur.book.specials.get(found["name"].lower()) if found else None
    stitch = special.stitch if special is not None else None
    return stitch.name if stitch is not None and stitch.kind is Kind.GROUP else ""


def inverted(cur: Cursor, start: int) -> Node | None:
    """A place and the stitches told behind it, as one group; a remark where only loops are named;
    None (nothing taken) where no place stands here.
    """
    from reader.pattern.instructions import read_group

    place = find_place(cur)
    if place is None:
        cur.at = start
        return None
    if place.where is Where.PLAIN:
        # "working in back loops": how the stitches to come are entered, and no place for them.
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    place = _all_of_them(cur, place)
    _parted(cur, start)
    cur.accept(*VERBS)
    body = (() if place.each else _in_bracket(cur)) or read_group(cur)
    if all(isinstance(one, Act) for one in body):
        # "and in each ch across (skipped ch do not count)": a place, and a remark.
        cur.at = start
        return None
    if cur.book.craft is Craft.CROCHET:
        works = [one for one in body if isinstance(one, Work)]
        place = groups_in_chains(place, sum(one.number.values[0] for one in works if one.number))
    only = body[0] if len(body) == 1 else None
    if place.where is Where.RING and isinstance(only, Work) and only.between:
        return replace(only, span=cur.span(start), words=cur.said(start), place=place)
    return Group(cur.span(start), cur.said(start), body, place, name=_name_made(cur, body))


def _all_of_them(cur: Cursor, place: Place) -> Place:
    """ "In same sp and in each sp around": all of them, of which the round begins in the first."""
    at = cur.at
    if place.where is Where.SAME and cur.accept("and in", "and"):
        more = find_place(cur) if cur.low() in ("each", "every") else None
        if more is not None and more.where is Where.EACH and more.noun == place.noun:
            return more
    cur.at = at
    return place
