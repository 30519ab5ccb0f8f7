"""What is said of the chain just made: whether it counts, "(counts as 1 dc)", "(for the first tr)",
"(first st)", "(for height only)", and whether its space is told with it, "(first dc + ch 2)".
"""

from __future__ import annotations

import re

ARE_FIRST = re.compile(
    r"\bch(?:ain)?s? (?:are|is|make|makes|form|forms) (?:your |the |a |one |1 )*(?:first )?"
    r"(?:htr|tr|dc|hdc|sc|st|stitch)\b"
)
SERVES = re.compile(
    r"\b(?:stand(?:s|ing)?(?: in)? for|act(?:s|ing)? as|serv(?:es?|ing) as"
    r"|take(?:s|n) (?:the )?place of|replac(?:es?|ing)|represent(?:s|ing)?|equals?"
    r"|(?:is|are|be) considered(?: as)?|considered as|(?:is|are|be|being) (?:used|taken) as"
    r"|instead of)\b"
)
"""Said in place of "counts as"."""
_TALL = r"(?:htr|tr|dc|hdc|dtr|sc|treble|double|half)\b"
_IS = r"(?:this |it |which |always )*(?:is|are|as)"
IS_TALL = re.compile(rf"{_IS} (?:your |the |a |one |1 |first )*{_TALL}")
NO_STITCH = re.compile(rf"{_IS} (?:not|never) (?:a |an )?(?:st\b|stitch|{_TALL})")
MADE_TALL = re.compile(r"^= (?:1 |one |a )?(?:htr|tr|dc|hdc|dtr|sc)\b")
FIRST_AND_SPACE = re.compile(
    r"(?:(?:=|is|as|for|makes|this is) )*(?:(?:first|1st|your first) (?:\d )?"
    r"(?:htr|tr|dc|hdc|dtr|sc)"
    r"(?: ?(?:\+|and|&|plus|,) (?:a )?(?:ch ?-? ?(?P<n>\d+)|(?P<m>\d+) ch)(?: sp| space)?)?"
    r"|(?:1 |one |a )?(?:htr|tr|dc|hdc|dtr|sc) ?(?:\+|plus) (?:ch ?-? ?(?P<o>\d+)|(?P<p>\d+) ch))"
)
"""What the chain before the bracket stands for: "(first dc + ch 2)"."""
SKIPPED_ARE = re.compile(
    r"(?:the )?(?:first )?\d* ?(?:skipped|missed) (?:chs?|chains?|sts) ?(?:=|are|is|make|form)"
)
"""What the chains passed over stand for: "(5 skipped ch = dc, ch 1 and ...)"."""
PART_OF = re.compile(r"\b(?:count|serv|form|is|are)\w* (?:as )?(?:always )?(?:a )?part of\b")
"""Said of a chain that is no stitch of its own: "counts as part of first shell"."""
COUNTS_AS = re.compile(r"\bcount(?:s|ed)? (?:as|for)\b")
COUNTING = re.compile(
    r"count(?:ing)? (?:the |this |your |that )?(?:first |beginning |beg |starting |turning )*"
    rf"ch(?:ain)?s?(?: ?-? ?\d)? as (?:a |an |one |1 |the )?(?:first )?(?:st\b|stitch|{_TALL})"
)
"""Said of the chain a round begins with, behind it: "counting the first ch as a dc"."""
_SAYS = r"(?:it |this |these |which |here |always |will |ch(?:ain)? ?\d |\d ch(?:ain)? |= |to )*"
COUNTS_PLAINLY = re.compile(
    rf"{_SAYS}(?:counts?|counted|counting|be counted)(?: here| too| always| it)?(?: as)?"
    rf"(?: (?:a |an |the |your |one |1 |first |1st )*(?:{_TALL}|st\b|stitch\b).*)?"
    rf"|{_SAYS}(?:makes?|made|forms?|does duty|do duty|for|as|gives?|be)?(?: for)?"
    rf" ?(?:a |the |your |one |1 |first |1st )*(?:{_TALL}|(?:first |1st )(?:st\b|stitch\b))"
    r"(?: crochet)?(?: made| here| done)?"
)
"""Said in a few words, "(counts)", "(this makes the first dc)", "(dc)", "(1st st)"."""
NO_STITCH_PLAINLY = re.compile(
    rf"{_SAYS}(?:no st(?:itch)?|(?:is |are )?(?:not|never) (?:a |an )?(?:st|stitch)"
    r"|counts? (?:as|for) (?:nothing|zero|none|0)|uncounted"
    r"|(?:is |are )?(?:not|never) (?:included|in the count).*"
    r"|(?:just |only )?for (?:the )?height(?: only)?|nothing)"
)
"""Said in a few words, "(no st)", "(for height only)"."""


NOT_GOING_TO = re.compile(r"(?:n't|\bn t|\bnot) (?:gonna|going to|to|really|be) count")


NOT_COUNTED = re.compile(r"not count|n't count|doesn't|never|doesn t")


def chain_counts(lows: list[str]) -> tuple[bool, str] | None:
    """Whether words say that a chain counts, and of how many chains its space is; None when they
    say nothing of it.
    """
    said = " ".join(lows)
    if NO_STITCH_PLAINLY.fullmatch(said):
        return False, ""
    told = FIRST_AND_SPACE.fullmatch(said)
    if told is not None:
        return True, told["n"] or told["m"] or told["o"] or told["p"] or ""
    if SKIPPED_ARE.match(said):
        return True, ""
    if COUNTING.match(said):
        return True, ""
    if PART_OF.search(said):
        return False, ""
    said = SERVES.sub("counts as", said)
    if NO_STITCH.match(said):
        return False, ""
    if IS_TALL.match(said):
        said = "counts as " + said
    if ARE_FIRST.search(said) or (lows[0] == "=" and MADE_TALL.search(said)):
        said = "counts as " + said
    if COUNTS_AS.search(said) is None and COUNTS_PLAINLY.fullmatch(said):
        return True, ""
    if "count" not in said:
        return None
    if NOT_COUNTED.search(said) or NOT_GOING_TO.search(said):
        return False, ""
    if "counts as" in said or "count as" in said or "counted as" in said or "counts for" in said:
        space, behind = "", COUNTS_AS.split(said)[-1]
        if " ch " in behind + " " or "+ ch" in behind or " chain" in behind:
            numbers = [low for low in behind.split() if low.isdigit()]
            space = numbers[-1] if numbers else "1"
        return True, space
    return None


CHAIN_BEFORE = re.compile(r"(?:\bch(?:ain)?[- ]?[1-7]|\b[1-7][- ]?ch)\s?$", re.IGNORECASE)
ONE_TALL = re.compile(r"\W*=?\s*1\s?(?:sc|[hd]?dc|h?tr|dtr)\W*", re.IGNORECASE)


def of_a_chain(words: str, bracket: re.Match[str]) -> bool:
    """Whether a bracket tells what the chain before it stands for, "3 ch (1 tr)"."""
    if ONE_TALL.fullmatch(bracket.group()) is None:
        return False
    return CHAIN_BEFORE.search(words, max(0, bracket.start() - 10), bracket.start()) is not None
