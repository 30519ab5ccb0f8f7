"""Chains and skips: "ch 3", "sk next 2 sts" -> Chain, Skip."""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.phrasing import take_phrase
from reader.pattern.place_nouns import find_noun_chain, take_after
from reader.pattern.place_words import SPACE_NOUNS, STITCH_NOUNS
from reader.pattern.places import find_place
from reader.pattern.tree import ONE, Act, Chain, Deed, Node, Num, Place, Skip, Start, Where
from reader.terms.stitches import Craft, Kind

TIGHTENS = frozenset(["tighten", "fasten", "close", "secure", "lock", "complete"])

UNDER_CHAIN = (
    "at base of", "at the base of", "at foot of", "at the foot of", "below", "directly below",
    "under", "underneath", "beneath", "at bottom of", "at the bottom of",
)  # fmt: skip
"""Behind the first stitch that is missed: "miss st at base of ch"."""


SKIPS = frozenset(["sk", "skip", "miss", "skipping", "missing", "skp", "omit", "omitting"])
OVER = ("pass over", "passing over", "jump over", "hop over", "step over")


def _verb(cur: Cursor) -> int:
    """How many tokens "skip", "pass over" take here; 0 where neither stands."""
    knits = cur.book.craft is Craft.KNITTING
    if cur.low() in SKIPS:
        return 0 if cur.low() == "skp" and knits else 1
    return 0 if knits else cur.any_words(OVER)


def find_skip(cur: Cursor) -> Node | None:
    """ "sk next 2 sts", "miss 1 dc"."""
    start = cur.at
    verb = _verb(cur)
    if not verb:
        return _from_chain(cur, start)
    if cur.low(-1) in ("not", "without", "never"):
        cur.at += 1
        take_phrase(cur)
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    aside = _spaces_aside(cur, start)
    if aside is not None:
        return aside
    cur.at += verb
    cur.accept("over")
    named = cur.stitch(1) is not None or cur.low(1) in STITCH_NOUNS | SPACE_NOUNS
    cur.accept("the", *(("a", "an") if named else ()))
    rest = _rest_of_group(cur, start)
    if rest is not None:
        return rest
    slip = cur.stitch(cur.low() == "joining")
    if slip is not None and slip.stitch.kind is Kind.SLIP:
        # A slip stitch of the join is no stitch of the row.
        cur.at += slip.length + (cur.low() == "joining")
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    place = _joining(cur, start) or _nth(cur) or find_place(cur)
    if place is None:
        number = cur.number()
        if number is None and cur.low() in ("ch", "chain") and cur.low(2) in SPACE_NOUNS:
            noun, chain = find_noun_chain(cur)
            place = Place(Where.NEXT, cur.span(start), noun=noun, chain=chain)
            return Skip(cur.span(start), cur.said(start), place)
        if number is None:
            place = _untold(cur, start)
            return Skip(cur.span(start), cur.said(start), place)
        cur.at += 1
        place = find_place(cur) if cur.low() in ("st", "sts", "stitches") else None
        noun = "st" if _comes_next(cur) else _bare_noun(cur)
        take_after(cur)
        place = Place(Where.NEXT, cur.span(start), number, noun)
    return _with_its_chain(cur, start, place)


def _with_its_chain(cur: Cursor, start: int, place: Place) -> Skip:
    """What is skipped, and the chain that is passed with it taken: "skip first dc and ch"."""
    at = cur.at
    if cur.accept("and"):
        cur.accept("the", "next", "the next", "following", "first", "1st")
        if cur.accept("ch", "chain", "sp", "space", "loop", "lp") and cur.low() in (*STOPS, ""):
            at = cur.at
    cur.at = at
    return Skip(cur.span(start), cur.said(start), place)


