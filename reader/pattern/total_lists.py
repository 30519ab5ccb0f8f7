"""A bracket at a row's end that lists what the row holds, "(4 shells, 2 half shells)", "(24 sc + 40
ch = 64 sts)" -> its total.
"""

from __future__ import annotations

import re

from reader.pattern.totals import Printed
from reader.terms.numbers import SPELLED, word_number

AT_END = re.compile(
    r"\W*(?:$|(?:join|turn|fasten|cut|break|place|do not|finish|change|with)\b)", re.IGNORECASE
)
"""What may stand behind the last bracket of a row: what is done when its stitches are made."""
ITEM = re.compile(
    rf"(?:(?P<n>\d{{1,4}}) ?|(?P<word>an?|{SPELLED}) )?"
    r"(?P<kind>[A-Za-z0-9][A-Za-z0-9'/ -]{0,30})",
    re.IGNORECASE,
)
OPENING = re.compile(
    r"(?:.*\b)?(?:button ?holes?|handles?|openings?|gaps?|slits?|slots?|eyelets?|holes?|straps?"
    r"|thumb ?holes?|arm ?holes?)\b.*",
    re.IGNORECASE,
)
"""What chains leave in a row, told beside its stitches with or without a number."""
CHAINS = ("ch", "chs", "chain", "chains")
SENTENCE = re.compile(
    r"(?<=[.;])\s+(?P<list>\d{1,4} ?[A-Za-z+][^.;:*()\[\]]{1,80}?)[.\s]*$"
)
"""The last sentence of a row, where it begins with a number."""
BESIDE_CORNERS = re.compile(
    r"(?P<n>\d{1,4}) ?\+ ?\d{1,3}(?: ?(?:corners?|sps?|spaces|chains?|ch|loops?|picots?|points?"
    r"|holes?|arches))?",
    re.IGNORECASE,
)
"""Stitches, and what lies between them: "28 + 4 corners"."""
REPEATED = re.compile(r"\b(?:rep(?:eat)?|times|around|across|twice)\b", re.IGNORECASE)
SURELY = 8
"""Stitches of each kind: fewer may be worked as the last ones of a row."""
CHAINED = re.compile(r"\bch(?:ain)?s? ?(\d{1,3})\b|\b(\d{1,3}) ?ch(?:ain)?s?\b(?! ?sp)")
PLACED = re.compile(r"\b(?:in|into|next|each|same|over|at|for|from|to|times|rows?|rounds?|rnds?)\b")


COLOUR = re.compile(
    r"[a-z]|mc|cc\d?|white|black|red|blue|green|yellow|gr[ea]y|pink|brown|cream|navy")


def listed(body: str, start: int, end: int, before: str, after: str) -> Printed | None:
    """The total of a list; None where the bracket may be instructions: something else is worked
    behind it, a place is named, or a kind comes twice.
    """
    if not AT_END.match(after) or not re.search(r"[A-Za-z]{2}", before):
        return None
    whole, _, summed = body.partition("=")
    items = [_item(one) for one in re.split(r"[,;&+/]|\band\b|\bplus\b", whole) if one.strip(" .")]
    found = [one for one in items if one is not None]
    if len(found) < max(2, len(items)) or PLACED.search(body.lower()):
        return None
    if len({kind for _, kind in found}) < len(found):
        return None
    total = _item(summed)
    if total:
        return Printed(start, end, (total[0],), total[1])
    if not all(_made(number, before) for number, kind in found if kind in CHAINS):
        return None
    if all(COLOUR.fullmatch(kind) for _, kind in found):
        # "(36 A + 18 B)": stitches of each colour, all of them the row's.
        return Printed(start, end, (sum(number for number, _ in found),))
    number, kind = found[0]
    return Printed(start, end, (number,), kind)


