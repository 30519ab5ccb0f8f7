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
    r"(?:(?:working|making|work|with|and) )?"
    r"(?:(?:inv(?:isible)? )?dec(?:rease)?|(?:sc|dc|hdc|tr|htr|k|p)2tog|ssk)"
    rf"(?: (?:over|at|in|on|with))? (?:the )?{_EACH} {_NTH}(?: {_ST})? (?:and|&|\+) (?:the )?"
    r"(?P<m>\d+)(?:st|nd|rd|th)?"
    rf"(?: {_ST})?{_END}{_BEHIND}{_END}",
    re.IGNORECASE,
)
""" "Sc2tog every 2nd & 3rd st"."""
AFTER = re.compile(
    r"(?:(?:working|work|with|and) )?(?:(?P<two>k2tog|ssk|p2tog|skp|(?:knit|k) (?:two|0*2) together"
    r"|(?:inv(?:isible)? )?dec(?:rease)?|(?:sc|dc|hdc|tr|htr)2tog)"
    r"|(?P<m>m ?1[lr]?|mak(?:e|ing) 0*1|yo)|(?P<one>kfb|inc(?:rease|reasing)?))"
    rf"(?: 0*1)?(?: {_ST})? after {_EACH} {_NTH}(?: {_ST})?{_END}{_BEHIND}{_END}",
    re.IGNORECASE,
)
""" "K2tog after every 8th stitch": so many between the changes."""
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
    ["k2tog", "ssk", "p2tog", "skp", "knit", "k", "m1", "m", "m1l", "m1r", "make", "making", "yo",
     "kfb", "inc", "increase", "increasing", "with", "and", "take", "taking", "work", "working",
     "crochet", "crocheting", "join", "draw", "sc", "dc", "hdc", "dec", "decrease", "sc2tog",
     "dc2tog", "hdc2tog", "tr2tog", "htr2tog", "inv", "invisible", "by", "the", "each", "every",
     "skip", "skipping", "miss", "missing", "sk", "omit", "omitting", "leave", "leaving", "pass",
     "passing"]
)  # fmt: skip
LOOK = 120
"""Characters in which such words stand."""


def every_nth(cur: Cursor) -> Node | None:
    """Such a change, taken; None (nothing taken) where none stands here."""
    if cur.low() not in FIRST:
        return None
    if not any(cur.low(ahead) in ("each", "every") for ahead in range(6)):
        return None
    begin = cur.tokens[cur.at].start
    words = _in_figures(cur, begin)
    crochet = cur.book.craft is Craft.CROCHET
    for told in (AFTER, TOGETHER, PAIR, SKIPPED, GETS) if crochet else (AFTER, PAIR):
        found = told.match(words)
        if found is not None and (step := _step(found, told, crochet)) > 1:
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


def _step(found: re.Match[str], told: re.Pattern[str], crochet: bool) -> int:
    if told in (TOGETHER, PAIR):
        last, first = int(found["m"][-4:]), int((found["n"] or "0")[-4:])
        return last if last == first + 1 else 0
    if told is AFTER:
        into_one = found["one"] and (crochet or found["one"].lower() == "kfb")
        taken = 2 if found["two"] else 1 if into_one else 0
        return taken + (2 if found["other"] else int(found["n"][-4:]))
    return 2 if found["other"] else int(found["n"][-4:])


def _taken(cur: Cursor, begin: int, found: re.Match[str], step: int) -> Shape | None:
    start, gain = cur.at, -1
    if found.re is GETS:
        way = (found["way"] or found["verb"] or "").lower()
        gain = int(found["k"]) - 1 if found["k"] else -1 if "dec" in way else 1
    if found.re is AFTER:
        gain = -1 if found["two"] else 1
    behind = found.string[found.end() : found.end() + 2]
    if found.re is SKIPPED and not found["others"] and "," in behind:
        # "Skip every third st, ...": what is worked in the others, the words behind tell.
        return None
    while not cur.done() and cur.tokens[cur.at].start < begin + found.end():
        cur.at += 1
    return Shape(cur.span(start), cur.said(start), gain, ONE, 1, step)