def _from_chain(cur: Cursor, start: int) -> Node | None:
    """ "starting in 2nd ch from hook, work 1 sc in each ch": the chains before it are passed."""
    at = cur.at
    if not cur.accept("starting", "beginning", "start", "begin", "beg", "commencing", "commence"):
        return None
    cur.accept("in the", "with the", "at the", "from the", "in", "with", "at", "from")
    nth = cur.peek().value if cur.kind() == "ord" else 0
    chain = cur.low(1) in ("ch", "chain", "st", "stitch", "loop")
    short = chain and cur.low(1) in ("ch", "chain") and cur.low(2) in (",", ";", ".", ":", "")
    if nth > 1 and chain and (short or cur.low(2) in ("from", "of")):
        while not cur.done() and cur.low(-1) != "hook" and cur.low() not in (",", ";", "."):
            cur.at += 1
        cur.accept("hook")
        if cur.low(-1) == "hook" or short:
            place = Place(Where.CHAIN, cur.span(start), noun="ch", nth=nth - 1)
            return Skip(cur.span(start), cur.said(start), place)
    cur.at = at
    return None


OF_IT = (
    "rest of", "rest of the", "remainder of", "remainder of the", "remaining sts of",
    "remaining sts of the", "rem sts of", "other half of", "other half of the", "rest of next",
    "remaining dc of", "remaining dc of the", "rem dc of", "rest of same", "rest of that",
)  # fmt: skip


