"""Where stitches go: "in next 3 sts", "in each ch across", "in corner sp", "to last 2 sts" -> Place."""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import ONE, Num, Place, Where

PREPOSITIONS = frozenset(
    {"in", "into", "over", "around", "under", "on", "through", "across", "to", "up", "along", "between",
     "within", "behind", "from", "at", "until", "inside", "among", "round", "bet", "til", "till", "working"}
)  # fmt: skip
STITCH_NOUNS = frozenset(
    {"st", "sts", "stitch", "stitches", "stich", "stiches", "s", "stitiches", "stitch(es"}
)
SPACE_NOUNS = frozenset(
    {"sp", "sps", "space", "spaces", "loop", "loops", "lp", "lps", "corner", "corners", "gap", "gaps",
     "hole", "holes", "arch", "arches", "eyelet", "eyelets", "mesh", "ls"}
)  # fmt: skip
CHAIN_NOUNS = frozenset({"ch", "chs", "chain", "chains"})
GROUP_NOUNS = frozenset(
    {"group", "groups", "petal", "petals", "scallop", "scallops", "grp", "grps", "block", "blocks"}
)
RING_WORDS = (
    "magic ring", "magic circle", "magic loop", "mr", "adjustable ring", "ring", "the ring", "circle",
    "center of ring", "centre of ring", "mc", "adjustable loop", "sliding loop", "beginning ring", "center ring",
)  # fmt: skip
AROUND = (
    "all the way around", "all the way across", "all around", "all round", "all across", "around", "across",
    "to the end of the row", "to the end of the round", "to the end of row", "to end of row",
    "to end of round", "to end of rnd", "to the end of rnd", "to the end", "to end", "even", "evenly across", "evenly around",
    "evenly", "straight", "plain", "every row", "in every round", "each row", "every rnd", "every round",
    "in each row", "in every row", "to the other end", "until end", "till end", "until the end", "till the end",
    "until end of row", "till end of row", "round",
)  # fmt: skip
ROW_WORDS = frozenset(
    {
        "row",
        "rows",
        "rnd",
        "rnds",
        "round",
        "rounds",
        "the",
        "circle",
        "needle",
        "of",
        "entire",
        "whole",
    }
)
LOOP_ONLY = (
    "in both loops", "in back loops only", "in front loops only", "in back loop only", "in front loop only",
    "in back loops", "in front loops", "in back loop", "in front loop", "in back lp only", "in front lp only",
    "in back lp", "in front lp", "through both loops", "through back loop only", "through front loop only",
    "through back loop", "through the back loop", "tbl", "in blo", "in flo", "blo", "flo", "in bl", "in fl", "in the blo", "in the flo",
    "in the back loop only", "in the front loop only", "in the back loop", "in the front loop",
    "in the back loops only", "in the front loops only", "in back loops only of", "into back loop",
    "into the back loop", "in the back loops", "in the front loops", "into the front loop", "in 3rd loop", "knitwise",
    "purlwise", "kwise", "pwise", "in back vein", "in back vein of stitch", "wyif", "wyib",
    "with yarn in back", "with yarn in front", "as if to p", "as if to k", "as if to purl", "as if to knit",
    "loosely", "in back lps only", "in front lps only", "in the third loop", "in third loop",
)  # fmt: skip
AFTER = frozenset(
    {"of", "on", "at", "from", "along", "around", "across", "below", "made", "the", "each", "side", "sides", "end",
     "ends", "row", "rnd", "round", "ring", "hook", "ch", "chain", "chains", "previous", "prev", "last", "both",
     "working", "worked", "left", "right", "rem", "remaining", "unworked", "base", "beg", "beginning", "starting",
     "foundation", "turning", "tch", "opposite", "other", "same", "side", "second", "edge", "center", "centre",
     "needle", "holder", "only", "sp", "space", "st", "sts", "stitch", "stitches", "all", "following", "back", "front",
     "loop", "loops", "shell", "petals", "petal", "group", "motif", "to", "end", "marker", "top", "in", "where", "were", "as", "first",
     "your", "way", "row", "down", "ea", "rnds", "rows", "up", "post", "that", "piece", "now", "join", "joining", "corner", "strip"}
)  # fmt: skip


def skip_loop_words(cur: Cursor) -> bool:
    """Takes words that say how the stitch is entered, which change no count."""
    took = False
    while True:
        length = cur.any_words(LOOP_ONLY)
        if not length:
            return took
        cur.at += length
        if cur.low() == "only":
            cur.at += 1
        took = True
        if cur.low() == "of" and cur.low(1) not in ("ch",):
            cur.at += 1
            if cur.kind() in ("num", "ord") or cur.low() in (
                "next",
                "each",
                "first",
                "last",
                "the",
                "all",
            ):
                return True


