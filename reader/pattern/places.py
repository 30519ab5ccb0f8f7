"""Where stitches go: "in next 3 sts", "in each ch across", "in corner sp", "to last 2 sts" ->
Place.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.along_edge import in_row_ends, stitches_left_free
from reader.pattern.around import around_alone
from reader.pattern.between import behind_space, between_all, between_groups, past_edge_stitches
from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.each_needle import find_each_needle
from reader.pattern.each_of import (
    AHEAD,
    INTO,
    each_of_several,
    first_and_each,
    up_to_corner,
    up_to_opening,
)
from reader.pattern.loops_entered import skip_loop_words
from reader.pattern.middles import GROUPS, chain_loop, middle_of
from reader.pattern.needle_moves import find_move
from reader.pattern.one_of_them import one_of_them
from reader.pattern.place_nouns import (
    every_nth_opening,
    every_other,
    find_noun,
    find_noun_chain,
    how_manieth,
    nth_of_hook,
    of_row_below,
    take_after,
)
from reader.pattern.place_words import (
    AROUND,
    CHAIN_NOUNS,
    DETERMINERS,
    PREPOSITIONS,
    RING_WORDS,
    SPACE_NOUNS,
    STITCH_NOUNS,
    TOPS,
)
from reader.pattern.said_before import Said, after_it, goes_on
from reader.pattern.same_place import same_as_what, that_holds, that_one, where_joined
from reader.pattern.tree import ONE, Num, Place, Where
from reader.pattern.up_to import of_the_group, to_last_of
from reader.terms.stitches import Craft


def find_place(cur: Cursor) -> Place | None:
    """The place that stands here, None (and nothing taken) when there is none."""
    start = cur.at
    if find_each_needle(cur) is not None or find_move(cur, start) is not None:
        cur.at = start
        return None
    loops = skip_loop_words(cur)
    place = in_row_ends(cur) or where_joined(cur, start) or between_all(cur, start)
    place = place or stitches_left_free(cur) or _place(cur, start, loops)
    if place is None:
        if loops:
            return Place(Where.PLAIN, cur.span(start), text=cur.said(start))
        cur.at = start
        return None
    if place.noun == "sp":
        between_groups(cur)
    skip_loop_words(cur)
    if CORNERS.fullmatch(cur.said(start).lower()):
        place = Place(Where.EACH, place.span, noun="corner", each=True)
    return replace(place, span=cur.span(start), text=cur.said(start))


CORNERS = re.compile(r"in(?:to)? (?:all )?(?:the )?(?:4 |four )?corners?(?<=s)(?: sps?| spaces)?")
"""All of them: "(2 dc, ch 2, 2 dc) in corners"."""


def _place(cur: Cursor, start: int, bare: bool) -> Place | None:
    here = cur.span(start)
    # "sl st back to center of shell": the way, and no whole row.
    cur.at += cur.low() == "back" and cur.low(1) in ("to", "into") and cur.low(2) != "end"
    if _ring(cur):
        return Place(Where.RING, here, noun="ring")
    to_last = to_last_of(cur)
    if to_last is not None:
        return to_last
    if around_alone(cur):
        return Place(Where.REST, here)
    saw = bare or _prepositions(cur)
    past_edge_stitches(cur)
    if (one := one_of_them(cur) if saw else None) is not None:
        return one
    cur.accept("only", "very")
    middle = cur.low() in ("center", "centre", "middle")
    if cur.accept(*TOPS) or middle_of(cur):
        saw = True
        loop = chain_loop(cur) if middle else None
        if loop is not None:
            return loop
    if _of_each(cur) or (saw and first_and_each(cur)):
        return _each(cur, here)
    if saw and (held := that_holds(cur, start)) is not None:
        return held
    if saw and after_it(cur):
        return Place(Where.NEXT, cur.span(start), noun="st")
    numbered = cur.low() in ("skipped", "missed") or cur.kind() in ("ord", "num")
    named = numbered or find_noun(cur, peek=True)
    if cur.low() in DETERMINERS or (saw and named) or nth_of_hook(cur):
        return _numbered(cur, here)
    if saw and (cur.low() in ("that", "joining") or cur.words("the joining")):
        same = that_one(cur, start)
        if same is not None:
            return same
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


BARE_RINGS = ("magic ring", "magic circle", "magic loop", "mr", "adjustable ring")
"""Rings that need no preposition: "6 sc magic ring"."""


ENDS = (*STOPS, "", "and")
INTO_RING = ("in", "into", "inside", "to", "onto", "around", "under", "over", "through", "within")


def _ring(cur: Cursor) -> int:
    at = cur.at
    if cur.book.craft is Craft.CROCHET and at and cur.stitch(-1) and cur.accept(*BARE_RINGS):
        return cur.at - at
    if cur.low() in INTO_RING or cur.words("in the"):
        cur.at += 1
        cur.accept("of the", "of a", "of your", "of", "the", "a", "an", "your", "that", "this")
        length = cur.any_words(RING_WORDS)
        if not length and cur.low() == "round" and cur.low(-1) == "the" and cur.low(1) in ENDS:
            # "24 treble into the round", of a chain that was closed in one.
            length = int(cur.low(-2) in ("into", "under") and cur.stitch(-3) is not None)
        if cur.low() == "mc" and cur.book.craft is Craft.KNITTING:
            # The main colour.
            length = 0
        if length:
            cur.at += length
            return length
    cur.at = at
    return 0


def _of_which(cur: Cursor, here: object) -> Place | None:
    """Of which "each" is said: "in each of the ch-3 sps" is in all of them."""
    told = cur.low() in DETERMINERS or cur.kind() in ("num", "ord", "times")
    found = _numbered(cur, here, each=True)
    if found is None or told or found.where is not Where.NEXT or found.noun != "sp":
        return found
    return replace(found, where=Where.EACH)


def _each(cur: Cursor, here: object) -> Place:
    start = cur.at
    cur.at += 1
    place = Place(Where.EACH, cur.span(start), each=True)
    others = cur.words("of the other") or cur.words("of the remaining") or cur.words("of the rem")
    of = cur.low() == "of" and not (others and cur.kind(others) != "num")
    cur.accept(*("of the", "of these", "of") if of else ("of the", "of", "the"))
    if of or each_of_several(cur):
        return _of_which(cur, here) or place
    if cur.kind() == "num" and cur.low(1) in CHAIN_NOUNS and cur.low(-2) in INTO:
        # "under every 2 chain", "in each 3 ch": the space that the chains make.
        chains = cur.peek().value
        cur.at += 2
        take_after(cur)
        return replace(place, noun="sp", chain=chains)
    if every_other(cur):
        return replace(place, nth=2)
    apart, chain = every_nth_opening(cur)
    if apart:
        return replace(place, noun="sp", nth=apart, chain=chain)
    remaining = cur.accept("remaining", "rem", "following", "unworked", "other")
    nth = how_manieth(cur)
    if nth:
        return replace(place, nth=nth)
    noun, chain = find_noun_chain(cur)
    noun, _ = behind_space(cur, noun, chain)
    nouns = [noun or "st"]
    chain = _more_nouns(cur, nouns) or chain
    # What lies between them: "each sp and each dc" goes where "each dc and each sp" does.
    nouns.sort(key=lambda one: one == "sp")
    sides = take_after(cur)
    (up_to_corner if among_openings(nouns) else up_to_opening)(cur)
    grouped = of_the_group(cur)
    to_last = to_last_of(cur) if not among_openings(nouns) else None
    if to_last is not None:
        return replace(to_last, each=True, remaining=to_last.remaining or grouped)
    return replace(
        place, noun=nouns[0], among=tuple(nouns[1:]), chain=chain, remaining=remaining, sides=sides
    )


def _more_nouns(cur: Cursor, nouns: list[str]) -> int:
    """Adds the nouns of "and each ch-1 sp"; the chains of their space, 0 where none is named."""
    chain = 0
    while cur.low() in ("and", "&", "or"):
        at = cur.at
        whole = any(cur.words(f"{one} {each}", 1) for one in INTO for each in ("each", "every"))
        cur.at += 3 if whole else 2 if cur.low(1) in ("each", "every", "in") else 1
        _so_many_chains(cur)
        more, chains = find_noun_chain(cur)
        if not more or (cur.low() == "in" and more not in ("ch", "sp", "st")):
            cur.at = at
            break
        nouns.append(more)
        chain = chain or chains
    return chain


def _so_many_chains(cur: Cursor) -> None:
    """Takes "of the 8" before "ch", "each st and in each of the 8 ch": all that an opening has."""
    at = cur.at
    cur.accept("of the", "of these", "of", "the", "all the", "all", "each of the")
    if cur.kind() == "num" and cur.low(1) in ("ch", "chs", "chain", "chains"):
        spaced = cur.low(2) in ("-", "sp", "sps", "space", "spaces", "loop", "loops", "lp", "lps")
        cur.at = at if spaced else cur.at + 1
    elif cur.low() not in ("ch", "chs", "chain", "chains"):
        cur.at = at


def among_openings(nouns: list[str]) -> bool:
    """Whether any of the nouns is a space."""
    return "sp" in nouns


ONE_LEFT = ("loop", "lp", "sp", "space", "st", "stitch", "corner", "arch")
SEVERAL = frozenset(
    one for one in STITCH_NOUNS | SPACE_NOUNS if one.endswith("s") and one not in ("s", "ls")
)


PER_ONE = ("st", "stitch", "sc", "dc", "hdc", "tr", "htr", "ch", "chain", "sp", "space", "loop")
"""What "per" stands before: "1 sc per ch"."""


def _of_each(cur: Cursor) -> bool:
    """Whether "each" or "per stitch" stands here."""
    if cur.low() == "per":
        return cur.low(1) in PER_ONE
    return cur.low() in ("each", "every", "ea") and not cur.words("each time")


def _numbered(cur: Cursor, here: object, each: bool = False) -> Place | None:
    """ "next 3 sts", "last st", "3rd ch from hook", "same space", "8 stitches following"."""
    start = cur.at
    said = Said(each)
    before = {cur.low(-1), cur.low(-2), cur.low(-3)}
    topped = "top" in before
    while not cur.done() and (_of_several(cur, said) or said.take(cur)):
        cur.at += 1
    bare = said.determiner != "" and goes_on(cur)
    noun, chain = ("", 0) if bare else find_noun_chain(cur)
    over = cur.done() or cur.low() in STOPS or cur.kind() == "stars"
    counted = said.number is not None and (each or over)
    noun, every = behind_space(cur, noun, chain)
    said.where = Where.EACH if every and said.where is Where.NEXT else said.where
    named = noun or said.determiner or said.nth or counted
    if not named:
        cur.at = start
        return None
    ahead = each and said.number is None and said.determiner in AHEAD
    if ahead and (cur.low(-1) in SEVERAL or cur.any_words(AROUND)):
        # "in each of the following loops", "each of next st around": all that are left.
        said.where = Where.EACH
    if not each and noun != "sp" and _all_the_way(cur, said, noun):
        said.each, said.where = True, Where.EACH
    if before & {"base", "foot"} and (noun in ("ch", "tch") or chain):
        # "base of 3ch": the stitch that the first chain stands on.
        cur.at += cur.kind() == "num" and not chain
        take_after(cur)
        return Place(Where.SAME, cur.span(start), ONE, "st", text=cur.said(start))
    alone = cur.low(-1) in ONE_LEFT and said.number is None and not each
    if alone and said.determiner in ("remaining", "rem", "unworked"):
        # "sc in remaining loop": the one that is left.
        said.where = Where.NEXT
    if chain and topped and cur.low(-1) not in SPACE_NOUNS:
        # "top of the ch-3": the chain as a stitch, not its space.
        noun, chain = "tch", 0
    noun = "tch" if noun == "ch" and of_row_below(cur) else noun
    if noun == "ch" and topped and said.number is not None and not said.determiner:
        # "top of 3 ch": three chains that stand for one stitch.
        noun, said.number = "tch", None
    return _finish(cur, start, said, noun, chain)


def _all_the_way(cur: Cursor, said: Said, noun: str) -> bool:
    """Whether all are meant that lie there: "in the stitches across", "in next sts to ch-2 sp",
    "shell in shell across".
    """
    if noun in GROUPS and not (said.number or said.nth or said.determiner):
        return cur.any_words(AROUND) > 0
    if said.number or said.nth or cur.low(-1) not in SEVERAL:
        return False
    if not said.determiner and cur.any_words(AROUND):
        return True
    return said.determiner in ("", *AHEAD) and up_to_opening(cur)


def _of_several(cur: Cursor, said: Said) -> bool:
    """The "four" of "first of the four": a group's size, not how many places."""
    one = said.determiner in ("first", "last") or said.nth > 0
    behind = cur.low(-1) == "of" or (cur.low(-1) == "the" and cur.low(-2) == "of")
    return one and behind and cur.kind() == "num"