def _rest_of_group(cur: Cursor, start: int) -> Node | None:
    """ "sk rest of shell": what lies behind its middle, as the pattern makes it."""
    at = cur.at
    found = cur.stitch() if cur.accept(*OF_IT) else None
    if found is None or found.stitch.kind is not Kind.GROUP or found.stitch.makes < 2:
        cur.at = at
        return None
    cur.at += found.length
    half = Num((found.stitch.makes // 2,))
    return Skip(cur.span(start), cur.said(start), Place(Where.NEXT, cur.span(start), half))


def _untold(cur: Cursor, start: int) -> Place:
    """ "skip st", "miss st at base of ch": one stitch, though no number says so."""
    noun = "st" if _comes_next(cur) else _bare_noun(cur)
    cur.accept("stitch", "st")
    under = cur.any_words(UNDER_CHAIN) > 0
    if under:
        take_phrase(cur)
    return Place(Where.FIRST if under else Where.NEXT, cur.span(start), noun=noun)


def _spaces_aside(cur: Cursor, start: int) -> Node | None:
    """ "sc in each dc around, skipping ch-2 sps": what is passed by on the way, no place."""
    if cur.low() not in ("skipping", "missing", "skip", "miss") or cur.low(-1) not in (",", "("):
        return None
    at = cur.at
    cur.at += 1
    cur.accept("all", "each", "the", "all the", "over", "over the")
    if cur.low() in ("ch", "chain", "corner"):
        cur.at += 2 if cur.kind(1) == "num" else 1
    if cur.low() in ("sps", "spaces", "loops", "lps", "chs", "chains"):
        cur.at += 1
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    cur.at = at
    return None


def _comes_next(cur: Cursor) -> bool:
    """Whether the stitch named here is the next instruction: "miss 1 sc in next"."""
    found = cur.stitch()
    if found is None or cur.low(found.length) not in ("in", "into", "on"):
        return False
    after = found.length + 1 + (cur.low(found.length + 1) == "the")
    return cur.low(after) in ("next", "following", "foll") or cur.kind(after) == "ord"


def _joining(cur: Cursor, start: int) -> Place | None:
    """ "the joining chain": what the round was joined to, where its first chain stands."""
    if not cur.accept("joining"):
        return None
    return Place(Where.FIRST, cur.span(start), noun=_bare_noun(cur), text=cur.said(start))


def _first_of(cur: Cursor) -> Place | None:
    """ "first 3 dc": so many stitches from the first on."""
    if cur.low() not in ("first", "1st") or cur.kind(1) != "num" or _comes_behind(cur):
        return None
    start, number = cur.at, cur.number(1)
    cur.at += 2
    noun = _bare_noun(cur)
    take_after(cur)
    return Place(Where.FIRST, cur.span(start), number or ONE, noun, text=cur.said(start))


def _comes_behind(cur: Cursor) -> bool:
    """Whether the number behind "first" counts the stitches to come: "skip first, 3 dc in next"."""
    found = cur.stitch(2)
    return found is not None and cur.low(2 + found.length) in ("in", "into")


def _nth(cur: Cursor) -> Place | None:
    """ "1st st": one stitch, the first; "2nd dc" likewise one."""
    if cur.kind() != "ord":
        return _first_of(cur)
    some = _first_of(cur)
    if some is not None:
        return some
    start, first = cur.at, cur.peek().value == 1
    cur.at += 1
    noun = _bare_noun(cur)
    take_after(cur)
    text = cur.said(start)
    return Place(Where.FIRST if first else Where.NEXT, cur.span(start), noun=noun, text=text)


def find_chain(cur: Cursor) -> Node | None:
    """ "ch 3", "3 ch", "chain one", "make a chain of 12 stitches"."""
    start = cur.at
    if cur.book.craft is Craft.KNITTING:
        return None
    begins = cur.low() in ("beg", "beginning", "starting") and cur.low(1) in ("ch", "chain")
    # "(beg ch-3, 2 dc)": the chain that the round begins with.
    cur.at += begins and cur.kind(2) == "num"
    if cur.low() in ("ch", "chain", "chs", "chains", "chn") and cur.kind(1) == "num":
        number = cur.number(1)
        cur.at += 2
    elif cur.kind() == "num" and cur.low(1) in ("ch", "chain", "chs", "chains"):
        number = cur.number()
        cur.at += 2
    elif cur.low() in ("ch", "chain") and cur.low(1) in ("of", "about") and cur.kind(2) == "num":
        number = cur.number(2)
        cur.at += 3
    elif cur.low() in ("ch", "chain") and cur.low(1) in (",", ";", "and", "turn"):
        number = ONE
        cur.at += 1
    else:
        return None
    if number is not None and cur.low() in ("+", "plus") and cur.kind(1) == "num":
        more = cur.number(1) if cur.stitch(2) is None else None
        if more is not None:
            number = Num(tuple(n + more.at(at) for at, n in enumerate(number.values)))
            cur.at += 2
    cur.accept("stitches", "sts", "st", "chains", "loosely")
    if cur.accept(*LENGTHS):
        # "Make a chain 12 inches long": how many, only the gauge tells.
        cur.accept("long", "in length")
        return Start(cur.span(start), cur.said(start), "chain", Num((0,)))
    if _stands_for(cur):
        return Chain(cur.span(start), cur.said(start), number or ONE, counts=True)
    if cur.low() == "to" and cur.low(1) in TIGHTENS:
        # "ch 1 to tighten st": a part of the popcorn just made.
        take_phrase(cur)
        return Act(cur.span(start), cur.said(start), Deed.NOTE)
    return Chain(cur.span(start), cur.said(start), number or ONE)


LENGTHS = ("inches", "inch", "ins", "in long", "yards", "yard", "cm", "metres", "meters", "mm")


def _stands_for(cur: Cursor) -> bool:
    """Takes "for a treble", "for first dc" behind a chain: the stitch that it stands for."""
    at = cur.at
    if cur.accept("for", "as", "in place of", "instead of", "=", "equals"):
        cur.accept("a", "an", "the", "your", "1", "one")
        cur.accept("first", "1st")
        found = cur.stitch()
        if found is not None:
            cur.at += found.length
            if cur.low() in (*STOPS, ""):
                return True
    cur.at = at
    return False


def _bare_noun(cur: Cursor) -> str:
    found = cur.stitch()
    if found is not None and found.stitch.kind is not Kind.SLIP:
        cur.at += found.length
        return found.stitch.name
    for noun, words in (
        ("sp", ("sp", "sps", "space", "spaces", "loop", "loops")),
        ("ch", ("ch", "chs", "chain", "chains")),
        ("st", ("st", "sts", "stitch", "stitches")),
    ):
        if cur.low() in words:
            cur.at += 1
            return noun
    return "st"