def find_place(cur: Cursor) -> Place | None:
    """The place that stands here, None (and nothing taken) when there is none."""
    start = cur.at
    loops = skip_loop_words(cur)
    place = _place(cur, start, loops)
    if place is None:
        if loops:
            return Place(Where.PLAIN, cur.span(start), text=cur.said(start))
        cur.at = start
        return None
    skip_loop_words(cur)
    return replace(place, span=cur.span(start), text=cur.said(start))


def _place(cur: Cursor, start: int, bare: bool) -> Place | None:
    here = cur.span(start)
    ring = _ring(cur)
    if ring:
        return Place(Where.RING, here, noun="ring")
    to_last = _to_last(cur)
    if to_last is not None:
        return to_last
    if _around_alone(cur):
        return Place(Where.REST, here)
    saw = bare or _prepositions(cur)
    cur.accept("only")
    if cur.accept(
        "post of",
        "posts of",
        "the post of",
        "stem of",
        "top of",
        "the top of",
        "tops of",
        "base of",
        "the base of",
        "bottom of",
    ):
        saw = True
    if cur.low() in ("each", "every", "ea") and not cur.words("each time"):
        return _each(cur, here)
    if cur.low() in (
        "next",
        "following",
        "nxt",
        "first",
        "last",
        "same",
        "any",
        "remaining",
        "rem",
        "all",
        "both",
        "beg",
        "foll",
    ) or (saw and (cur.kind() in ("ord", "num") or _noun(cur, peek=True))):
        return _numbered(cur, here)
    if saw and cur.low() in ("the", "a", "that", "this", "these", "those", "it"):
        cur.at += 1
        return _place(cur, start, True)
    return None


def _prepositions(cur: Cursor) -> bool:
    took = False
    while cur.low() in PREPOSITIONS or (took and cur.low() in ("the", "a", "an", "of")):
        if (
            cur.low() == "to"
            and not took
            and cur.low(1) in ("turn", "form", "join", "close", "make")
        ):
            return took
        cur.at += 1
        took = True
    return took


def _ring(cur: Cursor) -> int:
    at = cur.at
    if cur.low() in ("in", "into", "inside", "to", "onto", "around") or cur.words("in the"):
        cur.at += 1
        if cur.low() in ("the", "a", "an", "your"):
            cur.at += 1
        length = cur.any_words(RING_WORDS)
        if length:
            cur.at += length
            return length
    cur.at = at
    return 0


def _around_alone(cur: Cursor) -> bool:
    length = cur.any_words(AROUND)
    if not length:
        return False
    after = cur.peek(length)
    nexts = cur.low(length)
    if nexts in ("next", "first", "last", "each", "post", "same", "every", "1st") or after.kind in (
        "num",
        "ord",
    ):
        return False
    if nexts == "the" and cur.low(length + 1) in ("next", "post", "last", "first", "stem"):
        return False
    if cur.low() in ("even", "plain", "straight", "round") and nexts in ("row", "rows", "sts"):
        return False
    stitch = cur.stitch(length)
    if (
        stitch is not None
        and cur.low() == "around"
        and after.spaced
        and cur.low(length) not in ("k", "p")
    ):
        return False
    cur.at += length
    while cur.low() in ROW_WORDS and cur.low(1) not in ("next",):
        cur.at += 1
    return True


TO_LAST = (
    "to within the last", "to within last", "to the last", "to last", "until the last", "until last", "up to last",
    "across to last", "around to last", "across to within last", "till last", "up to the last", "to within",
    "across to the last", "around to the last", "across to within the last", "even to last", "until within last",
)  # fmt: skip


def _to_last(cur: Cursor) -> Place | None:
    """ "to last 2 sts", "to 3 sts before end", "until 2 sts remain", "to marker"."""
    start = cur.at
    length = cur.any_words(TO_LAST)
    if length:
        cur.at += length
        number = cur.number()
        if number is not None:
            cur.at += 1
        noun = _noun(cur) or "st"
        cur.accept(
            "of row",
            "of rnd",
            "of round",
            "from end",
            "of the row",
            "of the round",
            "of needle",
            "of the end",
        )
        return Place(Where.TO_LAST, cur.span(start), number or ONE, noun)
    if cur.low() in ("to", "until", "till") or cur.words("across to"):
        cur.at += 1 if cur.low() != "across" else 2
        number = cur.number()
        if number is not None:
            cur.at += 1
            noun = _noun(cur) or "st"
            if cur.accept(
                "before end",
                "from end",
                "remain",
                "before the end",
                "from the end",
                "rem",
                "are left",
                "left",
                "remaining",
                "before end of row",
                "remain unworked",
            ):
                return Place(Where.TO_LAST, cur.span(start), number, noun)
            if cur.accept("before", "past", "after"):
                _marker(cur)
                return Place(Where.UNUSED, cur.span(start), number, "marker")
        elif _marker(cur):
            return Place(Where.UNUSED, cur.span(start), Num((0,)), "marker")
    cur.at = start
    return None


