"""Clean text -> the same text, length kept, with rounds or rows told by how many they are in a line
of their own, "then 3 rnds sc in blo", "sc around (4 rounds)", "for this many rounds: 6", put as "3
rnds: sc in blo".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_N = rf"(?:\d{{1,2}}|{SPELLED})(?!\s*[(\[/-])"
_ROUNDS = r"(?:rounds?|rnds?|rds?|rows)"
_STITCH = (
    r"(?:[sh]?d?c|sc|htr|tr|single crochets?|doubles?(?: crochets?)?|half doubles?(?: crochets?)?"
    r"|trebles?|[*(]{0,2}\s?(?:k|p|sc|dc|knit|purl) ?\d?,? ?(?:k|p|sc|dc|knit|purl) ?\d?"
    r"|knit|purl|k|p|rib(?:bing)?|st(?:ocking)?\.? ?st|stockinette|garter(?: st(?:itch)?)?)"
)
_EVEN = r"(?:even(?:ly)?|straight|plain)"
_NO_CHANGE = (
    r"(?:(?:with(?:out| no)|no) (?:any )?(?:inc\w*|dec\w*|shaping|change|more inc\w*)"
    r"(?: or dec\w*)?)"
)
_BEHIND = (
    r"(?:(?:sts?|stitch(?:es)?|in|into|all|each|every|one|the|a|around|across|round|over and over"
    rf"|to (?:the )?end|next|sc|dc|hdc|1|blo|flo|back loops? only|front loops? only|{_EVEN}"
    rf"|{_NO_CHANGE}|rib(?:bing)?|evenly|again|only|just|same|,|\*|\)|\()\s?)*"
)
_WORK = (
    r"(?:(?:work|knit|crochet|just|in|of|keep going|go|round and round|do)\s)*"
    rf"(?:(?:plain|simple|just) )?(?:{_STITCH}(?!\w)|{_EVEN})[,\s]*{_BEHIND}"
)
_LEAD = (
    r"(?P<head>(?:^[ \t]*(?:[-*•·+] +)?|(?<=[)\]\d]\. ))(?:[A-Z][a-z]{2,12}: )?)"
    r"(?P<lead>(?:(?:and|then|now|next|after that|finally|so|finish with|end with|you need"
    r"|you now need|make|do|another|work|for|for the next)(?:\b[:,]? ))*)"
)
_END = r"(?P<end>\s*(?:[.;](?=\s|$)|$))"
FIRST = Sought(
    ("round", "rnd", "rd", "rows"),
    rf"{_LEAD}(?P<n>{_N}) (?P<rounds>{_ROUNDS})(?P<of> of:?| in:?|,|:| -| —|) (?P<work>{_WORK}?)"
    rf"(?P<now>\s?now)?{_END}",
    re.IGNORECASE | re.MULTILINE,
)
"""Told before the work: "6 rounds of sc"."""
LAST = Sought(
    ("round", "rnd", "rd", "rows"),
    rf"{_LEAD}(?P<work>{_WORK}?)(?:,? ?(?:for|x|×|over)? ?(?:the next|another|about)?|[:,] ?"
    rf"| ?[(\[]) ?(?P<n>{_N}) ?(?P<rounds>{_ROUNDS})"
    rf"(?P<more> (?:more|in all|in total|altogether|total))?(?P<close>[)\]]?){_END}",
    re.IGNORECASE | re.MULTILINE,
)
"""Told behind it: "sc around (4 rounds)"."""


VERB_FIRST = re.compile(
    rf"\W*(?:then |now )?(?:knit|purl|k|p|sc|dc|hdc|rib) {_N} {_ROUNDS}\W*", re.IGNORECASE
)
"""Plain enough: "Knit 16 rounds."."""
THIS_MANY = Sought(
    ("round", "rnd", "rd", "rows"),
    rf"{_LEAD}(?P<work>{_WORK}?),? for this many (?P<rounds>{_ROUNDS}): ?(?P<n>{_N}){_END}",
    re.IGNORECASE | re.MULTILINE,
)


def so_many_rounds(text: str) -> str:
    """The text so put where the label finds room; any text goes in."""
    for shape in (FIRST, LAST, THIS_MANY):
        text = shape.sub(_label_first, text)
    return text


def _label_first(found: re.Match[str]) -> str:
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"]) or 0
    rounds, work = found["rounds"], found["work"].strip(" ,")
    if number < 2 or not work or VERB_FIRST.fullmatch(found.group()):
        return found.group()
    work = "work even" if re.fullmatch(_EVEN, work, re.IGNORECASE) else work
    work = re.sub(r"\bover and over\b", "around", work, flags=re.IGNORECASE)
    room = len(found.group()) - len(found["head"]) - len(found["end"])
    for one in (rounds, "rows" if rounds.lower() == "rows" else "rnds"):
        told = f"{number} {one}: {work}"
        if room > len(told):
            # A blank line keeps it from the row above.
            told = "\n" + told.rjust(room - 1)
        if room >= len(told):
            return found["head"] + told + found["end"]
    if re.fullmatch(r"knit|purl|k|p", work, re.IGNORECASE):
        return found["head"] + f"{work} {number} {rounds}".rjust(room) + found["end"]
    return found.group()
