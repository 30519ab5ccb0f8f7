"""The nouns of places, and the words that trail behind them: "corner sp of rnd 2", "ch-3 sp on each
side".
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_words import (
    ADJECTIVES,
    AFTER,
    ALONG,
    AROUND,
    BEFORE_NOUN,
    CHAIN_NOUNS,
    DANGLING,
    GROUP_NOUNS,
    OF_SPACE,
    SIDES,
    SPACE_NOUNS,
    STITCH_NOUNS,
    TO_LAST,
)
from reader.terms.stitches import Craft


def counts_stitches(cur: Cursor) -> bool:
    """A number here multiplies a stitch to come, so it belongs to the next instruction."""
    found = cur.stitch(1)
    if found is None or cur.low(1) in STITCH_NOUNS | CHAIN_NOUNS:
        return False
    after = cur.low(1 + found.length)
    placed = after in ("in", "into", "over", "around")
    return placed and cur.low(-1) not in ("next", "of", "the", "first", "last", "each")


def _picot_loop(cur: Cursor) -> int:
    """How many tokens "4 picot loop" takes here, 0 where none stands."""
    at = 1 + (cur.low(1) == "-")
    told = cur.kind() == "num" and cur.low(at) in ("picot", "picots", "p")
    return at + 2 if told and cur.low(at + 1) in SPACE_NOUNS else 0


def sized_group(cur: Cursor) -> int:
    """How many tokens "3-dc group", "4 picot loop" take here, 0 where none stands."""
    if cur.kind() != "num":
        return 0
    if _picot_loop(cur):
        return _picot_loop(cur)
    return _group_of(cur, GROUP_NOUNS)


def _group_of(cur: Cursor, nouns: frozenset[str]) -> int:
    """How many tokens "3-dc group" takes here behind its number's place, 0 where none stands."""
    at = 2 if cur.low(1) == "-" else 1
    found = cur.stitch(at)
    at += found.length if found is not None else cur.low(at) in STITCH_NOUNS
    return at + 1 if at > 1 and cur.low(at) in nouns else 0


SHELLS = GROUP_NOUNS | {"shell", "shells", "fan", "fans"}
OF_WHICH = ("of", "the", "next", "following", "foll", "first", "1st", "last", "same")


ONE_OF_ROW = ("next", "following", "last", "each", "every")
INTO_CHAIN = ("in", "into", "over", "under", *ONE_OF_ROW)


def nth_of_hook(cur: Cursor) -> bool:
    """Whether "2nd ch from hook" stands here, without a preposition."""
    behind = cur.low(1) in STITCH_NOUNS | CHAIN_NOUNS
    return cur.kind() == "ord" and behind and bool(cur.words("from hook", 2)
        or cur.words("from the hook", 2) or cur.words("from your hook", 2))


def _its_loop(cur: Cursor) -> bool:
    """Whether "ch 7" is the loop of seven chains: "ch 3 corner", "3 sc in ch 7, repeat", "over next
    ch 1", "over last ch 1 made".
    """
    if cur.low(2) == "corner":
        return True
    named = cur.low(-1) in ("in", "into", "over", "under", *ONE_OF_ROW) or cur.kind(-1) == "ord"
    return named and cur.low(2) in (*STOPS, "", "made")


def find_noun_chain(cur: Cursor) -> tuple[str, int]:
    """The noun here and, for "ch-3 sp", the 3."""
    picots = _picot_loop(cur)
    if picots:
        cur.at += picots
        return "sp", 0
    group = sized_group(cur)
    if group:
        cur.at += group
        return "group", 0
    space = 3 if cur.low(1) == "-" else 2
    if cur.kind() == "num" and cur.low(space - 1) in CHAIN_NOUNS and cur.low(space) in SPACE_NOUNS:
        # "1 ch sp", "2-ch loop".
        chain = cur.peek().value
        cur.at += space + 1
        return "sp", chain
    if cur.low() == "corner" and cur.low(1) in CHAIN_NOUNS and cur.kind(2) == "num":
        cur.at += 1
    if (
        cur.low() in CHAIN_NOUNS
        and cur.kind(1) == "num"
        and (cur.low(2) in SPACE_NOUNS or cur.peek(1).hyphen or _its_loop(cur))
    ):
        chain = cur.peek(1).value
        at = cur.at
        cur.at += 2
        noun = find_noun(cur)
        if noun:
            return "sp", chain
        made = cur.accept("made")
        if made or cur.tokens[at + 1].hyphen or cur.low(-3) in INTO_CHAIN or cur.kind(-3) == "ord":
            return "sp", chain
        cur.at = at
    return find_noun(cur), 0


