"""Changes worked over several rows: "dec 1 st at each end of every 4th row 5 times", "of the next 5
rows", "of next and foll 4 alt rows" -> how many stitches, how often, in every how manieth row.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from reader.pattern.rule_words import ROW_NAMED

_ROWS = r"(?:rows?|rnds?|rounds?|rds?)"
_TOG = (
    r"(?:k(?:nit(?:ting)?)?|p(?:url(?:ing)?)?|pearl(?:ing)?|seam(?:ing)?|work(?:ing)?|tak(?:e|ing))"
    r" ?(?:2|two) ?(?:sts? |stitches )?tog(?:ether)?"
)
"""Two worked together, in all its words."""
_WAY = (
    r"(?P<way>inc|dec|narrow|widen|m ?1(?= (?:at|on|each|both|either)\b)"
    r"|(?:mak(?:e|ing)|add(?:ing)?)(?= (?:1|one|a)\b)|tak(?:e|ing) in"
    rf"|{_TOG}|(?:cast|bind)(?:ing)? o(?:ff|n))"
    r"(?:reas(?:e|es|ing|ings)|ings?|s|\.)?(?: once| by)?"
)
_COUNTED = (
    r"(?:\s+(?P<n>\d+(?![\d.])|one\b|twice\b|an?(?= (?:st|loop|more)))(?! times))?"
    r"\s*(?:sts?\b|stitch(?:es)?|(?:half )?(?:single|double|treble) crochets?|[sd] ?c\b|hdc\b"
    r"|h?tr\b|(?:single|double|treble)s\b)?\.?\s*"
)
_BY_MEASURE = (
    r"\b(?:every|each) (?:other )?(?:\d+[ -]?)?(?:[½¼¾⅓⅔⅛⅜⅝]|\d/\d)? ?(?:inch(?:es)?|in\b\.?|ins\b"
    r"|cms?|\")(?!\w)"
)
BY_MEASURE = re.compile(_BY_MEASURE, re.IGNORECASE)
"""A pace told by a measure, "every inch": each change is a row, and how many plain ones lie between
nobody knows.
"""
_SIDED = r"(?:alt\w*|other|rs|ws|right[- ]side|wrong[- ]side)"
_EVERY = (
    r"\b(?:every|each|ev|(?P<after>foll\w*)"
    r"|(?:on|in|of|at)(?:\s+the)?(?=\s+(?:alt\w*\.?|other|rs|ws|right side|wrong side|plain|knit"
    r"|knitted|purl)"
    rf"\s+{_ROWS.replace('s?', 's')}))\s+(?:foll\w*\s+)?(?:(?P<other>other|alt\w*\.?|2nd|rs|ws"
    rf"|plain"
    r"|plain knitted|knitted|right side|wrong side|knit|k|purl|p|pearl|(?P<nth>\d+)"
    r"(?(after)(?:st|nd|rd|th|d)|(?:st|nd|rd|th|d)?))\s+)?"
    r"(?:foll\w*\s+)?"
    rf"(?:\w+\s+)?(?:{_ROWS}|(?:needles?|pins?)(?![^.;]*\b(?:rounds?|rows?|rnds?)))\b"
    r"|\b(?:of|in) (?:each|every)(?: (?:one|1))?(?=\s*[,.;]|\s+(?:until|till)\b|\s*$)"
    rf"|\b(?:per|a) (?:row|rnd|round)\b|\b(?:each|every) time(?=\s*(?:[,.;]|until\b|till\b|$))"
    rf"|{_BY_MEASURE}"
)
_OTHER = (
    rf"\b(?:then\s+)?(?:inc|dec|narrow|widen|bind off|cast o[fn]|bo\b|co\b|{_TOG}"
    r"|mak(?:e|ing) (?:1|one)\b)"
)
"""Another change, to which what follows belongs."""
_FIRST = rf"(?:next|this|same|the|\d+(?:st|nd|rd|th)|last)(?: {_ROWS})?\s*,?\s*(?:and|then)"
CHANGES = re.compile(
    rf"\b{_WAY}{_COUNTED}(?P<where>(?:(?!{_OTHER})[^.;]){{0,120}}?)(?:"
    rf"(?P<first>\b{_FIRST}\s+(?:then |on |at |in )*"
    rf"(?:(?:every |each )?foll\w* )?)(?P<more>\d+)\s+(?:foll\w*\s+)?(?P<alt>alt\w*\s+)?{_ROWS}"
    rf"|(?P<also>\b{_FIRST}\s+(?:then |on |at |in |of )*)?(?P<every>{_EVERY})"
    rf"|\b(?:next|foll\w*)\s+(?P<rows>\d+)\s+(?P<alts>{_SIDED}\s+)?{_ROWS}\b)",
    re.IGNORECASE,
)
BOTH_ENDS = re.compile(
    r"\b(?:each|both|either) (?:(?:armhole|neck|front|side|raglan|outer|outside|center|centre|inner"
    r"|inside|arm|shoulder) )?(?:end|side|edge)s?|\b(?:each|both) (?:underarms?|side seams?)\b"
    r"|\b(?:armhole|side|raglan) edges\b|\bfirst and last\b|1st and last"
    r"|\bbeg(?:inning)? (?:of \w+ )?and (?:\d+ )?(?:(?:sts?|stitches) )?(?:at )?(?:the )?end"
    r"|\b(?:beg\w*|end) of (?:\w+ ){1,2}(?:needle|pin) and (?:at |on )?(?:the )?(?:beg|end)",
    re.IGNORECASE,
)
AT_MARKERS = re.compile(
    r"\b(?P<two>before and after|(?:each|either|both) sides? of|before|after|at)\s+"
    r"(?P<all>(?:each|every|all)(?: of)?\s+)?(?:the\s+)?(?:(?P<n>\d+|both|two|four)\s+)?"
    r"(?:(?:raglan|seam|marked|sleeve)\s+)?(?P<what>markers?|seams?|seam sts?|marked sts?)\b",
    re.IGNORECASE,
)
"""Changes at markers, as many as there are."""
IN_PLACES = re.compile(
    r"\b(?:in|at) (?:the |these |those |same |each of the )*(?P<n>\d{1,2})"
    r" (?:same )?(?:places|spots)\b",
    re.IGNORECASE,
)
"""Changes at so many places of a row."""
ONE_SPOT = re.compile(
    r"\b(?:at|on) (?:the )?(?:beg|end|start|(?:neck|front|armhole|side|inner|outer|inside|outside"
    r"|same|shoulder|arm) edge)|\bonce\b",
    re.IGNORECASE,
)
"""Where one stitch is meant, though none is counted: "decrease at neck edge"."""
THEN_EVERY = re.compile(
    r"^\W*(?:(?:and )?then |and (?=every)|(?:and )?(?=(?:on |of |in )?(?:the )?foll)"
    r"|(?=every\b[^.;]*\b(?:times|twice|once|until)\b))"
    r"(?:dec\w*|inc\w*)?\W*(?:at (?:the )?(?:(?:each|both|same|this|that|neck|armhole|front) )+"
    r"(?:ends?|edges?|sides?))?\W*(?:on|in|of)?\s*"
    rf"(?:{_EVERY}|(?:the )?(?:next|foll\w*)\s+(?P<rows>\d+)\s+(?P<alts>{_SIDED}\s+)?{_ROWS}\b)"
    r"(?P<once>(?<=row|rnd)(?![^.;]*?\b(?:until|till|times|twice|to \d)))?",
    re.IGNORECASE,
)
"""The change goes on at another pace: "then every row until 9 remain"."""
AT_ENDS = re.compile(
    rf"\b{_WAY}{_COUNTED}(?:at |on |in )?(?:the )?(?:each|both|either) (?:ends?|sides?)",
    re.IGNORECASE,
)
EACH_TIME = re.compile(
    r"\b(?:inc|dec)\w*\.? (?:in|on|at)? ?(?:every|each) " + _ROWS + r",? (?P<n>\d+) (?:sts?"
    r"|stitches) each time",
    re.IGNORECASE,
)
"""The change of a whole round, said behind it."""
ONCE = re.compile(
    rf"\b(?P<way>inc|dec|narrow|widen|{_TOG})(?:reas\w+|ing)?\.?(?: once)?"
    r"(?: (?P<n>\d+)(?: (?:sts?|stitches))?)?(?= (?!(?:row|rnd|round))|[,.;]|$)(?P<where>[^.;]*)",
    re.IGNORECASE,
)
SPREAD = re.compile(r"\bevenly|\bspaced|\bacross\b", re.IGNORECASE)
ON_ROWS = re.compile(
    rf"\b(?:on|in|of|at) (?:the )?\d+(?:st|nd|rd|th|d)(?:(?:,? and |, )\d+(?:st|nd|rd|th"
    rf"|d))+ {_ROWS}\b"
    rf"|\b(?:on|in|of|at) (?:the )?{_ROWS} \d+(?:(?:,? (?:and|&) |, ?)\d+)+(?!\d|\.\d)",
    re.IGNORECASE,
)
"""Rows that are told one by one: "on 3rd and 6th rows", "of rows 3, 7 and 11"."""
IN_THE_LAST = re.compile(
    r"\b(?:on|in|across|over|of|during|at) (?:the )?"
    rf"(?P<which>last|final|first|\d+(?:st|nd|rd|th)) {_ROWS}\b",
    re.IGNORECASE,
)
REPEATED = re.compile(r"\b(?:every|times|twice|until|till|next|foll\w*)\b", re.IGNORECASE)


CAST_AT_END = re.compile(
    r"\bcast(?:ing)? (?P<way>on|off) (?P<n>\d{1,3})(?: sts?| stitches)?(?: more)? at (?:the )?"
    r"(?:(?P<both>(?:each|both) ends?)|beg\w*|end|start)\b",
    re.IGNORECASE,
)
"""Stitches cast on or off where a row ends: "knit one row, casting on six at the end"."""
EVERY_NEEDLE = re.compile(
    r"\b(?:each|every|all)(?: 1)?(?: of)?(?: the)?(?: (?P<n>[2-5]))? (?:needles?"
    r"|pins?)\b", re.IGNORECASE
)
"""A change made on each of the needles; how many they are must be told."""


def cast_at_end(words: str) -> int:
    """The stitches that one row gains or loses at its ends, "casting off 6 at the end"; 0 where it
    does neither.
    """
    found = CAST_AT_END.search(words)
    if found is None:
        return 0
    number = int(found["n"]) * (2 if found["both"] else 1)
    return number if found["way"].lower() == "on" else -number


def change_once(words: str, one_row: bool = False) -> tuple[int, bool]:
    """ "Work 10 rows, dec 4 sts evenly in last row": the stitches gained (or lost) in one of the
    rows, and whether it is the first of them; (0, False) where nothing is. one_row: there is but
    one, so that no word need say which.
    """
    found = ONCE.search(words)
    if not found or REPEATED.search(found.group()):
        return 0, False
    which = IN_THE_LAST.search(found.group("where"))
    at_ends = one_row and (BOTH_ENDS.search(found.group()) or ONE_SPOT.search(found.group()))
    spread = SPREAD.search(found.group("where")) or words[: found.start()].endswith("evenly ")
    told = found.group("n") is not None and (which or spread or one_row)
    if not told and not at_ends:
        return 0, False
    number = int((found.group("n") or "1")[:4]) * (2 if BOTH_ENDS.search(found.group()) else 1)
    needles = EVERY_NEEDLE.search(found.group())
    number *= int(needles["n"] or 0) if needles else 1
    gain = number if found.group("way").lower() in ("inc", "widen") else -number
    return gain, which is not None and which.group("which").lower() in ("first", "1st")


THEN_DONE = re.compile(r"\bthen\b|\b(?:bind|cast)\b", re.IGNORECASE)


STILL_SHAPED = re.compile(
    r"\b(?:still|keep|always) (?:on )?(?:inc|dec|narrow|widen)\w*"
    r"|\b(?:inc|dec|narrow|widen)(?:reasing|ing)\b[^.;,\d]{0,30}\bas (?:before|previously|usual"
    r"|above)\b",
    re.IGNORECASE,
)
"""A change that goes on, with no word of how."""


def of_which_row(words: str) -> bool:
    """Whether a change at the ends is told behind several rows, and nothing says of which: "knit 6
    rows, decreasing one stitch at each end".
    """
    if STILL_SHAPED.search(words):
        return True
    found = ONCE.search(words)
    if not found or REPEATED.search(found.group()) or THEN_DONE.search(words[: found.start()]):
        return False
    return BOTH_ENDS.search(found.group()) is not None or ONE_SPOT.search(found.group()) is not None


@dataclass(frozen=True, slots=True)
class Change:
    """step: stitches gained (or lost) each time, 0 where none is said. every: in every how manieth
    row. times: how often, None where other words say it. at_once: in the very next row. goes_on: as
    many as before, at this pace. first_apart: the first is told before the others; first_row: in
    the how manieth row that is, 0 where they do not say.
    """

    start: int
    step: int
    every: int = 1
    times: int | None = None
    at_once: bool = False
    goes_on: bool = False
    end: int = 0
    first_apart: bool = False
    first_row: int = 0


def change_at_ends(words: str) -> Change | None:
    """ "narrow at each end of the row, and continue so until ...": in every row."""
    found = AT_ENDS.search(words)
    if not found:
        return None
    said = found.group("n")
    number = int(said[:4]) if said and said.isdigit() else 1
    gain = number if found.group("way").lower() in ("inc", "widen") else -number
    return Change(found.start(), 2 * gain, 1, None, True)


LEFT_OUT = re.compile(
    r"\b(?:skip|miss|omit)\w* (?:the )?(?:(?P<both>(?:1st|first) and (?:the )?last)"
    rf"|first|1st|last)(?: (?P<n>\d+))?\b[^.;,]{{0,30}}?(?:{_EVERY})",
    re.IGNORECASE,
)
"""Stitches that every row leaves out at its ends: "skipping the first and last sc in every row"."""
AS_BEFORE = re.compile(
    r"\b(?:as (?:directed|before|above|previously|usual|described|already told|in the first|you did"
    r"|i did|we did|at first)|in (?:this|that|the same|same|like) (?:way|manner|fashion)|thus"
    r"|likewise|similarly|(?:just )?like (?:this|that|before))\b",
    re.IGNORECASE,
)
BEHIND = re.compile(r"[^.;]*?(?=[.;]|\b(?:until|till)\b|$)", re.IGNORECASE)
"""What is told of a change behind its rows."""


WITH_ROWS_BETWEEN = re.compile(
    rf"\b(?:inc|dec|narrow|widen)\w* with (\d+) (?:plain )?{_ROWS} (?:\w+ )?between", re.IGNORECASE
)
"""The pace told by the rows that lie between."""
PACE = re.compile(_EVERY, re.IGNORECASE)


def pace_in(words: str) -> int:
    """In every how manieth row the words say; 0 where they say nothing of it."""
    found = PACE.search(words)
    if found is None:
        return 0
    return int(found["nth"][:3]) if found["nth"] else 2 if found["other"] else 1


def find_change(words: str) -> Change | None:
    """The change over rows that the words ask for, None where they ask for none."""
    if not (ROW_NAMED.search(words) or BY_MEASURE.search(words)):
        return None
    whole = EACH_TIME.search(words)
    if whole:
        number = int(whole.group("n"))
        gain = number if whole.group().lower().startswith("inc") else -number
        return Change(whole.start(), gain, 1, None, True)
    left_out = LEFT_OUT.search(words)
    if left_out:
        return _left_out(left_out)
    then = THEN_EVERY.match(words)
    if then:
        return _at_another_pace(then)
    one_by_one = _on_rows(words)
    if one_by_one is not None:
        return one_by_one
    apart = WITH_ROWS_BETWEEN.search(words)
    found = next((one for one in CHANGES.finditer(words) if not _bound_alone(one)), None)
    if apart and (not found or apart.start() < found.start()):
        every = int(apart.group(1)[:2]) + 1
        return Change(apart.start(), 0, every, None, False, True, apart.end())
    if not found:
        return None
    return _told_by(found, words)


def _at_another_pace(then: re.Match[str]) -> Change:
    """The change that went before, "then on foll 2 alt rows", "then on foll 4th row"."""
    every = int(then["nth"][:3]) if then["nth"] else 2 if then["other"] or then["alts"] else 1
    once = 1 if then["once"] is not None and then["after"] else None
    return Change(0, 0, every, int(then["rows"][:3]) if then["rows"] else once, False, True)


def _told_by(found: re.Match[str], words: str) -> Change:
    """The change that CHANGES has found in the words."""
    way = found.group("way").lower().replace("ing ", " ")
    said = found.group("n")
    marked = AT_MARKERS.search(found.group())
    ends = spots_at(marked) if marked else 2 if BOTH_ENDS.search(found.group()) else 1
    places = IN_PLACES.search(found.group())
    ends = int(places["n"]) if places else ends
    if not ends:
        return replace(_how_often(found, 0), goes_on=True)
    once = places or ONE_SPOT.search(words[found.start() :].split(".")[0])
    behind = BEHIND.match(words, found.end())
    as_before = AS_BEFORE.search(found.group() + (behind.group() if behind else "")) is not None
    if said is None and ends == 1 and as_before and not once:
        return replace(_how_often(found, 0), goes_on=True)
    if said is None and ends == 1 and way in ("inc", "dec") and not once:
        # As many as before, at this pace.
        pace = _how_often(found, 0)
        return replace(pace, goes_on=pace.every > 1)
    number = int(said[:4]) if said and said.isdigit() else 2 if said == "twice" else 1
    gain = number if way in GAINS else -number
    return _how_often(found, gain * ends)


def _left_out(found: re.Match[str]) -> Change:
    number = int(found["n"] or 1) * (2 if found["both"] else 1)
    return Change(found.start(), -number, pace_in(found.group()), None, True, end=found.end())


def spots_at(marked: re.Match[str]) -> int:
    """At how many places the change is made; 0 where nothing tells how many markers there are."""
    each = 1 if marked["two"].lower() in ("before", "after", "at") else 2
    said = (marked["n"] or "").lower()
    if said:
        return each * (int(said[:2]) if said.isdigit() else 4 if said == "four" else 2)
    return 0 if marked["all"] or marked["what"].lower().endswith("s") else each


def _on_rows(words: str) -> Change | None:
    """ "decreasing 1 st each side on 3rd and 6th rows": as often as rows are told."""
    named, told = ON_ROWS.search(words), ONCE.search(words)
    if named is None or told is None or told.start() > named.start():
        return None
    number = int((told.group("n") or "1")[:4]) * (2 if BOTH_ENDS.search(told.group()) else 1)
    step = number if told.group("way").lower() in ("inc", "widen") else -number
    rows = re.findall(r"\d+", named.group())
    return Change(told.start(), step, int(rows[0][:3]), len(rows), False, end=named.end())


def _bound_alone(found: re.Match[str]) -> bool:
    """Whether stitches are bound off, or cast on, in rows that are counted: edges, and no change at
    a pace.
    """
    bound = found.group("way").lower().startswith(("cast", "bind"))
    return bound and (found.group("n") is None or not found.group("every"))


GAINS = ("inc", "m1", "m 1", "widen", "cast on", "make", "making", "add", "adding")
ONCE_MORE = re.compile(r"(?<=row|rnd)(?![^.;]*\b(?:until|till|times|twice|to \d))", re.IGNORECASE)
"""Behind "next and foll alt row": this one row, and no more."""


AT_ONE_EDGE = re.compile(
    r",? (?:towards? (?:the )?(?:front|neck|center|centre|armhole|sleeve|middle)"
    r"|at (?:the )?(?:front|neck|armhole|arm|side|shoulder) edge)\b", re.IGNORECASE
)
"""Behind "at the end of each row": only every other row ends there."""


def _how_often(found: re.Match[str], step: int) -> Change:
    at = found.start()
    if found.group("rows"):
        every = 2 if found.group("alts") else 1
        return Change(at, step, every, int(found.group("rows")[:3]), True, end=found.end())
    if found.group("more"):
        return Change(
            at, step, 2 if found.group("alt") else 1, 1 + int(found.group("more")[:3]), True,
            end=found.end(),
        )  # fmt: skip
    if found.group("also") and found.group("after") and ONCE_MORE.match(found.string, found.end()):
        every = int((found.group("nth") or "0")[:3]) or (2 if found.group("other") else 1)
        return Change(at, step, every, 2, True, end=found.end())
    nth = found.group("nth")
    every = int(nth[:3]) if nth else 2 if found.group("other") else 1
    every = 2 if every == 1 and AT_ONE_EDGE.match(found.string, found.end()) else every
    first = found.group("also") or ""
    at_once = re.match(r"\s*(?:next|this|same)", first) is not None
    row = re.match(r"\s*(?:the )?(\d{1,2})(?:st|nd|rd|th)", first)
    apart = (at_once or row is not None) and (
        "foll" in found.group("every").lower() or re.search(r"\bthen\b", first, re.I) is not None
    )
    return Change(
        at, step, every, None, at_once, end=found.end(), first_apart=apart,
        first_row=int(row.group(1)) if row else 0,
    )  # fmt: skip
