"""What an author says of a total behind it, "(24 tr, the ch-4 being one of them)", "52 htr (with
the 2 ch)", "66 dc [corr.: as told by readers]" -> the total alone; "(23 dc, not counting the ch 3)"
-> "(23 dc + 3 ch)"; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought, has_any

_FIRST = (
    r"(?:(?:the|your|that|a|its|this|first|beginning|starting|turning|opening|initial|t|\d)"
    r"[- ]?){0,3}"
)
_CHAIN = rf"{_FIRST}(?:ch|chain)(?:s|es)?\b(?: ?-? ?\d(?! ?(?:sp|lo|lp)))?"
_THING = (
    r"(?:sts?|stitches|(?:[sdh]{1,2} ?c|h ?tr|d ?tr|tr(?: ?c)?)s?|doubles|trebles|singles"
    r"|in all)"
)
_AS_ONE = r"(?: as (?:a|an|one|1|the first)(?: \w+)?)?"
_COUNTED = (
    r"(?:being|counting|counts?|counted|is|stands?|standing|included|includ\w+|inclusive|taken"
    r"|and all|reckoned)\b[^()\[\].;]{0,48}"
)
_SAID = (
    rf"(?:with|including|incl\.?|counting(?: in)?|inclusive of|if (?:you|we) count|when you count)"
    rf" {_CHAIN}(?! ?\d* ?(?:bet|in bet|sp|apart)){_AS_ONE}(?: in)?"
    r"(?:,? and so [^()\[\].;]{3,30})?"
    rf"|(?:remember,? |note:? |where |as |and )?{_CHAIN} {_COUNTED}"
    rf"|(?:the )?first (?:one )?(?:being|is) {_CHAIN}[^()\[\].;]{{0,20}}"
    rf"|(?:with|and) {_CHAIN} (?:between|in between|bet|after each|apart)[^()\[\].;]{{0,24}}"
    r"|altogether|all told|in the (?:round|ring|row)(?: now)?|on the (?:round|row)"
)
_BESIDE = (
    rf"(?:not (?:counting|including)|excluding|without|besides|apart from|plus|as well as"
    rf"|leaving out|and an?) {_CHAIN}"
)
_NUMBER = r"(?P<total>(?<![\w-])\d{1,4}(?: ?[(\[][\d,;/ -]+[)\]])?"
SAID_IN = (
    "with", "incl", "count", " being", " is", "stand", "taken", "and all", "reckoned", "bet",
    "after each", "apart", "altogether", "all told", "in the r", "on the r",
)  # fmt: skip
"""Of these every remark has one; too many ways lead to them to be held against it by a test."""
REMARK = re.compile(
    rf"{_NUMBER}(?: ?\.?{_THING}(?!\w))?\.?)"
    rf"(?P<remark>(?:,|;| ?[-—:])? ?(?:\((?:{_SAID})\)|(?:{_SAID})))"
    r"(?:(?P<close>[ .]*[)\]])|(?=[ ]*\.|[ ]*$))",
    re.IGNORECASE | re.MULTILINE,
)
BESIDE = Sought(
    (
        "not ", "exclud", "without", "besides", "apart from", "plus", "as well as", "leaving out",
        "and a",
    ),
    rf"{_NUMBER} ?{_THING}(?!\w))(?P<remark>(?:,|;| ?[-—:])? ?(?:{_BESIDE}))"
    r"(?=[ .]*[)\]]|\.|[ ]*$)",
    re.IGNORECASE | re.MULTILINE,
)
OF_LAST = Sought(
    (" last r", " final r"),
    rf"(?<=[(\[]){_NUMBER} ?{_THING}?(?!\w))"
    r" ?(?:in|on|at|for) (?:the )?(?:end of )?(?:the )?(?:last|final) (?:row|rnd|round)"
    r"(?P<close>[ .]*[)\]])",
    re.IGNORECASE,
)
"""The total of the last of several rows, which is what a total behind them all is."""
CORRECTED = Sought(
    ("[corr", "[ed", "[note", "[sic", "[errat", "[n.b", "[was", "[first print"),
    r"[ ]?\[(?:corr|ed\.|note|sic|errat|n\.b|was|first print)\w*\b[^\[\]\n]{0,160}\]",
    re.IGNORECASE,
)
"""What an editor put in."""


def plain_totals(text: str) -> str:
    """The text with such totals alone; any other text as it is."""
    text = CORRECTED.sub(lambda m: " " * len(m.group()), text)
    text = BESIDE.sub(_with_chain, text)
    text = OF_LAST.sub(_closed, text)
    return REMARK.sub(_alone, text) if has_any(text, SAID_IN) else text


BEGINS = re.compile(r"(?:^|[.;:=)\]—]|\s-)\s*$")
"""Before a total without brackets."""


def _alone(found: re.Match[str]) -> str:
    before = found.string[max(0, found.start() - 3) : found.start()]
    if not found["close"] and not BEGINS.search(before):
        return found.group()
    return _closed(found)


def _closed(found: re.Match[str]) -> str:
    return (found["total"] + (found["close"] or "").strip(" .")).ljust(len(found.group()))


def _with_chain(found: re.Match[str]) -> str:
    return found["total"] + " + 3 ch".ljust(len(found["remark"]))