MADE = re.compile(
    r"\bjust (?:made|formed|completed|worked)\b|\blast (?:\w+ ){1,3}(?:made|worked)\b"
)
"""A stitch of this very row: "dc just made", "last sc made"."""
MADE_BEHIND = (
    "just made", "just formed", "just completed", "just worked", "already worked",
    "already worked in", "already worked into", "just worked in", "just worked into",
    "already used", "just used",
)  # fmt: skip
IN_LOOP = re.compile(
    r"\b(?:st|stitch|ch|chain) (?:st )?of (?:the |a )?(?:next |following |first |1st "
    r"|\d+[- ]ch(?:ain)? |ch(?:ain)?[- ]\d+ |chain )*(?:loops?|lps?|sps?|spaces?)$"
)
OF_SAME_CHAIN = re.compile(r"\bof (?:the )?same (?:ch\w*|loop|lp|sp|space)\b")
OF_CHAIN = (" of ch", "turning ch", "beg ch", "beginning ch", "of end ch", "of last ch")


def _of_next_group(cur: Cursor) -> None:
    """Takes "of next group", "of the next 3-dc group", "of 5-dc shell" behind a stitch."""
    at = cur.at
    if cur.low(-1) == "of" or cur.accept("of"):
        cur.accept("the")
        if cur.accept("next", "following", "same", "first", "last") or cur.kind() == "num":
            for ahead in range(4):
                if cur.low(ahead) in GROUPS and cur.low(ahead) not in ("cluster", "clusters"):
                    cur.at += ahead + 1
                    return
    cur.at = at