def _marker(cur: Cursor) -> bool:
    at = cur.at
    cur.accept("the")
    cur.accept("next", "first", "1st", "2nd", "second", "last", "beg", "bor", "side")
    if cur.accept(
        "marker",
        "m",
        "markers",
        "mkr",
        "mrk",
        "bor",
        "center st",
        "centre st",
        "marked st",
        "gap",
        "turn",
    ):
        return True
    cur.at = at
    return False


def _each(cur: Cursor, here: object) -> Place:
    start = cur.at
    cur.at += 1
    place = Place(Where.EACH, cur.span(start), each=True)
    if cur.low() == "of":
        cur.at += 1
        cur.accept("the", "these")
        found = _numbered(cur, here, each=True)
        return found if found is not None else place
    cur.accept("of", "the")
    remaining = cur.accept("remaining", "rem", "following", "unworked", "other")
    if cur.kind() == "ord" and cur.low(1) in STITCH_NOUNS:
        nth = cur.peek().value
        cur.at += 2
        _after(cur)
        return replace(place, nth=nth)
    noun, chain = _noun_chain(cur)
    nouns = [noun or "st"]
    while cur.low() in ("and", "&", "or"):
        skip = 2 if cur.low(1) in ("each", "in") else 1
        if cur.words("in each", 1):
            skip = 3
        at = cur.at
        cur.at += skip
        more, more_chain = _noun_chain(cur)
        if not more or (cur.low() in ("in",) and more not in ("ch", "sp", "st")):
            cur.at = at
            break
        nouns.append(more)
        chain = chain or more_chain
    sides = _after(cur)
    return replace(
        place, noun=nouns[0], among=tuple(nouns[1:]), chain=chain, remaining=remaining, sides=sides
    )


def _numbered(cur: Cursor, here: object, each: bool = False) -> Place | None:
    """ "next 3 sts", "last st", "3rd ch from hook", "same space", "8 stitches following"."""
    start = cur.at
    where = Where.NEXT
    nth = 0
    determiner = ""
    number: Num | None = None
    while not cur.done():
        low = cur.low()
        if low in ("next", "following", "nxt", "foll", "remaining", "rem", "unworked"):
            determiner = determiner or low
            if low in ("remaining", "rem"):
                where = Where.EACH
        elif low in ("same", "any", "all", "both", "first", "last", "beg"):
            determiner = low
        elif low in (
            "the",
            "of",
            "very",
            "exact",
            "center",
            "centre",
            "previous",
            "prev",
            "following",
            "skipped",
            "worked",
            "beginning",
            "turning",
            "end",
            "opposite",
            "ea",
            "middle",
            "indicated",
            "marked",
            "foundation",
            "starting",
            "back",
            "front",
            "side",
            "single",
        ):
            pass
        elif cur.kind() == "ord" and number is None:
            nth = cur.peek().value
            if nth == 1:
                determiner = determiner or "first"
        elif cur.kind() in ("num", "times") and number is None and not _counts_stitches(cur):
            number = cur.number()
        else:
            break
        cur.at += 1
    noun, chain = _noun_chain(cur)
    if not noun and not determiner and not nth and not (each and number is not None):
        cur.at = start
        return None
    return _finish(cur, start, where, nth, determiner, number, noun, chain, each)


def _counts_stitches(cur: Cursor) -> bool:
    """A number here multiplies a stitch to come, so it belongs to the next instruction."""
    found = cur.stitch(1)
    if found is None or cur.low(1) in STITCH_NOUNS | CHAIN_NOUNS:
        return False
    after = cur.low(1 + found.length)
    return after in ("in", "into", "over", "around") and cur.low(-1) not in (
        "next",
        "of",
        "the",
        "first",
        "last",
        "each",
    )


def _finish(
    cur: Cursor,
    start: int,
    where: Where,
    nth: int,
    determiner: str,
    number: Num | None,
    noun: str,
    chain: int,
    each: bool,
) -> Place:
    span = cur.span(start)
    sides = _after(cur)
    said = cur.said(start).lower()
    if nth and "hook" in said:
        return Place(Where.CHAIN, span, noun="ch", nth=nth)
    if determiner == "same" or "at base of" in said:
        return Place(Where.SAME, span, number or ONE, noun or "st", text=said)
    if (
        noun in ("tch",)
        or " of ch" in said
        or "turning ch" in said
        or "beg ch" in said
        or "beginning ch" in said
    ):
        kind = "tch" if noun in ("st", "ch", "tch", "") else noun
        return Place(Where.NEXT, span, number or ONE, kind, each, nth)
    if determiner == "all" and number is None:
        where = Where.EACH
    if where is Where.EACH and number is not None:
        where = Where.NEXT
    if determiner == "any":
        return Place(Where.ONE_PLACE, span, ONE, noun or "st")
    if determiner == "both":
        number = Num((2,))
    if determiner in ("first", "last"):
        kind = Where.FIRST if determiner == "first" else Where.LAST
        where = where if where is Where.EACH else kind
    plural = each or number is not None
    return Place(where, span, number or ONE, noun or "st", plural, nth, sides, chain)


