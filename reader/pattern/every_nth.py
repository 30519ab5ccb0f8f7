"""Changes told by which stitches they fall on: "skip every third st, sc in the others", "crochet
every 4th and 5th st together", "every third stitch gets two" -> Shape.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import Cursor
from reader.pattern.tree import ONE, Node, Shape
from reader.terms.stitches import Craft

_NTH = r"(?:(?P<n>\d+)(?:st|nd|rd|th|d)?|(?P<other>other|second|alternate))"
_ST = r"(?:sts?|stitch(?:es)?|s ?c|d ?c|h ?d ?c|h?tr|one|loop|double|single)s?"
_EACH = r"(?:each|every)"
_OTHERS = (
    r"(?:(?:\d+|a|one) )?(?:(?:s ?c|d ?c|h ?d ?c|h?tr|single crochet|double crochet|stitch|single"
    r"|double|"
    r"treble)s? )?(?:in(?:to)?|for) (?:each of |all )?(?:the )?(?:others?|rest|remaining|other"
    r" ones|ones between)"
    r"(?: sts?| stitches)?|plain (?:between|in between|otherwise|elsewhere)"
)
_BEHIND = rf"(?:,? ?(?:and |with |working |work |making )*(?:{_OTHERS}))?"
_END = (
    r"(?: (?:all )?(?:around|across|round|to (?:the )?end|the whole way|all the way (?:around"
    r"|across)))?"
)
TOGETHER = re.compile(
    rf"(?:(?:take|taking|work|working|crochet|crocheting|join|draw|sc|dc|hdc|dec|decrease|by|and)"
    rf" )*"
    rf"(?:the )?{_EACH} {_NTH}(?: {_ST})? (?:and|&|\+|with) (?:the )?(?P<m>\d+)(?:st|nd|rd"
    rf"|th)?(?: {_ST})? "
    rf"(?:tog(?:ether)?|as one|into one|as 1|into 1){_END}{_BEHIND}{_END}",
    re.IGNORECASE,
)
PAIR = re.compile(
    rf"(?:(?:inv(?:isible)? )?dec(?:rease)?|(?:sc|dc|hdc|tr|htr)2tog)(?: (?:over|at|in|on|with))?"
    rf" (?:the )?{_EACH} {_NTH}(?: {_ST})? (?:and|&|\+) (?:the )?(?P<m>\d+)(?:st|nd|rd|th)?"
    rf"(?: {_ST})?{_END}{_BEHIND}{_END}",
    re.IGNORECASE,
)
""" "Sc2tog every 2nd & 3rd st"."""
SKIPPED = re.compile(
    rf"(?:skip(?:ping)?|miss(?:ing)?|sk|omit(?:ting)?|leav(?:e|ing) out|pass(?:ing)? over)"
    rf" {_EACH} {_NTH}"
    rf"(?: {_ST})?{_END}(?P<others>,? ?(?:and |with |working |work |making )*(?:{_OTHERS}))?{_END}",
    re.IGNORECASE,
)
GETS = re.compile(
    rf"{_EACH} {_NTH} {_ST} (?:(?:gets|has|takes|receives|holds|with) 0*(?P<k>\d)(?: {_ST})?|is"
    rf" (?P<way>increased"
    rf"|decreased|doubled|an? inc\w*|an? dec\w*)|(?P<verb>inc|increase|dec|decrease)d?)(?! \w+"
    rf" st){_END}{_BEHIND}{_END}",
    re.IGNORECASE,
)
FIRST = frozenset(
    ["take", "taking", "work", "working", "crochet", "crocheting", "join", "draw", "sc", "dc",
     "hdc", "dec", "decrease", "sc2tog", "dc2tog", "hdc2tog", "tr2tog", "htr2tog", "inv",
     "invisible", "by", "the", "each", "every", "skip", "skipping", "miss",
     "missing", "sk", "omit", "omitting", "leave", "leaving", "pass", "passing"]
)  # fmt: skip
LOOK = 120
"""Characters in which such words stand."""


def every_nth(cur: Cursor) -> Node | None:
    """Such a change, taken; None (nothing taken) where none stands here."""
    if cur.book.craft is not Craft.CROCHET or cur.low() not in FIRST:
        return None
    if not any(cur.low(ahead) in ("each", "every") for ahead in range(4)):
        return None
    begin = cur.tokens[cur.at].start
    words = _in_figures(cur, begin)
    for told in (TOGETHER, PAIR, SKIPPED, GETS):
        found = told.match(words)
        if found is not None and (step := _step(found, told)) > 1:
            return _taken(cur, begin, found, step)
    return None


def _in_figures(cur: Cursor, begin: int) -> str:
    """The words ahead with the numbers of their tokens in figures, length kept where they stand."""
    words = list(cur.text[begin : begin + LOOK])
    for ahead in range(24):
        one = cur.peek(ahead)
        spelled = one.kind in ("num", "ord") and not one.low[0].isdigit()
        if spelled and one.end - begin <= len(words):
            told = str(one.value)
            words[one.start - begin : one.end - begin] = told.rjust(one.end - one.start, "0")
    return re.sub(r"\s", " ", "".join(words))


def _step(found: re.Match[str], told: re.Pattern[str]) -> int:
    if told in (TOGETHER, PAIR):
        last, first = int(found["m"][-4:]), int((found["n"] or "0")[-4:])
        return last if last == first + 1 else 0
    return 2 if found["other"] else int(found["n"][-4:])


def _taken(cur: Cursor, begin: int, found: re.Match[str], step: int) -> Shape | None:
    start, gain = cur.at, -1
    if found.re is GETS:
        way = (found["way"] or found["verb"] or "").lower()
        gain = int(found["k"]) - 1 if found["k"] else -1 if "dec" in way else 1
    behind = found.string[found.end() : found.end() + 2]
    if found.re is SKIPPED and not found["others"] and "," in behind:
        # "Skip every third st, ...": what is worked in the others, the words behind tell.
        return None
    while not cur.done() and cur.tokens[cur.at].start < begin + found.end():
        cur.at += 1
    return Shape(cur.span(start), cur.said(start), gain, ONE, 1, step)