def in_a_sentence(text: str, over: bool) -> Printed | None:
    """The total of a list that is the last sentence of a row, "9 shells and two half shells", "12
    tr, 12 PC"; None where it may be worked. over: the words before it end the row.
    """
    last = SENTENCE.search(text)
    if last is None:
        return None
    summed = BESIDE_CORNERS.fullmatch(last["list"])
    if summed is not None:
        return Printed(last.start("list"), len(text), (int(summed["n"]),))
    before = text[: last.start()]
    items = [_item(one) for one in re.split(r"[,&+]|\band\b|\bplus\b|\bwith\b", last["list"])]
    if any(one is None for one in items) or (items[0] or (0, "ch"))[1] in CHAINS:
        return None
    many = all(one is not None and one[0] >= SURELY for one in items)
    chained = any(one is not None and one[1] in CHAINS for one in items)
    if not (over and not chained) and not (many and REPEATED.search(before)):
        return None
    return listed(last["list"], last.start("list"), len(text), before, "")


def _item(piece: str) -> tuple[int, str] | None:
    """How many of what: "six 2-ch sps", "40 ch", "buttonhole"; None for other words."""
    one = ITEM.fullmatch(piece.strip(" ."))
    if one is None:
        return None
    kind = one["kind"].lower().strip()
    if one["n"]:
        return int(one["n"]), kind
    number = word_number(one["word"] or "") or 1
    told = one["word"] and re.search(r"[a-z]{2}", kind)
    return (number, kind) if told or OPENING.fullmatch(kind) else None


def _made(number: int, before: str) -> bool:
    """Whether a row makes chains of which so many are the sum: then they are counted behind it."""
    made = [int(one[0] or one[1]) for one in CHAINED.findall(before.lower())]
    return any(one and number % one == 0 for one in made)


_ROW = r"(?:rows?|rnds?|rounds?|rds?)"
_EACH = r"\d{1,4}(?: ?(?P<kind%d>sts|stitches|sc|dc|hdc|tr|htr))?"
TURNS = re.compile(
    _EACH % 1 + rf"(?P<row>(?: (?:in|on|for|after) {_ROW} \d+)?)"
    rf"(?:\s*(?P<then>[,;/]? ?(?:and then|then|and|&)|[,;/])\s*{_EACH % 2}"
    rf"(?: (?:in|on|for|after) {_ROW} \d+)?)+\.?",
    re.IGNORECASE,
)
BEHIND_COLON = re.compile(r":\s*(?P<list>\d+(?:\s*[,/]\s*\d+)+ (?:sts|stitches))\.?\s*$")


def in_turn(body: str, start: int, end: int) -> Printed | None:
    """The totals of several rows told one behind the other, "12 sts, then 24 sts", "(12 sts in rnd
    2, 24 sts in rnd 3)"; None where the words may be stitches of one row.
    """
    found = TURNS.fullmatch(" ".join(body.split()))
    if found is None:
        return None
    kind = (found["kind1"] or found["kind2"] or "").lower()
    told = found["row"] or "then" in found["then"].lower() or not found["kind1"]
    if not told:
        return None
    rows = re.sub(rf"(?i:in|on|for|after) {_ROW} \d+", "", body)
    return Printed(start, end, tuple(int(one) for one in re.findall(r"\d+", rows)), kind)


OWN = re.compile(r"(?<=[.;]) *(?P<n>\d{1,4}) ?(?P<kind>[A-Za-z][A-Za-z -]{0,12}?)\.?\s*$")


def of_own_groups(words: str, names: frozenset[str]) -> tuple[tuple[Printed, ...], str]:
    """A total behind a full stop of what the pattern names itself, "8 V", and the words without it;
    none, and the words, where nothing of that name is known.
    """
    last = OWN.search(words)
    if last is None:
        return (), words
    kind = last["kind"].lower()
    if kind not in names and kind.rstrip("s") not in names:
        return (), words
    one = Printed(last.start(), last.end(), (int(last["n"]),), kind)
    return (one,), words[: last.start()] + " " * (last.end() - last.start()) + words[last.end() :]
