"""A bracket at a row's end that lists what the row holds, "(4 shells, 2 half shells)", "(24 sc + 40
ch = 64 sts)" -> its total.
"""

from __future__ import annotations

import re

from reader.pattern.totals import Printed

AT_END = re.compile(
    r"\W*(?:$|(?:join|turn|fasten|cut|break|place|do not|finish|change|with)\b)", re.IGNORECASE
)
"""What may stand behind the last bracket of a row: what is done when its stitches are made."""
ITEM = re.compile(r"(?P<n>\d{1,4}) ?(?P<kind>[A-Za-z][A-Za-z0-9'/ -]{0,30})")
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
    pieces = [one.strip(" .") for one in re.split(r"[,;&+/]|\band\b|\bplus\b", whole)]
    items = [ITEM.fullmatch(one) for one in pieces if one]
    if len(items) < 2 or not all(items) or PLACED.search(body.lower()):
        return None
    found = [(int(one["n"]), one["kind"].lower().strip()) for one in items if one]
    if len({kind for _, kind in found}) < len(found):
        return None
    total = ITEM.fullmatch(summed.strip(" ."))
    if total:
        return Printed(start, end, (int(total["n"]),), total["kind"].lower().strip())
    if any(kind in ("ch", "chs", "chain", "chains") for _, kind in found):
        return None
    if all(COLOUR.fullmatch(kind) for _, kind in found):
        # "(36 A + 18 B)": stitches of each colour, all of them the row's.
        return Printed(start, end, (sum(number for number, _ in found),))
    number, kind = found[0]
    return Printed(start, end, (number,), kind)


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