BEFORE_STITCH = ("center", "centre", "corner", "corresponding")
"""What may stand before a stitch's own name."""


def find_noun(cur: Cursor, peek: bool = False) -> str:
    """The noun that stands here: "st", "sp", "ch", "group", or a stitch name; "" when none does."""
    before = 0
    while (cur.low(before) in OF_SPACE and cur.low(before + 1) in SPACE_NOUNS) or (
        cur.low(before) in ADJECTIVES and (
            cur.low(before + 1) in SPACE_NOUNS | STITCH_NOUNS | CHAIN_NOUNS
            or (cur.low(before) in BEFORE_STITCH and cur.stitch(before + 1))
        )
    ):
        before += 1
    noun, took = _named(cur, before) or _plain(cur, before)
    if noun and not peek:
        cur.at += before + took
    return noun


def _named(cur: Cursor, at: int) -> tuple[str, int] | None:
    """A stitch's own name as the noun, and its length; a space or "st" behind it belongs to it."""
    found = cur.stitch(at)
    if found is None or (cur.low(at) in SPACE_NOUNS and found.length == 1):
        return None
    after = cur.low(at + found.length)
    if after in SPACE_NOUNS:
        return "sp", found.length + 1
    if after in GROUP_NOUNS:
        return "group", found.length + 1
    name = found.stitch.name
    if found.special is not None and name.split()[-1] in OF_PLACE:
        # "5 dc in next dc shell": a shell, of whatever stitches.
        name = name.split()[-1]
    return name, found.length + (after in STITCH_NOUNS)


OF_PLACE = ("shell", "fan")
"""Groups that a pattern may name by their stitch as well."""


def _plain(cur: Cursor, at: int) -> tuple[str, int]:
    """A noun of no particular stitch, and its length; ("", 0) when none stands here."""
    low, after = cur.low(at), cur.low(at + 1)
    if low in STITCH_NOUNS:
        plural = (low.startswith("st") and cur.words("( es )", at + 1)) or cur.words(
            "( s )", at + 1
        )
        return "st", 4 if plural else 1
    if low in ("v", "vs", "v's"):
        # A V of two stitches in one place, "in each V around".
        return "v-st", 1
    if low in SPACE_NOUNS:
        return "sp", 2 if after in SPACE_NOUNS else 1
    if low in CHAIN_NOUNS:
        if after in SPACE_NOUNS and after not in STITCH_NOUNS:
            return "sp", 2
        return "ch", 2 if after in STITCH_NOUNS else 1
    if low in GROUP_NOUNS:
        return "group", 1
    if low == "star":
        # Alone it is also the mark that a repeat goes back to.
        return "star", 1
    return ("tch", 1) if low in ("tch", "t-ch") else ("", 0)


def take_after(cur: Cursor) -> int:
    """Takes the words that follow a noun ("of ch", "on each side", "around"); how many sides they
    tell of.
    """
    start = cur.at
    sides = 1
    while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
        if cur.low() in ("each", "both", "either") and cur.low(1) in SIDES:
            sides = 2
            cur.at += 2
            continue
        step = 0 if _begins_place(cur) else _follows(cur, start)
        if not step:
            break
        cur.at += step
    while cur.at > start and cur.low(-1) in DANGLING:
        cur.at -= 1
    return sides


def _begins_place(cur: Cursor) -> bool:
    """ "in next", "to each", "to last 2 sts": the place of the next instruction, or where this one
    ends.
    """
    if cur.any_words(TO_LAST) or _to_middle(cur):
        return True
    return (
        cur.low() in ("in", "to", "over", "on")
        and cur.low(1) in ("next", "same", "each")
        and cur.low(2) not in ("side", "end")
    )


def _to_middle(cur: Cursor) -> bool:
    """ "to the center": how far stitches go."""
    at = 1 + (cur.low(1) == "the")
    middle = cur.low() == "to" and cur.low(at) in ("center", "centre", "middle")
    return middle and cur.low(at + 1) in ("", "and", "then", *STOPS)


OF_CHAIN = ("of", "the", "first", "1st", "beginning", "beg", "starting", "turning", "last", "same")


