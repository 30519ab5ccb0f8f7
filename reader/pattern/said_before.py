"""What stands before the noun of a place: "each of the next 3", "last", "2nd"."""

from __future__ import annotations

from dataclasses import dataclass

from reader.pattern.cursor import Cursor
from reader.pattern.place_nouns import counts_stitches, sized_group
from reader.pattern.place_words import AFTER_IT, AROUND, PASSED_OVER
from reader.pattern.tree import Num, Where
from reader.terms.stitches import Craft

ALL_ROUND = ("all round", "all around", "all across", "all along", "all the way")


@dataclass(slots=True)
class Said:
    """What stands before the noun of a place: "each of the next 3", "last", "2nd"."""

    each: bool = False
    where: Where = Where.NEXT
    determiner: str = ""
    number: Num | None = None
    nth: int = 0

    def take(self, cur: Cursor) -> bool:
        """Takes the token here in, False when it is no such word."""
        low = cur.low()
        if low in ("next", "following", "nxt", "foll", "remaining", "rem", "unworked"):
            self.determiner = self.determiner or low
            if low in ("remaining", "rem"):
                self.where = Where.EACH
        elif low == "all" and cur.any_words(ALL_ROUND):
            return False
        elif low in ("same", "any", "all", "both", "first", "last", "beg"):
            self.determiner = low
        elif low in PASSED_OVER or (low in ("few", "couple") and _slips_on(cur)):
            return True
        elif cur.kind() == "ord" and self.number is None:
            self.nth = cur.peek().value
            if self.nth == 1:
                self.determiner = self.determiner or "first"
        elif sized_group(cur):
            return False
        elif self.number is None and cur.kind() in ("num", "times") and not counts_stitches(cur):
            if self.determiner and goes_on(cur):
                return False
            self.number = cur.number()
        else:
            return False
        return True

    def of_list(self, cur: Cursor, noun: str) -> bool:
        """Whether "all round" behind "two in the next" is said of the whole list."""
        bare = not noun and self.determiner == "next" and not self.each
        return bare and cur.any_words(AROUND) > 0


def goes_on(cur: Cursor, ahead: int = 0) -> bool:
    """Whether a number begins the next instruction of running talk: "one in the next two in the
    next".
    """
    counts = cur.kind(ahead) == "num" or cur.low(ahead) == "one"
    into = cur.low(ahead + 1) in ("in", "into") and cur.book.craft is Craft.CROCHET
    which = cur.low(ahead + 2) if cur.low(ahead + 2) != "the" else cur.low(ahead + 3)
    return counts and into and which == "next"


def after_it(cur: Cursor) -> bool:
    """Takes "the one after": the next stitch; False where that begins the next instruction."""
    after = cur.any_words(AFTER_IT)
    if not after or goes_on(cur, after - 1):
        return False
    cur.at += after
    return True


def _slips_on(cur: Cursor) -> bool:
    """Whether slip stitches go into "the next few sc": how many is nobody's count."""
    return bool({"sl", "ss", "slip"} & {cur.low(-back) for back in range(1, 7)})