def _noun_chain(cur: Cursor) -> tuple[str, int]:
    """The noun here and, for "ch-3 sp", the 3."""
    if (
        cur.low() in CHAIN_NOUNS
        and cur.kind(1) == "num"
        and (cur.low(2) in SPACE_NOUNS or cur.peek(1).hyphen or cur.low(2) in ("corner",))
    ):
        chain = cur.peek(1).value
        at = cur.at
        cur.at += 2
        noun = _noun(cur)
        if noun:
            return "sp", chain
        if cur.tokens[at + 1].hyphen:
            return "sp", chain
        cur.at = at
    return _noun(cur), 0


def _noun(cur: Cursor, peek: bool = False) -> str:
    """The noun that stands here: "st", "sp", "ch", "group", or a stitch name; "" when none does."""
    low = cur.low()
    took, noun = 0, ""
    adjectives = 0
    while cur.low(adjectives) in (
        "corner",
        "center",
        "centre",
        "new",
        "large",
        "turning",
        "ch",
        "end",
        "unworked",
        "marked",
        "single",
        "working",
    ) and (cur.low(adjectives + 1) in SPACE_NOUNS | STITCH_NOUNS | CHAIN_NOUNS):
        adjectives += 1
    found = cur.stitch(adjectives)
    low = cur.low(adjectives)
    if found is not None and not (low in SPACE_NOUNS and found.length == 1):
        noun, took = found.stitch.name, found.length
        if cur.low(adjectives + took) in SPACE_NOUNS:
            noun, took = "sp", took + 1
        elif cur.low(adjectives + took) in STITCH_NOUNS:
            took += 1
    elif low in STITCH_NOUNS:
        noun, took = "st", 1
        if low.startswith("st") and cur.words("( es )", adjectives + 1):
            took = 4
        elif cur.words("( s )", adjectives + 1):
            took = 4
    elif low in SPACE_NOUNS:
        noun, took = "sp", 1
        if cur.low(adjectives + 1) in SPACE_NOUNS:
            took = 2
    elif low in CHAIN_NOUNS:
        noun, took = "ch", 1
        if cur.low(adjectives + 1) in STITCH_NOUNS:
            took = 2
        elif cur.low(adjectives + 1) in SPACE_NOUNS:
            noun, took = "sp", 2
    elif low in GROUP_NOUNS:
        noun, took = "group", 1
    elif low in ("tch", "t-ch"):
        noun, took = "tch", 1
    if noun and not peek:
        cur.at += adjectives + took
    return noun


def _after(cur: Cursor) -> int:
    """Takes the words that follow a noun ("of ch", "on each side", "around"); how many sides they tell of."""
    start = cur.at
    sides = 1
    while not cur.done():
        low = cur.low()
        if low in STOPS or cur.kind() == "stars":
            break
        if low in ("each", "both", "either") and cur.low(1) in (
            "side",
            "sides",
            "end",
            "ends",
            "edge",
        ):
            sides = 2
            cur.at += 2
            continue
        if low in ("in", "to", "over", "on") and (
            cur.low(1) in ("next", "same", "each") and cur.low(2) not in ("side", "end")
        ):
            break
        if low in AFTER and not (
            low == "working"
            and cur.low(1) in ("in", "on", "along", "across", "into", "down", "around")
        ):
            cur.at += 1
            continue
        if (
            cur.kind() in ("ord", "num")
            and cur.low(-1) in ("of", "the", "in", "from")
            and not _counts_stitches(cur)
        ):
            cur.at += 1
            continue
        found = cur.stitch()
        if (
            found is not None
            and cur.at > start
            and cur.low(-1)
            in (
                "of",
                "the",
                "each",
                "last",
                "previous",
                "prev",
                "first",
                "same",
                "these",
                "front",
                "corner",
            )
            or (found is not None and cur.kind(-1) in ("ord", "num") and cur.at - start >= 2)
        ):
            assert found is not None
            cur.at += found.length
            continue
        break
    while cur.at > start and cur.low(-1) in (
        "the",
        "to",
        "in",
        "at",
        "on",
        "each",
        "all",
        "now",
        "join",
        "joining",
        "working",
        "as",
    ):
        cur.at -= 1
    return sides