def _follows(cur: Cursor, start: int) -> int:
    """How many tokens here still belong to the place, 0 for none."""
    low = cur.low()
    if low in AFTER and not (low == "working" and cur.low(1) in ALONG):
        return 1
    if low in ("next", "foll") and cur.at > start and cur.low(-1) in ("of", "the"):
        return 1
    number = cur.kind() in ("ord", "num")
    if cur.kind() == "num" and cur.low(-1) in OF_WHICH and (group := _group_of(cur, SHELLS)):
        # "3rd dc of next 5-dc shell".
        return group
    if number and cur.low(-1) in ("of", "the", "in", "from") and not counts_stitches(cur):
        return 1
    chain = cur.kind() == "num" and cur.low(-1) in CHAIN_NOUNS
    if chain and (cur.low(-2) in OF_CHAIN or (cur.low(-2) == "next" and cur.low(-3) == "of")):
        # "4th ch of ch-7", "2nd ch of ch-5 sp".
        return 2 if cur.low(1) in SPACE_NOUNS else int(cur.low(1) in ("", "and", "then", *STOPS))
    if cur.kind() == "num" and cur.low(-1) in ("row", "rnd", "round") and cur.low(-2) == "of":
        # "Dc of rnd 2".
        return 1
    found = cur.stitch()
    if found is None:
        return 0
    named = cur.at > start and cur.low(-1) in BEFORE_NOUN | {"next", "foll", "following"}
    counted = cur.kind(-1) in ("ord", "num") and cur.at - start >= 2
    return found.length if named or counted else 0


OTHERS = ("other", "alternate", "alternative")


def every_other(cur: Cursor) -> bool:
    """Takes "other st" behind "every"."""
    named = cur.low(1) in STITCH_NOUNS or cur.low(1) in ("sc", "dc", "hdc", "tr")
    if cur.low(-1) not in ("every", "each") or not named or not cur.accept(*OTHERS):
        return False
    cur.at += 1
    take_after(cur)
    return True


def how_manieth(cur: Cursor) -> int:
    """Takes "third stitch" behind "every", or "third" alone: "with 2 in every third"."""
    if cur.kind() != "ord":
        return 0
    nth = cur.peek().value
    if cur.low(1) in STITCH_NOUNS or (nth > 1 and cur.low(1) == "one"):
        cur.at += 2
        take_after(cur)
        return nth
    bare = cur.book.craft is Craft.CROCHET and cur.low(1) in ("", ".", ";", ",")
    named = cur.stitch(1)
    if nth > 1 and named is not None and cur.low(1 + named.length) in (*STOPS, "", *AROUND):
        # "2 sc in every 5th sc": the stitch is the place's, and nothing more is made.
        cur.at += 1 + named.length
        take_after(cur)
        return nth
    if nth < 2 or not bare:
        return 0
    cur.at += 1
    return nth


def every_nth_opening(cur: Cursor) -> tuple[int, int]:
    """Takes "other loop", "third ch-3 sp", "alternate loop of 3 ch" behind "every": which of them,
    and its chains; (0, 0) where no opening is named.
    """
    at = cur.at
    others = cur.accept(*OTHERS)
    nth = 2 if others else cur.peek().value if cur.kind() == "ord" else 0
    if nth < 2 or cur.low(-1 - bool(others)) not in ("every", "each"):
        cur.at = at
        return 0, 0
    cur.at += not others
    noun, chain = find_noun_chain(cur)
    if noun != "sp":
        cur.at = at
        return 0, 0
    if cur.low() == "of" and cur.kind(1) == "num" and cur.low(2) in CHAIN_NOUNS:
        chain = cur.peek(1).value
        cur.at += 3
    take_after(cur)
    return nth, chain


_ROWS = [
    *(f"{which} {row}" for which in ("previous", "last") for row in ("row", "rnd", "round")),
    "row below", "rnd below", "round below",
]  # fmt: skip
OF_ROW_BELOW = tuple(f"of {the}{row}" for the in ("", "the ") for row in _ROWS)


def of_row_below(cur: Cursor) -> bool:
    """Takes "3 of previous row" behind "in the ch": the chain that it was turned with."""
    row = cur.any_words(OF_ROW_BELOW, 1) if cur.kind() == "num" else 0
    cur.at += 1 + row if row else 0
    return row > 0
