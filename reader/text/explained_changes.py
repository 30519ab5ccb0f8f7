"""What a bracket behind an increase or a decrease says of how it is made, "inc (2 sc in same st)
around", "dec [sc 2 together] x6" -> the change alone; length kept.

Read as work of its own it would be worked again, or be what is repeated.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_SC = r"(?:(?:half )?(?:single|double) crochets?|[sdh]{1,2}\.? ?c\.?|h?\.? ?tr\.?)"
_STS = rf"(?:{_SC}|sts?|stitches|times)"
_SAYS = r"(?:=|that is,?|that's|i\.? ?e\.?,?|or|meaning|this is|you|make|work|working|so|just)"
_IN_ONE = (
    r"(?:in|into|to) (?:(?:the |that |this )?(?:same|one|1|a single|each|next|1st|first)"
    r"(?: (?:one|stitch|st|place|space|sc|dc))?|it|that|st|stitch|each)"
)
_RAISED = (
    rf"(?:{_SAYS} )*(?:(?:2|two) ?{_STS}? {_IN_ONE}|twice {_IN_ONE}"
    rf"|(?:1|one) (?:{_STS} )?(?:more|extra|added)|makes? (?:2|two)(?: {_STS})?|\+ ?1"
    r"|k(?:nit)? (?:in(?:to)? )?(?:the )?(?:front and back|f ?& ?b)[^()\[\]]{0,30}|kfb|m1[lr]?"
    rf"|[a-z ]{{1,20}} twice {_IN_ONE}|(?:make|made) (?:1|one)(?: st| stitch)?"
    r"|inc(?:rease)?(?: (?:1|one))?(?: st| stitch)?)"
)
_TWO = r"(?:the )?(?:next )?(?:2|two)(?: sts?| stitches| sc| dc| single crochets?)?"
_LOWERED = (
    rf"(?:{_SAYS} )*(?:(?:{_SC} |work |k |p |knit |purl |crochet )*{_TWO} ?(?:{_SC} )?tog(?:ether)?"
    rf"|[skp][a-z]{{0,2}} ?2 ?tog|(?:(?:1|one) )?(?:{_SC} )?(?:over|across) {_TWO}"
    rf"|2 (?:into|in|to) (?:1|one)|{_TWO} (?:worked )?as (?:1|one)"
    rf"|skip (?:1|one)(?: st| stitch)?|makes? (?:1|one)(?: st)?|- ?1"
    rf"|{_SC} {_TWO} (?:sts )?tog(?:ether)?"
    r"|(?:in )?(?:the )?front loops? (?:only )?of [^()\[\]]{3,40}"
    r"|dec(?:rease)?(?: (?:1|one))?(?: st| stitch)?"
    r"|(?:insert|pull up|draw up|yo,|yarn over)\b[^()\[\]]{8,120})"
)
_SAID = rf"(?(up){_RAISED}|{_LOWERED})"
EXPLAINED = Sought(
    ("inc", "dec", "tog", " in ", "ssk", "m1", "m 1", "kfb", "yo", "yrn"),
    r"(?:\b(?P<up>(?:inc|increase)(?: 1)?|m ?1[lr]?|kfb|yo|yrn"
    r"|2 (?:sc|dc|hdc) in (?:the )?(?:next|each) (?:st|stitch|sc|dc))"
    r"|\b(?P<down>(?:(?:inv|invisible)\.? ?)?(?:dec|decrease)(?: 1)?|(?:sc|dc|hdc|k|p) ?2 ?tog"
    r"|ssk))"
    rf"(?P<said> ?(?:\((?:{_SAID})[ .]*\)|\[(?:{_SAID})[ .]*\]))",
    re.IGNORECASE,
)


def changes_alone(text: str) -> str:
    """The text without what such brackets say; any text goes in."""
    return EXPLAINED.sub(_alone, text)


def _alone(found: re.Match[str]) -> str:
    whole = found.group()
    return whole[: found.start("said") - found.start()].ljust(len(whole))
