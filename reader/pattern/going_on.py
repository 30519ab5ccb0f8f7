"""Words said in place of "repeat": "keep going from *", "and so on", "keep this up", whole phrases
of running talk.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_words import AROUND, STITCH_NOUNS, TO_LAST
from reader.terms.stitches import Craft

SO_ON = (
    "and so on", "and so continue", "so continue", "so on", "and continue so", "and thus continue",
    "continue thus", "continue so", "and continue thus", "continue in this way", "and so forth",
    "and continue in this way", "and keep doing that", "and just keep doing that",
    "keep doing that", "just keep doing that", "and keep going", "just keep going",
    "and keep going like that",
    "keep going like that", "and just keep going", "and carry on like that", "carry on like that",
    "and keep repeating that", "keep repeating that", "and do the same", "and do that",
    "and on it goes", "over and over", "and keep repeating", "keep repeating", "and keep that up",
    "and repeat that", "and go on like that", "and continue like that", "continue around",
    "and continue around", "continue all the way around", "continue to end", "continue across",
    "continuing around", "and so on around", "continue to the end", "and continue to end",
    "keep repeating around", "and repeat around",
)  # fmt: skip
"""Said in place of "repeat", however far."""
ALL_OF_IT = tuple(
    f"{until} {the}{row}{done}"
    for until in ("until", "till", "to")
    for the in ("the ", "")
    for row in ("row", "round", "end of the row", "end of the round", "end of row", "end")
    for done in (" is completed", " is complete", " is finished", " is done", "")
)
"""Behind "repeat this": what was just told, as far as the row goes."""
ENDS_THERE = frozenset(
    ["back", "start", "started", "beginning", "began", "marker", "end", "around", "round", "out",
     "done", "finished", "complete", "completed", "there", "join", "circle"]
)  # fmt: skip
"""Where a round is over."""
LONGEST_END = 12
"""Tokens that tell so."""


def to_its_end(cur: Cursor) -> bool:
    """Takes "until you're back where you started": all of the row; False (nothing taken) where the
    words run to a number, or name a stitch.
    """
    if cur.accept(*ALL_OF_IT):
        return True
    if cur.low() not in ("until", "till", "til"):
        return False
    told = False
    for ahead in range(1, LONGEST_END):
        if cur.low(ahead) in (*STOPS, "") or cur.kind(ahead) == "stars":
            cur.at += ahead if told else 0
            return told
        if cur.kind(ahead) == "num" or cur.stitch(ahead) is not None:
            return False
        told = told or cur.low(ahead) in ENDS_THERE
    return False


GOES_BACK = (
    "continue", "cont", "continuing", "go on", "carry on", "keep going", "go back", "return",
    "start again", "begin again", "start over", "work", "again", "over again", "going back",
    "keep on", "keep working", "keep repeating", "keep doing this", "keep doing that", "do this",
    "do that", "do it", "do so", "carry on working", "continue working", "go on working",
    "start", "begin", "go", "do the same", "do this again", "do it again",
)  # fmt: skip
"""Before "from *", these repeat as well."""
ON_AND_ON = frozenset(
    ["continue", "continuing", "cont", "keep", "keeping", "carry", "carrying", "go", "going",
     "repeat", "repeating", "proceed", "do", "doing", "work", "working", "follow", "following"]
)  # fmt: skip
MANNER = frozenset(
    ["on", "going", "doing", "repeating", "working", "with", "to", "in", "like", "up", "as",
     "this", "that", "these", "those", "the", "it", "so", "thus", "same", "way", "manner",
     "fashion", "steps", "step", "stitches", "sequence", "pattern", "set", "sets", "instructions",
     "two", "three", "four", "five", "combination", "again", "section", "bit", "process", "above",
     "established", "just"]
)  # fmt: skip
"""Between the verb and how far, "keep this up", "repeat these two steps": none of them works
anything."""
TOLD_BEFORE = frozenset(["this", "that", "these", "those", "it", "so", "thus", "way", "going"])
"""One of them at least says that what was just told is meant."""
FAR = (
    *AROUND, *TO_LAST, *ALL_OF_IT, "until you reach the end", "until you get to the end",
    "until you come to the end", "till you reach the end", "till you get to the end",
    "until you run out", "until you are back", "until you're back", "until all", "until no",
    "as far as", "for the rest", "all the", "until you have worked", "along", "until the row",
    "until the round",
)  # fmt: skip


_SO = (
    "so", "thus", "this way", "in this way", "in this manner", "in same way", "in the same way",
    "in same manner", "in the same manner", "in like manner", "like this", "like that", "likewise",
    "the same", "same", "so on", "in that way", "in that manner", "in this fashion", "continue",
    "go on", "proceed", "keep on", "carry on", "keep going",
)  # fmt: skip
_GO = ("", "continue ", "cont ", "continuing ", "go on ", "proceed ", "keep on ", "work ")
SO_ALL_ROUND = tuple(
    f"{lead}{go}{how}" for lead in ("", "and ", "then ") for go in _GO for how in _SO
)
"""These say so where they are told how far: "and so all round"."""
ROUND = tuple(one for one in AROUND if one not in ("even", "plain", "straight", "back", "evenly"))
ROUND_SO = tuple(
    f"{lead}{go}{far}{how}" for lead in ("", "and ", "then ", "and then ")
    for go in ("continue ", "continue working ", "cont ", "proceed ", "continue to work ",
               "go on ", "work ")
    for far in ("", "all around ", "around ", "all round ", "across ", "all across ",
                "across row ", "around row ", "across the row ")
    for how in ("in same manner", "in the same manner", "in this manner", "in like manner",
                "in same way", "in the same way", "in this way")
)  # fmt: skip
"""The other way about: "continue all around in same manner"."""
COMPLETED = re.compile(
    r"(?:until|till) (?:the |all )?(?:joining|row|rnd|round|motif|side|edge|circle|square|piece)s?"
    r" (?:is|are|has been) (?:completed?|finished|done|joined)"
)


def goes_on(cur: Cursor) -> bool:
    """Takes the "continue" of "continue from * around", "continue * to end"."""
    length = cur.any_words(GOES_BACK)
    after = length + (cur.low(length) in ("from", "to", "at"))
    after += cur.low(after) == "the" and cur.kind(after + 1) == "stars"
    if not length or cur.kind(after) != "stars" or (after == length and _begins_list(cur, after)):
        return False
    cur.at += length
    cur.accept("to", "at")
    return True


BEGIN = frozenset(["work", "start", "begin"])


def _begins_list(cur: Cursor, at: int) -> bool:
    """Whether behind such a verb a star begins a list, "with red work * sc in next, ch 1"."""
    begins = cur.stitch(at + 1) is not None or cur.kind(at + 1) == "num"
    return cur.low() in BEGIN and begins and cur.kind(at + 2) != "times"


def _these_stitches(cur: Cursor) -> bool:
    """Takes "repeat these 10 sts", the list just told."""
    if not cur.any_words(("rep these", "repeat these", "repeating these", "rep those")):
        return False
    if cur.kind(2) != "num" or cur.low(3) not in STITCH_NOUNS:
        return False
    cur.at += 4
    return True


def so_on(cur: Cursor) -> bool:
    """Takes "and so on", "keep this up", "repeat these two steps", the last ones only where they
    say how far.
    """
    if _all_around_so(cur):
        return True
    length = cur.any_words(SO_ON)
    if length and not any(cur.kind(length + ahead) == "stars" for ahead in range(3)):
        cur.at += length
        return True
    length = cur.any_words(SO_ALL_ROUND) if cur.low(-1) in (*STOPS, "and", "then", "") else 0
    if length and cur.any_words(ROUND, length):
        cur.at += length
        return True
    if _these_stitches(cur):
        return True
    if cur.book.craft is not Craft.CROCHET:
        return False
    at = cur.at
    while cur.low() in ("and", "then", "just", "simply", "now", "please"):
        cur.at += 1
    if cur.low() in ON_AND_ON:
        cur.at += 1
        begin = cur.at
        while cur.low() in MANNER and not cur.any_words(FAR):
            cur.at += 1
        told = TOLD_BEFORE & set(cur.lows[begin : cur.at])
        if told and (cur.any_words(FAR) or to_its_end(cur)):
            return True
    cur.at = at
    return False


def _all_around_so(cur: Cursor) -> bool:
    """Takes "continue all around in same manner", "continue in same manner until joining is
    completed".
    """
    if cur.low() not in ROUND_SO_FIRST or cur.low(-1) not in (*STOPS, "and", "then", ""):
        return False
    length = cur.any_words(ROUND_SO)
    if not length or cur.book.craft is not Craft.CROCHET:
        return False
    far = any(cur.low(ahead) in ("around", "round", "across") for ahead in range(length))
    behind = COMPLETED.match(" ".join(cur.low(length + ahead) for ahead in range(8)))
    if not (far or behind):
        return False
    cur.at += length + (len(behind.group().split()) if behind else 0)
    return True


ROUND_SO_FIRST = frozenset(one.split()[0] for one in ROUND_SO)
FROM = (
    "from", "between", "instructions between", "everything from", "directions from",
    "what is between",
    "the instructions between",
)  # fmt: skip
LEADS_BACK = frozenset(["from", "between", "after", "behind", "following", "at", "past"])
"""The last word before the star that is gone back to."""


def from_star(cur: Cursor) -> bool:
    """Takes "from", or all that leads to a star, "the instructions after the", "what comes after
    the"; False (nothing taken) where neither stands here.
    """
    if cur.accept(*FROM):
        return True
    for ahead in range(1, 7):
        if cur.kind(ahead) == "stars":
            before = cur.low(ahead - 1) if cur.low(ahead - 1) != "the" else cur.low(ahead - 2)
            if before in LEADS_BACK:
                cur.at += ahead
                return True
            return False
        if cur.kind(ahead) != "word" or cur.low(ahead) in STOPS or cur.stitch(ahead) is not None:
            return False
    return False


STITCHES_ON = re.compile(
    r"\w+\.? (?:to )?(?:k|knit|p|purl|pearl|take|rib|narrow|this|thus|so|in this way)\b"
    r"(?![^.]{0,200}\b(?:rows?|rnds?|rounds?|inc|dec)\b)[^.]{0,200}\b(?:end|last|come to)\b"
    r"|\w+\.? (?:on )?(?:thus|so|in (?:this|the same|same|like) (?:way|manner))\s*,?\s*"
    r"(?:all (?:the way )?|the whole way )?(?:a?round|across|to (?:the )?end)\b(?! \d| of)"
    r"|\w+\.? (?:working |to work )?(?:all )?(?:a?round|across)(?: (?:the )?row)?"
    r" in (?:the )?(?:same|this|like) (?:manner|way)\b(?! (?:until|till|for)\b)"
    r"|\w+\.? (?:working )?in (?:the )?(?:same|this|like) (?:manner|way) (?:until|till)"
    r" (?:the |all )?\w+ (?:is|are) (?:completed?|finished|done|joined)\b",
    re.IGNORECASE,
)
"""A row that goes on to its end, not rows that go on."""