def _finish(cur: Cursor, start: int, said: Said, noun: str, chain: int) -> Place:
    span = cur.span(start)
    sides = 1 if said.of_list(cur, noun) else take_after(cur)
    _of_next_group(cur)
    words = cur.said(start).lower()
    number = said.number or ONE
    if noun in ("ch", "tch") and OF_SAME_CHAIN.search(words):
        # "in next ch of same ch-2": beside what was worked in that space.
        return Place(Where.SAME, span, ONE, "sp", text=words)
    if noun in ("st", "ch") and said.nth and IN_LOOP.search(words):
        # "to 2nd st of next loop": a chain of that loop.
        noun, said.nth, said.determiner = "sp", 0, "next"
    if noun == "ch" and number.values[0] > 1 and cur.low(start - cur.at - 1) in ("under", "over"):
        # "under 2 chain" is the space that the two chains make.
        return Place(Where.NEXT, span, ONE, "sp", False, 0, sides, number.values[0])
    hooked = "hook" in words or words.endswith(" hk")
    if said.nth and hooked and noun in ("", "st", "ch", "tch", "sp"):
        # "In 3rd sc from hook" is a stitch of the row below, and no chain.
        return Place(Where.CHAIN, span, noun="ch", nth=said.nth)
    made = cur.accept(*MADE_BEHIND)
    made = made or MADE.search(words) is not None
    passed = re.search(r"\b(?:skipped|missed|passed) (?!\d)", words) is not None
    if made or passed or said.determiner == "same" or "at base of" in words:
        same_as_what(cur)
        return Place(Where.SAME, cur.span(start), number, noun or "st", text=words)
    if noun == "tch" or any(chains in words for chains in OF_CHAIN):
        kind = "tch" if noun in ("st", "ch", "tch", "") else noun
        return Place(Where.NEXT, span, number, kind, said.each, said.nth)
    if said.determiner == "any":
        return Place(Where.NEXT, span, ONE, noun or "st", chain=chain)
    where = said.where
    if said.number is not None:
        where = Where.NEXT
    elif said.determiner == "all":
        where = Where.EACH
    if said.determiner == "both":
        number = Num((2,))
    elif said.determiner in ("first", "last") and where is not Where.EACH:
        where = Where.FIRST if said.determiner == "first" else Where.LAST
    return Place(where, span, number, noun or "st", said.each, said.nth, sides, chain)
